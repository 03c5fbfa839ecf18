//! Decides what the copy is made of: every file of the project as it lies there, the rooms woven, and one function more
//! in the core that says which mutant acts.

use std::collections::HashSet;
use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::Failure;
use crate::weave::{self, Mutant, Woven};

/// The rooms whose changes have to be noticed.
pub const ROOMS: [&str; 4] = ["progression", "safety", "practice", "reminders"];

/// A source of a room, to be woven.
pub struct Source {
    /// The room it lies in.
    pub room: &'static str,
    /// Path in the project.
    pub path: PathBuf,
    text: String,
    first: u32,
    /// As it stands in the copy now.
    pub woven: Woven,
}

impl Source {
    /// The changes of this file.
    pub fn mutants(&self) -> &[Mutant] {
        &self.woven.mutants
    }
}

/// A copy of the project with every change in it.
pub struct Copy {
    /// Where it lies.
    pub root: PathBuf,
    /// The sources of the rooms, in order.
    pub sources: Vec<Source>,
}

/// What is said of tests: they are never woven.
fn is_test(path: &Path) -> bool {
    let named = |part: &OsStr| part == "tests" || part == "tests.rs" || part == "snapshots";
    let suffixed =
        path.file_name().and_then(OsStr::to_str).is_some_and(|n| n.ends_with("_tests.rs"));
    suffixed || path.iter().any(named)
}

fn room_of(path: &Path) -> Option<&'static str> {
    let within = path.strip_prefix("core/src").ok()?;
    let room = ROOMS.into_iter().find(|room| within.starts_with(room))?;
    (within.extension() == Some(OsStr::new("rs")) && !is_test(within)).then_some(room)
}

impl Copy {
    /// Copies the project at `from` to `root` and weaves its rooms.
    ///
    /// # Errors
    /// Where a file cannot be read or written, or is not Rust.
    pub fn make(from: &Path, root: &Path) -> Result<Self, Failure> {
        let listed = Command::new("git")
            .args(["ls-files", "--cached", "--others", "--exclude-standard", "-z"])
            .current_dir(from)
            .output()?;
        if !listed.status.success() {
            return Err("git does not list the files of the project".into());
        }
        let mut copy = Self { root: root.to_owned(), sources: Vec::new() };
        let mut kept = HashSet::new();
        let mut first = 1;
        for name in String::from_utf8(listed.stdout)?.split('\0').filter(|name| !name.is_empty()) {
            let path = PathBuf::from(name);
            // What was removed and not yet told to git, and links to nothing.
            if !from.join(&path).is_file() {
                continue;
            }
            kept.insert(path.clone());
            match room_of(&path) {
                Some(room) => {
                    let text = fs::read_to_string(from.join(&path))?;
                    let woven = weave::weave(&text, first, &HashSet::new())
                        .map_err(|fault| format!("{name}: {fault}"))?;
                    copy.sources.push(Source { room, path, text, first, woven });
                    first += copy.sources.last().map_or(0, |s| s.woven.mutants.len() as u32);
                }
                None if name == "Cargo.toml" => {
                    copy.put(&path, quick(&fs::read_to_string(from.join(&path))?).as_bytes())?;
                }
                None if name == "core/src/lib.rs" => {
                    let text = fs::read_to_string(from.join(&path))?;
                    copy.put(&path, (text + include_str!("planted.rs")).as_bytes())?;
                }
                None => copy.put(&path, &fs::read(from.join(&path))?)?,
            }
        }
        copy.forget(Path::new(""), &kept)?;
        Ok(copy)
    }

    /// Writes the sources anew without the changes that are left out.
    ///
    /// # Errors
    /// Where a file cannot be written.
    pub fn weave(&mut self, left_out: &HashSet<u32>) -> Result<(), Failure> {
        for source in &mut self.sources {
            source.woven = weave::weave(&source.text, source.first, left_out)?;
        }
        for source in &self.sources {
            self.put(&source.path, source.woven.text.as_bytes())?;
        }
        Ok(())
    }

    /// Writes a file of the copy, and leaves one alone that is so already: what did not change is not built again.
    fn put(&self, path: &Path, bytes: &[u8]) -> Result<(), Failure> {
        let to = self.root.join(path);
        if fs::read(&to).is_ok_and(|there| there == bytes) {
            return Ok(());
        }
        if let Some(folder) = to.parent() {
            fs::create_dir_all(folder)?;
        }
        Ok(fs::write(to, bytes)?)
    }

    /// Removes what an earlier copy held and the project no longer does.
    fn forget(&self, folder: &Path, kept: &HashSet<PathBuf>) -> Result<(), Failure> {
        for entry in fs::read_dir(self.root.join(folder))? {
            let entry = entry?;
            let path = folder.join(entry.file_name());
            if entry.file_type()?.is_dir() {
                self.forget(&path, kept)?;
            } else if !kept.contains(&path) {
                fs::remove_file(entry.path())?;
            }
        }
        Ok(())
    }
}

/// The workspace's manifest for a quick build: without what helps to find a fault, and without lints, because what is
/// woven in is written for the compiler alone.
fn quick(manifest: &str) -> String {
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
    fn rooms_without_their_tests() {
        let room = |path: &str| room_of(Path::new(path));
        assert_eq!(room("core/src/safety/call.rs"), Some("safety"));
        assert_eq!(room("core/src/practice/timed/record.rs"), Some("practice"));
        assert_eq!(room("core/src/practice/timed/tests/model.rs"), None);
        assert_eq!(room("core/src/practice/breathing/tests.rs"), None);
        assert_eq!(room("core/src/progression/RULE.md"), None);
        assert_eq!(room("core/src/words/safety.rs"), None);
        assert_eq!(room("tests/src/model/safety.rs"), None);
    }

    #[test]
    fn a_quick_manifest_has_no_lints() {
        let quick = quick(
            "[workspace.lints.rust]\nunsafe_code = \"forbid\"\n[profile.dev]\nopt-level = 1\ndebug = true\n",
        );
        assert!(
            !quick.contains("forbid") && quick.contains("opt-level = 1\ndebug = false\n"),
            "{quick}"
        );
    }
}
