//! Unpacks what the build script (`build.rs`) packed.

use flate2::{Decompress, FlushDecompress, Status};

/// What was packed: the length in four bytes, then a raw deflate stream. `None` where it is not that.
pub(crate) fn unpacked(packed: &[u8]) -> Option<Vec<u8>> {
    let (length, stream) = packed.split_first_chunk::<4>()?;
    let length = usize::try_from(u32::from_le_bytes(*length)).ok()?;
    let mut whole = Vec::with_capacity(length);
    let status =
        Decompress::new(false).decompress_vec(stream, &mut whole, FlushDecompress::Finish).ok()?;
    (status == Status::StreamEnd && whole.len() == length).then_some(whole)
}

#[cfg(test)]
mod tests {
    use super::unpacked;

    const ZONES: &[u8] = include_bytes!(concat!(env!("OUT_DIR"), "/zones.packed"));

    #[test]
    fn a_damaged_pack_is_none_and_no_panic() {
        assert!(unpacked(ZONES).is_some());
        for cut in [0, 3, 4, 5, ZONES.len() / 2, ZONES.len() - 1] {
            assert!(unpacked(&ZONES[..cut]).is_none(), "{cut}");
        }
    }
}
