//! How simulated apprentices fare with a job: so many put it right, what it cost them, how often they
//! were unsafe. A first measure of how hard a job is, before anyone has tried it.

use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::Mutex;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::job::Job;
use crate::bench::safety::Severity;
use crate::bench::scenario::Scenario;
use crate::expert::crowd;
use crate::expert::crowd::Almanac;
use crate::expert::crowd::Kind;
use crate::machine::MachineError;
use crate::score::report::assess;

/// One apprentice's job.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// The machine was put right, or rightly left.
    pub is_fixed: bool,
    /// Cost with a callback where it was not, money unit.
    pub cost: f64,
    /// Price of parts and material, money unit.
    pub material: f64,
    /// Time on site, min.
    pub minutes: f64,
    /// Safety rules broken.
    pub n_findings: usize,
    /// One of them was critical.
    pub is_unsafe: bool,
    /// One of them was major.
    pub is_risky: bool,
    /// One of them was minor.
    pub is_careless: bool,
}

#[cfg(test)]
impl Run {
    /// A run for tests, with rules of these weights broken.
    pub fn made_up(is_unsafe: bool, is_risky: bool, is_careless: bool) -> Self {
        Self {
            is_fixed: true,
            cost: 1.0,
            material: 0.0,
            minutes: 1.0,
            n_findings: 1,
            is_unsafe,
            is_risky,
            is_careless,
        }
    }
}

/// How a crowd of one kind fared.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Fared {
    /// The kind.
    pub kind: Kind,
    /// Apprentices.
    pub runs: usize,
    /// Share that put it right.
    pub success_ratio: f64,
    /// Half the width of its 95 % interval. Published: normal approximation.
    pub success_margin: f64,
    /// Mean cost, money unit.
    pub cost: f64,
    /// Mean price of parts and material, money unit.
    pub material: f64,
    /// Mean time on site, min.
    pub minutes: f64,
    /// A tenth needed more than this, min.
    pub minutes_p90: f64,
    /// Mean number of safety rules broken.
    pub safety_findings: f64,
    /// Share that broke a critical one.
    pub unsafe_ratio: f64,
    /// Share that broke a major one.
    pub risky_ratio: f64,
    /// Share that broke a minor one.
    pub careless_ratio: f64,
}

/// A job for a crowd.
#[derive(Debug)]
pub struct Crowd {
    scenario: Arc<Scenario>,
    almanac: Almanac,
    /// Whether a machine left like this is right: most are left in one of a few ways.
    judged: Mutex<BTreeMap<String, bool>>,
}

impl Crowd {
    /// Prepares a job; `told` hears how many of how many causes are done.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn new(
        scenario: &Arc<Scenario>,
        told: &mut dyn FnMut(usize, usize),
    ) -> Result<Self, MachineError> {
        Ok(Self {
            scenario: Arc::clone(scenario),
            almanac: Almanac::of(scenario, told)?,
            judged: Mutex::default(),
        })
    }

    /// One apprentice works the job.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn run(&self, kind: Kind, seed: u64) -> Result<Run, MachineError> {
        let mut job = Job::new(Arc::clone(&self.scenario), seed)?;
        crowd::work(&mut job, &self.almanac, kind, seed);
        let is_fixed = self.is_fixed(&job)?;
        let callback = if is_fixed {
            0.0
        } else {
            self.scenario.money.callback
        };
        let broke = |severity: Severity| job.safety().iter().any(|f| f.severity == severity);
        Ok(Run {
            is_fixed,
            cost: job.cost() + callback,
            material: job.ledger().material,
            minutes: job.tick() as f64 / 600.0,
            n_findings: job.safety().len(),
            is_unsafe: broke(Severity::Critical),
            is_risky: broke(Severity::Major),
            is_careless: broke(Severity::Minor),
        })
    }

    fn is_fixed(&self, job: &Job) -> Result<bool, MachineError> {
        let bench = job.bench();
        let setup = job.machine().setup();
        let left = format!(
            "{:?} {:?} {:?} {:?} {:?} {:?} {:?}",
            bench.ending,
            bench.advice,
            setup.healed,
            setup.open,
            setup.overrides,
            bench.off,
            bench.apart
        );
        if let Some(known) = self.judged.lock().ok().and_then(|j| j.get(&left).copied()) {
            return Ok(known);
        }
        let is_fixed = assess(job)?.fixed;
        if let Ok(mut judged) = self.judged.lock() {
            judged.insert(left, is_fixed);
        }
        Ok(is_fixed)
    }
}

/// What all runs of a kind come to.
pub fn fared(kind: Kind, runs: &[Run]) -> Fared {
    let n = runs.len().max(1) as f64;
    let mean = |of: fn(&Run) -> f64| runs.iter().map(of).sum::<f64>() / n;
    let share = |is: fn(&Run) -> bool| runs.iter().filter(|run| is(run)).count() as f64 / n;
    let success_ratio = share(|r| r.is_fixed);
    let mut minutes: Vec<f64> = runs.iter().map(|r| r.minutes).collect();
    minutes.sort_by(f64::total_cmp);
    Fared {
        kind,
        runs: runs.len(),
        success_ratio,
        success_margin: 1.96 * (success_ratio * (1.0 - success_ratio) / n).sqrt(),
        cost: mean(|r| r.cost),
        material: mean(|r| r.material),
        minutes: mean(|r| r.minutes),
        minutes_p90: minutes
            .get(minutes.len() * 9 / 10)
            .copied()
            .unwrap_or_default(),
        safety_findings: mean(|r| r.n_findings as f64),
        unsafe_ratio: share(|r| r.is_unsafe),
        risky_ratio: share(|r| r.is_risky),
        careless_ratio: share(|r| r.is_careless),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn runs_come_to_means_a_margin_and_the_time_nine_in_ten_need() {
        // 20 runs, 15 of them fixed, at 10, 20, … 200 and 1, 2, … 20 min.
        let runs: Vec<Run> = (1..=20)
            .map(|n: u32| Run {
                is_fixed: n > 5,
                cost: 10.0 * f64::from(n),
                minutes: f64::from(n),
                ..Run::made_up(false, false, false)
            })
            .collect();
        let fared = fared(Kind::Novice, &runs);
        assert_eq!(fared.runs, 20);
        // The normal interval of a share at 95 %: 1.96 √(p (1-p) / n), any textbook of statistics.
        let wanted = [0.75, 0.189_776, 105.0, 10.5, 19.0];
        let is = [
            fared.success_ratio,
            fared.success_margin,
            fared.cost,
            fared.minutes,
            fared.minutes_p90,
        ];
        for (is, wanted) in is.iter().zip(wanted) {
            assert!((is - wanted).abs() < 1e-6, "{is}, not {wanted}");
        }
    }

    #[test]
    fn broken_rules_are_counted_by_how_serious_they_are() {
        let runs = [
            Run::made_up(false, true, true),
            Run::made_up(true, true, false),
            Run::made_up(false, false, false),
            Run::made_up(false, true, false),
        ];
        let fared = fared(Kind::Novice, &runs);
        let ratios = [fared.unsafe_ratio, fared.risky_ratio, fared.careless_ratio];
        for (is, wanted) in ratios.iter().zip([0.25, 0.75, 0.25]) {
            assert!((is - wanted).abs() < 1e-12, "{ratios:?}");
        }
    }

    #[test]
    fn a_run_says_what_its_job_says_and_only_a_machine_left_ill_costs_a_callback() {
        let scenario = crate::scenario::job("no_water")
            .expect("sound")
            .expect("ships");
        let crowd = Crowd::new(&scenario, &mut |_, _| ()).expect("sound");
        let (mut is_any_fixed, mut n_findings) = (false, 0);
        for (kind, seed) in Kind::ALL
            .into_iter()
            .flat_map(|kind| [1, 2, 3].map(|seed| (kind, seed)))
        {
            let run = crowd.run(kind, seed).expect("runs");
            let mut job = Job::new(Arc::clone(&scenario), seed).expect("starts");
            crowd::work(&mut job, &crowd.almanac, kind, seed);
            let is_ill = !assess(&job).expect("runs").fixed;
            assert_eq!(run.is_fixed, !is_ill);
            let callback = if is_ill { scenario.money.callback } else { 0.0 };
            assert!((run.cost - job.cost() - callback).abs() < 1e-9, "{run:?}");
            assert!((run.minutes - job.tick() as f64 / 600.0).abs() < 1e-9);
            let broken = |severity| job.safety().iter().any(|f| f.severity == severity);
            assert_eq!(run.is_unsafe, broken(Severity::Critical));
            assert_eq!(run.is_risky, broken(Severity::Major));
            assert_eq!(run.is_careless, broken(Severity::Minor));
            is_any_fixed |= !is_ill;
            n_findings += run.n_findings;
        }
        assert!(is_any_fixed && n_findings > 0, "nobody was put to the test");
    }
}
