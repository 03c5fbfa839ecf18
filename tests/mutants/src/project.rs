//! Decides how the project is copied to be changed and built beside itself: every file as it lies there, but for what
//! the caller puts in its place, and only what is different is written, so that only that is built again.

use std::collections::HashSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::Failure;

/// What a copy's core has besides its own: `mutant(number)`, whether the change of this number acts. The number comes
/// from the environment, `FROND_MUTANT`; without it none acts.
pub const PLANTED: &str = include_str!("planted.rs");

/// The files of the project at `from`, as git lists them: what is kept and what is new, but nothing that is ignored.
///
/// # Errors
/// Where git cannot tell.
pub fn files(from: &Path) -> Result<Vec<PathBuf>, Failure> {
    let listed = Command::new("git")
        .args(["ls-files", "--cached", "--others", "--exclude-standard", "-z"])
        .current_dir(from)
        .output()?;
    if !listed.status.success() {
        return Err("git does not list the files of the project".into());
    }
    let names = String::from_utf8(listed.stdout)?;
    let files = names.split('\0').filter(|name| !name.is_empty()).map(PathBuf::from);
    // Not what was removed and not yet told to git, nor what links to nothing.
    Ok(files.filter(|path| from.join(path).is_file()).collect())
}

/// Writes a file of the copy at `root`, and leaves one alone that is so already: what did not change is not built again.
///
/// # Errors
/// Where it cannot be written.
pub fn put(root: &Path, path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let to = root.join(path);
    if fs::read(&to).is_ok_and(|there| there == bytes) {
        return Ok(());
    }
    if let Some(folder) = to.parent() {
        fs::create_dir_all(folder)?;
    }
    Ok(fs::write(to, bytes)?)
}

/// Removes from the copy at `root` what an earlier one held and the project no longer does.
///
/// # Errors
/// Where something cannot be removed.
pub fn forget(root: &Path, folder: &Path, kept: &HashSet<PathBuf>) -> Result<(), Failure> {
    for entry in fs::read_dir(root.join(folder))? {
        let entry = entry?;
        let path = folder.join(entry.file_name());
        if entry.file_type()?.is_dir() {
            forget(root, &path, kept)?;
        } else if !kept.contains(&path) {
            fs::remove_file(entry.path())?;
        }
    }
    Ok(())
}

/// The workspace's manifest for a quick build: without what helps to find a fault, and without lints, because what is
/// woven in is written for the compiler alone. Where each test runs a few times only, `optimised` is not worth its time.
#[must_use]
pub fn quick(manifest: &str, optimised: bool) -> String {
    let mut said = String::new();
    let mut section = "";
    for line in manifest.lines() {
        if line.starts_with('[') {
            section = line;
            said.push_str(line);
            said.push('\n');
            if line == "[workspace.lints.rust]" {
                said.push_str("warnings = \"allow\"\nunconditional_recursion = \"allow\"\narithmetic_overflow = \"allow\"\n");
                said.push_str(
                    "overflowing_literals = \"allow\"\nunconditional_panic = \"allow\"\n",
                );
            }
        } else if section.starts_with("[workspace.lints") && !line.starts_with('#') {
            // Left out.
        } else if section == "[profile.dev]" && line.starts_with("debug") {
            said.push_str("debug = false\n");
        } else if section == "[profile.dev]" && line.starts_with("opt-level") && !optimised {
            said.push_str("opt-level = 0\n");
        } else {
            said.push_str(line);
            said.push('\n');
        }
    }
    said
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_quick_manifest_has_no_lints() {
        let quick = quick(
            "[workspace.lints.rust]\nunsafe_code = \"forbid\"\n[profile.dev]\nopt-level = 1\ndebug = true\n",
            true,
        );
        assert!(
            !quick.contains("forbid") && quick.contains("opt-level = 1\ndebug = false\n"),
            "{quick}"
        );
    }
}
