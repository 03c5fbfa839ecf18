//! One request of a browser, as it reaches the diary. Decides in which order things happen: the diary is
//! opened where it is not, the companion is asked, what it answers becomes a page or a way to one. Leaves
//! what a page shows to the files beside this one.

use axum::http::StatusCode;
use axum::response::Response;
use frond_core::companion::{Answer, Companion, Refusal, Request, Told, Trouble, Write};
use frond_core::diary::entry::EntryId;
use frond_core::moment::{Moment, Stamp};
use frond_core::screens::Screen;
use frond_core::words::Words;

use super::diary::{Diary, Standing};
use super::{chrome, shut};
pub(super) use crate::pages::app::{Shown, see};
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Frame, Page, Press};

/// One request.
pub(crate) struct Visit<'a> {
    pub(super) diary: &'a mut Diary,
    pub(super) moment: Moment,
    pub(super) words: Words,
    pub(super) frame: Frame,
}

impl<'a> Visit<'a> {
    /// A request that may find the diary shut.
    pub(super) fn new(diary: &'a mut Diary) -> Result<Self, Response> {
        let moment = diary.moment().map_err(|failure| {
            crate::pages::guard::sentence(StatusCode::INTERNAL_SERVER_ERROR, &failure.to_string())
        })?;
        let words = match diary.stand(&moment) {
            Standing::Open(companion) => companion.words().clone(),
            Standing::Stuck(_) | Standing::Erased => Words::for_language(diary.language()),
        };
        let frame = chrome::frame(&words, diary);
        Ok(Self { diary, moment, words, frame })
    }

    /// The open companion, or the page that says why there is none.
    pub(super) fn companion(&mut self) -> Result<&mut Companion, Response> {
        match self.diary.stand(&self.moment) {
            Standing::Open(companion) => Ok(companion),
            Standing::Stuck(trouble) => Err(shut::cannot_open(&self.words, &self.frame, &trouble)),
            Standing::Erased => Err(shut::erased(&self.words, &self.frame)),
        }
    }

    /// Asks the companion.
    pub(super) fn ask(&mut self, request: Request) -> Result<Screen, Response> {
        Ok(self.answer(request)?.screen)
    }

    /// Asks the companion, with what a shell would have to do.
    pub(super) fn answer(&mut self, request: Request) -> Result<Answer, Response> {
        self.try_to(request)?.map_err(|trouble| self.trouble(&trouble))
    }

    /// Asks the companion where a refusal has a page of its own.
    fn try_to(&mut self, request: Request) -> Result<Result<Answer, Trouble>, Response> {
        let moment = self.moment;
        let answer = self.companion()?.ask(request, &moment);
        if matches!(answer, Err(Trouble::OpenAgain)) {
            self.diary.shut();
        }
        Ok(answer)
    }

    /// A new id to write under.
    pub(super) fn id(&mut self) -> Result<EntryId, Response> {
        let id = self.companion()?.new_id();
        id.map_err(|trouble| self.trouble(&trouble))
    }

    /// Writes what a form told. Whoever sends it again finds what was kept the first time. What the
    /// companion refuses comes back as a problem of the form.
    pub(super) fn write(
        &mut self,
        id: EntryId,
        told: Told,
        happened: Option<Stamp>,
    ) -> Result<Result<Response, Problem>, Response> {
        match self.try_to(Request::Write(Write { id, happened, told }))? {
            Ok(_) => {
                // Nobody waits for it to be faster; nothing depends on it.
                let _ = self.companion()?.tidy();
                Ok(Ok(see(&format!("/kept/{id}"))))
            }
            Err(Trouble::PutRight(refusal)) => {
                let says = Trouble::PutRight(refusal).say(&self.words);
                Ok(Err(Problem { field: String::new(), says }))
            }
            Err(trouble) => Err(self.trouble(&trouble)),
        }
    }

    /// Writes what a button told; a refusal is a page.
    pub(super) fn tell(&mut self, fields: &Fields, told: Told) -> Shown {
        let id = self.id_of(fields)?;
        match self.write(id, told, None)? {
            Ok(kept) => Ok(kept),
            Err(problem) => Err(self.sorry(StatusCode::UNPROCESSABLE_ENTITY, problem.says)),
        }
    }

    /// The id that a form carries.
    pub(super) fn id_of(&self, fields: &Fields) -> Result<EntryId, Response> {
        fields.first("id").and_then(|id| id.parse().ok()).ok_or_else(|| self.malformed())
    }

    /// A form of ours always carries what this one lacks.
    pub(super) fn malformed(&self) -> Response {
        self.sorry(StatusCode::BAD_REQUEST, self.words.text("page-malformed", &[]))
    }

    /// There is no such page.
    pub(super) fn nothing_here(&self) -> Response {
        self.sorry(StatusCode::NOT_FOUND, self.words.text("page-not-found", &[]))
    }

    /// What went wrong and what to do next, as a page.
    pub(super) fn trouble(&self, trouble: &Trouble) -> Response {
        let status = match trouble {
            Trouble::PutRight(Refusal::NoSuchEntry) => StatusCode::NOT_FOUND,
            Trouble::PutRight(_) => StatusCode::UNPROCESSABLE_ENTITY,
            _ => StatusCode::SERVICE_UNAVAILABLE,
        };
        self.sorry(status, trouble.say(&self.words))
    }

    pub(super) fn sorry(&self, status: StatusCode, says: String) -> Response {
        Page::new(&self.frame, self.words.text("page-sorry-title", &[]))
            .text([says])
            .presses(vec![Press::go(self.words.text("action-today", &[]), "/today")])
            .answer_as(status)
    }
}
