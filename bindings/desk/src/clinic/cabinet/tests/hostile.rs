//! What comes in from outside and must not.

use std::path::PathBuf;

use frond_core::ports::Passphrase;
use frond_core::sealing::{OpenError, OpenWith, SealTo, seal};
use frond_core::summary::SummaryError;

use super::*;

/// What comes in from outside and must not: nothing is kept of any.
#[test]
fn hostile_files_are_refused_each_for_its_reason_and_leave_nothing() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Sled);
    desk.bring(&mut cabinet, &invented(1).open_file()).unwrap();
    cabinet.settle().unwrap();
    let before = desk.lies_there();
    let open = invented(2).open_file();
    let text = String::from_utf8(open.clone()).unwrap();
    let refused = |error| Err(Refused::Summary(error));
    let altered = text.replacen("\"practised_seconds\":3", "\"practised_seconds\":4", 1);
    assert_ne!(altered, text);
    let fhir = br#"{"resourceType":"Bundle","type":"document","entry":[]}"#;
    let work = asking_for_work(&open);
    let elsewhere = seal(&open, &SealTo::Recipients(vec![stranger()])).unwrap();
    let own = SealTo::Recipients(vec![desk.keys.recipient().unwrap()]);
    let twice = seal(&seal(&open, &own).unwrap(), &own).unwrap();
    let cut = &desk.sealed(&invented(3));
    let cases: Vec<(&str, Vec<u8>, Result<Taken, Refused>)> = vec![
        ("altered", altered.into_bytes(), refused(SummaryError::Signature)),
        ("a record of another program", fhir.to_vec(), Err(Refused::OtherRecord)),
        ("sealed elsewhere", elsewhere, refused(SummaryError::Seal(OpenError::WrongKey))),
        ("a seal in a seal", twice, refused(SummaryError::NotASummary)),
        ("cut", cut[..cut.len() - 40].to_vec(), refused(SummaryError::Seal(OpenError::Damaged))),
        ("nothing", Vec::new(), refused(SummaryError::NotASummary)),
        ("too long", vec![b' '; MOST + 1], refused(SummaryError::TooLong)),
        (
            "a sealed one too long",
            seal(&vec![b' '; MOST + 1], &own).unwrap(),
            refused(SummaryError::TooLong),
        ),
        ("deflated", zeros_deflated(), refused(SummaryError::NotASummary)),
        ("half an envelope", text[..text.len() / 2].into(), Err(Refused::Unreadable)),
        ("work", work.clone(), Err(Refused::NeedsPassphrase)),
    ];
    for (what, bytes, expected) in cases {
        let said = desk.bring(&mut cabinet, &bytes);
        match expected {
            Err(Refused::Unreadable) => {
                assert!(
                    matches!(said, Err(Refused::Summary(SummaryError::Garbled { .. }))),
                    "{what}"
                );
            }
            expected => assert_eq!(said, expected, "{what}"),
        }
    }
    // With a passphrase, the work it asks for is refused before it is done.
    let with = OpenWith::Passphrase(Passphrase::new("w".to_owned()).unwrap());
    let said = arrive(&work, &desk.keys.open_with(), Some(&with)).err();
    assert_eq!(said, Some(Refused::Summary(SummaryError::Seal(OpenError::TooMuchWork))));
    cabinet.settle().unwrap();
    let after = desk.lies_there();
    let files = |all: &[(PathBuf, Vec<u8>)]| -> Vec<PathBuf> {
        all.iter().map(|(path, _)| path.clone()).collect()
    };
    assert_eq!(files(&before), files(&after));
    assert_eq!(cabinet.digests().count(), 1);
}

/// Sealed with a passphrase, the header rewritten so that it asks for work factor 30.
fn asking_for_work(plain: &[u8]) -> Vec<u8> {
    let words = Passphrase::new("w".to_owned()).unwrap();
    let mut sealed = seal(plain, &SealTo::Passphrase(words)).unwrap();
    let at = sealed.windows(4).position(|four| four == b" 16\n").unwrap();
    sealed[at + 1..at + 3].copy_from_slice(b"30");
    sealed
}

const MOST: usize = frond_core::summary::MOST_BYTES;

/// Four gigabytes of zeros in some bytes of gzip, as far as anybody unpacks them; nothing here does.
fn zeros_deflated() -> Vec<u8> {
    let mut bytes = vec![0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 3];
    bytes.resize(4096, 0);
    bytes
}

#[test]
fn a_note_of_ten_megabytes_is_no_summary_although_its_signature_holds() {
    let desk = Desk::new();
    let mut cabinet = desk.open(IndexKind::Plain);
    let person = invented(1);
    let text = String::from_utf8(person.open_file()).unwrap();
    // Signed anew over what was changed, as somebody would who holds a key.
    let inner = text.split_once("\"summary\":").unwrap().1.trim_end().strip_suffix('}').unwrap();
    let long = "x".repeat(10 * 1024 * 1024);
    let changed = inner.replacen("\"practice\":", &format!("\"note\":\"{long}\",\"practice\":"), 1);
    assert_ne!(changed, inner);
    let key = person.identity().key;
    let context = frond_core::sealing::Context::new(frond_core::summary::envelope::CONTEXT);
    let signature = key.sign(context, changed.as_bytes()).to_text();
    let file = format!(
        "{{\"signed\":\"frond summary 1\",\"key\":\"{}\",\"signature\":\"{signature}\",\"summary\":{changed}}}\n",
        key.verify_key().to_text()
    );
    assert_eq!(
        desk.bring(&mut cabinet, file.as_bytes()),
        Err(Refused::Summary(SummaryError::Form))
    );
    assert_eq!(cabinet.store.names().unwrap().len(), 0);
}
