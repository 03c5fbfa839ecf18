//! What leaves the phone: the stored form, what narrowing leaves out, what a reader refuses. All invented.

#[path = "summary/apart.rs"]
mod apart;
#[path = "summary/refused.rs"]
mod refused;
mod rule_diary;

use frond_core::diary::entry::{
    Chosen, Content, EntryId, Goal, Reason, Session, Settings, Settled, Why,
};
use frond_core::ports::{OsRandom, Passphrase};
use frond_core::programme::values::{Line, Passage, Rating};
use frond_core::progression::{OutcomeKind, assess};
use frond_core::safety::{Sign, Tier};
use frond_core::schema;
use frond_core::screens::{Opens, ReadingPartKind, ReadingScreen, SummaryScreen};
use frond_core::sealing::{Identity, OpenError, OpenWith, RecoveryPhrase, SealTo, SigningKey};
use frond_core::summary::{
    DiaryId, DiaryIdentity, FileKind, Narrowed, Present, Received, Selection, Summary,
    SummaryError, TimeAlone, file_name, open_summary, read_bounded, table, to_clinician,
};
use frond_core::words::Words;
use frond_tests::lives::Life;
use rule_diary::*;
use serde_json::json;
use zeroize::Zeroizing;

fn signs(diary: &[u8; 16], seed: u8) -> DiaryIdentity {
    let key = SigningKey::from_seed(&Zeroizing::new([seed; 32]));
    DiaryIdentity { id: DiaryId(*diary), key }
}

fn identity() -> DiaryIdentity {
    signs(b"invented diary 1", 7)
}

fn passage(text: &str) -> Passage {
    Passage::new(text).unwrap()
}

fn noted(content: Content, note: &str) -> Content {
    match content {
        Content::Session(session) => {
            Content::Session(Session { note: Some(passage(note)), ..session })
        }
        other => other,
    }
}

fn rules() -> serde_json::Value {
    json!({
        "step_up": {"all_of": [
            {"criterion": "sessions", "practised_days": 2, "within_days": 10},
            {"criterion": "discomfort_at_most", "rating": "peak", "at_most": 3, "last": 2}]},
        "step_back": [{"when": {"criterion": "discomfort_at_least", "rating": "peak", "at_least": 7,
                       "window": {"sessions": 2, "of_last": 2}}, "target": "previous"}],
        "pause": [{"criterion": "discomfort_at_least", "rating": "peak", "at_least": 9,
                   "window": {"sessions": 1, "of_last": 1}}],
    })
}

/// Three weeks in which everything happens once. Each note and question has a word of its own.
fn diary() -> Diary {
    let mut diary = Diary::begun(&programme(1, ladder(), rules()));
    diary.say(at(0, 9), Content::LookForward { to: passage("W-lookforward") });
    let first = diary.say(at(1, 20), noted(sit(150, Some(4)).what(), "N-first-version"));
    diary.write(
        at(2, 9),
        at(1, 20),
        Content::Correction {
            of: first,
            content: Box::new(noted(sit(150, Some(2)).what(), "N-corrected")),
        },
    );
    diary.say(at(2, 9), Content::Settled { of: first, answer: Settled::Yes });
    let slip = diary.say(at(2, 20), noted(sit(180, Some(1)).what(), "N-struck"));
    diary.say(at(2, 21), strike(slip));
    diary.say(at(3, 20), noted(sit(150, Some(2)).what(), "=N-formula"));
    let shown = diary.say(
        at(3, 21),
        Content::SuggestionShown {
            outcome: OutcomeKind::StepUp,
            step: token("a"),
            to: Some(token("b")),
        },
    );
    diary.say(at(3, 21), Content::SuggestionAnswered { shown, chosen: Chosen::Try });
    diary.say(at(3, 21), Content::StepChange { to: token("b"), why: Why::Suggested });
    let question = diary.say(at(4, 9), Content::Question { text: passage("Q-taken-back") });
    diary.say(at(4, 10), strike(question));
    diary.say(at(4, 11), Content::Question { text: passage("Q-asked") });
    diary.say(at(5, 20), sit(180, Some(5)).stopped(Reason::DidNotGoIn).what());
    diary.write(at(9, 20), at(6, 20), noted(sit(150, None).what(), "N-late"));
    diary.say(at(9, 20), Content::TimeOff { from: at(10, 0).day(), to: at(12, 0).day() });
    let sign = diary.say(
        at(13, 9),
        Content::SignReported {
            signs: vec![frond_core::diary::entry::SignNoted {
                sign: Sign::Fever,
                tier: Tier::Stop,
            }],
            note: Some(passage("N-sign")),
        },
    );
    diary.say(at(14, 9), clearing(&[(sign, Sign::Fever)], false));
    diary.say(
        at(15, 9),
        Content::FunctionRated {
            activity: Line::new("F-first").unwrap(),
            able: Rating::new(3).unwrap(),
        },
    );
    diary.say(
        at(15, 9),
        Content::GoalRated {
            goal: Line::new("G-goal").unwrap(),
            reached: Goal::try_from(-1).unwrap(),
        },
    );
    diary.say(
        at(16, 9),
        Content::Settings(Settings {
            language: Line::new("en").ok(),
            numbers_open: true,
            ..Settings::default()
        }),
    );
    diary.say(
        at(16, 20),
        noted(sit(180, Some(3)).sign(Sign::Spotting, Tier::AskFirst).what(), "N-last"),
    );
    diary
}

fn made(selection: &Selection) -> Summary {
    Summary::of(&diary().0, &identity(), selection, &at(17, 9)).unwrap()
}

fn open(summary: &Summary) -> Vec<u8> {
    summary.open_form(&identity()).unwrap()
}

fn received(bytes: &[u8]) -> Received {
    open_summary(bytes, None).unwrap()
}

#[test]
fn the_form_is_stored_as_it_was_first_stored() {
    let bytes = open(&made(&Selection::default()));
    let value: serde_json::Value = serde_json::from_slice(&bytes).unwrap();
    insta::assert_json_snapshot!("summary_form", value);
    let back = received(&bytes);
    assert!(back.summary == made(&Selection::default()));
    assert_eq!(back.from, identity().pin());
}

#[test]
fn the_table_is_flat_and_harmless() {
    let csv = table::csv(&made(&Selection::default())).unwrap();
    insta::assert_snapshot!("summary_table", csv);
    assert!(csv.contains(",'=N-formula"), "a spreadsheet must not run a note");
    assert!(!csv.contains("N-struck") && !csv.contains("N-first-version"));
    let header = csv.lines().next().unwrap();
    assert_eq!(header.split(',').count(), table::COLUMNS.len());
}

#[test]
fn the_summary_validates_against_its_published_schema() {
    let schema = schema::summary();
    let validator = jsonschema::draft202012::new(&schema).unwrap();
    let on_disk = include_str!("../../fixtures/schema/summary.schema.json");
    assert!(on_disk == schema::text(&schema), "write_schemas writes it anew");
    let narrow = Selection { from: Some(at(4, 0).day()), ..Selection::default() };
    for selection in [Selection::default(), narrow] {
        let value = serde_json::from_slice(&open(&made(&selection))).unwrap();
        let errors: Vec<String> =
            validator.iter_errors(&value).map(|error| error.to_string()).collect();
        assert!(errors.is_empty(), "{errors:?}");
    }
    let mut value: serde_json::Value =
        serde_json::from_slice(&open(&made(&Selection::default()))).unwrap();
    value["summary"]["more"] = json!(1);
    assert!(!validator.is_valid(&value), "a schema that refuses nothing proves nothing");
}

#[test]
fn the_rule_replayed_on_a_whole_summary_says_what_it_said_on_the_phone() {
    for seed in 0..1500 {
        let life = Life::of_seed(seed);
        let Ok(summary) = Summary::of(&life.entries, &identity(), &Selection::default(), &life.now)
        else {
            continue;
        };
        let here = assess(&summary.entries, &life.now).unwrap();
        let here = Present::of(&here, &summary.entries, life.now);
        assert_eq!(here, summary.present, "seed {seed}\n{life}");
        let there = assess(&life.entries, &life.now).unwrap();
        // What is read back words the same outcome; only the place of a latch is told by its time.
        let back = summary.present.assessment();
        assert_eq!((&back.outcome, &back.findings), (&there.outcome, &there.findings));
        assert_eq!((&back.bars, &back.open_signs), (&there.bars, &there.open_signs));
        assert_eq!(back.basis, there.basis);
    }
}

#[test]
fn words_that_no_longer_count_and_nobodys_business_never_leave() {
    for notes in [true, false] {
        let selection = Selection { notes, ..Selection::default() };
        let summary = made(&selection);
        let csv = table::csv(&summary).unwrap();
        let text = String::from_utf8(open(&summary)).unwrap() + &csv;
        for never in ["N-first-version", "N-struck", "Q-taken-back", "W-lookforward"] {
            assert!(!text.contains(never), "{never}");
        }
        for note in ["N-corrected", "N-formula", "N-late", "N-sign", "N-last"] {
            assert_eq!(text.contains(note), notes, "{note}");
        }
        assert!(text.contains("Q-asked"));
        assert!(!text.contains("numbers_open\":true"), "how the app is set up");
        assert!(!text.contains("uptime"));
    }
}

/// Every span of days and every choice, on the diary above: nothing outside the selection appears.
#[test]
fn nothing_outside_the_selection_appears() {
    let whole = diary();
    for from in [None, Some(0), Some(2), Some(4), Some(6), Some(13), Some(17)] {
        for to in [None, Some(0), Some(3), Some(5), Some(13), Some(16)] {
            for (notes, questions) in [(true, true), (false, true), (true, false), (false, false)] {
                let day = |day: Option<i64>| day.map(|day| at(day, 0).day());
                let selection = Selection { from: day(from), to: day(to), notes, questions };
                let summary = Summary::of(&whole.0, &identity(), &selection, &at(17, 9)).unwrap();
                let within =
                    |day: i64| from.is_none_or(|from| from <= day) && to.is_none_or(|to| day <= to);
                let text =
                    String::from_utf8(open(&summary)).unwrap() + &table::csv(&summary).unwrap();
                for (word, day) in [
                    ("N-corrected", 1),
                    ("N-formula", 3),
                    ("N-late", 6),
                    ("N-sign", 13),
                    ("N-last", 16),
                ] {
                    assert_eq!(text.contains(word), notes && within(day), "{word} {selection:?}");
                }
                assert_eq!(text.contains("Q-asked"), questions && within(4), "{selection:?}");
                assert_eq!(text.contains("F-first"), within(15), "{selection:?}");
                let sessions = summary.entries.iter().filter(|entry| {
                    matches!(entry.what, Content::Session(_))
                        && !within_days(entry.happened, &selection)
                });
                assert_eq!(sessions.count(), 0, "{selection:?}");
                // What was asked for is what a reader is told.
                let narrowed = &received(&open(&summary)).summary.narrowed;
                assert_eq!((narrowed.from, narrowed.to), (selection.from, selection.to));
                assert_eq!(narrowed.notes_left_out, !notes);
                assert_eq!(narrowed.questions_left_out, !questions);
                // An open sign is told whatever the days.
                assert_eq!(summary.present.open_signs.len(), 1);
                let reading = reading(&summary);
                assert_eq!(reading.narrowed.is_empty(), !narrowed.is_narrowed());
            }
        }
    }
}

fn within_days(happened: frond_core::moment::Stamp, selection: &Selection) -> bool {
    let day = happened.day();
    selection.from.is_none_or(|from| from <= day) && selection.to.is_none_or(|to| day <= to)
}

/// The same over random diaries, by the ids that appear.
#[test]
fn narrowing_keeps_only_sessions_of_the_days_chosen_on_random_diaries() {
    for seed in 0..400 {
        let life = Life::of_seed(seed);
        let Some(middle) = life.entries.get(life.entries.len() / 2) else { continue };
        let selection = Selection { from: Some(middle.happened.day()), ..Selection::default() };
        let Ok(summary) = Summary::of(&life.entries, &identity(), &selection, &life.now) else {
            continue;
        };
        let counted = frond_core::diary::resolve::resolve(&summary.entries);
        for row in counted.iter().filter(|row| matches!(row.content, Content::Session(_))) {
            assert!(row.happened.day() >= middle.happened.day(), "seed {seed}\n{life}");
        }
        let received = received(&open(&summary));
        ReadingScreen::new(&received, &Words::for_language("en"), true).unwrap();
        table::csv(&summary).unwrap();
    }
}

fn reading(summary: &Summary) -> ReadingScreen {
    ReadingScreen::new(&received(&open(summary)), &Words::for_language("en"), false).unwrap()
}

#[test]
fn the_reading_says_in_this_order_what_a_clinician_needs() {
    insta::assert_json_snapshot!("summary_reading", reading(&made(&Selection::default())));
    let narrow = Selection {
        from: Some(at(4, 0).day()),
        to: Some(at(13, 0).day()),
        notes: false,
        questions: false,
    };
    insta::assert_json_snapshot!("summary_reading_narrowed", reading(&made(&narrow)));
    let notes = ReadingScreen::new(
        &received(&open(&made(&Selection::default()))),
        &Words::for_language("en"),
        true,
    )
    .unwrap();
    let text = serde_json::to_string(&notes).unwrap();
    assert!(text.contains("N-last") && !text.contains("N-struck"), "{text}");
    let folded = serde_json::to_string(&reading(&made(&Selection::default()))).unwrap();
    assert!(!folded.contains("N-"), "notes are folded");
}

/// In each language: the same parts in the same order, and in each step what was practised before any
/// rating.
#[test]
fn the_reading_keeps_its_order_and_counts_come_first_in_every_language() {
    let from = received(&open(&made(&Selection::default())));
    let english = reading(&made(&Selection::default()));
    for (language, practised) in [("en", "practised "), ("es", "se practicó ")] {
        let screen = ReadingScreen::new(&from, &Words::for_language(language), false).unwrap();
        let order = |of: &ReadingScreen| of.parts.iter().map(|one| one.part).collect::<Vec<_>>();
        assert_eq!(order(&screen), order(&english));
        let steps = screen.parts.iter().find(|one| one.part == ReadingPartKind::Steps).unwrap();
        let stretches: Vec<_> = steps.points.iter().filter(|one| !one.inner.is_empty()).collect();
        assert!(!stretches.is_empty());
        for stretch in stretches {
            assert!(stretch.inner[0].starts_with(practised), "{language}");
        }
    }
    let spanish = ReadingScreen::new(&from, &Words::for_language("es"), false).unwrap();
    insta::assert_json_snapshot!("summary_reading_es", spanish);
}

#[test]
fn she_sees_what_is_in_it_before_it_leaves() {
    let words = Words::for_language("en");
    let narrow = Selection { from: Some(at(4, 0).day()), notes: false, ..Selection::default() };
    let sealed = Opens::Recipients(vec!["Invented Clinic".to_owned()]);
    let screens = [
        SummaryScreen::new(&made(&Selection::default()), &Opens::Anyone, true, &words),
        SummaryScreen::new(&made(&narrow), &sealed, true, &words),
    ];
    assert_eq!(screens[0].time_alone, None, "an open file never carries the wish");
    assert!(screens[1].time_alone.is_some());
    insta::assert_json_snapshot!("summary_screen", screens);
}

#[test]
fn an_open_summary_never_carries_the_wish_for_time_alone() {
    let bytes = open(&made(&Selection::default()));
    assert!(!String::from_utf8(bytes.clone()).unwrap().contains("time_alone"));
    assert_eq!(reading(&made(&Selection::default())).time_alone, None);
    assert!(!received(&bytes).summary.asks_time_alone());
}

/// An invented key of age, made of the words `an invented key, it opens little`.
const KEY: &str = "AGE-SECRET-KEY-1V9HZQ6TWWEJKUAR9VSSXKETE9SSXJAPQDACX2MNNYPKXJAR5D3JSRUDF5S";

fn passphrase(words: &str) -> Passphrase {
    Passphrase::new(words.to_owned()).unwrap()
}

#[test]
fn a_sealed_summary_opens_with_its_key_alone_and_may_ask_for_time_alone() {
    let key = Identity::parse(KEY).unwrap();
    let other = RecoveryPhrase::new(&OsRandom).unwrap();
    let to = SealTo::Recipients(vec![key.recipient()]);
    let summary = made(&Selection::default());
    let sealed = summary.sealed_form(&identity(), &to, TimeAlone::Please).unwrap();
    assert_eq!(open_summary(&sealed, None).unwrap_err(), SummaryError::Sealed);
    let wrong = Identity::parse(&other.identity().to_text()).unwrap();
    let wrong = OpenWith::Identities(vec![wrong]);
    let error = open_summary(&sealed, Some(&wrong)).unwrap_err();
    assert_eq!(error, SummaryError::Seal(OpenError::WrongKey));
    let received = open_summary(&sealed, Some(&OpenWith::Identities(vec![key]))).unwrap();
    assert!(received.sealed && received.summary.asks_time_alone());
    let screen = ReadingScreen::new(&received, &Words::for_language("en"), false).unwrap();
    assert!(screen.time_alone.is_some());
    // Handed on in the open, the wish is gone.
    let handed_on = received.summary.open_form(&identity()).unwrap();
    assert!(!open_summary(&handed_on, None).unwrap().summary.asks_time_alone());
}

#[test]
fn a_summary_sealed_to_a_passphrase_says_when_it_is_another() {
    let to = SealTo::Passphrase(passphrase("invented words"));
    let summary = made(&Selection::default());
    let sealed = summary.sealed_form(&identity(), &to, TimeAlone::NotAsked).unwrap();
    let with = |words: &str| OpenWith::Passphrase(passphrase(words));
    let wrong = open_summary(&sealed, Some(&with("other words"))).unwrap_err();
    assert_eq!(wrong, SummaryError::Seal(OpenError::WrongPassphrase));
    assert!(!wrong.to_string().contains("words"));
    let received = open_summary(&sealed, Some(&with("invented words"))).unwrap();
    assert!(!received.summary.asks_time_alone());
}

#[test]
fn it_is_sealed_to_those_whom_the_plan_names() {
    let key = Identity::parse(KEY).unwrap();
    let mut plan = programme(1, ladder(), rules());
    assert!(to_clinician(&parse(&plan)).is_err(), "the plan names nobody");
    plan["recipients"] = json!([{"name": "Invented", "key": key.recipient().to_string()}]);
    let to = to_clinician(&parse(&plan)).unwrap();
    let summary = made(&Selection::default());
    let sealed = summary.sealed_form(&identity(), &to, TimeAlone::NotAsked).unwrap();
    assert!(open_summary(&sealed, Some(&OpenWith::Identities(vec![key]))).is_ok());
    plan["recipients"] = json!([{"name": "Invented", "key": "age1notakey"}]);
    assert!(to_clinician(&parse(&plan)).is_err());
}

#[test]
fn no_file_name_tells_of_health() {
    for kind in FileKind::ALL {
        let name = file_name(kind, at(0, 0).day());
        assert!(name.starts_with("record-2026-01-01."), "{name}");
        for word in [
            "health",
            "pelvi",
            "pain",
            "frond",
            "diary",
            "train",
            "dilat",
            "clinic",
            "medic",
            "therap",
            "summary",
            "session",
            "discomfort",
            "patient",
            "fhir",
        ] {
            assert!(!name.contains(word), "{name}");
        }
        // A date, one word and its ending: nothing more fits into it.
        assert!(name.len() <= "record-2026-01-01.list.json".len());
    }
}

#[test]
fn an_empty_diary_has_a_summary_that_says_so() {
    let summary = Summary::of(&[], &identity(), &Selection::default(), &at(0, 9)).unwrap();
    assert_eq!(summary.narrowed, Narrowed::default());
    assert_eq!(table::csv(&summary).unwrap().lines().count(), 1);
    let reading = reading(&summary);
    assert_eq!(reading.parts.len(), 3, "open signs, present step and the rule are always there");
}
