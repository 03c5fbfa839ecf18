//! Lines laid on pages, and the document written: tagged, with title, language and an outline, each page with
//! its number. A heading never stands last on a page.

use std::num::NonZeroU16;

use frond_core::screens::Letter;
use krilla::configure::ConfigurationBuilder;
use krilla::configure::validate::Accessibility;
use krilla::destination::XyzDestination;
use krilla::geom::Point;
use krilla::metadata::{Metadata, TextDirection};
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::surface::Surface;
use krilla::tagging::{
    Artifact, ArtifactType, ContentTag, Identifier, ListNumbering, Node, SpanTag, Tag, TagGroup,
    TagTree,
};
use krilla::{Document, SerializeSettings};

use super::LetterError;
use super::block::{self, Kind};
use super::face::{Faces, Weight};
use super::lines::{HEIGHT, INDENT, MARGIN, Set, Style, WIDTH};

/// The mark of a point of a list.
const MARK: &str = "•";
/// Where the foot stands, from the top.
const FOOT: f32 = HEIGHT - MARGIN / 2.0;
const FOOT_SIZE: f32 = 8.5;

/// One line at its place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Placed {
    /// Which block.
    pub(super) block: usize,
    /// Which line of it.
    pub(super) line: usize,
    /// Its baseline, from the top.
    pub(super) y: f32,
}

/// Lays the lines on pages.
pub(super) fn lay(set: &[Set]) -> Vec<Vec<Placed>> {
    let bottom = HEIGHT - MARGIN;
    let mut pages: Vec<Vec<Placed>> = Vec::new();
    let mut page: Vec<Placed> = Vec::new();
    let mut y = MARGIN;
    for (index, block) in set.iter().enumerate() {
        let style = Style::of(block.kind);
        if !page.is_empty() {
            y += style.before;
        }
        // A heading takes the next block's first line with it.
        let next = set.get(index + 1).map_or(0.0, |next| {
            let next = Style::of(next.kind);
            next.before + next.leading
        });
        let lines = f32::from(u16::try_from(block.lines.len()).unwrap_or(u16::MAX));
        let whole = style.leading * lines + next;
        let heading = matches!(block.kind, Kind::Heading | Kind::Title);
        if heading && !page.is_empty() && y + whole > bottom {
            pages.push(std::mem::take(&mut page));
            y = MARGIN;
        }
        for line in 0..block.lines.len() {
            if y + style.leading > bottom && !page.is_empty() {
                pages.push(std::mem::take(&mut page));
                y = MARGIN;
            }
            y += style.leading;
            page.push(Placed { block: index, line, y });
        }
    }
    pages.push(page);
    pages
}

/// Writes the document.
pub(super) fn write(letter: &Letter, set: &[Set], faces: &Faces) -> Result<Vec<u8>, LetterError> {
    let configuration = ConfigurationBuilder::new()
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|_| LetterError::Document)?;
    let mut document =
        Document::new_with(SerializeSettings { configuration, ..SerializeSettings::default() });
    let direction =
        if letter.right_to_left { TextDirection::RightToLeft } else { TextDirection::LeftToRight };
    document.set_metadata(
        Metadata::new()
            .title(letter.title.clone())
            .language(letter.language.clone())
            .text_direction(direction)
            .creator("Frond".to_owned()),
    );
    let pages = lay(set);
    let mut marks: Vec<Vec<Identifier>> = vec![Vec::new(); set.len()];
    let mut labels: Vec<Option<Identifier>> = vec![None; set.len()];
    let mut outline = Outline::new();
    let (foot, _) = block::printable(&letter.foot, faces);
    let size = PageSettings::from_wh(WIDTH, HEIGHT).ok_or(LetterError::Document)?;
    for (number, placed) in pages.iter().enumerate() {
        let mut page = document.start_page_with(size.clone());
        let mut surface = page.surface();
        for one in placed {
            let Some(block) = set.get(one.block) else { continue };
            let Some(line) = block.lines.get(one.line) else { continue };
            if one.line == 0 && matches!(block.kind, Kind::Heading | Kind::Title) {
                let top = Point::from_xy(0.0, one.y - Style::of(block.kind).leading);
                outline.push_child(OutlineNode::new(
                    block.lines.join(" "),
                    XyzDestination::new(number, top),
                ));
            }
            let style = Style::of(block.kind);
            let mut x = MARGIN;
            if block.kind == Kind::Point {
                if one.line == 0 {
                    let label = tagged(&mut surface, faces, style, (x, one.y), MARK);
                    if let Some(slot) = labels.get_mut(one.block) {
                        *slot = Some(label);
                    }
                }
                x += INDENT;
            }
            // Lines of a block are words in a row: a space between them for whoever reads the text.
            let last = one.line + 1 == block.lines.len();
            let text = if last { line.clone() } else { format!("{line} ") };
            let mark = tagged(&mut surface, faces, style, (x, one.y), &text);
            if let Some(of_block) = marks.get_mut(one.block) {
                of_block.push(mark);
            }
        }
        let under = format!("{foot}    {} / {}", number + 1, pages.len());
        surface.start_tagged(ContentTag::Artifact(Artifact::with_kind(ArtifactType::Footer)));
        draw(&mut surface, faces, Weight::Regular, FOOT_SIZE, (MARGIN, FOOT), &under);
        surface.end_tagged();
        surface.finish();
        page.finish();
    }
    document.set_outline(outline);
    document.set_tag_tree(tree(letter, set, marks, labels));
    document.finish().map_err(|_| LetterError::Document)
}

fn tagged(
    surface: &mut Surface<'_>,
    faces: &Faces,
    style: Style,
    at: (f32, f32),
    text: &str,
) -> Identifier {
    let mark = surface.start_tagged(ContentTag::Span(SpanTag::empty()));
    draw(surface, faces, style.weight, style.size, at, text);
    surface.end_tagged();
    mark
}

fn draw(
    surface: &mut Surface<'_>,
    faces: &Faces,
    weight: Weight,
    size: f32,
    (x, y): (f32, f32),
    text: &str,
) {
    let glyphs = faces.glyphs(weight, text);
    surface.draw_glyphs(Point::from_xy(x, y), &glyphs, faces.font(weight), text, size, false);
}

/// What each piece of text is, in the order it is read.
fn tree(
    letter: &Letter,
    set: &[Set],
    marks: Vec<Vec<Identifier>>,
    labels: Vec<Option<Identifier>>,
) -> TagTree {
    let mut tree = TagTree::new().with_lang(Some(letter.language.clone()));
    let mut list: Option<TagGroup> = None;
    for ((block, marks), label) in set.iter().zip(marks).zip(labels) {
        let leaves: Vec<Node> = marks.into_iter().map(Node::from).collect();
        if block.kind == Kind::Point {
            let mut item = TagGroup::new(Tag::LI);
            if let Some(label) = label {
                item.push(TagGroup::with_children(Tag::Lbl, vec![label.into()]));
            }
            item.push(TagGroup::with_children(Tag::LBody, leaves));
            list.get_or_insert_with(|| TagGroup::new(Tag::L(ListNumbering::Disc))).push(item);
            continue;
        }
        if let Some(list) = list.take() {
            tree.push(list);
        }
        tree.push(match block.kind {
            Kind::Title => TagGroup::with_children(heading(1, block), leaves),
            Kind::Heading => TagGroup::with_children(heading(2, block), leaves),
            Kind::Paragraph | Kind::Line | Kind::Point => TagGroup::with_children(Tag::P, leaves),
        });
    }
    if let Some(list) = list {
        tree.push(list);
    }
    tree
}

fn heading(level: u16, block: &Set) -> Tag<krilla::tagging::kind::Hn> {
    Tag::Hn(NonZeroU16::new(level).unwrap_or(NonZeroU16::MIN), Some(block.lines.join(" ")))
}
