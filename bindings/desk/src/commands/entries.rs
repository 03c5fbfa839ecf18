//! `frond entries`: what was written, leaving an entry out, and finding one by the beginning of its id.

use std::io::Write;

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::EntryId;
use frond_core::diary::lines;

use crate::args::EntriesArgs;
use crate::failure::Failure;
use crate::place::Place;
use crate::print;

/// Lists, exports or strikes.
pub(crate) fn entries(args: &EntriesArgs) -> Result<(), Failure> {
    let mut place = args.diary.open()?;
    if args.export {
        let text = lines::write(&place.companion().entries()?)
            .map_err(|_| Failure::Else("This cannot be written as JSON.".to_owned()))?;
        let _ = std::io::stdout().lock().write_all(text.as_bytes());
        return Ok(());
    }
    let screen = match &args.strike {
        None => place.ask(Request::Entries)?,
        Some(id) => {
            let of = named(&place, id)?;
            place.tell(Told::Strike { of }, None)?
        }
    };
    print::screen(args.json, &screen)
}

/// The one entry whose id begins so.
pub(super) fn named(place: &Place, beginning: &str) -> Result<EntryId, Failure> {
    let beginning = beginning.to_ascii_lowercase();
    let entries = place.companion().entries()?;
    let mut fits = entries.iter().filter(|entry| entry.id.to_string().starts_with(&beginning));
    match (fits.next(), fits.next()) {
        (Some(entry), None) if !beginning.is_empty() => Ok(entry.id),
        (Some(_), _) => Err(Failure::input(
            "More than one entry has an id that begins so. Give more of it; see `frond entries`.",
        )),
        (None, _) => Err(Failure::input("No entry has an id that begins so. See `frond entries`.")),
    }
}
