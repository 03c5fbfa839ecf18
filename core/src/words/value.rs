//! What can be put into a message: text, a whole number, or a number with decimal places.
//!
//! A number is more than its digits: the message picks "1 day" or "2 days" by it.

use std::fmt;

use fluent_bundle::FluentValue;
use fluent_bundle::types::{FluentNumber, FluentNumberOptions};

/// A value for a message. Most are written as `x.into()`.
#[derive(Clone, PartialEq)]
pub enum Value {
    /// Text as it is.
    Text(String),
    /// A whole number. Exact up to 2^53, far beyond any count a person reads.
    Whole(i64),
    /// A number with a fixed count of decimal places.
    Decimal {
        /// The number, rounded to `places` when shown.
        number: f64,
        /// Decimal places shown, at most 6.
        places: u8,
    },
}

impl Value {
    /// A number shown with `places` decimal places.
    pub fn decimal(number: f64, places: u8) -> Value {
        Value::Decimal { number, places: places.min(6) }
    }

    pub(super) fn to_fluent(&self) -> FluentValue<'_> {
        match self {
            Value::Text(text) => FluentValue::from(text.as_str()),
            Value::Whole(number) => FluentValue::from(*number),
            Value::Decimal { number, places } => {
                let places = (*places).min(6);
                let scale = 10f64.powi(i32::from(places));
                // Rounded here, because the library pads decimal places but does not cut them.
                // Adding zero makes a rounded "-0" a plain 0.
                let rounded = (number * scale).round() / scale + 0.0;
                let options = FluentNumberOptions {
                    minimum_fraction_digits: (places > 0).then_some(usize::from(places)),
                    ..FluentNumberOptions::default()
                };
                FluentValue::Number(FluentNumber::new(rounded, options))
            }
        }
    }
}

// A value may be something a person wrote or rated, so debug text does not repeat it.
impl fmt::Debug for Value {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Value(..)")
    }
}

impl From<&str> for Value {
    fn from(text: &str) -> Self {
        Value::Text(text.to_owned())
    }
}

impl From<String> for Value {
    fn from(text: String) -> Self {
        Value::Text(text)
    }
}

impl From<&String> for Value {
    fn from(text: &String) -> Self {
        Value::Text(text.clone())
    }
}

macro_rules! whole {
    ($($kind:ty),+) => {
        $(impl From<$kind> for Value {
            fn from(number: $kind) -> Self {
                Value::Whole(i64::try_from(number).unwrap_or(i64::MAX))
            }
        })+
    };
}
whole!(u8, u16, u32, u64, usize, i32, i64);
