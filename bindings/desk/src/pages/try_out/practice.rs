//! Practising: what can be practised, the one question before trainers, the practice with its clock, one
//! found again, what is shown after a stop. Stop is always the first button; each button names the part it
//! was shown for, so that a second tap does not do more.

use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use frond_core::companion::{Request, Told};
use frond_core::diary::entry::{Asked, ScreeningAnswer};
use frond_core::practice::breathing::PresetId;
use frond_core::practice::timed::{Choice, Event, State};
use frond_core::programme::values::{Minutes, Size};
use frond_core::safety::{AfterAnythingNew, AnythingNew};
use frond_core::screens::{
    AnythingNewScreen, Begin, Does, FoundScreen, PracticesScreen, RunningScreen, StoppedScreen,
};
use frond_core::whole::View;

use super::visit::{Shown, Visit, see};
use crate::pages::form::{Fields, code, decode};
use crate::pages::parts::{Clock, How, Look, Page, Part, Press};

pub(super) fn choose_page(visit: &mut Visit<'_>, screen: &PracticesScreen) -> Shown {
    let mut cards = Vec::new();
    for (number, option) in screen.options.iter().enumerate() {
        let look = if number == 0 { Look::Next } else { Look::Equal };
        let press = visit.press(&option.action, look)?;
        cards.push(Part::Card {
            title: option.name.clone(),
            here: None,
            parts: vec![
                Part::Text { says: vec![option.instruction.clone()], class: "" },
                Part::Text { says: option.parts.clone(), class: "quiet" },
                Part::Presses { presses: vec![press] },
            ],
        });
    }
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title)
        .text([screen.enough.clone()])
        .text(screen.empty.clone());
    for card in cards {
        page = page.part(card);
    }
    Ok(page.presses(presses).quiet(screen.cautions.clone()).answer())
}

/// The fields that say what is to begin.
pub(super) fn begin_fields(begin: Begin) -> Vec<(&'static str, String)> {
    let what = |what: &str| ("what", what.to_owned());
    match begin {
        Begin::Step => vec![what("step")],
        Begin::Practice(number) => vec![what("practice"), ("number", number.to_string())],
        Begin::Breathing { preset, minutes } => {
            vec![
                what("breathing"),
                ("preset", preset_code(preset)),
                ("minutes", minutes.get().to_string()),
            ]
        }
    }
}

fn preset_code(preset: PresetId) -> String {
    match preset {
        PresetId::Plan(number) => number.to_string(),
        PresetId::Even => "even".to_owned(),
    }
}

fn preset_of(text: &str) -> Option<PresetId> {
    match text {
        "even" => Some(PresetId::Even),
        number => number.parse().ok().map(PresetId::Plan),
    }
}

fn begin_of(fields: &Fields) -> Option<Begin> {
    Some(match fields.first("what")? {
        "step" => Begin::Step,
        "practice" => Begin::Practice(fields.first("number")?.parse().ok()?),
        "breathing" => Begin::Breathing {
            preset: preset_of(fields.first("preset")?)?,
            minutes: Minutes::new(fields.first("minutes")?.parse().ok()?).ok()?,
        },
        _ => return None,
    })
}

/// Begins; what has to come before it is shown instead.
pub(super) fn begin(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let Some(begin) = begin_of(fields) else { return Err(visit.malformed()) };
    begun(visit, begin)
}

fn begun(visit: &mut Visit<'_>, begin: Begin) -> Shown {
    let seen = visit.pressed(Does::Begin(begin))?;
    visit.lead_on(seen.view)
}

pub(super) fn new_page(visit: &mut Visit<'_>, screen: &AnythingNewScreen) -> Shown {
    let answers = screen.answers.iter().map(|choice| Press {
        label: choice.label.clone(),
        how: How::Send {
            to: "/practice/new".to_owned(),
            fields: vec![("answer", code(&choice.answer)), ("id", screen.id.to_string())],
        },
        look: Look::Equal,
    });
    let answers = answers.collect();
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title);
    if !screen.grounding.is_empty() {
        page = page.part(Part::Points { points: screen.grounding.clone() });
    }
    Ok(page
        .text([screen.not_sure.clone()])
        .presses(answers)
        .quiet(screen.cautions.clone())
        .presses(presses)
        .answer())
}

/// The one question, answered: what follows is the core's to say.
pub(super) fn new_told(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let Some(answer) = fields.first("answer").and_then(decode::<AnythingNew>) else {
        return Err(visit.malformed());
    };
    let told = Told::Screening {
        asked: Asked::AnythingNew,
        answer: match answer {
            AnythingNew::NothingNew => ScreeningAnswer::NothingNew,
            AnythingNew::Something => ScreeningAnswer::Something,
            AnythingNew::NotToday => ScreeningAnswer::NotToday,
        },
        signs: Vec::new(),
    };
    let kept = visit.tell(fields, told)?;
    match answer.then() {
        AfterAnythingNew::Begin => begun(visit, Begin::Step),
        AfterAnythingNew::ShowGroups => Ok(see("/signs")),
        AfterAnythingNew::Leave => Ok(kept),
    }
}

pub(super) fn run_page(visit: &mut Visit<'_>, screen: &RunningScreen) -> Shown {
    // Before anything was begun, beginning is what stands out.
    let begun = screen.view.state != State::Ready || screen.view.part > 0;
    let buttons: Vec<Press> = screen
        .buttons
        .iter()
        .map(|button| {
            let look = match button.event {
                Event::Stop if begun => Look::Next,
                Event::Begin { .. } if !begun => Look::Next,
                _ => Look::Equal,
            };
            during_press(button.event, &button.label, look)
        })
        .collect();
    let smaller: Vec<Press> = screen
        .smaller
        .iter()
        .map(|choice| during_press(choice.event, &choice.label, Look::Quiet))
        .collect();
    let clock = Clock {
        text: screen.clock.clone(),
        spoken: screen.clock_spoken.clone(),
        runs: screen.view.state == State::Running,
        millis: screen.view.part_millis,
        next_in: screen.view.next_in_millis,
        seen_every: screen.seen_every_millis,
        pacer: screen.pacer.as_ref().map(code),
        without: visit.words.text("page-clock-without", &[]),
    };
    let presses = visit.presses(&screen.actions)?;
    // The heading is the plan's own word for it, and that may say too much.
    let window = visit.words.text("action-practices", &[]);
    let mut page = Page::new(&visit.frame, &screen.title).in_window(window).script("/practice.js");
    if let Some(part) = &screen.part {
        page = page.under(part.clone());
    }
    page = page
        .presses(buttons)
        .part(Part::Clock(clock))
        .text(screen.line.clone())
        .text([screen.used.clone()])
        .text(screen.position.clone())
        .text(screen.instruction.clone());
    if !smaller.is_empty() {
        let title = visit.words.text("timed-smaller", &[]);
        let parts = vec![Part::Presses { presses: smaller }];
        page = page.part(Part::Fold { title, open: false, parts });
    }
    Ok(page.quiet(screen.cautions.clone()).presses(presses).answer())
}

fn during_press(event: Event, label: &str, look: Look) -> Press {
    let part = |part: usize| ("part", part.to_string());
    let fields = match event {
        Event::Begin { part: at } => vec![("event", "begin".to_owned()), part(at)],
        Event::Pause => vec![("event", "pause".to_owned())],
        Event::GoOn => vec![("event", "go_on".to_owned())],
        Event::Enough { part: at } => vec![("event", "enough".to_owned()), part(at)],
        Event::Smaller { part: at, size } => {
            vec![("event", "smaller".to_owned()), part(at), ("size", size.get().to_string())]
        }
        Event::Stop => vec![("event", "stop".to_owned())],
        Event::Seen => vec![("event", "seen".to_owned())],
    };
    let how = How::Send { to: "/practice/during".to_owned(), fields };
    Press { label: label.to_owned(), how, look }
}

fn event_of(fields: &Fields) -> Option<Event> {
    let part = || fields.first("part")?.parse().ok();
    Some(match fields.first("event")? {
        "begin" => Event::Begin { part: part()? },
        "pause" => Event::Pause,
        "go_on" => Event::GoOn,
        "enough" => Event::Enough { part: part()? },
        "smaller" => {
            let size = Size::new(fields.first("size")?.parse().ok()?).ok()?;
            Event::Smaller { part: part()?, size }
        }
        "stop" => Event::Stop,
        "seen" => Event::Seen,
        _ => return None,
    })
}

pub(super) fn during(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let Some(event) = event_of(fields) else { return Err(visit.malformed()) };
    let screen = visit.ask(Request::During(event))?;
    visit.lead_on(View::Screen(screen))
}

/// The script notes that the practice goes on; nobody waits for a page.
pub(super) fn seen(visit: &mut Visit<'_>, _: &Fields) -> Shown {
    visit.ask(Request::During(Event::Seen))?;
    Ok(StatusCode::NO_CONTENT.into_response())
}

pub(super) fn found_page(visit: &mut Visit<'_>, screen: &FoundScreen) -> Shown {
    let choices = screen.choices.iter().map(|(choice, label)| Press {
        label: label.clone(),
        how: How::Send { to: "/practice/found".to_owned(), fields: vec![("choice", code(choice))] },
        look: Look::Equal,
    });
    let choices = choices.collect();
    let presses = visit.presses(&screen.actions)?;
    Ok(Page::new(&visit.frame, &screen.title)
        .text(screen.lines.clone())
        .presses(choices)
        .presses(presses)
        .answer())
}

pub(super) fn found(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let choice = match fields.first("choice") {
        Some("go_on") => Choice::GoOn,
        Some("finish") => Choice::Finish,
        Some("discard") => Choice::Discard,
        _ => return Err(visit.malformed()),
    };
    let screen = visit.ask(Request::Found(choice))?;
    visit.lead_on(View::Screen(screen))
}

/// The place of the calming steps on the page after a stop.
const CALM: &str = "calm";

pub(super) fn stopped_page(visit: &mut Visit<'_>, screen: &StoppedScreen) -> Shown {
    let stopped = &screen.stopped;
    let answers = stopped.answers.iter().map(|choice| {
        let to = if choice.answer.shows_signs() { "/signs".to_owned() } else { format!("#{CALM}") };
        Press::go(&choice.label, to).looking(Look::Equal)
    });
    let answers = answers.collect();
    let dials: Vec<Press> = stopped
        .dial
        .iter()
        .map(|dial| Press {
            label: dial.label.clone(),
            how: How::Dial(dial.number.clone()),
            look: Look::Equal,
        })
        .collect();
    let presses: Result<Vec<Press>, Response> = [&screen.next]
        .into_iter()
        .chain(&screen.actions)
        .map(|action| visit.press(action, Look::Quiet))
        .collect();
    let presses = presses?;
    let mut page = Page::new(&visit.frame, &stopped.title)
        .text(stopped.let_out.clone())
        .part(Part::Heading { text: stopped.question.clone() })
        .presses(answers)
        .part(Part::Place { id: CALM });
    for calm in &stopped.calm {
        page = page.part(Part::Points { points: calm.steps.clone() });
    }
    Ok(page
        .text(stopped.call.clone())
        .presses(dials)
        .text([stopped.nobody_told.clone(), stopped.tomorrow.clone()])
        .presses(presses)
        .answer())
}
