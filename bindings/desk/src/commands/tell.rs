//! `frond tell`: everything else a person can tell, one line each.

use frond_core::companion::Told;
use frond_core::diary::entry::Settings;
use frond_core::programme::values::Passage;

use super::cautions;
use super::entries::named;
use crate::args::{Tell, YesNo};
use crate::ask;
use crate::failure::Failure;
use crate::place::DiaryArgs;
use crate::print;

/// Writes it down.
pub(crate) fn tell(what: Tell) -> Result<(), Failure> {
    let (diary, told) = match what {
        Tell::Cautions(args) => return cautions::cautions(&args),
        Tell::TimeOff { diary, from, to } => (diary, Told::TimeOff { from, to }),
        Tell::Question { diary, text } => (diary, Told::Question(written(text)?)),
        Tell::LookForward { diary, text } => (diary, Told::LookForward(written(text)?)),
        Tell::Able { diary, activity, rating } => {
            (diary, Told::Function { activity, able: rating })
        }
        Tell::Goal { diary, goal, reached } => (diary, Told::Goal { goal, reached }),
        Tell::Settled { diary, of, answer } => {
            let mut place = diary.open()?;
            let of = named(&place, &of)?;
            let screen = place.tell(Told::Settled { of, answer: answer.into() }, None)?;
            return print::screen(false, &screen);
        }
        Tell::TimeRight { diary } => (diary, Told::TimeConfirmed),
        Tell::Settings { diary, language, numbers_open } => {
            let numbers_open = matches!(numbers_open, YesNo::Yes);
            (diary, Told::Settings(Settings { language, numbers_open, ..Settings::default() }))
        }
    };
    kept(&diary, told)
}

fn kept(diary: &DiaryArgs, told: Told) -> Result<(), Failure> {
    let screen = diary.open()?.tell(told, None)?;
    print::screen(false, &screen)
}

/// The text given, or typed now: what is typed here does not stay in the shell's history.
fn written(text: Option<Passage>) -> Result<Passage, Failure> {
    match text {
        Some(text) => Ok(text),
        None => Passage::new(&ask::line(">")?).map_err(|error| {
            Failure::input(format!("Nothing was written: {error}. Write it again."))
        }),
    }
}
