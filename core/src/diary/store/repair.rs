//! What is done about a finding: keep the original, write a new journal, or read only.

use super::aside;
use super::errors::OpenError;
use super::findings::{Findings, ReadOnly};
use super::frame::{Content, Frame};
use super::journal::{self, Journal, RewriteError};
use super::layout::Seq;
use super::open::Read;
use super::scan::Scan;
use super::scrub::RENEW;
use super::seal::SealKey;
use super::sealed::SealedFile;
use super::snapshot::{Snapshot, SnapshotSaver};
use crate::ports::{Disk, Random};
use std::path::Path;

/// Where to work, and with what.
pub(super) struct Place<'a> {
    pub(super) disk: &'a dyn Disk,
    pub(super) folder: &'a Path,
    pub(super) random: &'a dyn Random,
}

/// Brings what was read into a state that can be written to, or says that it can only be read.
///
/// Whenever something has to be written anew, `read` holds the whole journal.
pub(super) fn settle(
    place: &Place<'_>,
    read: Read,
    wrapper: &SealKey,
    sealed: &SealedFile,
    findings: &mut Findings,
) -> Result<(Journal, Option<Snapshot>, Vec<Frame>), OpenError> {
    let keep_original = !read.is_as_written();
    let Read { file, key, header_tag, start, scan, mut snapshot, renew, .. } = read;
    let mut journal =
        Journal::adopt(file, key, header_tag, start, snapshot.as_ref().map(|s| s.place), &scan)?;
    if findings.read_only.is_none() && (keep_original || renew) {
        match rewrite(place, keep_original, &scan, wrapper, findings) {
            Ok(new) => {
                findings.renewed = !keep_original;
                carry_over(&new, sealed, &mut snapshot);
                journal = new;
                // If it stays, the next opening writes a new journal once more: no harm.
                let _ = place.disk.remove(&place.folder.join(RENEW));
            }
            Err(why) => findings.read_only = Some(why),
        }
    }
    if findings.snapshot.is_some() && findings.read_only.is_none() {
        // It may be needed to understand what happened; rebuilding the state does not need it.
        if let Ok(kept) = sealed.set_aside() {
            findings.kept_aside.push(kept);
        }
    }
    Ok((journal, snapshot, scan.frames))
}

/// Keeps the original byte for byte, then puts a new journal with all that verifies in its place.
/// Every hole found now gets a mark, so that no later entry can take a lost one's place and no
/// later opening can overlook it.
fn rewrite(
    place: &Place<'_>,
    keep_original: bool,
    scan: &Scan,
    wrapper: &SealKey,
    findings: &mut Findings,
) -> Result<Journal, ReadOnly> {
    if keep_original {
        let kept = aside::copy_aside(place.disk, place.folder, journal::NAME)?;
        findings.kept_aside.push(kept);
    }
    let marks: Vec<(Seq, Content)> = scan
        .missing
        .iter()
        .filter(|m| m.new)
        .map(|m| (m.through, Content::Gap { from: m.from, extent: m.extent.code() }))
        .collect();
    let mut content: Vec<(Seq, &Content)> =
        scan.frames.iter().map(|f| (f.seq, &f.content)).collect();
    content.extend(marks.iter().map(|(seq, mark)| (*seq, mark)));
    content.sort_by_key(|(seq, _)| *seq);
    Journal::write_new(place.disk, place.folder, wrapper, place.random, content.into_iter())
        .map_err(|e| match e {
            RewriteError::Disk(e) => e.into(),
            RewriteError::Random => ReadOnly::DiskFailed,
        })
}

/// The snapshot still tells the truth, only the file it stands on is another one now. If saving it
/// again fails, the next opening rebuilds it.
fn carry_over(new: &Journal, sealed: &SealedFile, snapshot: &mut Option<Snapshot>) {
    if let Some(s) = snapshot.as_mut()
        && let Some(place) = new.place(s.place.seq)
    {
        s.place = place;
        let saver = SnapshotSaver { sealed: sealed.clone(), file: new.key.id, place };
        let _ = saver.save(&s.bytes);
    }
}
