//! A summary as flat lines, for a clinic or a researcher who asks many at once: one line for each diary,
//! session, time on a step, week of such a time, and sign. Any engine reads them; the questions in SQL stand
//! with the desk's command that writes them.
//!
//! It decides the columns ([`Diary::COLUMNS`] and the others), which never change within a version. No line
//! says who somebody is: a diary is known by its own random id. Words that a person wrote, and the nickname of a
//! plan, go along only where they are asked for. A column with nothing in it holds `null`, in every line.

mod columns;
mod rows;

use chrono::NaiveDate;

pub use columns::{Column, Sort};
pub use rows::{Diary, Session, Sign, Step, Week};

use super::fhir::Texts;
use super::form::Summary;
use super::looked::{Looked, Sat};
use super::stored;
use super::stretch::Stretch;
use crate::diary::entry::{Content, SignNoted};
use crate::programme::values::RatingKind;
use crate::progression::FoldError;

/// The version of the columns.
pub const VERSION: u32 = 1;

/// Days of a week.
const WEEK: i64 = 7;

/// What goes along.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct With {
    /// Words that people wrote.
    pub texts: Texts,
    /// The nickname that the plan in force was made out to.
    pub nickname: bool,
}

/// A summary as flat lines.
pub struct Flat {
    /// The diary itself: one line.
    pub diary: Diary,
    /// The sessions, in the order they happened.
    pub sessions: Vec<Session>,
    /// The times on a step under one revision, in order.
    pub steps: Vec<Step>,
    /// The weeks of those times.
    pub weeks: Vec<Week>,
    /// The signs that were noted, in order of place.
    pub signs: Vec<Sign>,
}

impl Flat {
    /// The lines of a summary.
    ///
    /// # Errors
    /// [`FoldError`] when a programme in it cannot be read.
    pub fn of(summary: &Summary, with: With) -> Result<Self, FoldError> {
        let looked = Looked::through(summary)?;
        let shown: Vec<Shown<'_>> = looked
            .stretches
            .iter()
            .enumerate()
            .filter_map(|(index, stretch)| {
                let (first, last) = looked.shown(stretch)?;
                Some(Shown { index, stretch, first, last })
            })
            .collect();
        let plan = looked.state.rule().programme().filter(|_| with.nickname);
        let nickname = plan.map(|plan| plan.for_whom.to_string());
        let of = Lines { looked: &looked, shown: &shown, texts: with.texts, nickname };
        Ok(Self {
            diary: of.diary(),
            sessions: looked.sat.iter().map(|sat| of.session(sat)).collect(),
            steps: (0..shown.len()).filter_map(|at| of.step(at)).collect(),
            weeks: shown.iter().flat_map(|one| of.weeks(one)).collect(),
            signs: of.signs(),
        })
    }
}

/// A stretch, of which some days are shown.
struct Shown<'a> {
    /// Its place among all stretches.
    index: usize,
    stretch: &'a Stretch,
    first: NaiveDate,
    last: NaiveDate,
}

impl Shown<'_> {
    /// The day something counts on within it. A day on which two steps meet is planned for the later one;
    /// what was done before then counts on the last day of the earlier.
    fn counts_on(&self, day: NaiveDate) -> NaiveDate {
        day.clamp(self.first, self.last)
    }

    /// The week of it, from 1.
    fn week(&self, day: NaiveDate) -> i64 {
        day.signed_duration_since(self.first).num_days() / WEEK + 1
    }
}

struct Lines<'a> {
    looked: &'a Looked<'a>,
    shown: &'a [Shown<'a>],
    texts: Texts,
    nickname: Option<String>,
}

impl Lines<'_> {
    fn id(&self) -> String {
        self.looked.summary.diary.to_string()
    }

    fn diary(&self) -> Diary {
        let summary = self.looked.summary;
        let (narrowed, marks) = (&summary.narrowed, &summary.marks);
        let rule = summary.present.rule_of.as_ref();
        Diary {
            flat: VERSION,
            diary: self.id(),
            nickname: self.nickname.clone(),
            made: time(&summary.made),
            language: summary.language.clone(),
            narrowed: narrowed.is_narrowed(),
            shown_from: narrowed.from.map(|day| day.to_string()),
            shown_to: narrowed.to.map(|day| day.to_string()),
            programme: rule.map(|rule| rule.programme.to_string()),
            revision: rule.map(|rule| rule.revision.get()),
            step: summary.present.step.as_ref().map(|now| now.step.to_string()),
            outcome: rule.map(|_| stored::name(&summary.present.outcome)),
            open_signs: count(summary.present.open_signs.len()),
            paused: summary.present.pause.is_some(),
            missing_entries: marks.missing_entries,
            restored: marks.restored,
            erased: marks.erased,
        }
    }

    fn session(&self, sat: &Sat<'_>) -> Session {
        let (row, session) = (&sat.row, sat.session);
        let during = sat.during.and_then(|index| self.looked.stretches.get(index));
        let shown = self.shown.iter().find(|one| Some(one.index) == sat.during);
        let counts_on = shown.map(|one| one.counts_on(row.happened.day()));
        let rated = |kind| session.ratings.given(kind).map(|one| one.get());
        let (ended, reason) = stored::ended(session.ended);
        let signs: Vec<String> = session.signs.iter().map(|one| stored::name(&one.sign)).collect();
        let all =
            session.parts.iter().map(|one| one.practised_seconds).fold(0, u32::saturating_add);
        let settled = self.looked.settled.get(&row.first.id);
        let note = session.note.as_ref().filter(|_| self.texts == Texts::Carried);
        Session {
            flat: VERSION,
            diary: self.id(),
            entry: row.first.id.to_string(),
            happened: time(&row.happened),
            written: time(&row.first.written),
            day: row.happened.day().to_string(),
            programme: during.map(|on| on.programme.to_string()),
            revision: during.map(|on| on.revision.get()),
            step: during.map(|on| on.step.id.to_string()),
            stretch: shown.map(|one| count(one.index + 1)),
            week: shown.zip(counts_on).map(|(one, day)| one.week(day)),
            counts_on: counts_on.map(|day| day.to_string()),
            of_step: sat.of_step,
            on_step: sat.on_step,
            practice: String::from(session.practice.clone()),
            position: stored::position(session.position),
            main_size_mm: session.main_size().map(crate::programme::values::Size::millimetres),
            main_seconds: session.main_seconds(),
            all_seconds: all,
            ended,
            reason,
            peak: rated(RatingKind::Peak),
            before: rated(RatingKind::Before),
            after: rated(RatingKind::After),
            worry: rated(RatingKind::Worry),
            settled: settled.map(|answer| stored::settled(*answer)),
            signs: signs.join(" "),
            corrections: count(row.corrections),
            hours_until_written: (row.first.written.millis() - row.happened.millis()).max(0)
                / 3_600_000,
            note: note.map(|note| note.as_str().to_owned()),
        }
    }

    fn step(&self, at: usize) -> Option<Step> {
        let one = self.shown.get(at)?;
        let stretch = one.stretch;
        let after = self.looked.stretches.get(one.index + 1);
        let days = days(one.first, one.last);
        let off = self.off(one.first, one.last);
        Some(Step {
            flat: VERSION,
            diary: self.id(),
            programme: stretch.programme.to_string(),
            revision: stretch.revision.get(),
            step: stretch.step.id.to_string(),
            stretch: count(one.index + 1),
            rung: count(stretch.place + 1),
            main_size_mm: stretch.step.main_size().map(crate::programme::values::Size::millimetres),
            position: stored::position(stretch.step.position),
            // On the first day that she chose to show, only the step in use is known, not since when.
            began_shown: self.looked.summary.narrowed.from.is_none_or(|from| from < one.first),
            first_day: one.first.to_string(),
            last_day: one.last.to_string(),
            days,
            days_off: off,
            weekly_least: stretch.step.schedule.weekly_least.get(),
            weekly_most: stretch.step.schedule.weekly_most.get(),
            left_for: after.map(|after| left_for(stretch, after)),
        })
    }

    fn weeks(&self, one: &Shown<'_>) -> Vec<Week> {
        let mut weeks = Vec::new();
        let mut first = one.first;
        while first <= one.last {
            let last = first
                .checked_add_signed(chrono::TimeDelta::days(WEEK - 1))
                .map_or(one.last, |last| last.min(one.last));
            weeks.push(Week {
                flat: VERSION,
                diary: self.id(),
                programme: one.stretch.programme.to_string(),
                revision: one.stretch.revision.get(),
                step: one.stretch.step.id.to_string(),
                stretch: count(one.index + 1),
                week: one.week(first),
                first_day: first.to_string(),
                days: days(first, last),
                days_off: self.off(first, last),
                weekly_least: one.stretch.step.schedule.weekly_least.get(),
                weekly_most: one.stretch.step.schedule.weekly_most.get(),
            });
            let Some(next) = last.succ_opt() else { break };
            first = next;
        }
        weeks
    }

    /// Days off between two days, both included.
    fn off(&self, first: NaiveDate, last: NaiveDate) -> u64 {
        self.looked.off.iter().map(|(from, to)| days((*from).max(first), (*to).min(last))).sum()
    }

    fn signs(&self) -> Vec<Sign> {
        let open = &self.looked.summary.present.open_signs;
        let mut signs = Vec::new();
        for row in self.looked.standing() {
            for SignNoted { sign, tier } in noted(row) {
                signs.push(Sign {
                    flat: VERSION,
                    diary: self.id(),
                    entry: row.first.id.to_string(),
                    day: row.happened.day().to_string(),
                    sign: stored::name(&sign),
                    tier: tier.name(),
                    with_session: matches!(row.content, Content::Session(_)),
                    open: open
                        .iter()
                        .any(|one| one.key.entry == row.first.id && one.key.sign == sign),
                });
            }
        }
        signs
    }
}

/// The signs an entry noted: of its first version and of the one that counts, each once, as grave as it was
/// ever taken. A sign once noted counts even where a correction took it away (F3).
pub(super) fn noted(row: &crate::diary::resolve::Counted<'_>) -> Vec<SignNoted> {
    let mut noted: Vec<SignNoted> = Vec::new();
    for one in row.first.what.signs().iter().chain(row.content.signs()) {
        match noted.iter_mut().find(|there| there.sign == one.sign) {
            Some(there) => there.tier = there.tier.max(one.tier),
            None => noted.push(*one),
        }
    }
    noted
}

/// The nickname of the plan that was accepted last.
/// What a time on a step was left for.
fn left_for(stretch: &Stretch, after: &Stretch) -> &'static str {
    if stretch.programme != after.programme {
        "programme"
    } else if stretch.revision != after.revision {
        "revision"
    } else if after.place > stretch.place {
        "up"
    } else {
        "back"
    }
}

/// Days from one to another, both included; none where they do not lie in order.
fn days(first: NaiveDate, last: NaiveDate) -> u64 {
    let days = last.signed_duration_since(first).num_days().saturating_add(1);
    u64::try_from(days).unwrap_or_default()
}

fn count(count: usize) -> u64 {
    u64::try_from(count).unwrap_or(u64::MAX)
}

/// Local time with its offset, to the second.
fn time(at: &crate::moment::Stamp) -> String {
    at.local().to_rfc3339_opts(chrono::SecondsFormat::Secs, false)
}
