//! Bringing summaries in: files chosen in the browser, or a folder of this computer by its path.

use std::path::Path;

use frond_core::screens::{Brought, BroughtScreen, WhyRefused};
use frond_core::sealing::OpenWith;

use super::super::visit::{Shown, Visit, see};
use crate::clinic::cabinet::{Incoming, JobKind, Progress, Refused, Taken, Treat, files_of};
use crate::clinic::folder::FolderError;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Choice, Field, Form, Kind, Look, Page, Part, Press};
use crate::pages::upload::Upload;
use crate::secret;

/// The most that one form brings, in bytes; a folder by its path has no such bound.
pub(super) const MOST: usize = 192 * 1024 * 1024;

pub(super) fn ask(visit: &mut Visit<'_>) -> Shown {
    form_page(visit, &Fields::default(), vec![])
}

fn form_page(visit: &Visit<'_>, fields: &Fields, problems: Vec<Problem>) -> Shown {
    visit.cabinet()?;
    let words = &visit.words;
    let line = |input: &'static str, value: &str| Kind::Line {
        input,
        value: value.to_owned(),
        mode: "",
        offers: vec![],
        short: false,
    };
    let new_key = Choice {
        value: "yes".to_owned(),
        label: words.text("cabinet-bring-new-key", &[]),
        chosen: fields.has("new_key", "yes"),
    };
    let path = fields.first("path").unwrap_or_default();
    let mut form = Form::to("/bring", words.text("cabinet-bring-now", &[]));
    form.upload = true;
    form.fields = vec![
        Field::new("files", words.text("cabinet-bring-files", &[]), Kind::Files { folder: false })
            .hint(words.text("cabinet-bring-files-hint", &[])),
        Field::new(
            "files",
            words.text("cabinet-bring-files-all", &[]),
            Kind::Files { folder: true },
        )
        .known_as("folder".to_owned()),
        Field::new("path", words.text("cabinet-bring-path", &[]), line("text", path))
            .hint(words.text("cabinet-bring-path-hint", &[])),
        Field::new("passphrase", words.text("cabinet-bring-passphrase", &[]), line("password", "")),
        Field::new(
            "new_key",
            words.text("cabinet-bring-key-choice", &[]),
            Kind::Any(vec![new_key]),
        ),
    ];
    Ok(Page::new(&visit.frame, words.text("cabinet-bring", &[]))
        .problems(problems)
        .form(form)
        .presses(vec![Press::go(words.text("cabinet-visit-back", &[]), "/people")])
        .answer())
}

/// Takes them in, and shows how far it is.
pub(super) fn brought(visit: &mut Visit<'_>, upload: Upload) -> Shown {
    let opened = visit.cabinet()?;
    let words = &visit.words;
    let fields = &upload.fields;
    let passphrase = match fields.all("passphrase").next().filter(|words| !words.is_empty()) {
        None => None,
        Some(given) => secret::passphrase(given).ok().map(OpenWith::Passphrase),
    };
    let incoming = match fields.first("path").map(Path::new) {
        Some(path) if upload.files.is_empty() => match files_of(path) {
            Ok(paths) => Incoming::Paths(paths),
            Err(_) => {
                let says = words.text("cabinet-bring-no-folder", &[]);
                return form_page(visit, fields, vec![Problem::at("path", says)]);
            }
        },
        None if upload.files.is_empty() => {
            let says = words.text("cabinet-bring-none", &[]);
            return form_page(visit, fields, vec![Problem::at("files", says)]);
        }
        _ => Incoming::Files(upload.files),
    };
    let treat = Treat { passphrase, new_key: fields.has("new_key", "yes") };
    match opened.clinic.cabinet.take_in(&opened.clinic, &opened.cabinet, incoming, treat) {
        Ok(_job) => Ok(see("/bring/now")),
        Err(_busy) => {
            let says = words.text("cabinet-bring-busy", &[]);
            form_page(visit, &upload.fields, vec![Problem::at("", says)])
        }
    }
}

/// How far it is, or what came of it.
pub(super) fn now(visit: &mut Visit<'_>) -> Shown {
    let opened = visit.cabinet()?;
    let Some(job) = opened.clinic.cabinet.job() else { return Ok(see("/bring")) };
    let progress = job.progress();
    let screen = worded(visit, &progress);
    let words = &visit.words;
    let mut page = Page::new(&visit.frame, &screen.title);
    if !progress.ended {
        page = going_on(visit, page, &progress);
    }
    page = page.text(screen.says.clone());
    if !screen.refused.is_empty() {
        page = page.part(Part::Heading { text: screen.refused_title.clone() });
        let says = |one: &frond_core::screens::RefusedFile| Part::Reason {
            criterion: one.name.clone(),
            parts: vec![Part::Text { says: vec![one.why.clone()], class: "" }],
        };
        for part in screen.refused.iter().map(says) {
            page = page.part(part);
        }
        page = page.text(screen.more.clone());
    }
    let mut presses = Vec::new();
    if let (true, Some(Taken::New(id) | Taken::Older(id) | Taken::Known(id))) =
        (progress.ended, progress.one)
    {
        let label = words.text("cabinet-see-person", &[]);
        presses.push(Press::go(label, format!("/summaries/{id}")).looking(Look::Next));
    }
    presses.push(Press::go(words.text("cabinet-see-people", &[]), "/people").looking(Look::Equal));
    presses.push(Press::go(words.text("cabinet-bring", &[]), "/bring"));
    Ok(page.presses(presses).answer())
}

/// How far long work is.
pub(super) fn going_on<'a>(visit: &Visit<'_>, page: Page<'a>, progress: &Progress) -> Page<'a> {
    let screen = worded(visit, progress);
    let words = &visit.words;
    page.script("/progress.js")
        .part(Part::Progress {
            label: words.text("cabinet-progress-bar", &[]),
            done: progress.done,
            total: progress.total,
            says: screen.progress.unwrap_or_default(),
            again: "/bring/now".to_owned(),
        })
        .presses(vec![Press::go(words.text("cabinet-look-again", &[]), "/bring/now")])
}

fn worded(visit: &Visit<'_>, progress: &Progress) -> BroughtScreen {
    let brought = Brought {
        total: progress.total,
        done: progress.done,
        ended: progress.ended,
        new: progress.new,
        older: progress.older,
        known: progress.known,
        refused_more: progress.refused_more,
        reading: progress.kind == JobKind::Reading,
        failed: progress.failed,
    };
    let refused = progress.refused.iter().map(|one| (one.name.clone(), why(one.why)));
    BroughtScreen::new(&visit.words, &brought, refused)
}

fn why(refused: Refused) -> WhyRefused {
    match refused {
        Refused::Summary(error) => WhyRefused::Summary(error),
        Refused::OtherRecord => WhyRefused::OtherRecord,
        Refused::NeedsPassphrase => WhyRefused::NeedsPassphrase,
        Refused::OtherKey => WhyRefused::OtherKey,
        Refused::Unreadable => WhyRefused::Unreadable,
        Refused::NotSealed => WhyRefused::NotSealed,
        Refused::Folder(FolderError::Full) => WhyRefused::NoRoom,
        Refused::Folder(FolderError::Failed) => WhyRefused::NotKept,
    }
}
