//! A text as letters that survive an address bar or a training system's small memory.
//!
//! ```text
//! letters = base64url( deflate( text ) )
//! ```

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD as LETTERS;
use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::decompress_to_vec_with_limit;

/// The most there is.
const LEVEL: u8 = 10;
/// Largest text that letters may unfold to, bytes.
const MOST_BYTES: usize = 4_000_000;

/// A text in letters: `A-Z a-z 0-9 - _`.
pub fn to_letters(text: &str) -> String {
    LETTERS.encode(compress_to_vec(text.as_bytes(), LEVEL))
}

/// The text again; `None` when letters were lost on the way.
pub fn from_letters(letters: &str) -> Option<String> {
    let bytes = LETTERS.decode(letters.trim()).ok()?;
    let text = decompress_to_vec_with_limit(&bytes, MOST_BYTES).ok()?;
    String::from_utf8(text).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_comes_back_and_a_cut_one_does_not() {
        let text = "{\"title\": \"اختبار\", \"jobs\": [1, 1, 1, 1, 1, 1]}";
        let letters = to_letters(text);
        assert_eq!(from_letters(&letters).as_deref(), Some(text));
        assert_eq!(from_letters(&letters[..letters.len() / 2]), None);
        assert_eq!(from_letters("!"), None);
    }
}
