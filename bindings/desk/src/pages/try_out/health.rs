//! The questions about health: the whole list, group by group, and those about holding the breath. Nothing
//! is answered beforehand; what was answered comes back when something is missing.

use std::collections::BTreeMap;

use frond_core::companion::{Request, Told};
use frond_core::safety::{Answer, FullList, HoldCondition, Sign, SignGroup};
use frond_core::screens::{AnswerChoice, HoldQuestionsScreen, Screen, ScreeningScreen};

use super::visit::{Shown, Visit};
use crate::pages::form::{Fields, Problem, code, decode};
use crate::pages::parts::{Choice, Field, Form, Kind, Look, Page};

pub(super) fn screening_page(
    visit: &mut Visit<'_>,
    screen: &ScreeningScreen,
    fields: &Fields,
) -> Shown {
    let mut form = Form::to("/screening", &screen.send);
    form.hidden = vec![("id", screen.id.to_string())];
    let mut missing = Vec::new();
    for group in &screen.groups {
        let name = format!("group-{}", code(&group.group));
        // What a person answered to a question herself stands; "no" to its group answers the others.
        let mut questions = Vec::new();
        for question in &group.questions {
            let name = format!("sign-{}", code(&question.sign));
            let own = fields.first(&name).and_then(decode);
            if screen.left.is_some() && question.answered.is_none() && group.open {
                missing.push(name.clone());
            }
            let kind = Kind::One(answers(&screen.answers, own));
            questions.push(Field::new(&name, &question.ask, kind));
        }
        if screen.left.is_some() && group.answered.is_none() {
            missing.push(name.clone());
        }
        let kind = Kind::One(answers(&screen.answers, group.answered));
        form.fields.push(Field::new(&name, &group.name, kind).hint(group.ask.clone()));
        let folded = Kind::Folded { parts: questions, open: group.open };
        form.fields.push(Field::new(&format!("in-{name}"), &group.each, folded));
    }
    let mut problems: Vec<Problem> = screen
        .left
        .iter()
        .map(|left| Problem { field: String::new(), says: left.clone() })
        .collect();
    let says = visit.words.text("page-error-answer", &[]);
    problems.extend(missing.iter().map(|name| Problem::at(name, says.clone())));
    let presses = visit.presses(&screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .in_window(visit.words.text("action-screening", &[]))
        .problems(problems)
        .text(screen.why.clone())
        .text([screen.how.clone(), screen.nobody_told.clone()])
        .form(form)
        .presses(presses)
        .answer())
}

fn answers(choices: &[AnswerChoice], chosen: Option<Answer>) -> Vec<Choice> {
    choices
        .iter()
        .map(|choice| Choice {
            value: code(&choice.answer),
            label: choice.label.clone(),
            chosen: chosen == Some(choice.answer),
        })
        .collect()
}

fn list_of(fields: &Fields) -> FullList {
    let mut list = FullList::default();
    let answered = |name: String| fields.first(&name).and_then(decode::<Answer>);
    for group in SignGroup::ALL {
        let Some(answer) = answered(format!("group-{}", code(&group))) else { continue };
        list.answer_group(group, answer);
        // What was answered before its group was answered with no is still on the page, folded.
        for sign in group.signs() {
            if let Some(answer) = answered(format!("sign-{}", code(&sign))) {
                list.answer(sign, answer);
            }
        }
    }
    for sign in Sign::asked() {
        if let Some(answer) = answered(format!("sign-{}", code(&sign))) {
            list.answer(sign, answer);
        }
    }
    list
}

pub(super) fn screening_told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    let list = list_of(fields);
    if list.signs().is_ok() {
        return match visit.write(id, Told::FullList(list), None)? {
            Ok(kept) => Ok(kept),
            Err(problem) => {
                Err(visit.sorry(axum::http::StatusCode::UNPROCESSABLE_ENTITY, problem.says))
            }
        };
    }
    match visit.ask(Request::Screening { so_far: list, sent: true })? {
        Screen::Screening(screen) => {
            screening_page(visit, &ScreeningScreen { id, ..screen }, fields)
        }
        other => visit.screen(&other),
    }
}

pub(super) fn holds_page(
    visit: &mut Visit<'_>,
    screen: &HoldQuestionsScreen,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let mut form = Form::to("/hold-questions", &screen.send);
    form.look = Look::Next;
    form.hidden = vec![("id", screen.id.to_string())];
    form.fields = screen
        .questions
        .iter()
        .map(|question| {
            let name = format!("condition-{}", code(&question.condition));
            let own = fields.first(&name).and_then(decode);
            Field::new(&name, &question.ask, Kind::One(answers(&screen.answers, own)))
        })
        .collect();
    let presses = visit.presses(&screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .text([screen.why.clone(), screen.caution.clone()])
        .form(form)
        .presses(presses)
        .answer())
}

pub(super) fn holds_told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    let (mut all, mut problems) = (BTreeMap::new(), Vec::new());
    for condition in HoldCondition::ALL {
        let name = format!("condition-{}", code(&condition));
        match fields.first(&name).and_then(decode::<Answer>) {
            Some(answer) => {
                all.insert(condition, answer);
            }
            None => {
                problems.push(Problem::at(&name, visit.words.text("page-error-answer", &[])));
            }
        }
    }
    if problems.is_empty() {
        match visit.write(id, Told::HoldConditions(all), None)? {
            Ok(kept) => return Ok(kept),
            Err(problem) => problems.push(problem),
        }
    }
    match visit.ask(Request::HoldQuestions)? {
        Screen::HoldQuestions(screen) => {
            holds_page(visit, &HoldQuestionsScreen { id, ..screen }, fields, problems)
        }
        other => visit.screen(&other),
    }
}
