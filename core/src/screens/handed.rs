//! What is said about a plan that arrived, beside the plan itself: who signed it, what is different from the
//! one in use, and what has to be chosen knowingly. Nothing is chosen for her.

use serde::Serialize;

use super::{Card, Scene, plain};
use crate::diary::entry::{Although, KeyStood};
use crate::handover::{Against, Arrival, Standing, key_words};
use crate::programme::plan::Programme;
use crate::programme::readback::{read_back, read_back_to_person};
use crate::sealing::VerifyKey;
use crate::words::{Value, Words};

/// Something to be chosen knowingly.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Knowing {
    /// What is chosen.
    pub although: Although,
    /// What it is about, and what to do instead.
    pub says: String,
    /// The choice, in her words; never chosen beforehand.
    pub label: String,
}

/// Who signed it.
#[must_use]
pub fn who_signed(
    words: &Words,
    pinned: Option<VerifyKey>,
    arrival: &Arrival,
    standing: &Standing,
) -> Card {
    let shown = |key: VerifyKey| words.text("handover-key-words", &[("words", spelled(&key))]);
    let mut lines = Vec::new();
    match (standing.key, arrival.signed) {
        (Some(stood), Some(signed)) => match stood {
            KeyStood::First => {
                lines.push(words.text("handover-first-key", &[]));
                lines.push(shown(signed.key));
                lines.push(words.text("handover-compare", &[]));
            }
            KeyStood::Same => lines.push(words.text("handover-same-key", &[])),
            KeyStood::Follows => {
                lines.push(words.text("handover-follows", &[]));
                lines.push(shown(signed.key));
                lines.push(words.text("handover-compare", &[]));
            }
            KeyStood::Other => {
                lines.push(words.text("handover-other-key", &[]));
                lines.push(shown(signed.key));
                if let Some(pin) = pinned {
                    lines.push(words.text("handover-known-key", &[("words", spelled(&pin))]));
                }
            }
        },
        _ => {
            lines.push(words.text("handover-nobody-signed", &[]));
            if pinned.is_some() {
                lines.push(words.text("handover-signed-before", &[]));
            }
        }
    }
    Card { title: words.text("handover-signed-title", &[]), lines }
}

fn spelled(key: &VerifyKey) -> Value {
    key_words(key).join(" ").into()
}

/// The key that is pinned, in words, so that it can be compared at any time.
pub(super) fn pinned(scene: &Scene<'_>) -> Option<String> {
    let pin = scene.state.pinned()?;
    Some(scene.words.text("handover-known-key", &[("words", spelled(&pin))]))
}

/// What is different from the plan in use; nothing where there is none, or it is the very one.
pub(super) fn different(
    words: &Words,
    in_use: Option<&Programme>,
    plan: &Programme,
    standing: &Standing,
) -> Option<Card> {
    let used = in_use?;
    let numbers =
        [("used", plain::whole(used.revision.get())), ("this", plain::whole(plan.revision.get()))];
    let first = match standing.against {
        Against::Nothing => return None,
        Against::InUse => {
            let line = words.text("refusal-revision-in-use", &[]);
            return Some(Card {
                title: words.text("handover-different-title", &[]),
                lines: vec![line],
            });
        }
        Against::Newer => words.text("handover-newer-revision", &numbers),
        Against::Older => words.text("handover-older-revision", &numbers),
        Against::SameNumber => words.text("handover-same-number", &numbers),
        Against::Another => words.text("handover-another-plan", &[]),
    };
    let mut lines = vec![first];
    if let Some(before) = standing.newer_before {
        let numbers =
            [("before", plain::whole(before)), ("this", plain::whole(plan.revision.get()))];
        lines.push(words.text("handover-newer-before", &numbers));
    }
    if standing.against != Against::Another {
        // The numbers are said already, and a date alone is no difference.
        let (revision, issued_at) = (plan.revision, plan.issued_at);
        let numbered = Programme { revision, issued_at, ..used.clone() };
        let (before, now) = (both(&numbered, words), both(plan, words));
        let said = |line: String| words.text("handover-now-says", &[("line", line.into())]);
        let gone = |line: String| words.text("handover-no-longer", &[("line", line.into())]);
        lines.extend(only(&now, &before).map(said));
        lines.extend(only(&before, &now).map(gone));
    }
    Some(Card { title: words.text("handover-different-title", &[]), lines })
}

/// Each sentence to the last line, and as it is said to the person.
fn both(plan: &Programme, words: &Words) -> Vec<(String, String)> {
    read_back(plan, words).into_iter().zip(read_back_to_person(plan, words)).collect()
}

/// What only the first says, as it is said to the person; to the last line where that alone tells them apart.
fn only<'a>(
    of: &'a [(String, String)],
    other: &'a [(String, String)],
) -> impl Iterator<Item = String> + 'a {
    of.iter().filter(|(whole, _)| other.iter().all(|(theirs, _)| theirs != whole)).map(
        |(whole, plain)| {
            let told_apart = other.iter().all(|(_, theirs)| theirs != plain);
            let line = if told_apart { plain } else { whole };
            line.clone()
        },
    )
}

/// What has to be chosen knowingly.
#[must_use]
pub fn knowing(words: &Words, standing: &Standing) -> Vec<Knowing> {
    standing
        .needs()
        .into_iter()
        .map(|although| {
            let (says, label) = match although {
                Although::Unsigned => (
                    words.text("refusal-unsigned", &[]),
                    words.text("handover-although-unsigned", &[]),
                ),
                Although::OtherKey => (
                    words.text("refusal-other-key", &[]),
                    words.text("handover-although-other-key", &[]),
                ),
                Although::OlderRevision => (
                    words.text("refusal-older-revision", &[]),
                    words.text("handover-although-older", &[]),
                ),
                Although::SameRevision => (
                    words.text("refusal-same-revision", &[]),
                    words.text("handover-although-same", &[]),
                ),
            };
            Knowing { although, says, label }
        })
        .collect()
}
