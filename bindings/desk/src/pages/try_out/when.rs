//! When something happened: a day and a time in a form, both optional, read in the zone of now. Nothing is
//! filled in beforehand; empty is now.

use chrono::{NaiveDate, NaiveTime};
use frond_core::moment::Stamp;

use super::visit::Visit;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Field, Kind};
use crate::when::When;

/// The question; left empty, it is now.
pub(super) fn field(visit: &Visit<'_>, label: String, fields: &Fields) -> Field {
    asked(visit, label, fields).hint(visit.words.text("page-when-hint", &[]))
}

/// The same where something is put right; left empty, the time stays as it was.
pub(super) fn changed(visit: &Visit<'_>, label: String, fields: &Fields) -> Field {
    asked(visit, label, fields).hint(visit.words.text("page-when-stays", &[]))
}

fn asked(visit: &Visit<'_>, label: String, fields: &Fields) -> Field {
    let words = &visit.words;
    let line = |name: &'static str, label: String, input: &'static str| {
        let value = fields.first(name).unwrap_or_default().to_owned();
        let kind = Kind::Line { input, value, mode: "", offers: vec![], short: false };
        Field::new(name, label, kind)
    };
    let parts = vec![
        line("day", words.text("page-day", &[]), "date"),
        line("time", words.text("page-time", &[]), "time"),
    ];
    Field::new("when", label, Kind::Together(parts))
}

/// The answer; `None` is now.
pub(super) fn read(visit: &Visit<'_>, fields: &Fields) -> Result<Option<Stamp>, Problem> {
    let words = &visit.words;
    let now = &visit.moment.now;
    let day = fields.first("day").map(|day| {
        day.parse::<NaiveDate>().map_err(|_| Problem::at("day", words.text("page-error-day", &[])))
    });
    let time = fields.first("time").map(|time| {
        let read = NaiveTime::parse_from_str(time, "%H:%M");
        read.or_else(|_| NaiveTime::parse_from_str(time, "%H:%M:%S"))
            .map_err(|_| Problem::at("time", words.text("page-error-time", &[])))
    });
    let when = match (day.transpose()?, time.transpose()?) {
        (None, None) => return Ok(None),
        (Some(day), None) => When::Day(day),
        (day, Some(time)) => When::Local(day.unwrap_or_else(|| now.day()).and_time(time)),
    };
    let stamp = when.seen_from(now);
    stamp.map(Some).map_err(|_| Problem::at("time", words.text("page-error-no-such-time", &[])))
}

/// A day of a form.
pub(super) fn day(
    visit: &Visit<'_>,
    fields: &Fields,
    name: &str,
) -> Result<Option<NaiveDate>, Problem> {
    let read = fields.first(name).map(|day| {
        day.parse::<NaiveDate>()
            .map_err(|_| Problem::at(name, visit.words.text("page-error-day", &[])))
    });
    read.transpose()
}
