//! The signed file and the link, whole and altered byte by byte; nothing of a plan passes that was not signed so.

use std::fmt::Write as _;

use data_encoding::{BASE32_NOPAD, HEXLOWER};
use proptest::prelude::*;
use sha2::{Digest, Sha256};
use zeroize::Zeroizing;

use super::*;
use crate::ports::Stretch;
use crate::ports::sim::SeededRandom;
use crate::programme::check::load;
use crate::programme::fixtures::ALL as PROGRAMMES;
use crate::sealing::{Follows, Signature, SigningKey};

const BREATHING: &str = PROGRAMMES[3].1;

fn key(byte: u8) -> SigningKey {
    SigningKey::from_seed(&Zeroizing::new([byte; 32]))
}

fn handed(programme: &str) -> HandOver {
    HandOver::sign(programme.as_bytes(), &key(1), None).unwrap()
}

/// Signed with key 2, which follows key 1.
fn following() -> HandOver {
    let follows = Follows::sign(&key(1), &key(2).verify_key());
    HandOver::sign(BREATHING.as_bytes(), &key(2), Some(follows)).unwrap()
}

fn words(text: &str) -> SpokenWords {
    SpokenWords::parse(text).unwrap()
}

fn cheap() -> Stretch {
    Stretch::cheap_for_tests_only()
}

fn link(of: &HandOver, to: LinkTo<'_>) -> String {
    of.link_at(to, &SeededRandom::new(7), cheap()).unwrap()
}

fn back(text: &str, words: Option<&SpokenWords>) -> Result<HandOver, HandOverError> {
    HandOver::from_link_at(text, words, cheap())
}

/// Stored format.
#[test]
fn the_signed_file_and_its_statement_of_a_key_that_follows() {
    let lines = [handed(BREATHING).file(), following().file()];
    let text: Vec<&str> = lines.iter().map(|line| std::str::from_utf8(line).unwrap()).collect();
    insta::assert_snapshot!(text.join("\n"));
    for line in text {
        // Any reader of JSON finds its way.
        let value: serde_json::Value = serde_json::from_str(line).unwrap();
        assert_eq!(value["signed"], "frond programme 1");
        assert_eq!(value["programme"]["frond_programme"], 1);
    }
}

#[test]
fn what_is_signed_comes_back_to_the_letter_in_every_way_it_travels() {
    let spoken = words("abandon ability able about");
    for (name, programme) in PROGRAMMES {
        let (plan, _) = load(programme.as_bytes()).unwrap();
        let handed = handed(programme);
        assert_eq!(*handed.programme(), plan, "{name}: no letter of the programme changes");
        let file = HandOver::open(&handed.file()).unwrap();
        let open = back(&link(&handed, LinkTo::Anybody), None).unwrap();
        let sealed = back(&link(&handed, LinkTo::Words(&spoken)), Some(&spoken)).unwrap();
        for came in [file, open, sealed] {
            assert_eq!(came.text(), handed.text(), "{name}");
            assert_eq!(came.key(), key(1).verify_key());
            assert_eq!(came.follows(), None);
            assert_eq!(came.file(), handed.file(), "{name}: the same signature");
        }
    }
    let came = back(&link(&following(), LinkTo::Anybody), None).unwrap();
    assert_eq!(came.follows(), Some(key(1).verify_key()));
    assert_eq!(HandOver::open(&following().file()).unwrap().follows(), came.follows());
}

/// Text within quotation marks keeps its spaces.
#[test]
fn only_spaces_between_marks_are_left_out() {
    let spaced = BREATHING.replace("\"for\": \"", "\"for\" :\t\"A \\\" b  ");
    assert_ne!(spaced, BREATHING);
    let handed = handed(&spaced);
    assert!(handed.text().contains("\"for\":\"A \\\" b  "));
    assert!(!handed.text().contains("\": "));
    assert_eq!(*handed.programme(), load(spaced.as_bytes()).unwrap().0);
}

#[test]
fn an_altered_byte_anywhere_in_the_file_is_refused() {
    for handed in [handed(BREATHING), following()] {
        let file = handed.file();
        for at in 0..file.len() {
            for change in [0x01, 0x20, 0x80] {
                let mut altered = file.clone();
                altered[at] ^= change;
                assert!(HandOver::open(&altered).is_err(), "byte {at} ^ {change:#x}");
            }
            assert!(HandOver::open(&file[..at]).is_err(), "cut at {at}");
        }
        for after in ["x", "}", "\0", "\n{}"] {
            let longer = [file.as_slice(), after.as_bytes()].concat();
            assert!(HandOver::open(&longer).is_err(), "{after:?} behind it");
        }
        let mailed = [file.as_slice(), b"\r\n\r\n"].concat();
        assert!(HandOver::open(&mailed).is_ok(), "a line break that a mail program added");
    }
}

/// The same JSON in another form is refused: what is accepted has one spelling.
#[test]
fn the_outer_form_is_exact() {
    let file = String::from_utf8(handed(BREATHING).file()).unwrap();
    let spaced = file.replacen(",\"key\":", ", \"key\":", 1);
    assert_eq!(HandOver::open(spaced.as_bytes()).unwrap_err(), HandOverError::Damaged);
    let value: serde_json::Value = serde_json::from_str(&file).unwrap();
    let sorted = serde_json::to_vec(&value).unwrap();
    assert!(HandOver::open(&sorted).is_err());
    let newer = file.replacen("frond programme 1", "frond programme 2", 1);
    assert_eq!(HandOver::open(newer.as_bytes()).unwrap_err(), HandOverError::Newer);
    let zero = file.replacen("frond programme 1", "frond programme 0", 1);
    assert_eq!(HandOver::open(zero.as_bytes()).unwrap_err(), HandOverError::Damaged);
    assert_eq!(HandOver::open(BREATHING.as_bytes()).unwrap_err(), HandOverError::NotSigned);
    assert_eq!(HandOver::open(b"").unwrap_err(), HandOverError::NotSigned);
    let long = vec![b'{'; FILE_MOST + 1];
    assert_eq!(HandOver::open(&long).unwrap_err(), HandOverError::TooLong);
}

#[test]
fn a_signature_for_one_thing_is_none_for_another() {
    let bytes = handed(BREATHING).text().as_bytes().to_vec();
    let parts = |signature, follows| file::Parts {
        key: key(1).verify_key(),
        follows,
        signature,
        programme: &bytes,
    };
    let other = key(1).sign(Context::new("frond summary 1"), &bytes);
    let forged = HandOver::open(&file::write(&parts(other, None)));
    assert_eq!(forged.unwrap_err(), HandOverError::NotGenuine);
    // A signature over a programme is no statement about a key, whatever the bytes are.
    let as_programme = key(3).sign(PROGRAMME, &key(1).verify_key().to_bytes());
    let statement = Follows::said(key(3).verify_key(), as_programme);
    let good = key(1).sign(PROGRAMME, &bytes);
    let forged = HandOver::open(&file::write(&parts(good, Some(statement))));
    assert_eq!(forged.unwrap_err(), HandOverError::NotGenuine);
    // And a statement about one key is none about another.
    let about_another = Follows::sign(&key(3), &key(4).verify_key());
    let forged = HandOver::open(&file::write(&parts(good, Some(about_another.clone()))));
    assert_eq!(forged.unwrap_err(), HandOverError::NotGenuine);
    let itself = Follows::sign(&key(1), &key(1).verify_key());
    assert!(!itself.holds_for(&key(1).verify_key()), "no key follows itself");
    let signed = HandOver::sign(BREATHING.as_bytes(), &key(1), Some(about_another));
    assert_eq!(signed.unwrap_err(), HandOverError::NotGenuine);
}

/// Garbage that is well signed is garbage all the same.
#[test]
fn what_is_signed_but_no_programme_is_refused_with_its_reason() {
    for bytes in [b"{}".as_slice(), b"not json", b"\xff", b"", b"{\"frond_programme\":9}"] {
        let file = file::write(&file::Parts {
            key: key(1).verify_key(),
            follows: None,
            signature: key(1).sign(PROGRAMME, bytes),
            programme: bytes,
        });
        assert!(matches!(HandOver::open(&file), Err(HandOverError::Programme(_))), "{bytes:?}");
        assert!(matches!(HandOver::sign(bytes, &key(1), None), Err(HandOverError::Programme(_))));
    }
}

/// Published format: the dictionary and the layout of version 1. What they give must open for ever.
#[test]
fn the_dictionary_of_link_version_1_never_changes() {
    assert_eq!(pack::DICTIONARY.len(), 5910);
    let digest = HEXLOWER.encode(&Sha256::digest(pack::DICTIONARY));
    insta::assert_snapshot!(digest);
}

#[test]
fn a_link_made_once_opens_for_ever() {
    let open = include_str!("../../../fixtures/handover-v1/open.link");
    let sealed = include_str!("../../../fixtures/handover-v1/sealed.link");
    let file = include_bytes!("../../../fixtures/handover-v1/signed.json");
    let expected = following();
    assert_eq!(HandOver::from_link(open, None).unwrap().text(), expected.text());
    assert_eq!(HandOver::open(file).unwrap().text(), expected.text());
    let spoken = words("lamp river oven bridge");
    let came = HandOver::from_link(sealed, Some(&spoken)).unwrap();
    assert_eq!((came.text(), came.follows()), (expected.text(), expected.follows()));
}

#[test]
fn case_spaces_and_line_breaks_of_a_link_do_not_matter() {
    let whole = link(&handed(BREATHING), LinkTo::Anybody);
    let mut broken = String::from("\u{feff}\n  ");
    for (at, letter) in whole.to_lowercase().chars().enumerate() {
        broken.push(letter);
        if at % 60 == 59 {
            broken.push_str("\r\n> ".trim_end_matches("> "));
        }
    }
    broken.push(' ');
    assert!(is_link(&whole) && is_link(&broken));
    assert_eq!(back(&broken, None).unwrap().text(), handed(BREATHING).text());
}

/// Every character, in every place, to every other of the alphabet and to some outside it.
#[test]
fn every_altered_character_of_a_link_is_refused() {
    let spoken = words("abandon ability able about");
    for (whole, with) in [
        (link(&following(), LinkTo::Anybody), None),
        (link(&following(), LinkTo::Words(&spoken)), Some(&spoken)),
    ] {
        assert!(back(&whole, with).is_ok());
        for at in 0..whole.len() {
            for other in "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567089:-=ñ".chars() {
                if whole[at..].starts_with(other) {
                    continue;
                }
                let altered = format!("{}{other}{}", &whole[..at], &whole[at + 1..]);
                assert!(back(&altered, with).is_err(), "{other} at {at}");
            }
            let missing = format!("{}{}", &whole[..at], &whole[at + 1..]);
            assert!(back(&missing, with).is_err(), "missing at {at}");
            assert!(back(&whole[..at], with).is_err(), "cut at {at}");
        }
    }
}

#[test]
fn a_sealed_link_opens_with_its_words_alone_and_tells_wrong_words_from_a_slip() {
    let spoken = words("abandon ability able about");
    let sealed = link(&handed(BREATHING), LinkTo::Words(&spoken));
    assert_eq!(back(&sealed, None).unwrap_err(), HandOverError::WordsNeeded);
    let wrong = words("abandon ability able above");
    assert_eq!(back(&sealed, Some(&wrong)).unwrap_err(), HandOverError::WrongWords);
    let typed = words(" Abandon,\nABIL  áblé abou\u{301}t ");
    assert!(back(&sealed, Some(&typed)).is_ok());
    let slip = sealed.replacen(&sealed[40..41], if &sealed[40..41] == "A" { "B" } else { "A" }, 1);
    assert_eq!(back(&slip, Some(&spoken)).unwrap_err(), HandOverError::Garbled);
    // The salt differs, and with it everything that is sealed.
    let again = handed(BREATHING).link_at(LinkTo::Words(&spoken), &SeededRandom::new(8), cheap());
    assert_ne!(again.unwrap()[60..], sealed[60..]);
    // Nothing of the plan can be read without the words.
    let bytes = BASE32_NOPAD.decode(&sealed.as_bytes()[6..]).unwrap();
    let public = key(1).verify_key().to_bytes();
    assert!(!bytes.windows(8).any(|seen| seen == &public[..8]));
    // Words given for an open link do no harm.
    assert!(back(&link(&handed(BREATHING), LinkTo::Anybody), Some(&wrong)).is_ok());
}

#[test]
fn typed_words_say_what_is_wrong_without_the_word() {
    assert_eq!(SpokenWords::parse("").unwrap_err(), SpokenError::Count);
    assert_eq!(SpokenWords::parse("able able able").unwrap_err(), SpokenError::Count);
    assert_eq!(SpokenWords::parse("able able able able able").unwrap_err(), SpokenError::Count);
    let wrong = SpokenWords::parse("able able xylophone able").unwrap_err();
    assert_eq!(wrong, SpokenError::NotInList { number: 3 });
    assert!(!format!("{:?}", words("able able able able")).contains("able"));
    assert_eq!(SpokenWords::new(&SeededRandom::new(3)).unwrap().words().count(), SPOKEN_WORDS);
}

/// What a link carries besides the plan, and a link of another version.
#[test]
fn other_versions_and_unknown_bits_are_refused() {
    let whole = link(&handed(BREATHING), LinkTo::Anybody);
    let bytes = BASE32_NOPAD.decode(&whole.as_bytes()[6..]).unwrap();
    let again = |at: usize, byte: u8| {
        let mut altered = bytes[..bytes.len() - 4].to_vec();
        altered[at] = byte;
        let check = crc32c::crc32c(&altered);
        altered.extend_from_slice(&check.to_le_bytes());
        back(&format!("FROND:{}", BASE32_NOPAD.encode(&altered)), None).unwrap_err()
    };
    assert_eq!(again(0, 2), HandOverError::Newer);
    assert_eq!(again(0, 0), HandOverError::Garbled);
    for bit in 2..8 {
        assert_eq!(again(1, 1 << bit), HandOverError::Garbled);
    }
    assert_eq!(again(1, 1), HandOverError::WordsNeeded);
    assert!(matches!(again(40, bytes[40] ^ 1), HandOverError::NotGenuine));
    for text in ["", "FROND", "FROND:", "https://example.org", "FROND:AE", "frond:a"] {
        assert!(back(text, None).is_err(), "{text:?}");
    }
    assert_eq!(back("hello", None).unwrap_err(), HandOverError::NotALink);
    let long = format!("FROND:{}", "A".repeat(LINK_MOST));
    assert_eq!(back(&long, None).unwrap_err(), HandOverError::TooLong);
    assert_eq!(back(&" ".repeat(20_000), None).unwrap_err(), HandOverError::TooLong);
}

#[test]
fn no_more_than_64_kib_is_inflated() {
    let most = vec![b'a'; pack::INFLATED_MOST];
    assert_eq!(pack::inflate(&pack::deflate(&most).unwrap()).unwrap(), most);
    for more in [1, 2, 64 * 1024, 64 * 1024 * 1024] {
        let bomb = pack::deflate(&vec![b'a'; pack::INFLATED_MOST + more]).unwrap();
        assert_eq!(pack::inflate(&bomb).unwrap_err(), HandOverError::TooLong, "{more} more");
    }
    // As a link: 64 MiB in a few hundred characters would be refused for its length alone, so smaller.
    let bomb = pack::deflate(&vec![b' '; 1024 * 1024]).unwrap();
    let mut bytes = vec![1, 0];
    bytes.extend_from_slice(&key(1).verify_key().to_bytes());
    bytes.extend_from_slice(&[0; 64]);
    bytes.extend_from_slice(&bomb);
    let check = crc32c::crc32c(&bytes);
    bytes.extend_from_slice(&check.to_le_bytes());
    let text = format!("FROND:{}", BASE32_NOPAD.encode(&bytes));
    assert_eq!(back(&text, None).unwrap_err(), HandOverError::TooLong);
    // Something behind the end of what was deflated.
    let longer = [pack::deflate(b"abc").unwrap(), vec![0]].concat();
    assert_eq!(pack::inflate(&longer).unwrap_err(), HandOverError::Garbled);
    assert_eq!(pack::inflate(b"").unwrap_err(), HandOverError::Garbled);
}

#[test]
fn a_programme_too_long_for_one_code_is_refused_with_the_file_offered() {
    // Text that cannot be made smaller: digests in hexadecimal.
    let mut noise = String::new();
    for part in 0..30u8 {
        let _ = write!(noise, "{}", HEXLOWER.encode(&Sha256::digest([part])));
    }
    let mut plan: serde_json::Value = serde_json::from_str(BREATHING).unwrap();
    plan["own_cautions"] = serde_json::json!([noise]);
    let handed = handed(&plan.to_string());
    let error = handed.link_at(LinkTo::Anybody, &SeededRandom::new(1), cheap()).unwrap_err();
    assert!(matches!(error, HandOverError::TooLarge { characters } if characters > LINK_MOST));
    assert!(error.to_string().contains("hand over the file instead"));
    assert_eq!(HandOver::open(&handed.file()).unwrap().text(), handed.text());
}

/// What fits into one code. Printed with `--nocapture`.
#[test]
fn every_fixture_programme_fits_one_code_sealed() {
    let spoken = words("abandon ability able about");
    for (name, programme) in PROGRAMMES {
        let handed = handed(programme);
        let sealed = link(&handed, LinkTo::Words(&spoken));
        let open = link(&handed, LinkTo::Anybody);
        println!(
            "{name:5} {:5} bytes, link {:4} sealed, {:4} open",
            handed.text().len(),
            sealed.len(),
            open.len()
        );
        assert_eq!(Correction::for_link(sealed.len()), Some(Correction::Medium), "{name}");
    }
}

/// ISO/IEC 18004:2015, 7.4.4: 4 bits of mode and, in versions 10 to 26, 11 of count; two characters take 11
/// bits and one left over takes 6. Codewords of 8 bits from table 7, from memory.
#[test]
fn capacities_follow_from_the_codewords() {
    for (level, codewords) in [(Correction::Medium, 1000), (Correction::Low, 1276)] {
        let bits = codewords * 8 - 4 - 11;
        let characters = bits / 11 * 2 + usize::from(bits % 11 >= 6);
        assert_eq!(level.characters(), characters);
    }
    assert_eq!(Correction::for_link(1451), Some(Correction::Medium));
    assert_eq!(Correction::for_link(1452), Some(Correction::Low));
    assert_eq!(Correction::for_link(1853), Some(Correction::Low));
    assert_eq!(Correction::for_link(1854), None);
    let alphanumeric = |c: char| c.is_ascii_uppercase() || c.is_ascii_digit() || c == ':';
    assert!(link(&handed(BREATHING), LinkTo::Anybody).chars().all(alphanumeric));
}

/// Published format. The words of RFC 8032's first test key were worked out apart, in Python.
#[test]
fn a_key_is_six_words() {
    let seed = HEXLOWER
        .decode(b"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")
        .unwrap();
    let key_1 = SigningKey::from_seed(&Zeroizing::new(seed.try_into().unwrap())).verify_key();
    insta::assert_snapshot!(key_words(&key_1).join(" "));
    assert_eq!(key_words(&key_1).len(), KEY_WORDS);
    assert_ne!(key_words(&key_1), key_words(&key(1).verify_key()));
}

#[test]
fn no_error_tells_what_stands_in_the_programme() {
    let nickname = "Zaffre-invented";
    let plan = BREATHING.replacen("\"for\": \"", &format!("\"for\": \"{nickname} "), 1);
    let broken = plan.replacen("\"adult\"", &format!("\"{nickname}\""), 1);
    let error = HandOver::sign(broken.as_bytes(), &key(1), None).unwrap_err();
    assert!(!error.to_string().contains(nickname));
    assert!(!format!("{:?}", handed(&plan)).contains(nickname));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    #[test]
    fn garbage_is_refused_and_nothing_falls_over(bytes in proptest::collection::vec(any::<u8>(), 0..600)) {
        prop_assert!(HandOver::open(&bytes).is_err());
        let text = String::from_utf8_lossy(&bytes);
        prop_assert!(back(&text, None).is_err());
        let coded = format!("FROND:{}", BASE32_NOPAD.encode(&bytes));
        prop_assert!(back(&coded, None).is_err());
        let mut begun = br#"{"signed":"frond programme 1","key":""#.to_vec();
        begun.extend_from_slice(&bytes);
        prop_assert!(HandOver::open(&begun).is_err());
    }

    /// Well formed on the outside, with a checksum that fits, and random bytes within.
    #[test]
    fn garbage_within_a_good_checksum_is_refused(
        flags in 0u8..4,
        bytes in proptest::collection::vec(any::<u8>(), 0..400),
    ) {
        let mut whole = vec![1, flags];
        whole.extend_from_slice(&bytes);
        let check = crc32c::crc32c(&whole);
        whole.extend_from_slice(&check.to_le_bytes());
        let spoken = words("able able able able");
        let text = format!("FROND:{}", BASE32_NOPAD.encode(&whole));
        prop_assert!(back(&text, Some(&spoken)).is_err());
    }

    #[test]
    fn what_is_inflated_never_exceeds_its_bound(bytes in proptest::collection::vec(any::<u8>(), 0..600)) {
        if let Ok(plain) = pack::inflate(&bytes) {
            prop_assert!(plain.len() <= pack::INFLATED_MOST);
        }
    }

    #[test]
    fn several_altered_bytes_are_refused(
        changes in proptest::collection::vec((0usize..10_000, 1u8..=255), 1..8),
    ) {
        let file = handed(BREATHING).file();
        let mut altered = file.clone();
        for (at, change) in changes {
            let at = at % altered.len();
            altered[at] ^= change;
        }
        prop_assume!(altered != file);
        prop_assert!(HandOver::open(&altered).is_err());
    }
}

/// A signature in another encoding of the same bytes must not pass as another file.
#[test]
fn base64_has_one_spelling() {
    let file = String::from_utf8(handed(BREATHING).file()).unwrap();
    let signature =
        Signature::parse(&file[file.find("signature\":\"").unwrap() + 12..][..88]).unwrap();
    let text = signature.to_text();
    // The last letter before the padding carries four bits that must be zero.
    let slack: String =
        format!("{}{}==", &text[..85], if text.as_bytes()[85] == b'A' { 'B' } else { 'A' });
    assert!(HandOver::open(file.replace(&text, &slack).as_bytes()).is_err());
}
