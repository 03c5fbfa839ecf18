//! Decides what a run is asked to do, from the words behind the program's name.

use std::collections::HashSet;
use std::path::PathBuf;
use std::time::Duration;

use crate::Failure;
use crate::copy::ROOMS;

/// What is asked for.
pub struct Asked {
    /// The project.
    pub from: PathBuf,
    /// Where the copy, the build and the result lie.
    pub to: PathBuf,
    /// The rooms to look at.
    pub rooms: Vec<&'static str>,
    /// Only what survived in the last run; the others as they were found then.
    pub survivors: bool,
    /// A run that was broken off goes on where it was.
    pub go_on: bool,
    /// The compiler is asked about every mutant again.
    pub afresh: bool,
    /// Tests that take longer than this are left out.
    pub longest: Option<Duration>,
    /// Only these numbers.
    pub only: HashSet<u32>,
    /// How many mutants at a time.
    pub jobs: usize,
    /// The mutants are only listed.
    pub list: bool,
    /// Of the core's own tests only those whose names begin so; all, where none is given.
    pub named: Vec<String>,
    /// The core's own tests alone.
    pub core_alone: bool,
    /// The tests of frond-tests to build.
    pub tests: Vec<String>,
}

impl Asked {
    /// Reads the words behind the program's name.
    ///
    /// # Errors
    /// Says what is missing or not understood.
    pub fn read(mut given: impl Iterator<Item = String>) -> Result<Self, Failure> {
        let mut next = |what: &str| given.next().ok_or_else(|| format!("{what} is missing"));
        let (from, to) =
            (PathBuf::from(next("the project's folder")?), PathBuf::from(next("a folder")?));
        let mut asked = Asked {
            from,
            to,
            rooms: Vec::new(),
            survivors: false,
            go_on: false,
            afresh: false,
            list: false,
            named: Vec::new(),
            core_alone: false,
            longest: None,
            only: HashSet::new(),
            jobs: std::thread::available_parallelism().map_or(1, usize::from),
            tests: Vec::new(),
        };
        while let Ok(word) = next("") {
            match word.as_str() {
                "--survivors" => asked.survivors = true,
                "--go-on" => asked.go_on = true,
                "--afresh" => asked.afresh = true,
                "--list" => asked.list = true,
                "--named" => asked.named.push(next("how names begin")?),
                "--core-alone" => asked.core_alone = true,
                "--longest" => {
                    asked.longest = Some(Duration::from_secs(next("how many seconds")?.parse()?));
                }
                "--jobs" => asked.jobs = next("how many at a time")?.parse()?,
                "--test" => asked.tests.push(next("a test's name")?),
                "--only" => {
                    for number in next("numbers")?.split(',') {
                        asked.only.insert(number.parse()?);
                    }
                }
                "--room" => {
                    let name = next("a room")?;
                    let room = ROOMS.into_iter().find(|room| *room == name);
                    asked
                        .rooms
                        .push(room.ok_or_else(|| format!("{name} is no room that is looked at"))?);
                }
                other => return Err(format!("{other} is not understood").into()),
            }
        }
        if asked.core_alone {
            asked.tests.clear();
        }
        if asked.rooms.is_empty() {
            asked.rooms.extend(ROOMS);
        }
        Ok(asked)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(words: &str) -> Result<Asked, Failure> {
        Asked::read(words.split_whitespace().map(str::to_owned))
    }

    #[test]
    fn all_rooms_unless_some_are_named() {
        assert_eq!(read("from to").unwrap().rooms, ROOMS);
        let some = read("from to --room safety --only 3,4 --longest 5 --test rule_model").unwrap();
        assert_eq!((some.rooms, some.only.len()), (vec!["safety"], 2));
        assert_eq!((some.longest, some.tests.len()), (Some(Duration::from_secs(5)), 1));
    }

    #[test]
    fn what_is_not_understood_is_refused() {
        for wrong in
            ["from", "from to --room words", "from to --only x", "from to --fast", "from to --jobs"]
        {
            assert!(read(wrong).is_err(), "{wrong}");
        }
    }
}
