//! What every drawing must be, whatever is drawn. The summaries are invented.

use frond_core::screens::{ChartsScreen, ReadingScreen};
use frond_core::words::Words;
use frond_tests::invented::Invented;

use super::*;

fn charts(number: u64, language: &str) -> ChartsScreen {
    let words = Words::for_language(language);
    ChartsScreen::new(&Invented::new(number, 3).summary(), &words).unwrap()
}

#[test]
fn each_is_an_image_with_title_and_description_and_no_style_of_its_own() {
    for number in 0..12 {
        for language in ["en", "es", "ar-XB"] {
            for chart in charts(number, language).charts {
                let svg = draw(&chart).unwrap();
                assert!(svg.starts_with("<svg class=\"drawing\" viewBox=\"0 0 "), "{svg}");
                assert!(svg.ends_with("</svg>"));
                assert!(svg.contains("role=\"img\""));
                let name = chart.name;
                for id in [format!("{name}-title"), format!("{name}-says")] {
                    assert_eq!(svg.matches(&format!("id=\"{id}\"")).count(), 1, "{id}");
                    assert!(svg.contains(&format!("by=\"{id}\"")), "{id}");
                }
                for never in ["style=", "#0", "font-family", "<script", "href", "<image", "NaN"] {
                    assert!(!svg.contains(never), "{name}: {never}");
                }
                assert!(svg.contains("var(--text)") || svg.contains("var(--action)"));
            }
        }
    }
}

#[test]
fn all_colours_have_names_of_the_style_sheet() {
    let css = crate::pages::look::style_sheet();
    for chart in charts(1, "en").charts {
        let svg = draw(&chart).unwrap();
        for used in svg.split("var(--").skip(1).filter_map(|rest| rest.split(')').next()) {
            assert!(css.contains(&format!("--{used}:")), "{used}");
        }
        for attribute in ["fill=\"", "stroke=\""] {
            for value in svg.split(attribute).skip(1).filter_map(|rest| rest.split('"').next()) {
                assert!(value == "none" || value.starts_with("var(--"), "{attribute}{value}");
            }
        }
    }
}

#[test]
fn every_rated_session_is_a_mark_and_every_unrated_one_leaves_its_place_empty() {
    let mut unrated = 0;
    for number in 0..12 {
        for chart in charts(number, "en").charts {
            let Drawn::Dots(dots) = &chart.drawn else { continue };
            let finished = |column: &&frond_core::screens::RatedColumn| {
                column.peak.is_some() && column.mark == frond_core::screens::DotMark::Finished
            };
            let svg = draw(&chart).unwrap();
            // A dot is drawn twice: its middle and its edge.
            let circles = svg.matches("<circle").count();
            assert_eq!(circles, 2 * dots.columns.iter().filter(finished).count());
            unrated += dots.columns.iter().filter(|column| column.peak.is_none()).count();
            let rows = &chart.table.rows;
            assert_eq!(rows.len(), dots.columns.len(), "the table says as much as the drawing");
        }
    }
    assert!(unrated > 5, "too few to tell anything");
}

#[test]
fn marks_differ_in_shape_and_not_only_in_colour() {
    use frond_core::screens::{ChartChoice, DotMark, SignalKind};
    let mut all: Vec<KeyMark> =
        vec![KeyMark::Unrated, KeyMark::Bar, KeyMark::Planned, KeyMark::Span];
    all.extend([DotMark::Finished, DotMark::Stopped, DotMark::Different].map(KeyMark::Dot));
    for kind in [SignalKind::Up, SignalKind::Back] {
        all.extend(
            [ChartChoice::Tried, ChartChoice::Not].map(|choice| KeyMark::Signal(kind, choice)),
        );
    }
    all.extend(
        [SignalKind::Talk, SignalKind::Pause].map(|kind| KeyMark::Signal(kind, ChartChoice::Not)),
    );
    let shape = |mark: KeyMark| {
        let svg = super::mark(mark).unwrap();
        assert!(svg.contains("aria-hidden=\"true\""));
        // Without any colour, filled or hollow still is a difference.
        let mut svg = svg.replace("var(--surface)", "hollow");
        for name in ["text", "action", "edge", "soft", "quiet", "hairline"] {
            svg = svg.replace(&format!("var(--{name})"), "ink");
        }
        svg
    };
    let shapes: Vec<String> = all.iter().map(|mark| shape(*mark)).collect();
    for (index, one) in shapes.iter().enumerate() {
        for (other, two) in shapes.iter().enumerate().skip(index + 1) {
            assert_ne!(one, two, "{:?} {:?}", all[index], all[other]);
        }
    }
}

#[test]
fn nothing_that_a_person_or_a_plan_names_stands_in_a_drawing() {
    // Names of steps are the clinician's words; they stand beside the drawing, where they are escaped.
    for number in 0..6 {
        for chart in charts(number, "en").charts {
            let svg = draw(&chart).unwrap();
            assert!(!svg.contains("Size"), "{}", chart.name);
        }
    }
    let hostile = Chart {
        title: "<script>alert(\"1\")</script>&".to_owned(),
        ..charts(1, "en").charts.remove(0)
    };
    let svg = draw(&hostile).unwrap();
    assert!(svg.contains("&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;&amp;"));
}

#[test]
fn a_summary_with_nothing_in_it_has_no_charts_and_still_reads() {
    let words = Words::for_language("en");
    let invented = Invented::new(1, 3);
    let first = invented.earlier(1);
    assert!(
        ChartsScreen::new(&first, &words).unwrap().charts.iter().all(|chart| draw(chart).is_some())
    );
    let open = first.open_form(&invented.identity()).unwrap();
    let received = frond_core::summary::open_summary(&open, None).unwrap();
    assert!(ReadingScreen::new(&received, &words, false).is_ok());
}
