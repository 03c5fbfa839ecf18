//! One page of the form: its fields as they were typed, what has to be put right on it, and beside it what is
//! said back.

use super::super::visit::{Shown, Visit};
use super::fields::Asks;
use super::page::Leaf;
use super::{Open, groups, news};
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Button, How, Look, Page, Part, Press, Sheet, Tab};
use frond_core::programme::draft::Place;

pub(super) fn page(visit: &mut Visit<'_>, open: &Open, leaf: Leaf, query: &Fields) -> Shown {
    let words = &visit.words;
    let draft = &open.kept.draft;
    let asks = Asks::of(draft, words);
    let mut fields = groups::fields(&asks, leaf);
    // Before anything was saved nobody is told what is missing.
    let saved = query.first("saved") == Some("yes");
    let mut problems = Vec::new();
    let checked = open.kept.check(visit.moment.now);
    if saved {
        let here = checked.mistakes.iter().filter(|mistake| leaf.holds(&mistake.place));
        let mut short = Vec::new();
        for mistake in here {
            let says = mistake.say(draft, words);
            let at = draft.place_said(&mistake.place, words);
            let long = words
                .text("compose-page-mistake", &[("at", at.into()), ("says", says.clone().into())]);
            short.push(Problem::at(mistake.place.as_str(), says));
            problems.push(Problem::at(mistake.place.as_str(), long));
        }
        fields.iter_mut().for_each(|field| field.mark(&short));
    }
    let sheet = Sheet {
        to: open.to(&leaf.address()),
        say_to: open.to(&format!("said/{}", leaf.address())),
        hidden: vec![("shape".to_owned(), draft.shape.to_string())],
        fields,
        submit: words.text("compose-save", &[]),
        also: vec![Button {
            then: "check".to_owned(),
            label: words.text("compose-save-and-check", &[]),
            about: None,
        }],
        said_title: words.text("compose-said", &[]),
        said: groups::said(visit, open, leaf),
    };
    let mut page = Page::new(&visit.frame, leaf.title(draft, words))
        .in_window(words.text("compose-window", &[]))
        .under(under(visit, open))
        .script("/compose.js")
        .part(tabs(visit, open, Here::Leaf(leaf)));
    if saved {
        let says = if problems.is_empty() {
            words.text("compose-saved", &[])
        } else {
            words.text("compose-saved-missing", &[])
        };
        page = page.part(Part::Text { says: vec![says], class: "lead" });
    }
    if let Some(undo) = undo(visit, open, leaf) {
        page = page.part(undo);
    }
    // On the first page, where a revision is begun; and again where it is finished.
    if let (Leaf::Who, Some(news)) = (leaf, news::part(visit, open)) {
        page = page.part(news);
    }
    let mut page = page.problems(problems).part(Part::Sheet(sheet));
    if leaf == Leaf::Steps {
        page = page.quiet([words.text("compose-page-judgement", &[])]);
    }
    Ok(page.answer_as(axum::http::StatusCode::OK))
}

/// Whose plan, and which revision it becomes.
pub(super) fn under(visit: &Visit<'_>, open: &Open) -> String {
    let revision = i64::from(open.kept.revision.get());
    let whom = open.kept.draft.for_whom.trimmed();
    if whom.is_empty() {
        visit.words.text("compose-under-nobody", &[("revision", revision.into())])
    } else {
        let values = [("whom", whom.into()), ("revision", revision.into())];
        visit.words.text("compose-under", &values)
    }
}

/// The ways between the pages of a draft. From a page of the form they lead through it, so that what was typed
/// is kept on the way.
pub(super) fn tabs(visit: &Visit<'_>, open: &Open, here: Here) -> Part {
    let words = &visit.words;
    let typed = matches!(here, Here::Leaf(_));
    let tab = |label: String, end: String, own: bool| Tab {
        label,
        to: open.to(&end),
        here: own,
        then: typed.then(|| format!("go:{end}")),
    };
    let own = |leaf: Leaf| match here {
        Here::Leaf(Leaf::Step(_)) => leaf == Leaf::Steps,
        Here::Leaf(here) => leaf == here,
        Here::Other(_) => false,
    };
    let mut tabs: Vec<Tab> = Leaf::ALL
        .iter()
        .map(|leaf| tab(leaf.title(&open.kept.draft, words), leaf.address(), own(*leaf)))
        .collect();
    for (end, title) in [
        ("check", words.text("compose-page-check", &[])),
        ("preview", words.text("compose-page-preview", &[])),
        ("differences", words.text("compose-page-differences", &[])),
    ] {
        if end != "differences" || open.kept.earlier.is_some() {
            tabs.push(tab(title, end.to_owned(), matches!(here, Here::Other(own) if own == end)));
        }
    }
    Part::Tabs { label: words.text("compose-tabs", &[]), tabs }
}

/// Which page it is.
#[derive(Clone, Copy)]
pub(super) enum Here {
    /// One of the form.
    Leaf(Leaf),
    /// One that is only looked at.
    Other(&'static str),
}

/// What was taken out last can be put back, on the page that lists it.
fn undo(visit: &Visit<'_>, open: &Open, leaf: Leaf) -> Option<Part> {
    let draft = &open.kept.draft;
    let removed = draft.removed.as_ref()?;
    let list = Place::new(removed.list.clone());
    let place = match removed.at {
        Some(at) => list.at(at),
        None => list,
    };
    if Leaf::listing(&place) != leaf {
        return None;
    }
    let words = &visit.words;
    let press = Press {
        label: words.text("compose-put-back", &[]),
        how: How::Through("put_back".to_owned()),
        look: Look::Equal,
    };
    Some(Part::Notice { says: vec![words.text("compose-taken-out", &[])], press: Some(press) })
}
