//! Decides how a program of tests is run: some of its tests, one after the other, until the first that fails, and no
//! longer than allowed.

use std::io::{BufRead, BufReader};
use std::os::unix::process::{CommandExt, ExitStatusExt};
use std::process::{Child, Command, Stdio};
use std::sync::mpsc;
use std::time::{Duration, Instant};

use crate::Failure;
use crate::compile::Program;

/// How a run ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ended {
    /// Every test passed.
    Passed,
    /// One failed, or the program broke down.
    Failed,
    /// It went on for too long.
    TooLong,
}

/// How long a run may go on.
#[derive(Clone, Copy, Debug)]
pub struct Limits {
    /// Time of the processor: does not grow when the machine is busy with other things.
    pub computing: Duration,
    /// Time on the wall, for what waits for something that never comes.
    pub waiting: Duration,
}

/// A test may take so much memory, in kilobytes: a mutant that gathers without end is to stop before the machine does.
const MOST_KILOBYTES: u64 = 12_000_000;
/// The signal for too much time of the processor.
const SIGXCPU: i32 = 24;

/// Runs the tests named.
///
/// # Errors
/// Where the program cannot be begun, or ran no test: a name that fits nothing would pass for a test passed.
pub fn run(
    program: &Program,
    tests: &[String],
    environment: &[(&str, String)],
    limits: &Limits,
) -> Result<(Ended, Duration), Failure> {
    let seconds = limits.computing.as_secs() + 1;
    let began = Instant::now();
    let mut child = Command::new("sh")
        .arg("-c")
        .arg(format!("ulimit -c 0; ulimit -t {seconds}; ulimit -v {MOST_KILOBYTES}; exec \"$@\""))
        .arg("sh")
        .arg(&program.path)
        .args(["--exact", "--test-threads=1"])
        .args(tests)
        .current_dir(&program.folder)
        .env("CARGO_MANIFEST_DIR", &program.folder)
        .env("INSTA_WORKSPACE_ROOT", program.folder.parent().unwrap_or(&program.folder))
        .envs([("INSTA_UPDATE", "no"), ("INSTA_FORCE_PASS", "0"), ("RUST_BACKTRACE", "0")])
        // What is found is the same each time, nothing is kept of it, and no time is spent on making it smaller.
        .envs([("PROPTEST_RNG_SEED", "9"), ("PROPTEST_MAX_SHRINK_ITERS", "0")])
        .env("PROPTEST_DISABLE_FAILURE_PERSISTENCE", "true")
        .envs(environment.iter().map(|(name, value)| (name, value)))
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .process_group(0)
        .spawn()?;
    let Some(said) = child.stdout.take() else {
        return Err("nothing can be heard of a test".into());
    };
    let (tell, heard) = mpsc::channel();
    let listener = std::thread::spawn(move || {
        for line in BufReader::new(said).lines().map_while(Result::ok) {
            if tell.send(line).is_err() {
                break;
            }
        }
    });
    let mut ended = None;
    let mut summed_up = false;
    loop {
        match heard.recv_timeout(limits.waiting.saturating_sub(began.elapsed())) {
            Ok(line) if line.starts_with("test ") && line.ends_with("FAILED") => {
                ended = Some(Ended::Failed)
            }
            Ok(line) => {
                summed_up |= line.starts_with(&format!("test result: ok. {} passed", tests.len()))
            }
            Err(mpsc::RecvTimeoutError::Timeout) => ended = Some(Ended::TooLong),
            Err(mpsc::RecvTimeoutError::Disconnected) => break,
        }
        if ended.is_some() {
            break;
        }
    }
    if ended.is_some() {
        end(&mut child);
    }
    let status = child.wait()?;
    drop(heard);
    let _ = listener.join();
    let ended = match ended {
        Some(ended) => ended,
        None if status.success() && summed_up => Ended::Passed,
        None if status.success() => {
            return Err(format!("{}: not every test was run", program.name).into());
        }
        None if status.signal() == Some(SIGXCPU) || status.signal() == Some(9) => Ended::TooLong,
        None => Ended::Failed,
    };
    Ok((ended, began.elapsed()))
}

/// The names of a program's tests; `more` are options for it.
///
/// # Errors
/// Where it does not list them.
pub fn listed(program: &Program, more: &[&str]) -> Result<Vec<String>, Failure> {
    let output = Command::new(&program.path)
        .args(["--list", "--format", "terse"])
        .args(more)
        .current_dir(&program.folder)
        .output()?;
    if !output.status.success() {
        return Err(format!("{} does not list its tests", program.name).into());
    }
    let text = String::from_utf8(output.stdout)?;
    Ok(text.lines().filter_map(|line| line.strip_suffix(": test")).map(str::to_owned).collect())
}

/// Ends a run with whatever it began: its whole group.
fn end(child: &mut Child) {
    let _ = Command::new("kill")
        .args(["-KILL", "--", &format!("-{}", child.id())])
        .stderr(Stdio::null())
        .status();
    let _ = child.kill();
}
