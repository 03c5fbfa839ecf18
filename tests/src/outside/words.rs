//! What a person types or pastes: phrases, keys, stamps.

use frond_core::handover::SpokenWords;
use frond_core::moment::Stamp;
use frond_core::sealing::{Identity, Recipient, RecoveryPhrase, Signature, VerifyKey};

/// Any text, to every reader of a short text.
pub fn words(bytes: &[u8]) -> bool {
    let Ok(text) = std::str::from_utf8(bytes) else { return false };
    let mut taken = false;
    if let Ok(phrase) = RecoveryPhrase::parse(text) {
        taken = true;
        let again: Vec<&str> = phrase.words().collect();
        assert!(RecoveryPhrase::parse(&again.join(" ")).is_ok());
    }
    if let Ok(words) = SpokenWords::parse(text) {
        taken = true;
        let again: Vec<&str> = words.words().collect();
        assert!(SpokenWords::parse(&again.join(" ")).is_ok());
    }
    if let Ok(identity) = Identity::parse(text) {
        taken = true;
        assert!(Identity::parse(&identity.to_text()).is_ok());
    }
    if let Ok(stamp) = text.parse::<Stamp>() {
        taken = true;
        assert_eq!(stamp.to_string().parse::<Stamp>().ok(), Some(stamp));
    }
    taken |= Recipient::parse(text).is_ok();
    taken |= VerifyKey::parse(text).is_ok();
    taken | Signature::parse(text).is_ok()
}
