//! Whether bytes look drawn by chance.
//!
//! **The statistic.** Pearson's chi-square against equal shares: of the 256 values of a byte, over all sealed bytes of a
//! file and over each stretch of 4,096 of them; and of the 16 values of each half of a byte, where there are fewer bytes
//! than that needs. At least five are expected in each cell (Cochran 1954; Knuth, *The Art of Computer Programming* 2,
//! 3.3.1). The sum is turned into standard deviations by Wilson and Hilferty (1931), and more than six of them, above or
//! below, are a fault: one in a thousand million by chance. Beside it the monobit test of NIST SP 800-22 rev. 1a, 2.1, on
//! each of the eight bits by itself, within the same six deviations, and of the highest bit, which is 0 in every letter of
//! English text, over each 128 bytes (the test within blocks, 2.2). So 80 bytes of text are seen wherever they stand;
//! fewer are not, and [`super::needles`] has to know what they say.
//!
//! What is only packed looks drawn by chance, too: [`super::needles`] unpacks.

/// More standard deviations than this are no chance.
const MOST: f64 = 6.0;
/// How many bytes are looked at together.
const STRETCH: usize = 4096;
/// How many bytes are looked at together for their highest bit, and how far apart these begin.
const WINDOW: usize = 128;
const STEP: usize = 32;
/// The least that is expected in a cell.
const EXPECTED: usize = 5;

/// What is wrong with bytes that ought to look drawn by chance. Fewer than 80 cannot be judged, and are not.
#[must_use]
pub fn faults(bytes: &[u8]) -> Vec<String> {
    let mut wrong = Vec::new();
    let mut look = |bytes: &[u8], which: &str| {
        let by_chance = |name: String, z: f64| {
            (z.abs() > MOST).then(|| format!("{which}: {name} is {z:.1} deviations off"))
        };
        if bytes.len() >= EXPECTED * 256 {
            wrong.extend(by_chance(
                "the share of its bytes".to_owned(),
                shares(bytes, 256, usize::from),
            ));
        }
        if bytes.len() >= EXPECTED * 16 {
            for (half, shift) in [("lower", 0), ("upper", 4)] {
                let z = shares(bytes, 16, |byte| usize::from(byte >> shift & 15));
                wrong.extend(by_chance(format!("the share of its {half} halves"), z));
            }
            for bit in 0..8 {
                wrong.extend(by_chance(format!("bit {bit}"), monobit(bytes, bit)));
            }
        }
    };
    look(bytes, "all of it");
    if bytes.len() > STRETCH {
        for (number, stretch) in bytes.chunks(STRETCH).enumerate() {
            look(stretch, &format!("stretch {number}"));
        }
    }
    for (number, window) in bytes.windows(WINDOW).step_by(STEP).enumerate() {
        let z = monobit(window, 7);
        if z.abs() > MOST {
            wrong.push(format!(
                "128 bytes at {}: the highest bit is {z:.1} deviations off",
                number * STEP
            ));
        }
    }
    wrong
}

/// How far the shares of so many values are from equal ones, in standard deviations.
#[allow(clippy::cast_precision_loss, reason = "counts of bytes in a file")]
fn shares(bytes: &[u8], cells: usize, cell: impl Fn(u8) -> usize) -> f64 {
    let mut counts = vec![0u64; cells];
    for byte in bytes {
        counts[cell(*byte)] += 1;
    }
    let expected = bytes.len() as f64 / cells as f64;
    let sum: f64 = counts.iter().map(|count| (*count as f64 - expected).powi(2) / expected).sum();
    deviations(sum, cells as f64 - 1.0)
}

/// A chi-square of so many degrees of freedom as standard deviations (Wilson and Hilferty 1931).
pub(super) fn deviations(chi_square: f64, degrees: f64) -> f64 {
    let spread = 2.0 / (9.0 * degrees);
    ((chi_square / degrees).cbrt() - (1.0 - spread)) / spread.sqrt()
}

/// NIST SP 800-22, 2.1.4: the sum of +1 and -1 over the root of their number.
#[allow(clippy::cast_precision_loss, reason = "counts of bytes in a file")]
fn monobit(bytes: &[u8], bit: u32) -> f64 {
    let ones = bytes.iter().filter(|byte| *byte >> bit & 1 == 1).count();
    (2.0 * ones as f64 - bytes.len() as f64) / (bytes.len() as f64).sqrt()
}
