//! One request of a browser, as it reaches the desk. Decides that a locked desk leads to its passphrase and a
//! new one to its first use, whatever was asked for.

use std::sync::Arc;

use axum::http::StatusCode;
use axum::response::Response;
use frond_core::moment::Moment;
use frond_core::words::Words;

use super::chrome;
use super::state::{Desk, Standing};
use crate::clinic::Clinic;
use crate::clinic::folder::FolderError;
use crate::clinic::keys::KeysError;
pub(super) use crate::pages::app::{Shown, see};
use crate::pages::parts::{Frame, Page, Press};

/// One request.
pub(crate) struct Visit<'a> {
    pub(super) desk: &'a mut Desk,
    pub(super) moment: Moment,
    pub(super) words: Words,
    pub(super) frame: Frame,
}

impl<'a> Visit<'a> {
    /// A request that may find the desk locked.
    pub(super) fn new(desk: &'a mut Desk) -> Result<Self, Response> {
        let moment = desk.moment().map_err(|failure| {
            crate::pages::guard::sentence(StatusCode::INTERNAL_SERVER_ERROR, &failure.to_string())
        })?;
        let words = desk.words.clone();
        let open = matches!(desk.stand(), Ok(Standing::Open(_)));
        let frame = chrome::frame(&words, open);
        Ok(Self { desk, moment, words, frame })
    }

    /// How the desk stands, or the page that says why that cannot be known.
    pub(super) fn stand(&self) -> Result<Standing, Response> {
        self.desk.stand().map_err(|error| self.sorry(self.says(error)))
    }

    /// The open desk, or the way to open it.
    pub(super) fn clinic(&self) -> Result<Arc<Clinic>, Response> {
        match self.stand()? {
            Standing::Open(clinic) => Ok(clinic),
            Standing::Locked => Err(see("/open")),
            Standing::First => Err(see("/first")),
        }
    }

    /// What went wrong with the keys, and what to do next.
    pub(super) fn says(&self, error: KeysError) -> String {
        let words = &self.words;
        match error {
            KeysError::There => words.text("desk-error-keys-there", &[]),
            KeysError::None => words.text("desk-error-keys-none", &[]),
            KeysError::Passphrase => words.text("desk-error-passphrase", &[]),
            KeysError::NotKeys => words.text("desk-error-not-keys", &[]),
            KeysError::Newer => words.text("desk-error-newer", &[]),
            KeysError::OtherKeys => words.text("desk-error-other-keys", &[]),
            KeysError::NotSealed => words.text("desk-error-not-sealed", &[]),
            KeysError::Folder(error) => self.says_of_folder(error),
        }
    }

    /// What went wrong with the folder.
    pub(super) fn says_of_folder(&self, error: FolderError) -> String {
        match error {
            FolderError::Full => self.words.text("desk-error-full", &[]),
            FolderError::Failed => self.words.text("desk-error-folder", &[]),
        }
    }

    /// There is no such page.
    pub(super) fn nothing_here(&self) -> Response {
        self.sorry_as(StatusCode::NOT_FOUND, self.words.text("desk-not-found", &[]))
    }

    /// What went wrong and what to do next, as a page.
    pub(super) fn sorry(&self, says: String) -> Response {
        self.sorry_as(StatusCode::SERVICE_UNAVAILABLE, says)
    }

    pub(super) fn sorry_as(&self, status: StatusCode, says: String) -> Response {
        Page::new(&self.frame, self.words.text("page-sorry-title", &[]))
            .text([says])
            .presses(vec![Press::go(self.words.text("desk-back-home", &[]), "/")])
            .answer_as(status)
    }
}
