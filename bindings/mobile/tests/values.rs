//! Values at the border: what the core's own constructor refuses comes back as an error of the call, in words
//! that say what to do; everything else is the same on both sides.
//!
//! That every screen, request, duty and action crosses needs no test: each is named again in the facade, and a
//! variant or a field that is missing there does not compile.

#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

mod kit;

use chrono::NaiveDate;
use frond_core::diary::entry::{EntryId, Goal};
use frond_core::moment::Stamp;
use frond_core::programme::values::{Line, Minutes, Passage, Rating, Size, Token};
use frond_core::reminders::{ClockTime, ClockTimes, QuietHours, SnoozeMinutes, Weekdays};
use frond_core::safety::{Answer, FullList, Sign, SignGroup};
use frond_core::whole::Seen;
use frond_mobile::UniFfiTag;
use frond_mobile::trouble::FrondError;
use frond_mobile::values::{FromTo, HourMinute, Instant};
use kit::{lifted, lowered};
use uniffi::{Lift, LiftArgsError, LowerReturn, RustCallError};

/// What a call answers whose argument was refused: the way UniFFI's own scaffolding takes.
fn call_with<T: Lift<UniFfiTag>>(bytes: &[u8]) -> FrondError {
    // A refusal is spoken in the language of the last object made.
    let folder = tempfile::tempdir().unwrap();
    let _frond = kit::frond(folder.path(), kit::MemoryKeeper::new());
    let Err(error) = lifted::<T>(bytes) else { panic!("it was taken") };
    let refused = LiftArgsError { arg_name: "request", error };
    match <Result<Seen, FrondError> as LowerReturn<UniFfiTag>>::handle_failed_lift(refused) {
        Err(RustCallError::Error(buffer)) => lifted(&buffer.destroy_into_vec()).unwrap(),
        _ => panic!("it came back as a fault of the program"),
    }
}

fn says<T: Lift<UniFfiTag>>(bytes: &[u8]) -> String {
    match call_with::<T>(bytes) {
        FrondError::PutRight { says } => says,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_number_out_of_its_range_is_put_right() {
    let number = |number: i32| lowered(number);
    assert_eq!(says::<Rating>(&number(11)), "Choose a number, or rather not say.");
    assert_eq!(says::<Rating>(&number(-1)), "Choose a number, or rather not say.");
    assert_eq!(lifted::<Rating>(&number(10)).unwrap().get(), 10);
    assert!(says::<Size>(&number(9)).contains("mm"));
    assert_eq!(lifted::<Size>(&number(225)).unwrap().get(), 225);
    assert!(says::<Minutes>(&number(0)).contains("minutes"));
    assert!(says::<Minutes>(&number(241)).contains("minutes"));
    assert!(says::<SnoozeMinutes>(&number(4)).contains("minutes"));
    assert!(says::<SnoozeMinutes>(&number(300)).contains("minutes"));
    assert_eq!(lifted::<Goal>(&number(-2)).unwrap().get(), -2);
    assert_eq!(says::<Goal>(&number(3)), "Choose one of the answers.");
}

#[test]
fn a_text_that_is_empty_or_too_long_is_put_right() {
    let text = |text: &str| lowered(text.to_owned());
    assert_eq!(says::<Passage>(&text(" \n")), "Write something first.");
    assert!(says::<Passage>(&text(&"a".repeat(2001))).contains("2,000"));
    assert!(says::<Line>(&text(&"a".repeat(201))).contains("200"));
    assert!(says::<Line>(&text("two\nlines")).contains("200"));
    // What does not hold is not shown again either.
    let own = "b".repeat(300);
    assert!(!says::<Line>(&text(&own)).contains(&own));
    assert_eq!(lifted::<Passage>(&text(" a\nb ")).unwrap().as_str(), "a\nb");
}

#[test]
fn an_identity_that_is_none_is_a_fault_of_the_shell_and_tells_the_person_to_try_again() {
    let text = |text: &str| lowered(text.to_owned());
    assert!(says::<EntryId>(&text("xyz")).contains("Try again"));
    assert!(says::<Token>(&text("Not An Id")).contains("Try again"));
    let id = EntryId([0xAB; 16]);
    assert!(lifted::<EntryId>(&lowered(id)).unwrap() == id);
}

#[test]
fn days_and_times_cross_as_they_are() {
    let day = NaiveDate::from_ymd_opt(2024, 2, 29).unwrap();
    assert_eq!(lowered(day), lowered("2024-02-29".to_owned()));
    assert_eq!(lifted::<NaiveDate>(&lowered(day)).unwrap(), day);
    assert!(says::<NaiveDate>(&lowered("2023-02-29".to_owned())).contains("2026-05-04"));

    for text in ["2026-03-01T09:00:00.123+01:00[Europe/Madrid]", "2026-07-01T09:00:00.000-05:30"] {
        let stamp: Stamp = text.parse().unwrap();
        assert_eq!(lifted::<Stamp>(&lowered(stamp)).unwrap(), stamp);
    }
    let instant = |millis, offset_seconds, zone: Option<&str>| {
        lowered(Instant { millis, offset_seconds, zone: zone.map(str::to_owned) })
    };
    let unknown = lifted::<Stamp>(&instant(0, 3600, Some("Mars/Olympus"))).unwrap();
    assert_eq!(unknown.to_string(), "1970-01-01T01:00:00.000+01:00");
    assert!(says::<Stamp>(&instant(-1, 0, None)).contains("19:30"));
    assert!(says::<Stamp>(&instant(0, 90_000, None)).contains("19:30"));

    let half_past = ClockTime::new(8, 30).unwrap();
    assert!(lifted::<ClockTime>(&lowered(half_past)).unwrap() == half_past);
    assert!(says::<ClockTime>(&lowered(HourMinute { hour: 24, minute: 0 })).contains("19:30"));
    assert!(says::<ClockTime>(&lowered(HourMinute { hour: -1, minute: 0 })).contains("19:30"));
    assert!(says::<ClockTimes>(&lowered(Vec::<ClockTime>::new())).contains("19:30"));
    assert!(says::<Weekdays>(&lowered(Vec::<ClockTime>::new())).contains("at least one day"));
    let all = lifted::<Weekdays>(&lowered(Weekdays::ALL)).unwrap();
    assert!(all == Weekdays::ALL);
    let same = lowered(FromTo { from: half_past, to: half_past });
    assert!(says::<QuietHours>(&same).contains("same"));
}

#[test]
fn the_answers_to_the_whole_list_come_back_as_they_were_given() {
    let mut list = FullList::default();
    list.answer_group(SignGroup::Bleeding, Answer::NotSure);
    list.answer(Sign::HeavyBleeding, Answer::No);
    list.answer(Sign::NumbSaddle, Answer::Yes);
    assert!(lifted::<FullList>(&lowered(list.clone())).unwrap() == list);
}
