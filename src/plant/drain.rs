//! Emptying the tub: by gravity through the drain valve, or by a pump.
//!
//! ```text
//! gravity  q = A sqrt(2 g (h − zout)/K)   K = Kpath + (1/(Cc a) − 1)²   Cc = 0.62 + 0.38 a³
//!          a = open share of path x valve opening; no flow for h <= zout; fades below 4 mm
//! pump     H0 − ap q² = (zout − h) + (bp + K') q²
//! siphon   through the standing pump when the end lies below the water without an air break
//! leak     q >= leak sqrt(h/0.29 m) past the closed valve
//! ```
//! Source: Torricelli; contraction by the Weisbach form from memory; coefficients design
//! choice. Limits: a primed hose, no gulping of air.

use crate::plant::param_table::component_params;
use crate::text;
use crate::units::STANDARD_GRAVITY_M_PER_S2;

component_params! {
    /// Drain valve, hose, and pump where fitted.
    DrainParams {
        /// Bore of the drain hose. Design choice.
        bore_m = 0.026, 1.0e-3 => 0.1, text!("the drain hose's bore");
        /// Sum of loss coefficients of valve, hose and exit. Design choice.
        loss_ratio = 9.0, 0.0 => 1000.0, text!("the drain path's loss");
        /// Loss of a hose end that sits deep and airtight in a standpipe, besides; 51 is bad.
        standpipe_loss_ratio = 0.0, 0.0 => 1000.0, text!("the loss in the standpipe");
        /// Height of the hose's end above the tub floor; below it for gravity. Design choice.
        outlet_m = -0.15, -2.0 => 5.0, text!("the height of the drain hose's end");
        /// Open share of the path: lint, cloth, a kink or ice close it.
        open_ratio = 1.0, 0.0 => 1.0, text!("the open share of the drain path");
        /// Leak past the closed valve at 0.29 m of water.
        leak_m3_per_s = 0.0, 0.0 => 0.001, text!("the leak past the closed drain valve");
        /// Opening that a coin or lint keeps when the valve should be shut.
        valve_min_open_ratio = 0.0, 0.0 => 1.0, text!("the drain valve's smallest opening");
        /// Wire stroke at which the valve starts to open. Design choice.
        valve_opens_m = 0.005, 0.0 => 0.05, text!("the stroke that starts to open the drain valve");
        /// Wire stroke at which it is fully open. Design choice.
        valve_open_m = 0.016, 0.001 => 0.1, text!("the stroke that opens the drain valve");
        /// Share of the drained water that an unsealed hose joint lets onto the floor.
        joint_leak_ratio = 0.0, 0.0 => 1.0, text!("the drip of the drain joint");
        /// 1 when a pump empties the tub, 0 when gravity does.
        pump_fitted_ratio = 0.0, 0.0 => 1.0, text!("the drain pump fitted (0 or 1)");
        /// Head at which the pump delivers nothing. Design choice.
        pump_head_m = 2.2, 0.0 => 20.0, text!("the pump's shut-off head");
        /// Fall of the pump's head with flow. Design choice.
        pump_s2_per_m5 = 1.5e7, 1.0 => 1.0e12, text!("the pump's inner loss");
        /// Loss of the pump's discharge line. Design choice.
        line_s2_per_m5 = 3.1e6, 1.0 => 1.0e12, text!("the discharge line's loss");
        /// Bore of the discharge line. Design choice.
        line_bore_m = 0.020, 1.0e-3 => 0.1, text!("the discharge line's bore");
        /// Hose ends lower than this have no air break and can siphon. Design choice.
        air_break_m = 0.3, -2.0 => 5.0, text!("the height that breaks a siphon");
    }
}

/// Level at which seal and drain leaks are stated, m.
pub(crate) const FULL_LEVEL_M: f64 = 0.29;

/// Water too shallow for the pump to catch, m.
const PUMP_DRY_M: f64 = 0.005;
/// Level below which the gravity flow fades, m.
const FADE_M: f64 = 0.004;

/// What changes only with the parameters.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct DrainDerived {
    bore_m2: f64,
    blocked_s2_per_m5: f64,
}

impl DrainDerived {
    pub(crate) fn new(p: &DrainParams) -> Self {
        let line_m2 = circle_m2(p.line_bore_m);
        let squeezed = orifice_loss(p.open_ratio.max(1.0e-3));
        Self {
            bore_m2: circle_m2(p.bore_m),
            blocked_s2_per_m5: squeezed / (2.0 * STANDARD_GRAVITY_M_PER_S2 * line_m2 * line_m2),
        }
    }
}

/// What the neighbours impose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DrainInputs {
    /// Opening of the drain valve, 0 to 1.
    pub valve_ratio: f64,
    /// The pump turns.
    pub is_pumping: bool,
}

/// Contraction of a jet through an open share `a` of the bore. From memory: Weisbach form.
pub fn contraction_ratio(a: f64) -> f64 {
    0.62 + 0.38 * a * a * a
}

fn orifice_loss(a: f64) -> f64 {
    let loss = 1.0 / (contraction_ratio(a) * a) - 1.0;
    loss * loss
}

fn circle_m2(bore_m: f64) -> f64 {
    core::f64::consts::PI * bore_m * bore_m / 4.0
}

/// Flow out of the tub at level `h`, m³/s.
pub(crate) fn flow_m3_per_s(p: &DrainParams, d: &DrainDerived, u: DrainInputs, h: f64) -> f64 {
    if p.pump_fitted_ratio > 0.5 {
        pumped_m3_per_s(p, d, u.is_pumping, h)
    } else {
        gravity_m3_per_s(p, d, u.valve_ratio, h)
    }
}

fn gravity_m3_per_s(p: &DrainParams, d: &DrainDerived, valve_ratio: f64, h: f64) -> f64 {
    let head_m = h - p.outlet_m;
    if head_m <= 0.0 || h <= 0.0 {
        return 0.0;
    }
    let valve = valve_ratio.max(p.valve_min_open_ratio);
    let mut flow = 0.0;
    if valve > 1.0e-3 && p.open_ratio > 1.0e-3 {
        let loss = p.loss_ratio + p.standpipe_loss_ratio + orifice_loss(p.open_ratio * valve);
        flow = d.bore_m2 * (2.0 * STANDARD_GRAVITY_M_PER_S2 * head_m / loss).sqrt();
        flow *= (h / FADE_M).min(1.0);
    }
    if p.leak_m3_per_s > 0.0 {
        flow = flow.max(p.leak_m3_per_s * (h / FULL_LEVEL_M).sqrt());
    }
    flow
}

fn pumped_m3_per_s(p: &DrainParams, d: &DrainDerived, is_pumping: bool, h: f64) -> f64 {
    if p.open_ratio < 1.0e-3 || h < PUMP_DRY_M {
        return 0.0;
    }
    if is_pumping {
        let head_m = p.pump_head_m - (p.outlet_m - h);
        let loss = p.pump_s2_per_m5 + p.line_s2_per_m5 + d.blocked_s2_per_m5;
        return (head_m.max(0.0) / loss).sqrt();
    }
    if p.outlet_m < h && p.outlet_m < p.air_break_m {
        // The standing impeller costs twice what it costs turning.
        let loss = p.line_s2_per_m5 + 2.0 * p.pump_s2_per_m5;
        return ((h - p.outlet_m) / loss).sqrt();
    }
    0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    const OPEN: DrainInputs = DrainInputs {
        valve_ratio: 1.0,
        is_pumping: false,
    };

    #[test]
    fn a_closed_sound_valve_holds_the_water() {
        let p = DrainParams::typical();
        let shut = DrainInputs {
            valve_ratio: 0.0,
            is_pumping: false,
        };
        assert!(flow_m3_per_s(&p, &DrainDerived::new(&p), shut, 0.29) <= 0.0);
    }

    #[test]
    fn the_fully_open_path_follows_torricelli() {
        let p = DrainParams::typical();
        let expected =
            core::f64::consts::PI * 0.013 * 0.013 * (2.0 * 9.80665 * 0.44_f64 / 9.0).sqrt();
        let flow = flow_m3_per_s(&p, &DrainDerived::new(&p), OPEN, 0.29);
        assert!((flow - expected).abs() < 1e-12);
    }

    #[test]
    fn a_hose_end_above_the_water_drains_nothing() {
        let mut p = DrainParams::typical();
        p.outlet_m = 0.10;
        assert!(flow_m3_per_s(&p, &DrainDerived::new(&p), OPEN, 0.10) <= 0.0);
        assert!(flow_m3_per_s(&p, &DrainDerived::new(&p), OPEN, 0.11) > 0.0);
    }

    #[test]
    fn a_narrower_path_never_drains_faster() {
        let mut p = DrainParams::typical();
        let mut last = f64::INFINITY;
        for blocked in 0..=100 {
            p.open_ratio = 1.0 - f64::from(blocked) / 100.0;
            let flow = flow_m3_per_s(&p, &DrainDerived::new(&p), OPEN, 0.29);
            assert!(flow <= last && flow >= 0.0);
            last = flow;
        }
    }

    #[test]
    fn a_low_hose_siphons_through_the_standing_pump_and_an_air_break_stops_it() {
        let mut p = DrainParams::typical();
        p.pump_fitted_ratio = 1.0;
        p.outlet_m = -0.10;
        let d = DrainDerived::new(&p);
        let still = DrainInputs {
            valve_ratio: 0.0,
            is_pumping: false,
        };
        assert!(flow_m3_per_s(&p, &d, still, 0.29) > 0.0);
        p.air_break_m = -1.0;
        assert!(flow_m3_per_s(&p, &d, still, 0.29) <= 0.0);
    }
}
