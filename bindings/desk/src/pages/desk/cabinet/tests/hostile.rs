//! What was written to do harm, and what was damaged: shown as text, said in one sentence, and the pages go on.

use std::path::Path;

use axum::http::StatusCode;
use frond_core::diary::entry::Entry;
use frond_core::summary::{Selection, Summary};

use super::super::super::tests::run;
use super::{Desk, invented, person, whole};

#[test]
fn names_of_files_lead_nowhere_and_are_text() {
    run(async {
        let desk = Desk::open(&[]).await;
        let names =
            ["../../../tmp/x", "<img src=x onerror=alert(1)>.age", "a\u{202e}gpj.exe", "\u{200b}"];
        let files: Vec<(&str, Vec<u8>)> =
            names.iter().map(|name| (*name, b"none".to_vec())).collect();
        let page = desk.bring(&files, &[]).await;
        whole("/bring/now", &page);
        assert!(page.contains("Not taken in: 4 files"));
        assert!(page.contains("&#60;img src=x onerror=alert(1)&#62;.age"), "{page}");
        assert!(page.contains(">x</h3>") && page.contains(">agpj.exe</h3>"));
        assert!(page.contains("A file without a name"));
        assert!(!page.contains('\u{202e}') && !page.contains("<img"));
        assert!(desk.page("/people").await.contains("There is no summary here yet."));
    });
}

const SCRIPT: &str = "<script>alert(1)</script>\"'><b>";

/// The same entries with a script wherever a person or a clinician writes words.
fn hostile(entries: &[Entry]) -> Vec<Entry> {
    fn walk(value: &mut serde_json::Value) {
        match value {
            serde_json::Value::Object(fields) => {
                for (name, value) in fields.iter_mut() {
                    let words = [
                        "note",
                        "text",
                        "with",
                        "activity",
                        "goal",
                        "for",
                        "name",
                        "clinic",
                        "hours",
                        "if_nobody_answers",
                        "what_to_do",
                        "country",
                        "label",
                        "instruction",
                    ];
                    match value {
                        serde_json::Value::String(text) if name == "carried" => {
                            let mut plan: serde_json::Value = serde_json::from_str(text).unwrap();
                            walk(&mut plan);
                            *text = plan.to_string();
                        }
                        serde_json::Value::String(text) if words.contains(&name.as_str()) => {
                            *text = SCRIPT.to_owned();
                        }
                        other => walk(other),
                    }
                }
            }
            serde_json::Value::Array(items) => items.iter_mut().for_each(walk),
            _ => {}
        }
    }
    entries
        .iter()
        .map(|entry| {
            let mut value = serde_json::to_value(entry).unwrap();
            walk(&mut value);
            serde_json::from_value(value).unwrap()
        })
        .collect()
}

#[test]
fn a_script_in_every_text_is_shown_as_text_on_every_page() {
    run(async {
        let desk = Desk::open(&[]).await;
        let one = (0..40).map(invented).max_by_key(|one| one.entries.len()).unwrap();
        let entries = hostile(&one.entries);
        let summary =
            Summary::of(&entries, &one.identity(), &Selection::default(), &one.end).unwrap();
        let file = summary.open_form(&one.identity()).unwrap();
        let page = desk.bring(&[(SCRIPT, file)], &[]).await;
        assert!(page.contains("1 summary came in."), "{page}");
        let rule = format!("{}/rule", person(&one));
        let own = serde_json::to_string(&summary.plan().unwrap().rule.unwrap()).unwrap();
        let (_, _, compared) = desk.multipart(&rule, "file", &[], &[("text", &own)]).await;
        assert!(compared.contains("They say the same after every entry"), "{compared}");
        let mut pages = vec![("compared".to_owned(), compared)];
        for path in [
            "/people".to_owned(),
            person(&one),
            format!("{}/notes", person(&one)),
            rule,
            "/insight".to_owned(),
            format!("{}/remove", person(&one)),
        ] {
            let page = desk.page(&path).await;
            pages.push((path, page));
        }
        for (path, page) in &pages {
            whole(path, page);
            assert!(!page.contains("<script>") && !page.contains("<b>"), "{path}");
        }
        let notes = &pages.iter().find(|(path, _)| path.ends_with("/notes")).unwrap().1;
        assert!(notes.matches("&#60;script&#62;").count() > 10, "it is there, as text");
    });
}

#[test]
fn a_sealed_file_that_was_damaged_on_the_disk_is_said_and_the_rest_goes_on() {
    run(async {
        let desk = Desk::open(&[]).await;
        let one = invented(1);
        desk.bring(&[("r.json", one.open_file()), ("s.json", invented(2).open_file())], &[]).await;
        let folder = desk._room.path().join("desk/summaries");
        let files: Vec<_> =
            std::fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().path()).collect();
        for file in &files {
            damage(file);
        }
        let (status, _, page) = desk.server.get(&person(&one)).await;
        assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(page.contains("This summary cannot be opened any longer"));
        // What is known of it is still listed, and comes back with the file.
        assert!(desk.page("/people").await.contains("2 diaries"));
    });
}

fn damage(file: &Path) {
    let mut bytes = std::fs::read(file).unwrap();
    let middle = bytes.len() / 2;
    bytes[middle] ^= 1;
    std::fs::write(file, bytes).unwrap();
}
