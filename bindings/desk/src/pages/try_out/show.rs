//! Which record is shown by which file. One match over every screen, so that a new record does not compile
//! until there is a page for it.

use axum::response::Response;
use frond_core::companion::Request;
use frond_core::screens::Screen;

use super::visit::{Shown, Visit};
use super::{
    breathing, entries, entry, erase, health, keeping, ladder, log, overview, own_words, plan,
    practice, rate, reminders, settings, signs, spoke, stop, suggestion, summary, today,
};
use crate::pages::form::Fields;

impl Visit<'_> {
    /// Asks, and shows what the companion answers.
    pub(super) fn see(&mut self, request: Request) -> Shown {
        let screen = self.ask(request)?;
        self.show(&screen)
    }

    /// A record as a page.
    pub(super) fn show(&mut self, screen: &Screen) -> Shown {
        let blank = Fields::default;
        let page: Result<Response, Response> = match screen {
            Screen::Today(screen) => today::page(self, screen),
            Screen::LogSession(screen) => log::page(self, screen, &blank(), vec![]),
            Screen::Ladder(screen) => ladder::page(self, screen),
            Screen::Suggestion(screen) => suggestion::page(self, screen),
            Screen::StopAndCall(screen) => stop::page(self, screen),
            Screen::Signs(screen) => {
                let id = self.id()?;
                signs::page(self, screen, id, &blank(), vec![])
            }
            Screen::Spoke(screen) => {
                let id = self.id()?;
                spoke::page(self, screen, id, &blank(), vec![])
            }
            Screen::Entries(screen) => entries::page(self, screen),
            Screen::Plan(screen) => plan::page(self, screen),
            Screen::Kept(screen) => entries::kept_page(self, screen),
            Screen::Keeping(screen) => keeping::page(self, screen),
            Screen::Erase(screen) => erase::page(self, screen, "/erase/all", vec![]),
            Screen::Practices(screen) => practice::choose_page(self, screen),
            Screen::AnythingNew(screen) => practice::new_page(self, screen),
            Screen::Breathing(screen) => breathing::page(self, screen),
            Screen::Running(screen) => practice::run_page(self, screen),
            Screen::Found(screen) => practice::found_page(self, screen),
            Screen::Stopped(screen) => practice::stopped_page(self, screen),
            Screen::Rate(screen) => rate::page(self, screen, &blank(), vec![]),
            Screen::Screening(screen) => health::screening_page(self, screen, &blank()),
            Screen::HoldQuestions(screen) => health::holds_page(self, screen, &blank(), vec![]),
            Screen::Accept(screen) => plan::accept_page(self, screen),
            Screen::StepCheck(screen) => ladder::check_page(self, screen),
            Screen::FirstRun(screen) => overview::first_run_page(self, screen),
            Screen::More(screen) => overview::more_page(self, screen),
            Screen::Calendar(screen) => overview::calendar_page(self, screen),
            Screen::Entry(screen) => entry::page(self, screen),
            Screen::Correct(screen) => entry::correct_page(self, screen, &blank(), vec![]),
            Screen::Questions(screen) => own_words::questions_page(self, screen, &blank(), vec![]),
            Screen::Activities(screen) => own_words::activities_page(self, screen, vec![]),
            Screen::TimeOff(screen) => own_words::time_off_page(self, screen, &blank(), vec![]),
            Screen::LookForward(screen) => {
                own_words::look_forward_page(self, screen, &blank(), vec![])
            }
            Screen::Ready(screen) => suggestion::ready_page(self, screen),
            Screen::Settled(screen) => own_words::settled_page(self, screen),
            Screen::Ending(screen) => overview::ending_page(self, screen),
            Screen::Shows(screen) => overview::shows_page(self, screen),
            Screen::Settings(screen) => settings::page(self, screen),
            Screen::Summary(screen) => summary::page(self, screen, &blank(), vec![]),
            Screen::Reminders(screen) => reminders::page(self, screen, &blank(), vec![]),
        };
        page
    }
}
