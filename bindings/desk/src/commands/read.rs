//! `frond read`: a summary that somebody handed over, read by a clinician.

use frond_core::screens::{InsightScreen, ReadingScreen};
use frond_core::summary::{SummaryError, fhir};
use frond_core::words::Words;

use crate::args::ReadArgs;
use crate::failure::{Failure, LANGUAGE};
use crate::opening::{self, refused};
use crate::{file, print};

/// Opens, checks, reads.
pub(crate) fn read(args: &ReadArgs) -> Result<(), Failure> {
    let mut received = opening::summary(&args.file, &args.open)?;
    if let Some(pin) = &args.pin {
        received = received.pinned(pin).map_err(refused)?;
    }
    if let Some(path) = &args.fhir {
        let bundle = fhir::bundle(&received.summary, fhir::Texts::Carried)
            .map_err(|_| refused(SummaryError::Form))?;
        file::write_new(path, &file::json(&bundle)?)?;
    }
    let words = Words::for_language(LANGUAGE);
    if args.insight {
        let screen = InsightScreen::of(&received.summary, &words)
            .map_err(|_| refused(SummaryError::Form))?;
        return print::show(args.json, &screen, print::insight);
    }
    let screen = ReadingScreen::new(&received, &words, args.notes)
        .map_err(|_| refused(SummaryError::Form))?;
    print::show(args.json, &screen, print::reading)
}
