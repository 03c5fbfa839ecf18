//! Every word that a phone needs to lay the records out and that no record carries.

use serde::Serialize;

/// The words of a phone's own controls, in the person's language.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct FormWords {
    /// The name, as it stands under the icon.
    pub name: String,
}
