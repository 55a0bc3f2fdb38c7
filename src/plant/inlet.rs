//! Cold water supply: tap, hose, strainer, solenoid inlet valve with flow regulator.
//!
//! ```text
//! C  = (Cvalve⁻² + Cstrainer⁻² + Chose⁻²)^-1/2      orifices in series
//! qo = C sqrt(p)                                     times p/ppilot below the pilot pressure
//! q  = (qo⁻ⁿ + qreg⁻ⁿ)^(-1/n)                        regulator as a smooth minimum
//! x' = (target − x)/tau                              opening, exact over the step
//! hammer: rho c v (Joukowsky) when t < 2 l/c, else 2 rho l v/t (Michaud)
//! ```
//! Sign: positive into the tub. Source: published Joukowsky and Michaud formulas from memory;
//! coefficients design choice, pressures common practice. Limits: coil heat is electrical.

use crate::plant::param_table::component_params;
use crate::text;

component_params! {
    /// Tap to spout. The supply itself and the hose belong to the site.
    InletParams {
        /// Static supply pressure, Pa. Common practice: 0.03 to 0.8 MPa.
        supply_pa = 300_000.0, 0.0 => 2.0e6, text!("the supply pressure");
        /// Valve body with the regulator bypassed. Design choice: 48 L/min at 1 MPa.
        valve_m3_per_s_sqrt_pa = 48.0 / 6.0e7, 0.0 => 1.0e-4, text!("the inlet valve's passage");
        /// Clean strainer. Design choice: 150 L/min at 1 MPa.
        strainer_m3_per_s_sqrt_pa = 150.0 / 6.0e7, 1.0e-12 => 1.0e-4, text!("the strainer's passage");
        /// Tap and supply hose. Design choice: 110 L/min at 1 MPa.
        hose_m3_per_s_sqrt_pa = 110.0 / 6.0e7, 1.0e-12 => 1.0e-4, text!("the supply hose's passage");
        /// Blocked share of the strainer's area.
        strainer_blocked_ratio = 0.0, 0.0 => 1.0, text!("the blocked share of the inlet filter");
        /// Closed share of the tap.
        tap_closed_ratio = 0.0, 0.0 => 1.0, text!("the closed share of the tap");
        /// Squeezed share of the supply hose.
        hose_kinked_ratio = 0.0, 0.0 => 1.0, text!("the squeezed share of the supply hose");
        /// Flow regulator's set point. Common practice: 12 L/min.
        regulator_m3_per_s = 12.0 / 6.0e4, 1.0e-7 => 0.01, text!("the flow regulator's set point");
        /// Sharpness of the change from free to regulated flow. Design choice.
        regulator_sharpness_ratio = 8.0, 1.0 => 50.0, text!("the regulator's sharpness");
        /// Lowest pressure at which the pilot lifts the diaphragm fully. Common practice.
        pilot_pa = 20_000.0, 1.0 => 1.0e6, text!("the pilot's lowest pressure");
        /// Time constant of opening. From memory.
        opening_s = 0.10, 1.0e-3 => 100.0, text!("the valve's opening time");
        /// Time constant of closing. From memory; long with limescale.
        closing_s = 0.25, 1.0e-3 => 100.0, text!("the valve's closing time");
        /// Flow past the closed valve at 0.3 MPa.
        leak_by_m3_per_s = 0.0, 0.0 => 0.001, text!("the leak past the closed inlet valve");
        /// Drip of the hose joint onto the floor at 0.3 MPa, whenever the tap is open.
        joint_leak_m3_per_s = 0.0, 0.0 => 0.001, text!("the drip of the supply joint");
        /// Water temperature, K. Design choice: 20 °C.
        water_k = 293.15, 273.15 => 373.15, text!("the supply water's temperature");
        /// Pipe that the closing valve stops, m. Design choice.
        pipe_m = 1.5, 0.01 => 100.0, text!("the length of the supply pipe");
        /// Its bore, m. Common practice.
        pipe_bore_m = 0.010, 1.0e-3 => 0.1, text!("the bore of the supply pipe");
        /// Speed of a pressure wave in it. Published range from memory: 500 hose, 1300 steel.
        wave_m_per_s = 500.0, 10.0 => 2000.0, text!("the wave speed in the supply pipe");
    }
}

/// Pressure at which the leak figures are stated, Pa.
const LEAK_REFERENCE_PA: f64 = 300_000.0;
/// Opening above which the valve counts as open, below its complement as shut.
const SETTLED_RATIO: f64 = 1.0e-3;

/// What changes only with the parameters.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct InletDerived {
    open_m3_per_s: f64,
    leak_by_m3_per_s: f64,
    joint_leak_m3_per_s: f64,
    opening_share: f64,
    closing_share: f64,
}

impl InletDerived {
    pub(crate) fn new(p: &InletParams, tick_s: f64) -> Self {
        let leak_scale = (p.supply_pa / LEAK_REFERENCE_PA).sqrt();
        let tap_open = (1.0 - p.tap_closed_ratio).max(0.0);
        Self {
            open_m3_per_s: valve_flow_m3_per_s(p, 1.0),
            // A shut tap feeds no leak.
            leak_by_m3_per_s: (p.leak_by_m3_per_s * leak_scale).min(series_flow(
                p,
                1.0,
                f64::INFINITY,
            )),
            joint_leak_m3_per_s: if tap_open > 0.0 {
                p.joint_leak_m3_per_s * leak_scale
            } else {
                0.0
            },
            opening_share: 1.0 - libm::exp(-tick_s / p.opening_s),
            closing_share: 1.0 - libm::exp(-tick_s / p.closing_s),
        }
    }
}

/// Flow through the valve opened by `opening_ratio`, m³/s, without leak-by.
pub fn valve_flow_m3_per_s(p: &InletParams, opening_ratio: f64) -> f64 {
    let mut free = series_flow(p, opening_ratio, p.valve_m3_per_s_sqrt_pa * opening_ratio);
    if p.supply_pa < p.pilot_pa {
        free *= p.supply_pa / p.pilot_pa;
    }
    if free <= 0.0 {
        return 0.0;
    }
    let n = p.regulator_sharpness_ratio;
    free / libm::pow(1.0 + libm::pow(free / p.regulator_m3_per_s, n), 1.0 / n)
}

/// Flow through tap, hose, strainer and a valve body of passage `valve`, m³/s.
fn series_flow(p: &InletParams, opening_ratio: f64, valve: f64) -> f64 {
    let strainer = p.strainer_m3_per_s_sqrt_pa * (1.0 - p.strainer_blocked_ratio);
    let hose = p.hose_m3_per_s_sqrt_pa * (1.0 - p.tap_closed_ratio) * (1.0 - p.hose_kinked_ratio);
    if strainer < 1.0e-14 || hose < 1.0e-14 || valve < 1.0e-14 || opening_ratio <= 0.0 {
        return 0.0;
    }
    let resistance = 1.0 / (valve * valve) + 1.0 / (strainer * strainer) + 1.0 / (hose * hose);
    (p.supply_pa.max(0.0) / resistance).sqrt()
}

/// Flow out of the open end of the supply hose, m³/s: tap and hose alone hold it back.
pub fn open_hose_m3_per_s(p: &InletParams) -> f64 {
    let open = (1.0 - p.tap_closed_ratio).max(0.0) * (1.0 - p.hose_kinked_ratio).max(0.0);
    p.hose_m3_per_s_sqrt_pa * open * p.supply_pa.max(0.0).sqrt()
}

/// Pressure over air at the machine's end of the supply hose while `flow_m3_per_s` runs, Pa; none
/// where tap or hose is shut.
pub fn line_pa(p: &InletParams, flow_m3_per_s: f64) -> f64 {
    let hose = p.hose_m3_per_s_sqrt_pa * (1.0 - p.tap_closed_ratio) * (1.0 - p.hose_kinked_ratio);
    if hose < 1.0e-14 {
        return 0.0;
    }
    let lost = flow_m3_per_s / hose;
    (p.supply_pa - lost * lost).max(0.0)
}

/// Pressure rise when a flow of `speed_m_per_s` is stopped within `closing_s`, Pa.
pub fn water_hammer_pa(
    p: &InletParams,
    speed_m_per_s: f64,
    water_kg_per_m3: f64,
    closing_s: f64,
) -> f64 {
    if closing_s < 2.0 * p.pipe_m / p.wave_m_per_s {
        water_kg_per_m3 * p.wave_m_per_s * speed_m_per_s
    } else {
        2.0 * water_kg_per_m3 * p.pipe_m * speed_m_per_s / closing_s
    }
}

/// Mean speed of a flow in the supply pipe, m/s.
pub fn pipe_speed_m_per_s(p: &InletParams, flow_m3_per_s: f64) -> f64 {
    let bore_m2 = core::f64::consts::PI * p.pipe_bore_m * p.pipe_bore_m / 4.0;
    flow_m3_per_s / bore_m2
}

/// Quarter-wave tone of the closed pipe, Hz.
pub fn pipe_tone_hz(p: &InletParams) -> f64 {
    p.wave_m_per_s / (4.0 * p.pipe_m)
}

/// What the valve is doing now.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InletState {
    /// 0 shut, 1 open.
    pub opening_ratio: f64,
}

/// Flows of one tick.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct InletFlows {
    /// Into the tub, m³/s.
    pub tub_m3_per_s: f64,
    /// From the joint onto the floor, m³/s.
    pub floor_m3_per_s: f64,
}

/// Moves the plunger by one tick.
pub(crate) fn step(d: &InletDerived, s: &mut InletState, is_energised: bool) {
    let target = if is_energised { 1.0 } else { 0.0 };
    let share = if target > s.opening_ratio {
        d.opening_share
    } else {
        d.closing_share
    };
    s.opening_ratio += (target - s.opening_ratio) * share;
    // Settle, so that a shut valve is exactly shut and the plant can rest.
    if !is_energised && s.opening_ratio < SETTLED_RATIO {
        s.opening_ratio = 0.0;
    } else if is_energised && s.opening_ratio > 1.0 - SETTLED_RATIO {
        s.opening_ratio = 1.0;
    }
}

/// Flows at the present opening.
pub(crate) fn flows(p: &InletParams, d: &InletDerived, s: InletState) -> InletFlows {
    let valve = if s.opening_ratio > 1.0 - SETTLED_RATIO {
        d.open_m3_per_s
    } else if s.opening_ratio > 1.0e-6 {
        valve_flow_m3_per_s(p, s.opening_ratio)
    } else {
        0.0
    };
    InletFlows {
        tub_m3_per_s: valve.max(d.leak_by_m3_per_s),
        floor_m3_per_s: d.joint_leak_m3_per_s,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_closed_tap_passes_nothing_and_feeds_no_leak() {
        let mut p = InletParams::typical();
        p.tap_closed_ratio = 1.0;
        p.leak_by_m3_per_s = 1.0e-4;
        p.joint_leak_m3_per_s = 1.0e-5;
        let flow = flows(
            &p,
            &InletDerived::new(&p, 0.1),
            InletState { opening_ratio: 1.0 },
        );
        assert_eq!(flow, InletFlows::default());
    }

    #[test]
    fn more_pressure_never_passes_less() {
        let mut p = InletParams::typical();
        let mut last = 0.0;
        for step in 0..100 {
            p.supply_pa = f64::from(step) * 8000.0;
            let flow = valve_flow_m3_per_s(&p, 1.0);
            assert!(flow >= last);
            last = flow;
        }
        assert!(last < p.regulator_m3_per_s, "the regulator bounds the flow");
    }

    #[test]
    fn the_plunger_follows_its_exponential_and_then_settles() {
        let p = InletParams::typical();
        let d = InletDerived::new(&p, 0.1);
        let mut s = InletState { opening_ratio: 0.0 };
        step(&d, &mut s, true);
        assert!((s.opening_ratio - (1.0 - libm::exp(-1.0))).abs() < 1e-12);
        (0..40).for_each(|_| step(&d, &mut s, true));
        assert!(s.opening_ratio >= 1.0);
        (0..40).for_each(|_| step(&d, &mut s, false));
        assert!(s.opening_ratio <= 0.0);
    }

    #[test]
    fn a_slow_stop_hammers_less_than_a_sudden_one() {
        let p = InletParams::typical();
        let sudden = water_hammer_pa(&p, 2.5, 998.2, 0.001);
        assert!((sudden - 998.2 * 500.0 * 2.5).abs() < 1e-6);
        assert!(water_hammer_pa(&p, 2.5, 998.2, 0.25) < sudden);
    }
}
