//! What is done with a secret, each time up to the end: whatever held it is dropped when a case returns.

use std::error::Error;
use std::path::Path;
use std::sync::{Arc, Mutex, PoisonError};

use frond_core::companion::{Companion, Copy, CopyFrom, Ports, Recovery, Request, Told, Write};
use frond_core::moment::Moment;
use frond_core::ports::{
    CodedKeeper, DataKey, KeeperError, KeeperKind, KeyKeeper, NoMarks, OsRandom, Passphrase,
    PassphraseKeeper, Random, RealDisk, Stretch,
};
use frond_core::programme::values::Passage;
use frond_core::sealing::{
    ClinicKeys, Identity, OpenWith, RecoveryKeeper, RecoveryPhrase, SealTo, open, seal,
};

use crate::memory::Masked;

type Secrets = Result<Vec<Masked>, Box<dyn Error>>;

/// Does it, and gives what to look for.
pub fn run(case: &str) -> Secrets {
    let base = Folder::new()?;
    match case {
        "nothing" => Ok(vec![Masked::drawn("a text that was never made", 40)?]),
        "planted" => planted(),
        "passphrase" => passphrase(&base.0),
        "code" => code(&base.0),
        "phrase" => phrase(&base.0),
        "sealed with a passphrase" => sealed(),
        "clinic" => clinic(),
        "note" => note(&base.0),
        other => Err(format!("no such case: {other}").into()),
    }
}

/// A folder that is gone afterwards.
struct Folder(std::path::PathBuf);

impl Folder {
    fn new() -> Result<Self, Box<dyn Error>> {
        let path = std::env::temp_dir().join(format!("frond-remembers-{}", std::process::id()));
        std::fs::create_dir(&path)?;
        Ok(Self(path))
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

fn ports() -> Ports {
    Ports { disk: Arc::new(RealDisk), random: Arc::new(OsRandom), marks: Arc::new(NoMarks) }
}

fn now() -> Result<Moment, Box<dyn Error>> {
    Ok(Moment::at("2026-03-02T08:00:00+00:00[Europe/London]".parse()?))
}

fn went<T, E: std::fmt::Debug>(done: Result<T, E>) -> Result<T, Box<dyn Error>> {
    done.map_err(|error| format!("{error:?}").into())
}

/// A keeper that notes each data key it sees, under a mask, and hands it on.
#[derive(Debug)]
struct Noting<'a> {
    keeper: &'a dyn KeyKeeper,
    seen: Mutex<Vec<Masked>>,
}

impl std::fmt::Debug for Masked {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.name)
    }
}

impl<'a> Noting<'a> {
    fn new(keeper: &'a dyn KeyKeeper) -> Self {
        Self { keeper, seen: Mutex::default() }
    }

    fn note(&self, key: &DataKey) {
        let masked = Masked::of("the data key", key.expose());
        self.seen.lock().unwrap_or_else(PoisonError::into_inner).extend(masked);
    }

    fn seen(self) -> Vec<Masked> {
        self.seen.into_inner().unwrap_or_else(PoisonError::into_inner)
    }
}

impl KeyKeeper for Noting<'_> {
    fn kind(&self) -> KeeperKind {
        self.keeper.kind()
    }

    fn wrap(&self, key: &DataKey, random: &dyn Random) -> Result<Vec<u8>, KeeperError> {
        self.note(key);
        self.keeper.wrap(key, random)
    }

    fn unwrap(&self, wrap: &[u8]) -> Result<DataKey, KeeperError> {
        let key = self.keeper.unwrap(wrap)?;
        self.note(&key);
        Ok(key)
    }
}

/// Begins a diary, writes, closes it, opens it again and closes it.
fn lived(folder: &Path, keeper: &dyn KeyKeeper, note: Option<&str>) -> Result<(), Box<dyn Error>> {
    let diary = folder.join("diary");
    let moment = now()?;
    let mut companion = went(Companion::start(&ports(), &diary, keeper, "en"))?;
    if let Some(note) = note {
        let id = went(companion.new_id())?;
        let told = Told::Question(Passage::new(note)?);
        went(companion.ask(Request::Write(Write { id, happened: None, told }), &moment))?;
    }
    went(companion.ask(Request::Today, &moment))?;
    went(companion.save())?;
    drop(companion);
    let mut companion = went(Companion::open(&ports(), &diary, keeper, "en", &moment))?;
    went(companion.ask(Request::Entries, &moment))?;
    went(companion.back_up(&moment.now))?;
    Ok(())
}

/// What the search has to find: a text that is still there, and one whose room was freed unwiped.
fn planted() -> Secrets {
    let (there, freed) =
        (Masked::drawn("a text that is there", 40)?, Masked::drawn("a text that was freed", 40)?);
    Box::leak(there.text().into_boxed_str());
    // Beside others, so that its room is not given back to the system.
    let rooms: Vec<String> = (0..64).map(|_| freed.text()).collect();
    drop(rooms);
    Ok(vec![there, freed])
}

/// A diary under a passphrase, stretched as for real use.
fn passphrase(folder: &Path) -> Secrets {
    let typed = Masked::drawn("the passphrase", 40)?;
    let keeper = PassphraseKeeper::new(Passphrase::new(typed.text())?, Stretch::everyday());
    let noting = Noting::new(&keeper);
    lived(folder, &noting, None)?;
    let mut secrets = noting.seen();
    secrets.push(typed);
    Ok(secrets)
}

/// A diary under a phone's key and a code.
fn code(folder: &Path) -> Secrets {
    let (phone, code) = (Masked::drawn("the phone's key", 40)?, Masked::drawn("the code", 40)?);
    let keys =
        PassphraseKeeper::new(Passphrase::new(phone.text())?, Stretch::cheap_for_tests_only());
    let helper = Noting::new(&keys);
    let typed = Passphrase::new(code.text())?;
    let keeper = CodedKeeper::new(&helper, Some(&typed), Stretch::everyday());
    let noting = Noting::new(&keeper);
    lived(folder, &noting, None)?;
    let mut secrets = noting.seen();
    drop(typed);
    secrets.extend(helper.seen());
    secrets.extend([phone, code]);
    Ok(secrets)
}

/// Twelve words: made, typed, opening a diary and a copy for elsewhere.
fn phrase(folder: &Path) -> Secrets {
    let phrase = RecoveryPhrase::new(&OsRandom)?;
    let words: Vec<&'static str> = phrase.words().collect();
    let mut joined = String::with_capacity(256);
    for word in &words {
        joined.push_str(word);
        joined.push(' ');
    }
    let typed = Masked::of("the twelve words", joined.trim_end().as_bytes())?;
    zeroize::Zeroize::zeroize(&mut joined);
    let secret = Masked::of("the key of the twelve words", phrase.identity().to_text().as_bytes())?;
    let everyday = Masked::drawn("the passphrase", 40)?;
    let (diary, moment) = (folder.join("diary"), now()?);
    let keeper =
        PassphraseKeeper::new(Passphrase::new(everyday.text())?, Stretch::cheap_for_tests_only());
    let companion = went(Companion::start(&ports(), &diary, &keeper, "en"))?;
    let companion = companion.new_keys(&keeper, Recovery::By(&phrase), &moment);
    let companion = companion.map_err(|_| "no new keys")?;
    let copy = went(companion.copy_for_elsewhere(&moment.now))?;
    drop((companion, phrase));
    // As it is typed again on another phone.
    let again = zeroize::Zeroizing::new(typed.text());
    let again = RecoveryPhrase::parse(&again)?;
    drop(went(Copy::read(&ports(), CopyFrom::Elsewhere { bytes: &copy, phrase: &again }))?);
    let by_phrase = RecoveryKeeper::new(again);
    drop(went(Companion::open(&ports(), &diary, &by_phrase, "en", &moment))?);
    Ok(vec![typed, secret, everyday])
}

/// A summary's way: sealed with a passphrase, opened with it.
fn sealed() -> Secrets {
    let typed = Masked::drawn("the passphrase", 40)?;
    let content = Masked::drawn("what was opened", 400)?;
    let file = {
        let plain = zeroize::Zeroizing::new(content.text());
        seal(plain.as_bytes(), &SealTo::Passphrase(Passphrase::new(typed.text())?))?
    };
    let opened = open(&file, &OpenWith::Passphrase(Passphrase::new(typed.text())?), 4096)?;
    if opened.len() != 400 {
        return Err("another content".into());
    }
    drop(opened);
    Ok(vec![typed, content])
}

/// A clinic's keys: made, kept, opened, changed; a file opened with them.
fn clinic() -> Secrets {
    let typed = Masked::drawn("the passphrase", 40)?;
    let passphrase = || Passphrase::new(typed.text());
    let keys = ClinicKeys::new(&OsRandom)?;
    let seed = Masked::of("the seed that signs", keys.signing().seed().as_slice())?;
    let text =
        zeroize::Zeroizing::new(data_encoding::BASE64.encode(keys.signing().seed().as_slice()));
    let written = Masked::of("the seed as it is written", text.trim_end_matches('=').as_bytes())?;
    drop(text);
    let kept = keys.seal(passphrase()?)?;
    drop(keys);
    let keys = ClinicKeys::open(&kept, passphrase()?)?;
    let OpenWith::Identities(identities) = keys.open_with() else {
        return Err("no identities".into());
    };
    let own: Vec<Masked> = identities
        .iter()
        .map(|one: &Identity| Masked::of("the key that opens", one.to_text().as_bytes()))
        .collect::<Result<_, _>>()?;
    drop(identities);
    let new = keys.renewed(&OsRandom)?;
    drop(keys);
    let kept = new.seal(passphrase()?)?;
    drop(new);
    drop(ClinicKeys::open(&kept, passphrase()?)?);
    Ok(own.into_iter().chain([typed, seed, written]).collect())
}

/// What was written into a diary, after it was closed.
fn note(folder: &Path) -> Secrets {
    let written = Masked::drawn("what she wrote", 60)?;
    let words = Passphrase::new("seven invented words".to_owned())?;
    let keeper = PassphraseKeeper::new(words, Stretch::cheap_for_tests_only());
    let note = zeroize::Zeroizing::new(written.text());
    lived(folder, &keeper, Some(&note))?;
    drop(note);
    Ok(vec![written])
}
