//! A signed programme as everything a clinician can give out of her hand: the file, and the QR code with its
//! spoken words. Decides how a code is drawn, and that one which would be too large is not. Leaves what is
//! signed and sealed to the core, and how it is offered to the pages and the command line.

use std::fmt::Write;

use fast_qr::{ECL, Mode, QRBuilder, QRCode};
use frond_core::handover::{
    Correction, HandOver, HandOverError, LinkTo, QR_VERSION_MOST, SpokenWords,
};
use frond_core::ports::Random;

/// White around a code, in squares: ISO/IEC 18004 asks for four.
const QUIET: usize = 4;

/// Who can read a code.
pub(crate) enum Way {
    /// Whoever knows these words.
    Sealed(SpokenWords),
    /// Anybody who sees it.
    Open,
}

/// A code, drawn.
pub(crate) struct Code {
    /// The link it carries.
    pub(crate) link: String,
    /// Its version, 1 to 25: the larger, the finer its squares.
    pub(crate) version: u8,
    /// The drawing: SVG with a title and a description.
    pub(crate) svg: String,
}

/// What a drawing says to whoever does not see it.
pub(crate) struct Says<'a> {
    /// Its name.
    pub(crate) title: &'a str,
    /// What it is for.
    pub(crate) description: &'a str,
}

/// The code of a programme.
///
/// # Errors
/// [`HandOverError::TooLarge`] where one code does not hold it; hand over the file then.
pub(crate) fn code(
    of: &HandOver,
    way: &Way,
    says: &Says<'_>,
    random: &dyn Random,
) -> Result<Code, HandOverError> {
    let to = match way {
        Way::Sealed(words) => LinkTo::Words(words),
        Way::Open => LinkTo::Anybody,
    };
    draw(of.link(to, random)?, says)
}

/// Draws a link.
pub(crate) fn draw(link: String, says: &Says<'_>) -> Result<Code, HandOverError> {
    let too_large = HandOverError::TooLarge { characters: link.len() };
    let level = match Correction::for_link(link.len()) {
        Some(Correction::Medium) => ECL::M,
        Some(Correction::Low) => ECL::L,
        None => return Err(too_large),
    };
    let built = QRBuilder::new(link.as_str()).mode(Mode::Alphanumeric).ecl(level).build();
    let Ok(code) = built else { return Err(too_large) };
    match version(&code) {
        Some(version) if version <= QR_VERSION_MOST => {
            let svg = svg(&code, says);
            Ok(Code { link, version, svg })
        }
        _ => Err(too_large),
    }
}

/// A code of version v has 4 v + 17 squares on each side.
fn version(code: &QRCode) -> Option<u8> {
    u8::try_from(code.size.checked_sub(17)? / 4).ok()
}

/// Dark squares in runs, row by row, on white whatever the page's colours are: a camera needs both.
fn svg(code: &QRCode, says: &Says<'_>) -> String {
    let side = code.size + 2 * QUIET;
    let mut path = String::new();
    for row in 0..code.size {
        let dark = |column: usize| column < code.size && code[row][column].value();
        let mut column = 0;
        while column < code.size {
            let run = (column..).take_while(|at| dark(*at)).count();
            if run > 0 {
                // Writing into memory does not fail.
                let _ = write!(path, "M{} {}h{run}v1h-{run}z", column + QUIET, row + QUIET);
            }
            column += run.max(1);
        }
    }
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {side} {side}\" role=\"img\" \
         aria-labelledby=\"code-title code-description\" shape-rendering=\"crispEdges\">\
         <title id=\"code-title\">{}</title><desc id=\"code-description\">{}</desc>\
         <rect width=\"{side}\" height=\"{side}\" fill=\"#fff\"/><path d=\"{path}\" fill=\"#000\"/></svg>",
        escaped(says.title),
        escaped(says.description),
    )
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

#[cfg(test)]
mod tests;
