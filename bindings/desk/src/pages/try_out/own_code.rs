//! What opens the diary every day: its own code, asked, chosen and taken away as on a phone; or, in a diary of
//! the person's own on this computer, the passphrase, which has no record since no phone has it.

use frond_core::screens::{CodeScreen, Does, FormField, Problem as Wrong, SetCodeScreen, Wait};
use frond_core::whole::WholeRequest;

use super::lines;
use super::visit::{Shown, Visit, see};
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Form, Kind, Look, Page, Part, Press};
use crate::secret;

/// As it was typed: spaces at the ends belong to it.
pub(super) fn typed(fields: &Fields, name: &str) -> String {
    fields.all(name).next().unwrap_or_default().to_owned()
}

/// The code is asked for; while there is a wait, nothing can be tried.
pub(super) fn page(visit: &mut Visit<'_>, screen: &CodeScreen) -> Shown {
    let presses = visit.presses(&screen.actions)?;
    // An open diary asks for it before another takes its place.
    let to = if visit.diary.is_open() { "/keeping/code" } else { "/" };
    let again = Press::go(visit.words.text("action-try-again", &[]), to).looking(Look::Next);
    let problems = wrong(&screen.problems, screen.wait.as_ref());
    let page = Page::new(&visit.frame, &screen.title).problems(problems);
    let page = match &screen.wait {
        Some(wait) => page.part(waits(wait)).presses(vec![again]),
        None => {
            let form = lines::form("/code", &screen.submit, [&screen.code]);
            page.text(screen.says.clone()).form(form)
        }
    };
    Ok(page.presses(presses).answer())
}

/// What has to be put right. While there is a wait, the code has no field to lead to.
fn wrong(of: &[Wrong], wait: Option<&Wait>) -> Vec<Problem> {
    let code = lines::name(FormField::Code);
    let mut problems = lines::problems(of);
    for problem in problems.iter_mut().filter(|own| wait.is_some() && own.field == code) {
        problem.field.clear();
    }
    problems
}

fn waits(wait: &Wait) -> Part {
    Part::Notice { says: wait.says.clone(), press: None }
}

pub(super) fn given(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let seen = visit.whole(WholeRequest::GiveCode { code: typed(fields, "code") })?;
    visit.lead_on(seen.view)
}

/// Puts the open diary and its code out of memory.
pub(super) fn lock(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    let seen = visit.pressed(Does::Lock)?;
    visit.diary.done = None;
    visit.lead_on(seen.view)
}

/// A code is chosen, changed or taken away.
pub(super) fn set_page(visit: &mut Visit<'_>, screen: &SetCodeScreen) -> Shown {
    let presses = visit.presses(&screen.actions)?;
    let set =
        lines::form("/keeping/code", &screen.set.submit, [&screen.set.new, &screen.set.again]);
    let remove_wait = screen.remove.as_ref().and_then(|remove| remove.wait.as_ref());
    let mut page = Page::new(&visit.frame, &screen.title)
        .problems(wrong(&screen.problems, remove_wait))
        .text(screen.says.clone())
        .form(set);
    if let Some(remove) = &screen.remove {
        page = page.part(Part::Heading { text: remove.title.clone() }).text(remove.says.clone());
        page = match &remove.wait {
            Some(wait) => page.part(waits(wait)),
            None => {
                let mut form = lines::form("/keeping/code/remove", &remove.submit, [&remove.code]);
                form.look = Look::Equal;
                page.form(form)
            }
        };
    }
    Ok(page.presses(presses).answer())
}

pub(super) fn set(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let (new, again) = (typed(fields, "new"), typed(fields, "again"));
    let seen = visit.whole(WholeRequest::SetCode { new, again })?;
    visit.lead_on(seen.view)
}

pub(super) fn removed(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let seen = visit.whole(WholeRequest::RemoveCode { code: typed(fields, "code") })?;
    visit.lead_on(seen.view)
}

/// Another passphrase, where one opens the diary.
pub(super) fn passphrase(visit: &mut Visit<'_>) -> Shown {
    new_passphrase(visit, vec![])
}

fn new_passphrase(visit: &mut Visit<'_>, problems: Vec<Problem>) -> Shown {
    // What stands in the way of it, and how it is kept.
    let keeping = visit.pressed(Does::Keeping)?;
    if !visit.diary.is_open() {
        return visit.show(&keeping.view);
    }
    if visit.diary.as_on_a_phone() {
        return Ok(see("/keeping/code"));
    }
    let words = &visit.words;
    let secret = |name: &str, label: String| {
        let (input, value) = ("password", String::new());
        Field::new(name, label, Kind::Line { input, value, mode: "", offers: vec![], short: false })
    };
    let mut form = Form::to("/keeping/passphrase", words.text("action-new-passphrase", &[]));
    form.fields = vec![
        secret("new", words.text("page-new-passphrase", &[])),
        secret("again", words.text("page-new-passphrase-again", &[])),
    ];
    Ok(Page::new(&visit.frame, words.text("action-new-passphrase", &[]))
        .problems(problems)
        .text([words.text("page-new-passphrase-how", &[])])
        .form(form)
        .presses(vec![Press::go(words.text("action-keeping", &[]), "/keeping")])
        .answer())
}

pub(super) fn changed(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    if visit.diary.as_on_a_phone() {
        return Ok(see("/keeping/code"));
    }
    let new = typed(fields, "new");
    if typed(fields, "again") != new {
        let says = visit.words.text("page-error-not-the-same", &[]);
        return new_passphrase(visit, vec![Problem::at("again", says)]);
    }
    let Ok(keeper) = secret::keeper(&new) else {
        let says = visit.words.text("page-error-passphrase", &[]);
        return new_passphrase(visit, vec![Problem::at("new", says)]);
    };
    let keeping = visit.pressed(Does::Keeping)?;
    if !visit.diary.is_open() {
        return visit.show(&keeping.view);
    }
    let moment = visit.moment;
    let seen = visit.diary.another_passphrase(keeper, &moment);
    let seen = seen.map_err(|trouble| visit.trouble(&trouble))?;
    visit.lead_on(seen.view)
}
