//! The machine as the technician finds it: plugged in, switched off, lid shut, the load the
//! customer left in it.

use crate::bench::scenario::Scenario;
use crate::machine::Machine;
use crate::machine::MachineError;

/// Sets the scene of a scenario.
///
/// # Errors
/// When the site names a parameter the machine does not have.
pub fn arrive(machine: &mut Machine, scenario: &Scenario) -> Result<(), MachineError> {
    let site = &scenario.site;
    machine.check_params(&site.params)?;
    machine.cool_down();
    machine.leave_water(site.water_kg);
    machine.set_plugged(true);
    // It may open from half its rated current; most open near three quarters. From memory.
    machine.set_residual_limit(site.rcd_a.map_or(f64::INFINITY, |rated_a| 0.75 * rated_a));
    machine.set_tap(site.tap_open);
    Ok(())
}
