//! The sweep finds what is planted, and leaves alone what is as it should be.

use frond_core::ports::Random;
use frond_core::ports::sim::SeededRandom;

use super::*;

fn drawn(count: usize) -> Vec<u8> {
    let mut bytes = vec![0; count];
    SeededRandom::new(4).fill(&mut bytes).unwrap();
    bytes
}

#[test]
fn a_text_is_found_however_it_is_written() {
    let needles = Needles::new(&["pain and fever, said Wren"]);
    let text = "x pain and fever, said Wren y";
    let utf16: Vec<u8> = text.encode_utf16().flat_map(u16::to_le_bytes).collect();
    let big: Vec<u8> = text.encode_utf16().flat_map(u16::to_be_bytes).collect();
    let mut ways = vec![
        text.as_bytes().to_vec(),
        text.to_uppercase().into_bytes(),
        utf16.clone(),
        big,
        data_encoding::HEXLOWER.encode(text.as_bytes()).into_bytes(),
        data_encoding::HEXUPPER.encode(&utf16).into_bytes(),
        data_encoding::BASE64URL.encode(&utf16).into_bytes(),
        data_encoding::BASE32_NOPAD.encode(text.as_bytes()).into_bytes(),
    ];
    for before in 0..3 {
        ways.push(data_encoding::BASE64.encode(&text.as_bytes()[before..]).into_bytes());
    }
    let packed = miniz_oxide::deflate::compress_to_vec(&text.repeat(3).into_bytes(), 9);
    let zlib = miniz_oxide::deflate::compress_to_vec_zlib(text.as_bytes(), 9);
    ways.push(packed.clone());
    ways.push([&[0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 3][..], &packed].concat());
    ways.push(data_encoding::BASE64.encode(&zlib).into_bytes());
    ways.push([&[7; 100][..], &zlib].concat());
    // Packed twice, with base64 between.
    let twice = data_encoding::BASE64.encode(&zlib).into_bytes();
    ways.push(miniz_oxide::deflate::compress_to_vec_zlib(&twice, 6));
    for (number, way) in ways.iter().enumerate() {
        assert!(!needles.found(way).is_empty(), "way {number}");
        // In the middle of a sealed file too; raw deflate only where something begins.
        if way != &packed {
            let planted = [drawn(5000), way.clone(), drawn(3000)].concat();
            assert!(!needles.found(&planted).is_empty(), "way {number} among random bytes");
        }
    }
    assert!(needles.found(b"pain and fever, said nobody").is_empty());
    assert!(
        Needles::new(&WORDS).found(&drawn(1 << 20)).is_empty(),
        "no word stands there by chance"
    );
}

/// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4: the upper critical values of chi-square.
#[test]
fn deviations_are_those_of_the_published_table() {
    for (degrees, at_0_05, at_0_001) in
        [(15.0, 24.996, 37.697), (50.0, 67.505, 86.661), (100.0, 124.342, 149.449)]
    {
        assert!((chance::deviations(at_0_05, degrees) - 1.645).abs() < 0.02, "{degrees}");
        assert!((chance::deviations(at_0_001, degrees) - 3.090).abs() < 0.03, "{degrees}");
    }
}

#[test]
fn what_is_drawn_by_chance_passes_and_what_is_not_does_not() {
    for count in [80, 512, 4096, 1 << 18] {
        assert_eq!(chance::faults(&drawn(count)), [""; 0], "{count}");
    }
    // A sealed file with one entry left open in it.
    let text = r#"{"session":{"practice":"trainer","peak":4,"note":"it was sore"}}"#.repeat(8);
    let mut planted = drawn(1 << 18);
    planted[70_000..70_000 + text.len()].copy_from_slice(text.as_bytes());
    assert!(!chance::faults(&planted).is_empty(), "512 bytes of text in 256 KiB");
    assert!(!chance::faults(&text.as_bytes()[..80]).is_empty(), "80 bytes of text alone");
    let mut again = drawn(2048);
    again.extend_from_within(..);
    again.extend_from_within(..);
    again.extend_from_within(..);
    assert!(!chance::faults(&again).is_empty(), "the same bytes eight times");
    let steps: Vec<u8> = (0..=255).cycle().take(1 << 14).collect();
    assert!(!chance::faults(&steps).is_empty(), "too even to be chance");
}

#[test]
fn a_file_that_is_not_as_documented_is_a_fault() {
    let needles = Needles::new(&WORDS);
    let one = |name: &str, bytes: Vec<u8>, mode| [Left { name: name.to_owned(), bytes, mode }];
    let said = |left: &[Left], kind| faults(left, &needles, |_| kind);
    let none: [String; 0] = [];
    assert_eq!(said(&one("a", drawn(900), Some(0o600)), Some(Kind::Boxed)), none);
    assert_eq!(
        said(&one("a", drawn(900), Some(0o640)), Some(Kind::Boxed)).len(),
        1,
        "others may read it"
    );
    assert_eq!(said(&one("a", drawn(900), None), None).len(), 1, "no such file");
    assert_eq!(said(&one("pelvic-pain", drawn(900), None), Some(Kind::Boxed)).len(), 1, "its name");
    assert_eq!(said(&one("a", vec![0], None), Some(Kind::Empty)).len(), 1, "not empty");
    for kind in [
        Kind::Keys,
        Kind::Journal,
        Kind::Backup,
        Kind::Aside,
        Kind::Sealed,
        Kind::Age,
        Kind::Mark,
        Kind::Tries,
    ] {
        assert_eq!(said(&one("a", drawn(9000), None), Some(kind)).len(), 1, "{kind:?}");
    }
    let words = [drawn(100), b"a note that somebody left".to_vec()].concat();
    assert_eq!(said(&one("a", words, None), Some(Kind::Sled)).len(), 1);
}
