//! Breathing: the patterns, each begun by its length, and how a change of breath is told.

use axum::response::Response;
use frond_core::companion::{Request, Told};
use frond_core::practice::breathing::CueKind;
use frond_core::screens::{BreathingScreen, Screen};

use super::practice::begin_fields;
use super::visit::{Shown, Visit, see};
use crate::pages::form::{Fields, code};
use crate::pages::parts::{Choice, Field, Form, How, Kind, Look, Page, Part, Press};

pub(super) fn page(visit: &mut Visit<'_>, screen: &BreathingScreen) -> Shown {
    let holds = screen.holds.as_ref().map(|holds| visit.press(holds, Look::Equal)).transpose()?;
    let presses = visit.presses(&screen.actions)?;
    let mut page = Page::new(&visit.frame, &screen.title).text([screen.enough.clone()]);
    for preset in &screen.presets {
        let lengths = preset.lengths.iter().map(|length| Press {
            label: length.label.clone(),
            how: How::Send { to: "/practice/begin".to_owned(), fields: begin_fields(length.begin) },
            look: Look::Equal,
        });
        page = page.part(Part::Card {
            title: preset.name.clone(),
            here: None,
            parts: vec![
                Part::Text { says: vec![preset.how.clone()], class: "" },
                Part::Text { says: vec![preset.rhythm.clone()], class: "quiet" },
                Part::Presses { presses: lengths.collect() },
                Part::Text { says: preset.notes.clone(), class: "quiet" },
            ],
        });
    }
    page = page.text(screen.refused.clone()).presses(holds.into_iter().collect());
    let belly = vec![Part::Points { points: screen.belly.clone() }];
    let title = screen.belly_title.clone();
    page = page.part(Part::Fold { title, open: false, parts: belly });
    let choices = screen.cues.iter().map(|cue| Choice {
        value: code(&cue.cue),
        label: cue.label.clone(),
        chosen: cue.on,
    });
    let mut form = Form::to("/breathing/cues", visit.words.text("page-keep", &[]));
    form.hidden = vec![("id", screen.id.to_string())];
    form.look = Look::Equal;
    form.fields = vec![Field::new("cue", &screen.cues_label, Kind::Any(choices.collect()))];
    Ok(page.form(form).presses(presses).answer())
}

/// Another choice of cues, into everything else that is set.
pub(super) fn cues(visit: &mut Visit<'_>, fields: &Fields) -> Shown {
    let screen = asked(visit)?;
    let mut settings = screen.settings;
    let wanted = |kind: CueKind| fields.has("cue", &code(&kind));
    settings.cues.tone = wanted(CueKind::Tone);
    settings.cues.vibration = wanted(CueKind::Vibration);
    settings.cues.word = wanted(CueKind::Word);
    visit.tell(fields, Told::Settings(settings))?;
    Ok(see("/breathing"))
}

fn asked(visit: &mut Visit<'_>) -> Result<BreathingScreen, Response> {
    match visit.ask(Request::Breathing)? {
        Screen::Breathing(screen) => Ok(screen),
        _ => Err(visit.nothing_here()),
    }
}
