//! The twelve words: shown once, asked from the paper, and opening the diary when nothing else does.

use frond_core::screens::{OpenByPhraseScreen, PhraseCheckScreen, PhraseScreen};
use frond_core::whole::WholeRequest;

use super::lines;
use super::own_code::typed;
use super::visit::{Shown, Visit};
use crate::pages::form::Fields;
use crate::pages::parts::{How, Look, Page, Part, Press};

pub(super) fn page(visit: &mut Visit<'_>, screen: &PhraseScreen) -> Shown {
    let presses = visit.presses(&screen.actions)?;
    let how = How::Send { to: "/keeping/phrase".to_owned(), fields: vec![] };
    let written = Press { label: screen.submit.clone(), how, look: Look::Next };
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.says.clone())
        .part(Part::Numbered { points: screen.words.clone() })
        .presses(std::iter::once(written).chain(presses).collect())
        .answer())
}

pub(super) fn check_page(visit: &mut Visit<'_>, screen: &PhraseCheckScreen) -> Shown {
    let form = lines::form("/keeping/phrase", &screen.submit, &screen.asked);
    lines::page(visit, &screen.title, &screen.says, &screen.problems, form, &screen.actions)
}

/// They were written down; or, where some were typed, they are checked, in the order in which they were asked.
pub(super) fn written(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let asked = fields.pairs().filter(|(name, _)| name.starts_with(lines::WORD));
    let words: Vec<String> = asked.map(|(_, word)| word.to_owned()).collect();
    let seen = visit.whole(if words.is_empty() {
        WholeRequest::PhraseWritten
    } else {
        WholeRequest::CheckPhrase { words }
    })?;
    visit.lead_on(seen.view)
}

pub(super) fn open_page(visit: &mut Visit<'_>, screen: &OpenByPhraseScreen) -> Shown {
    let form = lines::form("/open", &screen.submit, [&screen.phrase]);
    lines::page(visit, &screen.title, &screen.says, &screen.problems, form, &screen.actions)
}

/// The form; an open diary needs none.
pub(super) fn open(visit: &mut Visit<'_>) -> Shown {
    let seen = visit.pressed(frond_core::screens::Does::OpenByPhrase)?;
    visit.lead_on(seen.view)
}

pub(super) fn opened(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let phrase = typed(fields, "phrase");
    let seen = visit.whole(WholeRequest::OpenByPhrase { phrase })?;
    visit.lead_on(seen.view)
}
