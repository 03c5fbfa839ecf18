//! Today as text.

use frond_core::screens::TodayScreen;

use super::Page;
use super::press::{actions, command, command_of};

pub(super) fn today(page: &mut Page, screen: &TodayScreen) {
    page.title(&format!("{} · {}", screen.title, screen.date));
    if let Some(welcome) = &screen.welcome {
        page.heading(&welcome.title);
        for says in &welcome.says {
            page.paragraph(says);
        }
        for line in welcome.actions.iter().filter_map(command_of) {
            page.inside(2, &line);
        }
        page.gap();
    }
    for notice in &screen.notices {
        page.paragraph(&notice.text);
        if let Some(action) = &notice.action {
            page.inside(2, &format!("{}   {}", action.label, command(&action.does)));
        }
        page.gap();
    }
    if let Some(step) = &screen.step {
        page.heading(&step.name);
        if !step.folded {
            for part in &step.parts {
                page.inside(2, part);
            }
        }
        page.inside(2, &step.position);
        page.inside(2, &step.instruction);
        page.inside(2, &step.schedule);
        for done in &step.done {
            page.inside(2, done);
        }
    }
    for practice in &screen.practices {
        page.heading(&practice.name);
        page.inside(2, &practice.minutes);
        page.inside(2, &practice.instruction);
        page.inside(2, &practice.schedule);
        for done in &practice.done {
            page.inside(2, done);
        }
    }
    page.gap().sentences(&screen.routines).sentences(screen.enough.as_slice());
    if let Some(look_forward) = &screen.look_forward {
        page.paragraph(look_forward);
    }
    page.gap();
    for caution in &screen.cautions {
        page.point(caution);
    }
    actions(page, Some(&screen.next), &screen.actions);
}
