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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_of_care_are_done_in_their_share_of_occasions_and_the_same_again_for_the_same_seed() {
        let done = |seed, ratio| {
            let mut care = Care::new(seed, ratio);
            (0..2000).map(|_| care.is_taken()).collect::<Vec<bool>>()
        };
        let n = |done: &[bool]| done.iter().filter(|is| **is).count();
        // Three standard errors of 2000 draws at 70 % are 61.
        assert!(n(&done(1, 0.7)).abs_diff(1400) < 62);
        assert_eq!((n(&done(1, 1.0)), n(&done(1, 0.0))), (2000, 0));
        assert_eq!(done(1, 0.7), done(1, 0.7));
        assert_ne!(done(1, 0.7), done(2, 0.7));
    }
}
