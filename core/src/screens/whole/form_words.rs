//! Every word that a phone needs to lay the records out and that no record carries, in one language: what stands
//! on its own controls, what has to be put right before anything is asked, and what is said aloud.
//!
//! Decides which words there are. Where they stand is the shell's. [`OutsideWords`] can be read by anyone, so they
//! come from the file of the words that leave Frond.

mod fill;

use serde::Serialize;

/// The words of a phone's own controls, in the person's language.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct FormWords {
    /// The tag of the language (BCP 47), for whatever reads aloud and for a system's own pickers.
    pub language: String,
    /// Whether it runs from right to left.
    pub right_to_left: bool,
    /// What others may see.
    pub outside: OutsideWords,
    /// The frame of every screen.
    pub frame: FrameWords,
    /// Fields of forms.
    pub fields: FieldWords,
    /// Parts of forms about sessions, steps and talks.
    pub tell: TellWords,
    /// Files that come and go, and calls.
    pub files: FileWords,
    /// Whether the phone may show reminders.
    pub notices: NoticeWords,
    /// What has to be put right.
    pub wrong: WrongWords,
    /// What is said aloud.
    pub spoken: SpokenWords,
}

/// What others may see: on a locked phone, in its settings, in another app. Nothing in it hints at anything.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct OutsideWords {
    /// The name of the channel of notifications.
    pub channel: String,
    /// Puts a reminder off.
    pub later: String,
    /// Takes a reminder away. Nothing is written down by it.
    pub done: String,
    /// Opens the app.
    pub open: String,
    /// The title of the choice of an app to share with.
    pub share: String,
    /// The heading of the screen after leaving at once.
    pub closed: String,
}

/// The frame of every screen.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct FrameWords {
    /// The name, as it stands under the icon.
    pub name: String,
    /// Leaves at once, or hides where an app cannot leave by itself.
    pub leave: String,
    /// The same for those who listen.
    pub leave_spoken: String,
    /// Goes back.
    pub back: String,
    /// "Something is not right": in reach from every screen of an open diary.
    pub not_right: String,
    /// Back to today.
    pub today: String,
    /// Shows everything that is not needed every day.
    pub more: String,
    /// Locks the diary.
    pub lock: String,
    /// Closes what stands over a screen.
    pub close: String,
    /// Lets it be for now.
    pub not_now: String,
    /// Tries again.
    pub try_again: String,
    /// Work is going on.
    pub loading: String,
    /// Work is going on that takes a while.
    pub loading_long: String,
    /// Heading of what has to be put right.
    pub problems: String,
    /// Heading of something that did not work.
    pub sorry: String,
    /// Something went wrong that no record tells of.
    pub fault: String,
    /// That no clinician has checked the wording; none where one has.
    pub not_reviewed: Option<String>,
}

/// Fields of forms.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct FieldWords {
    /// Keeps what was filled in, where a record has no word of its own for it.
    pub keep: String,
    /// A field that needs an answer.
    pub required: String,
    /// A day.
    pub day: String,
    /// A time.
    pub time: String,
    /// Chooses a day.
    pub choose_day: String,
    /// Chooses a time.
    pub choose_time: String,
    /// No day is chosen.
    pub no_day: String,
    /// No time is chosen.
    pub no_time: String,
    /// Empties a day, a time or a file again.
    pub empty_again: String,
    /// "At what times?", where times are chosen one by one.
    pub times: String,
    /// One time more.
    pub add_time: String,
    /// One time less.
    pub remove_time: String,
    /// "When did it begin?"
    pub when: String,
    /// What an empty day and time mean.
    pub when_hint: String,
    /// What they mean where something is put right.
    pub when_stays: String,
    /// Shows a secret while it is typed.
    pub show_secret: String,
    /// Hides it.
    pub hide_secret: String,
    /// Said when it is shown.
    pub secret_shown: String,
    /// Said when it is hidden.
    pub secret_hidden: String,
    /// Chooses a file.
    pub choose_file: String,
    /// A file is chosen.
    pub file_chosen: String,
    /// Pastes.
    pub paste: String,
    /// Said when a pasted link was taken off the clipboard.
    pub clipboard_cleared: String,
    /// "In your own words, if you like".
    pub own_words: String,
    /// The numbers from 0 to 31 in figures, for scales, days of a month and lists.
    pub numbers: Vec<String>,
}

/// Parts of forms about sessions, steps and talks.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct TellWords {
    /// A size that the plan does not have.
    pub size_another: String,
    /// For what a size is asked.
    pub size_hint: String,
    /// "Its widest part, in mm".
    pub size_mm: String,
    /// Heading of smaller sizes.
    pub smaller: String,
    /// Heading of sizes, times and counts that are folded.
    pub numbers: String,
    /// Heading of cautions.
    pub cautions: String,
    /// Heading of reasons.
    pub why: String,
    /// Sends what is not right.
    pub report: String,
    /// "What does the talk close?"
    pub closes: String,
    /// "Yes, I may go on".
    pub may_go_on: String,
    /// Why a larger step: the clinician said so.
    pub step_clinician: String,
    /// Why a larger step: an own choice.
    pub step_own: String,
    /// Rather staying.
    pub stay: String,
    /// Heading of the whole plan in sentences.
    pub whole_plan: String,
    /// Heading of what is chosen knowingly.
    pub knowing: String,
    /// That the screen stays on.
    pub screen_on: String,
}

/// Files that come and go, and calls.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct FileWords {
    /// Where a file shall go.
    pub whither: String,
    /// Shares it; offered for sealed files only.
    pub share: String,
    /// Saves it.
    pub save: String,
    /// What another app sees of a sealed file.
    pub sealed: String,
    /// What anyone sees of one that is not.
    pub unsealed: String,
    /// "Nobody has been told. Frond sends nothing."
    pub nobody_told: String,
    /// It is being saved.
    pub saving: String,
    /// It is saved.
    pub saved: String,
    /// Nothing was saved.
    pub not_saved: String,
    /// It could not be saved there.
    pub cannot_save: String,
    /// It is being read.
    pub reading: String,
    /// It is too large.
    pub too_large: String,
    /// It could not be read.
    pub unreadable: String,
    /// No app chooses or keeps files.
    pub no_files: String,
    /// No app makes calls; the number stands below.
    pub no_calls: String,
}

/// Whether the phone may show reminders. Asked when the first one is turned on.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct NoticeWords {
    /// Heading.
    pub title: String,
    /// What will be asked, and that everything works without.
    pub why: String,
    /// Lets the phone ask.
    pub allow: String,
    /// Said after it was refused.
    pub refused: String,
    /// Opens the phone's settings.
    pub settings: String,
}

/// What has to be put right before anything is asked of the diary.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct WrongWords {
    /// No practice was chosen.
    pub practice: String,
    /// No size was chosen.
    pub size: String,
    /// A typed size cannot be read.
    pub size_mm: String,
    /// No position was chosen.
    pub position: String,
    /// No minutes, or none that can be read.
    pub minutes: String,
    /// No ending was chosen.
    pub ended: String,
    /// No rating, nor "rather not say".
    pub rating: String,
    /// A note is too long.
    pub note: String,
    /// A line is too long.
    pub line: String,
    /// Nothing was written.
    pub empty: String,
    /// With whom is missing.
    pub with: String,
    /// No answer was chosen.
    pub answer: String,
    /// One of several has to be chosen.
    pub choice: String,
    /// No number was chosen.
    pub number: String,
    /// No day was chosen.
    pub day: String,
    /// No time was chosen.
    pub time: String,
    /// No day of the week was chosen.
    pub days: String,
    /// This time does not exist on that day.
    pub no_such_time: String,
    /// The last day lies before the first.
    pub end_before_start: String,
    /// The two ends of the quiet hours are the same.
    pub quiet: String,
    /// No file was chosen.
    pub file: String,
}

/// What is said aloud, for those who listen or feel.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SpokenWords {
    /// One less.
    pub less: String,
    /// One more.
    pub more: String,
    /// "0 of 10" to "10 of 10".
    pub of_ten: Vec<String>,
    /// A part that is open.
    pub opened: String,
    /// A part that is folded.
    pub folded: String,
    /// Something chosen.
    pub chosen: String,
    /// Something not chosen.
    pub not_chosen: String,
    /// Before what has to be put right at a field.
    pub to_put_right: String,
    /// What the clock shows.
    pub clock: String,
    /// What the pacer is.
    pub pacer: String,
    /// What its buzzes mean; the shell buzzes like this.
    pub pacer_buzz: String,
}
