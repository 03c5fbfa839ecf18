//! `frond suggest`: what the rule says next and why; on a diary also the choice upon it.

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::{Chosen, EntryId, FeelsReady};

use super::lines;
use crate::args::{Ready, SuggestArgs, YesNo};
use crate::failure::Failure;
use crate::place::{DiaryArgs, Place};
use crate::print;

/// Shows the suggestion, or writes down the choice upon it.
pub(crate) fn suggest(args: SuggestArgs) -> Result<(), Failure> {
    let json = args.json;
    if let (Some(entries), Some(now)) = (&args.entries, &args.now) {
        let reading = lines::read(entries, args.programme.as_deref(), Some(now))?;
        let screen = reading.suggestion(now);
        return print::show(json, &screen, |page, screen| print::suggestion(page, screen, false));
    }
    let Some(diary) = args.diary.clone() else {
        return Err(Failure::input(
            "Say which diary: --diary FOLDER, or --entries FILE with --now TIME.",
        ));
    };
    let mut place = DiaryArgs::new(diary, args.secret.clone(), args.now).open()?;
    let screen = match told(&args, &place)? {
        None => place.ask(Request::Suggestion)?,
        Some(told) => place.tell(told, None)?,
    };
    print::screen(json, &screen)
}

fn told(args: &SuggestArgs, place: &Place) -> Result<Option<Told>, Failure> {
    Ok(if args.try_it || args.stay {
        let chosen = if args.try_it { Chosen::Try } else { Chosen::Stay };
        Some(Told::Choose { shown: shown(place)?, chosen })
    } else if let Some(answer) = args.stay_here {
        Some(Told::StayHere(matches!(answer, YesNo::Yes)))
    } else {
        args.ready.map(|answer| {
            Told::FeelsReady(match answer {
                Ready::Yes => FeelsReady::Yes,
                Ready::NotYet => FeelsReady::NotYet,
                Ready::RatherNotSay => FeelsReady::RatherNotSay,
            })
        })
    })
}

/// The suggestion shown last: one chooses upon what one has seen. Looking again here would write that it
/// was shown, even where there is then nothing to choose.
fn shown(place: &Place) -> Result<EntryId, Failure> {
    let shown = place.companion().state().shown();
    let offers = shown.filter(|shown| shown.to.is_some() && shown.chosen.is_none());
    offers.map(|shown| shown.entry).ok_or_else(|| {
        Failure::input("There is nothing to choose just now. Look first: frond suggest")
    })
}
