//! Which programme and which step, since when, and whether the person has said so (F1, S4, D1).

use frond_core::diary::entry::{Content, Entry, Place};
use frond_core::programme::plan::{Programme, Step};
use frond_core::programme::rule::Rule;

use super::reading::{Item, Reading, corrects, root};

/// The current step.
#[derive(Clone)]
pub struct Current<'a> {
    /// Its programme.
    pub programme: &'a Programme,
    /// Its index, 0 the lowest.
    pub index: usize,
    /// The entry with which it began.
    pub began: Item<'a>,
    /// Whether it was reached by going back.
    pub came_back: bool,
}

impl<'a> Current<'a> {
    /// The step itself.
    #[must_use]
    pub fn step(&self) -> &'a Step {
        &self.programme.steps[self.index]
    }
    /// The rule in force: a tried rule replaces all rules (T6).
    #[must_use]
    pub fn rule(&self, tried: Option<&'a Rule>) -> Option<&'a Rule> {
        tried.or_else(|| self.programme.rule_on(self.step()))
    }
}

/// What the entries that stand say about the ladder, in order of place.
#[derive(Default)]
pub struct Ladder<'a> {
    /// The programme accepted last.
    pub programme: Option<&'a Programme>,
    /// The current step.
    pub current: Option<Current<'a>>,
    /// "Stay here for now" stands.
    pub stay: bool,
    /// Changes to an earlier step, whoever chose them.
    pub backs: Vec<Item<'a>>,
    /// The first acceptance.
    pub first_accepted: Option<Item<'a>>,
    /// The last place at which the step then in use was chosen or confirmed.
    pub said: Option<Place>,
    /// Acceptances and choices of a step that there is.
    pub namings: Vec<Item<'a>>,
}

impl<'a> Ladder<'a> {
    /// Walks over what stands.
    #[must_use]
    pub fn new(reading: &Reading<'a>) -> Self {
        let mut ladder = Self::default();
        for item in &reading.items {
            match item.told() {
                Content::ProgrammeAccepted { carried, .. } => {
                    if let Some(programme) = reading.shelf.get(carried) {
                        ladder.accept(programme, item);
                    }
                }
                Content::StepChange { to, .. } => {
                    let to = ladder.programme.and_then(|programme| programme.step_index(to));
                    if let Some(to) = to {
                        ladder.change(to, item);
                    }
                }
                Content::StepConfirmed { step }
                    if ladder.current.as_ref().is_some_and(|now| now.step().id == *step) =>
                {
                    ladder.said = Some(item.place);
                }
                Content::StayHere { stay } => ladder.stay = *stay,
                _ => {}
            }
        }
        ladder
    }

    fn accept(&mut self, programme: &'a Programme, item: &Item<'a>) {
        self.first_accepted.get_or_insert_with(|| item.clone());
        self.namings.push(item.clone());
        self.programme = Some(programme);
        let continued = self.current.as_ref().and_then(|current| {
            let index = programme.step_index(&current.step().id)?;
            (current.programme.id == programme.id
                && current.step().same_work(&programme.steps[index]))
            .then_some(index)
        });
        match (continued, &mut self.current) {
            (Some(index), Some(current)) => {
                current.programme = programme;
                current.index = index;
            }
            _ => {
                self.stay = false;
                let start = programme.start_at.as_ref().and_then(|id| programme.step_index(id));
                self.current = start.map(|index| Current {
                    programme,
                    index,
                    began: item.clone(),
                    came_back: false,
                });
            }
        }
    }

    fn change(&mut self, to: usize, item: &Item<'a>) {
        let (Some(programme), from) = (self.programme, self.current.as_ref().map(|now| now.index))
        else {
            return;
        };
        self.said = Some(item.place);
        self.namings.push(item.clone());
        if from == Some(to) {
            return; // F1: naming it again does not start it afresh.
        }
        let came_back = from.is_some_and(|from| to < from);
        if came_back {
            self.backs.push(item.clone());
        }
        self.stay = false;
        self.current = Some(Current { programme, index: to, began: item.clone(), came_back });
    }
}

/// S4: the last place after which the present step has to be confirmed.
fn asks_again(entries: &[Entry], index: usize) -> bool {
    let names = |content: &Content| {
        matches!(content, Content::ProgrammeAccepted { .. } | Content::StepChange { .. })
    };
    match &entries[index].what {
        Content::ProgrammeAccepted { .. }
        | Content::RestoredMark { .. }
        | Content::ErasedMark { .. } => true,
        Content::Correction { .. } => {
            corrects(entries, index).is_some_and(|first| names(&entries[first].what))
        }
        strike @ Content::Strike { .. } => strikes_a_name(entries, strike, index),
        _ => false,
    }
}

/// Whether a strike touches a naming of a step, directly or through other strikes and corrections.
fn strikes_a_name(entries: &[Entry], strike: &Content, index: usize) -> bool {
    let Content::Strike { of } = strike else { return false };
    let Some(first) = root(entries, *of, index) else { return false };
    match &entries[first].what {
        Content::ProgrammeAccepted { .. } | Content::StepChange { .. } => true,
        next @ Content::Strike { .. } => strikes_a_name(entries, next, first),
        _ => false,
    }
}

/// Whether the person has confirmed the present step since it last had to be.
#[must_use]
pub fn confirmed(reading: &Reading<'_>, ladder: &Ladder<'_>) -> bool {
    let asked = (0..reading.entries.len())
        .filter(|&index| asks_again(reading.entries, index))
        .map(|index| index as Place + 1)
        .max();
    ladder.said > asked
}

/// Whether a restore has not been confirmed since.
#[must_use]
pub fn restore_unconfirmed(reading: &Reading<'_>, ladder: &Ladder<'_>) -> bool {
    let restored = reading
        .items
        .iter()
        .filter(|item| matches!(item.told(), Content::RestoredMark { .. }))
        .map(|item| item.place)
        .max();
    restored > ladder.said
}
