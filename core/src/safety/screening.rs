//! When the questions about signs are asked, and what counts as an answer.
//!
//! The full list comes at a programme's acceptance, at a new revision, after a gap, and every so
//! many days; both numbers are the clinician's. Before a session with trainers there is one
//! question only, because a long list before every session would soon be answered without reading.
//!
//! Nothing is answered beforehand, and "not sure" counts as yes. What a reported sign then does is
//! decided elsewhere.

use std::collections::BTreeMap;
use std::fmt;

use serde::{Deserialize, Serialize};

use super::group::SignGroup;
use super::sign::Sign;
use crate::message_id;

/// Why the full list is due.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// A programme was accepted, and the list was not yet answered under it.
    NewProgramme,
    /// The programme has a new revision.
    NewRevision,
    /// There was a gap without practice.
    Gap,
    /// The clinician's number of days has passed.
    Interval,
}

impl Why {
    /// The message id of the sentence above the list.
    pub fn word_id(self) -> &'static str {
        match self {
            Why::NewProgramme => message_id!("screening-new-programme"),
            Why::NewRevision => message_id!("screening-new-revision"),
            Why::Gap => message_id!("screening-gap"),
            Why::Interval => message_id!("screening-interval"),
        }
    }
}

/// One revision of a programme.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Revision<'a> {
    /// The programme's id.
    pub programme: &'a str,
    /// The number of the revision.
    pub number: u32,
}

/// When the full list was last answered.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Asked<'a> {
    /// The programme accepted at that time; none if there was none.
    pub accepted: Option<Revision<'a>>,
    /// Whole local days since then; 0 is today.
    pub days_ago: u32,
}

/// What decides whether the full list is due.
#[derive(Clone, Copy, PartialEq, Eq)]
pub struct Screening<'a> {
    /// The accepted programme, if there is one.
    pub accepted: Option<Revision<'a>>,
    /// When the list was last answered in full.
    pub asked: Option<Asked<'a>>,
    /// Whole local days since the last session of any kind; none before the first.
    pub days_since_session: Option<u32>,
    /// The clinician's length of a gap in days, if the programme has one.
    pub gap_days: Option<u32>,
    /// The clinician's interval in days, if the programme has one.
    pub every_days: Option<u32>,
}

impl Screening<'_> {
    /// Why the full list is due now, or none.
    ///
    /// Without a programme it is never due by itself: there is nobody's number to go by. A person
    /// can report a sign at any time.
    pub fn due(&self) -> Option<Why> {
        let now = self.accepted?;
        let Some(asked) = self.asked else { return Some(Why::NewProgramme) };
        match asked.accepted {
            Some(then) if then == now => {}
            Some(then) if then.programme == now.programme => return Some(Why::NewRevision),
            _ => return Some(Why::NewProgramme),
        }
        if self.gap_unanswered(asked) {
            return Some(Why::Gap);
        }
        let every = self.every_days?;
        (asked.days_ago >= every).then_some(Why::Interval)
    }

    /// Whether there is a gap, and the list was last answered before it had become one.
    fn gap_unanswered(&self, asked: Asked<'_>) -> bool {
        let (Some(gap), Some(since)) = (self.gap_days, self.days_since_session) else {
            return false;
        };
        since >= gap && since.saturating_sub(asked.days_ago) < gap
    }
}

/// The answer to one question of the full list.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// Yes.
    Yes,
    /// No.
    No,
    /// Not sure.
    NotSure,
}

impl Answer {
    /// The answers, in the order to offer them.
    pub const ALL: [Answer; 3] = [Answer::Yes, Answer::No, Answer::NotSure];

    /// Whether the sign counts as there. Not being sure counts as yes.
    pub fn counts(self) -> bool {
        self != Answer::No
    }

    /// The message id of the answer's words.
    pub fn word_id(self) -> &'static str {
        match self {
            Answer::Yes => message_id!("answer-yes"),
            Answer::No => message_id!("answer-no"),
            Answer::NotSure => message_id!("answer-not-sure"),
        }
    }
}

/// The answers a person has given so far to the full list. Starts empty: nothing is preset.
///
/// A group is asked first ("Is any of these so?"), its questions folded below it. "No" to a group
/// answers its questions; "yes" and "not sure" open them, and each then needs an answer of its own.
#[derive(Clone, Default, PartialEq, Eq)]
pub struct FullList {
    groups: BTreeMap<SignGroup, Answer>,
    signs: BTreeMap<Sign, Answer>,
}

// What a person answered is nobody's business but hers.
impl fmt::Debug for FullList {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("FullList").finish_non_exhaustive()
    }
}

/// The list is not answered to the end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{left} questions have no answer yet. Answer each of them; \"not sure\" is an answer.")]
pub struct Unanswered {
    /// How many answers are missing.
    pub left: usize,
}

impl FullList {
    /// Notes the answer to a group. A later answer replaces an earlier one.
    pub fn answer_group(&mut self, group: SignGroup, answer: Answer) {
        self.groups.insert(group, answer);
    }

    /// Notes the answer to one question. A later answer replaces an earlier one.
    pub fn answer(&mut self, sign: Sign, answer: Answer) {
        self.signs.insert(sign, answer);
    }

    /// What was answered to a group as a whole.
    #[must_use]
    pub fn group(&self, group: SignGroup) -> Option<Answer> {
        self.groups.get(&group).copied()
    }

    /// What was answered group by group.
    #[must_use]
    pub fn groups(&self) -> &BTreeMap<SignGroup, Answer> {
        &self.groups
    }

    /// What was answered question by question; goes before that of its group.
    #[must_use]
    pub fn questions(&self) -> &BTreeMap<Sign, Answer> {
        &self.signs
    }

    /// What a question counts as so far; none while it has no answer.
    ///
    /// A question's own answer goes before that of its group.
    pub fn answered(&self, sign: Sign) -> Option<Answer> {
        let own = self.signs.get(&sign).copied();
        own.or_else(|| match self.groups.get(&sign.group()?) {
            Some(Answer::No) => Some(Answer::No),
            _ => None,
        })
    }

    /// The groups whose questions are to be shown open.
    pub fn open_groups(&self) -> impl Iterator<Item = SignGroup> {
        self.groups.iter().filter(|(_, answer)| answer.counts()).map(|(group, _)| *group)
    }

    /// The signs that are there, once every question has an answer.
    ///
    /// # Errors
    /// [`Unanswered`] before that, with how many answers are missing.
    pub fn signs(&self) -> Result<Vec<Sign>, Unanswered> {
        let left = Sign::asked().filter(|sign| self.answered(*sign).is_none()).count();
        if left > 0 {
            return Err(Unanswered { left });
        }
        Ok(Sign::asked().filter(|sign| self.answered(*sign).is_some_and(Answer::counts)).collect())
    }
}

/// The answer to the one question before a session with trainers.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum AnythingNew {
    /// Nothing new.
    NothingNew,
    /// Something is new.
    Something,
    /// Not today.
    NotToday,
}

/// What follows the one question.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum AfterAnythingNew {
    /// The session can begin.
    Begin,
    /// The groups of questions are shown.
    ShowGroups,
    /// Back to Today, with a kind word and without asking for a reason.
    Leave,
}

impl AnythingNew {
    /// The answers, in the order to offer them. None of them is chosen beforehand.
    pub const ALL: [AnythingNew; 3] =
        [AnythingNew::NothingNew, AnythingNew::Something, AnythingNew::NotToday];

    /// The message id of the question.
    pub fn question_id() -> &'static str {
        message_id!("anything-new-ask")
    }

    /// The message id of the answer's words.
    pub fn word_id(self) -> &'static str {
        match self {
            AnythingNew::NothingNew => message_id!("anything-new-nothing"),
            AnythingNew::Something => message_id!("anything-new-something"),
            AnythingNew::NotToday => message_id!("anything-new-not-today"),
        }
    }

    /// What follows.
    pub fn then(self) -> AfterAnythingNew {
        match self {
            AnythingNew::NothingNew => AfterAnythingNew::Begin,
            AnythingNew::Something => AfterAnythingNew::ShowGroups,
            AnythingNew::NotToday => AfterAnythingNew::Leave,
        }
    }

    /// The message id of the kind word after "not today".
    pub fn not_today_id() -> &'static str {
        message_id!("anything-new-not-today-said")
    }

    /// The message ids of the question about a group, and of the note that not being sure counts.
    pub fn group_ids() -> [&'static str; 2] {
        [message_id!("group-ask"), message_id!("not-sure-counts")]
    }
}
