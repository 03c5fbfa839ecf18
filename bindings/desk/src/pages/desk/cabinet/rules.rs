//! Another rule over every diary of the cabinet. It runs beside the pages; nothing is saved.

use frond_core::screens::{CabinetWhatIfScreen, DiaryLine};

use super::super::visit::{Shown, Visit, see};
use super::rule;
use crate::pages::parts::{Look, Page, Part, Person, Press, Table};
use crate::pages::upload::Upload;

pub(super) fn ask(visit: &mut Visit<'_>) -> Shown {
    asked(visit, "", vec![])
}

fn asked(visit: &Visit<'_>, text: &str, problems: Vec<crate::pages::form::Problem>) -> Shown {
    let opened = visit.cabinet()?;
    let words = &visit.words;
    let submit = words.text("cabinet-what-if-compare-all", &[]);
    let form = rule::form(words, &rule::desks(visit, &opened)?, "/rules", text, submit);
    Ok(Page::new(&visit.frame, words.text("cabinet-what-if-all", &[]))
        .problems(problems)
        .text([
            words.text("cabinet-what-if-about-all", &[]),
            words.text("cabinet-what-if-not-saved", &[]),
        ])
        .form(form)
        .presses(vec![Press::go(words.text("cabinet-visit-back", &[]), "/people")])
        .answer())
}

pub(super) fn compare(visit: &mut Visit<'_>, upload: Upload) -> Shown {
    let opened = visit.cabinet()?;
    match rule::named(&visit.words, &rule::desks(visit, &opened)?, &upload) {
        Ok(rule) => {
            opened.clinic.cabinet.try_rule(&opened.clinic, &opened.cabinet, rule);
            Ok(see("/rules/now"))
        }
        Err(problem) => {
            let text = upload.fields.first("text").unwrap_or_default().to_owned();
            asked(visit, &text, vec![problem])
        }
    }
}

/// How far it is, or what was found.
pub(super) fn now(visit: &mut Visit<'_>) -> Shown {
    let opened = visit.cabinet()?;
    let Some(trial) = opened.clinic.cabinet.trial() else { return Ok(see("/rules")) };
    let words = &visit.words;
    let found = trial.found();
    if !found.ended {
        let far = [("done", found.done.into()), ("total", found.total.into())];
        return Ok(Page::new(&visit.frame, words.text("cabinet-what-if-running", &[]))
            .script("/progress.js")
            .part(Part::Progress {
                label: words.text("cabinet-progress-bar", &[]),
                done: found.done,
                total: found.total,
                says: words.text("cabinet-progress", &far),
                again: "/rules/now".to_owned(),
            })
            .presses(vec![Press::go(words.text("cabinet-look-again", &[]), "/rules/now")])
            .answer());
    }
    let screen = CabinetWhatIfScreen::new(words, &found.verdicts, found.left_out);
    let mut page = Page::new(&visit.frame, &screen.title).text(screen.counts.clone()).part(
        Part::Table(Table {
            caption: screen.caption.clone(),
            columns: screen.columns.to_vec(),
            rows: screen.rows.iter().map(|row| row.to_vec()).collect(),
        }),
    );
    if !screen.list.is_empty() {
        page = page
            .part(Part::Heading { text: screen.list_title.clone() })
            .part(Part::People { people: screen.list.iter().map(line).collect() })
            .text(screen.more.clone());
    }
    Ok(page
        .quiet(screen.about.clone())
        .presses(vec![
            Press::go(words.text("cabinet-what-if-choose", &[]), "/rules").looking(Look::Equal),
            Press::go(words.text("cabinet-visit-back", &[]), "/people"),
        ])
        .answer())
}

fn line(line: &DiaryLine) -> Person {
    Person {
        to: format!("/people/{}", line.diary),
        name: line.name.clone(),
        marks: vec![],
        facts: line.says.clone(),
    }
}
