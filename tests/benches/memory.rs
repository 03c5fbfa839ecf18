//! The most memory a process takes with a diary of ten years, and the limit of each; see [`frond_tests::peaks`]. Run with
//! `cargo bench -p frond-tests --bench memory`.

use frond_tests::peaks::{Part, make, measure};

fn main() {
    let base = tempfile::tempdir().unwrap();
    make(base.path());
    for part in Part::ALL {
        let peak = measure(env!("CARGO_BIN_EXE_peaks"), part, base.path()).unwrap();
        println!("{:34} {peak:6.1} MB of {}", part.name(), part.limit());
    }
}
