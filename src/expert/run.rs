//! What a machine shows while it runs counts as one thing, start by start: a level that is not quite
//! as high, or a stroke not quite as far on, makes all lines that follow differ.
//!
//! ```text
//! C_i = Σ lines of the start ln P(line | machine i)
//! L_i = ln( (1-m) e^C_i + m Σ_j p_j e^C_j )      p: probabilities when the start began
//! ```
//! m is how often the machine reckoned with is not quite the one there, all through a start; what is
//! seen then comes as likely as from any cause. However many lines speak against a cause in one start,
//! they weigh no more than 1/m. Share: design choice, held by the calibration of belief.

use crate::expert::period::either;

/// Share of starts in which a machine runs otherwise than reckoned.
const MISSES: f64 = 0.005;

/// The start that something was seen in, and how likely all lines of it are so far from any cause.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stretch {
    start: u64,
    any: f64,
}

/// What one machine said while it was running, in the present start.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Run {
    /// Probability of the cause in this degree when the start began.
    pub share: f64,
    start: u64,
    sum: f64,
    counted: f64,
}

impl Run {
    fn see(&mut self, start: u64, says: f64) {
        if start != self.start {
            (self.start, self.sum, self.counted) = (start, 0.0, 0.0);
        }
        self.sum += says;
    }

    /// What a line adds, seen already where it belongs to a stretch.
    pub fn counts(&mut self, says: f64, stretch: Option<Stretch>) -> f64 {
        let Some(stretch) = stretch else { return says };
        let counted = either(MISSES, stretch.any, self.sum);
        let adds = counted - self.counted;
        self.counted = counted;
        adds
    }

    /// What is said by a machine that was not among those of the stretch.
    pub fn joins(&mut self, says: f64, stretch: Option<Stretch>) {
        if let Some(stretch) = stretch {
            self.see(stretch.start, says);
        }
    }
}

/// Takes what each machine says of something seen while it was running.
pub(super) fn stretch<'r>(
    start: u64,
    runs: impl Iterator<Item = &'r mut Run>,
    says: &[Option<f64>],
) -> Stretch {
    let mut of = Vec::with_capacity(says.len());
    for (run, says) in runs.zip(says) {
        if let Some(says) = says {
            run.see(start, *says);
            of.push((run.share, run.sum));
        }
    }
    let best = of
        .iter()
        .map(|(_, sum)| *sum)
        .fold(f64::NEG_INFINITY, f64::max);
    let whole: f64 = of.iter().map(|(share, _)| share).sum();
    let sum: f64 = of
        .iter()
        .map(|(share, sum)| share * libm::exp(sum - best))
        .sum();
    let any = best + libm::log((sum / whole).max(f64::MIN_POSITIVE));
    Stretch { start, any }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(says: &[f64], any: f64) -> f64 {
        let mut run = Run::default();
        let stretch = Some(Stretch { start: 1, any });
        says.iter()
            .map(|says| {
                run.joins(*says, stretch);
                run.counts(*says, stretch)
            })
            .sum()
    }

    #[test]
    fn however_many_lines_of_a_start_speak_against_a_machine_they_weigh_no_more_than_a_miss() {
        let many = said(&[-5.0; 40], -1.0);
        assert!((many - (libm::log(MISSES) - 1.0)).abs() < 1e-9, "{many}");
    }

    #[test]
    fn where_a_machine_fits_its_lines_count_whole_but_for_the_share_of_misses() {
        let sum = said(&[-0.5, -1.0, -0.1], -90.0);
        assert!(
            (sum - (-1.6 + libm::log(1.0 - MISSES))).abs() < 1e-9,
            "{sum}"
        );
    }

    #[test]
    fn another_start_is_another_chance_to_miss_and_a_machine_at_rest_none() {
        let mut run = Run::default();
        let mut sum = 0.0;
        for start in 1..=3 {
            let stretch = Some(Stretch { start, any: 0.0 });
            run.joins(-200.0, stretch);
            sum += run.counts(-200.0, stretch);
        }
        assert!((sum - 3.0 * libm::log(MISSES)).abs() < 1e-9, "{sum}");
        run.joins(-7.0, None);
        assert!((run.counts(-7.0, None) + 7.0).abs() < 1e-12);
    }
}
