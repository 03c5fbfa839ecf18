//! The files that are written: one for each sort of line, what each column means, and the questions.

use std::fs::{DirBuilder, File, OpenOptions};
use std::io::{BufWriter, Write};
use std::os::unix::fs::{DirBuilderExt, OpenOptionsExt};
use std::path::Path;

use frond_core::summary::fhir::Bundle;
use frond_core::summary::flat::{Column, Diary, Flat, Session, Sign, Step, Week};
use serde::Serialize;
use serde_json::{Map, Value, json};

use crate::failure::Failure;
use crate::file;

/// The sorts of lines, each with its columns.
pub(super) const SORTS: [(&str, &[Column]); 5] = [
    ("diaries", Diary::COLUMNS),
    ("sessions", Session::COLUMNS),
    ("steps", Step::COLUMNS),
    ("weeks", Week::COLUMNS),
    ("signs", Sign::COLUMNS),
];

/// One file of lines.
struct Lined(BufWriter<File>);

impl Lined {
    fn new(folder: &Path, name: &str) -> Result<Self, Failure> {
        let path = folder.join(format!("{name}.ndjson"));
        let file = OpenOptions::new().write(true).create_new(true).mode(0o600).open(&path);
        Ok(Self(BufWriter::new(file.map_err(|_| file::is_there(&path))?)))
    }

    fn line(&mut self, value: &impl Serialize) -> Result<(), Failure> {
        serde_json::to_writer(&mut self.0, value).map_err(|_| no_room())?;
        self.0.write_all(b"\n").map_err(|_| no_room())
    }

    fn end(mut self) -> Result<(), Failure> {
        self.0.flush().map_err(|_| no_room())?;
        self.0.get_ref().sync_all().map_err(|_| no_room())
    }
}

/// Every file.
pub(super) struct Lines {
    diaries: Lined,
    sessions: Lined,
    steps: Lined,
    weeks: Lined,
    signs: Lined,
    fhir: Option<Lined>,
}

impl Lines {
    /// In a new or empty folder.
    ///
    /// # Errors
    /// There is something in it, or it cannot be made.
    pub(super) fn to(folder: &Path, fhir: bool) -> Result<Self, Failure> {
        let name = folder.display();
        let cannot = |_| {
            Failure::input(format!("The folder {name} cannot be made. Choose another with --out."))
        };
        DirBuilder::new().recursive(true).mode(0o700).create(folder).map_err(cannot)?;
        if folder.read_dir().map_err(cannot)?.next().is_some() {
            return Err(Failure::input(format!(
                "There is something in {name} already. Give a new or empty folder."
            )));
        }
        file::write_new(&folder.join("columns.json"), &file::json(&columns())?)?;
        file::write_new(&folder.join("clinic.sql"), super::SQL.as_bytes())?;
        Ok(Self {
            diaries: Lined::new(folder, "diaries")?,
            sessions: Lined::new(folder, "sessions")?,
            steps: Lined::new(folder, "steps")?,
            weeks: Lined::new(folder, "weeks")?,
            signs: Lined::new(folder, "signs")?,
            fhir: fhir.then(|| Lined::new(folder, "fhir")).transpose()?,
        })
    }

    /// The lines of one diary.
    pub(super) fn flat(&mut self, flat: &Flat) -> Result<(), Failure> {
        self.diaries.line(&flat.diary)?;
        flat.sessions.iter().try_for_each(|one| self.sessions.line(one))?;
        flat.steps.iter().try_for_each(|one| self.steps.line(one))?;
        flat.weeks.iter().try_for_each(|one| self.weeks.line(one))?;
        flat.signs.iter().try_for_each(|one| self.signs.line(one))
    }

    /// The resources of one diary.
    pub(super) fn bundle(&mut self, bundle: &Bundle) -> Result<(), Failure> {
        let Some(lined) = &mut self.fhir else { return Ok(()) };
        bundle.entry.iter().try_for_each(|entry| lined.line(&entry.resource))
    }

    pub(super) fn end(self) -> Result<(), Failure> {
        let Self { diaries, sessions, steps, weeks, signs, fhir } = self;
        [diaries, sessions, steps, weeks, signs].into_iter().chain(fhir).try_for_each(Lined::end)
    }
}

fn no_room() -> Failure {
    Failure::Else("The lines could not be written. Check the room on the disk.".to_owned())
}

/// What each column is, for programs that ask for types and for people.
fn columns() -> Value {
    let sorts: Map<String, Value> =
        SORTS.iter().map(|(name, columns)| ((*name).to_owned(), json!(columns))).collect();
    Value::Object(sorts)
}
