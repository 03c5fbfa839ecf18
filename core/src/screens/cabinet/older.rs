//! Several summaries of one diary: which is the one that is read, and what the others have that it has not.

use serde::Serialize;

use super::people::age;
use super::{count, day, moment};
use crate::summary::{Digest, SummaryId};
use crate::words::Words;

/// The other summaries of a diary.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct OlderSummaries {
    /// Heading.
    pub title: String,
    /// What they are, beside the one that is read.
    pub says: Vec<String>,
    /// Each: which, and what is known of it, newest first.
    #[serde(skip)]
    pub summaries: Vec<(SummaryId, String)>,
}

impl OlderSummaries {
    /// The others beside the one that is read; `None` where there is no other.
    #[must_use]
    pub fn new<'a>(
        words: &Words,
        read: SummaryId,
        all: impl Iterator<Item = &'a Digest>,
        keys: usize,
    ) -> Option<Self> {
        let mut all: Vec<&Digest> = all.collect();
        all.sort_by_key(|one| std::cmp::Reverse(age(one)));
        let own = *all.iter().find(|one| one.summary == read)?;
        let others: Vec<&Digest> = all.iter().copied().filter(|one| one.summary != read).collect();
        if others.is_empty() {
            return None;
        }
        let mut says = vec![words.text("cabinet-others-says", &[("count", count(others.len()))])];
        let newer = |one: &Digest| age(one) > age(own);
        if others.iter().any(|one| newer(one)) {
            says.push(words.text("cabinet-others-newer", &[]));
            if others.iter().any(|one| newer(one) && own.holds_more_than(one)) {
                says.push(words.text("cabinet-others-fuller", &[]));
            }
        } else {
            // What the newest does not show any longer may stand in an older one.
            if let Some(first) =
                others.iter().map(|one| one.first).min().filter(|day| *day < own.first)
            {
                says.push(
                    words.text("cabinet-others-before", &[("first", day(words, first).into())]),
                );
            }
            // Where nothing explains it, [`super::WentApart`] says so, and more.
            let explained = |one: &Digest| one.entries > own.entries && !one.holds_more_than(own);
            if others.iter().any(|one| explained(one)) {
                says.push(words.text("cabinet-others-more", &[]));
            }
        }
        if keys > 1 {
            says.push(words.text("cabinet-others-keys", &[("count", count(keys))]));
        }
        let line = |one: &Digest| {
            let values = [
                ("made", moment(words, &one.made).into()),
                ("first", day(words, one.first).into()),
                ("last", day(words, one.last).into()),
                ("entries", one.entries.into()),
            ];
            let text = if newer(one) {
                words.text("cabinet-other-newer", &values)
            } else {
                words.text("cabinet-other", &values)
            };
            (one.summary, text)
        };
        Some(Self {
            title: words.text("cabinet-others", &[]),
            says,
            summaries: others.into_iter().map(line).collect(),
        })
    }
}
