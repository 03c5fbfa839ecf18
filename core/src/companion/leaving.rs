//! What leaves by the person's own hand: a file, with whether it is sealed. A shell offers to keep it anywhere;
//! only what is sealed may be offered to other programs.

use std::fmt;

use crate::reminders::CalendarFile;

/// A file for the person to keep or share.
#[derive(Clone, PartialEq, Eq)]
pub struct SharedFile {
    /// Its name; it tells nothing.
    pub name: String,
    /// Its media type.
    pub mime: String,
    /// Its content.
    pub bytes: Vec<u8>,
    /// Whether nobody can read it without a key. What is not sealed is kept where the person chooses and is
    /// handed to no other program.
    pub sealed: bool,
}

// What is in it is the person's own affair.
impl fmt::Debug for SharedFile {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("SharedFile(..)")
    }
}

impl From<CalendarFile> for SharedFile {
    fn from(file: CalendarFile) -> Self {
        Self {
            name: file.name,
            mime: "text/calendar; charset=utf-8".to_owned(),
            bytes: file.text.into_bytes(),
            sealed: false,
        }
    }
}
