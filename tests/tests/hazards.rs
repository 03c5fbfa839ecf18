//! Controls of the hazard log that no other test held: each was taken away once and nobody noticed
//! (`tests/controls`). A test is named after its hazard. The plan and what is told are invented.

use std::path::Path;

use frond_core::companion::{
    Companion, Copy, CopyFrom, Duty, Recovery, ReminderChange, Request, Told,
};
use frond_core::diary::entry::{Content, Reason};
use frond_core::diary::erase::Erase;
use frond_core::ports::Disk;
use frond_core::ports::sim::{SeededRandom, SimDisk};
use frond_core::practice::breathing::PresetId;
use frond_core::programme::values::{Line, Practice};
use frond_core::progression::OutcomeKind;
use frond_core::reminders::{ClockTime, ClockTimes, Reminder, Weekdays, When};
use frond_core::safety::{Answer, HoldCondition, Sign};
use frond_core::screens::{ReadingScreen, Screen, WentApart};
use frond_core::sealing::RecoveryPhrase;
use frond_core::summary::{Selection, open_summary};
use frond_core::words::Words;
use frond_tests::home::{FOLDER, Home, PLAN, keeper, ports, session, stopped};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";

fn words(home: &mut Home, request: Request) -> String {
    home.json(request).to_string()
}

fn spoke_of_all(home: &mut Home) {
    let open = home.companion.state().rule().assess(&home.moment.now).open_signs;
    let signs = open.iter().map(|sign| sign.key).collect();
    home.tell(Told::Spoke { with: Line::new("Ines Abara").unwrap(), signs, closes_pause: true });
}

#[test]
fn h9_the_most_for_a_day_is_shown_kindly() {
    const ENOUGH: &str = "what the plan asks at most for one day";
    let mut home = Home::with_plan(START);
    assert!(!words(&mut home, Request::Today).contains(ENOUGH));
    home.pass(2);
    home.tell(Told::Session(session(140, 8, Some(1))));
    assert!(words(&mut home, Request::Today).contains(ENOUGH), "the plan asks for one a day");
    let Screen::Today(today) = home.ask(Request::Today) else { panic!("Today") };
    assert!(today.step.unwrap().enough);
    home.pass(24);
    assert!(!words(&mut home, Request::Today).contains(ENOUGH), "another day");
}

#[test]
fn h10_an_emergency_silences_every_reminder() {
    let at = ClockTimes::try_from(vec![ClockTime::new(9, 0).unwrap()]).unwrap();
    let when = When::Times { days: Weekdays::ALL, at };
    let breathing = Reminder { practice: Practice::Breathing, when, skip_when_done: true };
    let mut home = Home::with_plan(START);
    home.tell(Told::Reminders(ReminderChange::Add(breathing)));
    home.tell(Told::Reminders(ReminderChange::On(true)));
    let planned = |home: &mut Home| {
        let answer = home.companion.ask(Request::Home, &home.moment).unwrap();
        let mut plans = answer.duties.into_iter().filter_map(|duty| match duty {
            Duty::PlanReminders(plan) => Some(plan.reminders.len()),
            _ => None,
        });
        plans.next_back()
    };
    assert!(planned(&mut home) > Some(0));
    home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    assert!(planned(&mut home) > Some(0), "breathing may go on after a sign to stop for");
    home.tell(Told::Signs { signs: vec![Sign::HeavyBleeding], note: None });
    assert_eq!(planned(&mut home), Some(0));
    spoke_of_all(&mut home);
    assert!(planned(&mut home) > Some(0));
}

#[test]
fn h13_holds_stay_off_after_a_talk_about_a_pregnancy() {
    let plan = PLAN.replace("\"hold_in_tenths\": 0", "\"hold_in_tenths\": 20");
    assert_ne!(plan, PLAN);
    let mut home = Home::new(START);
    home.tell(Told::unsigned(&plan));
    let none = HoldCondition::ALL.map(|one| (one, Answer::No)).into_iter().collect();
    home.tell(Told::HoldConditions(none));
    let hold = |home: &mut Home| {
        let Screen::Breathing(screen) = home.ask(Request::Breathing) else { panic!("breathing") };
        let own = screen.presets.iter().find(|one| one.preset == PresetId::Plan(0)).unwrap();
        own.rhythm.contains("hold")
    };
    assert!(hold(&mut home), "the plan sets one and nothing forbids it");
    home.tell(Told::Signs { signs: vec![Sign::Pregnancy], note: None });
    assert!(!hold(&mut home));
    spoke_of_all(&mut home);
    assert!(!hold(&mut home), "the sign is closed, and she is as pregnant as before");
    let mut home = home.reopen();
    assert!(!hold(&mut home));
}

#[test]
fn h26_erasing_what_latched_a_pause_leaves_the_pause_open() {
    let mut home = Home::with_plan(START);
    let mut ids = Vec::new();
    for _ in 0..3 {
        home.pass(24);
        ids.push(home.tell(Told::Session(stopped(140, 2, Reason::Discomfort))).0);
    }
    let outcome =
        |home: &Home| home.companion.state().rule().assess(&home.moment.now).outcome.kind();
    assert_eq!(outcome(&home), OutcomeKind::PauseAndCall, "three of four were stopped");
    let moment = home.moment;
    for id in ids {
        home.companion = home.companion.erase(Erase::Entry(id), &keeper(), &moment).ok().unwrap();
        assert_eq!(outcome(&home), OutcomeKind::PauseAndCall);
    }
    let marked = home.companion.entries().unwrap().into_iter().all(|entry| match entry.what {
        Content::ErasedMark { pause_open, .. } => pause_open,
        _ => true,
    });
    assert!(marked);
    spoke_of_all(&mut home);
    assert_eq!(outcome(&home), OutcomeKind::Hold);
}

/// One copy, two phones: what is read at the visit says that it was restored.
#[test]
fn h38_a_summary_of_a_restored_diary_says_so_and_two_that_went_apart_have_one_mark() {
    let phrase = RecoveryPhrase::new(&SeededRandom::new(38)).unwrap();
    let mut home = Home::with_plan(START);
    let made = home.companion.new_keys(&keeper(), Recovery::By(&phrase), &home.moment);
    home.companion = made.ok().unwrap();
    home.pass(2);
    home.tell(Told::Session(session(140, 8, Some(1))));
    let copy = home.companion.copy_for_elsewhere(&home.moment.now).unwrap();
    let ports = ports(&SimDisk::new(), 5);
    let read = Copy::read(&ports, CopyFrom::Elsewhere { bytes: &copy, phrase: &phrase });
    let moment = home.moment;
    let other = Companion::restore(
        &ports,
        Path::new(FOLDER),
        &keeper(),
        read.ok().unwrap(),
        None,
        "en",
        &moment,
    );
    let other = other.ok().unwrap();
    // The first phone goes on, with something that the second knows nothing of.
    home.tell(Told::Signs { signs: vec![Sign::HeavyBleeding], note: None });
    let read = |companion: &Companion| {
        let summary = companion.summary(&Selection::default(), &moment.now).ok().unwrap();
        let bytes = summary.open_form(&companion.identity()).unwrap();
        let received = open_summary(&bytes, None).unwrap();
        let reading = ReadingScreen::new(&received, &Words::for_language("en"), false).unwrap();
        (received.from.to_string(), serde_json::to_string(&reading).unwrap())
    };
    let ((first, said), (second, said_of_second)) = (read(&home.companion), read(&other));
    assert_eq!(first, second, "nothing but what they hold tells them apart");
    assert!(!said.contains("Restored from a backup"));
    assert!(said_of_second.contains("Restored from a backup once"), "{said_of_second}");
    assert!(said.contains("heavy bleeding") && !said_of_second.contains("heavy bleeding"));
    // Who reads the second is told what only the first holds; the first lacks nothing.
    let received = |companion: &Companion| {
        let summary = companion.summary(&Selection::default(), &moment.now).ok().unwrap();
        open_summary(&summary.open_form(&companion.identity()).unwrap(), None).unwrap()
    };
    let words = Words::for_language("en");
    let apart = |read: &Companion, beside: &Companion| {
        let (read, beside) = (received(read), received(beside));
        let apart = WentApart::new(&words, &read.summary, [beside].into_iter());
        apart.map(|apart| (apart.older, apart.says.join("\n")))
    };
    let (older, says) = apart(&other, &home.companion).unwrap();
    assert!(older == received(&home.companion).id && says.contains("holds 1 entry"), "{says}");
    assert!(says.contains("A sign is noted there") && says.contains("read both"), "{says}");
    assert!(apart(&home.companion, &other).is_none());
}

#[test]
fn h33_what_lay_there_before_an_erase_does_not_open_with_the_keys_of_now() {
    let mut home = Home::with_plan(START);
    let moment = home.moment;
    // Put under new keys once already: also then an erase has to make others.
    let renewed = home.companion.new_keys(&keeper(), Recovery::None, &moment);
    home.companion = renewed.ok().unwrap();
    let (id, _) = home.tell(Told::Session(session(140, 8, Some(2))));
    let at = |name: &str| Path::new(FOLDER).join(name);
    let before = home.disk.content(&at("journal")).unwrap();
    home.companion = home.companion.erase(Erase::Entry(id), &keeper(), &moment).ok().unwrap();
    let keys = home.disk.content(&at("keys")).unwrap();
    let tried = SimDisk::new();
    tried.create_folder(Path::new(FOLDER)).unwrap();
    tried.tamper(&at("keys"), keys);
    tried.tamper(&at("journal"), before);
    let opened = Companion::open(&ports(&tried, 3), Path::new(FOLDER), &keeper(), "en", &moment);
    if let Ok(companion) = opened {
        let entries = companion.entries().unwrap();
        assert!(entries.iter().all(|entry| entry.id != id), "it can be read again");
    }
}
