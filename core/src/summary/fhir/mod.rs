//! A summary as an HL7 FHIR R4 Bundle, for clinics and researchers whose programs read that standard.
//!
//! It decides which resource says what. It leaves to [`super::Summary`] what was handed over: nothing stands in
//! a bundle that does not stand in the summary, and what was narrowed away stays away. The wish for time alone
//! and the plan's nickname have no place in it at all.
//!
//! | of the summary | in the bundle |
//! |---|---|
//! | the diary | an identifier, as subject of everything; there is no Patient |
//! | an accepted plan | CarePlan, one for each revision; its goals are Goal |
//! | a session | Observation, with minutes, size, ratings and how it ended as components |
//! | a sign that was noted | Observation; while it is open, a Flag beside it |
//! | a pause that stands | Flag |
//! | a step in use | Observation over the days it was used |
//! | a talk that closed something | Communication, about what it closed |
//! | activities, goals, time off, questions, the outcome | Observation |
//! | when it was made, what was left out, what is missing | Observation `record` |
//!
//! Ids are made from the diary's id and the entry's, so that the same entry has the same id in every bundle.
//! Every reference in a bundle leads to a resource of the same bundle. Where no LOINC code fits, the codes are
//! those of [`code::SYSTEM`]; the code system itself is published beside the schemas.

pub mod code;
mod form;
mod id;
mod plan;
mod sessions;
mod signs;
mod told;

pub use form::{Bundle, BundleEntry, Resource};

use super::form::Summary;
use super::looked::Looked;
use crate::moment::Stamp;
use crate::progression::FoldError;
use code::Code;
use form::{Named, Observation, Period, Reference, Value, coded, codes};
use id::Ids;

/// Whether words that a person wrote go along.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Texts {
    /// As the summary carries them.
    Carried,
    /// Left out: notes, questions, names of people, and the words of goals, activities and instructions.
    LeftOut,
}

impl Texts {
    /// The text, where texts go along.
    fn of(self, text: &str) -> Option<String> {
        (self == Self::Carried).then(|| text.to_owned())
    }
}

/// What every resource is made with.
struct Making<'a> {
    looked: Looked<'a>,
    ids: Ids,
    texts: Texts,
    plans: Vec<plan::Accepted>,
    made: Vec<(String, Resource)>,
}

/// The bundle of a summary.
///
/// # Errors
/// [`FoldError`] when a programme in it cannot be read.
pub fn bundle(summary: &Summary, texts: Texts) -> Result<Bundle, FoldError> {
    let looked = Looked::through(summary)?;
    let ids = Ids::of(summary.diary);
    let plans = plan::accepted(&looked)?;
    let mut making = Making { looked, ids, texts, plans, made: Vec::new() };
    making.record();
    plan::add(&mut making);
    sessions::add(&mut making);
    signs::add(&mut making);
    told::add(&mut making);
    let id = making.ids.made(&summary.made.to_string());
    Ok(Bundle::collection(id, instant(&summary.made), making.made))
}

impl<'a> Making<'a> {
    /// Takes a resource in.
    fn push(&mut self, id: String, resource: Resource) {
        self.made.push((id, resource));
    }

    /// An observation about this diary, told by the person herself.
    fn observation(&self, id: &str, code: Code, told: Named) -> Observation {
        Observation {
            id: id.to_owned(),
            status: "final",
            category: vec![told.category()],
            code: coded(code),
            subject: self.subject(),
            performer: vec![self.subject()],
            ..Observation::default()
        }
    }

    /// Whom everything is about: a diary, by its id.
    fn subject(&self) -> Reference {
        Reference::by_diary(self.looked.summary.diary)
    }

    /// The plan in force at a moment, as a reference.
    fn plan_at(&self, at: &Stamp) -> Option<Reference> {
        let plan = self.plans.iter().rfind(|plan| plan.at.millis() <= at.millis())?;
        Some(Reference::to(&plan.id))
    }

    /// When it was made, what it covers, what was left out and what is missing.
    fn record(&mut self) {
        let summary = self.looked.summary;
        let (narrowed, marks) = (&summary.narrowed, &summary.marks);
        let id = self.ids.about(Code::Record);
        let mut record = self.observation(&id, Code::Record, Named::Survey);
        // Nobody rated this: the program counted it.
        record.performer = Vec::new();
        record.effective_date_time = Some(date_time(&summary.made));
        record.issued = Some(instant(&summary.made));
        let mut component = Vec::new();
        let day = |day: chrono::NaiveDate| Value::DateTime(day.to_string());
        component.extend(narrowed.from.map(|from| codes(Code::ShownFrom, day(from))));
        component.extend(narrowed.to.map(|to| codes(Code::ShownTo, day(to))));
        component.push(codes(Code::NotesLeftOut, Value::Boolean(narrowed.notes_left_out)));
        component.push(codes(Code::QuestionsLeftOut, Value::Boolean(narrowed.questions_left_out)));
        let count = |count: u64| Value::Integer(i32::try_from(count).unwrap_or(i32::MAX));
        component.push(codes(Code::MissingEntries, count(marks.missing_entries)));
        component.push(codes(Code::TimesRestored, count(u64::from(marks.restored))));
        component.push(codes(Code::TimesErased, count(u64::from(marks.erased))));
        record.component = component;
        self.push(id, Resource::Observation(Box::new(record)));
    }
}

/// A FHIR dateTime: to the second, with the offset it was lived in.
fn date_time(at: &Stamp) -> String {
    at.local().to_rfc3339_opts(chrono::SecondsFormat::Secs, false)
}

/// A FHIR instant.
fn instant(at: &Stamp) -> String {
    at.local().to_rfc3339_opts(chrono::SecondsFormat::Millis, false)
}

/// A period, open where it has no end yet. Where the clock was put back within it, it ends when it began: the standard
/// refuses an end before the start (per-1), and without an end it would seem to last.
fn period(from: &Stamp, to: Option<&Stamp>) -> Period {
    let end = to.map(|to| if to.millis() < from.millis() { from } else { to });
    Period { start: date_time(from), end: end.map(date_time) }
}
