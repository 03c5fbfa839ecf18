//! The end of writing: everything that has to be put right, everything unusual, the whole read back; finishing
//! a revision; and what is different in it.

use frond_core::programme::differences::differences as told_apart;
use frond_core::programme::plan::Programme;
use frond_core::programme::readback::read_back;

use super::super::hand_over;
use super::super::visit::{Shown, Visit, see};
use super::page::Leaf;
use super::sheet::{Here, tabs, under};
use super::{FileId, Open, news, programmes, trouble};
use crate::pages::parts::{How, Look, Page, Part, Press};

pub(super) fn check(visit: &mut Visit<'_>, open: &Open) -> Shown {
    let words = &visit.words;
    let draft = &open.kept.draft;
    let checked = open.kept.check(visit.moment.now);
    let mut page = Page::new(&visit.frame, words.text("compose-page-check", &[]))
        .in_window(words.text("compose-window", &[]))
        .under(under(visit, open))
        .part(tabs(visit, open, Here::Other("check")));
    let to = |place: &frond_core::programme::draft::Place| {
        let leaf = Leaf::holding(place);
        let leaf = if leaf.is_in(draft) { leaf } else { Leaf::Steps };
        format!("{}?saved=yes#{place}", open.to(&leaf.address()))
    };
    if checked.mistakes.is_empty() {
        page = page
            .part(Part::Text { says: vec![words.text("compose-check-good", &[])], class: "lead" });
    } else {
        let links = checked.mistakes.iter().map(|mistake| {
            let values = [
                ("at", draft.place_said(&mistake.place, words).into()),
                ("says", mistake.say(draft, words).into()),
            ];
            (words.text("compose-page-mistake", &values), to(&mistake.place))
        });
        let links = links.collect();
        let title = words.text("compose-check-missing", &[]);
        page = page.part(Part::Card { title, here: None, parts: vec![Part::Links { links }] });
    }
    if !checked.notices.is_empty() {
        let links = checked.notices.iter().map(|notice| {
            let values = [
                ("at", draft.place_said(&notice.place, words).into()),
                ("says", notice.say(draft, words).into()),
                ("why", notice.why(words).into()),
            ];
            (words.text("compose-page-unusual", &values), to(&notice.place))
        });
        let parts = vec![
            Part::Text {
                says: vec![words.text("compose-check-unusual-says", &[])],
                class: "quiet",
            },
            Part::Links { links: links.collect() },
        ];
        let title = words.text("compose-check-unusual", &[]);
        page = page.part(Part::Card { title, here: None, parts });
    }
    if let (Some(programme), Some(earlier)) = (&checked.programme, open.kept.earlier()) {
        page = page.part(different(visit, &earlier, programme));
    }
    if let Some(news) = news::part(visit, open) {
        page = page.part(news);
    }
    if checked.programme.is_some() {
        page = page.presses(vec![Press {
            label: words.text("compose-finish", &[]),
            how: How::Send { to: open.to("finish"), fields: vec![] },
            look: Look::Next,
        }]);
        page = page.quiet([words.text("compose-finish-says", &[])]);
    }
    let sentences = draft.said(&checked, words);
    let sentences: Vec<String> = sentences.into_iter().flat_map(|said| said.sentences).collect();
    page = page.part(Part::Heading { text: words.text("compose-said", &[]) });
    Ok(page.part(Part::Points { points: sentences }).answer())
}

fn different(visit: &Visit<'_>, earlier: &Programme, programme: &Programme) -> Part {
    let words = &visit.words;
    let revision = i64::from(earlier.revision.get());
    let title = words.text("compose-page-different-from", &[("revision", revision.into())]);
    let points = told_apart(earlier, programme, words);
    let parts = if points.is_empty() {
        vec![Part::Text { says: vec![words.text("compose-no-difference", &[])], class: "" }]
    } else {
        vec![Part::Points { points }]
    };
    Part::Card { title, here: None, parts }
}

pub(super) fn differences(visit: &mut Visit<'_>, open: &Open) -> Shown {
    let words = &visit.words;
    let page = Page::new(&visit.frame, words.text("compose-page-differences", &[]))
        .in_window(words.text("compose-window", &[]))
        .under(under(visit, open))
        .part(tabs(visit, open, Here::Other("differences")));
    let Some(earlier) = open.kept.earlier() else { return Err(visit.nothing_here()) };
    let page = match open.kept.check(visit.moment.now).programme {
        Some(programme) => page.part(different(visit, &earlier, &programme)),
        None => {
            let press = Press::go(words.text("compose-page-check", &[]), open.to("check"));
            let says = vec![words.text("compose-not-yet", &[])];
            page.part(Part::Notice { says, press: Some(press.looking(Look::Equal)) })
        }
    };
    Ok(page.answer())
}

pub(super) fn finish(visit: &mut Visit<'_>, open: &Open) -> Shown {
    let finished = programmes(visit)?.finish(&open.id, visit.moment.now);
    let finished = finished.map_err(|error| trouble(visit, error))?;
    Ok(see(&format!("/programmes/finished/{}", finished.file.as_str())))
}

/// A finished revision: what it says, and what can be done with it.
pub(super) fn finished(visit: &mut Visit<'_>, file: &str) -> Shown {
    let programmes = programmes(visit)?;
    let file = FileId::parse(file).ok_or_else(|| visit.nothing_here())?;
    let one = programmes.finished(&file).map_err(|error| trouble(visit, error))?;
    let words = &visit.words;
    let revision = i64::from(one.programme.revision.get());
    let under = words.text(
        "compose-finished-line",
        &[
            ("revision", revision.into()),
            ("day", words.date(one.programme.issued_at.day()).into()),
            ("until", words.date(one.programme.review_by).into()),
        ],
    );
    let hand = How::Send {
        to: format!("/programmes/finished/{}/hand-over", file.as_str()),
        fields: vec![],
    };
    let next =
        How::Send { to: format!("/programmes/finished/{}/next", file.as_str()), fields: vec![] };
    Ok(Page::new(&visit.frame, one.programme.for_whom.to_string())
        .in_window(words.text("compose-window", &[]))
        .under(under)
        .text([words.text("compose-finished-says", &[])])
        .presses(vec![
            Press { label: words.text("compose-hand-over", &[]), how: hand, look: Look::Next },
            Press { label: words.text("compose-next-revision", &[]), how: next, look: Look::Equal },
            Press::go(
                words.text("compose-text-file", &[]),
                format!("/programmes/finished/{}/text", file.as_str()),
            ),
            Press::go(words.text("compose-list-title", &[]), "/programmes"),
        ])
        .part(Part::Heading { text: words.text("compose-said", &[]) })
        .part(Part::Points { points: read_back(&one.programme, words) })
        .answer())
}

/// It is signed and handed over.
pub(super) fn hand(visit: &mut Visit<'_>, file: &str) -> Shown {
    let programmes = programmes(visit)?;
    let file = FileId::parse(file).ok_or_else(|| visit.nothing_here())?;
    let one = programmes.finished(&file).map_err(|error| trouble(visit, error))?;
    Ok(hand_over::begin(visit, one.text.as_bytes()))
}

/// Its exact text, as a file: open, and not signed.
pub(super) fn text(visit: &mut Visit<'_>, file: &str) -> Shown {
    let programmes = programmes(visit)?;
    let file = FileId::parse(file).ok_or_else(|| visit.nothing_here())?;
    let one = programmes.finished(&file).map_err(|error| trouble(visit, error))?;
    Ok(crate::pages::app::file("plan.json", "application/json", one.text.as_bytes().to_vec()))
}

/// The next revision is begun from a finished one.
pub(super) fn next(visit: &mut Visit<'_>, file: &str) -> Shown {
    let programmes = programmes(visit)?;
    let file = FileId::parse(file).ok_or_else(|| visit.nothing_here())?;
    let one = programmes.finished(&file).map_err(|error| trouble(visit, error))?;
    let begun = programmes.begin_next(&one.programme, [], visit.moment.now);
    let id = begun.map_err(|error| trouble(visit, error))?;
    Ok(see(&format!("/programmes/{}/who", id.as_str())))
}
