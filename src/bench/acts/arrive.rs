//! The machine as the technician finds it: plugged in, switched off, lid shut, the load the
//! customer left in it.

use crate::bench::scenario::Scenario;
use crate::bench::visit::Condition;
use crate::machine::Machine;
use crate::machine::MachineError;

/// Hot water in the tub, K (65 °C): a usual wash. Common practice.
const HOT_K: f64 = 338.15;
/// Water on the floor of a flooded room, kg. Design choice.
const FLOOD_KG: f64 = 20.0;

/// Sets the scene of a scenario.
///
/// # Errors
/// When the site names a parameter the machine does not have.
pub fn arrive(machine: &mut Machine, scenario: &Scenario) -> Result<(), MachineError> {
    let site = &scenario.site;
    machine.check_params(&site.params)?;
    machine.cool_down();
    machine.leave_water(site.water_kg);
    if scenario.visit.has(Condition::HotWater) {
        // What is in the tub came from a hot tap or a kettle.
        machine.warm_bath(HOT_K);
    }
    if scenario.visit.has(Condition::Flood) {
        machine.spill(FLOOD_KG);
    }
    machine.set_plugged(true);
    // It may open from half its rated current; most open near three quarters. From memory.
    machine.set_residual_limit(site.rcd_a.map_or(f64::INFINITY, |rated_a| 0.75 * rated_a));
    machine.set_tap(site.tap_open);
    Ok(())
}
