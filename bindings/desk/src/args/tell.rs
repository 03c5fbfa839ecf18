//! What else can be told.

use chrono::NaiveDate;
use clap::{Args, Subcommand, ValueEnum};
use frond_core::diary::entry::{Goal, Settled};
use frond_core::programme::values::{Line, Passage, Rating};
use frond_core::safety::{Sign, SignGroup};

use super::{YesNo, line, passage, sign};
use crate::place::DiaryArgs;

/// One thing to write down.
#[derive(Subcommand)]
pub(crate) enum Tell {
    /// The cautions, asked in full (as after accepting a programme), or "anything new?"
    Cautions(CautionsArgs),
    /// Time off, both days included
    TimeOff {
        #[command(flatten)]
        diary: DiaryArgs,
        /// First day, such as 2026-04-03
        #[arg(long, value_name = "DAY")]
        from: NaiveDate,
        /// Last day
        #[arg(long, value_name = "DAY")]
        to: NaiveDate,
    },
    /// A question for the visit
    Question {
        #[command(flatten)]
        diary: DiaryArgs,
        /// The question; without it, it is asked for
        #[arg(value_parser = passage)]
        text: Option<Passage>,
    },
    /// Something to look forward to
    LookForward {
        #[command(flatten)]
        diary: DiaryArgs,
        /// What; without it, it is asked for
        #[arg(value_parser = passage)]
        text: Option<Passage>,
    },
    /// How able you are at an activity: 0 unable, 10 able as before
    Able {
        #[command(flatten)]
        diary: DiaryArgs,
        /// The activity, as the plan or you word it
        #[arg(long, value_name = "TEXT", value_parser = line)]
        activity: Line,
        /// 0 to 10
        #[arg(long, value_parser = rating)]
        rating: Rating,
    },
    /// How far a goal is reached: -2 much less than expected to 2 much more
    Goal {
        #[command(flatten)]
        diary: DiaryArgs,
        /// The goal
        #[arg(long, value_name = "TEXT", value_parser = line)]
        goal: Line,
        /// -2 to 2
        #[arg(long, value_parser = goal, allow_hyphen_values = true)]
        reached: Goal,
    },
    /// Did it settle? About an earlier session
    Settled {
        #[command(flatten)]
        diary: DiaryArgs,
        /// The session, by the beginning of its id; see `frond entries`
        #[arg(long, value_name = "ID")]
        of: String,
        /// The answer
        answer: SettledArg,
    },
    /// The clock of this computer is right
    TimeRight {
        #[command(flatten)]
        diary: DiaryArgs,
    },
    /// How the diary is shown
    Settings {
        #[command(flatten)]
        diary: DiaryArgs,
        /// Language of the screens, such as en
        #[arg(long, value_name = "TAG", value_parser = line)]
        language: Option<Line>,
        /// Show sizes and counts on Today even where the plan folds them
        #[arg(long, value_name = "ANSWER")]
        numbers_open: YesNo,
    },
}

/// Every question needs an answer: on the terminal they are asked one group after the other; otherwise
/// say --no for each group in which nothing is so, and --sign for what is so. Not sure counts as yes.
#[derive(Args)]
pub(crate) struct CautionsArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// Only this question: is anything new since last time?
    #[arg(long, value_name = "ANSWER")]
    pub(crate) anything_new: Option<AnythingNewArg>,
    /// A group in which nothing is so; may be given again
    #[arg(long, value_name = "GROUP", conflicts_with = "anything_new")]
    pub(crate) no: Vec<GroupArg>,
    /// What is so, or may be; may be given again
    #[arg(long, value_name = "CODE", value_parser = sign)]
    pub(crate) sign: Vec<Sign>,
    /// A question of a group with a --sign in it to which the answer is no; may be given again
    #[arg(long, value_name = "CODE", value_parser = sign, conflicts_with = "anything_new")]
    pub(crate) not: Vec<Sign>,
}

/// "Anything new since last time?"
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub(crate) enum AnythingNewArg {
    Nothing,
    Something,
    NotToday,
}

/// "Did it settle?"
#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum SettledArg {
    Yes,
    NotYet,
    RatherNotSay,
}

impl From<SettledArg> for Settled {
    fn from(answer: SettledArg) -> Self {
        match answer {
            SettledArg::Yes => Self::Yes,
            SettledArg::NotYet => Self::NotYet,
            SettledArg::RatherNotSay => Self::RatherNotSay,
        }
    }
}

/// A group of cautions.
#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum GroupArg {
    FeelingAndControl,
    PainAndTemperature,
    Bleeding,
    PregnancyAndBirth,
    ChestAndLegs,
    EquipmentAndSkin,
    BladderAndInfection,
    TreatmentAndMedicine,
    HowYouAre,
}

impl From<GroupArg> for SignGroup {
    fn from(group: GroupArg) -> Self {
        match group {
            GroupArg::FeelingAndControl => Self::FeelingAndControl,
            GroupArg::PainAndTemperature => Self::PainAndTemperature,
            GroupArg::Bleeding => Self::Bleeding,
            GroupArg::PregnancyAndBirth => Self::PregnancyAndBirth,
            GroupArg::ChestAndLegs => Self::ChestAndLegs,
            GroupArg::EquipmentAndSkin => Self::TrainerAndSkin,
            GroupArg::BladderAndInfection => Self::UrineAndDischarge,
            GroupArg::TreatmentAndMedicine => Self::TreatmentAndMedicine,
            GroupArg::HowYouAre => Self::MoodAndSafety,
        }
    }
}

fn rating(text: &str) -> Result<Rating, &'static str> {
    let rating = text.parse().ok().and_then(|number| Rating::new(number).ok());
    rating.ok_or("a whole number from 0 to 10")
}

fn goal(text: &str) -> Result<Goal, &'static str> {
    let goal = text.parse::<i8>().ok().and_then(|number| Goal::try_from(number).ok());
    goal.ok_or("a whole number from -2 to 2")
}
