//! The marks. Each sort has its own shape, so that nothing hangs on colour.

use frond_core::screens::{ChartChoice, DotMark, KeyMark, SignalKind};
use plotters::prelude::*;

use super::canvas::{
    ACTION, Area, Done, Drawing, EDGE, HPos, SOFT, SURFACE, TEXT, VPos, drawing, letters,
};

/// Size of a mark alone.
const ALONE: (u32, u32) = (28, 20);

/// Draws a mark at a point, of this size.
pub(super) fn put(area: &Area<'_>, (x, y): (i32, i32), size: i32, mark: KeyMark) -> Done {
    match mark {
        KeyMark::Dot(DotMark::Finished) => circle(area, (x, y), size, true),
        KeyMark::Dot(DotMark::Stopped) => {
            let points = [(x, y - size - 1), (x + size + 1, y + size), (x - size - 1, y + size)];
            shape(area, &points, true, TEXT)
        }
        KeyMark::Dot(DotMark::Different) => {
            let side = size - 1;
            let points = [
                (x - side, y - side),
                (x + side, y - side),
                (x + side, y + side),
                (x - side, y + side),
            ];
            shape(area, &points, false, ACTION)
        }
        KeyMark::Unrated => line(area, &[(x, y - size), (x, y + size)], 2),
        KeyMark::Bar => bar(area, (x - 6, y - 6), (x + 6, y + 6)),
        KeyMark::Planned => planned(area, x, y - 7, y + 7, 5),
        KeyMark::Span => bar(area, (x - 11, y - 4), (x + 11, y + 4)),
        KeyMark::Step(number) => {
            let style = letters(TEXT, HPos::Center, VPos::Center);
            Ok(area.draw(&Text::new(number.to_string(), (x, y), style))?)
        }
        KeyMark::Signal(kind, choice) => signal(area, (x, y), size, kind, choice),
    }
}

fn signal(
    area: &Area<'_>,
    (x, y): (i32, i32),
    size: i32,
    kind: SignalKind,
    choice: ChartChoice,
) -> Done {
    let filled = choice == ChartChoice::Tried;
    match kind {
        SignalKind::Up => shape(
            area,
            &[(x, y - size), (x + size, y + size), (x - size, y + size)],
            filled,
            ACTION,
        ),
        SignalKind::Back => shape(
            area,
            &[(x, y + size), (x + size, y - size), (x - size, y - size)],
            filled,
            ACTION,
        ),
        SignalKind::Talk => circle(area, (x, y), size, false),
        SignalKind::Pause => {
            let stroke = |from: i32, to: i32| -> Done {
                let points =
                    vec![(from, y - size), (to, y - size), (to, y + size), (from, y + size)];
                Ok(area.draw(&Polygon::new(points, TEXT.filled()))?)
            };
            stroke(x - size, x - 2)?;
            stroke(x + 2, x + size)
        }
    }
}

fn circle(area: &Area<'_>, at: (i32, i32), size: i32, filled: bool) -> Done {
    let fill = if filled { ACTION } else { SURFACE };
    area.draw(&Circle::new(at, size, fill.filled()))?;
    Ok(area.draw(&Circle::new(at, size, ACTION.stroke_width(2)))?)
}

fn shape(area: &Area<'_>, points: &[(i32, i32)], filled: bool, ink: RGBColor) -> Done {
    let fill = if filled { ink } else { SURFACE };
    area.draw(&Polygon::new(points.to_vec(), fill.filled()))?;
    let around: Vec<(i32, i32)> = points.iter().chain(points.first()).copied().collect();
    Ok(area.draw(&PathElement::new(around, ink.stroke_width(2)))?)
}

/// A line.
pub(super) fn line(area: &Area<'_>, points: &[(i32, i32)], width: u32) -> Done {
    Ok(area.draw(&PathElement::new(points.to_vec(), TEXT.stroke_width(width)))?)
}

/// A bar.
pub(super) fn bar(area: &Area<'_>, from: (i32, i32), to: (i32, i32)) -> Done {
    area.draw(&Rectangle::new([from, to], SOFT.filled()))?;
    Ok(area.draw(&Rectangle::new([from, to], EDGE.stroke_width(1)))?)
}

/// What was planned: from the least to the most, with a cap at each end.
pub(super) fn planned(area: &Area<'_>, x: i32, top: i32, bottom: i32, half: i32) -> Done {
    line(area, &[(x, top), (x, bottom)], 2)?;
    line(area, &[(x - half, top), (x + half, top)], 2)?;
    line(area, &[(x - half, bottom), (x + half, bottom)], 2)
}

/// A mark alone.
pub(super) fn alone(mark: KeyMark) -> Option<Drawing> {
    let (width, height) = ALONE;
    drawing(ALONE, |area| {
        let middle =
            (i32::try_from(width / 2).unwrap_or(0), i32::try_from(height / 2).unwrap_or(0));
        put(area, middle, 5, mark)
    })
}
