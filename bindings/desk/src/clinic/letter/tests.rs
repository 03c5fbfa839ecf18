//! The letter on paper, from the invented scenario. That other programs read the file is checked in
//! `tests/letter`.

use frond_core::screens::{Agreed, Letter, LetterReader, LetterTyped};
use frond_core::summary::{DiaryId, DiaryIdentity, Facts, Selection, Summary};
use frond_core::words::Words;

use super::block::{Kind, blocks, printable};
use super::face::Faces;
use super::lines::{HEIGHT, INDENT, MARGIN, Style, WIDTH, set, wrap};
use super::{letter_pdf, pages};

fn letter(request: &str) -> Letter {
    let (entries, end) = crate::scenario::played();
    let key = frond_core::sealing::SigningKey::from_seed(&zeroize::Zeroizing::new([7; 32]));
    let identity = DiaryIdentity { id: DiaryId([1; 16]), key };
    let summary = Summary::of(entries, &identity, &Selection::default(), end).unwrap();
    let typed = LetterTyped {
        person: "Invented Person".to_owned().try_into().unwrap(),
        known_by: None,
        to: "Dr Invented\nAn Invented Street".to_owned().try_into().unwrap(),
        from: "Ida Marlowe (invented)".to_owned().try_into().unwrap(),
        reached_at: None,
        date: end.day(),
        view: None,
        next: None,
        request: request.to_owned().try_into().unwrap(),
    };
    let facts = Facts::of(&summary).unwrap();
    let agreed = Agreed::ticked(true).unwrap();
    Letter::new(&typed, &facts, agreed, &Words::for_language("en"), LetterReader::Clinician)
}

#[test]
fn it_is_a_pdf_and_the_same_letter_makes_the_same_file() {
    let letter = letter("Please see her again.");
    let pdf = letter_pdf(&letter).unwrap();
    assert!(pdf.starts_with(b"%PDF-1.7"));
    assert_eq!(pdf, letter_pdf(&letter).unwrap());
    // Two whole fonts would be a megabyte: they are embedded as subsets.
    assert!(pdf.len() < 120_000, "{} bytes", pdf.len());
}

#[test]
fn no_line_is_wider_than_the_page_and_no_word_is_lost() {
    let faces = Faces::new().unwrap();
    let words = "wiki ".repeat(30) + &"W".repeat(400) + " é e\u{301} Ω я end";
    let style = Style::of(Kind::Paragraph);
    for room in [60.0, 200.0, WIDTH - 2.0 * MARGIN - INDENT] {
        let lines = wrap(&words, room, style, &faces);
        for line in &lines {
            assert!(faces.width(style.weight, line, style.size) <= room);
        }
        let without_spaces = |text: &str| text.chars().filter(|c| *c != ' ').collect::<String>();
        assert_eq!(without_spaces(&lines.concat()), without_spaces(&words));
    }
}

#[test]
fn a_long_letter_breaks_pages_and_no_heading_stands_last_on_one() {
    let faces = Faces::new().unwrap();
    let letter = letter(&"A long request, word for word. ".repeat(60));
    let mut long = letter.clone();
    for _ in 0..6 {
        long.parts.extend(letter.parts.clone());
    }
    let set = set(&blocks(&long, &faces), &faces);
    let laid = pages::lay(&set);
    assert!(laid.len() > 4, "{} pages", laid.len());
    for page in &laid {
        let last = page.last().unwrap();
        assert!(last.y <= HEIGHT - MARGIN + 0.01);
        assert!(!matches!(set[last.block].kind, Kind::Heading | Kind::Title));
    }
    let placed: usize = laid.iter().map(Vec::len).sum();
    assert_eq!(placed, set.iter().map(|block| block.lines.len()).sum::<usize>());
    assert!(letter_pdf(&long).unwrap().len() > 5_000);
}

#[test]
fn a_character_that_the_fonts_lack_is_said_and_never_dropped() {
    let faces = Faces::new().unwrap();
    for text in ["Zażółć gęślą jaźń", "Ελληνικά", "Русский", "ñandú ¿qué?", "½ … “quoted” «so»"]
    {
        assert_eq!(printable(text, &faces), (text.to_owned(), false));
    }
    assert_eq!(printable("−2 ≤ 3 → 4", &faces), ("–2 <= 3 -> 4".to_owned(), false));
    let (text, lacking) = printable("שלום", &faces);
    assert!(lacking);
    assert_eq!(text, "[U+05E9][U+05DC][U+05D5][U+05DD]");
    let written = blocks(&letter("Ask שלום."), &faces);
    let last = written.last().unwrap();
    assert!(last.text.contains("font lacks"), "the letter says so");
    assert!(!blocks(&letter("Ask."), &faces).iter().any(|block| block.text.contains("font lacks")));
    // Invisible marks of direction go, and no kind of break stays inside a line.
    assert_eq!(printable("a\u{202e}b\u{2028}c\td", &faces).0, "ab c d");
}
