//! Does one part of [`frond_tests::peaks`] and prints the most memory this process had, in KiB.
//!
//! `peaks PART BASE`: BASE is a folder in which [`frond_tests::peaks::make`] made a diary.

use std::path::PathBuf;

use frond_tests::peaks::Part;

/// The most this process had in memory, as Linux says it.
fn peak() -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    line.trim().trim_end_matches(" kB").parse().ok()
}

fn main() -> Result<(), &'static str> {
    let mut given = std::env::args().skip(1);
    let name = given.next().ok_or("which part?")?;
    let base = PathBuf::from(given.next().ok_or("in which folder?")?);
    let part = Part::ALL.into_iter().find(|part| part.name() == name).ok_or("no such part")?;
    part.play(&base);
    println!("{}", peak().ok_or("the system does not say")?);
    Ok(())
}
