//! The two pictures of the disk and the steps between them.

use super::{Call, OFF};
use crate::ports::{DiskError, SyncFor};
use std::collections::{BTreeMap, BTreeSet};
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

pub(super) type Id = u64;

const SECTOR: usize = 512;
/// The length of a growing file reaches the disk in steps of this size.
const PAGE: u64 = 4096;

/// One step in a file that may or may not have reached the disk.
#[derive(Debug, Clone)]
enum FileStep {
    /// Bytes within one sector.
    Bytes { at: usize, bytes: Vec<u8> },
    /// The file is at least this long.
    Len(u64),
}

/// One step in a folder.
#[derive(Debug, Clone)]
enum NameStep {
    Add { path: PathBuf, id: Id },
    Rename { from: PathBuf, to: PathBuf, id: Id },
    Remove { path: PathBuf },
}

impl NameStep {
    fn folder(&self) -> Option<&Path> {
        match self {
            NameStep::Add { path, .. } | NameStep::Remove { path } => path.parent(),
            NameStep::Rename { to, .. } => to.parent(),
        }
    }

    fn apply(self, names: &mut BTreeMap<PathBuf, Id>) {
        match self {
            NameStep::Add { path, id } => {
                names.insert(path, id);
            }
            NameStep::Rename { from, to, id } => {
                names.remove(&from);
                names.insert(to, id);
            }
            NameStep::Remove { path } => {
                names.remove(&path);
            }
        }
    }
}

#[derive(Debug, Clone, Default)]
struct Node {
    folder: bool,
    shown: Vec<u8>,
    /// May be longer than `certain_len`: sectors can arrive before the length does.
    certain: Vec<u8>,
    certain_len: u64,
    steps: Vec<FileStep>,
}

impl Node {
    fn apply(&mut self, step: FileStep) {
        match step {
            FileStep::Bytes { at, bytes } => put(&mut self.certain, at, &bytes),
            FileStep::Len(len) => self.certain_len = self.certain_len.max(len),
        }
    }

    /// Forgets what is uncertain.
    fn cut(&mut self) {
        self.steps.clear();
        self.certain.resize(usize::try_from(self.certain_len).unwrap_or(0), 0);
        self.shown.clone_from(&self.certain);
    }
}

fn put(to: &mut Vec<u8>, at: usize, bytes: &[u8]) {
    let end = at.saturating_add(bytes.len());
    if to.len() < end {
        to.resize(end, 0);
    }
    if let Some(place) = to.get_mut(at..end) {
        place.copy_from_slice(bytes);
    }
}

#[derive(Debug, Default)]
pub(super) struct State {
    nodes: BTreeMap<Id, Node>,
    pub(super) shown: BTreeMap<PathBuf, Id>,
    certain: BTreeMap<PathBuf, Id>,
    names: Vec<NameStep>,
    next: Id,
    pub(super) locks: BTreeSet<PathBuf>,

    pub(super) calls: u64,
    pub(super) counts: BTreeMap<Call, u64>,
    pub(super) syncs: BTreeMap<SyncFor, u64>,
    off: bool,
    pub(super) off_at: Option<u64>,
    pub(super) fail: Option<(Call, u64, bool)>,
    pub(super) room: Option<u64>,
    pub(super) left_out: Option<SyncFor>,
    pub(super) spoiled: Option<(PathBuf, u64, u64)>,
}

/// What happens to a call.
enum Fate {
    Done,
    Fails(DiskError),
    /// The power goes off during it.
    Off,
}

impl State {
    pub(super) fn make_root(&mut self, path: &Path) {
        let id = self.new_node(true);
        self.shown.insert(path.to_path_buf(), id);
        self.certain.insert(path.to_path_buf(), id);
    }

    fn new_node(&mut self, folder: bool) -> Id {
        self.next = self.next.saturating_add(1);
        self.nodes.insert(self.next, Node { folder, ..Node::default() });
        self.next
    }

    fn fate(&mut self, call: Call) -> Fate {
        if self.off {
            return Fate::Fails(OFF);
        }
        let count = self.counts.entry(call).or_default();
        let nth = *count;
        *count = count.saturating_add(1);
        if call != Call::Read {
            let now = self.calls;
            self.calls = self.calls.saturating_add(1);
            if self.off_at == Some(now) {
                self.off = true;
                return Fate::Off;
            }
        }
        match self.fail {
            Some((which, at, forever)) if which == call && (nth == at || forever && nth > at) => {
                Fate::Fails(DiskError::Failed(ErrorKind::Other))
            }
            _ => Fate::Done,
        }
    }

    fn node(&mut self, id: Id) -> Result<&mut Node, DiskError> {
        self.nodes.get_mut(&id).ok_or(DiskError::NotFound)
    }

    pub(super) fn find(&self, path: &Path) -> Result<Id, DiskError> {
        if self.off {
            return Err(OFF);
        }
        self.shown.get(path).copied().ok_or(DiskError::NotFound)
    }

    pub(super) fn list(&self, folder: &Path) -> Result<Vec<String>, DiskError> {
        self.find(folder)?;
        let names = self.shown.keys().filter(|p| p.parent() == Some(folder));
        Ok(names.filter_map(|p| Some(p.file_name()?.to_str()?.to_owned())).collect())
    }

    pub(super) fn create(&mut self, path: &Path, folder: bool) -> Result<Id, DiskError> {
        if self.find(path).is_ok() {
            return Err(DiskError::Exists);
        }
        if !path.parent().is_some_and(|p| self.shown.contains_key(p)) {
            return Err(DiskError::NotFound);
        }
        let fate = self.fate(Call::Create);
        if let Fate::Fails(error) = fate {
            return Err(error);
        }
        let id = self.new_node(folder);
        self.shown.insert(path.to_path_buf(), id);
        self.names.push(NameStep::Add { path: path.to_path_buf(), id });
        if matches!(fate, Fate::Off) { Err(OFF) } else { Ok(id) }
    }

    pub(super) fn rename(&mut self, from: &Path, to: &Path) -> Result<(), DiskError> {
        let id = self.find(from)?;
        let fate = self.fate(Call::Rename);
        if let Fate::Fails(error) = fate {
            return Err(error);
        }
        let step = NameStep::Rename { from: from.to_path_buf(), to: to.to_path_buf(), id };
        step.clone().apply(&mut self.shown);
        self.names.push(step);
        if matches!(fate, Fate::Off) { Err(OFF) } else { Ok(()) }
    }

    pub(super) fn remove(&mut self, path: &Path) -> Result<(), DiskError> {
        self.find(path)?;
        let fate = self.fate(Call::Remove);
        if let Fate::Fails(error) = fate {
            return Err(error);
        }
        self.shown.remove(path);
        self.names.push(NameStep::Remove { path: path.to_path_buf() });
        if matches!(fate, Fate::Off) { Err(OFF) } else { Ok(()) }
    }

    pub(super) fn sync_folder(&mut self, folder: &Path, why: SyncFor) -> Result<(), DiskError> {
        self.find(folder)?;
        match self.fate(Call::SyncFolder) {
            Fate::Done => {}
            Fate::Fails(error) => return Err(error),
            Fate::Off => return Err(OFF),
        }
        let count = self.syncs.entry(why).or_default();
        *count = count.saturating_add(1);
        if self.left_out == Some(why) {
            return Ok(());
        }
        for step in std::mem::take(&mut self.names) {
            if step.folder() == Some(folder) {
                step.apply(&mut self.certain);
            } else {
                self.names.push(step);
            }
        }
        Ok(())
    }

    pub(super) fn len(&mut self, id: Id) -> Result<u64, DiskError> {
        if self.off {
            return Err(OFF);
        }
        Ok(self.node(id)?.shown.len() as u64)
    }

    pub(super) fn read(
        &mut self,
        id: Id,
        path: &Path,
        offset: u64,
        out: &mut [u8],
    ) -> Result<usize, DiskError> {
        if let Fate::Fails(error) = self.fate(Call::Read) {
            return Err(error);
        }
        let end = offset.saturating_add(out.len() as u64);
        if self
            .spoiled
            .as_ref()
            .is_some_and(|(p, from, to)| p == path && offset < *to && end > *from)
        {
            return Err(DiskError::Failed(ErrorKind::Other));
        }
        let node = self.node(id)?;
        let from = usize::try_from(offset).unwrap_or(usize::MAX);
        let there = node.shown.get(from..).unwrap_or_default();
        let n = there.len().min(out.len());
        for (to, from) in out.iter_mut().zip(there) {
            *to = *from;
        }
        Ok(n)
    }

    pub(super) fn remains(&self) -> Vec<Vec<u8>> {
        self.nodes.values().filter(|node| !node.folder).map(|node| node.certain.clone()).collect()
    }

    pub(super) fn write(&mut self, id: Id, offset: u64, bytes: &[u8]) -> Result<(), DiskError> {
        let fate = self.fate(Call::Write);
        let failing = match &fate {
            Fate::Done => None,
            Fate::Off => Some(OFF),
            Fate::Fails(error) if *error == OFF => return Err(OFF),
            Fate::Fails(error) => Some(*error),
        };
        let room = self.room;
        let node = self.node(id)?;
        let at = usize::try_from(offset).unwrap_or(usize::MAX);
        let mut written = match fate {
            // A write that fails has done a part of its work.
            Fate::Fails(_) => bytes.len() / 2 / SECTOR * SECTOR,
            _ => bytes.len(),
        };
        let old_len = node.shown.len();
        let grows = at.saturating_add(written).saturating_sub(old_len) as u64;
        let mut result = failing;
        if let Some(room) = room.filter(|room| grows > *room) {
            let less = usize::try_from(grows.saturating_sub(room)).unwrap_or(usize::MAX);
            written = written.saturating_sub(less);
            result = result.or(Some(DiskError::Full));
        }
        let bytes = bytes.get(..written).unwrap_or_default();
        put(&mut node.shown, at, bytes);
        let mut from = 0usize;
        while from < bytes.len() {
            let start = at.saturating_add(from);
            let step = (SECTOR - start % SECTOR).min(bytes.len() - from);
            let piece = bytes.get(from..from.saturating_add(step)).unwrap_or_default();
            node.steps.push(FileStep::Bytes { at: start, bytes: piece.to_vec() });
            from = from.saturating_add(step);
        }
        let new_len = node.shown.len() as u64;
        let mut len = old_len as u64;
        while len < new_len {
            len = len.saturating_add(1).next_multiple_of(PAGE).min(new_len);
            node.steps.push(FileStep::Len(len));
        }
        if let Some(room) = self.room.as_mut() {
            *room = room.saturating_sub(new_len.saturating_sub(old_len as u64));
        }
        result.map_or(Ok(()), Err)
    }

    pub(super) fn sync(&mut self, id: Id, why: SyncFor) -> Result<(), DiskError> {
        match self.fate(Call::Sync) {
            Fate::Done => {}
            Fate::Off => return Err(OFF),
            Fate::Fails(error) => {
                if error != OFF {
                    // Shown, but given up: no later sync will write it.
                    self.node(id)?.steps.clear();
                }
                return Err(error);
            }
        }
        let count = self.syncs.entry(why).or_default();
        *count = count.saturating_add(1);
        if self.left_out == Some(why) {
            return Ok(());
        }
        let node = self.node(id)?;
        for step in std::mem::take(&mut node.steps) {
            node.apply(step);
        }
        Ok(())
    }

    pub(super) fn pending(&self) -> usize {
        self.names.len() + self.nodes.values().map(|n| n.steps.len()).sum::<usize>()
    }

    fn bare(&self) -> State {
        State {
            nodes: self.nodes.clone(),
            shown: self.shown.clone(),
            certain: self.certain.clone(),
            names: self.names.clone(),
            next: self.next,
            ..State::default()
        }
    }

    pub(super) fn after_kill(&self) -> State {
        State { room: self.room, ..self.bare() }
    }

    pub(super) fn after_power_cut(&self, survives: &mut dyn FnMut() -> bool) -> State {
        let mut after = self.bare();
        for step in std::mem::take(&mut after.names) {
            if survives() {
                step.apply(&mut after.certain);
            }
        }
        for node in after.nodes.values_mut() {
            for step in std::mem::take(&mut node.steps) {
                if survives() {
                    node.apply(step);
                }
            }
            node.cut();
        }
        // What stands in a folder that is gone is gone.
        let names = after.certain.clone();
        after.certain.retain(|path, _| path.ancestors().all(|a| names.contains_key(a)));
        after.shown.clone_from(&after.certain);
        after
    }

    pub(super) fn content(&self, path: &Path) -> Option<Vec<u8>> {
        let node = self.nodes.get(self.shown.get(path)?)?;
        (!node.folder).then(|| node.shown.clone())
    }

    pub(super) fn tamper(&mut self, path: &Path, content: Vec<u8>) {
        let id = match self.shown.get(path) {
            Some(id) => *id,
            None => self.new_node(false),
        };
        self.shown.insert(path.to_path_buf(), id);
        self.certain.insert(path.to_path_buf(), id);
        if let Some(node) = self.nodes.get_mut(&id) {
            node.steps.clear();
            node.certain_len = content.len() as u64;
            node.certain.clone_from(&content);
            node.shown = content;
        }
    }

    pub(super) fn tamper_remove(&mut self, path: &Path) {
        self.shown.remove(path);
        self.certain.remove(path);
        self.names.retain(|step| match step {
            NameStep::Add { path: p, .. } | NameStep::Remove { path: p } => p != path,
            NameStep::Rename { to, .. } => to != path,
        });
    }
}
