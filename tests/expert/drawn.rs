//! Jobs drawn by chance: any machine, any fault by its weight and in any degree, all parts on board,
//! and a customer who complains as the catalogue says, or of something else altogether.

use std::sync::Arc;

use tubwright::bench::scenario::Scenario;
use tubwright::machine::ActiveFault;
use tubwright::machine::FaultDef;
use tubwright::machine::draw_ratio;
use tubwright::scenario::jobs;

const PURPOSE: u64 = 0x6472_6177;

/// The customer's words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Customer {
    /// As the catalogue has it for the fault.
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
    let like = machines[(draw(0) * machines.len() as f64) as usize];
    let fault = by_weight(&like.machine.faults, draw(1));
    let told = match customer {
        Customer::Honest => fault,
        Customer::Misleading => by_weight(&like.machine.faults, draw(2)),
    };
    let severity_ratio = if fault.is_graded {
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
        onset: None,
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
