//! Every diary of up to five entries, in which each one tells something, is the machine's, puts right an earlier one
//! or strikes one, against what T1 says of them in as many words. Everything told is invented.

use chrono::FixedOffset;

use super::*;

/// What one entry of a small diary does.
#[derive(Clone, Copy, Debug)]
enum Does {
    Stays,
    Lasts,
    Marks,
    /// Puts right this earlier one, with content of the first kind or the second.
    Corrects(usize, bool),
    Strikes(usize),
    /// Strikes an entry that is not there.
    StrikesNothing,
}

fn id(index: usize) -> EntryId {
    EntryId((index as u128).to_be_bytes())
}

fn written(index: usize, does: Does) -> Entry {
    let millis = 1_775_000_000_000 + index as i64 * 60_000;
    let now = Stamp::from_millis(millis, FixedOffset::east_opt(0).unwrap(), None).unwrap();
    let stay = || Content::StayHere { stay: index.is_multiple_of(2) };
    let what = match does {
        Does::Stays => stay(),
        Does::Lasts => Content::TimeConfirmed {},
        Does::Marks => Content::CopyMade {},
        Does::Corrects(of, first_kind) => {
            let content = if first_kind { stay() } else { Content::CopyMade {} };
            Content::Correction { of: id(of), content: Box::new(content) }
        }
        Does::Strikes(of) => Content::Strike { of: id(of) },
        Does::StrikesNothing => Content::Strike { of: id(99) },
    };
    Entry { id: id(index), written: now, happened: now, uptime: None, what }
}

/// An entry is struck when a strike that is not struck itself names it.
fn is_struck(diary: &[Does], index: usize) -> bool {
    let names = |at: &usize| matches!(diary[*at], Does::Strikes(of) if of == index);
    (index + 1..diary.len()).filter(names).any(|at| !is_struck(diary, at))
}

/// What an entry is about: itself, or what the one it puts right is about.
fn about(diary: &[Does], index: usize) -> usize {
    match diary[index] {
        Does::Corrects(of, _) => about(diary, of),
        _ => index,
    }
}

/// The corrections of an entry that count, in order.
fn corrections(diary: &[Does], root: usize) -> Vec<usize> {
    let counts = |at: &usize| {
        let same_kind = matches!(
            (diary[root], diary[*at]),
            (Does::Stays, Does::Corrects(_, true)) // a machine's mark is never put right
        );
        same_kind && about(diary, *at) == root && !is_struck(diary, *at)
    };
    (root + 1..diary.len()).filter(counts).collect()
}

fn check(diary: &[Does]) {
    let entries: Vec<Entry> =
        diary.iter().enumerate().map(|(index, does)| written(index, *does)).collect();
    let told: Vec<usize> = (0..diary.len())
        .filter(|index| matches!(diary[*index], Does::Stays | Does::Lasts | Does::Marks))
        .collect();
    let counted = resolve(&entries);
    assert_eq!(counted.len(), told.len(), "{diary:?}");
    for (row, index) in counted.iter().zip(told) {
        let corrections = corrections(diary, index);
        let newest = corrections.last().map_or(&entries[index], |at| &entries[*at]);
        assert_eq!(row.place, index as Place + 1, "{diary:?}");
        assert_eq!(row.first.id, id(index), "{diary:?}");
        assert_eq!(row.happened, newest.happened, "{diary:?}");
        assert_eq!(row.corrections, corrections.len(), "{diary:?}");
        let content = match &newest.what {
            Content::Correction { content, .. } => content,
            told => told,
        };
        assert_eq!(row.content, content, "{diary:?}");
        let persons = !matches!(diary[index], Does::Marks);
        assert_eq!(row.struck, persons && is_struck(diary, index), "{diary:?}");
        let whole = whole(&entries, id(index)).unwrap();
        assert_eq!(whole.counted.content, content, "{diary:?}");
        assert_eq!(whole.counted.struck, row.struck, "{diary:?}");
    }
}

fn grow(diary: &mut Vec<Does>, most: usize) -> u64 {
    check(diary);
    if diary.len() == most {
        return 1;
    }
    let before = 0..diary.len();
    let next = [Does::Stays, Does::Lasts, Does::Marks, Does::StrikesNothing]
        .into_iter()
        .chain(before.clone().map(|of| Does::Corrects(of, true)))
        .chain(before.clone().map(|of| Does::Corrects(of, false)))
        .chain(before.map(Does::Strikes));
    let mut seen = 1;
    for does in next.collect::<Vec<_>>() {
        diary.push(does);
        seen += grow(diary, most);
        diary.pop();
    }
    seen
}

#[test]
fn t1_every_small_diary_counts_as_the_sentence_says() {
    // 4 · 7 · 10 · 13 · 16 of five entries, and all shorter ones.
    assert_eq!(grow(&mut Vec::new(), 5), 1 + 4 + 28 + 280 + 3_640 + 58_240);
}
