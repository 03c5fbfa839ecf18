//! Who may see a page. Decides by a one-time token, a cookie, and the `Host` and `Origin` of each request;
//! puts the headers on each answer that keep a browser from storing, framing or leaking it. Leaves to
//! [`super::form`] how long a body may be.
//!
//! The address printed at the start carries the token. It works once: it is exchanged for a cookie that no
//! script can read and no other site can have sent, and the browser is led away from it. What other programs
//! of the same person can do is not in reach: they can read her files too.

use std::sync::{Arc, Mutex, PoisonError};

use axum::extract::{Request, State};
use axum::http::header::{self, HeaderMap, HeaderName, HeaderValue};
use axum::http::{Method, StatusCode, Uri};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use frond_core::ports::Random;
use subtle::ConstantTimeEq;

use crate::failure::Failure;

/// Bytes of a token: 256 bits, not to be guessed.
const TOKEN: usize = 32;

/// On every answer. `Referrer-Policy` is not `no-referrer`: browsers would then send `Origin: null` with a
/// form, and it could not be told from one of another site.
const HEADERS: [(HeaderName, &str); 8] = [
    (
        header::CONTENT_SECURITY_POLICY,
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; \
         form-action 'self'; \
         frame-ancestors 'none'; base-uri 'none'",
    ),
    (header::CACHE_CONTROL, "no-store"),
    (header::REFERRER_POLICY, "same-origin"),
    (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
    (header::X_FRAME_OPTIONS, "DENY"),
    (HeaderName::from_static("cross-origin-opener-policy"), "same-origin"),
    (HeaderName::from_static("cross-origin-resource-policy"), "same-origin"),
    (
        HeaderName::from_static("permissions-policy"),
        "camera=(), microphone=(), geolocation=(), display-capture=(), usb=(), serial=(), \
         hid=(), midi=(), payment=(), publickey-credentials-get=(), idle-detection=(), \
         accelerometer=(), gyroscope=(), magnetometer=(), browsing-topics=(), screen-wake-lock=(self)",
    ),
];

/// The guard of one server.
#[derive(Clone)]
pub(crate) struct Guard(Arc<Inner>);

struct Inner {
    /// What `Host` may say.
    hosts: [String; 2],
    /// The token, until it was used.
    token: Mutex<Option<String>>,
    cookie_name: String,
    session: String,
    /// The one sentence for whoever is not let in.
    refused: String,
}

/// What becomes of a request.
enum Admitted {
    In,
    /// It brought the token.
    Entering,
    No,
}

impl Guard {
    /// A guard for the server on this port, with a token and a session of its own.
    ///
    /// # Errors
    /// No random bytes.
    pub(crate) fn new(port: u16, random: &dyn Random, refused: String) -> Result<Self, Failure> {
        Ok(Self(Arc::new(Inner {
            hosts: [format!("127.0.0.1:{port}"), format!("localhost:{port}")],
            token: Mutex::new(Some(secret(random)?)),
            // Cookies know no port: with one name, two servers would throw each other's out.
            cookie_name: format!("frond-{port}"),
            session: secret(random)?,
            refused,
        })))
    }

    /// The address to open, once.
    pub(crate) fn address(&self) -> String {
        let token = self.0.token.lock().unwrap_or_else(PoisonError::into_inner);
        let token = token.as_deref().unwrap_or_default();
        format!("http://{}/?enter={token}", self.0.hosts[0])
    }

    fn admit(&self, request: &Request) -> Admitted {
        if !self.is_of_here(request) {
            return Admitted::No;
        }
        if request.method() == Method::GET
            && let Some(offered) = offered(request.uri())
            && self.use_up(offered)
        {
            return Admitted::Entering;
        }
        if self.has_session(request.headers()) { Admitted::In } else { Admitted::No }
    }

    /// Whether the request was meant for this server and comes from one of its own pages, or from none.
    fn is_of_here(&self, request: &Request) -> bool {
        let headers = request.headers();
        let mut hosts = headers.get_all(header::HOST).iter();
        let (Some(Ok(host)), None) = (hosts.next().map(HeaderValue::to_str), hosts.next()) else {
            return false;
        };
        if !self.0.hosts.iter().any(|own| own == host) {
            return false;
        }
        // A request line may carry a host of its own.
        if request.uri().authority().is_some_and(|authority| authority.as_str() != host) {
            return false;
        }
        let mut origins = headers.get_all(header::ORIGIN).iter();
        let safe = matches!(*request.method(), Method::GET | Method::HEAD);
        let own_origin = match (origins.next(), origins.next()) {
            (None, _) => safe,
            (Some(origin), None) => {
                origin.to_str().ok().and_then(|text| text.strip_prefix("http://")) == Some(host)
            }
            (Some(_), Some(_)) => false,
        };
        // Browsers say of a request which sort of page made it; `none` is an address that was typed.
        let site = headers.get("sec-fetch-site").map(HeaderValue::to_str);
        own_origin && matches!(site, None | Some(Ok("same-origin" | "none")))
    }

    fn use_up(&self, offered: &str) -> bool {
        let mut token = self.0.token.lock().unwrap_or_else(PoisonError::into_inner);
        let fits = token.as_deref().is_some_and(|token| same(token, offered));
        if fits {
            *token = None;
        }
        fits
    }

    fn has_session(&self, headers: &HeaderMap) -> bool {
        let cookies = headers.get_all(header::COOKIE).iter();
        let texts = cookies.filter_map(|cookies| cookies.to_str().ok());
        let mut pairs = texts.flat_map(|text| text.split(';')).filter_map(|pair| {
            pair.trim().split_once('=').filter(|(name, _)| *name == self.0.cookie_name)
        });
        pairs.any(|(_, value)| same(value, &self.0.session))
    }

    fn enter(&self) -> Response {
        let cookie =
            format!("{}={}; Path=/; HttpOnly; SameSite=Strict", self.0.cookie_name, self.0.session);
        let headers = [(header::LOCATION, "/".to_owned()), (header::SET_COOKIE, cookie)];
        (StatusCode::SEE_OTHER, headers).into_response()
    }
}

/// Stands before every page and everything else that is served.
pub(crate) async fn watch(State(guard): State<Guard>, request: Request, next: Next) -> Response {
    let mut response = match guard.admit(&request) {
        Admitted::In => next.run(request).await,
        Admitted::Entering => guard.enter(),
        Admitted::No => sentence(StatusCode::FORBIDDEN, &guard.0.refused),
    };
    for (name, value) in HEADERS {
        response.headers_mut().insert(name, HeaderValue::from_static(value));
    }
    response
}

/// An answer that is one sentence.
pub(crate) fn sentence(status: StatusCode, says: &str) -> Response {
    let plain = [(header::CONTENT_TYPE, "text/plain; charset=utf-8")];
    (status, plain, format!("{says}\n")).into_response()
}

fn offered(uri: &Uri) -> Option<&str> {
    uri.query()?.strip_prefix("enter=").filter(|_| uri.path() == "/")
}

/// Whether two secrets are the same, in a time that does not tell how far they agree.
fn same(one: &str, other: &str) -> bool {
    one.as_bytes().ct_eq(other.as_bytes()).into()
}

fn secret(random: &dyn Random) -> Result<String, Failure> {
    let mut bytes = [0u8; TOKEN];
    random
        .fill(&mut bytes)
        .map_err(|_| Failure::Else("There are no random bytes just now. Try again.".to_owned()))?;
    Ok(bytes.iter().map(|byte| format!("{byte:02x}")).collect())
}

#[cfg(test)]
mod tests;
