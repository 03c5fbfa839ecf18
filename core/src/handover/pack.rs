//! Making a programme small: raw deflate (RFC 1951) with a preset dictionary, and back within a bound.
//!
//! The dictionary is a text of the form's own key names and usual wording. It belongs to version 1 of the
//! link and never changes: another dictionary is another version.

use flate2::{Compress, Compression, Decompress, FlushCompress, FlushDecompress, Status};

use super::HandOverError;

/// The dictionary of version 1.
pub(super) const DICTIONARY: &[u8] = include_bytes!("dictionary-1.txt");

/// The most that is inflated, in bytes.
pub(super) const INFLATED_MOST: usize = 64 * 1024;

/// Deflates.
pub(super) fn deflate(plain: &[u8]) -> Result<Vec<u8>, HandOverError> {
    let mut squeeze = Compress::new(Compression::best(), false);
    squeeze.set_dictionary(DICTIONARY).map_err(|_| HandOverError::NoRoom)?;
    let mut packed = Vec::with_capacity(plain.len() + 1024);
    match squeeze.compress_vec(plain, &mut packed, FlushCompress::Finish) {
        Ok(Status::StreamEnd) => Ok(packed),
        _ => Err(HandOverError::TooLong),
    }
}

/// Inflates at most [`INFLATED_MOST`] bytes; nothing may follow the end.
pub(super) fn inflate(packed: &[u8]) -> Result<Vec<u8>, HandOverError> {
    let mut swell = Decompress::new(false);
    swell.set_dictionary(DICTIONARY).map_err(|_| HandOverError::NoRoom)?;
    // The vector's room is the bound: what does not end within it is not read further.
    let mut plain = Vec::with_capacity(INFLATED_MOST + 1);
    match swell.decompress_vec(packed, &mut plain, FlushDecompress::Finish) {
        Ok(Status::StreamEnd) if plain.len() > INFLATED_MOST => Err(HandOverError::TooLong),
        Ok(Status::StreamEnd) if swell.total_in() == packed.len() as u64 => Ok(plain),
        Ok(_) if plain.len() > INFLATED_MOST => Err(HandOverError::TooLong),
        _ => Err(HandOverError::Garbled),
    }
}
