//! The iPhone app as far as it goes without a Mac: FrondHome, built and tested by Swift's own package manager where
//! `tests/ios/swift` brings it.

use std::collections::BTreeMap;
use std::path::PathBuf;
use std::process::Command;

use frond_mutants::Failure;

use super::{Place, Shell};

/// The iPhone app.
pub(super) const SHELL: Shell = Shell {
    option: "--ios",
    name: "iPhone",
    ending: "swift",
    switch: (
        "ios-shell/Sources/FrondHome/Removed.swift",
        "import Foundation\n\n/// Whether the removal of this number acts.\n\
         func removed(_ number: Int) -> Bool { ProcessInfo.processInfo.environment[\"FROND_MUTANT\"] == String(number) }\n",
    ),
    asks: "removed",
    tests: "ios-shell/Tests",
    function: "func ",
    ready,
    reports,
    command,
};

/// The core's library and its Swift, which the package stands on.
fn ready(place: &Place) -> Result<(), Failure> {
    let output = Command::new(place.root.join("ios-shell/tools/core"))
        .env("FROND_BUILT", place.built())
        .output()?;
    if output.status.success() {
        return Ok(());
    }
    let said = [output.stdout, output.stderr].concat();
    Err(format!("the core's Swift is not made:\n{}", String::from_utf8_lossy(&said)).into())
}

fn reports(place: &Place) -> PathBuf {
    place.to.join("reports-ios")
}

/// What is built lies outside of the copy, which holds nothing but the project's files when it is made anew. One test after
/// the other, as in `tests/ios/run`: one of them lowers a limit of the whole process.
fn command(place: &Place, tests: &BTreeMap<&str, &str>, number: u32, first: bool) -> Command {
    let mut swift = Command::new(place.from.join("tests/ios/swift"));
    swift.arg("env").arg(format!("FROND_MUTANT={number}"));
    swift.args(["swift", "test", "-j", "2", "--no-parallel"]);
    swift.args((!first).then_some("--skip-build"));
    swift.arg("--package-path").arg(place.root.join("ios-shell"));
    swift.arg("--scratch-path").arg(place.to.join("built-ios"));
    swift.arg("--xunit-output").arg(reports(place).join("tests.xml"));
    for name in tests.keys() {
        // As a pattern: the whole name, with the bracket behind it.
        swift.arg("--filter").arg(format!("/{name}\\("));
    }
    swift
}
