//! What the bench makes of the machine: the scenario's faults less what was made good, plus what
//! is off, apart or left wrong.

use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::bench::store;
use crate::bench::visit::Condition;
use crate::bench::workshop::Effect;
use crate::machine::Setup;
use crate::machine::Target;
use crate::network::ElementKind;

/// The plant's parameter for what hangs on fewer screws than it should, or lies loose.
const RATTLE: &str = "suspension.rattle_ratio";

impl Job {
    /// Applies what is off, apart, left wrong and made good to the machine.
    pub(in crate::bench) fn refit_machine(&mut self) {
        let setup = setup_of(self);
        self.machine.refit(setup);
    }
}

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
    setup.values = supply_values(scenario);
    for fitted in &job.bench.around.fitted {
        let item = store::item(workshop, &fitted.item);
        if let Some(variant) = item.and_then(|item| item.variant) {
            setup.values.extend(variant.values.iter().cloned());
            setup.overrides.extend(variant.params.iter().cloned());
        }
    }
    setup.open.extend(job.bench.around.burnt.iter().cloned());
    for effects in job.bench.left_wrong.values() {
        add(&mut setup, effects);
    }
    if !job.bench.short.is_empty() {
        setup.overrides.push((RATTLE.to_owned(), 1.0));
    }
    setup
}

fn add(setup: &mut Setup, effects: &[Effect]) {
    for effect in effects {
        match effect {
            Effect::ElementOpen(name) => {
                setup.open.insert(name.clone());
            }
            Effect::ElementValue(name, value) => setup.values.push((name.clone(), *value)),
            Effect::Param(name, value) => setup.overrides.push((name.clone(), *value)),
        }
    }
}

/// What adaptor and extension reel add in the line, as values of the plug's contact, Ω. 25 m of
/// 1.5 mm² there and back is 0.6 Ω (IEC 60228: 12.1 Ω/km, from memory); an adaptor's two contacts
/// are 0.05 Ω when they are no longer new (from memory).
pub fn supply_values(scenario: &Scenario) -> Vec<(String, f64)> {
    let model = &scenario.machine.wiring;
    let mut added_ohm = 0.0;
    if scenario.visit.has(Condition::ExtensionReel) {
        added_ohm += 0.6;
    }
    if scenario.visit.has(Condition::Adaptor) {
        added_ohm += 0.05;
    }
    let contact = &model.elements[model.supply.plug_contacts[0].index()];
    match contact.kind {
        ElementKind::Resistor { ohm } if added_ohm > 0.0 => {
            vec![(contact.name.clone(), ohm + added_ohm)]
        }
        _ => Vec::new(),
    }
}
