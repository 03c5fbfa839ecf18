//! The programmes of a clinic: drafts that are being typed, and finished revisions. Decides how they are kept
//! (sealed, each a file whose name tells nothing), that a finished revision is never changed, that revisions of
//! one programme count up, and that what is thrown away can be brought back until the desk is started again.
//!
//! Leaves what a draft and a programme are to the core, and signing to the hand-over: what is kept of a
//! finished programme are its exact bytes.

use std::fs;
use std::path::PathBuf;
use std::sync::Arc;

use chrono::NaiveDate;
use frond_core::diary::entry::SignKey;
use frond_core::moment::Stamp;
use frond_core::ports::Random;
use frond_core::programme::draft::{Checked, Draft, Given, text_of};
use frond_core::programme::plan::Programme;
use frond_core::programme::read::read;
use frond_core::programme::values::{ProgrammeId, Revision};
use frond_core::sealing::BoxKey;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};

use super::Clinic;
use super::folder::{Folder, FolderError, replace};

const DRAFTS: &str = "drafts";
const PROGRAMMES: &str = "programmes";
/// What was thrown away keeps its name and gets this ending.
const AWAY: &str = "away";
/// The version of both forms.
const FORMAT: u32 = 1;

/// Which file: 32 hexadecimal digits that were drawn.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(crate) struct FileId(String);

impl FileId {
    /// The id that an address names.
    pub(crate) fn parse(text: &str) -> Option<Self> {
        let hex = |byte: u8| byte.is_ascii_digit() || (b'a'..=b'f').contains(&byte);
        (text.len() == 32 && text.bytes().all(hex)).then(|| Self(text.to_owned()))
    }

    pub(crate) fn as_str(&self) -> &str {
        &self.0
    }
}

/// Why a draft or programme could not be had or kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum ProgrammesError {
    /// There is none of this name.
    NoSuch,
    /// Its file was changed, or is of other keys.
    Damaged,
    /// Written by a newer Frond.
    Newer,
    /// Something in the draft has to be put right first.
    NotFinished,
    /// No random bytes.
    NotSealed,
    /// The folder.
    Folder(FolderError),
}

impl From<FolderError> for ProgrammesError {
    fn from(error: FolderError) -> Self {
        Self::Folder(error)
    }
}

impl From<std::io::Error> for ProgrammesError {
    fn from(error: std::io::Error) -> Self {
        match error.kind() {
            std::io::ErrorKind::NotFound => Self::NoSuch,
            _ => Self::Folder(error.into()),
        }
    }
}

/// A draft as it is kept.
#[derive(Clone, Serialize, Deserialize)]
pub(crate) struct Kept {
    format: u32,
    /// Of which programme it becomes a revision.
    pub(crate) programme: ProgrammeId,
    /// Which revision it becomes.
    pub(crate) revision: Revision,
    /// When it was last saved.
    pub(crate) saved: Stamp,
    /// The text of the revision it was begun from.
    pub(crate) earlier: Option<String>,
    /// What was typed.
    pub(crate) draft: Draft,
}

impl Kept {
    /// What the desk adds to the draft, were it issued now.
    pub(crate) fn given(&self, now: Stamp) -> Given {
        Given { id: self.programme.clone(), revision: self.revision, issued_at: now }
    }

    /// What was found in it.
    pub(crate) fn check(&self, now: Stamp) -> Checked {
        self.draft.check(&self.given(now))
    }

    /// The revision it was begun from.
    pub(crate) fn earlier(&self) -> Option<Programme> {
        self.earlier.as_ref().and_then(|text| read(text.as_bytes()).ok())
    }
}

/// A finished revision as it is kept.
#[derive(Clone, Serialize, Deserialize)]
struct FinishedFile {
    format: u32,
    text: String,
}

/// A finished revision.
#[derive(Clone)]
pub(crate) struct Finished {
    /// Its file.
    pub(crate) file: FileId,
    /// Its exact text, to be signed and handed over.
    pub(crate) text: Arc<str>,
    /// The programme that the text is.
    pub(crate) programme: Programme,
}

/// Everything there is.
pub(crate) struct Listed {
    /// The drafts, the one saved last first.
    pub(crate) drafts: Vec<(FileId, Kept)>,
    /// The finished revisions, by nickname, the newest revision of each programme first.
    pub(crate) finished: Vec<Finished>,
    /// Drafts that were thrown away and can still be brought back.
    pub(crate) away: Vec<FileId>,
    /// Files that could not be opened.
    pub(crate) unread: usize,
}

/// The programmes of an open desk.
pub(crate) struct Programmes {
    key: BoxKey,
    random: Arc<dyn Random>,
    drafts: PathBuf,
    programmes: PathBuf,
}

/// Clears away what was thrown away before this start. What cannot be cleared stays, and does no harm.
pub(crate) fn sweep(folder: &Folder) {
    let Ok(room) = folder.room(DRAFTS) else { return };
    for path in fs::read_dir(room).into_iter().flatten().flatten().map(|entry| entry.path()) {
        if path.extension().is_some_and(|ending| ending == AWAY) {
            let _stays = fs::remove_file(path);
        }
    }
}

impl Programmes {
    /// Those of this clinic.
    ///
    /// # Errors
    /// [`ProgrammesError::Folder`].
    pub(crate) fn of(clinic: &Clinic) -> Result<Self, ProgrammesError> {
        Ok(Self {
            key: clinic.keys.box_key("programmes"),
            random: clinic.random.clone(),
            drafts: clinic.folder.room(DRAFTS)?,
            programmes: clinic.folder.room(PROGRAMMES)?,
        })
    }

    /// Everything there is.
    ///
    /// # Errors
    /// The folder cannot be read.
    pub(crate) fn list(&self) -> Result<Listed, ProgrammesError> {
        let mut unread = 0;
        let mut drafts = Vec::new();
        for id in files(&self.drafts, None)? {
            match self.draft(&id) {
                Ok(kept) => drafts.push((id, kept)),
                Err(_) => unread += 1,
            }
        }
        drafts.sort_by_key(|(_, kept)| std::cmp::Reverse(kept.saved.millis()));
        let mut finished = Vec::new();
        for id in files(&self.programmes, None)? {
            match self.finished(&id) {
                Ok(one) => finished.push(one),
                Err(_) => unread += 1,
            }
        }
        finished.sort_by(|one, other| {
            let key = |of: &Finished| {
                let programme = &of.programme;
                (programme.for_whom.as_str().to_lowercase(), programme.id.clone())
            };
            let newest = other.programme.revision.cmp(&one.programme.revision);
            key(one).cmp(&key(other)).then(newest)
        });
        Ok(Listed { drafts, finished, away: files(&self.drafts, Some(AWAY))?, unread })
    }

    /// A draft.
    ///
    /// # Errors
    /// [`ProgrammesError`].
    pub(crate) fn draft(&self, id: &FileId) -> Result<Kept, ProgrammesError> {
        let kept: Kept = self.open(&self.drafts, DRAFTS, id)?;
        if kept.format > FORMAT { Err(ProgrammesError::Newer) } else { Ok(kept) }
    }

    /// A finished revision.
    ///
    /// # Errors
    /// [`ProgrammesError`].
    pub(crate) fn finished(&self, id: &FileId) -> Result<Finished, ProgrammesError> {
        let kept: FinishedFile = self.open(&self.programmes, PROGRAMMES, id)?;
        if kept.format > FORMAT {
            return Err(ProgrammesError::Newer);
        }
        let programme = read(kept.text.as_bytes()).map_err(|_| ProgrammesError::Damaged)?;
        Ok(Finished { file: id.clone(), text: kept.text.into(), programme })
    }

    /// Begins a new programme, in which nothing stands yet.
    ///
    /// # Errors
    /// [`ProgrammesError`].
    pub(crate) fn begin(&self, now: Stamp) -> Result<FileId, ProgrammesError> {
        let own = self.drawn()?;
        let programme = ProgrammeId::new(&own.0).map_err(|_| ProgrammesError::NotSealed)?;
        let first = Revision::new(1).map_err(|_| ProgrammesError::NotSealed)?;
        let draft = Draft::new();
        self.put_draft(Kept {
            format: FORMAT,
            programme,
            revision: first,
            saved: now,
            earlier: None,
            draft,
        })
    }

    /// Begins the next revision of a programme, wherever it was written; signs that are open in a diary are
    /// offered to be closed, none is ticked.
    ///
    /// # Errors
    /// [`ProgrammesError`].
    pub(crate) fn begin_next(
        &self,
        of: &Programme,
        open: impl IntoIterator<Item = (SignKey, NaiveDate)>,
        now: Stamp,
    ) -> Result<FileId, ProgrammesError> {
        let mut draft = Draft::next_of(of);
        draft.offer_signs(open);
        let earlier = text_of(of).map_err(|_| ProgrammesError::Damaged)?;
        let revision = self.next_revision(of)?;
        let programme = of.id.clone();
        let (format, saved) = (FORMAT, now);
        self.put_draft(Kept { format, programme, revision, saved, earlier: Some(earlier), draft })
    }

    /// One more than the highest of this programme, finished or begun.
    fn next_revision(&self, of: &Programme) -> Result<Revision, ProgrammesError> {
        let listed = self.list()?;
        let finished = listed.finished.iter().map(|one| &one.programme);
        let finished = finished.filter(|one| one.id == of.id).map(|one| one.revision);
        let begun = listed.drafts.iter().map(|(_, kept)| kept);
        let begun = begun.filter(|kept| kept.programme == of.id).map(|kept| kept.revision);
        let highest = finished.chain(begun).chain([of.revision]).max().unwrap_or(of.revision);
        Revision::new(u64::from(highest) + 1).map_err(|_| ProgrammesError::Damaged)
    }

    /// Keeps a draft as it was typed.
    ///
    /// # Errors
    /// [`ProgrammesError`]; what was kept before is then still kept.
    pub(crate) fn save(&self, id: &FileId, kept: &Kept) -> Result<(), ProgrammesError> {
        self.put(&self.drafts, DRAFTS, id, kept)
    }

    /// Throws a draft away; it can be brought back until the desk is started again.
    ///
    /// # Errors
    /// [`ProgrammesError`].
    pub(crate) fn throw_away(&self, id: &FileId) -> Result<(), ProgrammesError> {
        let path = self.drafts.join(&id.0);
        Ok(fs::rename(&path, path.with_extension(AWAY))?)
    }

    /// Brings a draft back.
    ///
    /// # Errors
    /// [`ProgrammesError`].
    pub(crate) fn bring_back(&self, id: &FileId) -> Result<(), ProgrammesError> {
        let path = self.drafts.join(&id.0);
        Ok(fs::rename(path.with_extension(AWAY), path)?)
    }

    /// Finishes a draft as the revision it was begun for, issued now; where another draft of the programme was
    /// finished as that or a later one in between, as the next behind it. The draft is then thrown away.
    ///
    /// # Errors
    /// [`ProgrammesError::NotFinished`] where something has to be put right first.
    pub(crate) fn finish(&self, id: &FileId, now: Stamp) -> Result<Finished, ProgrammesError> {
        let mut kept = self.draft(id)?;
        let finished = self.list()?.finished;
        let finished = finished.iter().map(|one| &one.programme);
        let of_this = finished.filter(|one| one.id == kept.programme).map(|one| one.revision);
        if let Some(highest) = of_this.max().filter(|highest| *highest >= kept.revision) {
            let next = Revision::new(u64::from(highest) + 1);
            kept.revision = next.map_err(|_| ProgrammesError::Damaged)?;
        }
        let programme = kept.check(now).programme.ok_or(ProgrammesError::NotFinished)?;
        let text = text_of(&programme).map_err(|_| ProgrammesError::NotFinished)?;
        let file = self.drawn()?;
        let finished = FinishedFile { format: FORMAT, text: text.clone() };
        self.put(&self.programmes, PROGRAMMES, &file, &finished)?;
        self.throw_away(id)?;
        Ok(Finished { file, text: text.into(), programme })
    }

    fn put_draft(&self, kept: Kept) -> Result<FileId, ProgrammesError> {
        let id = self.drawn()?;
        self.save(&id, &kept)?;
        Ok(id)
    }

    fn drawn(&self) -> Result<FileId, ProgrammesError> {
        let mut bytes = [0u8; 16];
        self.random.fill(&mut bytes).map_err(|_| ProgrammesError::NotSealed)?;
        Ok(FileId(bytes.iter().map(|byte| format!("{byte:02x}")).collect()))
    }

    fn put(
        &self,
        room: &std::path::Path,
        kind: &str,
        id: &FileId,
        value: &impl Serialize,
    ) -> Result<(), ProgrammesError> {
        let text = serde_json::to_vec(value).map_err(|_| ProgrammesError::NotSealed)?;
        let sealed = self.key.seal(&*self.random, place(kind, id).as_bytes(), &text);
        let sealed = sealed.map_err(|_| ProgrammesError::NotSealed)?;
        Ok(replace(&room.join(&id.0), &sealed)?)
    }

    fn open<T: DeserializeOwned>(
        &self,
        room: &std::path::Path,
        kind: &str,
        id: &FileId,
    ) -> Result<T, ProgrammesError> {
        let sealed = fs::read(room.join(&id.0))?;
        let text = self.key.open(place(kind, id).as_bytes(), &sealed);
        let text = text.map_err(|_| ProgrammesError::Damaged)?;
        serde_json::from_slice(&text).map_err(|_| ProgrammesError::Damaged)
    }
}

/// Where a sealed file belongs: one in another's place does not open.
fn place(kind: &str, id: &FileId) -> String {
    format!("{kind} {}", id.0)
}

/// The files of a room with this ending.
fn files(room: &std::path::Path, ending: Option<&str>) -> Result<Vec<FileId>, ProgrammesError> {
    let mut found = Vec::new();
    for entry in fs::read_dir(room)? {
        let path = entry?.path();
        let own = path.extension().and_then(|own| own.to_str());
        let stem = path.file_stem().and_then(|stem| stem.to_str());
        if own == ending {
            found.extend(stem.and_then(FileId::parse));
        }
    }
    found.sort();
    Ok(found)
}

#[cfg(test)]
mod tests;
