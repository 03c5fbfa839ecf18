//! The programmes there are: drafts, finished revisions, and what was thrown away a moment ago.

use super::super::visit::{Shown, Visit, see};
use super::{FileId, programmes, trouble};
use crate::clinic::programmes::{Finished, Kept};
use crate::pages::form::Fields;
use crate::pages::parts::{How, Look, Page, Part, Press};

pub(super) fn page(visit: &mut Visit<'_>, query: &Fields) -> Shown {
    let listed = programmes(visit)?.list().map_err(|error| trouble(visit, error))?;
    let words = &visit.words;
    let mut page = Page::new(&visit.frame, words.text("compose-list-title", &[]))
        .in_window(words.text("compose-window", &[]));
    let away = query.first("away").and_then(FileId::parse).filter(|id| listed.away.contains(id));
    if let Some(id) = away {
        page = page.part(Part::Notice {
            says: vec![words.text("compose-thrown-away", &[])],
            press: Some(Press {
                label: words.text("compose-bring-back", &[]),
                how: send(&id, "bring-back"),
                look: Look::Equal,
            }),
        });
    }
    if listed.unread > 0 {
        let count = i64::try_from(listed.unread).unwrap_or(i64::MAX);
        let says = vec![words.text("compose-unread", &[("count", count.into())])];
        page = page.part(Part::Notice { says, press: None });
    }
    page = page.presses(vec![Press {
        label: words.text("compose-new", &[]),
        how: How::Send { to: "/programmes/new".to_owned(), fields: vec![] },
        look: Look::Next,
    }]);
    if !listed.drafts.is_empty() {
        page = page.part(Part::Heading { text: words.text("compose-drafts", &[]) });
        for (id, kept) in &listed.drafts {
            page = page.part(draft_card(visit, id, kept));
        }
    }
    if !listed.finished.is_empty() {
        page = page.part(Part::Heading { text: words.text("compose-finished-ones", &[]) });
        for one in &listed.finished {
            page = page.part(finished_card(visit, one));
        }
    }
    if listed.drafts.is_empty() && listed.finished.is_empty() {
        page = page.text([words.text("compose-none-yet", &[])]);
    }
    Ok(page.answer())
}

fn send(id: &FileId, what: &str) -> How {
    How::Send { to: format!("/programmes/{}/{what}", id.as_str()), fields: vec![] }
}

fn draft_card(visit: &Visit<'_>, id: &FileId, kept: &Kept) -> Part {
    let words = &visit.words;
    let whom = kept.draft.for_whom.trimmed();
    let title = if whom.is_empty() { words.text("compose-nobody", &[]) } else { whom.to_owned() };
    let revision = i64::from(kept.revision.get());
    let says = words.text(
        "compose-draft-line",
        &[("revision", revision.into()), ("day", words.date(kept.saved.day()).into())],
    );
    let presses = vec![
        Press::go(words.text("compose-go-on", &[]), format!("/programmes/{}/who", id.as_str()))
            .looking(Look::Equal),
        Press {
            label: words.text("compose-throw-away", &[]),
            how: send(id, "throw-away"),
            look: Look::Quiet,
        },
    ];
    let parts = vec![Part::Text { says: vec![says], class: "quiet" }, Part::Presses { presses }];
    Part::Card { title, here: None, parts }
}

fn finished_card(visit: &Visit<'_>, one: &Finished) -> Part {
    let words = &visit.words;
    let programme = &one.programme;
    let says = words.text(
        "compose-finished-line",
        &[
            ("revision", i64::from(programme.revision.get()).into()),
            ("day", words.date(programme.issued_at.day()).into()),
            ("until", words.date(programme.review_by).into()),
        ],
    );
    let to = format!("/programmes/finished/{}", one.file.as_str());
    let presses = vec![Press::go(words.text("compose-look-at", &[]), to).looking(Look::Equal)];
    let parts = vec![Part::Text { says: vec![says], class: "quiet" }, Part::Presses { presses }];
    Part::Card { title: programme.for_whom.to_string(), here: None, parts }
}

pub(super) fn begin(visit: &mut Visit<'_>) -> Shown {
    let begun = programmes(visit)?.begin(visit.moment.now);
    let id = begun.map_err(|error| trouble(visit, error))?;
    Ok(see(&format!("/programmes/{}/who", id.as_str())))
}

pub(super) fn throw_away(visit: &mut Visit<'_>, id: &str) -> Shown {
    let programmes = programmes(visit)?;
    let id = FileId::parse(id).ok_or_else(|| visit.nothing_here())?;
    programmes.throw_away(&id).map_err(|error| trouble(visit, error))?;
    Ok(see(&format!("/programmes?away={}", id.as_str())))
}

pub(super) fn bring_back(visit: &mut Visit<'_>, id: &str) -> Shown {
    let programmes = programmes(visit)?;
    let id = FileId::parse(id).ok_or_else(|| visit.nothing_here())?;
    programmes.bring_back(&id).map_err(|error| trouble(visit, error))?;
    Ok(see(&format!("/programmes/{}/who", id.as_str())))
}
