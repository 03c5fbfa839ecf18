//! First use: keys are made, or taken over from a copy. Decides that the copy comes right after, as part of
//! it.

use super::secret;
use super::state::Standing;
use super::visit::{Shown, Visit, see};
use crate::clinic::keys;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Form, Kind, Page, Press};
use crate::pages::upload::Upload;

/// The longest file of keys, with its form.
pub(super) const MOST: usize = 128 * 1024;

/// Only a desk without keys has a first use.
fn only_first(visit: &Visit<'_>) -> Result<(), axum::response::Response> {
    match visit.stand()? {
        Standing::First => Ok(()),
        Standing::Locked | Standing::Open(_) => Err(see("/")),
    }
}

pub(super) fn ask(visit: &mut Visit<'_>) -> Shown {
    page(visit, vec![])
}

fn page(visit: &Visit<'_>, problems: Vec<Problem>) -> Shown {
    only_first(visit)?;
    let words = &visit.words;
    let mut form = Form::to("/first", words.text("desk-make-keys", &[]));
    form.fields = secret::new_fields(visit);
    Ok(Page::new(&visit.frame, words.text("desk-first-title", &[]))
        .problems(problems)
        .text([words.text("desk-first", &[]), words.text("desk-first-forgotten", &[])])
        .form(form)
        .presses(vec![Press::go(words.text("desk-restore", &[]), "/first/restore")])
        .answer())
}

pub(super) fn made(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    only_first(visit)?;
    let passphrase = match secret::new_of(visit, fields) {
        Ok(passphrase) => passphrase,
        Err(problems) => return page(visit, problems),
    };
    match keys::make(visit.desk.folder(), visit.desk.random(), passphrase) {
        Ok(keys) => {
            visit.desk.unlock(keys);
            Ok(see("/keys/copy"))
        }
        Err(error) => Err(visit.sorry(visit.says(error))),
    }
}

pub(super) fn copy(visit: &mut Visit<'_>) -> Shown {
    copy_page(visit, vec![])
}

fn copy_page(visit: &Visit<'_>, problems: Vec<Problem>) -> Shown {
    only_first(visit)?;
    let words = &visit.words;
    let mut form = Form::to("/first/restore", words.text("desk-restore", &[]));
    form.upload = true;
    form.fields = copy_fields(visit);
    Ok(Page::new(&visit.frame, words.text("desk-restore-title", &[]))
        .problems(problems)
        .text([words.text("desk-restore-how", &[])])
        .form(form)
        .presses(vec![Press::go(words.text("desk-back", &[]), "/first")])
        .answer())
}

/// A copy of keys, and what opens it.
pub(super) fn copy_fields(visit: &Visit<'_>) -> Vec<Field> {
    let kind =
        Kind::Line { input: "file", value: String::new(), mode: "", offers: vec![], short: false };
    vec![
        Field::new("file", visit.words.text("desk-copy-file", &[]), kind),
        secret::field("passphrase", visit.words.text("desk-passphrase", &[])),
    ]
}

pub(super) fn restored(visit: &mut Visit<'_>, upload: Upload) -> Shown {
    only_first(visit)?;
    let mut problems = Vec::new();
    if upload.file.is_empty() {
        problems.push(Problem::at("file", visit.words.text("page-error-file", &[])));
    }
    match secret::typed(visit, &upload.fields) {
        Ok(passphrase) if problems.is_empty() => {
            match keys::restore(visit.desk.folder(), &upload.file, passphrase) {
                Ok(keys) => {
                    visit.desk.unlock(keys);
                    return Ok(see("/"));
                }
                Err(error) => problems.push(at_copy(visit, error)),
            }
        }
        Ok(_) => {}
        Err(problem) => problems.push(problem),
    }
    copy_page(visit, problems)
}

/// What is wrong with a copy, at the field where it can be put right.
pub(super) fn at_copy(visit: &Visit<'_>, error: keys::KeysError) -> Problem {
    let field = match error {
        keys::KeysError::Passphrase => "passphrase",
        _ => "file",
    };
    Problem::at(field, visit.says(error))
}
