//! What the bench makes of the machine: the scenario's faults less what was made good, plus what
//! is off, apart or left wrong.

use crate::bench::job::Job;
use crate::bench::workshop::Effect;
use crate::machine::Setup;
use crate::machine::Target;

/// The machine's set-up as the bench stands now.
pub fn setup_of(job: &Job) -> Setup {
    let scenario = job.scenario();
    let mut setup = Setup::of_faults(&scenario.faults, job.seed());
    setup.params = scenario.site.params.clone();
    setup.healed = job.bench.healed.clone();
    // A site parameter that was put right is at its nominal value again.
    setup
        .params
        .retain(|(name, _)| !setup.healed.contains(&Target::Param(name.clone())));
    let workshop = &scenario.workshop;
    for id in &job.bench.off {
        if let Some(step) = workshop.step(id) {
            add(&mut setup, &step.while_off);
        }
    }
    for id in &job.bench.apart {
        if let Some(connector) = workshop.connector(id) {
            setup.open.extend(connector.elements.iter().cloned());
        }
    }
    for effects in job.bench.left_wrong.values() {
        add(&mut setup, effects);
    }
    setup
}

fn add(setup: &mut Setup, effects: &[Effect]) {
    for effect in effects {
        match effect {
            Effect::ElementOpen(name) => {
                setup.open.insert(name.clone());
            }
            Effect::Param(name, value) => setup.overrides.push((name.clone(), *value)),
        }
    }
}
