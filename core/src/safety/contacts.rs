//! Whom a person can reach, as her programme says it, and the tap that opens the telephone.
//!
//! Plain words taken over from the programme. No number is guessed and none stands in the code.

use std::fmt;

use serde::Serialize;

/// The lines of a programme that say whom to reach.
#[derive(Clone, PartialEq, Eq)]
pub struct Contacts {
    /// The clinician's name as the person knows it.
    pub clinician: String,
    /// How to reach the clinician or clinic, in the clinician's words.
    pub contact: String,
    /// The telephone number of the contact, where there is one.
    pub contact_phone: Option<String>,
    /// When the contact can be reached.
    pub hours: String,
    /// What to do outside those hours.
    pub out_of_hours: String,
    /// The telephone number for out of hours, where there is one.
    pub out_of_hours_phone: Option<String>,
    /// What to do if nobody answers, where the clinician says so.
    pub if_nobody_answers: Option<String>,
    /// The emergency number.
    pub emergency_number: String,
    /// The country that number belongs to, by its name.
    pub emergency_country: String,
}

// Whom a person can reach tells what she is treated for.
impl fmt::Debug for Contacts {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Contacts").finish_non_exhaustive()
    }
}

/// A duty of the shell: one tap here opens the telephone with the number filled in. Frond never
/// rings by itself.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Dial {
    /// The words on the button.
    pub label: String,
    /// Digits, `*`, `#` and a leading `+` only: safe to put into a `tel:` address.
    pub number: String,
}

impl fmt::Debug for Dial {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Dial").finish_non_exhaustive()
    }
}

/// The number to dial, if `text` is a telephone number and nothing else.
///
/// Spaces and the usual separators are taken out. With anything else in it there is no number: half
/// of "0123 or 0456" would reach the wrong person.
pub fn dialable(text: &str) -> Option<String> {
    let mut number = String::new();
    for sign in text.trim().chars() {
        match sign {
            '0'..='9' | '*' | '#' => number.push(sign),
            '+' if number.is_empty() => number.push(sign),
            ' ' | '\u{a0}' | '\u{202f}' | '-' | '.' | '(' | ')' => {}
            _ => return None,
        }
    }
    number.chars().any(|sign| sign.is_ascii_digit()).then_some(number)
}
