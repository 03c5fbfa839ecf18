//! What is kept, over a kill too; and what is gone afterwards.

use std::fs;
use std::os::unix::fs::PermissionsExt;
use std::path::Path;

use crate::client::{Server, hidden, id};

struct Own {
    base: tempfile::TempDir,
    folder: String,
    secret: String,
}

fn own() -> Own {
    let base = tempfile::tempdir().unwrap();
    let secret = base.path().join("secret");
    fs::write(&secret, "some invented words\n").unwrap();
    fs::set_permissions(&secret, fs::Permissions::from_mode(0o600)).unwrap();
    let folder = base.path().join("diary").display().to_string();
    Own { folder, secret: secret.display().to_string(), base }
}

impl Own {
    fn open(&self) -> Server {
        Server::entered(&["--diary", &self.folder, "--passphrase-file", &self.secret])
    }
}

#[test]
fn what_was_kept_is_there_after_a_kill() {
    let own = own();
    let server = own.open();
    let page = server.page("/questions");
    let question = [("id", id(&page, "/questions")), ("text", "Will it be there?".to_owned())];
    let question = question.each_ref().map(|(name, value)| (*name, value.as_str()));
    server.told("/questions", &question);
    server.kill();
    let server = own.open();
    assert!(server.page("/questions").contains("Will it be there?"));
    // A form that was open over the kill, sent again, writes nothing twice.
    server.told("/questions", &question);
    assert_eq!(server.page("/entries").matches("Will it be there?").count(), 1);
    assert!(own.base.path().exists());
}

#[test]
fn a_practice_is_found_again_after_a_kill() {
    let own = own();
    let server = own.open();
    let page = server.page("/breathing");
    let begin = hidden(&page, "/practice/begin");
    let begin: Vec<(&str, &str)> = begin.iter().map(|(n, v)| (n.as_str(), v.as_str())).collect();
    let page = server.told("/practice/begin", &begin);
    assert!(page.contains("data-pacer=") && page.contains("src=\"/practice.js\""));
    let stop = page.find("value=\"stop\"").unwrap();
    assert!(page.find("value=\"begin\"").unwrap() > stop, "stop is the first button");
    let page = server.told("/practice/during", &[("event", "begin"), ("part", "0")]);
    assert!(page.contains("data-runs=\"true\""));
    // Looking again, as after a reload, changes nothing.
    assert!(server.page("/practice").contains("data-runs=\"true\""));
    assert_eq!(server.post("/practice/seen", &[]).status, 204);
    server.kill();
    let server = own.open();
    let first = server.get("/");
    assert_eq!(first.header("location"), Some("/practice"));
    let page = server.page("/practice");
    assert!(page.contains("<h1>Your practice was interrupted</h1>"));
    let page = server.told("/practice/found", &[("choice", "finish")]);
    assert!(page.contains("<h1>How was it?</h1>"), "{page}");
    let mut fields = hidden(&page, "/practice/rate");
    fields.push(("peak".to_owned(), "rather_not_say".to_owned()));
    let fields: Vec<(&str, &str)> = fields.iter().map(|(n, v)| (n.as_str(), v.as_str())).collect();
    server.told("/practice/rate", &fields);
    server.told("/practice/rate", &fields);
    assert_eq!(server.page("/entries").matches("Slow breathing").count(), 1);
    assert_eq!(server.get("/").header("location"), Some("/today"));
}

#[test]
fn the_temporary_diary_is_gone_afterwards() {
    for args in [&["--empty"][..], &[][..]] {
        let server = Server::entered(args);
        server.page("/today");
        let inside = || fs::read_dir(server.temporary.path()).unwrap().count();
        assert_eq!(inside(), 1, "it was there");
        let (said, temporary) = server.stop();
        assert_eq!(said, "");
        assert_eq!(fs::read_dir(temporary.path()).unwrap().count(), 0);
    }
}

#[test]
fn everything_can_be_erased_and_begun_anew() {
    let own = own();
    let server = own.open();
    let page = server.page("/questions");
    server.told("/questions", &[("id", &id(&page, "/questions")), ("text", "Private words")]);
    assert!(server.page("/erase/all").contains("action=\"/erase/all\""));
    assert_eq!(server.post("/erase/all", &[]).status, 303);
    assert!(server.page("/today").contains("<h1>Erased</h1>"));
    let left: u64 = sizes(Path::new(&own.folder));
    assert_eq!(left, 0, "no byte of it is left");
    assert_eq!(server.post("/start", &[]).status, 303);
    assert!(!server.page("/entries").contains("Private words"));
}

fn sizes(folder: &Path) -> u64 {
    let inside = fs::read_dir(folder).into_iter().flatten().flatten();
    inside
        .map(|entry| match entry.metadata().unwrap() {
            about if about.is_dir() => sizes(&entry.path()),
            about => about.len(),
        })
        .sum()
}

#[test]
fn a_new_passphrase_opens_and_a_summary_can_be_saved() {
    let own = own();
    let server = own.open();
    let two = [("new", "other invented words"), ("again", "other invented")];
    assert_eq!(server.post("/keeping/passphrase", &two).status, 422);
    let two = [("new", "other invented words"), ("again", "other invented words")];
    server.told("/keeping/passphrase", &two);
    let file = server.post("/summary/file", &[("way", "open"), ("notes", "yes")]);
    assert_eq!(file.status, 200);
    assert!(file.header("content-disposition").unwrap().starts_with("attachment; filename="));
    let sealed = server.post(
        "/summary/file",
        &[("way", "passphrase"), ("new", "words for it"), ("again", "words for it")],
    );
    assert!(sealed.body.starts_with(b"age-encryption.org/"), "{}", sealed.head);
    assert_eq!(server.post("/summary/file", &[]).status, 422, "nothing is preset");
    server.kill();
    fs::write(&own.secret, "other invented words\n").unwrap();
    own.open().page("/today");
}

#[test]
fn a_plan_given_at_the_start_waits_to_be_read() {
    let own = own();
    let plan = own.base.path().join("plan.json");
    fs::write(&plan, include_str!("../../src/scenario/programme-1.json")).unwrap();
    let server = Server::entered(&["--empty", "--programme", &plan.display().to_string()]);
    assert_eq!(server.get("/").header("location"), Some("/plan/add"));
    let page = server.page("/plan/add");
    let accept = id(&page, "/plan/accept");
    server.told("/plan/accept", &[("id", &accept), ("answer", "yes"), ("although", "unsigned")]);
    assert!(server.page("/steps").contains("You are here"));
}

#[test]
fn a_damaged_diary_says_so_and_is_restored_from_its_copy() {
    let own = own();
    let server = own.open();
    let page = server.page("/questions");
    server.told("/questions", &[("id", &id(&page, "/questions")), ("text", "Before the damage")]);
    // The next entry makes a copy of what there is.
    let page = server.page("/questions");
    server.told("/questions", &[("id", &id(&page, "/questions")), ("text", "And after the copy")]);
    server.kill();
    for name in ["keys", "keys.1", "keys.2"] {
        let path = Path::new(&own.folder).join(name);
        if path.exists() {
            fs::write(&path, vec![0u8; 64]).unwrap();
        }
    }
    let server = own.open();
    let answer = server.get("/today");
    assert_eq!(answer.status, 503, "{}", answer.text());
    assert!(answer.text().contains("href=\"/restore\""), "{}", answer.text());
    let looked = server.post("/restore", &[]);
    assert_eq!(looked.status, 200, "{}", looked.text());
    assert!(looked.text().contains("action=\"/restore/now\""));
    // Looking has changed nothing.
    assert_eq!(server.get("/today").status, 503);
    server.told("/restore/now", &[]);
    assert!(server.page("/questions").contains("Before the damage"));
}

#[test]
fn twelve_words_open_a_copy_elsewhere() {
    let first = own();
    let server = first.open();
    let page = server.page("/questions");
    server.told("/questions", &[("id", &id(&page, "/questions")), ("text", "Carried elsewhere")]);
    // Without a phrase there is nothing that could open a copy.
    assert_eq!(server.post("/keeping/copy", &[]).status, 422);
    let words = server.twelve_words();
    let copy = server.post("/keeping/copy", &[]);
    assert_eq!(copy.status, 200);
    assert!(copy.body.starts_with(b"age-encryption.org/"));
    let other = Server::entered(&["--empty"]);
    let looked = other.upload_with("/restore/copy", &copy.body, &[("phrase", &words.join(" "))]);
    assert!(looked.text().contains("action=\"/restore/now\""), "{}", looked.text());
    other.told("/restore/now", &[]);
    assert!(other.page("/questions").contains("Carried elsewhere"));
    let looked = other.upload_with("/restore/copy", &copy.body, &[("phrase", "one two")]);
    assert_eq!(looked.status, 422);
}

/// The empty diary is kept as a phone keeps it: it has a code of its own, asked for after it was locked, and what
/// is behind it is shown on no page meanwhile.
#[test]
fn the_own_code_is_chosen_asked_for_and_taken_away() {
    let server = Server::entered(&["--empty"]);
    let page = server.page("/questions");
    server.told("/questions", &[("id", &id(&page, "/questions")), ("text", "Behind the code")]);
    assert!(!server.page("/keeping").contains("action=\"/lock\""), "nothing to lock");
    let differ = [("new", "2222"), ("again", "2223")];
    let answer = server.post("/keeping/code", &differ);
    assert_eq!(answer.status, 422);
    assert!(answer.text().contains("href=\"#again\"") && !answer.text().contains("222"));
    let done = server.told("/keeping/code", &[("new", "2222"), ("again", "2222")]);
    assert!(done.contains("<h1>Done</h1>"), "{done}");
    assert!(server.page("/done").contains("<h1>Done</h1>"), "looked at again, done once");
    assert!(server.page("/keeping").contains("action=\"/lock\""));
    // When a phone would lock is hers to say, and is kept with the diary.
    assert!(server.page("/settings").contains("value=\"two_minutes\" checked"));
    let page = server.page("/settings");
    let set = id(&page, "/settings/lock");
    let page = server.told("/settings/lock", &[("id", &set), ("lock", "at_once")]);
    assert!(page.contains("value=\"at_once\" checked"), "{page}");
    let locked = server.told("/lock", &[]);
    assert!(locked.contains("<h1>Your code</h1>"), "{locked}");
    for path in ["/questions", "/entries", "/done", "/summary", "/restore", "/erase/all"] {
        let answer = server.get(path);
        let answer = match answer.header("location") {
            Some(to) => server.get(to),
            None => answer,
        };
        assert!(answer.text().contains("<h1>Your code</h1>"), "{path}: {}", answer.text());
        assert!(!answer.text().contains("Behind the code"), "{path}");
    }
    let wrong = server.post("/code", &[("code", "1111")]);
    assert_eq!(wrong.status, 422);
    assert!(wrong.text().contains("href=\"#code\"") && !wrong.text().contains("1111"));
    server.told("/code", &[("code", "2222")]);
    assert!(server.page("/questions").contains("Behind the code"));
    // Whoever was handed the open page does not take it away without knowing it.
    assert!(server.page("/keeping/code").contains("<h1>Your code</h1>"));
    let form = server.post("/code", &[("code", "2222")]).text();
    assert!(form.contains("action=\"/keeping/code/remove\""), "{form}");
    server.told("/keeping/code/remove", &[("code", "2222")]);
    assert!(!server.page("/keeping").contains("action=\"/lock\""));
    // Here no passphrase opens it.
    assert_eq!(server.get("/keeping/passphrase").header("location"), Some("/keeping/code"));
}
