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
    let mut lacking = false;
    let mut blocks = Vec::new();
    let mut push = |kind, text: &str| {
        let (text, lacks) = printable(text, faces);
        lacking |= lacks;
        if !text.is_empty() {
            blocks.push(Block { kind, text });
        }
    };
    push(Kind::Title, &letter.title);
    push(Kind::Paragraph, &letter.date);
    letter.to.iter().for_each(|line| push(Kind::Line, line));
    letter.about.iter().for_each(|line| push(Kind::Paragraph, line));
    for part in &letter.parts {
        if let Some(heading) = &part.heading {
            push(Kind::Heading, heading);
        }
        part.paragraphs.iter().for_each(|text| push(Kind::Paragraph, text));
        part.points.iter().for_each(|text| push(Kind::Point, text));
    }
    letter.from.iter().for_each(|line| push(Kind::Line, line));
    if lacking {
        push(Kind::Paragraph, &letter.cannot_print);
    }
    blocks
}

/// A text as these fonts can print it, and whether they lack something of it: the number of each character
/// that they lack stands in its place. Marks that only say which way text runs are left out, and every
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
        } else {
            lacking = true;
            printed.push_str(&format!("[U+{:04X}]", u32::from(character)));
        }
    }
    (printed.split(' ').filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" "), lacking)
}

/// Marks without width: of direction, joiners and the byte order mark.
fn is_direction_mark(character: char) -> bool {
    matches!(character, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}
