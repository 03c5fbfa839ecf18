//! A drawing surface. Decides how what `plotters` writes becomes part of a page: colours become the custom
//! properties of the style sheet, letters those of the page, and title and description stand inside.

use plotters::coord::Shift;
use plotters::prelude::*;

/// Width of a chart, in sixteenths of the reader's letter size.
pub(super) const WIDTH: u32 = 512;
/// Size of letters in a chart, in the same unit; `plotters` takes it times 1.24.
const LETTERS: f64 = 13.0;

/// Colours by name. `plotters` knows values only, so each name has a value of its own that is replaced.
pub(super) const TEXT: RGBColor = RGBColor(1, 0, 0);
pub(super) const QUIET: RGBColor = RGBColor(2, 0, 0);
pub(super) const EDGE: RGBColor = RGBColor(3, 0, 0);
pub(super) const HAIRLINE: RGBColor = RGBColor(4, 0, 0);
pub(super) const ACTION: RGBColor = RGBColor(5, 0, 0);
pub(super) const SOFT: RGBColor = RGBColor(6, 0, 0);
pub(super) const SURFACE: RGBColor = RGBColor(7, 0, 0);

const NAMES: [(RGBColor, &str); 7] = [
    (TEXT, "text"),
    (QUIET, "quiet"),
    (EDGE, "edge"),
    (HAIRLINE, "hairline"),
    (ACTION, "action"),
    (SOFT, "soft"),
    (SURFACE, "surface"),
];

/// Where is drawn.
pub(super) type Area<'a> = DrawingArea<SVGBackend<'a>, Shift>;
/// What drawing may answer. Memory does not fail, so what went wrong is of no use to anybody.
pub(super) type Done = Result<(), Undrawn>;

/// It could not be drawn.
pub(super) struct Undrawn;

impl<E: std::error::Error + Send + Sync> From<DrawingAreaErrorKind<E>> for Undrawn {
    fn from(_: DrawingAreaErrorKind<E>) -> Self {
        Self
    }
}

/// A finished drawing.
pub(super) struct Drawing {
    inside: String,
    size: (u32, u32),
}

/// Draws on a new surface.
pub(super) fn drawing(size: (u32, u32), draw: impl FnOnce(&Area<'_>) -> Done) -> Option<Drawing> {
    let mut svg = String::new();
    {
        let area = SVGBackend::with_string(&mut svg, size).into_drawing_area();
        draw(&area).ok()?;
        area.present().ok()?;
    }
    let inside = svg.split_once('>')?.1;
    let inside = inside.rsplit_once("</svg>")?.0;
    Some(Drawing { inside: with_names(inside), size })
}

fn with_names(svg: &str) -> String {
    let mut svg = svg.replace(" font-family=\"sans-serif\"", "").replace(" opacity=\"1\"", "");
    for (RGBColor(r, g, b), name) in NAMES {
        svg = svg.replace(&format!("\"#{r:02X}{g:02X}{b:02X}\""), &format!("\"var(--{name})\""));
    }
    svg
}

/// Letters in this colour, at this place of their box.
pub(super) fn letters(colour: RGBColor, h: HPos, v: VPos) -> TextStyle<'static> {
    ("sans-serif", LETTERS * 1.24).into_font().color(&colour).pos(Pos::new(h, v))
}

pub(super) use plotters::style::text_anchor::{HPos, Pos, VPos};

impl Drawing {
    fn opening(&self) -> String {
        let (width, height) = self.size;
        // Numbers and axes run one way in every script; what is drawn does not mirror by itself.
        format!("<svg class=\"drawing\" viewBox=\"0 0 {width} {height}\" direction=\"ltr\"")
    }

    /// With its title and description.
    pub(super) fn told(&self, name: &str, title: &str, says: &str) -> String {
        format!(
            "{} role=\"img\" aria-labelledby=\"{name}-title\" aria-describedby=\"{name}-says\">\
             <title id=\"{name}-title\">{}</title><desc id=\"{name}-says\">{}</desc>{}</svg>",
            self.opening(),
            escaped(title),
            escaped(says),
            self.inside
        )
    }

    /// For those who see it alone.
    pub(super) fn silent(&self) -> String {
        format!("{} aria-hidden=\"true\">{}</svg>", self.opening(), self.inside)
    }
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}
