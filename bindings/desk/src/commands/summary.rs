//! `frond summary`: what would leave is shown first; then it is sealed, or left open by explicit choice, and
//! written under a name that says nothing.

use std::path::PathBuf;

use frond_core::screens::{Opens, SummaryScreen};
use frond_core::sealing::SealTo;
use frond_core::summary::{FileKind, Selection, TimeAlone, fhir, file_name, table, to_clinician};

use crate::args::SummaryArgs;
use crate::failure::Failure;
use crate::print::{self, Page};
use crate::{ask, file, secret};

/// Shows what is in it, and writes it.
pub(crate) fn summary(args: &SummaryArgs) -> Result<(), Failure> {
    if let (Some(from), Some(to)) = (args.from, args.to)
        && to < from
    {
        return Err(Failure::input("The last day lies before the first. Check the two days."));
    }
    let place = args.diary.open()?;
    let companion = place.companion();
    let selection = Selection {
        from: args.from,
        to: args.to,
        notes: !args.no_notes,
        questions: !args.no_questions,
    };
    let summary = companion.summary(&selection, place.now())?;
    let programme = companion.state().rule().programme();
    let opens = if args.to_clinician {
        let names = programme.map(|plan| plan.recipients.iter().map(|one| one.name.to_string()));
        Opens::Recipients(names.into_iter().flatten().collect())
    } else if args.open {
        Opens::Anyone
    } else {
        Opens::Passphrase
    };
    let day = place.now().day();
    let named = |kind| args.out.join(file_name(kind, day));
    if !args.look {
        // Refused before anything is asked.
        let kinds: &[FileKind] = match (args.open, args.fhir) {
            (true, true) => &[FileKind::Open, FileKind::Table, FileKind::Bundle],
            (true, false) => &[FileKind::Open, FileKind::Table],
            (false, _) => &[FileKind::Sealed],
        };
        if let Some(there) = kinds.iter().map(|kind| named(*kind)).find(|path| path.exists()) {
            return Err(file::is_there(&there));
        }
        if args.to_clinician {
            seal_to(args, programme)?;
        }
    }
    let screen = SummaryScreen::new(&summary, &opens, args.time_alone, companion.words());
    let mut page = Page::new();
    print::summary(&mut page, &screen);
    page.show();
    if args.look {
        return Ok(());
    }
    ask::sure(args.yes, &screen.title, "Nothing was written.")?;
    let identity = companion.identity();
    let failed = |error: &dyn std::fmt::Display| Failure::input(format!("{error}"));
    let files: Vec<(PathBuf, Vec<u8>)> = if args.open {
        let rows = table::csv(&summary).map_err(|error| failed(&error))?;
        let mut files = vec![
            (named(FileKind::Open), summary.open_form(&identity).map_err(|e| failed(&e))?),
            (named(FileKind::Table), rows.into_bytes()),
        ];
        if args.fhir {
            let bundle = fhir::bundle(&summary, fhir::Texts::Carried).map_err(|e| failed(&e))?;
            files.push((named(FileKind::Bundle), file::json(&bundle)?));
        }
        files
    } else {
        let to = seal_to(args, programme)?;
        let alone = if args.time_alone { TimeAlone::Please } else { TimeAlone::NotAsked };
        let sealed = summary.sealed_form(&identity, &to, alone).map_err(|e| failed(&e))?;
        vec![(named(FileKind::Sealed), sealed)]
    };
    let mut page = Page::new();
    for (path, bytes) in &files {
        file::write_new(path, bytes)?;
        page.gap().line_as_it_is(&path.display().to_string());
    }
    page.show();
    Ok(())
}

fn seal_to(
    args: &SummaryArgs,
    programme: Option<&frond_core::programme::plan::Programme>,
) -> Result<SealTo, Failure> {
    if let Some(path) = &args.to_passphrase_file {
        return Ok(SealTo::Passphrase(secret::passphrase_from_file(path)?));
    }
    if args.to_passphrase {
        Page::new().paragraph("A passphrase for this file, to be told apart from it.").show();
        return Ok(SealTo::Passphrase(secret::asked_twice()?));
    }
    let nobody = || {
        Failure::input(
            "Your plan names nobody a summary is sealed to. Choose --to-passphrase, and tell it apart \
             from the file.",
        )
    };
    to_clinician(programme.ok_or_else(nobody)?).map_err(|error| match error {
        frond_core::summary::ExportError::Recipient(_) => Failure::input(error.to_string()),
        _ => nobody(),
    })
}
