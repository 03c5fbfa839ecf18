//! How a programme that arrived stands to what the diary knows: to the key that is pinned and to the programme
//! in use. Decides what a person must choose knowingly before it can be accepted; what she is told, and that
//! nothing is chosen for her, is the screen's affair.

use super::Arrival;
use crate::diary::entry::{Although, KeyStood};
use crate::diary::state::State;

/// How it stands to the programme in use.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Against {
    /// There is none yet.
    Nothing,
    /// A newer revision of it.
    Newer,
    /// The very one.
    InUse,
    /// The same number, with other content.
    SameNumber,
    /// An older revision of it.
    Older,
    /// Another programme.
    Another,
}

/// How a programme stands to what is known.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Standing {
    /// How its key stands to the one pinned; `None`: nobody signed it.
    pub key: Option<KeyStood>,
    /// How it stands to the programme in use.
    pub against: Against,
    /// The revision of this very programme that was used before another took its place, where that one was
    /// newer.
    pub newer_before: Option<u32>,
}

impl Standing {
    /// Compares with a diary; `None`: one that is about to begin.
    #[must_use]
    pub fn of(arrival: &Arrival, diary: Option<&State>) -> Self {
        let pinned = diary.and_then(State::pinned);
        let in_use = diary.and_then(|diary| diary.rule().programme());
        let key = arrival.signed.map(|signed| match pinned {
            None => KeyStood::First,
            Some(pin) if pin == signed.key => KeyStood::Same,
            Some(pin) if signed.follows == Some(pin) => KeyStood::Follows,
            Some(_) => KeyStood::Other,
        });
        let plan = &arrival.programme;
        let against = match in_use {
            None => Against::Nothing,
            Some(used) if used.id != plan.id => Against::Another,
            Some(used) if plan.revision > used.revision => Against::Newer,
            Some(used) if plan.revision < used.revision => Against::Older,
            Some(used) if used == plan => Against::InUse,
            Some(_) => Against::SameNumber,
        };
        let before = diary.and_then(|diary| diary.last_revision(plan.id.as_str()));
        let newer_before = match against {
            Against::Another => before.filter(|before| *before > plan.revision.get()),
            _ => None,
        };
        Self { key, against, newer_before }
    }

    /// What has to be chosen knowingly.
    #[must_use]
    pub fn needs(&self) -> Vec<Although> {
        let key = match self.key {
            None => Some(Although::Unsigned),
            Some(KeyStood::Other) => Some(Although::OtherKey),
            Some(KeyStood::First | KeyStood::Same | KeyStood::Follows) => None,
        };
        let against = match self.against {
            Against::Older => Some(Although::OlderRevision),
            Against::SameNumber => Some(Although::SameRevision),
            Against::Another if self.newer_before.is_some() => Some(Although::OlderRevision),
            Against::Nothing | Against::Newer | Against::InUse | Against::Another => None,
        };
        key.into_iter().chain(against).collect()
    }
}
