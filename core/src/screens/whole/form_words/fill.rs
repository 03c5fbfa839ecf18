//! Which message stands where.

use super::{
    FieldWords, FileWords, FormWords, FrameWords, NoticeWords, OutsideWords, SpokenWords,
    TellWords, WrongWords,
};
use crate::screens::Covered;
use crate::words::{Direction, Words};

impl FormWords {
    /// In the language of these words; `covered`: what the shell does, so that no button claims more.
    #[must_use]
    pub fn new(words: &Words, covered: Covered) -> Self {
        let language = words.language();
        Self {
            language: language.tag.to_owned(),
            right_to_left: language.direction == Direction::RightToLeft,
            outside: outside(words),
            frame: frame(words, covered),
            fields: fields(words),
            tell: tell(words),
            files: files(words),
            notices: NoticeWords {
                title: words.text("phone-notices-title", &[]),
                why: words.text("phone-notices-why", &[]),
                allow: words.text("phone-notices-allow", &[]),
                refused: words.text("phone-notices-refused", &[]),
                settings: words.text("phone-notices-settings", &[]),
            },
            wrong: wrong(words),
            spoken: spoken(words),
        }
    }
}

fn outside(words: &Words) -> OutsideWords {
    OutsideWords {
        channel: words.text("leaving-channel", &[]),
        later: words.text("leaving-later", &[]),
        done: words.text("leaving-done", &[]),
        open: words.text("leaving-open", &[]),
        share: words.text("leaving-share", &[]),
        closed: words.text("leaving-closed", &[]),
    }
}

fn frame(words: &Words, covered: Covered) -> FrameWords {
    let reviewed = words.language().safety_text_reviewed();
    FrameWords {
        name: words.text("page-name", &[]),
        leave: if covered.leaves {
            words.text("phone-leave", &[])
        } else {
            words.text("phone-hide", &[])
        },
        leave_spoken: if covered.leaves {
            words.text("phone-leave-spoken", &[])
        } else {
            words.text("phone-hide-spoken", &[])
        },
        back: words.text("phone-back", &[]),
        not_right: words.text("action-signs", &[]),
        today: words.text("action-today", &[]),
        more: words.text("action-more", &[]),
        lock: words.text("action-lock", &[]),
        close: words.text("phone-close", &[]),
        not_now: words.text("action-not-now", &[]),
        try_again: words.text("action-try-again", &[]),
        loading: words.text("phone-loading", &[]),
        loading_long: words.text("phone-loading-long", &[]),
        problems: words.text("page-problems", &[]),
        sorry: words.text("page-sorry-title", &[]),
        fault: words.text("phone-fault", &[]),
        not_reviewed: (!reviewed).then(|| words.text("page-not-reviewed", &[])),
    }
}

fn fields(words: &Words) -> FieldWords {
    let figure = |number: u8| words.text("phone-figure", &[("number", number.into())]);
    FieldWords {
        keep: words.text("page-keep", &[]),
        required: words.text("phone-required", &[]),
        day: words.text("page-day", &[]),
        time: words.text("page-time", &[]),
        choose_day: words.text("phone-choose-day", &[]),
        choose_time: words.text("phone-choose-time", &[]),
        no_day: words.text("phone-no-day", &[]),
        no_time: words.text("phone-no-time", &[]),
        empty_again: words.text("phone-empty-again", &[]),
        times: words.text("phone-times", &[]),
        add_time: words.text("phone-add-time", &[]),
        remove_time: words.text("phone-remove-time", &[]),
        when: words.text("page-when", &[]),
        when_hint: words.text("page-when-hint", &[]),
        when_stays: words.text("page-when-stays", &[]),
        show_secret: words.text("phone-show-secret", &[]),
        hide_secret: words.text("phone-hide-secret", &[]),
        secret_shown: words.text("phone-secret-shown", &[]),
        secret_hidden: words.text("phone-secret-hidden", &[]),
        choose_file: words.text("phone-choose-file", &[]),
        file_chosen: words.text("phone-file-chosen", &[]),
        paste: words.text("phone-paste", &[]),
        clipboard_cleared: words.text("phone-clipboard-cleared", &[]),
        own_words: words.text("page-own-words", &[]),
        numbers: (0u8..=31).map(figure).collect(),
    }
}

fn tell(words: &Words) -> TellWords {
    TellWords {
        size_another: words.text("page-size-another", &[]),
        size_hint: words.text("page-size-hint", &[]),
        size_mm: words.text("page-size-mm", &[]),
        smaller: words.text("timed-smaller", &[]),
        numbers: words.text("page-numbers", &[]),
        cautions: words.text("page-cautions", &[]),
        why: words.text("page-why", &[]),
        report: words.text("page-report", &[]),
        closes: words.text("page-closes", &[]),
        may_go_on: words.text("page-may-go-on", &[]),
        step_clinician: words.text("page-step-clinician", &[]),
        step_own: words.text("page-step-own", &[]),
        stay: words.text("action-stay", &[]),
        whole_plan: words.text("action-plan", &[]),
        knowing: words.text("handover-knowing", &[]),
        screen_on: words.text("phone-screen-on", &[]),
    }
}

fn files(words: &Words) -> FileWords {
    FileWords {
        whither: words.text("phone-file-where", &[]),
        share: words.text("phone-file-share", &[]),
        save: words.text("phone-file-save", &[]),
        sealed: words.text("phone-file-sealed", &[]),
        unsealed: words.text("summary-opens-anyone", &[]),
        nobody_told: words.text("summary-nobody-told", &[]),
        saving: words.text("phone-saving", &[]),
        saved: words.text("phone-saved", &[]),
        not_saved: words.text("phone-not-saved", &[]),
        cannot_save: words.text("phone-error-save", &[]),
        reading: words.text("phone-reading", &[]),
        too_large: words.text("phone-error-large", &[]),
        unreadable: words.text("phone-error-read", &[]),
        no_files: words.text("phone-no-files", &[]),
        no_calls: words.text("phone-no-calls", &[]),
    }
}

fn wrong(words: &Words) -> WrongWords {
    WrongWords {
        practice: words.text("page-error-practice", &[]),
        size: words.text("refusal-size-missing", &[]),
        size_mm: words.text("page-error-size-mm", &[]),
        position: words.text("page-error-position", &[]),
        minutes: words.text("page-error-minutes", &[]),
        ended: words.text("page-error-ended", &[]),
        rating: words.text("page-error-rating", &[]),
        note: words.text("page-error-note", &[]),
        line: words.text("page-error-line", &[]),
        empty: words.text("page-error-empty", &[]),
        with: words.text("page-error-with", &[]),
        answer: words.text("page-error-answer", &[]),
        choice: words.text("page-error-choice", &[]),
        number: words.text("page-error-number", &[]),
        day: words.text("phone-error-day-missing", &[]),
        time: words.text("phone-error-time-missing", &[]),
        days: words.text("page-error-days", &[]),
        no_such_time: words.text("page-error-no-such-time", &[]),
        end_before_start: words.text("refusal-end-before-start", &[]),
        quiet: words.text("page-error-quiet", &[]),
        file: words.text("page-error-file", &[]),
    }
}

fn spoken(words: &Words) -> SpokenWords {
    let of_ten = |number: u8| words.text("phone-of-ten", &[("number", number.into())]);
    SpokenWords {
        less: words.text("phone-less", &[]),
        more: words.text("phone-more", &[]),
        of_ten: (0..=10).map(of_ten).collect(),
        opened: words.text("phone-opened", &[]),
        folded: words.text("phone-folded", &[]),
        chosen: words.text("phone-chosen", &[]),
        not_chosen: words.text("phone-not-chosen", &[]),
        to_put_right: words.text("phone-to-put-right", &[]),
        clock: words.text("phone-clock", &[]),
        pacer: words.text("phone-pacer", &[]),
        pacer_buzz: words.text("phone-pacer-buzz", &[]),
    }
}
