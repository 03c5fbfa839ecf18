//! What is shown of the diary as a whole, and its forms.

use frond_core::diary::entry::EntryId;
use frond_core::screens::{
    Action, AddPlanScreen, CannotOpenScreen, CodeForm, CodeScreen, CopyScreen, DoneScreen,
    EraseDaysScreen, ErasedScreen, FormField, FormLine, NoDiaryScreen, OpenByPhraseScreen,
    PhraseCheckScreen, PhraseScreen, Problem, RemoveCodeForm, RestoreChoiceScreen,
    RestoreCopyScreen, RestoreScreen, SetCodeScreen, SorryScreen, Wait, WholeScreen,
};

#[uniffi::remote(Enum)]
pub enum WholeScreen {
    NoDiary(NoDiaryScreen),
    Code(CodeScreen),
    SetCode(SetCodeScreen),
    CannotOpen(CannotOpenScreen),
    Erased(ErasedScreen),
    Phrase(PhraseScreen),
    PhraseCheck(PhraseCheckScreen),
    Copy(CopyScreen),
    Restore(RestoreChoiceScreen),
    RestoreCopy(RestoreCopyScreen),
    Restoring(RestoreScreen),
    OpenByPhrase(OpenByPhraseScreen),
    EraseDays(EraseDaysScreen),
    AddPlan(AddPlanScreen),
    Done(DoneScreen),
    Sorry(SorryScreen),
}

#[uniffi::remote(Enum)]
pub enum FormField {
    Code,
    New,
    Again,
    Word { place: u8 },
    Phrase,
    File,
    Link,
    SpokenWords,
    From,
    To,
    Way,
    Knowing,
}

#[uniffi::remote(Record)]
pub struct FormLine {
    pub field: FormField,
    pub label: String,
    pub hint: Option<String>,
    pub value: String,
}

#[uniffi::remote(Record)]
pub struct Problem {
    pub field: FormField,
    pub says: String,
}

#[uniffi::remote(Record)]
pub struct NoDiaryScreen {
    pub title: String,
    pub says: Vec<String>,
    pub next: Action,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct CodeScreen {
    pub title: String,
    pub says: Vec<String>,
    pub code: FormLine,
    pub problems: Vec<Problem>,
    pub wait: Option<Wait>,
    pub submit: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct Wait {
    pub millis: u64,
    pub says: Vec<String>,
}

#[uniffi::remote(Record)]
pub struct SetCodeScreen {
    pub title: String,
    pub says: Vec<String>,
    pub set: CodeForm,
    pub remove: Option<RemoveCodeForm>,
    pub problems: Vec<Problem>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct CodeForm {
    pub new: FormLine,
    pub again: FormLine,
    pub submit: String,
}

#[uniffi::remote(Record)]
pub struct RemoveCodeForm {
    pub title: String,
    pub says: Vec<String>,
    pub code: FormLine,
    pub submit: String,
    pub wait: Option<Wait>,
}

#[uniffi::remote(Record)]
pub struct ErasedScreen {
    pub title: String,
    pub says: Vec<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct PhraseScreen {
    pub title: String,
    pub says: Vec<String>,
    pub words: Vec<String>,
    pub submit: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct PhraseCheckScreen {
    pub title: String,
    pub says: Vec<String>,
    pub asked: Vec<FormLine>,
    pub problems: Vec<Problem>,
    pub submit: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct CopyScreen {
    pub id: EntryId,
    pub title: String,
    pub says: Vec<String>,
    pub save: String,
    pub kept: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct RestoreChoiceScreen {
    pub title: String,
    pub says: Vec<String>,
    pub newest: Option<String>,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct RestoreCopyScreen {
    pub title: String,
    pub says: Vec<String>,
    pub file: FormLine,
    pub phrase: FormLine,
    pub problems: Vec<Problem>,
    pub submit: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct OpenByPhraseScreen {
    pub title: String,
    pub says: Vec<String>,
    pub phrase: FormLine,
    pub problems: Vec<Problem>,
    pub submit: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct EraseDaysScreen {
    pub title: String,
    pub says: Vec<String>,
    pub from: FormLine,
    pub to: FormLine,
    pub problems: Vec<Problem>,
    pub submit: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct AddPlanScreen {
    pub title: String,
    pub says: Vec<String>,
    pub file: FormLine,
    pub link: FormLine,
    pub words: FormLine,
    pub problems: Vec<Problem>,
    pub submit: String,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct DoneScreen {
    pub title: String,
    pub says: Vec<String>,
    pub next: Action,
    pub actions: Vec<Action>,
}

#[uniffi::remote(Record)]
pub struct SorryScreen {
    pub title: String,
    pub says: Vec<String>,
    pub actions: Vec<Action>,
}
