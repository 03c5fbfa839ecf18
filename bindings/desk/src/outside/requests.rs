//! How bytes become requests, and what must hold of each answer.
//!
//! Requests stand one behind another, with two bytes 0xFF between them, which are in no text. Each is a line
//! `METHOD ADDRESS` and behind it the body. A body that begins with `--` is one of a form with files, its first
//! line the boundary; every other is that of a form without. In an address `~` stands for the address that the
//! answer before led to, without its last part, so that what has just been made can be gone on with.

use std::sync::OnceLock;

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::extract::Request;
use axum::http::{StatusCode, Uri, header};
use axum::response::Response;
use hyper::service::Service;
use hyper_util::service::TowerToHyperService;

/// So many requests of one run, the others are left out.
const MOST: usize = 6;
/// The longest answer, in bytes.
const ANSWER_MOST: usize = 1 << 26;

/// What came of some requests.
#[derive(Default)]
pub(super) struct Came {
    /// One was answered with a page or led on.
    pub(super) taken: bool,
    /// One that may have written something led on.
    pub(super) wrote: bool,
    /// Where the last one that led on led to.
    pub(super) led: String,
    /// The last page.
    pub(super) page: Vec<u8>,
}

/// Waits for what these pages do, on a runtime of its own.
pub(super) fn wait_for<T>(future: impl Future<Output = T>) -> T {
    static RUNTIME: OnceLock<tokio::runtime::Runtime> = OnceLock::new();
    let runtime = RUNTIME.get_or_init(|| {
        tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime")
    });
    runtime.block_on(future)
}

/// Sends the requests that these bytes are, one after another.
pub(super) fn send(router: &Router, bytes: &[u8]) -> Came {
    let mut came = Came::default();
    for one in split(bytes).take(MOST) {
        let Some(request) = request(one, &came.led) else { continue };
        let looked = request.method() == "GET" || request.method() == "HEAD";
        let path = request.uri().path().to_owned();
        let (answer, body) = wait_for(ask(router, request));
        let led = held(&path, &answer, &body);
        came.taken |= answer.status() == StatusCode::OK || led.is_some();
        came.wrote |= !looked && answer.status().as_u16() < 400;
        came.led = led.unwrap_or(came.led);
        came.page = body;
    }
    came
}

/// Sends one request and gives its answer.
pub(super) async fn ask(router: &Router, request: Request) -> (Response, Vec<u8>) {
    let answer = TowerToHyperService::new(router.clone()).call(request).await;
    let mut answer = answer.expect("every request is answered");
    let body = to_bytes(std::mem::take(answer.body_mut()), ANSWER_MOST).await;
    (answer, body.expect("an answer in memory").to_vec())
}

/// The requests, apart.
fn split(bytes: &[u8]) -> impl Iterator<Item = &[u8]> {
    let mut rest = Some(bytes);
    std::iter::from_fn(move || {
        let all = rest?;
        let end = all.windows(2).position(|pair| pair == [0xff, 0xff]);
        rest = end.and_then(|end| all.get(end + 2..));
        end.map_or(Some(all), |end| all.get(..end))
    })
}

fn request(bytes: &[u8], before: &str) -> Option<Request> {
    let mut halves = bytes.splitn(2, |byte| *byte == b'\n');
    let line = std::str::from_utf8(halves.next()?).ok()?;
    let body = halves.next().unwrap_or_default();
    let (method, address) = line.trim_end().split_once(' ')?;
    let way = before.rsplit_once('/').map_or("", |(way, _)| way);
    let address = address.replacen('~', way, 1).parse::<Uri>().ok()?;
    if stretches(&address, body) {
        return None;
    }
    let kind = match body.strip_prefix(b"--") {
        Some(_) => {
            let line = body.split(|byte| matches!(byte, b'\r' | b'\n')).next()?;
            let boundary = std::str::from_utf8(line.get(2..)?).ok()?;
            format!("multipart/form-data; boundary=\"{}\"", boundary.replace(['"', '\\'], ""))
        }
        None => "application/x-www-form-urlencoded".to_owned(),
    };
    let request = Request::builder().method(method).uri(address).header(header::CONTENT_TYPE, kind);
    request.body(Body::from(body.to_vec())).ok()
}

/// Whether a passphrase or a code would only be stretched: that is slow by design, and finds nothing.
fn stretches(address: &Uri, body: &[u8]) -> bool {
    const SLOW: [&str; 7] =
        ["/first", "/open", "/keys/", "/keeping/", "/code", "/restore", "/hand-over/sign"];
    let slow = SLOW.iter().any(|slow| address.path().starts_with(slow));
    let has = |word: &str| body.windows(word.len()).any(|part| part == word.as_bytes());
    slow && ["passphrase", "new", "code", "words", "sealed"].into_iter().any(has)
}

/// What must hold of every answer; where it leads on, where to.
fn held(path: &str, answer: &Response, body: &[u8]) -> Option<String> {
    let status = answer.status();
    // A fault is answered with this; everything else that goes wrong has another number.
    assert_ne!(status, StatusCode::INTERNAL_SERVER_ERROR, "a fault at {path}");
    let header = |name| answer.headers().get(name).and_then(|value| value.to_str().ok());
    let kind = header(header::CONTENT_TYPE).unwrap_or_default();
    if kind.starts_with("text/html") {
        let page = std::str::from_utf8(body).expect("a page is text");
        assert!(page.trim_end().ends_with("</html>"), "half a page at {path}");
        // What somebody sent stands on a page as text alone.
        let mut scripts = page.split("<script").skip(1);
        assert!(scripts.all(|rest| rest.starts_with(" src=\"/")), "a script at {path}");
        assert!(!page.contains("javascript:"), "an address that is a script at {path}");
    }
    let to = header(header::LOCATION)?;
    let here = to.starts_with('/') && !to.starts_with("//") && !to.contains('\\');
    assert!(status == StatusCode::SEE_OTHER && here, "{path} leads away from here");
    Some(to.to_owned())
}
