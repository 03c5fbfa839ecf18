//! How pages look. Decides how the one file of tokens becomes a style sheet: custom properties for the light
//! and the dark theme, then the rules that use them. The values themselves stand in `bindings/look/tokens.json`,
//! the rules in `templates/page.css`.

use std::collections::BTreeMap;
use std::fmt::Write;

use serde::Deserialize;

const TOKENS: &str = include_str!("../../../look/tokens.json");
const RULES: &str = include_str!("../../templates/page.css");
/// A plain leaf-green square: the icon in a tab says nothing.
pub(crate) const ICON: &str = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 16 16\">\
    <rect width=\"16\" height=\"16\" rx=\"4\" fill=\"#2c5f50\"/></svg>";

/// How far long work is, asked again and again.
pub(crate) const PROGRESS: &str = include_str!("../../templates/progress.js");

/// The clock and the breath to follow.
pub(crate) const PRACTICE: &str = include_str!("../../templates/practice.js");

/// Says back a plan while it is being written.
pub(crate) const COMPOSE: &str = include_str!("../../templates/compose.js");

type Named<T> = BTreeMap<String, T>;

/// The tokens as written.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Tokens {
    colours: Colours,
    #[serde(rename = "type")]
    letters: Letters,
    space_rem: Named<f64>,
    radius_rem: Named<f64>,
    target_px: Named<u32>,
    measure_rem: f64,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Colours {
    light: Named<String>,
    dark: Named<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Letters {
    family: Vec<String>,
    line_height: f64,
    rem: Named<f64>,
}

/// The style sheet. Without readable tokens a page is shown as the browser shows it; a test reads them.
pub(crate) fn style_sheet() -> String {
    let mut css = String::new();
    if let Ok(tokens) = serde_json::from_str::<Tokens>(TOKENS) {
        let _in_memory = properties(&mut css, &tokens);
    }
    css.push_str(RULES);
    css
}

fn properties(css: &mut String, tokens: &Tokens) -> std::fmt::Result {
    let family: Vec<String> = tokens.letters.family.iter().map(|name| quoted(name)).collect();
    writeln!(css, ":root{{color-scheme:light dark;")?;
    colours(css, &tokens.colours.light)?;
    writeln!(css, "--family:{};--line:{};", family.join(","), tokens.letters.line_height)?;
    for (group, values) in [
        ("type", &tokens.letters.rem),
        ("space", &tokens.space_rem),
        ("radius", &tokens.radius_rem),
    ] {
        for (name, value) in values {
            writeln!(css, "--{group}-{name}:{value}rem;")?;
        }
    }
    for (name, value) in &tokens.target_px {
        writeln!(css, "--target-{name}:{value}px;")?;
    }
    writeln!(css, "--measure:{}rem}}", tokens.measure_rem)?;
    writeln!(css, "@media (prefers-color-scheme: dark){{:root{{")?;
    colours(css, &tokens.colours.dark)?;
    writeln!(css, "}}}}")
}

fn colours(css: &mut String, colours: &Named<String>) -> std::fmt::Result {
    colours
        .iter()
        .try_for_each(|(name, value)| writeln!(css, "--{}:{value};", name.replace('_', "-")))
}

fn quoted(name: &str) -> String {
    if name.contains(' ') { format!("\"{name}\"") } else { name.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tokens() -> Tokens {
        serde_json::from_str(TOKENS).unwrap()
    }

    /// Relative luminance of an sRGB colour, as WCAG 2.2 defines it
    /// (<https://www.w3.org/TR/WCAG22/#dfn-relative-luminance>).
    fn luminance(colour: &str) -> f64 {
        let channel = |at: usize| {
            let value = u8::from_str_radix(&colour[at..at + 2], 16).unwrap();
            let part = f64::from(value) / 255.0;
            if part <= 0.04045 { part / 12.92 } else { ((part + 0.055) / 1.055).powf(2.4) }
        };
        assert!(colour.len() == 7 && colour.starts_with('#'), "{colour}");
        0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5)
    }

    /// Contrast ratio as WCAG 2.2 defines it (<https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio>).
    fn contrast(one: &str, other: &str) -> f64 {
        let (one, other) = (luminance(one), luminance(other));
        (one.max(other) + 0.05) / (one.min(other) + 0.05)
    }

    #[test]
    fn contrast_is_worked_out_as_published() {
        // Black on white is 21 to 1; the grey 767676 on white is the well-known 4.54 to 1 of WCAG's own
        // technique G18 examples (value from memory, and as the formula gives it).
        assert!((contrast("#000000", "#ffffff") - 21.0).abs() < 1e-9);
        assert!((contrast("#767676", "#ffffff") - 4.54).abs() < 0.005);
    }

    #[test]
    fn text_and_edges_stand_out_in_both_themes() {
        let Colours { light, dark } = tokens().colours;
        assert_eq!(light.keys().collect::<Vec<_>>(), dark.keys().collect::<Vec<_>>());
        for (theme, colours) in [("light", light), ("dark", dark)] {
            let holds = |one: &str, on: &str, least: f64| {
                let ratio = contrast(&colours[one], &colours[on]);
                assert!(ratio >= least, "{theme}: {one} on {on} is {ratio:.2}, not {least}");
            };
            for on in ["ground", "surface"] {
                holds("text", on, 4.5);
                holds("quiet", on, 4.5);
                // Links are read in the colour of actions.
                holds("action", on, 4.5);
                holds("edge", on, 3.0);
            }
            for on in ["ground", "surface", "soft", "note"] {
                holds("focus", on, 3.0);
                holds("text", on, 4.5);
            }
            holds("on_action", "action", 4.5);
            holds("on_soft", "soft", 4.5);
            holds("action", "soft", 4.5);
            holds("edge", "soft", 3.0);
            holds("on_note", "note", 4.5);
            holds("action", "note", 4.5);
            holds("note_edge", "note", 3.0);
            holds("note_edge", "ground", 3.0);
        }
    }

    #[test]
    fn targets_are_large_and_rules_mirror() {
        assert!(tokens().target_px.values().all(|target| *target >= 44));
        let css = style_sheet();
        // What is said of left and right does not mirror; what is said of start and end does.
        for rule in ["left", "right", "width:", "height:", "margin-top", "margin-bottom"] {
            let found = RULES.lines().find(|line| {
                line.contains(rule)
                    && !line.contains("line-height")
                    && !line.contains("var(--width")
                    && !line.trim_start().starts_with("/*")
                    && !line.contains("@media")
                    && !line.contains("@container")
            });
            assert_eq!(found, None, "{rule}");
        }
        let known: Vec<&str> =
            css.split("--").skip(1).filter_map(|rest| rest.split(':').next()).collect();
        for used in RULES.split("var(--").skip(1).filter_map(|rest| rest.split([')', ',']).next()) {
            // The script sets the width of the breath.
            assert!(known.contains(&used) || used == "width", "no token {used}");
        }
        for query in ["prefers-color-scheme: dark", "prefers-reduced-motion", "forced-colors"] {
            assert!(css.contains(query), "{query}");
        }
    }
}
