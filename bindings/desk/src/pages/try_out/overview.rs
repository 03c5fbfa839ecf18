//! What is looked at: everything else in groups, a month, the days of it, what a phone can still show, the
//! ways to end the programme, the pages of the first run.

use chrono::{Datelike, NaiveDate};
use frond_core::screens::{
    CalendarScreen, Does, EndingScreen, FirstRunPage, FirstRunScreen, MoreScreen, Section,
    ShowsScreen,
};

use super::settings;
use super::visit::{Shown, Visit};
use crate::pages::form::{code, decode};
use crate::pages::parts::{Day, Look, Page, Part};

/// A part under its heading, with what can be done about it.
pub(super) fn section(
    visit: &mut Visit<'_>,
    section: &Section,
    look: Look,
) -> Result<Part, axum::response::Response> {
    let mut parts = Vec::new();
    if !section.says.is_empty() {
        parts.push(Part::Text { says: section.says.clone(), class: "" });
    }
    let mut presses = Vec::new();
    for action in &section.actions {
        presses.push(visit.press(action, look)?);
    }
    if !presses.is_empty() {
        parts.push(Part::Presses { presses });
    }
    Ok(Part::Card { title: section.title.clone(), here: None, parts })
}

pub(super) fn more_page(visit: &mut Visit<'_>, screen: &MoreScreen) -> Shown {
    let mut groups = Vec::new();
    for group in &screen.groups {
        groups.push(section(visit, group, Look::Quiet)?);
    }
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title);
    for group in groups {
        page = page.part(group);
    }
    Ok(page.presses(presses).answer())
}

/// A month, named like 2026-05.
pub(super) fn month(visit: &mut Visit<'_>, month: &str) -> Shown {
    let read = month
        .split_once('-')
        .and_then(|(year, month)| Some((year.parse().ok()?, month.parse().ok()?)));
    match read {
        Some(month) => visit.look(Does::Calendar { month: Some(month) }),
        None => Err(visit.nothing_here()),
    }
}

pub(super) fn day(visit: &mut Visit<'_>, day: &str) -> Shown {
    match day.parse::<NaiveDate>() {
        Ok(day) => visit.look(Does::Day { day }),
        Err(_) => Err(visit.nothing_here()),
    }
}

pub(super) fn calendar_page(visit: &mut Visit<'_>, screen: &CalendarScreen) -> Shown {
    let weekdays = screen.weekdays.iter().map(|name| {
        // Direction marks are no letters of the name.
        let short: String = name.chars().filter(|own| own.is_alphanumeric()).take(2).collect();
        (short, name.clone())
    });
    let weeks = screen.weeks.iter().map(|week| {
        let days = week.iter().map(|day| Day {
            number: day.date.day().to_string(),
            label: std::iter::once(day.label.clone())
                .chain(day.done.clone())
                .collect::<Vec<_>>()
                .join(": "),
            to: day.opens.as_ref().map(|_| format!("/day/{}", day.date)),
            in_month: day.in_month,
            is_today: day.is_today,
        });
        days.collect()
    });
    let month = Part::Month {
        caption: screen.month.clone(),
        weekdays: weekdays.collect(),
        weeks: weeks.collect(),
    };
    let around: Vec<_> = screen.earlier.iter().chain(&screen.later).cloned().collect();
    let around = visit.presses(&around)?;
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title).part(month).text(screen.empty.clone());
    let days: Vec<_> = screen.weeks.iter().flatten().collect();
    let done = || days.iter().filter(|day| day.in_month && !day.done.is_empty());
    if done().next().is_some() {
        page = page.part(Part::Heading { text: screen.month.clone() });
    }
    for day in done() {
        let parts = vec![Part::Text { says: day.done.clone(), class: "" }];
        page = page.part(Part::Reason { criterion: day.label.clone(), parts });
    }
    Ok(page.presses(around).presses(presses).answer())
}

pub(super) fn shows_page(visit: &mut Visit<'_>, screen: &ShowsScreen) -> Shown {
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title).text(screen.says.clone());
    for shown in &screen.parts {
        let parts =
            vec![Part::Text { says: vec![shown.frond.clone(), shown.you.clone()], class: "" }];
        page = page.part(Part::Card { title: shown.title.clone(), here: None, parts });
    }
    Ok(page.presses(presses).answer())
}

pub(super) fn ending_page(visit: &mut Visit<'_>, screen: &EndingScreen) -> Shown {
    let mut ways = Vec::new();
    for way in &screen.ways {
        ways.push(section(visit, way, Look::Quiet)?);
    }
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title).text(screen.says.clone());
    for way in ways {
        page = page.part(way);
    }
    Ok(page.presses(presses).answer())
}

/// The address of a page of the first run.
pub(super) fn first_run_address(page: FirstRunPage) -> String {
    format!("/first/{}", code(&page))
}

pub(super) fn first_run(visit: &mut Visit<'_>, page: &str) -> Shown {
    match decode(page) {
        Some(page) => visit.look(Does::FirstRun { page }),
        None => Err(visit.nothing_here()),
    }
}

pub(super) fn first_run_page(visit: &mut Visit<'_>, screen: &FirstRunScreen) -> Shown {
    let presses = visit.next_and(&screen.next, &screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title).text(screen.says.clone());
    if let Some(language) = &screen.language {
        let back = first_run_address(screen.page);
        page = page.form(settings::language_form(language, &back));
    }
    Ok(page.presses(presses).answer())
}
