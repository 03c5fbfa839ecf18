//! The Android app: Kotlin, built and tested by Maven.

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use std::process::Command;

use super::{Place, Shell};

/// The Android app.
pub(super) const SHELL: Shell = Shell {
    option: "--android",
    name: "Android",
    ending: "kt",
    switch: (
        "android-shell/src/main/kotlin/frond/home/Removed.kt",
        "package frond.home\n\n/** Whether the removal of this number acts. */\n\
         fun removed(number: Int): Boolean = System.getenv(\"FROND_MUTANT\") == number.toString()\n",
    ),
    asks: "frond.home.removed",
    tests: "android-shell/src/test",
    function: "fun ",
    ready: |_| Ok(()),
    reports,
    command,
};

fn reports(place: &Place) -> PathBuf {
    place.root.join("android-shell/target/surefire-reports")
}

/// The classes that hold the tests: each is called as its file.
fn command(place: &Place, tests: &BTreeMap<&str, &str>, number: u32, first: bool) -> Command {
    let classes: BTreeSet<&str> = tests.values().copied().collect();
    let only = format!("-Dtest={}", classes.into_iter().collect::<Vec<_>>().join(","));
    let mut maven = Command::new("mvn");
    maven.args(["-B", "-ntp", "-q", "-f", "pom.xml"]);
    // The first look at the network is that of the build.
    maven.args(if first { &["test"][..] } else { &["surefire:test", "-o"] });
    maven.arg(only).current_dir(place.root.join("android-shell"));
    maven.env("FROND_BUILT", place.built()).env("FROND_MUTANT", number.to_string());
    maven
}
