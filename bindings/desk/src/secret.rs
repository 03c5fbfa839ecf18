//! The passphrase, or the recovery phrase in its place: asked on the terminal, or read from a file or from standard input. Never from the
//! command line, where other programs and the shell's history would see it. Wiped when done with.

use std::fs::File;
use std::io::{IsTerminal, Read};
use std::os::fd::AsFd;
use std::path::{Path, PathBuf};

use clap::Args;
use frond_core::ports::{KeyKeeper, Passphrase, PassphraseKeeper, Stretch};
use frond_core::sealing::{RecoveryKeeper, RecoveryPhrase};
use zeroize::Zeroizing;

use crate::failure::Failure;
use crate::print::Page;

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
    /// Open with the recovery phrase instead, asked on the terminal
    #[arg(long, conflicts_with_all = ["passphrase_file", "passphrase_stdin"])]
    phrase: bool,
    /// Open with the recovery phrase in the first line of this file, which only you may read
    #[arg(long, value_name = "FILE", conflicts_with_all = ["passphrase_file", "passphrase_stdin", "phrase"])]
    phrase_file: Option<PathBuf>,
}

impl SecretArgs {
    /// The keeper for a diary that is there.
    pub(crate) fn keeper(&self) -> Result<Box<dyn KeyKeeper + Send>, Failure> {
        if self.is_phrase() {
            Ok(Box::new(RecoveryKeeper::new(self.recovery_phrase()?)))
        } else {
            Ok(Box::new(self.made(false)?))
        }
    }

    /// Whether the recovery phrase was given in place of the passphrase.
    pub(crate) fn is_phrase(&self) -> bool {
        self.phrase || self.phrase_file.is_some()
    }

    /// The recovery phrase: from its file, or asked.
    pub(crate) fn recovery_phrase(&self) -> Result<RecoveryPhrase, Failure> {
        let typed = match &self.phrase_file {
            Some(path) => from_file(path)?,
            None => typed("Recovery phrase: ")?,
        };
        RecoveryPhrase::parse(&typed).map_err(|error| Failure::input(capital(&error.to_string())))
    }

    /// The keeper for a new diary: typed twice, so that a slip does not lock it for good.
    pub(crate) fn new_keeper(&self) -> Result<PassphraseKeeper, Failure> {
        self.made(true)
    }

    fn made(&self, twice: bool) -> Result<PassphraseKeeper, Failure> {
        let words = match &self.passphrase_file {
            Some(path) => from_file(path)?,
            None if self.passphrase_stdin => from_stdin()?,
            None => asked(twice)?,
        };
        keeper(&words)
    }
}

/// A passphrase from the first line of a file that nobody else may read.
pub(crate) fn passphrase_from_file(path: &Path) -> Result<Passphrase, Failure> {
    passphrase(&from_file(path)?)
}

/// A passphrase asked once.
pub(crate) fn asked_passphrase(prompt: &str) -> Result<Passphrase, Failure> {
    passphrase(&typed(prompt)?)
}

/// A new passphrase for something sealed, typed twice.
pub(crate) fn asked_twice() -> Result<Passphrase, Failure> {
    passphrase(&asked(true)?)
}

/// A keeper with the stretching for real use.
pub(crate) fn keeper(words: &str) -> Result<PassphraseKeeper, Failure> {
    Ok(PassphraseKeeper::new(passphrase(words)?, Stretch::everyday()))
}

/// A passphrase as given.
pub(crate) fn passphrase(words: &str) -> Result<Passphrase, Failure> {
    Passphrase::new(words.to_owned()).map_err(|_| {
        Failure::input(
            "The passphrase is empty. Choose a few words that only you would put together.",
        )
    })
}

/// A new passphrase for a diary that had another: from a file, or typed twice.
pub(crate) fn new_passphrase(file: Option<&Path>) -> Result<PassphraseKeeper, Failure> {
    match file {
        Some(path) => keeper(&from_file(path)?),
        None => {
            Page::new().paragraph("A new passphrase for this diary.").show();
            keeper(&asked(true)?)
        }
    }
}

/// An error's own words, as a sentence.
fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(char::to_uppercase);
    first.into_iter().flatten().chain(letters).chain(['.']).collect()
}

fn typed(prompt: &str) -> Result<Zeroizing<String>, Failure> {
    if !std::io::stdin().is_terminal() {
        return Err(Failure::input(
            "There is no terminal to ask for it. Give --passphrase-file, --passphrase-stdin or \
             --phrase-file.",
        ));
    }
    rpassword::prompt_password(prompt)
        .map(Zeroizing::new)
        .map_err(|_| Failure::Else("It could not be read. Try again.".to_owned()))
}

fn asked(twice: bool) -> Result<Zeroizing<String>, Failure> {
    let words = typed("Passphrase: ")?;
    if twice && *typed("The same passphrase once more: ")? != *words {
        return Err(Failure::input("The two are not the same. Try again; nothing was written."));
    }
    Ok(words)
}

fn from_file(path: &Path) -> Result<Zeroizing<String>, Failure> {
    let name = path.display();
    let failed = |_| Failure::input(format!("{name} cannot be read. Check the name of the file."));
    let file = File::open(path).map_err(failed)?;
    private(path, &file.metadata().map_err(failed)?)?;
    first_line(file)
}

/// Past the buffer of the standard library, which nobody could wipe; what stands behind the line is left to
/// whoever reads on.
fn from_stdin() -> Result<Zeroizing<String>, Failure> {
    let own = std::io::stdin().as_fd().try_clone_to_owned();
    let own = own.map_err(|_| Failure::input("There is no standard input to read from."))?;
    first_line(File::from(own))
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

/// One byte at a time, so that nothing but the buffer here has seen the line.
fn first_line(mut from: impl Read) -> Result<Zeroizing<String>, Failure> {
    let unread = || Failure::input("The passphrase could not be read: one line of UTF-8 text.");
    let mut bytes = Zeroizing::new(Vec::with_capacity(MOST as usize + 1));
    let mut byte = Zeroizing::new([0u8]);
    while bytes.len() as u64 <= MOST {
        match from.read(byte.as_mut_slice()) {
            Ok(0) => break,
            Ok(_) if byte[0] == b'\n' => break,
            Ok(_) => bytes.push(byte[0]),
            Err(error) if error.kind() == std::io::ErrorKind::Interrupted => {}
            Err(_) => return Err(unread()),
        }
    }
    // What was cut off in the middle of a letter is too long before it is no text.
    if bytes.len() as u64 > MOST {
        return Err(Failure::input(format!("A passphrase has at most {MOST} bytes. Shorten it.")));
    }
    let line = std::str::from_utf8(&bytes).map_err(|_| unread())?;
    Ok(Zeroizing::new(line.trim_end_matches('\r').to_owned()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_first_line_is_read_and_the_rest_is_left() {
        let mut given: &[u8] = b"seven invented words\r\nthe next answer\n";
        let line = first_line(&mut given).unwrap_or_else(|failure| panic!("{failure}"));
        assert_eq!(line.as_str(), "seven invented words");
        assert_eq!(given, b"the next answer\n");
        let line = first_line(&b"no end"[..]).unwrap_or_else(|failure| panic!("{failure}"));
        assert_eq!(line.as_str(), "no end");
        assert!(first_line(&b"\xff\n"[..]).is_err());
        let most = usize::try_from(MOST).unwrap();
        assert!(first_line("a".repeat(most).as_bytes()).is_ok());
        assert!(first_line("a".repeat(most + 1).as_bytes()).is_err());
    }
}
