//! Small values: identities, days, choices.

use chrono::NaiveDate;
use frond_core::diary::entry::{Chosen, EntryId};
use frond_core::practice::breathing::PresetId;
use frond_core::programme::values::Minutes;

use crate::trouble::amiss;

uniffi::custom_type!(EntryId, String, {
    remote,
    lower: |id| id.to_string(),
    try_lift: |text| text.parse().map_err(|_| amiss("trouble-try-again")),
});

uniffi::custom_type!(NaiveDate, String, {
    remote,
    lower: |day| day.to_string(),
    try_lift: |text| text.parse().map_err(|_| amiss("trouble-try-again")),
});

uniffi::custom_type!(Minutes, i32, {
    remote,
    lower: |minutes| i32::from(minutes.get()),
    try_lift: |minutes| u64::try_from(minutes)
        .ok()
        .and_then(|minutes| Minutes::new(minutes).ok())
        .ok_or_else(|| amiss("page-error-minutes")),
});

/// A month of a year.
#[derive(Clone, Copy, Debug, PartialEq, Eq, uniffi::Record)]
pub struct Month {
    /// The year.
    pub year: i32,
    /// 1 to 12.
    pub month: u32,
}

type MonthAsked = (i32, u32);

uniffi::custom_type!(MonthAsked, Month, {
    remote,
    lower: |asked| Month { year: asked.0, month: asked.1 },
    try_lift: |month| Ok((month.year, month.month)),
});

#[uniffi::remote(Enum)]
pub enum Chosen {
    Try,
    Stay,
}

#[uniffi::remote(Enum)]
pub enum PresetId {
    Plan(u8),
    Even,
}
