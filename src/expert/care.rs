//! How careful whoever is at work is.

use crate::machine::draw_ratio;

/// Purpose of the draws that leave a step out.
const CARE_PURPOSE: u64 = 0x6361_7265;

/// How often a step of care is left out by whoever is at work, by a seed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Care {
    seed: u64,
    ratio: f64,
    drawn: u64,
}

impl Care {
    /// Steps are done in this share of occasions.
    pub fn new(seed: u64, ratio: f64) -> Self {
        let drawn = 0;
        Self { seed, ratio, drawn }
    }

    /// This one is done.
    pub fn is_taken(&mut self) -> bool {
        self.drawn += 1;
        self.ratio >= 1.0 || draw_ratio(self.seed, CARE_PURPOSE, self.drawn) < self.ratio
    }
}
