//! Summaries to make bundles of, all invented: an empty diary, breathing only, ten years, hostile words, one
//! that is narrowed, and lives by chance.
#![allow(dead_code, reason = "the test and the example each use their own part")]

use frond_core::diary::entry::{Content, Goal, Reason, Session, SignNoted, UsedPart};
use frond_core::programme::values::{Line, Passage, Position, Practice, Rating};
use frond_core::safety::{Sign, Tier};
use frond_core::sealing::SigningKey;
use frond_core::summary::{DiaryId, DiaryIdentity, Selection, Summary};
use frond_tests::lives::Life;
use serde_json::json;
use zeroize::Zeroizing;

use super::rule_diary::{
    Diary, at, clearing, correction, ladder, missing, programme, report, sit, strike, to_step,
};

/// Words that are as unfriendly as a text of the diary can be.
pub const HOSTILE: [&str; 6] = [
    "<script>alert('no')</script> & \"quotes\" 'and' \\ backslash",
    "شريط \u{202e}reversed\u{202c} עברית \u{200f}mark",
    "=HYPERLINK(\"https://frond.invalid\") {{template}} ${variable} %s",
    "a\u{2028}b\u{2029}c\u{feff}d\u{200b}e\u{00a0}f \u{1F33F} 𝔣 é e\u{0301}",
    "\u{fffe}\u{ffff} not a character",
    "]]> <!-- --> <?xml?> &#0; &amp;lt;",
];

pub fn identity() -> DiaryIdentity {
    let key = SigningKey::from_seed(&Zeroizing::new([7; 32]));
    DiaryIdentity { id: DiaryId(*b"invented diary 1"), key }
}

pub fn summary(diary: &Diary, day: i64, selection: &Selection) -> Summary {
    Summary::of(&diary.0, &identity(), selection, &at(day, 9)).unwrap()
}

fn passage(text: &str) -> Passage {
    Passage::new(text).unwrap()
}

fn line(text: &str) -> Line {
    Line::new(text).unwrap()
}

pub fn empty() -> Summary {
    summary(&Diary::default(), 3, &Selection::default())
}

/// Breathing alone: a plan without steps.
pub fn breathing() -> Summary {
    let mut diary = Diary::default();
    let mut plan = programme(1, json!([]), json!(null));
    let lines = plan.as_object_mut().unwrap();
    lines.remove("start_at");
    lines.remove("rule");
    lines.insert(
        "practices".into(),
        json!([{"practice": "breathing", "name": "Slow breathing", "minutes": {"least": 8, "most": 8},
            "schedule": {"weekly_least": 7, "weekly_most": 7, "daily_most": 1},
            "instruction": "Sit or lie as you like."}]),
    );
    diary.say(at(0, 8), super::rule_diary::accept(&plan));
    for day in 0..20 {
        let breath = super::rule_diary::Sit {
            practice: Practice::Breathing,
            seconds: 480,
            position: Position::Sitting,
            ..sit(150, None)
        };
        diary.sit(at(day, 20), breath);
    }
    summary(&diary, 20, &Selection::default())
}

/// Ten years with so many sessions.
pub fn ten_years(sessions: i64) -> Summary {
    let mut diary = Diary::begun(&programme(1, ladder(), json!({})));
    let millis = 3_650 * super::rule_diary::DAY;
    for number in 1..=sessions {
        let mut one = sit(150, Some(u8::try_from(number % 7).unwrap()));
        if number % 50 == 0 {
            one = one.stopped(Reason::Discomfort);
        }
        diary.sit(super::rule_diary::ms(millis / sessions * number), one);
    }
    summary(&diary, 3_651, &Selection::default())
}

/// Something of everything, with hostile words wherever words may stand.
pub fn hostile() -> Summary {
    let mut plan = programme(1, ladder(), json!({}));
    plan["for"] = json!("NICKNAME <b>Wren</b>");
    plan["clinician"]["name"] = json!(HOSTILE[1]);
    plan["goals"] = json!([HOSTILE[0], HOSTILE[3]]);
    plan["activities"] = json!([HOSTILE[2]]);
    plan["steps"][0]["name"] = json!(HOSTILE[0]);
    plan["steps"][0]["instruction"] = json!(HOSTILE[5]);
    everything(&plan, &HOSTILE)
}

/// Something of everything, in plain words.
pub fn plain() -> Summary {
    let mut plan = programme(1, ladder(), json!({}));
    plan["goals"] = json!(["An invented goal"]);
    plan["activities"] = json!(["Sitting through a film"]);
    everything(&plan, &["An invented note", "A second one"])
}

fn everything(plan: &serde_json::Value, words: &[&str]) -> Summary {
    let diary = told(plan, words);
    summary(&diary, 40, &Selection::default())
}

pub fn told(plan: &serde_json::Value, words: &[&str]) -> Diary {
    let mut diary = Diary::begun(plan);
    let goal = plan["goals"][0].as_str().unwrap_or("An invented goal").to_owned();
    let noted = |what: Content, note: &str| match what {
        Content::Session(session) => {
            Content::Session(Session { note: Some(passage(note)), ..session })
        }
        other => other,
    };
    // Five notes as long as a note can be: ten thousand characters.
    for (day, word) in (1..).zip(words.iter().cycle().take(6.max(words.len()))) {
        let what = noted(sit(150, Some(2)).what(), word);
        diary.say(at(day, 20), what);
    }
    for day in 8..13 {
        let long: String = words.iter().flat_map(|word| word.chars()).cycle().take(1_999).collect();
        let what = noted(sit(150, None).what(), &format!("{long}."));
        diary.say(at(day, 20), what);
    }
    let sized = diary.sit(at(13, 20), sit(180, Some(3)));
    diary.say(at(13, 21), correction(sized, sit(150, Some(4)).what()));
    let left_out = diary.sit(at(14, 20), sit(150, Some(9)));
    diary.say(at(14, 21), strike(left_out));
    diary.say(at(15, 8), to_step("b"));
    let signed = diary.sit(
        at(16, 20),
        sit(180, Some(6)).stopped(Reason::Discomfort).sign(Sign::PainThatStays, Tier::Stop),
    );
    let spoke = clearing(&[(signed, Sign::PainThatStays)], true);
    diary.say(at(17, 10), with_words(spoke, words[words.len() - 1]));
    diary.say(
        at(18, 10),
        Content::SignReported {
            signs: vec![SignNoted { sign: Sign::Fever, tier: Tier::Stop }],
            note: Some(passage(words[1])),
        },
    );
    diary.say(at(19, 8), to_step("a"));
    diary.say(at(20, 8), Content::Question { text: passage(&format!("QUESTION {}", words[0])) });
    diary.say(
        at(21, 8),
        Content::FunctionRated {
            activity: line("Sitting through a film"),
            able: Rating::new(4).unwrap(),
        },
    );
    diary.say(
        at(21, 8),
        Content::GoalRated { goal: line(&goal), reached: Goal::try_from(-2).unwrap() },
    );
    let day = at(22, 0).day();
    diary.say(at(22, 8), Content::TimeOff { from: day, to: at(24, 0).day() });
    diary.say(at(25, 8), missing());
    diary.say(at(26, 8), report(Sign::CoilThreadMissingOrStemFelt, Tier::Stop));
    let two_parts = Content::Session(Session {
        practice: Practice::Trainer,
        parts: [150, 180]
            .into_iter()
            .map(|size| UsedPart {
                widest_diameter_tenths_mm: frond_core::programme::values::Size::new(size).ok(),
                practised_seconds: 200,
            })
            .collect(),
        position: Position::SideLying,
        ended: frond_core::diary::entry::Ended::CouldNotStart(Reason::DidNotGoIn),
        ratings: frond_core::diary::entry::Ratings {
            peak: Some(frond_core::diary::entry::Answer::RatherNotSay),
            ..Default::default()
        },
        signs: vec![],
        note: None,
    });
    diary.say(at(27, 8), two_parts);
    let mut second = plan.clone();
    second["revision"] = json!(2);
    diary.say(at(30, 8), super::rule_diary::accept(&second));
    diary
}

fn with_words(what: Content, words: &str) -> Content {
    match what {
        Content::Clearing { signs, closes_pause, .. } => {
            Content::Clearing { with: line(words), signs, closes_pause }
        }
        other => other,
    }
}

/// The days in the middle, without notes and questions.
pub fn narrowed() -> Summary {
    let mut plan = programme(1, ladder(), json!({}));
    plan["goals"] = json!(["An invented goal"]);
    let diary = told(&plan, &["A note that stays at home", "Another"]);
    let selection = Selection {
        from: Some(at(12, 0).day()),
        to: Some(at(20, 0).day()),
        notes: false,
        questions: false,
    };
    summary(&diary, 40, &selection)
}

/// The clock stood five days ahead when the first plan was accepted and its second step was begun, and was put right
/// before the second plan.
pub fn clock_put_right() -> Summary {
    let mut diary = Diary::default();
    diary.say(at(8, 8), super::rule_diary::accept(&programme(1, ladder(), json!({}))));
    diary.say(at(9, 8), to_step("b"));
    diary.sit(at(9, 20), sit(180, Some(2)));
    diary.say(at(5, 8), super::rule_diary::accept(&programme(2, ladder(), json!({}))));
    for day in 5..9 {
        diary.sit(at(day, 20), sit(150, Some(2)));
    }
    summary(&diary, 12, &Selection::default())
}

/// Diaries by chance.
pub fn lives(seeds: std::ops::Range<u64>) -> Vec<Summary> {
    seeds
        .filter_map(|seed| {
            let life = Life::of_seed(seed);
            Summary::of(&life.entries, &identity(), &Selection::default(), &life.now).ok()
        })
        .collect()
}
