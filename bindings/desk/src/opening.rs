//! Opening a summary that lies in a file: what it is sealed to is given, or asked for on the terminal.

use std::fs::File;
use std::path::Path;

use frond_core::sealing::{Identity, OpenWith, is_age};
use frond_core::summary::{Received, SummaryError, open_summary, read_bounded};

use crate::args::OpenArgs;
use crate::failure::Failure;
use crate::{ask, file, secret};

/// The longest key file, in bytes.
const IDENTITY_MOST: u64 = 64 * 1024;

/// Reads and opens one; asks on the terminal where it is sealed and nothing was given.
///
/// # Errors
/// It cannot be read, opened or believed.
pub(crate) fn summary(path: &Path, args: &OpenArgs) -> Result<Received, Failure> {
    let file = File::open(path).map_err(|_| refused(SummaryError::Unreadable))?;
    let bytes = read_bounded(file).map_err(refused)?;
    let mut with = given(args)?;
    if with.is_none() && is_age(&bytes) && ask::somebody_there() {
        with = Some(OpenWith::Passphrase(secret::asked_passphrase("Passphrase: ")?));
    }
    open_summary(&bytes, with.as_ref()).map_err(refused)
}

/// What was given to open with.
///
/// # Errors
/// The file of it cannot be read or holds none.
pub(crate) fn given(args: &OpenArgs) -> Result<Option<OpenWith>, Failure> {
    if let Some(path) = &args.passphrase_file {
        return Ok(Some(OpenWith::Passphrase(secret::passphrase_from_file(path)?)));
    }
    let Some(path) = &args.identity_file else { return Ok(None) };
    let text = file::read_secret(path, IDENTITY_MOST)?;
    let identity = std::str::from_utf8(&text).ok().and_then(|text| Identity::parse(text).ok());
    let identity = identity.ok_or_else(|| {
        Failure::input(format!(
            "{} is no key file. Give the file that holds one line AGE-SECRET-KEY-1...",
            path.display()
        ))
    })?;
    Ok(Some(OpenWith::Identities(vec![identity])))
}

/// The refusal of a summary, as a failure of what was given.
pub(crate) fn refused(error: SummaryError) -> Failure {
    Failure::input(error.to_string())
}
