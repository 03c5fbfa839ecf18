//! What can be typed about the diary as a whole: its keys, its copies, erasing it.

use std::path::PathBuf;

use chrono::NaiveDate;
use clap::{ArgGroup, Args};

use crate::place::DiaryArgs;

/// Makes twelve words that open the diary too, in place of those there were. They are shown once.
#[derive(Args)]
pub(crate) struct PhraseArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// I will write them down; do not ask
    #[arg(long)]
    pub(crate) yes: bool,
}

/// Puts the diary under a new passphrase. Nothing in the folder opens with the old one afterwards.
/// With --phrase or --phrase-file the old passphrase is not needed.
#[derive(Args)]
pub(crate) struct PassphraseArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// Read the new passphrase from the first line of this file, which only you may read
    #[arg(long, value_name = "FILE")]
    pub(crate) new_passphrase_file: Option<PathBuf>,
}

/// Makes a copy of the whole diary that only the recovery phrase opens, to be kept somewhere else.
#[derive(Args)]
pub(crate) struct CopyArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// A new file for it
    pub(crate) file: PathBuf,
}

/// Restores a copy: one of this device (a file in the folder `backups`) with the passphrase, or a copy from
/// elsewhere with the recovery phrase. It says what is in it and asks before anything is replaced.
#[derive(Args)]
pub(crate) struct RestoreArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// The copy; without it, the newest copy on this device
    pub(crate) file: Option<PathBuf>,
    /// Say what is in it, and change nothing
    #[arg(long)]
    pub(crate) look: bool,
    /// Restore it without asking
    #[arg(long, conflicts_with = "look")]
    pub(crate) yes: bool,
    /// For a copy from elsewhere: read the new passphrase from the first line of this file
    #[arg(long, value_name = "FILE")]
    pub(crate) new_passphrase_file: Option<PathBuf>,
}

/// Erases for good: one entry, what was told of some days, or everything. It says what goes and asks first.
#[derive(Args)]
#[command(group = ArgGroup::new("what").required(true).args(["entry", "from", "everything"]))]
pub(crate) struct EraseArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// This entry, with its corrections (the beginning of its id is enough)
    #[arg(long, value_name = "ID")]
    pub(crate) entry: Option<String>,
    /// What was told of the days from this one on
    #[arg(long, value_name = "DAY", requires = "to")]
    pub(crate) from: Option<NaiveDate>,
    /// The last of these days
    #[arg(long, value_name = "DAY", requires = "from")]
    pub(crate) to: Option<NaiveDate>,
    /// Everything: all entries, the keys, the copies on this device
    #[arg(long)]
    pub(crate) everything: bool,
    /// Erase without asking
    #[arg(long)]
    pub(crate) yes: bool,
}

/// Makes a summary for the clinician, signed by this diary. It says what is in it and who can open it, and
/// asks, before a file is written. Nothing is sent: handing the file over is yours.
#[derive(Args)]
#[command(group = ArgGroup::new("form").required(true).args(["to_clinician", "to_passphrase_file", "to_passphrase", "open"]))]
pub(crate) struct SummaryArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// A folder for the file; its name says nothing
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: PathBuf,
    /// Seal it to those whom the plan names
    #[arg(long)]
    pub(crate) to_clinician: bool,
    /// Seal it with a passphrase, asked on the terminal
    #[arg(long)]
    pub(crate) to_passphrase: bool,
    /// Seal it with the passphrase in the first line of this file
    #[arg(long, value_name = "FILE")]
    pub(crate) to_passphrase_file: Option<PathBuf>,
    /// Do not seal it: anyone who gets the file can read it. A table (CSV) comes with it
    #[arg(long)]
    pub(crate) open: bool,
    /// With --open: a list for the programs of clinics (FHIR R4) comes with it too
    #[arg(long, requires = "open")]
    pub(crate) fhir: bool,
    /// Nothing that happened before this day
    #[arg(long, value_name = "DAY")]
    pub(crate) from: Option<NaiveDate>,
    /// Nothing that happened after this day
    #[arg(long, value_name = "DAY")]
    pub(crate) to: Option<NaiveDate>,
    /// Without my notes
    #[arg(long)]
    pub(crate) no_notes: bool,
    /// Without my questions for the visit
    #[arg(long)]
    pub(crate) no_questions: bool,
    /// "I would like time alone with you": only in a sealed summary
    #[arg(long, conflicts_with = "open")]
    pub(crate) time_alone: bool,
    /// Say what would be in it, and write nothing
    #[arg(long)]
    pub(crate) look: bool,
    /// I know what is in it; do not ask
    #[arg(long, conflicts_with = "look")]
    pub(crate) yes: bool,
}
