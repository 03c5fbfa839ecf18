//! `frond tell cautions`: the full list, or "anything new?". Every question gets an answer of its own;
//! nothing is preset, and "not sure" counts as yes.

use frond_core::companion::Told;
use frond_core::diary::entry::{Asked, ScreeningAnswer};
use frond_core::safety::{Answer, FullList, Sign, SignGroup};
use frond_core::words::Words;

use crate::args::{AnythingNewArg, CautionsArgs};
use crate::ask;
use crate::failure::Failure;
use crate::print;

/// Asks, and writes the answer down.
pub(crate) fn cautions(args: &CautionsArgs) -> Result<(), Failure> {
    let mut place = args.diary.open()?;
    let told = match args.anything_new {
        Some(answer) => anything_new(answer, &args.sign)?,
        None => {
            let given = !(args.no.is_empty() && args.sign.is_empty() && args.not.is_empty());
            let signs = if given || !ask::somebody_there() {
                from_options(args)?
            } else {
                asked(place.companion().words())?
            };
            let answer = if signs.is_empty() {
                ScreeningAnswer::NothingNew
            } else {
                ScreeningAnswer::Something
            };
            Told::Screening { asked: Asked::FullList, answer, signs }
        }
    };
    let screen = place.tell(told, None)?;
    print::screen(false, &screen)
}

fn anything_new(answer: AnythingNewArg, signs: &[Sign]) -> Result<Told, Failure> {
    if (answer == AnythingNewArg::Something) == signs.is_empty() {
        return Err(Failure::input(
            "Give --sign for what is new, together with `--anything-new something`. `frond sign` \
             lists what can be named.",
        ));
    }
    let answer = match answer {
        AnythingNewArg::Nothing => ScreeningAnswer::NothingNew,
        AnythingNewArg::Something => ScreeningAnswer::Something,
        AnythingNewArg::NotToday => ScreeningAnswer::NotToday,
    };
    Ok(Told::Screening { asked: Asked::AnythingNew, answer, signs: signs.to_vec() })
}

fn from_options(args: &CautionsArgs) -> Result<Vec<Sign>, Failure> {
    let mut list = FullList::default();
    for group in &args.no {
        list.answer_group(SignGroup::from(*group), Answer::No);
    }
    for sign in &args.not {
        list.answer(*sign, Answer::No);
    }
    for sign in &args.sign {
        list.answer(*sign, Answer::Yes);
    }
    list.signs().map_err(|left| {
        Failure::input(format!("{left} See `frond tell cautions --help`, or answer on a terminal."))
    })
}

fn asked(words: &Words) -> Result<Vec<Sign>, Failure> {
    let answers = Answer::ALL.map(|answer| words.text(answer.word_id(), &[]));
    let answers = answers.each_ref().map(String::as_str);
    let choose = |question: &str| -> Result<Answer, Failure> {
        let index = ask::choose(question, &answers)?;
        Ok(Answer::ALL.get(index).copied().unwrap_or(Answer::NotSure))
    };
    let mut list = FullList::default();
    for group in SignGroup::ALL {
        let signs = group.signs();
        let questions: Vec<String> = signs
            .iter()
            .filter_map(|sign| Some(format!("  {}", words.text(sign.question_id()?, &[]))))
            .collect();
        let question = format!("{}\n{}", words.text(group.name_id(), &[]), questions.join("\n"));
        let answer = choose(&question)?;
        list.answer_group(group, answer);
        if answer.counts() {
            for sign in signs {
                if let Some(id) = sign.question_id() {
                    list.answer(sign, choose(&words.text(id, &[]))?);
                }
            }
        }
    }
    list.signs().map_err(|left| Failure::input(left.to_string()))
}
