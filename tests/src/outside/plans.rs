//! Plans on their way in: a programme's text, the signed file, the link.

use std::sync::OnceLock;

use data_encoding::BASE32_NOPAD;
use frond_core::handover::{HandOver, LinkTo};
use frond_core::ports::sim::SeededRandom;
use frond_core::programme::check::load;
use frond_core::programme::read::read;
use frond_core::programme::readback::read_back;
use frond_core::sealing::SigningKey;
use frond_core::words::Words;

use super::edits::edited;

fn key() -> &'static SigningKey {
    static KEY: OnceLock<SigningKey> = OnceLock::new();
    KEY.get_or_init(|| SigningKey::new(&SeededRandom::new(31)).expect("bytes"))
}

/// A programme's text.
pub fn programme(bytes: &[u8]) -> bool {
    let Ok(programme) = read(bytes) else { return false };
    let text = serde_json::to_vec(&programme).expect("a programme is written");
    assert_eq!(read(&text).ok().as_ref(), Some(&programme), "a programme reads otherwise");
    for language in Words::offered(false).into_iter().filter(|one| one.pseudo.is_none()) {
        assert!(!read_back(&programme, &Words::for_language(language.tag)).is_empty());
    }
    // What can be used can be signed, unless it is too long for a file, and comes back as it was.
    if let (Ok(_), Ok(signed)) = (load(bytes), HandOver::sign(bytes, key(), None)) {
        let opened = HandOver::open(&signed.file()).expect("what was signed opens");
        assert_eq!(*opened.programme(), programme);
    }
    true
}

/// A signed file: as it comes, and a sound one with changes.
pub fn signed_plan(bytes: &[u8]) -> bool {
    static SOUND: OnceLock<Vec<u8>> = OnceLock::new();
    let sound = SOUND.get_or_init(|| {
        let plan = crate::home::PLAN.as_bytes();
        HandOver::sign(plan, key(), None).expect("the invented plan can be signed").file()
    });
    let mut taken = false;
    for file in [bytes.to_vec(), edited(sound, bytes)] {
        if let Ok(opened) = HandOver::open(&file) {
            // What mail programs add behind its end does not matter.
            let (again, given) = (opened.file(), file.trim_ascii_end());
            assert_eq!(again.trim_ascii_end(), given, "a file that opens is written otherwise");
            taken = true;
        }
    }
    taken
}

/// A link: as it comes, and the bytes that one carries with their checksum put right.
pub fn link(bytes: &[u8]) -> bool {
    static SOUND: OnceLock<Vec<u8>> = OnceLock::new();
    let sound = SOUND.get_or_init(|| {
        let plan = HandOver::sign(crate::home::PLAN.as_bytes(), key(), None).expect("signed");
        let link = plan.link(LinkTo::Anybody, &SeededRandom::new(32)).expect("it fits");
        let carried = link.strip_prefix("FROND:").expect("a link");
        let mut carried = BASE32_NOPAD.decode(carried.as_bytes()).expect("base32");
        carried.truncate(carried.len() - 4);
        carried
    });
    if let Ok(text) = std::str::from_utf8(bytes) {
        let _ = HandOver::from_link(text, None);
    }
    let mut carried = match bytes.split_first() {
        Some((0, rest)) => rest.to_vec(),
        _ => edited(sound, bytes),
    };
    // A sealed one would only be stretched and refused: that is slow, and finds nothing.
    if let Some(flags) = carried.get_mut(1) {
        *flags &= !1;
    }
    let check = crc32c::crc32c(&carried);
    carried.extend_from_slice(&check.to_le_bytes());
    let text = format!("FROND:{}", BASE32_NOPAD.encode(&carried));
    let Ok(opened) = HandOver::from_link(&text, None) else { return false };
    assert!(HandOver::open(&opened.file()).is_ok(), "a link that opens makes no file that does");
    true
}
