//! Everything that was left on a disk, read as its worst enemy would read it. Decides what a folder may hold: of each
//! file every byte is either part of a short documented head ([`plain`]) or looks drawn by chance ([`chance`]), and
//! nothing that was typed and no word of the field stands in it, however it is written ([`needles`]). Leaves to the tests
//! what is left where, and by whom.
//!
//! A file that has to be open (a plan as a file, a table that was asked for) is not for this: it is named in `PRIVACY.md`.

pub mod chance;
pub mod needles;
pub mod plain;
#[cfg(test)]
mod tests;

use std::fs;
use std::os::unix::fs::PermissionsExt;
use std::path::Path;

pub use needles::Needles;
pub use plain::Kind;

/// Words of the field, in the languages there are, with nothing of one person. Each has six letters or more: a shorter one
/// stands in random bytes by chance.
pub const WORDS: [&str; 39] = [
    "pelvic",
    "pelvis",
    "vagina",
    "dilator",
    "dilatador",
    "trainer",
    "session",
    "sesión",
    "discomfort",
    "molestia",
    "practice",
    "breathing",
    "respiración",
    "bleeding",
    "sangrado",
    "clinic",
    "clínica",
    "clinician",
    "programme",
    "programa",
    "therapy",
    "therapist",
    "fisioterapeuta",
    "physical",
    "pregnan",
    "embaraz",
    "numb_saddle",
    "heavy_bleeding",
    "could_not_start",
    "step_back",
    "step_up",
    "on_back",
    "schedule",
    "reminder",
    "emergency",
    "lubricant",
    "rating",
    "caution",
    "signature",
];

/// One file that was left: its name, and what is in it.
#[derive(Debug)]
pub struct Left {
    /// The name with the folders it lies in, from where the sweep began.
    pub name: String,
    /// Its bytes.
    pub bytes: Vec<u8>,
    /// Its permissions, where there are any: the lowest nine bits.
    pub mode: Option<u32>,
}

/// All that lies in a folder and the folders in it; a folder counts as a file without bytes.
///
/// # Panics
/// The folder cannot be read.
#[must_use]
pub fn left_in(folder: &Path) -> Vec<Left> {
    let mut left = Vec::new();
    walk(folder, folder, &mut left);
    left.sort_by(|one, other| one.name.cmp(&other.name));
    left
}

fn walk(from: &Path, folder: &Path, left: &mut Vec<Left>) {
    for entry in fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        let about = fs::symlink_metadata(&path).expect("what it is");
        let name = path.strip_prefix(from).expect("below it").to_string_lossy().into_owned();
        let mode = Some(about.permissions().mode() & 0o777);
        if about.is_dir() {
            left.push(Left { name: format!("{name}/"), bytes: Vec::new(), mode });
            walk(from, &path, left);
        } else {
            left.push(Left { name, bytes: fs::read(&path).expect("its bytes"), mode });
        }
    }
}

/// Whether a folder lies in one that is closed.
fn inside(left: &[Left], name: &str) -> bool {
    left.iter().any(|folder| {
        folder.mode == Some(0o700)
            && folder.name.ends_with('/')
            && folder.name != name
            && name.starts_with(&folder.name)
    })
}

/// What is wrong with what was left. `kind` says what a file has to be, by its name; `None` where no such file may be.
#[must_use]
pub fn faults(
    left: &[Left],
    needles: &Needles,
    kind: impl Fn(&str) -> Option<Kind>,
) -> Vec<String> {
    let mut wrong = Vec::new();
    for one in left {
        let name = &one.name;
        wrong.extend(
            needles.found(name.as_bytes()).into_iter().map(|it| format!("the name {name}: {it}")),
        );
        wrong.extend(needles.found(&one.bytes).into_iter().map(|it| format!("{name}: {it}")));
        // sled makes its files as the system has them; nobody else comes into the folder that they lie in.
        let may = name.ends_with('/') || kind(name) == Some(Kind::Sled);
        if one.mode.is_some_and(|mode| mode & 0o077 != 0) && !(may && inside(left, name)) {
            wrong.push(format!("{name}: others may look at it"));
        }
        if name.ends_with('/') {
            continue;
        }
        let Some(kind) = kind(name) else {
            wrong.push(format!("{name}: no such file is documented"));
            continue;
        };
        match plain::sealed(kind, &one.bytes) {
            Ok(sealed) => {
                wrong.extend(chance::faults(&sealed).into_iter().map(|it| format!("{name}: {it}")));
            }
            Err(why) => wrong.push(format!("{name}: {why}")),
        }
    }
    wrong
}
