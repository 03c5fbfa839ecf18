//! stub
use super::*;
use crate::diary::entry::Entry;
use crate::programme::plan::{Programme, Step};
use crate::programme::rule::Rule;
use serde::{Deserialize, Serialize};
/// x
#[derive(Debug, Serialize, Deserialize)]
pub struct Fold {}
/// x
#[derive(Debug)]
pub struct FoldError;
#[allow(missing_docs)]
impl Fold {
    pub fn new(_t: Option<Rule>) -> Fold {
        Fold {}
    }
    pub fn write(&mut self, _e: &Entry) -> Result<(), FoldError> {
        Ok(())
    }
    pub fn trim(&mut self) {}
    pub fn programme(&self) -> Option<&Programme> {
        None
    }
    pub fn current_step(&self) -> Option<&Step> {
        None
    }
    pub fn stays_here(&self) -> bool {
        false
    }
    pub fn clock_unconfirmed(&self) -> bool {
        false
    }
    pub fn assess(&self, _n: &crate::moment::Stamp) -> Assessment {
        Assessment {
            outcome: Outcome::Hold { tell_clinician: false },
            basis: Basis::NoProgramme,
            findings: vec![],
            bars: vec![],
            open_signs: vec![],
            pause: None,
            clock: None,
        }
    }
}
