//! Hashes and seals: SHA-256 and HMAC-SHA-256 (FIPS 180-4, RFC 2104), in our own code so that they
//! work where a browser withholds its cryptography (plain http in a room without internet).
//!
//! ```text
//! body hash = SHA-256("tubwright record 1\n"  body as written)
//! link      = SHA-256("tubwright link 1\n"    previous link, body hash)
//! code      = HMAC(assessment's key, "tubwright start code 1\n" assessment, candidate)   80 bits
//! seal      = HMAC(HMAC(code, "tubwright seal 1\n"), link)
//! ```
//! What it holds: a record cannot be edited, moved to another candidate or dropped from the middle
//! by anyone who does not know that candidate's start code, the candidate's neighbours included. The
//! key itself never enters a candidate's browser.
//!
//! What no browser can hold: whoever sits at it knows their own code and could seal a log made
//! outside the page. Such a log must still replay to its score, so somebody or something had to
//! solve the job; only an invigilated room shows who did. A public key would change nothing, since
//! the signing half would have to be in the same browser.

use core::fmt;

use hmac::Hmac;
use hmac::Mac;
use serde::Deserialize;
use serde::Serialize;
use sha2::Digest;
use sha2::Sha256;

use crate::say;

/// Letters of a start code: no I, L, O, U, which are misread (Crockford's base 32).
const LETTERS: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";
/// Letters in a code; five bits each.
const CODE_LETTERS: usize = 16;
/// Letters beside it that find a misread one: once in nine thousand they do not.
const CHECK_LETTERS: usize = 4;
/// Extra time comes in such steps, min.
pub const EXTRA_STEP_MIN: u32 = 5;
/// More extra time than this is another assessment, min.
pub const MOST_EXTRA_MIN: u32 = 600;

/// 32 bytes, written as 64 lower-case hexadecimal digits.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(try_from = "String", into = "String")]
#[cfg_attr(not(target_arch = "wasm32"), schemars(with = "String"))]
pub struct Hash(pub [u8; 32]);

impl Hash {
    /// Of a label, which keeps hashes of different things apart, and parts, each with its length.
    pub fn of(label: &str, parts: &[&[u8]]) -> Self {
        let mut hasher = Sha256::new();
        hasher.update(label.as_bytes());
        hasher.update(b"\n");
        for part in parts {
            hasher.update((part.len() as u64).to_le_bytes());
            hasher.update(part);
        }
        Self(hasher.finalize().into())
    }

    /// The first eight bytes as a number, for seeds; 53 bits, so that any reader of JSON keeps it.
    pub fn seed(&self) -> u64 {
        let mut bytes = [0; 8];
        bytes.copy_from_slice(&self.0[..8]);
        u64::from_le_bytes(bytes) >> 11
    }
}

impl fmt::Display for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl fmt::Debug for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

impl From<Hash> for String {
    fn from(hash: Hash) -> Self {
        hash.to_string()
    }
}

impl TryFrom<String> for Hash {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        let wrong = || say!("must be 64 hexadecimal digits 0-9 a-f").to_owned();
        let digits: Vec<u8> = text
            .chars()
            .map(|c| match c {
                '0'..='9' => Ok(c as u8 - b'0'),
                'a'..='f' => Ok(c as u8 - b'a' + 10),
                _ => Err(wrong()),
            })
            .collect::<Result<_, _>>()?;
        if digits.len() != 64 {
            return Err(wrong());
        }
        let mut bytes = [0; 32];
        for (byte, pair) in bytes.iter_mut().zip(digits.chunks(2)) {
            *byte = pair[0] * 16 + pair[1];
        }
        Ok(Self(bytes))
    }
}

/// The secret of one assessment, kept by the instructor.
#[derive(Clone, PartialEq, Eq)]
pub struct AssessmentKey(Hash);

impl AssessmentKey {
    /// From 32 secret bytes.
    pub fn new(bytes: [u8; 32]) -> Self {
        Self(Hash(bytes))
    }

    /// From its file: 64 hexadecimal digits, white space around them.
    ///
    /// # Errors
    /// When it is anything else.
    pub fn read(text: &str) -> Result<Self, String> {
        Hash::try_from(text.trim().to_owned()).map(Self)
    }

    /// What a candidate types at the start, on a slip from the instructor.
    pub fn start_code(&self, assessment: &str, candidate: &str) -> StartCode {
        let parts = [assessment.as_bytes(), candidate.as_bytes()];
        let message = Hash::of("tubwright start code 1", &parts);
        let mac = code_of(&self.0.0, &message.0);
        let letters = (0..CODE_LETTERS).map(|i| {
            let bit = i * 5;
            let pair = u16::from(mac.0[bit / 8]) << 8 | u16::from(mac.0[bit / 8 + 1]);
            let index = pair >> (11 - bit % 8) & 31;
            char::from(LETTERS[usize::from(index)])
        });
        StartCode(letters.collect())
    }

    /// A further secret of this key, for what the label says.
    pub fn secret(&self, label: &str) -> Hash {
        code_of(&self.0.0, label.as_bytes())
    }
}

impl fmt::Debug for AssessmentKey {
    /// A key is never printed.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("AssessmentKey(…)")
    }
}

/// A candidate's own secret for one assessment.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StartCode(String);

impl StartCode {
    /// From what was typed: any case, spaces and dashes, O for 0, I and L for 1.
    ///
    /// # Errors
    /// When a letter is none of a code's, or there are too many or too few.
    pub fn read(typed: &str) -> Result<Self, String> {
        let code = plain_letters(typed);
        for c in code.chars() {
            if !LETTERS.contains(&(c as u32).try_into().unwrap_or(0)) {
                return Err(say!(
                    "'{letter}' is in no start code: use digits and letters",
                    letter = c
                ));
            }
        }
        if code.len() == CODE_LETTERS {
            Ok(Self(code))
        } else {
            Err(say!(
                "{n} letters: a start code has {wanted}",
                n = code.len(),
                wanted = CODE_LETTERS
            ))
        }
    }

    /// Seals a link.
    pub fn seal(&self, link: &Hash) -> Hash {
        code_of(&self.sealing_key().0, &link.0)
    }

    /// The seal is this link's under this code; takes as long for any wrong one.
    pub fn is_sealed(&self, link: &Hash, seal: &Hash) -> bool {
        let Ok(mut mac) = Hmac::<Sha256>::new_from_slice(&self.sealing_key().0) else {
            return false;
        };
        mac.update(&link.0);
        mac.verify_slice(&seal.0).is_ok()
    }

    /// What stands beside the code on every slip, alike for all to look at: four letters that find a
    /// misread code or number, and in which the candidate's extra time is hidden, min.
    pub fn check_letters(&self, candidate: &str, extra_min: u32) -> String {
        let parts = [candidate.as_bytes(), &extra_min.to_le_bytes()[..]];
        let message = Hash::of("tubwright slip 1", &parts);
        let mac = code_of(self.0.as_bytes(), &message.0);
        let letter = |byte: &u8| char::from(LETTERS[usize::from(byte & 31)]);
        mac.0.iter().take(CHECK_LETTERS).map(letter).collect()
    }

    /// The extra time that check letters stand for, min; `None` when they are not this code's and
    /// candidate's.
    pub fn extra_min(&self, candidate: &str, typed: &str) -> Option<u32> {
        let typed = plain_letters(typed);
        (0..=MOST_EXTRA_MIN / EXTRA_STEP_MIN)
            .map(|n| n * EXTRA_STEP_MIN)
            .find(|extra_min| self.check_letters(candidate, *extra_min) == typed)
    }

    fn sealing_key(&self) -> Hash {
        code_of(self.0.as_bytes(), b"tubwright seal 1\n")
    }
}

impl fmt::Display for StartCode {
    /// In groups of four, as people type.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (at, letter) in self.0.chars().enumerate() {
            if at > 0 && at % 4 == 0 {
                f.write_str("-")?;
            }
            write!(f, "{letter}")?;
        }
        Ok(())
    }
}

/// Letters as they were typed, as a slip has them.
fn plain_letters(typed: &str) -> String {
    let kept = typed.chars().filter(|c| !c.is_whitespace() && *c != '-');
    kept.map(|c| match c.to_ascii_uppercase() {
        'O' => '0',
        'I' | 'L' => '1',
        other => other,
    })
    .collect()
}

/// HMAC-SHA-256, which takes keys of any length.
fn code_of(key: &[u8], message: &[u8]) -> Hash {
    let mac = Hmac::<Sha256>::new_from_slice(key).map(|mut mac| {
        mac.update(message);
        Hash(mac.finalize().into_bytes().into())
    });
    // The error is for other algorithms' keys of fixed length; the label keeps it harmless.
    mac.unwrap_or_else(|_| Hash::of("tubwright no key", &[key, message]))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_published_test_vector_comes_out() {
        // Published: RFC 4231, test case 2.
        let got = code_of(b"Jefe", b"what do ya want for nothing?").to_string();
        assert_eq!(
            got,
            "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843"
        );
    }

    #[test]
    fn a_code_is_read_as_people_type_it() {
        let key = AssessmentKey::new([7; 32]);
        let code = key.start_code("autumn", "c-17");
        let typed = code.to_string().to_lowercase().replace('0', "o");
        assert_eq!(StartCode::read(&typed), Ok(code.clone()));
        assert_ne!(code, key.start_code("autumn", "c-18"));
        assert_ne!(code, key.start_code("spring", "c-17"));
        assert!(StartCode::read("ABC").is_err() && StartCode::read("ABCD-ÄBCD-ABCD-ABCD").is_err());
    }

    #[test]
    fn extra_time_is_in_the_check_letters_and_a_misread_code_is_found() {
        let code = AssessmentKey::new([7; 32]).start_code("autumn", "c-17");
        let other = AssessmentKey::new([7; 32]).start_code("autumn", "c-18");
        for extra_min in [0, 5, 60, 600] {
            let letters = code.check_letters("c-17", extra_min).to_lowercase();
            assert_eq!(code.extra_min("c-17", &letters), Some(extra_min));
            assert_eq!(code.extra_min("c-18", &letters), None);
            assert_eq!(other.extra_min("c-17", &letters), None);
        }
    }

    #[test]
    fn a_seal_is_of_one_link_and_one_code() {
        let key = AssessmentKey::new([7; 32]);
        let (own, other) = (key.start_code("a", "1"), key.start_code("a", "2"));
        let link = Hash::of("test", &[b"x"]);
        let seal = own.seal(&link);
        assert!(own.is_sealed(&link, &seal));
        assert!(!other.is_sealed(&link, &seal));
        assert!(!own.is_sealed(&Hash::of("test", &[b"y"]), &seal));
    }

    #[test]
    fn a_hash_is_read_back_and_nothing_else_is_one() {
        let hash = Hash::of("test", &[]);
        assert_eq!(Hash::try_from(hash.to_string()), Ok(hash));
        for wrong in ["", "0", &"G".repeat(64), &"A".repeat(64), &"é".repeat(32)] {
            assert!(Hash::try_from(wrong.to_owned()).is_err());
        }
        assert!(hash.seed() < 1 << 53);
    }
}
