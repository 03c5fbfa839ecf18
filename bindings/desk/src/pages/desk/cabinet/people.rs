//! The list.

use frond_core::screens::{PeopleAsked, PeopleOrder, PeopleScreen};

use super::super::visit::{Shown, Visit, see};
use super::Opened;
use crate::clinic::cabinet::Unfit;
use crate::pages::form::{Fields, code, decode};
use crate::pages::parts::{Choice, Field, Form, Kind, Look, Page, Part, Person, Press};

pub(super) fn people(visit: &mut Visit<'_>) -> Shown {
    shown(visit, 0)
}

pub(super) fn page(visit: &mut Visit<'_>, number: &str) -> Shown {
    match number.parse() {
        Ok(number) => shown(visit, number),
        Err(_) => Err(visit.nothing_here()),
    }
}

fn shown(visit: &Visit<'_>, number: usize) -> Shown {
    let opened = visit.cabinet()?;
    let asked = PeopleAsked { page: number, ..opened.clinic.cabinet.asked() };
    let screen = PeopleScreen::new(&visit.words, opened.held().digests(), &asked);
    let mut page = Page::new(&visit.frame, &screen.title);
    if let Some(job) = opened.clinic.cabinet.job().filter(|job| !job.progress().ended) {
        page = super::bring::going_on(visit, page, &job.progress());
    }
    page = page.text(screen.empty.clone());
    page = amiss(visit, &opened, page);
    let bring = Press::go(visit.words.text("cabinet-bring", &[]), "/bring");
    if screen.empty.is_empty() {
        page = page.presses(vec![bring.looking(Look::Equal)]);
        page = page.part(Part::Form(form(&screen))).quiet(screen.says.clone());
        page = page.part(Part::People { people: screen.people.iter().map(person).collect() });
        let around = [&screen.before, &screen.after].into_iter().flatten();
        let around = around.map(|(to, label)| Press::go(label, format!("/people/page/{to}")));
        page = page.presses(around.collect()).presses(vec![
            Press::go(visit.words.text("cabinet-what-if-all", &[]), "/rules"),
            Press::go(visit.words.text("cabinet-insight-all", &[]), "/insight"),
        ]);
    } else {
        page = page.presses(vec![bring.looking(Look::Next)]);
    }
    Ok(page.answer())
}

fn person(line: &frond_core::screens::PersonLine) -> Person {
    Person {
        to: format!("/people/{}", line.diary),
        name: line.name.clone(),
        marks: line.marks.clone(),
        facts: line.facts.clone(),
    }
}

fn form(screen: &PeopleScreen) -> Form {
    let choices = screen.orders.iter().map(|own| Choice {
        value: code(&own.order),
        label: own.label.clone(),
        chosen: own.chosen,
    });
    let mut form = Form::to("/people", &screen.look);
    form.look = Look::Equal;
    let find = Kind::Line {
        input: "search",
        value: screen.found_by.clone(),
        mode: "search",
        offers: vec![],
        short: false,
    };
    let order = Field::new("order", &screen.order, Kind::One(choices.collect()));
    form.fields = vec![
        Field::new("find", &screen.find, find).hint(&screen.find_hint),
        // The usual order is right for most; another one is one press away.
        Field::new("how", &screen.order, Kind::Folded { parts: vec![order], open: false }),
    ];
    form
}

/// What is wrong with the cabinet itself.
fn amiss<'a>(visit: &Visit<'_>, opened: &Opened, mut page: Page<'a>) -> Page<'a> {
    let words = &visit.words;
    let cabinet = opened.held();
    if cabinet.lost_pins() {
        page = page
            .part(Part::Notice { says: vec![words.text("cabinet-pins-lost", &[])], press: None });
    }
    let unfit = cabinet.unfit();
    if unfit.is_empty() {
        return page;
    }
    let many = |which| unfit.iter().filter(|(_, own)| *own == which).count();
    let mut says = vec![words.text("cabinet-unfit", &[("count", unfit.len().into())])];
    for (number, text) in [
        (
            many(Unfit::Damaged),
            words.text("cabinet-unfit-damaged", &[("count", many(Unfit::Damaged).into())]),
        ),
        (
            many(Unfit::NotOpened),
            words.text("cabinet-unfit-not-opened", &[("count", many(Unfit::NotOpened).into())]),
        ),
        (
            many(Unfit::OtherKey),
            words.text("cabinet-unfit-other-key", &[("count", many(Unfit::OtherKey).into())]),
        ),
    ] {
        if number > 0 {
            says.push(text);
        }
    }
    page.part(Part::Notice { says, press: None })
}

/// What is looked for from now on.
pub(super) fn look(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let opened = visit.cabinet()?;
    let find: String = fields.first("find").unwrap_or_default().chars().take(200).collect();
    let order = fields.first("order").and_then(decode::<PeopleOrder>).unwrap_or_default();
    opened.clinic.cabinet.ask(PeopleAsked { find, order, page: 0 });
    Ok(see("/people"))
}
