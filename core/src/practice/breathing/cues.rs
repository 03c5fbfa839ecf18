//! When something sounds, buzzes or is said during a breathing practice (B9). One schedule for all
//! surfaces; how a tone sounds is theirs.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::course::Breathing;
use super::pattern::Phase;
use crate::message_id;

/// A way to tell a change without looking.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CueKind {
    /// A soft tone.
    Tone,
    /// A short vibration.
    Vibration,
    /// A spoken word, see [`Tells::word_id`].
    Word,
}

/// Which kinds of cue a person wants. By default none: a phone that sounds or buzzes can be heard.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CueKinds {
    /// Tones.
    pub tone: bool,
    /// Vibration.
    pub vibration: bool,
    /// Spoken words.
    pub word: bool,
}

impl CueKinds {
    /// Whether none is wanted.
    #[must_use]
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "the signature serde asks for")]
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }

    /// The kinds wanted.
    pub fn wanted(self) -> impl Iterator<Item = CueKind> {
        [
            (self.tone, CueKind::Tone),
            (self.vibration, CueKind::Vibration),
            (self.word, CueKind::Word),
        ]
        .into_iter()
        .filter_map(|(wanted, kind)| wanted.then_some(kind))
    }
}

/// What a cue tells.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Tells {
    /// A phase begins.
    Begins(Phase),
    /// The last breath is over.
    Over,
}

impl Tells {
    /// The message id of the word to say.
    #[must_use]
    pub fn word_id(self) -> &'static str {
        match self {
            Tells::Begins(Phase::In) => message_id!("breathing-cue-in"),
            Tells::Begins(Phase::HoldIn | Phase::HoldOut) => message_id!("breathing-cue-hold"),
            Tells::Begins(Phase::Out) => message_id!("breathing-cue-out"),
            Tells::Over => message_id!("breathing-cue-over"),
        }
    }
}

/// One cue.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Cue {
    /// Milliseconds after the beginning, pauses left out.
    pub at_millis: u64,
    /// What it tells.
    pub tells: Tells,
    /// How.
    pub kind: CueKind,
}

impl Breathing {
    /// Every cue of the practice, in order. Nothing wanted, nothing in it.
    #[must_use]
    pub fn cues(&self, kinds: CueKinds) -> Vec<Cue> {
        self.cues_between(kinds, 0, u64::MAX)
    }

    /// The cues from `from_millis` (included) to `to_millis` (not included), in order.
    #[must_use]
    pub fn cues_between(&self, kinds: CueKinds, from_millis: u64, to_millis: u64) -> Vec<Cue> {
        let breath_millis = self.pattern().breath_millis();
        let first = (from_millis / breath_millis).min(self.breaths());
        let last = to_millis.div_ceil(breath_millis).min(self.breaths());
        let mut cues = Vec::new();
        let mut tell = |at_millis: u64, tells: Tells| {
            if (from_millis..to_millis).contains(&at_millis) {
                cues.extend(kinds.wanted().map(|kind| Cue { at_millis, tells, kind }));
            }
        };
        for breath in first..last {
            let mut at_millis = breath * breath_millis;
            for (phase, millis) in self.pattern().phases() {
                tell(at_millis, Tells::Begins(phase));
                at_millis += millis;
            }
        }
        tell(self.whole_millis(), Tells::Over);
        cues
    }
}
