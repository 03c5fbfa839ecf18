//! Steps over the days: a row for each, the first lowest; what was suggested stands on the row of the step in use.

use frond_core::screens::{KeyMark, Timeline};
use plotters::prelude::*;

use super::canvas::{Drawing, EDGE, HAIRLINE, HPos, QUIET, TEXT, VPos, WIDTH, drawing, letters};
use super::marks;

/// Height of a row.
const ROW: u32 = 34;
/// The most rows that are drawn at this height; more are drawn closer.
const ROOMY: u32 = 14;

pub(super) fn draw(timeline: &Timeline) -> Option<Drawing> {
    let rows = u32::try_from(timeline.steps.len()).ok()?;
    let height = 40 + ROW * rows.min(ROOMY);
    drawing((WIDTH, height), |area| {
        let days = f64::from(timeline.days);
        let chart = ChartBuilder::on(area)
            .margin_top(6)
            .margin_right(12)
            .margin_bottom(28)
            .margin_left(32)
            .build_cartesian_2d(0.0..days, -0.5..f64::from(rows) - 0.5)?;
        let at = |day: f64, row: f64| chart.backend_coord(&(day, row));
        let row_of = |step: usize| f64::from(u32::try_from(step).unwrap_or(0));
        for step in 0..timeline.steps.len() {
            let row = row_of(step);
            let line = vec![at(0.0, row), at(days, row)];
            area.draw(&PathElement::new(line, HAIRLINE.stroke_width(1)))?;
            let (_, y) = at(0.0, row);
            let number = (step + 1).to_string();
            area.draw(&Text::new(number, (18, y), letters(TEXT, HPos::Center, VPos::Center)))?;
        }
        let axis = vec![at(0.0, -0.5), at(days, -0.5)];
        area.draw(&PathElement::new(axis, EDGE.stroke_width(1)))?;
        for bar in &timeline.bars {
            let (left, y) = at(f64::from(bar.from), row_of(bar.step));
            let (right, _) = at(f64::from(bar.to), row_of(bar.step));
            marks::bar(area, (left, y - 6), (right.max(left + 2), y + 6))?;
        }
        for signal in &timeline.signals {
            let place = at(f64::from(signal.day) + 0.5, row_of(signal.step));
            marks::put(area, place, 6, KeyMark::Signal(signal.kind, signal.choice))?;
        }
        let below = i32::try_from(height - 20).unwrap_or(0);
        let (left, right) = (at(0.0, 0.0).0, at(days, 0.0).0);
        let style = |h| letters(QUIET, h, VPos::Top);
        area.draw(&Text::new(timeline.ends.0.clone(), (left, below), style(HPos::Left)))?;
        area.draw(&Text::new(timeline.ends.1.clone(), (right, below), style(HPos::Right)))?;
        Ok(())
    })
}
