//! What the tub hangs on: rods, springs, dampers, lever switch, cabinet and balance ring.
//!
//! How far it swings is in `swing.rs`.

use crate::plant::param_table::component_params;
use crate::text;

component_params! {
    /// Rods, springs, dampers, lever switch, cabinet.
    SuspensionParams {
        /// Suspended mass, dry and empty. Design choice.
        mass_kg = 24.0, 1.0 => 200.0, text!("the suspended mass");
        /// Length of a rod. Design choice.
        rod_m = 0.52, 0.05 => 2.0, text!("the rods' length");
        /// Spring rate of one rod. Design choice.
        spring_n_per_m = 2200.0, 10.0 => 1.0e6, text!("the rods' springs");
        /// Radius of the rods' circle. Design choice.
        circle_m = 0.29, 0.05 => 1.0, text!("the radius of the rods' circle");
        /// Transverse inertia, empty. Design choice.
        inertia_kg_m2 = 1.5, 0.01 => 100.0, text!("the tub's transverse inertia");
        /// Damping ratio. Design choice; worn 0.02.
        damping_ratio = 0.07, 0.001 => 2.0, text!("the dampers' strength");
        /// Friction of the rod ends. Design choice; oily 0.5.
        swing_friction_n = 3.0, 0.0 => 1000.0, text!("the rod ends' friction");
        /// Friction of the dampers. Design choice; oily 0.1.
        rock_friction_n_m = 1.0, 0.0 => 1000.0, text!("the dampers' friction");
        /// Height of the rim and lever above the centre of mass. Design choice.
        rim_m = 0.30, 0.0 => 1.0, text!("the rim's height");
        /// Swing that opens the lever switch. Common practice: 25 mm; −1 m when bent or stuck.
        lever_gap_m = 0.025, -1.0 => 10.0, text!("the lever's gap");
        /// Clearance of tub and cabinet. Design choice.
        cabinet_gap_m = 0.040, 0.0 => 1.0, text!("the cabinet's clearance");
        /// Static offset of the rim from a weak or broken rod.
        lean_m = 0.0, 0.0 => 0.2, text!("the tub's lean");
        /// 1 with the transport pieces left in: the rods cannot move.
        locked_ratio = 0.0, 0.0 => 1.0, text!("the transport pieces left in (0 to 1)");
        /// 1 with a piece loose inside or a panel on fewer screws than it has holes for.
        rattle_ratio = 0.0, 0.0 => 1.0, text!("a loose piece or panel (0 to 1)");
        /// Cabinet and fixed parts. Design choice.
        cabinet_kg = 31.0, 1.0 => 200.0, text!("the cabinet's mass");
    }
}

component_params! {
    /// Balance ring.
    RingParams {
        /// Free-surface radius. Design choice.
        radius_m = 0.195, 0.01 => 0.5, text!("the balance ring's radius");
        /// Height. Design choice.
        height_m = 0.045, 0.0 => 0.5, text!("the balance ring's height");
        /// Salt water. From memory.
        liquid_kg_per_m3 = 1150.0, 500.0 => 3000.0, text!("the balance ring's liquid");
        /// Largest eccentricity of the liquid. Design choice.
        eccentricity_m = 0.012, 0.0 => 0.2, text!("the balance ring's eccentricity");
        /// Fill; 0 when leaked.
        fill_ratio = 1.0, 0.0 => 1.0, text!("the balance ring's fill");
        /// Unbalance of a ring that has lost liquid on one side only: mass times the radius of its
        /// middle. A third of the ring: 2.06 kg at 0.161 m.
        one_sided_kg_m = 0.0, 0.0 => 2.0, text!("the unbalance of a ring emptied on one side");
    }
}

/// Amplitudes reached, which set the equivalent viscous part of dry friction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SuspensionState {
    /// Swing of the centre of mass, m.
    pub swing_m: f64,
    /// Rocking angle, rad.
    pub rock_rad: f64,
    /// Swing of the rim, m.
    pub rim_m: f64,
    /// Unbalanced mass now as a share of what was loaded; spreading reduces it.
    pub unbalance_ratio: f64,
    /// The lever has tripped since the load was last spread.
    pub is_clumped: bool,
    /// Time the pulsator has turned the load in water since it clumped or was spread, s.
    pub spreading_s: f64,
}
