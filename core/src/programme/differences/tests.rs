//! Every line of a programme is changed in turn, and the difference is said.

use super::*;
use crate::programme::fixtures::{ALL, text};
use crate::programme::read::read;
use crate::programme::readback::tests::each_line_changed;

fn english() -> Words {
    Words::for_language("en")
}

#[test]
fn two_revisions_are_told_apart() {
    let before = read(text("1-graded-then-positions").as_bytes()).unwrap();
    let after = read(text("1-graded-then-positions-revision-2").as_bytes()).unwrap();
    insta::assert_snapshot!("revision-2", differences(&before, &after, &english()).join("\n"));
    let spanish = differences(&before, &after, &Words::for_language("es"));
    insta::assert_snapshot!("revision-2-es", spanish.join("\n"));
}

#[test]
fn the_same_is_no_difference() {
    for (name, text) in ALL {
        let one = read(text.as_bytes()).unwrap();
        let mut next = one.clone();
        next.revision = crate::programme::values::Revision::new(99).unwrap();
        next.issued_at = "2031-01-01T00:00:00+00:00".parse().unwrap();
        assert!(differences(&one, &next, &english()).is_empty(), "{name}");
    }
}

/// Whatever line is changed, something is said; and the other way round as well.
#[test]
fn p1_no_changed_line_goes_unnoticed() {
    let words = english();
    let mut changed = 0;
    for (name, text) in ALL {
        let before = read(text.as_bytes()).unwrap();
        for (leaf, other) in each_line_changed(text) {
            // What makes a revision one is no difference.
            if ["/id", "/revision", "/issued_at"].contains(&leaf.as_str()) {
                continue;
            }
            if let Some(after) = other {
                assert!(!differences(&before, &after, &words).is_empty(), "{name}: {leaf}");
                assert!(!differences(&after, &before, &words).is_empty(), "{name}: {leaf}");
                changed += 1;
            }
        }
    }
    assert!(changed > 500, "only {changed} lines were changed");
}
