//! Cautions: reporting one, the whole list, stop and call, and what was talked about.

use frond_core::diary::entry::{EntryId, SignKey};
use frond_core::safety::{Answer, HoldCondition, Sign, SignGroup, StopAndCall, Tier};
use frond_core::screens::{
    Action, AnswerChoice, HoldQuestion, HoldQuestionsScreen, OpenMatter, Question, QuestionGroup,
    ScreeningScreen, SignChoice, SignsScreen, SpokeScreen, StopScreen,
};

#[uniffi::remote(Record)]
pub struct SignsScreen {
    pub title: String,
    pub how: String,
    pub signs: Vec<SignChoice>,
    pub nobody_told: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct SignChoice {
    pub sign: Sign,
    pub group: String,
    pub question: String,
    pub tier: Tier,
}

#[uniffi::remote(Record)]
pub struct StopScreen {
    pub title: String,
    pub call: StopAndCall,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct SpokeScreen {
    pub title: String,
    pub empty: Option<String>,
    pub with_label: String,
    pub with_offer: Option<String>,
    pub when_label: String,
    pub signs: Vec<OpenMatter>,
    pub pause: Option<String>,
    pub note: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct OpenMatter {
    pub key: SignKey,
    pub text: String,
}

#[uniffi::remote(Record)]
pub struct ScreeningScreen {
    pub id: EntryId,
    pub title: String,
    pub why: Option<String>,
    pub how: String,
    pub left: Option<String>,
    pub groups: Vec<QuestionGroup>,
    pub answers: Vec<AnswerChoice>,
    pub nobody_told: String,
    pub send: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct QuestionGroup {
    pub group: SignGroup,
    pub name: String,
    pub ask: String,
    pub answered: Option<Answer>,
    pub each: String,
    pub open: bool,
    pub questions: Vec<Question>,
}

#[uniffi::remote(Record)]
pub struct Question {
    pub sign: Sign,
    pub ask: String,
    pub answered: Option<Answer>,
}

#[uniffi::remote(Record)]
pub struct AnswerChoice {
    pub answer: Answer,
    pub label: String,
}

#[uniffi::remote(Record)]
pub struct HoldQuestionsScreen {
    pub id: EntryId,
    pub title: String,
    pub why: String,
    pub caution: String,
    pub questions: Vec<HoldQuestion>,
    pub answers: Vec<AnswerChoice>,
    pub send: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct HoldQuestion {
    pub condition: HoldCondition,
    pub ask: String,
}
