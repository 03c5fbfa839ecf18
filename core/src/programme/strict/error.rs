//! What can be wrong with a text, and the sentence that says so.

use std::fmt;

use serde::de;

/// A place in a text file, both counted from 1; columns count characters.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Position {
    /// Line.
    pub line: usize,
    /// Column.
    pub column: usize,
}

impl fmt::Display for Position {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}, column {}", self.line, self.column)
    }
}

/// Why a text was refused. Each is one sentence that names the place.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum StrictError {
    /// Longer than allowed.
    #[error(
        "The text is longer than {limit} bytes; check that it is the right file, and shorten it if it \
         is."
    )]
    TooLong {
        /// The most bytes allowed.
        limit: usize,
    },
    /// Not UTF-8.
    #[error("At {at} stands something that is not UTF-8 text; save the file as UTF-8.")]
    NotUtf8 {
        /// The first such byte.
        at: Position,
    },
    /// Starts with a byte order mark.
    #[error(
        "At {at} stands an invisible byte order mark; save the file as UTF-8 without such a mark."
    )]
    ByteOrderMark {
        /// Always the first place.
        at: Position,
    },
    /// Not JSON.
    #[error("At {at} the text is not JSON ({what}); put it right there.")]
    Syntax {
        /// Where reading stopped.
        at: Position,
        /// What was missing or surplus.
        what: String,
    },
    /// Something follows after the end.
    #[error("At {at} something follows after the end; take it out.")]
    Trailing {
        /// Where it begins.
        at: Position,
    },
    /// Nested deeper than any value here can be.
    #[error(
        "{place}, at {at}, is nested deeper than {DEPTH} levels, which nothing here needs; take the \
         inner levels out.",
        place = Shown(place), DEPTH = super::DEPTH
    )]
    TooDeep {
        /// The line that goes too deep.
        place: String,
        /// Where in the file.
        at: Position,
    },
    /// A line stands twice in the same object.
    #[error(
        "{place}, at {at}, stands twice in the same place; keep the one that is meant.",
        place = Shown(place)
    )]
    Twice {
        /// The line.
        place: String,
        /// Where the second one is.
        at: Position,
    },
    /// The text is JSON, but a value in it is not what belongs there.
    #[error("{place} {wrong}.", place = Shown(place))]
    Value {
        /// The line.
        place: String,
        /// What is wrong with it.
        wrong: Wrong,
    },
}

/// A place such as `steps[2].name`; the empty one is the whole text.
struct Shown<'a>(&'a str);

impl fmt::Display for Shown<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(if self.0.is_empty() { "The text" } else { self.0 })
    }
}

/// What is wrong with a value. It never holds the value itself.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Wrong {
    /// No line of this name belongs here.
    UnknownLine {
        /// The names that do.
        known: &'static [&'static str],
    },
    /// A required line is not there.
    MissingLine,
    /// Another kind of value.
    Kind {
        /// What belongs here.
        expected: &'static str,
        /// What stands here.
        found: Found,
    },
    /// A word that is none of those allowed.
    UnknownWord {
        /// The words allowed.
        allowed: &'static [&'static str],
    },
    /// Outside what the value can be; the text says what is allowed.
    Outside(String),
    /// A list of another length.
    Length,
}

impl fmt::Display for Wrong {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::UnknownLine { known: [] } => {
                f.write_str("is not known here; no line belongs here, so take it out")
            }
            Self::UnknownLine { known } if known.len() > 12 => {
                f.write_str("is not a line known here; take it out or correct its name")
            }
            Self::UnknownLine { known } => write!(
                f,
                "is not a line known here; take it out or correct its name (known: {})",
                known.join(", ")
            ),
            Self::MissingLine => f.write_str("is missing; add it"),
            Self::Kind { expected, found } => {
                write!(f, "must be {expected}, but {found} stands there; correct it")
            }
            Self::UnknownWord { allowed } if allowed.len() > 12 => {
                write!(f, "is none of the {} words known here; correct it", allowed.len())
            }
            Self::UnknownWord { allowed } => {
                write!(f, "must be one of these words: {}", allowed.join(", "))
            }
            Self::Outside(allowed) => write!(f, "cannot be read: {allowed}; correct it"),
            Self::Length => f.write_str("has too few or too many values; correct it"),
        }
    }
}

/// The kind of value found, never the value.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Found {
    /// `null`.
    Null,
    /// `true` or `false`.
    Bool,
    /// A whole number.
    Whole,
    /// A number below zero.
    Negative,
    /// A number with a fraction or exponent.
    Fraction,
    /// Text in quotes.
    Text,
    /// `[...]`.
    List,
    /// `{...}`.
    Object,
}

impl fmt::Display for Found {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Null => "nothing (null)",
            Self::Bool => "true or false",
            Self::Whole => "a whole number",
            Self::Negative => "a number below zero",
            Self::Fraction => "a number that is not whole, or far too large,",
            Self::Text => "text",
            Self::List => "a list",
            Self::Object => "an object in braces",
        })
    }
}

/// What a type complained about while it was being read, before the place is known.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Complaint {
    /// About the value read.
    Here(Wrong),
    /// About a line of the object read, by its name.
    Line(String, Wrong),
}

impl fmt::Display for Complaint {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (Self::Here(wrong) | Self::Line(_, wrong)) = self;
        wrong.fmt(f)
    }
}

impl std::error::Error for Complaint {}

impl de::Error for Complaint {
    fn custom<T: fmt::Display>(message: T) -> Self {
        Self::Here(Wrong::Outside(in_plain_words(&message.to_string())))
    }

    fn invalid_type(found: de::Unexpected<'_>, expected: &dyn de::Expected) -> Self {
        Self::Here(Wrong::Kind { expected: kind(&expected.to_string()), found: found_kind(found) })
    }

    fn invalid_value(found: de::Unexpected<'_>, expected: &dyn de::Expected) -> Self {
        Self::invalid_type(found, expected)
    }

    fn invalid_length(_: usize, _: &dyn de::Expected) -> Self {
        Self::Here(Wrong::Length)
    }

    fn unknown_variant(_: &str, allowed: &'static [&'static str]) -> Self {
        Self::Here(Wrong::UnknownWord { allowed })
    }

    fn unknown_field(field: &str, known: &'static [&'static str]) -> Self {
        Self::Line(field.to_owned(), Wrong::UnknownLine { known })
    }

    fn missing_field(field: &'static str) -> Self {
        Self::Line(field.to_owned(), Wrong::MissingLine)
    }

    fn duplicate_field(field: &'static str) -> Self {
        Self::Line(field.to_owned(), Wrong::Outside("it stands twice".to_owned()))
    }
}

fn found_kind(found: de::Unexpected<'_>) -> Found {
    use de::Unexpected as U;
    match found {
        U::Bool(_) => Found::Bool,
        U::Unsigned(_) => Found::Whole,
        U::Signed(value) => {
            if value < 0 {
                Found::Negative
            } else {
                Found::Whole
            }
        }
        U::Float(_) => Found::Fraction,
        U::Char(_) | U::Str(_) | U::Bytes(_) | U::UnitVariant => Found::Text,
        U::Unit | U::Option => Found::Null,
        U::Seq => Found::List,
        _ => Found::Object,
    }
}

/// What belongs in a place, from the name a type gives itself.
fn kind(expected: &str) -> &'static str {
    match expected {
        "u8" | "u16" | "u32" | "u64" | "usize" => "a whole number of zero or more",
        "i8" | "i16" | "i32" | "i64" => "a whole number",
        "f32" | "f64" => "a number",
        "a boolean" | "bool" => "true or false",
        "a string" | "str" | "a borrowed string" => "text in quotes",
        "a sequence" => "a list in brackets",
        text if text.starts_with("a time such as") => "a time such as 2026-03-01T09:00:00+01:00",
        text if text.contains("date string") => "a date such as 2026-03-31",
        text if text.contains("single key") => "an object in braces with one line",
        text if text.starts_with("variant identifier") => "a word in quotes",
        text if text.starts_with("struct")
            || text.contains("tagged enum")
            || text.contains("newtype variant") =>
        {
            "an object in braces"
        }
        text if text.starts_with("enum") => "one of the words known here",
        text if text.starts_with("unit variant") || text == "unit" => "a word in quotes",
        _ => "another kind of value",
    }
}

/// A date's own complaints do not say how a date is written.
fn in_plain_words(message: &str) -> String {
    match message {
        "premature end of input"
        | "input contains invalid characters"
        | "input is out of range"
        | "trailing input"
        | "input is not enough for unique date and time" => {
            "a date is written like 2026-03-31".to_owned()
        }
        other => other.to_owned(),
    }
}
