//! Every word of the screens around the practice, in the situations that matter, held still: first run,
//! calendar, one entry and its correction, the visit, pauses, the end, settings. Everything told is invented.

use frond_core::companion::{Recovery, Request, Told, Write};
use frond_core::diary::entry::{EntryId, Goal, Reason, Settled};
use frond_core::ports::sim::SeededRandom;
use frond_core::programme::values::{Line, Passage, Rating};
use frond_core::safety::Sign;
use frond_core::screens::{Covered, FirstRunPage};
use frond_core::sealing::RecoveryPhrase;
use frond_core::summary::Selection;
use frond_tests::home::{Home, PLAN, keeper, plan_with, session, stamp, stopped, without_ids};
use serde_json::{Value, json};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";
const DAY: i64 = 24;

fn line(text: &str) -> Line {
    Line::new(text).unwrap()
}

fn passage(text: &str) -> Passage {
    Passage::new(text).unwrap()
}

fn home_with(lines: &Value) -> Home {
    Home::with_this_plan(START, &plan_with(lines))
}

/// Everything that is said somewhere in a screen.
fn said(screen: &Value) -> String {
    match screen {
        Value::String(text) => format!("{text}\n"),
        Value::Array(items) => items.iter().map(said).collect(),
        Value::Object(fields) => fields.values().map(said).collect(),
        _ => String::new(),
    }
}

#[test]
fn the_first_run() {
    let mut home = Home::new(START);
    let pages: Vec<Value> =
        FirstRunPage::ALL.map(|page| home.still(Request::FirstRun(page))).into();
    for page in &pages {
        // Breathing and "something is not right" are in reach from every page.
        assert!(page.to_string().contains("\"signs\""), "{page}");
        assert!(said(page).contains("reath"), "{page}");
    }
    insta::assert_json_snapshot!("first_run", pages);
}

/// Hazard H18.
#[test]
fn the_first_run_offers_a_copy_and_says_what_happens_without() {
    let mut home = Home::new(START);
    let page = home.still(Request::FirstRun(FirstRunPage::Copy));
    assert_eq!(page["next"]["does"], "make_phrase");
    assert!(said(&page).contains("Without a copy elsewhere, it is gone"), "{page}");
    assert!(said(&page).contains("You can do this later"), "{page}");
    let phrase = RecoveryPhrase::new(&SeededRandom::new(77)).unwrap();
    let moment = home.moment;
    let companion = home.companion.new_keys(&keeper(), Recovery::By(&phrase), &moment);
    home.companion = companion.ok().unwrap();
    let page = home.still(Request::FirstRun(FirstRunPage::Copy));
    assert_eq!(page["next"]["does"], "make_copy");
    insta::assert_json_snapshot!("first_run_copy_with_phrase", page);
}

#[test]
fn a_month() {
    let mut home = Home::new(START);
    insta::assert_json_snapshot!("calendar_empty", home.still(Request::Calendar { month: None }));
    home.tell(Told::unsigned(PLAN));
    home.tell(Told::ConfirmStep);
    home.tell(Told::Session(session(140, 8, Some(2))));
    home.tell(Told::Session(session(140, 8, Some(2))));
    home.pass(2 * DAY);
    home.tell(Told::Signs { signs: vec![Sign::Spotting], note: None });
    home.tell(Told::TimeOff {
        from: "2026-03-10".parse().unwrap(),
        to: "2026-03-12".parse().unwrap(),
    });
    let struck = home.tell(Told::Session(session(140, 8, Some(2)))).0;
    home.tell(Told::Strike { of: struck });
    let month = home.still(Request::Calendar { month: Some((2026, 3)) });
    let days: Vec<&Value> = month["weeks"]
        .as_array()
        .unwrap()
        .iter()
        .flat_map(|week| week.as_array().unwrap())
        .filter(|day| !day["done"].as_array().unwrap().is_empty() || !day["opens"].is_null())
        .collect();
    insta::assert_json_snapshot!("calendar_days", days);
    insta::assert_json_snapshot!(
        "calendar_one_day",
        home.still(Request::Day("2026-03-11".parse().unwrap()))
    );
}

#[test]
fn a_calendar_shows_whole_weeks_and_no_day_twice_in_any_month() {
    let mut home = Home::with_plan(START);
    for year in [-9999, 1, 1999, 2024, 2026, 9999] {
        for month in 0..=13 {
            let screen = home.json(Request::Calendar { month: Some((year, month)) });
            let weeks = screen["weeks"].as_array().unwrap();
            assert!((4..=6).contains(&weeks.len()));
            let days: Vec<&Value> =
                weeks.iter().flat_map(|week| week.as_array().unwrap()).collect();
            assert_eq!(days.len(), weeks.len() * 7);
            let dates: std::collections::BTreeSet<&str> =
                days.iter().map(|day| day["date"].as_str().unwrap()).collect();
            assert_eq!(dates.len(), days.len());
            let inside = days.iter().filter(|day| day["in_month"] == true).count();
            assert!((28..=31).contains(&inside), "{year} {month}: {inside}");
        }
    }
    // The very edges of what dates can be written.
    for year in [i32::MIN, -262_143, 262_142, i32::MAX] {
        home.json(Request::Calendar { month: Some((year, 1)) });
        home.json(Request::Calendar { month: Some((year, 12)) });
    }
}

fn corrected(home: &mut Home) -> EntryId {
    let mut told = stopped(140, 4, Reason::Upset);
    told.note = Some(passage("it was loud outside"));
    told.signs = vec![Sign::Spotting];
    let of = home.tell(Told::Session(told.clone())).0;
    home.pass(1);
    told.note = Some(passage("it was loud outside, then better"));
    let told = Box::new(Told::Session(told));
    home.tell(Told::Correct { of, told });
    of
}

#[test]
fn one_entry() {
    let mut home = Home::with_plan(START);
    home.pass(DAY);
    let of = corrected(&mut home);
    insta::assert_json_snapshot!("entry_corrected", home.still(Request::Entry(of)));
    insta::assert_json_snapshot!("correct_session", home.still(Request::Correct(of)));
    home.tell(Told::Settled { of, answer: Settled::NotYet });
    let strike = home.tell(Told::Strike { of }).0;
    insta::assert_json_snapshot!("entry_left_out", home.still(Request::Entry(of)));
    // A strike names what it is about; struck itself, the entry counts again.
    assert_eq!(home.json(Request::Entry(strike)), home.json(Request::Entry(of)));
    home.tell(Told::Strike { of: strike });
    let again = home.json(Request::Entry(of));
    assert!(!said(&again).contains("Left out"), "{again}");
    // Told long after.
    let id = home.companion.new_id().unwrap();
    home.pass(3 * DAY);
    let happened = Some(stamp("2026-03-03T20:00:00+00:00[Europe/London]"));
    home.ask(Request::Write(Write { id, happened, told: Told::Session(session(140, 8, Some(1))) }));
    let late = home.still(Request::Entry(id));
    insta::assert_json_snapshot!("entry_late", late["notes"]);
    let clearing =
        home.tell(Told::Spoke { with: line("Ines Abara"), signs: vec![], closes_pause: false }).0;
    insta::assert_json_snapshot!("entry_spoke", home.still(Request::Entry(clearing)));
}

#[test]
fn what_can_be_put_right_and_what_can_only_be_left_out() {
    let mut home = home_with(&json!({ "activities": ["cycling"], "goals": ["sleep well"] }));
    let told = [
        ("question", Told::Question(passage("may I swim?"))),
        ("look_forward", Told::LookForward(passage("a walk by the river"))),
        ("function", Told::Function { activity: line("cycling"), able: Rating::new(6).unwrap() }),
        ("goal", Told::Goal { goal: line("sleep well"), reached: Goal::try_from(-1).unwrap() }),
        (
            "time_off",
            Told::TimeOff {
                from: "2026-03-10".parse().unwrap(),
                to: "2026-03-12".parse().unwrap(),
            },
        ),
        ("stay_here", Told::StayHere(true)),
    ];
    for (name, told) in told {
        let of = home.tell(told).0;
        insta::assert_json_snapshot!(format!("correct_{name}"), home.still(Request::Correct(of)));
    }
    let signs = vec![Sign::Spotting];
    let of = home.tell(Told::Signs { signs, note: Some(passage("a little")) }).0;
    let mut screen = home.still(Request::Correct(of));
    assert_eq!(screen["form"]["current"], json!(["spotting"]));
    assert!(said(&screen).contains("Nobody has been told"));
    // The list itself is held still with the screen of the cautions.
    screen["form"]["signs"].take();
    insta::assert_json_snapshot!("correct_signs", screen);
}

#[test]
fn questions_for_the_visit() {
    let mut home = Home::new(START);
    insta::assert_json_snapshot!("questions_empty", home.still(Request::Questions));
    home.tell(Told::Question(passage("may I swim?")));
    home.pass(1);
    let (left_out, mut kept) = home.tell(Told::Question(passage("is it normal?")));
    home.tell(Told::Strike { of: left_out });
    home.tell(Told::Question(passage("how long will it take?")));
    insta::assert_json_snapshot!("questions", home.still(Request::Questions)["questions"]);
    let mut kept = serde_json::to_value(&mut kept).unwrap();
    without_ids(&mut kept);
    insta::assert_json_snapshot!("questions_kept", kept);
}

/// Hazards H21 and H22.
#[test]
fn questions_say_that_nobody_reads_them_and_where_to_call() {
    let mut home = Home::with_plan(START);
    let screen = home.json(Request::Questions);
    assert!(said(&screen).contains("Nobody reads these until you share them."));
    assert!(said(&screen).contains("Is it something that cannot wait? Then call."));
    assert!(screen["actions"].as_array().unwrap().iter().any(|a| a["does"] == "stop_and_call"));
}

#[test]
fn activities_and_goals() {
    let mut home = Home::with_plan(START);
    insta::assert_json_snapshot!("activities_empty", home.still(Request::Activities));
    home = home_with(&json!({
        "activities": ["cycling", "sitting through a film"],
        "goals": ["sleep well"],
        "activities_every_days": 14
    }));
    insta::assert_json_snapshot!("activities", home.still(Request::Activities));
}

/// Hazard H8.
#[test]
fn no_earlier_rating_stands_where_an_activity_is_rated() {
    let mut home = home_with(&json!({ "activities": ["cycling"], "goals": ["sleep well"] }));
    let before = home.still(Request::Activities);
    home.tell(Told::Function { activity: line("cycling"), able: Rating::new(6).unwrap() });
    home.tell(Told::Goal { goal: line("sleep well"), reached: Goal::try_from(-1).unwrap() });
    assert_eq!(home.still(Request::Activities), before);
}

#[test]
fn activities_are_asked_as_often_as_the_plan_says_and_not_by_themselves_without() {
    let asks = |home: &mut Home| said(&home.json(Request::Today)).contains("what matters to you.");
    let mut home = home_with(&json!({ "activities": ["cycling"] }));
    assert!(!asks(&mut home));
    let mut home =
        home_with(&json!({ "activities": ["cycling", "films"], "activities_every_days": 14 }));
    assert!(asks(&mut home));
    let rate = |home: &mut Home, activity| {
        home.tell(Told::Function { activity: line(activity), able: Rating::new(6).unwrap() });
    };
    rate(&mut home, "cycling");
    assert!(asks(&mut home), "films were not rated yet");
    rate(&mut home, "films");
    assert!(!asks(&mut home));
    home.pass(13 * DAY);
    assert!(!asks(&mut home));
    home.pass(DAY);
    assert!(asks(&mut home));
    // It can wait: it is never the next thing to do.
    let today = home.json(Request::Today);
    assert_ne!(today["next"]["does"], "activities");
    let mut home = home.reopen();
    assert!(asks(&mut home));
}

#[test]
fn did_it_settle() {
    let mut home = Home::with_plan(START);
    let of = home.tell(Told::Session(session(140, 8, Some(3)))).0;
    home.pass(DAY);
    insta::assert_json_snapshot!("settled", home.still(Request::Settled(of)));
    insta::assert_json_snapshot!("settled_today", home.still(Request::Today)["notices"]);
    let kept = home.tell(Told::Settled { of, answer: Settled::NotYet }).1;
    let mut kept = serde_json::to_value(kept).unwrap();
    without_ids(&mut kept);
    assert_eq!(kept["next"]["does"], "signs");
    assert!(said(&kept).contains("Nobody has been told"));
    insta::assert_json_snapshot!("settled_not_yet_kept", kept);
}

#[test]
fn did_it_settle_is_asked_once_on_the_day_after_about_the_newest_session_that_was_felt() {
    let asked = |home: &mut Home| {
        let today = home.json(Request::Today);
        assert!(today["next"]["does"].get("settled").is_none(), "never the next thing to do");
        let notices = today["notices"].as_array().unwrap().clone();
        notices
            .iter()
            .find_map(|one| one["action"]["does"]["settled"]["of"].as_str().map(str::to_owned))
    };
    let mut home = Home::with_plan(START);
    home.tell(Told::Session(session(140, 8, Some(0))));
    home.pass(DAY);
    assert_eq!(asked(&mut home), None, "nothing was felt");
    home.tell(Told::Session(session(140, 8, Some(1))));
    let newest = home.tell(Told::Session(stopped(140, 1, Reason::DidNotGoIn))).0;
    assert_eq!(asked(&mut home), None, "not on the same day");
    home.pass(DAY);
    assert_eq!(asked(&mut home), Some(newest.to_string()));
    home = home.reopen();
    assert_eq!(asked(&mut home), Some(newest.to_string()));
    home.tell(Told::Settled { of: newest, answer: Settled::RatherNotSay });
    assert_eq!(asked(&mut home), None, "once");
    let late = home.tell(Told::Session(session(140, 8, Some(4)))).0;
    home.pass(2 * DAY);
    assert_eq!(asked(&mut home), None, "only the day after");
    // Left out, it is no longer the newest; nothing of it is asked.
    home.tell(Told::Strike { of: late });
    assert_eq!(asked(&mut home), None);
}

#[test]
fn time_off_and_something_to_look_forward_to() {
    let mut home = Home::new(START);
    insta::assert_json_snapshot!("time_off_empty", home.still(Request::TimeOff));
    insta::assert_json_snapshot!("look_forward_empty", home.still(Request::LookForward));
    for (from, to) in [("2026-01-10", "2026-01-12"), ("2026-03-01", "2026-03-03")] {
        let (from, to) = (from.parse().unwrap(), to.parse().unwrap());
        home.tell(Told::TimeOff { from, to });
    }
    home.tell(Told::LookForward(passage("a walk by the river")));
    insta::assert_json_snapshot!("time_off", home.still(Request::TimeOff)["standing"]);
    insta::assert_json_snapshot!("look_forward", home.still(Request::LookForward)["present"]);
}

#[test]
fn welcome_back() {
    let welcome = |home: &mut Home| home.still(Request::Today)["welcome"].clone();
    let mut home = Home::new(START);
    home.pass(30 * DAY);
    assert!(welcome(&mut home).is_null(), "nobody was here before");
    // This plan takes 14 days without practice for a gap.
    home = Home::with_plan(START);
    home.tell(Told::Session(session(140, 8, Some(1))));
    home.pass(13 * DAY);
    assert!(welcome(&mut home).is_null());
    home.pass(DAY);
    let back = welcome(&mut home);
    insta::assert_json_snapshot!("welcome_back", back);
    assert!(!said(&back).chars().any(|c| c.is_ascii_digit()), "nothing is counted");
    // Looking at the suggestion tells nothing.
    home.ask(Request::Suggestion);
    assert_eq!(welcome(&mut home), back);
    let mut home = home.reopen();
    home.tell(Told::TimeConfirmed);
    assert_eq!(welcome(&mut home), back);
    home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    home.pass(14 * DAY);
    insta::assert_json_snapshot!("welcome_back_paused", welcome(&mut home));
    home.tell(Told::Signs { signs: vec![Sign::HeavyBleeding], note: None });
    home.pass(14 * DAY);
    assert!(welcome(&mut home).is_null(), "in an emergency nothing but the call");
    // Without a plan.
    let mut home = Home::new(START);
    home.tell(Told::Question(passage("may I swim?")));
    home.pass(6 * DAY);
    assert!(welcome(&mut home).is_null());
    home.pass(DAY);
    insta::assert_json_snapshot!("welcome_back_no_plan", welcome(&mut home));
}

#[test]
fn the_end_of_the_programme() {
    let mut home = Home::new(START);
    insta::assert_json_snapshot!("ending_no_plan", home.still(Request::Ending));
    home = Home::with_plan(START);
    insta::assert_json_snapshot!("ending", home.still(Request::Ending));
    home.tell(Told::StayHere(true));
    let stays = home.still(Request::Ending)["ways"][1].clone();
    insta::assert_json_snapshot!("ending_stays", stays);
}

/// Hazard H11.
#[test]
fn what_this_phone_can_still_show_is_said_honestly() {
    let mut home = Home::new(START);
    let none = home.still(Request::Shows(Covered::default()));
    assert!(said(&none).contains("cannot make itself invisible"));
    insta::assert_json_snapshot!("shows_nothing_covered", none);
    let all = Covered {
        screen: true,
        pictures: true,
        keyboard: true,
        backups: true,
        reminders: true,
        leaves: true,
    };
    // Where pictures of the screen can be taken it is not said that they are kept from being taken.
    let pictures = home.still(Request::Shows(Covered { pictures: false, ..all }));
    let all = home.still(Request::Shows(all));
    let screen = |shows: &Value| shows["parts"][4]["frond"].clone();
    assert_ne!(screen(&pictures), screen(&all));
    assert_ne!(screen(&pictures), screen(&none));
    // Nothing is claimed but what the shell said that it does.
    for (at, part) in all["parts"].as_array().unwrap().iter().enumerate() {
        let same = part == &none["parts"][at];
        assert_eq!(same, ![1, 4, 5, 6].contains(&at), "{part}");
    }
    insta::assert_json_snapshot!("shows_covered", all["parts"]);
}

#[test]
fn settings_and_more() {
    let mut home = Home::new(START);
    insta::assert_json_snapshot!("settings", home.still(Request::Settings));
    insta::assert_json_snapshot!("more_no_plan", home.still(Request::More));
    home = Home::with_plan(START);
    insta::assert_json_snapshot!("more", home.still(Request::More));
}

#[test]
fn a_summary_being_put_together() {
    let mut home = Home::new(START);
    insta::assert_json_snapshot!(
        "summary_form_empty",
        home.still(Request::Summary(Selection::default()))
    );
    home = Home::with_plan(START);
    home.tell(Told::Session(session(140, 8, Some(1))));
    home.tell(Told::Question(passage("may I swim?")));
    let mut selection = Selection::default();
    let whole = home.still(Request::Summary(selection));
    selection.questions = false;
    selection.to = Some("2026-03-01".parse().unwrap());
    let narrowed = home.still(Request::Summary(selection));
    assert_ne!(whole["preview"]["holds"], narrowed["preview"]["holds"]);
    insta::assert_json_snapshot!("summary_form_narrowed", narrowed["preview"]);
    // The wish is asked, and never comes back in a screen.
    assert!(narrowed["preview"]["time_alone"].is_null());
}
