//! What the files are called. Nothing in a name tells of health, of a person or of this program.

use chrono::NaiveDate;

/// Which file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileKind {
    /// The open summary.
    Open,
    /// The table beside it.
    Table,
    /// The sealed summary.
    Sealed,
    /// The FHIR bundle beside the open one.
    Bundle,
}

impl FileKind {
    /// Every kind.
    pub const ALL: [Self; 4] = [Self::Open, Self::Table, Self::Sealed, Self::Bundle];
}

/// The name of a file made on a day: `record-2026-11-25.json`, `.csv`, `.age` or `.list.json`.
#[must_use]
pub fn file_name(kind: FileKind, made: NaiveDate) -> String {
    let ending = match kind {
        FileKind::Open => "json",
        FileKind::Table => "csv",
        FileKind::Sealed => "age",
        FileKind::Bundle => "list.json",
    };
    format!("record-{}.{ending}", made.format("%Y-%m-%d"))
}
