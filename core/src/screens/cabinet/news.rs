//! How old the news is that a plan's next revision is written on.

use std::cmp::Reverse;
use std::collections::HashMap;

use chrono::NaiveDate;
use serde::Serialize;

use super::people::{age, fuller, newest};
use super::{count, day, moment};
use crate::programme::values::{ProgrammeId, Revision};
use crate::summary::{DiaryId, Digest};
use crate::words::Words;

/// What is said beside a draft of a plan that is in use already.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PlanNews {
    /// When the newest summary was made, which days it shows, and that nothing later is in it.
    pub says: Vec<String>,
    /// The diary whose summary that is, where there is one alone.
    #[serde(skip)]
    pub diary: Option<DiaryId>,
}

impl PlanNews {
    /// What is known of a programme by the summaries that are here, before this revision of it is finished today.
    #[must_use]
    pub fn new<'a>(
        words: &Words,
        all: impl Iterator<Item = &'a Digest>,
        programme: &ProgrammeId,
        revision: Revision,
        today: NaiveDate,
    ) -> Self {
        let mut by_diary: HashMap<DiaryId, Vec<&Digest>> = HashMap::new();
        let uses = |one: &&Digest| one.programme.as_ref().is_some_and(|(id, _)| id == programme);
        for one in all.filter(uses) {
            by_diary.entry(one.diary).or_default().push(one);
        }
        let mut diaries: Vec<(&Digest, Option<&Digest>)> = by_diary
            .into_values()
            .filter_map(|all| newest(&all).map(|one| (one, fuller(&all, one))))
            .collect();
        diaries.sort_by_key(|(one, _)| Reverse(age(one)));
        if diaries.is_empty() {
            return Self { says: vec![words.text("compose-news-none", &[])], diary: None };
        }
        let mut says = Vec::new();
        if diaries.len() > 1 {
            says.push(words.text("compose-news-several", &[("count", count(diaries.len()))]));
        }
        for (one, fuller) in &diaries {
            let days = (today - one.made.day()).num_days();
            let values =
                [("made", moment(words, &one.made).into()), ("last", day(words, one.last).into())];
            says.push(words.text("compose-news", &values));
            // Made later than now: a clock was wrong on one of the two machines, and how old it is nobody knows.
            if days >= 0 {
                says.push(words.text("compose-news-age", &[("days", days.into())]));
            }
            if let Some(fuller) = fuller {
                let values = [("made", moment(words, &fuller.made).into())];
                says.push(words.text("compose-news-fuller", &values));
            }
            let used = one.programme.as_ref().map_or(0, |(_, used)| used.get());
            if used + 1 != revision.get() {
                let values = [("revision", i64::from(used).into())];
                says.push(words.text("compose-news-revision", &values));
            }
        }
        says.push(words.text("compose-news-since", &[]));
        let diary = if let [(one, _)] = diaries[..] { Some(one.diary) } else { None };
        Self { says, diary }
    }
}
