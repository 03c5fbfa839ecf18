//! Accepting a plan: the whole of it in short cards, then "is this yours?", then "is this what you use
//! now?". Nothing is accepted by reading.

use serde::Serialize;

use super::handed::{self, Knowing};
use super::{Action, Does, Scene, plain};
use crate::diary::entry::EntryId;
use crate::handover::{Against, Arrival, Handed, Standing};
use crate::programme::plan::{IntendedFor, Programme};
use crate::programme::readback::read_back_to_person;
use crate::words::Words;

/// A plan to be accepted.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct AcceptScreen {
    /// The id to accept it under.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// It as it was handed over, to be accepted as it stands; none where it cannot be.
    #[serde(skip)]
    pub handed: Option<Handed>,
    /// Said where it cannot be used: what to do next.
    pub refused: Option<String>,
    /// The link is sealed: the spoken words are missing, or not the right ones.
    pub asks_words: bool,
    /// Who signed it.
    pub signed: Option<Card>,
    /// What is different from the plan in use.
    pub different: Option<Card>,
    /// The plan in short cards, in reading order.
    pub cards: Vec<Card>,
    /// The plan in plain sentences to the last line, folded.
    pub sentences: Vec<String>,
    /// What has to be chosen knowingly before it can be accepted; nothing is chosen beforehand.
    pub knowing: Vec<Knowing>,
    /// "Is this yours?"; nothing where it is in use already.
    pub yours: Option<String>,
    /// "Yes, this is mine"
    pub yes: String,
    /// What else can be done; first, that it is not hers.
    pub actions: Vec<Action>,
}

/// One card of a plan.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Card {
    /// What it is about.
    pub title: String,
    /// A sentence each.
    pub lines: Vec<String>,
}

impl AcceptScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId, handed: Handed) -> Self {
        let words = scene.words;
        let not_mine = Action::new(words.text("action-not-mine", &[]), Does::NotMine);
        let mut screen = Self {
            id,
            title: words.text("accept-title", &[]),
            handed: None,
            refused: None,
            asks_words: false,
            signed: None,
            different: None,
            cards: Vec::new(),
            sentences: Vec::new(),
            knowing: Vec::new(),
            yours: None,
            yes: words.text("accept-yes", &[]),
            actions: vec![not_mine],
        };
        match Arrival::of(&handed) {
            Ok(arrival) => {
                let plan = &arrival.programme;
                let in_use = scene.state.rule().programme();
                let pinned = scene.state.pinned();
                let standing = Standing::of(&arrival, Some(scene.state));
                screen.signed = Some(handed::who_signed(words, pinned, &arrival, &standing));
                screen.different = handed::different(words, in_use, plan, &standing);
                screen.cards = cards(words, plan);
                screen.sentences = read_back_to_person(plan, words);
                if standing.against != Against::InUse {
                    screen.handed = Some(handed);
                    screen.knowing = handed::knowing(words, &standing);
                    let whom = plan.for_whom.as_str().into();
                    screen.yours = Some(words.text("accept-yours", &[("whom", whom)]));
                }
            }
            Err(error) => {
                screen.asks_words = error.asks_words();
                screen.refused = Some(error.say(words));
            }
        }
        screen
    }
}

fn cards(words: &Words, plan: &Programme) -> Vec<Card> {
    let mut cards = vec![from(words, plan)];
    if !plan.steps.is_empty() {
        cards.push(steps(words, plan));
    }
    cards.extend(plan.practices.iter().map(|other| Card {
        title: other.name.as_str().to_owned(),
        lines: vec![
            plain::minutes(words, other.minutes.least.get(), other.minutes.most.get()),
            plain::schedule(words, &other.schedule),
            other.instruction.as_str().to_owned(),
        ],
    }));
    let rule = if plan.rule.is_some() || plan.steps.iter().any(|step| step.rule.is_some()) {
        words.text("accept-rule", &[])
    } else {
        words.text("accept-no-rule", &[])
    };
    cards.push(Card { title: words.text("accept-rule-title", &[]), lines: vec![rule] });
    cards.push(call(words, plan));
    if !plan.own_cautions.is_empty() {
        cards.push(Card {
            title: words.text("accept-cautions-title", &[]),
            lines: plan.own_cautions.iter().map(|own| own.as_str().to_owned()).collect(),
        });
    }
    cards.push(Card {
        title: words.text("accept-until-title", &[]),
        lines: vec![
            words.text("accept-until", &[("date", plain::date(words, plan.review_by).into())]),
        ],
    });
    cards
}

fn from(words: &Words, plan: &Programme) -> Card {
    let mut lines = vec![
        words.text("accept-for", &[("whom", plan.for_whom.as_str().into())]),
        words.text(
            "accept-from",
            &[
                ("clinician", plan.clinician.name.as_str().into()),
                ("clinic", plan.clinician.clinic.as_str().into()),
                ("date", plain::date(words, plan.issued_at.day()).into()),
                ("revision", plain::whole(plan.revision.get())),
            ],
        ),
    ];
    if plan.intended_for == IntendedFor::YoungerSafeguardingConfirmed {
        lines.push(words.text("accept-younger", &[]));
    }
    Card { title: words.text("accept-whose-title", &[]), lines }
}

fn steps(words: &Words, plan: &Programme) -> Card {
    let mut lines: Vec<String> = plan
        .steps
        .iter()
        .map(|step| {
            words.text(
                "accept-step",
                &[
                    ("name", step.name.as_str().into()),
                    ("used", plain::step(words, step).into()),
                    ("schedule", plain::schedule(words, &step.schedule).into()),
                ],
            )
        })
        .collect();
    if let Some(first) = plan.start_at.as_ref().and_then(|id| plan.step(id)) {
        lines.push(words.text("accept-start", &[("name", first.name.as_str().into())]));
        lines.push(first.instruction.as_str().to_owned());
    }
    Card { title: words.text("accept-steps-title", &[]), lines }
}

fn call(words: &Words, plan: &Programme) -> Card {
    let contact = words.text(
        "accept-contact",
        &[
            ("name", plan.contact.name.as_str().into()),
            ("phone", plan.contact.phone.as_str().into()),
            ("hours", plan.contact.hours.as_str().into()),
        ],
    );
    let advice = plan.contact.if_nobody_answers.as_str().into();
    let line = plan.out_of_hours.what_to_do.as_str().into();
    let emergency = [
        ("number", plan.emergency.number.as_str().into()),
        ("country", plan.emergency.country.as_str().into()),
    ];
    Card {
        title: words.text("accept-call-title", &[]),
        lines: vec![
            contact,
            words.text("call-nobody-answers", &[("advice", advice)]),
            words.text("call-out-of-hours", &[("line", line)]),
            words.text("accept-emergency", &emergency),
            words.text("call-emergency-elsewhere", &[]),
        ],
    }
}

/// "Is this what you use now?", after a plan was accepted or a diary restored.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct StepCheckScreen {
    /// "Is this what you use now?"
    pub title: String,
    /// The present step, in words; none where the plan has no steps.
    pub step: Option<String>,
    /// Said where there is nothing to confirm.
    pub empty: Option<String>,
    /// "Yes"
    pub next: Action,
    /// What else can be done: another step first.
    pub actions: Vec<Action>,
}

impl StepCheckScreen {
    pub(crate) fn new(scene: &Scene<'_>) -> Self {
        let words = scene.words;
        let step = scene.state.rule().step().map(|step| plain::step(words, step));
        let today = Action::new(words.text("action-today", &[]), Does::Today);
        let yes = Action::new(words.text("action-confirm-step", &[]), Does::ConfirmStep);
        let other = Action::new(words.text("action-other-step", &[]), Does::Ladder);
        Self {
            title: words.text("step-check-title", &[]),
            empty: step.is_none().then(|| words.text("ladder-empty", &[])),
            next: if step.is_some() { yes } else { today.clone() },
            actions: if step.is_some() { vec![other, today] } else { Vec::new() },
            step,
        }
    }
}
