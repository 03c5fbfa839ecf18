//! The pages of an open desk and of a diary, without a socket and without a person. What a run wrote is thrown
//! away with the desk or diary, and the next finds the same as the one before.

use std::fs;
use std::path::Path;
use std::sync::{Mutex, OnceLock, PoisonError};

use axum::Router;
use axum::body::Body;
use axum::extract::Request;
use axum::http::{StatusCode, header};
use frond_core::moment::Stamp;
use tempfile::TempDir;

use super::Given;
use super::requests::{Came, ask, send, wait_for};
use crate::pages::{desk, try_out};

const NOW: &str = "2026-05-10T19:30:00+01:00[Europe/London]";
const FORM: &str = "application/x-www-form-urlencoded";
const FILES: &str = "multipart/form-data; boundary=edge";

/// Pages that can be asked, and where what is behind them lies.
struct Place {
    router: Router,
    _room: Option<TempDir>,
}

/// Requests at an open desk.
pub(super) fn desk_page(bytes: &[u8], given: &Given) -> Came {
    static PLACE: Mutex<Option<Place>> = Mutex::new(None);
    tried(&PLACE, bytes, || a_desk(given))
}

/// Requests at a diary with a plan.
pub(super) fn try_page(bytes: &[u8], given: &Given) -> Came {
    static PLACE: Mutex<Option<Place>> = Mutex::new(None);
    tried(&PLACE, bytes, || a_diary(given))
}

fn tried(place: &Mutex<Option<Place>>, bytes: &[u8], anew: impl Fn() -> Place) -> Came {
    // After a fault it is made anew.
    let mut place = place.lock().unwrap_or_else(PoisonError::into_inner);
    let now = place.take().unwrap_or_else(anew);
    let came = send(&now.router, bytes);
    if !came.wrote {
        *place = Some(now);
    }
    came
}

/// A desk with a copy of what was made once.
fn a_desk(given: &Given) -> Place {
    static MADE: OnceLock<TempDir> = OnceLock::new();
    let made = MADE.get_or_init(|| {
        let room = room();
        let programme = &given.programme;
        let pages = desk::tried::pages(room.path(), given.random, 2, now(), Some(programme));
        let pages = pages.expect("an open desk");
        let mut body = Vec::new();
        for summary in &given.summaries {
            let head =
                "--edge\r\nContent-Disposition: form-data; name=\"files\"; filename=\"a\"\r\n\r\n";
            body.extend_from_slice(head.as_bytes());
            body.extend_from_slice(summary);
            body.extend_from_slice(b"\r\n");
        }
        body.extend_from_slice(b"--edge--\r\n");
        post(&pages, "/bring", FILES, body);
        room
    });
    let room = room();
    copy(made.path(), room.path()).expect("a copy");
    let pages = desk::tried::pages(room.path(), given.random, 3, now(), None);
    Place { router: pages.expect("an open desk"), _room: Some(room) }
}

/// A new diary, with a plan that was accepted.
fn a_diary(given: &Given) -> Place {
    let pages = try_out::tried::pages((given.ports)(), (given.keeper)(), now(), &given.programme);
    let router = pages.expect("a new diary");
    let page = Request::get("/plan/add").body(Body::empty()).expect("a request");
    let (_, page) = wait_for(ask(&router, page));
    let page = String::from_utf8(page).expect("a page");
    let id = page.split_once("name=\"id\" value=\"").expect("a plan that waits").1;
    let id = id.split('"').next().unwrap_or_default();
    post(&router, "/plan/accept", FORM, format!("answer=yes&id={id}&although=unsigned").into());
    Place { router, _room: None }
}

fn post(router: &Router, to: &str, kind: &str, body: Vec<u8>) {
    let request = Request::post(to).header(header::CONTENT_TYPE, kind).body(Body::from(body));
    let (answer, _) = wait_for(ask(router, request.expect("a request")));
    assert_eq!(answer.status(), StatusCode::SEE_OTHER, "{to}");
}

fn now() -> Stamp {
    NOW.parse().expect("a stamp")
}

fn room() -> TempDir {
    tempfile::tempdir().expect("a folder")
}

/// What lies in a folder and in the folders in it.
fn copy(from: &Path, to: &Path) -> std::io::Result<()> {
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let to = to.join(entry.file_name());
        if entry.file_type()?.is_dir() {
            copy(&entry.path(), &to)?
        } else {
            fs::copy(entry.path(), to).map(drop)?
        }
    }
    Ok(())
}
