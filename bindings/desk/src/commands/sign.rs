//! `frond sign`: something is not right.

use frond_core::companion::{Request, Told};

use crate::args::SignArgs;
use crate::failure::Failure;
use crate::print;

/// Lists the cautions, or writes down what is not right and shows whom to call.
pub(crate) fn sign(args: SignArgs) -> Result<(), Failure> {
    let mut place = args.diary.open()?;
    let screen = if args.sign.is_empty() {
        place.ask(Request::Signs)?
    } else {
        let happened = args.happened.map(|when| when.seen_from(place.now())).transpose()?;
        place.tell(Told::Signs { signs: args.sign, note: args.note }, happened)?
    };
    print::screen(args.json, &screen)
}
