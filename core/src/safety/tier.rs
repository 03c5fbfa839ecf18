//! How grave a sign is. Nothing else.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How grave a sign is, mildest first. Its serialised name is a stored format and never changes.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Tier {
    /// Noted; practice may go on.
    Note,
    /// Trainers pause until the person has asked.
    AskFirst,
    /// Stop and contact the clinician.
    Stop,
    /// Stop and call the emergency number now.
    Emergency,
}

impl Tier {
    /// Every tier, mildest first.
    pub const ALL: [Tier; 4] = [Tier::Note, Tier::AskFirst, Tier::Stop, Tier::Emergency];

    /// Whether an open sign of this tier pauses trainers.
    pub fn pauses(self) -> bool {
        self > Tier::Note
    }

    /// The stored name.
    pub fn name(self) -> &'static str {
        match self {
            Tier::Note => "note",
            Tier::AskFirst => "ask_first",
            Tier::Stop => "stop",
            Tier::Emergency => "emergency",
        }
    }
}
