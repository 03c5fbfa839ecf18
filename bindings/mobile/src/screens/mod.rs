//! What is shown, named again: the screen of an answer, and what can be pressed on it.

mod cautions;
mod diary;
mod form_words;
mod log;
mod manner;
mod more;
mod plan;
mod practising;
mod summary;
mod today;
mod whole;

use chrono::NaiveDate;
use frond_core::diary::entry::{Chosen, EntryId};
use frond_core::screens::{
    AcceptScreen, Action, ActivitiesScreen, AnythingNewScreen, Begin, BreathingScreen,
    CalendarScreen, CorrectScreen, Does, EndingScreen, EntriesScreen, EntryScreen, EraseScreen,
    FirstRunPage, FirstRunScreen, FoundScreen, HoldQuestionsScreen, KeepingScreen, KeptScreen,
    LadderScreen, LogSessionScreen, LookForwardScreen, MoreScreen, PlanScreen, PracticesScreen,
    QuestionsScreen, RateScreen, ReadyScreen, RemindersScreen, RunningScreen, Screen,
    ScreeningScreen, SettingsScreen, SettledScreen, ShowsScreen, SignsScreen, SpokeScreen,
    StepCheckScreen, StopScreen, StoppedScreen, SuggestionScreen, SummaryFormScreen, TimeOffScreen,
    TodayScreen,
};

use crate::values::MonthAsked;

#[uniffi::remote(Enum)]
pub enum Screen {
    Today(TodayScreen),
    LogSession(LogSessionScreen),
    Ladder(LadderScreen),
    Suggestion(SuggestionScreen),
    StopAndCall(StopScreen),
    Signs(SignsScreen),
    Spoke(SpokeScreen),
    Entries(EntriesScreen),
    Plan(PlanScreen),
    Kept(KeptScreen),
    Keeping(KeepingScreen),
    Erase(EraseScreen),
    FirstRun(FirstRunScreen),
    More(MoreScreen),
    Calendar(CalendarScreen),
    Entry(EntryScreen),
    Correct(CorrectScreen),
    Questions(QuestionsScreen),
    Activities(ActivitiesScreen),
    TimeOff(TimeOffScreen),
    Ready(ReadyScreen),
    LookForward(LookForwardScreen),
    Settled(SettledScreen),
    Ending(EndingScreen),
    Shows(ShowsScreen),
    Settings(SettingsScreen),
    Summary(SummaryFormScreen),
    Practices(PracticesScreen),
    AnythingNew(AnythingNewScreen),
    Breathing(BreathingScreen),
    Running(RunningScreen),
    Found(FoundScreen),
    Stopped(StoppedScreen),
    Rate(RateScreen),
    Screening(ScreeningScreen),
    HoldQuestions(HoldQuestionsScreen),
    Accept(AcceptScreen),
    StepCheck(StepCheckScreen),
    Reminders(RemindersScreen),
}

#[uniffi::remote(Record)]
pub struct Action {
    pub label: String,
    pub does: Does,
}

#[uniffi::remote(Enum)]
pub enum Does {
    Today,
    LogSession,
    Ladder,
    Suggestion,
    Signs,
    StopAndCall,
    Spoke,
    Entries,
    Plan,
    AcceptProgramme,
    NotMine,
    ConfirmStep,
    ConfirmTime,
    StayHere { stay: bool },
    FeelsReady,
    Choose { shown: EntryId, chosen: Chosen },
    Strike { of: EntryId },
    Keeping,
    NewKeys,
    CodeForm,
    Lock,
    MakePhrase,
    OpenByPhrase,
    MakeCopy,
    Restore,
    RestoreNow,
    RestoreCopy,
    StartNew,
    EraseEntry { of: EntryId },
    EraseDays { from: NaiveDate, to: NaiveDate },
    EraseEntryNow { of: EntryId },
    EraseDaysNow { from: NaiveDate, to: NaiveDate },
    EraseAllNow,
    EraseSomeDays,
    EraseAll,
    FirstRun { page: FirstRunPage },
    More,
    Calendar { month: Option<MonthAsked> },
    Day { day: NaiveDate },
    Entry { of: EntryId },
    Correct { of: EntryId },
    Questions,
    Activities,
    TimeOff,
    LookForward,
    Settled { of: EntryId },
    Ending,
    Shows,
    Settings,
    Summary,
    Practices,
    Breathing,
    Begin(Begin),
    Practice,
    Rate,
    LogAsPlanned,
    Screening,
    HoldQuestions,
    StepCheck,
    Reminders,
    CalendarFile,
}
