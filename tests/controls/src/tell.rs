//! Decides how it is told what became of the removals.

use crate::Line;

/// One removal, for whoever watches.
pub fn line(line: &Line<'_>) -> String {
    let Line { removal, failed } = line;
    match failed {
        Some(test) => format!("H{} {}: {test}", removal.hazard, removal.control),
        None => format!("H{} {}: UNNOTICED", removal.hazard, removal.control),
    }
}

/// All of them as a table, in the order of the log.
pub fn table(lines: &[Line<'_>]) -> String {
    let mut said = "| hazard | control removed | test that failed |\n|---|---|---|\n".to_owned();
    for Line { removal, failed } in lines {
        let test = failed.map_or("**none**".to_owned(), |test| format!("`{test}`"));
        said.push_str(&format!("| H{} | {} | {test} |\n", removal.hazard, removal.control));
    }
    said
}
