//! A practice behind the one door: what comes before it, the clock, a killed process, a stop, and how it
//! is written down. The plan and what is told are invented.

use frond_core::companion::{
    Companion, Duty, Refusal, ReminderChange, Request, SessionTold, Told, Trouble, Write,
};
use frond_core::diary::entry::{Answer, Asked, Content, Ended, Ratings, ScreeningAnswer, Settings};
use frond_core::handover::Handed;
use frond_core::moment::{Moment, Uptime};
use frond_core::practice::breathing::{CueKind, CueKinds, PresetId};
use frond_core::practice::timed::{Choice, Event, State};
use frond_core::programme::values::{Minutes, Practice, Rating};
use frond_core::reminders::{ClockTime, ClockTimes, Reminder, SnoozeMinutes, Weekdays, When};
use frond_core::safety::{Answer as Said, FullList, HoldCondition, Sign, SignGroup};
use frond_core::screens::{Begin, Does, RateScreen, RunningScreen, Screen};
use frond_tests::home::{Home, PLAN};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";

fn no_to_everything() -> FullList {
    let mut list = FullList::default();
    for group in SignGroup::ALL {
        list.answer_group(group, Said::No);
    }
    list
}

/// The plan accepted, the step confirmed, the whole list answered with no.
fn ready() -> Home {
    let mut home = Home::with_plan(START);
    home.tell(Told::FullList(no_to_everything()));
    home
}

fn seconds(home: &mut Home, seconds: u64) {
    home.set_wall(i64::try_from(seconds).unwrap() * 1000);
    if let Some(uptime) = home.moment.uptime.as_mut() {
        uptime.millis += seconds * 1000;
    }
}

fn running(screen: Screen) -> RunningScreen {
    match screen {
        Screen::Running(screen) => screen,
        other => panic!("{}", serde_json::to_string(&other).unwrap()),
    }
}

fn rate(screen: Screen) -> RateScreen {
    match screen {
        Screen::Rate(screen) => screen,
        other => panic!("{}", serde_json::to_string(&other).unwrap()),
    }
}

fn during(home: &mut Home, event: Event) -> Screen {
    home.ask(Request::During(event))
}

/// What a shell makes of the form, with the least that must be answered.
fn told(screen: &RateScreen, peak: u64) -> Told {
    Told::Session(SessionTold {
        practice: screen.practice.clone(),
        parts: screen.parts.clone(),
        position: screen.position,
        ended: screen.ended_unsaid,
        ratings: Ratings {
            peak: Some(Answer::Rated(Rating::new(peak).unwrap())),
            ..Ratings::default()
        },
        signs: vec![],
        note: None,
    })
}

#[test]
fn before_trainers_the_list_where_it_is_due_then_one_question_each_time() {
    let mut home = Home::with_plan(START);
    assert!(matches!(home.ask(Request::Begin(Begin::Step)), Screen::Screening(_)));
    home.tell(Told::FullList(no_to_everything()));
    // The list counts as the question for the session that follows.
    running(home.ask(Request::Begin(Begin::Step)));
    during(&mut home, Event::Begin { part: 0 });
    seconds(&mut home, 300);
    let Screen::Stopped(_) = during(&mut home, Event::Stop) else { panic!() };
    let form = rate(home.ask(Request::Rate));
    home.ask(Request::Write(Write {
        id: form.id,
        happened: Some(form.happened),
        told: told(&form, 1),
    }));
    // The next session, the same day.
    assert!(matches!(home.ask(Request::Begin(Begin::Step)), Screen::AnythingNew(_)));
    let nothing = |answer| Told::Screening { asked: Asked::AnythingNew, answer, signs: vec![] };
    let (_, screen) = home.tell(nothing(ScreeningAnswer::NotToday));
    let Screen::Kept(kept) = screen else { panic!() };
    assert_eq!(kept.next.does, Does::Breathing);
    assert!(matches!(home.ask(Request::Begin(Begin::Step)), Screen::AnythingNew(_)));
    let (_, screen) = home.tell(nothing(ScreeningAnswer::NothingNew));
    let Screen::Kept(kept) = screen else { panic!() };
    assert_eq!(kept.next.does, Does::Begin(Begin::Step));
    running(home.ask(Request::Begin(Begin::Step)));
}

#[test]
fn an_answer_of_yesterday_does_not_open_a_session_of_today() {
    let mut home = ready();
    home.pass(24);
    assert!(matches!(home.ask(Request::Begin(Begin::Step)), Screen::AnythingNew(_)));
}

#[test]
fn a_list_that_is_not_answered_to_the_end_is_not_taken() {
    let mut home = Home::with_plan(START);
    let mut list = no_to_everything();
    list.answer_group(SignGroup::Bleeding, Said::NotSure);
    let Trouble::PutRight(Refusal::Unanswered(left)) =
        home.refused(None, Told::FullList(list.clone()))
    else {
        panic!()
    };
    assert_eq!(left, SignGroup::Bleeding.signs().len());
    let Screen::Screening(screen) = home.ask(Request::Screening { so_far: list, sent: true })
    else {
        panic!()
    };
    assert!(screen.left.is_some());
    let open: Vec<SignGroup> =
        screen.groups.iter().filter(|group| group.open).map(|group| group.group).collect();
    assert_eq!(open, [SignGroup::Bleeding]);
}

#[test]
fn while_a_pause_stands_nothing_with_trainers_begins() {
    let mut home = ready();
    home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    assert!(matches!(home.ask(Request::Begin(Begin::Step)), Screen::StopAndCall(_)));
    assert!(matches!(home.ask(Request::LogAsPlanned), Screen::StopAndCall(_)));
    let even = Begin::Breathing { preset: PresetId::Even, minutes: Minutes::new(3).unwrap() };
    running(home.ask(Request::Begin(even)));
}

#[test]
fn in_an_emergency_not_even_breathing_is_offered() {
    let mut home = ready();
    home.tell(Told::Signs { signs: vec![Sign::HeavyBleeding], note: None });
    let even = Begin::Breathing { preset: PresetId::Even, minutes: Minutes::new(3).unwrap() };
    assert!(matches!(home.ask(Request::Begin(even)), Screen::StopAndCall(_)));
    let Screen::Breathing(screen) = home.ask(Request::Breathing) else { panic!() };
    assert!(screen.presets.is_empty());
    // Today says the one thing, and nothing beside it.
    let Screen::Today(today) = home.ask(Request::Today) else { panic!() };
    assert_eq!(today.notices.len(), 1);
    assert_eq!(today.next.does, Does::StopAndCall);
    assert!(today.enough.is_none() && today.step.is_none() && today.practices.is_empty());
}

#[test]
fn n2_a_routine_stands_on_today_where_reminders_are_on() {
    let mut home = ready();
    let routine = frond_core::programme::values::Line::new("my tea").unwrap();
    let when = When::After { routine, days: Weekdays::ALL, about: None };
    let reminder = Reminder { practice: Practice::Breathing, when, skip_when_done: true };
    home.tell(Told::Reminders(ReminderChange::Add(reminder)));
    let Screen::Today(today) = home.ask(Request::Today) else { panic!() };
    assert!(today.routines.is_empty(), "off until turned on");
    home.tell(Told::Reminders(ReminderChange::On(true)));
    let Screen::Today(today) = home.ask(Request::Today) else { panic!() };
    assert_eq!(today.routines, ["After my tea: Slow breathing"]);
}

#[test]
fn h17_stop_is_the_first_button_and_is_heard_though_the_disk_is_full() {
    let mut home = ready();
    let screen = running(home.ask(Request::Begin(Begin::Step)));
    assert_eq!(screen.buttons.first().map(|button| button.event), Some(Event::Stop));
    let screen = running(during(&mut home, Event::Begin { part: 0 }));
    assert_eq!(screen.buttons.first().map(|button| button.event), Some(Event::Stop));
    // From the very next write on. What is no stop is refused then, so the disk really is full.
    home.disk.fail(frond_core::ports::sim::Call::Write, 0, true);
    assert!(home.companion.ask(Request::During(Event::Pause), &home.moment).is_err());
    let Screen::Stopped(screen) = during(&mut home, Event::Stop) else { panic!() };
    assert!(screen.stopped.let_out.is_some());
}

#[test]
fn a_killed_practice_counts_what_is_certain_and_asks() {
    let mut home = ready();
    home.ask(Request::Begin(Begin::Step));
    during(&mut home, Event::Begin { part: 0 });
    for _ in 0..20 {
        seconds(&mut home, 15);
        during(&mut home, Event::Seen);
    }
    let mut home = home.reopen();
    seconds(&mut home, 3600);
    let Screen::Found(found) = home.ask(Request::Home) else { panic!() };
    assert_eq!(found.choices.len(), 3);
    // Another is not begun over it.
    assert!(matches!(home.ask(Request::Begin(Begin::Step)), Screen::Found(_)));
    let screen = running(home.ask(Request::Found(Choice::GoOn)));
    assert_eq!(screen.view.part_millis, 300_000);
    seconds(&mut home, 60);
    let mut home = home.reopen();
    let form = rate(home.ask(Request::Found(Choice::Finish)));
    let practised: u32 = form.parts.iter().map(|part| part.practised_seconds).sum();
    assert!((300..=360).contains(&practised), "{practised}");
    // Killed once more before it is written down: it is still there, and is written once.
    let mut home = home.reopen();
    let again = rate(home.ask(Request::Found(Choice::Finish)));
    assert_eq!(again.id, form.id);
    let write = || {
        Request::Write(Write { id: form.id, happened: Some(form.happened), told: told(&form, 2) })
    };
    home.ask(write());
    home.ask(write());
    let sessions = home.companion.entries().unwrap();
    let sessions = sessions.iter().filter(|one| matches!(one.what, Content::Session(_))).count();
    assert_eq!(sessions, 1);
    assert!(matches!(home.ask(Request::Home), Screen::Today(_)));
    let mut home = home.reopen();
    assert!(matches!(home.ask(Request::Home), Screen::Today(_)));
}

#[test]
fn a_crash_after_the_session_was_written_finds_no_practice_again() {
    let mut home = ready();
    home.ask(Request::Begin(Begin::Step));
    during(&mut home, Event::Begin { part: 0 });
    seconds(&mut home, 300);
    during(&mut home, Event::Stop);
    let form = rate(home.ask(Request::Rate));
    // The session is written; what was kept of the practice cannot be put away.
    home.disk.fail(frond_core::ports::sim::Call::Remove, 1, true);
    let told = told(&form, 1);
    home.ask(Request::Write(Write { id: form.id, happened: Some(form.happened), told }));
    let mut home = home.reopen();
    assert!(matches!(home.ask(Request::Home), Screen::Today(_)));
}

#[test]
fn a_clock_set_back_in_the_middle_does_not_keep_the_session_from_being_written() {
    let mut home = ready();
    home.ask(Request::Begin(Begin::Step));
    during(&mut home, Event::Begin { part: 0 });
    seconds(&mut home, 300);
    home.set_wall(-3_600_000);
    during(&mut home, Event::Stop);
    let form = rate(home.ask(Request::Rate));
    let told = told(&form, 1);
    home.ask(Request::Write(Write { id: form.id, happened: Some(form.happened), told }));
    assert!(matches!(home.ask(Request::Home), Screen::Today(_)));
}

#[test]
fn a_practice_found_can_be_left_out_and_a_second_tap_changes_nothing() {
    let mut home = ready();
    home.ask(Request::Begin(Begin::Step));
    during(&mut home, Event::Begin { part: 0 });
    let mut home = home.reopen();
    home.ask(Request::Found(Choice::Discard));
    assert!(matches!(home.ask(Request::Home), Screen::Today(_)));
    assert!(!matches!(home.ask(Request::Found(Choice::GoOn)), Screen::Running(_)));
    let mut home = home.reopen();
    assert!(matches!(home.ask(Request::Home), Screen::Today(_)));
}

#[test]
fn a_damaged_record_is_said_and_can_be_put_away() {
    let mut home = ready();
    home.ask(Request::Begin(Begin::Step));
    let path = std::path::Path::new(frond_tests::home::FOLDER).join("running");
    home.disk.tamper(&path, b"nothing of the kind".to_vec());
    let mut home = home.reopen();
    let Screen::Found(found) = home.ask(Request::Home) else { panic!() };
    assert_eq!(found.choices.iter().map(|choice| choice.0).collect::<Vec<_>>(), [Choice::Discard]);
    home.ask(Request::Found(Choice::Discard));
    assert!(matches!(home.ask(Request::Home), Screen::Today(_)));
}

#[test]
fn an_uneventful_session_takes_three_taps() {
    let mut home = ready();
    // One: "Done as planned". Two: a rating. Three: "Keep".
    let Screen::Today(today) = home.ask(Request::Today) else { panic!() };
    assert!(today.actions.iter().any(|action| action.does == Does::LogAsPlanned));
    let form = rate(home.ask(Request::LogAsPlanned));
    assert_eq!((form.ratings.len(), form.ended_unsaid == Ended::Finished), (1, true));
    let write = Write { id: form.id, happened: Some(form.happened), told: told(&form, 2) };
    let Screen::Kept(kept) = home.ask(Request::Write(write)) else { panic!() };
    assert_eq!(kept.next.does, Does::Suggestion);
}

#[test]
fn a_clock_that_ran_out_is_over_when_it_is_looked_at() {
    let mut home = ready();
    home.ask(Request::Begin(Begin::Practice(0)));
    during(&mut home, Event::Begin { part: 0 });
    seconds(&mut home, 5 * 3600);
    let form = rate(home.ask(Request::Practice));
    assert!(form.ended_unsaid == Ended::Finished);
}

/// W14.
#[test]
fn what_the_clock_reaches_is_told_once_it_is_chosen_and_only_where_there_is_something_to_say() {
    let mut home = ready();
    home.ask(Request::Begin(Begin::Step));
    let screen = running(during(&mut home, Event::Begin { part: 0 }));
    assert!(screen.mark.is_none(), "no sound until it is chosen");
    let cues = CueKinds { vibration: true, ..CueKinds::default() };
    home.tell(Told::Settings(Settings { cues, ..Settings::default() }));
    loop {
        let screen = running(home.ask(Request::Practice));
        let Some(next) = screen.view.next_in_millis else { panic!("it runs") };
        let mark = screen.mark;
        seconds(&mut home, next / 1000);
        let then = match home.ask(Request::Practice) {
            Screen::Running(screen) => screen.line,
            // Over: the last thing that was told.
            _ => {
                assert_eq!(
                    mark.unwrap().says,
                    "The time is over. Take your time with what comes next."
                );
                return;
            }
        };
        for mark in mark.iter() {
            assert_eq!((mark.in_millis, &mark.cues[..]), (next, &[CueKind::Vibration][..]));
        }
        assert_eq!(mark.map(|mark| mark.says), then, "what is said is what stands there then");
        if screen.view.part + 1 < screen.view.parts {
            during(&mut home, Event::Begin { part: screen.view.part + 1 });
        }
    }
}

#[test]
fn breathing_follows_the_pattern_it_was_begun_with() {
    let mut home = ready();
    let even = Begin::Breathing { preset: PresetId::Even, minutes: Minutes::new(3).unwrap() };
    let screen = running(home.ask(Request::Begin(even)));
    let pacer = screen.pacer.unwrap();
    assert_eq!((pacer.breath_millis, pacer.breaths, pacer.whole_millis), (10_000, 18, 180_000));
    assert!(pacer.cues.is_empty(), "no sound until it is chosen");
    let mut home = home.reopen();
    let screen = running(home.ask(Request::Found(Choice::GoOn)));
    assert_eq!(screen.pacer.unwrap().breath_millis, 10_000);
    assert_eq!(screen.view.state, State::Ready);
}

#[test]
fn h14_a_hold_of_the_plan_needs_all_questions_answered_without_a_condition() {
    let plan = PLAN.replacen(
        "\"practices\": [",
        r#""practices": [ { "practice": "belly_breathing", "name": "Invented breath", "minutes": { "least": 3, "most": 5 },
           "schedule": { "weekly_least": 1, "weekly_most": 7, "daily_most": 3 },
           "breath": { "in_tenths": 40, "hold_in_tenths": 20, "out_tenths": 40, "hold_out_tenths": 0 },
           "instruction": "Invented." },"#,
        1,
    );
    let answers = |answer: Said| HoldCondition::ALL.map(|one| (one, answer)).into_iter().collect();
    let breath = |home: &mut Home| {
        let begin =
            Begin::Breathing { preset: PresetId::Plan(0), minutes: Minutes::new(3).unwrap() };
        let screen = running(home.ask(Request::Begin(begin)));
        let millis = screen.pacer.unwrap().breath_millis;
        home.ask(Request::During(Event::Stop));
        let form = rate(home.ask(Request::Rate));
        home.ask(Request::Write(Write { id: form.id, happened: None, told: told(&form, 0) }));
        millis
    };
    let mut home = Home::new(START);
    home.tell(Told::unsigned(&plan));
    let Screen::Breathing(screen) = home.ask(Request::Breathing) else { panic!() };
    assert!(screen.holds.is_some());
    assert_eq!(breath(&mut home), 8_000);
    let some = [(HoldCondition::Pregnancy, Said::No)].into_iter().collect();
    let left = home.refused(None, Told::HoldConditions(some));
    assert_eq!(left, Trouble::PutRight(Refusal::Unanswered(3)));
    home.tell(Told::HoldConditions(answers(Said::No)));
    assert_eq!(breath(&mut home), 10_000);
    let Screen::Breathing(screen) = home.ask(Request::Breathing) else { panic!() };
    assert!(screen.holds.is_none());
    home.tell(Told::HoldConditions(answers(Said::NotSure)));
    assert_eq!(breath(&mut home), 8_000);
    home.tell(Told::HoldConditions(answers(Said::No)));
    home.tell(Told::Signs { signs: vec![Sign::Pregnancy], note: None });
    assert_eq!(breath(&mut home), 8_000);
    // It survives the snapshot.
    home.companion.save().unwrap();
    let mut home = home.reopen();
    assert_eq!(breath(&mut home), 8_000);
}

fn planned(home: &mut Home, request: Request) -> Option<(usize, String)> {
    let answer = home.companion.ask(request, &home.moment).unwrap();
    answer.duties.into_iter().find_map(|duty| match duty {
        Duty::PlanReminders(plan) => Some((plan.reminders.len(), plan.words)),
        _ => None,
    })
}

fn every_day_at_nine(practice: Practice) -> Reminder {
    let at = ClockTimes::try_from(vec![ClockTime::new(9, 0).unwrap()]).unwrap();
    Reminder { practice, when: When::Times { days: Weekdays::ALL, at }, skip_when_done: true }
}

#[test]
fn reminders_are_off_until_turned_on_and_are_planned_after_every_entry() {
    let mut home = ready();
    assert_eq!(planned(&mut home, Request::Home), None);
    home.tell(Told::Reminders(ReminderChange::Add(every_day_at_nine(Practice::Trainer))));
    assert_eq!(planned(&mut home, Request::Home).unwrap().0, 0);
    home.tell(Told::Reminders(ReminderChange::On(true)));
    let (count, says) = planned(&mut home, Request::Home).unwrap();
    assert!(count > 10, "{count}");
    assert_eq!(says, "A moment for you");
    let key = home.companion.state().reminders().unwrap().key;
    // A sign to stop for silences them.
    let id = home.companion.new_id().unwrap();
    let told = Told::Signs { signs: vec![Sign::Fever], note: None };
    let silent = planned(&mut home, Request::Write(Write { id, happened: None, told })).unwrap();
    assert_eq!(silent.0, 0);
    let mut home = home.reopen();
    assert_eq!(home.companion.state().reminders().unwrap().key, key);
    home.tell(Told::Reminders(ReminderChange::Remove(every_day_at_nine(Practice::Trainer))));
    let Screen::Reminders(screen) = home.ask(Request::Reminders) else { panic!() };
    assert!(screen.reminders.is_empty() && screen.empty.is_some() && screen.calendar.is_none());
}

#[test]
fn a_reminder_put_off_comes_again_the_same_day_only() {
    let mut home = ready();
    assert_eq!(
        home.refused(None, Told::PutOff(SnoozeMinutes::new(30).unwrap())),
        Trouble::PutRight(Refusal::NotPutOff)
    );
    home.tell(Told::Reminders(ReminderChange::On(true)));
    home.tell(Told::PutOff(SnoozeMinutes::new(30).unwrap()));
    assert_eq!(planned(&mut home, Request::Home).unwrap().0, 1);
    home.pass(1);
    assert_eq!(planned(&mut home, Request::Home).unwrap().0, 0);
}

#[test]
fn a_calendar_file_is_a_duty_and_holds_neutral_words_only() {
    let mut home = ready();
    let none = home.companion.ask(Request::CalendarFile, &home.moment).unwrap();
    assert!(none.duties.is_empty());
    home.tell(Told::Reminders(ReminderChange::Add(every_day_at_nine(Practice::Trainer))));
    let answer = home.companion.ask(Request::CalendarFile, &home.moment).unwrap();
    let [Duty::ShareFile(file)] = answer.duties.as_slice() else { panic!() };
    assert_eq!(file.name, "calendar.ics");
    let text = String::from_utf8(file.bytes.clone()).unwrap();
    assert!(text.contains("SUMMARY:A moment for you"), "{text}");
    assert!(!file.sealed && !text.to_lowercase().contains("frond"));
}

#[test]
fn without_running_time_nothing_is_timed_and_it_is_said() {
    let mut home = ready();
    home.moment = Moment::at(home.moment.now);
    let refused = home.companion.ask(Request::Begin(Begin::Step), &home.moment).err();
    assert_eq!(refused, Some(Trouble::PutRight(Refusal::NoRunningTime)));
}

#[test]
fn a_restart_of_the_device_in_the_middle_adds_nothing() {
    let mut home = ready();
    home.ask(Request::Begin(Begin::Step));
    during(&mut home, Event::Begin { part: 0 });
    seconds(&mut home, 120);
    during(&mut home, Event::Seen);
    let Home { disk, companion, mut moment } = home;
    drop(companion);
    let disk = disk.after_kill();
    moment.uptime = Some(Uptime { boot: 2, millis: 50_000 });
    let companion = Companion::open(
        &frond_tests::home::ports(&disk, 3),
        std::path::Path::new(frond_tests::home::FOLDER),
        &frond_tests::home::keeper(),
        "en",
        &moment,
    )
    .unwrap();
    let mut home = Home { disk, companion, moment };
    let screen = running(home.ask(Request::Found(Choice::GoOn)));
    assert_eq!(screen.view.part_millis, 120_000);
}

#[test]
fn nothing_of_a_plan_is_kept_before_it_is_accepted() {
    let mut home = Home::new(START);
    let Screen::Accept(screen) = home.ask(Request::Accept(Handed::text(PLAN))) else { panic!() };
    assert!(screen.yours.is_some_and(|yours| yours.contains("Wren")));
    assert!(home.companion.entries().unwrap().is_empty());
    assert!(home.companion.state().rule().programme().is_none());
}
