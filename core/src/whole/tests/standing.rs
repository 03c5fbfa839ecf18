//! How the diary stands, and what is shown in its stead.

use super::kit::*;
use crate::companion::{Duty, Request, Trouble};
use crate::ports::KeeperError;
use crate::ports::sim::Call;
use crate::practice::breathing::PresetId;
use crate::practice::timed::{Choice, Event};
use crate::programme::values::Minutes;
use crate::screens::{Begin, CannotOpenScreen, Does, Screen, WholeScreen};
use crate::whole::{View, WholeRequest};

fn cannot_open(view: View) -> CannotOpenScreen {
    match view {
        View::Whole(WholeScreen::CannotOpen(screen)) => screen,
        other => panic!("{}", name(&other)),
    }
}

fn steps(view: View) -> Vec<Does> {
    cannot_open(view).steps.iter().map(|step| step.does).collect()
}

#[test]
fn the_first_launch_the_first_run_and_every_launch_after_it() {
    let mut home = Home::new();
    assert_eq!(name(&home.begin()), "no diary");
    assert_eq!(name(&home.ask(Request::Today)), "no diary");
    assert_eq!(name(&home.press(Does::More)), "no diary");
    assert_eq!(home.holder.new_id().unwrap_err(), Trouble::NotADiary);
    let seen = home.seen(WholeRequest::StartNew);
    assert_eq!(name(&seen.view), "first run");
    // Whatever an earlier diary had planned is planned no more.
    assert!(seen.duties.iter().any(|duty| matches!(duty, Duty::PlanReminders(_))));
    assert_eq!(name(&home.whole(WholeRequest::StartNew)), "today", "asked twice");
    assert_eq!(name(&home.begin()), "today");
    home.again();
    assert_eq!(name(&home.begin()), "today");
}

#[test]
fn a_second_opener_is_told_so_and_may_try_again() {
    let home = Home::begun();
    let mut second = Home::new();
    second.on(home.disk.clone());
    second.phone = home.phone.clone();
    assert_eq!(steps(second.begin()), [Does::Today]);
    let elsewhere = second.try_whole(WholeRequest::StartNew).err();
    assert_eq!(elsewhere, Some(Trouble::CloseElsewhere));
    assert_eq!(home.entries().len(), 3);
}

#[test]
fn a_second_opener_gets_in_once_the_first_is_gone() {
    let home = Home::begun();
    let mut second = Home::new();
    second.on(home.disk.clone());
    second.phone = home.phone.clone();
    assert_eq!(name(&second.begin()), "cannot open");
    drop(home);
    assert_eq!(name(&second.press(Does::Today)), "today");
    assert_eq!(second.entries().len(), 3);
}

#[test]
fn a_phone_that_refuses_is_asked_again_and_one_that_lost_the_key_asks_for_the_words() {
    let mut home = Home::begun();
    let words = home.phrase();
    home.again();
    home.phone.fails(Some(KeeperError::Refused));
    assert_eq!(steps(home.begin()), [Does::Today]);
    home.phone.fails(None);
    assert_eq!(name(&home.whole(WholeRequest::TryAgain)), "today");
    home.again();
    home.phone.forget_all();
    let steps = steps(home.begin());
    assert!(steps.contains(&Does::OpenByPhrase), "{steps:?}");
    let opened = home.whole(WholeRequest::OpenByPhrase { phrase: words });
    assert_eq!(name(&opened), "done");
    assert_eq!(home.entries().len(), 3);
    home.again();
    assert_eq!(name(&home.begin()), "today");
}

#[test]
fn a_damaged_or_newer_diary_is_said_and_not_touched() {
    for (file, at, expected) in [
        ("keys", None, [Does::Restore, Does::OpenByPhrase, Does::RestoreCopy].as_slice()),
        ("journal", None, &[Does::Restore, Does::OpenByPhrase, Does::RestoreCopy]),
        ("keys", Some(4), &[Does::Today]),
    ] {
        let mut home = Home::begun();
        home.again();
        let path = folder().join(file);
        let mut bytes = home.content(file);
        match at {
            // Everything.
            None => bytes.iter_mut().take(8192).for_each(|byte| *byte ^= 0x55),
            // The version, with its checksum.
            Some(at) => newer(&mut bytes, at),
        }
        home.disk.tamper(&path, bytes.clone());
        let steps = steps(home.begin());
        assert_eq!(steps, expected, "{file}");
        assert_eq!(home.content(file), bytes, "{file} was touched");
        for request in [WholeRequest::StartNew, WholeRequest::EraseAll] {
            let _ = home.try_whole(request);
            assert_eq!(home.content(file), bytes, "{file} was touched");
        }
    }
}

/// Both copies of a doubled block say another version, and their checksums hold.
fn newer(bytes: &mut [u8], at: usize) {
    for copy in bytes.chunks_mut(4096) {
        copy[at] = 9;
        let sum = crc32c::crc32c(&copy[..4092]);
        copy[4092..].copy_from_slice(&sum.to_le_bytes());
    }
}

#[test]
fn a_full_disk_keeps_what_is_there_and_says_what_to_do() {
    let mut home = Home::new();
    home.disk.set_room(Some(0));
    assert_eq!(home.try_whole(WholeRequest::StartNew).err(), Some(Trouble::FreeSpace));
    home.disk.set_room(None);
    assert_eq!(name(&home.whole(WholeRequest::StartNew)), "first run");
    home.tell(0);
    home.disk.set_room(Some(0));
    // Until the zeros that were written ahead are used up.
    let mut kept = 1;
    let trouble = loop {
        match home.try_tell(kept) {
            Ok(_) => kept += 1,
            Err(trouble) => break trouble,
        }
        assert!(kept < 10_000);
    };
    assert_eq!(trouble, Trouble::FreeSpace);
    assert_eq!(home.try_whole(set("4711")).err(), Some(Trouble::FreeSpace));
    assert_eq!(name(&home.begin()), "today");
    assert_eq!(home.entries().len(), kept as usize);
}

#[test]
fn a_write_that_fails_is_looked_for_and_never_written_twice() {
    let mut home = Home::begun();
    home.whole(WholeRequest::Begin);
    home.disk.fail(Call::Sync, 0, false);
    let does = Does::StayHere { stay: true };
    assert_eq!(home.try_press(does).err(), Some(Trouble::OpenAgain));
    // The next call opens the diary, and the same press keeps its id.
    assert_eq!(name(&home.press(does)), "kept");
    assert_eq!(name(&home.press(does)), "kept");
    assert_eq!(home.entries().len(), 4);
    // With something in between it is another one.
    home.ask(Request::Today);
    home.press(does);
    assert_eq!(home.entries().len(), 5);
}

#[test]
fn while_a_code_is_asked_for_nothing_of_the_diary_is_shown_whatever_is_asked() {
    let mut home = Home::coded("4711");
    home.phrase();
    home.whole(WholeRequest::Lock);
    for does in super::pressing::every_does() {
        let view = home.press(does);
        assert!(["code", "open by phrase"].contains(&name(&view)), "{does:?}: {}", name(&view));
    }
    for request in super::requests() {
        let view = home.whole(request);
        let allowed = ["code", "open by phrase", "cannot open"];
        assert!(allowed.contains(&name(&view)), "{}", name(&view));
    }
    for request in [Request::Home, Request::Today, Request::Entries, Request::StopAndCall] {
        assert_eq!(name(&home.ask(request)), "code");
    }
    assert_eq!(home.try_tell(1).err(), Some(Trouble::NotADiary));
    home.pass(3_600_000);
    assert_eq!(name(&home.give("4711")), "today");
    assert_eq!(home.entries().len(), 3);
}

#[test]
fn locking_plans_nothing_anew_and_without_a_code_it_says_that_there_is_none() {
    let mut home = Home::begun();
    let seen = home.seen(WholeRequest::Lock);
    assert_eq!(name(&seen.view), "set code");
    assert!(seen.duties.is_empty());
    assert_eq!(name(&home.begin()), "today");
    home.whole(set("4711"));
    let seen = home.seen(WholeRequest::Lock);
    assert_eq!(name(&seen.view), "code");
    assert!(seen.duties.is_empty());
    assert!(home.holder.open_companion().is_none());
    assert!(home.holder.code.is_none());
}

#[test]
fn a_practice_under_way_is_found_again_after_locking() {
    let mut home = Home::coded("4711");
    let begin = Begin::Breathing { preset: PresetId::Even, minutes: Minutes::new(5).unwrap() };
    home.ask(Request::Begin(begin));
    home.ask(Request::During(Event::Begin { part: 0 }));
    home.pass(60_000);
    home.press(Does::Lock);
    home.pass(20_000);
    let seen = home.seen(WholeRequest::GiveCode { code: "4711".to_owned() });
    assert_eq!(name(&seen.view), "found");
    let view = home.ask(Request::Found(Choice::GoOn));
    assert!(matches!(view, View::Screen(Screen::Running(_))), "{}", name(&view));
}

#[test]
fn everything_erased_is_gone_with_its_key_and_its_plans() {
    let mut home = Home::coded("4711");
    let words = home.phrase();
    assert_eq!(name(&home.press(Does::EraseAll)), "erase");
    let seen = home.seen(WholeRequest::EraseAll);
    assert_eq!(name(&seen.view), "erased");
    let [Duty::PlanReminders(_)] = seen.duties.as_slice() else { panic!("nothing planned") };
    assert_eq!(home.phone.keys(), 0);
    assert!(home.disk.content(&tries()).is_none());
    assert_eq!(name(&home.begin()), "erased");
    assert_ne!(name(&home.whole(WholeRequest::OpenByPhrase { phrase: words })), "done");
    home.again();
    assert_eq!(name(&home.begin()), "no diary");
    assert_eq!(name(&home.whole(WholeRequest::StartNew)), "first run");
    assert!(home.entries().is_empty());
    home.again();
    assert_eq!(name(&home.begin()), "today", "no code is asked for");
}

/// The power goes off at every call of erasing everything: afterwards the diary is there or gone, never between.
#[test]
fn an_erase_cut_short_is_whole_or_nothing() {
    let mut at = 0;
    loop {
        let mut home = Home::begun();
        let before = home.disk.calls();
        home.disk.power_off_at(before + at);
        let done = home.try_whole(WholeRequest::EraseAll).is_ok();
        let mut flip = false;
        let disk = home.disk.after_power_cut(&mut || {
            flip = !flip;
            flip
        });
        home.on(disk);
        let view = home.begin();
        match name(&view) {
            "today" => {
                assert!(!done);
                assert_eq!(home.entries().len(), 3);
            }
            "no diary" => {
                assert_eq!(name(&home.whole(WholeRequest::StartNew)), "first run");
                assert!(home.entries().is_empty());
            }
            other => panic!("{other} at {at}"),
        }
        if done {
            break;
        }
        at += 1;
        assert!(at < 500);
    }
    assert!(at > 3, "{at}");
}
