//! What she tells of her own accord: questions for the visit, something to look forward to, time off, how
//! able she is, how far a goal is reached, and whether it settled. Nothing is filled in beforehand.

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::{Goal, Settled};
use frond_core::programme::values::{Line, Passage, Rating};
use frond_core::screens::{
    ActivitiesScreen, ActivityQuestion, DaysField, Does, GoalQuestion, LookForwardScreen,
    QuestionsScreen, Screen, SettledScreen, TimeOffScreen,
};

use super::overview::section;
use super::visit::{Shown, Visit};
use super::{entry, when};
use crate::pages::form::{Fields, Problem, code, decode};
use crate::pages::parts::{Choice, Field, Form, How, Kind, Look, Page, Part, Press};

/// A text of her own.
pub(super) fn text(visit: &Visit<'_>, fields: &Fields) -> Result<Passage, Problem> {
    let text = fields.first("text").unwrap_or_default();
    Passage::new(text).map_err(|_| {
        let says = if text.is_empty() {
            visit.words.text("page-error-empty", &[])
        } else {
            visit.words.text("page-error-note", &[])
        };
        Problem::at("text", says)
    })
}

fn passage(label: &str, fields: &Fields) -> Field {
    let value = fields.first("text").unwrap_or_default().to_owned();
    Field::new("text", label, Kind::Passage { value })
}

pub(super) fn questions_page(
    visit: &mut Visit<'_>,
    screen: &QuestionsScreen,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let mut parts = Vec::new();
    for question in &screen.questions {
        parts.push(section(visit, question, Look::Quiet)?);
    }
    let presses = visit.presses(&screen.actions)?;
    let mut form = Form::to("/questions", &screen.new.save);
    form.hidden = vec![("id", screen.id.to_string())];
    form.fields = vec![passage(&screen.new.label, fields)];
    let mut page = Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .text(screen.says.clone())
        .form(form)
        .text(screen.empty.clone());
    for part in parts {
        page = page.part(part);
    }
    Ok(page.presses(presses).answer())
}

pub(super) fn question_told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    let problem = match text(visit, fields) {
        Ok(text) => match visit.write(id, Told::Question(text), None)? {
            Ok(kept) => return Ok(kept),
            Err(problem) => problem,
        },
        Err(problem) => problem,
    };
    match visit.ask(Request::Questions)? {
        Screen::Questions(screen) => {
            questions_page(visit, &QuestionsScreen { id, ..screen }, fields, vec![problem])
        }
        other => visit.screen(&other),
    }
}

pub(super) fn look_forward_page(
    visit: &mut Visit<'_>,
    screen: &LookForwardScreen,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let presses = visit.presses(&screen.actions)?;
    let mut form = Form::to("/look-forward", &screen.new.save);
    form.hidden = vec![("id", screen.id.to_string())];
    form.fields = vec![passage(&screen.new.label, fields)];
    let mut page =
        Page::new(&visit.frame, &screen.title).problems(problems).text(screen.says.clone());
    if let Some(present) = &screen.present {
        page = page.part(Part::Notice { says: vec![present.clone()], press: None });
    }
    Ok(page.form(form).presses(presses).answer())
}

pub(super) fn look_forward_told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    let problem = match text(visit, fields) {
        Ok(text) => match visit.write(id, Told::LookForward(text), None)? {
            Ok(kept) => return Ok(kept),
            Err(problem) => problem,
        },
        Err(problem) => problem,
    };
    match visit.ask(Request::LookForward)? {
        Screen::LookForward(screen) => {
            look_forward_page(visit, &LookForwardScreen { id, ..screen }, fields, vec![problem])
        }
        other => visit.screen(&other),
    }
}

/// A first and a last day, with what stands there now.
pub(super) fn days(days: &DaysField, fields: &Fields) -> Vec<Field> {
    let day = |name: &str, label: &str, now: Option<String>| {
        let typed = fields.first(name).map(str::to_owned);
        let value = typed.or_else(|| now.filter(|_| fields.is_empty())).unwrap_or_default();
        let kind = Kind::Line { input: "date", value, mode: "", offers: vec![], short: false };
        Field::new(name, label, kind)
    };
    let now = days.current;
    vec![
        day("from", &days.from, now.map(|(from, _)| from.to_string())),
        day("to", &days.to, now.map(|(_, to)| to.to_string())),
    ]
}

pub(super) fn days_of(visit: &Visit<'_>, fields: &Fields) -> Result<Told, Problem> {
    let day = |name: &str| {
        when::day(visit, fields, name)?
            .ok_or_else(|| Problem::at(name, visit.words.text("page-error-day", &[])))
    };
    let (from, to) = (day("from")?, day("to")?);
    if to < from {
        return Err(Problem::at("to", visit.words.text("refusal-end-before-start", &[])));
    }
    Ok(Told::TimeOff { from, to })
}

pub(super) fn time_off_page(
    visit: &mut Visit<'_>,
    screen: &TimeOffScreen,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let mut standing = Vec::new();
    for one in &screen.standing {
        standing.push(section(visit, one, Look::Quiet)?);
    }
    let presses = visit.presses(&screen.actions)?;
    let mut form = Form::to("/time-off", &screen.days.save);
    form.hidden = vec![("id", screen.id.to_string())];
    form.fields = days(&screen.days, fields);
    let mut page = Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .text(screen.says.clone())
        .form(form)
        .text(screen.empty.clone());
    for one in standing {
        page = page.part(one);
    }
    Ok(page.presses(presses).answer())
}

pub(super) fn time_off_told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    let problem = match days_of(visit, fields) {
        Ok(told) => match visit.write(id, told, None)? {
            Ok(kept) => return Ok(kept),
            Err(problem) => problem,
        },
        Err(problem) => problem,
    };
    match visit.ask(Request::TimeOff)? {
        Screen::TimeOff(screen) => {
            time_off_page(visit, &TimeOffScreen { id, ..screen }, fields, vec![problem])
        }
        other => visit.screen(&other),
    }
}

pub(super) fn settled(visit: &mut Visit<'_>, of: &str) -> Shown {
    match of.parse() {
        Ok(of) => visit.look(Does::Settled { of }),
        Err(_) => Err(visit.nothing_here()),
    }
}

pub(super) fn settled_page(visit: &mut Visit<'_>, screen: &SettledScreen) -> Shown {
    let answers = screen.answers.iter().map(|choice| Press {
        label: choice.label.clone(),
        how: How::Send {
            to: format!("/settled/{}", screen.of),
            fields: vec![("answer", code(&choice.answer)), ("id", screen.id.to_string())],
        },
        look: Look::Equal,
    });
    let answers = answers.collect();
    let presses = visit.presses(&screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.says.clone())
        .presses(answers)
        .text([screen.nobody_told.clone()])
        .presses(presses)
        .answer())
}

pub(super) fn settled_told(visit: &mut Visit<'_>, of: &str, fields: &Fields) -> Shown {
    let of = of.parse().map_err(|_| visit.nothing_here())?;
    match fields.first("answer").and_then(decode::<Settled>) {
        Some(answer) => visit.tell(fields, Told::Settled { of, answer }),
        None => Err(visit.malformed()),
    }
}

/// 0 to 10 for an activity.
pub(super) fn able(ask: &ActivityQuestion, name: &str, chosen: &str) -> Field {
    let kind = Kind::Scale {
        least: ask.least.clone(),
        most: ask.most.clone(),
        numbers: entry::numbers(chosen),
        unsaid: None,
    };
    Field::new(name, &ask.question, kind)
}

pub(super) fn able_of(visit: &Visit<'_>, fields: &Fields, name: &str) -> Result<Rating, Problem> {
    let number = fields.first(name).and_then(|number| number.parse().ok());
    number
        .and_then(|number| Rating::new(number).ok())
        .ok_or_else(|| Problem::at(name, visit.words.text("page-error-number", &[])))
}

/// How far a goal is reached.
pub(super) fn reached(ask: &GoalQuestion, name: &str, chosen: &str) -> Field {
    let choices = ask.choices.iter().map(|own| {
        let value = code(&own.reached);
        Choice { chosen: value == chosen, label: own.label.clone(), value }
    });
    Field::new(name, &ask.question, Kind::One(choices.collect()))
}

pub(super) fn reached_of(visit: &Visit<'_>, fields: &Fields, name: &str) -> Result<Goal, Problem> {
    fields
        .first(name)
        .and_then(entry::goal)
        .ok_or_else(|| Problem::at(name, visit.words.text("page-error-choice", &[])))
}

/// Each answer is kept for itself; a question that is left out stays without one.
pub(super) fn activities_page(
    visit: &mut Visit<'_>,
    screen: &ActivitiesScreen,
    problems: Vec<Problem>,
) -> Shown {
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .text(screen.says.clone())
        .text(screen.empty.clone());
    let sending = |id: String, what: (&'static str, String), field: Field| {
        let mut form = Form::to("/activities", &screen.save);
        form.look = Look::Equal;
        form.hidden = vec![("id", id), what];
        form.fields = vec![field];
        form
    };
    for (number, ask) in screen.activities.iter().enumerate() {
        let field = able(ask, "able", "").known_as(format!("able-{number}"));
        let what = ("activity", ask.activity.as_str().to_owned());
        page = page.form(sending(ask.id.to_string(), what, field));
    }
    for (number, ask) in screen.goals.iter().enumerate() {
        let field = reached(ask, "reached", "").known_as(format!("reached-{number}"));
        let what = ("goal", ask.goal.as_str().to_owned());
        page = page.form(sending(ask.id.to_string(), what, field));
    }
    Ok(page.presses(presses).answer())
}

pub(super) fn activity_told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    let line = |name: &str| fields.first(name).and_then(|text| Line::new(text).ok());
    let (activity, goal) = (line("activity"), line("goal"));
    let told = match (activity.clone(), goal.clone()) {
        (Some(activity), _) => {
            able_of(visit, fields, "able").map(|able| Told::Function { activity, able })
        }
        (None, Some(goal)) => {
            reached_of(visit, fields, "reached").map(|reached| Told::Goal { goal, reached })
        }
        (None, None) => return Err(visit.malformed()),
    };
    let problem = match told {
        Ok(told) => match visit.write(id, told, None)? {
            Ok(kept) => return Ok(kept),
            Err(problem) => problem,
        },
        Err(problem) => problem,
    };
    match visit.ask(Request::Activities)? {
        Screen::Activities(screen) => {
            // Each of the forms has a field of its own on the page.
            let able =
                screen.activities.iter().position(|ask| Some(&ask.activity) == activity.as_ref());
            let reached = screen.goals.iter().position(|ask| Some(&ask.goal) == goal.as_ref());
            let field = able
                .map(|number| format!("able-{number}"))
                .or_else(|| reached.map(|number| format!("reached-{number}")));
            let problem = Problem { field: field.unwrap_or_default(), ..problem };
            activities_page(visit, &screen, vec![problem])
        }
        other => visit.screen(&other),
    }
}
