//! What can be typed to write down a session.

use std::str::FromStr;

use clap::{Args, ValueEnum};
use frond_core::diary::entry::{Answer, Ended, Reason, UsedPart};
use frond_core::programme::values::{Passage, Position, Practice, Rating, Size};
use frond_core::safety::Sign;

use super::{passage, sign};
use crate::place::DiaryArgs;
use crate::when::When;

/// Without any of the session's options the questions are asked one by one.
#[derive(Args)]
pub(crate) struct LogArgs {
    #[command(flatten)]
    pub(crate) diary: DiaryArgs,
    /// What was done: trainer, breathing, belly-breathing, meditation, or other:ID
    #[arg(long, value_name = "KIND", requires_all = ["position", "ended", "length"])]
    pub(crate) practice: Option<PracticeArg>,
    /// Widest diameter of the trainer used, in millimetres
    #[arg(long, value_name = "MM", value_parser = size, requires = "minutes")]
    pub(crate) size_mm: Option<Size>,
    /// Minutes practised, pauses left out
    #[arg(long, value_parser = seconds, group = "length", requires = "practice")]
    pub(crate) minutes: Option<u32>,
    /// Instead of size and minutes, several parts in order, such as 12:3 15:8
    #[arg(
        long,
        value_name = "MM:MINUTES",
        group = "length",
        requires = "practice",
        conflicts_with = "minutes",
        num_args = 1..
    )]
    pub(crate) part: Vec<PartArg>,
    /// The position
    #[arg(long, requires = "practice")]
    pub(crate) position: Option<PositionArg>,
    /// How it ended
    #[arg(long, requires = "practice")]
    pub(crate) ended: Option<EndedArg>,
    /// Why it was stopped or could not start
    #[arg(long, requires = "practice")]
    pub(crate) reason: Option<ReasonArg>,
    /// Highest discomfort, 0 to 10, or rather-not-say
    #[arg(long, value_name = "RATING", requires = "practice")]
    pub(crate) peak: Option<RatingArg>,
    /// Discomfort before starting
    #[arg(long, value_name = "RATING", requires = "practice")]
    pub(crate) before: Option<RatingArg>,
    /// Discomfort afterwards
    #[arg(long, value_name = "RATING", requires = "practice")]
    pub(crate) after: Option<RatingArg>,
    /// Worry
    #[arg(long, value_name = "RATING", requires = "practice")]
    pub(crate) worry: Option<RatingArg>,
    /// Something that is not right, by the word that `frond sign` lists; may be given again
    #[arg(long, value_name = "CODE", value_parser = sign, requires = "practice")]
    pub(crate) sign: Vec<Sign>,
    /// A note for yourself (the shell may keep what is typed here in its history)
    #[arg(long, value_name = "TEXT", value_parser = passage, requires = "practice")]
    pub(crate) note: Option<Passage>,
    /// When it began, if not now
    #[arg(long, value_name = "TIME")]
    pub(crate) happened: Option<When>,
    /// This puts an earlier entry right (the beginning of its id is enough)
    #[arg(long, value_name = "ID")]
    pub(crate) instead_of: Option<String>,
    /// Print JSON, for a program to read; without a session, the questions
    #[arg(long)]
    pub(crate) json: bool,
}

/// A kind of practice.
#[derive(Clone)]
pub(crate) struct PracticeArg(pub(crate) Practice);

impl FromStr for PracticeArg {
    type Err = String;
    fn from_str(text: &str) -> Result<Self, String> {
        let text = match text.split_once(':') {
            None => text.replace('-', "_"),
            // The id of an own practice keeps its hyphens.
            Some(_) => text.to_owned(),
        };
        Practice::try_from(text).map(Self).map_err(|error| error.to_string())
    }
}

/// A position.
#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum PositionArg {
    OnBack,
    SideLying,
    Sitting,
    Standing,
    Other,
}

impl From<PositionArg> for Position {
    fn from(position: PositionArg) -> Self {
        match position {
            PositionArg::OnBack => Self::OnBack,
            PositionArg::SideLying => Self::SideLying,
            PositionArg::Sitting => Self::Sitting,
            PositionArg::Standing => Self::Standing,
            PositionArg::Other => Self::Other,
        }
    }
}

/// How a session ended.
#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum EndedArg {
    Finished,
    Stopped,
    CouldNotStart,
}

/// Why.
#[derive(Clone, Copy, ValueEnum)]
pub(crate) enum ReasonArg {
    Discomfort,
    DidNotGoIn,
    Upset,
    Interrupted,
    Other,
}

impl EndedArg {
    /// The ending with its reason; `None` where a reason is missing or stands where none belongs.
    pub(crate) fn with(self, reason: Option<ReasonArg>) -> Option<Ended> {
        let reason = reason.map(|reason| match reason {
            ReasonArg::Discomfort => Reason::Discomfort,
            ReasonArg::DidNotGoIn => Reason::DidNotGoIn,
            ReasonArg::Upset => Reason::Upset,
            ReasonArg::Interrupted => Reason::Interrupted,
            ReasonArg::Other => Reason::Other,
        });
        match (self, reason) {
            (Self::Finished, None) => Some(Ended::Finished),
            (Self::Stopped, Some(reason)) => Some(Ended::Stopped(reason)),
            (Self::CouldNotStart, Some(reason)) => Some(Ended::CouldNotStart(reason)),
            (Self::Finished, Some(_)) | (Self::Stopped | Self::CouldNotStart, None) => None,
        }
    }
}

/// An answer to a rating question.
#[derive(Clone, Copy)]
pub(crate) struct RatingArg(pub(crate) Answer);

impl FromStr for RatingArg {
    type Err = &'static str;
    fn from_str(text: &str) -> Result<Self, Self::Err> {
        if text == "rather-not-say" {
            return Ok(Self(Answer::RatherNotSay));
        }
        text.parse()
            .ok()
            .and_then(|number| Rating::new(number).ok())
            .map(|rating| Self(Answer::Rated(rating)))
            .ok_or("a whole number from 0 to 10, or rather-not-say")
    }
}

/// A part: size and minutes.
#[derive(Clone, Copy)]
pub(crate) struct PartArg(pub(crate) UsedPart);

impl FromStr for PartArg {
    type Err = String;
    fn from_str(text: &str) -> Result<Self, String> {
        let (mm, minutes) =
            text.split_once(':').ok_or("write MM:MINUTES, such as 15:8".to_owned())?;
        let (mm, practised_seconds) = (size(mm)?, seconds(minutes)?);
        Ok(Self(UsedPart { widest_diameter_tenths_mm: Some(mm), practised_seconds }))
    }
}

/// Millimetres with at most one decimal, without going through a binary fraction.
pub(crate) fn size(text: &str) -> Result<Size, String> {
    let again = || "millimetres, such as 15 or 16.5".to_owned();
    let tenths = tenths(text).ok_or_else(again)?;
    Size::new(tenths).map_err(|_| "a size lies between 1 and 100 mm (widest diameter)".to_owned())
}

/// Minutes with at most one decimal, as seconds.
pub(crate) fn seconds(text: &str) -> Result<u32, String> {
    let tenths = tenths(text).filter(|tenths| *tenths <= 24 * 600);
    let seconds = tenths.and_then(|tenths| u32::try_from(tenths * 6).ok());
    seconds.ok_or_else(|| "minutes, such as 8 or 7.5, at most a day".to_owned())
}

fn tenths(text: &str) -> Option<u64> {
    let digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    let (whole, tenth) = text.split_once('.').unwrap_or((text, "0"));
    if whole.is_empty() || whole.len() > 6 || tenth.len() != 1 || !digits(whole) || !digits(tenth) {
        return None;
    }
    Some(whole.parse::<u64>().ok()? * 10 + tenth.parse::<u64>().ok()?)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_and_minutes_are_read_exactly() {
        assert_eq!(size("16.5").unwrap().get(), 165);
        assert_eq!(size("15").unwrap().get(), 150);
        for wrong in ["", "16.55", "1e1", "-3", "0.5", "101", "15,5", ".5", "15."] {
            assert!(size(wrong).is_err(), "{wrong}");
        }
        assert_eq!(seconds("7.5").unwrap(), 450);
        assert_eq!(seconds("0").unwrap(), 0);
        assert!(seconds("1441").is_err());
        assert_eq!("12:3".parse::<PartArg>().unwrap().0.practised_seconds, 180);
    }

    #[test]
    fn a_reason_belongs_to_what_was_not_finished() {
        assert_eq!(EndedArg::Finished.with(None), Some(Ended::Finished));
        assert_eq!(EndedArg::Finished.with(Some(ReasonArg::Upset)), None);
        assert_eq!(EndedArg::Stopped.with(None), None);
        let upset = Some(Ended::CouldNotStart(Reason::Upset));
        assert_eq!(EndedArg::CouldNotStart.with(Some(ReasonArg::Upset)), upset);
    }
}
