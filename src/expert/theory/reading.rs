//! What a digital instrument shows of a value: one of its display steps, or over range.
//!
//! ```text
//! σp = tol·μ/√3      σm = (acc·μ + digits·q)/√3      σ² = σp² + σm²
//! P(j·q) = (1-ε)[Φ((jq+q/2-μ)/σ) - Φ((jq-q/2-μ)/σ)] + (ε/2)/(J+1)      j = 0 takes the lower tail
//! P(OL)  = (1-ε)[1 - Φ((R+q/2-μ)/σ)] + ε/2                            1 in brackets when open
//! ```
//! q display step, J highest step, R = J·q, ε share of readings that mean nothing (bad contact,
//! wrong note). The probabilities of all displays sum to one. A value's sign is dropped before.
//! Source: JCGM 100:2008, rectangular limits to standard deviations (from memory); form design
//! choice.

use crate::expert::theory::normal;

/// A range of a digital instrument.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Meter {
    /// One step of the display, in the unit of the reading.
    pub step: f64,
    /// Highest number of steps shown; above it the display says over range.
    pub n_steps: u32,
    /// Accuracy, share of the reading.
    pub accuracy_ratio: f64,
    /// Accuracy, steps of the display.
    pub accuracy_steps: f64,
    /// Share of readings that mean nothing.
    pub outlier_ratio: f64,
}

/// What the instrument shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Display {
    /// A value, in the unit of the reading.
    Value(f64),
    /// Over range.
    OverRange,
}

/// What a cause lets one expect at the probes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Expected {
    /// An open circuit: over range whatever the range.
    Open,
    /// A value that differs from part to part.
    Value {
        /// Mean of the parts, in the unit of the reading.
        mean: f64,
        /// Standard deviation from part to part, same unit.
        part_sd: f64,
    },
}

impl Expected {
    /// A value with a rectangular tolerance of ± `tolerance_ratio` of it.
    pub fn within(mean: f64, tolerance_ratio: f64) -> Self {
        Self::Value {
            mean,
            part_sd: tolerance_ratio * mean.abs() / 3.0_f64.sqrt(),
        }
    }
}

impl Meter {
    /// Standard deviation of the instrument at `value`.
    pub fn sd_at(&self, value: f64) -> f64 {
        (self.accuracy_ratio * value.abs() + self.accuracy_steps * self.step) / 3.0_f64.sqrt()
    }

    /// Probability of a display.
    pub fn probability(&self, shown: Display, expected: Expected) -> f64 {
        match expected {
            Expected::Open => self.with_outliers(shown, f64::from(shown == Display::OverRange)),
            Expected::Value { mean, part_sd } => {
                let meter_sd = self.sd_at(mean);
                let sd = (part_sd * part_sd + meter_sd * meter_sd).sqrt();
                self.with_outliers(shown, self.cell(shown, mean, sd))
            }
        }
    }

    /// Probability of a display when simulated parts fell into `draws`, some of them perhaps in
    /// another regime: each draw is a kernel as wide as the instrument, or as Silverman's rule for
    /// the spread of the draws where that is wider.
    pub fn probability_of_draws(&self, shown: Display, draws: &[f64]) -> f64 {
        let n = draws.len().max(1) as f64;
        let mean = draws.iter().sum::<f64>() / n;
        let square = draws.iter().map(|x| (x - mean) * (x - mean)).sum::<f64>() / n;
        let kernel_sd = 1.06 * square.sqrt() * libm::pow(n, -0.2);
        let cells = draws
            .iter()
            .map(|&x| self.cell(shown, x, self.sd_at(x).max(kernel_sd)));
        self.with_outliers(shown, cells.sum::<f64>() / n)
    }

    /// Probability of several readings of one part in one state: the part's own error is common to
    /// all, only the instrument's error is new each time. Integrated over the part's true value.
    pub fn probability_of_repeats(&self, shown: &[Display], expected: Expected) -> f64 {
        let Expected::Value { mean, part_sd } = expected else {
            return shown
                .iter()
                .map(|s| self.probability(*s, expected))
                .product();
        };
        let meter_sd = self.sd_at(mean);
        let given = |x: f64| -> f64 {
            let each = shown
                .iter()
                .map(|s| self.with_outliers(*s, self.cell(*s, x, meter_sd)));
            each.product()
        };
        if part_sd <= 0.0 {
            return given(mean);
        }
        let finest = (0.25 * meter_sd.max(self.step)).min(0.25 * part_sd);
        let n_nodes = ((16.0 * part_sd / finest) as usize).clamp(64, 20_000);
        let pace = 16.0 * part_sd / n_nodes as f64;
        (0..=n_nodes)
            .map(|k| mean - 8.0 * part_sd + k as f64 * pace)
            .map(|x| normal::density(x, mean, part_sd) * given(x) * pace)
            .sum()
    }

    /// No cause explains the reading but as one that means nothing: repeat it.
    pub fn is_unexplained(&self, largest_probability: f64) -> bool {
        largest_probability < 1.5 * self.outlier_ratio / (f64::from(self.n_steps) + 1.0)
    }

    /// All displays of the range, over range last.
    pub fn displays(&self) -> impl Iterator<Item = Display> + '_ {
        let values = (0..=self.n_steps).map(|j| Display::Value(f64::from(j) * self.step));
        values.chain(core::iter::once(Display::OverRange))
    }

    fn cell(&self, shown: Display, mean: f64, sd: f64) -> f64 {
        let half = 0.5 * self.step;
        let z = |x: f64| {
            if sd > 0.0 {
                (x - mean) / sd
            } else if x >= mean {
                f64::INFINITY
            } else {
                f64::NEG_INFINITY
            }
        };
        match shown {
            Display::Value(x) if x < half => normal::below(z(half)),
            Display::Value(x) => normal::between(z(x - half), z(x + half)),
            Display::OverRange => normal::below(-z(f64::from(self.n_steps) * self.step + half)),
        }
    }

    fn with_outliers(&self, shown: Display, cell: f64) -> f64 {
        let stray = match shown {
            Display::Value(_) => 0.5 * self.outlier_ratio / (f64::from(self.n_steps) + 1.0),
            Display::OverRange => 0.5 * self.outlier_ratio,
        };
        (1.0 - self.outlier_ratio) * cell + stray
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const METER: Meter = Meter {
        step: 0.1,
        n_steps: 1999,
        accuracy_ratio: 0.008,
        accuracy_steps: 2.0,
        outlier_ratio: 0.004,
    };

    #[test]
    fn all_displays_sum_to_one() {
        for expected in [
            Expected::Open,
            Expected::within(14.5, 0.07),
            Expected::within(0.02, 0.1),
            Expected::within(199.95, 0.05),
            Expected::Value {
                mean: 12.3,
                part_sd: 0.0,
            },
        ] {
            let sum: f64 = METER
                .displays()
                .map(|d| METER.probability(d, expected))
                .sum();
            assert!((sum - 1.0).abs() < 1e-12, "{expected:?}: {sum}");
        }
        let draws = [4.0, 4.1, 150.0];
        let sum: f64 = METER
            .displays()
            .map(|d| METER.probability_of_draws(d, &draws))
            .sum();
        assert!((sum - 1.0).abs() < 1e-12, "{sum}");
    }

    #[test]
    fn one_reading_is_the_repeat_of_none() {
        let expected = Expected::within(14.5, 0.07);
        let shown = Display::Value(14.2);
        let once = METER.probability(shown, expected);
        let repeats = METER.probability_of_repeats(&[shown], expected);
        assert!((once - repeats).abs() < 1e-9, "{once} {repeats}");
    }

    #[test]
    fn a_reading_nothing_explains_is_told() {
        let far = METER.probability(Display::Value(100.0), Expected::within(14.5, 0.07));
        assert!(METER.is_unexplained(far));
        let near = METER.probability(Display::Value(14.6), Expected::within(14.5, 0.07));
        assert!(!METER.is_unexplained(near));
    }

    /// No error of its own: it shows the nearest step.
    const EXACT: Meter = Meter {
        accuracy_ratio: 0.0,
        accuracy_steps: 0.0,
        ..METER
    };

    fn of(mean: f64, part_sd: f64) -> Expected {
        Expected::Value { mean, part_sd }
    }

    #[test]
    fn an_instrument_without_error_shows_the_nearest_step() {
        let at = |shown: f64| EXACT.probability(Display::Value(shown), of(12.34, 0.0));
        assert!(at(12.3) > 0.99 && at(12.4) < 1e-5 && at(12.2) < 1e-5);
        let nothing = EXACT.probability(Display::Value(0.0), of(0.04, 0.0));
        assert!(nothing > 0.99, "{nothing}");
        let least = EXACT.probability(Display::Value(0.1), of(0.06, 0.0));
        assert!(least > 0.99, "{least}");
        let over = EXACT.probability(Display::OverRange, of(200.0, 0.0));
        assert!(over > 0.99, "{over}");
    }

    #[test]
    fn parts_and_instrument_scatter_a_reading_together() {
        // 0.8 % of 10 and two steps, both rectangular; parts of 0.3.
        let meter_sd = (0.08 + 0.2) / 3.0_f64.sqrt();
        assert!((METER.sd_at(10.0) - meter_sd).abs() < 1e-12);
        assert!((METER.sd_at(-10.0) - meter_sd).abs() < 1e-12);
        let sd = libm::hypot(meter_sd, 0.3);
        for away in [0.0, 0.4, 0.8] {
            let is = METER.probability(Display::Value(10.0 + away), of(10.0, 0.3));
            let bell = 0.1 * normal::density(10.0 + away, 10.0, sd);
            assert!((is / bell - 1.0).abs() < 0.02, "{is} {bell}");
        }
        let Expected::Value { part_sd, .. } = Expected::within(-10.0, 0.06) else {
            panic!("a value");
        };
        assert!((part_sd - 0.6 / 3.0_f64.sqrt()).abs() < 1e-12);
    }

    #[test]
    fn one_part_drawn_is_that_part_and_draws_of_two_kinds_stay_two_kinds() {
        let shown = Display::Value(14.2);
        let one = METER.probability_of_draws(shown, &[14.5]);
        assert!((one - METER.probability(shown, of(14.5, 0.0))).abs() < 1e-12);
        // Two kernels of 1.06 · 2 · 2^-0.2 around the draws, each of half the weight.
        let kernel = 1.06 * 2.0 * libm::pow(2.0, -0.2);
        for at in [8.0, 10.0, 12.0] {
            let is = METER.probability_of_draws(Display::Value(at), &[8.0, 12.0]);
            let bells = normal::density(at, 8.0, kernel) + normal::density(at, 12.0, kernel);
            assert!((is / (0.05 * bells) - 1.0).abs() < 0.02, "{at} {is}");
        }
        // Where nothing was drawn a reading means nothing.
        let none = METER.probability_of_draws(shown, &[]);
        assert!((none - 0.002 / 2000.0).abs() < 1e-12, "{none}");
    }

    #[test]
    fn readings_of_one_part_agree_more_than_readings_of_two() {
        let expected = of(14.5, 1.0);
        let high = Display::Value(16.0);
        let once = METER.probability(high, expected);
        let twice = METER.probability_of_repeats(&[high, high], expected);
        assert!(twice > 2.0 * once * once, "{twice} {once}");
        let apart = METER.probability_of_repeats(&[high, Display::Value(13.0)], expected);
        assert!(apart < 0.01 * once * once, "{apart} {once}");
        // An open circuit and parts all alike have nothing in common but what they are.
        for alike in [Expected::Open, of(14.5, 0.0)] {
            for shown in [Display::OverRange, Display::Value(14.4)] {
                let once = METER.probability(shown, alike);
                let twice = METER.probability_of_repeats(&[shown, shown], alike);
                assert!((twice / (once * once) - 1.0).abs() < 1e-9, "{twice} {once}");
            }
        }
    }

    #[test]
    fn readings_of_one_part_sum_to_one_over_all_that_can_be_shown() {
        let small = Meter {
            step: 1.0,
            n_steps: 20,
            ..METER
        };
        for expected in [of(9.0, 0.5), of(15.0, 6.0), of(3.0, 0.01)] {
            let all: Vec<Display> = small.displays().collect();
            let pairs = all.iter().flat_map(|a| all.iter().map(|b| [*a, *b]));
            let sum: f64 = pairs
                .map(|pair| small.probability_of_repeats(&pair, expected))
                .sum();
            assert!((sum - 1.0).abs() < 1e-6, "{expected:?} {sum}");
        }
    }

    #[test]
    fn a_reading_is_unexplained_up_to_half_again_what_a_stray_one_comes_by() {
        let stray = 0.004 / 2000.0;
        assert!(METER.is_unexplained(1.4 * stray) && !METER.is_unexplained(1.6 * stray));
    }
}
