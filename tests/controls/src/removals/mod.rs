//! What is removed, hazard by hazard: the list that a new control gets a line in.

mod people;
mod practice;
mod rule;
mod signs;
mod summaries;
mod whole;

/// One control, taken away.
#[derive(Clone, Copy, Debug)]
pub struct Removal {
    /// Number of the hazard in the log.
    pub hazard: u32,
    /// What is taken away, in words.
    pub control: &'static str,
    /// Where it stands.
    pub file: &'static str,
    /// The text that is taken away, an expression or whole statements; it stands there once.
    pub from: &'static str,
    /// What stands there instead, of the same type. Where `REMOVED` stands in it, it is the whole text with and without
    /// the control, and `REMOVED` says which.
    pub to: &'static str,
    /// The tests that are said to prove the control: one of them has to fail.
    pub tests: &'static [&'static str],
}

/// Every removal, in the order of the log.
pub fn all() -> Vec<Removal> {
    let mut all: Vec<Removal> =
        [rule::ALL, practice::ALL, people::ALL, signs::ALL, whole::ALL, summaries::ALL].concat();
    all.sort_by_key(|one| one.hazard);
    all
}
