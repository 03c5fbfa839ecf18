//! What the tests of the border share: a keeper that lives in memory and can be made to fail, a moment, and
//! values that go over the border and back.

#![allow(dead_code, reason = "each test file uses its own part")]

use std::collections::HashMap;
use std::path::Path;
use std::sync::{Arc, Mutex};

use frond_core::screens::Covered;
use frond_core::whole::WholeRequest;
use frond_mobile::UniFfiTag;
use frond_mobile::frond::Frond;
use frond_mobile::keeper::{KeeperTrouble, KeyKeeper};
use frond_mobile::moment::Moment;
use uniffi::{Lift, Lower};

/// How the keeper of a test behaves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Behaves {
    Well,
    Fails(KeeperTrouble),
    Panics,
    /// It gives back a key that is none.
    Garbles,
}

/// What a panic of the test's keeper says. It must be seen nowhere.
pub const SECRET: &str = "at frond.home.Keys.unwrap(Keys.kt:42) secret stack";

/// Keeps keys in memory. It hides nothing: it stands for a phone's key store only in what it answers.
pub struct MemoryKeeper {
    pub behaves: Mutex<Behaves>,
    marks: Mutex<HashMap<Vec<u8>, Vec<u8>>>,
    pub during: Mutex<Option<Box<dyn Fn() + Send>>>,
}

impl MemoryKeeper {
    pub fn new() -> Arc<Self> {
        Arc::new(Self {
            behaves: Mutex::new(Behaves::Well),
            marks: Mutex::default(),
            during: Mutex::new(None),
        })
    }

    pub fn behave(&self, how: Behaves) {
        *self.behaves.lock().unwrap() = how;
    }

    fn answer(&self, bytes: &[u8]) -> Result<Vec<u8>, KeeperTrouble> {
        if let Some(during) = &*self.during.lock().unwrap() {
            during();
        }
        let how = *self.behaves.lock().unwrap();
        match how {
            Behaves::Well => Ok(bytes.iter().map(|byte| byte ^ 0x5A).collect()),
            Behaves::Fails(trouble) => Err(trouble),
            Behaves::Panics => panic!("{SECRET}"),
            Behaves::Garbles => Ok(vec![1, 2, 3]),
        }
    }
}

impl KeyKeeper for MemoryKeeper {
    fn wrap(&self, key: Vec<u8>) -> Result<Vec<u8>, KeeperTrouble> {
        self.answer(&key)
    }
    fn unwrap(&self, wrap: Vec<u8>) -> Result<Vec<u8>, KeeperTrouble> {
        self.answer(&wrap)
    }
    fn keep_only(&self, _: Vec<u8>) -> Result<(), KeeperTrouble> {
        Ok(())
    }
    fn forget(&self) -> Result<(), KeeperTrouble> {
        Ok(())
    }
    fn keep_mark(&self, diary: Vec<u8>, mark: Vec<u8>) -> Result<(), KeeperTrouble> {
        self.marks.lock().unwrap().insert(diary, mark);
        Ok(())
    }
    fn kept_mark(&self, diary: Vec<u8>) -> Result<Option<Vec<u8>>, KeeperTrouble> {
        Ok(self.marks.lock().unwrap().get(&diary).cloned())
    }
    fn forget_mark(&self, diary: Vec<u8>) -> Result<(), KeeperTrouble> {
        self.marks.lock().unwrap().remove(&diary);
        Ok(())
    }
}

/// Sunday 1 March 2026, nine in the morning in Madrid, and so many minutes later.
pub fn moment(minutes: i64) -> Moment {
    Moment {
        wall_millis: 1_772_352_000_000 + minutes * 60_000,
        zone: "Europe/Madrid".to_owned(),
        offset_minutes: 60,
        boot: 7,
        elapsed_millis: 1_000_000 + u64::try_from(minutes).unwrap() * 60_000,
    }
}

/// Frond in a folder of its own, in English.
pub fn frond(folder: &Path, keeper: Arc<MemoryKeeper>) -> Arc<Frond> {
    let folder = folder.join("diary").to_str().unwrap().to_owned();
    Frond::new(folder, "en".to_owned(), Covered::default(), keeper).unwrap()
}

/// The same with a diary that was just started.
pub fn started(folder: &Path, keeper: Arc<MemoryKeeper>) -> Arc<Frond> {
    let frond = frond(folder, keeper);
    frond.whole(WholeRequest::StartNew, moment(0)).unwrap();
    frond
}

/// A value as it leaves the core.
pub fn lowered<T: Lower<UniFfiTag>>(value: T) -> Vec<u8> {
    let mut bytes = Vec::new();
    T::write(value, &mut bytes);
    bytes
}

/// What comes in as these bytes.
pub fn lifted<T: Lift<UniFfiTag>>(bytes: &[u8]) -> uniffi::Result<T> {
    let mut rest = bytes;
    let value = T::try_read(&mut rest)?;
    assert!(rest.is_empty(), "something was left over");
    Ok(value)
}
