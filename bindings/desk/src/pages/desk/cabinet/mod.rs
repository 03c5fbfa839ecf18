//! The pages of the cabinet: the people whose summaries came back, bringing more in, one diary as it is read before
//! a visit, and another rule on one or on all. Decides addresses and forms; what is said comes from the core's
//! records, what is kept is decided in [`crate::clinic::cabinet`].
//!
//! An address names a diary by its id and a summary by its hash; neither tells whose it is. What is looked for in the
//! list is kept in memory and never in an address.

mod bring;
mod insight;
mod people;
mod remove;
mod rule;
mod rules;
#[cfg(test)]
pub(super) mod tests;
mod visit_page;

use std::sync::{Arc, Mutex, MutexGuard};

use axum::Router;
use axum::http::StatusCode;
use axum::response::Response;
use frond_core::sealing::OpenWith;
use frond_core::summary::{DiaryId, Digest, Received, SummaryId};

use super::state::Desk;
use super::visit::Visit;
use crate::clinic::Clinic;
use crate::clinic::cabinet::{Cabinet, held};
use crate::pages::app::{self, App, still};
use crate::pages::look;

/// Every address of the cabinet.
pub(super) fn routes() -> Router<App<Desk>> {
    let shows = app::shows::<Desk>;
    let shows_one = app::shows_one::<Desk>;
    let takes = app::takes::<Desk>;
    let takes_one = app::takes_one::<Desk>;
    let takes_file = app::takes_file::<Desk>;
    let takes_one_file = app::takes_one_file::<Desk>;
    Router::new()
        .route("/people", shows(people::people).merge(takes(people::look)))
        .route("/people/page/{number}", shows_one(people::page))
        .route("/people/{diary}", shows_one(visit_page::newest))
        .route("/people/{diary}/notes", shows_one(visit_page::with_notes))
        .route("/people/{diary}/remove", shows_one(remove::ask).merge(takes_one(remove::now)))
        .route(
            "/people/{diary}/rule",
            shows_one(rule::ask).merge(takes_one_file(rule::compared, rule::MOST)),
        )
        .route("/people/{diary}/revise", takes_one(rule::revise))
        .route("/summaries/{summary}", shows_one(visit_page::one))
        .route("/bring", shows(bring::ask).merge(takes_file(bring::brought, bring::MOST)))
        .route("/bring/now", shows(bring::now))
        .route("/rules", shows(rules::ask).merge(takes_file(rules::compare, rule::MOST)))
        .route("/rules/now", shows(rules::now))
        .route("/insight", shows(insight::insight))
}

/// What never changes while the server runs.
pub(super) fn still_routes() -> Router {
    Router::new()
        .route("/progress.js", still("text/javascript; charset=utf-8", look::PROGRESS.to_owned()))
}

/// The open desk with its cabinet.
pub(super) struct Opened {
    pub(super) clinic: Arc<Clinic>,
    pub(super) cabinet: Arc<Mutex<Cabinet>>,
}

impl Opened {
    pub(super) fn held(&self) -> MutexGuard<'_, Cabinet> {
        held(&self.cabinet)
    }

    /// What opens its files.
    pub(super) fn own(&self) -> OpenWith {
        self.clinic.keys.open_with()
    }
}

impl Visit<'_> {
    /// The open cabinet, or the page that stands in its place.
    pub(super) fn cabinet(&self) -> Result<Opened, Response> {
        let clinic = self.clinic()?;
        let cabinet = clinic.cabinet.cabinet(&clinic);
        let cabinet = cabinet.map_err(|error| self.sorry(self.says_of_folder(error)))?;
        Ok(Opened { clinic, cabinet })
    }

    /// A diary that an address names, with the digest of its newest summary.
    pub(super) fn diary(
        &self,
        opened: &Opened,
        named: &str,
    ) -> Result<(DiaryId, Digest), Response> {
        let diary = DiaryId::try_from(named.to_owned()).map_err(|_| self.nothing_here())?;
        let cabinet = opened.held();
        let newest = cabinet.of(diary).max_by_key(|one| (one.made.millis(), one.summary));
        newest.cloned().map(|newest| (diary, newest)).ok_or_else(|| self.nothing_here())
    }

    /// A summary, opened.
    pub(super) fn received(&self, opened: &Opened, id: SummaryId) -> Result<Received, Response> {
        // The file is opened beside the cabinet, so that others need not wait for it.
        let reader = opened.held().to_open(id, opened.own());
        let reader = reader.ok_or_else(|| self.nothing_here())?;
        reader.open().map_err(|_| {
            self.sorry_as(
                StatusCode::UNPROCESSABLE_ENTITY,
                self.words.text("cabinet-cannot-open", &[]),
            )
        })
    }
}
