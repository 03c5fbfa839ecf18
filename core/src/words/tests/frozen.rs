//! Every message of every language, as it stands in the source, one snapshot a file, the languages below
//! each other: a changed word shows in review beside what it has to agree with.

use super::*;

/// The messages of a file as written, in order: id, text.
fn messages(language: &Language, file: &str) -> Vec<(String, String)> {
    let found = language.files().into_iter().find(|(name, _)| name == file);
    let (_, source) = found.unwrap_or_else(|| panic!("{} has no file {file}", language.tag));
    let mut found: Vec<(String, String)> = Vec::new();
    for line in source.lines().filter(|line| !line.starts_with('#')) {
        let starts = line.starts_with(|first: char| first.is_ascii_lowercase());
        if let Some((id, text)) = line.split_once('=').filter(|_| starts) {
            found.push((id.trim().to_owned(), text.trim().to_owned()));
        } else if let Some((_, text)) = found.last_mut().filter(|_| !line.trim().is_empty()) {
            text.push_str("\n     ");
            text.push_str(line);
        }
    }
    found
}

#[test]
fn every_message_is_frozen_side_by_side() {
    let people = || Words::offered(false).into_iter().filter(|one| one.pseudo.is_none());
    let mut frozen = 0;
    for (file, _) in en::LANGUAGE.files() {
        let by_language: Vec<(&str, Vec<(String, String)>)> =
            people().map(|language| (language.tag, messages(language, &file))).collect();
        let mut shown = String::new();
        for (id, _) in &by_language[0].1 {
            shown.push_str(&format!("{id}\n"));
            for (tag, messages) in &by_language {
                let text =
                    messages.iter().find(|(one, _)| one == id).map(|(_, text)| text.as_str());
                shown.push_str(&format!("  {tag} {}\n", text.unwrap_or("(not in this file)")));
            }
            frozen += 1;
        }
        let name = file.trim_end_matches(".ftl");
        insta::with_settings!({ omit_expression => true }, {
            insta::assert_snapshot!(name, shown);
        });
    }
    assert_eq!(frozen, used::messages(&en::LANGUAGE).len());
}

/// The same message in the same file of each language, so that none is overlooked above.
#[test]
fn each_language_has_each_message_in_the_same_file() {
    let ids = |language: &Language, file: &str| -> std::collections::BTreeSet<String> {
        messages(language, file).into_iter().map(|(id, _)| id).collect()
    };
    for language in Words::offered(false) {
        let names =
            |one: &Language| one.files().into_iter().map(|(name, _)| name).collect::<Vec<_>>();
        assert_eq!(names(language), names(&en::LANGUAGE), "{}", language.tag);
        for (file, _) in en::LANGUAGE.files() {
            let (own, english) = (ids(language, &file), ids(&en::LANGUAGE, &file));
            let apart: Vec<_> = own.symmetric_difference(&english).collect();
            assert!(
                apart.is_empty(),
                "{} {file}, here or in English alone: {apart:?}",
                language.tag
            );
        }
    }
}

/// A licensed clinician signs off one file (H16): no caution stands outside it.
#[test]
fn cautions_stand_in_the_text_that_is_signed_off() {
    // Titles, and what a clinician types or reads back. None of them is a caution itself.
    const OTHERS: [&str; 3] = ["accept-cautions-title", "page-cautions", "readback-own-caution"];
    for (file, _) in en::LANGUAGE.files() {
        if matches!(file.as_str(), "safety.ftl" | "compose.ftl") {
            continue;
        }
        for (id, _) in messages(&en::LANGUAGE, &file) {
            assert!(!id.contains("caution") || OTHERS.contains(&id.as_str()), "{file}: {id}");
        }
    }
}
