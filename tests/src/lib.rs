//! What several tests of Frond share: a second, naive reading of the rule ([`model`]), invented diaries to
//! put before both readings ([`lives`]), an invented cabinet ([`invented`]), a person at home with one diary
//! ([`home`]), a plain model of how a diary is kept ([`keeping_model`]), and every reader of bytes from outside,
//! to be tried with any ([`outside`]).

pub mod home;
pub mod invented;
pub mod keeping_model;
pub mod lives;
pub mod model;
pub mod outside;

/// The stored names of the criteria of a part of a rule, as the published schema of a programme has them (which a
/// test of the core holds to be that of the types). `of`: `UpCriterion`, `BackCriterion` or `PauseCriterion`.
///
/// # Panics
/// Where the schema has another form.
#[must_use]
pub fn criteria(of: &str) -> std::collections::BTreeSet<String> {
    let schema = include_str!("../../fixtures/schema/programme.schema.json");
    let schema: serde_json::Value = serde_json::from_str(schema).unwrap();
    let kinds = schema["$defs"][of]["oneOf"].as_array().unwrap().iter();
    kinds
        .map(|kind| kind["properties"]["criterion"]["const"].as_str().unwrap().to_owned())
        .collect()
}
