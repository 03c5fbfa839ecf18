//! What each action leads to. One match, so that a new sort of action does not compile until it leads somewhere.
//!
//! An action that writes does so under a new id; pressed again with nothing in between, a double tap or a try
//! after a fault, it keeps its id and writes nothing twice.

use super::{Holder, Seen};
use crate::companion::{Request, Told, Trouble, Write};
use crate::diary::erase::Erase;
use crate::moment::Moment;
use crate::ports::KeyKeeper;
use crate::safety::FullList;
use crate::screens::Does;
use crate::summary::Selection;

pub(super) fn press(
    holder: &mut Holder,
    does: Does,
    keeper: &dyn KeyKeeper,
    moment: &Moment,
) -> Result<Seen, Trouble> {
    if holder.pressed.is_some_and(|(last, _)| last != does) {
        holder.pressed = None;
    }
    holder.proved &= matches!(does, Does::CodeForm | Does::NewKeys);
    let request = match does {
        Does::ConfirmStep => return holder.tell(does, Told::ConfirmStep, keeper, moment),
        Does::ConfirmTime => return holder.tell(does, Told::TimeConfirmed, keeper, moment),
        Does::StayHere { stay } => {
            return holder.tell(does, Told::StayHere(stay), keeper, moment);
        }
        Does::Choose { shown, chosen } => {
            return holder.tell(does, Told::Choose { shown, chosen }, keeper, moment);
        }
        Does::Strike { of } => return holder.tell(does, Told::Strike { of }, keeper, moment),
        Does::AcceptProgramme => return holder.add_plan_form(keeper, moment),
        Does::NotMine => return holder.plan_not_mine(keeper, moment),
        Does::NewKeys | Does::CodeForm => return holder.code_form(keeper, moment),
        Does::Lock => return holder.lock(keeper, moment),
        Does::MakePhrase => return holder.new_phrase(keeper, moment),
        Does::OpenByPhrase => return holder.open_by_phrase_form(keeper, moment),
        Does::MakeCopy => return holder.copy_form(keeper, moment),
        Does::Restore => return Ok(holder.restore_form(keeper, moment)),
        Does::RestoreNow => return holder.restore_now(keeper, moment),
        Does::RestoreCopy => return Ok(holder.restore_copy_form(keeper, moment)),
        Does::StartNew => return holder.start_new(keeper, moment),
        Does::EraseEntry { of } => {
            return holder.look_erase(Request::Erase(Erase::Entry(of)), keeper, moment);
        }
        Does::EraseDays { from, to } => {
            return holder.look_erase(Request::Erase(Erase::Days { from, to }), keeper, moment);
        }
        Does::EraseAll => return holder.look_erase(Request::EraseAll, keeper, moment),
        Does::EraseSomeDays => return holder.erase_days_form(keeper, moment),
        Does::EraseEntryNow { of } => return holder.erase(Erase::Entry(of), keeper, moment),
        Does::EraseDaysNow { from, to } => {
            return holder.erase(Erase::Days { from, to }, keeper, moment);
        }
        Does::EraseAllNow => return holder.erase_all(keeper, moment),
        Does::Today => Request::Today,
        Does::LogSession => Request::LogSession,
        Does::Ladder => Request::Ladder,
        Does::Suggestion => Request::Suggestion,
        Does::Signs => Request::Signs,
        Does::StopAndCall => Request::StopAndCall,
        Does::Spoke => Request::Spoke,
        Does::Entries => Request::Entries,
        Does::Plan => Request::Plan,
        Does::FeelsReady => Request::Ready,
        Does::Keeping => Request::Keeping,
        Does::FirstRun { page } => Request::FirstRun(page),
        Does::More => Request::More,
        Does::Calendar { month } => Request::Calendar { month },
        Does::Day { day } => Request::Day(day),
        Does::Entry { of } => Request::Entry(of),
        Does::Correct { of } => Request::Correct(of),
        Does::Questions => Request::Questions,
        Does::Activities => Request::Activities,
        Does::TimeOff => Request::TimeOff,
        Does::LookForward => Request::LookForward,
        Does::Settled { of } => Request::Settled(of),
        Does::Ending => Request::Ending,
        Does::Shows => Request::Shows(holder.covered),
        Does::Settings => Request::Settings,
        Does::Summary => Request::Summary(Selection::default()),
        Does::Practices => Request::Practices,
        Does::Breathing => Request::Breathing,
        Does::Begin(begin) => Request::Begin(begin),
        Does::Practice => Request::Practice,
        Does::Rate => Request::Rate,
        Does::LogAsPlanned => Request::LogAsPlanned,
        Does::Screening => Request::Screening { so_far: FullList::default(), sent: false },
        Does::HoldQuestions => Request::HoldQuestions,
        Does::StepCheck => Request::StepCheck,
        Does::Reminders => Request::Reminders,
        Does::CalendarFile => Request::CalendarFile,
    };
    holder.pressed = None;
    holder.asked(request, keeper, moment)
}

impl Holder {
    /// Writes what a button told.
    fn tell(
        &mut self,
        does: Does,
        told: Told,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        if let Some(way) = self.in_the_way(keeper, moment) {
            return Ok(way);
        }
        let id = match self.pressed {
            Some((_, id)) => id,
            None => self.companion()?.new_id()?,
        };
        self.pressed = Some((does, id));
        self.asked(Request::Write(Write { id, happened: None, told }), keeper, moment)
    }
}
