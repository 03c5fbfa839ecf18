//! Signing a plan and handing it over: the signed file, the code on the screen and on a sheet to print. Decides
//! that the spoken words stand on the screen only, never on the sheet, and that a code which does not fit
//! leads to the file. What is signed waits in memory until the desk is locked or she is done.

use std::sync::Arc;

use axum::response::Response;
use frond_core::handover::{HandOver, HandOverError, SpokenWords, key_words};
use frond_core::programme::check::load;
use frond_core::programme::plan::Programme;
use frond_core::programme::readback::read_back;
use frond_core::words::Words;

use super::chrome;
use super::visit::{Shown, Visit, see};
use crate::clinic::hand_over::{Code, Says, Way, code, draw};
use crate::pages::app::file;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Choice, Field, Form, How, Kind, Look, Page, Part, Press};
use crate::pages::upload::Upload;

/// The longest upload of a programme, in bytes.
pub(super) const MOST: usize = 1024 * 1024;

/// Neutral: whoever sees it in a folder learns nothing.
const FILE_NAME: &str = "frond-plan.json";

/// A plan on its way.
pub(crate) struct Handing {
    /// Its text as it was written.
    text: Arc<[u8]>,
    ready: Option<Ready>,
}

/// Signed.
struct Ready {
    handed: HandOver,
    way: Way,
    code: Result<Code, HandOverError>,
}

/// A plan that was written at this desk is to be handed over.
pub(super) fn begin(visit: &mut Visit<'_>, text: &[u8]) -> Response {
    visit.desk.handing = Some(Handing { text: text.into(), ready: None });
    see("/hand-over")
}

/// How the plan that waits is to be handed over; without one a file is asked for.
pub(super) fn choose(visit: &mut Visit<'_>) -> Shown {
    choose_page(visit, vec![])
}

fn choose_page(visit: &mut Visit<'_>, problems: Vec<Problem>) -> Shown {
    visit.clinic()?;
    let loaded = visit.desk.handing.as_ref().and_then(|handing| load(&handing.text).ok());
    let words = &visit.words;
    let page = Page::new(&visit.frame, words.text("handover-title", &[])).problems(problems);
    let Some((plan, _)) = loaded else {
        let kind = Kind::Line {
            input: "file",
            value: String::new(),
            mode: "",
            offers: vec![],
            short: false,
        };
        let mut form = Form::to("/hand-over", words.text("page-plan-read", &[]));
        form.upload = true;
        form.fields = vec![Field::new("file", words.text("handover-programme-file", &[]), kind)];
        return Ok(page.form(form).presses(vec![home(words)]).answer());
    };
    let mut form = Form::to("/hand-over/sign", words.text("handover-sign", &[]));
    let way = |value: &str, label: String| Choice { value: value.to_owned(), label, chosen: false };
    form.fields = vec![
        Field::new(
            "way",
            words.text("handover-way", &[]),
            Kind::One(vec![
                way("sealed", words.text("handover-way-sealed", &[])),
                way("open", words.text("handover-way-open", &[])),
            ]),
        )
        .hint(words.text("handover-way-hint", &[])),
    ];
    let title = words.text("action-plan", &[]);
    let parts = vec![Part::Points { points: read_back(&plan, words) }];
    Ok(page
        .text([whose(words, &plan)])
        .part(Part::Fold { title, open: false, parts })
        .form(form)
        .presses(vec![done(words), home(words)])
        .answer())
}

/// A programme file was chosen.
pub(super) fn chosen(visit: &mut Visit<'_>, upload: Upload) -> Shown {
    visit.clinic()?;
    if upload.file.is_empty() {
        let says = visit.words.text("page-error-file", &[]);
        return choose_page(visit, vec![Problem::at("file", says)]);
    }
    if let Err(error) = load(&upload.file) {
        let says = HandOverError::Programme(error).say(&visit.words);
        return choose_page(visit, vec![Problem::at("file", says)]);
    }
    Ok(begin(visit, &upload.file))
}

pub(super) fn sign(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let clinic = visit.clinic()?;
    let Some(text) = visit.desk.handing.as_ref().map(|handing| handing.text.clone()) else {
        return Ok(see("/hand-over"));
    };
    let way = match fields.first("way") {
        Some("open") => Way::Open,
        Some("sealed") => match SpokenWords::new(&*clinic.random) {
            Ok(words) => Way::Sealed(words),
            Err(_) => return Err(visit.sorry(HandOverError::NoRoom.say(&visit.words))),
        },
        _ => {
            let says = visit.words.text("handover-way-missing", &[]);
            return choose_page(visit, vec![Problem::at("way", says)]);
        }
    };
    let follows = clinic.keys.follows().last().cloned();
    let handed = match HandOver::sign(&text, &clinic.keys, follows) {
        Ok(handed) => handed,
        Err(error) => {
            let says = error.say(&visit.words);
            return choose_page(visit, vec![Problem::at("way", says)]);
        }
    };
    let (title, description) = said(&visit.words, &way);
    let says = Says { title: &title, description: &description };
    let code = match code(&handed, &way, &says, &*clinic.random) {
        Err(HandOverError::NoRoom) => {
            return Err(visit.sorry(HandOverError::NoRoom.say(&visit.words)));
        }
        code => code,
    };
    visit.desk.handing = Some(Handing { text, ready: Some(Ready { handed, way, code }) });
    Ok(see("/hand-over/ready"))
}

/// What a drawn code is called and what to do with it.
pub(crate) fn said(words: &Words, way: &Way) -> (String, String) {
    let description = match way {
        Way::Sealed(_) => words.text("handover-code-sealed", &[]),
        Way::Open => words.text("handover-code-open", &[]),
    };
    (words.text("handover-code-title", &[]), description)
}

/// The signed plan, ready to be given: key words, file, code with its spoken words.
pub(super) fn ready(visit: &mut Visit<'_>) -> Shown {
    visit.clinic()?;
    let Some(ready) = visit.desk.handing.as_ref().and_then(|handing| handing.ready.as_ref()) else {
        return Ok(see("/hand-over"));
    };
    let words = &visit.words;
    let text = |says: Vec<String>, class| Part::Text { says, class };
    let key = key_words(&ready.handed.key()).join(" ");
    let mut page = Page::new(&visit.frame, words.text("handover-ready", &[]))
        .text([whose(words, ready.handed.programme())])
        .part(Part::Card {
            title: words.text("handover-your-key", &[]),
            here: None,
            parts: vec![
                text(vec![key], "code"),
                text(vec![words.text("handover-your-key-how", &[])], ""),
            ],
        });
    match &ready.code {
        Ok(code) => {
            if let Way::Sealed(spoken) = &ready.way {
                let spoken: Vec<&str> = spoken.words().collect();
                page = page.part(Part::Card {
                    title: words.text("handover-say", &[]),
                    here: None,
                    parts: vec![
                        text(vec![spoken.join(" ")], "code"),
                        text(vec![words.text("handover-say-how", &[])], ""),
                    ],
                });
            } else {
                page = page.part(Part::Notice {
                    says: vec![words.text("handover-is-open", &[])],
                    press: None,
                });
            }
            let title = words.text("handover-link-title", &[]);
            let parts = vec![text(vec![code.link.clone()], "code")];
            page = page
                .part(Part::Scan { svg: code.svg.clone() })
                .presses(vec![Press::go(words.text("handover-sheet", &[]), "/hand-over/sheet")])
                .part(Part::Fold { title, open: false, parts });
        }
        Err(error) => {
            page = page.part(Part::Notice { says: vec![error.say(words)], press: None });
        }
    }
    let save = Press {
        label: words.text("handover-save", &[]),
        how: How::Send { to: "/hand-over/file".to_owned(), fields: vec![] },
        look: if ready.code.is_ok() { Look::Equal } else { Look::Next },
    };
    Ok(page
        .text([words.text("handover-file-how", &[])])
        .presses(vec![save])
        .presses(vec![done(words), home(words)])
        .answer())
}

/// The sheet to print: the code and the words of the key, without the words that are spoken. It goes to the
/// patient, and so it is in the language of the plan where there is one.
pub(super) fn sheet(visit: &mut Visit<'_>) -> Shown {
    visit.clinic()?;
    let Some(ready) = visit.desk.handing.as_ref().and_then(|handing| handing.ready.as_ref()) else {
        return Ok(see("/hand-over"));
    };
    let Ok(code) = &ready.code else { return Ok(see("/hand-over/ready")) };
    let plan = ready.handed.programme();
    let words = Words::for_language(plan.language.as_str());
    let frame = chrome::frame(&words, true);
    let (title, description) = said(&words, &ready.way);
    let says = Says { title: &title, description: &description };
    let drawn = draw(code.link.clone(), &says).map_err(|error| visit.sorry(error.say(&words)))?;
    let key = key_words(&ready.handed.key()).join(" ");
    let from = words.text(
        "handover-sheet-from",
        &[
            ("clinic", plan.clinician.clinic.as_str().into()),
            ("number", i64::from(plan.revision.get()).into()),
        ],
    );
    Ok(Page::new(&frame, words.text("handover-sheet-title", &[]))
        .text([from, description.clone()])
        .part(Part::Scan { svg: drawn.svg })
        .text([words.text("handover-sheet-key", &[("words", key.into())])])
        .presses(vec![Press::go(words.text("desk-back", &[]), "/hand-over/ready")])
        .answer())
}

pub(super) fn save(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    visit.clinic()?;
    match visit.desk.handing.as_ref().and_then(|handing| handing.ready.as_ref()) {
        Some(ready) => Ok(file(FILE_NAME, "application/json", ready.handed.file())),
        None => Ok(see("/hand-over")),
    }
}

/// Nothing of it stays in memory.
pub(super) fn put_away(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    visit.clinic()?;
    visit.desk.handing = None;
    Ok(see("/"))
}

fn whose(words: &Words, plan: &Programme) -> String {
    words.text(
        "handover-whose",
        &[
            ("whom", plan.for_whom.as_str().into()),
            ("number", i64::from(plan.revision.get()).into()),
        ],
    )
}

fn done(words: &Words) -> Press {
    Press {
        label: words.text("handover-done", &[]),
        how: How::Send { to: "/hand-over/done".to_owned(), fields: vec![] },
        look: Look::Quiet,
    }
}

fn home(words: &Words) -> Press {
    Press::go(words.text("desk-back-home", &[]), "/")
}
