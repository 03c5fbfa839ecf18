//! `frond erase`: says what goes and what no erasing can reach, asks, and erases for good.

use frond_core::companion::Request;
use frond_core::diary::erase::Erase;
use frond_core::screens::Screen;

use super::entries::named;
use super::keys::needs_passphrase;
use crate::args::EraseArgs;
use crate::ask;
use crate::failure::Failure;
use crate::print::{self, Page};

/// Erases.
pub(crate) fn erase(args: &EraseArgs) -> Result<(), Failure> {
    needs_passphrase(args.diary.secret())?;
    let mut place = args.diary.open()?;
    let what = match (&args.entry, args.from, args.to) {
        (Some(id), _, _) => Some(Erase::Entry(named(&place, id)?)),
        (None, Some(from), Some(to)) if from <= to => Some(Erase::Days { from, to }),
        (None, Some(_), _) => {
            return Err(Failure::input("The last day lies before the first. Check the two days."));
        }
        _ => None,
    };
    let screen = place.ask(what.map_or(Request::EraseAll, Request::Erase))?;
    let Screen::Erase(screen) = screen else { return Ok(()) };
    let mut page = Page::new();
    print::erase(&mut page, &screen);
    page.show();
    ask::sure(args.yes, &format!("{}?", screen.confirm.label), "Nothing was erased.")?;
    let (companion, moment, keeper) = place.into_parts();
    match what {
        Some(what) => companion.erase(what, keeper.as_ref(), &moment).map(|_| ())?,
        None => companion.end(keeper.as_ref())?,
    }
    Page::new().gap().paragraph("Erased.").show();
    Ok(())
}
