//! Writing a programme. Decides which address shows which page of a draft, and what a form of it becomes: what
//! was typed is kept as typed on every post, whatever is amiss with it; then the draft is changed, if a button
//! asked for that, and the page is shown again. Leaves to the core what is amiss, what is said back, and what
//! can be chosen.
//!
//! Addresses and names of fields never change: `/programmes/DRAFT/PAGE`, fields as the core's draft names
//! them.
//! Start at [`seen`] and [`sent`]; [`fields`] makes the questions, one file each the pages.

mod fields;
mod finish;
mod groups;
mod list;
mod look;
mod news;
mod page;
mod sheet;
#[cfg(test)]
mod tests;

use axum::extract::{Request, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use axum::routing::{MethodRouter, get};
use frond_core::programme::draft::{Change, Place};

use super::state::Desk;
use super::visit::{Shown, Visit, see};
use crate::clinic::programmes::{FileId, Kept, Programmes, ProgrammesError};
use crate::pages::app::App;
use crate::pages::form::Fields;
use page::Leaf;

/// The longest form, in bytes: a page of texts, each letter of them escaped.
const FORM_MOST: usize = 1024 * 1024;

/// Every address below `/programmes`.
pub(super) fn pages() -> MethodRouter<App<Desk>> {
    get(|State(app): State<App<Desk>>, request: Request| {
        let (path, query) = (request.uri().path().to_owned(), asked(&request));
        app.visit(move |visit| seen(visit, &path, &query))
    })
    .post(|State(app): State<App<Desk>>, request: Request| async move {
        let path = request.uri().path().to_owned();
        match Fields::read_most(request, FORM_MOST).await {
            Ok(fields) => app.visit(move |visit| sent(visit, &path, &fields)).await,
            Err(unread) => app.unread(unread),
        }
    })
}

/// What stands behind the question mark of an address.
fn asked(request: &Request) -> Fields {
    let query = request.uri().query().unwrap_or_default();
    Fields::parse(query.as_bytes()).unwrap_or_default()
}

/// A page that is looked at.
fn seen(visit: &mut Visit<'_>, path: &str, query: &Fields) -> Shown {
    let parts: Vec<&str> = path.trim_matches('/').split('/').collect();
    match parts.as_slice() {
        ["programmes"] => list::page(visit, query),
        ["programmes", "finished", file] => finish::finished(visit, file),
        ["programmes", "finished", file, "text"] => finish::text(visit, file),
        ["programmes", id] => {
            open(visit, id)?;
            Ok(see(&format!("/programmes/{id}/who")))
        }
        ["programmes", id, "check"] => finish::check(visit, &open(visit, id)?),
        ["programmes", id, "preview"] => look::preview(visit, &open(visit, id)?, query),
        ["programmes", id, "differences"] => finish::differences(visit, &open(visit, id)?),
        ["programmes", id, rest @ ..] => {
            let draft = open(visit, id)?;
            let leaf = leaf(visit, &draft, rest)?;
            sheet::page(visit, &draft, leaf, query)
        }
        _ => Err(visit.nothing_here()),
    }
}

/// A form that was sent.
fn sent(visit: &mut Visit<'_>, path: &str, fields: &Fields) -> Shown {
    let parts: Vec<&str> = path.trim_matches('/').split('/').collect();
    match parts.as_slice() {
        ["programmes", "new"] => list::begin(visit),
        ["programmes", "finished", file, "next"] => finish::next(visit, file),
        ["programmes", "finished", file, "hand-over"] => finish::hand(visit, file),
        ["programmes", id, "throw-away"] => list::throw_away(visit, id),
        ["programmes", id, "bring-back"] => list::bring_back(visit, id),
        ["programmes", id, "finish"] => finish::finish(visit, &open(visit, id)?),
        ["programmes", id, "said", rest @ ..] => {
            let draft = open(visit, id)?;
            let leaf = leaf(visit, &draft, rest)?;
            Ok(say_back(visit, draft, leaf, fields))
        }
        ["programmes", id, rest @ ..] => {
            let draft = open(visit, id)?;
            let leaf = leaf(visit, &draft, rest)?;
            keep(visit, draft, leaf, fields)
        }
        _ => Err(visit.nothing_here()),
    }
}

/// A draft that is open on a page.
struct Open {
    id: FileId,
    kept: Kept,
}

impl Open {
    /// The address of one of its pages.
    fn to(&self, page: &str) -> String {
        format!("/programmes/{}/{page}", self.id.as_str())
    }
}

fn programmes(visit: &Visit<'_>) -> Result<Programmes, Response> {
    let clinic = visit.clinic()?;
    Programmes::of(&clinic).map_err(|error| trouble(visit, error))
}

fn open(visit: &Visit<'_>, id: &str) -> Result<Open, Response> {
    // A locked desk says so, whatever was asked for.
    let programmes = programmes(visit)?;
    let id = FileId::parse(id).ok_or_else(|| visit.nothing_here())?;
    let kept = programmes.draft(&id).map_err(|error| trouble(visit, error))?;
    Ok(Open { id, kept })
}

fn leaf(visit: &Visit<'_>, draft: &Open, rest: &[&str]) -> Result<Leaf, Response> {
    let leaf = Leaf::named(rest).filter(|leaf| leaf.is_in(&draft.kept.draft));
    leaf.ok_or_else(|| visit.nothing_here())
}

/// What went wrong, and what to do next, as a page.
pub(super) fn trouble(visit: &Visit<'_>, error: ProgrammesError) -> Response {
    let words = &visit.words;
    match error {
        ProgrammesError::NoSuch => {
            visit.sorry_as(StatusCode::NOT_FOUND, words.text("compose-error-none", &[]))
        }
        ProgrammesError::Damaged => visit.sorry(words.text("compose-error-damaged", &[])),
        ProgrammesError::Newer => visit.sorry(words.text("desk-error-newer", &[])),
        ProgrammesError::NotFinished => {
            let says = words.text("compose-error-not-finished", &[]);
            visit.sorry_as(StatusCode::UNPROCESSABLE_ENTITY, says)
        }
        ProgrammesError::NotSealed => visit.sorry(words.text("compose-error-not-sealed", &[])),
        ProgrammesError::Folder(error) => visit.sorry(visit.says_of_folder(error)),
    }
}

/// Whether a form was made from the draft as it now stands; fields are named by their place in it.
fn is_of_now(draft: &Open, fields: &Fields) -> bool {
    fields.first("shape") == Some(draft.kept.draft.shape.to_string().as_str())
}

/// Keeps what was typed, then does what the button asked for.
fn keep(visit: &mut Visit<'_>, mut draft: Open, leaf: Leaf, fields: &Fields) -> Shown {
    if !is_of_now(&draft, fields) {
        let says = visit.words.text("compose-error-other-tab", &[]);
        return Err(visit.sorry_as(StatusCode::CONFLICT, says));
    }
    draft.kept.draft.put(fields.pairs());
    let then = fields.first("then").unwrap_or("save");
    let own_key = then == "add_own_key";
    let change = if own_key { "add:recipients" } else { then };
    let change = change.parse::<Change>().ok();
    let place = change.as_ref().and_then(|change| draft.kept.draft.change(change));
    if let (true, Some(place)) = (own_key, &place) {
        name_own_key(visit, &mut draft, place)?;
    }
    draft.kept.saved = visit.moment.now;
    let kept = programmes(visit)?.save(&draft.id, &draft.kept);
    kept.map_err(|error| trouble(visit, error))?;
    Ok(see(&match (change, place) {
        (Some(Change::Add { list, .. }), Some(place)) if list == "steps" => {
            draft.to(&Leaf::holding(&place).address())
        }
        (Some(Change::PutBack), Some(place)) => {
            format!("{}#{place}", draft.to(&Leaf::listing(&place).address()))
        }
        (Some(_), Some(place)) => format!("{}#{place}", draft.to(&leaf.address())),
        // What a button of an older page asked for cannot be done any more; what was typed is kept.
        (Some(_), None) => draft.to(&leaf.address()),
        (None, _) if then == "check" => draft.to("check"),
        (None, _) if then.starts_with("go:") => {
            let end = then.trim_start_matches("go:");
            let parts: Vec<&str> = end.split('/').collect();
            let looked_at = ["check", "preview", "differences"].contains(&end);
            let known = looked_at || Leaf::named(&parts).is_some();
            draft.to(if known { end } else { "check" })
        }
        (None, _) if then.starts_with("open:") => {
            let place = Place::new(then.trim_start_matches("open:"));
            let at = Some(Leaf::holding(&place)).filter(|leaf| leaf.is_in(&draft.kept.draft));
            draft.to(&at.unwrap_or(leaf).address())
        }
        (None, _) => format!("{}?saved=yes", draft.to(&leaf.address())),
    }))
}

/// The desk's own key as a reader of summaries, because it was asked for.
fn name_own_key(visit: &Visit<'_>, draft: &mut Open, place: &Place) -> Result<(), Response> {
    let clinic = visit.clinic()?;
    let key = clinic.keys.recipient().map(|own| own.to_string()).unwrap_or_default();
    let name = draft.kept.draft.clinician.name.as_str().to_owned();
    let (at_key, at_name) = (place.at("key"), place.at("name"));
    draft.kept.draft.put([(at_key.as_str(), key.as_str()), (at_name.as_str(), name.as_str())]);
    Ok(())
}

/// Says back what was typed, and keeps nothing.
fn say_back(visit: &Visit<'_>, mut draft: Open, leaf: Leaf, fields: &Fields) -> Response {
    if !is_of_now(&draft, fields) {
        return StatusCode::CONFLICT.into_response();
    }
    draft.kept.draft.put(fields.pairs());
    let said = groups::said(visit, &draft, leaf);
    match serde_json::to_string(&said) {
        Ok(text) => ([(header::CONTENT_TYPE, "application/json")], text).into_response(),
        // Sentences always can be written.
        Err(_) => StatusCode::INTERNAL_SERVER_ERROR.into_response(),
    }
}
