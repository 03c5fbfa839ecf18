//! Everything that the pages read from outside, each as one function that has to take whatever bytes there are:
//! it comes to an end and does not panic, and what must hold of its answer holds. A fuzzer drives these
//! functions (`tests/fuzz`), and `tests/outside` runs them over the corpus kept there. Decides in what form bytes
//! become requests, and what must hold of every answer. Leaves the summaries, the plan and the keys, all of them
//! invented, to whoever tries: [`Given`].
//!
//! - `form`: the body of a form. `upload`: a line with its kind, then the body of a form that may carry files.
//! - `connection`: what a stranger, or a browser that was let in, sends over one connection.
//! - `desk_page`, `try_page`: requests of somebody who was let in, one after another, at an open desk with
//!   a draft, a finished plan and summaries, and at a diary with a plan. How bytes become requests stands in `requests.rs`.
#![allow(
    clippy::expect_used,
    reason = "nothing but tests calls this, and what does not hold has to be told loudly"
)]

mod connection;
mod forms;
mod pages;
mod requests;

use std::sync::Arc;

use frond_core::companion::Ports;
use frond_core::ports::{KeyKeeper, Random};

/// What is invented for the pages.
pub struct Given {
    /// Bytes that look random and are the same for the same seed: what the desk draws.
    pub random: fn(u64) -> Arc<dyn Random>,
    /// A disk with nothing on it, and what else a diary needs.
    pub ports: fn() -> Ports,
    /// What keeps the diary's key, quickly.
    pub keeper: fn() -> Box<dyn KeyKeeper + Send>,
    /// Open summaries, signed.
    pub summaries: Vec<Vec<u8>>,
    /// A plan.
    pub programme: Vec<u8>,
}

/// A reader: whether anything was taken, so that a corpus of which nothing is ever taken is noticed.
type Reader = fn(&[u8], &Given) -> bool;

const READERS: [(&str, Reader); 5] = [
    ("form", |bytes, _| forms::form(bytes)),
    ("upload", |bytes, _| forms::upload(bytes)),
    ("connection", connection::connection),
    ("desk_page", |bytes, given| pages::desk_page(bytes, given).taken),
    ("try_page", |bytes, given| pages::try_page(bytes, given).taken),
];

/// The names of all readers; the corpus of each is called like it.
pub fn names() -> impl Iterator<Item = &'static str> {
    READERS.iter().map(|(name, _)| *name)
}

/// Tries the reader of this name, and says whether anything was taken.
///
/// # Panics
/// Where there is no such reader, or where it does not hold.
pub fn read(name: &str, bytes: &[u8], given: &Given) -> bool {
    let found = READERS.iter().find(|(known, _)| *known == name);
    let (_, reader) = found.expect("a reader of this name");
    reader(bytes, given)
}

/// Where the last of these requests led, and the last page: for whoever looks for what a fuzzer begins with.
///
/// # Panics
/// Where what must hold does not.
#[must_use]
pub fn came(at_the_desk: bool, bytes: &[u8], given: &Given) -> (String, String) {
    let pages = if at_the_desk { pages::desk_page } else { pages::try_page };
    let came = pages(bytes, given);
    (came.led, String::from_utf8_lossy(&came.page).into_owned())
}
