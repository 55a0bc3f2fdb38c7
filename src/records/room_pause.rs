//! Pauses of a whole room without a server: codes that the instructor reads out, and how a candidate's
//! browser knows them without the key.
//!
//! ```text
//! last code = 40 bits of HMAC(assessment's key, "tubwright room pause 1\n")
//! code n    = 40 bits of SHA-256("tubwright room pause 1\n"  code n + 1)      anchor = code 0
//! ```
//! The assessment's file carries the anchor. A code hashed so often as its number gives the anchor; the
//! next code cannot be found from those that were read out. Odd numbers stop the clock, even ones let it
//! go on, each number once. What it does not hold: a candidate who tries a million million codes outside
//! the page finds one, and whoever changes the page needs none. The record shows each pause.

use serde::Deserialize;
use serde::Serialize;

use crate::assess::pause_code;
use crate::records::seal::AssessmentKey;
use crate::records::seal::Hash;

/// Codes of one assessment: a stop and a go for each of ten pauses.
pub const N_CODES: usize = 20;
/// Keeps these hashes apart from others.
const LABEL: &str = "tubwright room pause 1";

/// A pause of the whole room as a record keeps it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Pause {
    /// When the clock was stopped, by the candidate's clock, RFC 3339.
    pub from: String,
    /// When it went on; none where the sitting was handed in before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to: Option<String>,
    /// The code that stopped it.
    pub stop: String,
    /// The code that let it go on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub go: Option<String>,
}

impl Pause {
    /// Its codes are the assessment's, under its anchor.
    pub fn is_of(&self, anchor: &str) -> bool {
        let goes = |code: &String| matches!(meaning(anchor, code), Some(Meaning::Go(_)));
        matches!(meaning(anchor, &self.stop), Some(Meaning::Stop(_)))
            && self.go.as_ref().is_none_or(goes)
    }
}

/// What a code that was typed means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Meaning {
    /// The clock stops; the number of the code.
    Stop(usize),
    /// The clock goes on; the number of the code.
    Go(usize),
}

/// The secret end of the chain.
fn last(key: &AssessmentKey) -> String {
    pause_code::of_bytes(&key.secret(LABEL).0)
}

/// The code before a code.
fn before(code: &str) -> String {
    pause_code::of_bytes(&Hash::of(LABEL, &[code.as_bytes()]).0)
}

/// All codes in the order in which they are read out: stop, go, stop, go.
pub fn codes(key: &AssessmentKey) -> Vec<String> {
    let mut all = vec![last(key)];
    while let Some(code) = all.last().filter(|_| all.len() < N_CODES) {
        all.push(before(code));
    }
    all.reverse();
    all
}

/// What stands in the assessment's file.
pub fn anchor(key: &AssessmentKey) -> String {
    codes(key)
        .first()
        .map(|first| before(first))
        .unwrap_or_default()
}

/// What a typed code means under an anchor; `None` when it is none of the assessment's.
pub fn meaning(anchor: &str, typed: &str) -> Option<Meaning> {
    let mut code = pause_code::read(typed)?;
    for number in 1..=N_CODES {
        code = before(&code);
        if code == anchor {
            return Some(match number % 2 {
                1 => Meaning::Stop(number),
                _ => Meaning::Go(number),
            });
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    fn key() -> AssessmentKey {
        AssessmentKey::new([9; 32])
    }

    #[test]
    fn codes_stop_and_go_in_turn_and_are_known_from_the_anchor_alone() {
        let (all, anchor) = (codes(&key()), anchor(&key()));
        assert_eq!(all.len(), N_CODES);
        assert!(pause_code::is_code(&anchor));
        for (at, code) in all.iter().enumerate() {
            let number = at + 1;
            let meant = if number % 2 == 1 {
                Meaning::Stop(number)
            } else {
                Meaning::Go(number)
            };
            assert_eq!(meaning(&anchor, code), Some(meant), "{code}");
            let typed = code.to_lowercase().replace('-', " ").replace('0', "o");
            assert_eq!(meaning(&anchor, &typed), Some(meant), "{typed}");
        }
    }

    #[test]
    fn the_anchor_and_codes_of_another_key_mean_nothing() {
        let own = anchor(&key());
        assert_eq!(meaning(&own, &own), None);
        let other = AssessmentKey::new([8; 32]);
        for typed in codes(&other)
            .iter()
            .map(String::as_str)
            .chain(["", "ABCD", "ÄBCD-EFGH"])
        {
            assert_eq!(meaning(&own, typed), None, "{typed}");
        }
    }

    #[test]
    fn a_pause_in_a_record_is_told_from_an_invented_one() {
        let (all, anchor) = (codes(&key()), anchor(&key()));
        let pause = |stop: &str, go: Option<&str>| Pause {
            from: "2031-03-04T09:00:00.000Z".to_owned(),
            to: None,
            stop: stop.to_owned(),
            go: go.map(str::to_owned),
        };
        assert!(pause(&all[0], None).is_of(&anchor));
        assert!(pause(&all[2], Some(&all[3])).is_of(&anchor));
        assert!(
            !pause(&all[1], None).is_of(&anchor),
            "a code to go on stops nothing"
        );
        assert!(!pause(&all[0], Some("ABCD-EFGH")).is_of(&anchor));
    }

    #[test]
    fn an_earlier_code_follows_from_a_later_one_and_not_the_other_way() {
        let all = codes(&key());
        assert_eq!(before(&all[4]), all[3]);
        assert_ne!(before(&all[3]), all[4]);
    }
}
