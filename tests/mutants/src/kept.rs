//! Decides what is kept from one run to the next, and how it is written: what the compiler refused, and what became of
//! each mutant, room by room. All of it goes by names, so that it outlives a change elsewhere in a file.

use std::collections::{HashMap, HashSet};
use std::fs::{self, File};
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::sync::Mutex;

use crate::Failure;
use crate::chase::Fate;
use crate::outcome::Line;

/// The names of what the compiler refused in the last build.
pub fn refused(folder: &Path) -> HashSet<String> {
    let text = fs::read_to_string(folder.join("refused")).unwrap_or_default();
    text.lines().map(str::to_owned).collect()
}

/// Keeps what the compiler refused: a build begins with what built last time, and is not done twice. `lines` are those of
/// some rooms; what is known of the others stays.
///
/// # Errors
/// Where it cannot be written.
pub fn write_refused(folder: &Path, lines: &[Line]) -> Result<(), Failure> {
    let mut names = refused(folder);
    for line in lines {
        if line.fate == Fate::NotBuildable {
            names.insert(line.name.clone());
        } else {
            names.remove(&line.name);
        }
    }
    let mut names: Vec<String> = names.into_iter().collect();
    names.sort();
    Ok(fs::write(folder.join("refused"), names.join("\n") + "\n")?)
}

fn result(folder: &Path, room: &str) -> PathBuf {
    folder.join(format!("result-{room}.tsv"))
}

/// What became of each mutant of a room in the last run, by name.
///
/// # Errors
/// Where there was none.
pub fn last(folder: &Path, room: &str) -> Result<HashMap<String, Fate>, Failure> {
    let text = fs::read_to_string(result(folder, room))
        .map_err(|_| format!("{room} was not run whole yet"))?;
    Ok(fates(&text))
}

fn fates(text: &str) -> HashMap<String, Fate> {
    let row = |line: &str| {
        let row: Vec<&str> = line.split('\t').collect();
        Some(((*row.get(3)?).to_owned(), Fate::read(row.get(2)?)?))
    };
    text.lines().filter_map(row).collect()
}

fn row(line: &Line, fate: &Fate) -> String {
    format!("{}\t{}\t{fate}\t{}\n", line.number, line.line, line.name)
}

/// What became of the mutants of a room so far, in a run that may be broken off.
pub struct SoFar(Mutex<File>);

impl SoFar {
    /// Goes on with what an earlier run found out, or begins anew; says what is known.
    ///
    /// # Errors
    /// Where it cannot be written.
    pub fn open(
        folder: &Path,
        room: &str,
        go_on: bool,
    ) -> Result<(Self, HashMap<String, Fate>), Failure> {
        let path = folder.join(format!("so-far-{room}.tsv"));
        let text =
            if go_on { fs::read_to_string(&path).unwrap_or_default() } else { String::new() };
        let file = File::options().create(true).append(true).open(&path)?;
        if !go_on {
            file.set_len(0)?;
        }
        Ok((Self(Mutex::new(file)), fates(&text)))
    }

    /// Notes what became of one. A note that cannot be written costs time in the next run, and nothing else.
    pub fn note(&self, line: &Line, fate: &Fate) {
        if let Ok(mut file) = self.0.lock() {
            let _ = file.write_all(row(line, fate).as_bytes());
        }
    }
}

/// Keeps what became of each mutant of a room.
///
/// # Errors
/// Where it cannot be written.
pub fn write(folder: &Path, room: &str, lines: &[Line]) -> Result<(), Failure> {
    let of = lines.iter().filter(|line| line.room == room);
    let text: String = of.map(|line| row(line, &line.fate)).collect();
    Ok(fs::write(result(folder, room), text)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(name: &str, fate: Fate) -> Line {
        Line { number: 4, room: "safety", name: name.to_owned(), line: 3, fate }
    }

    #[test]
    fn what_became_of_them_is_read_as_it_was_written() {
        let folder = tempfile::tempdir().unwrap();
        let fates = [
            Fate::NotBuildable,
            Fate::Killed("frond_core".to_owned()),
            Fate::TimedOut("rule_model".to_owned()),
            Fate::Survived(12),
        ];
        let named = |(at, fate): (usize, Fate)| line(&format!("f: {at} => x"), fate);
        let lines: Vec<Line> = fates.into_iter().enumerate().map(named).collect();
        write(folder.path(), "safety", &lines).unwrap();
        let last = last(folder.path(), "safety").unwrap();
        assert_eq!(last.len(), 4);
        assert!(lines.iter().all(|line| last[&line.name] == line.fate));
        assert!(super::last(folder.path(), "practice").is_err());
    }

    #[test]
    fn what_was_refused_is_kept_until_it_builds() {
        let folder = tempfile::tempdir().unwrap();
        let no = |name: &str| line(name, Fate::NotBuildable);
        write_refused(folder.path(), &[no("a"), no("b")]).unwrap();
        write_refused(folder.path(), &[line("a", Fate::Survived(0)), no("c")]).unwrap();
        assert_eq!(refused(folder.path()), HashSet::from(["b".to_owned(), "c".to_owned()]));
    }

    #[test]
    fn a_run_that_was_broken_off_goes_on() {
        let folder = tempfile::tempdir().unwrap();
        let open = |go_on| SoFar::open(folder.path(), "safety", go_on).unwrap();
        let (so_far, known) = open(false);
        assert!(known.is_empty());
        so_far.note(&line("a", Fate::NotBuildable), &Fate::Survived(3));
        let (so_far, known) = open(true);
        assert_eq!(known["a"], Fate::Survived(3));
        so_far.note(&line("b", Fate::NotBuildable), &Fate::TimedOut("x".to_owned()));
        assert_eq!(open(true).1.len(), 2);
        assert!(open(false).1.is_empty() && open(true).1.is_empty());
    }
}
