//! The invented programmes of the `fixtures` folder, for tests.

macro_rules! one {
    ($name:literal) => {
        ($name, include_str!(concat!("../../../fixtures/programmes/", $name, ".json")))
    };
}
/// Name and text of each.
pub(crate) const ALL: [(&str, &str); 10] = [
    one!("1-graded-then-positions"),
    one!("1-graded-then-positions-revision-2"),
    one!("2-movement-and-partner"),
    one!("3-breathing-only"),
    one!("4-after-radiotherapy"),
    one!("5-scar-after-birth"),
    one!("6-examination-or-tampon"),
    one!("7-very-careful"),
    one!("8-two-sizes-in-one-session"),
    one!("9-in-spanish"),
];

/// The text of the fixture whose name starts so.
pub(crate) fn text(start: &str) -> &'static str {
    ALL.iter().find(|(name, _)| name.starts_with(start)).unwrap().1
}

/// A fixture with one piece of its text replaced.
pub(crate) fn with(start: &str, from: &str, to: &str) -> String {
    let text = text(start);
    assert!(text.contains(from), "nothing to replace");
    text.replacen(from, to, 1)
}
