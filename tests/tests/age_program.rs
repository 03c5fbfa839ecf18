//! Our sealed files and the independent program `age` (Debian's package): each opens what the other
//! sealed.

use frond_core::ports::Passphrase;
use frond_core::sealing::{OpenWith, RecoveryPhrase, SealTo, open, seal};
use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};

const PLAIN: &[u8] = b"invented: nothing of anybody";
const WORDS: &str = "invented words that open";

fn installed() {
    let found = Command::new("age").arg("--version").output().is_ok_and(|out| out.status.success());
    assert!(found, "the program `age` is missing; install it with: sudo apt-get install age");
}

fn phrase() -> RecoveryPhrase {
    let words = "legal winner thank year wave sausage worth useful legal winner thank yellow";
    RecoveryPhrase::parse(words).unwrap()
}

fn age(folder: &Path, args: &[&str]) {
    let out = Command::new("age").args(args).current_dir(folder).output().unwrap();
    assert!(out.status.success(), "{}", String::from_utf8_lossy(&out.stderr));
}

/// The program asks for a passphrase on a terminal only: `script` gives it one.
fn age_typing(folder: &Path, command: &str, typed: &str) {
    let mut script = Command::new("script")
        .args(["-q", "-e", "-c", command, "/dev/null"])
        .current_dir(folder)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("the program `script` is missing; install it with: sudo apt-get install bsdutils");
    script.stdin.take().unwrap().write_all(typed.as_bytes()).unwrap();
    let out = script.wait_with_output().unwrap();
    assert!(out.status.success(), "{}", String::from_utf8_lossy(&out.stdout));
}

#[test]
fn a_file_sealed_to_a_phrase_opens_in_the_program_and_back() {
    installed();
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name);
    std::fs::write(at("key.txt"), phrase().identity().to_text().as_bytes()).unwrap();
    let to = SealTo::Recipients(vec![phrase().recipient()]);
    std::fs::write(at("ours.age"), seal(PLAIN, &to).unwrap()).unwrap();
    age(folder.path(), &["-d", "-i", "key.txt", "-o", "ours.txt", "ours.age"]);
    assert_eq!(std::fs::read(at("ours.txt")).unwrap(), PLAIN);

    std::fs::write(at("plain"), PLAIN).unwrap();
    let public = phrase().recipient().to_string();
    let with = OpenWith::Identities(vec![phrase().identity().clone()]);
    for armor in [false, true] {
        let mut args = vec!["-r", &public, "-o", "theirs.age", "plain"];
        if armor {
            args.insert(0, "-a");
        }
        age(folder.path(), &args);
        let theirs = std::fs::read(at("theirs.age")).unwrap();
        assert_eq!(theirs.starts_with(b"-----BEGIN"), armor);
        assert_eq!(open(&theirs, &with, 100).unwrap().as_slice(), PLAIN);
    }
}

#[test]
fn a_file_sealed_with_a_passphrase_opens_in_the_program_and_back() {
    installed();
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name);
    let words = || Passphrase::new(WORDS.to_owned()).unwrap();
    std::fs::write(at("ours.age"), seal(PLAIN, &SealTo::Passphrase(words())).unwrap()).unwrap();
    age_typing(folder.path(), "age -d -o ours.txt ours.age", &format!("{WORDS}\n"));
    assert_eq!(std::fs::read(at("ours.txt")).unwrap(), PLAIN);

    // The program stretches with 2^18, the most we open.
    std::fs::write(at("plain"), PLAIN).unwrap();
    age_typing(folder.path(), "age -p -o theirs.age plain", &format!("{WORDS}\n{WORDS}\n"));
    let theirs = std::fs::read(at("theirs.age")).unwrap();
    assert_eq!(open(&theirs, &OpenWith::Passphrase(words()), 100).unwrap().as_slice(), PLAIN);
}

#[test]
fn a_copy_for_elsewhere_opens_in_the_program() {
    installed();
    let folder = tempfile::tempdir().unwrap();
    let copy = Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/copies-v1/copy.age");
    let paper =
        frond_core::sealing::RecoveryPhrase::new(&frond_core::ports::sim::SeededRandom::new(77));
    let key = paper.unwrap().identity().to_text();
    std::fs::write(folder.path().join("key.txt"), key.as_bytes()).unwrap();
    let copy = copy.display().to_string();
    age(folder.path(), &["-d", "-i", "key.txt", "-o", "plain", &copy]);
    let plain = std::fs::read_to_string(folder.path().join("plain")).unwrap();
    let lines: Vec<serde_json::Value> =
        plain.trim_end().lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    assert_eq!(lines[0]["form"], "frond-copy");
    assert_eq!(lines.len(), 1 + 6);
    assert_eq!(lines[6]["what"]["text"], "an invented question");
}
