//! `frond read`: a summary that somebody handed over, read by a clinician.

use std::fs::File;

use frond_core::screens::{InsightScreen, ReadingScreen};
use frond_core::sealing::{Identity, OpenWith, is_age};
use frond_core::summary::{SummaryError, open_summary, read_bounded};
use frond_core::words::Words;
use zeroize::Zeroizing;

use crate::args::ReadArgs;
use crate::failure::{Failure, LANGUAGE};
use crate::{ask, file, print, secret};

/// The longest key file, in bytes.
const IDENTITY_MOST: u64 = 64 * 1024;

/// Opens, checks, reads.
pub(crate) fn read(args: &ReadArgs) -> Result<(), Failure> {
    let file = File::open(&args.file).map_err(|_| refused(SummaryError::Unreadable))?;
    let bytes = read_bounded(file).map_err(refused)?;
    let with = with(args, is_age(&bytes))?;
    let mut received = open_summary(&bytes, with.as_ref()).map_err(refused)?;
    if let Some(pin) = &args.pin {
        received = received.pinned(pin).map_err(refused)?;
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

/// What a sealed summary is opened with; asked on the terminal where nothing was given.
fn with(args: &ReadArgs, sealed: bool) -> Result<Option<OpenWith>, Failure> {
    if let Some(path) = &args.passphrase_file {
        return Ok(Some(OpenWith::Passphrase(secret::passphrase_from_file(path)?)));
    }
    let Some(path) = &args.identity_file else {
        if sealed && ask::somebody_there() {
            return Ok(Some(OpenWith::Passphrase(secret::asked_passphrase("Passphrase: ")?)));
        }
        return Ok(None);
    };
    let text = Zeroizing::new(file::read(path, IDENTITY_MOST)?);
    let identity = std::str::from_utf8(&text).ok().and_then(|text| Identity::parse(text).ok());
    let identity = identity.ok_or_else(|| {
        Failure::input(format!(
            "{} is no key file. Give the file that holds one line AGE-SECRET-KEY-1...",
            path.display()
        ))
    })?;
    Ok(Some(OpenWith::Identities(vec![identity])))
}

fn refused(error: SummaryError) -> Failure {
    Failure::input(error.to_string())
}
