//! `frond gather`: a folder of summaries becomes lines for a database. Decides which summaries count (of each
//! diary the newest that opens), in which order they are written (by the diary's id), and what is said of those
//! that were refused. Leaves the columns to the core and the questions to `clinic.sql`.
//!
//! Summaries are opened one after the other and written at once, so that memory holds one at a time.
//! See GATHER.md beside the crate for the form.

mod find;
#[cfg(test)]
mod tests;
mod write;

use std::io::{IsTerminal, Write};
use std::path::PathBuf;

use frond_core::sealing::OpenWith;
use frond_core::summary::fhir::{self, Texts};
use frond_core::summary::flat::{Flat, With};
use frond_core::summary::{Received, SummaryError};

use crate::args::GatherArgs;
use crate::clinic::folder::Folder;
use crate::clinic::keys::{self, KeysError};
use crate::failure::Failure;
use crate::print::Page;
use crate::{ask, opening, secret};
use find::{Candidate, Found};
use write::Lines;

/// The questions of a clinic, for DuckDB and Apache Spark.
pub(crate) const SQL: &str = include_str!("clinic.sql");

/// What came of it.
#[derive(Debug, Default)]
pub(crate) struct Gathered {
    /// Diaries written.
    pub(crate) diaries: usize,
    /// Sessions written.
    pub(crate) sessions: usize,
    /// Older summaries of diaries that are there already.
    pub(crate) older: usize,
    /// Files that were refused, with the reason.
    pub(crate) refused: Vec<(String, String)>,
}

/// Gathers, and says what came of it.
pub(crate) fn gather(args: &GatherArgs) -> Result<(), Failure> {
    let gathered = gathered(args)?;
    say(&gathered, args);
    if gathered.diaries == 0 {
        return Err(Failure::input(
            "Nothing was gathered: no summary in this folder could be opened.",
        ));
    }
    Ok(())
}

fn gathered(args: &GatherArgs) -> Result<Gathered, Failure> {
    let Opened { folder, opens, _held } = opened(args)?;
    let mut gathered = Gathered::default();
    let found = find::all(&folder, opens.as_ref(), &mut gathered.refused)?;
    let mut lines = Lines::to(&args.out, args.fhir)?;
    let texts = if args.with_texts { Texts::Carried } else { Texts::LeftOut };
    let with = With { texts, nickname: args.with_nicknames };
    let many = found.len();
    for (number, diary) in found.into_iter().enumerate() {
        progress(number, many);
        if !args.desk && !diary.has_one_key() {
            let files = diary.candidates.into_iter();
            gathered.refused.extend(files.map(|one| (one.name, find::TWO_KEYS.to_owned())));
            continue;
        }
        let Some((used, received)) = newest(&diary, opens.as_ref(), &mut gathered.refused) else {
            continue;
        };
        gathered.older += diary.candidates.len() - 1 - used;
        let summary = &received.summary;
        let flat = Flat::of(summary, with).map_err(|_| opening::refused(SummaryError::Form))?;
        gathered.diaries += 1;
        gathered.sessions += flat.sessions.len();
        lines.flat(&flat)?;
        if args.fhir {
            let bundle = fhir::bundle(summary, texts);
            lines.bundle(&bundle.map_err(|_| opening::refused(SummaryError::Form))?)?;
        }
    }
    lines.end()?;
    Ok(gathered)
}

/// Where the summaries lie, and what opens them.
struct Opened {
    folder: PathBuf,
    opens: Option<OpenWith>,
    /// A desk's folder is held as long as it is read, so that no desk writes in it.
    _held: Option<Folder>,
}

/// The folder of summaries; of a desk, the room they lie in and the clinic's keys.
fn opened(args: &GatherArgs) -> Result<Opened, Failure> {
    if !args.desk {
        let opens = opening::given(&args.open)?;
        return Ok(Opened { folder: args.folder.clone(), opens, _held: None });
    }
    if !args.folder.join("keys").is_file() {
        return Err(Failure::input(format!(
            "{} is no folder of a desk. Give the one that frond desk keeps, or leave out --desk.",
            args.folder.display()
        )));
    }
    let passphrase = match &args.open.passphrase_file {
        Some(path) => secret::passphrase_from_file(path)?,
        None if ask::somebody_there() => secret::asked_passphrase("Passphrase of the desk: ")?,
        None => return Err(Failure::input("Give the desk's passphrase with --passphrase-file.")),
    };
    let held = Folder::take(&args.folder)?;
    let keys = keys::open(&held, passphrase).map_err(|error| {
        Failure::input(match error {
            KeysError::Passphrase => "The passphrase is another one.",
            _ => "The keys of this desk cannot be opened. Open the desk to see why.",
        })
    })?;
    let opens = Some(keys.open_with());
    Ok(Opened { folder: args.folder.join("summaries"), opens, _held: Some(held) })
}

/// The newest summary of a diary that opens, and how many newer ones did not.
fn newest(
    diary: &Found,
    opens: Option<&OpenWith>,
    refused: &mut Vec<(String, String)>,
) -> Option<(usize, Received)> {
    for (number, Candidate { path, name, .. }) in diary.candidates.iter().enumerate() {
        match find::opened(path, opens) {
            Ok(received) => return Some((number, received)),
            Err(error) => refused.push((name.clone(), error.to_string())),
        }
    }
    None
}

/// Says how far it is, where somebody looks.
fn progress(number: usize, many: usize) {
    let mut err = std::io::stderr();
    if number.is_multiple_of(200) && many > 200 && err.is_terminal() {
        // Nothing hangs on whether it can be said.
        let _ = write!(err, "\r{number} / {many}");
    }
}

fn say(gathered: &Gathered, args: &GatherArgs) {
    let mut page = Page::new();
    page.paragraph(&format!(
        "{} diaries with {} sessions. {} older summaries of the same diaries were left aside.",
        gathered.diaries, gathered.sessions, gathered.older
    ));
    if !gathered.refused.is_empty() {
        page.gap().paragraph(&format!("Refused: {}.", gathered.refused.len()));
        for (name, why) in &gathered.refused {
            page.point(&format!("{name}: {why}"));
        }
    }
    page.gap().line_as_it_is(&args.out.display().to_string()).show();
}
