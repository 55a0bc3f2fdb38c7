//! Over many jobs drawn by chance the expert's belief is worth what it says, and the machine is put
//! right at the first visit.

use rayon::prelude::*;
use tubwright::expert::Cause;

use crate::drawn::Customer;
use crate::drawn::Drawn;
use crate::drawn::drawn;
use crate::drawn::round;
use crate::play::Worked;

/// Drawn jobs in the quick tests.
const FEW: u64 = 6;

/// Pairs of what was believed of a cause and whether it was so, in ten classes, each by what its job
/// counts for.
#[derive(Clone, Copy, Debug, Default)]
pub struct Calibration {
    believed: [f64; 10],
    was_so: [f64; 10],
    weight: [f64; 10],
    n: [u32; 10],
}

impl Calibration {
    fn see(&mut self, p: f64, is_so: bool, weight: f64) {
        let class = ((p * 10.0) as usize).min(9);
        self.believed[class] += weight * p;
        self.was_so[class] += weight * f64::from(u8::from(is_so));
        self.weight[class] += weight;
        self.n[class] += 1;
    }

    fn with(mut self, other: &Self) -> Self {
        for class in 0..10 {
            self.believed[class] += other.believed[class];
            self.was_so[class] += other.was_so[class];
            self.weight[class] += other.weight[class];
            self.n[class] += other.n[class];
        }
        self
    }

    fn of(worked: &Worked, weight: f64) -> Self {
        let mut sum = Self::default();
        let causes = worked.played.belief.causes();
        let truth: Vec<&String> = worked.scenario.faults.iter().map(|f| &f.id).collect();
        let history = worked.played.belief.history();
        // Every moment that moved it.
        for evidence in history
            .iter()
            .filter(|e| e.step == 0 || e.surprise_bits > 0.01)
        {
            // No machine is drawn without a fault: what is believed given that there is one.
            let is_fault = |(cause, _): &(&Cause, &f64)| !cause.0.is_empty();
            let pairs = || causes.iter().zip(&evidence.after).filter(is_fault);
            let some: f64 = pairs().map(|(_, p)| p).sum();
            for (cause, p) in pairs() {
                sum.see(p / some, cause.0.iter().eq(truth.iter().copied()), weight);
            }
        }
        sum
    }

    /// Causes that were held for all but certain at some moment and were not so, with the last such step.
    fn mistaken(worked: &Worked) -> Vec<String> {
        let causes = worked.played.belief.causes();
        let truth: Vec<&String> = worked.scenario.faults.iter().map(|f| &f.id).collect();
        let history = worked.played.belief.history();
        let told = causes.iter().enumerate().filter_map(|(i, cause)| {
            let is_so = cause.0.iter().eq(truth.iter().copied());
            let mut held = history.iter().filter(|e| e.after[i] > 0.8);
            let (n, last) = (held.clone().count(), held.next_back()?);
            (!is_so).then(|| {
                format!(
                    "{:?} in {n} steps, last at {}: {:.3}",
                    cause.0, last.step, last.after[i]
                )
            })
        });
        told.collect()
    }

    /// Classes in which what was believed and what was so differ by more than five points, and more
    /// than `n_sigma` times what chance makes of so many jobs.
    fn wide(&self, n_sigma: f64) -> Vec<usize> {
        let is_wide = |class: &usize| {
            if self.n[*class] == 0 {
                return false;
            }
            let p = self.believed[*class] / self.weight[*class];
            let by_chance = n_sigma * (p * (1.0 - p) / f64::from(self.n[*class])).sqrt();
            let gap = (p - self.was_so[*class] / self.weight[*class]).abs();
            gap.is_nan() || gap > 0.05 + by_chance
        };
        (0..10).filter(is_wide).collect()
    }

    fn told(&self) -> String {
        (0..10)
            .map(|class| {
                let weight = self.weight[class].max(f64::MIN_POSITIVE);
                format!(
                    "{:>3}-{:>3} %: believed {:6.2} %, was so {:6.2} %  ({} pairs, weight {:.1})\n",
                    class * 10,
                    class * 10 + 10,
                    100.0 * self.believed[class] / weight,
                    100.0 * self.was_so[class] / weight,
                    self.n[class],
                    self.weight[class]
                )
            })
            .collect()
    }
}

/// What became of a number of drawn jobs.
struct Tally {
    n: usize,
    fixed: usize,
    safe: usize,
    calibration: Calibration,
}

impl Tally {
    fn of(numbers: std::ops::Range<u64>, customer: Customer) -> Self {
        let began = std::time::Instant::now();
        let results: Vec<(bool, bool, Calibration)> = numbers
            .into_par_iter()
            .map(|number| {
                let Drawn { scenario, weight } = drawn(number, customer);
                let worked = Worked::of(&scenario, number);
                if !worked.is_right() {
                    println!("{}", worked.told());
                }
                if std::env::var_os("TUBWRIGHT_TELL").is_some() {
                    tell(&worked);
                }
                for mistake in Calibration::mistaken(&worked) {
                    println!("{}: {mistake}", worked.scenario.id);
                }
                let is_safe = worked.rules().is_empty();
                (
                    worked.report.fixed,
                    is_safe,
                    Calibration::of(&worked, weight),
                )
            })
            .collect();
        let tally = Self {
            n: results.len(),
            fixed: results.iter().filter(|r| r.0).count(),
            safe: results.iter().filter(|r| r.1).count(),
            calibration: results
                .iter()
                .fold(Calibration::default(), |sum, r| sum.with(&r.2)),
        };
        println!(
            "{customer:?}: fixed {}, safe {} of {}, {:.0} s",
            tally.fixed,
            tally.safe,
            tally.n,
            began.elapsed().as_secs_f64()
        );
        println!("{}", tally.calibration.told());
        tally
    }
}

/// Every step that moved the belief, with what is likeliest after it.
fn tell(worked: &Worked) {
    println!(
        "{:?} {:?}",
        worked.scenario.faults, worked.scenario.customer.complaint
    );
    let causes = worked.played.belief.causes();
    let log = worked.job.log();
    for evidence in worked.played.belief.history() {
        let mut likely: Vec<(f64, String)> = evidence
            .after
            .iter()
            .zip(causes)
            .map(|(p, c)| (*p, c.0.join("+")))
            .collect();
        likely.sort_by(|a, b| b.0.total_cmp(&a.0));
        let act = evidence
            .step
            .checked_sub(1)
            .and_then(|n| log.get(n))
            .map(|e| serde_json::to_string(e).expect("writes"));
        let likely: Vec<String> = likely
            .iter()
            .take(4)
            .map(|(p, c)| format!("{c} {p:.3}"))
            .collect();
        println!(
            "{} {:.2} {} {}",
            evidence.step,
            evidence.surprise_bits,
            act.unwrap_or_default(),
            likely.join(", ")
        );
    }
}

fn number(name: &str, or: u64) -> u64 {
    let text = std::env::var(name).ok();
    text.and_then(|v| v.parse().ok()).unwrap_or(or)
}

#[test]
fn over_a_few_drawn_jobs_the_machine_is_put_right_and_belief_is_worth_what_it_says() {
    let tally = Tally::of(5000..5000 + FEW, Customer::Honest);
    assert!(tally.fixed + 1 >= tally.n, "{} of {}", tally.fixed, tally.n);
    assert!(tally.safe + 1 >= tally.n, "{} of {}", tally.safe, tally.n);
    let wide = tally.calibration.wide(3.0);
    assert!(wide.is_empty(), "classes {wide:?}");
}

#[test]
fn a_misleading_customer_costs_time_and_not_the_repair() {
    let tally = Tally::of(6000..6000 + FEW / 2, Customer::Misleading);
    assert!(tally.fixed + 1 >= tally.n, "{} of {}", tally.fixed, tally.n);
}

#[test]
#[ignore = "an hour: a thousand jobs"]
fn over_a_thousand_drawn_jobs_belief_is_calibrated_and_the_machine_is_put_right() {
    let (from, n) = (
        number("TUBWRIGHT_FROM", 0),
        number("TUBWRIGHT_JOBS", round()),
    );
    let customer = if std::env::var_os("TUBWRIGHT_MISLEAD").is_some() {
        Customer::Misleading
    } else {
        Customer::Honest
    };
    let tally = Tally::of(from..from + n, customer);
    let is_most = |count: usize| count as f64 >= 0.97 * tally.n as f64;
    assert!(is_most(tally.fixed), "{} put right", tally.fixed);
    assert!(is_most(tally.safe), "{} without a finding", tally.safe);
    let wide = tally.calibration.wide(0.0);
    assert!(wide.is_empty(), "off by more than five points: {wide:?}");
}
