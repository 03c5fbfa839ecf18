//! The words of the timer, in every state.

use super::*;
use crate::words::Words;

#[test]
fn w5_words_and_buttons_of_every_state_with_stop_first() {
    let words = Words::for_language("en");
    let at = |second: u64| tick(1, second, second as i64);
    let ready = timer(&[(10, 20), (30, 60)], &at(0));
    let first = ready.clone().after(Event::Begin { part: 0 }, &at(0));
    let between = first.clone().after(Event::Seen, &at(20));
    let second = between.clone().after(Event::Begin { part: 1 }, &at(30));
    let mut said = String::new();
    for (name, timer, seconds) in [
        ("ready", &ready, 0),
        ("first part", &first, 5),
        ("first part, least reached", &first, 12),
        ("between", &between, 25),
        ("last part", &second, 40),
        ("last part, least reached", &second, 65),
        ("paused", &second.clone().after(Event::Pause, &at(40)), 50),
        ("finished", &second, 95),
        ("stopped", &second.clone().after(Event::Stop, &at(40)), 50),
    ] {
        let view = timer.view(&at(seconds));
        let line = view.word_id().map_or(String::new(), |id| words.text(id, &[]));
        let buttons = view.buttons();
        let stop = (view.state != State::Stopped).then_some(&Event::Stop);
        assert_eq!(buttons.first(), stop, "one action stops at any moment");
        let buttons: Vec<String> =
            buttons.iter().map(|event| words.text(event.word_id().unwrap(), &[])).collect();
        said += &format!("{name}: {line} [{}]\n", buttons.join(" | "));
    }
    insta::assert_snapshot!(said);
}

#[test]
fn words_of_a_practice_found_again() {
    let words = Words::for_language("en");
    let begun = timer(&[(60, 600)], &tick(1, 0, 0)).after(Event::Begin { part: 0 }, &tick(1, 0, 0));
    let kept = begun.after(Event::Seen, &tick(1, 130, 130));
    let card = found(&kept).offer(&tick(2, 0, 500)).card(&words, "today at 10:00");
    let mut said = vec![card];
    let unbegun = timer(&[(60, 600)], &tick(1, 0, 0));
    said.push(found(&unbegun).offer(&tick(1, 5, 5)).card(&words, ""));
    insta::assert_json_snapshot!(said);
    for error in [RunningError::Newer, RunningError::Unreadable, RunningError::NotKept] {
        assert_ne!(words.text(error.word_id(), &[]), error.word_id());
    }
}
