//! What is said where a programme is handed over, and where one is accepted.

use std::path::PathBuf;

use clap::{Args, ValueEnum};
use frond_core::diary::entry::Although;

/// What a person says about a programme that arrived.
#[derive(Args)]
pub(crate) struct AgreeArgs {
    /// The words that were told, where a link is sealed (the shell may keep what is typed here in its history;
    /// left out, they are asked)
    #[arg(long, value_name = "WORDS")]
    pub(crate) words: Option<String>,
    /// What is chosen knowingly; may be given again
    #[arg(long, value_name = "WHAT")]
    pub(crate) although: Vec<AlthoughArg>,
    /// It was read and is mine
    #[arg(long)]
    pub(crate) yes: bool,
}

/// What has to be chosen knowingly.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum AlthoughArg {
    // Plain remarks, so that the help stays short.
    // Nobody signed it, and I know where it comes from.
    Unsigned,
    // It is signed with another key, and I asked the clinic.
    OtherKey,
    // It is older than the one in use, and I asked the clinic.
    OlderRevision,
    // It has the number of the one in use and says something else, and I asked the clinic.
    SameRevision,
}

impl From<AlthoughArg> for Although {
    fn from(one: AlthoughArg) -> Self {
        match one {
            AlthoughArg::Unsigned => Self::Unsigned,
            AlthoughArg::OtherKey => Self::OtherKey,
            AlthoughArg::OlderRevision => Self::OlderRevision,
            AlthoughArg::SameRevision => Self::SameRevision,
        }
    }
}

impl AlthoughArg {
    /// What it is called on the command line.
    pub(crate) fn name(one: Although) -> &'static str {
        match one {
            Although::Unsigned => "unsigned",
            Although::OtherKey => "other-key",
            Although::OlderRevision => "older-revision",
            Although::SameRevision => "same-revision",
        }
    }
}

/// The programme is checked, signed with the clinic's key, and written as a file, as a QR code, or both.
/// The words of the key are printed, for the patient to compare; so are the words by which a sealed code
/// opens: say them, and do not write them beside it.
#[derive(Args)]
pub(crate) struct HandOverArgs {
    /// The programme, a JSON file
    pub(crate) programme: PathBuf,
    /// The folder with the clinic's keys
    #[arg(long, value_name = "FOLDER")]
    pub(crate) keys: PathBuf,
    /// Read their passphrase from the first line of this file, which only you may read (chmod 600);
    /// otherwise it is asked
    #[arg(long, value_name = "FILE")]
    pub(crate) passphrase_file: Option<PathBuf>,
    /// Write the signed file here; it always works
    #[arg(long, value_name = "FILE", required_unless_present_any = ["qr", "link"])]
    pub(crate) file: Option<PathBuf>,
    /// Draw the QR code here, as SVG
    #[arg(long, value_name = "FILE")]
    pub(crate) qr: Option<PathBuf>,
    /// Print the link of the code
    #[arg(long)]
    pub(crate) link: bool,
    /// Whoever sees the code can read the plan; without this it opens with spoken words only
    #[arg(long)]
    pub(crate) open: bool,
    /// Words of the list to seal it with, instead of new ones
    #[arg(long, value_name = "WORDS", conflicts_with = "open")]
    pub(crate) words: Option<String>,
}
