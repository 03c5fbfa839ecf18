//! Everything that reads bytes from outside, each as one function that has to take whatever bytes there are:
//! it comes to an end, it does not panic, and what it takes reads the same when it is written and read
//! again. A fuzzer drives these functions, and `tests/outside.rs` runs them over the corpus kept in
//! `tests/fuzz/corpus`. What the desk's pages read is tried in the desk's own crate, in the same way.
//!
//! Where a signature or a seal stands in front, a reader is also given bytes that are signed or sealed
//! rightly: what is behind it has to take anything, too.

pub mod corpus;
mod diary;
mod edits;
mod plans;
mod summaries;
mod words;

/// A reader: its name, which is also the name of its corpus, and what tries it. That says whether anything was
/// taken, so that a corpus of which nothing is ever taken is noticed.
pub type Reader = (&'static str, fn(&[u8]) -> bool);

/// All of them.
pub const READERS: [Reader; 12] = [
    ("programme", plans::programme),
    ("signed_plan", plans::signed_plan),
    ("link", plans::link),
    ("summary", summaries::summary),
    ("signed_summary", summaries::signed_summary),
    ("sealed_file", summaries::sealed_file),
    ("journal", diary::journal),
    ("backup", diary::backup),
    ("copy", diary::copy),
    ("lines", diary::lines),
    ("kept", diary::kept),
    ("words", words::words),
];

/// Tries the reader of this name.
///
/// # Panics
/// Where there is no such reader, or where it does not hold.
pub fn read(name: &str, bytes: &[u8]) -> bool {
    let found = READERS.iter().find(|(known, _)| *known == name);
    let (_, reader) = found.expect("a reader of this name");
    reader(bytes)
}
