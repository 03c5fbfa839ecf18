//! `frond show`: the screens that are only looked at.

use frond_core::companion::Request;
use frond_core::screens::Covered;
use frond_core::summary::Selection;

use super::entries::named;
use crate::args::{ShowScreenArgs, What};
use crate::failure::Failure;
use crate::print;

/// Shows it.
pub(crate) fn show(args: ShowScreenArgs) -> Result<(), Failure> {
    let mut place = args.diary.open()?;
    let request = match args.what {
        What::More => Request::More,
        What::Calendar { month } => Request::Calendar { month },
        What::Day { day } => Request::Day(day),
        What::Entry { id } => Request::Entry(named(&place, &id)?),
        What::Correct { id } => Request::Correct(named(&place, &id)?),
        What::Questions => Request::Questions,
        What::Activities => Request::Activities,
        What::TimeOff => Request::TimeOff,
        What::LookForward => Request::LookForward,
        What::Settled { id } => Request::Settled(named(&place, &id)?),
        What::Ending => Request::Ending,
        // A terminal hides nothing.
        What::Shows => Request::Shows(Covered::default()),
        What::Settings => Request::Settings,
        What::Summary { from, to } => {
            Request::Summary(Selection { from, to, ..Selection::default() })
        }
        What::FirstRun { page } => Request::FirstRun(page.into()),
    };
    print::screen(args.json, &place.ask(request)?)
}
