//! The marks as formulas: shares in 0..1, the total out of 100, and what a pass needs.
//!
//! ```text
//! safety     S = Π (1-s) over broken rules, once an exposure; 0 if nothing was at risk
//! diagnosis  D = ½ max(F1(first), J_first) + ½ F1(last), 0 unless the machine is put right
//!            F1 = 2 |stated ∩ true| / (|stated| + |true|)
//! evidence   Q = Σ c J / Σ c over replacements, J = max(0, 1 - 2A/c)
//! economy    E = 4^(-R/Δ), R = Σ A, Δ = max(cost of repairing without tests - V, V/4)
//! procedure  P = Σ w x / Σ w over what was due
//! total      T = 100 (0.20 S + 0.30 D (½+½Q) + 0.15 E + 0.15 P + 0.20 Q), at most 39 after a critical
//! ```
//! A right answer without evidence earns half. A is the avoidable cost of a decision, V the cost of
//! the reference policy. Weights and minima are design choices for instructors to adjust; the F
//! measure is published.

use serde::Serialize;

/// What each part weighs; together one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weights {
    /// Safety.
    pub safety: f64,
    /// Diagnosis.
    pub diagnosis: f64,
    /// Economy.
    pub economy: f64,
    /// Procedure.
    pub procedure: f64,
    /// Evidence.
    pub evidence: f64,
}

/// The usual weights. Design choice.
pub const WEIGHTS: Weights = Weights {
    safety: 0.20,
    diagnosis: 0.30,
    economy: 0.15,
    procedure: 0.15,
    evidence: 0.20,
};
/// What a broken major rule takes off safety. Design choice.
pub const MAJOR_RATIO: f64 = 0.30;
/// What a broken minor rule takes off safety. Design choice.
pub const MINOR_RATIO: f64 = 0.10;
/// Highest total after a critical rule was broken. Design choice.
pub const CRITICAL_CAP: f64 = 39.0;
/// Total that passes until a cut is set by a panel. Design choice.
pub const PASS_TOTAL: f64 = 65.0;
/// Rounding that must not decide.
const SLACK: f64 = 1e-9;

/// How grave a broken rule is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Gravity {
    /// Untidy.
    Minor,
    /// Could have hurt or flooded.
    Major,
    /// Could have killed.
    Critical,
}

/// A broken rule: which one, and in which exposure to the risk.
#[derive(Clone, Debug, PartialEq)]
pub struct Breach<'a> {
    /// The rule.
    pub rule: &'a str,
    /// How grave.
    pub gravity: Gravity,
    /// Number of the exposure; the same rule counts once in each.
    pub exposure: u32,
}

/// Safety, and whether the gate stands open. Nothing is given to those who risked nothing.
pub fn safety(breaches: &[Breach], was_exposed: bool) -> (f64, bool) {
    let is_first = |k: usize| {
        let this = &breaches[k];
        let same = |b: &Breach| b.rule == this.rule && b.exposure == this.exposure;
        !breaches[..k].iter().any(same)
    };
    let mut share = 1.0;
    let mut is_open = true;
    for k in (0..breaches.len()).filter(|&k| is_first(k)) {
        match breaches[k].gravity {
            Gravity::Minor => share *= 1.0 - MINOR_RATIO,
            Gravity::Major => share *= 1.0 - MAJOR_RATIO,
            Gravity::Critical => is_open = false,
        }
    }
    (if was_exposed { share } else { 0.0 }, is_open)
}

/// How well what was stated agrees with what is true; 1 when both are empty.
pub fn f1(n_met: usize, n_stated: usize, n_true: usize) -> f64 {
    if n_stated + n_true == 0 {
        1.0
    } else {
        2.0 * n_met as f64 / (n_stated + n_true) as f64
    }
}

/// What was stated first and last.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stated {
    /// F1 of what was stated when the first part was ordered.
    pub first_f1: f64,
    /// Justification of the first replacement; none unless exactly the fault of that part was stated.
    pub first_justification: Option<f64>,
    /// F1 of what was stated last.
    pub last_f1: f64,
}

/// Diagnosis.
pub fn diagnosis(stated: Stated, is_put_right: bool) -> f64 {
    if !is_put_right {
        return 0.0;
    }
    let first = stated
        .first_f1
        .max(stated.first_justification.unwrap_or(0.0));
    0.5 * first + 0.5 * stated.last_f1
}

/// A replacement with its cost and its justification when it was made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Replaced {
    /// Cost.
    pub cost: f64,
    /// Justification, 0..1.
    pub justification: f64,
}

/// Evidence: justification weighed by cost. Without any replacement, that of closing the job.
pub fn evidence(replaced: &[Replaced], closing: f64) -> f64 {
    let all: f64 = replaced.iter().map(|r| r.cost).sum();
    if replaced.is_empty() {
        return closing.clamp(0.0, 1.0);
    }
    if all <= 0.0 {
        let sum: f64 = replaced.iter().map(|r| r.justification).sum();
        return sum / replaced.len() as f64;
    }
    replaced
        .iter()
        .map(|r| r.cost * r.justification)
        .sum::<f64>()
        / all
}

/// The avoidable cost that brings economy to a quarter: what repairing without tests would cost more.
pub fn yardstick(cost_without_tests: f64, reference_cost: f64) -> f64 {
    (cost_without_tests - reference_cost).max(0.25 * reference_cost)
}

/// Economy.
pub fn economy(avoidable: f64, yardstick: f64) -> f64 {
    if yardstick > 0.0 {
        libm::pow(4.0, -avoidable.max(0.0) / yardstick)
    } else {
        f64::from(avoidable <= 0.0)
    }
}

/// A step that was due, with how much of it was done.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Due {
    /// What it weighs.
    pub weight: f64,
    /// Share done, 0..1.
    pub done_ratio: f64,
}

/// Procedure; nothing was due in a job that was never begun, and nothing is given for it.
pub fn procedure(due: &[Due]) -> f64 {
    let all: f64 = due.iter().map(|d| d.weight).sum();
    if all > 0.0 {
        due.iter().map(|d| d.weight * d.done_ratio).sum::<f64>() / all
    } else {
        0.0
    }
}

/// All shares of a job.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Shares {
    /// Safety.
    pub safety: f64,
    /// No critical rule was broken.
    pub is_gate_open: bool,
    /// Diagnosis.
    pub diagnosis: f64,
    /// Economy.
    pub economy: f64,
    /// Procedure.
    pub procedure: f64,
    /// The functional run and the electrical tests after the repair were done.
    pub is_proved: bool,
    /// Evidence.
    pub evidence: f64,
}

impl Shares {
    /// Diagnosis as it counts: half of it without evidence.
    pub fn effective_diagnosis(&self) -> f64 {
        self.diagnosis * (0.5 + 0.5 * self.evidence)
    }

    /// Total, 0..100.
    pub fn total(&self, weights: &Weights) -> f64 {
        let sum = weights.safety * self.safety
            + weights.diagnosis * self.effective_diagnosis()
            + weights.economy * self.economy
            + weights.procedure * self.procedure
            + weights.evidence * self.evidence;
        let total = 100.0 * sum;
        if self.is_gate_open {
            total
        } else {
            total.min(CRITICAL_CAP)
        }
    }

    /// What the job comes to; `pass_total` is the cut.
    pub fn verdict(&self, weights: &Weights, pass_total: f64) -> Verdict {
        let total = self.total(weights);
        let at_least = |share: f64, least: f64| share >= least - SLACK;
        let minima = [
            (Minimum::Gate, self.is_gate_open),
            (Minimum::Safety, at_least(self.safety, 0.70)),
            (Minimum::Diagnosis, at_least(self.diagnosis, 0.60)),
            (
                Minimum::Procedure,
                at_least(self.procedure, 0.60) && self.is_proved,
            ),
            (Minimum::Evidence, at_least(self.evidence, 0.50)),
            (Minimum::Total, at_least(total, pass_total)),
        ];
        let missed: Vec<Minimum> = minima
            .iter()
            .filter(|(_, is_met)| !is_met)
            .map(|(m, _)| *m)
            .collect();
        if !missed.is_empty() {
            return Verdict::NotYet(missed);
        }
        let sound = at_least(self.evidence, 0.80);
        if sound && at_least(total, 90.0) && at_least(self.economy, 0.80) {
            Verdict::Excellent
        } else if sound && at_least(total, 80.0) && at_least(self.economy, 0.50) {
            Verdict::Good
        } else {
            Verdict::Passed
        }
    }
}

/// What a pass needs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Minimum {
    /// No critical rule broken.
    Gate,
    /// Safety of 0.70.
    Safety,
    /// Diagnosis of 0.60.
    Diagnosis,
    /// Procedure of 0.60, with the run and the electrical tests.
    Procedure,
    /// Evidence of 0.50.
    Evidence,
    /// The total.
    Total,
}

/// What a job comes to.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// Minima that were missed.
    NotYet(Vec<Minimum>),
    /// All minima met.
    Passed,
    /// Total of 80, economy of 0.50, evidence of 0.80.
    Good,
    /// Total of 90, economy and evidence of 0.80.
    Excellent,
}

#[cfg(test)]
mod passes;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_rule_counts_once_an_exposure() {
        let breach = |exposure| Breach {
            rule: "prove_dead",
            gravity: Gravity::Major,
            exposure,
        };
        let (once, _) = safety(&[breach(1), breach(1)], true);
        let (twice, _) = safety(&[breach(1), breach(2)], true);
        assert!((once - 0.7).abs() < 1e-12 && (twice - 0.49).abs() < 1e-12);
        assert!(safety(&[], false).0.abs() < 1e-12);
    }

    #[test]
    fn nothing_stated_and_nothing_wrong_agree() {
        assert!((f1(0, 0, 0) - 1.0).abs() < 1e-12);
        assert!((f1(1, 5, 1) - 1.0 / 3.0).abs() < 1e-12);
    }

    #[test]
    fn free_repairs_are_weighed_alike_and_a_cheap_job_has_a_yardstick() {
        let free = |justification| Replaced {
            cost: 0.0,
            justification,
        };
        assert!((evidence(&[free(0.2), free(0.8)], 0.0) - 0.5).abs() < 1e-12);
        // Where tests save nothing, a quarter of the reference counts.
        assert!((yardstick(100.0, 100.0) - 25.0).abs() < 1e-12);
        assert!((economy(0.0, 0.0) - 1.0).abs() < 1e-12);
        assert!(economy(1.0, 0.0).abs() < 1e-12);
    }

    #[test]
    fn swapping_without_tests_brings_economy_to_a_quarter() {
        let span = yardstick(123.41, 81.5779);
        assert!((economy(123.41 - 81.5779, span) - 0.25).abs() < 1e-12);
    }
}
