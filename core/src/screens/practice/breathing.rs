//! Breathing: which patterns there are, for how long, and what tells a change of breath. What the plan
//! prescribes comes first, then always the plain even breath (B4).

use serde::Serialize;

use super::super::settings::present;
use super::super::{Action, Does, Scene, plain};
use super::Begin;
use crate::diary::entry::{EntryId, Settings};
use crate::message_id;
use crate::practice::breathing::{
    CueKind, EVEN_MINUTES, Origin, Phase, Preset, PresetId, belly_position, notes, offered,
};
use crate::programme::values::Minutes;
use crate::words::Words;

/// Breathing.
#[derive(Clone, Serialize)]
pub struct BreathingScreen {
    /// Heading.
    pub title: String,
    /// "Today, breathing is enough", or that nothing is to be practised now.
    pub enough: String,
    /// The patterns, those of the plan first; none while nothing may go on.
    pub presets: Vec<PresetCard>,
    /// Patterns of the plan that are not paced, and why.
    pub refused: Vec<String>,
    /// The questions without whose answers no breath is held, where a plan sets a hold.
    pub holds: Option<Action>,
    /// Heading of the position for belly breathing.
    pub belly_title: String,
    /// How to lie for it, step by step.
    pub belly: Vec<String>,
    /// "Tell a change of breath by"
    pub cues_label: String,
    /// Ways to tell it without looking; all off until chosen.
    pub cues: Vec<CueChoice>,
    /// The id to send another choice of cues under.
    pub id: EntryId,
    /// Everything set, into which that choice goes.
    pub settings: Settings,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// One pattern.
#[derive(Clone, Serialize)]
pub struct PresetCard {
    /// Which.
    pub preset: PresetId,
    /// Its name.
    pub name: String,
    /// How to do it: the clinician's instruction, or that of the even breath.
    pub how: String,
    /// One breath, phase by phase.
    pub rhythm: String,
    /// For how long; each begins it.
    pub lengths: Vec<Length>,
    /// What stands beside it, the caution about over-breathing first (B10).
    pub notes: Vec<String>,
}

/// A length to choose.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Length {
    /// Its words.
    pub label: String,
    /// What it begins.
    pub begin: Begin,
}

/// A way to tell a change without looking.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CueChoice {
    /// Which.
    pub cue: CueKind,
    /// Its words.
    pub label: String,
    /// Whether it is chosen now.
    pub on: bool,
}

impl BreathingScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId) -> Self {
        let words = scene.words;
        let plan = scene.state.rule().programme();
        let found = offered(plan, &scene.state.conditions());
        let nothing = scene.nothing_continues();
        let holds_set = plan.is_some_and(|plan| {
            plan.practices
                .iter()
                .filter_map(|one| one.breath)
                .any(|breath| breath.hold_in_tenths.get() > 0 || breath.hold_out_tenths.get() > 0)
        });
        let ask = holds_set && !scene.state.holds_asked();
        let presets: Vec<&Preset> =
            if nothing { Vec::new() } else { found.presets.iter().collect() };
        let refused = found.refused.iter().map(|one| {
            let why = words.text(one.why.word_id(), &[]).into();
            words.text("breathing-refused", &[("name", one.name.as_str().into()), ("why", why)])
        });
        let chosen = scene.state.cues();
        let cue =
            |cue, label: &'static str, on| CueChoice { cue, label: words.text(label, &[]), on };
        Self {
            title: words.text("breathing-title", &[]),
            enough: scene.enough(),
            presets: presets.into_iter().map(|preset| card(scene, preset)).collect(),
            refused: refused.collect(),
            holds: ask.then(|| {
                Action::new(words.text("action-hold-questions", &[]), Does::HoldQuestions)
            }),
            belly_title: words.text("belly-title", &[]),
            belly: belly_position(words),
            cues_label: words.text("breathing-cues", &[]),
            cues: vec![
                cue(CueKind::Tone, message_id!("breathing-cue-tone"), chosen.tone),
                cue(CueKind::Vibration, message_id!("breathing-cue-vibration"), chosen.vibration),
                cue(CueKind::Word, message_id!("breathing-cue-word"), chosen.word),
            ],
            id,
            settings: present(scene),
            actions: vec![
                Action::new(words.text("action-log-breathing", &[]), Does::LogSession),
                Action::new(words.text("action-signs", &[]), Does::Signs),
                Action::new(words.text("action-today", &[]), Does::Today),
            ],
        }
    }
}

fn card(scene: &Scene<'_>, preset: &Preset) -> PresetCard {
    let words = scene.words;
    let (least, most) = match &preset.origin {
        Origin::Plan { minutes, .. } => (minutes.least.get(), minutes.most.get()),
        Origin::Even => EVEN_MINUTES,
    };
    let lengths = lengths(least, most).into_iter().filter_map(|minutes| {
        Some(Length {
            label: plain::minutes(words, minutes, minutes),
            begin: Begin::Breathing {
                preset: preset.id,
                minutes: Minutes::new(u64::from(minutes)).ok()?,
            },
        })
    });
    PresetCard {
        preset: preset.id,
        name: preset.name(words),
        how: preset.how(words).unwrap_or_else(|| instruction(scene, preset.id)),
        rhythm: rhythm(words, preset),
        lengths: lengths.collect(),
        notes: notes(words, &preset.pattern, preset.holds())
            .into_iter()
            .map(|note| note.text)
            .collect(),
    }
}

/// The least, the most, and one between where there is room; all lie in the span that is prescribed.
fn lengths(least: u8, most: u8) -> Vec<u8> {
    let mut lengths = vec![least, least.midpoint(most), most];
    lengths.dedup();
    lengths
}

fn instruction(scene: &Scene<'_>, id: PresetId) -> String {
    let PresetId::Plan(number) = id else { return String::new() };
    let plan = scene.state.rule().programme();
    let practice = plan.and_then(|plan| plan.practices.get(usize::from(number)));
    practice.map(|one| one.instruction.as_str().to_owned()).unwrap_or_default()
}

/// "In 5 seconds, out 5 seconds".
fn rhythm(words: &Words, preset: &Preset) -> String {
    let phases = preset.pattern.phases().map(|(phase, millis)| {
        let seconds = seconds(millis);
        match phase {
            Phase::In => words.text("breathing-rhythm-in", &[("seconds", seconds)]),
            Phase::Out => words.text("breathing-rhythm-out", &[("seconds", seconds)]),
            Phase::HoldIn | Phase::HoldOut => {
                words.text("breathing-rhythm-hold", &[("seconds", seconds)])
            }
        }
    });
    let phases: Vec<String> = phases.collect();
    phases.join(&words.text("common-then", &[]))
}

fn seconds(millis: u64) -> crate::words::Value {
    let tenths = u32::try_from(millis / 100).unwrap_or(u32::MAX);
    if tenths.is_multiple_of(10) {
        plain::whole(tenths / 10)
    } else {
        crate::words::Value::decimal(f64::from(tenths) / 10.0, 1)
    }
}
