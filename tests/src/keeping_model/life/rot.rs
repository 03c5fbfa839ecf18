//! Bytes that go bad while they lie there: a bit, or a stretch up to a sector and more. Everything is still
//! there afterwards, or what is not is said.

use super::*;

impl Life {
    /// A file of the diary goes bad in one place, and the diary is opened again.
    pub(super) fn rot(&mut self) {
        let files: Vec<(PathBuf, Vec<u8>)> = world::files(&self.disk)
            .into_iter()
            .filter(|(path, bytes)| path.starts_with(FOLDER) && !bytes.is_empty())
            .collect();
        if files.is_empty() {
            return;
        }
        let (path, bytes) = self.dice.pick(&files);
        let mut rotten = bytes.clone();
        let at = self.dice.index(rotten.len());
        if self.dice.percent(60) {
            rotten[at] ^= 1 << self.dice.below(8);
        } else {
            let long = self.dice.pick(&[16usize, 512, 700]);
            for byte in rotten.iter_mut().skip(at).take(long) {
                *byte = self.dice.bits().to_le_bytes()[0];
            }
        }
        self.say(&format!("{} goes bad at {at} of {}", path.display(), bytes.len()));
        self.count("files gone bad");
        if let Some(model) = self.backups.get(&bytes).cloned()
            && let Some((entries, pass)) = world::backup(&rotten)
        {
            let same = pass == model.pass && read_as(&model.lines, &entries).is_some();
            assert!(same, "a backup gone bad opens as something else");
            self.backups.insert(rotten.clone(), model);
        }
        self.companion = None;
        self.disk.tamper(&path, rotten);
        let day = self.moment.now.day();
        let candidates = vec![self.model.clone(), self.model.owned_up(day)];
        self.settle(candidates, Fault::None);
        if self.fate.is_none() {
            self.count("gone bad, and nothing lost");
        }
    }
}
