//! Compares the message ids in the source with the messages there are. Test only.
//!
//! It reads the Rust files of the core and of the bindings as text. An id counts as used where it
//! stands in `.text("...")` or `message_id!("...")`, outside comments and tests.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// One use of an id, with the names of the values if they are written out in the call.
struct Use {
    id: String,
    values: Option<BTreeSet<String>>,
    place: String,
}

#[test]
fn every_message_used_exists_and_every_english_message_is_used() {
    let english = messages(super::Words::for_language("en").language());
    let uses = uses();
    assert!(uses.len() > 100, "the scan found only {} uses: is it broken?", uses.len());
    let mut wrong = Vec::new();
    for one in &uses {
        match (english.get(&one.id), &one.values) {
            (None, _) => wrong.push(format!("{}: no English message {:?}", one.place, one.id)),
            (Some(asked), Some(given)) if asked != given => wrong.push(format!(
                "{}: {:?} asks for {asked:?} and is given {given:?}",
                one.place, one.id
            )),
            _ => {}
        }
    }
    let used: BTreeSet<&str> = uses.iter().map(|one| one.id.as_str()).collect();
    for id in english.keys().filter(|id| !used.contains(id.as_str())) {
        wrong.push(format!("nothing uses the English message {id:?}"));
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn every_language_has_the_messages_and_values_of_english() {
    let english = messages(&super::en::LANGUAGE);
    let mut wrong = Vec::new();
    for language in super::Words::offered(false) {
        let (tag, own) = (language.tag, messages(language));
        for (id, values) in &english {
            match own.get(id) {
                None => wrong.push(format!("{tag}: no message {id}")),
                Some(asked) if asked != values => wrong
                    .push(format!("{tag}: {id} asks for {asked:?}, and English for {values:?}")),
                Some(_) => {}
            }
        }
        let more = own.keys().filter(|id| !english.contains_key(*id));
        wrong.extend(more.map(|id| format!("{tag}: {id} is no message of English")));
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn the_scan_sees_what_it_should() {
    let source = r##"
        // words.text("in-a-comment", &[])
        let a = words.text("plain", &[]);
        let b = words
            .text(
                "split-over-lines",
                &[("count", n.into()), ("inner", words.text("nested", &[("deep", x)]).into())],
            );
        let c = message_id!("stored");
        let d = words.text("later", &values);
        let e = other_text("not-a-message", &[]);
        let f = words.text(sign.name_id(), &[]);
        #[cfg(test)]
        mod tests {
            fn t() { words.text("in-a-test", &[]); }
        }
    "##;
    let found: BTreeMap<String, Option<BTreeSet<String>>> =
        scan(source, "here").into_iter().map(|one| (one.id, one.values)).collect();
    let names = |list: &[&str]| Some(list.iter().map(|name| (*name).to_owned()).collect());
    let expected = BTreeMap::from([
        ("plain".to_owned(), names(&[])),
        ("split-over-lines".to_owned(), names(&["count", "inner"])),
        ("nested".to_owned(), names(&["deep"])),
        ("stored".to_owned(), None),
        ("later".to_owned(), None),
    ]);
    assert_eq!(found, expected);
}

#[test]
#[should_panic(expected = "built from pieces")]
fn the_scan_refuses_an_id_built_from_pieces() {
    scan(r#"words.text(&format!("sign-{name}"), &[])"#, "here");
}

/// The id of every message of a language, with the names of the values it asks for.
pub(super) fn messages(language: &super::Language) -> BTreeMap<String, BTreeSet<String>> {
    let mut found: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for (_, source) in language.files() {
        let mut current: Option<String> = None;
        for line in source.lines() {
            let starts = line.starts_with(|first: char| first.is_ascii_lowercase());
            if let Some((id, _)) = line.split_once('=').filter(|_| starts) {
                current = Some(id.trim().to_owned());
                found.insert(id.trim().to_owned(), BTreeSet::new());
            } else if !line.is_empty() && !line.starts_with(' ') && !line.starts_with('}') {
                current = None;
            }
            if let Some(names) = current.as_ref().and_then(|id| found.get_mut(id)) {
                names.extend(line.split('$').skip(1).map(|rest| {
                    let end = |one: char| !(one.is_ascii_alphanumeric() || "-_".contains(one));
                    rest.split(end).next().unwrap_or_default().to_owned()
                }));
            }
        }
    }
    found
}

fn uses() -> Vec<Use> {
    let core = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut files = Vec::new();
    rust_files(&core.join("src"), &mut files);
    rust_files(&core.join("../bindings"), &mut files);
    let mut found = Vec::new();
    for file in files {
        let source = fs::read_to_string(&file).unwrap();
        found.extend(scan(&source, &file.display().to_string()));
    }
    found
}

/// Every `.rs` file below `folder` that is neither a test nor this scan.
fn rust_files(folder: &Path, found: &mut Vec<PathBuf>) {
    let Ok(entries) = fs::read_dir(folder) else { return };
    for entry in entries {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        if path.is_dir() && name != "target" && name != "tests" {
            rust_files(&path, found);
        } else if name.ends_with(".rs") && name != "used.rs" && !name.ends_with("tests.rs") {
            found.push(path);
        }
    }
}

fn scan(source: &str, place: &str) -> Vec<Use> {
    let code = without_comments_and_tests(source);
    let mut found = Vec::new();
    for (at, _) in code.match_indices(".text(") {
        let rest = code[at + ".text(".len()..].trim_start();
        assert!(
            !rest.trim_start_matches('&').starts_with("format!"),
            "{place}: a message id is built from pieces; write it out, see the module words"
        );
        let Some((id, rest)) = literal(rest) else { continue };
        let rest = rest.trim_start().trim_start_matches(',').trim_start();
        let values = rest.strip_prefix("&[").map(value_names);
        found.push(Use { id, values, place: place.to_owned() });
    }
    for (at, mark) in code.match_indices("message_id!(") {
        if let Some((id, _)) = literal(code[at + mark.len()..].trim_start()) {
            found.push(Use { id, values: None, place: place.to_owned() });
        }
    }
    found
}

fn without_comments_and_tests(source: &str) -> String {
    let mut code = String::new();
    let mut lines = source.lines().peekable();
    while let Some(line) = lines.next() {
        let inline_tests = line.trim() == "#[cfg(test)]"
            && lines.peek().is_some_and(|next| next.contains("mod ") && next.ends_with('{'));
        if inline_tests {
            break;
        }
        if !line.trim_start().starts_with("//") {
            code.push_str(line);
            code.push('\n');
        }
    }
    code
}

/// A string literal at the start, and what follows it. Ids hold no escapes.
fn literal(code: &str) -> Option<(String, &str)> {
    let (inside, rest) = code.strip_prefix('"')?.split_once('"')?;
    Some((inside.to_owned(), rest))
}

/// The names in `("name", ...), ...]`, not those of calls nested in the values.
fn value_names(code: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let mut depth = 0usize;
    let mut rest = code;
    while let Some(next) = rest.chars().next() {
        match next {
            ']' | ')' if depth == 0 => break,
            '(' | '[' => {
                if depth == 0
                    && let Some((name, _)) = literal(rest[1..].trim_start())
                {
                    names.insert(name);
                }
                depth += 1;
            }
            ')' | ']' => depth -= 1,
            '"' => {
                // Skips the text of a literal, whose brackets mean nothing.
                rest = literal(rest).map_or("", |(_, after)| after);
                continue;
            }
            _ => {}
        }
        rest = &rest[next.len_utf8()..];
    }
    names
}
