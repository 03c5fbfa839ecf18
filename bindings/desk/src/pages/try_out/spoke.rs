//! "I spoke with ...": what is open, and what such a talk closes. Nothing is closed unless it is chosen.

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::{EntryId, SignKey};
use frond_core::programme::values::Line;
use frond_core::screens::{Screen, SpokeScreen};

use super::visit::{Shown, Visit};
use super::{log, when};
use crate::pages::form::{Fields, Problem, code, decode};
use crate::pages::parts::{Field, Form, Kind, Look, Page};

pub(super) fn told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    let mut problems = Vec::new();
    let with = fields.first("with").and_then(|with| Line::new(with).ok());
    if with.is_none() {
        problems.push(Problem::at("with", visit.words.text("page-error-with", &[])));
    }
    let happened = when::read(visit, fields).unwrap_or_else(|problem| {
        problems.push(problem);
        None
    });
    let signs: Vec<SignKey> = fields.all("open").filter_map(decode).collect();
    let closes_pause = fields.has("pause", "yes");
    if let (Some(with), true) = (with, problems.is_empty()) {
        let told = Told::Spoke { with, signs, closes_pause };
        match visit.write(id, told, happened)? {
            Ok(kept) => return Ok(kept),
            Err(problem) => problems.push(problem),
        }
    }
    let Screen::Spoke(screen) = visit.ask(Request::Spoke)? else {
        return Err(visit.nothing_here());
    };
    page(visit, &screen, id, fields, problems)
}

pub(super) fn page(
    visit: &mut Visit<'_>,
    screen: &SpokeScreen,
    id: EntryId,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let words = visit.words.clone();
    let with = Kind::Line {
        input: "text",
        value: fields.first("with").unwrap_or_default().to_owned(),
        mode: "",
        offers: screen.with_offer.iter().cloned().collect(),
        short: false,
    };
    let mut all = vec![
        Field::new("with", &screen.with_label, with),
        when::field(visit, screen.when_label.clone(), fields),
    ];
    if !screen.signs.is_empty() {
        let open = screen.signs.iter().map(|open| (code(&open.key), open.text.clone())).collect();
        let kind = Kind::Any(log::choices_of("open", open, fields));
        all.push(Field::new("open", words.text("page-closes", &[]), kind));
    }
    if let Some(pause) = &screen.pause {
        let yes = vec![("yes".to_owned(), words.text("page-may-go-on", &[]))];
        all.push(Field::new("pause", pause, Kind::Any(log::choices_of("pause", yes, fields))));
    }
    let form = Form {
        to: "/spoke".to_owned(),
        upload: false,
        hidden: vec![("id", id.to_string())],
        fields: all,
        submit: words.text("page-keep", &[]),
        look: Look::Next,
        also: vec![],
    };
    let presses = visit.presses(&screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .text(screen.empty.clone())
        .text([screen.note.clone()])
        .form(form)
        .presses(presses)
        .answer())
}
