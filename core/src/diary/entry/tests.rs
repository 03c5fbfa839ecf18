//! The stored form of every kind of entry, held still: a diary kept today opens forever.

use zeroize::Zeroizing;

use super::*;
use crate::practice::breathing::CueKinds;
use crate::programme::values::{
    Count, Line, Passage, Position, Practice, Rating, Revision, Size, StepId, Token,
};
use crate::progression::OutcomeKind;
use crate::reminders::ReminderSettings;
use crate::safety::{HoldCondition, Sign, Tier};
use crate::sealing::{Context, SigningKey};

fn line(text: &str) -> Line {
    Line::new(text).unwrap()
}

fn passage(text: &str) -> Passage {
    Passage::new(text).unwrap()
}

fn step(text: &str) -> StepId {
    Token::new(text).unwrap()
}

fn session() -> Session {
    Session {
        practice: Practice::Trainer,
        parts: vec![UsedPart {
            widest_diameter_tenths_mm: Size::new(145).ok(),
            practised_seconds: 480,
        }],
        position: Position::OnBack,
        ended: Ended::Stopped(Reason::DidNotGoIn),
        ratings: Ratings {
            peak: Rating::new(4).ok().map(Answer::Rated),
            before: Some(Answer::RatherNotSay),
            ..Ratings::default()
        },
        signs: vec![SignNoted { sign: Sign::Spotting, tier: Tier::AskFirst }],
        note: Some(passage("an invented note")),
    }
}

/// One of every kind, all invented.
fn every_kind() -> Vec<Content> {
    let id = EntryId([7; 16]);
    let stamp: Stamp = "2026-03-01T09:00:00+01:00[Europe/Madrid]".parse().unwrap();
    let day = stamp.day();
    let key = SigningKey::from_seed(&Zeroizing::new([1; 32]));
    vec![
        Content::Session(session()),
        Content::Correction { of: id, content: Box::new(Content::Session(session())) },
        Content::Strike { of: id },
        Content::StepChange { to: step("two"), why: Why::Suggested },
        Content::StepConfirmed { step: step("two") },
        Content::ProgrammeAccepted {
            programme: Token::new("plan").unwrap(),
            revision: Revision::new(2).unwrap(),
            carried: "{}".into(),
            signed: None,
            although: vec![],
        },
        Content::ProgrammeAccepted {
            programme: Token::new("plan").unwrap(),
            revision: Revision::new(2).unwrap(),
            carried: "{}".into(),
            signed: Some(Box::new(SignedBy {
                key: key.verify_key(),
                signature: key.sign(Context::new("frond programme 1"), b"{}"),
                stood: KeyStood::Other,
            })),
            although: Although::ALL.to_vec(),
        },
        Content::SignReported {
            signs: vec![SignNoted { sign: Sign::Fever, tier: Tier::Stop }],
            note: None,
        },
        Content::Clearing {
            with: line("Ines Abara"),
            signs: vec![SignKey { entry: id, sign: Sign::Fever }],
            closes_pause: true,
        },
        Content::ScreeningAnswered {
            asked: Asked::FullList,
            answer: ScreeningAnswer::NothingNew,
            signs: vec![],
        },
        Content::FeelsReady { answer: FeelsReady::NotYet },
        Content::SuggestionShown {
            outcome: OutcomeKind::StepUp,
            step: step("one"),
            to: Some(step("two")),
        },
        Content::SuggestionAnswered { shown: id, chosen: Chosen::Stay },
        Content::StayHere { stay: true },
        Content::TimeOff { from: day, to: day },
        Content::LookForward { to: passage("a walk") },
        Content::FunctionRated { activity: line("cycling"), able: Rating::new(6).unwrap() },
        Content::GoalRated { goal: line("sleep"), reached: Goal::try_from(-1).unwrap() },
        Content::Question { text: passage("may I swim?") },
        Content::Settings(Settings {
            language: Some(line("en")),
            numbers_open: true,
            cues: CueKinds { tone: true, ..CueKinds::default() },
            ..Settings::default()
        }),
        Content::HoldConditions { reported: vec![HoldCondition::HeartTrouble] },
        Content::Reminders(ReminderSettings::off(id)),
        Content::PutOff { until: stamp },
        Content::Settled { of: id, answer: Settled::NotYet },
        Content::TimeConfirmed {},
        Content::ClockMark { change: ClockChange::LongAway },
        Content::MissingMark { entries: Count::new(3).unwrap(), after: Some(stamp), before: None },
        Content::RestoredMark { up_to: 41, replaced: None },
        Content::CopyMade {},
        Content::ErasedMark { latest: stamp, caution_open: true, pause_open: false },
    ]
}

fn entry(what: Content) -> Entry {
    let written: Stamp = "2026-03-01T09:30:00+01:00[Europe/Madrid]".parse().unwrap();
    let happened: Stamp = "2026-03-01T09:00:00+01:00[Europe/Madrid]".parse().unwrap();
    let uptime = Some(Uptime { boot: 5, millis: 60_000 });
    Entry { id: EntryId([1; 16]), written, happened, uptime, what }
}

#[test]
fn every_kind_is_stored_as_it_was_first_stored() {
    let lines: Vec<String> =
        every_kind().into_iter().map(|what| serde_json::to_string(&entry(what)).unwrap()).collect();
    insta::assert_snapshot!(lines.join("\n"));
}

#[test]
fn every_kind_reads_back_and_no_kind_is_left_out_above() {
    let mut names = std::collections::BTreeSet::new();
    for what in every_kind() {
        let first = entry(what);
        let text = serde_json::to_string(&first).unwrap();
        let back: Entry = serde_json::from_str(&text).unwrap();
        assert_eq!(back, first);
        let value: serde_json::Value = serde_json::from_str(&text).unwrap();
        names.insert(value["what"]["kind"].as_str().unwrap().to_owned());
    }
    let schema = serde_json::to_value(schemars::schema_for!(Content)).unwrap();
    let kinds = schema["oneOf"].as_array().unwrap().len();
    assert_eq!(names.len(), kinds, "a kind has no sample");
}

#[test]
fn unknown_fields_unknown_kinds_and_doubled_keys_are_refused() {
    let good = serde_json::to_string(&entry(Content::Strike { of: EntryId([7; 16]) })).unwrap();
    for (from, to) in [
        ("\"kind\":\"strike\"", "\"kind\":\"strike\",\"more\":1"),
        ("\"kind\":\"strike\"", "\"kind\":\"strikes\""),
        ("\"written\"", "\"written\":\"2026-03-01T09:30:00Z\",\"written\""),
        ("\"kind\":\"strike\"", "\"kind\":\"strike\",\"kind\":\"strike\""),
        ("\"id\":\"01", "\"id\":\"1"),
    ] {
        let bad = good.replacen(from, to, 1);
        assert_ne!(bad, good);
        assert!(serde_json::from_str::<Entry>(&bad).is_err(), "{bad}");
    }
}

#[test]
fn debug_text_tells_nothing() {
    for what in every_kind() {
        let shown = format!("{:?}", (&what, entry(what.clone()), what.signs()));
        assert!(shown.starts_with("(Content(..), Entry(..), ["), "{shown}");
        for told in ["invented", "Spotting", "spotting", "145", "Fever", "swim", "two"] {
            assert!(!shown.contains(told), "{shown}");
        }
    }
}

#[test]
fn after_how_long_it_locks_is_written_only_where_another_time_was_chosen() {
    let stored = |lock_after| {
        let settings = Settings { lock_after, ..Settings::default() };
        serde_json::to_string(&Content::Settings(settings)).unwrap()
    };
    assert!(!stored(LockAfter::TwoMinutes).contains("lock_after"));
    for after in LockAfter::ALL {
        let text = stored(after);
        assert_eq!(text.contains("lock_after"), after != LockAfter::TwoMinutes);
        let read: Content = serde_json::from_str(&text).unwrap();
        assert!(matches!(read, Content::Settings(read) if read.lock_after == after));
    }
}
