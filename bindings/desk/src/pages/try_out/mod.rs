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
mod lines;
mod log;
pub(crate) mod looked_at;
mod overview;
mod own_code;
mod own_words;
mod phone;
mod phrase;
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
pub(crate) mod tried;
mod visit;
mod when;

use axum::Router;
use axum::extract::State;
use axum::middleware::from_fn_with_state;
use axum::response::Response;
use frond_core::ports::OsRandom;
use frond_core::screens::Does;
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
        diary.handed(plan::read(path)?)?;
    }
    let listening = Listening::on(args.port.unwrap_or(0))?;
    let words = diary.words().clone();
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
        .route("/today", shows(|visit| visit.look(Does::Today)))
        .route("/log", shows(|visit| visit.look(Does::LogSession)).merge(takes(log::told)))
        .route("/log/as-planned", shows(|visit| visit.look(Does::LogAsPlanned)))
        .route("/practices", shows(|visit| visit.look(Does::Practices)))
        .route("/practice", shows(|visit| visit.look(Does::Practice)))
        .route("/practice/begin", takes(practice::begin))
        .route("/practice/new", takes(practice::new_told))
        .route("/practice/during", takes(practice::during))
        .route("/practice/seen", takes(practice::seen))
        .route("/practice/found", takes(practice::found))
        .route("/practice/rate", shows(|visit| visit.look(Does::Rate)).merge(takes(rate::told)))
        .route("/breathing", shows(|visit| visit.look(Does::Breathing)))
        .route("/breathing/cues", takes(breathing::cues))
        .route(
            "/screening",
            shows(|visit| visit.look(Does::Screening)).merge(takes(health::screening_told)),
        )
        .route(
            "/hold-questions",
            shows(|visit| visit.look(Does::HoldQuestions)).merge(takes(health::holds_told)),
        )
        .route("/step-check", shows(|visit| visit.look(Does::StepCheck)))
        .route(
            "/reminders",
            shows(|visit| visit.look(Does::Reminders)).merge(takes(reminders::told)),
        )
        .route("/reminders/calendar", takes(reminders::calendar))
        .route("/steps", shows(|visit| visit.look(Does::Ladder)).merge(takes(ladder::told)))
        .route("/steps/{number}", shows_one(ladder::one))
        .route("/suggestion", shows(|visit| visit.look(Does::Suggestion)))
        .route(
            "/ready",
            shows(|visit| visit.look(Does::FeelsReady)).merge(takes(suggestion::ready_told)),
        )
        .route("/choose", takes(suggestion::choose))
        .route("/stay-here", takes(suggestion::stay_here))
        .route("/confirm-step", takes(|visit, fields| visit.told(fields, Does::ConfirmStep)))
        .route("/confirm-time", takes(|visit, fields| visit.told(fields, Does::ConfirmTime)))
        .route("/strike", takes(entries::strike))
        .route("/signs", shows(|visit| visit.look(Does::Signs)).merge(takes(signs::told)))
        .route("/call", shows(|visit| visit.look(Does::StopAndCall)))
        .route("/spoke", shows(|visit| visit.look(Does::Spoke)).merge(takes(spoke::told)))
        .route("/entries", shows(|visit| visit.look(Does::Entries)))
        .route("/kept/{entry}", shows_one(entries::kept))
        .route("/entry/{entry}", shows_one(entry::entry))
        .route(
            "/entry/{entry}/correct",
            shows_one(entry::correct).merge(takes_one(entry::corrected)),
        )
        .route("/more", shows(|visit| visit.look(Does::More)))
        .route("/calendar", shows(|visit| visit.look(Does::Calendar { month: None })))
        .route("/calendar/{month}", shows_one(overview::month))
        .route("/day/{day}", shows_one(overview::day))
        .route("/shows", shows(|visit| visit.look(Does::Shows)))
        .route("/ending", shows(|visit| visit.look(Does::Ending)))
        .route("/first/{page}", shows_one(overview::first_run))
        .route("/settings", shows(|visit| visit.look(Does::Settings)))
        .route("/settings/language", takes(settings::language))
        .route("/settings/numbers", takes(settings::numbers))
        .route("/settings/lock", takes(settings::lock))
        .route(
            "/questions",
            shows(|visit| visit.look(Does::Questions)).merge(takes(own_words::question_told)),
        )
        .route(
            "/look-forward",
            shows(|visit| visit.look(Does::LookForward)).merge(takes(own_words::look_forward_told)),
        )
        .route(
            "/time-off",
            shows(|visit| visit.look(Does::TimeOff)).merge(takes(own_words::time_off_told)),
        )
        .route(
            "/settled/{of}",
            shows_one(own_words::settled).merge(takes_one(own_words::settled_told)),
        )
        .route(
            "/activities",
            shows(|visit| visit.look(Does::Activities)).merge(takes(own_words::activity_told)),
        )
        .route("/plan", shows(|visit| visit.look(Does::Plan)))
        .route(
            "/plan/add",
            shows(|visit| visit.look(Does::AcceptProgramme))
                .merge(takes_file(plan::added, plan::MOST)),
        )
        .route("/plan/accept", takes(plan::accept))
        .route("/summary", shows(|visit| visit.look(Does::Summary)).merge(takes(summary::look)))
        .route("/summary/file", takes(summary::file))
        .route("/keeping", shows(|visit| visit.look(Does::Keeping)))
        .route("/done", shows(shut::done))
        .route("/code", takes(own_code::given))
        .route("/lock", takes(own_code::lock))
        .route(
            "/keeping/code",
            shows(|visit| visit.look(Does::CodeForm)).merge(takes(own_code::set)),
        )
        .route("/keeping/code/remove", takes(own_code::removed))
        .route("/keeping/passphrase", shows(own_code::passphrase).merge(takes(own_code::changed)))
        .route(
            "/keeping/phrase",
            shows(|visit| visit.look(Does::MakePhrase)).merge(takes(phrase::written)),
        )
        .route(
            "/keeping/copy",
            shows(|visit| visit.look(Does::MakeCopy)).merge(takes(keeping::copy_file)),
        )
        .route("/keeping/copy/kept", takes(keeping::copy_kept))
        .route("/restore", shows(|visit| visit.look(Does::Restore)).merge(takes(restore::look)))
        .route("/restore/now", takes(restore::now))
        .route(
            "/restore/copy",
            shows(|visit| visit.look(Does::RestoreCopy))
                .merge(takes_file(restore::copied, restore::MOST)),
        )
        .route("/open", shows(phrase::open).merge(takes(phrase::opened)))
        .route("/start", takes(shut::start))
        .route("/erase/entry/{entry}", shows_one(erase::entry).merge(takes_one(erase::entry_gone)))
        .route(
            "/erase/days",
            shows(|visit| visit.look(Does::EraseSomeDays)).merge(takes(erase::days_asked)),
        )
        .route("/erase/days/now", takes(erase::days_gone))
        .route(
            "/erase/all",
            shows(|visit| visit.look(Does::EraseAll)).merge(takes(erase::all_gone)),
        )
        .fallback(|State(app): State<App<Diary>>| app.visit(|visit| Err(visit.nothing_here())))
        .method_not_allowed_fallback(|State(app): State<App<Diary>>| {
            app.visit(|visit| Err(visit.nothing_here()))
        })
        .with_state(own)
        .route("/look.css", still("text/css; charset=utf-8", look::style_sheet()))
        .route("/practice.js", still("text/javascript; charset=utf-8", look::PRACTICE.to_owned()))
        .route("/icon.svg", still("image/svg+xml", look::ICON.to_owned()))
}
