//! A letter as blocks, in the order they are read; and its text as it can be printed.

use frond_core::screens::Letter;

use super::face::Faces;

/// What a block is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    /// The title.
    Title,
    /// The heading of a part.
    Heading,
    /// A paragraph.
    Paragraph,
    /// A line of an address or the like: close to the next.
    Line,
    /// A point of a list.
    Point,
}

/// A block.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Block {
    pub(super) kind: Kind,
    pub(super) text: String,
}

/// The blocks of a letter. Where a character cannot be printed, the last block says so.
pub(super) fn blocks(letter: &Letter, faces: &Faces) -> Vec<Block> {
    let mut texts: Vec<(Kind, &str)> =
        vec![(Kind::Title, &letter.title), (Kind::Paragraph, &letter.date)];
    texts.extend(letter.to.iter().map(|line| (Kind::Line, line.as_str())));
    texts.extend(letter.about.iter().map(|line| (Kind::Paragraph, line.as_str())));
    for part in &letter.parts {
        texts.extend(part.heading.iter().map(|text| (Kind::Heading, text.as_str())));
        texts.extend(part.paragraphs.iter().map(|text| (Kind::Paragraph, text.as_str())));
        texts.extend(part.points.iter().map(|text| (Kind::Point, text.as_str())));
    }
    texts.extend(letter.from.iter().map(|line| (Kind::Line, line.as_str())));
    let mut lacking = false;
    let mut blocks = Vec::with_capacity(texts.len() + 1);
    for (kind, text) in texts {
        let (text, lacks) = printable(text, faces);
        lacking |= lacks;
        if !text.is_empty() {
            blocks.push(Block { kind, text });
        }
    }
    if lacking {
        blocks
            .push(Block { kind: Kind::Paragraph, text: printable(&letter.cannot_print, faces).0 });
    }
    blocks
}

/// A text as these fonts can print it, and whether they lack something of it: the number of each character
/// that they lack stands in its place, or its usual spelling where it has one. Marks that only say which way text runs are left out, and every
/// kind of space is a plain one.
pub(super) fn printable(text: &str, faces: &Faces) -> (String, bool) {
    let mut lacking = false;
    let mut printed = String::with_capacity(text.len());
    for character in text.chars() {
        if is_direction_mark(character) {
            continue;
        }
        if character.is_whitespace() || character.is_control() {
            printed.push(' ');
        } else if faces.has(character) {
            printed.push(character);
        } else if let Some(usual) = spelt(character) {
            printed.push_str(usual);
        } else {
            lacking = true;
            printed.push_str(&format!("[U+{:04X}]", u32::from(character)));
        }
    }
    (printed.split(' ').filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" "), lacking)
}

/// How signs that the fonts lack are usually spelt without them.
fn spelt(character: char) -> Option<&'static str> {
    Some(match character {
        '\u{2212}' => "–",
        '≤' => "<=",
        '≥' => ">=",
        '≈' => "~",
        '≠' => "!=",
        '→' => "->",
        '←' => "<-",
        _ => return None,
    })
}

/// Marks without width: of direction, joiners and the byte order mark.
fn is_direction_mark(character: char) -> bool {
    matches!(character, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}
