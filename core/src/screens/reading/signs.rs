//! Signs and talks: what is open first of all, what was closed later.

use super::gather::Gathered;
use super::{Part, Point, ReadingPart, say};
use crate::diary::entry::Content;
use crate::safety::{Sign, Tier};
use crate::words::Words;

/// What is open. This part is always there: that nothing is open is worth knowing.
pub(super) fn open(gathered: &Gathered<'_>) -> ReadingPart {
    let words = gathered.words;
    let present = &gathered.summary.present;
    let mut signs = present.open_signs.clone();
    // Gravest first.
    signs.sort_by_key(|sign| std::cmp::Reverse(sign.tier));
    let mut points: Vec<Point> = signs
        .iter()
        .map(|open| {
            let values = [
                ("sign", name(words, open.key.sign).into()),
                ("tier", tier(words, open.tier).into()),
                ("day", say::on(gathered, &open.since)),
            ];
            Point::plain(words.text("reading-open-sign", &values))
        })
        .collect();
    if let Some(pause) = &present.pause {
        let text = match &pause.since {
            Some(since) => words.text("reading-paused-since", &[("day", say::on(gathered, since))]),
            None => words.text("reading-paused", &[]),
        };
        points.push(Point::plain(text));
    }
    if points.is_empty() {
        points.push(Point::plain(words.text("reading-nothing-open", &[])));
    }
    ReadingPart { part: Part::Open, heading: words.text("reading-open", &[]), points }
}

/// Talks, and what was noted and is closed since.
pub(super) fn talks(gathered: &Gathered<'_>) -> Option<ReadingPart> {
    let words = gathered.words;
    let open = &gathered.summary.present.open_signs;
    let mut points = Vec::new();
    for row in &gathered.counted {
        // A sign once noted is told even where the entry was left out.
        for noted in row.content.signs() {
            let key = (row.first.id, noted.sign);
            if open.iter().any(|one| (one.key.entry, one.key.sign) == key) {
                continue;
            }
            let values = [
                ("day", say::on(gathered, &row.happened)),
                ("sign", name(words, noted.sign).into()),
                ("tier", tier(words, noted.tier).into()),
            ];
            // What is only noted was never open.
            points.push(Point::plain(if noted.tier == Tier::Note {
                words.text("reading-noted-only", &values)
            } else {
                words.text("reading-noted", &values)
            }));
        }
        if let Content::Clearing { with, signs, closes_pause } = row.content
            && !row.struck
        {
            let values =
                [("day", say::on(gathered, &row.happened)), ("with", with.as_str().into())];
            let mut inner: Vec<String> = signs
                .iter()
                .map(|key| {
                    let sign = name(words, key.sign).into();
                    words.text("reading-talk-closed", &[("sign", sign)])
                })
                .collect();
            if *closes_pause {
                inner.push(words.text("reading-talk-go-on", &[]));
            }
            points.push(Point { text: words.text("reading-talk", &values), inner });
        }
    }
    gathered.part(Part::Talks, words.text("reading-talks", &[]), points)
}

fn name(words: &Words, sign: Sign) -> String {
    words.text(sign.name_id(), &[])
}

fn tier(words: &Words, tier: Tier) -> String {
    match tier {
        Tier::Emergency => words.text("reading-tier-emergency", &[]),
        Tier::Stop => words.text("reading-tier-stop", &[]),
        Tier::AskFirst => words.text("reading-tier-ask-first", &[]),
        Tier::Note => words.text("reading-tier-note", &[]),
    }
}
