//! Settings: the language, and whether sizes and counts stay open. What is chosen is written as one entry
//! with everything else that is set.

use axum::response::Response;
use frond_core::companion::{Request, Told};
use frond_core::diary::entry::LockAfter;
use frond_core::programme::values::Line;
use frond_core::screens::{LanguageForm, LockForm, Screen, SettingsScreen};

use super::overview::section;
use super::visit::{Shown, Visit, see};
use crate::pages::form::{Fields, code, decode};
use crate::pages::parts::{Choice, Field, Form, Kind, Look, Page};

/// `back`: the page that shows the choice afterwards.
pub(super) fn language_form(language: &LanguageForm, back: &str) -> Form {
    let choices = language.languages.iter().map(|own| Choice {
        value: own.tag.clone(),
        label: format!("{} ({})", own.name, own.reviewed),
        chosen: own.present,
    });
    let mut form = Form::to("/settings/language", &language.save);
    form.look = Look::Equal;
    form.hidden = vec![("id", language.id.to_string()), ("back", back.to_owned())];
    form.fields = vec![Field::new("language", &language.label, Kind::One(choices.collect()))];
    form
}

pub(super) fn page(visit: &mut Visit<'_>, screen: &SettingsScreen) -> Shown {
    let numbers = &screen.numbers;
    let choice = |value: &str, label: &str, chosen| Choice {
        value: value.to_owned(),
        label: label.to_owned(),
        chosen,
    };
    let open = numbers.present.numbers_open;
    let choices =
        vec![choice("folded", &numbers.folded, !open), choice("open", &numbers.open, open)];
    let mut form = Form::to("/settings/numbers", &numbers.save);
    form.look = Look::Equal;
    form.hidden = vec![("id", numbers.id.to_string())];
    form.fields = vec![Field::new("numbers", &numbers.label, Kind::One(choices))];
    let mut parts = Vec::new();
    for part in &screen.parts {
        parts.push(section(visit, part, Look::Quiet)?);
    }
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title)
        .form(language_form(&screen.language, "/settings"))
        .form(form);
    if let Some(lock) = &screen.lock {
        page = page.form(lock_form(lock));
    }
    for part in parts {
        page = page.part(part);
    }
    Ok(page.presses(presses).answer())
}

/// After how long a phone locks. A page does not lock by itself; what is chosen goes with the diary.
fn lock_form(lock: &LockForm) -> Form {
    let choices = lock.choices.iter().map(|own| Choice {
        value: code(&own.after),
        label: own.label.clone(),
        chosen: own.after == lock.present.lock_after,
    });
    let mut form = Form::to("/settings/lock", &lock.save);
    form.look = Look::Equal;
    form.hidden = vec![("id", lock.id.to_string())];
    let kind = Kind::One(choices.collect());
    form.fields = vec![Field::new("lock", &lock.label, kind).hint(&lock.hint)];
    form
}

pub(super) fn lock(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let chosen = fields.first("lock").and_then(decode::<LockAfter>);
    let (Some(lock), Some(after)) = (asked(visit)?.lock, chosen) else {
        return Err(visit.malformed());
    };
    let mut settings = lock.present;
    settings.lock_after = after;
    visit.tell(fields, Told::Settings(settings))?;
    Ok(see("/settings"))
}

fn asked(visit: &mut Visit<'_>) -> Result<SettingsScreen, Response> {
    match visit.ask(Request::Settings)? {
        Screen::Settings(screen) => Ok(screen),
        _ => Err(visit.nothing_here()),
    }
}

pub(super) fn language(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let screen = asked(visit)?;
    let offered = screen.language.languages.iter();
    let chosen = fields.first("language").filter(|tag| offered.clone().any(|own| own.tag == *tag));
    let Some(tag) = chosen.and_then(|tag| Line::new(tag).ok()) else {
        return Err(visit.malformed());
    };
    let mut settings = screen.language.present;
    settings.language = Some(tag);
    visit.tell(fields, Told::Settings(settings))?;
    Ok(see(if fields.has("back", "/settings") { "/settings" } else { "/first/language" }))
}

pub(super) fn numbers(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let screen = asked(visit)?;
    let mut settings = screen.numbers.present;
    settings.numbers_open = match fields.first("numbers") {
        Some("open") => true,
        Some("folded") => false,
        _ => return Err(visit.malformed()),
    };
    visit.tell(fields, Told::Settings(settings))?;
    Ok(see("/settings"))
}
