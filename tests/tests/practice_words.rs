//! Every word of the screens of practising, of the questions about health, of accepting a plan and of
//! reminders, in the situations that matter, held still. The plan and what is told are invented.

use frond_core::companion::{ReminderChange, Request, Told, Write};
use frond_core::diary::entry::{Answer, Asked, Ratings, ScreeningAnswer};
use frond_core::handover::Handed;
use frond_core::practice::breathing::PresetId;
use frond_core::practice::timed::Event;
use frond_core::programme::values::{Line, Minutes, Practice, Rating};
use frond_core::reminders::{ClockTime, ClockTimes, QuietHours, Reminder, Weekdays, When};
use frond_core::safety::{Answer as Said, FullList, Sign, SignGroup};
use frond_core::screens::{Begin, Screen};
use frond_tests::home::{Home, PLAN, without_ids};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";

fn hold_still(name: &str, home: &mut Home, request: Request) {
    let mut screen = home.json(request);
    without_ids(&mut screen);
    insta::assert_json_snapshot!(name, screen);
}

fn no_to_everything() -> FullList {
    let mut list = FullList::default();
    for group in SignGroup::ALL {
        list.answer_group(group, Said::No);
    }
    list
}

fn pass_seconds(home: &mut Home, seconds: u64) {
    home.set_wall(i64::try_from(seconds).unwrap() * 1000);
    if let Some(uptime) = home.moment.uptime.as_mut() {
        uptime.millis += seconds * 1000;
    }
}

#[test]
fn before_any_plan() {
    let mut home = Home::new(START);
    hold_still("no_plan_practices", &mut home, Request::Practices);
    hold_still("no_plan_breathing", &mut home, Request::Breathing);
    hold_still("no_plan_reminders", &mut home, Request::Reminders);
    hold_still("no_plan_step_check", &mut home, Request::StepCheck);
    hold_still("accept", &mut home, Request::Accept(Handed::text(PLAN)));
    let broken = PLAN.replacen("\"review_by\"", "\"review_bye\"", 1);
    hold_still("accept_refused", &mut home, Request::Accept(Handed::text(&broken)));
}

#[test]
fn questions_about_health() {
    let mut home = Home::new(START);
    home.tell(Told::unsigned(PLAN));
    hold_still("step_check", &mut home, Request::StepCheck);
    home.tell(Told::ConfirmStep);
    let none = Request::Screening { so_far: FullList::default(), sent: false };
    hold_still("screening", &mut home, none);
    let mut some = no_to_everything();
    some.answer_group(SignGroup::Bleeding, Said::Yes);
    some.answer(Sign::Spotting, Said::NotSure);
    let sent = Request::Screening { so_far: some, sent: true };
    hold_still("screening_unfinished", &mut home, sent);
    hold_still("hold_questions", &mut home, Request::HoldQuestions);
    home.tell(Told::FullList(no_to_everything()));
    home.pass(24);
    hold_still("anything_new", &mut home, Request::Begin(Begin::Step));
}

#[test]
fn a_practice_with_its_clock() {
    let mut home = Home::with_plan(START);
    home.tell(Told::FullList(no_to_everything()));
    hold_still("practices", &mut home, Request::Practices);
    hold_still("breathing", &mut home, Request::Breathing);
    hold_still("running_ready", &mut home, Request::Begin(Begin::Step));
    hold_still("running", &mut home, Request::During(Event::Begin { part: 0 }));
    pass_seconds(&mut home, 65);
    hold_still("running_paused", &mut home, Request::During(Event::Pause));
    let mut home = home.reopen();
    hold_still("found", &mut home, Request::Home);
    hold_still("today_with_a_practice_found", &mut home, Request::Today);
    home.ask(Request::Found(frond_core::practice::timed::Choice::GoOn));
    hold_still("stopped", &mut home, Request::During(Event::Stop));
    hold_still("rate_stopped", &mut home, Request::Rate);
    let Screen::Rate(form) = home.ask(Request::Rate) else { panic!() };
    let ratings =
        Ratings { peak: Some(Answer::Rated(Rating::new(2).unwrap())), ..Ratings::default() };
    let told = Told::Session(frond_core::companion::SessionTold {
        practice: form.practice,
        parts: form.parts,
        position: form.position,
        ended: form.ended_unsaid,
        ratings,
        signs: vec![],
        note: None,
    });
    home.ask(Request::Write(Write { id: form.id, happened: Some(form.happened), told }));
    hold_still("rate_as_planned", &mut home, Request::LogAsPlanned);
    let even = Begin::Breathing { preset: PresetId::Even, minutes: Minutes::new(5).unwrap() };
    hold_still("running_breathing", &mut home, Request::Begin(even));
}

#[test]
fn on_a_second_size_a_smaller_one_is_one_tap_away() {
    let mut home = Home::with_plan(START);
    home.tell(Told::FullList(no_to_everything()));
    let to = frond_core::programme::values::StepId::new("two").unwrap();
    home.tell(Told::Step { to, why: frond_core::diary::entry::Why::OwnChoice });
    hold_still("running_second_size", &mut home, Request::Begin(Begin::Step));
}

#[test]
fn what_is_said_after_an_answer() {
    let mut home = Home::with_plan(START);
    let answer = |answer| Told::Screening { asked: Asked::AnythingNew, answer, signs: vec![] };
    for (name, told) in [
        ("kept_full_list", Told::FullList(no_to_everything())),
        ("kept_not_today", answer(ScreeningAnswer::NotToday)),
        ("kept_nothing_new", answer(ScreeningAnswer::NothingNew)),
        ("kept_something", answer(ScreeningAnswer::Something)),
        ("kept_reminders", Told::Reminders(ReminderChange::On(true))),
    ] {
        let (_, screen) = home.tell(told);
        let mut screen = serde_json::to_value(screen).unwrap();
        without_ids(&mut screen);
        insta::assert_json_snapshot!(name, screen);
    }
}

#[test]
fn reminders_as_they_are_set() {
    let mut home = Home::with_plan(START);
    home.tell(Told::FullList(no_to_everything()));
    let nine =
        ClockTimes::try_from(vec![ClockTime::new(9, 0).unwrap(), ClockTime::new(22, 30).unwrap()])
            .unwrap();
    let days = Weekdays::new([chrono::Weekday::Mon, chrono::Weekday::Thu]).unwrap();
    let times = When::Times { days: Weekdays::ALL, at: nine };
    let after = |about| When::After { routine: Line::new("my tea").unwrap(), days, about };
    for when in [times, after(None), after(ClockTime::new(16, 0).ok())] {
        let reminder = Reminder { practice: Practice::Breathing, when, skip_when_done: true };
        home.tell(Told::Reminders(ReminderChange::Add(reminder)));
    }
    let quiet = QuietHours::new(ClockTime::new(22, 0).unwrap(), ClockTime::new(7, 0).unwrap());
    home.tell(Told::Reminders(ReminderChange::Quiet(quiet.ok())));
    home.tell(Told::Reminders(ReminderChange::On(true)));
    hold_still("reminders", &mut home, Request::Reminders);
}
