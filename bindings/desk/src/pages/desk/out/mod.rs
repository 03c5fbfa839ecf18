//! What goes out of the desk about one person: a letter to another clinician, and the newest summary in forms for
//! other programs. Decides addresses and forms; what may stand in a letter is decided in the core. Nothing that is
//! typed for a letter is kept: it goes along in the forms of the page that shows it, and is gone with it.

mod files;
mod letter;
#[cfg(test)]
mod tests;
mod typed;

use axum::Router;
use axum::response::Response;
use frond_core::summary::Received;

use super::state::Desk;
use super::visit::{Shown, Visit};
use crate::pages::app::{self, App};
use crate::pages::parts::{How, Look, Page, Press};

/// Every address of it.
pub(super) fn routes() -> Router<App<Desk>> {
    let shows_one = app::shows_one::<Desk>;
    let takes_one = app::takes_one::<Desk>;
    Router::new()
        .route("/people/{diary}/out", shows_one(ways))
        .route("/people/{diary}/out/list", takes_one(files::bundle))
        .route("/people/{diary}/out/table", takes_one(files::table))
        .route("/people/{diary}/letter", shows_one(letter::ask).merge(takes_one(letter::look)))
        .route("/people/{diary}/letter/pdf", takes_one(letter::pdf))
        .route("/people/{diary}/letter/page", takes_one(letter::html))
}

/// What can go out.
fn ways(visit: &mut Visit<'_>, named: &str) -> Shown {
    let opened = visit.cabinet()?;
    let (diary, _) = visit.diary(&opened, named)?;
    let words = &visit.words;
    let save = |label, to: &str| Press {
        label,
        how: How::Send { to: format!("/people/{diary}/out/{to}"), fields: vec![] },
        look: Look::Equal,
    };
    Ok(Page::new(&visit.frame, words.text("out-title", &[]))
        .text([words.text("out-says", &[])])
        .presses(vec![
            Press::go(words.text("out-letter", &[]), format!("/people/{diary}/letter")),
            save(words.text("out-save-bundle", &[]), "list"),
            save(words.text("out-save-table", &[]), "table"),
        ])
        .quiet([words.text("out-files-are-open", &[]), words.text("out-many", &[])])
        .presses(vec![Press::go(words.text("out-back", &[]), format!("/people/{diary}"))])
        .answer())
}

impl Visit<'_> {
    /// The newest summary of the diary that an address names.
    fn newest(&self, named: &str) -> Result<Received, Response> {
        let opened = self.cabinet()?;
        let (_, digest) = self.diary(&opened, named)?;
        self.received(&opened, digest.summary)
    }

    /// What stands in a summary could not be made into this.
    fn not_made(&self) -> Response {
        self.sorry(self.words.text("out-not-made", &[]))
    }
}
