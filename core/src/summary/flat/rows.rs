//! The rows. Every number in them is self-reported or counted from what was self-reported.

use serde::Serialize;

use super::columns::{Column, Sort, row};

row! {
    /// A diary.
    Diary {
        flat: u32, BigInt, "version of these columns, 1";
        diary: String, String, "random id of the diary, 32 hexadecimal digits; it stays the same";
        nickname: Option<String>, String, "the nickname that the plan was made out to, only where it was asked for";
        made: String, String, "when the summary was made, local time with offset (RFC 3339)";
        language: String, String, "language of her screens, a BCP 47 tag";
        narrowed: bool, Boolean, "whether she left something out of the summary";
        shown_from: Option<String>, String, "first day that is shown, where she chose one";
        shown_to: Option<String>, String, "last day that is shown, where she chose one";
        programme: Option<String>, String, "id of the programme in force; null without one";
        revision: Option<u32>, BigInt, "its revision";
        step: Option<String>, String, "id of the step in use";
        outcome: Option<String>, String, "what the clinician's rule said: pause_and_call, step_back, hold, ready_to_talk or step_up; null without a programme";
        open_signs: u64, BigInt, "signs that are open";
        paused: bool, Boolean, "whether a pause stands";
        missing_entries: u64, BigInt, "entries known to be missing";
        restored: u32, BigInt, "times it was restored from a copy";
        erased: u32, BigInt, "times something was erased";
    }
}

row! {
    /// A session as it counts now.
    Session {
        flat: u32, BigInt, "version of these columns, 1";
        diary: String, String, "id of the diary";
        entry: String, String, "id of the entry, 32 hexadecimal digits";
        happened: String, String, "when it began, local time with offset (RFC 3339)";
        written: String, String, "when it was written down, local time with offset (RFC 3339)";
        day: String, String, "local day on which it began";
        programme: Option<String>, String, "id of the programme then";
        revision: Option<u32>, BigInt, "its revision then";
        step: Option<String>, String, "id of the step in use then";
        stretch: Option<u64>, BigInt, "which time on a step it falls in, as in the steps; null where those days are not shown";
        week: Option<i64>, BigInt, "which week of that time, from 1";
        counts_on: Option<String>, String, "the day of that time it counts on: a day on which two steps meet is the later one's";
        of_step: bool, Boolean, "whether its practice is the step's; only such sessions are planned by the step";
        on_step: bool, Boolean, "whether practice, size and position are the step's";
        practice: String, String, "trainer, breathing, belly_breathing, meditation or other:ID";
        position: &'static str, String, "on_back, side_lying, sitting, standing or other";
        main_size_mm: Option<f64>, Double, "widest diameter of the trainer used in the main part, millimetres";
        main_seconds: u32, BigInt, "practised on the main part, pauses left out, seconds";
        all_seconds: u32, BigInt, "practised on all parts, pauses left out, seconds";
        ended: &'static str, String, "finished, stopped or could_not_start";
        reason: Option<&'static str>, String, "why stopped or not started: discomfort, did_not_go_in, upset, interrupted, other";
        peak: Option<u8>, BigInt, "highest discomfort, 0 to 10, self-reported; null where not rated";
        before: Option<u8>, BigInt, "discomfort before, 0 to 10, self-reported";
        after: Option<u8>, BigInt, "discomfort afterwards, 0 to 10, self-reported";
        worry: Option<u8>, BigInt, "worry, 0 to 10, self-reported";
        settled: Option<&'static str>, String, "did it settle, asked the day after: yes, not_yet or rather_not_say";
        signs: String, String, "signs noted with it, separated by spaces";
        corrections: u64, BigInt, "how many corrections count";
        hours_until_written: i64, BigInt, "whole hours from its beginning to being written down";
        note: Option<String>, String, "her own note, where it was handed over and texts were asked for";
    }
}

row! {
    /// A time on one step under one revision.
    Step {
        flat: u32, BigInt, "version of these columns, 1";
        diary: String, String, "id of the diary";
        programme: String, String, "id of the programme";
        revision: u32, BigInt, "its revision";
        step: String, String, "id of the step";
        stretch: u64, BigInt, "which time on a step of this diary, from 1";
        rung: u64, BigInt, "which rung of the ladder, from 1";
        main_size_mm: Option<f64>, Double, "widest diameter of the trainer of the main part, millimetres";
        position: &'static str, String, "on_back, side_lying, sitting, standing or other";
        began_shown: bool, Boolean, "whether it began within the days that are shown, so that its days are all of it";
        first_day: String, String, "first day of it that is shown";
        last_day: String, String, "last day of it that is shown";
        days: u64, BigInt, "days from the first to the last, both included";
        days_off: u64, BigInt, "days of them that were off";
        weekly_least: u16, BigInt, "times a week planned at least";
        weekly_most: u16, BigInt, "times a week planned at most";
        left_for: Option<&'static str>, String, "up, back, revision or programme; null where it lasts";
    }
}

row! {
    /// A week of a time on a step, counted from its first day; the last may be shorter.
    Week {
        flat: u32, BigInt, "version of these columns, 1";
        diary: String, String, "id of the diary";
        programme: String, String, "id of the programme";
        revision: u32, BigInt, "its revision";
        step: String, String, "id of the step";
        stretch: u64, BigInt, "which time on a step of this diary, from 1";
        week: i64, BigInt, "which week of it, from 1";
        first_day: String, String, "its first day";
        days: u64, BigInt, "its days, 1 to 7";
        days_off: u64, BigInt, "days of them that were off";
        weekly_least: u16, BigInt, "times a week planned at least";
        weekly_most: u16, BigInt, "times a week planned at most";
    }
}

row! {
    /// A sign that was noted.
    Sign {
        flat: u32, BigInt, "version of these columns, 1";
        diary: String, String, "id of the diary";
        entry: String, String, "id of the entry that noted it";
        day: String, String, "local day of it";
        sign: String, String, "which, by its stored name";
        tier: &'static str, String, "emergency, stop, ask_first or note: the gravest it was noted with";
        with_session: bool, Boolean, "whether it was noted with a session";
        open: bool, Boolean, "whether it was open when the summary was made";
    }
}
