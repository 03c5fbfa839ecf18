//! What an action becomes on a page: a link, or a form of one button. One match, so that a new sort of action
//! does not compile until it leads somewhere. Decides the address; what the action does is the core's.

use axum::response::Response;
use chrono::NaiveDate;
use frond_core::diary::entry::Chosen;
use frond_core::screens::{Action, Does};
use frond_core::words::Words;

use super::visit::Visit;
use super::{overview, practice};
use crate::pages::parts::{How, Look, Press};

/// Whatever shows a record: what its actions become, and the words for what only a page says.
pub(super) trait Presses {
    /// An action as something to press.
    fn press(&mut self, action: &Action, look: Look) -> Result<Press, Response>;

    /// The words of the page.
    fn words(&self) -> &Words;

    /// What else can be done; what leads to the page itself is left out.
    fn presses(&mut self, actions: &[Action]) -> Result<Vec<Press>, Response> {
        actions.iter().map(|action| self.press(action, Look::Quiet)).collect()
    }
}

impl Presses for Visit<'_> {
    fn press(&mut self, action: &Action, look: Look) -> Result<Press, Response> {
        Visit::press(self, action, look)
    }

    fn words(&self) -> &Words {
        &self.words
    }
}

impl Visit<'_> {
    /// An action as something to press.
    pub(super) fn press(&mut self, action: &Action, look: Look) -> Result<Press, Response> {
        Ok(Press { label: action.label.clone(), how: self.how(action.does)?, look })
    }

    /// What else can be done; what leads to the page itself is left out.
    pub(super) fn presses(&mut self, actions: &[Action]) -> Result<Vec<Press>, Response> {
        actions.iter().map(|action| self.press(action, Look::Quiet)).collect()
    }

    /// The next thing to do, then what else can be done, each once.
    pub(super) fn next_and(
        &mut self,
        next: &Action,
        others: &[Action],
    ) -> Result<Vec<Press>, Response> {
        let mut presses = vec![self.press(next, Look::Next)?];
        let others: Vec<Action> =
            others.iter().filter(|other| other.does != next.does).cloned().collect();
        presses.extend(self.presses(&others)?);
        Ok(presses)
    }

    fn how(&mut self, does: Does) -> Result<How, Response> {
        let go = |to: &str| Ok(How::Go(to.to_owned()));
        // Sent twice it does nothing twice, without an id.
        let just = |to: &str, fields| Ok(How::Send { to: to.to_owned(), fields });
        let span = |from: NaiveDate, to: NaiveDate| {
            vec![("from", from.to_string()), ("to", to.to_string())]
        };
        match does {
            Does::Today => go("/today"),
            Does::LogSession => go("/log"),
            Does::Ladder => go("/steps"),
            Does::Suggestion => go("/suggestion"),
            Does::Signs => go("/signs"),
            Does::StopAndCall => go("/call"),
            Does::Spoke => go("/spoke"),
            Does::Entries => go("/entries"),
            Does::Plan => go("/plan"),
            Does::AcceptProgramme => go("/plan/add"),
            Does::NotMine => self.send("/plan/accept", vec![("answer", "no".to_owned())]),
            Does::ConfirmStep => self.send("/confirm-step", vec![]),
            Does::ConfirmTime => self.send("/confirm-time", vec![]),
            Does::StayHere { stay } => {
                let stay = if stay { "yes" } else { "no" };
                self.send("/stay-here", vec![("stay", stay.to_owned())])
            }
            Does::FeelsReady => go("/ready"),
            Does::Choose { shown, chosen } => {
                let chosen = match chosen {
                    Chosen::Try => "try",
                    Chosen::Stay => "stay",
                };
                let fields = vec![("shown", shown.to_string()), ("chosen", chosen.to_owned())];
                self.send("/choose", fields)
            }
            Does::Strike { of } => self.send("/strike", vec![("of", of.to_string())]),
            Does::Keeping => go("/keeping"),
            // A code is a phone's; where a passphrase opens the diary, it takes its place.
            Does::NewKeys | Does::CodeForm if self.diary.as_on_a_phone() => go("/keeping/code"),
            Does::NewKeys | Does::CodeForm => go("/keeping/passphrase"),
            Does::Lock => just("/lock", vec![]),
            Does::MakePhrase => go("/keeping/phrase"),
            Does::OpenByPhrase => go("/open"),
            Does::MakeCopy => go("/keeping/copy"),
            Does::Restore => go("/restore"),
            Does::RestoreNow => just("/restore/now", vec![]),
            Does::RestoreCopy => go("/restore/copy"),
            Does::StartNew => just("/start", vec![]),
            Does::EraseEntry { of } => go(&format!("/erase/entry/{of}")),
            Does::EraseEntryNow { of } => just(&format!("/erase/entry/{of}"), vec![]),
            Does::EraseDays { from, to } => just("/erase/days", span(from, to)),
            Does::EraseDaysNow { from, to } => just("/erase/days/now", span(from, to)),
            Does::EraseSomeDays => go("/erase/days"),
            Does::EraseAll => go("/erase/all"),
            Does::EraseAllNow => just("/erase/all", vec![]),
            Does::FirstRun { page } => go(&overview::first_run_address(page)),
            Does::More => go("/more"),
            Does::Calendar { month: None } => go("/calendar"),
            Does::Calendar { month: Some((year, month)) } => {
                go(&format!("/calendar/{year:04}-{month:02}"))
            }
            Does::Day { day } => go(&format!("/day/{day}")),
            Does::Entry { of } => go(&format!("/entry/{of}")),
            Does::Correct { of } => go(&format!("/entry/{of}/correct")),
            Does::Questions => go("/questions"),
            Does::Activities => go("/activities"),
            Does::TimeOff => go("/time-off"),
            Does::LookForward => go("/look-forward"),
            Does::Settled { of } => go(&format!("/settled/{of}")),
            Does::Ending => go("/ending"),
            Does::Shows => go("/shows"),
            Does::Settings => go("/settings"),
            Does::Summary => go("/summary"),
            Does::Practices => go("/practices"),
            Does::Breathing => go("/breathing"),
            Does::Begin(begin) => just("/practice/begin", practice::begin_fields(begin)),
            Does::Practice => go("/practice"),
            Does::Rate => go("/practice/rate"),
            Does::LogAsPlanned => go("/log/as-planned"),
            Does::Screening => go("/screening"),
            Does::HoldQuestions => go("/hold-questions"),
            Does::StepCheck => go("/step-check"),
            Does::Reminders => go("/reminders"),
            Does::CalendarFile => just("/reminders/calendar", vec![]),
        }
    }

    /// A button that writes something, under an id of its own, so that pressing twice writes once.
    pub(super) fn send(
        &mut self,
        to: &str,
        mut fields: Vec<(&'static str, String)>,
    ) -> Result<How, Response> {
        fields.push(("id", self.id()?.to_string()));
        Ok(How::Send { to: to.to_owned(), fields })
    }
}
