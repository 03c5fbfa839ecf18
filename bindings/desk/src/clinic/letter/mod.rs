//! The letter on paper: a PDF that a screen reader can read and that any program shows the same. Decides how
//! a worded letter is set: blocks, lines of measured width, pages. What it says is decided in the core.
//!
//! The document is tagged, has a title and a language, and is checked against PDF/UA-1 while it is written. Its
//! fonts are embedded as subsets. They cover Latin, Greek and Cyrillic; what they lack is never dropped: the
//! character's number stands in its place, and the letter says so.

mod block;
mod face;
mod lines;
mod pages;
#[cfg(test)]
mod tests;

use frond_core::screens::Letter;

/// Why no PDF was made. Neither can be put right by the person; the page in the browser prints too.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub(crate) enum LetterError {
    /// A font of the program cannot be read.
    #[error("the letter's font cannot be read; print the page instead, and report this")]
    Font,
    /// The document was refused by the library that writes it.
    #[error("the letter could not be made into a PDF; print the page instead, and report this")]
    Document,
}

/// The letter as a PDF.
///
/// # Errors
/// [`LetterError`].
pub(crate) fn letter_pdf(letter: &Letter) -> Result<Vec<u8>, LetterError> {
    let faces = face::Faces::new()?;
    let blocks = block::blocks(letter, &faces);
    let set = lines::set(&blocks, &faces);
    pages::write(letter, &set, &faces)
}
