//! Blocks set in lines of measured width.

use super::block::{Block, Kind};
use super::face::{Faces, Weight};

/// A4, in points.
pub(super) const WIDTH: f32 = 595.0;
/// A4, in points.
pub(super) const HEIGHT: f32 = 842.0;
/// On every side.
pub(super) const MARGIN: f32 = 64.0;
/// How far the text of a point stands from its mark's beginning.
pub(super) const INDENT: f32 = 14.0;

/// How a kind of block looks.
#[derive(Clone, Copy, Debug)]
pub(super) struct Style {
    pub(super) weight: Weight,
    /// Font size, points.
    pub(super) size: f32,
    /// From one line to the next, points.
    pub(super) leading: f32,
    /// Room before it, points; none at the top of a page.
    pub(super) before: f32,
}

impl Style {
    pub(super) fn of(kind: Kind) -> Self {
        let style = |weight, size, leading, before| Self { weight, size, leading, before };
        match kind {
            Kind::Title => style(Weight::Bold, 17.0, 22.0, 0.0),
            Kind::Heading => style(Weight::Bold, 12.5, 17.0, 14.0),
            Kind::Paragraph => style(Weight::Regular, 10.5, 15.0, 6.0),
            Kind::Line => style(Weight::Regular, 10.5, 15.0, 1.0),
            Kind::Point => style(Weight::Regular, 10.5, 15.0, 4.0),
        }
    }
}

/// A block set in lines.
#[derive(Clone, Debug)]
pub(super) struct Set {
    pub(super) kind: Kind,
    pub(super) lines: Vec<String>,
}

/// Sets every block.
pub(super) fn set(blocks: &[Block], faces: &Faces) -> Vec<Set> {
    blocks
        .iter()
        .map(|block| {
            let indent = if block.kind == Kind::Point { INDENT } else { 0.0 };
            let room = WIDTH - 2.0 * MARGIN - indent;
            let style = Style::of(block.kind);
            Set { kind: block.kind, lines: wrap(&block.text, room, style, faces) }
        })
        .collect()
}

/// Words laid into lines no wider than the room; a word that is wider by itself is cut.
pub(super) fn wrap(text: &str, room: f32, style: Style, faces: &Faces) -> Vec<String> {
    let fits = |line: &str| faces.width(style.weight, line, style.size) <= room;
    let mut lines: Vec<String> = Vec::new();
    let mut line = String::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        let longer = if line.is_empty() { word.to_owned() } else { format!("{line} {word}") };
        if fits(&longer) {
            line = longer;
            continue;
        }
        if !line.is_empty() {
            lines.push(std::mem::take(&mut line));
        }
        if fits(word) {
            word.clone_into(&mut line);
            continue;
        }
        for character in word.chars() {
            let mut longer = line.clone();
            longer.push(character);
            if fits(&longer) || line.is_empty() {
                line = longer;
            } else {
                lines.push(std::mem::replace(&mut line, character.to_string()));
            }
        }
    }
    if !line.is_empty() {
        lines.push(line);
    }
    lines
}
