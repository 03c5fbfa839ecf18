//! A whole connection: the heads of requests as they come, and who is let in.

use std::io;
use std::pin::Pin;
use std::sync::{Arc, Mutex, OnceLock};
use std::task::{Context, Poll};

use axum::Router;
use axum::middleware::from_fn_with_state;
use axum::routing::get;
use hyper::rt::{Read, ReadBufCursor, Write};

use super::Given;
use super::requests::wait_for;
use crate::pages::connections;
use crate::pages::form::Fields;
use crate::pages::guard::{Guard, watch};

/// The port that requests have to name; nothing listens there.
const PORT: u16 = 4711;
const REFUSED: &str = "Not from here.";
const INSIDE: &str = "What is inside.";

/// How often whoever reads is told to wait before it is told that nothing more comes: whoever has sent everything
/// waits for the answer, and an end in the middle of it breaks it off.
const PATIENCE: u8 = 64;

/// Everything that was sent and everything that was answered.
struct Wire {
    sent: io::Cursor<Vec<u8>>,
    waited: u8,
    answered: Arc<Mutex<Vec<u8>>>,
}

/// Bytes over one connection. Without the token or the cookie nothing inside is answered, whatever comes.
pub(super) fn connection(bytes: &[u8], given: &Given) -> bool {
    static SECRETS: OnceLock<(String, String)> = OnceLock::new();
    // The same random bytes: every guard has the same secrets.
    let guard = || Guard::new(PORT, &*(given.random)(7), REFUSED.to_owned()).expect("a guard");
    let (token, session) = SECRETS.get_or_init(|| {
        let guard = guard();
        let address = guard.address();
        let token = address.split_once("enter=").expect("a token").1.to_owned();
        let enter = format!("GET /?enter={token} HTTP/1.1\r\nhost: 127.0.0.1:{PORT}\r\n\r\n");
        let answer = String::from_utf8(wired(enter.as_bytes(), guard).0).expect("text");
        let cookie = answer.split_once("frond-4711=").expect("a cookie").1;
        (token, cookie.split(';').next().unwrap_or_default().to_owned())
    });
    let (answered, whole) = wired(bytes, guard());
    let has =
        |text: &[u8], word: &str| text.windows(word.len()).any(|part| part == word.as_bytes());
    assert!(answered.is_empty() || answered.starts_with(b"HTTP/1."), "no answer of HTTP");
    assert!(!has(&answered, " 500 "), "a fault");
    let inside = has(&answered, INSIDE);
    assert!(!inside || has(bytes, session), "let in without the cookie");
    let entered = has(&answered, session);
    assert!(!entered || has(bytes, token), "the cookie is given without the token");
    whole && (inside || entered)
}

/// Sends these bytes over a connection of their own; gives what was answered, and whether it ended as it should.
fn wired(bytes: &[u8], guard: Guard) -> (Vec<u8>, bool) {
    let inside = get(|| async { INSIDE }).post(|request| async {
        match Fields::read(request).await {
            Ok(_) => INSIDE,
            Err(_) => "",
        }
    });
    let router = Router::new().route("/", inside).layer(from_fn_with_state(guard, watch));
    let answered: Arc<Mutex<Vec<u8>>> = Arc::default();
    let wire =
        Wire { sent: io::Cursor::new(bytes.to_vec()), waited: 0, answered: answered.clone() };
    let ended = wait_for(async { connections::connection(wire, router, Arc::default()).await });
    let answered = answered.lock().expect("nobody else has it").clone();
    (answered, ended.is_ok())
}

impl Read for Wire {
    fn poll_read(
        self: Pin<&mut Self>,
        context: &mut Context<'_>,
        mut into: ReadBufCursor<'_>,
    ) -> Poll<io::Result<()>> {
        let Self { sent, waited, .. } = self.get_mut();
        let from = usize::try_from(sent.position()).unwrap_or(usize::MAX);
        let rest = sent.get_ref().get(from..).unwrap_or_default();
        let now = rest.get(..rest.len().min(into.remaining())).unwrap_or_default();
        if now.is_empty() && *waited < PATIENCE {
            *waited += 1;
            context.waker().wake_by_ref();
            return Poll::Pending;
        }
        into.put_slice(now);
        sent.set_position(sent.position() + now.len() as u64);
        Poll::Ready(Ok(()))
    }
}

impl Write for Wire {
    fn poll_write(
        self: Pin<&mut Self>,
        _: &mut Context<'_>,
        bytes: &[u8],
    ) -> Poll<io::Result<usize>> {
        self.answered.lock().expect("nobody else has it").extend_from_slice(bytes);
        Poll::Ready(Ok(bytes.len()))
    }

    fn poll_flush(self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<io::Result<()>> {
        Poll::Ready(Ok(()))
    }

    fn poll_shutdown(self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<io::Result<()>> {
        Poll::Ready(Ok(()))
    }
}
