//! Screens that are only looked at.

use chrono::{Datelike, NaiveDate};
use clap::{Args, Subcommand, ValueEnum};
use frond_core::screens::FirstRunPage;

use crate::place::DiaryArgs;

/// A screen to look at.
#[derive(Args)]
pub(crate) struct ShowScreenArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// Print JSON, for a program to read
    #[arg(long)]
    pub(crate) json: bool,
    #[command(subcommand)]
    pub(crate) what: What,
}

/// Which.
#[derive(Subcommand)]
pub(crate) enum What {
    /// Everything that is not needed every day
    More,
    /// A month, and what was done on its days
    Calendar {
        /// Such as 2026-04; the present one if not said
        #[arg(value_parser = month)]
        month: Option<(i32, u32)>,
    },
    /// What was written of one day
    Day {
        /// Such as 2026-04-03
        day: NaiveDate,
    },
    /// One entry, with its earlier versions
    Entry {
        /// The beginning of its id; see `frond entries`
        id: String,
    },
    /// What of an entry can be put right
    Correct {
        /// The beginning of its id
        id: String,
    },
    /// The questions for the visit
    Questions,
    /// The activities and goals of the plan
    Activities,
    /// Time off
    TimeOff,
    /// Something to look forward to
    LookForward,
    /// "Did it settle?", about a session
    Settled {
        /// The beginning of its id
        id: String,
    },
    /// The ways to end the programme
    Ending,
    /// What a device can still show to someone who looks
    Shows,
    /// Settings
    Settings,
    /// What a summary would hold
    Summary {
        /// Nothing before this day
        #[arg(long, value_name = "DAY")]
        from: Option<NaiveDate>,
        /// Nothing after this day
        #[arg(long, value_name = "DAY")]
        to: Option<NaiveDate>,
    },
    /// A page of the first run
    FirstRun {
        /// Which
        page: PageArg,
    },
}

/// A page of the first run.
#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum PageArg {
    Breathe,
    About,
    Lock,
    Language,
    Copy,
}

impl From<PageArg> for FirstRunPage {
    fn from(page: PageArg) -> Self {
        match page {
            PageArg::Breathe => Self::Breathe,
            PageArg::About => Self::About,
            PageArg::Lock => Self::Lock,
            PageArg::Language => Self::Language,
            PageArg::Copy => Self::Copy,
        }
    }
}

fn month(text: &str) -> Result<(i32, u32), &'static str> {
    let first = format!("{text}-01").parse::<NaiveDate>();
    first.map(|day| (day.year(), day.month())).map_err(|_| "a month such as 2026-04")
}
