//! A practice with its clock. Stop is the first button in every state (W5); the clock on the screen is
//! drawn by the shell from `view`, and for breathing from `pacer`.

use serde::Serialize;

use super::super::{Action, Does, Scene, plain};
use crate::practice::breathing::{Breathing, CueKind, Phase, Tells};
use crate::practice::timed::{Event, SEEN_EVERY_MILLIS, State, Tick, Timer, View};
use crate::programme::values::{Practice, Size};
use crate::safety::{BreathCaution, CareNote};

/// A practice with its clock.
#[derive(Clone, Serialize)]
pub struct RunningScreen {
    /// What is practised.
    pub title: String,
    /// "Part 1 of 2", where there is more than one.
    pub part: Option<String>,
    /// What this part takes.
    pub used: String,
    /// Position, where a trainer is used.
    pub position: Option<String>,
    /// In the clinician's words.
    pub instruction: Option<String>,
    /// What to know in this state; none while there is nothing but the clock.
    pub line: Option<String>,
    /// Time practised of this part, "3:05".
    pub clock: String,
    /// What the clock shows, in words for those who listen.
    pub clock_spoken: String,
    /// Where it stands.
    pub view: View,
    /// The buttons, stop first.
    pub buttons: Vec<Button>,
    /// Smaller sizes, one tap away, the next smaller first.
    pub smaller: Vec<SmallerChoice>,
    /// What is told without looking when the clock next reaches something by itself; none where nothing was chosen
    /// for it or nothing is to be said. Where there is a breath to follow, that tells it.
    pub mark: Option<Mark>,
    /// The breath to follow.
    pub pacer: Option<Pacer>,
    /// How often a shell notes that the practice goes on, in milliseconds.
    pub seen_every_millis: u64,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// A button of the practice.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Button {
    /// What it does.
    pub event: Event,
    /// Its words.
    pub label: String,
}

/// A smaller size to go on with.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SmallerChoice {
    /// What it does.
    pub event: Event,
    /// Its words.
    pub label: String,
}

/// Told once when the clock reaches it, and never late.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Mark {
    /// In how many milliseconds.
    pub in_millis: u64,
    /// In which ways; never none.
    pub cues: Vec<CueKind>,
    /// What is said then, where spoken words were chosen.
    pub says: String,
}

/// A breath to follow. What instant asks what is the same pure function everywhere
/// ([`Breathing::at`]); a surface without the core draws it from these numbers.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Pacer {
    /// The phases of one breath that take time, in order.
    pub phases: Vec<PacerPhase>,
    /// One whole breath in milliseconds.
    pub breath_millis: u64,
    /// How many breaths.
    pub breaths: u64,
    /// The whole length in milliseconds.
    pub whole_millis: u64,
    /// How a change is told without looking; empty: not at all.
    pub cues: Vec<CueKind>,
    /// Said when the last breath is over.
    pub over: String,
}

/// One phase.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PacerPhase {
    /// Which.
    pub phase: Phase,
    /// Its length in milliseconds.
    pub millis: u64,
    /// The word to show, and to say where spoken words are chosen.
    pub word: String,
}

impl RunningScreen {
    pub(crate) fn new(
        scene: &Scene<'_>,
        timer: &Timer,
        tick: &Tick,
        breathing: Option<&Breathing>,
    ) -> Self {
        let words = scene.words;
        let view = timer.view(tick);
        let trainer = *timer.practice() == Practice::Trainer;
        let parts = plain::whole(i64::try_from(view.parts).unwrap_or(i64::MAX));
        let number = plain::whole(i64::try_from(view.part + 1).unwrap_or(i64::MAX));
        let step = scene.state.rule().step().filter(|step| step.practice == *timer.practice());
        Self {
            title: title(scene, timer),
            part: (view.parts > 1)
                .then(|| words.text("running-part", &[("number", number), ("parts", parts)])),
            used: used(scene, timer, &view),
            position: trainer.then(|| plain::position(words, timer.position())),
            instruction: step.map(|step| step.instruction.as_str().to_owned()),
            line: view.word_id().map(|id| words.text(id, &[])),
            clock: clock(view.part_millis),
            clock_spoken: plain::duration(words, view.part_millis / 1000),
            buttons: view
                .buttons()
                .into_iter()
                .filter_map(|event| {
                    let label = words.text(event.word_id()?, &[]);
                    Some(Button { event, label })
                })
                .collect(),
            smaller: smaller(scene, timer, view.part),
            mark: if breathing.is_some() { None } else { mark(scene, timer, tick, &view) },
            pacer: breathing.map(|breathing| pacer(scene, breathing)),
            seen_every_millis: SEEN_EVERY_MILLIS,
            cautions: cautions(scene, trainer, view.state == State::Ready),
            view,
            actions: vec![Action::new(words.text("action-signs", &[]), Does::Signs)],
        }
    }
}

/// The least or the end of a part, where there is something to say of it.
fn mark(scene: &Scene<'_>, timer: &Timer, tick: &Tick, view: &View) -> Option<Mark> {
    let in_millis = view.next_in_millis?;
    let cues: Vec<CueKind> = scene.state.cues().wanted().collect();
    let mut then = *tick;
    then.uptime.millis = then.uptime.millis.saturating_add(in_millis);
    let says = timer.view(&then).word_id().map(|id| scene.words.text(id, &[]))?;
    (!cues.is_empty()).then_some(Mark { in_millis, cues, says })
}

fn title(scene: &Scene<'_>, timer: &Timer) -> String {
    let plan = scene.state.rule().programme();
    let own = plan.and_then(|plan| {
        let mut others = plan.practices.iter();
        others.find(|one| one.practice == *timer.practice()).map(|one| one.name.as_str())
    });
    plain::practice(scene.words, timer.practice(), own)
}

/// "Trainer 2, 22 mm: 5 to 10 minutes" for the part that it is about.
fn used(scene: &Scene<'_>, timer: &Timer, view: &View) -> String {
    let words = scene.words;
    let whole = |millis: u64| u8::try_from(millis.div_ceil(60_000)).unwrap_or(u8::MAX);
    let minutes = plain::minutes(words, whole(view.least_millis), whole(view.most_millis));
    let Some(size) = timer.parts().get(view.part).and_then(|part| part.size()) else {
        return minutes;
    };
    let used = plain::trainer(scene, size).into();
    words.text("common-part", &[("used", used), ("minutes", minutes.into())])
}

/// Sizes of the plan below the one in use, the next smaller first.
fn smaller(scene: &Scene<'_>, timer: &Timer, part: usize) -> Vec<SmallerChoice> {
    let Some(now) = timer.size() else { return Vec::new() };
    let plan = scene.state.rule().programme();
    let steps = plan.map(|plan| plan.steps.as_slice()).unwrap_or_default();
    let mut sizes: Vec<Size> =
        steps.iter().flat_map(|step| &step.parts).filter_map(|part| part.size()).collect();
    sizes.retain(|size| *size < now);
    sizes.sort_unstable();
    sizes.dedup();
    sizes
        .into_iter()
        .rev()
        .map(|size| SmallerChoice {
            event: Event::Smaller { part, size },
            label: plain::trainer(scene, size),
        })
        .collect()
}

fn pacer(scene: &Scene<'_>, breathing: &Breathing) -> Pacer {
    let words = scene.words;
    let pattern = breathing.pattern();
    let phases = pattern.phases().map(|(phase, millis)| PacerPhase {
        phase,
        millis,
        word: words.text(Tells::Begins(phase).word_id(), &[]),
    });
    Pacer {
        phases: phases.collect(),
        breath_millis: pattern.breath_millis(),
        breaths: breathing.breaths(),
        whole_millis: breathing.whole_millis(),
        cues: scene.state.cues().wanted().collect(),
        over: words.text(Tells::Over.word_id(), &[]),
    }
}

/// The usual ones, then those that the clinician wrote. `begins`: a part is about to begin, and with it another trainer;
/// then also what to look at before.
fn cautions(scene: &Scene<'_>, trainer: bool, begins: bool) -> Vec<String> {
    let words = scene.words;
    let mut cautions = vec![words.text("today-caution-stop", &[])];
    if trainer {
        cautions.push(words.text("today-caution-never-hurt", &[]));
        if begins {
            cautions.extend(CareNote::ALL.map(|note| words.text(note.word_id(), &[])));
        }
    }
    cautions.push(words.text(BreathCaution::OverBreathing.word_id(), &[]));
    if let Some(plan) = scene.state.rule().programme() {
        cautions.extend(plan.own_cautions.iter().map(|own| own.as_str().to_owned()));
    }
    cautions
}

/// "3:05".
fn clock(millis: u64) -> String {
    let seconds = millis / 1000;
    format!("{}:{:02}", seconds / 60, seconds % 60)
}
