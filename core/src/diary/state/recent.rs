//! The latest sessions, kept for the screens: what was done today and this week, and the date and
//! rating behind a reason. Enough for any window a rule can look at.

use chrono::{Datelike, Days, NaiveDate};
use serde::{Deserialize, Serialize};

use crate::diary::entry::{Ended, EntryId, Place, Session};
use crate::moment::Stamp;
use crate::programme::values::{Practice, Rating, RatingKind, Size};

/// How many sessions are kept at least. A window looks at 50 of one practice at most.
const KEPT: usize = 160;

/// A session, as the screens need it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Practised {
    /// Its entry.
    pub id: EntryId,
    /// Its place.
    pub place: Place,
    /// When it started.
    pub happened: Stamp,
    /// Kind of practice.
    pub practice: Practice,
    /// Main size.
    pub size: Option<Size>,
    /// Seconds practised, all parts.
    pub seconds: u32,
    /// Whether it was finished.
    pub finished: bool,
    /// Ratings given, in the order of [`RatingKind::ALL`].
    pub ratings: [Option<Rating>; 4],
}

impl Practised {
    /// What the screens need of a session.
    #[must_use]
    pub fn of(id: EntryId, place: Place, happened: Stamp, session: &Session) -> Self {
        Self {
            id,
            place,
            happened,
            practice: session.practice.clone(),
            size: session.main_size(),
            seconds: session
                .parts
                .iter()
                .fold(0, |sum, part| sum.saturating_add(part.practised_seconds)),
            finished: session.ended == Ended::Finished,
            ratings: RatingKind::ALL.map(|kind| session.ratings.given(kind)),
        }
    }

    /// A rating given.
    #[must_use]
    pub fn rating(&self, kind: RatingKind) -> Option<Rating> {
        RatingKind::ALL
            .iter()
            .zip(self.ratings)
            .find_map(|(of, rating)| (*of == kind).then_some(rating).flatten())
    }
}

/// The latest sessions in order of happening.
#[derive(Clone, Debug, Default, Serialize, Deserialize)]
pub struct Recent {
    sessions: Vec<Practised>,
    total: u64,
}

impl Recent {
    pub(super) fn add(&mut self, session: Practised) {
        let key = (session.happened.millis(), session.place);
        let at = self.sessions.partition_point(|s| (s.happened.millis(), s.place) < key);
        self.sessions.insert(at, session);
        self.total += 1;
        if self.sessions.len() >= 2 * KEPT {
            let surplus = self.sessions.len() - KEPT;
            self.sessions.drain(..surplus);
        }
    }

    /// How many sessions were ever added.
    #[must_use]
    pub fn total(&self) -> u64 {
        self.total
    }

    /// The session of an entry, if it is among the latest.
    #[must_use]
    pub fn find(&self, id: EntryId) -> Option<&Practised> {
        self.sessions.iter().rev().find(|session| session.id == id)
    }

    /// The latest session of a practice.
    #[must_use]
    pub fn latest(&self, practice: &Practice) -> Option<&Practised> {
        self.sessions.iter().rev().find(|session| session.practice == *practice)
    }

    /// Sessions of a practice on a day.
    pub fn on_day(&self, practice: &Practice, day: NaiveDate) -> impl Iterator<Item = &Practised> {
        self.sessions.iter().filter(move |s| s.practice == *practice && s.happened.day() == day)
    }

    /// On how many days of the calendar week (from Monday) of `day` a practice was done.
    #[must_use]
    pub fn days_in_week(&self, practice: &Practice, day: NaiveDate) -> u32 {
        let monday = day - Days::new(u64::from(day.weekday().num_days_from_monday()));
        (0..7)
            .filter_map(|offset| monday.checked_add_days(Days::new(offset)))
            .filter(|day| self.on_day(practice, *day).next().is_some())
            .fold(0, |days, _| days + 1)
    }
}
