//! How the charts of a summary are drawn. Decides scales, places and shapes, with `plotters`; leaves what is drawn
//! and every word to the core's record, and colours and letters to the style sheet: a drawing names none of them by
//! value, so that it is right in the dark, on paper and in forced colours.
//!
//! No word of a person's own is drawn: steps stand as numbers, their names beside the drawing.

mod canvas;
mod dots;
mod marks;
mod timeline;
mod weeks;

use frond_core::screens::{Chart, Drawn, KeyMark};

/// A chart as SVG, to stand inside a page; `None` where it cannot be drawn: its table says the same.
pub(crate) fn draw(chart: &Chart) -> Option<String> {
    let drawing = match &chart.drawn {
        Drawn::Dots(dots) => dots::draw(dots),
        Drawn::Weeks(weeks) => weeks::draw(weeks),
        Drawn::Timeline(timeline) => timeline::draw(timeline),
    }?;
    Some(drawing.told(chart.name, &chart.title, &chart.says))
}

/// A mark alone, to stand before what it means; it is not told to who does not see it.
pub(crate) fn mark(mark: KeyMark) -> Option<String> {
    marks::alone(mark).map(|drawing| drawing.silent())
}

#[cfg(test)]
mod tests;
