//! A cabinet of many summaries, through the desk program as a browser would use it, beside Python's `json` reading
//! the same open files by turns in the same run. `cargo bench -p frond-tests --bench cabinet -- [N [ROUNDS]] [FOLDER]`;
//! N is 10,000 unless told otherwise; a folder of open summaries may be given instead. The program has to be built before: `cargo build --release -p frond`.
//!
//! Every summary is invented.

use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use frond_tests::invented::Invented;
use frond_tests::lives::dice::Dice;

const SEED: u64 = 20_261_125;
const PASSPHRASE: &str = "invented+words+of+a+bench";

/// A running desk.
struct Desk {
    child: Child,
    host: String,
    cookie: String,
}

impl Desk {
    fn start(program: &Path, folder: &Path) -> Self {
        let mut child = Command::new(program)
            .args(["desk", "--no-open", "--folder"])
            .arg(folder)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("the program is built: cargo build --release -p frond");
        let mut line = String::new();
        BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
        let rest = line.trim_end().strip_prefix("http://").expect("an address").to_owned();
        let (host, token) = rest.split_once("/?enter=").unwrap();
        let mut desk = Self { child, host: host.to_owned(), cookie: String::new() };
        let (_, head, _) = desk.send("GET", &format!("/?enter={token}"), "");
        let cookie = head.lines().find_map(|line| line.strip_prefix("set-cookie: ")).unwrap();
        desk.cookie = cookie.split(';').next().unwrap().to_owned();
        desk
    }

    fn send(&self, method: &str, path: &str, body: &str) -> (u16, String, String) {
        let mut stream = TcpStream::connect(&self.host).unwrap();
        let head = format!(
            "{method} {path} HTTP/1.1\r\nHost: {host}\r\nOrigin: http://{host}\r\nCookie: {}\r\n\
             Connection: close\r\nContent-Type: application/x-www-form-urlencoded\r\n\
             Content-Length: {}\r\n\r\n{body}",
            self.cookie,
            body.len(),
            host = self.host
        );
        stream.write_all(head.as_bytes()).unwrap();
        let mut answer = Vec::new();
        stream.read_to_end(&mut answer).unwrap();
        let answer = String::from_utf8_lossy(&answer);
        let (head, body) = answer.split_once("\r\n\r\n").unwrap();
        let status = head.split(' ').nth(1).unwrap().parse().unwrap();
        (status, head.to_owned(), body.to_owned())
    }

    fn get(&self, path: &str) -> String {
        let (status, head, body) = self.send("GET", path, "");
        assert_eq!(status, 200, "{path}: {head}");
        body
    }

    fn post(&self, path: &str, body: &str) {
        let (status, head, body) = self.send("POST", path, body);
        assert_eq!(status, 303, "{path}: {head} {body}");
    }

    /// Waits for the end of long work.
    fn until_done(&self, path: &str) -> String {
        loop {
            let page = self.get(path);
            if !page.contains("<progress") {
                return page;
            }
            std::thread::sleep(Duration::from_millis(20));
        }
    }

    /// The most memory it took, in MB.
    fn peak(&self) -> u64 {
        let status = std::fs::read_to_string(format!("/proc/{}/status", self.child.id()));
        let status = status.unwrap_or_default();
        let line = status.lines().find(|line| line.starts_with("VmHWM")).unwrap_or("0 0");
        line.split_whitespace().nth(1).unwrap().parse::<u64>().unwrap() / 1000
    }

    fn stop(mut self) -> u64 {
        let peak = self.peak();
        let id = self.child.id().to_string();
        assert!(Command::new("kill").args(["-INT", &id]).status().unwrap().success());
        self.child.wait().unwrap();
        peak
    }
}

#[allow(clippy::disallowed_methods, reason = "elapsed time is what is measured")]
fn timed<T>(act: impl FnOnce() -> T) -> (Duration, T) {
    let began = Instant::now();
    let done = act();
    (began.elapsed(), done)
}

/// Python's `json` over the same open files, as its fastest plain use: read, parse, count the entries.
fn python(files: &Path) -> Duration {
    let text = "import json,os,sys,time\nd=sys.argv[1]\nt=time.perf_counter()\nn=0\n\
        for f in sorted(os.listdir(d)):\n    with open(os.path.join(d,f),'rb') as o: \
        n+=len(json.load(o)['summary']['entries'])\nprint(time.perf_counter()-t,n)";
    let output = Command::new("python3").args(["-c", text]).arg(files).output().unwrap();
    assert!(output.status.success(), "python3 is needed");
    let said = String::from_utf8(output.stdout).unwrap();
    Duration::from_secs_f64(said.split_whitespace().next().unwrap().parse().unwrap())
}

fn main() {
    let numbers: Vec<u64> = std::env::args().filter_map(|arg| arg.parse().ok()).collect();
    let many = numbers.first().copied().unwrap_or(10_000);
    let rounds = numbers.get(1).copied().unwrap_or(3);
    let own = std::env::current_exe().unwrap();
    let target = own.ancestors().nth(2).unwrap();
    let program: PathBuf = target.join("frond");
    let room = tempfile::tempdir().unwrap();
    let folder = room.path().join("desk");
    // A folder written before by the example `invented_cabinet`, or one of our own.
    let given = std::env::args().skip(1).map(PathBuf::from).find(|path| path.is_dir());
    let files = given.clone().unwrap_or_else(|| room.path().join("open"));
    if given.is_none() {
        std::fs::create_dir(&files).unwrap();
        for number in 0..many {
            let name = format!("record-{number:05}.json");
            std::fs::write(files.join(name), Invented::new(number, SEED).open_file()).unwrap();
        }
    }
    let mut bytes = 0_u64;
    let mut diaries = Vec::new();
    for entry in std::fs::read_dir(&files).unwrap() {
        let text = std::fs::read_to_string(entry.unwrap().path()).unwrap();
        bytes += text.len() as u64;
        let diary = text.split("\"diary\":\"").nth(1).unwrap();
        diaries.push(diary.split('"').next().unwrap().to_owned());
    }
    let many = diaries.len();
    println!(
        "{many} summaries, {} MB open, {:.0} kB each",
        bytes / 1_000_000,
        bytes as f64 / many as f64 / 1000.0
    );

    let desk = Desk::start(&program, &folder);
    desk.post("/first", &format!("new={PASSPHRASE}&again={PASSPHRASE}"));
    let path = files.to_str().unwrap().replace('/', "%2F");
    let (brought, page) = timed(|| {
        desk.post("/bring", &format!("path={path}"));
        desk.until_done("/bring/now")
    });
    assert!(!page.contains("Not taken in"), "{page}");
    println!(
        "bringing them in, each sealed and synced: {:.1} s, {:.2} ms each; peak {} MB",
        brought.as_secs_f64(),
        brought.as_secs_f64() * 1000.0 / many as f64,
        desk.stop()
    );

    let (mut by_python, mut first, mut later) = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..rounds {
        by_python.push(python(&files));
        std::fs::remove_dir_all(folder.join("index")).unwrap();
        let desk = Desk::start(&program, &folder);
        desk.post("/open", &format!("passphrase={PASSPHRASE}"));
        let (time, _) = timed(|| {
            desk.get("/people");
            desk.until_done("/bring/now")
        });
        first.push(time);
        println!("  first opening {:.2} s, peak {} MB", time.as_secs_f64(), desk.stop());
        let desk = Desk::start(&program, &folder);
        desk.post("/open", &format!("passphrase={PASSPHRASE}"));
        let (time, page) = timed(|| desk.get("/people"));
        assert!(!page.contains("<progress"), "from the index");
        later.push(time);
        println!("  later opening {:.0} ms, peak {} MB", time.as_secs_f64() * 1000.0, desk.stop());
    }
    let median = |times: &mut Vec<Duration>| {
        times.sort();
        times[times.len() / 2].as_secs_f64()
    };
    let (python, first, later) = (median(&mut by_python), median(&mut first), median(&mut later));
    println!(
        "python json: {python:.2} s; first opening {first:.2} s ({:.2} of it); later opening {later:.3} s ({:.4} of it)",
        first / python,
        later / python
    );

    let desk = Desk::start(&program, &folder);
    desk.post("/open", &format!("passphrase={PASSPHRASE}"));
    desk.get("/people");
    let mut dice = Dice::new(SEED);
    let mut pages: Vec<Duration> = (0..500)
        .map(|_| {
            let diary = dice.pick(&diaries);
            timed(|| desk.get(&format!("/people/{diary}"))).0
        })
        .collect();
    let mut lists: Vec<Duration> = (0..50).map(|_| timed(|| desk.get("/people")).0).collect();
    pages.sort();
    lists.sort();
    let ms = |time: Duration| time.as_secs_f64() * 1000.0;
    println!(
        "visit page: median {:.1} ms, p99 {:.1} ms; list: median {:.1} ms, p99 {:.1} ms",
        ms(pages[250]),
        ms(pages[495]),
        ms(lists[25]),
        ms(lists[49])
    );
    let rule = include_str!("../../bindings/desk/src/scenario/another-rule.json");
    let coded: String = rule.bytes().map(|byte| format!("%{byte:02X}")).collect();
    let (tried, _) = timed(|| {
        desk.post("/rules", &format!("text={coded}"));
        desk.until_done("/rules/now")
    });
    println!("another rule over all: {:.1} s; peak {} MB", tried.as_secs_f64(), desk.stop());
}
