//! The twelve words against the published BIP 39 vectors, and as a hand writes them.

use super::*;
use crate::ports::sim::SeededRandom;
use proptest::prelude::*;

/// BIP-39, test vectors for English with 16 bytes (python-mnemonic `vectors.json`, which the
/// proposal names; read as carried in the tests of the crate `bip39`): entropy, words.
const PUBLISHED: [(u128, &str); 5] = [
    (
        0x0000_0000_0000_0000_0000_0000_0000_0000,
        "abandon abandon abandon abandon abandon abandon abandon abandon abandon abandon abandon about",
    ),
    (
        0x7f7f_7f7f_7f7f_7f7f_7f7f_7f7f_7f7f_7f7f,
        "legal winner thank year wave sausage worth useful legal winner thank yellow",
    ),
    (
        0x8080_8080_8080_8080_8080_8080_8080_8080,
        "letter advice cage absurd amount doctor acoustic avoid letter advice cage above",
    ),
    (
        0xffff_ffff_ffff_ffff_ffff_ffff_ffff_ffff,
        "zoo zoo zoo zoo zoo zoo zoo zoo zoo zoo zoo wrong",
    ),
    (
        0x9e88_5d95_2ad3_62ca_eb4e_fe34_a8e9_1bd2,
        "ozone drill grab fiber curtain grace pudding thank cruise elder eight picnic",
    ),
];

fn of(entropy: u128) -> RecoveryPhrase {
    let bytes = entropy.to_be_bytes();
    RecoveryPhrase::of(Mnemonic::from_entropy_in(Language::English, &bytes).unwrap()).unwrap()
}

fn written(phrase: &RecoveryPhrase) -> String {
    phrase.words().collect::<Vec<_>>().join(" ")
}

#[test]
fn the_published_vectors_hold_both_ways() {
    for (entropy, words) in PUBLISHED {
        assert_eq!(written(&of(entropy)), words);
        let read = RecoveryPhrase::parse(words).unwrap();
        assert_eq!(read.mnemonic.to_entropy_array().0[..16], entropy.to_be_bytes());
    }
}

/// Made by `fixtures/recovery-phrase/derive.py`: Python's hmac and hashlib, with X25519 written out
/// from RFC 7748 and Bech32 from BIP-173.
#[test]
fn the_key_of_a_phrase_never_changes() {
    let file = include_str!("../../../fixtures/recovery-phrase/derived.txt");
    let mut seen = 0;
    for line in file.lines() {
        let [entropy, secret, public]: [&str; 3] =
            line.split(' ').collect::<Vec<_>>().try_into().unwrap();
        let phrase = of(u128::from_str_radix(entropy, 16).unwrap());
        assert_eq!(phrase.identity().to_text().as_str(), secret);
        assert_eq!(phrase.recipient().to_string(), public);
        seen += 1;
    }
    assert_eq!(seen, 3);
}

#[test]
fn what_a_hand_makes_of_the_words_is_read() {
    let words = PUBLISHED[4].1;
    let key = of(PUBLISHED[4].0).recipient();
    let numbered: String =
        words.split(' ').enumerate().map(|(i, w)| format!("{}. {w}\n", i + 1)).collect();
    let tight: String =
        words.split(' ').enumerate().map(|(i, w)| format!("{}){w} ", i + 1)).collect();
    let short: String =
        words.split(' ').map(|w| w.chars().take(4).collect::<String>() + "  ").collect();
    let full_width: String = words
        .chars()
        .map(|c| if c == ' ' { '\u{3000}' } else { char::from_u32(c as u32 + 0xfee0).unwrap() })
        .collect();
    for text in [
        words.to_uppercase(),
        format!("\t{}\r\n", words.replace(' ', " \n ")),
        words.replace(' ', ", "),
        words.replace(' ', "\u{a0}\u{200b}"),
        numbered,
        tight,
        short,
        full_width,
    ] {
        assert_eq!(RecoveryPhrase::parse(&text).unwrap().recipient(), key, "{text:?}");
    }
}

#[test]
fn an_error_says_which_word_and_never_the_word() {
    let parse = |text: &str| RecoveryPhrase::parse(text).unwrap_err();
    let words = PUBLISHED[4].1;
    let wrong = parse(&words.replace("grab", "grabb"));
    assert_eq!(wrong, PhraseError::NotInList { number: 3 });
    assert!(!format!("{wrong} {wrong:?}").contains("grab"));
    assert_eq!(parse(&words.replace("grab", "gr4b")), PhraseError::NotInList { number: 3 });
    // Three letters are not enough, unless they are a word.
    assert_eq!(parse(&words.replace("picnic", "pic")), PhraseError::NotInList { number: 12 });
    assert_eq!(parse(""), PhraseError::TooFew { found: 0 });
    assert_eq!(parse("ozone drill"), PhraseError::TooFew { found: 2 });
    assert_eq!(parse(&format!("{words} zoo")), PhraseError::TooMany);
    assert_eq!(parse(&"zoo ".repeat(100_000)), PhraseError::TooMany);
    assert_eq!(parse(&words.replace("ozone drill", "drill ozone")), PhraseError::NotTogether);
}

/// What reading relies on: BIP-39 promises that four letters tell the words apart.
#[test]
fn four_letters_tell_the_words_of_the_list_apart() {
    let list = Language::English.word_list();
    let starts: std::collections::BTreeSet<&str> =
        list.iter().map(|w| &w[..w.len().min(4)]).collect();
    assert_eq!(starts.len(), 2048);
}

#[test]
fn a_phrase_does_not_print() {
    assert_eq!(format!("{:?}", of(0)), "RecoveryPhrase(secret)");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    #[test]
    fn every_phrase_is_read_back(seed: u64) {
        let phrase = RecoveryPhrase::new(&SeededRandom::new(seed)).unwrap();
        prop_assert_eq!(phrase.words().count(), RECOVERY_WORDS);
        let read = RecoveryPhrase::parse(&written(&phrase)).unwrap();
        prop_assert_eq!(read.recipient(), phrase.recipient());
    }

    #[test]
    fn no_text_breaks_the_reading(text in "\\PC{0,200}") {
        let _ = RecoveryPhrase::parse(&text);
    }
}
