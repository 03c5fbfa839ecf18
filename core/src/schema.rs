//! The published JSON Schemas (draft 2020-12) of a programme, plain and signed, a diary entry and a summary, generated from the
//! types themselves so that they cannot drift apart.
//!
//! A schema says the shape; [`crate::programme::read`] and [`crate::programme::check`] refuse more. What only they see is
//! listed in the tests of this module. The committed copies lie in `fixtures/schema`; after a wanted
//! change of a type, `cargo run -p frond-core --example write_schemas` writes them anew.

use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, Schema};
use serde_json::Value;

use crate::diary::entry::Entry;
use crate::programme::plan::Programme;

/// The schema of a programme.
#[must_use]
pub fn programme() -> Value {
    published::<Programme>("A Frond programme, format 1")
}

/// The schema of a programme in its signed file, as a clinic hands it over.
#[must_use]
pub fn signed_programme() -> Value {
    published::<crate::handover::Published>("A signed Frond programme, form 1")
}

/// The schema of one entry of a diary, one line of a file in JSON Lines.
#[must_use]
pub fn entry() -> Value {
    published::<Entry>("An entry of a Frond diary")
}

/// The schema of a summary in its signed envelope, as it leaves the phone unsealed.
#[must_use]
pub fn summary() -> Value {
    published::<crate::summary::envelope::Published>("A Frond summary, version 1")
}

/// The text of a schema file.
#[must_use]
pub fn text(schema: &Value) -> String {
    format!("{schema:#}\n")
}

fn published<T: JsonSchema>(title: &str) -> Value {
    let generator = SchemaSettings::draft2020_12().into_generator();
    let mut schema: Schema = generator.into_root_schema_for::<T>();
    schema.insert("title".to_owned(), title.into());
    schema.to_value()
}

#[cfg(test)]
mod tests;
