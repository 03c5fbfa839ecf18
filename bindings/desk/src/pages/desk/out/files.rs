//! The newest summary as files for other programs.

use frond_core::summary::{FileKind, fhir, file_name, table as sessions};

use super::super::visit::{Shown, Visit};
use crate::pages::app::file;
use crate::pages::form::Fields;

/// As a FHIR R4 bundle. The wish for time alone has no place in it.
pub(super) fn bundle(visit: &mut Visit<'_>, named: &str, _: &Fields) -> Shown {
    let received = visit.newest(named)?;
    let made = fhir::bundle(&received.summary, fhir::Texts::Carried).ok();
    let bytes = made.and_then(|bundle| crate::file::json(&bundle).ok());
    let bytes = bytes.ok_or_else(|| visit.not_made())?;
    Ok(file(&name(visit, FileKind::Bundle), "application/fhir+json", bytes))
}

/// Its sessions as a table.
pub(super) fn table(visit: &mut Visit<'_>, named: &str, _: &Fields) -> Shown {
    let received = visit.newest(named)?;
    let rows = sessions::csv(&received.summary).map_err(|_| visit.not_made())?;
    Ok(file(&name(visit, FileKind::Table), "text/csv; charset=utf-8", rows.into_bytes()))
}

fn name(visit: &Visit<'_>, kind: FileKind) -> String {
    file_name(kind, visit.moment.now.day())
}
