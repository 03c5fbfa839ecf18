//! A diary in a temporary folder, and the built program.

use std::fs;
use std::os::unix::fs::PermissionsExt;
use std::path::{Path, PathBuf};
use std::process::Output;

use assert_cmd::Command;
use tempfile::TempDir;

pub(crate) const DEMO_PASSPHRASE: &str = "kettle orchard invented lantern";
/// The last evening of the invented story.
pub(crate) const DEMO_END: &str = "2026-05-10T19:28:00+01:00[Europe/London]";

/// The program, told nothing by the environment.
pub(crate) fn frond() -> Command {
    let mut command = Command::cargo_bin("frond").unwrap();
    command.env_clear().env("TZ", "Europe/London");
    command
}

/// Runs with arguments.
pub(crate) fn run(args: &[&str]) -> Output {
    frond().args(args).output().unwrap()
}

/// What a run that went well printed.
pub(crate) fn said(output: &Output) -> String {
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout.clone()).unwrap()
}

/// What a refused run said; checks the exit code and that nothing went to standard output.
pub(crate) fn refused(output: &Output, code: i32) -> String {
    assert_eq!(output.status.code(), Some(code), "{}", String::from_utf8_lossy(&output.stderr));
    assert_eq!(String::from_utf8_lossy(&output.stdout), "");
    String::from_utf8(output.stderr.clone()).unwrap()
}

/// A diary kept by commands alone.
pub(crate) struct Diary {
    pub(crate) base: TempDir,
    pub(crate) folder: PathBuf,
    secret: PathBuf,
}

impl Diary {
    /// Where a diary will be, with its passphrase in a private file.
    pub(crate) fn place() -> Self {
        let base = tempfile::tempdir().unwrap();
        let (folder, secret) = (base.path().join("diary"), base.path().join("secret"));
        write_private(&secret, "some invented words\n");
        Self { base, folder, secret }
    }

    /// The command, at a time on a day in March 2026.
    pub(crate) fn command(&self, now: &str, args: &[&str]) -> Command {
        let mut command = frond();
        command.args(args);
        command.arg("--diary").arg(&self.folder);
        command.arg("--passphrase-file").arg(&self.secret);
        command.args(["--now", &format!("2026-03-{now}:00+00:00[Europe/London]")]);
        command
    }

    /// Runs it.
    pub(crate) fn run(&self, now: &str, args: &[&str]) -> Output {
        self.command(now, args).output().unwrap()
    }

    /// Runs it; it has to go well.
    pub(crate) fn say(&self, now: &str, args: &[&str]) -> String {
        said(&self.run(now, args))
    }

    /// Every byte in the folder.
    pub(crate) fn bytes(&self) -> Vec<(String, Vec<u8>)> {
        bytes_of(&self.folder)
    }

    /// The scenario's first programme, as a file.
    pub(crate) fn programme(&self) -> String {
        let file = self.base.path().join("programme.json");
        let text = include_str!("../../src/scenario/programme-1.json");
        fs::write(&file, text).unwrap();
        file.display().to_string()
    }
}

/// Names and contents of every file in a folder and the folders in it.
pub(crate) fn bytes_of(folder: &Path) -> Vec<(String, Vec<u8>)> {
    fn collect(folder: &Path, inner: &Path, files: &mut Vec<(String, Vec<u8>)>) {
        for path in fs::read_dir(inner).unwrap().map(|entry| entry.unwrap().path()) {
            if path.is_dir() {
                collect(folder, &path, files);
            } else {
                let name = path.strip_prefix(folder).unwrap().display().to_string();
                files.push((name, fs::read(path).unwrap()));
            }
        }
    }
    let mut files = Vec::new();
    collect(folder, folder, &mut files);
    files.sort();
    files
}

/// A file that only its owner may read.
pub(crate) fn write_private(path: &Path, text: &str) {
    fs::write(path, text).unwrap();
    mode(path, 0o600);
}

/// Sets the permissions of a file.
pub(crate) fn mode(path: &Path, mode: u32) {
    fs::set_permissions(path, fs::Permissions::from_mode(mode)).unwrap();
}
