//! The pages a draft is typed on. Decides which fields stand on which, and their addresses.

use frond_core::message_id;
use frond_core::programme::draft::{Draft, Part, Place};
use frond_core::words::Words;

/// A page of the form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Leaf {
    /// Who and whom to call.
    Who,
    /// The ladder.
    Steps,
    /// One step.
    Step(usize),
    /// The other practices.
    Practices,
    /// The rule.
    Rule,
    /// What is asked, and which signs are taken how.
    Signs,
    /// Goals, cautions, readers, manner.
    Texts,
}

impl Leaf {
    /// Those that are always there, in order.
    pub(super) const ALL: [Self; 6] =
        [Self::Who, Self::Steps, Self::Practices, Self::Rule, Self::Signs, Self::Texts];

    /// The end of its address.
    pub(super) fn address(self) -> String {
        match self {
            Self::Who => "who".to_owned(),
            Self::Steps => "steps".to_owned(),
            Self::Step(at) => format!("steps/{at}"),
            Self::Practices => "practices".to_owned(),
            Self::Rule => "rule".to_owned(),
            Self::Signs => "signs".to_owned(),
            Self::Texts => "texts".to_owned(),
        }
    }

    /// The one with this address.
    pub(super) fn named(rest: &[&str]) -> Option<Self> {
        match rest {
            ["steps", at] => at.parse().ok().map(Self::Step),
            [one] => Self::ALL.into_iter().find(|leaf| leaf.address() == *one),
            _ => None,
        }
    }

    /// Whether the draft has it.
    pub(super) fn is_in(self, draft: &Draft) -> bool {
        match self {
            Self::Step(at) => at < draft.steps.len(),
            _ => true,
        }
    }

    /// Where a place can be put right.
    pub(super) fn holding(place: &Place) -> Self {
        let parts: Vec<&str> = place.parts().collect();
        match parts.as_slice() {
            ["steps", at, ..] => at.parse().map_or(Self::Steps, Self::Step),
            ["steps" | "start_at", ..] => Self::Steps,
            ["practices", ..] => Self::Practices,
            ["rule" | "late_after_hours", ..] => Self::Rule,
            [
                "screening_every_days"
                | "stricter_signs"
                | "spotting_note_only"
                | "ratings_asked"
                | "signs_seen",
                ..,
            ] => Self::Signs,
            [
                "activities"
                | "activities_every_days"
                | "goals"
                | "own_cautions"
                | "recipients"
                | "manner",
                ..,
            ] => Self::Texts,
            _ => Self::Who,
        }
    }

    /// Where the list is shown that a thing stands in.
    pub(super) fn listing(place: &Place) -> Self {
        let parts: Vec<&str> = place.parts().collect();
        if let ["steps"] | ["steps", _] = parts.as_slice() {
            Self::Steps
        } else {
            Self::holding(place)
        }
    }

    /// Whether a field stands on it.
    pub(super) fn holds(self, place: &Place) -> bool {
        Self::holding(place) == self
    }

    /// What of the reading back belongs beside it.
    pub(super) fn said(self) -> &'static [Part] {
        match self {
            Self::Who => &[Part::Who],
            Self::Steps | Self::Step(_) => &[Part::Steps],
            Self::Practices => &[Part::Practices],
            Self::Rule => &[Part::Rule],
            Self::Signs | Self::Texts => &[Part::Asking, Part::Around],
        }
    }

    /// Its heading.
    pub(super) fn title(self, draft: &Draft, words: &Words) -> String {
        let title = match self {
            Self::Who => message_id!("compose-page-who"),
            Self::Steps => message_id!("compose-steps"),
            Self::Step(at) => {
                return draft.place_said(&Place::new("steps").at(at), words);
            }
            Self::Practices => message_id!("compose-practices"),
            Self::Rule => message_id!("compose-rule"),
            Self::Signs => message_id!("compose-page-signs"),
            Self::Texts => message_id!("compose-page-texts"),
        };
        words.text(title, &[])
    }
}
