//! Two languages that nobody speaks, made from the English messages when a bundle is built. They show
//! what a translation would break, before there is one; a release never offers them.
//!
//! *Longer* writes accents on the letters and doubles vowels until a text is about 40 % longer: cut
//! words, and words that are not messages, catch the eye. *Mirrored* makes every word run from right to
//! left and leaves figures as they are, as Android's `ar-XB` and CLDR's pseudo-locales of that name do: what is laid out for one
//! direction only shows.
//!
//! Only the words of a message change. What is put into it stays as it is, and so does the name of a file,
//! which other programs have to understand.

use std::borrow::Cow;

/// What is done with the English messages.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pseudo {
    /// Accents, and about 40 % longer.
    Longer,
    /// Every word from right to left.
    Mirrored,
}

impl Pseudo {
    pub(super) fn transform(self) -> fn(&str) -> Cow<'_, str> {
        match self {
            Pseudo::Longer => longer,
            Pseudo::Mirrored => mirrored,
        }
    }
}

/// RIGHT-TO-LEFT MARK: whatever stands around the word, its neighbours run from right to left.
pub(super) const MARK: char = '\u{200F}';
/// RIGHT-TO-LEFT OVERRIDE: Latin letters run from right to left, too.
pub(super) const OVERRIDE: char = '\u{202E}';
/// POP DIRECTIONAL FORMATTING: the end of the override.
pub(super) const POP: char = '\u{202C}';

const ACCENTS: &[(char, char)] = &[
    ('a', 'á'),
    ('b', 'ƀ'),
    ('c', 'ç'),
    ('d', 'ð'),
    ('e', 'é'),
    ('f', 'ƒ'),
    ('g', 'ĝ'),
    ('h', 'ĥ'),
    ('i', 'î'),
    ('j', 'ĵ'),
    ('k', 'ķ'),
    ('l', 'ļ'),
    ('m', 'ɱ'),
    ('n', 'ñ'),
    ('o', 'ö'),
    ('p', 'þ'),
    ('q', 'ǫ'),
    ('r', 'ŕ'),
    ('s', 'š'),
    ('t', 'ţ'),
    ('u', 'û'),
    ('v', 'ṽ'),
    ('w', 'ŵ'),
    ('x', 'ẋ'),
    ('y', 'ý'),
    ('z', 'ž'),
    ('A', 'Å'),
    ('B', 'Ɓ'),
    ('C', 'Ç'),
    ('D', 'Ð'),
    ('E', 'É'),
    ('F', 'Ƒ'),
    ('G', 'Ĝ'),
    ('H', 'Ĥ'),
    ('I', 'Î'),
    ('J', 'Ĵ'),
    ('K', 'Ķ'),
    ('L', 'Ļ'),
    ('M', 'Ṁ'),
    ('N', 'Ñ'),
    ('O', 'Ö'),
    ('P', 'Þ'),
    ('Q', 'Ǫ'),
    ('R', 'Ŕ'),
    ('S', 'Š'),
    ('T', 'Ţ'),
    ('U', 'Û'),
    ('V', 'Ṽ'),
    ('W', 'Ŵ'),
    ('X', 'Ẋ'),
    ('Y', 'Ý'),
    ('Z', 'Ž'),
];

/// Each vowel twice and each fourth one three times, which comes to about 40 % on English text.
fn longer(text: &str) -> Cow<'_, str> {
    if is_file_name(text) {
        return text.into();
    }
    let mut said = String::with_capacity(text.len() * 3);
    let mut vowels = 0u32;
    for letter in text.chars() {
        let accented = ACCENTS.iter().find(|(plain, _)| *plain == letter);
        let accented = accented.map_or(letter, |(_, accented)| *accented);
        said.push(accented);
        if "aeiouyAEIOUY".contains(letter) {
            vowels = vowels.wrapping_add(1);
            said.push(accented);
            if vowels.is_multiple_of(4) {
                said.push(accented);
            }
        }
    }
    said.into()
}

fn mirrored(text: &str) -> Cow<'_, str> {
    if is_file_name(text) {
        return text.into();
    }
    let mut said = String::with_capacity(text.len() * 3);
    let mut inside = false;
    for letter in text.chars() {
        // Digits run from left to right in every script; only words are turned.
        if letter.is_alphabetic() != inside {
            inside = !inside;
            if inside {
                said.extend([MARK, OVERRIDE]);
            } else {
                said.extend([POP, MARK]);
            }
        }
        said.push(letter);
    }
    if inside {
        said.extend([POP, MARK]);
    }
    said.into()
}

/// Whether a text is nothing but the name of a file, such as `calendar.ics`.
pub(super) fn is_file_name(text: &str) -> bool {
    text.split_once('.').is_some_and(|(name, kind)| {
        [name, kind].iter().all(|part| !part.is_empty() && part.chars().all(char::is_alphanumeric))
    })
}
