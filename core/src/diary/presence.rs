//! What of the diary only the screens look at, and no rule: when something was told last, which session was
//! felt last and whether it was asked about, when each activity was rated last.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use super::entry::{Answer, Content, Entry, EntryId};
use crate::moment::Stamp;

/// So many activities are remembered; a plan has at most five.
const ACTIVITIES: usize = 20;

/// What only the screens look at.
#[derive(Debug, Default, Serialize, Deserialize)]
pub struct Presence {
    told: Option<NaiveDate>,
    felt: Option<Felt>,
    rated: Vec<(String, NaiveDate)>,
}

/// The newest session that was felt or stopped.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Felt {
    /// The session.
    pub session: EntryId,
    /// The local day it began on.
    pub day: NaiveDate,
    /// When it began, in milliseconds since 1970-01-01T00:00:00Z.
    happened: i64,
    /// Whether "did it settle?" was answered about it.
    pub answered: bool,
}

impl Presence {
    /// `entry` is the first version; `content` what counts of it, and `happened` when.
    pub(super) fn note(&mut self, entry: &Entry, happened: Stamp, content: &Content) {
        if is_told(content) {
            let day = entry.written.day();
            self.told = Some(self.told.map_or(day, |before| before.max(day)));
        }
        match content {
            Content::Session(session) => {
                let felt = session.ended.counts_as_stopped()
                    || matches!(session.ratings.peak, Some(Answer::Rated(peak)) if peak.get() > 0);
                let newest = self.felt.is_none_or(|before| before.happened <= happened.millis());
                if felt && newest {
                    self.felt = Some(Felt {
                        session: entry.id,
                        day: happened.day(),
                        happened: happened.millis(),
                        answered: false,
                    });
                }
            }
            Content::Settled { of, .. } => {
                if let Some(felt) = self.felt.as_mut().filter(|felt| felt.session == *of) {
                    felt.answered = true;
                }
            }
            Content::FunctionRated { activity, .. } => {
                let day = happened.day();
                let before = self.rated.iter().position(|(one, _)| one == activity.as_str());
                let day = before.map_or(day, |at| self.rated.remove(at).1.max(day));
                self.rated.push((activity.as_str().to_owned(), day));
                if self.rated.len() > ACTIVITIES {
                    self.rated.remove(0);
                }
            }
            _ => {}
        }
    }

    /// The day on which the person last told something.
    #[must_use]
    pub fn told(&self) -> Option<NaiveDate> {
        self.told
    }
    /// The newest session that was felt or stopped.
    #[must_use]
    pub fn felt(&self) -> Option<Felt> {
        self.felt
    }
    /// The day on which an activity was rated last.
    #[must_use]
    pub fn rated(&self, activity: &str) -> Option<NaiveDate> {
        self.rated.iter().find(|(one, _)| one == activity).map(|(_, day)| *day)
    }
}

/// Whether the person told something by it: looking at a suggestion, saying that the time is right,
/// putting off a reminder and what the machine marks are none.
fn is_told(content: &Content) -> bool {
    content.is_persons()
        && !matches!(
            content,
            Content::SuggestionShown { .. } | Content::TimeConfirmed {} | Content::PutOff { .. }
        )
}
