//! Two summaries of one diary that do not follow one another: what the older one holds and the one that is read does not.

use serde::Serialize;

use super::{count, day, moment};
use crate::summary::{Lacking, Received, Summary, SummaryId};
use crate::words::Words;

/// What is said before anything else where an older summary holds what this one lacks.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct WentApart {
    /// What is lacking, why that may be, and what to do.
    pub says: Vec<String>,
    /// What leads to the older one.
    pub read: String,
    /// The older one that holds most of it.
    #[serde(skip)]
    pub older: SummaryId,
}

impl WentApart {
    /// What is said of the one that is read beside older ones of the same diary; `None` where it goes on from each.
    #[must_use]
    pub fn new(
        words: &Words,
        read: &Summary,
        older: impl Iterator<Item = Received>,
    ) -> Option<Self> {
        let lacking = older.filter_map(|one| {
            let lacking = read.lacks_of(&one.summary)?;
            Some((lacking, one.summary.made, one.id))
        });
        let most = lacking.max_by_key(|(lacking, made, id)| (lacking.entries, made.millis(), *id));
        let (Lacking { entries, first, last, signs }, made, older) = most?;
        let values = [
            ("made", moment(words, &made).into()),
            ("count", count(entries)),
            ("first", day(words, first).into()),
            ("last", day(words, last).into()),
        ];
        let mut says = vec![words.text("cabinet-apart", &values)];
        if signs {
            says.push(words.text("cabinet-apart-sign", &[]));
        }
        says.push(words.text("cabinet-apart-ask", &[]));
        Some(Self { says, read: words.text("cabinet-apart-read", &[]), older })
    }
}
