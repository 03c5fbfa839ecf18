//! `frond step`: the steps, confirming the present one, using another. Going back needs no reason; a step
//! beyond the present one is recorded after one plain caution (rule sentence D1).

use frond_core::companion::{Refusal, Request, Told, Trouble};
use frond_core::diary::entry::Why;
use frond_core::programme::values::StepId;
use frond_core::screens::Screen;

use crate::args::StepArgs;
use crate::ask;
use crate::failure::Failure;
use crate::place::Place;
use crate::print;

/// Shows the steps, confirms the present one, or uses another.
pub(crate) fn step(args: &StepArgs) -> Result<(), Failure> {
    let mut place = args.diary.open()?;
    let screen = match &args.to {
        None if args.confirm => place.tell(Told::ConfirmStep, None)?,
        None => place.ask(Request::Ladder)?,
        Some(to) => {
            let why = if args.clinician_said { Why::Clinician } else { Why::OwnChoice };
            if !args.own_choice && !args.clinician_said {
                caution(&mut place, to)?;
            }
            place.tell(Told::Step { to: to.clone(), why }, None)?
        }
    };
    print::screen(args.json, &screen)
}

fn caution(place: &mut Place, to: &StepId) -> Result<(), Failure> {
    let Screen::Ladder(ladder) = place.ask(Request::Ladder)? else { return Ok(()) };
    let rung = ladder.rungs.iter().find(|rung| rung.id == *to);
    let rung = rung.ok_or(Trouble::PutRight(Refusal::NoSuchStep))?;
    if !rung.larger {
        return Ok(());
    }
    if !ask::somebody_there() {
        return Err(Failure::input(format!(
            "{} If it is your own choice, give --own-choice.",
            ladder.larger_caution
        )));
    }
    if ask::yes(&format!("{}\n{}: record it?", ladder.larger_caution, rung.used))? {
        Ok(())
    } else {
        Err(Failure::input("Nothing was written."))
    }
}
