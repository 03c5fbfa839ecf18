//! What is done to the lists of a draft: add, take out, put back, move, copy. Nothing that is added holds a
//! value; only what is copied does, and copying is asked for. Decides the ids of new steps and practices: they
//! are counted, and none is given twice in one draft.

use std::str::FromStr;

use serde::{Deserialize, Serialize};
use serde_json::{Value, json};

use super::super::values::{Practice, Token};
use super::fields::pointer;
use super::{
    Choice, Draft, PartDraft, Place, PracticeDraft, RecipientDraft, RuleDraft, StepDraft,
    StricterDraft,
};

/// The most things in one list of a draft, so that a page stays readable; above what a programme may hold.
const MOST: usize = 80;

/// A change of a draft's lists. As text, such as a button of a form sends it: `add:steps`,
/// `add:rule.step_up:days_on_step`, `remove:steps.2`, `up:steps.2`, `down:steps.2`, `copy:steps.2`,
/// `put_back`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Change {
    /// An empty thing at the end of a list, or a rule where there is none.
    Add {
        /// The list.
        list: String,
        /// Which kind of condition, in the lists of a rule.
        sort: Option<String>,
    },
    /// Takes a thing out.
    Remove(String),
    /// Puts a thing one place earlier.
    Up(String),
    /// Puts a thing one place later.
    Down(String),
    /// Puts a copy of a thing behind it.
    Copy(String),
    /// Puts back what was taken out last.
    PutBack,
}

impl FromStr for Change {
    type Err = ();
    fn from_str(text: &str) -> Result<Self, ()> {
        let (what, rest) = text.split_once(':').unwrap_or((text, ""));
        let place = rest.to_owned();
        Ok(match what {
            "add" => match rest.split_once(':') {
                Some((list, sort)) => {
                    Self::Add { list: list.to_owned(), sort: Some(sort.to_owned()) }
                }
                None => Self::Add { list: place, sort: None },
            },
            "remove" => Self::Remove(place),
            "up" => Self::Up(place),
            "down" => Self::Down(place),
            "copy" => Self::Copy(place),
            "put_back" => Self::PutBack,
            _ => return Err(()),
        })
    }
}

/// What was taken out last.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Removed {
    /// Out of which list; of a rule, the place of the rule.
    pub list: String,
    /// Where it stood; none for a rule.
    pub at: Option<usize>,
    /// The thing itself.
    pub item: Value,
}

impl Draft {
    /// Makes the change. Answers where to look then; nothing where it cannot be made, such as on a page that
    /// is older than the draft.
    pub fn change(&mut self, change: &Change) -> Option<Place> {
        let mut tree = serde_json::to_value(&*self).ok()?;
        let mut removed = self.removed.clone();
        let place = match change {
            Change::Add { list, sort } => add(&mut tree, list, sort.as_deref())?,
            Change::Remove(item) => {
                removed = Some(take_out(&mut tree, item)?);
                Place::new(item.rsplit_once('.').map_or("", |(list, _)| list))
            }
            Change::Up(item) => swap(&mut tree, item, |at| at.checked_sub(1))?,
            Change::Down(item) => swap(&mut tree, item, |at| at.checked_add(1))?,
            Change::Copy(item) => copy(&mut tree, item)?,
            Change::PutBack => put_back(&mut tree, removed.take()?)?,
        };
        let mut changed: Self = serde_json::from_value(tree).ok()?;
        changed.removed = removed;
        changed.shape = self.shape.wrapping_add(1);
        changed.give_ids();
        *self = changed;
        Some(place)
    }

    /// Gives an id to each step and practice that has none.
    fn give_ids(&mut self) {
        let mut given = self.ids_given;
        let mut next = |what: &str| {
            given += 1;
            format!("{what}-{given}")
        };
        for step in self.steps.iter_mut().filter(|step| step.id.is_empty()) {
            step.id = next("step");
        }
        for practice in self.practices.iter_mut().filter(|practice| practice.id.is_empty()) {
            practice.id = next("practice");
            // A copy of a practice of its own kind is another practice of its own kind.
            if let Choice(Some(Practice::Other(own))) = &mut practice.practice
                && let Ok(id) = Token::new(&practice.id)
            {
                *own = id;
            }
        }
        self.ids_given = given;
    }

    /// Counts on behind every id there is, so that none is given twice, then gives those that are missing.
    pub(super) fn count_ids(&mut self) {
        let steps = self.steps.iter().map(|step| step.id.as_str());
        let ids = steps.chain(self.practices.iter().map(|practice| practice.id.as_str()));
        let numbers = ids.filter_map(|id| id.rsplit_once('-')?.1.parse::<u32>().ok());
        let most = numbers.filter(|number| *number < u32::MAX / 2).max().unwrap_or_default();
        self.ids_given = most;
        self.give_ids();
    }
}

/// A thing of this list in which nothing stands. `sort` is the stored name of a criterion.
fn empty(list: &str, sort: Option<&str>) -> Option<Value> {
    let last = list.rsplit('.').next()?;
    let value = match (last, sort) {
        ("steps", None) => serde_json::to_value(StepDraft::default()),
        ("parts", None) => serde_json::to_value(PartDraft::default()),
        ("practices", None) => serde_json::to_value(PracticeDraft::default()),
        ("recipients", None) => serde_json::to_value(RecipientDraft::default()),
        ("stricter_signs", None) => serde_json::to_value(StricterDraft::default()),
        ("rule", None) => serde_json::to_value(RuleDraft::default()),
        ("activities" | "goals" | "own_cautions", None) => Ok(json!("")),
        ("step_up", Some(sort)) => Ok(match sort {
            "days_on_step" | "sign_free_days" => json!({ "criterion": sort, "days": "" }),
            "sessions" => json!({ "criterion": sort, "practised_days": "", "within_days": "" }),
            "discomfort_at_most" => {
                json!({ "criterion": sort, "rating": "", "at_most": "", "last": "" })
            }
            "feels_ready" => json!({ "criterion": sort }),
            _ => return None,
        }),
        ("step_back" | "pause", Some(sort)) => {
            let mut item = match sort {
                "discomfort_at_least" => json!({
                    "criterion": sort, "rating": "", "at_least": "", "sessions": "", "of_last": ""
                }),
                "stopped_early" => json!({ "criterion": sort, "sessions": "", "of_last": "" }),
                "days_without_practice" => json!({ "criterion": sort, "days": "" }),
                "steps_back" if last == "pause" => {
                    json!({ "criterion": sort, "times": "", "within_days": "" })
                }
                _ => return None,
            };
            if last == "step_back" {
                item.as_object_mut()?.insert("target".to_owned(), json!(""));
            }
            Ok(item)
        }
        _ => return None,
    };
    value.ok()
}

fn add(tree: &mut Value, list: &str, sort: Option<&str>) -> Option<Place> {
    let item = empty(list, sort)?;
    match tree.pointer_mut(&pointer(list))? {
        Value::Array(items) if items.len() < MOST => {
            items.push(item);
            Some(Place::new(list).at(items.len() - 1))
        }
        own @ Value::Null => {
            *own = item;
            Some(Place::new(list))
        }
        _ => None,
    }
}

/// The list a thing stands in, and where.
fn listed<'a>(tree: &'a mut Value, item: &str) -> Option<(&'a mut Vec<Value>, usize)> {
    let (list, at) = item.rsplit_once('.')?;
    let at: usize = at.parse().ok()?;
    // What the program keeps for itself is no list of the form, nor are the choices of a field.
    if list.starts_with("removed") || list == "signs_seen" || list == "ratings_asked" {
        return None;
    }
    let items = tree.pointer_mut(&pointer(list))?.as_array_mut()?;
    (at < items.len()).then_some((items, at))
}

fn take_out(tree: &mut Value, item: &str) -> Option<Removed> {
    if item.rsplit('.').next() == Some("rule") {
        let own = tree.pointer_mut(&pointer(item)).filter(|own| own.is_object())?;
        return Some(Removed { list: item.to_owned(), at: None, item: own.take() });
    }
    let (items, at) = listed(tree, item)?;
    let taken = items.remove(at);
    let (list, _) = item.rsplit_once('.')?;
    Some(Removed { list: list.to_owned(), at: Some(at), item: taken })
}

fn put_back(tree: &mut Value, removed: Removed) -> Option<Place> {
    let own = tree.pointer_mut(&pointer(&removed.list))?;
    match (removed.at, own) {
        (None, own @ Value::Null) => {
            *own = removed.item;
            Some(Place::new(removed.list))
        }
        (Some(at), Value::Array(items)) => {
            let at = at.min(items.len());
            items.insert(at, removed.item);
            Some(Place::new(removed.list).at(at))
        }
        _ => None,
    }
}

fn swap(tree: &mut Value, item: &str, other: impl Fn(usize) -> Option<usize>) -> Option<Place> {
    let (list, _) = item.rsplit_once('.')?;
    let (items, at) = listed(tree, item)?;
    let other = other(at).filter(|other| *other < items.len())?;
    items.swap(at, other);
    Some(Place::new(list).at(other))
}

fn copy(tree: &mut Value, item: &str) -> Option<Place> {
    let (list, _) = item.rsplit_once('.')?;
    let (items, at) = listed(tree, item)?;
    if items.len() >= MOST {
        return None;
    }
    let mut twin = items.get(at)?.clone();
    if let Some(id) = twin.get_mut("id") {
        *id = json!("");
    }
    items.insert(at + 1, twin);
    Some(Place::new(list).at(at + 1))
}
