//! A record to be looked at only, in somebody else's page: laid out as the person has it, and nothing of it can
//! be pressed. Decides which records can be shown so; how each is laid out is decided where it is shown.

use axum::response::Response;
use frond_core::screens::{AcceptScreen, Action, Screen};
use frond_core::words::Words;

use super::press::Presses;
use super::{stop, suggestion, today};
use crate::pages::parts::{How, Look, Part, Press};

/// Nothing leads anywhere.
struct Still<'a>(&'a Words);

impl Presses for Still<'_> {
    fn press(&mut self, action: &Action, look: Look) -> Result<Press, Response> {
        Ok(inert(action.label.clone(), look))
    }

    fn words(&self) -> &Words {
        self.0
    }
}

fn inert(label: String, look: Look) -> Press {
    Press { label, how: How::Nothing, look }
}

/// The parts of a record's page, its heading first; nothing for one that is not shown so.
pub(crate) fn parts(screen: &Screen, words: &Words) -> Vec<Part> {
    let mut still = Still(words);
    let (title, parts) = match screen {
        Screen::Today(screen) => {
            (format!("{} \u{b7} {}", screen.title, screen.date), today::parts(&mut still, screen))
        }
        Screen::Suggestion(screen) => (screen.title.clone(), suggestion::parts(&mut still, screen)),
        Screen::StopAndCall(screen) => (screen.title.clone(), stop::parts(&mut still, screen)),
        Screen::Accept(screen) => (screen.title.clone(), Ok(accept(screen, words))),
        _ => return Vec::new(),
    };
    // Nothing that is only looked at is answered by another page.
    let mut parts = parts.unwrap_or_default();
    parts.iter_mut().for_each(hold_still);
    let title = Part::Text { says: vec![title], class: "screen" };
    std::iter::once(title).chain(parts).collect()
}

fn accept(screen: &AcceptScreen, words: &Words) -> Vec<Part> {
    let cards = screen.cards.iter().map(|card| Part::Card {
        title: card.title.clone(),
        here: None,
        parts: vec![Part::Text { says: card.lines.clone(), class: "" }],
    });
    let mut parts: Vec<Part> = cards.collect();
    let title = words.text("action-plan", &[]);
    let points = Part::Points { points: screen.sentences.clone() };
    parts.push(Part::Fold { title, open: false, parts: vec![points] });
    parts.push(Part::Text { says: screen.yours.iter().cloned().collect(), class: "lead" });
    let no = screen.actions.iter().take(1).map(|no| no.label.clone());
    let answers = std::iter::once(screen.yes.clone()).chain(no);
    let presses = answers.map(|label| inert(label, Look::Equal)).collect();
    parts.push(Part::Presses { presses });
    parts
}

/// A number to dial is shown, and does not dial.
fn hold_still(part: &mut Part) {
    match part {
        Part::Presses { presses } => presses.iter_mut().for_each(|press| press.how = How::Nothing),
        Part::Notice { press, .. } => press.iter_mut().for_each(|press| press.how = How::Nothing),
        Part::Card { parts, .. } | Part::Fold { parts, .. } | Part::Reason { parts, .. } => {
            parts.iter_mut().for_each(hold_still);
        }
        _ => {}
    }
}
