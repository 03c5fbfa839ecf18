//! The form of JSON lines: its description is true, and what it leaves open works.

use std::collections::BTreeSet;

use frond_core::diary::entry::Content;
use frond_core::diary::lines;

use crate::kit::{Diary, refused, run, said};

/// Every kind, found by the compiler: a new one does not compile until it is named here.
fn kind(content: &Content) -> &'static str {
    match content {
        Content::Session(_) => "session",
        Content::Correction { .. } => "correction",
        Content::Strike { .. } => "strike",
        Content::StepChange { .. } => "step_change",
        Content::StepConfirmed { .. } => "step_confirmed",
        Content::ProgrammeAccepted { .. } => "programme_accepted",
        Content::SignReported { .. } => "sign_reported",
        Content::Clearing { .. } => "clearing",
        Content::ScreeningAnswered { .. } => "screening_answered",
        Content::FeelsReady { .. } => "feels_ready",
        Content::SuggestionShown { .. } => "suggestion_shown",
        Content::SuggestionAnswered { .. } => "suggestion_answered",
        Content::StayHere { .. } => "stay_here",
        Content::TimeOff { .. } => "time_off",
        Content::LookForward { .. } => "look_forward",
        Content::FunctionRated { .. } => "function_rated",
        Content::GoalRated { .. } => "goal_rated",
        Content::Question { .. } => "question",
        Content::Settled { .. } => "settled",
        Content::HoldConditions { .. } => "hold_conditions",
        Content::Reminders(_) => "reminders",
        Content::PutOff { .. } => "put_off",
        Content::Settings(_) => "settings",
        Content::TimeConfirmed {} => "time_confirmed",
        Content::ClockMark { .. } => "clock_mark",
        Content::MissingMark { .. } => "missing_mark",
        Content::RestoredMark { .. } => "restored_mark",
        Content::CopyMade {} => "copy_made",
        Content::ErasedMark { .. } => "erased_mark",
    }
}

const KINDS: usize = 29;

#[test]
fn every_kind_is_described_with_an_example_that_reads() {
    let text = include_str!("../../ENTRIES.md");
    let examples: Vec<&str> = text.lines().filter(|line| line.starts_with('{')).collect();
    let entries = lines::read(examples.join("\n").as_bytes()).unwrap();
    assert_eq!(entries.len(), examples.len());
    let kinds: BTreeSet<&str> = entries.iter().map(|entry| kind(&entry.what)).collect();
    assert_eq!(kinds.len(), KINDS);
    for kind in kinds {
        assert!(text.contains(&format!("### `{kind}`")), "{kind}");
    }
}

const SESSION: &str = r#"{"happened":"2026-03-03T20:00:00+00:00","what":{"kind":"session","practice":"trainer","parts":[{"widest_diameter_tenths_mm":120,"practised_seconds":360}],"position":"on_back","ended":"finished","ratings":{"peak":{"rated":2}}}}"#;
const CONFIRMED: &str = r#"{"happened":"2026-03-02T18:30:00+00:00","what":{"kind":"step_confirmed","step":"size-1-back"}}"#;

#[test]
fn a_hand_written_file_with_a_programme_beside_it_is_answered() {
    let diary = Diary::place();
    let (programme, file) = (diary.programme(), diary.base.path().join("by-hand.jsonl"));
    std::fs::write(&file, format!("{CONFIRMED}\n\n{SESSION}\n")).unwrap();
    let file = file.display().to_string();
    let now = "2026-03-03T20:30:00+00:00";
    let with = ["suggest", "--entries", &file, "--now", now, "--programme", &programme];
    let text = said(&run(&with));
    assert!(text.contains("Stay with what you use now."));
    assert!(text.contains("6 more days"));
    assert!(!text.contains("Confirm what you use now"));
    // Nothing can be chosen where there is no diary to write it in.
    assert!(!text.contains("frond suggest --try"));
    let without = said(&run(&["suggest", "--entries", &file, "--now", now]));
    assert!(without.contains("There is no plan yet"));
    let replay = said(&run(&["replay", "--entries", &file, "--programme", &programme]));
    assert!(replay.contains("12 mm, 6 minutes, finished, highest discomfort 2"));
}

#[test]
fn a_programme_beside_lines_that_accept_another_is_refused_with_what_to_do() {
    let diary = Diary::place();
    let out = diary.base.path().join("demo");
    said(&run(&["demo", "--out", &out.display().to_string()]));
    let name = |name: &str| out.join(name).display().to_string();
    let (entries, now) = (name("entries.jsonl"), "2026-05-10T19:28:00+01:00");
    let ask = |programme: &str| {
        run(&["suggest", "--entries", &entries, "--now", now, "--programme", &name(programme)])
    };
    assert!(said(&ask("programme.json")).contains("revision 2"));
    assert!(refused(&ask("programme-1.json"), 2).contains("frond replay --rule"));
}
