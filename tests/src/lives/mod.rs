//! Invented diaries by chance, to put before two readings of the rule. A life is its programme, its
//! entries and a moment to ask at; the same seed gives the same life. All of it is invented.
//!
//! [`Life::of_seed`] is fast and covers many; [`lives`] is the same pen as a proptest strategy, which
//! shrinks by leaving entries out.

pub mod dice;
pub mod pen;
pub mod plans;

use std::fmt;

use frond_core::diary::entry::Entry;
use frond_core::moment::Stamp;
use frond_core::programme::rule::Rule;
use proptest::prelude::*;

use dice::Dice;
use pen::{Pen, Temper, somewhere, span};

/// An invented diary and a moment to ask at.
#[derive(Clone, Debug)]
pub struct Life {
    /// The entries by place.
    pub entries: Vec<Entry>,
    /// The moment.
    pub now: Stamp,
    /// A rule to try on it.
    pub tried: Option<Rule>,
}

impl Life {
    /// The life of a seed.
    #[must_use]
    pub fn of_seed(seed: u64) -> Self {
        let mut dice = Dice::new(seed);
        let length = match dice.below(10) {
            0 => dice.below(4),
            1..=5 => dice.between(4, 14),
            6..=8 => dice.between(10, 26),
            _ => dice.between(26, 44),
        };
        let seeds: Vec<u64> = (0..length).map(|_| dice.bits()).collect();
        Self::written(dice.bits(), &seeds)
    }

    /// A life with one entry for each seed.
    #[must_use]
    pub fn written(temper: u64, seeds: &[u64]) -> Self {
        let mut dice = Dice::new(temper);
        let mut pen = Pen::new(Temper::any(&mut dice));
        for seed in seeds {
            pen.write(&mut Dice::new(*seed));
        }
        let now = moment(&mut dice, &pen.entries);
        let gentle = dice.percent(50);
        let tried = dice.percent(30).then(|| plans::rule(&mut dice, gentle));
        Self { entries: pen.entries, now, tried }
    }

    /// The smallest life, by leaving entries out, of which something still holds.
    #[must_use]
    pub fn shrunk(&self, still: impl Fn(&Self) -> bool) -> Self {
        let mut least = self.clone();
        let mut at = 0;
        while at < least.entries.len() {
            let mut less = least.clone();
            less.entries.remove(at);
            if still(&less) {
                least = less;
                at = 0;
            } else {
                at += 1;
            }
        }
        least
    }
}

impl fmt::Display for Life {
    /// The entries as JSON lines and the moment, to be read by a person and pasted into a test.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for entry in &self.entries {
            writeln!(f, "{}", serde_json::to_string(entry).unwrap_or_default())?;
        }
        if let Some(tried) = &self.tried {
            writeln!(f, "tried {}", serde_json::to_string(tried).unwrap_or_default())?;
        }
        write!(f, "now {}", self.now)
    }
}

/// A moment to ask at: mostly soon after the last entry; at it, before it, or long after.
fn moment(dice: &mut Dice, entries: &[Entry]) -> Stamp {
    let Some(last) = entries.last() else { return somewhere(dice, 1_768_035_600_000) };
    let written = last.written.millis();
    match dice.below(10) {
        0 | 1 => last.written,
        2 => {
            let before = span(dice);
            somewhere(dice, written - before)
        }
        3 => somewhere(dice, last.happened.millis() - 600_000),
        _ => {
            let after = span(dice);
            somewhere(dice, written + after)
        }
    }
}

/// Lives as a strategy: a temper and a seed for each entry, so that shrinking leaves entries out.
pub fn lives() -> impl Strategy<Value = Life> {
    (any::<u64>(), proptest::collection::vec(any::<u64>(), 0..40))
        .prop_map(|(temper, seeds)| Life::written(temper, &seeds))
}

/// The stored names of the criteria of a part of a rule, as the published schema of a programme has them (which a
/// test of the core holds to be that of the types). `of`: `UpCriterion`, `BackCriterion` or `PauseCriterion`.
///
/// # Panics
/// Where the schema has another form.
#[must_use]
pub fn criteria(of: &str) -> std::collections::BTreeSet<String> {
    let schema = include_str!("../../../fixtures/schema/programme.schema.json");
    let schema: serde_json::Value = serde_json::from_str(schema).unwrap();
    let kinds = schema["$defs"][of]["oneOf"].as_array().unwrap().iter();
    let name = |kind: &serde_json::Value| {
        kind["properties"]["criterion"]["const"].as_str().map(str::to_owned)
    };
    kinds.map(|kind| name(kind).unwrap()).collect()
}
