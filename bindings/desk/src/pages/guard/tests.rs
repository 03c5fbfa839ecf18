//! Who is let in, and what every answer carries. Each rule is broken once; the page behind must then not be
//! reached.

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::middleware::from_fn_with_state;
use axum::routing::get;
use frond_core::ports::OsRandom;
use tower::ServiceExt;

use super::*;

const PORT: u16 = 4711;
const REFUSED: &str = "Not from here.";

struct Place {
    router: Router,
    token: String,
    cookie: String,
}

fn place() -> Place {
    let guard = Guard::new(PORT, &OsRandom, REFUSED.to_owned()).unwrap();
    let token = guard.address().split_once("enter=").unwrap().1.to_owned();
    let cookie = format!("frond-{PORT}={}", guard.0.session);
    let router = Router::new()
        .route("/", get(|| async { "inside" }).post(|| async { "written" }))
        .layer(from_fn_with_state(guard, watch));
    Place { router, token, cookie }
}

impl Place {
    async fn ask(&self, method: &str, path: &str, headers: &[(&str, &str)]) -> (Response, String) {
        let mut request = axum::http::Request::builder().method(method).uri(path);
        for (name, value) in headers {
            request = request.header(*name, *value);
        }
        let request = request.body(Body::empty()).unwrap();
        let mut response = self.router.clone().oneshot(request).await.unwrap();
        let body = std::mem::take(response.body_mut());
        let text = to_bytes(body, 10_000).await.unwrap();
        (response, String::from_utf8(text.to_vec()).unwrap())
    }

    async fn refuses(&self, method: &str, headers: &[(&str, &str)]) {
        let (response, text) = self.ask(method, "/", headers).await;
        assert_eq!(response.status(), StatusCode::FORBIDDEN, "{method} {headers:?}");
        assert_eq!(text, format!("{REFUSED}\n"), "one sentence and nothing else");
    }
}

fn run(test: impl Future<Output = ()>) {
    tokio::runtime::Builder::new_current_thread().build().unwrap().block_on(test);
}

const HOST: &str = "127.0.0.1:4711";
const OWN: &str = "http://127.0.0.1:4711";

#[test]
fn the_token_opens_once_and_only_a_cookie_after_it() {
    run(async {
        let place = place();
        place.refuses("GET", &[("host", HOST)]).await;
        for wrong in ["", "0", &place.token[1..], &format!("{}0", place.token)] {
            let path = format!("/?enter={wrong}");
            let (response, _) = place.ask("GET", &path, &[("host", HOST)]).await;
            assert_eq!(response.status(), StatusCode::FORBIDDEN);
        }
        // A form does not enter, and does not use the token up.
        let path = format!("/?enter={}", place.token);
        let (response, _) = place.ask("POST", &path, &[("host", HOST), ("origin", OWN)]).await;
        assert_eq!(response.status(), StatusCode::FORBIDDEN);
        let (response, text) = place.ask("GET", &path, &[("host", HOST)]).await;
        assert_eq!((response.status(), text.as_str()), (StatusCode::SEE_OTHER, ""));
        assert_eq!(response.headers()[header::LOCATION], "/");
        let cookie = response.headers()[header::SET_COOKIE].to_str().unwrap();
        assert_eq!(cookie, format!("{}; Path=/; HttpOnly; SameSite=Strict", place.cookie));
        assert!(!place.cookie.contains(&place.token), "the token is not the cookie");
        let (response, _) = place.ask("GET", &path, &[("host", HOST)]).await;
        assert_eq!(response.status(), StatusCode::FORBIDDEN, "it opens once");
        let with = [("host", HOST), ("cookie", place.cookie.as_str())];
        let (response, text) = place.ask("GET", "/", &with).await;
        assert_eq!((response.status(), text.as_str()), (StatusCode::OK, "inside"));
        let among = format!("other=1; {}; more=2", place.cookie);
        let (response, _) = place.ask("GET", "/", &[("host", HOST), ("cookie", &among)]).await;
        assert_eq!(response.status(), StatusCode::OK);
        for wrong in
            ["frond-4711=", "frond-4711=0", "frond=1", &place.cookie[..place.cookie.len() - 1]]
        {
            place.refuses("GET", &[("host", HOST), ("cookie", wrong)]).await;
        }
        // The cookie of a server on another port is none here.
        let other = place.cookie.replace("4711", "4712");
        place.refuses("GET", &[("host", HOST), ("cookie", &other)]).await;
    });
}

#[test]
fn a_request_names_this_server_and_no_other() {
    run(async {
        let place = place();
        let cookie = place.cookie.as_str();
        for host in ["localhost:4711", HOST] {
            let (response, _) = place.ask("GET", "/", &[("host", host), ("cookie", cookie)]).await;
            assert_eq!(response.status(), StatusCode::OK, "{host}");
        }
        for host in [
            "example.org",
            "example.org:4711",
            "127.0.0.1",
            "127.0.0.1:4712",
            "127.0.0.1:4711.example.org",
            "LOCALHOST:4711",
            "[::1]:4711",
            "",
        ] {
            place.refuses("GET", &[("host", host), ("cookie", cookie)]).await;
        }
        place.refuses("GET", &[("cookie", cookie)]).await;
        place.refuses("GET", &[("host", HOST), ("host", HOST), ("cookie", cookie)]).await;
        let with = [("host", HOST), ("cookie", cookie)];
        let (response, _) = place.ask("GET", "http://example.org/", &with).await;
        assert_eq!(response.status(), StatusCode::FORBIDDEN, "a host in the request line");
    });
}

#[test]
fn a_form_comes_from_a_page_of_this_server() {
    run(async {
        let place = place();
        let cookie = place.cookie.as_str();
        let with = |origin: &'static str| [("host", HOST), ("cookie", cookie), ("origin", origin)];
        let (response, text) = place.ask("POST", "/", &with(OWN)).await;
        assert_eq!((response.status(), text.as_str()), (StatusCode::OK, "written"));
        for origin in [
            "null",
            "http://example.org",
            "https://127.0.0.1:4711",
            "http://127.0.0.1:4712",
            // Right by itself, but not the host that was named.
            "http://localhost:4711",
        ] {
            place.refuses("POST", &with(origin)).await;
            place.refuses("GET", &with(origin)).await;
        }
        place.refuses("POST", &[("host", HOST), ("cookie", cookie)]).await;
        place
            .refuses(
                "POST",
                &[("host", HOST), ("cookie", cookie), ("origin", OWN), ("origin", OWN)],
            )
            .await;
        for site in ["cross-site", "same-site"] {
            let with = [("host", HOST), ("cookie", cookie), ("sec-fetch-site", site)];
            place.refuses("GET", &with).await;
        }
        for site in ["none", "same-origin"] {
            let with = [("host", HOST), ("cookie", cookie), ("sec-fetch-site", site)];
            let (response, _) = place.ask("GET", "/", &with).await;
            assert_eq!(response.status(), StatusCode::OK, "{site}");
        }
    });
}

#[test]
fn every_answer_carries_the_headers() {
    run(async {
        let place = place();
        let cookie = place.cookie.as_str();
        let inside = [("host", HOST), ("cookie", cookie)];
        for (path, headers) in [("/", &inside[..]), ("/nowhere", &inside[..]), ("/", &inside[..1])]
        {
            let (response, _) = place.ask("GET", path, headers).await;
            for (name, value) in HEADERS {
                assert_eq!(response.headers()[&name], value, "{path} {name}");
            }
        }
        let policy = HEADERS[0].1;
        assert!(policy.starts_with("default-src 'none'; "));
        for never in ["unsafe", "http:", "https:", "data:", "*"] {
            assert!(!policy.contains(never), "{never}");
        }
    });
}
