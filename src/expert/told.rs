//! A customer's words read as symptoms, and weighed like any other observation.
//!
//! Each clause is looked through for words that go together; what it says works is read too. How
//! likely a machine is to be complained about in this way follows from what that machine does
//! ([`Symptoms`]), never from the fault's name:
//!
//! ```text
//! P(told | machine) = (1-m) Π_symptoms P(told or not | shown or not) + m Π_symptoms P(told or not)
//! ```
//! m is the share of customers whose words say nothing of the machine. Words such as "sometimes" speak
//! for a cause that comes and goes, whatever it shows. Shares are design choices.

use std::sync::LazyLock;

use crate::expert::symptom::Symptom;
use crate::expert::symptom::Symptoms;

/// Share of customers whose words mislead.
const MISLEADS: f64 = 0.05;
/// A symptom that is there is told of; one that is not there is told of.
const TOLD_IF_SHOWN: f64 = 0.4;
const TOLD_IF_NOT: f64 = 0.03;
/// Said to work although it does not; although it does.
const PRAISED_IF_SHOWN: f64 = 0.02;
const PRAISED_IF_NOT: f64 = 0.15;
/// Words for what is not there all the time.
const COMES_AND_GOES: [&str; 5] = [
    "sometimes",
    "now and then",
    "not always",
    "comes and goes",
    "once in a while",
];
/// Said of what comes and goes; of what is always there.
const SAID_IF_LOOSE: f64 = 0.3;
const SAID_IF_STEADY: f64 = 0.03;

/// What was told so far.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// Complained of.
    pub wrong: Symptoms,
    /// Said to be in order: these are not there.
    pub right: Symptoms,
    /// It is not there all the time.
    pub comes_and_goes: bool,
}

/// One line of `words.txt`.
struct Saying {
    symptoms: Vec<Symptom>,
    is_denied: bool,
    /// Any of these, each of words that all stand in one clause.
    ways: Vec<Vec<&'static str>>,
}

static SAYINGS: LazyLock<Vec<Saying>> = LazyLock::new(|| {
    include_str!("words.txt")
        .lines()
        .filter_map(|line| line.split_once(':'))
        .map(|(names, ways)| Saying {
            is_denied: names.starts_with("not "),
            symptoms: names.split(' ').filter_map(named).collect(),
            ways: ways
                .split('|')
                .map(|way| way.split('+').map(str::trim).collect())
                .collect(),
        })
        .collect()
});

fn named(name: &str) -> Option<Symptom> {
    serde_json::from_value(serde_json::Value::from(name)).ok()
}

impl Told {
    /// Takes more of the customer's words.
    pub fn hear(&mut self, words: &str) {
        let words = words.to_lowercase();
        self.comes_and_goes |= COMES_AND_GOES.iter().any(|w| words.contains(w));
        for clause in words.split(['.', ';', '!', '?']) {
            for saying in SAYINGS.iter() {
                let is_said = saying
                    .ways
                    .iter()
                    .any(|way| way.iter().all(|w| clause.contains(w)));
                let set = if saying.is_denied {
                    &mut self.right
                } else {
                    &mut self.wrong
                };
                for symptom in &saying.symptoms {
                    set.put(*symptom, is_said);
                }
            }
        }
        // A complaint outweighs what was said in passing.
        self.right.0 &= !self.wrong.0;
    }

    /// Log likelihood of the words where the machine shows this.
    pub fn fits(self, shown: Symptoms) -> f64 {
        let (mut meant, mut loose) = (1.0, 1.0);
        for symptom in Symptom::ALL {
            let is_shown = shown.has(symptom);
            let told = if is_shown { TOLD_IF_SHOWN } else { TOLD_IF_NOT };
            let praised = if is_shown {
                PRAISED_IF_SHOWN
            } else {
                PRAISED_IF_NOT
            };
            let between = |told: f64, praised: f64| {
                if self.wrong.has(symptom) {
                    told
                } else if self.right.has(symptom) {
                    (1.0 - told) * praised
                } else {
                    (1.0 - told) * (1.0 - praised)
                }
            };
            meant *= between(told, praised);
            loose *= between(0.1, 0.1);
        }
        libm::log((1.0 - MISLEADS) * meant + MISLEADS * loose)
    }

    /// Log likelihood of what was said or not of its coming and going, for a cause that does or does not.
    pub fn fits_onset(self, is_loose: bool) -> f64 {
        let said = if is_loose {
            SAID_IF_LOOSE
        } else {
            SAID_IF_STEADY
        };
        libm::log(if self.comes_and_goes {
            said
        } else {
            1.0 - said
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn heard(words: &str) -> Told {
        let mut told = Told::default();
        told.hear(words);
        told
    }

    fn set(list: &[Symptom]) -> Symptoms {
        Symptoms::from(list.to_vec())
    }

    #[test]
    fn words_go_together_within_a_clause_only() {
        assert!(heard("The panel stays dark").wrong.has(Symptom::Dead));
        assert!(
            !heard("I know the panel. It was dark by then.")
                .wrong
                .has(Symptom::Dead)
        );
    }

    #[test]
    fn what_works_is_heard_as_right_unless_it_is_complained_of() {
        let told = heard("It washes and drains. It does not SPIN!");
        assert!(told.right.has(Symptom::NoFill) && !told.wrong.has(Symptom::NoFill));
        assert!(told.wrong.has(Symptom::NoSpin));
        let mut told = heard("Water runs in the house.");
        assert!(told.right.has(Symptom::NoFill));
        told.hear("No water comes into it");
        assert!(told.wrong.has(Symptom::NoFill) && !told.right.has(Symptom::NoFill));
    }

    #[test]
    fn a_symptom_told_speaks_for_machines_that_show_it_and_praise_against_them() {
        let (slow, none) = (set(&[Symptom::SlowFill]), Symptoms::default());
        let told = Told {
            wrong: slow,
            ..Told::default()
        };
        // Two in five tell of what is there, three in a hundred of what is not.
        let odds = libm::exp(told.fits(slow) - told.fits(none));
        assert!(odds > 5.0 && odds < 0.4 / 0.03, "{odds}");
        let praised = Told {
            right: slow,
            ..Told::default()
        };
        let odds = libm::exp(praised.fits(none) - praised.fits(slow));
        assert!(odds > 5.0 && odds < (0.97 * 0.15) / (0.6 * 0.02), "{odds}");
        // Silence tells a little: most of what is there is not told of.
        let odds = libm::exp(Told::default().fits(none) - Told::default().fits(slow));
        let silent = (0.97 * 0.85) / (0.6 * 0.98);
        assert!((odds - silent).abs() < 0.03, "{odds} {silent}");
    }

    #[test]
    fn words_are_as_likely_as_their_head_says() {
        let told = Told {
            wrong: set(&[Symptom::Hums, Symptom::Hot]),
            right: set(&[Symptom::NoFill]),
            comes_and_goes: false,
        };
        // Hum shown and told, heat told though not there, a fill praised that works, no spin kept back.
        let shown = set(&[Symptom::Hums, Symptom::NoSpin]);
        let silent = libm::pow(0.97 * 0.85, 23.0);
        let meant = 0.4 * 0.03 * (0.97 * 0.15) * (0.6 * 0.98) * silent;
        let astray = 0.1 * 0.1 * (0.9 * 0.1) * libm::pow(0.9 * 0.9, 24.0);
        let sum = libm::log(0.95 * meant + 0.05 * astray);
        assert!(
            (told.fits(shown) - sum).abs() < 1e-9,
            "{} {sum}",
            told.fits(shown)
        );
    }

    #[test]
    fn words_that_say_it_comes_and_goes_speak_for_what_does() {
        let said = heard("It stops now and then.");
        assert!(said.comes_and_goes && !heard("It stops.").comes_and_goes);
        assert!((libm::exp(said.fits_onset(true)) - 0.3).abs() < 1e-12);
        assert!((libm::exp(said.fits_onset(false)) - 0.03).abs() < 1e-12);
        let silent = heard("It stops.");
        assert!((libm::exp(silent.fits_onset(true)) - 0.7).abs() < 1e-12);
        assert!((libm::exp(silent.fits_onset(false)) - 0.97).abs() < 1e-12);
    }
}
