//! Reading a file that somebody names, bounded.

use std::fs::File;
use std::io::Read;
use std::path::Path;

use crate::failure::Failure;

/// Reads a file of at most `most` bytes.
///
/// # Errors
/// A file that is not there, cannot be read, or is longer.
pub(crate) fn read(path: &Path, most: u64) -> Result<Vec<u8>, Failure> {
    let name = path.display();
    let failed = |_| Failure::input(format!("{name} cannot be read. Check the name of the file."));
    let mut bytes = Vec::new();
    let file = File::open(path).map_err(failed)?;
    file.take(most.saturating_add(1)).read_to_end(&mut bytes).map_err(failed)?;
    if bytes.len() as u64 > most {
        return Err(Failure::input(format!(
            "{name} is longer than {most} bytes. Check that it is the right file."
        )));
    }
    Ok(bytes)
}
