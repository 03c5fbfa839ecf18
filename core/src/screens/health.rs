//! The questions about health: the whole list of cautions, and those about holding the breath. Nothing is
//! answered beforehand, there is no "no to all", and not being sure counts as yes.

use serde::Serialize;

use super::{Action, Does, Scene};
use crate::diary::entry::EntryId;
use crate::diary::state::State;
use crate::moment::Stamp;
use crate::safety::{
    Answer, AnythingNew, Asked, BreathCaution, FullList, HoldCondition, Revision, Screening, Sign,
    SignGroup, Why, nobody_told,
};
use crate::words::Words;

/// The whole list.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct ScreeningScreen {
    /// The id to send the answers under.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// Why it is asked now, where it is due.
    pub why: Option<String>,
    /// That not being sure is an answer and counts as yes.
    pub how: String,
    /// Said where it was sent before every question had an answer.
    pub left: Option<String>,
    /// The questions in groups, each group first asked as a whole.
    pub groups: Vec<QuestionGroup>,
    /// The answers to choose from, for groups and for questions.
    pub answers: Vec<AnswerChoice>,
    /// "Nobody has been told."
    pub nobody_told: String,
    /// "Done"
    pub send: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// Questions that are shown together.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct QuestionGroup {
    /// Which.
    pub group: SignGroup,
    /// Its neutral heading.
    pub name: String,
    /// "Is any of these so for you?"
    pub ask: String,
    /// What was answered to the group so far.
    pub answered: Option<Answer>,
    /// Heading of its questions one by one.
    pub each: String,
    /// Whether its questions are open: the group was not answered with no.
    pub open: bool,
    /// Its questions, gravest first.
    pub questions: Vec<Question>,
}

/// One question.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Question {
    /// About which sign.
    pub sign: Sign,
    /// Its words.
    pub ask: String,
    /// What was answered so far; "no" where its group was answered with no.
    pub answered: Option<Answer>,
}

/// One answer to choose.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct AnswerChoice {
    /// Which.
    pub answer: Answer,
    /// Its words.
    pub label: String,
}

fn each(words: &Words, group: SignGroup) -> String {
    let name = words.text(group.name_id(), &[]);
    words.text("page-questions-of", &[("group", name.into())])
}

impl ScreeningScreen {
    /// `so_far` is what was answered already; `sent` tells that it was sent as if it were complete.
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId, so_far: &FullList, sent: bool) -> Self {
        let words = scene.words;
        let open: Vec<SignGroup> = so_far.open_groups().collect();
        let [ask, not_sure] = AnythingNew::group_ids();
        let left = so_far.signs().err().filter(|_| sent);
        let groups = SignGroup::ALL.map(|group| QuestionGroup {
            group,
            name: words.text(group.name_id(), &[]),
            ask: words.text(ask, &[]),
            answered: so_far.group(group),
            each: each(words, group),
            open: open.contains(&group),
            questions: group
                .signs()
                .into_iter()
                .filter_map(|sign| {
                    let ask = words.text(sign.question_id()?, &[]);
                    Some(Question { sign, ask, answered: so_far.answered(sign) })
                })
                .collect(),
        });
        Self {
            id,
            title: words.text("screening-title", &[]),
            why: due(scene).map(|why| words.text(why.word_id(), &[])),
            how: words.text(not_sure, &[]),
            left: left.map(|unanswered| {
                words.text("screening-left", &[("count", unanswered.left.into())])
            }),
            groups: groups.into(),
            answers: answers(words),
            nobody_told: nobody_told(words),
            send: words.text("action-done", &[]),
            actions: vec![
                Action::new(words.text("action-stop-and-call", &[]), Does::StopAndCall),
                Action::new(words.text("action-not-now", &[]), Does::Today),
            ],
        }
    }
}

/// Why the whole list is due now, if it is.
pub(crate) fn due(scene: &Scene<'_>) -> Option<Why> {
    screening_due(scene.state, &scene.now)
}

/// Why the whole list of cautions is due now, if it is: at a plan's acceptance, at a new revision, after
/// a gap, and every so many days. Both numbers are the clinician's.
pub(crate) fn screening_due(state: &State, now: &Stamp) -> Option<Why> {
    let plan = state.rule().programme()?;
    let days_since = |then: &Stamp| {
        let days = now.day().signed_duration_since(then.day()).num_days();
        u32::try_from(days.max(0)).unwrap_or(u32::MAX)
    };
    let under = state.screened().and_then(|asked| asked.under.as_ref());
    let asked = state.screened().map(|asked| Asked {
        accepted: under.map(|(programme, number)| Revision { programme, number: *number }),
        days_ago: days_since(&asked.at),
    });
    let newest = state.recent().iter().max_by_key(|one| one.happened.millis());
    Screening {
        accepted: Some(Revision { programme: plan.id.as_str(), number: plan.revision.get() }),
        asked,
        days_since_session: newest.map(|one| days_since(&one.happened)),
        gap_days: gap_days(state),
        every_days: Some(u32::from(plan.screening_every_days.get())),
    }
    .due()
}

/// The clinician's length of a gap, in the rule in force on the present step.
fn gap_days(state: &State) -> Option<u32> {
    let plan = state.rule().programme()?;
    let rule = plan.rule_on(state.rule().step()?)?;
    rule.after_gap_days.map(|days| u32::from(days.get()))
}

/// The questions about breath holds.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct HoldQuestionsScreen {
    /// The id to send the answers under.
    pub id: EntryId,
    /// Heading.
    pub title: String,
    /// Why they are asked: without their answers no breath is held.
    pub why: String,
    /// The caution itself.
    pub caution: String,
    /// The questions.
    pub questions: Vec<HoldQuestion>,
    /// The answers to choose from.
    pub answers: Vec<AnswerChoice>,
    /// "Done"
    pub send: String,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// One question about breath holds.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct HoldQuestion {
    /// About which condition.
    pub condition: HoldCondition,
    /// Its words.
    pub ask: String,
}

impl HoldQuestionsScreen {
    pub(crate) fn new(scene: &Scene<'_>, id: EntryId) -> Self {
        let words = scene.words;
        let questions = HoldCondition::ALL.map(|condition| HoldQuestion {
            condition,
            ask: words.text(condition.question_id(), &[]),
        });
        Self {
            id,
            title: words.text("hold-questions-title", &[]),
            why: words.text("hold-questions-why", &[]),
            caution: words.text(BreathCaution::Holds.word_id(), &[]),
            questions: questions.into(),
            answers: answers(words),
            send: words.text("action-done", &[]),
            actions: vec![Action::new(words.text("action-not-now", &[]), Does::Breathing)],
        }
    }
}

fn answers(words: &Words) -> Vec<AnswerChoice> {
    Answer::ALL
        .map(|answer| AnswerChoice { answer, label: words.text(answer.word_id(), &[]) })
        .into()
}
