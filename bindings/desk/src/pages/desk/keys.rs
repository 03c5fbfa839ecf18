//! The clinic's keys: what others need of them, the copy, another passphrase, new keys.

use frond_core::handover::key_words;

use super::first::{at_copy, copy_fields};
use super::secret;
use super::visit::{Shown, Visit, see};
use crate::clinic::keys::{self, KeysError};
use crate::pages::app::file;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Form, How, Look, Page, Part, Press};
use crate::pages::upload::Upload;

/// Neutral: whoever sees it in a folder learns nothing.
const COPY_NAME: &str = "frond-keys.age";

pub(super) fn keys(visit: &mut Visit<'_>) -> Shown {
    let clinic = visit.clinic()?;
    let words = &visit.words;
    let copied = keys::is_copied(&clinic.folder).map_err(|error| visit.sorry(visit.says(error)))?;
    let stands =
        if copied { words.text("desk-copied", &[]) } else { words.text("desk-not-copied", &[]) };
    let mut page = Page::new(&visit.frame, words.text("desk-keys", &[]))
        .text([words.text("desk-keys-are", &[]), stands])
        .part(Part::Card {
            title: words.text("handover-your-key", &[]),
            here: None,
            parts: vec![
                Part::Text {
                    says: vec![key_words(&clinic.keys.verify_key()).join(" ")],
                    class: "code",
                },
                Part::Text { says: vec![words.text("handover-your-key-how", &[])], class: "" },
            ],
        });
    if let Some(recipient) = clinic.keys.recipient() {
        page = page.part(Part::Card {
            title: words.text("desk-recipient", &[]),
            here: None,
            parts: vec![
                Part::Text { says: vec![words.text("desk-recipient-is", &[])], class: "" },
                Part::Text { says: vec![recipient.to_string()], class: "code" },
            ],
        });
    }
    Ok(page
        .presses(vec![
            Press::go(words.text("desk-copy", &[]), "/keys/copy").looking(Look::Equal),
            Press::go(words.text("desk-change-passphrase", &[]), "/keys/passphrase"),
            Press::go(words.text("desk-new-keys", &[]), "/keys/new"),
        ])
        .answer())
}

pub(super) fn copy(visit: &mut Visit<'_>) -> Shown {
    copy_page(visit, vec![])
}

fn copy_page(visit: &Visit<'_>, problems: Vec<Problem>) -> Shown {
    let clinic = visit.clinic()?;
    let words = &visit.words;
    let copied = keys::is_copied(&clinic.folder).map_err(|error| visit.sorry(visit.says(error)))?;
    let mut form = Form::to("/keys/copy", words.text("desk-copy-look", &[]));
    form.upload = true;
    form.look = Look::Equal;
    form.fields = copy_fields(visit);
    // Once a copy is known to open, nothing more is to be done here.
    let (save, home) = if copied {
        (Look::Equal, words.text("desk-back-home", &[]))
    } else {
        (Look::Next, words.text("desk-later", &[]))
    };
    let mut page = Page::new(&visit.frame, words.text("desk-copy-title", &[])).problems(problems);
    if copied {
        let press = Press::go(home.clone(), "/").looking(Look::Next);
        page = page.text([words.text("desk-copied", &[])]).presses(vec![press]);
    }
    page = page
        .text([words.text("desk-copy-how", &[])])
        .presses(vec![Press {
            label: words.text("desk-copy-save", &[]),
            how: How::Send { to: "/keys/copy/file".to_owned(), fields: vec![] },
            look: save,
        }])
        .part(Part::Heading { text: words.text("desk-copy-look-title", &[]) })
        .text([words.text("desk-copy-look-how", &[])])
        .form(form);
    if !copied {
        page = page.presses(vec![Press::go(home, "/")]);
    }
    Ok(page.answer())
}

pub(super) fn copy_file(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    let clinic = visit.clinic()?;
    match keys::copy(&clinic.folder) {
        Ok(copy) => Ok(file(COPY_NAME, "application/octet-stream", copy)),
        Err(error) => Err(visit.sorry(visit.says(error))),
    }
}

pub(super) fn looked_at(visit: &mut Visit<'_>, upload: Upload) -> Shown {
    let clinic = visit.clinic()?;
    let mut problems = Vec::new();
    if upload.file.is_empty() {
        problems.push(Problem::at("file", visit.words.text("page-error-file", &[])));
    }
    match secret::typed(visit, &upload.fields) {
        Ok(passphrase) if problems.is_empty() => {
            let looked = keys::look_at_copy(&clinic.folder, &clinic.keys, &upload.file, passphrase);
            match looked {
                Ok(()) => return Ok(see("/keys/copy")),
                Err(error) => problems.push(at_copy(visit, error)),
            }
        }
        Ok(_) => {}
        Err(problem) => problems.push(problem),
    }
    copy_page(visit, problems)
}

pub(super) fn passphrase(visit: &mut Visit<'_>) -> Shown {
    passphrase_page(visit, vec![])
}

fn passphrase_page(visit: &Visit<'_>, problems: Vec<Problem>) -> Shown {
    let _clinic = visit.clinic()?;
    let words = &visit.words;
    let mut form = Form::to("/keys/passphrase", words.text("desk-change-passphrase", &[]));
    form.fields = vec![secret::field("passphrase", words.text("desk-passphrase-now", &[]))];
    form.fields.extend(secret::new_fields(visit));
    Ok(Page::new(&visit.frame, words.text("desk-change-passphrase", &[]))
        .problems(problems)
        .text([words.text("desk-change-passphrase-how", &[])])
        .form(form)
        .presses(vec![Press::go(words.text("desk-back", &[]), "/keys")])
        .answer())
}

pub(super) fn changed(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let clinic = visit.clinic()?;
    let mut problems = now_of(visit, fields);
    let new = secret::new_of(visit, fields);
    match new {
        Ok(new) if problems.is_empty() => match keys::keep(&clinic.folder, &clinic.keys, new) {
            Ok(()) => return Ok(see("/keys/copy")),
            Err(error) => return Err(visit.sorry(visit.says(error))),
        },
        Ok(_) => {}
        Err(more) => problems.extend(more),
    }
    passphrase_page(visit, problems)
}

/// Whoever changes what opens the keys shows that she can open them.
fn now_of(visit: &Visit<'_>, fields: &Fields) -> Vec<Problem> {
    let opened = secret::typed(visit, fields).map(|now| keys::open(visit.desk.folder(), now));
    match opened {
        Ok(Ok(_)) => vec![],
        Ok(Err(KeysError::Passphrase)) => {
            vec![Problem::at("passphrase", visit.says(KeysError::Passphrase))]
        }
        Ok(Err(error)) => vec![Problem::at("", visit.says(error))],
        Err(problem) => vec![problem],
    }
}

pub(super) fn new(visit: &mut Visit<'_>) -> Shown {
    new_page(visit, vec![])
}

fn new_page(visit: &Visit<'_>, problems: Vec<Problem>) -> Shown {
    let _clinic = visit.clinic()?;
    let words = &visit.words;
    let mut form = Form::to("/keys/new", words.text("desk-new-keys", &[]));
    form.fields = vec![secret::field("passphrase", words.text("desk-passphrase-now", &[]))];
    form.look = Look::Equal;
    Ok(Page::new(&visit.frame, words.text("desk-new-keys", &[]))
        .problems(problems)
        .text([
            words.text("desk-new-keys-when", &[]),
            words.text("desk-new-keys-signed", &[]),
            words.text("desk-new-keys-limit", &[]),
        ])
        .form(form)
        .presses(vec![Press::go(words.text("desk-back", &[]), "/keys")])
        .answer())
}

pub(super) fn renewed(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let clinic = visit.clinic()?;
    let problems = now_of(visit, fields);
    if !problems.is_empty() {
        return new_page(visit, problems);
    }
    let passphrase = match secret::typed(visit, fields) {
        Ok(passphrase) => passphrase,
        Err(problem) => return new_page(visit, vec![problem]),
    };
    let renewed = clinic.keys.renewed(&*clinic.random).map_err(|_| KeysError::NotSealed);
    let kept = renewed.and_then(|new| keys::keep(&clinic.folder, &new, passphrase).map(|()| new));
    match kept {
        Ok(new) => {
            visit.desk.unlock(new);
            Ok(see("/keys/copy"))
        }
        Err(error) => Err(visit.sorry(visit.says(error))),
    }
}
