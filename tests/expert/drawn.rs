//! Jobs drawn by chance: any machine, any fault by its weight and in any degree, all parts on board,
//! and a customer who complains as the catalogue says, or of something else altogether. Some things
//! are rare and yet come: an honest customer whose words mislead, a part with a bad contact inside.
//!
//! Every fault of every machine comes about as often as its weight says and at least once, and a job
//! counts by what its fault weighs over how often it comes: stratified sampling, with one stratum a
//! fault. Were faults drawn one by one, the luck of which of two alike ones comes twice would blur what is
//! measured more than the five points in question, since one job gives ten and more beliefs that are
//! alike. Source: Cochran, Sampling techniques, stratified random sampling; from memory.

use std::sync::Arc;
use std::sync::LazyLock;

use tubwright::bench::scenario::Scenario;
use tubwright::machine::ActiveFault;
use tubwright::machine::FaultClass;
use tubwright::machine::FaultDef;
use tubwright::machine::Onset;
use tubwright::machine::draw_ratio;
use tubwright::scenario::jobs;

const PURPOSE: u64 = 0x6472_6177;
/// Jobs in a round of all machines and faults, nearly; and the step from one to the next in it, so that
/// what stands beside each other comes far apart.
const ROUND: f64 = 1000.0;
const STRIDE: usize = 617;
/// How many faults that come in degrees are there in full. This share and the next ones: design choices,
/// as the expert reckons with.
const FULL_RATIO: f64 = 1.0 / 3.0;
/// How many honest customers say what belongs to another fault.
const MISLEADS: f64 = 0.05;
/// How many faults of a part or wire come and go though they do not as a rule.
const LOOSE_RATIO: f64 = 0.04;
/// How many of these customers say so.
const SAID_IF_LOOSE: f64 = 0.3;

/// The customer's words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Customer {
    /// As the catalogue has it for the fault, but for a few.
    Honest,
    /// As it has it for another fault of the machine.
    Misleading,
}

/// A job with one fault.
pub struct Drawn {
    pub scenario: Arc<Scenario>,
    /// What it counts for; one on average.
    pub weight: f64,
}

/// A fault of a machine as often as it comes in a round.
struct Stratum {
    like: Arc<Scenario>,
    fault: usize,
    weight: f64,
}

/// One entry a job of a round.
static STRATA: LazyLock<Vec<Stratum>> = LazyLock::new(|| {
    let all = jobs().expect("sound");
    let of = |id: &str| all.iter().find(|job| job.machine.id == id);
    let machines: Vec<&Arc<Scenario>> = ["P", "T", "N"].into_iter().filter_map(of).collect();
    let mut strata = Vec::new();
    for like in &machines {
        let faults = &like.machine.faults;
        let total: f64 = faults.iter().map(|f| f.weight).sum();
        for (fault, def) in faults.iter().enumerate() {
            let due = ROUND / machines.len() as f64 * def.weight / total;
            let times = due.round().max(1.0);
            strata.extend((0..times as usize).map(|_| Stratum {
                like: Arc::clone(like),
                fault,
                weight: due / times,
            }));
        }
    }
    strata
});

/// How many jobs make a round.
pub fn round() -> u64 {
    STRATA.len() as u64
}

/// The same job for the same number.
pub fn drawn(number: u64, customer: Customer) -> Drawn {
    let stratum = &STRATA[number as usize * STRIDE % STRATA.len()];
    let draw = |index: u64| draw_ratio(number, PURPOSE, index);
    let like = &stratum.like;
    let fault = &like.machine.faults[stratum.fault];
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
    let is_loose = may_be_loose && draw(6) < LOOSE_RATIO;
    scenario.customer.complaint = told.complaint.clone();
    if is_loose && draw(7) < SAID_IF_LOOSE {
        scenario.customer.complaint += " Not always.";
    }
    scenario.customer.answers.clear();
    scenario.faults = vec![ActiveFault {
        id: fault.id.clone(),
        severity_ratio,
        onset: is_loose.then_some(loose),
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
    Drawn {
        scenario: Arc::new(scenario),
        weight: stratum.weight,
    }
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
