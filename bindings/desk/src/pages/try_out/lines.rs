//! The forms of the records about the diary as a whole: a field for each line they word, and what has to be put
//! right in it. Decides the name of each field, how it is typed, and in which order such a page stands; the words are the
//! record's.

use frond_core::screens::{Action, FormField, FormLine, Problem as Wrong};

use super::visit::{Shown, Visit};
use crate::pages::form::Problem;
use crate::pages::parts::{Field, Form, Kind, Page};

/// What a field is sent as.
pub(super) fn name(field: FormField) -> String {
    match field {
        FormField::Code => "code".to_owned(),
        FormField::New => "new".to_owned(),
        FormField::Again => "again".to_owned(),
        FormField::Word { place } => format!("{WORD}{place}"),
        FormField::Phrase => "phrase".to_owned(),
        FormField::File => "file".to_owned(),
        FormField::Link => "link".to_owned(),
        FormField::SpokenWords => "words".to_owned(),
        FormField::From => "from".to_owned(),
        FormField::To => "to".to_owned(),
        FormField::Way => "way".to_owned(),
        FormField::Knowing => "although".to_owned(),
    }
}

/// How the names of the words from the paper begin; a number follows.
pub(super) const WORD: &str = "word-";

/// A line as a field.
pub(super) fn field(line: &FormLine) -> Field {
    let input = match line.field {
        FormField::Code | FormField::New | FormField::Again => "password",
        FormField::File => "file",
        FormField::From | FormField::To => "date",
        FormField::Word { .. }
        | FormField::Phrase
        | FormField::Link
        | FormField::SpokenWords
        | FormField::Way
        | FormField::Knowing => "text",
    };
    let value = line.value.clone();
    let kind = match line.field {
        FormField::Link => Kind::Passage { value },
        _ => Kind::Line { input, value, mode: "", offers: vec![], short: false },
    };
    let field = Field::new(&name(line.field), &line.label, kind);
    match &line.hint {
        Some(hint) => field.hint(hint),
        None => field,
    }
}

/// A form of these lines.
pub(super) fn form<'a>(
    to: &str,
    submit: &str,
    lines: impl IntoIterator<Item = &'a FormLine>,
) -> Form {
    let mut form = Form::to(to, submit);
    form.fields = lines.into_iter().map(field).collect();
    form
}

/// The page of a record that is one form.
pub(super) fn page(
    visit: &mut Visit<'_>,
    title: &str,
    says: &[String],
    wrong: &[Wrong],
    form: Form,
    actions: &[Action],
) -> Shown {
    let presses = visit.presses(actions)?;
    Ok(Page::new(&visit.frame, title)
        .problems(problems(wrong))
        .text(says.to_vec())
        .form(form)
        .presses(presses)
        .answer())
}

/// What has to be put right, at its fields.
pub(super) fn problems(wrong: &[Wrong]) -> Vec<Problem> {
    wrong.iter().map(|own| Problem::at(&name(own.field), own.says.clone())).collect()
}
