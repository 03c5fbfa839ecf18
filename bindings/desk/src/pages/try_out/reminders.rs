//! Reminders: on or off, what is remembered, when nothing is heard, what they say, and a file for a calendar.
//! A page cannot remind anybody; it shows what a phone would.

use chrono::Weekday;
use frond_core::companion::{ReminderChange, Request, Told};
use frond_core::programme::values::{Line, Practice};
use frond_core::reminders::{
    ClockTime, ClockTimes, NeutralWords, QuietHours, Reminder, Weekdays, When,
};
use frond_core::screens::{Does, RemindersScreen, Screen};

use super::log::{choices_of, line};
use super::visit::{Shown, Visit, see, share};
use crate::pages::form::{Fields, Problem, code, decode};
use crate::pages::parts::{Choice, Field, Form, How, Kind, Look, Page, Part, Press};

pub(super) fn page(
    visit: &mut Visit<'_>,
    screen: &RemindersScreen,
    fields: &Fields,
    problems: Vec<Problem>,
) -> Shown {
    let id = screen.id.to_string();
    let press = |label: &str, look, mut with: Vec<(&'static str, String)>| {
        with.push(("id", id.clone()));
        let how = How::Send { to: "/reminders".to_owned(), fields: with };
        Press { label: label.to_owned(), how, look }
    };
    let turn = if screen.on { "off" } else { "on" };
    // Turning them on is the step there is to take; turning them off is only in reach.
    let look = if screen.on { Look::Quiet } else { Look::Next };
    let switch = press(&screen.switch, look, vec![("what", turn.to_owned())]);
    let calendar = match &screen.calendar {
        Some(offer) => Some((offer.note.clone(), visit.press(&offer.action, Look::Quiet)?)),
        None => None,
    };
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title)
        .problems(problems)
        .text(screen.off.clone())
        .presses(vec![switch])
        .text(screen.empty.clone());
    for reminder in &screen.reminders {
        let gone = vec![("what", "remove".to_owned()), ("reminder", code(&reminder.reminder))];
        let presses = vec![press(&reminder.remove, Look::Quiet, gone)];
        page = page.part(Part::Card {
            title: reminder.text.clone(),
            here: None,
            parts: vec![Part::Presses { presses }],
        });
    }
    if !screen.coming.is_empty() {
        page = page.part(Part::Points { points: screen.coming.clone() });
    }
    page = page.text(screen.unheard.clone());
    page =
        page.part(Part::Heading { text: screen.form.title.clone() }).form(adding(screen, fields));
    page = page.text([screen.says.clone()]).form(wording(screen));
    page = page
        .part(Part::Heading { text: screen.quiet_label.clone() })
        .text([screen.quiet_line.clone()])
        .form(quiet(screen, fields));
    if screen.quiet.is_some() {
        let none = vec![("what", "no_quiet".to_owned())];
        page = page.presses(vec![press(&screen.form.no_quiet, Look::Quiet, none)]);
    }
    if let Some((note, press)) = calendar {
        page = page.text([note]).presses(vec![press]);
    }
    Ok(page.presses(presses).answer())
}

fn hidden(screen: &RemindersScreen, what: &str) -> Vec<(&'static str, String)> {
    vec![("id", screen.id.to_string()), ("what", what.to_owned())]
}

fn adding(screen: &RemindersScreen, fields: &Fields) -> Form {
    let words = &screen.form;
    let practices = screen.practices.iter().map(|own| (code(&own.practice), own.label.clone()));
    let days = screen.days.iter().map(|own| (own.day.to_string(), own.label.clone()));
    let skip = vec![("yes".to_owned(), words.skip.clone())];
    let mut form = Form::to("/reminders", &words.add);
    form.look = Look::Equal;
    form.hidden = hidden(screen, "add");
    form.fields = vec![
        Field::new(
            "practice",
            &words.practice,
            Kind::One(choices_of("practice", practices.collect(), fields)),
        ),
        Field::new("on", &words.days, Kind::Any(choices_of("on", days.collect(), fields))),
        Field::new("at", &words.times, line("text", fields, "at", "", false)),
        Field::new("after", &words.after, line("text", fields, "after", "", false)),
        Field::new("about", &words.about, line("time", fields, "about", "", true)),
        Field::new("skip", &words.skip, Kind::Any(choices_of("skip", skip, fields))),
    ];
    form
}

fn wording(screen: &RemindersScreen) -> Form {
    let choices = screen.words.iter().map(|own| Choice {
        value: code(&own.words),
        label: own.label.clone(),
        chosen: own.on,
    });
    let mut form = Form::to("/reminders", &screen.form.keep);
    form.look = Look::Equal;
    form.hidden = hidden(screen, "words");
    form.fields = vec![Field::new("words", &screen.words_label, Kind::One(choices.collect()))];
    form
}

fn quiet(screen: &RemindersScreen, fields: &Fields) -> Form {
    let time = |name: &str, label: &str, now: Option<ClockTime>| {
        let value = fields.first(name).map(str::to_owned);
        let value = value.or_else(|| now.map(String::from)).unwrap_or_default();
        let kind = Kind::Line { input: "time", value, mode: "", offers: vec![], short: true };
        Field::new(name, label, kind)
    };
    let parts = vec![
        time("from", &screen.form.from, screen.quiet.map(QuietHours::from)),
        time("to", &screen.form.to, screen.quiet.map(QuietHours::to)),
    ];
    let mut form = Form::to("/reminders", &screen.form.keep);
    form.look = Look::Equal;
    form.hidden = hidden(screen, "quiet");
    form.fields = vec![Field::new("quiet", &screen.quiet_label, Kind::Together(parts))];
    form
}

pub(super) fn told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let id = visit.id_of(fields)?;
    let problem = match change(visit, fields) {
        Ok(Some(change)) => match visit.write(id, Told::Reminders(change), None)? {
            // The page itself shows what is set now.
            Ok(_) => return Ok(see("/reminders")),
            Err(problem) => problem,
        },
        Ok(None) => return Err(visit.malformed()),
        Err(problem) => problem,
    };
    match visit.ask(Request::Reminders)? {
        Screen::Reminders(screen) => {
            page(visit, &RemindersScreen { id, ..screen }, fields, vec![problem])
        }
        other => visit.screen(&other),
    }
}

fn change(visit: &Visit<'_>, fields: &Fields) -> Result<Option<ReminderChange>, Problem> {
    let of = |name: &str| fields.first(name);
    Ok(match of("what") {
        Some("on") => Some(ReminderChange::On(true)),
        Some("off") => Some(ReminderChange::On(false)),
        Some("add") => Some(ReminderChange::Add(added(visit, fields)?)),
        Some("remove") => of("reminder").and_then(decode).map(ReminderChange::Remove),
        Some("words") => of("words").and_then(decode::<NeutralWords>).map(ReminderChange::Words),
        Some("no_quiet") => Some(ReminderChange::Quiet(None)),
        Some("quiet") => {
            let (from, to) = (time(visit, fields, "from")?, time(visit, fields, "to")?);
            let hours = QuietHours::new(from, to)
                .map_err(|_| Problem::at("to", visit.words.text("page-error-quiet", &[])))?;
            Some(ReminderChange::Quiet(Some(hours)))
        }
        _ => None,
    })
}

fn time(visit: &Visit<'_>, fields: &Fields, name: &str) -> Result<ClockTime, Problem> {
    let typed = fields.first(name).unwrap_or_default().to_owned();
    ClockTime::try_from(typed)
        .map_err(|_| Problem::at(name, visit.words.text("page-error-time", &[])))
}

fn added(visit: &Visit<'_>, fields: &Fields) -> Result<Reminder, Problem> {
    let practice: Option<Practice> = fields.first("practice").and_then(decode);
    let practice = practice
        .ok_or_else(|| Problem::at("practice", visit.words.text("page-error-practice", &[])))?;
    let days = fields.all("on").filter_map(weekday);
    let days = Weekdays::new(days)
        .map_err(|_| Problem::at("on", visit.words.text("page-error-days", &[])))?;
    let when = match fields.first("after") {
        Some(routine) => When::After {
            routine: Line::new(routine)
                .map_err(|_| Problem::at("after", visit.words.text("page-error-line", &[])))?,
            days,
            about: match fields.first("about") {
                Some(_) => Some(time(visit, fields, "about")?),
                None => None,
            },
        },
        None => {
            let typed = fields.first("at").unwrap_or_default();
            let apart = typed.split(|letter: char| letter == ',' || letter.is_whitespace());
            let times = apart
                .filter(|time| !time.is_empty())
                .map(|time| ClockTime::try_from(time.to_owned()));
            let times: Result<Vec<ClockTime>, _> = times.collect();
            let at = times
                .and_then(ClockTimes::try_from)
                .map_err(|_| Problem::at("at", visit.words.text("page-error-time", &[])))?;
            When::Times { days, at }
        }
    };
    Ok(Reminder { practice, when, skip_when_done: fields.has("skip", "yes") })
}

fn weekday(day: &str) -> Option<Weekday> {
    let number: u8 = day.parse().ok()?;
    Weekday::try_from(number.checked_sub(1)?).ok()
}

/// The calendar file, or the page where there is nothing to put into one.
pub(super) fn calendar(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    let seen = visit.pressed(Does::CalendarFile)?;
    share(seen).or_else(|_| Ok(see("/reminders")))
}
