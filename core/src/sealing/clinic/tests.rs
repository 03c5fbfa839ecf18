//! Keys come back as they were kept, and no altered file is taken for them.

use super::*;
use crate::ports::OsRandom;

fn words(text: &str) -> Passphrase {
    Passphrase::new(text.to_owned()).unwrap()
}

const SIGNED: Context = Context::new("frond test 1");

#[test]
fn keys_come_back_from_their_file_under_the_passphrase_alone() {
    let keys = ClinicKeys::new(&OsRandom).unwrap();
    let file = keys.seal(words("invented words")).unwrap();
    let again = ClinicKeys::open(&file, words("invented words")).unwrap();
    assert_eq!(again.verify_key(), keys.verify_key());
    assert_eq!(again.recipient(), keys.recipient());
    let sealed = keys.box_key("one").seal(&OsRandom, b"here", b"value").unwrap();
    assert_eq!(again.box_key("one").open(b"here", &sealed).unwrap().as_slice(), b"value");
    let other = ClinicKeys::open(&file, words("other words")).unwrap_err();
    assert_eq!(other, ClinicKeysError::Open(OpenError::WrongPassphrase));
}

#[test]
fn a_value_opens_only_at_its_place_with_its_label_and_unchanged() {
    let keys = ClinicKeys::new(&OsRandom).unwrap();
    let sealed = keys.box_key("one").seal(&OsRandom, b"here", b"value").unwrap();
    let not = Err(BoxError::NotAuthentic);
    assert_eq!(keys.box_key("one").open(b"there", &sealed), not.clone());
    assert_eq!(keys.box_key("two").open(b"here", &sealed), not.clone());
    for at in 0..sealed.len() {
        let mut changed = sealed.clone();
        changed[at] ^= 1;
        assert_eq!(keys.box_key("one").open(b"here", &changed), not.clone(), "byte {at}");
    }
    for length in 0..sealed.len() {
        assert_eq!(keys.box_key("one").open(b"here", &sealed[..length]), not.clone(), "{length}");
    }
}

#[test]
fn new_keys_are_signed_by_the_old_and_open_what_was_sealed_to_them() {
    let old = ClinicKeys::new(&OsRandom).unwrap();
    let middle = old.renewed(&OsRandom).unwrap();
    let new = middle.renewed(&OsRandom).unwrap();
    assert_ne!(new.verify_key(), old.verify_key());
    let [first, second] = new.follows() else { panic!("two changes") };
    assert_eq!(first.before(), &old.verify_key());
    assert!(first.holds_for(&middle.verify_key()) && second.holds_for(&new.verify_key()));
    assert!(!first.holds_for(&new.verify_key()), "said of another key");
    let sealed = seal(b"older", &SealTo::Recipients(vec![old.recipient().unwrap()])).unwrap();
    assert_eq!(open(&sealed, &new.open_with(), 100).unwrap().as_slice(), b"older");
    let value = old.box_key("one").seal(&OsRandom, b"here", b"value").unwrap();
    assert!(new.box_key("one").open(b"here", &value).is_ok());
    let again = ClinicKeys::open(&new.seal(words("w")).unwrap(), words("w")).unwrap();
    assert_eq!(again.follows(), new.follows());
}

#[test]
fn a_signature_is_the_signing_keys_own() {
    let keys = ClinicKeys::new(&OsRandom).unwrap();
    let signature = keys.sign(SIGNED, b"plan");
    assert!(keys.verify_key().verify(SIGNED, b"plan", &signature).is_ok());
    assert!(keys.verify_key().verify(SIGNED, b"plan.", &signature).is_err());
}

#[test]
fn what_opens_and_holds_something_else_is_refused() {
    let sealed = |text: &str| seal(text.as_bytes(), &SealTo::Passphrase(words("w"))).unwrap();
    let opened = |text: &str| ClinicKeys::open(&sealed(text), words("w")).unwrap_err();
    assert_eq!(opened("{}"), ClinicKeysError::NotKeys);
    assert_eq!(opened("hello"), ClinicKeysError::NotKeys);
    assert_eq!(opened(r#"{"frond_clinic_keys":2,"more":1}"#), ClinicKeysError::Newer);
    // A line of keys in which one did not sign the next.
    let (one, other) = (ClinicKeys::new(&OsRandom).unwrap(), ClinicKeys::new(&OsRandom).unwrap());
    let mut mixed = one.renewed(&OsRandom).unwrap();
    mixed.follows = other.renewed(&OsRandom).unwrap().follows;
    let file = mixed.seal(words("w")).unwrap();
    assert_eq!(ClinicKeys::open(&file, words("w")).unwrap_err(), ClinicKeysError::NotKeys);
    let short = ClinicKeys::open(b"no age file", words("w")).unwrap_err();
    assert_eq!(short, ClinicKeysError::Open(OpenError::NotAge));
}
