//! `frond hand-over`: a programme is checked, signed with the clinic's key, and written as a file, as a QR
//! code, or both. The words of the key and the words of a sealed code are printed, and stand in no file.

use std::path::Path;

use frond_core::handover::{HandOver, HandOverError, SpokenWords, key_words};
use frond_core::ports::OsRandom;
use frond_core::programme::read::MOST_BYTES;
use frond_core::sealing::ClinicKeys;
use frond_core::sealing::clinic::MOST_BYTES as KEYS_MOST;
use frond_core::words::Words;

use crate::args::HandOverArgs;
use crate::clinic::hand_over::{Code, Says, Way, code};
use crate::failure::{Failure, LANGUAGE};
use crate::file;
use crate::pages::desk::said;
use crate::print::Page;
use crate::secret;

/// Signs, draws, writes.
pub(crate) fn hand_over(args: &HandOverArgs) -> Result<(), Failure> {
    let programme = file::read(&args.programme, MOST_BYTES as u64)?;
    // Before the passphrase is asked for in vain.
    frond_core::programme::check::load(&programme)
        .map_err(|error| Failure::input(error.to_string()))?;
    for path in args.file.iter().chain(&args.qr) {
        if path.exists() {
            return Err(file::is_there(path));
        }
    }
    let way = way(args)?;
    let keys = keys(&args.keys, args)?;
    let follows = keys.follows().last().cloned();
    let handed = HandOver::sign(&programme, &keys, follows).map_err(refused)?;
    let code = match args.qr.is_some() || args.link {
        true => Some(drawn(&handed, &way)?),
        false => None,
    };
    if let Some(path) = &args.file {
        file::write_new(path, &handed.file())?;
    }
    if let (Some(path), Some(code)) = (&args.qr, &code) {
        file::write_new(path, code.svg.as_bytes())?;
    }
    say(args, &handed, code.as_ref(), &way);
    Ok(())
}

fn way(args: &HandOverArgs) -> Result<Way, Failure> {
    if args.open {
        return Ok(Way::Open);
    }
    let words = match &args.words {
        Some(typed) => {
            SpokenWords::parse(typed).map_err(|error| Failure::input(error.to_string()))?
        }
        None => SpokenWords::new(&OsRandom).map_err(|_| {
            Failure::Else("There are no random bytes just now. Try again.".to_owned())
        })?,
    };
    Ok(Way::Sealed(words))
}

/// The keys in the desk's folder, or in a copy of them.
fn keys(path: &Path, args: &HandOverArgs) -> Result<ClinicKeys, Failure> {
    let path = if path.is_dir() { path.join("keys") } else { path.to_path_buf() };
    let sealed = file::read(&path, KEYS_MOST)?;
    let passphrase = match &args.passphrase_file {
        Some(path) => secret::passphrase_from_file(path)?,
        None => secret::asked_passphrase("Passphrase of the keys: ")?,
    };
    ClinicKeys::open(&sealed, passphrase).map_err(|error| Failure::input(error.to_string()))
}

fn drawn(handed: &HandOver, way: &Way) -> Result<Code, Failure> {
    let words = Words::for_language(LANGUAGE);
    let (title, description) = said(&words, way);
    let says = Says { title: &title, description: &description };
    code(handed, way, &says, &OsRandom).map_err(refused)
}

fn refused(error: HandOverError) -> Failure {
    match error {
        HandOverError::NoRoom => Failure::Else(error.to_string()),
        error => Failure::input(error.to_string()),
    }
}

fn say(args: &HandOverArgs, handed: &HandOver, code: Option<&Code>, way: &Way) {
    let plan = handed.programme();
    let mut page = Page::new();
    page.title("Hand over").paragraph(&format!(
        "Signed: the programme {}, revision {}, for {}.",
        plan.id,
        plan.revision.get(),
        plan.for_whom
    ));
    page.paragraph(&format!("The words of your key: {}", key_words(&handed.key()).join(" ")));
    page.paragraph("Give them on paper or by phone, so that she can compare them.");
    if let Some(path) = &args.file {
        page.paragraph(&format!("The signed file: {}", path.display()));
    }
    if let Some(code) = code {
        page.gap();
        if let Some(path) = &args.qr {
            page.paragraph(&format!("The code, version {}: {}", code.version, path.display()));
        }
        match way {
            Way::Sealed(words) => {
                let words: Vec<&str> = words.words().collect();
                page.paragraph(&format!("The words that open the code: {}", words.join(" ")));
                page.paragraph("Say them to her. Do not write them on the same sheet.");
            }
            Way::Open => {
                page.paragraph("It is open: whoever sees the code can read the plan.");
            }
        }
    }
    page.show();
    if let (true, Some(code)) = (args.link, code) {
        println!("{}", code.link);
    }
}
