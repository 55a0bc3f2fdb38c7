//! The laundry: how it takes up water, fills the tub, drags on the pulsator and lies off centre.
//!
//! ```text
//! uptake    wt' = m (xsat − x)/tau min(1, wf/2m)     while wf > m/2, x = wt/m
//! dripping  wt' = −m (x − xdr)/60 s                  while wf < m/5
//! friction  T = ct m clamp(LR0/LR, 1/2, 2)           LR = (wf + wt)/m, less when nearly dry
//! ```
//! Source: uptake and time from memory, fibre density published (handbook), the rest design
//! choice. Limits: one kind of textile, no temperature effect.

use crate::plant::param_table::component_params;
use crate::text;

component_params! {
    /// What lies in the basket. Part of the site: the customer chose it.
    LoadParams {
        /// Dry mass. Rated load 6.5 kg.
        dry_kg = 4.0, 0.0 => 30.0, text!("the dry load");
        /// Water a soaked load holds per dry mass. From memory.
        saturated_ratio = 2.5, 0.0 => 10.0, text!("the load's saturated uptake");
        /// Water it still holds after dripping. From memory.
        drained_ratio = 2.2, 0.0 => 10.0, text!("the load's uptake after dripping");
        /// Time constant of wetting. From memory.
        wetting_s = 40.0, 1.0 => 10_000.0, text!("the load's wetting time");
        /// Density of the fibre. Published: cotton, handbook value.
        fibre_kg_per_m3 = 1500.0, 100.0 => 10_000.0, text!("the fibre's density");
        /// Free water per dry mass that covers the load fully. Design choice: 4 L/kg.
        submerging_m3_per_kg = 0.004, 1.0e-4 => 0.1, text!("the water that covers the load");
        /// Drag on the pulsator per dry mass at the reference liquor ratio. Design choice.
        textile_n_m_per_kg = 0.75, 0.0 => 100.0, text!("the load's drag on the pulsator");
        /// Reference liquor ratio, kg of water per kg of load. Design choice.
        liquor_ratio = 10.0, 0.1 => 100.0, text!("the reference liquor ratio");
        /// Speed below which textile friction fades. Design choice.
        slip_rad_per_s = 0.5, 0.01 => 10.0, text!("the textile's slip speed");
        /// Friction on the basket wall as a share of that on the pulsator. From memory.
        wall_ratio = 0.60, 0.0 => 2.0, text!("the textile's share on the basket wall");
        /// Radius of gyration of the wet load. Design choice.
        gyration_m = 0.16, 0.0 => 0.3, text!("the load's radius of gyration");
        /// Mass lying off centre. Design choice.
        unbalance_kg = 0.30, 0.0 => 10.0, text!("the unbalanced mass");
        /// Its radius. Design choice.
        unbalance_m = 0.19, 0.0 => 0.3, text!("the radius of the unbalanced mass");
        /// Its height above the centre of mass. Design choice.
        unbalance_height_m = 0.10, -0.5 => 0.5, text!("the height of the unbalanced mass");
        /// Share of the unbalance left after a lever trip and agitation; 1 for one big item.
        spread_ratio = 0.5, 0.0 => 1.0, text!("the unbalance left after spreading");
        /// Washing motion after which a load that was spread lies as lopsided as before. Design
        /// choice: longer than a correction, shorter than a rinse.
        tangling_s = 90.0, 1.0 => 1.0e9, text!("the washing motion that tangles a spread load again");
    }
}

/// Time constant of dripping after draining, s. From memory.
const DRIPPING_S: f64 = 60.0;

/// Water taken up (positive) or dripping out (negative) by a load that does not spin, kg/s.
pub fn uptake_kg_per_s(p: &LoadParams, free_kg: f64, textile_kg: f64) -> f64 {
    let m = p.dry_kg;
    if m <= 0.0 {
        return 0.0;
    }
    let moisture = textile_kg / m;
    if free_kg > 0.5 * m && moisture < p.saturated_ratio {
        return m * (p.saturated_ratio - moisture) / p.wetting_s * (free_kg / (2.0 * m)).min(1.0);
    }
    if free_kg < 0.2 * m && moisture > p.drained_ratio {
        return -m * (moisture - p.drained_ratio) / DRIPPING_S;
    }
    0.0
}

/// Coulomb torque of the load on the pulsator, N·m.
pub fn textile_torque_n_m(p: &LoadParams, free_kg: f64, textile_kg: f64) -> f64 {
    let m = p.dry_kg;
    if m <= 0.0 {
        return 0.0;
    }
    let liquor = (free_kg + textile_kg) / m;
    let thickness = (p.liquor_ratio / liquor.max(0.1)).clamp(0.5, 2.0);
    p.textile_n_m_per_kg * m * thickness * liquor.clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_empty_basket_takes_up_nothing() {
        let mut p = LoadParams::typical();
        p.dry_kg = 0.0;
        assert!(uptake_kg_per_s(&p, 40.0, 0.0).abs() < f64::MIN_POSITIVE);
        assert!(textile_torque_n_m(&p, 40.0, 0.0).abs() < f64::MIN_POSITIVE);
    }

    #[test]
    fn a_soaked_load_takes_up_no_more_and_drips_when_the_water_is_gone() {
        let p = LoadParams::typical();
        assert!(uptake_kg_per_s(&p, 40.0, 10.0).abs() < 1e-12);
        assert!((uptake_kg_per_s(&p, 0.0, 10.0) + 4.0 * 0.3 / 60.0).abs() < 1e-12);
    }

    #[test]
    fn less_water_makes_the_load_drag_more() {
        let p = LoadParams::typical();
        assert!(textile_torque_n_m(&p, 20.0, 10.0) > textile_torque_n_m(&p, 42.0, 10.0));
    }
}
