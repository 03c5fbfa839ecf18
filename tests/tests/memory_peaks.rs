//! How much memory a diary of ten years takes, against its limits ([`frond_tests::peaks`]). The figures of the program as
//! it is given to people are in MEASUREMENTS.md; this one is built for tests and takes a little more.

#![cfg(target_os = "linux")]

use frond_tests::peaks::{Part, make, measure};

#[test]
fn ten_years_are_opened_backed_up_handed_over_and_read_within_the_limits() {
    let base = tempfile::tempdir().unwrap();
    make(base.path());
    let mut over = Vec::new();
    for part in Part::ALL {
        let peak = measure(env!("CARGO_BIN_EXE_peaks"), part, base.path()).unwrap();
        println!("{:34} {peak:5.1} MB of {}", part.name(), part.limit());
        if peak > part.limit() {
            over.push(format!("{}: {peak:.1} MB of {}", part.name(), part.limit()));
        }
    }
    assert!(over.is_empty(), "{over:#?}");
}
