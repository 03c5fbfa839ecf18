//! `frond try`: the companion's screens as pages on this machine. Decides which address shows which record
//! and which form becomes which request; one file for each screen or few. Leaves what is shown and what may
//! be written to the companion, and how a page server of ours works to the rooms above.
//!
//! Start reading at [`router`], then [`visit`], then [`show`].
#![allow(
    clippy::result_large_err,
    reason = "the page that stands in another's place is an answer too; boxing it would only hide that"
)]

mod breathing;
mod chrome;
mod diary;
mod entries;
mod entry;
mod erase;
mod health;
mod keeping;
mod ladder;
mod log;
pub(crate) mod looked_at;
mod overview;
mod own_words;
mod plan;
mod practice;
mod press;
mod rate;
mod reminders;
mod restore;
mod settings;
mod show;
mod shut;
mod signs;
mod spoke;
mod stop;
mod suggestion;
mod summary;
#[cfg(test)]
mod tests;
mod today;
mod visit;
mod when;

use axum::Router;
use axum::extract::State;
use axum::middleware::from_fn_with_state;
use axum::response::Response;
use frond_core::ports::OsRandom;
use frond_core::words::Words;

use crate::args::TryArgs;
use crate::failure::Failure;
use crate::pages::app::{self, App, Surface, still};
use crate::pages::guard::{Guard, watch};
use crate::pages::look;
use crate::pages::serve::Listening;
use diary::Diary;
use visit::Visit;

/// Shows the pages until the end is asked for.
///
/// # Errors
/// The diary cannot be made, or there is no port.
pub(crate) fn try_out(args: &TryArgs) -> Result<(), Failure> {
    if let Some(tag) = &args.language {
        is_offered(tag)?;
    }
    let mut diary = Diary::of(args)?;
    if let Some(path) = &args.programme {
        diary.waiting = Some(plan::read(path)?);
    }
    let listening = Listening::on(args.port.unwrap_or(0))?;
    let words = Words::for_language(diary.language());
    let guard = Guard::new(listening.port(), &OsRandom, words.text("page-no-way-in", &[]))?;
    let address = guard.address();
    let app = App::new(diary, words);
    let router = router(app).layer(from_fn_with_state(guard, watch));
    listening.serve(router, &address, !args.no_open)
}

/// A language that is not there is not quietly another.
pub(crate) fn is_offered(tag: &str) -> Result<(), Failure> {
    if Words::for_language(tag).fell_back().is_none() {
        return Ok(());
    }
    let tags: Vec<&str> = Words::offered(false).iter().map(|one| one.tag).collect();
    Err(Failure::input(format!("There is no language {tag}. There is: {}.", tags.join(", "))))
}

impl Surface for Diary {
    type Visit<'a> = Visit<'a>;

    fn visit(&mut self) -> Result<Visit<'_>, Response> {
        Visit::new(self)
    }

    /// The diary is opened again at the next request.
    fn shut(&mut self) {
        Diary::shut(self);
    }
}

/// Every address.
fn router(own: App<Diary>) -> Router {
    // Which server the ways belong to.
    let shows = app::shows::<Diary>;
    let shows_one = app::shows_one::<Diary>;
    let takes = app::takes::<Diary>;
    let takes_one = app::takes_one::<Diary>;
    let takes_file = app::takes_file::<Diary>;
    Router::new()
        .route("/", shows(today::first))
        .route("/today", shows(today::today))
        .route("/log", shows(log::ask).merge(takes(log::told)))
        .route("/log/as-planned", shows(rate::as_planned))
        .route("/practices", shows(practice::practices))
        .route("/practice", shows(practice::now))
        .route("/practice/begin", takes(practice::begin))
        .route("/practice/new", takes(practice::new_told))
        .route("/practice/during", takes(practice::during))
        .route("/practice/seen", takes(practice::seen))
        .route("/practice/found", takes(practice::found))
        .route("/practice/rate", shows(rate::rate).merge(takes(rate::told)))
        .route("/breathing", shows(breathing::breathing))
        .route("/breathing/cues", takes(breathing::cues))
        .route("/screening", shows(health::screening).merge(takes(health::screening_told)))
        .route("/hold-questions", shows(health::holds).merge(takes(health::holds_told)))
        .route("/step-check", shows(ladder::check))
        .route("/reminders", shows(reminders::reminders).merge(takes(reminders::told)))
        .route("/reminders/calendar", takes(reminders::calendar))
        .route("/steps", shows(ladder::steps).merge(takes(ladder::told)))
        .route("/steps/{number}", shows_one(ladder::one))
        .route("/suggestion", shows(suggestion::suggestion))
        .route("/ready", shows(suggestion::ready).merge(takes(suggestion::ready_told)))
        .route("/choose", takes(suggestion::choose))
        .route("/stay-here", takes(suggestion::stay_here))
        .route("/confirm-step", takes(ladder::confirm))
        .route("/confirm-time", takes(today::confirm_time))
        .route("/strike", takes(entries::strike))
        .route("/signs", shows(signs::ask).merge(takes(signs::told)))
        .route("/call", shows(stop::stop))
        .route("/spoke", shows(spoke::ask).merge(takes(spoke::told)))
        .route("/entries", shows(entries::entries))
        .route("/kept/{entry}", shows_one(entries::kept))
        .route("/entry/{entry}", shows_one(entry::entry))
        .route(
            "/entry/{entry}/correct",
            shows_one(entry::correct).merge(takes_one(entry::corrected)),
        )
        .route("/more", shows(overview::more))
        .route("/calendar", shows(overview::calendar))
        .route("/calendar/{month}", shows_one(overview::month))
        .route("/day/{day}", shows_one(overview::day))
        .route("/shows", shows(overview::shows))
        .route("/ending", shows(overview::ending))
        .route("/first/{page}", shows_one(overview::first_run))
        .route("/settings", shows(settings::settings))
        .route("/settings/language", takes(settings::language))
        .route("/settings/numbers", takes(settings::numbers))
        .route("/questions", shows(own_words::questions).merge(takes(own_words::question_told)))
        .route(
            "/look-forward",
            shows(own_words::look_forward).merge(takes(own_words::look_forward_told)),
        )
        .route("/time-off", shows(own_words::time_off).merge(takes(own_words::time_off_told)))
        .route(
            "/settled/{of}",
            shows_one(own_words::settled).merge(takes_one(own_words::settled_told)),
        )
        .route("/activities", shows(own_words::activities).merge(takes(own_words::activity_told)))
        .route("/plan", shows(plan::plan))
        .route("/plan/add", shows(plan::add).merge(takes_file(plan::added, plan::MOST)))
        .route("/plan/accept", takes(plan::accept))
        .route("/summary", shows(summary::ask).merge(takes(summary::look)))
        .route("/summary/file", takes(summary::file))
        .route("/keeping", shows(keeping::keeping))
        .route("/keeping/done/{what}", shows_one(keeping::done))
        .route("/keeping/passphrase", shows(keeping::passphrase).merge(takes(keeping::changed)))
        .route("/keeping/phrase", shows(keeping::phrase).merge(takes(keeping::phrase_written)))
        .route("/keeping/copy", shows(keeping::copy).merge(takes(keeping::copy_file)))
        .route("/keeping/copy/kept", takes(keeping::copy_kept))
        .route("/restore", shows(restore::backups).merge(takes(restore::look)))
        .route("/restore/now", takes(restore::now))
        .route(
            "/restore/copy",
            shows(restore::copy).merge(takes_file(restore::copied, restore::MOST)),
        )
        .route("/open", shows(shut::ask).merge(takes(shut::by_phrase)))
        .route("/start", takes(shut::start))
        .route("/erase/entry/{entry}", shows_one(erase::entry).merge(takes_one(erase::entry_gone)))
        .route("/erase/days", shows(erase::days).merge(takes(erase::days_asked)))
        .route("/erase/days/now", takes(erase::days_gone))
        .route("/erase/all", shows(erase::all).merge(takes(erase::all_gone)))
        .fallback(|State(app): State<App<Diary>>| app.visit(|visit| Err(visit.nothing_here())))
        .method_not_allowed_fallback(|State(app): State<App<Diary>>| {
            app.visit(|visit| Err(visit.nothing_here()))
        })
        .with_state(own)
        .route("/look.css", still("text/css; charset=utf-8", look::style_sheet()))
        .route("/practice.js", still("text/javascript; charset=utf-8", look::PRACTICE.to_owned()))
        .route("/icon.svg", still("image/svg+xml", look::ICON.to_owned()))
}
