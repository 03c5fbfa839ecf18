//! Which bytes of a file are a documented head, and which are sealed. Decides it from the written form of each file
//! (`core/src/diary/store/FORMAT.md`, C2SP age.md) and shares no code with what writes it; a byte that is neither makes
//! the whole file a fault. Leaves to [`super::chance`] what sealed bytes look like.

use data_encoding::BASE64_NOPAD;

/// What a file has to be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Nothing in it: its name is all.
    Empty,
    /// The wraps and the card of a diary.
    Keys,
    /// The entries.
    Journal,
    /// A backup on the same device.
    Backup,
    /// Keys or a journal, whole, as they were kept aside.
    Aside,
    /// The snapshot, the practice that is running.
    Sealed,
    /// An age file, binary.
    Age,
    /// A value sealed for oneself: nonce, sealed bytes, tag, and no head at all.
    Boxed,
    /// A mark kept outside: numbers, a fingerprint and an id.
    Mark,
    /// How often a code was tried: numbers.
    Tries,
    /// A database of sled: its own numbers, names of files, and boxed values.
    Sled,
}

/// The longest run of readable letters in a database of sled that is none of its own words.
const READABLE: usize = 16;

type Sealed = Result<Vec<u8>, String>;

/// The sealed bytes of a file, one after the other.
///
/// # Errors
/// A byte that is neither sealed nor of a documented head, and where.
pub fn sealed(kind: Kind, bytes: &[u8]) -> Sealed {
    let mut take = Take { all: bytes, at: 0 };
    let mut out = Vec::new();
    match kind {
        Kind::Empty => {}
        Kind::Keys => keys(&mut take, &mut out)?,
        Kind::Journal => journal(&mut take, &mut out)?,
        Kind::Backup => {
            keys(&mut take, &mut out)?;
            out.extend(doubled(&mut take, b"FRB\x1a")?);
            journal(&mut take, &mut out)?;
        }
        Kind::Aside if bytes.starts_with(b"FRK\x1a") => keys(&mut take, &mut out)?,
        Kind::Aside if bytes.starts_with(b"FRS\x1a") => one_sealed(&mut take, &mut out)?,
        Kind::Aside => journal(&mut take, &mut out)?,
        Kind::Sealed => one_sealed(&mut take, &mut out)?,
        Kind::Age => age(&mut take, &mut out)?,
        Kind::Boxed => out.extend_from_slice(take.rest()),
        Kind::Mark => {
            take.is(&[1], "the version of a mark")?;
            take.bytes(16, "how often new keys, how many entries")?;
            out.extend_from_slice(take.bytes(32, "fingerprint and id")?);
            take.bytes(8, "where the entry begins")?;
        }
        Kind::Tries => tries(&mut take)?,
        Kind::Sled => sled(take.rest())?,
    }
    match take.rest() {
        [] => Ok(out),
        more => Err(format!(
            "{} bytes at {} are of no documented part",
            more.len(),
            bytes.len() - more.len()
        )),
    }
}

/// Reads on, and says where something else stands than is documented.
struct Take<'a> {
    all: &'a [u8],
    at: usize,
}

impl<'a> Take<'a> {
    fn bytes(&mut self, count: usize, what: &str) -> Result<&'a [u8], String> {
        let found = self.all.get(self.at..self.at.saturating_add(count));
        let found = found.ok_or_else(|| format!("{what} at {} is cut short", self.at))?;
        self.at += count;
        Ok(found)
    }

    fn is(&mut self, bytes: &[u8], what: &str) -> Result<(), String> {
        let at = self.at;
        if self.bytes(bytes.len(), what)? == bytes {
            Ok(())
        } else {
            Err(format!("at {at} is not {what}"))
        }
    }

    fn number(&mut self, count: usize, what: &str) -> Result<u64, String> {
        Ok(self.bytes(count, what)?.iter().rev().fold(0, |sum, byte| sum << 8 | u64::from(*byte)))
    }

    /// A number that is at most so large: what is stored in its place would be larger.
    fn at_most(&mut self, count: usize, most: u64, what: &str) -> Result<u64, String> {
        let at = self.at;
        let number = self.number(count, what)?;
        if number <= most {
            Ok(number)
        } else {
            Err(format!("{what} at {at} is {number}, above {most}"))
        }
    }

    fn length(&mut self, count: usize, what: &str) -> Result<usize, String> {
        let most = self.all.len() as u64;
        self.at_most(count, most, what)
            .map(|number| usize::try_from(number).expect("within the file"))
    }

    fn rest(&mut self) -> &'a [u8] {
        let rest = &self.all[self.at..];
        self.at = self.all.len();
        rest
    }

    fn zeros(&mut self, count: usize) -> Result<(), String> {
        let at = self.at;
        let zeros = self.bytes(count, "zeros")?;
        if zeros.iter().all(|byte| *byte == 0) {
            Ok(())
        } else {
            Err(format!("not all zeros from {at}"))
        }
    }
}

/// The body of a block that stands twice; the second copy has to be the first once more.
fn doubled<'a>(take: &mut Take<'a>, magic: &[u8]) -> Result<&'a [u8], String> {
    let first = take.bytes(4096, "a block")?;
    take.is(first, "the same block once more")?;
    let mut block = Take { all: first, at: 0 };
    block.is(magic, "what the block is")?;
    block.is(&[1, 0], "format 1")?;
    let length = block.length(2, "length of the body")?;
    let body = block.bytes(length, "the body")?;
    block.zeros(4096 - 4 - block.at)?;
    let sum = block.number(4, "the checksum")?;
    let right = u64::from(crc32c::crc32c(&first[..4092]));
    if sum == right { Ok(body) } else { Err("the checksum of a block is wrong".to_owned()) }
}

fn keys(take: &mut Take<'_>, out: &mut Vec<u8>) -> Result<(), String> {
    let mut body = Take { all: doubled(take, b"FRK\x1a")?, at: 0 };
    for _ in 0..body.at_most(2, 8, "how many wraps")? {
        let keeper = body.number(2, "the keeper")?;
        let length = body.length(2, "length of the wrap")?;
        let mut wrap = Take { all: body.bytes(length, "the wrap")?, at: 0 };
        match keeper {
            1 => by_passphrase(&mut wrap, out)?,
            2 => {
                if wrap.at_most(1, 1, "what opens it")? == 1 {
                    stretched(&mut wrap, out)?;
                }
                // A phone's own wrap; where a passphrase stands in for the phone, that.
                if wrap.all.len() - wrap.at == 101 {
                    by_passphrase(&mut wrap, out)?;
                } else {
                    out.extend_from_slice(wrap.rest());
                }
            }
            3 => age(&mut wrap, out)?,
            other => return Err(format!("keeper {other} is not documented")),
        }
        if !wrap.rest().is_empty() {
            return Err("more stands in a wrap than is documented".to_owned());
        }
    }
    let card = body.length(2, "length of the card")?;
    out.extend_from_slice(body.bytes(card, "the card")?);
    if body.rest().is_empty() {
        Ok(())
    } else {
        Err("more stands in the keys than is documented".to_owned())
    }
}

fn by_passphrase(wrap: &mut Take<'_>, out: &mut Vec<u8>) -> Result<(), String> {
    wrap.is(&[1], "version 1 of a passphrase's wrap")?;
    stretched(wrap, out)
}

/// How it is stretched, salt, nonce, sealed key and tag.
fn stretched(wrap: &mut Take<'_>, out: &mut Vec<u8>) -> Result<(), String> {
    wrap.at_most(4, 256 * 1024, "memory")?;
    wrap.at_most(4, 10, "passes")?;
    wrap.at_most(4, 4, "lanes")?;
    out.extend_from_slice(wrap.bytes(88, "salt, nonce, key and tag")?);
    Ok(())
}

fn journal(take: &mut Take<'_>, out: &mut Vec<u8>) -> Result<(), String> {
    out.extend_from_slice(doubled(take, b"FRJ\x1a")?);
    let mut before = 0;
    while take.all.get(take.at).is_some_and(|byte| *byte != 0) {
        let begins = take.at;
        take.is(b"fr\xf7\x01", "a frame")?;
        let length =
            usize::try_from(take.at_most(4, 256 * 1024, "length of a frame")?).expect("small");
        let place = take.number(8, "the place of an entry")?;
        take.zeros(4)?;
        let sum = take.number(4, "the checksum of a prefix")?;
        if sum != u64::from(crc32c::crc32c(&take.all[begins..begins + 20])) {
            return Err(format!("the checksum of the frame at {begins} is wrong"));
        }
        if place <= before || length < 64 || length % 512 != 0 {
            return Err(format!("place {place} and length {length} of the frame at {begins}"));
        }
        before = place;
        out.extend_from_slice(take.bytes(length - 24, "a sealed entry")?);
    }
    take.zeros(take.all.len() - take.at)
}

fn one_sealed(take: &mut Take<'_>, out: &mut Vec<u8>) -> Result<(), String> {
    take.is(b"FRS\x1a", "a sealed file")?;
    take.is(&[1, 0], "format 1")?;
    take.at_most(2, 7, "what it is for")?;
    let length = take.length(8, "length of what is sealed")?;
    take.number(4, "the checksum")?;
    take.zeros(4)?;
    out.extend_from_slice(take.bytes(24 + length + 16, "nonce, sealed bytes and tag")?);
    Ok(())
}

/// An age file: what of its head is text, and what is drawn by chance.
fn age(take: &mut Take<'_>, out: &mut Vec<u8>) -> Result<(), String> {
    take.is(b"age-encryption.org/v1\n", "the beginning of an age file")?;
    let decoded = |text: &str| {
        BASE64_NOPAD.decode(text.as_bytes()).map_err(|_| format!("{text} is no base64"))
    };
    let line = |take: &mut Take<'_>| {
        let rest = &take.all[take.at..];
        let end = rest
            .iter()
            .position(|byte| *byte == b'\n')
            .ok_or("the head of an age file has no end")?;
        let text = std::str::from_utf8(take.bytes(end + 1, "a line")?)
            .map_err(|_| "no text".to_owned())?;
        Ok::<String, String>(text.trim_end_matches('\n').to_owned())
    };
    loop {
        let head = line(take)?;
        let words: Vec<&str> = head.split(' ').collect();
        match words[..] {
            ["---", mac] => {
                out.extend(decoded(mac)?);
                break;
            }
            ["->", "X25519", share] => out.extend(decoded(share)?),
            ["->", "scrypt", salt, work] => {
                out.extend(decoded(salt)?);
                work.parse::<u8>().map_err(|_| "how hard it is stretched".to_owned())?;
            }
            // Drawn by chance, so that other programs keep to what the form allows (age.md, "Grease").
            ["->", kind, ..] if kind.ends_with("-grease") => {}
            _ => return Err(format!("{head:?} is none of an age file")),
        }
        // The body: full lines of 64 letters, and one that is shorter.
        loop {
            let body = line(take)?;
            out.extend(decoded(&body)?);
            if body.len() < 64 {
                break;
            }
        }
    }
    out.extend_from_slice(take.rest());
    Ok(())
}

fn tries(take: &mut Take<'_>) -> Result<(), String> {
    while take.at < take.all.len() {
        if take.all[take.at..].iter().take(64).all(|byte| *byte == 0) {
            take.zeros(64)?;
            continue;
        }
        take.is(b"FRT\x1a", "a count of tries")?;
        take.is(&[1, 0], "version 1")?;
        take.at_most(2, 1, "whether the running time is known")?;
        take.at_most(8, 1 << 32, "which writing")?;
        take.at_most(8, 1 << 32, "wrong tries")?;
        take.bytes(24, "three times")?;
        take.zeros(12)?;
        take.number(4, "the checksum")?;
    }
    Ok(())
}

/// sled's own layout is not documented here: what can be said of it is that nothing in it reads like words.
fn sled(bytes: &[u8]) -> Result<(), String> {
    let readable = |byte: &u8| (b' '..=b'~').contains(byte);
    for run in bytes.split(|byte| !readable(byte)).filter(|run| run.len() >= READABLE) {
        let text = String::from_utf8_lossy(run);
        if !["segment_size: ", "use_compression: ", "version: "]
            .iter()
            .any(|own| text.starts_with(own))
        {
            return Err(format!("{text:?} can be read"));
        }
    }
    Ok(())
}
