//! Decides whether bytes are a programme at all, and reads it. Whether the programme is written
//! correctly is [`super::check`]; both together are [`super::check::load`].

use super::plan::Programme;
use super::strict::{self, Node, StrictError};

/// The most bytes a programme may have. It is stored whole in one frame of the diary (at most 256 KiB);
/// this leaves a quarter for what surrounds it there.
pub const MOST_BYTES: usize = 192 * 1024;

/// Why bytes are not a programme. Each is one sentence that says what to do.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ReadError {
    /// Not a programme at all.
    #[error(
        "This is not a programme: the line \"frond_programme\" with the number of its format is \
         missing; choose the programme's file, or add \"frond_programme\": {}.",
        Programme::FORMAT
    )]
    NotAProgramme,
    /// A newer format.
    #[error("This programme was written by a newer Frond; update this one to read it.")]
    Newer,
    /// A format number that never existed.
    #[error(
        "frond_programme is the number of the programme's format and must be a whole number from 1; \
         this Frond reads {}.",
        Programme::FORMAT
    )]
    NoSuchFormat,
    /// A criterion where it may not stand (P4).
    #[error("{place}: {criterion} cannot stand in {part}; it may stand in {}.", allowed.join(" or "))]
    WrongPart {
        /// The line that names the criterion.
        place: String,
        /// The criterion.
        criterion: &'static str,
        /// The part of the rule it stands in.
        part: &'static str,
        /// The parts it may stand in.
        allowed: &'static [&'static str],
    },
    /// Anything else about the text.
    #[error(transparent)]
    Text(#[from] StrictError),
}

/// Reads a programme.
///
/// # Errors
/// [`ReadError`]: what is wrong, where, and what to do; never a value from the text.
pub fn read(bytes: &[u8]) -> Result<Programme, ReadError> {
    let tree = strict::tree(bytes, MOST_BYTES)?;
    match tree.get("frond_programme") {
        None => return Err(ReadError::NotAProgramme),
        Some(Node::Whole(format)) if *format > u64::from(Programme::FORMAT) => {
            return Err(ReadError::Newer);
        }
        Some(Node::Whole(format)) if *format == u64::from(Programme::FORMAT) => {}
        Some(_) => return Err(ReadError::NoSuchFormat),
    }
    criteria_in_place(&tree)?;
    Ok(strict::typed(&tree)?)
}

const UP: &str = "step_up";
const BACK: &str = "step_back";
const PAUSE: &str = "pause";

/// Every criterion and where it may stand.
pub(super) const PARTS: [(&str, &[&str]); 9] = [
    ("days_on_step", &[UP]),
    ("sessions", &[UP]),
    ("discomfort_at_most", &[UP]),
    ("sign_free_days", &[UP]),
    ("feels_ready", &[UP]),
    ("discomfort_at_least", &[BACK, PAUSE]),
    ("stopped_early", &[BACK, PAUSE]),
    ("days_without_practice", &[BACK, PAUSE]),
    ("steps_back", &[PAUSE]),
];

fn criteria_in_place(tree: &Node) -> Result<(), ReadError> {
    let own = tree.get("steps").map(Node::items).unwrap_or_default().iter().enumerate();
    let rules = own
        .filter_map(|(index, step)| Some((format!("steps[{index}].rule"), step.get("rule")?)))
        .chain(tree.get("rule").map(|rule| ("rule".to_owned(), rule)));
    for (place, rule) in rules {
        let all_of = rule.get(UP).and_then(|up| up.get("all_of"));
        for (index, criterion) in all_of.map(Node::items).unwrap_or_default().iter().enumerate() {
            in_place(criterion, UP, || format!("{place}.{UP}.all_of[{index}]"))?;
        }
        let back = rule.get(BACK).map(Node::items).unwrap_or_default();
        for (index, way) in back.iter().enumerate() {
            if let Some(criterion) = way.get("when") {
                in_place(criterion, BACK, || format!("{place}.{BACK}[{index}].when"))?;
            }
        }
        let pause = rule.get(PAUSE).map(Node::items).unwrap_or_default();
        for (index, criterion) in pause.iter().enumerate() {
            in_place(criterion, PAUSE, || format!("{place}.{PAUSE}[{index}]"))?;
        }
    }
    Ok(())
}

fn in_place(
    criterion: &Node,
    part: &'static str,
    place: impl Fn() -> String,
) -> Result<(), ReadError> {
    let named = criterion.get("criterion").and_then(Node::text);
    let known = named.and_then(|name| PARTS.iter().find(|(known, _)| *known == name));
    match known {
        Some((criterion, allowed)) if !allowed.contains(&part) => Err(ReadError::WrongPart {
            place: format!("{}.criterion", place()),
            criterion,
            part,
            allowed,
        }),
        _ => Ok(()),
    }
}

#[cfg(test)]
mod tests;
