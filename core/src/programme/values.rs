//! The small values a programme is written with. Each checks itself where it is made, so that a value
//! outside its range cannot exist further in. None has a default.

use std::borrow::Cow;
use std::fmt;
use std::sync::Arc;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Serialize};

/// Why a value was refused. The text says what is allowed; the reader adds the place.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct ValueError(pub(crate) Cow<'static, str>);

/// A whole number within bounds, by construction.
macro_rules! bounded {
    ($(#[$doc:meta])* $name:ident($repr:ty), $least:literal..=$most:literal, $what:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(try_from = "u64", into = "u64")]
        pub struct $name($repr);

        impl $name {
            /// The smallest value allowed.
            pub const LEAST: $repr = $least;
            /// The largest value allowed.
            pub const MOST: $repr = $most;

            #[doc = concat!("A value from ", stringify!($least), " to ", stringify!($most), ".")]
            ///
            /// # Errors
            /// Refuses a number outside that range.
            pub fn new(value: u64) -> Result<Self, ValueError> {
                if !($least..=$most).contains(&value) {
                    return Err(ValueError(Cow::Borrowed(concat!(
                        $what, " is a whole number from ", stringify!($least), " to ", stringify!($most)
                    ))));
                }
                // In range of the smaller type by the check above.
                #[allow(clippy::cast_possible_truncation, reason = "checked just above")]
                Ok(Self(value as $repr))
            }

            /// The number itself.
            #[must_use]
            pub fn get(self) -> $repr {
                self.0
            }
        }

        impl TryFrom<u64> for $name {
            type Error = ValueError;
            fn try_from(value: u64) -> Result<Self, ValueError> {
                Self::new(value)
            }
        }

        impl From<$name> for u64 {
            fn from(value: $name) -> u64 {
                u64::from(value.0)
            }
        }

        impl JsonSchema for $name {
            fn schema_name() -> Cow<'static, str> {
                stringify!($name).into()
            }
            fn json_schema(_: &mut SchemaGenerator) -> Schema {
                json_schema!({ "type": "integer", "minimum": $least, "maximum": $most })
            }
        }
    };
}

bounded!(
    /// Discomfort or worry on the numeric rating scale, 0 ("none") to 10 ("worst imaginable").
    Rating(u8), 0..=10, "a rating"
);
bounded!(
    /// A threshold a rating can reach: 1 to 10. At 0 every session would reach it.
    RatingAtLeast(u8), 1..=10, "at_least"
);
bounded!(
    /// Widest diameter of a trainer in tenths of a millimetre, 1 mm to 100 mm.
    Size(u16), 10..=1000, "a size in tenths of a millimetre"
);
bounded!(
    /// Calendar days, 1 to 3,660 (ten years).
    Days(u16), 1..=3660, "a number of days"
);
bounded!(
    /// A count of things, 1 to 3,660.
    Count(u16), 1..=3660, "a count"
);
bounded!(
    /// How many of the latest sessions are looked at, 1 to 50 (rule sentence P4).
    Last(u8), 1..=50, "a number of last sessions"
);
bounded!(
    /// Minutes of one practice, 1 to 240.
    Minutes(u8), 1..=240, "minutes"
);
bounded!(
    /// Hours, 1 to 336 (two weeks).
    Hours(u16), 1..=336, "hours"
);
bounded!(
    /// One phase of a breath in tenths of a second, 0 to 300.
    Tenths(u16), 0..=300, "tenths of a second"
);
bounded!(
    /// The revision of a programme, counted from 1.
    Revision(u32), 1..=1_000_000, "a revision"
);

impl Size {
    /// Millimetres, for reading only.
    #[must_use]
    pub fn millimetres(self) -> f64 {
        f64::from(self.0) / 10.0
    }
}

impl fmt::Display for Size {
    /// `22 mm` or `22.5 mm`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.0 / 10, self.0 % 10) {
            (whole, 0) => write!(f, "{whole} mm"),
            (whole, tenth) => write!(f, "{whole}.{tenth} mm"),
        }
    }
}

/// Checked text: trimmed, not empty, no control characters except line breaks where allowed.
macro_rules! text {
    ($(#[$doc:meta])* $name:ident, $most:literal, $breaks:literal, $what:literal) => {
        $(#[$doc])*
        #[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(try_from = "String", into = "String")]
        pub struct $name(Arc<str>);

        impl $name {
            /// Checks the text.
            ///
            /// # Errors
            /// Refuses empty or too long text and control characters.
            pub fn new(text: &str) -> Result<Self, ValueError> {
                let text = text.trim();
                if text.is_empty() || text.chars().count() > $most {
                    return Err(ValueError(Cow::Borrowed(concat!(
                        $what, " has 1 to ", stringify!($most), " characters"
                    ))));
                }
                if text.chars().any(|c| c.is_control() && !($breaks && c == '\n')) {
                    return Err(ValueError(Cow::Borrowed(concat!(
                        $what, " holds no control characters"
                    ))));
                }
                Ok(Self(text.into()))
            }

            /// The text.
            #[must_use]
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl TryFrom<String> for $name {
            type Error = ValueError;
            fn try_from(text: String) -> Result<Self, ValueError> {
                Self::new(&text)
            }
        }

        impl From<$name> for String {
            fn from(text: $name) -> String {
                text.0.as_ref().to_owned()
            }
        }

        // What somebody wrote is private: it never reaches a log through a debug print.
        impl fmt::Debug for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(concat!(stringify!($name), "(..)"))
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }

        impl JsonSchema for $name {
            fn schema_name() -> Cow<'static, str> {
                stringify!($name).into()
            }
            fn json_schema(_: &mut SchemaGenerator) -> Schema {
                json_schema!({ "type": "string", "minLength": 1, "maxLength": $most })
            }
        }
    };
}

text!(
    /// A name, a telephone number, hours: one line of up to 200 characters.
    Line, 200, false, "a line"
);
text!(
    /// An instruction or a note: up to 2,000 characters, line breaks allowed.
    Passage, 2000, true, "a text"
);

/// A stable id inside a programme: 1 to 40 of `a-z`, `0-9` and `-`, starting with a letter or digit.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Token(Arc<str>);

impl Token {
    /// Checks the id.
    ///
    /// # Errors
    /// Refuses anything but 1 to 40 of `a-z`, `0-9`, `-`, starting with a letter or digit.
    pub fn new(text: &str) -> Result<Self, ValueError> {
        let fits = (1..=40).contains(&text.len())
            && !text.starts_with('-')
            && text.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-');
        if fits {
            Ok(Self(text.into()))
        } else {
            Err(ValueError(Cow::Borrowed(
                "an id has 1 to 40 of a-z, 0-9 and -, and starts with a letter or digit",
            )))
        }
    }

    /// The id as text.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl TryFrom<String> for Token {
    type Error = ValueError;
    fn try_from(text: String) -> Result<Self, ValueError> {
        Self::new(&text)
    }
}

impl From<Token> for String {
    fn from(token: Token) -> String {
        token.0.as_ref().to_owned()
    }
}

impl fmt::Display for Token {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl JsonSchema for Token {
    fn schema_name() -> Cow<'static, str> {
        "Token".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({ "type": "string", "pattern": "^[a-z0-9][a-z0-9-]{0,39}$" })
    }
}

/// The id of a programme, unchanged over its revisions.
pub type ProgrammeId = Token;
/// The id of a step, unchanged over the revisions in which it stays the same rung.
pub type StepId = Token;

/// A kind of thing to do. Written `trainer`, `breathing`, `belly_breathing`, `meditation`, or
/// `other:ID` with the id of a practice of the programme.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub enum Practice {
    /// Practice with a graded trainer.
    Trainer,
    /// Slow breathing to a pattern.
    Breathing,
    /// Breathing into the belly.
    BellyBreathing,
    /// Meditation.
    Meditation,
    /// Something else the programme names.
    Other(Token),
}

impl TryFrom<String> for Practice {
    type Error = ValueError;
    fn try_from(text: String) -> Result<Self, ValueError> {
        match text.as_str() {
            "trainer" => Ok(Self::Trainer),
            "breathing" => Ok(Self::Breathing),
            "belly_breathing" => Ok(Self::BellyBreathing),
            "meditation" => Ok(Self::Meditation),
            other => match other.strip_prefix("other:") {
                Some(id) => Token::new(id).map(Self::Other),
                None => Err(ValueError(Cow::Borrowed(
                    "a practice is trainer, breathing, belly_breathing, meditation or other:ID",
                ))),
            },
        }
    }
}

impl From<Practice> for String {
    fn from(practice: Practice) -> String {
        match practice {
            Practice::Trainer => "trainer".into(),
            Practice::Breathing => "breathing".into(),
            Practice::BellyBreathing => "belly_breathing".into(),
            Practice::Meditation => "meditation".into(),
            Practice::Other(id) => format!("other:{id}"),
        }
    }
}

impl JsonSchema for Practice {
    fn schema_name() -> Cow<'static, str> {
        "Practice".into()
    }
    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "string",
            "pattern": "^(trainer|breathing|belly_breathing|meditation|other:[a-z0-9][a-z0-9-]{0,39})$"
        })
    }
}

/// How the body lies or stands during a practice.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Position {
    /// Lying on the back.
    OnBack,
    /// Lying on the side.
    SideLying,
    /// Sitting.
    Sitting,
    /// Standing.
    Standing,
    /// Another position, described in the instruction.
    Other,
}

/// What a rating rates.
#[derive(
    Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum RatingKind {
    /// The highest discomfort during the session; always asked.
    Peak,
    /// Discomfort before starting; asked if the programme says so.
    Before,
    /// Discomfort after ending; asked if the programme says so.
    After,
    /// Worry; asked if the programme says so.
    Worry,
}

impl RatingKind {
    /// Every kind, in the order they are asked.
    pub const ALL: [Self; 4] = [Self::Before, Self::Peak, Self::After, Self::Worry];
}
