//! One entry with everything that became of it, and putting it right. What stands there now is filled in;
//! the first version stays visible.

use axum::response::Response;
use frond_core::companion::{Request, Told};
use frond_core::diary::entry::{EntryId, Goal};
use frond_core::moment::Stamp;
use frond_core::programme::values::{Passage, Rating};
use frond_core::screens::{CorrectForm, CorrectScreen, Does, EntryScreen, Screen, TextField};

use super::visit::{Shown, Visit};
use super::{log, own_words, signs, when};
use crate::pages::form::{Fields, Problem, code};
use crate::pages::parts::{Choice, Field, Form, Kind, Look, Page, Part};

fn named(visit: &Visit<'_>, entry: &str) -> Result<EntryId, Response> {
    entry.parse().map_err(|_| visit.nothing_here())
}

pub(super) fn entry(visit: &mut Visit<'_>, entry: &str) -> Shown {
    let of = named(visit, entry)?;
    visit.look(Does::Entry { of })
}

pub(super) fn page(visit: &mut Visit<'_>, screen: &EntryScreen) -> Shown {
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title)
        .under(&screen.when)
        .text(screen.says.clone())
        .quiet(screen.notes.clone())
        .text(screen.nobody_told.clone());
    if !screen.versions.is_empty() {
        page = page.part(Part::Heading { text: screen.versions_title.clone() });
    }
    for version in &screen.versions {
        let parts = vec![Part::Text { says: version.says.clone(), class: "" }];
        page = page.part(Part::Card { title: version.written.clone(), here: None, parts });
    }
    Ok(page.presses(presses).answer())
}

pub(super) fn correct(visit: &mut Visit<'_>, entry: &str) -> Shown {
    let of = named(visit, entry)?;
    visit.look(Does::Correct { of })
}

/// The fields of each form, with what stands there now or what was typed.
fn fields_of(screen: &CorrectScreen, fields: &Fields) -> Vec<Field> {
    let typed = |name: &str, now: Option<String>| {
        if fields.is_empty() {
            now.unwrap_or_default()
        } else {
            fields.first(name).unwrap_or_default().to_owned()
        }
    };
    let text = |field: &TextField| {
        let kind = Kind::Passage { value: typed("text", field.current.clone()) };
        Field::new("text", &field.label, kind)
    };
    match &screen.form {
        CorrectForm::Question(field) | CorrectForm::LookForward(field) => vec![text(field)],
        CorrectForm::Function { ask, current } => {
            vec![own_words::able(ask, "able", &typed("able", Some(current.get().to_string())))]
        }
        CorrectForm::Goal { ask, current } => {
            vec![own_words::reached(ask, "reached", &typed("reached", Some(code(current))))]
        }
        CorrectForm::TimeOff(days) => own_words::days(days, fields),
        CorrectForm::Signs { signs: all, current, note } => {
            let now: Vec<(String, String)> =
                current.iter().map(|sign| ("sign".to_owned(), code(sign))).collect();
            let now = Fields::of(now);
            let mut all = signs::grouped(all, if fields.is_empty() { &now } else { fields });
            let kind = Kind::Passage { value: typed("note", note.current.clone()) };
            all.push(Field::new("note", &note.label, kind));
            all
        }
        CorrectForm::Nothing => vec![],
    }
}

pub(super) fn correct_page(
    visit: &mut Visit<'_>,
    screen: &CorrectScreen,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let presses = visit.presses(&screen.actions)?;
    let mut all = fields_of(screen, fields);
    let some = !all.is_empty();
    all.push(when::changed(visit, screen.when_label.clone(), fields));
    let mut page = Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .under(&screen.when)
        .text([screen.was.clone()])
        .text(screen.says.clone())
        .text(screen.nobody_told.clone());
    if some {
        let mut form = Form::to(format!("/entry/{}/correct", screen.of), &screen.save);
        form.look = Look::Next;
        form.hidden = vec![("id", screen.id.to_string())];
        form.fields = all;
        page = page.form(form);
    }
    Ok(page.presses(presses).answer())
}

pub(super) fn corrected(visit: &mut Visit<'_>, entry: &str, fields: &Fields) -> Shown {
    let of = named(visit, entry)?;
    match visit.ask(Request::Correct(of))? {
        Screen::LogSession(screen) => log::write(visit, screen, fields),
        Screen::Correct(screen) => write(visit, screen, fields),
        other => visit.screen(&other),
    }
}

fn write(visit: &mut Visit<'_>, screen: CorrectScreen, fields: &Fields) -> Shown {
    let screen = CorrectScreen { id: visit.id_of(fields)?, ..screen };
    let problem = match told(visit, &screen, fields) {
        Ok((told, happened)) => {
            let told = Told::Correct { of: screen.of, told: Box::new(told) };
            match visit.write(screen.id, told, happened)? {
                Ok(kept) => return Ok(kept),
                Err(problem) => problem,
            }
        }
        Err(problem) => problem,
    };
    correct_page(visit, &screen, fields, vec![problem])
}

fn told(
    visit: &Visit<'_>,
    screen: &CorrectScreen,
    fields: &Fields,
) -> Result<(Told, Option<Stamp>), Problem> {
    let text = || own_words::text(visit, fields);
    let told = match &screen.form {
        CorrectForm::Question(_) => Told::Question(text()?),
        CorrectForm::LookForward(_) => Told::LookForward(text()?),
        CorrectForm::Function { ask, .. } => {
            let able = own_words::able_of(visit, fields, "able")?;
            Told::Function { activity: ask.activity.clone(), able }
        }
        CorrectForm::Goal { ask, .. } => {
            let reached = own_words::reached_of(visit, fields, "reached")?;
            Told::Goal { goal: ask.goal.clone(), reached }
        }
        CorrectForm::TimeOff(_) => own_words::days_of(visit, fields)?,
        CorrectForm::Signs { .. } => {
            let note: Option<Passage> = log::note(visit, fields)?;
            Told::Signs { signs: signs::chosen(fields), note }
        }
        // There is no such form.
        CorrectForm::Nothing => {
            return Err(Problem {
                field: String::new(),
                says: visit.words.text("page-malformed", &[]),
            });
        }
    };
    Ok((told, when::read(visit, fields)?))
}

/// So that the types of the answers stand beside the forms that ask for them.
pub(super) fn numbers(chosen: &str) -> Vec<Choice> {
    (u64::from(Rating::LEAST)..=u64::from(Rating::MOST))
        .map(|number| number.to_string())
        .map(|number| Choice { chosen: number == chosen, label: number.clone(), value: number })
        .collect()
}

/// The goal that a form's text stands for.
pub(super) fn goal(text: &str) -> Option<Goal> {
    Goal::try_from(text.parse::<i8>().ok()?).ok()
}
