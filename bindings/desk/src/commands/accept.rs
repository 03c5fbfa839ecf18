//! Starting a diary, and accepting a programme: who signed it is said, what has to be chosen knowingly is
//! chosen, the plan is read back in full and "is this yours?" is answered before anything is written.

use std::path::Path;

use frond_core::companion::{Refusal, Request, Told, Trouble};
use frond_core::diary::entry::Although;
use frond_core::handover::{Arrival, FILE_MOST, Handed, Standing};
use frond_core::programme::readback::read_back;
use frond_core::screens::{Knowing, Screen, knowing, who_signed};
use frond_core::words::Words;

use crate::args::{AcceptArgs, AgreeArgs, AlthoughArg, StartArgs};
use crate::ask;
use crate::failure::{Failure, LANGUAGE};
use crate::file;
use crate::print::{self, Page};

/// `frond start`.
pub(crate) fn start(args: &StartArgs) -> Result<(), Failure> {
    let handed = args.programme.as_deref().map(|path| from_file(path, &args.agree)).transpose()?;
    // Before there is a diary, so that a plan that is none starts none.
    let told = handed.map(|handed| first(handed, &args.agree)).transpose()?;
    let mut place = args.diary.start()?;
    let screen = match told {
        Some(told) => place.tell(told, None)?,
        None => place.ask(Request::Today)?,
    };
    print::screen(false, &screen)
}

/// `frond accept`.
pub(crate) fn accept(args: &AcceptArgs) -> Result<(), Failure> {
    let handed = match (&args.file, &args.link) {
        (Some(path), _) => from_file(path, &args.agree)?,
        (None, link) => link_with_words(link.as_deref().unwrap_or_default(), &args.agree)?,
    };
    opened(&handed)?;
    let mut place = args.diary.open()?;
    let Screen::Accept(screen) = place.ask(Request::Accept(handed.clone()))? else {
        return Err(Trouble::TryAgain.into());
    };
    let mut although = Vec::new();
    // What is in use already is refused in its own words when it is told.
    if screen.handed.is_some() {
        let cards = screen.signed.iter().chain(&screen.different);
        let mut lines: Vec<String> = cards.flat_map(|card| card.lines.iter().cloned()).collect();
        lines.extend(screen.sentences.iter().cloned());
        let yours = screen.yours.unwrap_or_default();
        although = agreed(&lines, &screen.knowing, &yours, &args.agree)?;
    }
    let screen = place.tell(Told::Programme { handed, although }, None)?;
    print::screen(false, &screen)
}

/// What a file holds; for a sealed link the words are asked where they are not given.
fn from_file(path: &Path, agree: &AgreeArgs) -> Result<Handed, Failure> {
    let bytes = file::read(path, FILE_MOST as u64)?;
    match Handed::file(bytes, agree.words.as_deref().unwrap_or_default()) {
        Handed::Link { link, .. } => link_with_words(&link, agree),
        file => Ok(file),
    }
}

fn link_with_words(link: &str, agree: &AgreeArgs) -> Result<Handed, Failure> {
    let with = |words: &str| Handed::Link { link: link.into(), words: words.into() };
    let given = agree.words.as_deref().unwrap_or_default();
    let asks = given.is_empty()
        && Arrival::of(&with("")).is_err_and(|error| error.asks_words())
        && ask::somebody_there();
    if asks { Ok(with(&ask::line("The words that you were told:")?)) } else { Ok(with(given)) }
}

fn opened(handed: &Handed) -> Result<Arrival, Failure> {
    Arrival::of(handed).map_err(|error| Trouble::from(Refusal::from(error)).into())
}

/// A first programme, as the first entry of a diary that is not there yet.
fn first(handed: Handed, agree: &AgreeArgs) -> Result<Told, Failure> {
    let words = Words::for_language(LANGUAGE);
    let arrival = opened(&handed)?;
    let standing = Standing::of(&arrival, None);
    let mut lines = who_signed(&words, None, &arrival, &standing).lines;
    lines.extend(read_back(&arrival.programme, &words));
    let whom = arrival.programme.for_whom.as_str().into();
    let yours = words.text("accept-yours", &[("whom", whom)]);
    let although = agreed(&lines, &knowing(&words, &standing), &yours, agree)?;
    Ok(Told::Programme { handed, although })
}

/// What was chosen knowingly, on the command line or now; and that the plan is hers.
fn agreed(
    lines: &[String],
    knowing: &[Knowing],
    yours: &str,
    agree: &AgreeArgs,
) -> Result<Vec<Although>, Failure> {
    let given: Vec<Although> = agree.although.iter().map(|one| (*one).into()).collect();
    let open = knowing.iter().filter(|one| !given.contains(&one.although));
    let open: Vec<&Knowing> = open.collect();
    if let (Some(first), false) = (open.first(), ask::somebody_there()) {
        let name = AlthoughArg::name(first.although);
        return Err(Failure::input(format!(
            "{} There is no terminal to ask: give --although {name}.",
            first.says
        )));
    }
    if !agree.yes && !ask::somebody_there() {
        return Err(Failure::input(
            "There is no terminal to ask whether this plan is yours. Read it with \
             `frond check FILE --read-back`, then give --yes.",
        ));
    }
    if !agree.yes || !open.is_empty() {
        Page::new().sentences(lines).show();
    }
    let not = || Failure::input("Nothing was written. Ask your clinician for your own plan.");
    for one in open {
        if !ask::yes(&format!("{} {}", one.says, one.label))? {
            return Err(not());
        }
    }
    if !agree.yes && !ask::yes(yours)? {
        return Err(not());
    }
    Ok(knowing.iter().map(|one| one.although).collect())
}
