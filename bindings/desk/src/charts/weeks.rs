//! Practised beside planned, week after week: a bar, and over it what was planned from least to most.

use frond_core::screens::Weeks;
use plotters::prelude::*;

use super::canvas::{Drawing, EDGE, HAIRLINE, HPos, QUIET, VPos, WIDTH, drawing, letters};
use super::marks;

const HEIGHT: u32 = 220;
/// The most weeks that carry their day beneath.
const LABELLED: usize = 8;

pub(super) fn draw(weeks: &Weeks) -> Option<Drawing> {
    let many = i32::try_from(weeks.weeks.len()).ok()?;
    let top = f64::from(weeks.top);
    drawing((WIDTH, HEIGHT), |area| {
        area.draw(&Text::new(weeks.axis.clone(), (4, 2), letters(QUIET, HPos::Left, VPos::Top)))?;
        let mut chart = ChartBuilder::on(area)
            .margin_top(24)
            .margin_right(10)
            .margin_bottom(26)
            .y_label_area_size(44)
            .build_cartesian_2d(-0.6..f64::from(many) - 0.4, 0.0..top * 1.04)?;
        chart
            .configure_mesh()
            .disable_x_mesh()
            .disable_x_axis()
            .y_labels(8)
            .y_label_formatter(&|at| format!("{at:.0}"))
            .label_style(letters(QUIET, HPos::Right, VPos::Center))
            .light_line_style(HAIRLINE.mix(0.0))
            .bold_line_style(HAIRLINE)
            .axis_style(EDGE)
            .draw()?;
        let at = |column: f64, value: f64| chart.backend_coord(&(column, value));
        let every = weeks.weeks.len().div_ceil(LABELLED).max(1);
        for (index, week) in weeks.weeks.iter().enumerate() {
            let column = f64::from(i32::try_from(index).unwrap_or(0));
            let (left, right) = (at(column - 0.32, 0.0).0, at(column + 0.32, 0.0).0);
            let practised = at(column, f64::from(week.practised)).1;
            if week.practised > 0 {
                marks::bar(area, (left, practised), (right, at(column, 0.0).1))?;
            }
            if let Some((least, most)) = week.planned {
                let ends = (at(column, f64::from(most)).1, at(column, f64::from(least)).1);
                marks::planned(
                    area,
                    at(column, 0.0).0,
                    ends.0,
                    ends.1,
                    ((right - left) / 3).clamp(2, 6),
                )?;
            }
            if index.is_multiple_of(every) {
                let below = i32::try_from(HEIGHT - 18).unwrap_or(0);
                let style = letters(QUIET, HPos::Center, VPos::Top);
                area.draw(&Text::new(week.label.clone(), (at(column, 0.0).0, below), style))?;
            }
        }
        Ok(())
    })
}
