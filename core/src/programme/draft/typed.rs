//! What stands in a field: a text as typed, or a choice. Both may be nothing yet.

use std::fmt;

use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::super::plan::IntendedFor;
use super::super::rule::Target;
use super::super::values::{Position, Practice, RatingKind, StepId, Token};
use crate::safety::{Sign, Tier};

/// A text exactly as it was typed; empty is nothing yet.
#[derive(Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Typed(String);

impl Typed {
    /// This text.
    pub fn new(text: impl Into<String>) -> Self {
        Self(text.into())
    }
    /// As typed.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
    /// Without the spaces around it.
    #[must_use]
    pub fn trimmed(&self) -> &str {
        self.0.trim()
    }
    /// Whether nothing stands there yet.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.trimmed().is_empty()
    }
}

// What somebody typed reaches no log through a debug print.
impl fmt::Debug for Typed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Typed(..)")
    }
}

/// One of several, or nothing yet. As text it is its stored name, or empty; a name that is none of them is
/// nothing, because only a page of ours offers names.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Choice<T>(pub Option<T>);

impl<T> Default for Choice<T> {
    fn default() -> Self {
        Self(None)
    }
}

/// What can be chosen.
pub trait Chosen: Sized {
    /// Its stored name.
    fn code(&self) -> String;
    /// The one with this name.
    fn named(code: &str) -> Option<Self>;
}

/// The stored name of what serde writes as one word.
macro_rules! chosen {
    ($($type:ty),+) => {$(
        impl Chosen for $type {
            fn code(&self) -> String {
                match serde_json::to_value(self) {
                    Ok(serde_json::Value::String(name)) => name,
                    // Each of these is written as one word.
                    _ => String::new(),
                }
            }
            fn named(code: &str) -> Option<Self> {
                serde_json::from_value(serde_json::Value::String(code.to_owned())).ok()
            }
        }
    )+};
}
chosen!(IntendedFor, Position, Practice, RatingKind, Sign, Tier, Token);

/// Where coming back leads, as a choice: `previous`, `first` or `step:ID`.
#[derive(Clone, PartialEq, Eq)]
pub struct TargetChoice(pub Target);

impl Chosen for TargetChoice {
    fn code(&self) -> String {
        match &self.0 {
            Target::Previous => "previous".to_owned(),
            Target::First => "first".to_owned(),
            Target::Step(id) => format!("step:{id}"),
        }
    }
    fn named(code: &str) -> Option<Self> {
        let target = match code {
            "previous" => Target::Previous,
            "first" => Target::First,
            other => Target::Step(StepId::new(other.strip_prefix("step:")?).ok()?),
        };
        Some(Self(target))
    }
}

impl<T: Chosen> Choice<T> {
    /// Its stored name; empty for nothing.
    #[must_use]
    pub fn code(&self) -> String {
        self.0.as_ref().map(Chosen::code).unwrap_or_default()
    }
}

impl<T: Chosen> Serialize for Choice<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.code())
    }
}

impl<'de, T: Chosen> Deserialize<'de> for Choice<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let code = String::deserialize(deserializer)?;
        Ok(Self(T::named(&code)))
    }
}
