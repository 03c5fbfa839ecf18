//! How a screen reads as text. Every word comes from the screen's record; only the names of commands are
//! added, in place of what can be pressed.

mod forms;
mod insight;
mod keeping;
mod lists;
mod more;
mod page;
mod practice;
mod press;
mod reading;
mod replay;
mod stop;
mod suggestion;
mod today;

use std::io::Write;

use frond_core::screens::{PlanScreen, Screen};
use serde::Serialize;

pub(crate) use forms::by_group;
pub(crate) use insight::insight;
pub(crate) use keeping::{erase, restore, summary};
pub(crate) use page::Page;
pub(crate) use press::command_of;
pub(crate) use reading::reading;
pub(crate) use replay::replay;
pub(crate) use stop::stop_lines;
pub(crate) use suggestion::suggestion;

use crate::failure::Failure;

/// Shows a record: as text, or as JSON where a program reads.
pub(crate) fn show<T: Serialize>(
    json: bool,
    record: &T,
    text: impl FnOnce(&mut Page, &T),
) -> Result<(), Failure> {
    if json {
        let text = serde_json::to_string_pretty(record)
            .map_err(|_| Failure::Else("This cannot be written as JSON.".to_owned()))?;
        let mut out = std::io::stdout().lock();
        let _ = writeln!(out, "{text}");
    } else {
        let mut page = Page::new();
        text(&mut page, record);
        page.show();
    }
    Ok(())
}

/// Shows a screen.
pub(crate) fn screen(json: bool, record: &Screen) -> Result<(), Failure> {
    show(json, record, |page, record| match record {
        Screen::Today(screen) => today::today(page, screen),
        Screen::LogSession(screen) => forms::log(page, screen),
        Screen::Ladder(screen) => lists::ladder(page, screen),
        Screen::Suggestion(screen) => suggestion(page, screen, true),
        Screen::StopAndCall(screen) => stop::stop(page, screen),
        Screen::Signs(screen) => forms::signs(page, screen),
        Screen::Spoke(screen) => forms::spoke(page, screen),
        Screen::Entries(screen) => lists::entries(page, screen),
        Screen::Plan(screen) => plan(page, screen),
        Screen::Kept(screen) => lists::kept(page, screen),
        Screen::Keeping(screen) => keeping::keeping(page, screen),
        Screen::Erase(screen) => keeping::erase(page, screen),
        Screen::FirstRun(screen) => more::first_run(page, screen),
        Screen::More(screen) => more::more(page, screen),
        Screen::Calendar(screen) => more::calendar(page, screen),
        Screen::Entry(screen) => more::entry(page, screen),
        Screen::Correct(screen) => more::correct(page, screen),
        Screen::Questions(screen) => more::questions(page, screen),
        Screen::Activities(screen) => more::activities(page, screen),
        Screen::TimeOff(screen) => more::time_off(page, screen),
        Screen::LookForward(screen) => more::look_forward(page, screen),
        Screen::Ready(screen) => more::ready(page, screen),
        Screen::Settled(screen) => more::settled(page, screen),
        Screen::Ending(screen) => more::ending(page, screen),
        Screen::Shows(screen) => more::shows(page, screen),
        Screen::Settings(screen) => more::settings(page, screen),
        Screen::Summary(screen) => more::summary_form(page, screen),
        Screen::Practices(screen) => practice::practices(page, screen),
        Screen::AnythingNew(screen) => practice::anything_new(page, screen),
        Screen::Breathing(screen) => practice::breathing(page, screen),
        Screen::Running(screen) => practice::running(page, screen),
        Screen::Found(screen) => practice::found(page, screen),
        Screen::Stopped(screen) => practice::stopped(page, screen),
        Screen::Rate(screen) => practice::rate(page, screen),
        Screen::Screening(screen) => practice::screening(page, screen),
        Screen::HoldQuestions(screen) => practice::hold_questions(page, screen),
        Screen::Accept(screen) => practice::accept(page, screen),
        Screen::StepCheck(screen) => practice::step_check(page, screen),
        Screen::Reminders(screen) => practice::reminders(page, screen),
    })
}

fn plan(page: &mut Page, screen: &PlanScreen) {
    page.title(&screen.title);
    if let Some(empty) = &screen.empty {
        page.paragraph(empty);
    }
    page.sentences(&screen.sentences);
    page.sentences(screen.key.as_slice());
    press::actions(page, None, &screen.actions);
}

/// Says something on standard error, wrapped as everything else is.
pub(crate) fn to_stderr(text: &str) {
    let mut page = Page::new();
    page.paragraph(text);
    let _ = std::io::stderr().lock().write_all(page.text().as_bytes());
}
