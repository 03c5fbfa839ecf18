//! Sealed files: who opens them, what an altered or endless one does, and how much work a passphrase may ask for.

use super::*;
use age::armor::{ArmoredWriter, Format};
use proptest::prelude::*;

fn identity(byte: u8) -> Identity {
    Identity::from_secret(&[byte; 32]).unwrap()
}

fn to(byte: u8) -> SealTo {
    SealTo::Recipients(vec![identity(byte).recipient()])
}

fn with(byte: u8) -> OpenWith {
    OpenWith::Identities(vec![identity(byte)])
}

fn words(text: &str) -> Passphrase {
    Passphrase::new(text.to_owned()).unwrap()
}

/// Sealed with a work factor of its own, so that a test need not wait.
fn with_work(text: &str, work: u8) -> Vec<u8> {
    let mut recipient = age::scrypt::Recipient::new(SecretString::from(text.to_owned()));
    recipient.set_work_factor(work);
    age::encrypt(&recipient, b"invented").unwrap()
}

#[test]
fn each_of_several_keys_opens_and_no_other_does() {
    let both = SealTo::Recipients(vec![identity(1).recipient(), identity(2).recipient()]);
    let sealed = seal(b"invented", &both).unwrap();
    assert!(is_age(&sealed));
    for byte in [1, 2] {
        assert_eq!(open(&sealed, &with(byte), 100).unwrap().as_slice(), b"invented");
    }
    assert_eq!(open(&sealed, &with(3), 100).unwrap_err(), OpenError::WrongKey);
    let none = OpenWith::Identities(Vec::new());
    assert_eq!(open(&sealed, &none, 100).unwrap_err(), OpenError::WrongKey);
    assert_eq!(seal(b"", &SealTo::Recipients(Vec::new())), Err(SealError::NoRecipient));
    let typed = OpenWith::Passphrase(words("invented words"));
    assert_eq!(open(&sealed, &typed, 100).unwrap_err(), OpenError::NeedsKey);
}

#[test]
fn a_passphrase_seals_with_work_16_and_opens_with_the_same_words_only() {
    let sealed = seal(b"invented", &SealTo::Passphrase(words("invented words"))).unwrap();
    let line = sealed.split(|b| *b == b'\n').nth(1).unwrap();
    assert!(line.starts_with(b"-> scrypt ") && line.ends_with(b" 16"));
    let right = OpenWith::Passphrase(words("invented words"));
    assert_eq!(open(&sealed, &right, 100).unwrap().as_slice(), b"invented");
    let wrong = OpenWith::Passphrase(words("other words"));
    assert_eq!(open(&sealed, &wrong, 100).unwrap_err(), OpenError::WrongPassphrase);
    assert_eq!(open(&sealed, &with(1), 100).unwrap_err(), OpenError::NeedsPassphrase);
}

/// The header is rewritten, not made with so much work: it must be refused before any is done.
#[test]
fn work_above_18_is_refused_and_18_is_tried() {
    let sealed = with_work("invented words", 10);
    let at = sealed.windows(4).position(|four| four == b" 10\n").unwrap();
    let asking = |work: &[u8; 2]| {
        let mut asking = sealed.clone();
        asking[at + 1..at + 3].copy_from_slice(work);
        open(&asking, &OpenWith::Passphrase(words("invented words")), 100).unwrap_err()
    };
    for work in [b"19", b"20", b"30", b"63"] {
        assert_eq!(asking(work), OpenError::TooMuchWork);
    }
    assert_eq!(asking(b"18"), OpenError::WrongPassphrase);
}

#[test]
fn any_single_altered_or_missing_byte_is_refused() {
    let sealed = seal(b"invented", &to(1)).unwrap();
    for at in 0..sealed.len() {
        for bit in 0..8 {
            let mut altered = sealed.clone();
            altered[at] ^= 1 << bit;
            assert!(open(&altered, &with(1), 100).is_err(), "byte {at} bit {bit}");
        }
        assert!(open(&sealed[..at], &with(1), 100).is_err(), "cut at {at}");
    }
    let mut longer = sealed.clone();
    longer.push(0);
    assert_eq!(open(&longer, &with(1), 100).unwrap_err(), OpenError::Damaged);
}

#[test]
fn what_is_wrong_is_told_apart() {
    let err = |bytes: &[u8]| open(bytes, &with(1), 100).unwrap_err();
    assert_eq!(err(b""), OpenError::NotAge);
    assert_eq!(err(b"hello\n"), OpenError::NotAge);
    assert_eq!(err(&[0xff; 500]), OpenError::NotAge);
    // Long enough for a first line of armor, which is looked for before anything else.
    let long = |begins: &str| format!("{begins}{}\n", "x".repeat(60)).into_bytes();
    assert_eq!(err(&long("age-encryption.org/v2\n-> X\n")), OpenError::Newer);
    assert_eq!(err(&long("age-encryption.org/v1\r\n")), OpenError::Damaged);
    assert_eq!(err(&long("age-encryption.org/v1\n-> X25519 ")), OpenError::Damaged);
    assert!(!is_age(b"hello") && is_age(b"age-encryption.org/v2\n"));
}

#[test]
fn the_content_may_be_as_large_as_allowed_and_no_larger() {
    for size in [0, 1, 65_535, 65_536, 65_537, 200_000] {
        let plain = vec![7; size];
        let sealed = seal(&plain, &to(1)).unwrap();
        assert_eq!(*open(&sealed, &with(1), size as u64).unwrap(), plain);
        if size > 0 {
            let less = open(&sealed, &with(1), size as u64 - 1);
            assert_eq!(less.unwrap_err(), OpenError::TooLarge);
        }
    }
}

/// A reader that never ends and counts what was asked of it.
struct Endless<'a>(&'a [u8], u8, u64);

impl Read for Endless<'_> {
    fn read(&mut self, out: &mut [u8]) -> io::Result<usize> {
        let got = match self.0.read(out)? {
            0 => {
                out.fill(self.1);
                out.len()
            }
            got => got,
        };
        self.2 += got as u64;
        Ok(got)
    }
}

#[test]
fn a_file_without_end_is_given_up_early() {
    let header = b"age-encryption.org/v1\n".as_slice();
    let armor = b"-----BEGIN AGE ENCRYPTED FILE-----\n".as_slice();
    for (start, then) in [(header, b'A'), (header, b'\n'), (armor, b'A'), (b"", b' '), (b"", b'\n')]
    {
        let mut endless = Endless(start, then, 0);
        assert!(open_from(&mut endless, &with(1), 1000).is_err());
        assert!(endless.2 < 600_000, "{} read", endless.2);
    }
    let mut many = b"age-encryption.org/v1\n".to_vec();
    many.extend(b"-> a\nAAAA\n".repeat(200_000));
    assert_eq!(open(&many, &with(1), 1 << 30).unwrap_err(), OpenError::TooLarge);
}

#[test]
fn armored_files_are_read() {
    let sealed = seal(&[5; 70_000], &to(1)).unwrap();
    let mut armored = ArmoredWriter::wrap_output(Vec::new(), Format::AsciiArmor).unwrap();
    armored.write_all(&sealed).unwrap();
    let armored = armored.finish().unwrap();
    assert!(is_age(&armored) && armored.is_ascii());
    assert_eq!(*open(&armored, &with(1), 70_000).unwrap(), vec![5; 70_000]);
}

#[test]
fn an_unfinished_file_does_not_open_and_a_full_disk_is_told() {
    let mut out = Vec::new();
    let mut sealing = seal_into(&mut out, &to(1)).unwrap();
    sealing.write_all(&[1; 100_000]).unwrap();
    drop(sealing);
    assert_eq!(open(&out, &with(1), 200_000).unwrap_err(), OpenError::Damaged);
    let mut small = [0u8; 10];
    let full = seal_into(small.as_mut_slice(), &to(1)).unwrap_err();
    assert!(matches!(full, SealError::Write(_)), "{full:?}");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn what_was_sealed_comes_back(plain in proptest::collection::vec(any::<u8>(), 0..3000)) {
        let sealed = seal(&plain, &to(9)).unwrap();
        prop_assert_eq!(&*open(&sealed, &with(9), 3000).unwrap(), &plain);
    }

    #[test]
    fn garbled_bytes_never_panic(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
        let mut file = b"age-encryption.org/v1\n".to_vec();
        file.extend(&bytes);
        prop_assert!(open(&file, &with(9), 1000).is_err());
        prop_assert!(open(&bytes, &with(9), 1000).is_err());
    }
}
