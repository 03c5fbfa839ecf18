//! How the diary is kept: its passphrase, its recovery phrase, the copy for elsewhere. What changes the diary
//! as a whole ends with a page of its own, so that looking at it again changes nothing.

use axum::http::StatusCode;
use axum::response::Response;
use frond_core::companion::{Recovery, Request, Told};
use frond_core::ports::OsRandom;
use frond_core::screens::{KeepingPart, KeepingScreen};
use frond_core::sealing::RecoveryPhrase;

use super::visit::{Shown, Visit, see};
use crate::pages::app::file;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Form, How, Kind, Look, Page, Part, Press};
use crate::secret;

/// The words asked from the paper, as on the command line.
const ASKED: [usize; 2] = [3, 9];

pub(super) fn keeping(visit: &mut Visit<'_>) -> Shown {
    visit.see(Request::Keeping)
}

pub(super) fn page(visit: &mut Visit<'_>, screen: &KeepingScreen) -> Shown {
    let mut parts = Vec::new();
    for part in &screen.trouble {
        parts.push(card(visit, part, true)?);
    }
    for part in &screen.parts {
        parts.push(card(visit, part, false)?);
    }
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title);
    for part in parts {
        page = page.part(part);
    }
    Ok(page.quiet(screen.limits.clone()).presses(presses).answer())
}

fn card(visit: &mut Visit<'_>, part: &KeepingPart, trouble: bool) -> Result<Part, Response> {
    let mut parts = vec![Part::Text { says: part.says.clone(), class: "" }];
    if let Some(action) = &part.action {
        let look = if trouble { Look::Equal } else { Look::Quiet };
        parts.push(Part::Presses { presses: vec![visit.press(action, look)?] });
    }
    Ok(Part::Card { title: part.title.clone(), here: None, parts })
}

/// What was done to the diary as a whole, after it was done.
pub(super) fn done(visit: &mut Visit<'_>, what: &str) -> Shown {
    visit.companion()?;
    let words = &visit.words;
    let (title, says) = match what {
        "passphrase" => (words.text("page-changed-title", &[]), words.text("page-changed", &[])),
        "phrase" => (words.text("page-phrase-title", &[]), words.text("page-phrase-done", &[])),
        "erased" => (words.text("page-erased-title", &[]), words.text("page-erased-some", &[])),
        _ => return Err(visit.nothing_here()),
    };
    let presses = vec![
        Press::go(words.text("action-keeping", &[]), "/keeping").looking(Look::Next),
        Press::go(words.text("action-today", &[]), "/today"),
    ];
    Ok(Page::new(&visit.frame, title).text([says]).presses(presses).answer())
}

pub(super) fn passphrase(visit: &mut Visit<'_>) -> Shown {
    new_passphrase(visit, vec![])
}

fn new_passphrase(visit: &mut Visit<'_>, problems: Vec<Problem>) -> Shown {
    visit.companion()?;
    let words = &visit.words;
    let secret = |name: &str, label: String| Field::new(name, label, line("password"));
    let form = Form {
        to: "/keeping/passphrase".to_owned(),
        upload: false,
        hidden: vec![],
        fields: vec![
            secret("new", words.text("page-new-passphrase", &[])),
            secret("again", words.text("page-new-passphrase-again", &[])),
        ],
        submit: words.text("action-new-passphrase", &[]),
        look: Look::Next,
        also: vec![],
    };
    Ok(Page::new(&visit.frame, words.text("action-new-passphrase", &[]))
        .problems(problems)
        .text([words.text("page-new-passphrase-how", &[])])
        .form(form)
        .presses(vec![back(visit)])
        .answer())
}

fn line(input: &'static str) -> Kind {
    Kind::Line { input, value: String::new(), mode: "", offers: vec![], short: false }
}

fn back(visit: &Visit<'_>) -> Press {
    Press::go(visit.words.text("action-keeping", &[]), "/keeping")
}

pub(super) fn changed(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    visit.companion()?;
    // Spaces at the ends belong to a passphrase.
    let new = fields.all("new").next().unwrap_or_default();
    if fields.all("again").next() != Some(new) {
        let says = visit.words.text("page-error-not-the-same", &[]);
        return new_passphrase(visit, vec![Problem::at("again", says)]);
    }
    let Ok(keeper) = secret::keeper(new) else {
        let says = visit.words.text("page-error-passphrase", &[]);
        return new_passphrase(visit, vec![Problem::at("new", says)]);
    };
    let moment = visit.moment;
    let done = visit
        .diary
        .whole(|companion, _| companion.new_keys(&keeper, Recovery::Keep, &moment).map(Some));
    done.map_err(|trouble| visit.trouble(&trouble))?;
    visit.diary.keep_by(Box::new(keeper));
    Ok(see("/keeping/done/passphrase"))
}

/// Where the diary is written anew, it has to be by the passphrase that opens it every day.
pub(super) fn needs_passphrase(visit: &mut Visit<'_>) -> Result<(), Response> {
    visit.companion()?;
    if visit.diary.by_phrase {
        let says = visit.words.text("page-needs-passphrase", &[]);
        return Err(visit.sorry(StatusCode::CONFLICT, says));
    }
    Ok(())
}

/// Twelve new words; they open nothing until two of them were found again on the paper.
pub(super) fn phrase(visit: &mut Visit<'_>) -> Shown {
    needs_passphrase(visit)?;
    let phrase = RecoveryPhrase::new(&OsRandom)
        .map_err(|_| visit.trouble(&frond_core::companion::Trouble::TryAgain))?;
    let points = phrase.words().map(str::to_owned).collect();
    visit.diary.phrase = Some(phrase);
    let words = &visit.words;
    let next = Press {
        label: words.text("page-phrase-use", &[]),
        how: How::Send { to: "/keeping/phrase".to_owned(), fields: vec![] },
        look: Look::Next,
    };
    Ok(Page::new(&visit.frame, words.text("page-phrase-title", &[]))
        .text([words.text("page-phrase-how", &[])])
        .part(Part::Numbered { points })
        .presses(vec![next, back(visit)])
        .answer())
}

pub(super) fn phrase_written(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    needs_passphrase(visit)?;
    // Sent again after it was done, or after a restart: there is nothing left to check.
    let Some(phrase) = &visit.diary.phrase else { return Ok(see("/keeping")) };
    let name = |number: usize| format!("word-{number}");
    let typed = ASKED.map(|number| fields.first(&name(number)).map(str::to_lowercase));
    let right = ASKED.map(|number| phrase.words().nth(number - 1).map(str::to_owned));
    if typed != right {
        let asked = typed.iter().any(Option::is_some);
        let wrong = ASKED.iter().zip(typed.iter().zip(&right)).filter(|(_, (one, two))| one != two);
        let says = visit.words.text("page-error-word", &[]);
        let problems = wrong.map(|(number, _)| Problem::at(&name(*number), says.clone()));
        let problems = if asked { problems.collect() } else { vec![] };
        return check_words(visit, problems);
    }
    let Some(phrase) = visit.diary.phrase.take() else { return Ok(see("/keeping")) };
    let moment = visit.moment;
    let done = visit.diary.whole(|companion, keeper| {
        companion.new_keys(keeper, Recovery::By(&phrase), &moment).map(Some)
    });
    done.map_err(|trouble| visit.trouble(&trouble))?;
    Ok(see("/keeping/done/phrase"))
}

fn check_words(visit: &mut Visit<'_>, problems: Vec<Problem>) -> Shown {
    let words = &visit.words;
    let fields = ASKED
        .map(|number| {
            let label = words.text("page-phrase-word", &[("number", number.into())]);
            Field::new(&format!("word-{number}"), label, line("text"))
        })
        .into();
    let form = Form {
        to: "/keeping/phrase".to_owned(),
        upload: false,
        hidden: vec![],
        fields,
        submit: words.text("page-keep", &[]),
        look: Look::Next,
        also: vec![],
    };
    Ok(Page::new(&visit.frame, words.text("page-phrase-title", &[]))
        .problems(problems)
        .form(form)
        .presses(vec![back(visit)])
        .answer())
}

pub(super) fn copy(visit: &mut Visit<'_>) -> Shown {
    let kept = visit.send("/keeping/copy/kept", vec![])?;
    let words = &visit.words;
    let press = |label: String, how, look| Press { label, how, look };
    let save = How::Send { to: "/keeping/copy".to_owned(), fields: vec![] };
    Ok(Page::new(&visit.frame, words.text("action-make-copy", &[]))
        .text([words.text("page-copy-how", &[])])
        .presses(vec![
            press(words.text("page-copy-file", &[]), save, Look::Next),
            press(words.text("page-copy-kept", &[]), kept, Look::Equal),
            back(visit),
        ])
        .answer())
}

pub(super) fn copy_file(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    let now = visit.moment.now;
    let sealed = visit.companion()?.copy_for_elsewhere(&now);
    let sealed = sealed.map_err(|trouble| visit.trouble(&trouble))?;
    Ok(file(&format!("copy-{}.age", now.day()), "application/octet-stream", sealed))
}

pub(super) fn copy_kept(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    visit.tell(fields, Told::CopyKept)
}
