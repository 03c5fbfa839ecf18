//! Programmes as they read, in snapshots; no line is left out.

use serde_json::{Value, json};

use super::*;
use crate::programme::fixtures::ALL;
use crate::programme::read::read;
use crate::programme::values::Size;

fn english() -> Words {
    Words::for_language("en")
}

#[test]
fn the_fixtures_read_back() {
    for (name, text) in ALL {
        let said = read_back(&read(text.as_bytes()).unwrap(), &english());
        insta::assert_snapshot!(name, said.join("\n"));
    }
}

#[test]
fn a_fixture_reads_back_in_spanish() {
    let (name, text) = ALL.last().unwrap();
    let said = read_back(&read(text.as_bytes()).unwrap(), &Words::for_language("es"));
    insta::assert_snapshot!(format!("{name}-es"), said.join("\n"));
}

#[test]
fn sizes_are_said_in_millimetres_and_centimetres() {
    let said = |tenths: u64| widest(Size::new(tenths).unwrap(), &english());
    assert_eq!(said(220), "22 mm (2.2 cm) widest diameter");
    assert_eq!(said(225), "22.5 mm (2.25 cm) widest diameter");
    assert_eq!(said(100), "10 mm (1 cm) widest diameter");
    assert_eq!(said(1000), "100 mm (10 cm) widest diameter");
    assert_eq!(said(12), "1.2 mm (0.12 cm) widest diameter");
    let spanish = widest(Size::new(225).unwrap(), &Words::for_language("es"));
    assert_eq!(spanish, "22,5 mm (2,25 cm) de diámetro máximo");
}

/// Other values to try in place of one.
fn others(value: &Value) -> Vec<Value> {
    match value {
        Value::Bool(value) => vec![json!(!value)],
        Value::Number(number) => {
            let number = number.as_u64().unwrap();
            vec![json!(number + 1), json!(number.saturating_sub(1))]
        }
        Value::String(text) => {
            let known = [
                "sitting",
                "standing",
                "fever",
                "emergency",
                "worry",
                "first",
                "previous",
                "meditation",
                "breathing",
                "trainer",
                "before",
                "spotting",
                "stop",
                "younger_safeguarding_confirmed",
                "2031-01-01",
                "2031-01-01T00:00:00+00:00",
                "00000000000000000000000000000b22",
            ];
            let more = if text.starts_with("other:") { vec![] } else { vec![format!("{text}x")] };
            known
                .iter()
                .map(|word| json!(word))
                .filter(|word| word != value)
                .chain(more.iter().map(|t| json!(t)))
                .collect()
        }
        _ => vec![],
    }
}

fn leaves(value: &Value, at: &str, found: &mut Vec<String>) {
    match value {
        Value::Object(lines) => {
            lines.iter().for_each(|(name, line)| leaves(line, &format!("{at}/{name}"), found));
        }
        Value::Array(items) => items
            .iter()
            .enumerate()
            .for_each(|(index, item)| leaves(item, &format!("{at}/{index}"), found)),
        _ => found.push(at.to_owned()),
    }
}

/// Each line of a programme, by its place, and the programme with another value in it: the first that still reads.
pub(in crate::programme) fn each_line_changed(text: &str) -> Vec<(String, Option<Programme>)> {
    let tree: Value = serde_json::from_str(text).unwrap();
    let before = read(text.as_bytes()).unwrap();
    let mut found = Vec::new();
    leaves(&tree, "", &mut found);
    let changed = |leaf: &str| {
        others(tree.pointer(leaf).unwrap()).into_iter().find_map(|other| {
            let mut tree = tree.clone();
            *tree.pointer_mut(leaf).unwrap() = other;
            read(tree.to_string().as_bytes()).ok().filter(|after| *after != before)
        })
    };
    found.into_iter().map(|leaf| (leaf.clone(), changed(&leaf))).collect()
}

#[test]
fn p1_no_line_of_a_programme_is_left_out() {
    // What follows is said in any language by the same code, so one language is enough.
    let words = english();
    let mut changed = 0;
    for (name, text) in ALL {
        let tree: Value = serde_json::from_str(text).unwrap();
        let before = read(text.as_bytes()).unwrap();
        for (leaf, other) in each_line_changed(text) {
            match other {
                Some(after) => {
                    assert_ne!(
                        read_back(&after, &words),
                        read_back(&before, &words),
                        "{name}: {leaf} is not said"
                    );
                    changed += 1;
                }
                // These have no other value: the format's number, which criterion it is, and "1 of 1".
                None => assert!(
                    leaf == "/frond_programme"
                        || leaf.ends_with("/criterion")
                        || leaf.ends_with("/window/sessions"),
                    "{name}: {leaf} could not be changed"
                ),
            }
        }
        // A line taken out is noticed too, where the programme reads without it.
        for line in tree.as_object().unwrap().keys() {
            let mut tree = tree.clone();
            tree.as_object_mut().unwrap().remove(line);
            if let Ok(after) = read(tree.to_string().as_bytes()) {
                assert_ne!(
                    read_back(&after, &words),
                    read_back(&before, &words),
                    "{name}: {line} is not said"
                );
            }
        }
    }
    assert!(changed > 500, "only {changed} lines were changed");
}
