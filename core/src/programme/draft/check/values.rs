//! One typed field at a time: what it is read as, and what is noted where it cannot be.

use chrono::NaiveDate;

use super::super::super::values::{
    Count, Days, Hours, Last, Line, Minutes, Passage, Rating, RatingAtLeast, Size, Tenths,
    ValueError,
};
use super::super::amiss::{Amiss, Mistake};
use super::super::place::Place;
use super::super::typed::{Choice, Typed};

/// Stands where a text is missing.
const DOTS: &str = "\u{2026}";

/// Reads fields, and keeps what has to be put right.
pub(super) struct Reader {
    pub(super) mistakes: Vec<Mistake>,
}

/// The whole numbers of the programme's form.
pub(super) trait Whole: Sized {
    const LEAST: u64;
    const MOST: u64;
    fn of(number: u64) -> Result<Self, ValueError>;
}

macro_rules! whole {
    ($($type:ident),+) => {$(
        impl Whole for $type {
            const LEAST: u64 = $type::LEAST as u64;
            const MOST: u64 = $type::MOST as u64;
            fn of(number: u64) -> Result<Self, ValueError> {
                $type::new(number)
            }
        }
    )+};
}
whole!(Count, Days, Hours, Last, Minutes, Rating, RatingAtLeast);

impl Reader {
    pub(super) fn note(&mut self, place: Place, amiss: Amiss) {
        self.mistakes.push(Mistake::new(place, amiss));
    }

    /// A text of up to `most` characters; dots where it cannot be used.
    pub(super) fn text<T>(
        &mut self,
        place: Place,
        typed: &Typed,
        most: usize,
        of: fn(&str) -> Result<T, ValueError>,
    ) -> Option<T> {
        if typed.is_empty() {
            self.note(place, Amiss::Empty);
        } else {
            match of(typed.as_str()) {
                Ok(text) => return Some(text),
                Err(_) if typed.trimmed().chars().count() > most => {
                    self.note(place, Amiss::TooLong { most });
                }
                Err(_) => self.note(place, Amiss::Unprintable),
            }
        }
        of(DOTS).ok()
    }

    pub(super) fn line(&mut self, place: Place, typed: &Typed) -> Option<Line> {
        self.text(place, typed, 200, Line::new)
    }

    pub(super) fn passage(&mut self, place: Place, typed: &Typed) -> Option<Passage> {
        self.text(place, typed, 2000, Passage::new)
    }

    /// A list of texts.
    pub(super) fn lines(&mut self, place: &Place, typed: &[Typed]) -> Option<Vec<Line>> {
        let lines = typed.iter().enumerate();
        all(lines.map(|(index, typed)| self.line(place.at(index), typed)))
    }

    pub(super) fn whole<T: Whole>(&mut self, place: Place, typed: &Typed) -> Option<T> {
        if typed.is_empty() {
            self.note(place, Amiss::Empty);
            return None;
        }
        let number = typed.trimmed();
        // `parse` alone would take a sign.
        let digits = number.bytes().all(|byte| byte.is_ascii_digit());
        let number = number.parse::<u64>().ok().filter(|_| digits);
        let value = number.and_then(|number| T::of(number).ok());
        if value.is_none() {
            self.note(place, Amiss::NotWhole { least: T::LEAST, most: T::MOST });
        }
        value
    }

    /// A number that may be left out; the outer `None` is a mistake.
    pub(super) fn maybe<T: Whole>(&mut self, place: Place, typed: &Typed) -> Option<Option<T>> {
        if typed.is_empty() { Some(None) } else { self.whole(place, typed).map(Some) }
    }

    pub(super) fn chosen<T: Clone>(&mut self, place: Place, choice: &Choice<T>) -> Option<T> {
        if choice.0.is_none() {
            self.note(place, Amiss::NotChosen);
        }
        choice.0.clone()
    }

    pub(super) fn day(&mut self, place: Place, typed: &Typed) -> Option<NaiveDate> {
        if typed.is_empty() {
            self.note(place, Amiss::Empty);
            return None;
        }
        let day = typed.trimmed().parse::<NaiveDate>().ok();
        if day.is_none() {
            self.note(place, Amiss::NotADay);
        }
        day
    }

    pub(super) fn size(&mut self, place: Place, typed: &Typed) -> Option<Size> {
        if typed.is_empty() {
            self.note(place, Amiss::Empty);
            return None;
        }
        let size = tenths(typed.trimmed()).and_then(|tenths| Size::new(tenths).ok());
        if size.is_none() {
            self.note(place, Amiss::NotASize);
        }
        size
    }

    /// Seconds; an empty hold is none.
    pub(super) fn seconds(
        &mut self,
        place: Place,
        typed: &Typed,
        may_be_none: bool,
    ) -> Option<Tenths> {
        if typed.is_empty() {
            if may_be_none {
                return Tenths::new(0).ok();
            }
            self.note(place, Amiss::Empty);
            return None;
        }
        let seconds = tenths(typed.trimmed()).and_then(|tenths| Tenths::new(tenths).ok());
        if seconds.is_none() {
            self.note(place, Amiss::NotSeconds);
        }
        seconds
    }
}

/// All of them, where none is missing; every one is looked at, so that every mistake is found.
pub(super) fn all<T>(items: impl Iterator<Item = Option<T>>) -> Option<Vec<T>> {
    let items: Vec<Option<T>> = items.collect();
    items.into_iter().collect()
}

/// Tenths of a number with at most one digit behind its point or comma.
fn tenths(text: &str) -> Option<u64> {
    let (whole, tenth) = match text.split_once(['.', ',']) {
        Some((whole, tenth)) => (whole, tenth),
        None => (text, "0"),
    };
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    if !digits(whole) || !digits(tenth) || tenth.len() != 1 || whole.len() > 4 {
        return None;
    }
    Some(whole.parse::<u64>().ok()? * 10 + tenth.parse::<u64>().ok()?)
}
