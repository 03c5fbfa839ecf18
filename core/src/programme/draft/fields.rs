//! The fields of a draft by their names, such as `steps.2.parts.0.size_mm`: what stands in one, and what a
//! form sent for it. A name that is no field of the draft changes nothing.

use serde_json::Value;

use super::super::values::RatingKind;
use super::Draft;
use super::typed::Chosen;

/// A draft as a tree of named fields, to read what stands in each.
pub struct Tree(Value);

/// What no form sets: it is given by the program, or says which kind of thing this is.
const NOT_TYPED: [&str; 5] = ["id", "criterion", "shape", "ids_given", "removed"];

/// The most characters that are kept of one field. Far above what fits a programme, so that a text that is
/// too long can be shortened where it stands.
const LONGEST: usize = 20_000;

impl Tree {
    /// What stands in a field: nothing where there is no such field.
    #[must_use]
    pub fn typed(&self, name: &str) -> &str {
        self.at(name).and_then(Value::as_str).unwrap_or_default()
    }

    /// Whether a field is ticked.
    #[must_use]
    pub fn ticked(&self, name: &str) -> bool {
        self.at(name).and_then(Value::as_bool).unwrap_or_default()
    }

    /// Whether a field of several choices holds this one.
    #[must_use]
    pub fn holds(&self, name: &str, code: &str) -> bool {
        let chosen = self.at(name).and_then(Value::as_array);
        chosen.is_some_and(|chosen| chosen.iter().any(|one| one.as_str() == Some(code)))
    }

    /// How many things a list holds.
    #[must_use]
    pub fn len(&self, name: &str) -> usize {
        self.at(name).and_then(Value::as_array).map(Vec::len).unwrap_or_default()
    }

    /// Whether there is such a field, list or thing.
    #[must_use]
    pub fn has(&self, name: &str) -> bool {
        self.at(name).is_some()
    }

    fn at(&self, name: &str) -> Option<&Value> {
        self.0.pointer(&pointer(name))
    }
}

pub(super) fn pointer(name: &str) -> String {
    if name.is_empty() { String::new() } else { format!("/{}", name.replace('.', "/")) }
}

impl Draft {
    /// Its fields by name.
    #[must_use]
    pub fn tree(&self) -> Tree {
        // The types of a draft always can be written.
        Tree(serde_json::to_value(self).unwrap_or_default())
    }

    /// Takes in what a form sent: of a tick `yes`, of several choices each, of anything else the last. A name
    /// sent with nothing empties its field.
    pub fn put<'a>(&mut self, sent: impl IntoIterator<Item = (&'a str, &'a str)>) {
        let mut tree = self.tree().0;
        let mut emptied = Vec::new();
        for (name, text) in sent {
            // Which sign it is stands fast; whether it was seen is asked.
            let sign = name.starts_with("signs_seen.") && !name.ends_with(".seen");
            let first = name.split('.').next().unwrap_or_default();
            let last = name.rsplit('.').next().unwrap_or_default();
            if sign || NOT_TYPED.contains(&first) || NOT_TYPED.contains(&last) {
                continue;
            }
            match tree.pointer_mut(&pointer(name)) {
                Some(Value::String(own)) => *own = text.chars().take(LONGEST).collect(),
                Some(Value::Bool(own)) => *own = text == "yes",
                Some(Value::Array(own)) if name == "ratings_asked" => {
                    if !emptied.contains(&name) {
                        own.clear();
                        emptied.push(name);
                    }
                    if RatingKind::named(text).is_some() && !own.contains(&text.into()) {
                        own.push(text.into());
                    }
                }
                _ => {}
            }
        }
        // Texts and ticks took the place of texts and ticks; a choice that is none reads as nothing.
        if let Ok(draft) = serde_json::from_value(tree) {
            *self = draft;
        }
    }
}
