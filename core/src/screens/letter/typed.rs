//! What the clinician types for a letter. It stands in no diary and in no file of the desk: it is typed for
//! each letter and gone with it.

use chrono::NaiveDate;

use crate::programme::values::{Line, Passage};

/// What is typed for a letter.
#[derive(Clone, Debug)]
pub struct Typed {
    /// The person's name, as the other clinician knows it.
    pub person: Line,
    /// What else tells who it is: date of birth, a number, in the clinician's words.
    pub known_by: Option<Line>,
    /// To whom it goes: name and address.
    pub to: Passage,
    /// Who writes: name and profession.
    pub from: Line,
    /// Where the writer can be reached.
    pub reached_at: Option<Passage>,
    /// The day of the letter.
    pub date: NaiveDate,
    /// What the writer makes of it, in her own words.
    pub view: Option<Passage>,
    /// What is planned next, in her own words.
    pub next: Option<Passage>,
    /// What is asked of the other.
    pub request: Passage,
}

/// That the person agreed to this letter. It can only be had from a tick that was set, and no letter can be
/// made without it.
#[derive(Clone, Copy, Debug)]
pub struct Agreed(());

impl Agreed {
    /// From the tick.
    #[must_use]
    pub fn ticked(ticked: bool) -> Option<Self> {
        ticked.then_some(Self(()))
    }
}
