//! The app's own code: what it opens, how often it may be tried, and that it is never lost sight of which code
//! opens the diary.

use super::kit::*;
use crate::companion::{Request, Told, Trouble, Write};
use crate::diary::entry::{LockAfter, Settings};
use crate::ports::KeeperError;
use crate::programme::values::Line;
use crate::screens::{CodeScreen, FormField, SetCodeScreen, WholeScreen};
use crate::whole::{View, WholeRequest};

const MINUTE: u64 = 60_000;

fn code(view: View) -> CodeScreen {
    match view {
        View::Whole(WholeScreen::Code(screen)) => screen,
        other => panic!("{}", name(&other)),
    }
}

fn form(view: View) -> SetCodeScreen {
    match view {
        View::Whole(WholeScreen::SetCode(screen)) => screen,
        other => panic!("{}", name(&other)),
    }
}

fn wait(view: View) -> u64 {
    code(view).wait.map_or(0, |wait| wait.millis)
}

fn fields(screen: &SetCodeScreen) -> Vec<FormField> {
    screen.problems.iter().map(|problem| problem.field).collect()
}

fn remove(code: &str) -> WholeRequest {
    WholeRequest::RemoveCode { code: code.to_owned() }
}

#[test]
fn a_code_is_asked_at_every_launch_and_opens_the_diary() {
    let mut home = Home::coded("4711");
    assert_eq!(name(&home.begin()), "today");
    home.again();
    assert_eq!(code(home.begin()).problems.len(), 0);
    let wrong = code(home.give("4712"));
    assert_eq!(wrong.problems[0].field, FormField::Code);
    assert!(wrong.wait.is_none());
    assert_eq!(code(home.give("")).problems[0].field, FormField::Code);
    assert_eq!(name(&home.give("4711")), "today");
    assert_eq!(home.entries().len(), 3);
    assert_eq!(name(&home.give("anything")), "today", "it is open");
    home.again();
    assert_eq!(name(&home.give("4711")), "today", "the first thing asked of a new process");
}

#[test]
fn how_it_stands_is_told_to_the_shell() {
    let mut home = Home::begun();
    let stands = |home: &Home| {
        let now = home.holder.standing();
        (now.open, now.coded, now.lock_after_seconds, now.language)
    };
    assert_eq!(stands(&home), (true, false, None, None));
    home.whole(set("4711"));
    assert_eq!(stands(&home), (true, true, Some(120), None));
    let settings = Settings {
        language: Line::new("es").ok(),
        lock_after: LockAfter::AtOnce,
        ..Settings::default()
    };
    let id = home.holder.new_id().unwrap();
    home.ask(Request::Write(Write { id, happened: None, told: Told::Settings(settings) }));
    assert_eq!(stands(&home), (true, true, Some(0), Some("es".to_owned())));
    home.whole(WholeRequest::Lock);
    assert_eq!(stands(&home), (false, true, None, None), "nothing is kept of what is locked");
    home.again();
    home.begin();
    assert_eq!(stands(&home), (false, true, None, None));
    home.give("4711");
    assert_eq!(stands(&home), (true, true, Some(0), Some("es".to_owned())));
}

#[test]
fn a_new_code_is_typed_twice_and_long_enough_however_its_letters_were_made() {
    let mut home = Home::begun();
    for (new, again, field) in [
        ("", "", FormField::New),
        ("123", "123", FormField::New),
        // Four bytes, three letters.
        ("abe\u{301}", "ab\u{e9}", FormField::New),
        ("1234", "1235", FormField::Again),
        ("1234", "", FormField::Again),
    ] {
        let (new, again) = (new.to_owned(), again.to_owned());
        let screen = form(home.whole(WholeRequest::SetCode { new, again }));
        assert_eq!(fields(&screen), [field]);
        assert!(screen.remove.is_none());
    }
    let (new, again) = ("ni\u{f1}o".to_owned(), "nin\u{303}o".to_owned());
    assert_eq!(name(&home.whole(WholeRequest::SetCode { new, again })), "done");
    home.again();
    home.begin();
    assert_eq!(name(&home.give("nin\u{303}o")), "today");
}

#[test]
fn the_waits_double_from_30_seconds_up_to_an_hour_and_never_end_the_diary() {
    let mut home = Home::coded("4711");
    home.again();
    home.begin();
    let mut waits = Vec::new();
    for _ in 0..14 {
        let left = wait(home.give("0000"));
        waits.push(left / 1000);
        // Nothing is tried meanwhile, not even the right one, and it does not cost another wait.
        if left > 0 {
            let asked = home.phone.asked();
            home.pass(left - 1);
            assert_eq!(wait(home.give("4711")), 1);
            assert_eq!(home.phone.asked(), asked);
            home.pass(1);
        }
    }
    let hour = 3600;
    let expected = [0, 0, 30, 60, 120, 240, 480, 960, 1920, hour, hour, hour, hour, hour];
    assert_eq!(waits, expected);
    assert_eq!(name(&home.give("4711")), "today");
    assert_eq!(home.entries().len(), 3);
    // A right one forgets the wrong ones.
    home.whole(WholeRequest::Lock);
    assert_eq!(wait(home.give("0000")), 0);
}

#[test]
fn ending_the_program_or_the_phone_takes_no_try_back() {
    let mut home = Home::coded("4711");
    home.again();
    home.begin();
    for _ in 0..2 {
        assert_eq!(wait(home.give("0000")), 0);
        home.again();
        home.begin();
    }
    assert_eq!(wait(home.give("0000")), 30_000);
    home.again();
    home.pass(10_000);
    assert_eq!(wait(home.begin()), 20_000);
    // After a restart, only what has passed since then is certain.
    home.restart();
    assert_eq!(wait(home.begin()), 30_000);
    home.pass(30_000);
    assert_eq!(wait(home.begin()), 0);
    assert_eq!(name(&home.give("4711")), "today");
}

#[test]
fn setting_the_clock_shortens_no_wait() {
    let mut home = Home::coded("4711");
    home.again();
    home.begin();
    for _ in 0..3 {
        home.give("0000");
    }
    for set in [24 * 60, -48 * 60, 24 * 60] {
        home.set_clock(set * 60_000);
        assert_eq!(wait(home.begin()), 30_000);
        home.restart();
        assert_eq!(wait(home.begin()), 30_000);
        home.set_clock(set * 60_000);
        assert_eq!(wait(home.begin()), 30_000);
        home.set_clock(-2 * set * 60_000);
    }
    home.pass(30_000);
    assert_eq!(name(&home.give("4711")), "today");
}

#[test]
fn without_running_time_the_clock_counts_and_one_set_back_waits_once_more() {
    let mut home = Home::coded("4711");
    home.moment.uptime = None;
    home.again();
    home.begin();
    for _ in 0..3 {
        home.give("0000");
    }
    home.pass(20_000);
    assert_eq!(wait(home.begin()), 10_000);
    home.set_clock(-400 * 24 * 3_600_000);
    assert_eq!(wait(home.begin()), 30_000);
    home.again();
    home.pass(29_000);
    assert_eq!(wait(home.begin()), 1_000, "counted from where it was set to, not from years ahead");
    home.pass(1_000);
    assert_eq!(name(&home.give("4711")), "today");
}

#[test]
fn a_damaged_count_is_the_first_wait_once() {
    let mut home = Home::coded("4711");
    home.again();
    home.begin();
    for _ in 0..7 {
        let left = wait(home.give("0000"));
        home.pass(left);
    }
    home.disk.tamper(&tries(), b"no count".to_vec());
    home.again();
    assert_eq!(wait(home.begin()), 30_000);
    home.again();
    home.pass(30_000);
    assert_eq!(wait(home.begin()), 0, "once");
    assert_eq!(wait(home.give("0000")), MINUTE);
    home.pass(MINUTE);
    assert_eq!(name(&home.give("4711")), "today");
}

#[test]
fn one_torn_slot_takes_back_one_try_at_most() {
    let mut home = Home::coded("4711");
    home.again();
    home.begin();
    for _ in 0..4 {
        let left = wait(home.give("0000"));
        home.pass(left);
    }
    let whole = home.disk.content(&tries()).unwrap();
    assert_eq!(whole.len(), 128);
    for slot in 0..2 {
        let mut torn = whole.clone();
        torn[slot * 64 + 20] ^= 1;
        home.disk.tamper(&tries(), torn);
        home.again();
        home.begin();
        let left = wait(home.give("0000"));
        assert!((MINUTE..=2 * MINUTE).contains(&left), "{left}");
        home.pass(left);
    }
}

#[test]
fn a_count_that_cannot_be_written_counts_as_long_as_the_program_runs_and_locks_nobody_out() {
    let mut home = Home::coded("4711");
    home.again();
    home.begin();
    home.disk.tamper_remove(&tries());
    home.disk.set_room(Some(0));
    for _ in 0..2 {
        assert_eq!(wait(home.give("0000")), 0);
    }
    assert_eq!(wait(home.give("0000")), 30_000);
    home.pass(30_000);
    assert_eq!(name(&home.give("4711")), "today");
}

#[test]
fn what_lies_beside_the_diary_was_made_with_the_code_and_is_written_in_place() {
    let mut home = Home::coded("4711");
    assert_eq!(home.disk.content(&tries()).unwrap().len(), 128);
    home.again();
    home.begin();
    home.disk.set_room(Some(0));
    home.give("0000");
    home.again();
    home.disk.set_room(None);
    home.begin();
    home.give("0000");
    assert_eq!(wait(home.give("0000")), 30_000, "a full disk lost no try");
}

/// What a process had counted survives a power cut.
#[test]
fn a_try_survives_a_power_cut() {
    let mut home = Home::coded("4711");
    home.again();
    home.begin();
    for _ in 0..3 {
        home.give("0000");
    }
    home.on(home.disk.after_power_cut(&mut || false));
    assert_eq!(wait(home.begin()), 30_000);
}

#[test]
fn a_code_is_changed_and_taken_away_and_the_words_open_it_throughout() {
    let mut home = Home::begun();
    let words = home.phrase();
    assert_eq!(name(&home.whole(set("1111"))), "done");
    for (old, next) in [("1111", "4711"), ("4711", "another code")] {
        assert_eq!(name(&home.change(old, next).unwrap()), "done");
        assert_eq!(home.phone.keys(), 1, "the key of the wrap before is gone");
        home.again();
        home.begin();
        assert_eq!(name(&home.give(next)), "today");
    }
    // Whoever does not know it cannot put another in its place or take it away, and each wrong one counts.
    assert_eq!(name(&home.whole(set("5555"))), "code");
    assert_eq!(wait(home.give("5555")), 0);
    assert_eq!(name(&home.give("another code")), "set code");
    for _ in 0..3 {
        let screen = form(home.whole(remove("0000")));
        assert_eq!(fields(&screen), [FormField::Code]);
    }
    let waiting = form(home.whole(remove("another code")));
    assert!(waiting.remove.unwrap().wait.is_some());
    home.pass(30_000);
    // With something else in between it is asked again.
    home.begin();
    assert_eq!(name(&home.whole(WholeRequest::CodeForm)), "code");
    home.begin();
    assert_eq!(name(&home.whole(remove("another code"))), "done");
    assert!(home.disk.content(&tries()).is_none());
    home.again();
    assert_eq!(name(&home.begin()), "today");
    home.whole(set("4711"));
    home.whole(WholeRequest::Lock);
    let other = "abandon ".repeat(11) + "about";
    let refused = home.whole(WholeRequest::OpenByPhrase { phrase: other });
    assert_eq!(name(&refused), "open by phrase");
    let refused = home.whole(WholeRequest::OpenByPhrase { phrase: "one two".to_owned() });
    assert_eq!(name(&refused), "open by phrase");
    let opened = home.whole(WholeRequest::OpenByPhrase { phrase: words.clone() });
    assert_eq!(name(&opened), "done");
    home.again();
    assert_eq!(name(&home.begin()), "today", "without a code");
    assert_eq!(home.entries().len(), 3);
    // The words still open it.
    home.again();
    home.phone.forget_all();
    home.begin();
    assert_eq!(name(&home.whole(WholeRequest::OpenByPhrase { phrase: words })), "done");
    assert_eq!(home.entries().len(), 3);
}

#[test]
fn no_old_wrap_and_no_backup_opens_without_the_code() {
    let mut home = Home::begun();
    home.pass(24 * 3_600_000);
    home.tell(9);
    home.whole(set("4711"));
    home.again();
    // The main files are lost: the backup asks for the code, wrong ones count, the right one opens it.
    for file in ["keys", "journal"] {
        home.disk.tamper(&folder().join(file), vec![0; 10]);
    }
    assert_eq!(name(&home.begin()), "cannot open");
    assert_eq!(name(&home.whole(WholeRequest::LookIntoBackup)), "code");
    for _ in 0..2 {
        assert_eq!(wait(home.give("0000")), 0);
    }
    assert_eq!(wait(home.give("0000")), 30_000);
    assert_eq!(wait(home.give("4711")), 30_000);
    home.pass(30_000);
    assert_eq!(name(&home.give("4711")), "restoring");
    assert_eq!(name(&home.whole(WholeRequest::RestoreNow)), "today");
    assert!(home.entries().len() >= 4);
    home.again();
    assert_eq!(name(&home.begin()), "code", "it opens with the code as before");
    assert_eq!(name(&home.give("4711")), "today");
}

#[test]
fn a_phone_that_refuses_just_now_does_not_make_a_right_code_wrong() {
    let mut home = Home::coded("4711");
    home.again();
    home.begin();
    home.phone.fails(Some(KeeperError::Refused));
    assert_eq!(name(&home.give("4711")), "cannot open");
    home.phone.fails(None);
    assert_eq!(name(&home.begin()), "today");
}

/// The power goes off at every call of a change of code: afterwards it opens with the one or the other, with all
/// that was told, and this program goes on asking for whichever it is.
#[test]
fn a_change_of_code_cut_short_leaves_one_of_the_two() {
    for (old, new) in [("", "1111"), ("1111", "2222"), ("1111", "")] {
        let mut at = 0;
        loop {
            let mut home = if old.is_empty() { Home::begun() } else { Home::coded(old) };
            if !old.is_empty() && !new.is_empty() {
                home.whole(WholeRequest::CodeForm);
                home.give(old);
            }
            let before = home.disk.calls();
            home.disk.power_off_at(before + at);
            let request = if new.is_empty() { remove(old) } else { set(new) };
            let done = home.try_whole(request).is_ok();
            let mut flip = at.is_multiple_of(2);
            let disk = home.disk.after_power_cut(&mut || {
                flip = !flip;
                flip
            });
            home.on(disk);
            let mut view = home.begin();
            let mut opened = "";
            for code in [old, new] {
                if name(&view) == "code" && !code.is_empty() {
                    view = home.give(code);
                    opened = code;
                }
            }
            assert_eq!(name(&view), "today", "{old:?} to {new:?} at {at}");
            assert!(!done || opened == new, "{old:?} to {new:?} at {at}");
            assert_eq!(home.entries().len(), 3);
            if done {
                break;
            }
            at += 1;
            assert!(at < 500);
        }
        assert!(at > 3, "{at}");
    }
}

#[test]
fn a_change_that_fails_half_way_asks_for_the_code_that_holds() {
    let mut home = Home::coded("1111");
    let (mut nth, mut holds) = (0, "1111");
    loop {
        home.whole(WholeRequest::CodeForm);
        assert_eq!(name(&home.give(holds)), "set code");
        home.disk.fail(crate::ports::sim::Call::Rename, nth, false);
        let outcome = home.try_whole(set("2222"));
        home.disk.fail(crate::ports::sim::Call::Rename, 1_000_000, false);
        match outcome {
            Ok(_) => break,
            Err(trouble) => {
                let mut view = home.begin();
                if name(&view) == "code" {
                    assert_eq!(trouble, Trouble::OpenAgain);
                    for code in ["1111", "2222"] {
                        if name(&view) == "code" {
                            (view, holds) = (home.give(code), code);
                        }
                    }
                }
                assert_eq!(name(&view), "today");
                assert_eq!(home.entries().len(), 3);
            }
        }
        nth += 1;
        assert!(nth < 100);
    }
    home.again();
    home.begin();
    assert_eq!(name(&home.give("2222")), "today");
}

/// Stored format: written by hand in Python from the table in `tries.rs`, after one wrong code.
#[test]
fn the_count_is_stored_as_it_is_told() {
    let mut home = Home::coded("4711");
    home.again();
    home.give("0000");
    let stored = data_encoding::HEXLOWER.encode(&home.disk.content(&tries()).unwrap());
    let (second, first) = stored.split_at(128);
    assert_eq!(
        second,
        "4652541a010001000200000000000000010000000000000000ac8fad9c010000\
         010000000000000040420f0000000000000000000000000000000000d52df393"
    );
    assert_eq!(
        first,
        "4652541a010001000100000000000000000000000000000000ac8fad9c010000\
         010000000000000040420f0000000000000000000000000000000000e562fd1a"
    );
}
