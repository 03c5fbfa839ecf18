//! What a person can ask of the companion. A request carries no tier, no place and no clock: those
//! are decided inside.

use std::collections::BTreeMap;

use chrono::NaiveDate;

use super::remembering::ReminderChange;
use crate::diary::entry::{
    Although, Asked, Chosen, Ended, EntryId, FeelsReady, Goal, Ratings, ScreeningAnswer, Settings,
    Settled, SignKey, UsedPart, Why,
};
use crate::diary::erase::Erase;
use crate::handover::Handed;
use crate::moment::Stamp;
use crate::practice::timed::{Choice, Event};
use crate::programme::values::{Line, Passage, Position, Practice, Rating, StepId};
use crate::reminders::SnoozeMinutes;
use crate::safety::{Answer, FullList, HoldCondition, Sign};
use crate::screens::{Begin, Covered, FirstRunPage};
use crate::summary::Selection;

/// One request.
#[derive(Clone)]
pub enum Request {
    /// What today asks.
    Today,
    /// The form for logging a session.
    LogSession,
    /// The steps, and which is used now.
    Ladder,
    /// What the clinician's rule says now, and why.
    Suggestion,
    /// The cautions, to report one.
    Signs,
    /// Stop and call: whom, and what to say.
    StopAndCall,
    /// The form for "I spoke with ...".
    Spoke,
    /// What has been written, newest first.
    Entries,
    /// What a request with this id wrote, as it was shown then.
    Kept {
        /// The id of the request.
        of: EntryId,
    },
    /// The plan in plain sentences.
    Plan,
    /// How the diary is kept: keys, backups, what was found damaged.
    Keeping,
    /// What erasing this would come to. It is done by [`super::Companion::erase`].
    Erase(Erase),
    /// What erasing everything would come to. It is done by [`super::Companion::end`].
    EraseAll,
    /// Open the dialler on a number that the stop-and-call screen offers.
    Dial {
        /// The number as offered.
        number: String,
    },
    /// What to show first: a practice that waits, or what today asks.
    Home,
    /// What can be practised.
    Practices,
    /// The patterns to breathe to.
    Breathing,
    /// Begin a practice with its clock. What has to come before it is shown instead.
    Begin(Begin),
    /// The practice under way, as it stands now.
    Practice,
    /// Something happens to the practice under way.
    During(Event),
    /// What becomes of a practice found again.
    Found(Choice),
    /// How it was, of the practice that ended.
    Rate,
    /// How it was, of a session of the present step that went as planned and was not timed.
    LogAsPlanned,
    /// The whole list of cautions, with what was answered so far.
    Screening {
        /// The answers so far; none to begin with.
        so_far: FullList,
        /// It was sent as if it were complete; what is missing is said.
        sent: bool,
    },
    /// The questions about breath holds.
    HoldQuestions,
    /// A plan, to be read whole before it is accepted.
    Accept(Handed),
    /// "Is this what you use now?"
    StepCheck,
    /// What is set about reminders.
    Reminders,
    /// A calendar file of the reminders, as a duty to share it.
    CalendarFile,
    /// A page of the first run. Each can be skipped, and shown again later.
    FirstRun(FirstRunPage),
    /// Everything that is not needed every day, in groups.
    More,
    /// A month, and what was done on its days.
    Calendar {
        /// Year and month, the month 1 to 12; `None`, or one that does not exist: the present one.
        month: Option<(i32, u32)>,
    },
    /// What was written of one day.
    Day(NaiveDate),
    /// One entry, with everything that became of it. A correction or a strike names what it is about.
    Entry(EntryId),
    /// The form for putting an entry right.
    Correct(EntryId),
    /// The questions for the visit.
    Questions,
    /// The activities and goals of the plan, to be rated.
    Activities,
    /// Time off.
    TimeOff,
    /// "Would you like to try the next step?"
    Ready,
    /// Something to look forward to.
    LookForward,
    /// "Did it settle?", about a session.
    Settled(EntryId),
    /// The ways to end the programme.
    Ending,
    /// What this phone can still show, given what the shell does about it.
    Shows(Covered),
    /// Settings.
    Settings,
    /// A summary being put together: what this selection holds.
    Summary(Selection),
    /// Write something down.
    Write(Write),
}

/// Something to write down.
#[derive(Clone)]
pub struct Write {
    /// The id of this request, from the form or from [`super::Companion::new_id`]. Asking again with
    /// the same id writes nothing twice.
    pub id: EntryId,
    /// When it happened; `None`: now.
    pub happened: Option<Stamp>,
    /// What is told.
    pub told: Told,
}

/// What a person can tell.
#[derive(Clone)]
pub enum Told {
    /// A session.
    Session(SessionTold),
    /// An earlier entry was wrong; this is how it was.
    Correct {
        /// The entry.
        of: EntryId,
        /// Its whole new content, of the same kind.
        told: Box<Told>,
    },
    /// An earlier entry is to be left out.
    Strike {
        /// The entry.
        of: EntryId,
    },
    /// Another step is used from now on.
    Step {
        /// Which.
        to: StepId,
        /// Why.
        why: Why,
    },
    /// The present step is the one used now.
    ConfirmStep,
    /// A programme or a revision of it is accepted. "Is this yours?" has been answered yes.
    Programme {
        /// What was handed over, as it was shown.
        handed: Handed,
        /// What the person chose knowingly.
        although: Vec<Although>,
    },
    /// Signs, outside a session.
    Signs {
        /// Which.
        signs: Vec<Sign>,
        /// In the person's words.
        note: Option<Passage>,
    },
    /// "I spoke with ..." (when: the request's `happened`).
    Spoke {
        /// With whom.
        with: Line,
        /// Which signs are closed by it.
        signs: Vec<SignKey>,
        /// Whether the pause is closed by it.
        closes_pause: bool,
    },
    /// The cautions were asked.
    Screening {
        /// Which questions.
        asked: Asked,
        /// What was answered.
        answer: ScreeningAnswer,
        /// Signs answered yes or not sure.
        signs: Vec<Sign>,
    },
    /// "Would you like to try the next step?"
    FeelsReady(FeelsReady),
    /// A choice upon a suggestion shown.
    Choose {
        /// The suggestion, by the entry that says it was shown.
        shown: EntryId,
        /// Try or stay.
        chosen: Chosen,
    },
    /// "Stay here for now", or taking it back.
    StayHere(bool),
    /// Time off, both ends included.
    TimeOff {
        /// First day.
        from: NaiveDate,
        /// Last day.
        to: NaiveDate,
    },
    /// Something to look forward to.
    LookForward(Passage),
    /// How able she is at an activity.
    Function {
        /// The activity.
        activity: Line,
        /// 0 unable to 10 able as before.
        able: Rating,
    },
    /// How far a goal is reached.
    Goal {
        /// The goal.
        goal: Line,
        /// -2 to +2.
        reached: Goal,
    },
    /// A question for the visit.
    Question(Passage),
    /// "Did it settle?", about a session.
    Settled {
        /// The session.
        of: EntryId,
        /// The answer.
        answer: Settled,
    },
    /// The whole list of cautions, answered to the end.
    FullList(FullList),
    /// The questions about breath holds, each answered.
    HoldConditions(BTreeMap<HoldCondition, Answer>),
    /// A change of what is set about reminders.
    Reminders(ReminderChange),
    /// A reminder is put off.
    PutOff(SnoozeMinutes),
    /// How the app behaves.
    Settings(Settings),
    /// The clock is right.
    TimeConfirmed,
    /// The copy that [`super::Companion::copy_for_elsewhere`] gave was put somewhere.
    CopyKept,
}

impl Told {
    /// A programme that nobody signed, accepted by somebody who knows where it comes from.
    #[must_use]
    pub fn unsigned(programme: &str) -> Self {
        Self::Programme { handed: Handed::text(programme), although: vec![Although::Unsigned] }
    }
}

/// A session as told.
#[derive(Clone)]
pub struct SessionTold {
    /// Kind of practice.
    pub practice: Practice,
    /// Parts actually used, in order.
    pub parts: Vec<UsedPart>,
    /// Position actually used.
    pub position: Position,
    /// How it ended.
    pub ended: Ended,
    /// How it felt.
    pub ratings: Ratings,
    /// Signs noted with it.
    pub signs: Vec<Sign>,
    /// The person's note.
    pub note: Option<Passage>,
}
