//! Pages while no diary is open: it does not open, or everything was erased.

use axum::http::StatusCode;
use axum::response::Response;
use frond_core::companion::{Recovery, Trouble};
use frond_core::screens::{Action, CannotOpenScreen, Does};
use frond_core::sealing::{RecoveryKeeper, RecoveryPhrase};
use frond_core::words::Words;

use super::diary::Standing;
use super::press::without_a_diary;
use super::visit::{Shown, Visit, see};
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Form, Frame, How, Kind, Look, Page, Press};
use crate::secret;

/// A diary that does not open: what is the matter, and what can be done.
pub(super) fn cannot_open(words: &Words, frame: &Frame, trouble: &Trouble) -> Response {
    let screen = CannotOpenScreen::new(words, trouble);
    let mut look = Look::Next;
    let mut presses = Vec::new();
    for step in &screen.steps {
        presses.extend(without_a_diary(step, look));
        look = Look::Equal;
    }
    Page::new(frame, &screen.title)
        .text([screen.says.clone()])
        .text(screen.calm)
        .text([screen.help])
        .presses(presses)
        .answer_as(StatusCode::SERVICE_UNAVAILABLE)
}

/// Everything was erased.
pub(super) fn erased(words: &Words, frame: &Frame) -> Response {
    let press = Press {
        label: words.text("action-start-new", &[]),
        how: How::Send { to: "/start".to_owned(), fields: vec![] },
        look: Look::Equal,
    };
    Page::new(frame, words.text("page-erased-title", &[]))
        .text([words.text("page-erased", &[])])
        .presses(vec![press])
        .answer()
}

/// Starts a new diary where there is none.
pub(super) fn start(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    match visit.diary.stand(&visit.moment) {
        // Sent twice: it is there already.
        Standing::Open(_) => return Ok(see("/today")),
        Standing::Stuck(trouble) if trouble != Trouble::NotADiary => {
            return Err(visit.trouble(&trouble));
        }
        Standing::Stuck(_) | Standing::Erased => {}
    }
    visit.diary.start().map_err(|trouble| visit.trouble(&trouble))?;
    visit.diary.invented = false;
    Ok(see("/"))
}

/// Opens with the recovery phrase, and sets a new passphrase with it.
pub(super) fn ask(visit: &mut Visit<'_>) -> Shown {
    opening(visit, vec![])
}

fn opening(visit: &mut Visit<'_>, problems: Vec<Problem>) -> Shown {
    if let Standing::Open(_) = visit.diary.stand(&visit.moment) {
        return Ok(see("/today"));
    }
    let words = &visit.words;
    let secret = |name: &str, label: String| {
        let kind = Kind::Line {
            input: "password",
            value: String::new(),
            mode: "",
            offers: vec![],
            short: false,
        };
        Field::new(name, label, kind)
    };
    let form = Form {
        to: "/open".to_owned(),
        upload: false,
        hidden: vec![],
        fields: vec![
            secret("phrase", words.text("page-restore-phrase", &[])),
            secret("new", words.text("page-new-passphrase", &[])),
            secret("again", words.text("page-new-passphrase-again", &[])),
        ],
        submit: words.text("page-open", &[]),
        look: Look::Next,
        also: vec![],
    };
    let again = Action { label: words.text("action-try-again", &[]), does: Does::Today };
    Ok(Page::new(&visit.frame, words.text("page-open-title", &[]))
        .problems(problems)
        .form(form)
        .presses(without_a_diary(&again, Look::Quiet).into_iter().collect())
        .answer())
}

pub(super) fn by_phrase(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let words = visit.words.clone();
    let new = fields.all("new").next().unwrap_or_default();
    let mut problems = Vec::new();
    let phrase = fields.first("phrase").and_then(|typed| RecoveryPhrase::parse(typed).ok());
    if phrase.is_none() {
        problems.push(Problem::at("phrase", words.text("page-error-phrase", &[])));
    }
    if fields.all("again").next() != Some(new) {
        problems.push(Problem::at("again", words.text("page-error-not-the-same", &[])));
    }
    let keeper = secret::keeper(new).ok();
    if keeper.is_none() {
        problems.push(Problem::at("new", words.text("page-error-passphrase", &[])));
    }
    let (Some(phrase), Some(keeper), true) = (phrase, keeper, problems.is_empty()) else {
        return opening(visit, problems);
    };
    visit.diary.keep_by(Box::new(RecoveryKeeper::new(phrase)));
    visit.diary.by_phrase = true;
    visit.diary.shut();
    if let Standing::Stuck(trouble) = visit.diary.stand(&visit.moment) {
        return opening(visit, vec![Problem::at("phrase", trouble.say(&words))]);
    }
    let moment = visit.moment;
    let done = visit
        .diary
        .whole(|companion, _| companion.new_keys(&keeper, Recovery::Keep, &moment).map(Some));
    done.map_err(|trouble| visit.trouble(&trouble))?;
    visit.diary.keep_by(Box::new(keeper));
    Ok(see("/keeping/done/passphrase"))
}
