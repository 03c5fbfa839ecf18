//! Restoring a copy: one of this device, or one from elsewhere with the recovery phrase. What it holds is
//! said before anything is replaced; what was there is kept aside.

use std::path::PathBuf;

use axum::response::Response;
use frond_core::companion::{Companion, Copy, CopyFrom};
use frond_core::screens::RestoreScreen;
use frond_core::sealing::RecoveryPhrase;

use super::diary::Standing;
use super::keeping::needs_passphrase;
use super::visit::{Shown, Visit, see};
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Form, How, Kind, Look, Page, Part, Press};
use crate::pages::upload::Upload;

/// The longest copy taken from a page, in bytes: ten years of entries are a tenth of it.
pub(super) const MOST: usize = 64 * 1024 * 1024;

pub(super) fn backups(visit: &mut Visit<'_>) -> Shown {
    let (words, there) = (visit.words.clone(), newest(visit).is_some());
    let mut page = Page::new(&visit.frame, words.text("action-restore", &[]));
    let mut presses = Vec::new();
    if there {
        presses.push(Press {
            label: words.text("page-backup-newest", &[]),
            how: How::Send { to: "/restore".to_owned(), fields: vec![] },
            look: Look::Next,
        });
    } else {
        page = page.text([words.text("page-backup-none", &[])]);
    }
    presses.push(Press::go(words.text("action-restore-copy", &[]), "/restore/copy"));
    presses.push(Press::go(words.text("action-today", &[]), "/today"));
    Ok(page.presses(presses).answer())
}

/// The newest copy on this device.
fn newest(visit: &Visit<'_>) -> Option<PathBuf> {
    let folder = visit.diary.folder().join("backups");
    let numbers = std::fs::read_dir(&folder).into_iter().flatten().flatten();
    let newest = numbers.filter_map(|file| file.file_name().to_str()?.parse::<u64>().ok()).max()?;
    Some(folder.join(newest.to_string()))
}

pub(super) fn look(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    let Some(path) = newest(visit) else { return Ok(see("/restore")) };
    let from = CopyFrom::Backup { path: &path, keeper: visit.diary.keeper() };
    let copy = Copy::read(visit.diary.ports(), from).map_err(|trouble| visit.trouble(&trouble))?;
    waits(visit, copy)
}

pub(super) fn copy(visit: &mut Visit<'_>) -> Shown {
    ask(visit, &Fields::default(), vec![])
}

fn ask(visit: &mut Visit<'_>, fields: &Fields, problems: Vec<Problem>) -> Shown {
    let words = &visit.words;
    let line = |input, value| Kind::Line { input, value, mode: "", offers: vec![], short: false };
    let typed = fields.first("phrase").unwrap_or_default().to_owned();
    let form = Form {
        to: "/restore/copy".to_owned(),
        upload: true,
        hidden: vec![],
        fields: vec![
            Field::new("file", words.text("page-restore-file", &[]), line("file", String::new())),
            Field::new("phrase", words.text("page-restore-phrase", &[]), line("text", typed)),
        ],
        submit: words.text("page-plan-read", &[]),
        look: Look::Next,
        also: vec![],
    };
    Ok(Page::new(&visit.frame, words.text("action-restore-copy", &[]))
        .problems(problems)
        .form(form)
        .presses(vec![Press::go(words.text("action-today", &[]), "/today")])
        .answer())
}

pub(super) fn copied(visit: &mut Visit<'_>, upload: Upload) -> Shown {
    let words = visit.words.clone();
    let mut problems = Vec::new();
    if upload.file.is_empty() {
        problems.push(Problem::at("file", words.text("page-error-file", &[])));
    }
    let phrase = upload.fields.first("phrase").and_then(|typed| RecoveryPhrase::parse(typed).ok());
    let Some(phrase) = phrase.filter(|_| problems.is_empty()) else {
        problems.push(Problem::at("phrase", words.text("page-error-phrase", &[])));
        return ask(visit, &upload.fields, problems);
    };
    let from = CopyFrom::Elsewhere { bytes: &upload.file, phrase: &phrase };
    match Copy::read(visit.diary.ports(), from) {
        Ok(copy) => waits(visit, copy),
        Err(trouble) => {
            let problem = Problem::at("file", trouble.say(&words));
            ask(visit, &upload.fields, vec![problem])
        }
    }
}

/// A copy that was read waits until she says that it is to be restored.
fn waits(visit: &mut Visit<'_>, copy: Copy) -> Shown {
    let (moment, language) = (visit.moment, visit.diary.language().to_owned());
    let present = match visit.diary.stand(&moment) {
        Standing::Open(companion) => Some(&*companion),
        Standing::Stuck(_) | Standing::Erased => None,
    };
    let screen = copy.screen(present, &language, &moment.now);
    let screen = screen.map_err(|trouble| visit.trouble(&trouble))?;
    visit.diary.copy = Some(copy);
    Ok(page(visit, &screen))
}

fn page(visit: &Visit<'_>, screen: &RestoreScreen) -> Response {
    let next = Press {
        label: screen.next.label.clone(),
        how: How::Send { to: "/restore/now".to_owned(), fields: vec![] },
        look: Look::Equal,
    };
    let mut presses = vec![next];
    let leave = screen.actions.iter();
    presses.extend(leave.map(|action| Press::go(&action.label, "/today").looking(Look::Equal)));
    Page::new(&visit.frame, &screen.title)
        .text(screen.says.clone())
        .part(Part::Notice { says: screen.then.clone(), press: None })
        .presses(presses)
        .answer()
}

pub(super) fn now(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    if visit.diary.by_phrase {
        needs_passphrase(visit)?;
    }
    // Sent twice: the second finds it done.
    let Some(copy) = visit.diary.copy.take() else { return Ok(see("/today")) };
    let moment = visit.moment;
    let replaced = match visit.diary.stand(&moment) {
        Standing::Open(companion) => Some(companion.state().count()),
        Standing::Stuck(_) | Standing::Erased => None,
    };
    // It gives back the lock.
    visit.diary.shut();
    let diary = &visit.diary;
    let restored = Companion::restore(
        diary.ports(),
        diary.folder(),
        diary.keeper(),
        copy,
        replaced,
        diary.language(),
        &moment,
    );
    let companion = restored.map_err(|trouble| visit.trouble(&trouble))?;
    visit.diary.put(companion);
    Ok(see("/today"))
}
