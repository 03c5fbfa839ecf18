//! Turning a fuzzer's bytes into changes of a file that is sound: behind a checksum, a seal or a signature
//! hardly anything is reached by bytes made from nothing.

/// The file with every change carried out. A change is five bytes: what to do, where (three bytes) and with
/// what.
#[must_use]
pub fn edited(sound: &[u8], changes: &[u8]) -> Vec<u8> {
    let mut bytes = sound.to_vec();
    for change in changes.chunks_exact(5).take(64) {
        let [what, a, b, c, with] = *change else { continue };
        if bytes.is_empty() {
            break;
        }
        let at = u32::from_le_bytes([a, b, c, 0]) as usize % bytes.len();
        let long = usize::from(with) * usize::from(what >> 3) + 1;
        let end = (at + long).min(bytes.len());
        match what & 7 {
            0 | 1 => bytes[at] ^= with.max(1),
            2 => bytes[at] = with,
            3 => bytes[at..end].fill(with),
            4 => drop(bytes.drain(at..end)),
            5 => {
                let again = bytes[at..end].to_vec();
                bytes.splice(at..at, again);
            }
            6 => bytes.truncate(at),
            _ => bytes.extend(std::iter::repeat_n(with, long)),
        }
    }
    bytes
}
