//! What must stand nowhere: words of the field, and the very texts that were typed. Decides in which writings a text is
//! looked for: UTF-8, UTF-16 in both orders, hexadecimal, base64 in each of its three positions, each as typed and in
//! small letters; and, of the bytes looked through, what long runs of base64, base32 or hexadecimal stand for, and what
//! lies packed in them (zlib, gzip, raw deflate).

use std::collections::{BTreeSet, HashMap};

use data_encoding::{BASE32_NOPAD, BASE64, BASE64URL_NOPAD, Encoding, HEXLOWER, HEXUPPER};
use miniz_oxide::inflate::core::{DecompressorOxide, decompress, inflate_flags};

/// The shortest writing that is looked for, in bytes: a shorter one stands in random bytes by chance.
const SHORTEST: usize = 6;
/// How often what was unpacked is unpacked again.
const DEPTH: usize = 3;
/// The most that is unpacked at one place.
const UNPACKED: usize = 1 << 20;
/// The shortest run of letters that is taken for base64, base32 or hexadecimal.
const RUN: usize = 24;

/// Texts that must stand nowhere, in all their writings.
#[derive(Debug, Default)]
pub struct Needles {
    /// Writings by their first four bytes.
    by_start: HashMap<[u8; 4], Vec<(Vec<u8>, String)>>,
    /// Which pairs of bytes a writing begins with: most places in a file are none.
    likely: Vec<bool>,
    written: BTreeSet<Vec<u8>>,
}

impl Needles {
    /// These words of the field, and [`Needles::and`] more.
    ///
    /// # Panics
    /// One is too short to be told from chance.
    #[must_use]
    pub fn new(texts: &[&str]) -> Self {
        Self { likely: vec![false; 1 << 16], ..Self::default() }.and(texts)
    }

    /// These texts too.
    ///
    /// # Panics
    /// One is too short to be told from chance.
    #[must_use]
    pub fn and(mut self, texts: &[&str]) -> Self {
        for text in texts {
            assert!(text.len() >= SHORTEST, "{text} is too short to be told from chance");
            let mut capital = text.to_lowercase();
            capital[..1].make_ascii_uppercase();
            for spelt in [(*text).to_owned(), text.to_lowercase(), text.to_uppercase(), capital] {
                self.spelt(text, &spelt);
            }
        }
        self
    }

    fn spelt(&mut self, text: &str, spelt: &str) {
        let utf16: Vec<u16> = spelt.encode_utf16().collect();
        let little: Vec<u8> = utf16.iter().flat_map(|unit| unit.to_le_bytes()).collect();
        let big: Vec<u8> = utf16.iter().flat_map(|unit| unit.to_be_bytes()).collect();
        for (how, bytes) in
            [("UTF-8", spelt.as_bytes().to_vec()), ("UTF-16", little), ("UTF-16 big", big)]
        {
            for hex in [HEXLOWER.encode(&bytes), HEXUPPER.encode(&bytes)] {
                self.writing(text, &format!("{how}, hexadecimal"), hex.into_bytes());
            }
            for before in 0..3usize {
                // With so many bytes before it; letters that others share are cut off at both ends.
                let whole = [&vec![0u8; before][..], &bytes].concat();
                let encoded = BASE64.encode(&whole);
                let end = whole.len() * 8 / 6;
                let own = &encoded.as_bytes()[(before * 8).div_ceil(6)..end];
                self.writing(text, &format!("{how}, base64"), own.to_vec());
                let of_addresses = own.iter().map(|byte| match byte {
                    b'+' => b'-',
                    b'/' => b'_',
                    other => *other,
                });
                self.writing(text, &format!("{how}, base64"), of_addresses.collect());
            }
            self.writing(text, how, bytes);
        }
    }

    fn writing(&mut self, text: &str, how: &str, bytes: Vec<u8>) {
        if bytes.len() < SHORTEST || !self.written.insert(bytes.clone()) {
            return;
        }
        let start = [bytes[0], bytes[1], bytes[2], bytes[3]];
        self.likely[usize::from(bytes[0]) << 8 | usize::from(bytes[1])] = true;
        self.by_start.entry(start).or_default().push((bytes, format!("{text:?} in {how}")));
    }

    /// What of it stands in these bytes, or in what they stand for.
    #[must_use]
    pub fn found(&self, bytes: &[u8]) -> BTreeSet<String> {
        let mut found = BTreeSet::new();
        self.search(bytes, "", DEPTH, &mut found);
        found
    }

    fn search(&self, bytes: &[u8], way: &str, depth: usize, found: &mut BTreeSet<String>) {
        for at in 0..bytes.len().saturating_sub(SHORTEST - 1) {
            if !self.likely[usize::from(bytes[at]) << 8 | usize::from(bytes[at + 1])] {
                continue;
            }
            let start = [bytes[at], bytes[at + 1], bytes[at + 2], bytes[at + 3]];
            for (writing, what) in self.by_start.get(&start).into_iter().flatten() {
                if bytes[at..].starts_with(writing) {
                    found.insert(format!("{what}{way}"));
                }
            }
        }
        if depth == 0 {
            return;
        }
        for (how, inner) in unwrapped(bytes) {
            self.search(&inner, &format!("{way}, {how}"), depth - 1, found);
        }
    }
}

/// What may stand in these bytes in another form.
fn unwrapped(bytes: &[u8]) -> Vec<(&'static str, Vec<u8>)> {
    let mut inner = Vec::new();
    let mut room = vec![0u8; UNPACKED];
    let mut unpacked = |data: &[u8]| {
        let mut state = DecompressorOxide::new();
        let whole = inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
        // What was unpacked before it broke off is looked through as well.
        let (_, _, count) = decompress(&mut state, data, &mut room, 0, whole);
        (count >= SHORTEST).then(|| room[..count].to_vec())
    };
    for at in 0..bytes.len().saturating_sub(SHORTEST) {
        match [bytes[at], bytes[at + 1]] {
            // RFC 1950, 2.2: deflate with a window of 32 KiB, and the check of the two bytes.
            [0x78, flags] if (0x7800 + u16::from(flags)).is_multiple_of(31) => {
                inner.extend(unpacked(&bytes[at + 2..]).map(|text| ("unpacked (zlib)", text)));
            }
            // RFC 1952, 2.3: a head of ten bytes where no name is given.
            [0x1f, 0x8b] if bytes.len() > at + 10 && bytes[at + 2] == 8 => {
                inner.extend(unpacked(&bytes[at + 10..]).map(|text| ("unpacked (gzip)", text)));
            }
            _ => {}
        }
    }
    // Raw deflate has no mark: it is tried where something begins.
    for at in (0..bytes.len()).step_by(512).take(512) {
        inner.extend(
            unpacked(&bytes[at..]).filter(|text| text.len() > 32).map(|text| ("unpacked", text)),
        );
    }
    for run in bytes.split(|byte| !(byte.is_ascii_alphanumeric() || b"+/-_=".contains(byte))) {
        let run = run.strip_suffix(b"=").map_or(run, |run| run.strip_suffix(b"=").unwrap_or(run));
        if run.len() < RUN {
            continue;
        }
        let ordinary: Vec<u8> = run
            .iter()
            .map(|byte| match byte {
                b'+' => b'-',
                b'/' => b'_',
                other => *other,
            })
            .collect();
        let (small, capital) = (run.to_ascii_lowercase(), run.to_ascii_uppercase());
        for (how, encoding, letters, group) in [
            ("out of base64", &BASE64URL_NOPAD, &ordinary, 4),
            ("out of hexadecimal", &HEXLOWER, &small, 2),
            ("out of base32", &BASE32_NOPAD, &capital, 8),
        ] {
            // Letters of something else may stand before it.
            for from in 0..group {
                inner.extend(decoded(encoding, &letters[from..], group).map(|text| (how, text)));
            }
        }
    }
    inner
}

/// What a run stands for: all of it, or up to the last whole group of so many letters.
fn decoded(encoding: &Encoding, run: &[u8], group: usize) -> Option<Vec<u8>> {
    let whole = &run[..run.len() / group * group];
    encoding.decode(run).or_else(|_| encoding.decode(whole)).ok()
}
