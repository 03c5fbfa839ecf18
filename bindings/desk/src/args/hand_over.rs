//! What is said where a programme is accepted.

use clap::{Args, ValueEnum};
use frond_core::diary::entry::Although;

/// What a person says about a programme that arrived.
#[derive(Args)]
pub(crate) struct AgreeArgs {
    /// The words that were told, where a link is sealed
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
    /// Nobody signed it, and I know where it comes from
    Unsigned,
    /// It is signed with another key, and I asked the clinic
    OtherKey,
    /// It is older than the one in use, and I asked the clinic
    OlderRevision,
    /// It has the number of the one in use and says something else, and I asked the clinic
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
