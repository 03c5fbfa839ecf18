//! The cautions, to report one. Nothing is chosen beforehand.

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::EntryId;
use frond_core::safety::Sign;
use frond_core::screens::{Screen, SignChoice, SignsScreen};

use super::visit::{Shown, Visit};
use super::{log, when};
use crate::pages::form::{Fields, Problem, code, decode};
use crate::pages::parts::{Field, Form, Kind, Look, Page};

pub(super) fn told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    let read = log::note(visit, fields)
        .and_then(|note| when::read(visit, fields).map(|happened| (note, happened)));
    let problem = match read {
        Ok((note, happened)) => {
            let told = Told::Signs { signs: chosen(fields), note };
            match visit.write(id, told, happened)? {
                Ok(kept) => return Ok(kept),
                // What is told of all of them is told at the first.
                Err(problem) if chosen(fields).is_empty() => Problem::at("sign-0", problem.says),
                Err(problem) => problem,
            }
        }
        Err(problem) => problem,
    };
    let Screen::Signs(screen) = visit.ask(Request::Signs)? else {
        return Err(visit.nothing_here());
    };
    page(visit, &screen, id, fields, vec![problem])
}

pub(super) fn page(
    visit: &mut Visit<'_>,
    screen: &SignsScreen,
    id: EntryId,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let words = visit.words.clone();
    let mut all = grouped(&screen.signs, fields);
    let note = Kind::Passage { value: fields.first("note").unwrap_or_default().to_owned() };
    all.push(Field::new("note", words.text("page-own-words", &[]), note));
    all.push(when::field(visit, words.text("page-when", &[]), fields));
    let form = Form {
        to: "/signs".to_owned(),
        upload: false,
        hidden: vec![("id", id.to_string())],
        fields: all,
        submit: words.text("page-report", &[]),
        look: Look::Next,
        also: vec![],
    };
    let presses = visit.presses(&screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .text([screen.how.clone(), screen.nobody_told.clone()])
        .presses(presses)
        .form(form)
        .answer())
}

/// Those chosen; what is no caution is left out.
pub(super) fn chosen(fields: &Fields) -> Vec<Sign> {
    fields.all("sign").filter_map(decode).collect()
}

/// The cautions in their groups, those chosen that were sent.
pub(super) fn grouped(signs: &[SignChoice], fields: &Fields) -> Vec<Field> {
    let mut groups: Vec<(&str, Vec<(String, String)>)> = Vec::new();
    for choice in signs {
        let pair = (code(&choice.sign), choice.question.clone());
        match groups.last_mut() {
            Some((group, choices)) if *group == choice.group => choices.push(pair),
            _ => groups.push((&choice.group, vec![pair])),
        }
    }
    // Every group sends under one name, so that the sign alone decides what was chosen.
    groups
        .into_iter()
        .enumerate()
        .map(|(number, (group, choices))| {
            let choices = log::choices_of("sign", choices, fields);
            Field::new("sign", group, Kind::Any(choices)).known_as(format!("sign-{number}"))
        })
        .collect()
}
