//! The sessions as a flat table in CSV: one row for each session as it counts now, in the order they
//! happened. Numbers in the units that [`COLUMNS`] names; what was not told is an empty cell.
//!
//! A cell that a spreadsheet would take for a formula (one that begins with `=`, `+`, `-`, `@` or a tab)
//! gets an apostrophe in front. Whoever reads the file with a program takes it off again.

use super::form::Summary;
use super::looked::Looked;
use super::stored;
use crate::programme::values::RatingKind;
use crate::progression::FoldError;

/// The columns: name, and what stands in it.
pub const COLUMNS: [(&str, &str); 21] = [
    ("entry", "id of the entry, 32 hexadecimal digits"),
    ("happened", "when it began, local time with offset (RFC 3339)"),
    ("written", "when it was written down, local time with offset (RFC 3339)"),
    ("practice", "trainer, breathing, belly_breathing, meditation or other:ID"),
    ("step", "id of the step in use then"),
    ("revision", "revision of the programme then"),
    ("position", "on_back, side_lying, sitting, standing or other"),
    ("main_size_mm", "widest diameter of the trainer used in the main part, millimetres"),
    ("main_minutes", "practised on the main part, pauses left out, minutes"),
    ("all_minutes", "practised on all parts, pauses left out, minutes"),
    ("ended", "finished, stopped or could_not_start"),
    ("reason", "why stopped or not started: discomfort, did_not_go_in, upset, interrupted, other"),
    ("peak_0_10", "highest discomfort, 0 to 10, self-reported"),
    ("before_0_10", "discomfort before, 0 to 10, self-reported"),
    ("after_0_10", "discomfort afterwards, 0 to 10, self-reported"),
    ("worry_0_10", "worry, 0 to 10, self-reported"),
    ("settled", "did it settle, asked the day after: yes, not_yet or rather_not_say"),
    ("noted_signs", "what was noted with it, separated by spaces"),
    ("corrections", "how many corrections count"),
    ("hours_until_written", "whole hours from its beginning to being written down"),
    ("note", "her own note, where it was handed over"),
];

/// Why there is no table.
#[derive(Debug, thiserror::Error)]
pub enum TableError {
    /// A programme in the summary cannot be read.
    #[error(transparent)]
    Fold(#[from] FoldError),
    /// The encoding itself failed.
    #[error("the table could not be written")]
    Encoding,
}

/// The table of a summary.
///
/// # Errors
/// [`TableError`].
pub fn csv(summary: &Summary) -> Result<String, TableError> {
    let looked = Looked::through(summary)?;
    let mut table = csv::Writer::from_writer(Vec::new());
    let failed = |_| TableError::Encoding;
    table.write_record(COLUMNS.iter().map(|(name, _)| name)).map_err(failed)?;
    for sat in &looked.sat {
        let (row, session) = (&sat.row, sat.session);
        let stretch = sat.during.and_then(|index| looked.stretches.get(index));
        let minutes = |seconds: u32| format!("{:.1}", f64::from(seconds) / 60.0);
        let all =
            session.parts.iter().map(|part| part.practised_seconds).fold(0, u32::saturating_add);
        let hours = (row.first.written.millis() - row.happened.millis()).max(0) / 3_600_000;
        let signs: Vec<String> =
            session.signs.iter().map(|noted| stored::name(&noted.sign)).collect();
        let rated =
            |kind| session.ratings.given(kind).map(|one| one.get().to_string()).unwrap_or_default();
        let cells = [
            row.first.id.to_string(),
            row.happened.local().to_rfc3339(),
            row.first.written.local().to_rfc3339(),
            String::from(session.practice.clone()),
            stretch.map(|on| on.step.id.to_string()).unwrap_or_default(),
            stretch.map(|on| on.revision.get().to_string()).unwrap_or_default(),
            stored::position(session.position).to_owned(),
            session
                .main_size()
                .map(|size| format!("{:.1}", size.millimetres()))
                .unwrap_or_default(),
            minutes(session.main_seconds()),
            minutes(all),
            stored::ended(session.ended).0.to_owned(),
            stored::ended(session.ended).1.unwrap_or_default().to_owned(),
            rated(RatingKind::Peak),
            rated(RatingKind::Before),
            rated(RatingKind::After),
            rated(RatingKind::Worry),
            looked
                .settled
                .get(&row.first.id)
                .map_or("", |answer| stored::settled(*answer))
                .to_owned(),
            signs.join(" "),
            row.corrections.to_string(),
            hours.to_string(),
            session.note.as_ref().map(|note| note.as_str().to_owned()).unwrap_or_default(),
        ];
        table.write_record(cells.iter().map(|cell| harmless(cell))).map_err(failed)?;
    }
    let bytes = table.into_inner().map_err(|_| TableError::Encoding)?;
    String::from_utf8(bytes).map_err(|_| TableError::Encoding)
}

/// A cell that no spreadsheet runs.
pub(super) fn harmless(cell: &str) -> String {
    if cell.starts_with(['=', '+', '-', '@', '\t', '\r']) {
        format!("'{cell}")
    } else {
        cell.to_owned()
    }
}
