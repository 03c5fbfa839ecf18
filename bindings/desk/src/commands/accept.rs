//! Starting a diary, and accepting a programme: the plan is read back in full and "is this yours?" is
//! answered before anything is written.

use std::path::Path;
use std::sync::Arc;

use frond_core::companion::{Refusal, Told, Trouble};
use frond_core::programme::check::load;
use frond_core::programme::plan::Programme;
use frond_core::programme::read::MOST_BYTES;
use frond_core::programme::readback::read_back;
use frond_core::words::Words;

use crate::args::{AcceptArgs, StartArgs};
use crate::ask;
use crate::failure::{Failure, LANGUAGE};
use crate::file;
use crate::print::{self, Page};

/// `frond start`.
pub(crate) fn start(args: &StartArgs) -> Result<(), Failure> {
    let text = args.programme.as_deref().map(|file| read(file, args.yes)).transpose()?;
    let mut place = args.diary.start()?;
    let screen = match text {
        Some(text) => place.tell(Told::Programme { text }, None)?,
        None => place.ask(frond_core::companion::Request::Today)?,
    };
    print::screen(false, &screen)
}

/// `frond accept`.
pub(crate) fn accept(args: &AcceptArgs) -> Result<(), Failure> {
    let text = read(&args.file, args.yes)?;
    let screen = args.diary.open()?.tell(Told::Programme { text }, None)?;
    print::screen(false, &screen)
}

/// Reads a programme that can be used and that the person says is hers.
fn read(file: &Path, yes: bool) -> Result<Arc<str>, Failure> {
    let bytes = file::read(file, MOST_BYTES as u64)?;
    let refused = |sentences| Failure::from(Trouble::from(Refusal::Plan(sentences)));
    let (plan, _) = load(&bytes).map_err(|error| refused(lines(&error.to_string())))?;
    let text = String::from_utf8(bytes).map_err(|_| refused(Vec::new()))?;
    if !yes {
        is_it_yours(&plan)?;
    }
    Ok(text.into())
}

fn lines(text: &str) -> Vec<String> {
    text.lines().map(str::to_owned).collect()
}

fn is_it_yours(plan: &Programme) -> Result<(), Failure> {
    if !ask::somebody_there() {
        return Err(Failure::input(
            "There is no terminal to ask whether this plan is yours. Read it with \
             `frond check FILE --read-back`, then give --yes.",
        ));
    }
    let mut page = Page::new();
    page.sentences(&read_back(plan, &Words::for_language(LANGUAGE))).show();
    if ask::yes(&format!("This plan is for {}. Is this yours?", plan.for_whom))? {
        Ok(())
    } else {
        Err(Failure::input("Nothing was written. Ask your clinician for your own plan."))
    }
}
