//! `frond desk`: the clinician's side as pages on her own computer. Decides which address shows what, and
//! that nothing but first use and the passphrase is shown while the desk is locked. One file or folder for
//! each thing she does; how a page server works is decided in the rooms above.
//!
//! Start reading at [`router`], then [`visit`].
#![allow(
    clippy::result_large_err,
    reason = "the page that stands in another's place is an answer too; boxing it would only hide that"
)]

mod cabinet;
mod chrome;
mod compose;
mod first;
mod hand_over;
mod home;
mod keys;
mod open;
mod out;
mod secret;
mod state;
#[cfg(test)]
mod tests;
pub(crate) mod tried;
mod visit;

use axum::Router;
use axum::extract::State;
use axum::middleware::from_fn_with_state;
use axum::response::Response;
use frond_core::ports::OsRandom;
use frond_core::words::Words;

use super::app::{self, App, Surface, still};
use super::guard::{Guard, watch};
use super::look;
use super::serve::Listening;
use super::try_out::is_offered;
use crate::args::DeskArgs;
use crate::failure::{Failure, LANGUAGE};
pub(crate) use hand_over::said;
use state::Desk;
use visit::Visit;

/// Shows the pages until the end is asked for.
///
/// # Errors
/// The folder cannot be used, or there is no port.
pub(crate) fn desk(args: &DeskArgs) -> Result<(), Failure> {
    let language = args.language.as_deref().unwrap_or(LANGUAGE);
    is_offered(language)?;
    let words = Words::for_language(language);
    let desk = Desk::of(args, words.clone())?;
    let listening = Listening::on(args.port.unwrap_or(0))?;
    let guard = Guard::new(listening.port(), &OsRandom, words.text("desk-no-way-in", &[]))?;
    let address = guard.address();
    let router = router(App::new(desk, words)).layer(from_fn_with_state(guard, watch));
    listening.serve(router, &address, !args.no_open)
}

impl Surface for Desk {
    type Visit<'a> = Visit<'a>;

    fn visit(&mut self) -> Result<Visit<'_>, Response> {
        Visit::new(self)
    }

    /// Locked: what was in memory is gone with it, and the passphrase brings it back from disk.
    fn shut(&mut self) {
        self.lock();
    }
}

/// Every address.
fn router(own: App<Desk>) -> Router {
    // Which server the ways belong to.
    let shows = app::shows::<Desk>;
    let takes = app::takes::<Desk>;
    let takes_file = app::takes_file::<Desk>;
    Router::new()
        .route("/", shows(home::home))
        .route("/first", shows(first::ask).merge(takes(first::made)))
        .route("/first/restore", shows(first::copy).merge(takes_file(first::restored, first::MOST)))
        .route("/open", shows(open::ask).merge(takes(open::opened)))
        .route("/lock", takes(open::lock))
        .route(
            "/hand-over",
            shows(hand_over::choose).merge(takes_file(hand_over::chosen, hand_over::MOST)),
        )
        .route("/hand-over/sign", takes(hand_over::sign))
        .route("/hand-over/ready", shows(hand_over::ready))
        .route("/hand-over/sheet", shows(hand_over::sheet))
        .route("/hand-over/file", takes(hand_over::save))
        .route("/hand-over/done", takes(hand_over::put_away))
        .route("/programmes", compose::pages())
        .route("/programmes/{*rest}", compose::pages())
        .route("/keys", shows(keys::keys))
        .route("/keys/copy", shows(keys::copy).merge(takes_file(keys::looked_at, first::MOST)))
        .route("/keys/copy/file", takes(keys::copy_file))
        .route("/keys/passphrase", shows(keys::passphrase).merge(takes(keys::changed)))
        .route("/keys/new", shows(keys::new).merge(takes(keys::renewed)))
        .merge(cabinet::routes())
        .merge(out::routes())
        .fallback(|State(app): State<App<Desk>>| app.visit(|visit| Err(visit.nothing_here())))
        .method_not_allowed_fallback(|State(app): State<App<Desk>>| {
            app.visit(|visit| Err(visit.nothing_here()))
        })
        .with_state(own)
        .merge(cabinet::still_routes())
        .route("/look.css", still("text/css; charset=utf-8", look::style_sheet()))
        .route("/compose.js", still("text/javascript; charset=utf-8", look::COMPOSE.to_owned()))
        .route("/icon.svg", still("image/svg+xml", look::ICON.to_owned()))
}
