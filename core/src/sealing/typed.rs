//! How words of the published list (BIP-39, English) are read when somebody types them: a recovery phrase, or
//! the words of a link. Decides what does not matter; what the words are for is decided elsewhere.

use bip39::Language;
use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;
use zeroize::Zeroizing;

/// The longest text that is looked at, in bytes: twelve words with numbers take about 150.
const TEXT_MOST: usize = 4096;

/// What is wrong with typed words. Never holds a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum TypedError {
    /// Word `number`, counted from 1, is not in the list.
    NotInList { number: usize },
    /// There are fewer.
    TooFew { found: usize },
    /// There are more.
    TooMany,
}

/// Exactly so many words of the list, in lower case with one space between. Case, spaces, line breaks,
/// commas, accents, numbers before the words and the way letters are encoded do not matter; the first
/// four letters of a word are enough.
pub(crate) fn typed_words(text: &str, needed: usize) -> Result<Zeroizing<String>, TypedError> {
    if text.len() > TEXT_MOST {
        return Err(TypedError::TooMany);
    }
    // Room for the longest decomposition, so that no copy is left behind by growing.
    let mut plain = Zeroizing::new(String::with_capacity(text.len() * 12));
    let letters = text.nfkd().filter(|c| !invisible(*c) && !is_combining_mark(*c));
    plain.extend(letters.flat_map(char::to_lowercase));
    let mut joined = Zeroizing::new(String::with_capacity(needed * 9));
    let mut found = 0;
    let parts = plain.split(|c: char| c.is_whitespace() || matches!(c, ',' | ';'));
    for word in parts.map(|part| part.trim_matches(|c: char| !c.is_alphabetic())) {
        if word.is_empty() {
            continue;
        }
        found += 1;
        let word = listed(word).ok_or(TypedError::NotInList { number: found })?;
        if found > needed {
            return Err(TypedError::TooMany);
        }
        if found > 1 {
            joined.push(' ');
        }
        joined.push_str(word);
    }
    if found < needed { Err(TypedError::TooFew { found }) } else { Ok(joined) }
}

/// Characters that take no room and come along when text is copied.
pub(crate) fn invisible(c: char) -> bool {
    matches!(c, '\u{ad}' | '\u{200b}'..='\u{200f}' | '\u{2060}' | '\u{feff}')
}

/// The word of the list that is meant. BIP-39: four letters are enough to tell the words apart.
fn listed(typed: &str) -> Option<&'static str> {
    let list = Language::English.word_list();
    if let Some(word) = list.iter().find(|word| **word == typed) {
        return Some(word);
    }
    let mut meant = list.iter().filter(|word| typed.len() >= 4 && word.starts_with(typed));
    let word = meant.next()?;
    if meant.next().is_none() { Some(word) } else { None }
}
