//! What comes back to the desk: a summary, open, signed and sealed.

use std::sync::OnceLock;

use frond_core::ports::sim::SeededRandom;
use frond_core::sealing::{self, Context, Identity, OpenWith, RecoveryPhrase, SealTo, SigningKey};
use frond_core::summary::envelope::CONTEXT;
use frond_core::summary::{Digest, MOST_BYTES, open_summary};

use super::edits::edited;

/// A summary's file as it comes.
pub fn summary(bytes: &[u8]) -> bool {
    open_summary(bytes, None).is_ok()
}

/// What is inside a summary, rightly signed: whoever has a diary's key can write anything.
pub fn signed_summary(bytes: &[u8]) -> bool {
    static KEY: OnceLock<SigningKey> = OnceLock::new();
    let key = KEY.get_or_init(|| SigningKey::new(&SeededRandom::new(33)).expect("bytes"));
    let Ok(inner) = std::str::from_utf8(bytes) else { return false };
    let signature = key.sign(Context::new(CONTEXT), inner.trim().as_bytes());
    let file = format!(
        r#"{{"signed":"{CONTEXT}","key":"{}","signature":"{}","summary":{}}}"#,
        key.verify_key().to_text(),
        signature.to_text(),
        inner.trim(),
    );
    let Ok(received) = open_summary(file.as_bytes(), None) else { return false };
    let digest = Digest::of(&received);
    let bytes = digest.encode().expect("a digest is written");
    assert_eq!(Digest::decode(&bytes).and_then(|read| read.encode()), Some(bytes));
    true
}

/// A sealed file: as it comes, and a sound one with changes. What is inside opens only whole.
pub fn sealed_file(bytes: &[u8]) -> bool {
    const INSIDE: &[u8] = b"an invented content of a sealed file";
    static SOUND: OnceLock<(Vec<u8>, OpenWith)> = OnceLock::new();
    let (sound, with) = SOUND.get_or_init(|| {
        let phrase = RecoveryPhrase::new(&SeededRandom::new(34)).expect("bytes");
        let to = SealTo::Recipients(vec![phrase.recipient()]);
        let sealed = sealing::seal(INSIDE, &to).expect("sealed");
        let identity = Identity::parse(&phrase.identity().to_text()).expect("its own text");
        (sealed, OpenWith::Identities(vec![identity]))
    });
    let _ = sealing::open(bytes, with, MOST_BYTES as u64);
    let changed = edited(sound, bytes);
    let Ok(inside) = sealing::open(&changed, with, MOST_BYTES as u64) else { return false };
    assert_eq!(inside.as_slice(), INSIDE, "a changed file opens as something else");
    true
}
