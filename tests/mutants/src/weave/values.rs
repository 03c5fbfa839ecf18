//! Decides which plain values may stand for what a function would have worked out, by the type it promises.
//!
//! A type that is not known here gets `Default::default()`; where it has none, the compiler says so and the mutant counts
//! as not buildable.

use syn::{GenericArgument, PathArguments, ReturnType, Type, TypeParamBound};

/// What a function's body may be replaced by.
pub enum Plain {
    /// These values, each returned at once.
    Values(Vec<String>),
    /// An iterator without its items.
    Emptied,
}

const DEFAULT: &str = "::std::default::Default::default()";
/// As many values for one type as are kept when types are put together.
const MOST: usize = 4;

/// The values for a return type.
pub fn of(output: &ReturnType) -> Plain {
    match output {
        ReturnType::Default => Plain::Values(vec!["()".to_owned()]),
        ReturnType::Type(_, kind) => match &**kind {
            Type::ImplTrait(promised) => {
                let iterates = promised.bounds.iter().any(|bound| match bound {
                    TypeParamBound::Trait(one) => one
                        .path
                        .segments
                        .last()
                        .is_some_and(|s| s.ident.to_string().ends_with("Iterator")),
                    _ => false,
                });
                if iterates { Plain::Emptied } else { Plain::Values(Vec::new()) }
            }
            kind => Plain::Values(values(kind)),
        },
    }
}

fn owned(texts: &[&str]) -> Vec<String> {
    texts.iter().map(|text| (*text).to_owned()).collect()
}

fn values(kind: &Type) -> Vec<String> {
    match kind {
        Type::Never(_) | Type::ImplTrait(_) => Vec::new(),
        Type::Paren(inner) => values(&inner.elem),
        Type::Reference(to) => match &*to.elem {
            Type::Path(path) if to.mutability.is_none() && path.path.is_ident("str") => {
                owned(&["\"\"", "\"xyzzy\""])
            }
            Type::Slice(_) if to.mutability.is_none() => owned(&["&[]"]),
            other => values(other)
                .into_iter()
                .map(|value| format!("::std::boxed::Box::leak(::std::boxed::Box::new({value}))"))
                .collect(),
        },
        Type::Array(array) => values(&array.elem)
            .into_iter()
            .map(|value| format!("::std::array::from_fn(|_| {value})"))
            .collect(),
        Type::Tuple(tuple) => {
            let mut rows = vec![String::new()];
            for part in &tuple.elems {
                let part = values(part);
                rows = rows
                    .iter()
                    .flat_map(|row| part.iter().map(move |one| format!("{row}{one}, ")))
                    .collect();
                rows.truncate(MOST);
            }
            rows.into_iter().map(|row| format!("({})", row.trim_end_matches(", "))).collect()
        }
        Type::Path(path) => match path.path.segments.last() {
            Some(last) => named(&last.ident.to_string(), &last.arguments),
            None => Vec::new(),
        },
        _ => owned(&[DEFAULT]),
    }
}

fn named(name: &str, arguments: &PathArguments) -> Vec<String> {
    let within = |before: &str| -> Vec<String> {
        first(arguments)
            .into_iter()
            .flat_map(values)
            .map(|value| format!("{before}({value})"))
            .collect()
    };
    match name {
        "bool" => owned(&["true", "false"]),
        "u8" | "u16" | "u32" | "u64" | "u128" | "usize" => owned(&["0", "1"]),
        "i8" | "i16" | "i32" | "i64" | "i128" | "isize" => owned(&["0", "1", "-1"]),
        "f32" | "f64" => owned(&["0.0", "1.0", "-1.0"]),
        "String" => owned(&["::std::string::String::new()", "\"xyzzy\".to_owned()"]),
        "Option" => {
            let mut all = owned(&["None"]);
            all.extend(within("Some").into_iter().take(MOST - 1));
            all
        }
        "Result" => within("Ok").into_iter().take(MOST).collect(),
        "Vec" => {
            let mut all = owned(&["::std::vec::Vec::new()"]);
            let one = first(arguments).into_iter().flat_map(values).next();
            all.extend(one.map(|value| format!("::std::vec::Vec::from([{value}])")));
            all
        }
        "Box" | "Arc" | "Rc" => within(&format!("{name}::new")),
        _ => owned(&[DEFAULT]),
    }
}

fn first(arguments: &PathArguments) -> Option<&Type> {
    let PathArguments::AngleBracketed(all) = arguments else { return None };
    all.args.iter().find_map(|one| match one {
        GenericArgument::Type(kind) => Some(kind),
        _ => None,
    })
}
