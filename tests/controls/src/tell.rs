//! Decides how it is told what became of the removals.

use crate::Line;
use crate::removals::Removal;
use crate::shells;

/// What was taken away, and where it is not in Rust.
fn control(removal: &Removal) -> String {
    match shells::of(removal) {
        Some(shell) => format!("{} ({})", removal.control, shell.name),
        None => removal.control.to_owned(),
    }
}

/// One removal, for whoever watches.
pub fn line(line: &Line<'_>) -> String {
    let Line { removal, failed } = line;
    let what = format!("H{} {}", removal.hazard, control(removal));
    format!("{what}: {}", failed.unwrap_or("UNNOTICED"))
}

/// All of them as a table, in the order of the log.
pub fn table(lines: &[Line<'_>]) -> String {
    let mut said = "| hazard | control removed | test that failed |\n|---|---|---|\n".to_owned();
    for Line { removal, failed } in lines {
        let test = failed.map_or("**none**".to_owned(), |test| format!("`{test}`"));
        said.push_str(&format!("| H{} | {} | {test} |\n", removal.hazard, control(removal)));
    }
    said
}
