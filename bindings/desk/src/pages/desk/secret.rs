//! Questions for a passphrase, asked alike everywhere: once to open, twice where a new one is chosen.

use frond_core::ports::Passphrase;

use super::visit::Visit;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Kind};

/// A question for a secret; what was typed is never shown again.
pub(super) fn field(name: &str, label: String) -> Field {
    let kind = Kind::Line {
        input: "password",
        value: String::new(),
        mode: "",
        offers: vec![],
        short: false,
    };
    Field::new(name, label, kind)
}

/// A new passphrase, asked twice.
pub(super) fn new_fields(visit: &Visit<'_>) -> Vec<Field> {
    vec![
        field("new", visit.words.text("desk-new-passphrase", &[]))
            .hint(visit.words.text("desk-new-passphrase-hint", &[])),
        field("again", visit.words.text("page-new-passphrase-again", &[])),
    ]
}

/// The new passphrase, or what has to be put right.
///
/// # Errors
/// The problems.
pub(super) fn new_of(visit: &Visit<'_>, fields: &Fields) -> Result<Passphrase, Vec<Problem>> {
    let new = fields.all("new").next().unwrap_or_default();
    let mut problems = Vec::new();
    let passphrase = Passphrase::new(new.to_owned());
    if passphrase.is_err() {
        problems.push(Problem::at("new", visit.words.text("page-error-passphrase", &[])));
    } else if fields.all("again").next() != Some(new) {
        problems.push(Problem::at("again", visit.words.text("page-error-not-the-same", &[])));
    }
    match passphrase {
        Ok(passphrase) if problems.is_empty() => Ok(passphrase),
        _ => Err(problems),
    }
}

/// The passphrase that opens.
///
/// # Errors
/// Nothing was typed.
pub(super) fn typed(visit: &Visit<'_>, fields: &Fields) -> Result<Passphrase, Problem> {
    let typed = fields.all("passphrase").next().unwrap_or_default();
    Passphrase::new(typed.to_owned()).map_err(|_| {
        Problem::at("passphrase", visit.words.text("desk-error-empty-passphrase", &[]))
    })
}
