//! The clinician's inputs: a diary as JSON lines, and the programme where the lines carry none.

use std::path::Path;

use frond_core::companion::Reading;
use frond_core::diary::entry::{Content, Entry, EntryId};
use frond_core::diary::lines;
use frond_core::moment::Stamp;
use frond_core::programme::check::load;
use frond_core::programme::plan::Programme;
use frond_core::programme::read::MOST_BYTES;

use crate::failure::{Failure, LANGUAGE};
use crate::file;

/// The longest file of entries: more than ten years of three sessions a day.
const MOST: u64 = 64 * 1024 * 1024;

/// Reads the entries written up to `until`, and the programme where they accept none.
pub(super) fn read(
    entries: &Path,
    programme: Option<&Path>,
    until: Option<&Stamp>,
) -> Result<Reading, Failure> {
    let mut lines = lines::read(&file::read(entries, MOST)?)
        .map_err(|error| Failure::input(format!("{}: {error}", entries.display())))?;
    if let Some(until) = until {
        lines.retain(|entry| entry.written.millis() <= until.millis());
    }
    if let Some(file) = programme {
        with_programme(&mut lines, file)?;
    }
    Ok(Reading::new(lines, LANGUAGE)?)
}

/// Puts the acceptance of a programme before everything else, at the time it was issued; where the lines
/// accept a programme themselves, it has to be the very one.
fn with_programme(lines: &mut Vec<Entry>, file: &Path) -> Result<(), Failure> {
    let (plan, text) = programme(file)?;
    let accepted = lines.iter().rev().find_map(|entry| match &entry.what {
        Content::ProgrammeAccepted { carried, .. } => load(carried.as_bytes()).ok(),
        _ => None,
    });
    match accepted {
        None => {
            let acceptance = Entry {
                // No line has this id: a line's own number counts from 1.
                id: EntryId([0; 16]),
                written: plan.issued_at,
                happened: plan.issued_at,
                uptime: None,
                what: Content::ProgrammeAccepted {
                    programme: plan.id,
                    revision: plan.revision,
                    carried: text.into(),
                    signed: None,
                    although: vec![],
                },
            };
            lines.insert(0, acceptance);
            Ok(())
        }
        Some((accepted, _)) if accepted == plan => Ok(()),
        Some(_) => Err(Failure::input(format!(
            "These entries accept a programme of their own, and {} is another one. Leave \
             --programme out; to try another rule on this diary use `frond replay --rule`.",
            file.display()
        ))),
    }
}

/// A programme that can be used, with its text.
pub(super) fn programme(file: &Path) -> Result<(Programme, String), Failure> {
    let bytes = file::read(file, MOST_BYTES as u64)?;
    let name = file.display();
    let (plan, _) = load(&bytes).map_err(|error| Failure::input(format!("{name}: {}", error)))?;
    let text = String::from_utf8(bytes)
        .map_err(|_| Failure::input(format!("{name} is not UTF-8 text. Save it as UTF-8.")))?;
    Ok((plan, text))
}
