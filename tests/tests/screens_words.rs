//! Every word of every screen, in the situations that matter, held still. The plan and what is told are
//! invented.

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::Reason;
use frond_core::programme::values::{Line, Passage};
use frond_core::safety::Sign;
use frond_tests::home::{Home, session, stopped, without_ids};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";
const DAY: i64 = 24;

fn hold_still(name: &str, home: &mut Home, request: Request) {
    let mut screen = home.json(request);
    without_ids(&mut screen);
    insta::assert_json_snapshot!(name, screen);
}

#[test]
fn without_a_plan() {
    let mut home = Home::new(START);
    hold_still("no_plan_today", &mut home, Request::Today);
    hold_still("no_plan_log", &mut home, Request::LogSession);
    hold_still("no_plan_ladder", &mut home, Request::Ladder);
    hold_still("no_plan_suggestion", &mut home, Request::Suggestion);
    hold_still("no_plan_entries", &mut home, Request::Entries);
    hold_still("no_plan_spoke", &mut home, Request::Spoke);
    hold_still("no_plan_plan", &mut home, Request::Plan);
    hold_still("no_plan_whom_to_call", &mut home, Request::StopAndCall);
    home.tell(Told::Signs { signs: vec![Sign::SeverePain], note: None });
    hold_still("no_plan_stop_and_call", &mut home, Request::StopAndCall);
}

#[test]
fn on_a_first_day() {
    let mut home = Home::new(START);
    home.tell(Told::unsigned(frond_tests::home::PLAN));
    hold_still("first_today_unconfirmed", &mut home, Request::Today);
    home.tell(Told::ConfirmStep);
    hold_still("first_today", &mut home, Request::Today);
    hold_still("first_log", &mut home, Request::LogSession);
    hold_still("first_ladder", &mut home, Request::Ladder);
    hold_still("first_suggestion_hold", &mut home, Request::Suggestion);
    hold_still("first_signs", &mut home, Request::Signs);
    hold_still("first_whom_to_call", &mut home, Request::StopAndCall);
    hold_still("first_plan", &mut home, Request::Plan);
}

#[test]
fn through_the_outcomes() {
    let mut home = Home::with_plan(START);
    for _ in 0..3 {
        home.pass(DAY);
        home.tell(Told::Session(session(140, 8, Some(2))));
    }
    hold_still("up_today_done", &mut home, Request::Today);
    hold_still("up_suggestion", &mut home, Request::Suggestion);
    hold_still("up_entries", &mut home, Request::Entries);
    home.pass(DAY);
    home.tell(Told::LookForward(Passage::new("a walk by the river").unwrap()));
    home.tell(Told::Session(session(140, 8, None)));
    hold_still("unrated_suggestion", &mut home, Request::Suggestion);
    for _ in 0..2 {
        home.pass(DAY);
        home.tell(Told::Session(session(140, 8, Some(8))));
    }
    hold_still("back_on_first_step", &mut home, Request::Suggestion);
    let (_, screen) = home.tell(Told::Session(stopped(140, 1, Reason::Upset)));
    let mut kept = serde_json::to_value(screen).unwrap();
    without_ids(&mut kept);
    insta::assert_json_snapshot!("kept_stopped", kept);
}

#[test]
fn stop_and_call_and_the_talk() {
    let mut home = Home::with_plan(START);
    for sign in [Sign::Spotting, Sign::Fever, Sign::HeavyBleeding] {
        home.pass(1);
        home.tell(Told::Signs { signs: vec![sign], note: None });
        hold_still(&format!("stop_{sign:?}"), &mut home, Request::StopAndCall);
    }
    hold_still("paused_today", &mut home, Request::Today);
    hold_still("paused_suggestion", &mut home, Request::Suggestion);
    hold_still("paused_spoke", &mut home, Request::Spoke);
    home.pass(DAY);
    let signs = home.companion.state().rule().assess(&home.moment.now).open_signs;
    home.tell(Told::Spoke {
        with: Line::new("Ines Abara").unwrap(),
        signs: signs.iter().map(|open| open.key).collect(),
        closes_pause: true,
    });
    hold_still("cleared_today", &mut home, Request::Today);
}
