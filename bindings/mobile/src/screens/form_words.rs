//! The words of forms and of the phone's own notices.

use frond_core::screens::{
    FieldWords, FileWords, FormWords, FrameWords, NoticeWords, OutsideWords, SpokenWords,
    TellWords, WrongWords,
};

#[uniffi::remote(Record)]
pub struct FormWords {
    pub language: String,
    pub right_to_left: bool,
    pub outside: OutsideWords,
    pub frame: FrameWords,
    pub fields: FieldWords,
    pub tell: TellWords,
    pub files: FileWords,
    pub notices: NoticeWords,
    pub wrong: WrongWords,
    pub spoken: SpokenWords,
}

#[uniffi::remote(Record)]
pub struct OutsideWords {
    pub channel: String,
    pub later: String,
    pub done: String,
    pub open: String,
    pub share: String,
    pub closed: String,
}

#[uniffi::remote(Record)]
pub struct FrameWords {
    pub name: String,
    pub leave: String,
    pub leave_spoken: String,
    pub back: String,
    pub not_right: String,
    pub today: String,
    pub more: String,
    pub lock: String,
    pub close: String,
    pub not_now: String,
    pub try_again: String,
    pub loading: String,
    pub loading_long: String,
    pub problems: String,
    pub sorry: String,
    pub fault: String,
    pub not_reviewed: Option<String>,
}

#[uniffi::remote(Record)]
pub struct FieldWords {
    pub keep: String,
    pub required: String,
    pub day: String,
    pub time: String,
    pub choose_day: String,
    pub choose_time: String,
    pub no_day: String,
    pub no_time: String,
    pub empty_again: String,
    pub times: String,
    pub add_time: String,
    pub remove_time: String,
    pub when: String,
    pub when_hint: String,
    pub when_stays: String,
    pub show_secret: String,
    pub hide_secret: String,
    pub secret_shown: String,
    pub secret_hidden: String,
    pub choose_file: String,
    pub file_chosen: String,
    pub paste: String,
    pub clipboard_cleared: String,
    pub own_words: String,
    pub numbers: Vec<String>,
}

#[uniffi::remote(Record)]
pub struct TellWords {
    pub size_another: String,
    pub size_hint: String,
    pub size_mm: String,
    pub smaller: String,
    pub numbers: String,
    pub cautions: String,
    pub why: String,
    pub report: String,
    pub closes: String,
    pub may_go_on: String,
    pub step_clinician: String,
    pub step_own: String,
    pub stay: String,
    pub whole_plan: String,
    pub knowing: String,
    pub screen_on: String,
}

#[uniffi::remote(Record)]
pub struct FileWords {
    pub whither: String,
    pub share: String,
    pub save: String,
    pub sealed: String,
    pub unsealed: String,
    pub nobody_told: String,
    pub saving: String,
    pub saved: String,
    pub not_saved: String,
    pub cannot_save: String,
    pub reading: String,
    pub too_large: String,
    pub unreadable: String,
    pub no_files: String,
    pub no_calls: String,
}

#[uniffi::remote(Record)]
pub struct NoticeWords {
    pub title: String,
    pub why: String,
    pub allow: String,
    pub refused: String,
    pub settings: String,
}

#[uniffi::remote(Record)]
pub struct WrongWords {
    pub practice: String,
    pub size: String,
    pub size_mm: String,
    pub position: String,
    pub minutes: String,
    pub ended: String,
    pub rating: String,
    pub note: String,
    pub line: String,
    pub empty: String,
    pub with: String,
    pub answer: String,
    pub choice: String,
    pub number: String,
    pub day: String,
    pub time: String,
    pub days: String,
    pub no_such_time: String,
    pub end_before_start: String,
    pub quiet: String,
    pub file: String,
}

#[uniffi::remote(Record)]
pub struct SpokenWords {
    pub less: String,
    pub more: String,
    pub of_ten: Vec<String>,
    pub opened: String,
    pub folded: String,
    pub chosen: String,
    pub not_chosen: String,
    pub to_put_right: String,
    pub clock: String,
    pub pacer: String,
    pub pacer_buzz: String,
}
