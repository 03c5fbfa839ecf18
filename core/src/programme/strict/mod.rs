//! Decides whether bytes are exactly one JSON text of a given kind: not too long, UTF-8, not nested
//! without end, no line written twice, no unknown line, nothing after the end, every value in its range.
//! A second reading of the same bytes must not be able to mean something else.
//!
//! Leaves to the caller what the text is for; the programme adds its own sentences in
//! [`read`](super::read), the lines of a diary file say which line it was.
//!
//! Start at [`from_slice`]. No refusal quotes a value: only names of lines, ids of the format and what
//! is allowed there.

mod error;
mod locate;
mod tree;
mod typed;

pub use error::{Found, Position, StrictError, Wrong};
pub use tree::{DEPTH, Node, tree};
pub use typed::typed;

use serde::Serialize;
use serde::de::DeserializeOwned;

/// Reads one value of `T` from exactly these bytes.
///
/// # Errors
/// [`StrictError`]: one sentence that names the place and says what to do.
pub fn from_slice<T: DeserializeOwned + Serialize>(
    bytes: &[u8],
    limit: usize,
) -> Result<T, StrictError> {
    typed(&tree(bytes, limit)?)
}
