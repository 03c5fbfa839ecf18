//! The desk is opened with its passphrase, and locked.

use super::secret;
use super::state::Standing;
use super::visit::{Shown, Visit, see};
use crate::clinic::keys;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Form, Page};

pub(super) fn ask(visit: &mut Visit<'_>) -> Shown {
    page(visit, vec![])
}

fn page(visit: &Visit<'_>, problems: Vec<Problem>) -> Shown {
    match visit.stand()? {
        Standing::Locked => {}
        Standing::First => return Ok(see("/first")),
        Standing::Open(_) => return Ok(see("/")),
    }
    let words = &visit.words;
    let mut form = Form::to("/open", words.text("desk-open", &[]));
    form.fields = vec![secret::field("passphrase", words.text("desk-passphrase", &[]))];
    Ok(Page::new(&visit.frame, words.text("desk-open-title", &[]))
        .problems(problems)
        .form(form)
        .quiet([words.text("desk-open-forgotten", &[])])
        .answer())
}

pub(super) fn opened(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    if !matches!(visit.stand()?, Standing::Locked) {
        return Ok(see("/"));
    }
    let passphrase = match secret::typed(visit, fields) {
        Ok(passphrase) => passphrase,
        Err(problem) => return page(visit, vec![problem]),
    };
    match keys::open(visit.desk.folder(), passphrase) {
        Ok(keys) => {
            visit.desk.unlock(keys);
            Ok(see("/"))
        }
        Err(error) => page(visit, vec![Problem::at("passphrase", visit.says(error))]),
    }
}

pub(super) fn lock(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    visit.desk.lock();
    Ok(see("/open"))
}
