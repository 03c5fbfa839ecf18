//! A diary's key under the phone's key and a code together: neither opens it alone, and stored wraps open for ever.

use super::*;
use crate::ports::PassphraseKeeper;
use crate::ports::sim::SeededRandom;
use std::sync::Mutex;

/// A phone's key store: keys by name, each wrap under one of its own.
#[derive(Debug, Default)]
struct Phone {
    keys: Mutex<Vec<Vec<u8>>>,
    gone: bool,
}

impl Phone {
    fn inner() -> PassphraseKeeper {
        let secret = Passphrase::new("what only the phone knows".to_owned()).unwrap();
        PassphraseKeeper::new(secret, Stretch::cheap_for_tests_only())
    }
}

impl KeyKeeper for Phone {
    fn kind(&self) -> KeeperKind {
        KeeperKind::PhoneKeyStore
    }
    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        let wrap = Self::inner().wrap(key, random)?;
        self.keys.lock().unwrap().push(wrap.clone());
        Ok(wrap)
    }
    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        if self.gone {
            return Err(KeeperError::KeyGone);
        }
        Self::inner().unwrap(wrap)
    }
    fn keep_only(&self, wrap: &[u8]) {
        self.keys.lock().unwrap().retain(|kept| kept == wrap);
    }
    fn forget(&self) {
        self.keys.lock().unwrap().clear();
    }
}

fn code(text: &str) -> Passphrase {
    Passphrase::new(text.to_owned()).unwrap()
}

fn with<'a>(phone: &'a Phone, code: Option<&'a Passphrase>) -> CodedKeeper<'a> {
    CodedKeeper::new(phone, code, Stretch::cheap_for_tests_only())
}

#[test]
fn without_a_code_the_phone_alone_opens_it() {
    let (phone, random) = (Phone::default(), SeededRandom::new(1));
    let key = DataKey::new(&random).unwrap();
    let wrap = with(&phone, None).wrap(&key, &random).unwrap();
    assert_eq!(wrap[0], 0);
    assert_eq!(with(&phone, None).unwrap(&wrap).unwrap().expose(), key.expose());
    // A code that was given although none is asked changes nothing.
    let given = code("4711");
    assert_eq!(with(&phone, Some(&given)).unwrap(&wrap).unwrap().expose(), key.expose());
    let gone = Phone { gone: true, ..Phone::default() };
    assert_eq!(with(&gone, None).unwrap(&wrap).unwrap_err(), KeeperError::KeyGone);
}

#[test]
fn with_a_code_both_are_needed() {
    let (phone, random) = (Phone::default(), SeededRandom::new(2));
    let key = DataKey::new(&random).unwrap();
    let (right, wrong) = (code("ni\u{f1}o 4711"), code("4712"));
    let wrap = with(&phone, Some(&right)).wrap(&key, &random).unwrap();
    assert_eq!(wrap[0], 1);
    assert_eq!(with(&phone, Some(&right)).unwrap(&wrap).unwrap().expose(), key.expose());
    assert_eq!(with(&phone, None).unwrap(&wrap).unwrap_err(), KeeperError::CodeAsked);
    assert_eq!(with(&phone, Some(&wrong)).unwrap(&wrap).unwrap_err(), KeeperError::WrongSecret);
    // However the accent was typed.
    let other = code("nin\u{303}o 4711");
    assert_eq!(with(&phone, Some(&other)).unwrap(&wrap).unwrap().expose(), key.expose());
    let gone = Phone { gone: true, ..Phone::default() };
    assert_eq!(with(&gone, Some(&right)).unwrap(&wrap).unwrap_err(), KeeperError::KeyGone);
}

/// Whoever has the files and knows the code, but not the phone: another helper key leads nowhere, so no try of
/// a code tells anything without the phone.
#[test]
fn the_code_tells_nothing_without_the_phones_key() {
    let (phone, random) = (Phone::default(), SeededRandom::new(3));
    let key = DataKey::new(&random).unwrap();
    let right = code("4711");
    let wrap = with(&phone, Some(&right)).wrap(&key, &random).unwrap();
    let mut forged = wrap[..LEN].to_vec();
    forged.extend(phone.wrap(&DataKey::new(&random).unwrap(), &random).unwrap());
    let wrong = with(&phone, Some(&right)).unwrap(&forged).unwrap_err();
    assert_eq!(wrong, KeeperError::WrongSecret);
}

#[test]
fn the_phone_keeps_what_its_own_wrap_needs_and_nothing_else() {
    let (phone, random) = (Phone::default(), SeededRandom::new(4));
    let key = DataKey::new(&random).unwrap();
    let own = code("4711");
    let old = with(&phone, None).wrap(&key, &random).unwrap();
    let new = with(&phone, Some(&own)).wrap(&key, &random).unwrap();
    with(&phone, Some(&own)).keep_only(&new);
    assert_eq!(*phone.keys.lock().unwrap(), [new[LEN..].to_vec()]);
    with(&phone, None).keep_only(&old);
    assert!(phone.keys.lock().unwrap().is_empty());
}

#[test]
fn no_changed_or_missing_byte_passes() {
    let (phone, random) = (Phone::default(), SeededRandom::new(5));
    let key = DataKey::new(&random).unwrap();
    let own = code("4711");
    for code in [None, Some(&own)] {
        let keeper = with(&phone, code);
        let wrap = keeper.wrap(&key, &random).unwrap();
        assert!(wrap.len() <= crate::ports::WRAP_MOST);
        for at in 0..wrap.len() {
            // The costliest settings that are believed would make this test slow.
            let number = (1..13).contains(&at) || (LEN + 1..LEN + 13).contains(&at);
            let mut garbled = wrap.clone();
            garbled[at] ^= if number { 0x80 } else { 0x10 };
            assert!(keeper.unwrap(&garbled).is_err(), "byte {at}");
            assert!(keeper.unwrap(&wrap[..at]).is_err(), "cut at {at}");
        }
        let mut newer = wrap;
        newer[0] = 2;
        assert_eq!(keeper.unwrap(&newer).unwrap_err(), KeeperError::Newer);
    }
    assert_eq!(with(&phone, None).unwrap(&[]).unwrap_err(), KeeperError::WrapDamaged);
}

#[test]
fn a_keeper_for_real_use_refuses_a_weak_wrap() {
    let (phone, random) = (Phone::default(), SeededRandom::new(6));
    let key = DataKey::new(&random).unwrap();
    let own = code("4711");
    let weak = with(&phone, Some(&own)).wrap(&key, &random).unwrap();
    let real = CodedKeeper::new(&phone, Some(&own), Stretch::everyday());
    assert_eq!(real.unwrap(&weak).unwrap_err(), KeeperError::WrapDamaged);
}

/// Stored format, one of each for real use: these must open for ever. The phone's part is the wrap of a
/// passphrase keeper, because a phone's own differs from phone to phone.
#[test]
fn stored_wraps_open_for_ever() {
    let stored = include_str!("../../../fixtures/code-v1/wraps.txt");
    let own = code("invented code 4711");
    let read = |line: &str| data_encoding::HEXLOWER.decode(line.as_bytes()).unwrap();
    let phone = StoredPhone;
    let mut lines = stored.lines().filter(|line| !line.starts_with('#'));
    let key = read(lines.next().unwrap());
    for code in [None, Some(&own)] {
        let wrap = read(lines.next().unwrap());
        let keeper = CodedKeeper::new(&phone, code, Stretch::everyday());
        assert_eq!(keeper.unwrap(&wrap).unwrap().expose().as_slice(), key);
    }
    assert_eq!(lines.next(), None);
}

#[derive(Debug)]
struct StoredPhone;

impl StoredPhone {
    fn inner() -> PassphraseKeeper {
        let secret = Passphrase::new("invented phone".to_owned()).unwrap();
        PassphraseKeeper::new(secret, Stretch::everyday())
    }
}

impl KeyKeeper for StoredPhone {
    fn kind(&self) -> KeeperKind {
        KeeperKind::PhoneKeyStore
    }
    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        Self::inner().wrap(key, random)
    }
    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        Self::inner().unwrap(wrap)
    }
}

/// The file of the test above is what this version writes, byte for byte. A changed format fails here, and then
/// gets a version and a file of its own. The file calls this test by its first name, write_stored_wraps.
#[test]
fn the_stored_wraps_are_written_the_same_again() {
    let random = SeededRandom::new(20_261_128);
    let key = DataKey::new(&random).unwrap();
    let own = code("invented code 4711");
    let mut text = String::from(
        "# Wraps of version 1 of core/src/ports/coded.rs, in hexadecimal: the data key, then without a code, then\n\
         # with one. Made by the test write_stored_wraps from invented secrets named there.\n",
    );
    text += &data_encoding::HEXLOWER.encode(key.expose());
    text.push('\n');
    for code in [None, Some(&own)] {
        let wrap = CodedKeeper::new(&StoredPhone, code, Stretch::everyday()).wrap(&key, &random);
        text += &data_encoding::HEXLOWER.encode(&wrap.unwrap());
        text.push('\n');
    }
    assert_eq!(text, include_str!("../../../fixtures/code-v1/wraps.txt"));
}
