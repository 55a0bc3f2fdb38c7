//! What could explain a job: no fault, each single fault that the machine can have, and the pairs
//! that an instructor allows.
//!
//! ```text
//! P(fault)  ∝ weight                       the catalogue's weights
//! P(pair)   = min(P(a), P(b)) / 4          an instructor names only pairs that do come
//! P(none)   = 0.02
//! ```
//! Any part or wire may have a bad contact inside: of those that are always there as a rule, one in
//! 25 comes and goes. A fault that comes in degrees is reckoned with at full, three quarters and half
//! severity, and where it is likely at some between, too (see `finer`); in pairs at full and half, each
//! with each; all count as one cause.

use serde::Deserialize;
use serde::Serialize;

use crate::bench::scenario::Scenario;
use crate::machine::ActiveFault;
use crate::machine::FaultClass;
use crate::machine::FaultDef;
use crate::machine::Onset;

/// Prior of a sound machine. Design choice: customers do call without need.
pub const NO_FAULT_PRIOR: f64 = 0.02;
/// An allowed pair beside the rarer of its two faults. Design choice.
const PAIR_RATIO: f64 = 0.25;
/// Severities of a fault that comes in degrees.
const DEGREES: [f64; 3] = [1.0, 0.75, 0.5];
const PAIR_DEGREES: [f64; 2] = [1.0, 0.5];

/// How often a fault of a part or wire that is always there as a rule comes and goes. Design choice.
pub const LOOSE_RATIO: f64 = 0.04;
/// How it does then.
const LOOSE: Chance = Chance {
    period_s: 60.0,
    chance_ratio: 0.5,
};

/// How many faults that come in degrees are there in full. Design choice: a part that is called for has
/// mostly gone all the way.
const FULL_RATIO: f64 = 1.0 / 3.0;

/// A cause: names of the faults that are there together; none for a sound machine.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Cause(pub Vec<String>);

/// A cause as one machine can have it.
#[derive(Clone, Debug, PartialEq)]
pub struct Variant {
    /// Place in the list of causes.
    pub cause: usize,
    /// The faults. One that comes by chance is there all the time; see `chance`.
    pub faults: Vec<ActiveFault>,
    /// Prior.
    pub prior: f64,
    /// A fault that comes and goes by chance.
    pub chance: Option<Chance>,
    /// One that may do so though it does not as a rule.
    pub loose: Option<Chance>,
}

/// How a fault comes and goes by chance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chance {
    /// Length of a draw, s.
    pub period_s: f64,
    /// Chance that it is there in a period.
    pub chance_ratio: f64,
}

/// All causes of a job, the sound machine first.
pub fn causes(scenario: &Scenario) -> Vec<Cause> {
    let singles = scenario.machine.faults.iter().map(|f| vec![f.id.clone()]);
    let pairs = scenario.double_faults.iter().map(|pair| pair.to_vec());
    std::iter::once(Vec::new())
        .chain(singles)
        .chain(pairs)
        .map(Cause)
        .collect()
}

/// The machines to reckon with, the sound one first. Priors sum to one.
pub fn variants(scenario: &Scenario, causes: &[Cause]) -> Vec<Variant> {
    let model = &scenario.machine;
    let total: f64 = model.faults.iter().map(|f| f.weight).sum();
    let mut variants = Vec::new();
    for (index, cause) in causes.iter().enumerate() {
        let defs: Vec<_> = cause.0.iter().filter_map(|id| model.fault(id)).collect();
        let rarest = defs.iter().map(|d| d.weight / total).fold(1.0, f64::min);
        let share = if defs.len() > 1 {
            PAIR_RATIO * rarest
        } else {
            rarest
        };
        let prior = if defs.is_empty() {
            NO_FAULT_PRIOR
        } else {
            share * (1.0 - NO_FAULT_PRIOR)
        };
        let degrees = if defs.len() > 1 {
            &PAIR_DEGREES[..]
        } else {
            &DEGREES[..]
        };
        let n_degrees = |graded: bool| if graded { degrees.len() } else { 1 };
        let counts: Vec<usize> = defs.iter().map(|d| n_degrees(d.is_graded)).collect();
        let n_ways: usize = counts.iter().product();
        let chance = defs.iter().find_map(|d| match d.onset {
            Onset::Intermittent {
                period_s,
                chance_ratio,
            } => Some(Chance {
                period_s,
                chance_ratio,
            }),
            _ => None,
        });
        let is_loose = |d: &&FaultDef| {
            matches!(d.class, FaultClass::Part | FaultClass::Harness) && !d.wiring.is_empty()
        };
        let loose = match defs.as_slice() {
            [one] if is_loose(one) => Some(LOOSE),
            _ => None,
        };
        let shares = shares(&DEGREES);
        for way in 0..n_ways {
            let mut rest = way;
            let share = if defs.len() == 1 && n_ways > 1 {
                shares[way]
            } else {
                1.0 / n_ways as f64
            };
            let faults = defs.iter().zip(&counts).map(|(d, n)| {
                let degree = rest % n;
                rest /= n;
                ActiveFault {
                    id: d.id.clone(),
                    severity_ratio: degrees[degree],
                    onset: chance.map(|_| Onset::Constant),
                }
            });
            variants.push(Variant {
                cause: index,
                faults: faults.collect(),
                prior: prior * share,
                chance,
                loose: loose.filter(|_| chance.is_none()),
            });
        }
    }
    let sum: f64 = variants.iter().map(|v| v.prior).sum();
    for variant in &mut variants {
        variant.prior /= sum;
    }
    variants
}

/// Share of each degree, the full one first: of those that are not there in full, half way to its
/// neighbours over the whole way.
pub(super) fn shares(degrees: &[f64]) -> Vec<f64> {
    let gaps: Vec<f64> = degrees.windows(2).map(|d| (d[0] - d[1]).abs()).collect();
    let whole: f64 = gaps.iter().sum();
    let gap = |at: Option<usize>| at.and_then(|at| gaps.get(at)).copied().unwrap_or(0.0);
    (0..degrees.len())
        .map(|k| {
            let cell = 0.5 * (gap(k.checked_sub(1)) + gap(Some(k))) / whole;
            let full = if k == 0 { FULL_RATIO } else { 0.0 };
            full + (1.0 - FULL_RATIO) * cell
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job;

    #[test]
    fn a_third_is_there_in_full_and_the_rest_goes_by_the_way_between() {
        let shares = shares(&[1.0, 0.75, 0.625, 0.5]);
        for (is, cell) in shares.iter().zip([0.75, 0.375, 0.25, 0.125]) {
            assert!((is - 2.0 / 3.0 * cell).abs() < 1e-12, "{shares:?}");
        }
    }

    fn of_job(id: &str) -> (Vec<Cause>, Vec<Variant>) {
        let scenario = job(id).expect("sound").expect("ships");
        let causes = causes(&scenario);
        let variants = variants(&scenario, &causes);
        (causes, variants)
    }

    fn of<'a>(
        (causes, variants): &'a (Vec<Cause>, Vec<Variant>),
        ids: &[&str],
    ) -> Vec<&'a Variant> {
        let cause = causes.iter().position(|c| c.0 == ids).expect("a cause");
        variants.iter().filter(|v| v.cause == cause).collect()
    }

    fn prior(variants: &[&Variant]) -> f64 {
        variants.iter().map(|v| v.prior).sum()
    }

    #[test]
    fn the_sound_machine_comes_first_and_one_call_in_fifty_is_without_need() {
        let all = of_job("hums_and_stands");
        assert!(all.1[0].faults.is_empty() && (all.1[0].prior - 0.02).abs() < 1e-12);
        let sum: f64 = all.1.iter().map(|v| v.prior).sum();
        assert!((sum - 1.0).abs() < 1e-12, "{sum}");
    }

    #[test]
    fn a_pair_is_a_quarter_as_likely_as_its_rarer_fault() {
        let all = of_job("half_as_strong_since_the_fitter");
        let sum: f64 = all.1.iter().map(|v| v.prior).sum();
        assert!((sum - 1.0).abs() < 1e-12, "{sum}");
        for ids in [
            ["earth_wire_left_off", "capacitor_low"],
            ["tub_cracked", "basket_bearing_rough"],
        ] {
            let pair = prior(&of(&all, &ids));
            let [one, other] = ids.map(|id| prior(&of(&all, &[id])));
            assert!(
                (pair / one.min(other) - 0.25).abs() < 1e-9,
                "{ids:?} {pair}"
            );
        }
    }

    #[test]
    fn two_faults_in_degrees_are_reckoned_with_each_with_each() {
        let shipped = job("hums_and_stands").expect("sound").expect("ships");
        let mut scenario = Scenario::clone(&shipped);
        let ids = ["capacitor_low", "belt_slightly_loose"];
        scenario.double_faults = vec![ids.map(str::to_owned)];
        let causes = causes(&scenario);
        let all = (causes.clone(), variants(&scenario, &causes));
        let pair = of(&all, &ids);
        let degrees: Vec<[f64; 2]> = pair
            .iter()
            .map(|v| [0, 1].map(|at: usize| v.faults[at].severity_ratio))
            .collect();
        assert_eq!(degrees, [[1.0, 1.0], [0.5, 1.0], [1.0, 0.5], [0.5, 0.5]]);
    }

    #[test]
    fn a_fault_in_degrees_is_mostly_a_whole_one_and_a_pair_of_them_each_with_each() {
        let all = of_job("half_as_strong_since_the_fitter");
        let low = of(&all, &["capacitor_low"]);
        let degrees: Vec<f64> = low.iter().map(|v| v.faults[0].severity_ratio).collect();
        assert_eq!(degrees, [1.0, 0.75, 0.5]);
        let whole = prior(&low);
        // A third is there in full, and the rest: a quarter, a half, a quarter.
        for (v, share) in low.iter().zip([0.5, 1.0 / 3.0, 1.0 / 6.0]) {
            assert!(
                (v.prior / whole - share).abs() < 1e-9,
                "{} {share}",
                v.prior / whole
            );
        }
        let pair = of(&all, &["tub_cracked", "basket_bearing_rough"]);
        let degrees: Vec<f64> = pair.iter().map(|v| v.faults[1].severity_ratio).collect();
        assert_eq!(degrees, [1.0, 0.5]);
        assert!(
            pair.iter()
                .all(|v| (v.faults[0].severity_ratio - 1.0).abs() < 1e-12)
        );
        assert!((pair[0].prior - pair[1].prior).abs() < 1e-15);
        let rings = of(&all, &["rod_spring_weak", "balance_ring_empty"]);
        assert_eq!(rings.len(), 2);
    }

    #[test]
    fn what_comes_and_goes_is_reckoned_with_as_there_and_any_contact_may() {
        let all = of_job("hums_and_stands");
        for v in of(&all, &["cord_intermittent"]) {
            assert!(v.chance.is_some() && v.loose.is_none());
            assert_eq!(v.faults[0].onset, Some(Onset::Constant));
        }
        // A wire inside may be loose; a belt, a tap or a setting is not.
        for (id, is_loose) in [
            ("capacitor_open", true),
            ("belt_off", false),
            ("tap_closed", false),
        ] {
            for v in of(&all, &[id]) {
                assert_eq!((v.chance, v.loose.is_some()), (None, is_loose), "{id}");
                assert_eq!(v.faults[0].onset, None, "{id}");
            }
        }
        let house = of(&all, &["socket_line_open"]);
        assert!(
            house.iter().all(|v| v.loose.is_none()),
            "the house is no part"
        );
    }
}
