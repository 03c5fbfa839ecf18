//! The pages of the cabinet in this process, without a socket. Every summary is invented.

use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use frond_core::sealing::{Recipient, SealTo};
use frond_core::summary::TimeAlone;
use frond_tests::invented::Invented;

use super::super::tests::{Server, run};

mod apart;
mod hostile;

pub(in super::super) struct Desk {
    pub(in super::super) server: Server,
    _room: tempfile::TempDir,
}

impl Desk {
    pub(in super::super) async fn open(more: &[&str]) -> Self {
        let room = tempfile::tempdir().unwrap();
        let server = Server::on(&room.path().join("desk"), more);
        let (status, _, _) = server.post("/first", "new=invented+words&again=invented+words").await;
        assert_eq!(status, StatusCode::SEE_OTHER);
        Self { server, _room: room }
    }

    pub(in super::super) async fn page(&self, path: &str) -> String {
        let (status, to, page) = self.server.get(path).await;
        assert_eq!(status, StatusCode::OK, "{path} {to}");
        page
    }

    /// Brings files in and gives the page that says what came of it.
    pub(in super::super) async fn bring(
        &self,
        files: &[(&str, Vec<u8>)],
        fields: &[(&str, &str)],
    ) -> String {
        let (status, to, body) = self.multipart("/bring", "files", files, fields).await;
        assert_eq!((status, to.as_str()), (StatusCode::SEE_OTHER, "/bring/now"), "{body}");
        loop {
            let page = self.page("/bring/now").await;
            if !page.contains("<progress") {
                return page;
            }
            assert!(page.contains("<script src=\"/progress.js\" defer></script>"));
            assert!(page.contains("href=\"/bring/now\""), "without script there is a link");
            std::thread::sleep(std::time::Duration::from_millis(50));
        }
    }

    async fn multipart(
        &self,
        path: &str,
        name: &str,
        files: &[(&str, Vec<u8>)],
        fields: &[(&str, &str)],
    ) -> (StatusCode, String, String) {
        let mut body = Vec::new();
        for (given, bytes) in files {
            let given = given.replace('"', "%22").replace(['\r', '\n'], "%0A");
            let head = format!(
                "--edge\r\nContent-Disposition: form-data; name=\"{name}\"; filename=\"{given}\"\r\n\r\n"
            );
            body.extend_from_slice(head.as_bytes());
            body.extend_from_slice(bytes);
            body.extend_from_slice(b"\r\n");
        }
        for (name, value) in fields {
            let part = format!(
                "--edge\r\nContent-Disposition: form-data; name=\"{name}\"\r\n\r\n{value}\r\n"
            );
            body.extend_from_slice(part.as_bytes());
        }
        body.extend_from_slice(b"--edge--\r\n");
        let kind = "multipart/form-data; boundary=edge";
        let request = Request::post(path).header(header::CONTENT_TYPE, kind);
        let (status, to, body) = self.server.ask(request.body(Body::from(body)).unwrap()).await;
        (status, to, String::from_utf8_lossy(&body).into_owned())
    }

    /// The key that summaries are sealed to, as the desk shows it.
    async fn recipient(&self) -> Recipient {
        let page = self.page("/keys").await;
        let from = page.find("age1").unwrap();
        let text: String = page[from..].chars().take_while(char::is_ascii_alphanumeric).collect();
        Recipient::parse(&text).unwrap()
    }
}

fn invented(number: u64) -> Invented {
    Invented::new(number, 5)
}

fn person(of: &Invented) -> String {
    format!("/people/{}", of.identity().id)
}

/// What every page must be, whatever it shows.
fn whole(path: &str, page: &str) {
    let count = |what: &str| page.matches(what).count();
    assert_eq!((count("<h1>"), count("<main "), count("</html>")), (1, 1, 1), "{path}");
    for never in
        ["<style", "style=", "onclick", "javascript:", "http:", "https:", "<meta http-equiv"]
    {
        assert!(!page.contains(never), "{path}: {never}");
    }
    let ids: Vec<&str> =
        page.split(" id=\"").skip(1).filter_map(|rest| rest.split('"').next()).collect();
    let mut once = ids.clone();
    once.sort_unstable();
    once.dedup();
    assert_eq!(once.len(), ids.len(), "{path}: an id stands twice");
    for tag in ["<input ", "<textarea "] {
        for rest in page.split(tag).skip(1) {
            let control = rest.split('>').next().unwrap();
            if ["hidden", "radio", "checkbox"]
                .iter()
                .any(|own| control.contains(&format!("type=\"{own}\"")))
            {
                continue;
            }
            let id = control.split("id=\"").nth(1).and_then(|rest| rest.split('"').next()).unwrap();
            assert!(page.contains(&format!("<label for=\"{id}\">")), "{path}: {id}");
        }
    }
    assert_eq!(page.matches("<fieldset").count(), page.matches("<legend>").count(), "{path}");
}

#[test]
fn an_empty_cabinet_says_how_the_first_summary_comes_in() {
    run(async {
        let desk = Desk::open(&[]).await;
        let page = desk.page("/people").await;
        whole("/people", &page);
        assert!(page.contains("There is no summary here yet."));
        assert!(page.contains("href=\"/bring\""));
        whole("/bring", &desk.page("/bring").await);
        let (status, _, page) = desk.multipart("/bring", "files", &[("", Vec::new())], &[]).await;
        assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(page.contains("Choose a file, or name a folder."));
        let (status, _, page) =
            desk.multipart("/bring", "files", &[], &[("path", "/no/such/folder")]).await;
        assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(page.contains("This folder cannot be read."));
    });
}

#[test]
fn a_summary_that_came_is_listed_and_read_in_the_readings_order() {
    run(async {
        let desk = Desk::open(&[]).await;
        let one = invented(1);
        let to = SealTo::Recipients(vec![desk.recipient().await]);
        let sealed = one.summary().sealed_form(&one.identity(), &to, TimeAlone::Please).unwrap();
        let page = desk.bring(&[("record.age", sealed)], &[]).await;
        whole("/bring/now", &page);
        assert!(page.contains("1 summary came in.") && page.contains("href=\"/summaries/"));
        let list = desk.page("/people").await;
        whole("/people", &list);
        let plan = one.summary().plan().unwrap();
        assert!(list.contains(plan.for_whom.as_str()));
        assert!(list.contains("Time alone, please"));
        let page = desk.page(&person(&one)).await;
        whole("visit", &page);
        let at = |text: &str| page.find(text).unwrap_or_else(|| panic!("no {text}"));
        let order = [
            "TIME ALONE, PLEASE",
            "Plan for:",
            "<h2>Open signs</h2>",
            "<h2>Present step</h2>",
            "<h2>Step by step",
            "<h2>What the rule said",
            "<h2>Charts</h2>",
            "Everything here is self-reported.",
        ];
        assert!(order.is_sorted_by_key(|text| at(text)), "{page}");
        assert_eq!(at("TIME ALONE"), page.find("<section class=\"notice\">\n<p>").unwrap() + 28);
        assert_eq!(page.matches("role=\"img\"").count(), 4);
        assert_eq!(
            page.matches("<table class=\"table\">").count(),
            4 + page.matches("<table class=\"table\">").count() - 4
        );
        assert!(page.contains("<title>Summary · Frond</title>"), "a window's title says nothing");
        whole("rule", &desk.page(&format!("{}/rule", person(&one))).await);
        whole("insight", &desk.page("/insight").await);
    });
}

#[test]
fn search_and_order_are_kept_in_memory_and_stand_in_no_address() {
    run(async {
        let desk = Desk::open(&[]).await;
        let files: Vec<(&str, Vec<u8>)> =
            (0..5).map(|number| ("r.json", invented(number).open_file())).collect();
        desk.bring(&files, &[]).await;
        let plan = invented(3).summary().plan().unwrap();
        let number = plan.for_whom.as_str().split(' ').nth(1).unwrap().to_owned();
        let (status, to, _) =
            desk.server.post("/people", &format!("find={number}&order=nickname")).await;
        assert_eq!((status, to.as_str()), (StatusCode::SEE_OTHER, "/people"));
        let page = desk.page("/people").await;
        assert_eq!(page.matches("<li class=\"card\">").count(), 1);
        assert!(page.contains("1 found."));
        desk.server.post("/people", "find=&order=nickname").await;
        let page = desk.page("/people").await;
        let names: Vec<&str> = page
            .split("<h2><a href=\"/people/")
            .skip(1)
            .filter_map(|rest| rest.split('>').nth(1)?.split('<').next())
            .collect();
        assert_eq!(names.len(), 5);
        assert!(names.is_sorted(), "{names:?}");
        desk.server.post("/people", "find=nobody+at+all").await;
        let page = desk.page("/people").await;
        assert!(
            page.contains("Nothing was found.") && !page.contains("There is no summary here yet")
        );
    });
}

#[test]
fn several_summaries_of_a_diary_are_one_person_read_by_the_newest() {
    run(async {
        let desk = Desk::open(&[]).await;
        let one = invented(2);
        let earlier = one.earlier(20).open_form(&one.identity()).unwrap();
        desk.bring(&[("a.json", one.open_file())], &[]).await;
        let page = desk.bring(&[("b.json", earlier)], &[]).await;
        assert!(page.contains("older than one you have of the same diary"));
        let page = desk.bring(&[("again.json", one.open_file())], &[]).await;
        assert!(page.contains("1 was here already."));
        let list = desk.page("/people").await;
        assert!(
            list.contains("1 diary")
                && list.contains("2 summaries")
                && list.contains("and 1 other summary")
        );
        let page = desk.page(&person(&one)).await;
        assert!(page.contains("Other summaries of this diary"));
        let older =
            page.split("href=\"/summaries/").nth(1).unwrap().split('"').next().unwrap().to_owned();
        let page = desk.page(&format!("/summaries/{older}")).await;
        whole("older", &page);
        assert!(page.contains("This is not the newest summary of the diary."));
    });
}

#[test]
fn a_folder_of_many_comes_in_with_its_progress_and_each_refusal_is_one_sentence() {
    run(async {
        let desk = Desk::open(&[]).await;
        let room = tempfile::tempdir().unwrap();
        std::fs::create_dir(room.path().join("deeper")).unwrap();
        for number in 0..20 {
            let name = if number < 15 {
                format!("r{number}.json")
            } else {
                format!("deeper/r{number}.json")
            };
            std::fs::write(room.path().join(name), invented(number).open_file()).unwrap();
        }
        std::fs::write(room.path().join("photo.jpg"), b"\xff\xd8\xff\xe0").unwrap();
        std::fs::write(room.path().join(".hidden"), b"x").unwrap();
        std::fs::write(room.path().join("bundle.json"), b"{\"resourceType\":\"Bundle\"}").unwrap();
        let path = room.path().to_str().unwrap().to_owned();
        let page = desk.bring(&[], &[("path", &path)]).await;
        whole("/bring/now", &page);
        assert!(page.contains("20 summaries came in."), "{page}");
        assert!(page.contains("Not taken in: 2 files"));
        assert!(page.contains("photo.jpg") && page.contains("This is no summary of Frond."));
        assert!(
            page.contains("bundle.json") && page.contains("a health record of another program")
        );
        assert!(!page.contains(".hidden") && !page.contains(&path));
        assert_eq!(desk.page("/people").await.matches("<li class=\"card\">").count(), 20);
        assert_eq!(
            std::fs::read_dir(room.path()).unwrap().count(),
            19,
            "the folder is left as it is"
        );
    });
}

#[test]
fn another_rule_stands_beside_the_one_in_force_and_nothing_is_saved() {
    run(async {
        let desk = Desk::open(&[]).await;
        let people: Vec<Invented> = (0..6).map(invented).collect();
        let files: Vec<(&str, Vec<u8>)> =
            people.iter().map(|one| ("r.json", one.open_file())).collect();
        desk.bring(&files, &[]).await;
        let one = people.iter().max_by_key(|one| one.entries.len()).unwrap();
        let path = format!("{}/rule", person(one));
        let page = desk.page(&path).await;
        assert!(page.contains("&#34;step_up&#34;"), "the rule in force stands there to be changed");
        let other = include_str!("../../../../scenario/another-rule.json");
        let (status, _, page) =
            desk.multipart(&path, "file", &[("rule.json", other.into())], &[]).await;
        assert_eq!(status, StatusCode::OK, "{page}");
        whole("compared", &page);
        assert!(
            page.contains("The first differences") && page.contains("They differ after"),
            "{page}"
        );
        assert!(page.contains("The rule that is tried"), "it is read back");
        // A programme is taken for its rule; what is none is said at its place.
        let plan = include_str!("../../../../scenario/programme-2.json");
        let (status, _, _) =
            desk.multipart(&path, "file", &[("plan.json", plan.into())], &[]).await;
        assert_eq!(status, StatusCode::OK);
        for wrong in ["{}x", "{\"step_up\":1}", "{\"unknown\":[]}", "[]", "<script>"] {
            let (status, _, page) = desk.multipart(&path, "file", &[], &[("text", wrong)]).await;
            assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
            assert!(
                page.contains("This is no rule that can be read") && !page.contains("<script>")
            );
        }
        let revise = format!("{}/revise", person(one));
        let coded: String = other.bytes().map(|byte| format!("%{byte:02X}")).collect();
        let (status, to, _) = desk.server.post(&revise, &format!("text={coded}")).await;
        assert_eq!(status, StatusCode::SEE_OTHER);
        assert!(to.starts_with("/programmes/") && to.ends_with("/rule"), "{to}");
        let draft = desk.page(&to).await;
        assert!(draft.contains("value=\"14\""), "the tried rule's number stands there: {draft}");
        // The draft's rule can now be chosen by name.
        let page = desk.page(&path).await;
        let choice = page.split("name=\"plan\" value=\"").nth(1).unwrap();
        let choice = choice.split('"').next().unwrap();
        let (status, _, page) = desk.multipart(&path, "file", &[], &[("plan", choice)]).await;
        assert_eq!(status, StatusCode::OK, "{page}");
        assert!(page.contains("They differ after"));
        let (status, to, _) = desk.server.post(&revise, "").await;
        assert_eq!(status, StatusCode::SEE_OTHER);
        assert!(to.ends_with("/who"), "without a rule it is a plain revision: {to}");
        let (status, to, _) =
            desk.multipart("/rules", "file", &[("rule.json", other.into())], &[]).await;
        assert_eq!((status, to.as_str()), (StatusCode::SEE_OTHER, "/rules/now"));
        let page = desk.page("/rules/now").await;
        whole("/rules/now", &page);
        assert!(page.contains("6 diaries were compared"), "{page}");
        let row = page.split("pause and call</th>").nth(1).unwrap();
        assert!(row.starts_with("<td>"), "counts first");
        assert!(page.find("<table").unwrap() < page.find("Diaries where they differ").unwrap());
        assert!(desk.page("/people").await.contains("6 diaries"));
    });
}

#[test]
fn taking_a_diary_away_is_asked_and_then_done() {
    run(async {
        let desk = Desk::open(&[]).await;
        let one = invented(1);
        desk.bring(&[("r.json", one.open_file())], &[]).await;
        let path = format!("{}/remove", person(&one));
        whole(&path, &desk.page(&path).await);
        assert_eq!(desk.server.post(&path, "").await.1, "/people");
        assert!(desk.page("/people").await.contains("There is no summary here yet."));
        assert_eq!(desk.server.get(&person(&one)).await.0, StatusCode::NOT_FOUND);
    });
}

#[test]
fn a_locked_desk_shows_none_of_it() {
    run(async {
        let desk = Desk::open(&[]).await;
        let one = invented(1);
        desk.bring(&[("r.json", one.open_file())], &[]).await;
        desk.server.post("/lock", "").await;
        let diary = person(&one);
        for path in [
            "/people",
            "/bring",
            "/bring/now",
            "/rules",
            "/rules/now",
            "/insight",
            &diary,
            &format!("{diary}/rule"),
            &format!("{diary}/notes"),
            &format!("{diary}/remove"),
        ] {
            let (status, to, _) = desk.server.get(path).await;
            assert_eq!((status, to.as_str()), (StatusCode::SEE_OTHER, "/open"), "{path}");
        }
        assert_eq!(desk.server.post("/people", "find=x").await.1, "/open");
        assert_eq!(desk.server.post(&format!("{diary}/remove"), "").await.1, "/open");
        let (_, to, _) =
            desk.multipart("/bring", "files", &[("r", invented(2).open_file())], &[]).await;
        assert_eq!(to, "/open");
        // Open again, everything is where it was.
        desk.server.post("/open", "passphrase=invented+words").await;
        assert!(desk.page("/people").await.contains("1 diary"));
    });
}

#[test]
fn a_desk_locked_while_files_come_in_opens_again_with_what_came() {
    run(async {
        let desk = Desk::open(&[]).await;
        let files: Vec<(&str, Vec<u8>)> =
            (0..60).map(|number| ("r.json", invented(number).open_file())).collect();
        let (status, _, _) = desk.multipart("/bring", "files", &files, &[]).await;
        assert_eq!(status, StatusCode::SEE_OTHER);
        for _ in 0..3 {
            desk.server.post("/lock", "").await;
            desk.server.post("/open", "passphrase=invented+words").await;
            whole("/people", &desk.page("/people").await);
        }
        // Bringing them once more takes in what is missing and nothing twice.
        let page = desk.bring(&files, &[]).await;
        assert!(!page.contains("Not taken in"), "{page}");
        let list = desk.page("/people").await;
        assert!(list.contains("60 diaries") && list.contains("60 summaries"), "{list}");
    });
}

#[test]
fn every_page_is_there_in_every_language_and_mirrored() {
    run(async {
        for language in ["es", "ar-XB", "en-XA"] {
            let desk = Desk::open(&["--language", language]).await;
            let one = invented(3);
            desk.bring(&[("r.json", one.open_file()), ("x", b"none".to_vec())], &[]).await;
            for path in [
                "/people".to_owned(),
                "/bring".to_owned(),
                "/bring/now".to_owned(),
                person(&one),
                format!("{}/rule", person(&one)),
                "/rules".to_owned(),
                "/insight".to_owned(),
            ] {
                let page = desk.page(&path).await;
                whole(&path, &page);
                let dir = if language == "ar-XB" { "rtl" } else { "ltr" };
                assert!(page.starts_with(&format!(
                    "<!DOCTYPE html>\n<html lang=\"{language}\" dir=\"{dir}\" translate=\"no\""
                )));
            }
        }
    });
}
