//! Reading a file that somebody names, bounded; writing a new one that only its owner may read.

use std::fs::File;
use std::io::{Read, Write};
use std::os::unix::fs::OpenOptionsExt;
use std::path::Path;

use zeroize::Zeroizing;

use crate::failure::Failure;

/// Reads a file of at most `most` bytes.
///
/// # Errors
/// A file that is not there, cannot be read, or is longer.
pub(crate) fn read(path: &Path, most: u64) -> Result<Vec<u8>, Failure> {
    let mut bytes = Vec::new();
    read_into(&mut bytes, path, most)?;
    Ok(bytes)
}

/// The same of something secret: read into room for all of it, since a buffer that grows leaves copies of
/// itself behind, and wiped when done with.
///
/// # Errors
/// As [`read`].
pub(crate) fn read_secret(path: &Path, most: u64) -> Result<Zeroizing<Vec<u8>>, Failure> {
    let room = usize::try_from(most.saturating_add(2)).unwrap_or(0);
    let mut bytes = Zeroizing::new(Vec::with_capacity(room));
    read_into(&mut bytes, path, most)?;
    Ok(bytes)
}

fn read_into(bytes: &mut Vec<u8>, path: &Path, most: u64) -> Result<(), Failure> {
    let name = path.display();
    let failed = |_| Failure::input(format!("{name} cannot be read. Check the name of the file."));
    let file = File::open(path).map_err(failed)?;
    file.take(most.saturating_add(1)).read_to_end(bytes).map_err(failed)?;
    if bytes.len() as u64 > most {
        return Err(Failure::input(format!(
            "{name} is longer than {most} bytes. Check that it is the right file."
        )));
    }
    Ok(())
}

/// Writes a new file; one that is there already is left alone.
///
/// # Errors
/// The name is taken or cannot be made, or there is no room.
pub(crate) fn write_new(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let mut options = std::fs::OpenOptions::new();
    let file = options.write(true).create_new(true).mode(0o600).open(path);
    let mut file = file.map_err(|error| match error.kind() {
        std::io::ErrorKind::AlreadyExists => is_there(path),
        _ => Failure::input(format!(
            "{} cannot be made. Check that the folder is there and is yours.",
            path.display()
        )),
    })?;
    file.write_all(bytes).and_then(|()| file.sync_all()).map_err(|_| {
        // Half a file is none.
        let _ = std::fs::remove_file(path);
        Failure::Else(format!("{} could not be written. Check its room.", path.display()))
    })
}

/// The name is taken.
pub(crate) fn is_there(path: &Path) -> Failure {
    Failure::input(format!("{} is there already. Move it, or choose another name.", path.display()))
}

/// Anything as JSON, indented, with a line break at its end.
///
/// # Errors
/// The encoding failed.
pub(crate) fn json(value: &impl serde::Serialize) -> Result<Vec<u8>, Failure> {
    let mut bytes = serde_json::to_vec_pretty(value)
        .map_err(|_| Failure::Else("It could not be written. Please report it.".to_owned()))?;
    bytes.push(b'\n');
    Ok(bytes)
}
