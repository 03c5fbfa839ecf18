//! One entry: everything it tells, when it happened and was written, and what became of it. Earlier
//! versions stay visible to their owner. From here an entry is put right, left out or erased.

use serde::Serialize;

use super::entries::{reason, tell};
use super::section::{not_right, today};
use super::{Action, Does, Scene, plain};
use crate::diary::entry::{Answer, Content, Ended, EntryId, Session, Settled, SignNoted, UsedPart};
use crate::diary::erase::can_go;
use crate::diary::resolve::{Counted, Whole};
use crate::programme::values::RatingKind;
use crate::safety::nobody_told;
use crate::words::Words;

/// One entry.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct EntryScreen {
    /// Its identity.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// When it happened.
    pub when: String,
    /// Everything it tells, as it counts now.
    pub says: Vec<String>,
    /// When it was written, whether that was late, whether it was put right or left out.
    pub notes: Vec<String>,
    /// "Nobody has been told", where it tells of a sign.
    pub nobody_told: Option<String>,
    /// Heading over the earlier versions.
    pub versions_title: String,
    /// The earlier versions, the first one first; none where it was never put right.
    pub versions: Vec<EntryVersion>,
    /// What can be done about it.
    pub actions: Vec<Action>,
}

/// An earlier version.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct EntryVersion {
    /// When it was written.
    pub written: String,
    /// Everything it told.
    pub says: Vec<String>,
}

impl EntryScreen {
    /// `counted` are all entries, to find what was answered about this one.
    pub(crate) fn new(scene: &Scene<'_>, whole: &Whole<'_>, counted: &[Counted<'_>]) -> Self {
        let words = scene.words;
        let row = &whole.counted;
        let mut says = everything(scene, row.content);
        says.extend(settled(words, row.first.id, counted));
        let present = std::ptr::from_ref(row.content);
        let versions: Vec<EntryVersion> = whole
            .versions
            .iter()
            .filter(|version| !std::ptr::eq(version.content, present))
            .map(|version| EntryVersion {
                written: plain::when(words, version.entry.written, scene.now),
                says: std::iter::once(plain::when(words, version.entry.happened, scene.now))
                    .chain(everything(scene, version.content))
                    .chain(version.struck.then(|| words.text("entry-version-taken-back", &[])))
                    .collect(),
            })
            .collect();
        let tells_of_a_sign = !row.content.signs().is_empty();
        Self {
            id: row.first.id,
            title: words.text("entry-title", &[]),
            when: plain::when(words, row.happened, scene.now),
            says,
            notes: notes(scene, whole),
            nobody_told: tells_of_a_sign.then(|| nobody_told(words)),
            versions_title: words.text("entry-versions", &[]),
            versions,
            actions: actions(scene, whole),
        }
    }
}

/// Everything an entry tells, a sentence each.
fn everything(scene: &Scene<'_>, content: &Content) -> Vec<String> {
    let words = scene.words;
    if let Content::Session(session) = content {
        return of_session(scene, session);
    }
    let mut says = vec![tell(words, content)];
    match content {
        Content::SignReported { note, .. } => {
            says.extend(note.as_ref().map(|note| self::note(words, note.as_str())));
        }
        Content::ScreeningAnswered { signs, .. } if !signs.is_empty() => {
            says.push(self::signs(words, signs));
        }
        Content::Clearing { signs, closes_pause, .. } => {
            says.extend(signs.iter().map(|key| {
                let sign = words.text(key.sign.name_id(), &[]).into();
                words.text("entry-closed", &[("sign", sign)])
            }));
            says.push(if *closes_pause {
                words.text("entry-go-on", &[])
            } else {
                words.text("entry-no-go-on", &[])
            });
        }
        Content::StepChange { to, .. } | Content::StepConfirmed { step: to } => {
            // Under its name where the present plan still has it.
            let plan = scene.state.rule().programme();
            let step = plan.and_then(|plan| plan.step(to));
            let named = match step {
                Some(step) => plain::step(words, step),
                None => to.as_str().to_owned(),
            };
            says.push(words.text("entry-step", &[("step", named.into())]));
        }
        _ => {}
    }
    says
}

fn of_session(scene: &Scene<'_>, session: &Session) -> Vec<String> {
    let words = scene.words;
    let part = |part: &UsedPart| {
        let minutes =
            words.text("common-minutes", &[("minutes", plain::whole(part.practised_seconds / 60))]);
        match part.widest_diameter_tenths_mm {
            Some(size) => {
                let used = plain::trainer(scene, size).into();
                words.text("common-part", &[("used", used), ("minutes", minutes.into())])
            }
            None => minutes,
        }
    };
    let mut says = vec![plain::practice_of_plan(scene, &session.practice)];
    says.extend(session.parts.iter().map(part));
    let position = plain::position(words, session.position).into();
    says.push(words.text("entry-position", &[("position", position)]));
    says.push(match session.ended {
        Ended::Finished => words.text("log-finished", &[]),
        Ended::Stopped(why) => words.text("log-stopped", &[("reason", reason(words, why).into())]),
        Ended::CouldNotStart(why) => {
            words.text("log-could-not-start", &[("reason", reason(words, why).into())])
        }
    });
    let ratings = &session.ratings;
    for (kind, answer) in [
        (RatingKind::Before, ratings.before),
        (RatingKind::Peak, ratings.peak),
        (RatingKind::After, ratings.after),
        (RatingKind::Worry, ratings.worry),
    ] {
        let name = plain::rating_name(words, kind).into();
        match answer {
            Some(Answer::Rated(rating)) => {
                let number = plain::whole(rating.get());
                says.push(words.text("entry-rated", &[("rating", name), ("number", number)]));
            }
            Some(Answer::RatherNotSay) => {
                says.push(words.text("entry-rather-not-say", &[("rating", name)]));
            }
            None => {}
        }
    }
    if !session.signs.is_empty() {
        says.push(signs(words, &session.signs));
    }
    says.extend(session.note.as_ref().map(|text| note(words, text.as_str())));
    says
}

fn signs(words: &Words, signs: &[SignNoted]) -> String {
    let names: Vec<String> =
        signs.iter().map(|noted| words.text(noted.sign.name_id(), &[])).collect();
    words.text("entries-signs", &[("signs", names.join("; ").into())])
}

fn note(words: &Words, note: &str) -> String {
    words.text("entry-note", &[("note", note.into())])
}

/// What was answered last to "did it settle?".
fn settled(words: &Words, of: EntryId, counted: &[Counted<'_>]) -> Option<String> {
    let answers = counted.iter().filter(|row| !row.struck);
    let answer = answers.rev().find_map(|row| match row.content {
        Content::Settled { of: about, answer } if *about == of => Some(*answer),
        _ => None,
    })?;
    Some(match answer {
        Settled::Yes => words.text("entries-settled-yes", &[]),
        Settled::NotYet => words.text("entries-settled-not-yet", &[]),
        Settled::RatherNotSay => words.text("entries-settled-unsaid", &[]),
    })
}

fn notes(scene: &Scene<'_>, whole: &Whole<'_>) -> Vec<String> {
    let words = scene.words;
    let first = whole.counted.first;
    let when = |stamp| plain::when(words, stamp, scene.now);
    let mut notes = vec![words.text("entry-written", &[("when", when(first.written).into())])];
    if whole.counted.corrections > 0
        && let Some(newest) = whole.versions.iter().rfind(|version| !version.struck)
    {
        let when = when(newest.entry.written).into();
        notes.push(words.text("entry-put-right", &[("when", when)]));
    }
    if is_late(scene, whole) {
        notes.push(words.text("entry-late", &[]));
    }
    if whole.counted.struck {
        notes.push(words.text("entry-left-out", &[]));
    }
    notes
}

/// A session told later than the plan allows for going up: the earliest time it was ever said to have
/// begun, and the writing of the version that counts (F3).
fn is_late(scene: &Scene<'_>, whole: &Whole<'_>) -> bool {
    if !matches!(whole.counted.content, Content::Session(_)) {
        return false;
    }
    let Some(plan) = scene.state.rule().programme() else { return false };
    let began = whole.versions.iter().map(|version| version.entry.happened.millis()).min();
    let counts = whole.versions.iter().rfind(|version| !version.struck);
    let (Some(began), Some(counts)) = (began, counts) else { return false };
    let most = i64::from(plan.late_after_hours.get()) * 60 * 60 * 1000;
    counts.entry.written.millis().saturating_sub(began) > most
}

fn actions(scene: &Scene<'_>, whole: &Whole<'_>) -> Vec<Action> {
    let words = scene.words;
    let row = &whole.counted;
    let of = row.first.id;
    let mut actions = Vec::new();
    if row.content.is_persons() {
        match whole.struck_by {
            Some(strike) if row.struck => {
                let label = words.text("action-count-again", &[]);
                actions.push(Action::new(label, Does::Strike { of: strike }));
            }
            _ => {
                if super::correct::can_be_put_right(row.content) {
                    let label = words.text("action-correct", &[]);
                    actions.push(Action::new(label, Does::Correct { of }));
                }
                let label = words.text("action-leave-out", &[]);
                actions.push(Action::new(label, Does::Strike { of }));
                if matches!(row.content, Content::Session(_)) {
                    let label = words.text("action-settled", &[]);
                    actions.push(Action::new(label, Does::Settled { of }));
                }
            }
        }
    }
    if can_go(row.content) {
        actions.push(Action::new(words.text("action-erase", &[]), Does::EraseEntry { of }));
    }
    actions.push(not_right(scene));
    actions.push(Action::new(words.text("action-entries", &[]), Does::Entries));
    actions.push(today(scene));
    actions
}
