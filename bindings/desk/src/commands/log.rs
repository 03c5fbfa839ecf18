//! `frond log`: a session, from the options given or asked one question after the other; and the
//! correction of an earlier one.

use frond_core::companion::{Request, SessionTold, Told};
use frond_core::diary::entry::{Ratings, UsedPart};
use frond_core::screens::Screen;

use super::{entries, log_asked};
use crate::args::LogArgs;
use crate::ask;
use crate::failure::Failure;
use crate::print;

/// Writes a session down.
pub(crate) fn log(args: LogArgs) -> Result<(), Failure> {
    // What is given is looked at before the diary is opened.
    let given = args.practice.is_some().then(|| session(&args)).transpose()?;
    let mut place = args.diary.open()?;
    let told = match given {
        Some(session) => session,
        None => {
            let form = place.ask(Request::LogSession)?;
            match form {
                Screen::LogSession(form) if ask::somebody_there() && !args.json => {
                    log_asked::session(&form, &mut place)?
                }
                form if args.json => return print::screen(true, &form),
                _ => {
                    return Err(Failure::input(
                        "There is no terminal to ask on. Say what was done with --practice and the \
                         other options; see `frond log --help`.",
                    ));
                }
            }
        }
    };
    let happened = args.happened.map(|when| when.seen_from(place.now())).transpose()?;
    let told = Told::Session(told);
    let told = match &args.instead_of {
        None => told,
        Some(id) => Told::Correct { of: entries::named(&place, id)?, told: Box::new(told) },
    };
    let screen = place.tell(told, happened)?;
    print::screen(args.json, &screen)
}

fn session(args: &LogArgs) -> Result<SessionTold, Failure> {
    let (Some(practice), Some(position), Some(ended)) = (&args.practice, args.position, args.ended)
    else {
        return Err(Failure::input("Give --practice, --position and --ended together."));
    };
    let ended = ended.with(args.reason).ok_or_else(|| {
        Failure::input(
            "Give --reason with `--ended stopped` and `--ended could-not-start`, and only there.",
        )
    })?;
    let parts = if args.part.is_empty() {
        vec![UsedPart {
            widest_diameter_tenths_mm: args.size_mm,
            practised_seconds: args.minutes.unwrap_or(0),
        }]
    } else {
        args.part.iter().map(|part| part.0).collect()
    };
    Ok(SessionTold {
        practice: practice.0.clone(),
        parts,
        position: position.into(),
        ended,
        ratings: Ratings {
            peak: args.peak.map(|rating| rating.0),
            before: args.before.map(|rating| rating.0),
            after: args.after.map(|rating| rating.0),
            worry: args.worry.map(|rating| rating.0),
        },
        signs: args.sign.clone(),
        note: args.note.clone(),
    })
}
