//! The app's own code: asked for, chosen, changed, taken away. The code is asked for where anyone may look, so
//! that screen says nothing of what the program is for. Therefore no way to the cautions stands there, and no number of
//! the plan: in an emergency it names the one number that says nothing, that of the country.

use serde::Serialize;

use super::{FormField, FormLine, Problem, keeping};
use crate::screens::{Action, Does};
use crate::words::Words;

/// The code is asked for.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CodeScreen {
    /// Heading.
    pub title: String,
    /// What it says.
    pub says: Vec<String>,
    /// The code.
    pub code: FormLine,
    /// What was wrong.
    pub problems: Vec<Problem>,
    /// After several wrong codes: how long to wait. Nothing can be tried meanwhile.
    pub wait: Option<Wait>,
    /// Opens it.
    pub submit: String,
    /// What else can be done: the twelve words.
    pub actions: Vec<Action>,
}

/// A time to wait before another code can be tried.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Wait {
    /// How long from now, in milliseconds. Ask again when it is over.
    pub millis: u64,
    /// How long, in words, and that nothing is lost.
    pub says: Vec<String>,
}

/// A code is chosen, changed or taken away.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct SetCodeScreen {
    /// Heading.
    pub title: String,
    /// What a code does and does not do.
    pub says: Vec<String>,
    /// Choosing one.
    pub set: CodeForm,
    /// Taking it away; none where there is none.
    pub remove: Option<RemoveCodeForm>,
    /// What was wrong, in either form.
    pub problems: Vec<Problem>,
    /// What else can be done.
    pub actions: Vec<Action>,
}

/// A new code, typed twice.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct CodeForm {
    /// The new code.
    pub new: FormLine,
    /// The same once more.
    pub again: FormLine,
    /// Keeps it.
    pub submit: String,
}

/// Taking the code away, with the code in use.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct RemoveCodeForm {
    /// Heading.
    pub title: String,
    /// What it comes to.
    pub says: Vec<String>,
    /// The code in use.
    pub code: FormLine,
    /// Takes it away.
    pub submit: String,
    /// After several wrong codes: how long to wait.
    pub wait: Option<Wait>,
}

impl CodeScreen {
    /// `wait_millis`: what is left of a wait; 0: none.
    #[must_use]
    pub fn new(words: &Words, wait_millis: u64, problems: Vec<Problem>) -> Self {
        let forgotten = Action::new(words.text("phone-code-forgotten", &[]), Does::OpenByPhrase);
        let wait = Wait::of(words, wait_millis);
        let mut says = vec![words.text("phone-code-asks", &[])];
        if wait.is_none() {
            says.push(words.text("phone-code-wait-emergency", &[]));
        }
        Self {
            title: words.text("phone-code-title", &[]),
            says,
            code: FormLine::new(FormField::Code, words.text("phone-code", &[])),
            problems,
            wait,
            submit: words.text("phone-code-open", &[]),
            actions: vec![forgotten],
        }
    }
}

impl Wait {
    /// What is left of a wait; nothing where it is over.
    #[must_use]
    pub fn of(words: &Words, millis: u64) -> Option<Self> {
        if millis == 0 {
            return None;
        }
        // Rounded up: whoever comes back after what was said does not come too early.
        let seconds = millis.div_ceil(1000);
        let how_long = if seconds < 100 {
            words.text("phone-code-wait-seconds", &[("count", whole(seconds).into())])
        } else {
            let minutes = whole(seconds.div_ceil(60));
            words.text("phone-code-wait-minutes", &[("count", minutes.into())])
        };
        let says = vec![
            how_long,
            words.text("phone-code-wait-nothing-lost", &[]),
            words.text("phone-code-wait-emergency", &[]),
        ];
        Some(Self { millis, says })
    }
}

fn whole(number: u64) -> i64 {
    i64::try_from(number).unwrap_or(i64::MAX)
}

impl SetCodeScreen {
    /// `coded`: there is a code. `phrase`: there are twelve words, the only way in when it is forgotten.
    /// `wait_millis`: what is left of a wait after wrong codes; 0: none.
    #[must_use]
    pub fn new(
        words: &Words,
        coded: bool,
        phrase: bool,
        wait_millis: u64,
        problems: Vec<Problem>,
    ) -> Self {
        let title = if coded {
            words.text("action-code-change", &[])
        } else {
            words.text("action-code-choose", &[])
        };
        let mut says = vec![
            words.text("phone-code-what", &[]),
            words.text("phone-code-own", &[]),
            words.text("first-lock-forgotten", &[]),
        ];
        let mut actions = vec![keeping(words)];
        if !phrase {
            says.push(words.text("phone-code-phrase-first", &[]));
            let make = Action::new(words.text("action-make-phrase", &[]), Does::MakePhrase);
            actions.insert(0, make);
        }
        says.push(words.text("phone-code-no-wipe", &[]));
        Self {
            title,
            says,
            set: CodeForm {
                new: FormLine::new(FormField::New, words.text("phone-code-new", &[]))
                    .hint(words.text("phone-code-new-hint", &[])),
                again: FormLine::new(FormField::Again, words.text("phone-code-again", &[])),
                submit: words.text("phone-code-keep", &[]),
            },
            remove: coded.then(|| RemoveCodeForm {
                title: words.text("phone-code-remove-title", &[]),
                says: vec![words.text("phone-code-remove-says", &[])],
                code: FormLine::new(FormField::Code, words.text("phone-code-now", &[])),
                submit: words.text("phone-code-remove", &[]),
                wait: Wait::of(words, wait_millis),
            }),
            problems,
            actions,
        }
    }
}
