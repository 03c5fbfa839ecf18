//! Finds the exact line a complaint is about where a type read a whole object at once (one whose kind
//! stands in one of its own lines) and so lost the place.
//!
//! Such types read their lines in order. Spoiling a line that was read before the complaint arose, or
//! the very line it is about, changes the complaint; spoiling a later one does not. So the last line
//! that changes it is found by halving.

use serde::de::DeserializeOwned;

use super::error::{Complaint, Wrong};
use super::tree::Node;
use super::typed::{Step, attempt};

/// Lines that say of which kind their object is; they are read before the others.
const KIND_LINES: [&str; 2] = ["criterion", "kind"];

/// Whether an object says of which kind it is, and so was read at once.
pub(super) fn names_its_kind(node: &Node) -> bool {
    KIND_LINES.iter().any(|line| node.get(line).is_some())
}

/// The place of a complaint, as close as it can be found, and what is wrong there.
pub(super) fn closer<T: DeserializeOwned>(
    tree: &Node,
    path: Vec<Step>,
    complaint: Complaint,
) -> (Vec<Step>, Wrong) {
    let start = at(tree, &path);
    let buffered = start.is_some_and(names_its_kind);
    let path = if buffered { within::<T>(tree, path, &complaint) } else { path };
    match complaint {
        Complaint::Here(wrong) => (path, wrong),
        Complaint::Line(name, wrong) => {
            let mut path = path;
            // The reader may have put the unknown line into the path already.
            if path.last() != Some(&Step::Line(name.clone()))
                || at(tree, &path).is_some_and(|node| node.get(&name).is_some())
            {
                path.push(Step::Line(name));
            }
            (path, wrong)
        }
    }
}

fn within<T: DeserializeOwned>(tree: &Node, path: Vec<Step>, complaint: &Complaint) -> Vec<Step> {
    let mut leaves = Vec::new();
    if let Some(node) = at(tree, &path) {
        list_leaves(node, &mut path.clone(), &mut leaves);
    }
    let changes = |tree: &Node| match attempt::<T>(tree) {
        Ok(_) => true,
        Err((_, other)) => other != *complaint,
    };
    let spoils = |leaf: &Vec<Step>| {
        let mut spoilt = tree.clone();
        if let Some(node) = at_mut(&mut spoilt, leaf) {
            *node = Node::List(vec![Node::Null, Node::List(Vec::new())]);
        }
        changes(&spoilt)
    };
    let read = leaves.partition_point(spoils);
    let last_read = read.checked_sub(1).and_then(|index| leaves.get(index));
    match complaint {
        Complaint::Here(_) => last_read.cloned().unwrap_or(path),
        // The object that lacks the line, or has one too many: the innermost whose mending helps.
        Complaint::Line(name, wrong) => {
            let leaf = match wrong {
                Wrong::UnknownLine { .. } => leaves.get(read).or(last_read),
                _ => last_read,
            };
            let Some(leaf) = leaf else { return path };
            let found = (path.len()..=leaf.len())
                .rev()
                .filter_map(|length| leaf.get(..length))
                .find(|owner| match wrong {
                    Wrong::UnknownLine { .. } => with_lines(tree, owner, |lines| {
                        lines.retain(|(line, _)| line != name);
                    })
                    .is_some_and(|mended| changes(&mended)),
                    _ => wants::<T>(tree, owner, name, complaint),
                });
            found.map_or(path, <[Step]>::to_vec)
        }
    }
}

/// Whether an object wants a line: adding it changes the complaint, and otherwise than adding a line of
/// a name that nothing wants.
fn wants<T: DeserializeOwned>(
    tree: &Node,
    owner: &[Step],
    name: &str,
    complaint: &Complaint,
) -> bool {
    let said = |name: &str| {
        let added = with_lines(tree, owner, |lines| {
            lines.push((name.to_owned(), Node::List(vec![Node::Null])));
        })?;
        attempt::<T>(&added).err().map(|(_, complaint)| complaint)
    };
    match (said(name), said("\0")) {
        (Some(Complaint::Line(line, Wrong::UnknownLine { .. })), _) if line == name => false,
        (with, with_other) => with.as_ref() != Some(complaint) && with != with_other,
    }
}

/// The tree with the lines of one object changed; nothing where there is no such object.
fn with_lines(
    tree: &Node,
    owner: &[Step],
    change: impl FnOnce(&mut Vec<(String, Node)>),
) -> Option<Node> {
    let mut tree = tree.clone();
    match at_mut(&mut tree, owner)? {
        Node::Object(lines) => change(lines),
        _ => return None,
    }
    Some(tree)
}

fn list_leaves(node: &Node, path: &mut Vec<Step>, leaves: &mut Vec<Vec<Step>>) {
    match node {
        Node::List(items) if !items.is_empty() => {
            for (index, item) in items.iter().enumerate() {
                path.push(Step::Item(index));
                list_leaves(item, path, leaves);
                path.pop();
            }
        }
        Node::Object(lines) if !lines.is_empty() => {
            let is_kind = |name: &str| KIND_LINES.contains(&name);
            let first = lines.iter().filter(|(name, _)| is_kind(name));
            for (name, value) in first.chain(lines.iter().filter(|(name, _)| !is_kind(name))) {
                path.push(Step::Line(name.clone()));
                list_leaves(value, path, leaves);
                path.pop();
            }
        }
        _ => leaves.push(path.clone()),
    }
}

fn at<'a>(tree: &'a Node, path: &[Step]) -> Option<&'a Node> {
    path.iter().try_fold(tree, |node, step| match (node, step) {
        (Node::Object(_), Step::Line(name)) => node.get(name),
        (Node::List(items), Step::Item(index)) => items.get(*index),
        _ => None,
    })
}

pub(super) fn at_mut<'a>(tree: &'a mut Node, path: &[Step]) -> Option<&'a mut Node> {
    path.iter().try_fold(tree, |node, step| match (node, step) {
        (Node::Object(lines), Step::Line(name)) => {
            lines.iter_mut().find(|(line, _)| line == name).map(|(_, value)| value)
        }
        (Node::List(items), Step::Item(index)) => items.get_mut(*index),
        _ => None,
    })
}
