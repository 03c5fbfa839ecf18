//! Every fixture typed from nothing comes out as it is; nothing is filled in; each mistake stands at its place.

mod any;

use super::*;
use crate::programme::fixtures::ALL;
use crate::programme::read::read;
use crate::programme::readback::read_back;
use crate::words::Words;

fn english() -> Words {
    Words::for_language("en")
}

fn given(programme: &Programme) -> Given {
    Given { id: programme.id.clone(), revision: programme.revision, issued_at: programme.issued_at }
}

/// A moment after which every review day of the fixtures lies.
fn invented() -> Given {
    Given {
        id: StepId::new("invented").unwrap(),
        revision: crate::programme::values::Revision::new(1).unwrap(),
        issued_at: "2026-03-01T09:00:00+00:00".parse().unwrap(),
    }
}

#[test]
fn p1_every_fixture_is_a_draft_and_the_same_programme_again() {
    for (name, text) in ALL {
        let programme = read(text.as_bytes()).unwrap();
        let draft = Draft::from(&programme);
        // Kept as it lies in the desk's folder.
        let kept = serde_json::to_string(&draft).unwrap();
        let draft: Draft = serde_json::from_str(&kept).unwrap();
        let checked = draft.check(&given(&programme));
        assert_eq!(checked.mistakes, [], "{name}");
        let again = checked.programme.clone().unwrap();
        assert_eq!(again, programme, "{name}");
        for words in [english(), Words::for_language("es")] {
            let said: Vec<String> =
                draft.said(&checked, &words).into_iter().flat_map(|said| said.sentences).collect();
            assert_eq!(said, read_back(&programme, &words), "{name}");
        }
        // What is handed over is read strictly as the same.
        assert_eq!(read(text_of(&again).unwrap().as_bytes()).unwrap(), programme, "{name}");
    }
}

/// Every fixture typed into an empty draft, field by field and button by button, as a form would send it.
#[test]
fn p1_every_fixture_can_be_typed_from_nothing() {
    for (name, text) in ALL {
        let programme = read(text.as_bytes()).unwrap();
        let wanted = serde_json::to_value(Draft::from(&programme)).unwrap();
        let mut draft = Draft::new();
        draft.offer_signs(programme.signs_seen.iter().map(|key| (*key, programme.issued_at.day())));
        type_in(&mut draft, "", &wanted);
        // Ids are given by the program, so they are other ones; everything else is as it was.
        let typed = draft.check(&given(&programme));
        let mistakes: Vec<String> =
            typed.mistakes.iter().map(|one| format!("{}: {:?}", one.place, one.amiss)).collect();
        let fixed = ["start_at", "target"];
        let left: Vec<&String> =
            mistakes.iter().filter(|one| !fixed.iter().any(|at| one.contains(at))).collect();
        assert!(left.is_empty() || name.contains("other"), "{name}: {left:?}");
        draft.choose_steps_by_place(&Draft::from(&programme));
        let again = draft.check(&given(&programme));
        assert_eq!(again.mistakes, [], "{name}");
        let ids: Vec<String> = programme.steps.iter().map(|step| step.id.to_string()).collect();
        let mut written = serde_json::to_string(&again.programme.unwrap()).unwrap();
        for (index, id) in ids.iter().enumerate() {
            let own = format!("\"{}\"", draft.steps[index].id);
            written = written.replace(&own, &format!("\"@{id}\""));
        }
        let written = written.replace("\"@", "\"");
        assert_eq!(read(written.as_bytes()).unwrap(), programme, "{name}");
    }
}

impl Draft {
    /// Chooses the steps that another draft names, by their places.
    fn choose_steps_by_place(&mut self, other: &Draft) {
        let own = |id: &StepId| {
            let at = other.steps.iter().position(|step| step.id == id.as_str()).unwrap();
            StepId::new(&self.steps[at].id).unwrap()
        };
        let start = other.start_at.0.as_ref().map(own);
        let target = |choice: &Choice<TargetChoice>| match &choice.0 {
            Some(TargetChoice(crate::programme::rule::Target::Step(id))) => {
                format!("step:{}", own(id))
            }
            _ => choice.code(),
        };
        let mut chosen = Vec::new();
        for (at, back) in other.rule.iter().flat_map(|rule| &rule.step_back).enumerate() {
            chosen.push((format!("rule.step_back.{at}.target"), target(&back.target)));
        }
        for (index, step) in other.steps.iter().enumerate() {
            for (at, back) in step.rule.iter().flat_map(|rule| &rule.step_back).enumerate() {
                chosen.push((
                    format!("steps.{index}.rule.step_back.{at}.target"),
                    target(&back.target),
                ));
            }
        }
        if let Some(start) = start {
            chosen.push(("start_at".to_owned(), start.to_string()));
        }
        self.put(chosen.iter().map(|(name, text)| (name.as_str(), text.as_str())));
    }
}

/// Types what is wanted at a place, adding what has to be added first.
fn type_in(draft: &mut Draft, at: &str, wanted: &serde_json::Value) {
    use serde_json::Value;
    let inner = |part: &str| if at.is_empty() { part.to_owned() } else { format!("{at}.{part}") };
    match wanted {
        Value::String(text) => draft.put([(at, text.as_str())]),
        Value::Bool(ticked) => draft.put([(at, if *ticked { "yes" } else { "" })]),
        Value::Object(fields) => {
            if at.split('.').next_back() == Some("rule") {
                draft.change(&Change::Add { list: at.to_owned(), sort: None }).unwrap();
            }
            for (name, value) in fields {
                if !matches!(name.as_str(), "id" | "criterion" | "removed" | "told") {
                    type_in(draft, &inner(name), value);
                }
            }
        }
        Value::Array(items) if at == "ratings_asked" => {
            draft.put(items.iter().map(|one| (at, one.as_str().unwrap())));
        }
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                if at != "signs_seen" {
                    let sort = item.get("criterion").map(|sort| sort.as_str().unwrap().to_owned());
                    let added = draft.change(&Change::Add { list: at.to_owned(), sort });
                    let added = added.unwrap_or_else(|| panic!("nothing adds {at}: {item}"));
                    assert_eq!(added.as_str(), inner(&index.to_string()));
                }
                type_in(draft, &inner(&index.to_string()), item);
            }
        }
        Value::Null | Value::Number(_) => {}
    }
}

#[test]
fn nothing_is_filled_in_by_the_program() {
    let mut draft = Draft::new();
    for add in [
        "add:steps",
        "add:steps.0.parts",
        "add:steps.0.rule",
        "add:steps.0.rule.step_up:discomfort_at_most",
        "add:practices",
        "add:rule",
        "add:rule.step_up:days_on_step",
        "add:rule.step_up:sessions",
        "add:rule.step_up:sign_free_days",
        "add:rule.step_back:discomfort_at_least",
        "add:rule.step_back:stopped_early",
        "add:rule.pause:steps_back",
        "add:rule.pause:days_without_practice",
        "add:stricter_signs",
        "add:recipients",
        "add:activities",
        "add:goals",
        "add:own_cautions",
    ] {
        assert!(draft.change(&add.parse().unwrap()).is_some(), "{add}");
    }
    let mut standing = Vec::new();
    leaves(&serde_json::to_value(&draft).unwrap(), "", &mut standing);
    let filled: Vec<&(String, String)> = standing
        .iter()
        .filter(|(place, text)| {
            let given = ["id", "criterion", "shape", "ids_given"];
            let last = place.rsplit('.').next().unwrap();
            !given.contains(&last) && !matches!(text.as_str(), "\"\"" | "false" | "null")
        })
        .collect();
    assert!(filled.is_empty(), "{filled:?}");
    // And everything that stands empty and has to be filled in is asked for.
    assert!(draft.check(&invented()).mistakes.len() > 40);
}

fn leaves(value: &serde_json::Value, at: &str, found: &mut Vec<(String, String)>) {
    match value {
        serde_json::Value::Object(fields) => {
            fields.iter().for_each(|(name, value)| leaves(value, &format!("{at}.{name}"), found));
        }
        serde_json::Value::Array(items) => items
            .iter()
            .enumerate()
            .for_each(|(index, item)| leaves(item, &format!("{at}.{index}"), found)),
        other => found.push((at.trim_start_matches('.').to_owned(), other.to_string())),
    }
}

#[test]
fn every_field_has_a_name_and_every_name_a_field() {
    let words = english();
    let mut named = std::collections::BTreeSet::new();
    for (_, text) in ALL {
        let mut draft = Draft::from(&read(text.as_bytes()).unwrap());
        for add in ["add:rule", "add:steps", "add:steps.0.parts", "add:practices", "add:recipients"]
        {
            let _there_already = draft.change(&add.parse().unwrap());
        }
        for sort in ["discomfort_at_least", "stopped_early", "days_without_practice", "steps_back"]
        {
            draft.change(&format!("add:rule.pause:{sort}").parse().unwrap()).unwrap();
        }
        let mut standing = Vec::new();
        leaves(&serde_json::to_value(&draft).unwrap(), "", &mut standing);
        for (place, _) in standing {
            let last = place.rsplit('.').next().unwrap();
            let choice = place.starts_with("ratings_asked.") || place.starts_with("signs_seen");
            if ["id", "criterion", "shape", "ids_given", "removed", "rule"].contains(&last)
                || choice
            {
                continue;
            }
            if place.ends_with("activities") || place.ends_with("goals") {
                continue;
            }
            assert!(label(&place, &words).is_some(), "{place}");
            named.insert(label(&place, &words).unwrap());
        }
    }
    for field in super::names::fields() {
        let one = field.replace('#', "0");
        assert!(label(&one, &words).is_some() || field.starts_with("rule.#"), "{field}");
    }
    assert!(named.len() > 50, "{}", named.len());
}

#[test]
fn sizes_are_typed_as_people_write_them() {
    let mut draft = Draft::from(&read(ALL[0].1.as_bytes()).unwrap());
    let size = |draft: &Draft| {
        let checked = draft.check(&invented());
        let place = "steps.0.parts.0.size_mm";
        let amiss = checked.mistakes.iter().find(|one| one.place.as_str() == place);
        match amiss {
            Some(one) => Err(one.amiss.clone()),
            None => Ok(checked.programme.unwrap().steps[0].main_size().unwrap().get()),
        }
    };
    for (typed, tenths) in
        [("22", 220), ("22.5", 225), ("22,5", 225), (" 9,0 ", 90), ("1", 10), ("100", 1000)]
    {
        draft.put([("steps.0.parts.0.size_mm", typed)]);
        assert_eq!(size(&draft), Ok(tenths), "{typed}");
        // As typed it stays.
        assert_eq!(draft.tree().typed("steps.0.parts.0.size_mm"), typed);
    }
    for typed in
        ["0", "0.9", "100.1", "22.55", "22.", ".5", "-3", "+3", "2 2", "22mm", "1e2", "\u{0662}"]
    {
        draft.put([("steps.0.parts.0.size_mm", typed)]);
        assert_eq!(size(&draft), Err(Amiss::NotASize), "{typed}");
    }
    draft.put([("steps.0.parts.0.size_mm", " ")]);
    assert_eq!(size(&draft), Err(Amiss::Empty));
}

#[test]
fn h12_no_plan_is_finished_before_it_is_said_for_whom() {
    let mut draft = Draft::from(&read(ALL[0].1.as_bytes()).unwrap());
    assert!(draft.check(&invented()).programme.is_some());
    draft.put([("intended_for", "")]);
    let checked = draft.check(&invented());
    assert!(checked.programme.is_none());
    let places: Vec<String> = checked.mistakes.iter().map(|one| one.place.to_string()).collect();
    assert_eq!(places, ["intended_for"]);
}

#[test]
fn p4_each_mistake_stands_at_its_place() {
    let draft = |sent: &[(&str, &str)]| {
        let mut draft = Draft::from(&read(ALL[0].1.as_bytes()).unwrap());
        draft.put(sent.iter().copied());
        let checked = draft.check(&invented());
        assert!(checked.programme.is_none());
        let said: Vec<String> = checked
            .mistakes
            .iter()
            .map(|one| {
                let at = draft.place_said(&one.place, &english());
                format!("{} | {at} | {}", one.place, one.say(&draft, &english()))
            })
            .collect();
        said.join("\n")
    };
    insta::assert_snapshot!(draft(&[
        ("for_whom", ""),
        ("contact.phone", "one\ntwo"),
        ("review_by", "2026-02-30"),
        ("steps.1.name", ""),
        ("steps.1.parts.0.size_mm", "wide"),
        ("steps.2.parts.0.minutes_least", "ten"),
        ("steps.2.parts.0.minutes_most", "241"),
        ("steps.3.schedule.weekly_least", "-1"),
        ("steps.4.position", "upside_down"),
        ("screening_every_days", "0"),
        ("late_after_hours", "337"),
        ("rule.step_up.0.days", ""),
        ("rule.step_back.0.sessions", "4"),
        ("rule.step_back.0.target", "elsewhere"),
    ]));
    // Those of the whole, once every number stands; a missing text keeps none of them from being said.
    insta::assert_snapshot!(draft(&[
        ("emergency.country", ""),
        ("language", "not a tag"),
        ("review_by", "2026-02-28"),
        ("start_at", "step-99"),
        ("steps.0.parts.0.label", ""),
        ("steps.0.parts.0.size_mm", ""),
        ("steps.1.practice", "breathing"),
        ("steps.2.parts.0.minutes_least", "12"),
        ("rule.step_up.2.rating", "worry"),
        ("rule.step_back.0.target", "step:gone"),
    ]));
}

#[test]
fn lists_are_changed_and_what_was_taken_out_comes_back() {
    let mut draft = Draft::from(&read(ALL[0].1.as_bytes()).unwrap());
    let before = draft.clone();
    let does = |draft: &mut Draft, change: &str| {
        draft.change(&change.parse().unwrap()).map(|place| place.as_str().to_owned())
    };
    assert_eq!(does(&mut draft, "remove:steps.2").as_deref(), Some("steps"));
    assert_eq!(draft.steps.len(), before.steps.len() - 1);
    draft.put([("steps.2.name", "typed in between")]);
    assert_eq!(does(&mut draft, "put_back").as_deref(), Some("steps.2"));
    assert_eq!(draft.steps[3].name.as_str(), "typed in between");
    assert!(draft.steps[2] == before.steps[2]);
    assert_eq!(does(&mut draft, "put_back"), None);
    assert_eq!(does(&mut draft, "up:steps.2").as_deref(), Some("steps.1"));
    assert_eq!(does(&mut draft, "down:steps.1").as_deref(), Some("steps.2"));
    assert_eq!(does(&mut draft, "up:steps.0"), None);
    assert_eq!(does(&mut draft, "down:steps.6"), None);
    assert_eq!(does(&mut draft, "copy:steps.0").as_deref(), Some("steps.1"));
    assert_eq!(draft.steps[1].name, draft.steps[0].name);
    let ids: std::collections::BTreeSet<&str> =
        draft.steps.iter().map(|step| step.id.as_str()).collect();
    assert_eq!(ids.len(), draft.steps.len());
    // An id that was taken out with its step is not given to another.
    let own = draft.steps[1].id.clone();
    does(&mut draft, "remove:steps.1").unwrap();
    does(&mut draft, "add:steps").unwrap();
    assert!(draft.steps.iter().all(|step| step.id != own));
    assert_eq!(does(&mut draft, "remove:rule").as_deref(), Some(""));
    assert!(draft.rule.is_none());
    assert_eq!(does(&mut draft, "put_back").as_deref(), Some("rule"));
    assert!(draft.rule == before.rule);
    for none in [
        "add:nothing",
        "add:steps:x",
        "add:rule.step_up",
        "add:rule.step_up:stopped_early",
        "add:rule.step_back:steps_back",
        "remove:steps.99",
        "remove:for_whom",
        "remove:removed.at",
        "copy:ratings_asked.0",
        "up:",
        "remove:steps",
        "add:removed",
        "add:steps.0.id",
    ] {
        let before = draft.clone();
        assert_eq!(does(&mut draft, none), None, "{none}");
        assert!(draft == before, "{none}");
    }
}

/// What is only unfinished is not read back as if it were meant so.
#[test]
fn p3_an_unfinished_way_up_is_not_said_to_be_none() {
    let mut draft = Draft::from(&read(ALL[0].1.as_bytes()).unwrap());
    draft.change(&"remove:rule".parse().unwrap()).unwrap();
    draft.change(&"add:rule".parse().unwrap()).unwrap();
    let said = |draft: &Draft| {
        let checked = draft.check(&invented());
        let said = draft.said(&checked, &english());
        said.into_iter().find(|said| said.part == Part::Rule).unwrap().sentences.join("\n")
    };
    assert!(said(&draft).contains("going up is never suggested"));
    draft.change(&"add:rule.step_up:days_on_step".parse().unwrap()).unwrap();
    let unfinished = said(&draft);
    assert!(!unfinished.contains("never suggested"), "{unfinished}");
    assert!(unfinished.contains("not finished"), "{unfinished}");
    draft.put([("rule.step_up.0.days", "9")]);
    assert!(said(&draft).contains("at least 9 days ago"));
}

#[test]
fn a_form_sets_fields_and_nothing_else() {
    let mut draft = Draft::from(&read(ALL[0].1.as_bytes()).unwrap());
    let before = draft.clone();
    draft.put([
        ("steps.0.id", "another"),
        ("steps", "x"),
        ("steps.99.name", "x"),
        ("rule.step_up.0.criterion", "feels_ready"),
        ("removed.item", "x"),
        ("shape", "9"),
        ("nothing", "x"),
        ("signs_seen.0.key.sign", "fever"),
        ("signs_seen.0.told", "2026-01-01"),
        ("", "x"),
    ]);
    assert!(draft == before);
    draft.put([("ratings_asked", ""), ("ratings_asked", "worry"), ("ratings_asked", "sadness")]);
    assert_eq!(draft.ratings_asked, [RatingKind::Worry]);
    draft.put([("ratings_asked", "")]);
    assert!(draft.ratings_asked.is_empty());
    draft.put([("steps.0.gate", ""), ("steps.0.gate", "yes")]);
    assert!(draft.steps[0].gate);
}

#[test]
fn s1_a_sign_is_closed_only_where_it_is_ticked() {
    let (_, text) = ALL.iter().find(|(name, _)| name.contains("revision-2")).unwrap();
    let programme = read(text.as_bytes()).unwrap();
    assert!(!programme.signs_seen.is_empty());
    let mut next = Draft::next_of(&programme);
    assert!(next.check(&given(&programme)).programme.unwrap().signs_seen.is_empty());
    next.offer_signs(programme.signs_seen.iter().map(|key| (*key, programme.issued_at.day())));
    assert_eq!(next.signs_seen.len(), programme.signs_seen.len());
    next.put([("signs_seen.0.seen", ""), ("signs_seen.0.seen", "yes")]);
    let again = next.check(&given(&programme)).programme.unwrap();
    assert_eq!(again.signs_seen, programme.signs_seen[..1]);
}
