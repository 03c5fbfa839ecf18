//! The suggestion (rule sentence D2): what the clinician's own rule says for the next session only,
//! whose rule it is, why, and two equal choices.

use serde::Serialize;

use super::{Action, Does, ReasonGroup, Scene, plain, reasons};
use crate::diary::entry::{Chosen, EntryId};
use crate::programme::plan::Step;
use crate::programme::rule::UpCriterion;
use crate::programme::values::StepId;
use crate::progression::{Bar, Basis, Criterion, Outcome, OutcomeKind, RuleOf, Verdict};

/// The suggestion and its reasons.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SuggestionScreen {
    /// Heading.
    pub title: String,
    /// Which of the five outcomes; `None` where there is no rule to speak.
    pub outcome: Option<OutcomeKind>,
    /// What the rule says, in one or two sentences.
    pub says: Vec<String>,
    /// Whose rule it is.
    pub whose: Option<String>,
    /// What keeps a step up from being said.
    pub bars: Vec<String>,
    /// Every criterion, one tap away.
    pub reasons: Vec<ReasonGroup>,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// The choices; equals where there are two. Where nothing is to be chosen, going back comes first.
    pub actions: Vec<Action>,
}

impl SuggestionScreen {
    /// The screen; `shown` is the entry that records that this suggestion was shown.
    pub(crate) fn new(scene: &Scene<'_>, shown: Option<EntryId>) -> Self {
        let words = scene.words;
        let (outcome, whose) = match &scene.assessment.basis {
            Basis::NoProgramme | Basis::NoSteps { .. } => (None, None),
            Basis::Step { rule_of, has_rule, .. } => {
                let kind = scene.assessment.outcome.kind();
                let speaks = *has_rule || kind == OutcomeKind::PauseAndCall;
                (speaks.then_some(kind), has_rule.then(|| whose(scene, rule_of)))
            }
        };
        Self {
            title: words.text("suggestion-title", &[]),
            outcome,
            says: says(scene, outcome),
            whose,
            bars: bars(scene, outcome),
            reasons: reasons::groups(scene),
            cautions: vec![
                words.text("today-caution-never-hurt", &[]),
                words.text("today-caution-stop", &[]),
                words.text("today-caution-clinician", &[]),
            ],
            actions: actions(scene, outcome, shown),
        }
    }
}

/// What keeps a step up from being said, where staying is what is said.
fn bars(scene: &Scene<'_>, outcome: Option<OutcomeKind>) -> Vec<String> {
    let told = scene.assessment.outcome == Outcome::Hold { tell_clinician: true };
    let bars = scene.assessment.bars.iter().filter(|_| outcome == Some(OutcomeKind::Hold));
    // Where the clinician is to be told, that says it already.
    bars.filter(|bar| !(told && **bar == Bar::NotKnownUnmet))
        .map(|bar| reasons::bar(scene.words, *bar))
        .collect()
}

fn whose(scene: &Scene<'_>, rule_of: &RuleOf) -> String {
    scene.words.text(
        "suggestion-whose",
        &[
            ("clinician", rule_of.clinician.as_str().into()),
            ("revision", plain::whole(rule_of.revision.get())),
            ("date", plain::date(scene.words, rule_of.issued).into()),
        ],
    )
}

fn step_words(scene: &Scene<'_>, id: &StepId) -> String {
    let programme = scene.state.rule().programme();
    let step: Option<&Step> = programme.and_then(|plan| plan.step(id));
    step.map(|step| {
        let used = plain::step(scene.words, step).into();
        scene.words.text("suggestion-step", &[("name", step.name.as_str().into()), ("used", used)])
    })
    .unwrap_or_default()
}

fn says(scene: &Scene<'_>, outcome: Option<OutcomeKind>) -> Vec<String> {
    let words = scene.words;
    if outcome.is_none() {
        return match scene.assessment.basis {
            Basis::NoProgramme => vec![words.text("suggestion-no-programme", &[])],
            Basis::NoSteps { .. } => vec![words.text("suggestion-no-steps", &[])],
            Basis::Step { .. } => vec![words.text("suggestion-no-rule", &[])],
        };
    }
    let clinician = clinician(scene);
    match &scene.assessment.outcome {
        Outcome::PauseAndCall => vec![words.text("suggestion-pause", &[])],
        Outcome::StepBack { to } => vec![
            words.text("suggestion-step-back", &[("step", step_words(scene, to).into())]),
            words.text("suggestion-step-back-kind", &[]),
        ],
        Outcome::Hold { tell_clinician } => {
            let mut says =
                vec![words.text("suggestion-hold", &[]), words.text("suggestion-hold-kind", &[])];
            if *tell_clinician {
                let clinician = clinician.as_str().into();
                says.push(words.text("suggestion-tell-clinician", &[("clinician", clinician)]));
            }
            says
        }
        Outcome::ReadyToTalk => {
            vec![words.text("suggestion-talk", &[("clinician", clinician.as_str().into())])]
        }
        Outcome::StepUp { to } => vec![
            words.text("suggestion-step-up", &[("step", step_words(scene, to).into())]),
            words.text("suggestion-equal", &[]),
        ],
    }
}

fn clinician(scene: &Scene<'_>) -> String {
    let programme = scene.state.rule().programme();
    programme.map(|plan| plan.clinician.name.as_str().to_owned()).unwrap_or_default()
}

fn actions(scene: &Scene<'_>, outcome: Option<OutcomeKind>, shown: Option<EntryId>) -> Vec<Action> {
    let words = scene.words;
    let mut actions = Vec::new();
    let today = Action::new(words.text("action-today", &[]), Does::Today);
    match (outcome, shown) {
        (Some(OutcomeKind::PauseAndCall), _) => {
            let label = words.text("action-stop-and-call", &[]);
            actions.push(Action::new(label, Does::StopAndCall));
        }
        (Some(OutcomeKind::StepUp | OutcomeKind::StepBack), Some(shown)) => {
            let try_it = words.text("action-try", &[]);
            let stay = words.text("action-stay", &[]);
            actions.push(Action::new(try_it, Does::Choose { shown, chosen: Chosen::Try }));
            actions.push(Action::new(stay, Does::Choose { shown, chosen: Chosen::Stay }));
        }
        // Nothing is to be chosen, so nothing but going back stands first.
        _ => actions.push(today.clone()),
    }
    let asks_ready = scene.assessment.findings.iter().any(|finding| {
        matches!(finding.criterion, Criterion::Up(UpCriterion::FeelsReady {}))
            && finding.verdict != Verdict::Met
    });
    if outcome.is_some_and(|outcome| outcome != OutcomeKind::PauseAndCall) {
        let stay = !scene.state.rule().stay_here();
        let label = if stay {
            words.text("action-stay-here", &[])
        } else {
            words.text("action-stay-here-end", &[])
        };
        actions.push(Action::new(label, Does::StayHere { stay }));
    }
    // Last: where staying is what is said, nothing asks for more.
    if asks_ready && outcome == Some(OutcomeKind::Hold) {
        actions.push(Action::new(words.text("action-feels-ready", &[]), Does::FeelsReady));
    }
    if !actions.contains(&today) {
        actions.push(today);
    }
    actions
}
