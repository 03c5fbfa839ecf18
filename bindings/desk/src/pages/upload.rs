//! A form that carries a file. Decides how large it may be; the fields beside the file are read as those of
//! any other form.

use axum::body::Body;
use axum::extract::{FromRequest, Multipart, Request};
use axum::http::header;

use tokio::sync::SemaphorePermit;

use crate::pages::form::{Fields, Unread, Whole, whole};

/// What came.
pub(crate) struct Upload {
    /// The file's bytes; empty where none was chosen.
    pub(crate) file: Vec<u8>,
    /// Files of a field that takes many: names as given, and bytes.
    pub(crate) files: Vec<(String, Vec<u8>)>,
    /// The other fields.
    pub(crate) fields: Fields,
    /// Where it is a long one: its place among those.
    _place: Option<SemaphorePermit<'static>>,
}

/// Reads it, of at most so many bytes.
///
/// # Errors
/// Too large, or no such form.
pub(crate) async fn read(request: Request, most: usize) -> Result<Upload, Unread> {
    let kind = request.headers().get(header::CONTENT_TYPE).cloned().ok_or(Unread::Malformed)?;
    // A form that may carry a file and carries none may come as any other.
    if kind.as_bytes().starts_with(b"application/x-www-form-urlencoded") {
        let fields = Fields::read(request).await?;
        return Ok(Upload { file: Vec::new(), files: Vec::new(), fields, _place: None });
    }
    let Whole { bytes, place } = whole(request, most).await?;
    // The whole body is here and within its limit: what goes wrong from here on is its form.
    let form = Request::builder().header(header::CONTENT_TYPE, kind).body(Body::from(bytes));
    let mut form = form.map_err(|_| Unread::Malformed)?;
    axum::extract::DefaultBodyLimit::disable().apply(&mut form);
    let mut parts = Multipart::from_request(form, &()).await.map_err(|_| Unread::Malformed)?;
    let (mut file, mut files, mut fields) = (Vec::new(), Vec::new(), Vec::new());
    while let Some(part) = parts.next_field().await.map_err(|_| Unread::Malformed)? {
        let name = part.name().unwrap_or_default().to_owned();
        let given = part.file_name().unwrap_or_default().to_owned();
        let bytes = part.bytes().await.map_err(|_| Unread::Malformed)?;
        if name == "file" {
            file = bytes.to_vec();
        } else if name == "files" {
            // Where none was chosen, a browser sends one without a name.
            if !given.is_empty() {
                files.push((given, bytes.to_vec()));
            }
        } else {
            let text = String::from_utf8(bytes.to_vec()).map_err(|_| Unread::Malformed)?;
            fields.push((name, text.replace("\r\n", "\n")));
        }
    }
    Ok(Upload { file, files, fields: Fields::of(fields), _place: place })
}
