//! What is set about reminders, what they will say, and when the next ones come. Off until turned on.

use serde::Serialize;

use super::{Action, Does, Scene, plain};
use crate::diary::entry::EntryId;
use crate::message_id;
use crate::programme::values::Practice;
use crate::reminders::{
    ClockTime, NeutralWords, PlanReminders, QuietHours, Reminder, ReminderSettings, When,
    after_line, calendar_note, in_quiet_hours, off_line,
};
use crate::words::Words;

/// Reminders.
#[derive(Clone, Serialize)]
pub struct RemindersScreen {
    /// The id to send a change under.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// Whether they are on.
    pub on: bool,
    /// That they are off until turned on, where they are.
    pub off: Option<String>,
    /// "Turn reminders on" or "off", whichever it would be.
    pub switch: String,
    /// What is remembered.
    pub reminders: Vec<ReminderLine>,
    /// Said where nothing is.
    pub empty: Option<String>,
    /// When the next ones come.
    pub coming: Vec<String>,
    /// What each will say, and that it says nothing else.
    pub says: String,
    /// Times that lie in the quiet hours, and so are never heard.
    pub unheard: Vec<String>,
    /// The quiet hours.
    pub quiet: Option<QuietHours>,
    /// "Quiet hours"
    pub quiet_label: String,
    /// What the quiet hours are now, in words.
    pub quiet_line: String,
    /// What a reminder can say.
    pub words: Vec<WordsChoice>,
    /// "What a reminder says"
    pub words_label: String,
    /// What can be remembered.
    pub practices: Vec<ReminderPractice>,
    /// Days of the week, Monday first.
    pub days: Vec<DayChoice>,
    /// The words around the form for another reminder.
    pub form: ReminderForm,
    /// What to know before times go into a calendar; `None` where there is nothing to put there.
    pub calendar: Option<CalendarOffer>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// One thing that is remembered.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReminderLine {
    /// The reminder, to take it away.
    pub reminder: Reminder,
    /// In words.
    pub text: String,
    /// "Take away"
    pub remove: String,
}

/// What a reminder can say.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct WordsChoice {
    /// Which.
    pub words: NeutralWords,
    /// What it says.
    pub label: String,
    /// Whether it is what they say now.
    pub on: bool,
}

/// A practice that can be remembered.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReminderPractice {
    /// Which.
    pub practice: Practice,
    /// Its name.
    pub label: String,
}

/// A day of the week.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct DayChoice {
    /// 1, Monday, to 7, Sunday.
    pub day: u8,
    /// Its name.
    pub label: String,
}

/// The words around the form for another reminder.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ReminderForm {
    /// Its heading.
    pub title: String,
    /// "For what?"
    pub practice: String,
    /// "On which days?"
    pub days: String,
    /// "At what times?"
    pub times: String,
    /// "Or after something of your day"
    pub after: String,
    /// "About when is that?"
    pub about: String,
    /// "Leave it out when it is done already"
    pub skip: String,
    /// "Add"
    pub add: String,
    /// "From"
    pub from: String,
    /// "To"
    pub to: String,
    /// "Keep"
    pub keep: String,
    /// "No quiet hours"
    pub no_quiet: String,
}

/// Putting the times into a calendar.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CalendarOffer {
    /// What to know before.
    pub note: String,
    /// "Make a calendar file"
    pub action: Action,
}

impl RemindersScreen {
    pub(crate) fn new(
        scene: &Scene<'_>,
        id: EntryId,
        settings: &ReminderSettings,
        coming: &PlanReminders,
    ) -> Self {
        let words = scene.words;
        let reminders: Vec<ReminderLine> =
            settings.reminders.get().iter().map(|one| line(scene, one)).collect();
        let any = !reminders.is_empty();
        let quiet_line = match settings.quiet {
            Some(quiet) => words.text(
                "reminders-quiet",
                &[("from", quiet.from().to_string().into()), ("to", quiet.to().to_string().into())],
            ),
            None => words.text("reminders-quiet-none", &[]),
        };
        Self {
            id,
            title: words.text("reminders-title", &[]),
            on: settings.on,
            off: (!settings.on).then(|| off_line(words)),
            switch: if settings.on {
                words.text("reminders-turn-off", &[])
            } else {
                words.text("reminders-turn-on", &[])
            },
            empty: (!any).then(|| words.text("reminders-empty", &[])),
            reminders,
            coming: coming.reminders.iter().take(5).map(|one| at_words(words, &one.at)).collect(),
            says: settings.words.preview(words),
            unheard: in_quiet_hours(words, settings),
            quiet: settings.quiet,
            quiet_label: words.text("reminders-quiet-title", &[]),
            quiet_line,
            words: NeutralWords::ALL
                .map(|one| WordsChoice {
                    words: one,
                    label: words.text(one.word_id(), &[]),
                    on: one == settings.words,
                })
                .into(),
            words_label: words.text("reminders-words", &[]),
            practices: practices(scene),
            days: DAYS
                .into_iter()
                .zip(1u8..)
                .map(|(name, day)| DayChoice { day, label: words.text(name, &[]) })
                .collect(),
            form: form(words),
            calendar: any.then(|| CalendarOffer {
                note: calendar_note(words),
                action: Action::new(words.text("action-calendar-file", &[]), Does::CalendarFile),
            }),
            actions: vec![Action::new(words.text("action-today", &[]), Does::Today)],
        }
    }
}

const DAYS: [&str; 7] = [
    message_id!("day-monday"),
    message_id!("day-tuesday"),
    message_id!("day-wednesday"),
    message_id!("day-thursday"),
    message_id!("day-friday"),
    message_id!("day-saturday"),
    message_id!("day-sunday"),
];

fn form(words: &Words) -> ReminderForm {
    ReminderForm {
        title: words.text("reminders-add-title", &[]),
        practice: words.text("reminders-practice", &[]),
        days: words.text("reminders-days", &[]),
        times: words.text("reminders-times", &[]),
        after: words.text("reminders-after-label", &[]),
        about: words.text("reminders-about", &[]),
        skip: words.text("reminders-skip", &[]),
        add: words.text("reminders-add", &[]),
        from: words.text("reminders-from", &[]),
        to: words.text("reminders-to", &[]),
        keep: words.text("reminders-keep", &[]),
        no_quiet: words.text("reminders-no-quiet", &[]),
    }
}

/// "Monday 3 August 2026 at 08:30".
fn at_words(words: &Words, at: &crate::moment::Stamp) -> String {
    let time = ClockTime::of(at.local().time()).to_string().into();
    let date = plain::date(words, at.day()).into();
    words.text("reminders-coming", &[("date", date), ("time", time)])
}

fn line(scene: &Scene<'_>, reminder: &Reminder) -> ReminderLine {
    let words = scene.words;
    let what = name(scene, &reminder.practice);
    let days: Vec<String> = reminder
        .when
        .days()
        .iter()
        .filter_map(|day| DAYS.get(usize::try_from(day.num_days_from_monday()).ok()?))
        .map(|id| words.text(id, &[]))
        .collect();
    let days = if days.len() == DAYS.len() {
        words.text("reminders-every-day", &[])
    } else {
        days.join(&words.text("reminders-and", &[]))
    };
    let times: Vec<String> = reminder.when.times().iter().map(ToString::to_string).collect();
    let times = times.join(&words.text("reminders-and", &[]));
    let text = match &reminder.when {
        When::Times { .. } => words.text(
            "reminders-line",
            &[("what", what.into()), ("days", days.into()), ("times", times.into())],
        ),
        When::After { about, .. } => {
            let after = after_line(words, &reminder.when, &what).unwrap_or_default().into();
            if about.is_some() {
                let values = [("after", after), ("days", days.into()), ("times", times.into())];
                words.text("reminders-after-about", &values)
            } else {
                words.text("reminders-after-silent", &[("after", after), ("days", days.into())])
            }
        }
    };
    ReminderLine { reminder: reminder.clone(), text, remove: words.text("reminders-remove", &[]) }
}

fn name(scene: &Scene<'_>, practice: &Practice) -> String {
    let plan = scene.state.rule().programme();
    let own = plan.and_then(|plan| plan.practices.iter().find(|one| one.practice == *practice));
    plain::practice(scene.words, practice, own.map(|one| one.name.as_str()))
}

/// What the plan has; without one, what needs no trainer.
fn practices(scene: &Scene<'_>) -> Vec<ReminderPractice> {
    super::log_session::practices(scene)
        .into_iter()
        .map(|choice| ReminderPractice { practice: choice.practice, label: choice.label })
        .collect()
}
