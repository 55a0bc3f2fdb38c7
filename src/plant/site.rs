//! The room: air, floor and the feet the machine stands on. Parameters only.

use crate::plant::param_table::component_params;
use crate::text;
use crate::units::{CELSIUS_ZERO_K, STANDARD_ATMOSPHERE_PA};

component_params! {
    /// Where the machine stands. Site causes edit this.
    SiteParams {
        /// Room temperature, K. Design choice: 25 °C.
        air_k = CELSIUS_ZERO_K + 25.0, 233.15 => 343.15, text!("the room's temperature");
        /// Air pressure, Pa. Published: ISO 2533.
        air_pa = STANDARD_ATMOSPHERE_PA, 50_000.0 => 120_000.0, text!("the air pressure");
        /// Slope of the floor, rad. Design choice: level.
        floor_tilt_rad = 0.0, 0.0 => 0.3, text!("the slope of the floor");
        /// Feet on floor, friction force over weight. From memory: 0.3 to 0.6.
        foot_friction_ratio = 0.45, 0.0 => 2.0, text!("the grip of the feet");
        /// Share of the machine's weight that stands on firm feet; less when a lock nut is loose.
        foot_firm_ratio = 1.0, 0.0 => 1.0, text!("the firmness of the feet");
    }
}
