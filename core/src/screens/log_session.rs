//! The form for logging a session. Nothing is preselected; no threshold, earlier rating or countdown is in
//! sight where a rating is asked (D2). The size actually used is asked, so that a slip earns nothing.

use serde::Serialize;

use super::{Action, Does, Scene, SignChoice, plain};
use crate::diary::entry::{Ended, EntryId, Reason, Session};
use crate::diary::resolve::Counted;
use crate::message_id;
use crate::moment::Stamp;
use crate::programme::values::{Position, Practice, RatingKind, Size};
use crate::safety::AnythingNew;
use crate::words::Words;

/// The form.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct LogSessionScreen {
    /// The id to send the answers under, so that sending twice writes once.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// What stands there now, where a session is put right; nothing in a new one.
    pub current: Option<PresentSession>,
    /// "What did you do?"
    pub practice_label: String,
    /// Kinds of practice of the plan; without a plan, those that need no trainer.
    pub practices: Vec<PracticeChoice>,
    /// "Which size did you use?"
    pub size_label: String,
    /// Sizes of the plan, smallest first, and that another size can be written in.
    pub sizes: Vec<SizeChoice>,
    /// Asked before a size that the plan does not have is taken: a label is easily typed for a size.
    pub size_other: String,
    /// "In which position?"
    pub position_label: String,
    /// Positions.
    pub positions: Vec<PositionChoice>,
    /// "For how long, pauses left out?"
    pub minutes_label: String,
    /// "How did it end?"
    pub ended_label: String,
    /// Endings with their reasons.
    pub ended: Vec<EndedChoice>,
    /// Ratings asked, in order.
    pub ratings: Vec<RatingQuestion>,
    /// "Anything new since last time?"
    pub signs_label: String,
    /// Every caution that can be reported, in groups. None is chosen.
    pub signs: Vec<SignChoice>,
    /// "A note for yourself".
    pub note_label: String,
    /// Nobody reads this until you share it, and whom to call.
    pub note_caution: String,
    /// The usual cautions.
    pub cautions: Vec<String>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// A session that is put right, as it counts now. It is hers, so it may be filled in.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PresentSession {
    /// The entry.
    pub of: EntryId,
    /// When it began.
    pub happened: Stamp,
    /// The same in words.
    pub when: String,
    /// Everything it tells. What the form does not ask goes along unchanged: earlier parts, and the signs
    /// noted with it.
    pub session: Session,
    /// "The first version stays visible to you."
    pub says: Vec<String>,
    /// Signs noted with it, in words. They stay.
    pub signs: Vec<String>,
}

/// A kind of practice.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PracticeChoice {
    /// Which.
    pub practice: Practice,
    /// Its words.
    pub label: String,
}

/// A size.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SizeChoice {
    /// Widest diameter in tenths of a millimetre.
    pub widest_diameter_tenths_mm: Size,
    /// The clinician's label and the size in words.
    pub label: String,
}

/// A position.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct PositionChoice {
    /// Which.
    pub position: Position,
    /// Its words.
    pub label: String,
}

/// An ending.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct EndedChoice {
    /// Which.
    pub ended: Ended,
    /// Its words.
    pub label: String,
}

/// A rating question: 0 to 10 with words at both ends, and "rather not say".
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct RatingQuestion {
    /// What is rated.
    pub rating: RatingKind,
    /// The question.
    pub question: String,
    /// Words at 0.
    pub least: String,
    /// Words at 10.
    pub most: String,
    /// "Rather not say".
    pub rather_not_say: String,
}

impl LogSessionScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId) -> Self {
        let words = scene.words;
        let practices = practices(scene);
        let trainer = practices.iter().any(|choice| choice.practice == Practice::Trainer);
        Self {
            id,
            title: words.text("log-title", &[]),
            current: None,
            practice_label: words.text("log-practice", &[]),
            practices,
            size_label: words.text("log-size", &[]),
            size_other: words.text("log-size-other", &[]),
            sizes: sizes(scene),
            position_label: words.text("log-position", &[]),
            positions: positions(scene),
            minutes_label: words.text("log-minutes", &[]),
            ended_label: words.text("log-ended", &[]),
            ended: endings(scene, trainer),
            ratings: ratings(scene),
            signs_label: words.text(AnythingNew::question_id(), &[]),
            signs: super::signs::choices(scene),
            note_label: words.text("log-note", &[]),
            note_caution: words.text("log-note-caution", &[]),
            cautions: vec![
                words.text("today-caution-stop", &[]),
                words.text("today-caution-clinician", &[]),
            ],
            actions: vec![
                Action::new(words.text("action-signs", &[]), Does::Signs),
                Action::new(words.text("action-today", &[]), Does::Today),
            ],
        }
    }
}

impl LogSessionScreen {
    /// The form with what stands there now, to put a session right. A size, a practice, an ending or a rating that
    /// the present plan no longer has stands among the choices all the same.
    pub(crate) fn putting_right(
        scene: &Scene<'_>,
        id: EntryId,
        row: &Counted<'_>,
        session: &Session,
    ) -> Self {
        let words = scene.words;
        let of = row.first.id;
        let mut form = Self::new(scene, id);
        form.title = words.text("correct-title", &[]);
        if !form.practices.iter().any(|choice| choice.practice == session.practice) {
            form.practices.push(PracticeChoice {
                label: plain::practice(words, &session.practice, None),
                practice: session.practice.clone(),
            });
        }
        if let Some(size) = session.main_size()
            && !form.sizes.iter().any(|choice| choice.widest_diameter_tenths_mm == size)
        {
            form.sizes.push(SizeChoice {
                widest_diameter_tenths_mm: size,
                label: plain::size(words, size),
            });
            form.sizes.sort_by_key(|choice| choice.widest_diameter_tenths_mm);
        }
        if !form.ended.iter().any(|choice| choice.ended == session.ended) {
            form.ended.push(ending(words, session.ended));
        }
        for kind in RatingKind::ALL {
            let given = match kind {
                RatingKind::Peak => session.ratings.peak,
                RatingKind::Before => session.ratings.before,
                RatingKind::After => session.ratings.after,
                RatingKind::Worry => session.ratings.worry,
            };
            if given.is_some() && !form.ratings.iter().any(|asked| asked.rating == kind) {
                form.ratings.push(rating(scene, kind));
            }
        }
        form.current = Some(PresentSession {
            of,
            happened: row.happened,
            when: plain::when(words, row.happened, scene.now),
            session: session.clone(),
            says: vec![words.text("correct-stays-visible", &[])],
            signs: session
                .signs
                .iter()
                .map(|noted| words.text(noted.sign.name_id(), &[]))
                .collect(),
        });
        form.actions
            .insert(0, Action::new(words.text("action-open-entry", &[]), Does::Entry { of }));
        form
    }
}

/// Ratings asked: peak always, the others if the programme says so, in the order of a session.
fn asked(scene: &Scene<'_>) -> Vec<RatingKind> {
    let plan = scene.state.rule().programme();
    RatingKind::ALL
        .into_iter()
        .filter(|kind| {
            *kind == RatingKind::Peak || plan.is_some_and(|plan| plan.ratings_asked.contains(kind))
        })
        .collect()
}

/// The questions for the ratings asked, in order.
pub(super) fn ratings(scene: &Scene<'_>) -> Vec<RatingQuestion> {
    asked(scene).into_iter().map(|kind| rating(scene, kind)).collect()
}

fn rating(scene: &Scene<'_>, kind: RatingKind) -> RatingQuestion {
    let words = scene.words;
    let question = match kind {
        RatingKind::Peak => message_id!("log-ask-peak"),
        RatingKind::Before => message_id!("log-ask-before"),
        RatingKind::After => message_id!("log-ask-after"),
        RatingKind::Worry => message_id!("log-ask-worry"),
    };
    RatingQuestion {
        rating: kind,
        question: words.text(question, &[]),
        least: words.text("log-rating-least", &[]),
        most: words.text("log-rating-most", &[]),
        rather_not_say: words.text("log-rather-not-say", &[]),
    }
}

pub(super) fn practices(scene: &Scene<'_>) -> Vec<PracticeChoice> {
    let words = scene.words;
    let Some(plan) = scene.state.rule().programme() else {
        return [Practice::Breathing, Practice::BellyBreathing, Practice::Meditation]
            .map(|practice| PracticeChoice {
                label: plain::practice(words, &practice, None),
                practice,
            })
            .into();
    };
    let mut choices: Vec<PracticeChoice> = Vec::new();
    let of_steps = plan.steps.iter().map(|step| (&step.practice, None));
    let others = plan.practices.iter().map(|own| (&own.practice, Some(own.name.as_str())));
    for (practice, name) in of_steps.chain(others) {
        if !choices.iter().any(|choice| choice.practice == *practice) {
            choices.push(PracticeChoice {
                practice: practice.clone(),
                label: plain::practice(words, practice, name),
            });
        }
    }
    choices
}

fn sizes(scene: &Scene<'_>) -> Vec<SizeChoice> {
    let words = scene.words;
    let plan = scene.state.rule().programme();
    let steps = plan.map(|plan| plan.steps.as_slice()).unwrap_or_default();
    let mut sizes: Vec<SizeChoice> = Vec::new();
    for trainer in steps.iter().flat_map(|step| &step.parts).filter_map(|p| p.trainer.as_ref()) {
        let size = trainer.widest_diameter_tenths_mm;
        if !sizes.iter().any(|choice| choice.widest_diameter_tenths_mm == size) {
            let mm = plain::size(words, size).into();
            let label = trainer.label.as_str().into();
            sizes.push(SizeChoice {
                widest_diameter_tenths_mm: size,
                label: words.text("common-trainer", &[("label", label), ("size", mm)]),
            });
        }
    }
    sizes.sort_by_key(|choice| choice.widest_diameter_tenths_mm);
    sizes
}

fn positions(scene: &Scene<'_>) -> Vec<PositionChoice> {
    [Position::OnBack, Position::SideLying, Position::Sitting, Position::Standing, Position::Other]
        .map(|position| PositionChoice { position, label: plain::position(scene.words, position) })
        .into()
}

/// The endings that can be chosen; `trainer`: of a practice with trainers. Without one, nothing can fail to go in.
pub(super) fn endings(scene: &Scene<'_>, trainer: bool) -> Vec<EndedChoice> {
    let words = scene.words;
    let all =
        [Reason::Discomfort, Reason::DidNotGoIn, Reason::Upset, Reason::Interrupted, Reason::Other];
    let reasons = || all.into_iter().filter(|why| trainer || *why != Reason::DidNotGoIn);
    let endings = std::iter::once(Ended::Finished)
        .chain(reasons().map(Ended::Stopped))
        .chain(reasons().map(Ended::CouldNotStart));
    endings.map(|ended| ending(words, ended)).collect()
}

fn ending(words: &Words, ended: Ended) -> EndedChoice {
    let reason = |why| super::entries::reason(words, why).into();
    let label = match ended {
        Ended::Finished => words.text("log-finished", &[]),
        Ended::Stopped(why) => words.text("log-stopped", &[("reason", reason(why))]),
        Ended::CouldNotStart(why) => words.text("log-could-not-start", &[("reason", reason(why))]),
    };
    EndedChoice { ended, label }
}
