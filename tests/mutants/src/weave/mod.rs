//! Decides what is changed in a source file and how all changes stand in it side by side.
//!
//! Nothing of the text is printed anew: each change is an insertion, `(if crate::mutant(7) { changed } else { ` before
//! an expression and ` })` behind it, so that the lines stay where they are. The changed side holds the operands as they
//! were written, because only one mutant acts at a time; the text therefore grows with how deep expressions lie in one
//! another, and does not double with each level.

mod sites;
mod values;

#[cfg(test)]
mod tests;

use std::collections::HashSet;
use std::ops::Range;

/// One change of a source.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mutant {
    /// What `crate::mutant` is asked with; counted from 1 over all files.
    pub number: u32,
    /// Line in the source, counted from 1.
    pub line: usize,
    /// What says which change it is: the function, the text before and after. Holds no line, so that it stays the same
    /// when something is added above.
    pub name: String,
}

/// A source with all its changes in it.
#[derive(Debug)]
pub struct Woven {
    /// The text to be compiled.
    pub text: String,
    /// The changes that could be in it, those left out too.
    pub mutants: Vec<Mutant>,
    marks: Vec<Mark>,
}

/// Where in the woven text a change stands.
#[derive(Debug)]
struct Mark {
    range: Range<usize>,
    numbers: Vec<u32>,
}

impl Woven {
    /// Which changes a compiler's message about these bytes of the woven text speaks of: the change whose own text they
    /// are in, or else all those around the innermost expression.
    pub fn spoken_of(&self, bytes: &Range<usize>) -> &[u32] {
        let around =
            self.marks.iter().filter(|m| m.range.start <= bytes.start && bytes.end <= m.range.end);
        around.min_by_key(|mark| mark.range.len()).map_or(&[], |mark| &mark.numbers)
    }
}

/// Text to be put in, with the places in it that are changes.
struct Insertion {
    at: usize,
    /// What is put in first at one place: ends before beginnings, inner ends and outer beginnings first.
    order: (u8, usize),
    pieces: Vec<(String, Option<u32>)>,
    /// Which pair of insertions it is the beginning or the end of.
    pair: Option<(usize, End)>,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum End {
    First,
    Last,
}

/// Weaves every change of `source`, those numbered in `left_out` excepted. Numbers begin with `first`.
///
/// # Errors
/// The reader's message where the source is not Rust.
pub fn weave(source: &str, first: u32, left_out: &HashSet<u32>) -> Result<Woven, syn::Error> {
    let found = sites::find(source)?;
    let mut mutants = Vec::new();
    let mut insertions = Vec::new();
    let mut pairs = Vec::new();
    let mut next = first;
    for site in found {
        let mut alternatives = Vec::new();
        for change in site.changes {
            let seen = mutants.iter().filter(|m: &&Mutant| same(&m.name, &change.name)).count();
            let name =
                if seen == 0 { change.name } else { format!("{} #{}", change.name, seen + 1) };
            mutants.push(Mutant { number: next, line: line_of(source, site.range.start), name });
            if !left_out.contains(&next) {
                alternatives.push((next, change.text));
            }
            next += 1;
        }
        if !alternatives.is_empty() {
            insert(&mut insertions, &mut pairs, site.shape, &site.range, alternatives);
        }
    }
    let (text, marks) = put_in(source, insertions, &pairs);
    Ok(Woven { text, mutants, marks })
}

/// Whether two names are the same but for the count behind.
fn same(name: &str, new: &str) -> bool {
    name.strip_prefix(new).is_some_and(|rest| rest.is_empty() || rest.starts_with(" #"))
}

fn line_of(source: &str, at: usize) -> usize {
    source.get(..at).map_or(0, |before| before.matches('\n').count()) + 1
}

/// Puts in what one site needs. `pairs` holds the changes of each pair of insertions.
fn insert(
    insertions: &mut Vec<Insertion>,
    pairs: &mut Vec<Vec<u32>>,
    shape: sites::Shape,
    range: &Range<usize>,
    alternatives: Vec<(u32, String)>,
) {
    let pair = pairs.len();
    let numbers = alternatives.iter().map(|(number, _)| *number).collect();
    let mut put = |at, order, pieces, end: Option<End>| {
        insertions.push(Insertion { at, order, pieces, pair: end.map(|end| (pair, end)) });
    };
    match shape {
        sites::Shape::Wrap => {
            let mut pieces = vec![("(".to_owned(), None)];
            for (number, text) in alternatives {
                pieces.push((format!("if crate::mutant({number}) {{ "), None));
                pieces.push((text, Some(number)));
                pieces.push((" } else ".to_owned(), None));
            }
            pieces.push(("{ ".to_owned(), None));
            put(range.start, (1, usize::MAX - range.len()), pieces, Some(End::First));
            put(range.end, (0, range.len()), vec![(" })".to_owned(), None)], Some(End::Last));
            pairs.push(numbers);
        }
        sites::Shape::Emptied => {
            put(range.start, (1, 0), vec![(" ({ ".to_owned(), None)], Some(End::First));
            let emptied = |(number, _)| {
                (format!(" }}).filter(move |_| !crate::mutant({number}))"), Some(number))
            };
            let pieces = alternatives.into_iter().map(emptied).collect();
            put(range.end, (0, usize::MAX), pieces, Some(End::Last));
            pairs.push(numbers);
        }
        sites::Shape::Before => {
            let before = |(number, text)| {
                (format!(" if crate::mutant({number}) {{ {text} }}"), Some(number))
            };
            put(range.start, (1, 0), alternatives.into_iter().map(before).collect(), None);
        }
        sites::Shape::Guard => {
            let guard = |(number, _)| (format!(" if !crate::mutant({number})"), Some(number));
            put(range.end, (0, 0), alternatives.into_iter().map(guard).collect(), None);
        }
    }
}

fn put_in(source: &str, mut insertions: Vec<Insertion>, pairs: &[Vec<u32>]) -> (String, Vec<Mark>) {
    insertions.sort_by_key(|one| (one.at, one.order));
    let mut text = String::with_capacity(source.len() * 3);
    let mut marks = Vec::new();
    let mut begun = vec![0; pairs.len()];
    let mut done = 0;
    for one in insertions {
        text.push_str(source.get(done..one.at).unwrap_or_default());
        done = one.at;
        let whole = text.len();
        for (piece, number) in one.pieces {
            let start = text.len();
            text.push_str(&piece);
            if let Some(number) = number {
                marks.push(Mark { range: start..text.len(), numbers: vec![number] });
            }
        }
        let Some((pair, end)) = one.pair else { continue };
        match (end, begun.get_mut(pair), pairs.get(pair)) {
            (End::First, Some(start), _) => *start = whole,
            (End::Last, Some(start), Some(numbers)) => {
                marks.push(Mark { range: *start..text.len(), numbers: numbers.clone() });
            }
            _ => {}
        }
    }
    text.push_str(source.get(done..).unwrap_or_default());
    (text, marks)
}
