//! Erasing: what goes and what no erasing can reach is said first; not erasing is the larger button.

use axum::response::Response;
use frond_core::companion::Request;
use frond_core::diary::erase::Erase;
use frond_core::screens::{EraseScreen, Screen};

use super::keeping::needs_passphrase;
use super::visit::{Shown, Visit, see};
use super::when;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Form, How, Kind, Look, Page, Part, Press};

/// `to`: where erasing is sent.
pub(super) fn page(
    visit: &mut Visit<'_>,
    screen: &EraseScreen,
    to: &str,
    fields: Vec<(&'static str, String)>,
) -> Shown {
    let next = visit.press(&screen.next, Look::Next)?;
    let confirm = Press {
        label: screen.confirm.label.clone(),
        how: How::Send { to: to.to_owned(), fields },
        look: Look::Equal,
    };
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.says.clone())
        .part(Part::Notice { says: screen.out_of_reach.clone(), press: None })
        .presses(vec![next, confirm])
        .answer())
}

fn looked_at(
    visit: &mut Visit<'_>,
    request: Request,
    to: &str,
    fields: Vec<(&'static str, String)>,
) -> Shown {
    needs_passphrase(visit)?;
    match visit.ask(request)? {
        Screen::Erase(screen) => page(visit, &screen, to, fields),
        other => visit.show(&other),
    }
}

fn gone(visit: &mut Visit<'_>, what: Erase) -> Shown {
    needs_passphrase(visit)?;
    let moment = visit.moment;
    let done =
        visit.diary.whole(|companion, keeper| companion.erase(what, keeper, &moment).map(Some));
    done.map_err(|trouble| visit.trouble(&trouble))?;
    Ok(see("/keeping/done/erased"))
}

fn named(visit: &Visit<'_>, entry: &str) -> Result<Erase, Response> {
    entry.parse().map(Erase::Entry).map_err(|_| visit.nothing_here())
}

pub(super) fn entry(visit: &mut Visit<'_>, entry: &str) -> Shown {
    let what = named(visit, entry)?;
    looked_at(visit, Request::Erase(what), &format!("/erase/entry/{entry}"), vec![])
}

pub(super) fn entry_gone(visit: &mut Visit<'_>, entry: &str, _: &Fields) -> Shown {
    let what = named(visit, entry)?;
    gone(visit, what)
}

/// Which days?
pub(super) fn days(visit: &mut Visit<'_>) -> Shown {
    which_days(visit, &Fields::default(), vec![])
}

fn which_days(visit: &mut Visit<'_>, fields: &Fields, problems: Vec<Problem>) -> Shown {
    needs_passphrase(visit)?;
    let words = &visit.words;
    let day = |name: &str, label: String| {
        let value = fields.first(name).unwrap_or_default().to_owned();
        let kind = Kind::Line { input: "date", value, mode: "", offers: vec![], short: false };
        Field::new(name, label, kind)
    };
    let form = Form {
        to: "/erase/days".to_owned(),
        upload: false,
        hidden: vec![],
        fields: vec![
            day("from", words.text("page-erase-from", &[])),
            day("to", words.text("page-erase-to", &[])),
        ],
        submit: words.text("page-erase-look", &[]),
        look: Look::Equal,
        also: vec![],
    };
    let back = Press::go(words.text("action-keeping", &[]), "/keeping");
    Ok(Page::new(&visit.frame, words.text("page-erase-days", &[]))
        .problems(problems)
        .form(form)
        .presses(vec![back])
        .answer())
}

fn span(visit: &Visit<'_>, fields: &Fields) -> Result<Erase, Vec<Problem>> {
    let mut problems = Vec::new();
    let mut read = |name: &str| match when::day(visit, fields, name) {
        Ok(Some(day)) => Some(day),
        Ok(None) => {
            problems.push(Problem::at(name, visit.words.text("page-error-day", &[])));
            None
        }
        Err(problem) => {
            problems.push(problem);
            None
        }
    };
    match (read("from"), read("to")) {
        (Some(from), Some(to)) if from <= to => Ok(Erase::Days { from, to }),
        (Some(_), Some(_)) => {
            let says = visit.words.text("refusal-end-before-start", &[]);
            Err(vec![Problem::at("to", says)])
        }
        _ => Err(problems),
    }
}

pub(super) fn days_asked(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    needs_passphrase(visit)?;
    match span(visit, fields) {
        Ok(what @ Erase::Days { from, to }) => {
            let span = vec![("from", from.to_string()), ("to", to.to_string())];
            looked_at(visit, Request::Erase(what), "/erase/days/now", span)
        }
        Ok(Erase::Entry(_)) => Err(visit.malformed()),
        Err(problems) => which_days(visit, fields, problems),
    }
}

pub(super) fn days_gone(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    match span(visit, fields) {
        Ok(what) => gone(visit, what),
        Err(_) => Err(visit.malformed()),
    }
}

pub(super) fn all(visit: &mut Visit<'_>) -> Shown {
    looked_at(visit, Request::EraseAll, "/erase/all", vec![])
}

pub(super) fn all_gone(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    needs_passphrase(visit)?;
    let done = visit.diary.whole(|companion, keeper| companion.end(keeper).map(|()| None));
    done.map_err(|trouble| visit.trouble(&trouble))?;
    Ok(see("/"))
}
