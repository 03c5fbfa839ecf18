//! `frond read`: a summary that somebody handed over, read by a clinician.

use std::fs::File;

use frond_core::screens::ReadingScreen;
use frond_core::summary::{Received, SummaryError, open_summary, read_bounded};
use frond_core::words::Words;

use crate::args::ReadArgs;
use crate::failure::{Failure, LANGUAGE};
use crate::print;

/// Opens, checks, reads.
pub(crate) fn read(args: &ReadArgs) -> Result<(), Failure> {
    let mut received = opened(args).map_err(refused)?;
    if let Some(pin) = &args.pin {
        received = received.pinned(pin).map_err(refused)?;
    }
    let screen = ReadingScreen::new(&received, &Words::for_language(LANGUAGE), args.notes)
        .map_err(|_| refused(SummaryError::Form))?;
    print::show(args.json, &screen, print::reading)
}

fn opened(args: &ReadArgs) -> Result<Received, SummaryError> {
    let file = File::open(&args.file).map_err(|_| SummaryError::Unreadable)?;
    open_summary(&read_bounded(file)?)
}

fn refused(error: SummaryError) -> Failure {
    Failure::input(error.to_string())
}
