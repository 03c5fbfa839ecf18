//! Which record is shown by which file. One match over every record, so that a new one does not compile until
//! there is a page for it; and on which page a record is found that some press led to.

use frond_core::companion::Request;
use frond_core::screens::{Screen, WholeScreen};
use frond_core::whole::View;

use super::visit::{Shown, Visit, see};
use super::{
    breathing, entries, entry, erase, health, keeping, ladder, log, overview, own_code, own_words,
    phrase, plan, practice, rate, reminders, restore, settings, shut, signs, spoke, stop,
    suggestion, summary, today,
};
use crate::pages::form::Fields;

impl Visit<'_> {
    /// Asks, and shows what the companion answers.
    pub(super) fn see(&mut self, request: Request) -> Shown {
        let screen = self.ask(request)?;
        self.screen(&screen)
    }

    /// A record as a page.
    pub(super) fn show(&mut self, view: &View) -> Shown {
        match view {
            View::Screen(screen) => self.screen(screen),
            View::Whole(screen) => self.whole_screen(screen),
        }
    }

    /// On to the page of a record that has an address; the others are shown here.
    pub(super) fn lead_on(&mut self, view: View) -> Shown {
        match view {
            View::Whole(WholeScreen::Done(done)) => {
                self.diary.done = Some(done);
                Ok(see("/done"))
            }
            // What stands in the way stands in the place of every page.
            View::Whole(WholeScreen::Erased(_) | WholeScreen::NoDiary(_)) => Ok(see("/today")),
            View::Whole(WholeScreen::Code(screen))
                if !self.diary.is_open() && screen.problems.is_empty() && screen.wait.is_none() =>
            {
                Ok(see("/today"))
            }
            View::Screen(Screen::Running(_) | Screen::Found(_) | Screen::Stopped(_)) => {
                Ok(see("/practice"))
            }
            View::Screen(Screen::Rate(_)) => Ok(see("/practice/rate")),
            View::Screen(Screen::Practices(_)) => Ok(see("/practices")),
            View::Screen(Screen::Screening(_)) => Ok(see("/screening")),
            View::Screen(Screen::StopAndCall(_)) => Ok(see("/call")),
            View::Screen(Screen::Today(_)) => Ok(see("/today")),
            View::Screen(Screen::Keeping(_)) => Ok(see("/keeping")),
            View::Screen(Screen::Accept(_)) => Ok(see("/plan/add")),
            View::Screen(Screen::FirstRun(first)) => {
                Ok(see(&overview::first_run_address(first.page)))
            }
            other => self.show(&other),
        }
    }

    /// A record of the open diary as a page.
    pub(super) fn screen(&mut self, screen: &Screen) -> Shown {
        let blank = Fields::default;
        match screen {
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
            Screen::Erase(screen) => erase::page(self, screen),
            Screen::Practices(screen) => practice::choose_page(self, screen),
            Screen::AnythingNew(screen) => practice::new_page(self, screen),
            Screen::Breathing(screen) => breathing::page(self, screen),
            Screen::Running(screen) => practice::run_page(self, screen),
            Screen::Found(screen) => practice::found_page(self, screen),
            Screen::Stopped(screen) => practice::stopped_page(self, screen),
            Screen::Rate(screen) => rate::page(self, screen, &blank(), vec![]),
            Screen::Screening(screen) => health::screening_page(self, screen, &blank()),
            Screen::HoldQuestions(screen) => health::holds_page(self, screen, &blank(), vec![]),
            Screen::Accept(screen) => plan::accept_page(self, screen, vec![]),
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
            Screen::Summary(screen) => summary::page(self, screen, &blank()),
            Screen::Reminders(screen) => reminders::page(self, screen, &blank(), vec![]),
        }
    }

    /// A record of the diary as a whole as a page.
    fn whole_screen(&mut self, screen: &WholeScreen) -> Shown {
        match screen {
            WholeScreen::NoDiary(screen) => shut::no_diary_page(self, screen),
            WholeScreen::Code(screen) => own_code::page(self, screen),
            WholeScreen::SetCode(screen) => own_code::set_page(self, screen),
            WholeScreen::CannotOpen(screen) => shut::cannot_open_page(self, screen),
            WholeScreen::Erased(screen) => shut::erased_page(self, screen),
            WholeScreen::Phrase(screen) => phrase::page(self, screen),
            WholeScreen::PhraseCheck(screen) => phrase::check_page(self, screen),
            WholeScreen::Copy(screen) => keeping::copy_page(self, screen),
            WholeScreen::Restore(screen) => restore::choice_page(self, screen),
            WholeScreen::RestoreCopy(screen) => restore::copy_page(self, screen),
            WholeScreen::Restoring(screen) => restore::page(self, screen),
            WholeScreen::OpenByPhrase(screen) => phrase::open_page(self, screen),
            WholeScreen::EraseDays(screen) => erase::days_page(self, screen),
            WholeScreen::AddPlan(screen) => plan::add_page(self, screen),
            WholeScreen::Done(screen) => shut::done_page(self, screen),
            WholeScreen::Sorry(screen) => shut::sorry_page(self, screen),
        }
    }
}
