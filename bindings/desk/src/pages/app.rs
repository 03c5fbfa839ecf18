//! How a request reaches what a server is about. Decides that one request at a time is let at it, off the
//! thread that listens, and what a fault leaves: one sentence, and a surface that was told of it. Leaves to
//! the surface what a request finds, and to each page what it does.
#![allow(
    clippy::result_large_err,
    reason = "the page that stands in another's place is an answer too; boxing it would only hide that"
)]

use std::sync::{Arc, Mutex};

use axum::extract::{Path, Request, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use axum::routing::{MethodRouter, get, post};
use frond_core::words::Words;

use super::form::{Fields, Unread};
use super::guard::sentence;
use super::upload::{self, Upload};

/// A page, or the page that stands in its place.
pub(crate) type Shown = Result<Response, Response>;

/// What the pages of one server are about.
pub(crate) trait Surface: Sized + Send + 'static {
    /// One request, as it finds the surface.
    type Visit<'a>;

    /// Begins a request.
    ///
    /// # Errors
    /// The page that stands in the place of every other just now.
    fn visit(&mut self) -> Result<Self::Visit<'_>, Response>;

    /// After a fault: what was in memory is no longer to be trusted.
    fn shut(&mut self);
}

/// What every handler has.
pub(crate) struct App<S> {
    surface: Arc<Mutex<S>>,
    /// For what has to be said where the surface cannot be asked.
    words: Words,
}

impl<S> Clone for App<S> {
    fn clone(&self) -> Self {
        Self { surface: self.surface.clone(), words: self.words.clone() }
    }
}

impl<S: Surface> App<S> {
    /// The handlers' share of a surface.
    pub(crate) fn new(surface: S, words: Words) -> Self {
        Self { surface: Arc::new(Mutex::new(surface)), words }
    }

    /// Lets one request at the surface. A fault in it is answered with one sentence.
    pub(crate) async fn visit(
        self,
        act: impl for<'a> FnOnce(&mut S::Visit<'a>) -> Shown + Send + 'static,
    ) -> Response {
        let surface = self.surface.clone();
        let done = tokio::task::spawn_blocking(move || {
            let mut surface = surface.lock().unwrap_or_else(|poisoned| {
                let mut surface = poisoned.into_inner();
                surface.shut();
                surface
            });
            match surface.visit() {
                Ok(mut visit) => act(&mut visit).unwrap_or_else(|instead| instead),
                Err(instead) => instead,
            }
        });
        match done.await {
            Ok(response) => response,
            Err(_) => {
                self.surface.clear_poison();
                if let Ok(mut surface) = self.surface.lock() {
                    surface.shut();
                }
                let says = self.words.text("page-fault", &[]);
                sentence(StatusCode::INTERNAL_SERVER_ERROR, &says)
            }
        }
    }

    /// A body that was not taken.
    pub(crate) fn unread(&self, unread: Unread) -> Response {
        let says = match unread {
            Unread::TooLarge => self.words.text("page-too-large", &[]),
            // Nobody waits for a form that slow: it is cut off, or made by a program.
            Unread::Malformed | Unread::TooSlow => self.words.text("page-malformed", &[]),
        };
        sentence(unread.status(), &says)
    }
}

/// A page that is looked at.
pub(crate) fn shows<S: Surface>(
    act: for<'a> fn(&mut S::Visit<'a>) -> Shown,
) -> MethodRouter<App<S>> {
    get(move |State(app): State<App<S>>| app.visit(act))
}

/// A page about one thing, named in the address.
pub(crate) fn shows_one<S: Surface>(
    act: for<'a> fn(&mut S::Visit<'a>, &str) -> Shown,
) -> MethodRouter<App<S>> {
    get(move |State(app): State<App<S>>, Path(one): Path<String>| {
        app.visit(move |visit| act(visit, &one))
    })
}

/// A form.
pub(crate) fn takes<S: Surface>(
    act: for<'a> fn(&mut S::Visit<'a>, &Fields) -> Shown,
) -> MethodRouter<App<S>> {
    post(move |State(app): State<App<S>>, request: Request| async move {
        match Fields::read(request).await {
            Ok(fields) => app.visit(move |visit| act(visit, &fields)).await,
            Err(unread) => app.unread(unread),
        }
    })
}

/// A form about one thing, named in the address.
pub(crate) fn takes_one<S: Surface>(
    act: for<'a> fn(&mut S::Visit<'a>, &str, &Fields) -> Shown,
) -> MethodRouter<App<S>> {
    post(move |State(app): State<App<S>>, Path(one): Path<String>, request: Request| async move {
        match Fields::read(request).await {
            Ok(fields) => app.visit(move |visit| act(visit, &one, &fields)).await,
            Err(unread) => app.unread(unread),
        }
    })
}

/// A form with files, of at most so many bytes together.
pub(crate) fn takes_file<S: Surface>(
    act: for<'a> fn(&mut S::Visit<'a>, Upload) -> Shown,
    most: usize,
) -> MethodRouter<App<S>> {
    post(move |State(app): State<App<S>>, request: Request| async move {
        match upload::read(request, most).await {
            Ok(upload) => app.visit(move |visit| act(visit, upload)).await,
            Err(unread) => app.unread(unread),
        }
    })
}

/// A form with files about one thing, named in the address.
pub(crate) fn takes_one_file<S: Surface>(
    act: for<'a> fn(&mut S::Visit<'a>, &str, Upload) -> Shown,
    most: usize,
) -> MethodRouter<App<S>> {
    post(move |State(app): State<App<S>>, Path(one): Path<String>, request: Request| async move {
        match upload::read(request, most).await {
            Ok(upload) => app.visit(move |visit| act(visit, &one, upload)).await,
            Err(unread) => app.unread(unread),
        }
    })
}

/// Something that never changes while the server runs.
pub(crate) fn still(kind: &'static str, text: String) -> MethodRouter {
    get(move || async move { ([(header::CONTENT_TYPE, kind)], text).into_response() })
}

/// On to the page that shows what came of it.
pub(crate) fn see(to: &str) -> Response {
    (StatusCode::SEE_OTHER, [(header::LOCATION, to.to_owned())]).into_response()
}

/// A file to keep, under this neutral name.
pub(crate) fn file(name: &str, kind: &str, bytes: Vec<u8>) -> Response {
    let disposition = format!("attachment; filename=\"{name}\"");
    let headers =
        [(header::CONTENT_TYPE, kind.to_owned()), (header::CONTENT_DISPOSITION, disposition)];
    (StatusCode::OK, headers, bytes).into_response()
}
