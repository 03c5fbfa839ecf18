//! The most memory a process takes that opens a diary of ten years, hands over its summary, or opens a sealed
//! one. Each is done in a process of its own, and what the system says of its peak is printed. The key
//! stretching is left out here: it takes 64 MiB by design, before the diary is opened and not beside it.
//! Everything told is invented.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::Arc;

use frond_core::companion::{Companion, Ports, Request, Told, Write};
use frond_core::moment::{Moment, Stamp};
use frond_core::ports::{NoMarks, OsRandom, Passphrase, RealDisk};
use frond_core::sealing::{Identity, OpenWith, RecoveryPhrase, SealTo, seal_into};
use frond_core::summary::{Selection, TimeAlone, open_summary};
use frond_tests::home::{PLAN, keeper, session, stamp};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";
const ENTRIES: u32 = 11_000;
const WORDS: &str = "legal winner thank year wave sausage worth useful legal winner thank yellow";

fn ports() -> Ports {
    Ports { disk: Arc::new(RealDisk), random: Arc::new(OsRandom), marks: Arc::new(NoMarks) }
}

fn at(number: u32) -> Moment {
    let start = stamp(START);
    let millis = start.millis() + i64::from(number) * 8 * 60 * 60 * 1000;
    Moment::at(Stamp::from_millis(millis, *start.local().offset(), start.zone()).unwrap())
}

fn live(folder: &Path) {
    let mut companion = Companion::start(&ports(), folder, &keeper(), "en").ok().unwrap();
    let plan = PLAN.replace("2026-12-31", "2046-12-31");
    for number in 0..ENTRIES {
        let told = match number {
            0 => Told::unsigned(plan.as_str()),
            1 => Told::ConfirmStep,
            _ => Told::Session(session(140, 8, Some(u8::try_from(number % 5).unwrap()))),
        };
        let id = companion.new_id().unwrap();
        let write = Write { id, happened: None, told };
        companion.ask(Request::Write(write), &at(number)).ok().unwrap();
    }
    companion.save().ok().unwrap();
}

fn opened(folder: &Path) -> Companion {
    Companion::open(&ports(), folder, &keeper(), "en", &at(ENTRIES)).ok().unwrap()
}

fn identity() -> Identity {
    RecoveryPhrase::parse(WORDS).unwrap().identity().clone()
}

fn play(role: &str, base: &Path) {
    let folder = base.join("diary");
    match role {
        "live" => live(&folder),
        "nothing" => {}
        "open" => {
            let mut companion = opened(&folder);
            assert!(companion.ask(Request::Today, &at(ENTRIES)).is_ok());
        }
        "open without a snapshot" => {
            std::fs::remove_file(folder.join("snapshot")).unwrap();
            let mut companion = opened(&folder);
            assert!(companion.ask(Request::Today, &at(ENTRIES)).is_ok());
            companion.save().ok().unwrap();
        }
        "back up" => opened(&folder).back_up(&at(ENTRIES).now).ok().unwrap(),
        "export, sealed to a key" | "export, sealed with a passphrase" => {
            let companion = opened(&folder);
            let to = if role.ends_with("key") {
                SealTo::Recipients(vec![identity().recipient()])
            } else {
                SealTo::Passphrase(Passphrase::new(WORDS.to_owned()).unwrap())
            };
            // In the order in which a phone does it.
            let file = seal_into(Vec::new(), &to).unwrap();
            let summary = companion.summary(&Selection::default(), &at(ENTRIES).now).ok().unwrap();
            let sealed = summary.sealed_into(&companion.identity(), file, TimeAlone::NotAsked);
            let name = if role.ends_with("key") { "key.age" } else { "passphrase.age" };
            std::fs::write(base.join(name), sealed.unwrap()).unwrap();
        }
        "unseal with a key" => {
            let sealed = std::fs::read(base.join("key.age")).unwrap();
            let with = OpenWith::Identities(vec![identity()]);
            assert!(open_summary(&sealed, Some(&with)).is_ok());
        }
        "unseal with a passphrase" => {
            let sealed = std::fs::read(base.join("passphrase.age")).unwrap();
            let with = OpenWith::Passphrase(Passphrase::new(WORDS.to_owned()).unwrap());
            assert!(open_summary(&sealed, Some(&with)).is_ok());
        }
        other => panic!("no such part: {other}"),
    }
}

/// The peak of this process in KiB, as Linux says it.
fn peak() -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap();
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:")).unwrap();
    line.trim().trim_end_matches(" kB").parse().unwrap()
}

fn main() {
    let mut given = std::env::args().skip(1);
    if let (Some("part"), Some(role), Some(base)) =
        (given.next().as_deref(), given.next(), given.next())
    {
        play(&role, &PathBuf::from(base));
        println!("{}", peak());
        return;
    }
    let base = tempfile::tempdir().unwrap();
    let run = |role: &str| {
        let out = Command::new(std::env::current_exe().unwrap())
            .args(["part", role])
            .arg(base.path())
            .output()
            .unwrap();
        assert!(out.status.success(), "{}", String::from_utf8_lossy(&out.stderr));
        String::from_utf8_lossy(&out.stdout).trim().parse::<u64>().unwrap()
    };
    run("live");
    for role in [
        "nothing",
        "open",
        "open without a snapshot",
        "back up",
        "export, sealed to a key",
        "export, sealed with a passphrase",
        "unseal with a key",
        "unseal with a passphrase",
    ] {
        println!("{role:36} {:6.1} MB", (run(role) as f64) * 1024.0 / 1e6);
    }
}
