//! What is shown after a stop, as data for one screen (W9): that stopping is right, one question about
//! signs that may stay unanswered, grounding with open eyes and only then breathing, whom to call. The
//! rest can wait until tomorrow.
//!
//! It decides the lines and their order. What a sign then means is [`crate::safety`]'s.

use std::fmt;

use serde::Serialize;

use crate::message_id;
use crate::programme::values::Practice;
use crate::safety::{AFTER_DISTRESS, Calming, Contacts, Dial, dialable, grounding, nobody_told};
use crate::words::Words;

/// An answer to the one question. None is chosen beforehand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum AfterStop {
    /// Something is not right.
    Something,
    /// Not sure: counts as something.
    NotSure,
    /// Nothing.
    Nothing,
    /// Not now.
    Later,
}

impl AfterStop {
    /// The answers, in the order to offer them.
    pub const ALL: [AfterStop; 4] =
        [AfterStop::Something, AfterStop::NotSure, AfterStop::Nothing, AfterStop::Later];

    /// The message id of its words.
    #[must_use]
    pub fn word_id(self) -> &'static str {
        match self {
            AfterStop::Something => message_id!("stopped-something"),
            AfterStop::NotSure => message_id!("stopped-not-sure"),
            AfterStop::Nothing => message_id!("stopped-nothing"),
            AfterStop::Later => message_id!("stopped-later"),
        }
    }

    /// Whether the list of signs comes next.
    #[must_use]
    pub fn shows_signs(self) -> bool {
        matches!(self, AfterStop::Something | AfterStop::NotSure)
    }
}

/// One answer to choose.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct AnswerChoice {
    /// Which.
    pub answer: AfterStop,
    /// Its words.
    pub label: String,
}

/// Something calming, in steps.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Calm {
    /// What it is.
    pub kind: Calming,
    /// Its words, one short step each.
    pub steps: Vec<String>,
}

/// What is shown after a stop, in the order of its fields.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Stopped {
    /// "You stopped. That is always right."
    pub title: String,
    /// How to let a trainer come out, after a practice with one.
    pub let_out: Option<String>,
    /// The one question.
    pub question: String,
    /// Its answers.
    pub answers: Vec<AnswerChoice>,
    /// Grounding first, then breathing.
    pub calm: Vec<Calm>,
    /// Whom to call, a paragraph each.
    pub call: Vec<String>,
    /// Numbers to offer below it.
    pub dial: Vec<Dial>,
    /// That nobody has been told.
    pub nobody_told: String,
    /// That the rest can wait.
    pub tomorrow: String,
}

// It shows that a practice was stopped, and by whom she is treated.
impl fmt::Debug for Stopped {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Stopped(..)")
    }
}

impl Stopped {
    /// What to show after a stop of `practice`, with a plan's contacts or without a plan.
    #[must_use]
    pub fn new(words: &Words, practice: &Practice, contacts: Option<&Contacts>) -> Self {
        let answers = AfterStop::ALL
            .map(|answer| AnswerChoice { answer, label: words.text(answer.word_id(), &[]) });
        let calm = AFTER_DISTRESS.map(|kind| Calm {
            kind,
            steps: match kind {
                Calming::Grounding => grounding(words),
                Calming::Breathing => vec![words.text("stopped-then-breathe", &[])],
            },
        });
        let (call, dial) = whom_to_call(words, contacts);
        Self {
            title: words.text("stopped-title", &[]),
            let_out: (*practice == Practice::Trainer).then(|| words.text("stopped-let-out", &[])),
            question: words.text("stopped-ask", &[]),
            answers: answers.into(),
            calm: calm.into(),
            call,
            dial,
            nobody_told: nobody_told(words),
            tomorrow: words.text("stopped-tomorrow", &[]),
        }
    }
}

/// Whom to call, a paragraph each, and the numbers to offer below, where nothing presses.
#[must_use]
pub fn whom_to_call(words: &Words, contacts: Option<&Contacts>) -> (Vec<String>, Vec<Dial>) {
    match contacts {
        Some(contacts) => whom(words, contacts),
        None => {
            let worse = words.text("call-if-worse-unknown", &[]);
            (vec![words.text("stopped-call-own-doctor", &[]), worse], Vec::new())
        }
    }
}

fn whom(words: &Words, contacts: &Contacts) -> (Vec<String>, Vec<Dial>) {
    let call = words.text(
        "stopped-call",
        &[
            ("clinician", (&contacts.clinician).into()),
            ("contact", (&contacts.contact).into()),
            ("hours", (&contacts.hours).into()),
        ],
    );
    let line = (&contacts.out_of_hours).into();
    let emergency = [
        ("number", (&contacts.emergency_number).into()),
        ("country", (&contacts.emergency_country).into()),
    ];
    let call = vec![
        call,
        words.text("stopped-out-of-hours", &[("line", line)]),
        words.text("call-if-worse", &emergency),
    ];
    let clinician = contacts.contact_phone.as_deref().and_then(|phone| {
        let values = [("clinician", (&contacts.clinician).into()), ("number", phone.into())];
        let number = dialable(phone)?;
        Some(Dial { label: words.text("call-dial-clinician", &values), number })
    });
    let closed = contacts.out_of_hours_phone.as_deref().and_then(|phone| {
        let number = dialable(phone)?;
        Some(Dial {
            label: words.text("call-dial-out-of-hours", &[("number", phone.into())]),
            number,
        })
    });
    let worse = dialable(&contacts.emergency_number)
        .map(|number| Dial { label: words.text("call-dial-emergency", &emergency), number });
    (call, clinician.into_iter().chain(closed).chain(worse).collect())
}

#[cfg(test)]
mod tests;
