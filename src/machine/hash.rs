//! The hash of a machine's state: SHA-256 over the bits of every number in a fixed order, so that
//! anyone can recompute it and native and WebAssembly agree.

use core::fmt;

use sha2::Digest;
use sha2::Sha256;

/// A state's hash.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct StateHash(pub [u8; 32]);

impl fmt::Display for StateHash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

/// Takes words and gives the hash.
#[derive(Default)]
pub struct StateHasher(Sha256);

impl StateHasher {
    /// Takes one word.
    pub fn word(&mut self, word: u64) {
        self.0.update(word.to_le_bytes());
    }
    /// Takes a number by its bits.
    pub fn number(&mut self, number: f64) {
        self.word(number.to_bits());
    }
    /// Takes a text by its length and bytes.
    pub fn text(&mut self, text: &str) {
        self.word(text.len() as u64);
        self.0.update(text.as_bytes());
    }
    /// The hash of all that was taken.
    pub fn finish(self) -> StateHash {
        StateHash(self.0.finalize().into())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_hashes_to_the_published_value_of_the_empty_text() {
        // Published: FIPS 180-4 test vectors.
        let hash = StateHasher::default().finish().to_string();
        assert_eq!(
            hash,
            "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
        );
    }
}
