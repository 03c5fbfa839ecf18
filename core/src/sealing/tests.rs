//! Sealing and signing against published values, and what a stranger's file can do.

use super::*;
use crate::ports::sim::SeededRandom;
use crate::ports::{DataKey, KeyKeeper, OsRandom, Passphrase, WRAP_MOST};
use data_encoding::HEXLOWER;
use ed25519_dalek::{Signer, SigningKey};
use proptest::prelude::*;
use zeroize::Zeroizing;

const MOST: u64 = 1 << 20;

fn phrase() -> RecoveryPhrase {
    RecoveryPhrase::new(&SeededRandom::new(3)).unwrap()
}

fn passphrase(words: &str) -> Passphrase {
    Passphrase::new(words.to_owned()).unwrap()
}

fn both_ways(plain: &[u8]) -> Vec<u8> {
    let sealed = seal(plain, &SealTo::Recipients(vec![phrase().recipient()])).unwrap();
    let with = OpenWith::Identities(vec![Identity::generate(), phrase().identity()]);
    assert_eq!(open(&sealed, &with, MOST).unwrap().as_slice(), plain);
    sealed
}

#[test]
fn what_was_sealed_opens_for_its_recipient_and_for_nobody_else() {
    for len in [0, 1, 31, 64 * 1024 - 1, 64 * 1024, 64 * 1024 + 1, 200_000] {
        let sealed = both_ways(&vec![7u8; len]);
        let other = OpenWith::Identities(vec![Identity::generate()]);
        assert_eq!(open(&sealed, &other, MOST).unwrap_err(), OpenError::WrongKey);
    }
    assert_eq!(seal(b"x", &SealTo::Recipients(vec![])).unwrap_err(), SealError::Nobody);
}

#[test]
fn a_passphrase_opens_what_it_sealed_and_the_work_is_16() {
    let sealed = seal(b"invented", &SealTo::Passphrase(passphrase("a few words"))).unwrap();
    let header = String::from_utf8_lossy(&sealed[..120]).into_owned();
    let stanza = header.lines().nth(1).unwrap();
    assert!(stanza.starts_with("-> scrypt ") && stanza.ends_with(" 16"), "{stanza}");
    let with = OpenWith::Passphrase(passphrase("a few words"));
    assert_eq!(open(&sealed, &with, MOST).unwrap().as_slice(), b"invented");
    let with = OpenWith::Passphrase(passphrase("other words"));
    assert_eq!(open(&sealed, &with, MOST).unwrap_err(), OpenError::WrongKey);
}

#[test]
fn content_beyond_the_limit_is_refused() {
    let sealed = both_ways(&[7; 1000]);
    let with = OpenWith::Identities(vec![phrase().identity()]);
    assert_eq!(open(&sealed, &with, 999).unwrap_err(), OpenError::TooLarge);
    assert_eq!(open(&sealed, &with, 1000).unwrap().len(), 1000);
}

#[test]
fn a_changed_or_shortened_file_does_not_open() {
    let sealed = both_ways(b"an invented text");
    let with = OpenWith::Identities(vec![phrase().identity()]);
    for at in 0..sealed.len() {
        let mut bad = sealed.clone();
        bad[at] ^= 1;
        assert!(open(&bad, &with, MOST).is_err(), "byte {at}");
        assert!(open(&sealed[..at], &with, MOST).is_err(), "length {at}");
    }
    assert_eq!(open(b"{}", &with, MOST).unwrap_err(), OpenError::NotSealed);
    assert_eq!(open(b"", &with, MOST).unwrap_err(), OpenError::NotSealed);
    let newer = b"age-encryption.org/v9\n-> x\n\n--- aaaa\n";
    assert!(matches!(open(newer, &with, MOST), Err(OpenError::Newer | OpenError::Damaged)));
}

#[test]
fn keys_are_read_as_text_and_nothing_else_passes() {
    let text = phrase().recipient().to_string();
    assert!(text.starts_with("age1"));
    assert_eq!(text.parse::<Recipient>().unwrap(), phrase().recipient());
    for bad in ["", "age1", &text[..61], "AGE-SECRET-KEY-1", &text.replace("age1", "age2")] {
        assert_eq!(bad.parse::<Recipient>().unwrap_err(), KeyTextError::Recipient);
    }
    let secret = phrase().identity().expose();
    let file = format!("# created: invented\n# public key: {text}\n{}\n", *secret);
    assert_eq!(Identity::from_file(&file).unwrap().recipient().to_string(), text);
    assert!(Identity::from_file("# nothing\n").is_err());
    assert_eq!(format!("{:?}", phrase().identity()), "Identity(secret)");
}

/// RFC 8032, section 7.1, tests 1 to 3: secret, public, message, signature.
const RFC_8032: [[&str; 4]; 3] = [
    [
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
        "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
        "",
        "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    ],
    [
        "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
        "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
        "72",
        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
    ],
    [
        "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
        "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025",
        "af82",
        "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a",
    ],
];

#[test]
fn the_signatures_of_rfc_8032_come_out() {
    for [secret, public, message, signature] in RFC_8032 {
        let hex = |text: &str| HEXLOWER.decode(text.as_bytes()).unwrap();
        let key = SigningKey::from_bytes(&hex(secret).try_into().unwrap());
        assert_eq!(key.verifying_key().to_bytes().as_slice(), hex(public));
        assert_eq!(key.sign(&hex(message)).to_bytes().as_slice(), hex(signature));
    }
}

#[test]
fn a_signature_holds_for_its_bytes_its_context_and_its_key_alone() {
    let key = SignKey::from_seed(&Zeroizing::new([4; 32]));
    let signature = key.sign("frond test", b"bytes");
    let public: VerifyKey = key.public().to_string().parse().unwrap();
    let again: Signature = signature.to_string().parse().unwrap();
    assert_eq!(public.verify("frond test", b"bytes", &again), Ok(()));
    assert_eq!(public.verify("frond test", b"byteS", &again), Err(BadSignature));
    assert_eq!(public.verify("frond tesT", b"bytes", &again), Err(BadSignature));
    // The border between context and bytes cannot be moved.
    assert_eq!(public.verify("frond testb", b"ytes", &again), Err(BadSignature));
    let other = SignKey::from_seed(&Zeroizing::new([5; 32])).public();
    assert_eq!(other.verify("frond test", b"bytes", &again), Err(BadSignature));
    for bad in ["", "AAAA", "!", &signature.to_string()[1..]] {
        assert!(bad.parse::<Signature>().is_err() && bad.parse::<VerifyKey>().is_err());
    }
    assert_eq!(format!("{key:?}"), "SignKey(secret)");
}

#[test]
fn a_phrase_is_read_however_it_was_copied() {
    let words: Vec<&str> = phrase().words().collect();
    assert_eq!(words.len(), PHRASE_WORDS);
    let numbered: String =
        words.iter().enumerate().map(|(n, word)| format!("{}. {word}\n", n + 1)).collect();
    let short: Vec<&str> = words.iter().map(|word| &word[..word.len().min(4)]).collect();
    for typed in [
        words.join(" "),
        words.join("  \n ").to_uppercase(),
        numbered,
        short.join(", "),
        format!("  {}  ", words.join("-")),
    ] {
        let read = RecoveryPhrase::parse(&typed).unwrap();
        assert_eq!(read.recipient(), phrase().recipient());
    }
}

#[test]
fn a_slip_in_a_phrase_is_found_and_no_error_tells_a_word() {
    let words: Vec<&str> = phrase().words().collect();
    let with = |at: usize, word: &str| {
        let mut words = words.clone();
        words[at] = word;
        words.join(" ")
    };
    let cases = [
        (words[..11].join(" "), PhraseError::HowMany(11)),
        (String::new(), PhraseError::HowMany(0)),
        (with(4, "frondish"), PhraseError::NotAWord(5)),
        (with(0, "abs"), PhraseError::NotAWord(1)),
    ];
    for (typed, why) in cases {
        let error = RecoveryPhrase::parse(&typed).unwrap_err();
        assert_eq!(error, why);
        for word in words.iter().chain(&["frondish"]) {
            assert!(!error.to_string().split(' ').any(|w| w == *word && w.len() > 4), "{error}");
        }
    }
    // Four bits of checksum: of all words put in one place, about one in sixteen passes.
    let list = bip39::Language::English.word_list();
    let passes = list.iter().filter(|word| RecoveryPhrase::parse(&with(7, word)).is_ok()).count();
    assert!((90..170).contains(&passes), "{passes} of 2048");
}

/// BIP-39's own test vectors (github.com/trezor/python-mnemonic, vectors.json, named in the BIP): entropy
/// and words.
#[test]
fn the_published_phrases_come_out() {
    for (entropy, words) in [
        (
            "00000000000000000000000000000000",
            "abandon abandon abandon abandon abandon abandon abandon abandon abandon abandon abandon about",
        ),
        (
            "7f7f7f7f7f7f7f7f7f7f7f7f7f7f7f7f",
            "legal winner thank year wave sausage worth useful legal winner thank yellow",
        ),
        (
            "80808080808080808080808080808080",
            "letter advice cage absurd amount doctor acoustic avoid letter advice cage above",
        ),
        ("ffffffffffffffffffffffffffffffff", "zoo zoo zoo zoo zoo zoo zoo zoo zoo zoo zoo wrong"),
        (
            "9e885d952ad362caeb4efe34a8e91bd2",
            "ozone drill grab fiber curtain grace pudding thank cruise elder eight picnic",
        ),
    ] {
        struct Fixed(Vec<u8>);
        impl crate::ports::Random for Fixed {
            fn fill(&self, out: &mut [u8]) -> Result<(), crate::ports::RandomError> {
                out.copy_from_slice(&self.0);
                Ok(())
            }
        }
        let fixed = Fixed(HEXLOWER.decode(entropy.as_bytes()).unwrap());
        impl std::fmt::Debug for Fixed {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str("Fixed")
            }
        }
        let phrase = RecoveryPhrase::new(&fixed).unwrap();
        assert_eq!(phrase.words().collect::<Vec<_>>().join(" "), words);
        assert!(RecoveryPhrase::parse(words).is_ok());
    }
}

/// The stored derivation. The key was computed with Python's hmac and hashlib:
/// `prk = hmac(b"\0"*32, bytes(16), sha256)`, `hmac(prk, b"frond 1 recovery\x01", sha256)`; its bech32 text
/// with the reference code of BIP-173.
#[test]
fn the_identity_of_a_phrase_never_changes() {
    let words = "abandon abandon abandon abandon abandon abandon abandon abandon abandon abandon abandon about";
    let phrase = RecoveryPhrase::parse(words).unwrap();
    assert_eq!(*phrase.identity().expose(), IDENTITY_OF_ZEROS);
}
const IDENTITY_OF_ZEROS: &str =
    "AGE-SECRET-KEY-1ERXZMYS502TZSW8PZ57YURSRV7W5LJ48XM6GGGXQ83UDN0FE3W5SU73XET";

#[test]
fn a_phrase_keeps_a_key_that_a_recipient_wrapped() {
    let key = DataKey::from_bytes(Zeroizing::new([9; 32]));
    let wrapping = RecipientKeeper::new(phrase().recipient());
    let wrap = wrapping.wrap(&key, &OsRandom).unwrap();
    assert!(wrap.len() <= WRAP_MOST, "{}", wrap.len());
    let keeper = RecoveryKeeper::new(phrase());
    assert_eq!(keeper.unwrap(&wrap).unwrap().expose(), key.expose());
    assert_eq!(wrapping.kind(), keeper.kind());
    assert!(wrapping.unwrap(&wrap).is_err());
    let other = RecoveryKeeper::new(RecoveryPhrase::new(&SeededRandom::new(4)).unwrap());
    let wrong = other.unwrap(&wrap).unwrap_err();
    assert_eq!(wrong, crate::ports::KeeperError::WrongSecret);
    for at in 0..wrap.len() {
        let mut bad = wrap.clone();
        bad[at] ^= 1;
        assert!(keeper.unwrap(&bad).is_err(), "byte {at}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    #[test]
    fn whatever_bytes_are_opened_nothing_panics(bytes in prop::collection::vec(any::<u8>(), 0..300)) {
        let with = OpenWith::Identities(vec![phrase().identity()]);
        let mut file = b"age-encryption.org/v1\n".to_vec();
        file.extend_from_slice(&bytes);
        prop_assert!(open(&file, &with, MOST).is_err());
    }

    #[test]
    fn whatever_is_typed_as_a_phrase_nothing_panics(typed in ".{0,200}") {
        let _ = RecoveryPhrase::parse(&typed);
    }
}
