//! Whether a secret is still in memory once nobody needs it any more: each case runs in a process of its own
//! (`src/bin/remembers`), which afterwards reads its own memory. What is known to stay is written down here, with the
//! reason; a secret that stays and is not written down here fails.

#![cfg(target_os = "linux")]

use std::collections::BTreeSet;
use std::process::Command;

/// What is left of the secrets of a case, and how many bytes were looked through.
fn left(case: &str) -> (usize, BTreeSet<String>) {
    let out = Command::new(env!("CARGO_BIN_EXE_remembers")).arg(case).output().unwrap();
    assert!(out.status.success(), "{case}: {}", String::from_utf8_lossy(&out.stderr));
    let said = String::from_utf8(out.stdout).unwrap();
    let mut lines = said.lines();
    let head: Vec<&str> = lines.next().unwrap().split(' ').collect();
    assert!(head[2].parse::<usize>().unwrap() > 0, "{case} looks for nothing");
    (head[5].parse().unwrap(), lines.map(str::to_owned).collect())
}

fn nothing_is_left(case: &str) {
    let (looked, found) = left(case);
    assert_eq!(found, BTreeSet::new(), "{case}, in {looked} bytes");
}

#[test]
fn the_search_finds_what_is_planted_and_nothing_else() {
    let (looked, found) = left("planted");
    assert!(looked > 100_000, "{looked} bytes");
    let of = |name: &str| found.iter().any(|line| line.starts_with(name));
    assert!(of("a text that is there") && of("a text that was freed"), "{found:?}");
    nothing_is_left("nothing");
}

#[test]
fn no_passphrase_and_no_data_key_is_left_of_a_diary() {
    nothing_is_left("passphrase");
}

#[test]
fn no_code_and_no_helper_key_is_left_of_a_diary_on_a_phone() {
    nothing_is_left("code");
}

#[test]
fn none_of_the_twelve_words_is_left() {
    nothing_is_left("phrase");
}

/// What was sealed or opened: the age library's writer holds up to 64 KiB of it in a buffer that it frees and does not
/// wipe. The passphrase is wiped.
#[test]
fn no_passphrase_is_left_of_a_sealed_file() {
    let (looked, found) = left("sealed with a passphrase");
    let known = BTreeSet::from(["what was opened in [heap]".to_owned()]);
    assert!(found.is_subset(&known), "{found:?} in {looked} bytes");
}

#[test]
fn nothing_is_left_of_a_clinics_keys() {
    nothing_is_left("clinic");
}

/// What was written into a diary is no key: it is shown, laid out and handed on, and stays in memory that was freed until
/// something else takes its place or the process ends. Only this is looked at here: that nothing of it lies in a place that
/// the process keeps on purpose.
#[test]
fn what_was_written_stays_in_freed_memory_and_nowhere_else() {
    let (looked, found) = left("note");
    let known =
        ["what she wrote in [heap]", "what she wrote in [stack]", "what she wrote in [nameless]"];
    let known: BTreeSet<String> = known.into_iter().map(str::to_owned).collect();
    assert!(found.is_subset(&known), "{found:?} in {looked} bytes");
}
