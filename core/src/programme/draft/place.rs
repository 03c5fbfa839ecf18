//! Where in a draft something is: the name of a field such as `steps.2.parts.0.size_mm`, of a list or of a
//! thing in it. A page knows its fields by the same names. Decides how a line of the programme's form is
//! named in a draft.

use std::fmt;

/// A field, a list, or a thing in one.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Place(String);

impl Place {
    /// The place with this name.
    pub fn new(name: impl Into<String>) -> Self {
        Self(name.into())
    }

    /// The draft as a whole.
    #[must_use]
    pub fn whole() -> Self {
        Self(String::new())
    }

    /// Its name.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// A place inside this one.
    #[must_use]
    pub fn at(&self, inner: impl fmt::Display) -> Self {
        if self.0.is_empty() {
            Self(inner.to_string())
        } else {
            Self(format!("{}.{inner}", self.0))
        }
    }

    /// Where a line of the programme's form, such as `steps[2].parts[0].minutes`, stands in a draft.
    pub(super) fn of_line(line: &str) -> Self {
        let mut name = line.replace('[', ".").replace(']', "");
        for (of_line, of_draft) in [
            (".step_up.all_of", ".step_up"),
            (".when", ""),
            (".trainer.widest_diameter_tenths_mm", ".size_mm"),
            (".trainer", ".size_mm"),
            (".minutes", ".minutes_least"),
            (".schedule", ".schedule.weekly_least"),
            (".target.step", ".target"),
            (".breath", ".breath.in_seconds"),
        ] {
            name = name.replace(of_line, of_draft);
        }
        if name.starts_with("ratings_asked.") {
            "ratings_asked".clone_into(&mut name);
        }
        if let Some(step) = name.strip_suffix(".id") {
            name = format!("{step}.name");
        }
        Self(name)
    }

    /// Its parts, outermost first.
    pub fn parts(&self) -> impl Iterator<Item = &str> {
        self.0.split('.')
    }

    /// Whether it is this one or inside it.
    #[must_use]
    pub fn is_in(&self, outer: &str) -> bool {
        self.0.strip_prefix(outer).is_some_and(|rest| rest.is_empty() || rest.starts_with('.'))
    }
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl fmt::Debug for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
