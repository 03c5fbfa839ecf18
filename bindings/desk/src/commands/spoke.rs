//! `frond spoke`: "I spoke with ...".

use frond_core::companion::{Request, Told};
use frond_core::screens::Screen;

use crate::args::SpokeArgs;
use crate::failure::Failure;
use crate::print;

/// Shows what is open, or writes down a talk.
pub(crate) fn spoke(args: SpokeArgs) -> Result<(), Failure> {
    let mut place = args.diary.open()?;
    let screen = place.ask(Request::Spoke)?;
    let screen = match (args.with, screen) {
        (Some(with), Screen::Spoke(open)) => {
            let happened = args.on.map(|when| when.seen_from(place.now())).transpose()?;
            let signs = if args.all_signs {
                open.signs.iter().map(|open| open.key).collect()
            } else {
                args.sign
            };
            place.tell(Told::Spoke { with, signs, closes_pause: args.go_on }, happened)?
        }
        (_, screen) => screen,
    };
    print::screen(args.json, &screen)
}
