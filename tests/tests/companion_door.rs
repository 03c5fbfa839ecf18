//! The one door: what is written once, what is refused, what survives being killed, what is said.

use std::path::Path;

use frond_core::companion::{Companion, Duty, Refusal, Request, Told, Trouble, Write};
use frond_core::diary::entry::{
    Although, Chosen, Content, FeelsReady, Reason, Settled, SignKey, Why,
};
use frond_core::moment::Uptime;
use frond_core::programme::values::{Line, StepId};
use frond_core::safety::Sign;
use frond_core::screens::Screen;
use frond_tests::home::{FOLDER, Home, keeper, ports, session, stamp, stopped};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";
const DAY: i64 = 24;

fn kinds(home: &Home) -> Vec<String> {
    let entries = home.companion.entries().unwrap();
    entries
        .iter()
        .map(|entry| {
            serde_json::to_value(&entry.what).unwrap()["kind"].as_str().unwrap().to_owned()
        })
        .collect()
}

/// Three comfortable days on the first size: the rule says step up.
fn ready_for_two() -> Home {
    let mut home = Home::with_plan(START);
    for _ in 0..3 {
        home.pass(DAY);
        home.tell(Told::Session(session(140, 8, Some(2))));
    }
    home
}

#[test]
fn a_request_asked_twice_is_written_once_even_after_being_killed() {
    let mut home = Home::with_plan(START);
    let id = home.companion.new_id().unwrap();
    let request =
        || Request::Write(Write { id, happened: None, told: Told::Session(session(140, 8, None)) });
    home.ask(request());
    let once = kinds(&home);
    home.ask(request());
    assert_eq!(kinds(&home), once);
    let mut home = home.reopen();
    home.ask(request());
    assert_eq!(kinds(&home), once);
}

#[test]
fn an_id_issued_long_ago_is_still_recognised() {
    let mut home = Home::with_plan(START);
    let id = home.companion.new_id().unwrap();
    let told = || Told::Session(session(140, 8, None));
    home.ask(Request::Write(Write { id, happened: None, told: told() }));
    // More entries than ids are remembered.
    for _ in 0..2100 {
        home.tell(Told::FeelsReady(FeelsReady::NotYet));
    }
    let before = home.companion.state().count();
    home.ask(Request::Write(Write { id, happened: None, told: told() }));
    assert_eq!(home.companion.state().count(), before);
}

#[test]
fn trying_a_suggestion_changes_the_step_once() {
    let mut home = ready_for_two();
    let json = home.json(Request::Suggestion);
    assert_eq!(json["outcome"], "step_up");
    let shown = home.companion.state().shown().unwrap().entry;
    let id = home.companion.new_id().unwrap();
    let choose = || {
        Request::Write(Write {
            id,
            happened: None,
            told: Told::Choose { shown, chosen: Chosen::Try },
        })
    };
    home.ask(choose());
    assert_eq!(home.companion.state().rule().step().unwrap().id.as_str(), "two");
    let once = kinds(&home);
    home.ask(choose());
    assert_eq!(kinds(&home), once);
    assert_eq!(once.iter().filter(|kind| *kind == "step_change").count(), 1);
}

#[test]
fn a_crash_between_the_answer_and_the_step_is_mended_by_asking_again() {
    let mut home = ready_for_two();
    home.ask(Request::Suggestion);
    let shown = home.companion.state().shown().unwrap().entry;
    let id = home.companion.new_id().unwrap();
    let choose = || {
        Request::Write(Write {
            id,
            happened: None,
            told: Told::Choose { shown, chosen: Chosen::Try },
        })
    };
    // The answer is written and synced, then the disk fails.
    home.disk.fail(frond_core::ports::sim::Call::Write, 1, true);
    let failed = home.companion.ask(choose(), &home.moment).err();
    assert_eq!(failed, Some(Trouble::OpenAgain));
    let mut home = home.reopen();
    assert_eq!(home.companion.state().rule().step().unwrap().id.as_str(), "one");
    home.ask(choose());
    assert_eq!(home.companion.state().rule().step().unwrap().id.as_str(), "two");
}

#[test]
fn d2_a_suggestion_that_no_longer_holds_is_not_acted_on() {
    let mut home = ready_for_two();
    home.ask(Request::Suggestion);
    let shown = home.companion.state().shown().unwrap().entry;
    home.pass(1);
    home.tell(Told::Session(session(140, 8, Some(9))));
    let trouble = home.refused(None, Told::Choose { shown, chosen: Chosen::Try });
    assert_eq!(trouble, Trouble::PutRight(Refusal::SuggestionChanged));
    assert_eq!(home.companion.state().rule().step().unwrap().id.as_str(), "one");
}

#[test]
fn t3_the_future_is_refused_and_nothing_is_written() {
    let mut home = Home::with_plan(START);
    let before = kinds(&home);
    let ahead = stamp("2026-03-02T08:00:01+00:00");
    let trouble = home.refused(Some(ahead), Told::Session(session(140, 8, None)));
    assert_eq!(trouble, Trouble::PutRight(Refusal::Future));
    assert_eq!(kinds(&home), before);
}

#[test]
fn t3_a_clock_that_jumps_leaves_a_mark_and_asks() {
    let mut home = ready_for_two();
    home.set_wall(2 * 60 * 60 * 1000);
    let today = home.json(Request::Today);
    assert_eq!(kinds(&home).last().unwrap(), "clock_mark");
    assert!(today["notices"].to_string().contains("confirm_time"));
    assert_eq!(home.json(Request::Suggestion)["outcome"], "hold");
    home.tell(Told::TimeConfirmed);
    assert_eq!(home.json(Request::Suggestion)["outcome"], "step_up");
}

#[test]
fn t3_a_long_absence_after_a_restart_leaves_a_mark_and_one_without_a_restart_does_not() {
    let mut home = ready_for_two();
    home.pass(4 * DAY);
    let mut home = home.reopen();
    assert_ne!(kinds(&home).last().unwrap(), "clock_mark");
    home.pass(4 * DAY);
    home.moment.uptime = Some(Uptime { boot: 2, millis: 5_000 });
    let home = home.reopen();
    assert_eq!(kinds(&home).last().unwrap(), "clock_mark");
}

#[test]
fn what_a_machine_marked_cannot_be_struck_or_corrected() {
    let mut home = ready_for_two();
    home.set_wall(2 * 60 * 60 * 1000);
    home.ask(Request::Today);
    let mark = home.companion.entries().unwrap().last().unwrap().id;
    let trouble = home.refused(None, Told::Strike { of: mark });
    assert_eq!(trouble, Trouble::PutRight(Refusal::MachineMark));
    let told = Box::new(Told::Session(session(140, 8, None)));
    let trouble = home.refused(None, Told::Correct { of: mark, told });
    assert_eq!(trouble, Trouble::PutRight(Refusal::MachineMark));
}

#[test]
fn a_correction_keeps_the_kind_and_the_time_and_counts() {
    let mut home = Home::with_plan(START);
    home.pass(DAY);
    let (of, _) = home.tell(Told::Session(session(140, 8, Some(8))));
    home.pass(2);
    let told = Box::new(Told::Question(frond_core::programme::values::Passage::new("x").unwrap()));
    let trouble = home.refused(None, Told::Correct { of, told });
    assert_eq!(trouble, Trouble::PutRight(Refusal::OtherKind));
    let happened = home.companion.entries().unwrap().last().unwrap().happened;
    home.tell(Told::Correct { of, told: Box::new(Told::Session(session(180, 8, Some(8)))) });
    let last = home.companion.entries().unwrap().pop().unwrap();
    assert_eq!(last.happened, happened, "the time stays unless another is told");
    let entries = home.json(Request::Entries).to_string();
    assert!(entries.contains("18 mm") && entries.contains("Corrected"), "{entries}");
}

#[test]
fn did_it_settle_is_told_of_a_session_and_moves_nothing() {
    let mut home = Home::with_plan(START);
    home.pass(DAY);
    let (of, _) = home.tell(Told::Session(session(140, 8, Some(2))));
    let (other, _) = home.tell(Told::StayHere(false));
    let before = home.json(Request::Suggestion);
    let answer = Settled::NotYet;
    let trouble = home.refused(None, Told::Settled { of: other, answer });
    assert_eq!(trouble, Trouble::PutRight(Refusal::NoSession));
    let (told, _) = home.tell(Told::Settled { of, answer });
    assert_eq!(home.json(Request::Suggestion), before, "the rule does not look at it");
    let settled = Box::new(Told::Settled { of, answer: Settled::Yes });
    home.tell(Told::Correct { of: told, told: settled });
    let entries = home.json(Request::Entries).to_string();
    assert!(entries.contains("It had settled\""), "{entries}");
}

#[test]
fn s1_the_tier_is_decided_inside_and_a_correction_never_lowers_it() {
    let mut home = Home::with_plan(START);
    let (of, screen) = home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    assert!(matches!(screen, Screen::StopAndCall(_)), "a sign leads to stop and call");
    home.tell(Told::Correct {
        of,
        told: Box::new(Told::Signs { signs: vec![Sign::Fever, Sign::Spotting], note: None }),
    });
    let last = home.companion.entries().unwrap().pop().unwrap();
    let Content::Correction { content, .. } = last.what else { panic!("a correction") };
    assert_eq!(content.signs()[0].tier, Sign::Fever.tier());
    let trouble = home.refused(None, Told::Signs { signs: vec![Sign::ACaution], note: None });
    assert_eq!(trouble, Trouble::PutRight(Refusal::SignNotAsked));
}

#[test]
fn o1_an_open_sign_pauses_until_a_talk_that_names_it() {
    let mut home = ready_for_two();
    let (entry, _) = home.tell(Told::Signs { signs: vec![Sign::Fever], note: None });
    assert_eq!(home.json(Request::Suggestion)["outcome"], "pause_and_call");
    let today = home.json(Request::Today);
    assert_eq!(today["next"]["does"], "stop_and_call");
    assert!(today["step"].is_null(), "no trainer card while paused");
    home.pass(DAY);
    let with = || Line::new("Ines Abara").unwrap();
    let key = |sign| SignKey { entry, sign };
    let trouble = home.refused(
        None,
        Told::Spoke { with: with(), signs: vec![key(Sign::Spotting)], closes_pause: false },
    );
    assert_eq!(trouble, Trouble::PutRight(Refusal::NotOpen));
    home.tell(Told::Spoke { with: with(), signs: vec![key(Sign::Fever)], closes_pause: false });
    assert_eq!(home.json(Request::Suggestion)["outcome"], "hold");
}

#[test]
fn only_a_number_that_is_offered_opens_the_dialler() {
    let mut home = Home::with_plan(START);
    home.tell(Told::Signs { signs: vec![Sign::SeverePain], note: None });
    let Screen::StopAndCall(stop) = home.ask(Request::StopAndCall) else { panic!("stop and call") };
    let number = stop.call.dials().next().unwrap().number.clone();
    assert_eq!(number, "999");
    let answer = home.companion.ask(Request::Dial { number: number.clone() }, &home.moment);
    assert!(answer.is_ok_and(|answer| answer.duties == [Duty::OpenDialler { number }]));
    let other = Request::Dial { number: "01632960999".into() };
    let trouble = home.companion.ask(other, &home.moment).err();
    assert_eq!(trouble, Some(Trouble::PutRight(Refusal::NumberNotOffered)));
}

#[test]
fn d1_stay_here_looks_like_an_ordinary_hold() {
    let mut ordinary = Home::with_plan(START);
    let hold = ordinary.json(Request::Suggestion);
    let mut staying = ready_for_two();
    staying.tell(Told::StayHere(true));
    let stay = staying.json(Request::Suggestion);
    assert_eq!(stay["outcome"], "hold");
    assert_eq!(stay["says"], hold["says"]);
    // Nothing on the screen tells that it was asked for.
    assert_eq!(stay["bars"], serde_json::json!(["For now, this step."]));
    let told = stay["actions"].to_string().to_lowercase();
    assert!(!told.contains("no longer") && told.contains("go on as my plan says"), "{told}");
    staying.tell(Told::StayHere(false));
    assert_eq!(staying.json(Request::Suggestion)["outcome"], "step_up");
}

#[test]
fn d1_a_larger_size_can_be_recorded_as_an_own_choice_and_earns_nothing_by_itself() {
    let mut home = Home::with_plan(START);
    let two = StepId::new("two").unwrap();
    home.tell(Told::Step { to: two, why: Why::OwnChoice });
    assert_eq!(home.companion.state().rule().step().unwrap().id.as_str(), "two");
    assert_eq!(home.json(Request::Suggestion)["outcome"], "hold");
    let unknown = StepId::new("nine").unwrap();
    let trouble = home.refused(None, Told::Step { to: unknown, why: Why::OwnChoice });
    assert_eq!(trouble, Trouble::PutRight(Refusal::NoSuchStep));
}

#[test]
fn a_stopped_session_is_met_with_kindness_and_the_wrong_size_earns_nothing() {
    let mut home = Home::with_plan(START);
    let (_, screen) = home.tell(Told::Session(stopped(140, 2, Reason::Discomfort)));
    let Screen::Kept(kept) = screen else { panic!("kept") };
    assert!(kept.says[0].contains("always right"));
    for _ in 0..5 {
        home.pass(DAY);
        home.tell(Told::Session(session(180, 8, Some(0))));
    }
    assert_eq!(home.json(Request::Suggestion)["outcome"], "hold");
}

#[test]
fn d2_no_threshold_or_earlier_rating_stands_where_ratings_are_asked() {
    let mut home = Home::with_plan(START);
    home.tell(Told::Session(session(140, 8, Some(7))));
    let form = home.json(Request::LogSession);
    let ratings = form["ratings"].to_string();
    assert!(!ratings.chars().any(|c| c.is_ascii_digit()), "{ratings}");
    for key in ["preselected", "default", "selected"] {
        assert!(!form.to_string().contains(key));
    }
}

#[test]
fn without_a_plan_one_can_breathe_and_log_and_signs_still_stop() {
    let mut home = Home::new(START);
    let today = home.json(Request::Today);
    assert!(today["notices"].to_string().contains("accept_programme"));
    assert!(home.json(Request::Suggestion)["outcome"].is_null());
    let form = home.json(Request::LogSession);
    assert!(!form["practices"].to_string().contains("trainer"));
    home.tell(Told::Signs { signs: vec![Sign::SeverePain], note: None });
    let today = home.json(Request::Today);
    assert_eq!(today["next"]["does"], "stop_and_call");
}

#[test]
fn a_plan_that_is_broken_older_or_in_use_changes_nothing() {
    let mut home = Home::with_plan(START);
    let before = kinds(&home);
    let trouble = home.refused(None, Told::unsigned("{}"));
    assert!(matches!(trouble, Trouble::PutRight(Refusal::Plan(_))));
    let plan = frond_tests::home::PLAN;
    let trouble = home.refused(None, Told::unsigned(plan));
    assert_eq!(trouble, Trouble::PutRight(Refusal::RevisionInUse));
    let newer = plan.replace("\"revision\": 1", "\"revision\": 3");
    home.tell(Told::unsigned(&newer));
    let trouble = home.refused(None, Told::unsigned(plan));
    assert_eq!(trouble, Trouble::PutRight(Refusal::Although(Although::OlderRevision)));
    assert_eq!(kinds(&home).len(), before.len() + 1);
}

#[test]
fn the_state_is_the_same_from_a_snapshot_and_from_the_whole_journal() {
    let mut home = ready_for_two();
    home.tell(Told::Session(stopped(140, 2, Reason::Upset)));
    home.companion.save().unwrap();
    home.tell(Told::StayHere(true));
    home.pass(DAY);
    let before = [Request::Today, Request::Suggestion, Request::Entries].map(|r| home.json(r));
    let mut home = home.reopen();
    assert!(home.companion.findings().is_clean());
    let after = [Request::Today, Request::Suggestion, Request::Entries].map(|r| home.json(r));
    assert_eq!(before, after);
    let disk = home.disk.after_kill();
    disk.tamper_remove(&Path::new(FOLDER).join("snapshot"));
    let companion =
        Companion::open(&ports(&disk, 3), Path::new(FOLDER), &keeper(), "en", &home.moment);
    let mut home = Home { disk, companion: companion.ok().unwrap(), moment: home.moment };
    let rebuilt = [Request::Today, Request::Suggestion, Request::Entries].map(|r| home.json(r));
    assert_eq!(before, rebuilt);
}

#[test]
fn a_full_disk_refuses_and_keeps_what_is_there() {
    let mut home = Home::with_plan(START);
    home.disk.set_room(Some(0));
    let mut kept = home.companion.state().count();
    let mut refused = None;
    for _ in 0..400 {
        let id = home.companion.new_id().unwrap();
        let told = Told::Session(session(140, 8, None));
        match home.companion.ask(Request::Write(Write { id, happened: None, told }), &home.moment) {
            Ok(_) => kept += 1,
            Err(trouble) => {
                refused = Some(trouble);
                break;
            }
        }
    }
    assert_eq!(refused, Some(Trouble::FreeSpace));
    assert_eq!(home.companion.state().count(), kept);
    home.disk.set_room(None);
    let home = home.reopen();
    assert_eq!(home.companion.state().count(), kept);
}

#[test]
fn the_screens_never_count_what_was_missed_and_never_show_a_percentage() {
    let mut home = ready_for_two();
    home.pass(20 * DAY);
    for request in [Request::Today, Request::Ladder, Request::Suggestion] {
        let screen = home.json(request).to_string();
        for word in ["missed", "streak", "%", "failed", "behind"] {
            assert!(!screen.contains(word), "{word} in {screen}");
        }
    }
}

#[test]
fn reading_never_waits_for_a_full_disk_but_no_suggestion_is_made_without_the_mark() {
    let mut home = ready_for_two();
    home.disk.fail(frond_core::ports::sim::Call::Write, 0, true);
    home.set_wall(2 * 60 * 60 * 1000);
    home.json(Request::Today);
    assert!(home.companion.ask(Request::Suggestion, &home.moment).is_err());
    let mut home = home.reopen();
    home.ask(Request::Today);
    assert_eq!(home.json(Request::Suggestion)["outcome"], "hold");
}

#[test]
fn the_snapshot_does_not_grow_with_the_diary() {
    let mut home = Home::with_plan(START);
    let mut sizes = Vec::new();
    for _ in 0..2 {
        for _ in 0..2048 {
            home.pass(8);
            home.tell(Told::Session(session(140, 8, Some(2))));
        }
        home.companion.save().unwrap();
        let path = Path::new(FOLDER).join("snapshot");
        sizes.push(home.disk.content(&path).unwrap().len());
    }
    assert!(sizes[0] < 64 * 1024, "{sizes:?}");
    assert!(sizes[1] < sizes[0] + 4096, "{sizes:?}");
}

/// A byte in one of the later entries is flipped behind everybody's back.
fn spoil_one_entry(disk: &frond_core::ports::sim::SimDisk) {
    let path = Path::new(FOLDER).join("journal");
    let mut bytes = disk.content(&path).unwrap();
    let end = bytes.iter().rposition(|byte| *byte != 0).unwrap();
    // Well inside the sealed part of a sector; a session takes one or two.
    let sector = (end / 512 - 9) * 512;
    bytes[sector + 200] ^= 1;
    disk.tamper(&path, bytes);
}

#[test]
fn whom_to_call_can_be_looked_up_while_nothing_is_open_and_speaks_of_no_sign() {
    let mut home = Home::with_plan(START);
    let screen = home.json(Request::StopAndCall).to_string();
    assert!(screen.contains("01632 960101") && screen.contains("999"), "{screen}");
    assert!(screen.contains("Nobody has been told"), "{screen}");
    for wrong in ["spots of blood", "pause", "Noted"] {
        assert!(!screen.contains(wrong), "{wrong}: {screen}");
    }
    let mut home = Home::new(START);
    let screen = home.json(Request::StopAndCall).to_string();
    assert!(screen.contains("doctor") && !screen.contains("spots of blood"), "{screen}");
}

#[test]
fn a_hole_is_said_with_its_days_and_holds_back_until_a_talk_even_if_an_opening_was_cut_short() {
    let mut home = Home::with_plan(START);
    for _ in 0..20 {
        home.pass(DAY);
        home.tell(Told::Session(session(140, 8, Some(2))));
    }
    assert_eq!(home.json(Request::Suggestion)["outcome"], "step_up");
    let disk = home.disk.after_kill();
    spoil_one_entry(&disk);
    // The first opening repairs the files and is killed before the companion can write its mark.
    let opened = frond_core::diary::store::Store::open(
        std::sync::Arc::new(disk.clone()),
        Path::new(FOLDER),
        &keeper(),
        std::sync::Arc::new(frond_core::ports::sim::SeededRandom::new(5)),
    );
    let findings = opened.unwrap().findings;
    assert!(findings.newly_missing() && !findings.kept_aside.is_empty());
    let moment = home.moment;
    for again in 0..3 {
        let companion =
            Companion::open(&ports(&disk, 6 + again), Path::new(FOLDER), &keeper(), "en", &moment);
        let mut home = Home { disk: disk.clone(), companion: companion.ok().unwrap(), moment };
        let marks = kinds(&home).iter().filter(|kind| *kind == "missing_mark").count();
        assert_eq!(marks, 1, "opening {again}");
        let entries = home.json(Request::Entries).to_string();
        assert!(entries.contains("One entry is missing between"), "{entries}");
        let today = home.json(Request::Today)["notices"].to_string();
        assert!(today.contains("may be missing"), "{today}");
        assert_eq!(home.json(Request::Suggestion)["outcome"], "hold");
        if again == 2 {
            let with = Line::new("Ines Abara").unwrap();
            home.tell(Told::Spoke { with, signs: vec![], closes_pause: false });
            assert_eq!(home.json(Request::Suggestion)["outcome"], "step_up");
            let today = home.json(Request::Today)["notices"].to_string();
            assert!(!today.contains("may be missing"), "{today}");
        }
        home.companion.save().unwrap();
    }
}
