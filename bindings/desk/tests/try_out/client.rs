//! The program, and a browser that says exactly what a test wants: one connection for each request.

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use tempfile::TempDir;

/// A running try-out.
pub(crate) struct Server {
    child: Child,
    /// `127.0.0.1:port`
    pub(crate) host: String,
    /// The token as printed.
    pub(crate) token: String,
    cookie: String,
    /// Where it puts what is temporary.
    pub(crate) temporary: TempDir,
}

/// An answer.
pub(crate) struct Answer {
    pub(crate) status: u16,
    pub(crate) head: String,
    pub(crate) body: Vec<u8>,
}

impl Answer {
    /// The value of a header.
    pub(crate) fn header(&self, name: &str) -> Option<&str> {
        let lines = self.head.lines().filter_map(|line| line.split_once(": "));
        let mut found = lines.filter(|(own, _)| own.eq_ignore_ascii_case(name));
        found.next().map(|(_, value)| value)
    }

    /// The body as text.
    pub(crate) fn text(&self) -> String {
        String::from_utf8(self.body.clone()).unwrap()
    }
}

/// The program, told nothing by the environment.
fn program(temporary: &Path) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_frond"));
    command.env_clear().env("TZ", "Europe/London").env("TMPDIR", temporary);
    command.env("FROND_STATE", temporary.join("marks"));
    command
}

impl Server {
    /// Starts one and waits for its address.
    pub(crate) fn start(args: &[&str]) -> Self {
        let temporary = tempfile::tempdir().unwrap();
        let mut child = program(temporary.path())
            .args(["try", "--no-open"])
            .args(args)
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
        let Some(rest) = line.trim_end().strip_prefix("http://") else {
            let mut said = String::new();
            child.stderr.take().unwrap().read_to_string(&mut said).unwrap();
            panic!("no address: {line:?} {said}");
        };
        let (host, token) = rest.split_once("/?enter=").unwrap();
        let (host, token) = (host.to_owned(), token.to_owned());
        Self { child, host, token, cookie: String::new(), temporary }
    }

    /// Starts one and enters.
    pub(crate) fn entered(args: &[&str]) -> Self {
        let mut server = Self::start(args);
        let answer = server.send("GET", &format!("/?enter={}", server.token), &[], b"");
        assert_eq!(answer.status, 303, "{}", answer.head);
        let cookie = answer.header("set-cookie").unwrap();
        server.cookie = cookie.split(';').next().unwrap().to_owned();
        server
    }

    /// Sends a request as it is, with `Host` unless the headers name one.
    pub(crate) fn send(
        &self,
        method: &str,
        path: &str,
        headers: &[(&str, &str)],
        body: &[u8],
    ) -> Answer {
        let mut head = format!("{method} {path} HTTP/1.1\r\nConnection: close\r\n");
        let mut with = |name: &str, value: &str| head.push_str(&format!("{name}: {value}\r\n"));
        if !headers.iter().any(|(name, _)| name.eq_ignore_ascii_case("host")) {
            with("Host", &self.host);
        }
        if !self.cookie.is_empty() {
            with("Cookie", &self.cookie);
        }
        for (name, value) in headers {
            with(name, value);
        }
        let chunked = headers.iter().any(|(name, _)| *name == "Transfer-Encoding");
        if !chunked && (!body.is_empty() || method == "POST") {
            with("Content-Length", &body.len().to_string());
        }
        head.push_str("\r\n");
        let mut stream = TcpStream::connect(&self.host).unwrap();
        stream.set_read_timeout(Some(Duration::from_secs(60))).unwrap();
        stream.write_all(head.as_bytes()).unwrap();
        // A server that refuses by the head alone may close before it has read everything.
        let _ = stream.write_all(body);
        let mut answer = Vec::new();
        let _ = stream.read_to_end(&mut answer);
        let split = answer.windows(4).position(|four| four == b"\r\n\r\n").expect("an answer");
        let head = String::from_utf8(answer[..split].to_vec()).unwrap();
        let status = head.split(' ').nth(1).unwrap().parse().unwrap();
        Answer { status, head, body: answer[split + 4..].to_vec() }
    }

    /// A form whose length is not said beforehand; the body is in chunks already.
    pub(crate) fn send_chunked(&self, path: &str, headers: &[(&str, &str)], body: &[u8]) -> Answer {
        let chunked = ("Transfer-Encoding", "chunked");
        let headers: Vec<_> = headers.iter().copied().chain([chunked]).collect();
        self.send("POST", path, &headers, body)
    }

    /// A page.
    pub(crate) fn get(&self, path: &str) -> Answer {
        self.send("GET", path, &[], b"")
    }

    /// A page that is there.
    pub(crate) fn page(&self, path: &str) -> String {
        let answer = self.get(path);
        assert_eq!(answer.status, 200, "{path}: {}", answer.text());
        answer.text()
    }

    /// A form, from a page of the server.
    pub(crate) fn post(&self, path: &str, fields: &[(&str, &str)]) -> Answer {
        let body: Vec<String> = fields
            .iter()
            .map(|(name, value)| format!("{}={}", coded(name), coded(value)))
            .collect();
        let origin = format!("http://{}", self.host);
        let form = ("Content-Type", "application/x-www-form-urlencoded");
        self.send("POST", path, &[("Origin", &origin), form], body.join("&").as_bytes())
    }

    /// A file in a form.
    pub(crate) fn upload(&self, path: &str, file: &[u8]) -> Answer {
        self.upload_with(path, file, &[])
    }

    /// A file with fields beside it.
    pub(crate) fn upload_with(&self, path: &str, file: &[u8], fields: &[(&str, &str)]) -> Answer {
        let origin = format!("http://{}", self.host);
        let mut body = b"--edge\r\nContent-Disposition: form-data; name=\"file\"; \
            filename=\"plan.json\"\r\nContent-Type: application/json\r\n\r\n"
            .to_vec();
        body.extend_from_slice(file);
        for (name, value) in fields {
            let part = format!(
                "\r\n--edge\r\nContent-Disposition: form-data; name=\"{name}\"\r\n\r\n{value}"
            );
            body.extend_from_slice(part.as_bytes());
        }
        body.extend_from_slice(b"\r\n--edge--\r\n");
        let kind = ("Content-Type", "multipart/form-data; boundary=edge");
        self.send("POST", path, &[("Origin", &origin), kind], &body)
    }

    /// Follows a form to the page that shows what came of it.
    pub(crate) fn told(&self, path: &str, fields: &[(&str, &str)]) -> String {
        let answer = self.post(path, fields);
        assert_eq!(answer.status, 303, "{path}: {}", answer.text());
        self.page(answer.header("location").unwrap())
    }

    /// Makes twelve words that open the diary, as they stand on the page, and finds two of them again.
    pub(crate) fn twelve_words(&self) -> Vec<String> {
        let page = self.page("/keeping/phrase");
        let list = page.split("<ol").nth(1).unwrap().split("</ol>").next().unwrap();
        let words: Vec<String> = list
            .split("<li>")
            .skip(1)
            .map(|rest| rest.split('<').next().unwrap().to_owned())
            .collect();
        assert_eq!(words.len(), 12);
        let asked = self.post("/keeping/phrase", &[]);
        // The list is not shown again. (One of its words may well stand elsewhere on the page.)
        assert!(asked.text().contains("name=\"word-3\"") && !asked.text().contains("<ol"));
        let wrong = self.post("/keeping/phrase", &[("word-3", &words[3]), ("word-9", &words[8])]);
        assert_eq!(wrong.status, 422, "a wrong word is noticed");
        self.told("/keeping/phrase", &[("word-3", &words[2]), ("word-9", &words[8])]);
        words
    }

    /// Ends it as the terminal would, and gives what it said on standard error.
    pub(crate) fn stop(mut self) -> (String, TempDir) {
        let id = self.child.id().to_string();
        assert!(Command::new("kill").args(["-INT", &id]).status().unwrap().success());
        assert!(self.child.wait().unwrap().success());
        let mut said = String::new();
        self.child.stderr.take().unwrap().read_to_string(&mut said).unwrap();
        let temporary = std::mem::replace(&mut self.temporary, tempfile::tempdir().unwrap());
        (said, temporary)
    }

    /// Kills it and gives what is left of its temporary folder.
    pub(crate) fn killed(mut self) -> TempDir {
        let temporary = std::mem::replace(&mut self.temporary, tempfile::tempdir().unwrap());
        self.kill();
        temporary
    }

    /// Kills it without a word.
    pub(crate) fn kill(mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// Percent-encoded, all but letters and digits.
pub(crate) fn coded(text: &str) -> String {
    let letter = |byte: u8| match byte {
        b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'-' | b'_' => char::from(byte).to_string(),
        _ => format!("%{byte:02X}"),
    };
    text.bytes().map(letter).collect()
}

/// The hidden fields of the first form of a page that goes to an address.
pub(crate) fn hidden(page: &str, to: &str) -> Vec<(String, String)> {
    let form = page.split("<form ").find(|form| form.contains(&format!("action=\"{to}\"")));
    let form = form.unwrap_or_else(|| panic!("no form to {to}"));
    let form = form.split("</form>").next().unwrap();
    let fields = form.split("type=\"hidden\" name=\"").skip(1);
    fields
        .map(|rest| {
            let (name, rest) = rest.split_once("\" value=\"").unwrap();
            let value = rest.split('"').next().unwrap();
            (name.to_owned(), value.replace("&#34;", "\"").replace("&amp;", "&"))
        })
        .collect()
}

/// The id that the first form to an address carries.
pub(crate) fn id(page: &str, to: &str) -> String {
    let fields = hidden(page, to);
    fields.into_iter().find(|(name, _)| name == "id").expect("an id").1
}
