//! Jobs drawn by chance: any machine, any fault by its weight and in any degree, all parts on board,
//! and a customer who complains as the catalogue says, or of something else altogether. Some things
//! are rare and yet come: an honest customer whose words mislead, a part with a bad contact inside.
//!
//! Machines and faults are drawn evenly, by a golden ratio sequence: among many jobs that follow each
//! other every fault comes as often as its weight says. Were they drawn one by one, the luck of which
//! faults come twice would blur what is measured more than the five points in question, since one job
//! gives ten and more beliefs that are alike. Source: Owen, Monte Carlo theory, methods and examples,
//! quasi-Monte Carlo; from memory.

use std::sync::Arc;

use tubwright::bench::scenario::Scenario;
use tubwright::machine::ActiveFault;
use tubwright::machine::FaultClass;
use tubwright::machine::FaultDef;
use tubwright::machine::Onset;
use tubwright::machine::draw_ratio;
use tubwright::scenario::jobs;

const PURPOSE: u64 = 0x6472_6177;
/// Golden ratio less one.
const GOLDEN: f64 = 0.618_033_988_749_894_9;
/// How many faults that come in degrees are there in full. This share and the next ones: design choices,
/// as the expert reckons with.
const FULL_RATIO: f64 = 1.0 / 3.0;
/// How many honest customers say what belongs to another fault.
const MISLEADS: f64 = 0.05;
/// How many faults of a part or wire come and go though they do not as a rule.
const LOOSE_RATIO: f64 = 0.04;

/// The customer's words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Customer {
    /// As the catalogue has it for the fault, but for a few.
    Honest,
    /// As it has it for another fault of the machine.
    Misleading,
}

/// A job with one fault; the same for the same number.
pub fn drawn(number: u64, customer: Customer) -> Arc<Scenario> {
    let all = jobs().expect("sound");
    let draw = |index: u64| draw_ratio(number, PURPOSE, index);
    let machines: Vec<&Arc<Scenario>> = ["P", "T", "N"]
        .iter()
        .filter_map(|id| all.iter().find(|job| job.machine.id == *id))
        .collect();
    let n = machines.len() as u64;
    let like = machines[(number % n) as usize];
    let fault = by_weight(&like.machine.faults, ((number / n) as f64 * GOLDEN).fract());
    let misleads = customer == Customer::Misleading || draw(5) < MISLEADS;
    let told = if misleads {
        by_weight(&like.machine.faults, draw(2))
    } else {
        fault
    };
    let may_be_loose = matches!(fault.class, FaultClass::Part | FaultClass::Harness)
        && !fault.wiring.is_empty()
        && fault.onset == Onset::Constant;
    let loose = Onset::Intermittent {
        period_s: 60.0,
        chance_ratio: 0.5,
    };
    let severity_ratio = if fault.is_graded && draw(0) > FULL_RATIO {
        0.5 + 0.5 * draw(3)
    } else {
        1.0
    };
    let mut scenario = Scenario::clone(like);
    scenario.id = format!("{number} {} {}", scenario.machine.id, fault.id);
    scenario.customer.complaint = told.complaint.clone();
    scenario.customer.answers.clear();
    scenario.faults = vec![ActiveFault {
        id: fault.id.clone(),
        severity_ratio,
        onset: (may_be_loose && draw(6) < LOOSE_RATIO).then_some(loose),
    }];
    scenario.double_faults.clear();
    scenario.van = scenario
        .workshop
        .parts
        .iter()
        .map(|p| p.id.clone())
        .collect();
    scenario.site.tap_open = true;
    scenario.site.water_kg = 0.0;
    scenario.site.params.clear();
    scenario.site.rcd_a = Some(0.03);
    Arc::new(scenario)
}

fn by_weight(faults: &[FaultDef], at: f64) -> &FaultDef {
    let total: f64 = faults.iter().map(|f| f.weight).sum();
    let mut left = at * total;
    for fault in faults {
        left -= fault.weight;
        if left <= 0.0 {
            return fault;
        }
    }
    &faults[faults.len() - 1]
}
