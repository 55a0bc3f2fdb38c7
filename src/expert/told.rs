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
