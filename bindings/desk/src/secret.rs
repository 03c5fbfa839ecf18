//! The passphrase: asked on the terminal, or read from a file or from standard input. Never from the
//! command line, where other programs and the shell's history would see it. Wiped when done with.

use std::io::{BufRead, IsTerminal};
use std::path::{Path, PathBuf};

use clap::Args;
use frond_core::ports::{Passphrase, PassphraseKeeper, Stretch};
use zeroize::Zeroizing;

use crate::failure::Failure;

/// The longest passphrase, in bytes.
const MOST: u64 = 1024;

/// Where the passphrase comes from. Without either it is asked on the terminal.
#[derive(Args, Clone)]
pub(crate) struct SecretArgs {
    /// Read the passphrase from the first line of this file, which only you may read (chmod 600)
    #[arg(long, value_name = "FILE", conflicts_with = "passphrase_stdin")]
    passphrase_file: Option<PathBuf>,
    /// Read the passphrase from the first line of standard input
    #[arg(long)]
    passphrase_stdin: bool,
}

impl SecretArgs {
    /// The keeper for a diary that is there.
    pub(crate) fn keeper(&self) -> Result<PassphraseKeeper, Failure> {
        self.made(false)
    }

    /// The keeper for a new diary: typed twice, so that a slip does not lock it for good.
    pub(crate) fn new_keeper(&self) -> Result<PassphraseKeeper, Failure> {
        self.made(true)
    }

    fn made(&self, twice: bool) -> Result<PassphraseKeeper, Failure> {
        let words = match &self.passphrase_file {
            Some(path) => from_file(path)?,
            None if self.passphrase_stdin => first_line(std::io::stdin().lock())?,
            None => asked(twice)?,
        };
        keeper(&words)
    }
}

/// A passphrase from the first line of a file that nobody else may read.
pub(crate) fn passphrase_from_file(path: &Path) -> Result<Passphrase, Failure> {
    passphrase(&from_file(path)?)
}

/// A keeper with the stretching for real use.
pub(crate) fn keeper(words: &str) -> Result<PassphraseKeeper, Failure> {
    Ok(PassphraseKeeper::new(passphrase(words)?, Stretch::everyday()))
}

fn passphrase(words: &str) -> Result<Passphrase, Failure> {
    Passphrase::new(words.to_owned()).map_err(|_| {
        Failure::input(
            "The passphrase is empty. Choose a few words that only you would put together.",
        )
    })
}

fn asked(twice: bool) -> Result<Zeroizing<String>, Failure> {
    if !std::io::stdin().is_terminal() {
        return Err(Failure::input(
            "There is no terminal to ask for the passphrase. Give --passphrase-file or \
             --passphrase-stdin.",
        ));
    }
    let typed = |prompt: &str| {
        rpassword::prompt_password(prompt)
            .map(Zeroizing::new)
            .map_err(|_| Failure::Else("The passphrase could not be read. Try again.".to_owned()))
    };
    let words = typed("Passphrase: ")?;
    if twice && *typed("The same passphrase once more: ")? != *words {
        return Err(Failure::input("The two are not the same. Try again; nothing was written."));
    }
    Ok(words)
}

fn from_file(path: &Path) -> Result<Zeroizing<String>, Failure> {
    let name = path.display();
    let failed = |_| Failure::input(format!("{name} cannot be read. Check the name of the file."));
    let file = std::fs::File::open(path).map_err(failed)?;
    private(path, &file.metadata().map_err(failed)?)?;
    first_line(std::io::BufReader::new(file))
}

#[cfg(unix)]
fn private(path: &Path, about: &std::fs::Metadata) -> Result<(), Failure> {
    use std::os::unix::fs::PermissionsExt;
    // Only an ordinary file has permissions to go by; a pipe handed over by the shell is the caller's own.
    if about.is_file() && about.permissions().mode() & 0o077 != 0 {
        let name = path.display();
        return Err(Failure::input(format!(
            "Others may read {name}, so the passphrase in it is not safe. Say: chmod 600 {name}"
        )));
    }
    Ok(())
}

#[cfg(not(unix))]
fn private(_: &Path, _: &std::fs::Metadata) -> Result<(), Failure> {
    Ok(())
}

fn first_line(from: impl BufRead) -> Result<Zeroizing<String>, Failure> {
    let unread = || Failure::input("The passphrase could not be read: one line of UTF-8 text.");
    let mut bytes = Zeroizing::new(Vec::with_capacity(MOST as usize + 1));
    from.take(MOST + 1).read_until(b'\n', &mut bytes).map_err(|_| unread())?;
    let line = std::str::from_utf8(&bytes).map_err(|_| unread())?;
    if line.len() as u64 > MOST {
        return Err(Failure::input(format!("A passphrase has at most {MOST} bytes. Shorten it.")));
    }
    Ok(Zeroizing::new(line.trim_end_matches(['\n', '\r']).to_owned()))
}
