//! What erasing comes to, before it is done: how much goes, what stays, and what no erasing can reach.

use serde::Serialize;

use super::{Action, Does, Scene, plain};
use crate::diary::erase::{Erase, Erasure};

/// What erasing comes to.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct EraseScreen {
    /// Heading.
    pub title: String,
    /// What goes and what stays.
    pub says: Vec<String>,
    /// What erasing cannot reach.
    pub out_of_reach: Vec<String>,
    /// Not erasing: nothing is done by default.
    pub next: Action,
    /// Erasing.
    pub confirm: Action,
}

impl EraseScreen {
    pub(crate) fn some(scene: &Scene<'_>, what: Erase, erasure: &Erasure) -> Self {
        let words = scene.words;
        let entries = plain::whole(i64::try_from(erasure.entries).unwrap_or(i64::MAX));
        let mut says = vec![words.text("erase-count", &[("count", entries)])];
        if let Erase::Days { from, to } = what {
            let (first, last) = (plain::date(words, from).into(), plain::date(words, to).into());
            says.push(if from == to {
                words.text("erase-day", &[("day", first)])
            } else {
                words.text("erase-days", &[("from", first), ("to", last)])
            });
            says.push(words.text("erase-stays", &[]));
        }
        says.push(words.text("erase-mark", &[]));
        if erasure.caution_open || scene.assessment.pause.is_some() {
            says.push(words.text("erase-caution-stays", &[]));
        }
        says.push(words.text("erase-step-asked", &[]));
        says.push(words.text("erase-copies", &[]));
        says.push(words.text("erase-for-good", &[]));
        let confirm = words.text("action-erase", &[]);
        let does = match what {
            Erase::Entry(of) => Does::EraseEntryNow { of },
            Erase::Days { from, to } => Does::EraseDaysNow { from, to },
        };
        let plan = words.text("erase-reach-plan", &[]);
        Self::with(scene, says, Some(plan), Action::new(confirm, does))
    }

    pub(crate) fn all(scene: &Scene<'_>) -> Self {
        let words = scene.words;
        let mut says = vec![words.text("erase-all", &[]), words.text("erase-for-good", &[])];
        if !scene.assessment.open_signs.is_empty() || scene.assessment.pause.is_some() {
            says.push(words.text("erase-all-open", &[]));
        }
        let confirm = Action::new(words.text("action-erase-all", &[]), Does::EraseAllNow);
        Self::with(scene, says, None, confirm)
    }

    fn with(scene: &Scene<'_>, says: Vec<String>, plan: Option<String>, confirm: Action) -> Self {
        let words = scene.words;
        Self {
            title: words.text("erase-title", &[]),
            says,
            out_of_reach: std::iter::once(words.text("erase-reach-copies", &[]))
                .chain(plan)
                .chain([words.text("erase-reach-memory", &[])])
                .collect(),
            next: Action::new(words.text("action-keep-it", &[]), Does::Keeping),
            confirm,
        }
    }
}
