//! What a screen may say where it stands: nothing that does not fit its moment, and yes never without its no. Found by
//! looking at every picture as the person at home; each test is one thing that was wrong. All of it is invented.

use std::collections::BTreeSet;

use frond_core::companion::{Request, SessionTold, Told};
use frond_core::diary::entry::{Ended, Goal, Reason, Settings};
use frond_core::handover::Handed;
use frond_core::practice::breathing::PresetId;
use frond_core::practice::timed::Event;
use frond_core::programme::plan::Programme;
use frond_core::programme::read::read;
use frond_core::programme::readback::{read_back, read_back_to_person};
use frond_core::programme::values::{Line, Minutes, Passage, Practice};
use frond_core::safety::{Answer, FullList, Sign, SignGroup};
use frond_core::screens::Begin;
use frond_core::summary::Selection;
use frond_core::words::Words;
use frond_tests::home::{Home, PLAN, plan_with, session, stopped};
use serde_json::{Value, json};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";
const DAY: i64 = 24;

fn home_with(lines: &Value) -> Home {
    Home::with_this_plan(START, &plan_with(lines))
}

fn answered(home: &mut Home) {
    let mut list = FullList::default();
    for group in SignGroup::ALL {
        list.answer_group(group, Answer::No);
    }
    home.tell(Told::FullList(list));
}

/// The texts of a list.
fn texts(list: &Value) -> Vec<&str> {
    list.as_array().unwrap().iter().map(|text| text.as_str().unwrap()).collect()
}

/// What the actions of a screen do, in order.
fn actions(screen: &Value) -> Vec<String> {
    let actions = screen["actions"].as_array().unwrap().iter();
    actions.map(|action| action["does"].to_string().replace('"', "")).collect()
}

fn begin_breathing() -> Request {
    let minutes = Minutes::new(5).unwrap();
    Request::Begin(Begin::Breathing { preset: PresetId::Even, minutes })
}

fn offers_not_going_in(screen: &Value) -> bool {
    let ended = screen["ended"].as_array().unwrap();
    assert!(ended.len() > 3, "{screen}");
    ended.iter().any(|choice| choice["ended"].to_string().contains("did_not_go_in"))
}

#[test]
fn that_it_did_not_go_in_is_a_reason_with_trainers_alone() {
    let mut home = Home::with_plan(START);
    answered(&mut home);
    home.ask(begin_breathing());
    home.ask(Request::During(Event::Begin { part: 0 }));
    home.ask(Request::During(Event::Stop));
    assert!(!offers_not_going_in(&home.json(Request::Rate)));
    let mut home = Home::with_plan(START);
    answered(&mut home);
    home.ask(Request::Begin(Begin::Step));
    home.ask(Request::During(Event::Begin { part: 0 }));
    home.ask(Request::During(Event::Stop));
    assert!(offers_not_going_in(&home.json(Request::Rate)));

    assert!(offers_not_going_in(&home.json(Request::LogSession)), "the plan has trainers");
    let mut without = Home::new(START);
    assert!(!offers_not_going_in(&without.json(Request::LogSession)), "no plan, so no trainers");
    // One that was written so before stays what it is while something else of it is put right.
    let told = SessionTold {
        practice: Practice::Breathing,
        ended: Ended::Stopped(Reason::DidNotGoIn),
        ..session(140, 4, None)
    };
    let of = without.tell(Told::Session(told)).0;
    assert!(offers_not_going_in(&without.json(Request::Correct(of))));
}

#[test]
fn a_goal_is_said_back_in_the_words_in_which_it_was_answered() {
    let mut home = home_with(&json!({ "goals": ["sleep well"] }));
    let goal = Line::new("sleep well").unwrap();
    let choices = home.json(Request::Activities)["goals"][0]["choices"].clone();
    for (at, reached) in (0..).zip(-2..=2) {
        let reached = Goal::try_from(reached).unwrap();
        let label = choices[at]["label"].as_str().unwrap().to_owned();
        let of = home.tell(Told::Goal { goal: goal.clone(), reached }).0;
        let told = home.json(Request::Entries)["entries"][0]["text"].clone();
        assert_eq!(told, format!("sleep well: {label}"));
        assert!(home.json(Request::Entry(of)).to_string().contains(&label));
        assert_eq!(home.json(Request::Correct(of))["was"], told);
    }
}

#[test]
fn while_trainers_are_paused_nothing_light_is_said() {
    for (sign, says) in [
        (None, Some("Not in the mood?")),
        (Some(Sign::PainThatStays), Some("Quiet breathing, without holding your breath, is fine")),
        (Some(Sign::Distress), Some("Breathing can wait too.")),
        (Some(Sign::HeavyBleeding), None),
    ] {
        let mut home = Home::with_plan(START);
        answered(&mut home);
        home.tell(Told::LookForward(Passage::new("a walk by the river").unwrap()));
        if let Some(sign) = sign {
            home.tell(Told::Signs { signs: vec![sign], note: None });
        }
        let today = home.json(Request::Today);
        assert_eq!(today["look_forward"].is_null(), sign.is_some(), "{sign:?}: {today}");
        match says {
            Some(says) => {
                for request in [Request::Today, Request::Practices, Request::Breathing] {
                    let screen = home.json(request);
                    let enough = screen["enough"].as_str().unwrap();
                    assert!(enough.contains(says), "{sign:?}: {enough}");
                    assert_eq!(enough.contains("mood"), sign.is_none(), "{sign:?}: {enough}");
                }
            }
            None => assert!(today["enough"].is_null()),
        }
    }
    // Once she has spoken with someone, it is there again.
    let mut home = Home::with_plan(START);
    home.tell(Told::LookForward(Passage::new("a walk by the river").unwrap()));
    home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    let open = home.companion.state().rule().assess(&home.moment.now).open_signs;
    home.tell(Told::Spoke {
        with: Line::new("Ines Abara").unwrap(),
        signs: open.iter().map(|open| open.key).collect(),
        closes_pause: true,
    });
    let today = home.json(Request::Today);
    assert!(today["look_forward"].as_str().unwrap().contains("a walk by the river"));
}

#[test]
fn where_staying_is_said_nothing_asks_for_more_before_going_back() {
    let mut plan: Value = serde_json::from_str(PLAN).unwrap();
    let all = plan["rule"]["step_up"]["all_of"].as_array_mut().unwrap();
    all.push(json!({ "criterion": "feels_ready" }));
    let mut home = Home::new(START);
    home.tell(Told::unsigned(&plan.to_string()));
    home.tell(Told::ConfirmStep);
    let screen = home.json(Request::Suggestion);
    assert_eq!(screen["outcome"], "hold");
    let does = actions(&screen);
    assert_eq!(does.first().map(String::as_str), Some("today"), "{does:?}");
    assert_eq!(does.last().map(String::as_str), Some("feels_ready"), "{does:?}");
    assert_eq!(does.iter().filter(|one| *one == "today").count(), 1);
    let label = screen["actions"].as_array().unwrap().last().unwrap()["label"].clone();
    assert!(!label.as_str().unwrap().ends_with('?'), "a button that asks: {label}");
    // Where there is a choice, its answers come first.
    let mut home = Home::with_plan(START);
    for _ in 0..3 {
        home.pass(DAY);
        home.tell(Told::Session(session(140, 8, Some(2))));
    }
    let does = actions(&home.json(Request::Suggestion));
    assert!(does[0].contains("choose") && does[1].contains("choose"), "{does:?}");
    assert_eq!(does.last().map(String::as_str), Some("today"), "{does:?}");
}

#[test]
fn on_today_a_yes_stands_with_its_no_or_says_what_it_says_yes_to() {
    let mut home = Home::new(START);
    home.tell(Told::unsigned(PLAN));
    let today = home.json(Request::Today);
    assert_eq!(today["next"]["does"], "step_check", "{today}");
    let check = home.json(Request::StepCheck);
    assert_eq!(check["next"]["does"], "confirm_step");
    assert_eq!(actions(&check)[0], "ladder");

    let mut home = Home::with_plan(START);
    home.set_wall(2 * 60 * 60 * 1000);
    let today = home.json(Request::Today);
    let notices = today["notices"].as_array().unwrap();
    let clock = notices.iter().find(|one| one["action"]["does"] == "confirm_time").unwrap();
    let yes = clock["action"]["label"].as_str().unwrap();
    assert_eq!(yes, "Yes, it is Monday 2 March 2026, 10:00");
    assert!(clock["text"].as_str().unwrap().contains("set that clock first"), "{clock}");
}

#[test]
fn what_is_not_in_a_summary_says_so_line_by_line() {
    let mut home = Home::with_plan(START);
    let selection = Selection {
        from: "2026-03-01".parse().ok(),
        to: "2026-03-02".parse().ok(),
        notes: false,
        questions: false,
    };
    let screen = home.json(Request::Summary(selection));
    let out = texts(&screen["preview"]["leaves_out"]);
    assert_eq!(out.len(), 6, "{out:?}");
    let itself = |line: &&str| {
        line.starts_with("Not in it: ")
            || line.starts_with("Never in it: ")
            || line.starts_with("Whoever reads it")
    };
    assert!(out.iter().all(itself), "{out:?}");
    for line in texts(&screen["preview"]["holds"]) {
        assert!(!line.contains("nobody's business") && !line.contains("in it"), "{line}");
    }
}

#[test]
fn before_a_trainer_is_used_it_is_said_what_to_look_at() {
    let mut home = Home::with_plan(START);
    answered(&mut home);
    let cautions = |screen: &Value| texts(&screen["cautions"]).join("\n");
    let ready = cautions(&home.json(Request::Begin(Begin::Step)));
    for care in ["a lubricant made with water", "warm water and soap", "that the surface is smooth"]
    {
        assert!(ready.contains(care), "{care}: {ready}");
    }
    let running = cautions(&home.json(Request::During(Event::Begin { part: 0 })));
    assert!(!running.contains("lubricant"), "{running}");
    assert!(running.contains("Stopping is always right"), "{running}");
    home.ask(Request::During(Event::Stop));
    let mut home = Home::with_plan(START);
    let breathing = cautions(&home.json(begin_breathing()));
    assert!(!breathing.contains("lubricant"), "{breathing}");
}

/// What the clinician wrote for this person stands beside the clock too, before a part and while it runs.
#[test]
fn the_clinicians_own_cautions_stand_beside_a_practice_that_runs() {
    let own = "Not on days with a new dressing: wait for me.";
    let mut home = home_with(&json!({ "own_cautions": [own] }));
    answered(&mut home);
    for request in [Request::Begin(Begin::Step), Request::During(Event::Begin { part: 0 })] {
        let screen = home.json(request);
        assert!(texts(&screen["cautions"]).contains(&own), "{screen}");
    }
}

#[test]
fn a_plan_is_said_to_the_person_without_what_only_programs_read() {
    let key = "age1pyqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqq8r66x";
    let entry = "0123456789abcdef0123456789abcdef";
    let lines = json!({
        "signs_seen": [{ "entry": entry, "sign": "fever" }],
        "recipients": [{ "name": "Ines Abara", "key": key }],
        "activities": ["cycling"],
    });
    let plan = plan_with(&lines);
    let read: Programme = read(plan.as_bytes()).unwrap();
    for language in ["en", "es"] {
        let words = Words::for_language(language);
        let whole = read_back(&read, &words).join("\n");
        let said = read_back_to_person(&read, &words);
        let ids = ["invented-home-plan", key, entry, "(id ", "UTC", "«en»", "\"en\""];
        for id in ids {
            assert!(said.iter().all(|line| !line.contains(id)), "{id}: {said:?}");
        }
        for id in [key, entry, "(id one)"] {
            assert!(whole.contains(id), "whoever wrote it reads every line: {id}");
        }
        assert!(said.iter().any(|line| line.contains(&key[key.len() - 6..])), "{said:?}");
        assert_eq!(said.len(), read_back(&read, &words).len());
    }
    // Nothing calls whoever reads it by another word than "the person".
    let english = read_back(&read, &Words::for_language("en")).join(" ");
    let words: BTreeSet<&str> = english.split_whitespace().collect();
    assert!(!words.contains("she") && !words.contains("her"), "{english}");
    let mut home = Home::new(START);
    let screen = home.json(Request::Accept(Handed::text(&plan)));
    assert_eq!(texts(&screen["sentences"]), read_back_to_person(&read, &Words::for_language("en")));
    home.tell(Told::unsigned(&plan));
    let screen = home.json(Request::Plan);
    assert_eq!(texts(&screen["sentences"]), read_back_to_person(&read, &Words::for_language("en")));
}

#[test]
fn another_key_under_the_same_name_is_still_told_apart() {
    let (one, other) = (
        "age1pyqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqqq8r66x",
        "age1qqqsyqcyq5rqwzqfpg9scrgwpugpzysnzs23v9ccrydpk8qarc0savhh7m",
    );
    let plan = |key: &str, seen: &str, revision: u32| {
        plan_with(&json!({
            "revision": revision,
            "recipients": [{ "name": "Ines Abara", "key": key }],
            "signs_seen": [{ "entry": seen, "sign": "fever" }],
        }))
    };
    let (first, second) = ("0".repeat(31) + "1", "0".repeat(31) + "2");
    let mut home = Home::new(START);
    home.tell(Told::unsigned(&plan(one, &first, 1)));
    let screen = home.json(Request::Accept(Handed::text(&plan(other, &second, 2))));
    let lines = texts(&screen["different"]["lines"]).join("\n");
    assert!(lines.contains(&other[other.len() - 6..]), "{lines}");
    assert!(lines.contains(&one[one.len() - 6..]), "{lines}");
    assert!(!lines.contains(other), "{lines}");
    // Which entry is closed is told by its id alone.
    assert!(lines.contains(&first) && lines.contains(&second), "{lines}");
}

#[test]
fn one_session_is_one_session() {
    let mut plan: Value = serde_json::from_str(PLAN).unwrap();
    plan["rule"] = json!({
        "step_up": { "all_of": [
            { "criterion": "discomfort_at_most", "rating": "peak", "at_most": 3, "last": 1 },
            { "criterion": "sessions", "practised_days": 1, "within_days": 1 }
        ] },
        "step_back": [ {
            "when": { "criterion": "discomfort_at_least", "rating": "peak", "at_least": 7, "window": { "sessions": 1, "of_last": 1 } },
            "target": "previous"
        } ],
        "pause": [
            { "criterion": "stopped_early", "window": { "sessions": 1, "of_last": 1 } },
            { "criterion": "steps_back", "times": 1, "within_days": 1 }
        ],
        "after_gap_days": 14
    });
    let plan = plan.to_string();
    for (language, wrong) in [
        ("en", ["1 full sessions", "1 sessions", "1 times", "1 days", "last 1 "]),
        ("es", ["1 sesiones", "últimas 1", "1 veces", "1 días", "últimos 1"]),
    ] {
        let mut home = Home::new(START);
        home.tell(Told::unsigned(&plan));
        home.tell(Told::ConfirmStep);
        home.tell(Told::Session(stopped(140, 4, Reason::Upset)));
        let language = Line::new(language).ok();
        home.tell(Told::Settings(Settings { language, ..Settings::default() }));
        let said = home.json(Request::Suggestion)["reasons"].to_string();
        assert!(said.contains("criterion"), "{said}");
        for wrong in wrong {
            assert!(!said.contains(wrong), "{wrong:?} in {said}");
        }
    }
}
