//! Decides what may stand in a diary. One entry is one immutable line; what was wrong is put right by
//! a further line. Leaves to [`crate::progression`] what entries mean together, and to the store how
//! they lie on disk.
//!
//! An entry is written as JSON, the same in the sealed journal and in the plain JSON-lines form that the
//! command line reads, so that a diary opens for as long as JSON can be read.

mod accepted;
mod content;
mod id;
mod session;
#[cfg(test)]
mod tests;

pub use accepted::{Although, KeyStood, SignedBy};
pub use content::{
    Asked, Chosen, ClockChange, Content, FeelsReady, Goal, LockAfter, ScreeningAnswer, Settings,
    Settled, Why,
};
pub use id::{EntryId, SignKey, SignNoted};
pub use session::{Answer, Ended, Ratings, Reason, Session, UsedPart};

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::moment::{Stamp, Uptime};

/// What a person tells is hers: it reaches no log through a debug print, in no build.
macro_rules! opaque {
    ($($name:ident),+) => {$(
        impl std::fmt::Debug for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(concat!(stringify!($name), "(..)"))
            }
        }
    )+};
}

pub(crate) use opaque;

opaque!(
    Entry, Content, Session, UsedPart, Ended, Answer, Ratings, SignNoted, SignKey, Settings,
    SignedBy
);

/// The place of an entry in the journal, counted from 1. Never a clock (rule sentence T1).
pub type Place = u64;

/// One line of the diary.
#[derive(Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Its identity, independent of its place. It is the id of the request that wrote it, so that asking
    /// twice cannot write twice.
    pub id: EntryId,
    /// When it was written.
    pub written: Stamp,
    /// When what it tells began; the same as `written` unless told later. For a correction: the
    /// corrected time.
    pub happened: Stamp,
    /// The device's running time at writing, where known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub uptime: Option<Uptime>,
    /// What it tells.
    pub what: Content,
}
