//! The bodies of forms.

use axum::body::Body;
use axum::extract::Request;
use axum::http::{HeaderValue, header};
use percent_encoding::{NON_ALPHANUMERIC, utf8_percent_encode};

use super::requests::wait_for;
use crate::pages::form::Fields;
use crate::pages::upload;

/// The longest body that is tried, in bytes.
const MOST: usize = 128 * 1024;

/// The body of a form: what is read, written and read again, is the same.
pub(super) fn form(bytes: &[u8]) -> bool {
    let Some(fields) = Fields::parse(bytes) else { return false };
    let escaped = |text: &str| utf8_percent_encode(text, NON_ALPHANUMERIC).to_string();
    let pairs: Vec<(&str, &str)> = fields.pairs().collect();
    let written: Vec<String> =
        pairs.iter().map(|(name, value)| format!("{}={}", escaped(name), escaped(value))).collect();
    let again = Fields::parse(written.join("&").as_bytes()).expect("what was escaped is read");
    let lines = |text: &str| text.replace("\r\n", "\n");
    let expected = pairs.iter().map(|(name, value)| (lines(name), lines(value)));
    let got = again.pairs().map(|(name, value)| (name.to_owned(), value.to_owned()));
    assert!(expected.eq(got), "a form reads otherwise");
    for (name, _) in &pairs {
        assert!(fields.all(name).next().is_some(), "a field that was sent is not found");
    }
    !fields.is_empty()
}

/// The body of a form that may carry files, behind a line that says its kind.
pub(super) fn upload(bytes: &[u8]) -> bool {
    let mut halves = bytes.splitn(2, |byte| *byte == b'\n');
    let (kind, body) = (halves.next().unwrap_or_default(), halves.next().unwrap_or_default());
    let Ok(kind) = HeaderValue::from_bytes(kind) else { return false };
    let request = Request::builder().method("POST").uri("/").header(header::CONTENT_TYPE, kind);
    let request = request.body(Body::from(body.to_vec())).expect("a request");
    let Ok(read) = wait_for(upload::read(request, MOST)) else { return false };
    let files: usize = read.files.iter().map(|(name, bytes)| name.len() + bytes.len()).sum();
    let fields: usize = read.fields.pairs().map(|(name, value)| name.len() + value.len()).sum();
    // A name that is no UTF-8 grows while it is made into text, three bytes for one.
    assert!(read.file.len() + files + fields <= 3 * body.len(), "more was read than was sent");
    true
}
