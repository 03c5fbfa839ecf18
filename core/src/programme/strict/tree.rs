//! From bytes to a tree: everything that can be refused before a type is known. Leaves what a type asks for to
//! [`super::typed`].

use std::cell::RefCell;
use std::collections::HashSet;
use std::fmt;

use serde::de::{self, DeserializeSeed, Deserializer, MapAccess, SeqAccess, Visitor};

use super::error::{Position, StrictError};

/// Levels of lists and objects. A programme and an entry need eight at most; the bound keeps the
/// stack small however a type recurses.
pub const DEPTH: usize = 24;

/// One JSON value. Objects keep the order of the text and hold no name twice.
#[derive(Clone, Debug, PartialEq)]
pub enum Node {
    /// `null`.
    Null,
    /// `true` or `false`.
    Bool(bool),
    /// A whole number of zero or more.
    Whole(u64),
    /// A whole number below zero.
    Negative(i64),
    /// Any other number.
    Fraction(f64),
    /// Text.
    Text(String),
    /// A list.
    List(Vec<Node>),
    /// An object.
    Object(Vec<(String, Node)>),
}

impl Node {
    /// The value of a line of an object.
    #[must_use]
    pub fn get(&self, name: &str) -> Option<&Node> {
        match self {
            Self::Object(lines) => lines.iter().find(|(line, _)| line == name).map(|(_, v)| v),
            _ => None,
        }
    }

    /// The values of a list; none for anything else.
    #[must_use]
    pub fn items(&self) -> &[Node] {
        match self {
            Self::List(items) => items,
            _ => &[],
        }
    }

    /// The text, where it is one.
    #[must_use]
    pub fn text(&self) -> Option<&str> {
        match self {
            Self::Text(text) => Some(text),
            _ => None,
        }
    }
}

/// Reads bytes into a tree.
///
/// # Errors
/// Any [`StrictError`] but [`StrictError::Value`].
pub fn tree(bytes: &[u8], limit: usize) -> Result<Node, StrictError> {
    // First of all, so that nothing below ever sees more.
    if bytes.len() > limit {
        return Err(StrictError::TooLong { limit });
    }
    let text = std::str::from_utf8(bytes).map_err(|error| {
        let good = bytes.get(..error.valid_up_to()).unwrap_or_default();
        StrictError::NotUtf8 { at: end_of(&String::from_utf8_lossy(good)) }
    })?;
    if text.starts_with('\u{feff}') {
        return Err(StrictError::ByteOrderMark { at: Position { line: 1, column: 1 } });
    }
    let state = State::default();
    let mut json = serde_json::Deserializer::from_str(text);
    let node = Seed { state: &state, depth: 0 }.deserialize(&mut json).map_err(|error| {
        let at = position(text, &error);
        let place = state.place();
        match state.fault.take() {
            Some(Fault::TooDeep) => StrictError::TooDeep { place, at },
            Some(Fault::Twice) => StrictError::Twice { place, at },
            None => StrictError::Syntax { at, what: bare(&error) },
        }
    })?;
    json.end().map_err(|error| StrictError::Trailing { at: position(text, &error) })?;
    Ok(node)
}

/// serde_json counts columns in bytes; a person counts characters.
fn position(text: &str, error: &serde_json::Error) -> Position {
    let line = error.line().max(1);
    let written = text.split('\n').nth(line - 1).unwrap_or_default();
    let upto = written.as_bytes().get(..error.column()).unwrap_or(written.as_bytes());
    Position { line, column: String::from_utf8_lossy(upto).chars().count().max(1) }
}

fn end_of(text: &str) -> Position {
    let line = text.bytes().filter(|byte| *byte == b'\n').count() + 1;
    let last = text.rsplit('\n').next().unwrap_or_default();
    Position { line, column: last.chars().count() + 1 }
}

/// The reader's message without its own place.
fn bare(error: &serde_json::Error) -> String {
    let message = error.to_string();
    let message = message.rsplit_once(" at line ").map_or(message.as_str(), |(text, _)| text);
    match message {
        "number out of range" => "a number too large to be read".to_owned(),
        text if text.starts_with("EOF") => "it ends too early".to_owned(),
        text => text.to_owned(),
    }
}

#[derive(Clone, Copy)]
enum Fault {
    TooDeep,
    Twice,
}

/// Where the reader is, kept outside the reader's own errors, which are text.
#[derive(Default)]
struct State {
    path: RefCell<Vec<Segment>>,
    fault: RefCell<Option<Fault>>,
}

enum Segment {
    Line(String),
    Item(usize),
}

impl State {
    fn push(&self, segment: Segment) {
        self.path.borrow_mut().push(segment);
    }
    fn pop(&self) {
        self.path.borrow_mut().pop();
    }
    fn fail<E: de::Error>(&self, fault: Fault) -> E {
        self.fault.replace(Some(fault));
        E::custom("refused")
    }
    fn place(&self) -> String {
        let mut place = String::new();
        for segment in self.path.borrow().iter() {
            match segment {
                Segment::Line(name) => add_line(&mut place, name),
                Segment::Item(index) => add_item(&mut place, *index),
            }
        }
        place
    }
}

/// Adds a line's name to a place. A name that does not look like one might be somebody's words.
pub(super) fn add_line(place: &mut String, name: &str) {
    if !place.is_empty() {
        place.push('.');
    }
    let plain = (1..=40).contains(&name.len())
        && name.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'_' || b == b'-');
    place.push_str(if plain { name } else { "(a line with an unusual name)" });
}

pub(super) fn add_item(place: &mut String, index: usize) {
    place.push_str(&format!("[{index}]"));
}

#[derive(Clone, Copy)]
struct Seed<'a> {
    state: &'a State,
    depth: usize,
}

impl<'a> Seed<'a> {
    fn deeper<E: de::Error>(self) -> Result<Seed<'a>, E> {
        if self.depth >= DEPTH {
            return Err(self.state.fail(Fault::TooDeep));
        }
        Ok(Seed { state: self.state, depth: self.depth + 1 })
    }
}

impl<'de> DeserializeSeed<'de> for Seed<'_> {
    type Value = Node;
    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<Node, D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Seed<'_> {
    type Value = Node;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }
    fn visit_unit<E>(self) -> Result<Node, E> {
        Ok(Node::Null)
    }
    fn visit_bool<E>(self, value: bool) -> Result<Node, E> {
        Ok(Node::Bool(value))
    }
    fn visit_u64<E>(self, value: u64) -> Result<Node, E> {
        Ok(Node::Whole(value))
    }
    fn visit_i64<E>(self, value: i64) -> Result<Node, E> {
        Ok(u64::try_from(value).map_or(Node::Negative(value), Node::Whole))
    }
    fn visit_f64<E>(self, value: f64) -> Result<Node, E> {
        Ok(Node::Fraction(value))
    }
    fn visit_str<E>(self, text: &str) -> Result<Node, E> {
        Ok(Node::Text(text.to_owned()))
    }
    fn visit_string<E>(self, text: String) -> Result<Node, E> {
        Ok(Node::Text(text))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut access: A) -> Result<Node, A::Error> {
        let inner = self.deeper()?;
        let mut items = Vec::new();
        self.state.push(Segment::Item(0));
        while let Some(item) = access.next_element_seed(inner)? {
            items.push(item);
            self.state.pop();
            self.state.push(Segment::Item(items.len()));
        }
        self.state.pop();
        Ok(Node::List(items))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut access: A) -> Result<Node, A::Error> {
        let inner = self.deeper()?;
        let mut lines = Vec::new();
        let mut names = HashSet::new();
        while let Some(name) = access.next_key::<String>()? {
            self.state.push(Segment::Line(name.clone()));
            if !names.insert(name.clone()) {
                return Err(self.state.fail(Fault::Twice));
            }
            lines.push((name, access.next_value_seed(inner)?));
            self.state.pop();
        }
        Ok(Node::Object(lines))
    }
}
