//! The stored names of what a session tells, the same in every form that leaves.

use crate::diary::entry::{Ended, Reason, Settled};
use crate::programme::values::Position;

/// The stored name of a position.
pub(super) fn position(position: Position) -> &'static str {
    match position {
        Position::OnBack => "on_back",
        Position::SideLying => "side_lying",
        Position::Sitting => "sitting",
        Position::Standing => "standing",
        Position::Other => "other",
    }
}

/// How a session ended, and why, where it was not finished.
pub(super) fn ended(ended: Ended) -> (&'static str, Option<&'static str>) {
    let why = |reason| match reason {
        Reason::Discomfort => "discomfort",
        Reason::DidNotGoIn => "did_not_go_in",
        Reason::Upset => "upset",
        Reason::Interrupted => "interrupted",
        Reason::Other => "other",
    };
    match ended {
        Ended::Finished => ("finished", None),
        Ended::Stopped(reason) => ("stopped", Some(why(reason))),
        Ended::CouldNotStart(reason) => ("could_not_start", Some(why(reason))),
    }
}

/// Whether it settled.
pub(super) fn settled(answer: Settled) -> &'static str {
    match answer {
        Settled::Yes => "yes",
        Settled::NotYet => "not_yet",
        Settled::RatherNotSay => "rather_not_say",
    }
}

/// The stored name of anything that is stored as text.
pub(super) fn name(value: &impl serde::Serialize) -> String {
    let value = serde_json::to_value(value).ok();
    value.and_then(|value| value.as_str().map(str::to_owned)).unwrap_or_default()
}
