//! How long a skill lasts: the open memory model FSRS-6, as a pure function of days.
//!
//! ```text
//! R(t) = (1 + f t/S)^(-w20)      f = 0.9^(-1/w20) - 1      t(r) = S/f (r^(-1/w20) - 1)
//! first    S = w[g-1]            D = w4 - exp(w5 (g-1)) + 1
//! success  S' = S (1 + exp(w8) (11-D) S^(-w9) (exp((1-R) w10) - 1) · w15 if hard · w16 if easy)
//! lapse    S' = min(w11 D^(-w12) ((S+1)^w13 - 1) exp((1-R) w14), S / exp(w17 w18))
//!          D' = w7 D0(4) + (1-w7) (D - w6 (g-3)(10-D)/9)      within 1 .. 10
//! ```
//! Written out here because the published crate computes in f32 with functions whose last bits
//! differ between machines. Weights: the model's published defaults, fitted to flash cards, so a
//! day at which 90 % is retained means little for skills: due dates use a lower share and the
//! instructor's longest interval always wins.

/// Published default weights of FSRS-6.
const W: [f64; 21] = [
    0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835,
    0.0614, 0.2629, 1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
];
/// Least stability, days.
const LEAST_STABILITY: f64 = 0.001;

/// How a refresher went.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Failed, or a critical safety rule was broken.
    Again,
    /// Passed, at twice the target cost or more.
    Hard,
    /// Passed.
    Good,
    /// Passed well.
    Easy,
}

impl Grade {
    fn number(self) -> f64 {
        match self {
            Grade::Again => 1.0,
            Grade::Hard => 2.0,
            Grade::Good => 3.0,
            Grade::Easy => 4.0,
        }
    }
}

/// What is known of somebody's memory of a skill after the last refresher.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Memory {
    /// Days after which 90 % would be retained.
    pub stability_days: f64,
    /// How hard it is to keep, 1 to 10.
    pub difficulty: f64,
}

impl Memory {
    /// After the first time.
    pub fn first(grade: Grade) -> Self {
        let stability = match grade {
            Grade::Again => W[0],
            Grade::Hard => W[1],
            Grade::Good => W[2],
            Grade::Easy => W[3],
        };
        Self {
            stability_days: stability,
            difficulty: first_difficulty(grade).clamp(1.0, 10.0),
        }
    }

    /// Share retained after a number of days.
    pub fn retained(&self, days: f64) -> f64 {
        libm::pow(1.0 + factor() * days.max(0.0) / self.stability_days, -W[20])
    }

    /// Days until only a share is retained.
    pub fn days_until(&self, retained: f64) -> f64 {
        self.stability_days / factor() * (libm::pow(retained, -1.0 / W[20]) - 1.0)
    }

    /// After a refresher some days after the last.
    pub fn reviewed(&self, days: f64, grade: Grade) -> Self {
        let retained = self.retained(days);
        let (s, d) = (self.stability_days, self.difficulty);
        let stability = if grade == Grade::Again {
            let lapsed = W[11]
                * libm::pow(d, -W[12])
                * (libm::pow(s + 1.0, W[13]) - 1.0)
                * libm::exp((1.0 - retained) * W[14]);
            lapsed.min(s / libm::exp(W[17] * W[18]))
        } else {
            let by_grade = match grade {
                Grade::Hard => W[15],
                Grade::Easy => W[16],
                Grade::Again | Grade::Good => 1.0,
            };
            let growth = libm::exp(W[8])
                * (11.0 - d)
                * libm::pow(s, -W[9])
                * (libm::exp((1.0 - retained) * W[10]) - 1.0);
            s * (1.0 + growth * by_grade)
        };
        let moved = d - W[6] * (grade.number() - 3.0) * (10.0 - d) / 9.0;
        let difficulty = W[7] * first_difficulty(Grade::Easy) + (1.0 - W[7]) * moved;
        Self {
            stability_days: stability.max(LEAST_STABILITY),
            difficulty: difficulty.clamp(1.0, 10.0),
        }
    }
}

/// After a history of `(day, grade)` in order; of several on one day the first counts, since the
/// model's rule for the same day is another. `None` without any.
pub fn after(history: &[(f64, Grade)]) -> Option<(f64, Memory)> {
    let (first, rest) = history.split_first()?;
    let mut last = first.0;
    let mut memory = Memory::first(first.1);
    for (day, grade) in rest {
        if day - last >= 1.0 {
            memory = memory.reviewed(day - last, *grade);
            last = *day;
        }
    }
    Some((last, memory))
}

fn first_difficulty(grade: Grade) -> f64 {
    W[4] - libm::exp(W[5] * (grade.number() - 1.0)) + 1.0
}

fn factor() -> f64 {
    libm::pow(0.9, -1.0 / W[20]) - 1.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn at_its_stability_nine_tenths_are_retained() {
        let memory = Memory::first(Grade::Good);
        assert!((memory.retained(memory.stability_days) - 0.9).abs() < 1e-14);
        assert!(
            (memory.days_until(0.7) - memory.days_until(0.7).max(memory.days_until(0.9))).abs()
                < 1e-12
        );
        assert!((memory.retained(memory.days_until(0.7)) - 0.7).abs() < 1e-12);
    }

    #[test]
    fn a_better_grade_keeps_longer() {
        let memory = Memory::first(Grade::Good);
        let kept = |grade| memory.reviewed(30.0, grade).stability_days;
        assert!(kept(Grade::Again) < kept(Grade::Hard));
        assert!(kept(Grade::Hard) < kept(Grade::Good));
        assert!(kept(Grade::Good) < kept(Grade::Easy));
    }

    #[test]
    fn the_same_day_counts_once() {
        let once = after(&[(3.0, Grade::Good), (40.0, Grade::Hard)]);
        let twice = after(&[(3.0, Grade::Good), (3.2, Grade::Easy), (40.0, Grade::Hard)]);
        assert_eq!(once, twice);
        assert_eq!(after(&[]), None);
    }
}
