//! Decides what the copy is made of: every file of the project as it lies there, the rooms woven, and one function more
//! in the core that says which mutant acts.

use std::collections::HashSet;
use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};

use frond_mutants::project;

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
        let mut copy = Self { root: root.to_owned(), sources: Vec::new() };
        let files = project::files(from)?;
        let mut first = 1;
        for path in &files {
            let name = path.display().to_string();
            match room_of(path) {
                Some(room) => {
                    let text = fs::read_to_string(from.join(path))?;
                    let woven = weave::weave(&text, first, &HashSet::new())
                        .map_err(|fault| format!("{name}: {fault}"))?;
                    copy.sources.push(Source { room, path: path.clone(), text, first, woven });
                    first += copy.sources.last().map_or(0, |s| s.woven.mutants.len() as u32);
                }
                None if name == "Cargo.toml" => {
                    let manifest = project::quick(&fs::read_to_string(from.join(path))?, true);
                    project::put(root, path, manifest.as_bytes())?;
                }
                None if name == "core/src/lib.rs" => {
                    let text = fs::read_to_string(from.join(path))?;
                    project::put(root, path, (text + project::PLANTED).as_bytes())?;
                }
                None => project::put(root, path, &fs::read(from.join(path))?)?,
            }
        }
        project::forget(root, Path::new(""), &files.into_iter().collect())?;
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
            project::put(&self.root, &source.path, source.woven.text.as_bytes())?;
        }
        Ok(())
    }
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
}
