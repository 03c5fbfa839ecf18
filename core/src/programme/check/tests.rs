//! What makes a programme wrong, what makes it unusual, and what is neither (P3, P4), each by one changed line.

use serde_json::{Value, json};

use super::*;
use crate::programme::fixtures::{ALL, text};

/// What is tried, the fixture, and what is changed in it.
type Case<'a> = (&'a str, &'a str, Vec<(&'a str, Value)>);

/// A fixture with lines set, added or (by null) taken out; `/` parts as in a JSON pointer.
fn changed(start: &str, changes: &[(&str, Value)]) -> Programme {
    let mut tree: Value = serde_json::from_str(text(start)).unwrap();
    for (pointer, value) in changes {
        let (owner, name) = pointer.rsplit_once('/').unwrap();
        match tree.pointer_mut(owner).unwrap() {
            Value::Object(lines) => {
                if value.is_null() {
                    lines.remove(name).unwrap();
                } else {
                    lines.insert(name.to_owned(), value.clone());
                }
            }
            Value::Array(items) if name == "-" => items.push(value.clone()),
            Value::Array(items) => items[name.parse::<usize>().unwrap()] = value.clone(),
            _ => unreachable!(),
        }
    }
    read(tree.to_string().as_bytes()).unwrap()
}

fn errors(start: &str, changes: &[(&str, Value)]) -> Vec<String> {
    check(&changed(start, changes)).errors.iter().map(ToString::to_string).collect()
}

fn unusual(start: &str, changes: &[(&str, Value)]) -> Vec<String> {
    check(&changed(start, changes)).warnings.iter().map(ToString::to_string).collect()
}

#[test]
fn p4_the_fixtures_have_no_errors_and_these_warnings() {
    let mut said = Vec::new();
    for (name, text) in ALL {
        let (_, warnings) = load(text.as_bytes()).unwrap_or_else(|error| panic!("{name}: {error}"));
        said.extend(warnings.iter().map(|warning| format!("{name}: {warning}")));
    }
    insta::assert_snapshot!(said.join("\n"));
}

#[test]
fn p4_every_error_says_its_place() {
    let at_least = |rating: &str| {
        json!({"criterion": "discomfort_at_least", "rating": rating, "at_least": 7,
               "window": {"sessions": 1, "of_last": 1}})
    };
    let at_most = |rating: &str| json!({"criterion": "discomfort_at_most", "rating": rating, "at_most": 3, "last": 4});
    let up = "/rule/step_up/all_of";
    let all_of = |pick: &[usize]| {
        let tree: Value = serde_json::from_str(text("1")).unwrap();
        let all = tree.pointer(up).unwrap().clone();
        Value::Array(pick.iter().map(|index| all[*index].clone()).collect())
    };
    let key = |key: &str| json!({"name": "X", "key": key});
    let good = "age1ql3z7hjy54pw3hyww5ayyfg7zqgvc7w3j2elw8zmrj2kg5sfn9aqmcac8p";
    let typing = good.replacen("54pw", "54pq", 1);
    let cases: Vec<Case<'_>> = vec![
        ("start unknown", "1", vec![("/start_at", json!("size-11"))]),
        ("start missing", "1", vec![("/start_at", Value::Null)]),
        ("start without steps", "3", vec![("/start_at", json!("size-10"))]),
        ("step twice", "1", vec![("/steps/1/id", json!("size-10"))]),
        ("target unknown", "1", vec![("/rule/step_back/0/target", json!({"step": "nowhere"}))]),
        (
            "target unknown, own rule",
            "8",
            vec![("/steps/3/rule/step_back/0/target", json!({"step": "nowhere"}))],
        ),
        ("practice twice", "3", vec![("/practices/1/practice", json!("breathing"))]),
        ("practice undeclared", "6", vec![("/steps/3/practice", json!("other:elsewhere"))]),
        ("trainer among practices", "3", vec![("/practices/2/practice", json!("trainer"))]),
        ("all of nothing", "1", vec![(up, json!([])), ("/rule/step_back", json!([]))]),
        ("too many criteria", "1", vec![(up, Value::Array(vec![at_most("peak"); 21]))]),
        (
            "no look at discomfort",
            "1",
            vec![(up, all_of(&[0, 1, 3])), ("/rule/step_back", json!([]))],
        ),
        (
            "no look at discomfort, one gate",
            "1",
            vec![
                (up, all_of(&[0, 1, 3])),
                ("/rule/step_back", json!([])),
                ("/steps/0/gate", json!(true)),
            ],
        ),
        (
            "own rule without a look at discomfort, no gate",
            "5",
            vec![("/steps/0/gate", Value::Null)],
        ),
        (
            "back on a rating that going up ignores",
            "7",
            vec![
                ("/rule/step_back/-", json!({"when": at_least("after"), "target": "first"})),
                ("/ratings_asked/-", json!("after")),
            ],
        ),
        (
            "pause on a rating that going up ignores",
            "1",
            vec![("/rule/pause", json!([at_least("worry")])), ("/ratings_asked", json!(["worry"]))],
        ),
        ("rating not asked, up", "1", vec![("/rule/step_up/all_of/-", at_most("before"))]),
        ("rating not asked, down", "4", vec![("/rule/pause/-", at_least("before"))]),
        ("rating asked twice", "7", vec![("/ratings_asked", json!(["worry", "worry", "peak"]))]),
        ("trainer without a size", "1", vec![("/steps/0/parts/0/trainer", Value::Null)]),
        (
            "size without a trainer practice",
            "5",
            vec![(
                "/steps/0/parts/0/trainer",
                json!({"label": "1", "widest_diameter_tenths_mm": 100}),
            )],
        ),
        ("no parts", "1", vec![("/steps/0/parts", json!([]))]),
        ("least minutes above most", "1", vec![("/steps/2/parts/0/minutes/least", json!(11))]),
        (
            "least minutes above most, practice",
            "3",
            vec![("/practices/0/minutes/least", json!(11))],
        ),
        ("least times above most", "1", vec![("/steps/2/schedule/weekly_least", json!(7))]),
        ("review before issue", "1", vec![("/review_by", json!("2026-03-01"))]),
        ("milder sign", "5", vec![("/stricter_signs/0", json!({"sign": "fever", "tier": "note"}))]),
        (
            "the erase mark",
            "5",
            vec![("/stricter_signs/0", json!({"sign": "a_caution", "tier": "emergency"}))],
        ),
        ("sign twice", "5", vec![("/stricter_signs/1/sign", json!("spotting"))]),
        (
            "breath without time",
            "3",
            vec![(
                "/practices/0/breath",
                json!({"in_tenths": 0, "hold_in_tenths": 0, "out_tenths": 0, "hold_out_tenths": 0}),
            )],
        ),
        (
            "breath elsewhere",
            "3",
            vec![(
                "/practices/2/breath",
                json!({"in_tenths": 9, "hold_in_tenths": 0, "out_tenths": 9, "hold_out_tenths": 0}),
            )],
        ),
        ("no language", "1", vec![("/language", json!("English, please"))]),
        ("key with a typing mistake", "1", vec![("/recipients/0", key(&typing))]),
        ("a secret or other text as key", "1", vec![("/recipients/0", key("age1"))]),
        ("too many goals", "6", vec![("/goals", json!(["a", "b", "c", "d", "e", "f"]))]),
    ];
    let mut said = Vec::new();
    for (case, start, changes) in cases {
        let found = errors(start, &changes);
        assert!(!found.is_empty(), "{case}: nothing found");
        said.extend(found.iter().map(|error| format!("{case}: {error}")));
    }
    insta::assert_snapshot!(said.join("\n"));
}

#[test]
fn p4_what_is_allowed_is_not_an_error() {
    let nothing: Vec<String> = Vec::new();
    let up = "/rule/step_up";
    // Without step_up, a rating may lead back without a limit upwards.
    assert_eq!(errors("1", &[(up, Value::Null)]), nothing);
    // The review day may be the day of issue, by the stamp's own day.
    assert_eq!(errors("1", &[("/review_by", json!("2026-03-02"))]), nothing);
    // A tier may be repeated, and spotting may be noted only.
    let same = json!([{"sign": "fever", "tier": "stop"}]);
    assert_eq!(errors("4", &[("/stricter_signs", same)]), nothing);
    // Every step with a rule of its own: the programme's is judged on none of them.
    let own = json!({"pause": [{"criterion": "days_without_practice", "days": 20}]});
    let bad = json!({"all_of": [{"criterion": "feels_ready"}]});
    let only = [("/steps/0/rule", own.clone()), ("/steps/1/rule", own), (up, bad)];
    assert_eq!(errors("9", &only), nothing);
    assert_eq!(errors("1", &[("/language", json!("pt-BR"))]), nothing);
}

#[test]
fn p3_a_target_that_is_not_earlier_is_a_warning_only() {
    let later = [("/steps/3/rule/step_back/0/target", json!({"step": "18-22-deeper"}))];
    assert_eq!(errors("8", &later), Vec::<String>::new());
    assert!(unusual("8", &later).iter().any(|said| said.contains("read as the previous step")));
}

#[test]
fn p4_every_warning_has_its_ground_and_never_blocks() {
    let size = |step: usize| format!("/steps/{step}/parts/0/trainer/widest_diameter_tenths_mm");
    let (first, third) = (size(0), size(2));
    let cases: Vec<Case<'_>> = vec![
        ("sizes fall", "1", vec![(&third, json!(120))]),
        ("centimetres", "1", vec![(&first, json!(25))]),
        (
            "circumference",
            "1",
            vec![("/steps/6/parts/0/trainer/widest_diameter_tenths_mm", json!(816))],
        ),
        ("first size", "1", vec![(&first, json!(180)), ("/start_at", json!("size-10"))]),
        ("jump", "1", vec![(&third, json!(210))]),
        ("minutes", "1", vec![("/steps/0/parts/0/minutes", json!({"least": 2, "most": 45}))]),
        ("minutes, keeping", "4", vec![("/steps/0/parts/0/minutes/most", json!(30))]),
        ("minutes of breathing", "3", vec![("/practices/0/minutes/most", json!(40))]),
        ("minutes of belly breathing", "3", vec![("/practices/1/minutes/most", json!(40))]),
        ("minutes of meditation", "3", vec![("/practices/2/minutes/most", json!(60))]),
        ("days on step", "1", vec![("/rule/step_up/all_of/0/days", json!(30))]),
        ("never met", "1", vec![("/rule/step_up/all_of/1/practised_days", json!(9))]),
        ("no return", "1", vec![("/rule/after_gap_days", Value::Null)]),
        ("not on the back first", "1", vec![("/steps/0/position", json!("standing"))]),
        (
            "schedule too full",
            "7",
            vec![
                ("/steps/0/schedule/weekly_least", json!(5)),
                ("/steps/0/schedule/weekly_most", json!(5)),
            ],
        ),
        (
            "schedule too full, practice",
            "3",
            vec![
                ("/practices/0/schedule/weekly_least", json!(8)),
                ("/practices/0/schedule/weekly_most", json!(8)),
            ],
        ),
        (
            "a breath too fast to be paced",
            "3",
            vec![(
                "/practices/0/breath",
                json!({ "in_tenths": 20, "hold_in_tenths": 0, "out_tenths": 20, "hold_out_tenths": 0 }),
            )],
        ),
        ("rule without steps", "3", vec![("/rule", json!({"after_gap_days": 3}))]),
    ];
    let mut said = Vec::new();
    for (case, start, changes) in cases {
        assert_eq!(errors(start, &changes), Vec::<String>::new(), "{case}");
        let before = unusual(start, &[]);
        let new: Vec<_> =
            unusual(start, &changes).into_iter().filter(|one| !before.contains(one)).collect();
        assert!(!new.is_empty(), "{case}: nothing said");
        said.extend(new.iter().map(|one| format!("{case}: {one}")));
    }
    insta::assert_snapshot!(said.join("\n"));
}

#[test]
fn p4_a_new_position_may_start_smaller() {
    let smaller = [
        ("/steps/4/parts/0/trainer/widest_diameter_tenths_mm", json!(100)),
        ("/steps/5/parts/0/trainer/widest_diameter_tenths_mm", json!(140)),
    ];
    assert!(unusual("1", &smaller).iter().all(|said| !said.contains("smaller")));
}

#[test]
fn age_keys_are_told_from_texts_like_them() {
    // Outside check: the two example public keys of the manual page age-keygen(1) of the age project.
    for key in [
        "age1lvyvwawkr0mcnnnncaghunadrqkmuf9e6507x9y920xxpp866cnql7dp2z",
        "age1ql3z7hjy54pw3hyww5ayyfg7zqgvc7w3j2elw8zmrj2kg5sfn9aqmcac8p",
    ] {
        assert!(is_age_key(key));
        // Bech32 finds every single wrong letter.
        for (at, letter) in key.char_indices().skip(4) {
            let other = if letter == 'q' { "p" } else { "q" };
            let mut wrong = key.to_owned();
            wrong.replace_range(at..=at, other);
            assert!(!is_age_key(&wrong), "letter {at}");
        }
    }
    for not in ["", "age1", "AGE-SECRET-KEY-1", "age1pq1", "age1\u{e9}"] {
        assert!(!is_age_key(not));
    }
}

proptest::proptest! {
    /// Any programme of the types is read back equal, and judged and said without panic.
    #[test]
    fn p1_any_programme_round_trips(programme in crate::programme::arbitrary::programme()) {
        let text = serde_json::to_string(&programme).unwrap();
        proptest::prop_assume!(text.len() <= crate::programme::read::MOST_BYTES);
        let read = read(text.as_bytes());
        proptest::prop_assert_eq!(read.as_ref(), Ok(&programme));
        let found = check(&programme);
        for said in found.errors.iter().map(ToString::to_string) {
            proptest::prop_assert!(said.ends_with('.') && said.contains(": "), "{}", said);
        }
        for said in found.warnings.iter().map(ToString::to_string) {
            proptest::prop_assert!(said.ends_with(".)"), "{}", said);
        }
        proptest::prop_assert!(!crate::programme::readback::read_back(
            &programme,
            &crate::words::Words::for_language("en")
        ).is_empty());
    }
}
