//! What each command says about itself.

use crate::kit::{run, said};

#[test]
fn every_command_says_what_it_is_for() {
    let mut all = said(&run(&["--help"]));
    for command in [
        "demo",
        "try",
        "desk",
        "check",
        "suggest",
        "replay",
        "summary",
        "read",
        "letter",
        "gather",
        "start",
        "hand-over",
        "accept",
        "today",
        "log",
        "step",
        "sign",
        "call",
        "spoke",
        "entries",
        "plan",
        "tell",
        "show",
    ] {
        assert!(all.contains(&format!("\n  {command} ")), "{command} stands in the list");
        all.push_str(&format!("\n\n== {command}\n\n{}", said(&run(&[command, "--help"]))));
    }
    for what in [
        "cautions",
        "time-off",
        "question",
        "look-forward",
        "able",
        "goal",
        "time-right",
        "settings",
    ] {
        all.push_str(&format!("\n\n== tell {what}\n\n{}", said(&run(&["tell", what, "--help"]))));
    }
    for line in all.lines() {
        // clap does not break the line that begins with "Usage".
        assert!(line.chars().count() <= 80 || line.starts_with("Usage:"), "{line}");
    }
    insta::assert_snapshot!(all);
}
