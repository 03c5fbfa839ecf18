//! What a person sees, as one typed record per screen, every word already chosen in her language. A
//! shell lays a record out with its platform's own controls and decides nothing; so what is shown is
//! tested once, here, without a phone.
//!
//! Leaves to [`crate::companion`] which screen answers a request, to [`crate::progression`] what the
//! rule says, and to [`crate::words`] the words themselves. Two things hold for every screen: the next
//! thing to do stands in `next`, and nothing shows a streak, a missed day or a percentage.

mod accept;
mod activities;
mod cabinet;
mod calendar;
mod cannot_open;
mod correct;
mod ending;
mod entries;
mod entry;
mod erase;
mod first_run;
mod handed;
mod health;
mod insight;
mod keeping;
mod kept;
mod ladder;
mod letter;
mod log_session;
mod look_forward;
mod more;
mod plain;
mod plan;
mod practice;
pub mod preview;
mod questions;
mod reading;
mod ready;
mod reasons;
mod reminders;
mod replay;
mod restore;
mod section;
mod settings;
mod settled;
mod shows;
mod signs;
mod spoke;
mod stop;
mod suggestion;
mod summary;
mod summary_form;
mod time_off;
mod today;
mod welcome;
mod whole;

pub use accept::{AcceptScreen, Card, StepCheckScreen};
pub(crate) use activities::questions as activity_questions;
pub use activities::{ActivitiesScreen, ActivityQuestion, GoalChoice, GoalQuestion};
pub use cabinet::{
    Brought, BroughtScreen, CabinetRule, CabinetWhatIfScreen, DiaryLine, OlderSummaries,
    OrderChoice, PeopleAsked, PeopleOrder, PeopleScreen, PersonLine, PlanNews, RefusedFile,
    RuleVerdict, WentApart, WhatIfLine, WhatIfScreen, WhyRefused, why_refused,
};
pub use calendar::{CalendarDay, CalendarScreen};
pub use cannot_open::CannotOpenScreen;
pub use correct::{CorrectForm, CorrectScreen};
pub use ending::EndingScreen;
pub use entries::{EntriesScreen, EntryLine};
pub use entry::{EntryScreen, EntryVersion};
pub use erase::EraseScreen;
pub use first_run::{FirstRunPage, FirstRunScreen};
pub use handed::{Knowing, knowing, who_signed};
pub(crate) use health::screening_due;
pub use health::{
    AnswerChoice, HoldQuestion, HoldQuestionsScreen, Question, QuestionGroup, ScreeningScreen,
};
pub use insight::{
    CabinetInsight, ComparedInsight, InsightAbout, InsightPart, InsightScreen, InsightTable,
    KindInsight, SessionPoint, StretchInsight, StretchNumbers, Trend, WentOn,
};
pub(crate) use keeping::{BackupLine, Keeping};
pub use keeping::{KeepingPart, KeepingScreen};
pub use kept::KeptScreen;
pub use ladder::{LadderScreen, Rung};
pub use letter::{Agreed, Letter, LetterPart, Reader as LetterReader, Typed as LetterTyped};
pub use log_session::{
    EndedChoice, LogSessionScreen, PositionChoice, PracticeChoice, PresentSession, RatingQuestion,
    SizeChoice,
};
pub use look_forward::LookForwardScreen;
pub use more::MoreScreen;
pub use plan::PlanScreen;
pub use practice::{
    AnythingNewScreen, Begin, BreathingScreen, Button, CueChoice, FoundScreen, Length, Mark,
    NewChoice, Pacer, PacerPhase, PracticeOption, PracticesScreen, PresetCard, RateScreen,
    RunningScreen, SmallerChoice, StoppedScreen,
};
pub use questions::QuestionsScreen;
pub use reading::{
    Bar as ChartBar, Chart, ChartTable, ChartsScreen, Choice as ChartChoice, DotMark, Dots, Drawn,
    KeyLine, KeyMark, Part as ReadingPartKind, Point, RatedColumn, ReadingPart, ReadingScreen,
    Signal, SignalKind, StepSpan, Timeline, Week, Weeks,
};
pub use ready::{ReadyChoice, ReadyScreen};
pub use reasons::{Reason, ReasonGroup};
pub use reminders::{
    CalendarOffer, DayChoice, ReminderForm, ReminderLine, ReminderPractice, RemindersScreen,
    WordsChoice,
};
pub use replay::{ReplayLine, ReplayScreen, Said, Tried};
pub use restore::RestoreScreen;
pub(crate) use restore::Restoring;
pub use section::{Section, TextField};
pub use settings::{
    LanguageChoice, LanguageForm, LockChoice, LockForm, NumbersForm, SettingsScreen,
};
pub use settled::{SettledChoice, SettledScreen};
pub use shows::{Covered, Shown, ShowsScreen};
pub use signs::{SignChoice, SignsScreen};
pub use spoke::{OpenMatter, SpokeScreen};
pub use stop::StopScreen;
pub use suggestion::SuggestionScreen;
pub use summary::{Opens, SummaryScreen};
pub use summary_form::{SummaryClose, SummaryFile, SummaryFormScreen, SummaryKind, SummaryWay};
pub use time_off::{DaysField, TimeOffScreen};
pub use today::{Notice, PracticeCard, StepCard, TodayScreen};
pub use welcome::Welcome;
pub use whole::{
    AddPlanScreen, Amiss, CodeForm, CodeScreen, CopyScreen, Done, DoneScreen, EraseDaysScreen,
    ErasedScreen, FieldWords, FileWords, FormField, FormLine, FormWords, FrameWords, NoDiaryScreen,
    NoticeWords, OpenByPhraseScreen, OutsideWords, PhraseCheckScreen, PhraseScreen, Problem,
    RemoveCodeForm, RestoreChoiceScreen, RestoreCopyScreen, SetCodeScreen, SorryScreen,
    SpokenWords, TellWords, Wait, WholeScreen, WrongWords,
};

use chrono::NaiveDate;
use serde::Serialize;

use crate::diary::entry::{Chosen, EntryId};
use crate::diary::state::State;
use crate::moment::Stamp;
use crate::progression::{Assessment, OutcomeKind};
use crate::safety::{Sign, Tier, while_paused};
use crate::words::Words;

/// Everything a screen is made from.
#[derive(Clone, Copy)]
pub struct Scene<'a> {
    /// The words in the person's language.
    pub words: &'a Words,
    /// The folded diary.
    pub state: &'a State,
    /// What the rule says now.
    pub assessment: &'a Assessment,
    /// Now.
    pub now: Stamp,
    /// Whether earlier entries are known to be missing, or the diary can only be read.
    pub store: StoreNote,
    /// Whether a practice is under way or waits to be written down.
    pub practice_waits: bool,
}

impl Scene<'_> {
    /// In an emergency nothing continues.
    pub(crate) fn nothing_continues(&self) -> bool {
        self.assessment.open_signs.iter().any(|sign| sign.tier == Tier::Emergency)
    }

    /// Trainers wait until she has spoken with someone.
    fn paused(&self) -> bool {
        self.assessment.outcome.kind() == OutcomeKind::PauseAndCall
    }

    /// "Today, breathing is enough"; while trainers are paused, what may go on; or that nothing is to be done now
    /// but call.
    fn enough(&self) -> String {
        if self.nothing_continues() {
            return self.words.text("today-nothing-now", &[]);
        }
        if !self.paused() {
            return self.words.text("today-enough", &[]);
        }
        let signs: Vec<Sign> =
            self.assessment.open_signs.iter().map(|open| open.key.sign).collect();
        while_paused(self.words, &signs)
    }
}

/// What the person must know about the diary's files.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct StoreNote {
    /// How many entries were found missing since the last talk with the clinician.
    pub missing: u64,
    /// Nothing can be written just now.
    pub read_only: bool,
    /// The last backup on this device could not be made.
    pub no_backup: bool,
    /// The folder is an older copy of the diary.
    pub set_back: bool,
    /// What opens it every day.
    pub lock: Lock,
}

/// What opens the diary every day. What is said of it differs; nothing else does.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Lock {
    /// A passphrase.
    #[default]
    Passphrase,
    /// The key that a phone keeps, and no code.
    Phone,
    /// The key that a phone keeps, and a code of the app's own.
    Code,
}

/// One screen.
#[derive(Clone, Serialize)]
#[serde(tag = "screen", rename_all = "snake_case")]
pub enum Screen {
    /// What today asks.
    Today(TodayScreen),
    /// Log a session.
    LogSession(LogSessionScreen),
    /// The steps.
    Ladder(LadderScreen),
    /// The rule's suggestion and its reasons.
    Suggestion(SuggestionScreen),
    /// Stop and call.
    StopAndCall(StopScreen),
    /// The cautions, to report one.
    Signs(SignsScreen),
    /// "I spoke with ...".
    Spoke(SpokeScreen),
    /// What was written.
    Entries(EntriesScreen),
    /// The plan in plain sentences.
    Plan(PlanScreen),
    /// Something was kept.
    Kept(KeptScreen),
    /// How the diary is kept.
    Keeping(KeepingScreen),
    /// What erasing comes to.
    Erase(EraseScreen),
    /// A page of the first run.
    FirstRun(FirstRunScreen),
    /// Everything that is not needed every day.
    More(MoreScreen),
    /// A month and what was done on its days.
    Calendar(CalendarScreen),
    /// One entry.
    Entry(EntryScreen),
    /// Putting an entry right.
    Correct(CorrectScreen),
    /// Questions for the visit.
    Questions(QuestionsScreen),
    /// Activities and goals.
    Activities(ActivitiesScreen),
    /// Time off.
    TimeOff(TimeOffScreen),
    /// "Would you like to try the next step?"
    Ready(ReadyScreen),
    /// Something to look forward to.
    LookForward(LookForwardScreen),
    /// "Did it settle?"
    Settled(SettledScreen),
    /// The end of the programme.
    Ending(EndingScreen),
    /// What this phone can still show.
    Shows(ShowsScreen),
    /// Settings.
    Settings(SettingsScreen),
    /// A summary being put together.
    Summary(SummaryFormScreen),
    /// What can be practised.
    Practices(PracticesScreen),
    /// The one question before trainers.
    AnythingNew(AnythingNewScreen),
    /// The patterns to breathe to.
    Breathing(BreathingScreen),
    /// A practice with its clock.
    Running(RunningScreen),
    /// A practice found again.
    Found(FoundScreen),
    /// After a stop.
    Stopped(StoppedScreen),
    /// How it was.
    Rate(RateScreen),
    /// The whole list of cautions.
    Screening(ScreeningScreen),
    /// The questions about breath holds.
    HoldQuestions(HoldQuestionsScreen),
    /// A plan to be accepted.
    Accept(AcceptScreen),
    /// "Is this what you use now?"
    StepCheck(StepCheckScreen),
    /// Reminders.
    Reminders(RemindersScreen),
}

/// Something to press: its words, and what it asks for.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Action {
    /// Its words.
    pub label: String,
    /// What it does.
    pub does: Does,
}

/// What an action asks for; the shell turns it into a request.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Does {
    /// Show what today asks.
    Today,
    /// Log a session.
    LogSession,
    /// Show the steps.
    Ladder,
    /// Show the suggestion.
    Suggestion,
    /// Show the cautions.
    Signs,
    /// Show whom to call.
    StopAndCall,
    /// Write down a talk.
    Spoke,
    /// Show what was written.
    Entries,
    /// Show the plan.
    Plan,
    /// Accept a programme.
    AcceptProgramme,
    /// The plan that waits is not hers: put it away.
    NotMine,
    /// Confirm the present step.
    ConfirmStep,
    /// Confirm the time.
    ConfirmTime,
    /// Say "stay here for now", or take it back.
    StayHere {
        /// Said or taken back.
        stay: bool,
    },
    /// Answer "would you like to try the next step?"
    FeelsReady,
    /// Choose upon the suggestion shown.
    Choose {
        /// The suggestion.
        shown: EntryId,
        /// The choice.
        chosen: Chosen,
    },
    /// Take back what was just written.
    Strike {
        /// The entry.
        of: EntryId,
    },
    /// Show how the diary is kept.
    Keeping,
    /// Choose another passphrase.
    NewKeys,
    /// Choose, change or take away the code of a phone.
    CodeForm,
    /// Lock the diary of a phone: its code is asked again.
    Lock,
    /// Make a recovery phrase, in place of the one there is.
    MakePhrase,
    /// Open with the recovery phrase.
    OpenByPhrase,
    /// Make a copy for elsewhere.
    MakeCopy,
    /// Look into a backup on this device, and restore it.
    Restore,
    /// Restore the copy that was looked into.
    RestoreNow,
    /// Restore a copy from elsewhere.
    RestoreCopy,
    /// Start a new diary.
    StartNew,
    /// Erase an entry for good.
    EraseEntry {
        /// The entry.
        of: EntryId,
    },
    /// Erase what was told of some days for good.
    EraseDays {
        /// First day.
        from: NaiveDate,
        /// Last day.
        to: NaiveDate,
    },
    /// Erase this entry, after it was read what that comes to.
    EraseEntryNow {
        /// The entry.
        of: EntryId,
    },
    /// Erase these days, after it was read what that comes to.
    EraseDaysNow {
        /// First day.
        from: NaiveDate,
        /// Last day.
        to: NaiveDate,
    },
    /// Erase everything, after it was read what that comes to.
    EraseAllNow,
    /// Ask which days are to be erased.
    EraseSomeDays,
    /// Erase everything for good.
    EraseAll,
    /// Show a page of the first run.
    FirstRun {
        /// Which.
        page: FirstRunPage,
    },
    /// Show everything that is not needed every day.
    More,
    /// Show a month.
    Calendar {
        /// Year and month; none: the present one.
        month: Option<(i32, u32)>,
    },
    /// Show what was written of a day.
    Day {
        /// Which.
        day: NaiveDate,
    },
    /// Show one entry.
    Entry {
        /// Which.
        of: EntryId,
    },
    /// Put an entry right.
    Correct {
        /// Which.
        of: EntryId,
    },
    /// Show the questions for the visit.
    Questions,
    /// Show the activities and goals.
    Activities,
    /// Show time off.
    TimeOff,
    /// Show what there is to look forward to.
    LookForward,
    /// Ask "did it settle?" about a session.
    Settled {
        /// Which.
        of: EntryId,
    },
    /// Show the ways to end the programme.
    Ending,
    /// Show what this phone can still show.
    Shows,
    /// Show the settings.
    Settings,
    /// Put a summary together.
    Summary,
    /// Show what can be practised.
    Practices,
    /// Show the patterns to breathe to.
    Breathing,
    /// Begin a practice with its clock.
    Begin(Begin),
    /// Show the practice under way.
    Practice,
    /// Write down how the practice was that ended.
    Rate,
    /// Write down a session of the present step that went as planned.
    LogAsPlanned,
    /// Show the whole list of cautions.
    Screening,
    /// Show the questions about breath holds.
    HoldQuestions,
    /// Show "is this what you use now?"
    StepCheck,
    /// Show reminders.
    Reminders,
    /// Make a calendar file of the reminders.
    CalendarFile,
}

impl Action {
    fn new(label: String, does: Does) -> Self {
        Self { label, does }
    }
}
