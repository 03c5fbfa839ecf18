//! Ratings, session after session. A session without a rating leaves its column empty above a short stroke.

use frond_core::screens::{Dots, KeyMark};
use plotters::prelude::*;

use super::canvas::{Drawing, EDGE, HAIRLINE, HPos, QUIET, TEXT, VPos, WIDTH, drawing, letters};
use super::marks;

const HEIGHT: u32 = 270;
/// Where strokes for sessions without a rating stand, below nothing.
const UNRATED: f64 = -0.9;

pub(super) fn draw(dots: &Dots) -> Option<Drawing> {
    let many = i32::try_from(dots.columns.len()).ok()?;
    let (least, most) = (f64::from(dots.scale.0), f64::from(dots.scale.1));
    drawing((WIDTH, HEIGHT), |area| {
        area.draw(&Text::new(dots.axis.clone(), (4, 2), letters(QUIET, HPos::Left, VPos::Top)))?;
        let mut chart = ChartBuilder::on(area)
            .margin_top(24)
            .margin_right(10)
            .margin_bottom(26)
            .y_label_area_size(30)
            .build_cartesian_2d(-0.5..f64::from(many) - 0.5, least - 1.4..most + 1.6)?;
        chart
            .configure_mesh()
            .disable_x_mesh()
            .disable_x_axis()
            .y_labels(8)
            .y_label_formatter(&|at| {
                if *at < least || *at > most { String::new() } else { format!("{at:.0}") }
            })
            .label_style(letters(QUIET, HPos::Right, VPos::Center))
            .light_line_style(HAIRLINE.mix(0.0))
            .bold_line_style(HAIRLINE)
            .axis_style(EDGE)
            .draw()?;
        let at = |column: f64, value: f64| chart.backend_coord(&(column, value));
        for span in &dots.spans {
            let from = f64::from(i32::try_from(span.from).unwrap_or(0)) - 0.5;
            let to = f64::from(i32::try_from(span.to).unwrap_or(0)) - 0.5;
            let line = vec![at(from, least - 1.4), at(from, most + 1.6)];
            area.draw(&PathElement::new(line, EDGE.stroke_width(1)))?;
            let middle = at(f64::midpoint(from, to), most + 1.0);
            let number = span.number.to_string();
            area.draw(&Text::new(number, middle, letters(TEXT, HPos::Center, VPos::Center)))?;
        }
        let size = if many > 60 { 3 } else { 4 };
        for (column, session) in (0_i32..).zip(&dots.columns) {
            let column = f64::from(column);
            match session.peak {
                Some(peak) => {
                    let mark = KeyMark::Dot(session.mark);
                    marks::put(area, at(column, f64::from(peak)), size, mark)?;
                }
                None => marks::put(area, at(column, UNRATED), size, KeyMark::Unrated)?,
            }
        }
        let below = i32::try_from(HEIGHT - 18).unwrap_or(0);
        let (left, right) = (at(-0.5, least).0, at(f64::from(many) - 0.5, least).0);
        let style = |h| letters(QUIET, h, VPos::Top);
        area.draw(&Text::new(dots.ends.0.clone(), (left, below), style(HPos::Left)))?;
        area.draw(&Text::new(dots.ends.1.clone(), (right, below), style(HPos::Right)))?;
        Ok(())
    })
}
