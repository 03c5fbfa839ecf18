//! The marks that the companion writes itself: entries found missing, a clock that cannot be trusted. Decides
//! when one is due and that it is written once; what follows from it is the rule's affair.

use super::{Companion, Trouble, clock, read};
use crate::diary::entry::Content;
use crate::diary::store::Seq;
use crate::moment::{Moment, Stamp};
use crate::programme::values::Count;

impl Companion {
    /// Entries found missing leave a mark, one for each hole and once. A hole that an earlier opening
    /// found may still be without: that opening may have been cut short.
    pub(super) fn mark_missing(&mut self) -> Result<(), Trouble> {
        if self.findings.missing.is_empty() {
            return Ok(());
        }
        let mut written: Vec<(Seq, Stamp)> = Vec::new();
        let mut marked: Vec<(Count, Option<Stamp>)> = Vec::new();
        self.store.read_from(Seq::FIRST, |seq, bytes| {
            let Ok(entry) = read(bytes) else { return };
            written.push((seq, entry.written));
            if let Content::MissingMark { entries, after, .. } = entry.what {
                marked.push((entries, after));
            }
        })?;
        for hole in &self.findings.missing {
            let after = written.iter().rev().find(|(seq, _)| *seq < hole.from).map(|seen| seen.1);
            let before = written.iter().find(|(seq, _)| *seq > hole.through).map(|seen| seen.1);
            let Ok(entries) = Count::new(hole.entries().min(u64::from(Count::MOST))) else {
                continue;
            };
            if !marked.contains(&(entries, after)) {
                self.pending.push(Content::MissingMark { entries, after, before });
            }
        }
        Ok(())
    }

    /// Looks at the clock (rule sentence T3); what cannot be trusted leaves a mark.
    pub(super) fn observe(&mut self, moment: &Moment, opening: bool) {
        let change = clock::changed(&self.state, self.observed.as_ref(), moment, opening);
        self.observed = Some(*moment);
        let known = self.state.rule().time_unconfirmed()
            || self.pending.iter().any(|mark| matches!(mark, Content::ClockMark { .. }));
        if let Some(change) = change.filter(|_| !known) {
            self.pending.push(Content::ClockMark { change });
        }
    }

    pub(super) fn write_marks(&mut self, moment: &Moment) -> Result<(), Trouble> {
        let any = !self.pending.is_empty();
        while let Some(mark) = self.pending.first().cloned() {
            let id = self.mark_id(&mark)?;
            self.append(id, moment.now, mark, moment)?;
            self.pending.remove(0);
        }
        if any && self.rollback.is_some() {
            // It is written down now; from here on this is the diary.
            self.keep_mark();
        }
        Ok(())
    }
}
