//! How old the news is that a revision is written on, beside a draft that was begun from an earlier one. Leaves what is said
//! to the core. A draft can be written whatever becomes of the summaries.

use frond_core::screens::PlanNews;

use super::super::visit::Visit;
use super::Open;
use crate::pages::parts::{Look, Part, Press};

/// Nothing for a first revision: there can be no news of it.
pub(super) fn part(visit: &Visit<'_>, open: &Open) -> Option<Part> {
    open.kept.earlier.as_ref()?;
    let words = &visit.words;
    let (says, diary) = match known(visit, open) {
        Some(news) => (news.says, news.diary),
        None => (vec![words.text("compose-news-unread", &[])], None),
    };
    let mut parts = vec![Part::Text { says, class: "" }];
    if let Some(diary) = diary {
        let read = Press::go(words.text("compose-news-read", &[]), format!("/people/{diary}"));
        parts.push(Part::Presses { presses: vec![read.looking(Look::Equal)] });
    }
    Some(Part::Card { title: words.text("compose-news-title", &[]), here: None, parts })
}

/// `None` where not every summary could be looked at.
fn known(visit: &Visit<'_>, open: &Open) -> Option<PlanNews> {
    let opened = visit.cabinet().ok()?;
    let cabinet = opened.held();
    if cabinet.unread() > 0 {
        return None;
    }
    let kept = &open.kept;
    let today = visit.moment.now.day();
    Some(PlanNews::new(&visit.words, cabinet.digests(), &kept.programme, kept.revision, today))
}
