//! From a tree to a type, with the place of what does not fit.

use serde::de::value::{MapDeserializer, SeqDeserializer};
use serde::de::{self, DeserializeOwned, EnumAccess, IntoDeserializer, VariantAccess, Visitor};
use serde::{Deserializer, Serialize, forward_to_deserialize_any};
use serde_json::Value;
use serde_path_to_error::Segment;

use super::error::{Complaint, Found, StrictError, Wrong};
use super::locate;
use super::tree::{Node, add_item, add_line};

/// One segment of a place in a tree.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Step {
    Line(String),
    Item(usize),
}

/// Reads a value of `T` from a tree.
///
/// # Errors
/// [`StrictError::Value`] with the place.
pub fn typed<T: DeserializeOwned + Serialize>(tree: &Node) -> Result<T, StrictError> {
    match attempt::<T>(tree) {
        Ok(value) => {
            same_shape::<T>(tree, &value)?;
            Ok(value)
        }
        Err((path, complaint)) => {
            let (path, wrong) = locate::closer::<T>(tree, path, complaint);
            Err(StrictError::Value { place: shown(&path), wrong })
        }
    }
}

pub(super) fn attempt<T: DeserializeOwned>(tree: &Node) -> Result<T, (Vec<Step>, Complaint)> {
    serde_path_to_error::deserialize(In(tree)).map_err(|error| {
        let path = error.path().iter().map(|segment| match segment {
            Segment::Seq { index } => Step::Item(*index),
            Segment::Map { key } => Step::Line(key.clone()),
            Segment::Enum { variant } => Step::Line(variant.clone()),
            Segment::Unknown => Step::Line("?".to_owned()),
        });
        (path.collect(), error.inner().clone())
    })
}

pub(super) fn shown(path: &[Step]) -> String {
    let mut place = String::new();
    for step in path {
        match step {
            Step::Line(name) => add_line(&mut place, name),
            Step::Item(index) => add_item(&mut place, *index),
        }
    }
    place
}

/// A node as a source to read from. Unlike JSON's own reader it takes a struct only from an object.
#[derive(Clone, Copy)]
struct In<'a>(&'a Node);

impl<'de> IntoDeserializer<'de, Complaint> for In<'de> {
    type Deserializer = Self;
    fn into_deserializer(self) -> Self {
        self
    }
}

impl<'de> Deserializer<'de> for In<'de> {
    type Error = Complaint;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Complaint> {
        match self.0 {
            Node::Null => visitor.visit_unit(),
            Node::Bool(value) => visitor.visit_bool(*value),
            Node::Whole(value) => visitor.visit_u64(*value),
            Node::Negative(value) => visitor.visit_i64(*value),
            Node::Fraction(value) => visitor.visit_f64(*value),
            Node::Text(text) => visitor.visit_borrowed_str(text),
            Node::List(items) => {
                let mut access = SeqDeserializer::new(items.iter().map(In));
                let value = visitor.visit_seq(&mut access)?;
                access.end()?;
                Ok(value)
            }
            Node::Object(lines) => {
                let lines = lines.iter().map(|(name, value)| (name.as_str(), In(value)));
                let mut access = MapDeserializer::new(lines);
                let value = visitor.visit_map(&mut access)?;
                access.end()?;
                Ok(value)
            }
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Complaint> {
        match self.0 {
            Node::Null => visitor.visit_none(),
            _ => visitor.visit_some(self),
        }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        visitor: V,
    ) -> Result<V::Value, Complaint> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Complaint> {
        match self.0 {
            // A struct would take its values from a list too, a second spelling.
            Node::List(_) => {
                Err(Complaint::Here(Wrong::Kind { expected: OBJECT, found: Found::List }))
            }
            _ => self.deserialize_any(visitor),
        }
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Complaint> {
        match self.0 {
            Node::Text(word) => visitor.visit_enum(word.as_str().into_deserializer()),
            Node::Object(lines) => match lines.as_slice() {
                [(word, value)] => visitor.visit_enum(Tagged { word, value }),
                _ => Err(Complaint::Here(Wrong::Length)),
            },
            other => Err(Complaint::Here(Wrong::Kind {
                expected: "one of the words known here",
                found: kind_of(other),
            })),
        }
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf
        unit unit_struct seq tuple tuple_struct map identifier ignored_any
    }
}

const OBJECT: &str = "an object in braces";

/// `{"word": value}`.
struct Tagged<'a> {
    word: &'a str,
    value: &'a Node,
}

impl<'de> EnumAccess<'de> for Tagged<'de> {
    type Error = Complaint;
    type Variant = In<'de>;
    fn variant_seed<S: de::DeserializeSeed<'de>>(
        self,
        seed: S,
    ) -> Result<(S::Value, In<'de>), Complaint> {
        Ok((seed.deserialize(self.word.into_deserializer())?, In(self.value)))
    }
}

impl<'de> VariantAccess<'de> for In<'de> {
    type Error = Complaint;
    fn unit_variant(self) -> Result<(), Complaint> {
        Err(Complaint::Here(Wrong::Kind { expected: "a word in quotes", found: Found::Object }))
    }
    fn newtype_variant_seed<S: de::DeserializeSeed<'de>>(
        self,
        seed: S,
    ) -> Result<S::Value, Complaint> {
        seed.deserialize(self)
    }
    fn tuple_variant<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Complaint> {
        self.deserialize_any(visitor)
    }
    fn struct_variant<V: Visitor<'de>>(
        self,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Complaint> {
        self.deserialize_any(visitor)
    }
}

fn kind_of(node: &Node) -> Found {
    match node {
        Node::Null => Found::Null,
        Node::Bool(_) => Found::Bool,
        Node::Whole(_) => Found::Whole,
        Node::Negative(_) => Found::Negative,
        Node::Fraction(_) => Found::Fraction,
        Node::Text(_) => Found::Text,
        Node::List(_) => Found::List,
        Node::Object(_) => Found::Object,
    }
}

/// Some types can be read in a second spelling, such as a struct written as a list of its values or a
/// criterion by its number. One meaning has one spelling here: every value is of the same kind when it
/// is written again.
fn same_shape<T: DeserializeOwned + Serialize>(tree: &Node, value: &T) -> Result<(), StrictError> {
    // A value that cannot be written again cannot be kept either.
    let again = serde_json::to_value(value).map_err(|_| StrictError::Value {
        place: String::new(),
        wrong: Wrong::Outside("it cannot be written again".to_owned()),
    })?;
    let mut unsaid = Vec::new();
    compare(tree, &again, &mut Vec::new(), &mut unsaid)?;
    // An empty list that is not written again was either a list, or a struct in that second spelling:
    // only a struct can be read from empty braces as well.
    for path in unsaid {
        let mut braces = tree.clone();
        if let Some(node) = locate::at_mut(&mut braces, &path) {
            *node = Node::Object(Vec::new());
            if attempt::<T>(&braces).is_ok() {
                let wrong = Wrong::Kind { expected: OBJECT, found: Found::List };
                return Err(StrictError::Value { place: shown(&path), wrong });
            }
        }
    }
    Ok(())
}

fn compare(
    node: &Node,
    again: &Value,
    path: &mut Vec<Step>,
    unsaid: &mut Vec<Vec<Step>>,
) -> Result<(), StrictError> {
    let expected = match (node, again) {
        (Node::List(items), Value::Array(values)) => {
            for (index, (item, value)) in items.iter().zip(values).enumerate() {
                path.push(Step::Item(index));
                compare(item, value, path, unsaid)?;
                path.pop();
            }
            return Ok(());
        }
        (Node::Object(lines), Value::Object(values)) => {
            for (name, line) in lines {
                path.push(Step::Line(name.clone()));
                match values.get(name) {
                    Some(value) => compare(line, value, path, unsaid)?,
                    // Elsewhere the struct itself refused it.
                    None if *line == Node::List(Vec::new()) && locate::names_its_kind(node) => {
                        unsaid.push(path.clone());
                    }
                    None => {}
                }
                path.pop();
            }
            return Ok(());
        }
        (Node::Null, Value::Null)
        | (Node::Bool(_), Value::Bool(_))
        | (Node::Whole(_) | Node::Negative(_) | Node::Fraction(_), Value::Number(_))
        | (Node::Text(_), Value::String(_)) => return Ok(()),
        (_, Value::Null) => "null",
        (_, Value::Bool(_)) => "true or false",
        (_, Value::Number(_)) => "a number",
        (_, Value::String(_)) => "text in quotes",
        (_, Value::Array(_)) => "a list in brackets",
        (_, Value::Object(_)) => "an object in braces",
    };
    let wrong = Wrong::Kind { expected, found: kind_of(node) };
    Err(StrictError::Value { place: shown(path), wrong })
}
