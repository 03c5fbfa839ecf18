//! The two fonts: what they lack, how wide a text is, which glyphs it takes.

use krilla::text::{Font, GlyphId, KrillaGlyph};
use rustybuzz::{Face, UnicodeBuffer};

use super::LetterError;

/// Noto Sans, SIL Open Font License 1.1; see `fonts/LICENSE-OFL.txt`.
const REGULAR: &[u8] = include_bytes!("../../../fonts/NotoSans-Regular.ttf");
const BOLD: &[u8] = include_bytes!("../../../fonts/NotoSans-Bold.ttf");

/// Which of the two.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Weight {
    /// For text.
    Regular,
    /// For headings.
    Bold,
}

/// One font, to measure with and to write with.
struct Type {
    face: Face<'static>,
    font: Font,
}

impl Type {
    fn new(bytes: &'static [u8]) -> Result<Self, LetterError> {
        Ok(Self {
            face: Face::from_slice(bytes, 0).ok_or(LetterError::Font)?,
            font: Font::new(bytes.into(), 0).ok_or(LetterError::Font)?,
        })
    }
}

/// Both fonts.
pub(super) struct Faces {
    regular: Type,
    bold: Type,
}

impl Faces {
    pub(super) fn new() -> Result<Self, LetterError> {
        Ok(Self { regular: Type::new(REGULAR)?, bold: Type::new(BOLD)? })
    }

    fn of(&self, weight: Weight) -> &Type {
        match weight {
            Weight::Regular => &self.regular,
            Weight::Bold => &self.bold,
        }
    }

    pub(super) fn font(&self, weight: Weight) -> Font {
        self.of(weight).font.clone()
    }

    /// Whether both fonts have it.
    pub(super) fn has(&self, character: char) -> bool {
        let has = |one: &Type| one.face.glyph_index(character).is_some();
        has(&self.regular) && has(&self.bold)
    }

    /// The glyphs of a text that runs from left to right, their advances in units of the font size.
    pub(super) fn glyphs(&self, weight: Weight, text: &str) -> Vec<KrillaGlyph> {
        let face = &self.of(weight).face;
        let mut buffer = UnicodeBuffer::new();
        buffer.push_str(text);
        buffer.guess_segment_properties();
        buffer.set_direction(rustybuzz::Direction::LeftToRight);
        let shaped = rustybuzz::shape(face, &[], buffer);
        // A font has some thousand units an em: exact.
        #[allow(clippy::cast_precision_loss, reason = "font units")]
        let em = |units: i32| units as f32 / face.units_per_em() as f32;
        let infos = shaped.glyph_infos();
        let ends = infos.iter().enumerate().map(|(at, one)| {
            let later = infos.iter().skip(at).map(|next| next.cluster);
            let next = later.into_iter().find(|cluster| *cluster > one.cluster);
            next.map_or(text.len(), |cluster| usize::try_from(cluster).unwrap_or(text.len()))
        });
        infos
            .iter()
            .zip(shaped.glyph_positions())
            .zip(ends)
            .map(|((info, at), end)| {
                let start = usize::try_from(info.cluster).unwrap_or_default();
                KrillaGlyph::new(
                    GlyphId::new(info.glyph_id),
                    em(at.x_advance),
                    em(at.x_offset),
                    em(at.y_offset),
                    em(at.y_advance),
                    start..end,
                    None,
                )
            })
            .collect()
    }

    /// How wide a text is at a size, in points.
    pub(super) fn width(&self, weight: Weight, text: &str, size: f32) -> f32 {
        self.glyphs(weight, text).iter().map(|glyph| glyph.x_advance).sum::<f32>() * size
    }
}
