//! Time off: days on which nothing is asked and no reminder comes. It needs no reason and is never counted
//! against anything.

use chrono::NaiveDate;
use serde::Serialize;

use super::questions::change;
use super::section::{Section, not_right, today};
use super::{Action, Does, Scene, plain};
use crate::diary::entry::{Content, EntryId};
use crate::diary::resolve::Counted;

/// Time off.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct TimeOffScreen {
    /// The id to send it under, so that sending twice writes once.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// What it is.
    pub says: Vec<String>,
    /// Time off now and to come.
    pub standing: Vec<Section>,
    /// Said where there is none.
    pub empty: Option<String>,
    /// The two days.
    pub days: DaysField,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// A first and a last day.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct DaysField {
    /// "From".
    pub from: String,
    /// "Up to and with".
    pub to: String,
    /// What stands there now; nothing in a new one.
    pub current: Option<(NaiveDate, NaiveDate)>,
    /// What keeps it.
    pub save: String,
}

impl DaysField {
    pub(super) fn new(scene: &Scene<'_>, current: Option<(NaiveDate, NaiveDate)>) -> Self {
        let words = scene.words;
        Self {
            from: words.text("time-off-from", &[]),
            to: words.text("time-off-to", &[]),
            current,
            save: words.text("action-keep", &[]),
        }
    }
}

impl TimeOffScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId, counted: &[Counted<'_>]) -> Self {
        let words = scene.words;
        let now = scene.now.day();
        let standing: Vec<Section> = counted
            .iter()
            .filter(|row| !row.struck)
            .filter_map(|row| match row.content {
                Content::TimeOff { from, to } if *to >= now => Some(Section {
                    title: words.text(
                        "entries-time-off",
                        &[
                            ("from", plain::date(words, *from).into()),
                            ("to", plain::date(words, *to).into()),
                        ],
                    ),
                    says: if *from <= now {
                        vec![words.text("today-time-off", &[])]
                    } else {
                        Vec::new()
                    },
                    actions: change(scene, row.first.id),
                }),
                _ => None,
            })
            .collect();
        Self {
            id,
            title: words.text("time-off-title", &[]),
            says: vec![
                words.text("time-off-says", &[]),
                words.text("time-off-no-reason", &[]),
                words.text("time-off-plan", &[]),
            ],
            empty: standing.is_empty().then(|| words.text("time-off-empty", &[])),
            standing,
            days: DaysField::new(scene, None),
            actions: vec![
                not_right(scene),
                Action::new(words.text("action-calendar", &[]), Does::Calendar { month: None }),
                today(scene),
            ],
        }
    }
}
