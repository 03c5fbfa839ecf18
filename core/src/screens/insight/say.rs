//! How spans of days and fine numbers are said here.

use super::super::reading::gather::Gathered;
use super::super::reading::say;
use super::stretch::Numbered;
use crate::insight::Interval;
use crate::words::{Value, Words};

/// A share or a slope, with two decimal places.
pub(super) fn fine(number: f64) -> Value {
    Value::decimal(number, 2)
}

/// "0.12 to 0.34".
pub(super) fn interval(words: &Words, interval: &Interval) -> String {
    let ends = [("lower", fine(interval.lower)), ("upper", fine(interval.upper))];
    words.text("insight-interval", &ends)
}

/// "p 0.03" or "p under 0.001".
pub(super) fn p(words: &Words, p: f64) -> String {
    if p < 0.001 {
        words.text("insight-p-under", &[("p", Value::decimal(0.001, 3))])
    } else {
        words.text("insight-p", &[("p", Value::decimal(p, 3))])
    }
}

/// "Tue 3 Mar to Fri 20 Mar, revision 1".
pub(super) fn span(gathered: &Gathered<'_>, one: &Numbered<'_>) -> String {
    let values = [
        ("first", say::day(gathered, one.numbers.first).into()),
        ("last", say::day(gathered, one.numbers.last).into()),
        ("revision", one.stretch.revision.get().into()),
    ];
    gathered.words.text("insight-span", &values)
}
