//! What was written, newest first, as it counts now; a corrected entry says so, a struck one stays
//! visible to its owner.

use chrono::NaiveDate;
use serde::Serialize;

use super::activities::goal_reached;
use super::{Action, Does, Scene, plain};
use crate::diary::entry::{
    Answer, Chosen, Content, Ended, EntryId, FeelsReady, Reason, Session, Settled,
};
use crate::diary::resolve::Counted;
use crate::moment::Stamp;
use crate::words::Words;

/// What was written.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct EntriesScreen {
    /// Heading.
    pub title: String,
    /// Said where nothing was written yet.
    pub empty: Option<String>,
    /// The entries, newest first.
    pub entries: Vec<EntryLine>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// One entry.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct EntryLine {
    /// Its identity, to correct or strike it.
    pub id: EntryId,
    /// When it happened.
    pub when: String,
    /// What it tells.
    pub text: String,
    /// Left out, corrected, written later.
    pub notes: Vec<String>,
    /// Whether a person may correct or strike it.
    pub can_change: bool,
    /// Opens it.
    pub opens: Action,
}

impl EntriesScreen {
    pub(crate) fn new(scene: &Scene<'_>, counted: &[Counted<'_>]) -> Self {
        let words = scene.words;
        Self::of(scene, counted, words.text("entries-title", &[]))
    }

    /// What was written of one day.
    pub(crate) fn of_day(scene: &Scene<'_>, counted: &[Counted<'_>], day: NaiveDate) -> Self {
        let of_day: Vec<Counted<'_>> = counted
            .iter()
            .filter(|row| match row.content {
                Content::TimeOff { from, to } if (*from..=*to).contains(&day) => true,
                _ => row.happened.day() == day,
            })
            .cloned()
            .collect();
        Self::of(scene, &of_day, plain::date(scene.words, day))
    }

    fn of(scene: &Scene<'_>, counted: &[Counted<'_>], title: String) -> Self {
        let words = scene.words;
        let entries: Vec<EntryLine> = counted
            .iter()
            .rev()
            .map(|entry| EntryLine {
                id: entry.first.id,
                when: plain::when(words, entry.happened, scene.now),
                text: tell(words, entry.content),
                notes: notes(words, entry),
                can_change: entry.first.what.is_persons(),
                opens: Action::new(
                    words.text("action-open-entry", &[]),
                    Does::Entry { of: entry.first.id },
                ),
            })
            .collect();
        Self {
            title,
            empty: entries.is_empty().then(|| words.text("entries-empty", &[])),
            entries,
            actions: vec![
                Action::new(words.text("action-log", &[]), Does::LogSession),
                Action::new(words.text("action-calendar", &[]), Does::Calendar { month: None }),
                Action::new(words.text("action-keeping", &[]), Does::Keeping),
                Action::new(words.text("action-today", &[]), Does::Today),
            ],
        }
    }
}

fn notes(words: &Words, entry: &Counted<'_>) -> Vec<String> {
    let mut notes = Vec::new();
    if entry.struck {
        notes.push(words.text("entries-struck", &[]));
    }
    if entry.corrections > 0 {
        notes.push(words.text("entries-corrected", &[]));
    }
    if entry.first.written.day() != entry.happened.day() {
        let day = plain::date(words, entry.first.written.day()).into();
        notes.push(words.text("entries-written-later", &[("date", day)]));
    }
    notes
}

/// One sentence for each kind of entry.
pub(super) fn tell(words: &Words, content: &Content) -> String {
    match content {
        Content::Session(session) => tell_session(words, session),
        Content::StepChange { .. } => words.text("entries-step-change", &[]),
        Content::StepConfirmed { .. } => words.text("entries-step-confirmed", &[]),
        Content::ProgrammeAccepted { revision, .. } => {
            words.text("entries-programme", &[("revision", plain::whole(revision.get()))])
        }
        Content::SignReported { signs, .. } => {
            let names: Vec<String> =
                signs.iter().map(|noted| words.text(noted.sign.name_id(), &[])).collect();
            words.text("entries-signs", &[("signs", names.join("; ").into())])
        }
        Content::Clearing { with, .. } => {
            words.text("entries-spoke", &[("with", with.as_str().into())])
        }
        Content::ScreeningAnswered { .. } => words.text("entries-screening", &[]),
        Content::FeelsReady { answer: FeelsReady::Yes } => words.text("entries-ready", &[]),
        Content::FeelsReady { answer: FeelsReady::NotYet } => words.text("entries-not-yet", &[]),
        Content::FeelsReady { answer: FeelsReady::RatherNotSay } => {
            words.text("entries-feels-ready", &[])
        }
        Content::SuggestionShown { .. } => words.text("entries-suggestion", &[]),
        Content::SuggestionAnswered { chosen: Chosen::Try, .. } => {
            words.text("entries-chose-try", &[])
        }
        Content::SuggestionAnswered { chosen: Chosen::Stay, .. } => {
            words.text("entries-chose-stay", &[])
        }
        Content::StayHere { .. } => words.text("entries-stay-here", &[]),
        Content::TimeOff { from, to } => words.text(
            "entries-time-off",
            &[("from", plain::date(words, *from).into()), ("to", plain::date(words, *to).into())],
        ),
        Content::LookForward { to } => {
            words.text("entries-look-forward", &[("what", to.as_str().into())])
        }
        Content::FunctionRated { activity, able } => words.text(
            "entries-function",
            &[("activity", activity.as_str().into()), ("number", plain::whole(able.get()))],
        ),
        Content::GoalRated { goal, reached } => words.text(
            "entries-goal",
            &[("goal", goal.as_str().into()), ("reached", goal_reached(words, *reached).into())],
        ),
        Content::Question { text } => {
            words.text("entries-question", &[("text", text.as_str().into())])
        }
        Content::Settled { answer: Settled::Yes, .. } => words.text("entries-settled-yes", &[]),
        Content::Settled { answer: Settled::NotYet, .. } => {
            words.text("entries-settled-not-yet", &[])
        }
        Content::Settled { answer: Settled::RatherNotSay, .. } => {
            words.text("entries-settled-unsaid", &[])
        }
        Content::HoldConditions { .. } => words.text("entries-hold-conditions", &[]),
        Content::Reminders(_) => words.text("entries-reminders", &[]),
        Content::PutOff { .. } => words.text("entries-put-off", &[]),
        Content::Settings(_) => words.text("entries-settings", &[]),
        Content::TimeConfirmed {} => words.text("entries-time-confirmed", &[]),
        Content::ClockMark { .. } => words.text("entries-clock", &[]),
        Content::MissingMark { entries, after, before } => {
            tell_missing(words, entries.get(), after.as_ref(), before.as_ref())
        }
        Content::RestoredMark { .. } => words.text("entries-restored", &[]),
        Content::CopyMade {} => words.text("entries-copy-made", &[]),
        Content::ErasedMark { .. } => words.text("entries-erased", &[]),
        // Resolved into what they change; never listed on their own.
        Content::Correction { content, .. } => tell(words, content),
        Content::Strike { .. } => words.text("entries-struck", &[]),
    }
}

/// How many entries are missing, and between which days.
fn tell_missing(
    words: &Words,
    entries: u16,
    after: Option<&Stamp>,
    before: Option<&Stamp>,
) -> String {
    let count = plain::whole(entries);
    let day = |stamp: &Stamp| plain::date(words, stamp.day()).into();
    match (after, before) {
        (Some(after), Some(before)) => words.text(
            "entries-missing-between",
            &[("count", count), ("after", day(after)), ("before", day(before))],
        ),
        (Some(after), None) => {
            words.text("entries-missing-after", &[("count", count), ("after", day(after))])
        }
        (None, Some(before)) => {
            words.text("entries-missing-before", &[("count", count), ("before", day(before))])
        }
        (None, None) => words.text("entries-missing", &[("count", count)]),
    }
}

fn tell_session(words: &Words, session: &Session) -> String {
    let seconds: u32 =
        session.parts.iter().fold(0, |sum, part| sum.saturating_add(part.practised_seconds));
    let what = match session.main_size() {
        Some(size) => plain::size(words, size),
        None => plain::practice(words, &session.practice, None),
    };
    let ended = match session.ended {
        Ended::Finished => words.text("entries-finished", &[]),
        Ended::Stopped(_) => words.text("entries-stopped", &[]),
        Ended::CouldNotStart(_) => words.text("entries-could-not-start", &[]),
    };
    let peak = match session.ratings.peak {
        Some(Answer::Rated(rating)) => {
            words.text("entries-peak", &[("number", plain::whole(rating.get()))])
        }
        Some(Answer::RatherNotSay) | None => words.text("entries-unrated", &[]),
    };
    words.text(
        "entries-session",
        &[
            ("what", what.into()),
            ("minutes", plain::whole(seconds / 60)),
            ("ended", ended.into()),
            ("peak", peak.into()),
        ],
    )
}

/// Why a session was stopped or could not start, to stand in a sentence.
pub(super) fn reason(words: &Words, reason: Reason) -> String {
    match reason {
        Reason::Discomfort => words.text("log-reason-discomfort", &[]),
        Reason::DidNotGoIn => words.text("log-reason-did-not-go-in", &[]),
        Reason::Upset => words.text("log-reason-upset", &[]),
        Reason::Interrupted => words.text("log-reason-interrupted", &[]),
        Reason::Other => words.text("log-reason-other", &[]),
    }
}
