//! Writes what the fuzzer begins with for the pages, into `tests/fuzz/corpus`: the pages themselves are walked, and each
//! link and each form found on one becomes a file. Everything in them is invented.

use std::collections::{BTreeSet, VecDeque};
use std::error::Error;
use std::fs;
use std::path::Path;

use frond::outside::came;
use frond_core::ports::Random;
use frond_core::ports::sim::SeededRandom;

#[path = "../../tests/outside/given.rs"]
mod given;
mod html;

use given::given;

/// So many files of one reader.
const MOST: usize = 120;
/// So many requests before the one that is new.
const DEEPEST: usize = 4;
/// Between one request and the next.
const NEXT: &[u8] = &[0xff, 0xff];

fn main() -> Result<(), Box<dyn Error>> {
    let corpus = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/fuzz/corpus");
    let put = |reader: &str, name: &str, bytes: &[u8]| -> std::io::Result<()> {
        fs::create_dir_all(corpus.join(reader))?;
        fs::write(corpus.join(reader).join(format!("seed-{name}")), bytes)
    };
    for (number, body) in [
        "a=1&b=two+words&a=%E2%82%AC&note=x%0D%0Ay&empty=",
        "id=00112233445566778899aabbccddeeff&text=hello",
        "a=%",
    ]
    .into_iter()
    .enumerate()
    {
        put("form", &number.to_string(), body.as_bytes())?;
    }
    let files = "multipart/form-data; boundary=x\n--x\r\nContent-Disposition: form-data; name=\"files\"; \
                 filename=\"a.json\"\r\nContent-Type: application/json\r\n\r\n{}\r\n--x\r\nContent-Disposition: \
                 form-data; name=\"passphrase\"\r\n\r\nwords\r\n--x--\r\n";
    put("upload", "files", files.as_bytes())?;
    put("upload", "file", files.replace("files", "file").as_bytes())?;
    put("upload", "form", b"application/x-www-form-urlencoded\npath=%2Fnowhere")?;
    connections(&put)?;
    for (at_the_desk, reader) in [(true, "desk_page"), (false, "try_page")] {
        for (number, bytes) in walked(at_the_desk).into_iter().enumerate() {
            put(reader, &format!("{number:03}"), &bytes)?;
        }
    }
    Ok(())
}

/// Writes a file: for which reader, its name, its bytes.
type Put<'a> = &'a dyn Fn(&str, &str, &[u8]) -> std::io::Result<()>;

/// Requests with the secrets of the guard that the reader has.
fn connections(put: Put<'_>) -> Result<(), Box<dyn Error>> {
    let random = SeededRandom::new(7);
    let secret = || -> Result<String, Box<dyn Error>> {
        let mut bytes = [0u8; 32];
        random.fill(&mut bytes)?;
        Ok(bytes.iter().map(|byte| format!("{byte:02x}")).collect())
    };
    let (token, session) = (secret()?, secret()?);
    let host = "host: 127.0.0.1:4711\r\n";
    let cookie = format!("cookie: frond-4711={session}\r\n");
    let own = format!("origin: http://127.0.0.1:4711\r\n{cookie}");
    let form = "content-type: application/x-www-form-urlencoded\r\n";
    for (name, text) in [
        ("enters", format!("GET /?enter={token} HTTP/1.1\r\n{host}\r\n")),
        (
            "looks",
            format!("GET / HTTP/1.1\r\n{host}{cookie}\r\nGET / HTTP/1.1\r\n{host}{cookie}\r\n"),
        ),
        ("stranger", format!("GET / HTTP/1.1\r\n{host}\r\n")),
        ("elsewhere", format!("GET http://example.org/ HTTP/1.1\r\n{host}{cookie}\r\n")),
        ("sends", format!("POST / HTTP/1.1\r\n{host}{own}{form}content-length: 3\r\n\r\na=1")),
        (
            "other-site",
            format!(
                "POST / HTTP/1.1\r\n{host}{cookie}{form}origin: null\r\ncontent-length: 0\r\n\r\n"
            ),
        ),
        (
            "chunks",
            format!(
                "POST / HTTP/1.1\r\n{host}{own}{form}transfer-encoding: chunked\r\n\r\n3\r\na=1\r\n0\r\n\r\n"
            ),
        ),
        (
            "waits",
            format!(
                "POST / HTTP/1.1\r\n{host}{own}{form}expect: 100-continue\r\ncontent-length: 3\r\n\r\na=1"
            ),
        ),
        ("old", format!("GET / HTTP/1.0\r\n{host}{cookie}connection: keep-alive\r\n\r\n")),
    ] {
        put("connection", name, text.as_bytes())?;
    }
    Ok(())
}

/// What is found on the pages: each way and each form once, with the forms before it that lead there.
fn walked(at_the_desk: bool) -> Vec<Vec<u8>> {
    let mut found: Vec<Vec<u8>> = Vec::new();
    let mut seen = BTreeSet::new();
    // The forms sent before, and the page that is looked at behind them.
    let mut queue = VecDeque::from([(Vec::<Vec<u8>>::new(), b"GET /".to_vec())]);
    while let Some((before, last)) = queue.pop_front() {
        if found.len() >= MOST || before.len() >= DEEPEST {
            continue;
        }
        let all: Vec<Vec<u8>> = before.iter().cloned().chain([last.clone()]).collect();
        let bytes = all.join(NEXT);
        let (led, page) = came(at_the_desk, &bytes, given());
        found.push(bytes);
        let sent = !last.starts_with(b"GET");
        let before = if sent { all } else { before };
        if !led.is_empty() && (sent || page.is_empty()) {
            let led = led.split('#').next().unwrap_or_default();
            if seen.insert(html::sort_of(led)) {
                queue.push_back((before.clone(), format!("GET {led}").into_bytes()));
            }
        }
        for way in html::ways(&page) {
            if seen.insert(html::sort_of(&way)) {
                queue.push_back((before.clone(), format!("GET {way}").into_bytes()));
            }
        }
        for form in html::forms(&page) {
            if seen.insert(format!("POST {} {}", html::sort_of(&form.to), form.names().join(" "))) {
                queue.push_back((before.clone(), form.request()));
            }
        }
    }
    found
}
