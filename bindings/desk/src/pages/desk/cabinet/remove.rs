//! Taking a diary's summaries away for good.

use super::super::visit::{Shown, Visit, see};
use crate::pages::form::Fields;
use crate::pages::parts::{Form, Look, Page, Press};

pub(super) fn ask(visit: &mut Visit<'_>, named: &str) -> Shown {
    let opened = visit.cabinet()?;
    let (diary, digest) = visit.diary(&opened, named)?;
    let words = &visit.words;
    let mut form =
        Form::to(format!("/people/{diary}/remove"), words.text("cabinet-remove-now", &[]));
    form.look = Look::Equal;
    let name = digest.nickname.as_ref().map(|name| name.to_string());
    Ok(Page::new(&visit.frame, words.text("cabinet-remove", &[]))
        .text(name)
        .text([words.text("cabinet-remove-says", &[])])
        .form(form)
        .presses(vec![Press::go(words.text("cabinet-visit-back", &[]), "/people")])
        .answer())
}

pub(super) fn now(visit: &mut Visit<'_>, named: &str, _fields: &Fields) -> Shown {
    let opened = visit.cabinet()?;
    let (diary, _) = visit.diary(&opened, named)?;
    let gone = opened.held().take_away(diary);
    gone.map_err(|error| visit.sorry(visit.says_of_folder(error)))?;
    Ok(see("/people"))
}
