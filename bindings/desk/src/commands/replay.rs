//! `frond replay`: the rule beside a diary, entry by entry, and another rule beside it.

use std::path::Path;

use frond_core::programme::read::MOST_BYTES;
use frond_core::programme::rule::Rule;
use frond_core::programme::strict;

use super::lines;
use crate::args::ReplayArgs;
use crate::failure::Failure;
use crate::{file, print};

/// Replays.
pub(crate) fn replay(args: &ReplayArgs) -> Result<(), Failure> {
    let tried = args.rule.as_deref().map(rule).transpose()?;
    let reading = lines::read(&args.entries, args.programme.as_deref(), args.now.as_ref())?;
    let screen = reading.replay(tried.as_ref())?;
    print::show(args.json, &screen, print::replay)
}

/// A rule on its own, or that of a programme.
fn rule(file: &Path) -> Result<Rule, Failure> {
    let name = file.display();
    let bytes = file::read(file, MOST_BYTES as u64)?;
    let tree = strict::tree(&bytes, MOST_BYTES)
        .map_err(|error| Failure::input(format!("{name}: {error}")))?;
    if tree.get("frond_programme").is_some() {
        let (plan, _) = lines::programme(file)?;
        return plan.rule.ok_or_else(|| {
            Failure::input(format!("{name} has no rule for all its steps. Name a rule of its own."))
        });
    }
    strict::typed(&tree).map_err(|error| Failure::input(format!("{name}: {error}")))
}
