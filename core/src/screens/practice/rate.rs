//! How it was: after a practice with the clock, and for one that went as planned, in three taps. No
//! rating is chosen beforehand, and no threshold, earlier rating or count is in sight (D2).

use serde::Serialize;

use super::super::log_session::{self, EndedChoice, RatingQuestion};
use super::super::{Action, Does, Scene, plain};
use crate::diary::entry::{Ended, EntryId, UsedPart};
use crate::moment::Stamp;
use crate::practice::timed::{Done, How};
use crate::programme::values::{Position, Practice};

/// How it was.
#[derive(Clone, Serialize)]
pub struct RateScreen {
    /// The id to send the answers under, so that sending twice writes once.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// What will be written, in words; with trainers, that this is what was really used.
    pub what: Vec<String>,
    /// What will be written: when it began.
    pub happened: Stamp,
    /// Kind of practice.
    pub practice: Practice,
    /// Parts and times.
    pub parts: Vec<UsedPart>,
    /// Position.
    pub position: Position,
    /// "Why did you stop?", where it was stopped or could not start.
    pub ended_label: Option<String>,
    /// How it ended: one, or one for each reason, of which none is chosen.
    pub ended: Vec<EndedChoice>,
    /// How it ended where no reason is chosen.
    pub ended_unsaid: Ended,
    /// Ratings asked, in order. Peak always first for those with a clock; none for other practices than
    /// those of the steps.
    pub ratings: Vec<RatingQuestion>,
    /// "A note for yourself"
    pub note_label: String,
    /// Nobody reads this until you share it, and whom to call.
    pub note_caution: String,
    /// "Keep it"
    pub keep: String,
    /// "Keep it, and tell that something is not right"
    pub keep_and_tell: String,
    /// The way to the whole form, where something was different.
    pub different: Option<Action>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

impl RateScreen {
    pub(crate) fn new(scene: &Scene<'_>, done: &Done) -> Self {
        let words = scene.words;
        let ended_unsaid = done.ended(None);
        let trainer = done.practice == Practice::Trainer;
        let reasons = log_session::endings(scene, trainer).into_iter().filter(|choice| {
            matches!(
                (choice.ended, done.how),
                (Ended::Finished, How::Finished)
                    | (Ended::Stopped(_), How::Stopped)
                    | (Ended::CouldNotStart(_), How::CouldNotStart)
            )
        });
        Self {
            id: done.id,
            title: words.text("rate-title", &[]),
            what: what(scene, done),
            // A clock that was set back meanwhile must not make it lie in the future.
            happened: if done.happened.millis() > scene.now.millis() {
                scene.now
            } else {
                done.happened
            },
            practice: done.practice.clone(),
            parts: done.parts.clone(),
            position: done.position,
            ended_label: (done.how != How::Finished).then(|| words.text("rate-why", &[])),
            ended: reasons.collect(),
            ended_unsaid,
            ratings: log_session::ratings(scene),
            note_label: words.text("log-note", &[]),
            note_caution: words.text("log-note-caution", &[]),
            keep: words.text("rate-keep", &[]),
            keep_and_tell: words.text("rate-keep-and-tell", &[]),
            different: Some(Action::new(words.text("action-log-different", &[]), Does::LogSession)),
            cautions: vec![words.text("today-caution-clinician", &[])],
            actions: vec![Action::new(words.text("action-later", &[]), Does::Today)],
        }
    }
}

fn what(scene: &Scene<'_>, done: &Done) -> Vec<String> {
    let words = scene.words;
    let mut what: Vec<String> = done
        .parts
        .iter()
        .map(|part| {
            let time = plain::duration(words, part.practised_seconds.into());
            match part.widest_diameter_tenths_mm {
                Some(size) => words.text(
                    "common-part",
                    &[("used", plain::trainer(scene, size).into()), ("minutes", time.into())],
                ),
                None => words.text(
                    "common-part",
                    &[
                        ("used", plain::practice(words, &done.practice, None).into()),
                        ("minutes", time.into()),
                    ],
                ),
            }
        })
        .collect();
    if done.practice == Practice::Trainer {
        what.push(plain::position(words, done.position));
        what.push(words.text("rate-really-used", &[]));
    }
    what
}
