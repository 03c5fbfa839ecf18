//! Decides what of a fold no later entry in order can need, so that its snapshot stays small. What it
//! drops, only the whole journal can bring back.

use super::facts::{NAMED, keep_last};
use super::fold::Fold;
use super::line::{Key, Line};
use crate::diary::entry::Place;
use crate::programme::rule::UpCriterion;

impl Fold {
    /// Drops what no evaluation in order can need, so that a snapshot stays small. After it, an entry
    /// that reaches back (a correction, a strike, a session told very late, a new programme) is refused
    /// with [`super::FoldError::NeedsHistory`].
    pub fn trim(&mut self) {
        self.kept.log = None;
        let within = self
            .rung()
            .and_then(|rung| self.rule_on(&rung))
            .and_then(|rule| rule.step_up.as_ref())
            .map(|up| {
                // How many days back each looks for full sessions. No default: one that is forgotten here would
                // be answered wrongly, and only once the diary is opened again.
                up.all_of.iter().map(|criterion| match criterion {
                    UpCriterion::Sessions { within_days, .. } => i32::from(within_days.get()),
                    // The first looks at no more than the newest fifty, which are kept in any case.
                    UpCriterion::DiscomfortAtMost { .. }
                    | UpCriterion::DaysOnStep { .. }
                    | UpCriterion::SignFreeDays { .. }
                    | UpCriterion::FeelsReady {} => 0,
                })
            })
            .and_then(Iterator::max)
            .unwrap_or(0);
        let practice = self.rung().map(|rung| rung.step.practice.clone());
        let needed = self.kept.facts.oldest_needed();
        let kept = &mut self.kept;
        kept.signs.trim();
        let closing = kept.course.last_closing();
        kept.latches.retain(|latch| latch.stands_after(closing));
        let backs = std::mem::take(&mut kept.course.backs);
        kept.course.backs =
            backs.into_iter().filter(|back| !kept.course.cleared_away(back.key)).collect();
        for line in &mut kept.lines {
            let needed = needed.filter(|_| practice.as_ref() == Some(&line.practice));
            trim_line(line, needed, &kept.course.milestones);
        }
        let line = practice.and_then(|practice| kept.line(&practice));
        let cut = line.and_then(|line| line.cut);
        let settled = cut.and(line).and_then(|line| line.seen.first()).map(|seen| seen.key);
        let by_time = kept.floor_by_time();
        kept.facts.trim(within, by_time, settled);
        if let Some(cut) = cut {
            kept.course.answers.retain(|answer| answer.key.t > cut.t);
        }
    }
}

/// Cuts a line where everything before is earlier both in time and by place than everything after,
/// steps, acceptances and clearings included: then no reordering by T5 can mix the two.
fn trim_line(line: &mut Line, needed: Option<Key>, milestones: &[Key]) {
    let Some(named) = line.seen.len().checked_sub(NAMED).and_then(|at| line.seen.get(at)) else {
        return;
    };
    let needed = needed.map_or(named.key, |needed| needed.min(named.key));
    let mut keys: Vec<Key> =
        milestones.iter().copied().chain(line.seen.iter().map(|seen| seen.key)).collect();
    keys.sort_unstable();
    let mut after: Vec<Place> = keys.iter().map(|key| key.place).collect();
    let mut least = Place::MAX;
    for place in after.iter_mut().rev() {
        least = least.min(*place);
        *place = least;
    }
    let mut most = 0;
    let mut cut: Option<Key> = None;
    for (at, key) in keys.iter().enumerate() {
        if *key >= needed {
            break;
        }
        most = most.max(key.place);
        let next = keys.get(at + 1);
        if next.is_some_and(|next| next.t > key.t) && after.get(at + 1).is_some_and(|a| *a > most) {
            cut = Some(Key { t: key.t, place: most });
        }
    }
    if let Some(cut) = cut {
        let dropped = line.seen.partition_point(|seen| seen.key.t <= cut.t);
        if dropped > 0 {
            let kept = line.seen.len() - dropped;
            keep_last(&mut line.seen, kept);
            line.cut = Some(cut);
        }
    }
}

#[cfg(test)]
mod tests;
