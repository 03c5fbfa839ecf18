//! `frond sign`: something is not right.

use frond_core::companion::{Request, Told};
use frond_core::programme::values::Passage;
use frond_core::safety::Sign;

use crate::args::{self, SignArgs};
use crate::ask;
use crate::failure::Failure;
use crate::print;

/// Lists the cautions, or writes down what is not right and shows whom to call.
pub(crate) fn sign(args: SignArgs) -> Result<(), Failure> {
    let mut place = args.diary.open()?;
    let (mut signs, mut note) = (args.sign, args.note);
    if signs.is_empty() {
        let list = place.ask(Request::Signs)?;
        print::screen(args.json, &list)?;
        if args.json || !ask::somebody_there() {
            return Ok(());
        }
        // Behind the command other programs and the shell's history would see it.
        signs = ask::until(
            "What is not right, by the words in the list, with a space between? Nothing: press Enter.",
            "Type words as the list writes them, such as the first one.",
            named,
        )?;
        if signs.is_empty() {
            return Ok(());
        }
        note = ask::until("In your own words, or nothing:", "Shorten it.", own_words)?;
    }
    let happened = args.happened.map(|when| when.seen_from(place.now())).transpose()?;
    let screen = place.tell(Told::Signs { signs, note }, happened)?;
    print::screen(args.json, &screen)
}

/// The cautions that a line names; `None` where a word of it names none.
fn named(line: &str) -> Option<Vec<Sign>> {
    line.split([' ', ','])
        .filter(|word| !word.is_empty())
        .map(|word| args::sign(word).ok())
        .collect()
}

/// What was typed, if anything was; `None` where it is too long.
fn own_words(line: &str) -> Option<Option<Passage>> {
    if line.is_empty() { Some(None) } else { Passage::new(line).ok().map(Some) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cautions_are_named_by_the_words_in_the_list_and_nothing_is_guessed() {
        assert_eq!(named("fever, heavy-bleeding"), Some(vec![Sign::Fever, Sign::HeavyBleeding]));
        assert_eq!(named(""), Some(vec![]));
        assert_eq!(named("fever something-else"), None);
        assert_eq!(named("feve"), None);
        assert!(matches!(own_words(""), Some(None)));
        assert_eq!(own_words("since noon").unwrap().unwrap().as_str(), "since noon");
        assert!(own_words(&"a".repeat(100_000)).is_none());
    }
}
