//! Who is let in, how much is taken, and what a stranger gets to see.

use crate::client::{Server, id};

#[test]
fn without_the_token_there_is_one_sentence_and_nothing_else() {
    let server = Server::start(&["--empty"]);
    for path in ["/", "/today", "/look.css", "/practice.js", "/icon.svg", "/nowhere", "/?enter=0"] {
        let answer = server.get(path);
        assert_eq!(answer.status, 403, "{path}");
        let text = answer.text();
        assert_eq!(text.lines().count(), 1, "{path}: {text}");
        assert!(text.starts_with("This page opens only with the address"), "{text}");
        assert_eq!(answer.header("content-type"), Some("text/plain; charset=utf-8"));
        assert!(answer.header("set-cookie").is_none());
    }
}

#[test]
fn the_address_opens_once_and_leads_away_from_itself() {
    let server = Server::entered(&["--empty"]);
    let again = Server::get(&server, &format!("/?enter={}", server.token));
    // The first browser goes on; whoever has no cookie is refused (see the next test).
    assert_eq!(again.status, 303);
    assert_ne!(again.header("location"), Some(format!("/?enter={}", server.token).as_str()));
    let stranger = Server::start(&["--empty"]);
    let path = format!("/?enter={}", stranger.token);
    assert_eq!(stranger.get(&path).status, 303);
    assert_eq!(stranger.get(&path).status, 403, "a second time without the cookie");
    // Nothing of the token stands on a page.
    assert!(!server.page("/today").contains(&server.token));
}

#[test]
fn other_hosts_and_other_origins_are_refused() {
    let server = Server::entered(&["--empty"]);
    let port = server.host.rsplit(':').next().unwrap().to_owned();
    for host in ["example.org", "127.0.0.1", "127.0.0.1:1", &format!("example.org:{port}")] {
        assert_eq!(server.send("GET", "/today", &[("Host", host)], b"").status, 403, "{host}");
    }
    let local = format!("localhost:{port}");
    assert_eq!(server.send("GET", "/today", &[("Host", &local)], b"").status, 200);
    let form = ("Content-Type", "application/x-www-form-urlencoded");
    let page = server.page("/questions");
    let body = format!("id={}&text=hello", id(&page, "/questions"));
    for origin in ["http://example.org", "null", "http://127.0.0.1:1"] {
        let answer =
            server.send("POST", "/questions", &[("Origin", origin), form], body.as_bytes());
        assert_eq!(answer.status, 403, "{origin}");
    }
    assert_eq!(server.send("POST", "/questions", &[form], body.as_bytes()).status, 403);
    assert!(!server.page("/questions").contains("hello"), "nothing was written");
}

#[test]
fn the_headers_stand_on_pages_files_and_refusals() {
    let server = Server::entered(&["--empty"]);
    for path in ["/today", "/look.css", "/practice.js", "/nowhere"] {
        let answer = server.get(path);
        let policy = answer.header("content-security-policy").unwrap();
        assert!(policy.starts_with("default-src 'none';") && !policy.contains("unsafe"), "{path}");
        assert_eq!(answer.header("cache-control"), Some("no-store"), "{path}");
        assert_eq!(answer.header("x-content-type-options"), Some("nosniff"), "{path}");
        assert_eq!(answer.header("cross-origin-opener-policy"), Some("same-origin"), "{path}");
        assert_eq!(answer.header("cross-origin-resource-policy"), Some("same-origin"), "{path}");
        assert!(answer.header("permissions-policy").unwrap().contains("camera=()"), "{path}");
        assert!(answer.header("server").is_none(), "{path}");
    }
}

#[test]
fn what_is_too_large_or_malformed_is_refused_with_a_sentence() {
    let server = Server::entered(&["--empty"]);
    let origin = format!("http://{}", server.host);
    let own = ("Origin", origin.as_str());
    let form = ("Content-Type", "application/x-www-form-urlencoded");
    let send = |kind, body: &[u8]| server.send("POST", "/questions", &[own, kind], body);
    let page = server.page("/questions");
    let id = id(&page, "/questions");
    let long = format!("id={id}&text={}", "a".repeat(64 * 1024));
    let answer = send(form, long.as_bytes());
    assert_eq!(answer.status, 413);
    assert!(answer.text().starts_with("This is larger than Frond takes."));
    // Without a length said beforehand it is counted while it comes.
    let chunk = format!("{:x}\r\n{long}\r\n0\r\n\r\n", long.len());
    let counted = server.send_chunked("/questions", &[own, form], chunk.as_bytes());
    assert_eq!(counted.status, 413);
    let unfit = format!("id={id}&text=%ff");
    for (kind, body) in [
        (form, "text"),
        (form, "text=%zz"),
        (form, unfit.as_str()),
        (("Content-Type", "application/json"), "{}"),
        (("Content-Type", "multipart/form-data; boundary=x"), "x"),
    ] {
        let answer = send(kind, body.as_bytes());
        assert_eq!(answer.status, 400, "{body}");
        assert!(answer.text().contains("could not be read as a form"), "{body}");
    }
    for missing in ["text=hello", "id=none&text=hello", "id=0&text=hello"] {
        assert_eq!(send(form, missing.as_bytes()).status, 400, "{missing}");
    }
    let answer = server.upload("/plan/add", &vec![b' '; 1024 * 1024]);
    assert_eq!(answer.status, 413);
    let broken = ("Content-Type", "multipart/form-data; boundary=x");
    let answer = server.send("POST", "/plan/add", &[own, broken], b"--y\r\n\r\n");
    assert_eq!(answer.status, 400);
    assert!(server.page("/questions").contains("<form"), "it goes on");
    assert_eq!(server.send("DELETE", "/today", &[own], b"").status, 404);
    let (said, _) = server.stop();
    assert_eq!(said, "", "nothing of it is logged");
}
