//! `frond letter`: a letter from a summary, as a PDF.

use chrono::NaiveDate;
use frond_core::programme::values::{Line, Passage};
use frond_core::screens::{Agreed, Letter, LetterReader, LetterTyped};
use frond_core::summary::{Facts, SummaryError};
use frond_core::words::Words;
use serde::Deserialize;

use crate::args::LetterArgs;
use crate::clinic::letter::letter_pdf;
use crate::failure::{Failure, LANGUAGE};
use crate::opening::{self, refused};
use crate::pages::try_out::is_offered;
use crate::{file, print};

/// The longest file of what is typed, in bytes.
const TYPED_MOST: u64 = 64 * 1024;

/// What stands in the file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Given {
    person: Line,
    known_by: Option<Line>,
    to: Passage,
    from: Line,
    reached_at: Option<Passage>,
    date: NaiveDate,
    view: Option<Passage>,
    next: Option<Passage>,
    request: Passage,
}

/// Makes it.
pub(crate) fn letter(args: &LetterArgs) -> Result<(), Failure> {
    let Some(agreed) = Agreed::ticked(args.person_agreed) else {
        return Err(Failure::input(
            "No letter is made unless the person agreed to it. Ask, then give --person-agreed.",
        ));
    };
    let language = args.language.as_deref().unwrap_or(LANGUAGE);
    is_offered(language)?;
    let given: Given =
        serde_json::from_slice(&file::read(&args.typed, TYPED_MOST)?).map_err(|error| {
            let place = format!("line {}, column {}", error.line(), error.column());
            Failure::input(format!(
                "{}, {place}: this is not what a letter needs. See frond letter --help.",
                args.typed.display()
            ))
        })?;
    let received = opening::summary(&args.file, &args.open)?;
    let facts = Facts::of(&received.summary).map_err(|_| refused(SummaryError::Form))?;
    let reader = if args.copy { LetterReader::Person } else { LetterReader::Clinician };
    let letter =
        Letter::new(&given.typed(), &facts, agreed, &Words::for_language(language), reader);
    let pdf = letter_pdf(&letter).map_err(|error| Failure::Else(error.to_string()))?;
    file::write_new(&args.out, &pdf)?;
    print::show(args.json, &letter, |page, _| {
        page.line_as_it_is(&args.out.display().to_string());
    })
}

impl Given {
    fn typed(self) -> LetterTyped {
        let Self { person, known_by, to, from, reached_at, date, view, next, request } = self;
        LetterTyped { person, known_by, to, from, reached_at, date, view, next, request }
    }
}
