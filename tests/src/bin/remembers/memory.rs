//! A secret that is known without lying anywhere, and the search for it in the process's own memory.

use std::collections::BTreeSet;
use std::error::Error;
use std::fs::{File, read_to_string};
use std::os::unix::fs::FileExt;

use frond_core::ports::{OsRandom, Random};

/// So many bytes of a secret in a row are no chance: 96 bits. Less is what a freed room's own numbers leave of it.
const TELLING: usize = 12;
/// How much is read at once.
const CHUNK: usize = 64 * 1024;

/// A secret, each byte under another one that was drawn: its own bytes stand nowhere in here.
pub struct Masked {
    pub name: &'static str,
    under: Vec<u8>,
    mask: Vec<u8>,
}

impl Masked {
    /// Remembers these bytes without keeping them.
    pub fn of(name: &'static str, bytes: &[u8]) -> Result<Self, Box<dyn Error>> {
        let mut mask = vec![0u8; bytes.len()];
        OsRandom.fill(&mut mask)?;
        let under = bytes.iter().zip(&mask).map(|(byte, mask)| byte ^ mask).collect();
        Ok(Self { name, under, mask })
    }

    /// A text of so many small letters that nobody has seen.
    pub fn drawn(name: &'static str, letters: usize) -> Result<Self, Box<dyn Error>> {
        let mut mask = vec![0u8; letters];
        let mut under = vec![0u8; letters];
        OsRandom.fill(&mut mask)?;
        OsRandom.fill(&mut under)?;
        for (letter, mask) in under.iter_mut().zip(&mask) {
            *letter = (b'a' + *letter % 26) ^ mask;
        }
        Ok(Self { name, under, mask })
    }

    /// The text, in a room that never grew.
    pub fn text(&self) -> String {
        let mut text = String::with_capacity(self.under.len());
        text.extend((0..self.under.len()).map(|at| char::from(self.at(at))));
        text
    }

    fn at(&self, at: usize) -> u8 {
        self.under[at] ^ self.mask[at]
    }

    /// Whether [`TELLING`] bytes of it in a row begin here.
    fn stands_at(&self, bytes: &[u8]) -> bool {
        let Some(window) = bytes.get(..TELLING) else { return false };
        (0..=self.under.len().saturating_sub(TELLING))
            .any(|from| window.iter().enumerate().all(|(at, byte)| *byte == self.at(from + at)))
    }
}

/// How many bytes were looked through, and which secret stands where.
pub fn search(secrets: &[Masked]) -> Result<(usize, BTreeSet<String>), Box<dyn Error>> {
    let maps = read_to_string("/proc/self/maps")?;
    let memory = File::open("/proc/self/mem")?;
    let mut chunk = vec![0u8; CHUNK + TELLING];
    let own = chunk.as_ptr() as usize;
    let own = own..own + chunk.len();
    let (mut looked, mut found) = (0, BTreeSet::new());
    for line in maps.lines() {
        let mut words = line.split_whitespace();
        let (range, rights) = (words.next().unwrap_or_default(), words.next().unwrap_or_default());
        let place = words.nth(3).unwrap_or("[nameless]").to_owned();
        let Some((from, to)) = range.split_once('-') else { continue };
        let (from, to) = (usize::from_str_radix(from, 16)?, usize::from_str_radix(to, 16)?);
        // What cannot be written holds nothing of ours; the system's own pages cannot be read.
        if !rights.starts_with("rw") || place.starts_with("[v") {
            continue;
        }
        let mut at = from;
        while at < to {
            let most = CHUNK.min(to - at);
            let with_more = (most + TELLING - 1).min(to - at);
            let got = memory.read_at(&mut chunk[..with_more], at as u64)?;
            looked += got.min(most);
            for offset in 0..got.min(most) {
                // What was read is no place where it stood.
                if own.contains(&(at + offset)) || own.contains(&(at + offset + TELLING)) {
                    continue;
                }
                for secret in secrets.iter().filter(|own| own.stands_at(&chunk[offset..got])) {
                    found.insert(format!("{} in {place}", secret.name));
                }
            }
            at += most;
        }
    }
    Ok((looked, found))
}
