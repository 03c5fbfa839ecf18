//! Decides how a removal is put into a file: beside what it takes away, behind a switch that is read when it runs.

use std::collections::BTreeMap;
use std::fs;
use std::ops::Range;
use std::path::{Path, PathBuf};

use frond_mutants::{Failure, project};

use crate::removals::Removal;
use crate::shells;

/// Stands in the text of a removal for "this removal acts", where the usual form does not fit.
pub const REMOVED: &str = "REMOVED";

/// The file that gets the switch.
const SWITCH: &str = "core/src/lib.rs";

/// Where the text that is removed stands.
///
/// # Errors
/// Where it is not there exactly once.
pub fn place(text: &str, removal: &Removal) -> Result<Range<usize>, Failure> {
    let mut found = text.match_indices(removal.from);
    let (Some((at, _)), None) = (found.next(), found.next()) else {
        let times = text.matches(removal.from).count();
        return Err(format!(
            "H{}, {}: what is removed stands {times} times in {}, not once: {}",
            removal.hazard, removal.control, removal.file, removal.from
        )
        .into());
    };
    Ok(at..at + removal.from.len())
}

/// What asks in a file whether the removal of this number acts.
fn switch(removal: &Removal) -> String {
    let number = removal.number();
    match shells::of(removal) {
        Some(shell) => format!("{}({number})", shell.asks),
        None if removal.file.starts_with("core/") => format!("crate::mutant({number})"),
        None => format!("frond_core::mutant({number})"),
    }
}

/// What stands in the copy instead. An expression stays one; a statement, which ends with a semicolon or a brace, too.
/// Several removals of one and the same text stand behind one another.
fn instead(removals: &[&Removal]) -> String {
    let mut said = String::new();
    for removal in removals.iter().rev() {
        let switch = switch(removal);
        let (from, to) = (if said.is_empty() { removal.from } else { &said }, removal.to);
        said = if to.contains(REMOVED) {
            to.replace(REMOVED, &switch)
        } else if removal.from.trim_end().ends_with([';', '}']) {
            format!("if {switch} {{ {to} }} else {{ {from} }}")
        } else {
            format!("(if {switch} {{ {to} }} else {{ {from} }})")
        };
    }
    said
}

/// The files that are changed, as they stand in the copy.
///
/// # Errors
/// Where a removal does not fit the code of today, or two of them fit the same place.
pub fn woven(from: &Path, all: &[Removal]) -> Result<BTreeMap<PathBuf, String>, Failure> {
    let mut by_file: BTreeMap<&str, Vec<&Removal>> = BTreeMap::new();
    for removal in all {
        by_file.entry(removal.file).or_default().push(removal);
    }
    by_file.entry(SWITCH).or_default();
    let mut files = BTreeMap::new();
    for (file, removals) in by_file {
        let text =
            fs::read_to_string(from.join(file)).map_err(|fault| format!("{file}: {fault}"))?;
        let mut placed: BTreeMap<(usize, usize), Vec<&Removal>> = BTreeMap::new();
        for removal in removals {
            let at = place(&text, removal)?;
            // The usual forms are Rust's.
            if shells::of(removal).is_some() && !removal.to.contains(REMOVED) {
                return Err(format!("{file}: {REMOVED} is not said: {}", removal.to).into());
            }
            placed.entry((at.start, at.end)).or_default().push(removal);
        }
        let mut said = String::new();
        let mut done = 0;
        for ((start, end), removals) in placed {
            let instead = instead(&removals);
            // Of two that take the same text away only the first may say how the whole is to read.
            let late = removals.iter().skip(1).any(|one| one.to.contains(REMOVED));
            let Some(before) = text.get(done..start).filter(|_| removals.len() < 2 || !late) else {
                return Err(format!("{file}: two removals do not fit together: {instead}").into());
            };
            said.push_str(before);
            said.push_str(&instead);
            done = end;
        }
        said.push_str(text.get(done..).unwrap_or_default());
        if file == SWITCH {
            said.push_str(project::PLANTED);
        }
        files.insert(PathBuf::from(file), said);
    }
    Ok(files)
}
