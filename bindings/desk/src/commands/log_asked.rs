//! The questions of a session, asked one after the other in the words of the screen. Nothing is
//! preselected.

use frond_core::companion::{Request, SessionTold};
use frond_core::diary::entry::{Answer, Ended, Ratings, UsedPart};
use frond_core::programme::values::{Passage, Practice, Rating, RatingKind, Size};
use frond_core::safety::{AnythingNew, Sign};
use frond_core::screens::{LogSessionScreen, RatingQuestion, Screen};

use crate::args;
use crate::ask::{choose, until, yes};
use crate::failure::Failure;
use crate::place::Place;
use crate::print::Page;

/// A session as told on the terminal.
pub(super) fn session(form: &LogSessionScreen, place: &mut Place) -> Result<SessionTold, Failure> {
    Page::new().title(&form.title).show();
    let practice = pick(&form.practice_label, &form.practices, |c| &c.label)?.practice.clone();
    let size = match practice {
        Practice::Trainer => Some(size(form)?),
        _ => None,
    };
    let position = pick(&form.position_label, &form.positions, |c| &c.label)?.position;
    let ended = pick(&form.ended_label, &form.ended, |c| &c.label)?.ended;
    let practised_seconds = match ended {
        Ended::CouldNotStart(_) => 0,
        Ended::Finished | Ended::Stopped(_) => {
            until(&form.minutes_label, "Type minutes, such as 7 or 7.5.", |typed| {
                args::minutes(typed).ok()
            })?
        }
    };
    let mut ratings = Ratings::default();
    for question in &form.ratings {
        let answer = Some(rating(question)?);
        match question.rating {
            RatingKind::Peak => ratings.peak = answer,
            RatingKind::Before => ratings.before = answer,
            RatingKind::After => ratings.after = answer,
            RatingKind::Worry => ratings.worry = answer,
        }
    }
    let signs = signs(form, place)?;
    let note = until(
        &format!("{}\n{}", form.note_label, form.note_caution),
        "A note has at most 2,000 characters. Shorten it, or leave it empty.",
        |typed| match typed {
            "" => Some(None),
            note => Passage::new(note).ok().map(Some),
        },
    )?;
    let parts = vec![UsedPart { widest_diameter_tenths_mm: size, practised_seconds }];
    Ok(SessionTold { practice, parts, position, ended, ratings, signs, note })
}

fn pick<'a, T>(
    question: &str,
    choices: &'a [T],
    label: impl Fn(&T) -> &String,
) -> Result<&'a T, Failure> {
    let labels: Vec<&str> = choices.iter().map(|choice| label(choice).as_str()).collect();
    let index = choose(question, &labels)?;
    choices.get(index).ok_or_else(|| Failure::input("There was no answer. Nothing was written."))
}

/// One of the plan's sizes, or another in millimetres. Labels are often numbers too, so a size that the
/// plan does not have is asked about again.
fn size(form: &LogSessionScreen) -> Result<Size, Failure> {
    let mut page = Page::new();
    page.gap().paragraph(&form.size_label);
    for choice in &form.sizes {
        page.point(&choice.label);
    }
    page.show();
    meant(
        |size| form.sizes.iter().any(|choice| choice.widest_diameter_tenths_mm == size),
        || {
            until("mm:", "Type millimetres, such as 15 or 16.5.", |typed| {
                args::size(typed.trim_end_matches("mm").trim_end()).ok()
            })
        },
        |size| yes(&format!("{size}: {}", form.size_other)),
    )
}

/// The size that was typed, where the plan has it or she is `sure` of it; otherwise it is typed anew.
fn meant(
    known: impl Fn(Size) -> bool,
    mut typed: impl FnMut() -> Result<Size, Failure>,
    mut sure: impl FnMut(Size) -> Result<bool, Failure>,
) -> Result<Size, Failure> {
    loop {
        let size = typed()?;
        if known(size) || sure(size)? {
            return Ok(size);
        }
    }
}

fn rating(question: &RatingQuestion) -> Result<Answer, Failure> {
    let scale = format!(
        "{}\n  0 {} ... 10 {}    - {}",
        question.question, question.least, question.most, question.rather_not_say
    );
    until(&scale, "Type a number from 0 to 10, or - for the other answer.", |typed| match typed {
        "-" => Some(Answer::RatherNotSay),
        number => number.parse().ok().and_then(|n| Rating::new(n).ok()).map(Answer::Rated),
    })
}

fn signs(form: &LogSessionScreen, place: &mut Place) -> Result<Vec<Sign>, Failure> {
    // "Not today" belongs before a session, not after it.
    let answers = [AnythingNew::NothingNew, AnythingNew::Something];
    let words = place.companion().words().clone();
    let labels = answers.map(|answer| words.text(answer.word_id(), &[]));
    let labels = labels.each_ref().map(String::as_str);
    if choose(&form.signs_label, &labels)? == 0 {
        return Ok(Vec::new());
    }
    let Screen::Signs(list) = place.ask(Request::Signs)? else { return Ok(Vec::new()) };
    let mut page = Page::new();
    page.gap().paragraph(&list.how);
    let mut number = 0;
    for (group, signs) in crate::print::by_group(&list.signs) {
        page.heading(group);
        for sign in signs {
            number += 1;
            page.numbered(number, &sign.question);
        }
    }
    page.gap();
    page.show();
    until("Type the numbers, such as 3 or 3 12.", "Type the numbers, such as 3 or 3 12.", |typed| {
        let chosen: Option<Vec<Sign>> = typed
            .split([' ', ','])
            .filter(|word| !word.is_empty())
            .map(|word| {
                let index = word.parse::<usize>().ok()?.checked_sub(1)?;
                list.signs.get(index).map(|choice| choice.sign)
            })
            .collect();
        chosen.filter(|signs| !signs.is_empty())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn h2_a_size_that_the_plan_does_not_have_is_asked_about_a_second_time() {
        let mm = |typed| args::size(typed).unwrap();
        let answered = |answers: &[bool]| {
            let mut typed = ["2", "15.5", "22"].map(mm).into_iter();
            let mut answers = answers.iter().copied();
            let mut asked = Vec::new();
            let size = meant(
                |size| size == mm("22"),
                || typed.next().ok_or_else(|| Failure::input("nothing more is typed")),
                |size| {
                    asked.push(size);
                    answers.next().ok_or_else(|| Failure::input("nothing more is answered"))
                },
            );
            (size.ok(), asked)
        };
        // The label of a trainer, typed for its size; a size she means; one of the plan's, not asked about.
        assert_eq!(answered(&[false, true]), (Some(mm("15.5")), vec![mm("2"), mm("15.5")]));
        assert_eq!(answered(&[false, false]), (Some(mm("22")), vec![mm("2"), mm("15.5")]));
        assert_eq!(answered(&[]), (None, vec![mm("2")]), "without an answer nothing is taken");
    }
}
