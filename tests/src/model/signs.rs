//! Which signs were noted, how serious, which are open, and since when there was none (S1 to S3).

use std::collections::BTreeMap;

use frond_core::diary::entry::{Content, Place, SignKey};
use frond_core::moment::Stamp;
use frond_core::programme::plan::Programme;
use frond_core::safety::{Sign, Tier};

use super::reading::{Item, Reading, told, versions};

/// A sign above `note`, open or not.
#[derive(Clone, Debug)]
pub struct Noted {
    /// The highest tier it was noted with.
    pub tier: Tier,
    /// The place at which its tier was last raised.
    pub raised: Place,
    /// Every time a version that notes it tells.
    pub reported: Vec<Stamp>,
    /// The time of the first entry that closes it.
    pub closed: Option<Stamp>,
}

/// Every sign above `note`. Struck entries and struck corrections still note theirs.
#[must_use]
pub fn noted(reading: &Reading<'_>) -> BTreeMap<SignKey, Noted> {
    let mut signs: BTreeMap<SignKey, Noted> = BTreeMap::new();
    let mut note = |key: SignKey, tier: Tier, place: Place, happened: Stamp| {
        let sign = signs.entry(key).or_insert(Noted {
            tier: Tier::Note,
            raised: place,
            reported: Vec::new(),
            closed: None,
        });
        sign.reported.push(happened);
        if tier > sign.tier {
            sign.tier = tier;
            sign.raised = place;
        }
    };
    for (index, first) in reading.entries.iter().enumerate() {
        if let Content::ErasedMark { caution_open: true, .. } = first.what {
            let key = SignKey { entry: first.id, sign: Sign::ACaution };
            note(key, Tier::Stop, index as Place + 1, first.happened);
        }
        if matches!(first.what, Content::Correction { .. }) {
            continue;
        }
        for version in versions(reading.entries, index) {
            let place = reading.entries.iter().position(|entry| entry.id == version.id);
            let place = place.map_or(0, |index| index as Place + 1);
            for sign in told(version).signs() {
                let key = SignKey { entry: first.id, sign: sign.sign };
                note(key, sign.tier, place, version.happened);
            }
        }
    }
    signs.retain(|_, sign| sign.tier > Tier::Note);
    for (key, sign) in &mut signs {
        let closing = |item: &&Item<'_>| item.place > sign.raised && closes(reading, item, key);
        sign.closed = reading.items.iter().find(closing).map(Item::happened);
    }
    signs
}

/// Whether an item names a sign as spoken about or seen.
fn closes(reading: &Reading<'_>, item: &Item<'_>, key: &SignKey) -> bool {
    match item.told() {
        Content::Clearing { signs, .. } => signs.contains(key),
        Content::ProgrammeAccepted { carried, .. } => {
            reading.shelf.get(carried).is_some_and(|programme| {
                programme.signs_seen.contains(key) && is_revision(reading, programme, item.place)
            })
        }
        _ => false,
    }
}

/// Whether a programme is a revision of the one in force before it: the same, with a higher number.
fn is_revision(reading: &Reading<'_>, programme: &Programme, place: Place) -> bool {
    let before = reading
        .items
        .iter()
        .filter(|item| item.place < place)
        .filter_map(|item| match item.told() {
            Content::ProgrammeAccepted { carried, .. } => reading.shelf.get(carried),
            _ => None,
        })
        .next_back();
    before.is_some_and(|old| old.id == programme.id && old.revision < programme.revision)
}

/// The open signs with their tiers.
#[must_use]
pub fn open(reading: &Reading<'_>) -> BTreeMap<SignKey, Tier> {
    noted(reading)
        .into_iter()
        .filter(|(_, sign)| sign.closed.is_none())
        .map(|(key, sign)| (key, sign.tier))
        .collect()
}
