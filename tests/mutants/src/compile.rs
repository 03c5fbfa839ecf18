//! Decides how a copy of the project is built, and which programs of tests that gives.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use serde_json::Value;

use crate::Failure;

/// A program of tests.
#[derive(Clone, Debug)]
pub struct Program {
    /// What it is called: a test target's name.
    pub name: String,
    /// Where it lies.
    pub path: PathBuf,
    /// The folder it is run in, as cargo does.
    pub folder: PathBuf,
}

/// Runs cargo in the copy at `root` with its own folder for what is built: whether it succeeded, and its messages.
///
/// # Errors
/// Where cargo cannot be begun.
pub fn cargo(
    root: &Path,
    target: &Path,
    arguments: &[&str],
) -> Result<(bool, Vec<Value>), Failure> {
    let output = Command::new("cargo")
        .args(arguments)
        .args(["--locked", "--message-format=json"])
        .current_dir(root)
        .env("CARGO_TARGET_DIR", target)
        .stdin(Stdio::null())
        .stderr(Stdio::inherit())
        .output()?;
    let text = String::from_utf8(output.stdout)?;
    let messages = text.lines().filter_map(|line| serde_json::from_str(line).ok()).collect();
    Ok((output.status.success(), messages))
}

/// The errors among the compiler's messages that speak of a place.
pub fn errors(messages: &[Value]) -> impl Iterator<Item = &Value> {
    messages
        .iter()
        .filter(|one| one["reason"] == "compiler-message")
        .map(|one| &one["message"])
        .filter(|one| {
            one["level"] == "error" && one["spans"].as_array().is_some_and(|s| !s.is_empty())
        })
}

/// The errors as the compiler shows them.
#[must_use]
pub fn rendered(messages: &[Value]) -> String {
    errors(messages).filter_map(|one| one["rendered"].as_str()).collect()
}

/// The programs of tests among what was built.
#[must_use]
pub fn programs(messages: &[Value]) -> Vec<Program> {
    let program = |one: &Value| {
        let path = PathBuf::from(one["executable"].as_str()?);
        let folder = Path::new(one["manifest_path"].as_str()?).parent()?.to_owned();
        let name = one["target"]["name"].as_str()?.to_owned();
        (one["profile"]["test"] == true).then_some(Program { name, path, folder })
    };
    messages.iter().filter_map(program).collect()
}
