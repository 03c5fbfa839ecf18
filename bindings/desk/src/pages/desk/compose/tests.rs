//! Writing programmes over HTTP, without a socket: every programme of the fixtures is typed from nothing
//! through the pages; whatever is amiss is kept as typed and stands at its place.

use axum::http::StatusCode;
use frond_core::programme::draft::{Draft, Place};
use frond_core::programme::plan::Programme;
use frond_core::programme::read::read;
use percent_encoding::{NON_ALPHANUMERIC, utf8_percent_encode};
use serde_json::Value;

use super::super::tests::{NEW, Server, run};
use super::page::Leaf;

mod leaves;

macro_rules! fixture {
    ($name:literal) => {
        ($name, include_str!(concat!("../../../../../../fixtures/programmes/", $name, ".json")))
    };
}
const FIXTURES: [(&str, &str); 10] = [
    fixture!("1-graded-then-positions"),
    fixture!("1-graded-then-positions-revision-2"),
    fixture!("2-movement-and-partner"),
    fixture!("3-breathing-only"),
    fixture!("4-after-radiotherapy"),
    fixture!("5-scar-after-birth"),
    fixture!("6-examination-or-tampon"),
    fixture!("7-very-careful"),
    fixture!("8-two-sizes-in-one-session"),
    fixture!("9-in-spanish"),
];
/// Before every day of review in the fixtures.
const NOW: [&str; 2] = ["--now", "2026-03-01T09:00:00Z"];

fn programme(at: usize) -> Programme {
    read(FIXTURES[at].1.as_bytes()).unwrap()
}

async fn desk(room: &tempfile::TempDir, more: &[&str]) -> Server {
    let more: Vec<&str> = NOW.iter().chain(more).copied().collect();
    let server = Server::on(room.path(), &more);
    server.post("/first", NEW).await;
    server
}

fn body(fields: &[(&str, &str)]) -> String {
    let code = |text: &str| utf8_percent_encode(text, NON_ALPHANUMERIC).to_string();
    fields
        .iter()
        .map(|(name, text)| format!("{}={}", code(name), code(text)))
        .collect::<Vec<String>>()
        .join("&")
}

/// A draft that is written through its pages.
struct Writing<'a> {
    server: &'a Server,
    at: String,
}

impl<'a> Writing<'a> {
    async fn new(server: &'a Server) -> Self {
        let (status, to, _) = server.post("/programmes/new", "").await;
        assert_eq!(status, StatusCode::SEE_OTHER);
        Self { server, at: to.trim_end_matches("/who").to_owned() }
    }

    async fn page(&self, page: &str) -> String {
        let (status, _, text) = self.server.get(&format!("{}/{page}", self.at)).await;
        assert_eq!(status, StatusCode::OK, "{page}");
        text
    }

    /// Sends these fields of a page, and presses a button; answers where that leads.
    async fn send(&self, page: &str, fields: &[(&str, &str)], then: &str) -> String {
        let shown = self.page(page).await;
        let shape = value_of(&shown, "shape");
        for (name, _) in fields {
            assert!(shown.contains(&format!("name=\"{name}\"")), "{page} has no {name}");
        }
        if then != "save" && then != "put_back" {
            assert!(shown.contains(&format!("value=\"{then}\"")), "{page} has no button {then}");
        }
        let more = [("shape", shape.as_str()), ("then", then)];
        let fields: Vec<(&str, &str)> = fields.iter().chain(&more).copied().collect();
        let (status, to, _) =
            self.server.post(&format!("{}/{page}", self.at), &body(&fields)).await;
        assert_eq!(status, StatusCode::SEE_OTHER, "{page} {then}");
        to
    }

    /// Types what is wanted at a place, adding first what has to be added.
    async fn type_in(&self, at: &str, wanted: &Value) {
        let page = Leaf::holding(&Place::new(at)).address();
        let inner =
            |part: &str| if at.is_empty() { part.to_owned() } else { format!("{at}.{part}") };
        match wanted {
            Value::String(text) => {
                if [".practice", ".position", ".target"].iter().any(|end| at.ends_with(end)) {
                    let offered = format!("value=\"{text}\"");
                    assert!(
                        self.page(&page).await.contains(&offered),
                        "{at} does not offer {text}"
                    );
                }
                self.send(&page, &[(at, text)], "save").await;
            }
            Value::Bool(true) => {
                self.send(&page, &[(at, ""), (at, "yes")], "save").await;
            }
            Value::Object(fields) => {
                if at.split('.').next_back() == Some("rule") {
                    self.send(&page, &[], &format!("add:{at}")).await;
                }
                for (name, value) in fields {
                    if !matches!(name.as_str(), "id" | "criterion" | "removed") {
                        Box::pin(self.type_in(&inner(name), value)).await;
                    }
                }
            }
            Value::Array(items) if at == "ratings_asked" => {
                let mut fields = vec![(at, "")];
                fields.extend(items.iter().map(|one| (at, one.as_str().unwrap())));
                self.send(&page, &fields, "save").await;
            }
            Value::Array(items) => {
                for (index, item) in items.iter().enumerate() {
                    let page = Leaf::listing(&Place::new(at)).address();
                    let add = match item.get("criterion").and_then(Value::as_str) {
                        Some(kind) => format!("add:{at}:{kind}"),
                        None => format!("add:{at}"),
                    };
                    self.send(&page, &[], &add).await;
                    Box::pin(self.type_in(&inner(&index.to_string()), item)).await;
                }
            }
            Value::Bool(false) | Value::Null | Value::Number(_) => {}
        }
    }

    /// Types a whole programme; the ids of its steps are given by the desk, in order.
    async fn write(&self, programme: &Programme) {
        let mut wanted = serde_json::to_value(Draft::from(programme)).unwrap();
        let lines = wanted.as_object_mut().unwrap();
        // Signs are offered by a diary, never typed.
        lines.remove("signs_seen");
        let start = lines.remove("start_at").unwrap();
        // A kind of its own has to be there before a step can be of it.
        for name in ["practices", "steps"] {
            let value = renamed(lines.remove(name).unwrap(), programme);
            self.type_in(name, &value).await;
        }
        let rest = renamed(wanted, programme);
        self.type_in("", &rest).await;
        for (at, step) in programme.steps.iter().enumerate() {
            if start.as_str() == Some(step.id.as_str()) {
                let own = step_id(programme, at);
                assert!(self.page("steps").await.contains(&format!("<option value=\"{own}\"")));
                self.send("steps", &[("start_at", &own)], "save").await;
            }
        }
    }

    async fn finish(&self) -> String {
        let checked = self.page("check").await;
        assert!(checked.contains("Nothing has to be put right."), "{checked}");
        let (status, to, _) = self.server.post(&format!("{}/finish", self.at), "").await;
        assert_eq!(status, StatusCode::SEE_OTHER);
        to
    }
}

/// The id that the desk gave to a step that was added after all practices.
fn step_id(programme: &Programme, at: usize) -> String {
    format!("step-{}", programme.practices.len() + at + 1)
}

/// Steps and kinds of practice are known to the desk by the ids that it gave them.
fn renamed(wanted: Value, programme: &Programme) -> Value {
    let mut text = wanted.to_string();
    for (at, step) in programme.steps.iter().enumerate() {
        let own = step_id(programme, at);
        text = text.replace(&format!("\"step:{}\"", step.id), &format!("\"step:{own}\""));
    }
    // The other practices are added first, so theirs are the first ids that are given.
    for (at, plan) in programme.practices.iter().enumerate() {
        let code = String::from(plan.practice.clone());
        if code.starts_with("other:") {
            let own = format!("\"other:practice-{}\"", at + 1);
            text = text.replace(&format!("\"{code}\""), &own);
        }
    }
    serde_json::from_str(&text).unwrap()
}

fn value_of(page: &str, name: &str) -> String {
    let rest = page.split(&format!("name=\"{name}\" value=\"")).nth(1).unwrap();
    rest.split('"').next().unwrap().to_owned()
}

#[test]
fn p1_every_fixture_can_be_written_through_the_pages() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = desk(&room, &[]).await;
        for (name, fixture) in FIXTURES {
            let wanted = read(fixture.as_bytes()).unwrap();
            let writing = Writing::new(&server).await;
            writing.write(&wanted).await;
            let to = writing.finish().await;
            // What is finished is the fixture, but for what the desk gives: ids, the moment, the revision.
            let (_, _, text) = server.get(&format!("{to}/text")).await;
            let written = read(text.as_bytes()).unwrap();
            let mut text = serde_json::to_value(&written).unwrap();
            let mut same = serde_json::to_value(&wanted).unwrap();
            for lines in [&mut text, &mut same] {
                let lines = lines.as_object_mut().unwrap();
                for given in ["id", "issued_at", "revision", "signs_seen"] {
                    lines.remove(given);
                }
            }
            let mut text = text.to_string();
            for (at, step) in wanted.steps.iter().enumerate() {
                let own = format!("\"{}\"", step_id(&wanted, at));
                text = text.replace(&own, &format!("\"@{}\"", step.id));
            }
            for (at, plan) in wanted.practices.iter().enumerate() {
                let own = format!("\"other:practice-{}\"", at + 1);
                text = text.replace(&own, &format!("\"@{}\"", String::from(plan.practice.clone())));
            }
            let text: Value = serde_json::from_str(&text.replace("\"@", "\"")).unwrap();
            assert_eq!(text, same, "{name}");
            let (_, to_hand, _) = server.post(&format!("{to}/hand-over"), "").await;
            assert_eq!(to_hand, "/hand-over");
            // And its page reads it back.
            let page = server.get(&to).await.2;
            let words = frond_core::words::Words::for_language("en");
            for sentence in frond_core::programme::readback::read_back(&written, &words) {
                assert!(page.contains(&escape(&sentence)), "{name}: {sentence}");
            }
        }
    });
}

/// As the templates escape text.
fn escape(text: &str) -> String {
    let mut out = String::new();
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&#38;"),
            '<' => out.push_str("&#60;"),
            '>' => out.push_str("&#62;"),
            '"' => out.push_str("&#34;"),
            '\'' => out.push_str("&#39;"),
            other => out.push(other),
        }
    }
    out
}

/// A draft with one of everything and nothing in it: each mistake is a link, and the link leads to its field.
#[test]
fn p4_every_mistake_leads_to_its_field() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = desk(&room, &[]).await;
        let writing = Writing::new(&server).await;
        for (page, then) in [
            ("steps", "add:steps"),
            ("steps/0", "add:steps.0.parts"),
            ("steps/0", "add:steps.0.rule"),
            ("steps/0", "add:steps.0.rule.pause:steps_back"),
            ("practices", "add:practices"),
            ("rule", "add:rule"),
            ("rule", "add:rule.step_up:discomfort_at_most"),
            ("rule", "add:rule.step_up:sessions"),
            ("rule", "add:rule.step_back:discomfort_at_least"),
            ("rule", "add:rule.pause:stopped_early"),
            ("signs", "add:stricter_signs"),
            ("texts", "add:goals"),
            ("texts", "add:activities"),
            ("texts", "add:own_cautions"),
            ("texts", "add:recipients"),
        ] {
            writing.send(page, &[], then).await;
        }
        let checked = writing.page("check").await;
        let links: Vec<&str> =
            checked.split("href=\"").skip(1).filter_map(|rest| rest.split('"').next()).collect();
        let links: Vec<&str> =
            links.into_iter().filter(|link| link.contains("?saved=yes#")).collect();
        assert!(links.len() > 40, "{}", links.len());
        for link in links {
            let (path, id) = link.split_once('#').unwrap();
            let (status, _, page) = server.get(path).await;
            assert_eq!(status, StatusCode::OK);
            assert!(page.contains(&format!("id=\"{id}\"")), "{link}");
            assert!(page.contains(&format!("href=\"#{id}\"")), "{link} is not told at the top");
            assert!(
                page.contains(&format!("id=\"{id}-problem\"")),
                "{link} is not told at the field"
            );
        }
        // Before anything was saved, nobody is told.
        let fresh = writing.page("who").await;
        assert!(!fresh.contains("class=\"problems\""));
        let (status, _, _) = server.post(&format!("{}/finish", writing.at), "").await;
        assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY);
    });
}

#[test]
fn what_was_typed_stays_as_it_was_typed() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = desk(&room, &[]).await;
        let writing = Writing::new(&server).await;
        writing.send("steps", &[], "add:steps").await;
        writing.send("steps/0", &[], "add:steps.0.parts").await;
        let typed = [
            ("steps.0.name", "  Two  \"sizes\" "),
            ("steps.0.parts.0.size_mm", "twenty-two"),
            ("steps.0.parts.0.minutes_least", "5,5"),
            ("steps.0.instruction", "<script>alert(1)</script>\n& more"),
        ];
        let to = writing.send("steps/0", &typed, "save").await;
        let page = server.get(&to).await.2;
        assert!(page.contains("value=\"twenty-two\"") && page.contains("value=\"5,5\""));
        assert!(page.contains("value=\"  Two  &#34;sizes&#34; \""));
        assert!(!page.contains("<script>alert") && page.contains("&#60;script&#62;alert(1)"));
        assert!(page.contains("Write the size in millimetres"));
        // The button that adds something keeps what was typed beside it.
        let to = writing.send("steps/0", &[("steps.0.name", "Other")], "add:steps.0.parts").await;
        assert!(to.ends_with("#steps.0.parts.1"), "{to}");
        assert!(writing.page("steps/0").await.contains("value=\"Other\""));
        // And it is still there when the desk is opened again.
        server.post("/lock", "").await;
        assert_eq!(server.get(&format!("{}/steps/0", writing.at)).await.1, "/open");
        assert_eq!(server.post(&format!("{}/steps/0", writing.at), "then=save").await.1, "/open");
        server.post("/open", "passphrase=invented+words").await;
        assert!(writing.page("steps/0").await.contains("value=\"twenty-two\""));
    });
}

#[test]
fn saying_back_keeps_nothing() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = desk(&room, &[]).await;
        let writing = Writing::new(&server).await;
        writing.send("rule", &[], "add:rule").await;
        writing.send("rule", &[], "add:rule.step_up:days_on_step").await;
        let shape = value_of(&writing.page("rule").await, "shape");
        let fields = [("shape", shape.as_str()), ("rule.step_up.0.days", "9")];
        let to = format!("{}/said/rule", writing.at);
        let (status, _, said) = server.post(&to, &body(&fields)).await;
        assert_eq!(status, StatusCode::OK);
        let said: Vec<String> = serde_json::from_slice(&said).unwrap();
        assert!(said.iter().any(|line| line.contains("at least 9 days ago")), "{said:?}");
        let page = writing.page("rule").await;
        assert!(!page.contains("value=\"9\"") && !page.contains("at least 9 days ago"));
        // Without the script, saving says it back.
        let to = writing.send("rule", &[("rule.step_up.0.days", "9")], "save").await;
        assert!(server.get(&to).await.2.contains("at least 9 days ago"));
        // What was made from an older page is not put in another's place.
        let old = [("shape", "0"), ("rule.step_up.0.days", "5")];
        let (status, _, _) = server.post(&format!("{}/rule", writing.at), &body(&old)).await;
        assert_eq!(status, StatusCode::CONFLICT);
        assert!(writing.page("rule").await.contains("value=\"9\""));
        assert_eq!(server.post(&format!("{}/said/rule", writing.at), &body(&old)).await.0, 409);
    });
}

#[test]
fn what_was_taken_out_and_thrown_away_comes_back() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = desk(&room, &[]).await;
        let writing = Writing::new(&server).await;
        writing.send("steps", &[], "add:steps").await;
        writing.send("steps/0", &[("steps.0.name", "Kept")], "save").await;
        writing.send("steps", &[], "copy:steps.0").await;
        writing.send("steps", &[], "remove:steps.0").await;
        let page = writing.page("steps").await;
        assert!(page.contains("Put it back"));
        let to = writing.send("steps", &[], "put_back").await;
        assert!(to.ends_with("/steps#steps.0"), "{to}");
        assert_eq!(writing.page("steps").await.matches("&#34;Kept&#34;</legend>").count(), 2);
        let (_, to, _) = server.post(&format!("{}/throw-away", writing.at), "").await;
        assert!(server.get(&to).await.2.contains("Bring it back"));
        assert_eq!(server.get(&format!("{}/who", writing.at)).await.0, StatusCode::NOT_FOUND);
        server.post(&format!("{}/bring-back", writing.at), "").await;
        assert_eq!(server.get(&format!("{}/who", writing.at)).await.0, StatusCode::OK);
        for none in ["/programmes/x/who", "/programmes/../keys", "/programmes/00/check"] {
            assert_eq!(server.get(none).await.0, StatusCode::NOT_FOUND, "{none}");
        }
        let none = format!("{}/steps/7", writing.at);
        assert_eq!(server.get(&none).await.0, StatusCode::NOT_FOUND);
    });
}

#[test]
fn a_preview_and_a_next_revision_with_its_differences() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = desk(&room, &[]).await;
        let writing = Writing::new(&server).await;
        assert!(writing.page("preview").await.contains("still have to be put right"));
        writing.write(&programme(0)).await;
        for (day, ease) in [(0, "easy"), (7, "between"), (30, "hard")] {
            let page = writing.page(&format!("preview?day={day}&ease={ease}")).await;
            assert!(page.contains("This person is invented"), "{day}");
            assert!(page.contains("What she sees") && page.contains("Today"), "{day}");
            // It is looked at only: nothing in her screens can be pressed.
            let screens = page.split("class=\"phone\"").skip(1);
            for screen in screens {
                let screen = screen.split("</section>\n<h2>").next().unwrap();
                assert!(
                    !screen.contains("<form")
                        && !screen.contains("<a ")
                        && !screen.contains("tel:")
                );
            }
        }
        assert!(
            writing.page("preview?day=0").await.contains("Is this yours")
                || writing.page("preview?day=0").await.contains("yours")
        );
        let finished = writing.finish().await;
        let (_, to, _) = server.post(&format!("{finished}/next"), "").await;
        let next = Writing { server: &server, at: to.trim_end_matches("/who").to_owned() };
        assert!(next.page("differences").await.contains("Nothing is different."));
        next.send("steps/1", &[("steps.1.parts.0.size_mm", "15")], "save").await;
        let page = next.page("differences").await;
        assert!(page.contains("15 mm (1.5 cm)") && page.contains("begins anew"), "{page}");
        assert!(next.page("who").await.contains("becomes revision 2"));
        assert!(next.page("check").await.contains("What is different from revision 1"));
        next.finish().await;
        let list = server.get("/programmes").await.2;
        assert!(list.contains("Revision 2") && list.contains("Revision 1"));
    });
}

#[test]
fn the_pages_speak_spanish() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = desk(&room, &["--language", "es"]).await;
        let writing = Writing::new(&server).await;
        writing.send("steps", &[], "add:steps").await;
        for page in ["who", "steps", "steps/0", "practices", "rule", "signs", "texts", "check"] {
            let text = writing.page(page).await;
            assert!(text.contains("lang=\"es\""));
            assert!(!text.contains("compose-"), "{page} shows the id of a message");
        }
        assert!(
            writing.page("steps/0").await.contains("Diámetro máximo")
                || writing.page("steps/0").await.contains("Posición")
        );
    });
}
