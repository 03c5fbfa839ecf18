//! The desk in this process, without a socket: nothing is shown while it is locked, and first use ends with
//! a copy that opens.

use axum::body::{Body, to_bytes};
use axum::http::{Request as HttpRequest, StatusCode, header};
use clap::Parser;
use tower::ServiceExt;

use super::*;
use crate::args::{Args, Command};

pub(super) struct Server(Router);

impl Server {
    pub(super) fn on(folder: &std::path::Path, more: &[&str]) -> Self {
        let folder = folder.to_str().unwrap();
        let all = ["frond", "desk", "--folder", folder].into_iter().chain(more.iter().copied());
        let Command::Desk(args) = Args::try_parse_from(all).unwrap().command else {
            panic!("desk")
        };
        let words = Words::for_language(args.language.as_deref().unwrap_or(LANGUAGE));
        Self(router(App::new(Desk::of(&args, words.clone()).unwrap(), words)))
    }

    pub(super) async fn ask(&self, request: HttpRequest<Body>) -> (StatusCode, String, Vec<u8>) {
        let response = self.0.clone().oneshot(request).await.unwrap();
        let status = response.status();
        let to = response.headers().get(header::LOCATION);
        let to = to.map(|to| to.to_str().unwrap().to_owned()).unwrap_or_default();
        (status, to, to_bytes(response.into_body(), 1 << 24).await.unwrap().to_vec())
    }

    pub(super) async fn get(&self, path: &str) -> (StatusCode, String, String) {
        let (status, to, body) =
            self.ask(HttpRequest::get(path).body(Body::empty()).unwrap()).await;
        (status, to, String::from_utf8(body).unwrap())
    }

    pub(super) async fn post(&self, path: &str, body: &str) -> (StatusCode, String, Vec<u8>) {
        let form = "application/x-www-form-urlencoded";
        let request = HttpRequest::post(path).header(header::CONTENT_TYPE, form);
        self.ask(request.body(Body::from(body.to_owned())).unwrap()).await
    }

    /// The same, where a text is answered.
    pub(super) async fn told(&self, path: &str, body: &str) -> (StatusCode, String, String) {
        let (status, to, body) = self.post(path, body).await;
        (status, to, String::from_utf8(body).unwrap())
    }

    async fn upload(&self, path: &str, file: &[u8], passphrase: &str) -> (StatusCode, String) {
        let mut body =
            b"--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"f\"\r\n\r\n"
                .to_vec();
        body.extend_from_slice(file);
        body.extend_from_slice(
            format!("\r\n--x\r\nContent-Disposition: form-data; name=\"passphrase\"\r\n\r\n{passphrase}\r\n--x--\r\n")
                .as_bytes(),
        );
        let request =
            HttpRequest::post(path).header(header::CONTENT_TYPE, "multipart/form-data; boundary=x");
        let (status, to, _) = self.ask(request.body(Body::from(body)).unwrap()).await;
        (status, to)
    }
}

pub(super) fn run(test: impl Future<Output = ()>) {
    tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap().block_on(test);
}

const SEEN_OPEN: [&str; 9] = [
    "/",
    "/keys",
    "/keys/copy",
    "/keys/passphrase",
    "/keys/new",
    "/programmes",
    "/hand-over",
    "/hand-over/ready",
    "/hand-over/sheet",
];
pub(super) const NEW: &str = "new=invented+words&again=invented+words";

#[test]
fn first_use_makes_keys_and_ends_with_a_copy_that_opens() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = Server::on(&room.path().join("one"), &[]);
        for path in SEEN_OPEN {
            assert_eq!(server.get(path).await.1, "/first", "{path}");
        }
        let (status, _, _) = server.post("/first", "new=a&again=b").await;
        assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY);
        let (status, to, _) = server.post("/first", NEW).await;
        assert_eq!((status, to.as_str()), (StatusCode::SEE_OTHER, "/keys/copy"));
        assert!(server.get("/").await.2.contains("There is no copy of your keys yet"));
        let (_, _, copy) = server.post("/keys/copy/file", "").await;
        assert_eq!(server.upload("/keys/copy", b"other", "invented words").await.0, 422);
        assert_eq!(server.upload("/keys/copy", &copy, "wrong").await.0, 422);
        let (status, to) = server.upload("/keys/copy", &copy, "invented words").await;
        assert_eq!((status.as_u16(), to.as_str()), (303, "/keys/copy"));
        assert!(!server.get("/").await.2.contains("There is no copy of your keys yet"));
        // On another computer the copy is all that is needed.
        let other = Server::on(&room.path().join("two"), &[]);
        assert_eq!(other.upload("/first/restore", b"x", "invented words").await.0, 422);
        assert_eq!(other.upload("/first/restore", &copy, "invented words").await.1, "/");
        assert_eq!(other.get("/keys").await.0, StatusCode::OK);
    });
}

#[test]
fn a_locked_desk_shows_nothing_and_does_nothing() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let first = Server::on(room.path(), &[]);
        first.post("/first", NEW).await;
        first.post("/lock", "").await;
        for server in [first] {
            for path in SEEN_OPEN {
                assert_eq!(server.get(path).await.1, "/open", "{path}");
            }
            for path in ["/keys/copy/file", "/keys/passphrase", "/keys/new"] {
                let (_, to, body) = server.post(path, NEW).await;
                assert_eq!((to.as_str(), body.len()), ("/open", 0), "{path}");
            }
            assert_eq!(server.post("/open", "passphrase=wrong").await.0, 422);
            assert_eq!(server.post("/open", "").await.0, 422);
            assert_eq!(server.post("/open", "passphrase=invented+words").await.1, "/");
            assert_eq!(server.get("/keys").await.0, StatusCode::OK);
            // First use is over: keys are never made over others.
            assert_eq!(server.post("/first", NEW).await.1, "/");
        }
    });
}

#[test]
fn another_passphrase_and_new_keys_ask_for_the_present_one() {
    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = Server::on(room.path(), &[]);
        server.post("/first", NEW).await;
        let change = |now: &str| format!("passphrase={now}&new=others&again=others");
        assert_eq!(server.post("/keys/passphrase", &change("wrong")).await.0, 422);
        assert_eq!(
            server.post("/keys/passphrase", &change("invented+words")).await.1,
            "/keys/copy"
        );
        server.post("/lock", "").await;
        assert_eq!(server.post("/open", "passphrase=invented+words").await.0, 422);
        assert_eq!(server.post("/open", "passphrase=others").await.1, "/");
        let before = server.get("/keys").await.2;
        assert_eq!(server.post("/keys/new", "passphrase=wrong").await.0, 422);
        assert_eq!(server.get("/keys").await.2, before);
        assert_eq!(server.post("/keys/new", "passphrase=others").await.1, "/keys/copy");
        assert_ne!(server.get("/keys").await.2, before, "another line for those who seal");
    });
}

/// The words within the marks of a card or a paragraph.
fn shown(page: &str, class: &str) -> Vec<String> {
    let mark = format!("class=\"{class}\">");
    page.split(&mark).skip(1).map(|rest| rest.split('<').next().unwrap().to_owned()).collect()
}

#[test]
fn a_plan_is_signed_and_handed_over_with_its_spoken_words_on_the_screen_only() {
    use frond_core::handover::{HandOver, SpokenWords};

    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = Server::on(room.path(), &[]);
        server.post("/first", NEW).await;
        let programme = include_bytes!("../../../../../fixtures/programmes/3-breathing-only.json");
        assert_eq!(server.get("/hand-over/ready").await.1, "/hand-over");
        for broken in [&b""[..], b"{}", b"<script>"] {
            let (status, _) = server.upload("/hand-over", broken, "").await;
            assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY);
        }
        let (_, to) = server.upload("/hand-over", programme, "").await;
        assert_eq!(to, "/hand-over");
        let page = server.get("/hand-over").await.2;
        assert!(!page.contains(" checked>"), "who can read it is her choice");
        assert_eq!(server.post("/hand-over/sign", "").await.0, 422);
        let (_, to, _) = server.post("/hand-over/sign", "way=sealed").await;
        assert_eq!(to, "/hand-over/ready");
        let page = server.get("/hand-over/ready").await.2;
        let codes = shown(&page, "code");
        let [key, spoken, link] = codes.as_slice() else { panic!("{codes:?}") };
        let typed = SpokenWords::parse(spoken).unwrap();
        let came = HandOver::from_link(link, Some(&typed)).unwrap();
        assert_eq!(frond_core::handover::key_words(&came.key()).join(" "), *key);
        assert!(server.get("/keys").await.2.contains(key), "the same words on the page of keys");
        // The sheet: the code and the words of the key, and not those that are spoken.
        let sheet = server.get("/hand-over/sheet").await.2;
        assert!(sheet.contains("<svg ") && sheet.contains(key) && !sheet.contains(spoken));
        assert!(!sheet.contains("style="), "nothing that the policy forbids");
        let (_, _, file) = server.post("/hand-over/file", "").await;
        assert_eq!(HandOver::open(&file).unwrap().text(), came.text());
        // Locked, it is gone.
        server.post("/lock", "").await;
        assert_eq!(server.get("/hand-over/ready").await.1, "/open");
        server.post("/open", "passphrase=invented+words").await;
        assert_eq!(server.get("/hand-over/ready").await.1, "/hand-over");
    });
}

/// Digests, which no dictionary knows, in place of a plan's texts.
#[test]
fn a_plan_too_long_for_a_code_is_handed_over_as_a_file() {
    use std::fmt::Write;

    run(async {
        let room = tempfile::tempdir().unwrap();
        let server = Server::on(room.path(), &[]);
        server.post("/first", NEW).await;
        let text = include_str!("../../../../../fixtures/programmes/3-breathing-only.json");
        let mut plan: serde_json::Value = serde_json::from_str(text).unwrap();
        let mut state = 88_172_645_463_325_252u64;
        let noise = (0..120).fold(String::new(), |mut noise, _| {
            // Marsaglia's xorshift64.
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            let _ = write!(noise, "{state:016x}");
            noise
        });
        plan["own_cautions"] = serde_json::json!([noise]);
        server.upload("/hand-over", plan.to_string().as_bytes(), "").await;
        server.post("/hand-over/sign", "way=open").await;
        let page = server.get("/hand-over/ready").await.2;
        assert!(!page.contains("<svg ") && page.contains("too long for one code"));
        assert_eq!(server.get("/hand-over/sheet").await.1, "/hand-over/ready");
        assert!(!server.post("/hand-over/file", "").await.2.is_empty());
    });
}
