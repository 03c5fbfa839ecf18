//! One request of a browser, as it reaches the diary. Decides in which order things happen: the core is asked,
//! and what it answers becomes a page or a way to one. Leaves what is answered to the core, and what a page
//! shows to the files beside this one.

use axum::http::StatusCode;
use axum::response::Response;
use frond_core::companion::{Answer, Duty, Refusal, Request, Told, Trouble, Write};
use frond_core::diary::entry::EntryId;
use frond_core::moment::{Moment, Stamp};
use frond_core::screens::{Does, Screen};
use frond_core::whole::{Seen, View, WholeRequest};
use frond_core::words::Words;

use super::diary::Diary;
use super::{chrome, shut};
use crate::pages::app::file;
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
        let words = diary.words().clone();
        let frame = chrome::frame(&words, diary);
        Ok(Self { diary, moment, words, frame })
    }

    /// The core may have opened the diary, whose language is its own.
    fn in_its_language(&mut self) {
        if self.diary.words().language().tag != self.words.language().tag {
            self.words = self.diary.words().clone();
        }
        self.frame = chrome::frame(&self.words, self.diary);
    }

    /// What an action leads to, as the core says.
    pub(super) fn pressed(&mut self, does: Does) -> Result<Seen, Response> {
        let moment = self.moment;
        let seen = self.diary.press(does, None, &moment);
        self.answered(seen)
    }

    /// The page of an action that is looked at.
    pub(super) fn look(&mut self, does: Does) -> Shown {
        let seen = self.pressed(does)?;
        self.show(&seen.view)
    }

    /// What concerns the diary as a whole.
    pub(super) fn whole(&mut self, request: WholeRequest) -> Result<Seen, Response> {
        let moment = self.moment;
        let seen = self.diary.whole(request, &moment);
        self.answered(seen)
    }

    fn answered(&mut self, seen: Result<Seen, Trouble>) -> Result<Seen, Response> {
        self.in_its_language();
        seen.map_err(|trouble| self.trouble(&trouble))
    }

    /// Asks the companion.
    pub(super) fn ask(&mut self, request: Request) -> Result<Screen, Response> {
        Ok(self.answer(request)?.screen)
    }

    /// Asks the companion, with what a shell would have to do.
    pub(super) fn answer(&mut self, request: Request) -> Result<Answer, Response> {
        self.try_to(request)?.map_err(|trouble| self.trouble(&trouble))
    }

    /// Asks the companion where a refusal has a page of its own. What stands in the way of it stands in the place
    /// of every page.
    fn try_to(&mut self, request: Request) -> Result<Result<Answer, Trouble>, Response> {
        let moment = self.moment;
        let seen = self.diary.ask(request, &moment);
        self.in_its_language();
        match seen {
            Ok(Seen { view: View::Screen(screen), duties }) => Ok(Ok(Answer { screen, duties })),
            Ok(Seen { view: in_the_way, .. }) => {
                Err(self.show(&in_the_way).unwrap_or_else(|instead| instead))
            }
            Err(trouble) => Ok(Err(trouble)),
        }
    }

    /// A new id to write under.
    pub(super) fn id(&mut self) -> Result<EntryId, Response> {
        self.diary.new_id().map_err(|trouble| self.trouble(&trouble))
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
                self.diary.tidy();
                Ok(Ok(see(&kept(id))))
            }
            Err(Trouble::PutRight(refusal)) => {
                let says = Trouble::PutRight(refusal).say(&self.words);
                Ok(Err(Problem { field: String::new(), says }))
            }
            Err(trouble) => Err(self.trouble(&trouble)),
        }
    }

    /// Writes what a form told; a refusal is a page.
    pub(super) fn tell(&mut self, fields: &Fields, told: Told) -> Shown {
        let id = self.id_of(fields)?;
        match self.write(id, told, None)? {
            Ok(kept) => Ok(kept),
            Err(problem) => Err(self.sorry(StatusCode::UNPROCESSABLE_ENTITY, problem.says)),
        }
    }

    /// Writes what a button told, under the id that the page gave it.
    pub(super) fn told(&mut self, fields: &Fields, does: Does) -> Shown {
        let id = self.id_of(fields)?;
        let moment = self.moment;
        let seen = self.diary.press(does, Some(id), &moment);
        match self.answered(seen)?.view {
            View::Screen(_) => {
                self.diary.tidy();
                Ok(see(&kept(id)))
            }
            in_the_way => self.show(&in_the_way),
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
    pub(super) fn trouble(&mut self, trouble: &Trouble) -> Response {
        let status = match trouble {
            Trouble::PutRight(Refusal::NoSuchEntry) => StatusCode::NOT_FOUND,
            Trouble::PutRight(_) => StatusCode::UNPROCESSABLE_ENTITY,
            _ => StatusCode::SERVICE_UNAVAILABLE,
        };
        let screen = self.diary.sorry(trouble);
        shut::sorry_as(self, &screen, status).unwrap_or_else(|instead| instead)
    }

    pub(super) fn sorry(&self, status: StatusCode, says: String) -> Response {
        Page::new(&self.frame, self.words.text("page-sorry-title", &[]))
            .text([says])
            .presses(vec![Press::go(self.words.text("action-today", &[]), "/today")])
            .answer_as(status)
    }
}

/// Where what was just kept is shown.
fn kept(id: EntryId) -> String {
    format!("/kept/{id}")
}

/// The file that is to be kept or shared, as one to save; otherwise what is shown.
pub(super) fn share(seen: Seen) -> Result<Response, View> {
    let mut made = None;
    for duty in seen.duties {
        match duty {
            Duty::ShareFile(file) => made = Some(file),
            // Nobody is rung from here, a page keeps no screen on by itself, and cannot remind.
            Duty::OpenDialler { .. } | Duty::KeepScreenOn | Duty::PlanReminders(_) => {}
        }
    }
    match made {
        Some(made) => Ok(file(&made.name, &made.mime, made.bytes)),
        None => Err(seen.view),
    }
}
