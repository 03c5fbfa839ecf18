//! What a form said. Decides how long a body may be, which bodies are forms at all, and how a field becomes
//! a checked value; what was typed is kept, so that a page can show it again beside what has to be put
//! right. Leaves to the companion what may be written.

use std::time::Duration;

use axum::body::{Body, Bytes, to_bytes};
use axum::extract::Request;
use axum::http::{StatusCode, header};
use percent_encoding::percent_decode;
use serde::Serialize;
use serde::de::DeserializeOwned;
use tokio::sync::{Semaphore, SemaphorePermit};
use zeroize::{Zeroize, Zeroizing};

/// The longest form, in bytes.
pub(crate) const FORM_MOST: usize = 64 * 1024;
/// How long a body may take to come. It comes from this machine.
const WITHIN: Duration = Duration::from_secs(60);
/// A body that may be longer than this, in bytes, needs a place: many of them at once would fill the memory.
const LONG: usize = 1024 * 1024;
/// The places for long bodies; whoever finds none waits.
static PLACES: Semaphore = Semaphore::const_new(2);

/// The fields of a form, in order. Whoever sends the same name twice means two values. Wiped when dropped: a
/// passphrase or a code may be among them. What the server's own buffers saw of the body is freed and not wiped.
#[derive(Clone, Default)]
pub(crate) struct Fields(Vec<(String, String)>);

impl Drop for Fields {
    fn drop(&mut self) {
        self.0.iter_mut().for_each(|(_, value)| value.zeroize());
    }
}

/// Why a body was not taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Unread {
    /// Longer than is allowed.
    TooLarge,
    /// Not a form.
    Malformed,
    /// It did not come to its end in time.
    TooSlow,
}

/// Something to put right, at a field.
#[derive(Clone, PartialEq, Eq)]
pub(crate) struct Problem {
    /// The field, by its name; the page links to it. Empty: the form as a whole.
    pub(crate) field: String,
    /// What to do.
    pub(crate) says: String,
}

impl Problem {
    /// At a field.
    pub(crate) fn at(field: &str, says: String) -> Self {
        Self { field: field.to_owned(), says }
    }
}

impl Unread {
    /// The status of the answer.
    pub(crate) fn status(self) -> StatusCode {
        match self {
            Self::TooLarge => StatusCode::PAYLOAD_TOO_LARGE,
            Self::Malformed => StatusCode::BAD_REQUEST,
            Self::TooSlow => StatusCode::REQUEST_TIMEOUT,
        }
    }
}

impl Fields {
    /// Reads `application/x-www-form-urlencoded`, strictly: broken escapes and bytes that are no UTF-8 are
    /// refused, not mended.
    pub(crate) fn parse(body: &[u8]) -> Option<Self> {
        let mut fields = Vec::new();
        for pair in body.split(|byte| *byte == b'&').filter(|pair| !pair.is_empty()) {
            let mut halves = pair.splitn(2, |byte| *byte == b'=');
            let name = decoded(halves.next()?)?;
            fields.push((name, decoded(halves.next()?)?));
        }
        Some(Self(fields))
    }

    /// The fields of a request.
    ///
    /// # Errors
    /// Too large, or no form.
    pub(crate) async fn read(request: Request) -> Result<Self, Unread> {
        Self::read_most(request, FORM_MOST).await
    }

    /// The fields of a request of at most so many bytes.
    ///
    /// # Errors
    /// Too large, or no form.
    pub(crate) async fn read_most(request: Request, most: usize) -> Result<Self, Unread> {
        let kind = request.headers().get(header::CONTENT_TYPE).and_then(|kind| kind.to_str().ok());
        let is_form = kind.and_then(|kind| kind.split(';').next()).map(str::trim)
            == Some("application/x-www-form-urlencoded");
        let Whole { bytes: body, .. } = whole(request, most).await?;
        if !is_form {
            return Err(Unread::Malformed);
        }
        let read = Self::parse(&body).ok_or(Unread::Malformed);
        // Where the body came in one piece that nothing else holds, it is wiped.
        if let Ok(mut own) = body.try_into_mut() {
            own[..].zeroize();
        }
        read
    }

    /// From fields already read.
    pub(crate) fn of(fields: Vec<(String, String)>) -> Self {
        Self(fields)
    }

    /// Every name with its value, in order.
    pub(crate) fn pairs(&self) -> impl Iterator<Item = (&str, &str)> {
        self.0.iter().map(|(name, value)| (name.as_str(), value.as_str()))
    }

    /// Whether nothing was sent.
    pub(crate) fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// The first value of a name, trimmed; `None` where it is missing or empty.
    pub(crate) fn first(&self, name: &str) -> Option<&str> {
        let value = self.0.iter().find(|(own, _)| own == name).map(|(_, value)| value.trim());
        value.filter(|value| !value.is_empty())
    }

    /// Every value of a name.
    pub(crate) fn all(&self, name: &str) -> impl Iterator<Item = &str> {
        self.0.iter().filter(move |(own, _)| own == name).map(|(_, value)| value.as_str())
    }

    /// Whether a name was sent with this value.
    pub(crate) fn has(&self, name: &str, value: &str) -> bool {
        self.all(name).any(|own| own == value)
    }
}

/// A value as the text of a form: its stored name, or its JSON.
pub(crate) fn code<T: Serialize>(value: &T) -> String {
    match serde_json::to_value(value) {
        Ok(serde_json::Value::String(name)) => name,
        Ok(other) => other.to_string(),
        // The stored types always can be written.
        Err(_) => String::new(),
    }
}

/// The value that a form's text stands for.
pub(crate) fn decode<T: DeserializeOwned>(text: &str) -> Option<T> {
    let named = serde_json::from_value(serde_json::Value::String(text.to_owned()));
    named.or_else(|_| serde_json::from_str(text)).ok()
}

/// A body that came whole.
pub(crate) struct Whole {
    pub(crate) bytes: Bytes,
    /// Where it is a long one: its place, to be given back when nothing of it is needed any more.
    pub(crate) place: Option<SemaphorePermit<'static>>,
}

/// A whole body, of at most so many bytes.
///
/// # Errors
/// Too large, too slow, or cut off.
pub(crate) async fn whole(request: Request, most: usize) -> Result<Whole, Unread> {
    let said = request.headers().get(header::CONTENT_LENGTH);
    let said = said.and_then(|said| said.to_str().ok()?.parse::<usize>().ok());
    if said.is_some_and(|said| said > most) {
        return Err(Unread::TooLarge);
    }
    let place = match said.unwrap_or(most) > LONG {
        true => Some(PLACES.acquire().await.map_err(|_| Unread::TooSlow)?),
        false => None,
    };
    let body: Body = request.into_body();
    match tokio::time::timeout(WITHIN, to_bytes(body, most)).await {
        Ok(Ok(bytes)) => Ok(Whole { bytes, place }),
        Ok(Err(error)) => Err(too_large(&error)),
        Err(_late) => Err(Unread::TooSlow),
    }
}

/// A body that was cut off is malformed; only one that runs over is too large.
fn too_large(error: &axum::Error) -> Unread {
    let mut source: Option<&dyn std::error::Error> = Some(error);
    while let Some(inner) = source {
        if inner.to_string().contains("length limit exceeded") {
            return Unread::TooLarge;
        }
        source = inner.source();
    }
    Unread::Malformed
}

fn decoded(text: &[u8]) -> Option<String> {
    let mut bytes = text.iter();
    while let Some(byte) = bytes.next() {
        if *byte == b'%' {
            let digits = [bytes.next()?, bytes.next()?];
            if !digits.iter().all(|digit| digit.is_ascii_hexdigit()) {
                return None;
            }
        }
    }
    // Room enough at once, and wiped: what grows or is thrown away leaves copies of what was typed behind.
    let mut plain = Zeroizing::new(Vec::with_capacity(text.len()));
    let spaced = text.iter().map(|byte| if *byte == b'+' { b' ' } else { *byte });
    let spaced = Zeroizing::new(spaced.collect::<Vec<u8>>());
    plain.extend(percent_decode(&spaced));
    let plain = std::str::from_utf8(&plain).ok()?;
    let mut decoded = String::with_capacity(plain.len());
    // Browsers send line breaks as CR LF.
    for (number, line) in plain.split("\r\n").enumerate() {
        if number > 0 {
            decoded.push('\n');
        }
        decoded.push_str(line);
    }
    Some(decoded)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fields_are_read_strictly() {
        let fields = Fields::parse(b"a=1&b=two+words&a=%E2%82%AC&note=x%0D%0Ay&empty=").unwrap();
        assert_eq!(fields.all("a").collect::<Vec<_>>(), ["1", "\u{20ac}"]);
        assert_eq!(fields.first("b"), Some("two words"));
        assert_eq!(fields.first("note"), Some("x\ny"));
        assert_eq!((fields.first("empty"), fields.first("none")), (None, None));
        assert!(fields.has("a", "1") && !fields.has("a", "2"));
        for broken in [&b"a"[..], b"a=%", b"a=%4", b"a=%zz", b"a=%ff", b"a=\xff"] {
            assert!(Fields::parse(broken).is_none(), "{broken:?}");
        }
    }
}
