//! The key of a message: made from its English text, so that a changed text is a new message.

use std::fmt;

/// What a message is looked up by: FNV-1a, 32 bits, of the English text. Formula: Fowler, Noll, Vo,
/// "The FNV non-cryptographic hash algorithm" (IETF draft).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Key(u32);

impl Key {
    /// The key of an English text.
    pub fn of(text: &str) -> Self {
        Self(hashed(OFFSET, text))
    }

    /// The key of an English text that has this meaning among several.
    pub fn with_meaning(text: &str, meaning: &str) -> Self {
        let with_bar = hashed(hashed(OFFSET, text), "|");
        Self(hashed(with_bar, meaning))
    }

    /// The key that a message's name ends with; none where it is named in another way.
    pub fn named(id: &str) -> Option<Self> {
        let (_, digits) = id.rsplit_once('-')?;
        if digits.len() != 8 {
            return None;
        }
        u32::from_str_radix(digits, 16).ok().map(Self)
    }
}

impl fmt::Display for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:08x}", self.0)
    }
}

const OFFSET: u32 = 0x811c_9dc5;
const PRIME: u32 = 0x0100_0193;

fn hashed(from: u32, text: &str) -> u32 {
    text.bytes().fold(from, |hash, byte| {
        (hash ^ u32::from(byte)).wrapping_mul(PRIME)
    })
}

/// Letters of a text that its message's name shows, at most.
const SHOWN: usize = 32;

/// The name of the message with this key in the files of languages: the text's first words, for whoever
/// reads the file, then the key.
pub fn id(text: &str, key: Key) -> String {
    let lower = text.to_lowercase();
    let words = lower
        .split(|c: char| !c.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty());
    let mut shown = String::new();
    for word in words {
        if !shown.is_empty() {
            if shown.len() + 1 + word.len() > SHOWN {
                break;
            }
            shown.push('-');
        }
        shown.extend(word.chars().take(SHOWN));
    }
    let begins = shown.starts_with(|c: char| c.is_ascii_alphabetic());
    match (shown.is_empty(), begins) {
        (true, _) => format!("t-{key}"),
        (false, true) => format!("{shown}-{key}"),
        (false, false) => format!("t-{shown}-{key}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: the test vectors of the IETF draft on FNV, 32 bits, FNV-1a: "", "a", "foobar".
    #[test]
    fn the_hash_is_the_published_one() {
        assert_eq!(Key::of("").to_string(), "811c9dc5");
        assert_eq!(Key::of("a").to_string(), "e40c292c");
        assert_eq!(Key::of("foobar").to_string(), "bf9cf968");
    }

    #[test]
    fn a_name_shows_the_first_words_and_ends_with_the_key() {
        let text = "0.3 Ω at most, from the plug's earth pin to every bare metal part";
        let key = Key::of(text);
        let id = id(text, key);
        assert!(id.starts_with("t-0-3-at-most-from-the-plug-s-"), "{id}");
        assert_eq!(Key::named(&id), Some(key));
        assert_eq!(Key::named("language-name"), None);
    }

    #[test]
    fn a_meaning_makes_another_key() {
        assert_ne!(Key::of("Open"), Key::with_meaning("Open", "of a circuit"));
    }
}
