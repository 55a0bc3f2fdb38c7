//! Air chamber, air hose and oscillator-type level sensor.
//!
//! ```text
//! N = p V constant at constant temperature: N/(V0 − A y) = patm + rho g (h − zd − y)
//! y = 2c/(b + sqrt(b² − 4ac))   a = rho g A, b = P A + rho g V0, c = P V0 − N, P = patm + rho g (h − zd)
//! p = rho g (h − zd − y), seen by the sensor with a lag; leak N' = −(patm + p) cleak p
//! L = L0 (1 + w/w0), w = p in metres of water;  f = 1/(2 pi sqrt(L C/2))
//! ```
//! When the dome is full the water climbs the hose: the same law with the hose's area.
//! N starts afresh whenever the mouth is uncovered. Source: Boyle, published; oscillator by
//! the machine's electrical data; sizes design choice. Limits: air stays at one temperature.

use crate::plant::param_table::component_params;
use crate::text;
use crate::units::STANDARD_GRAVITY_M_PER_S2;

component_params! {
    /// Air chamber and air hose.
    TrapParams {
        /// Mouth of the chamber above the tub floor. Design choice.
        mouth_m = 0.020, 0.0 => 0.3, text!("the height of the air chamber's mouth");
        /// Cross-section of the chamber. Design choice.
        dome_m2 = 12.0e-4, 1.0e-5 => 0.1, text!("the air chamber's area");
        /// Height of the chamber. Design choice.
        dome_m = 0.060, 0.001 => 0.5, text!("the air chamber's height");
        /// Bore area of the air hose. Design choice: 4 mm.
        hose_m2 = 1.2566e-5, 1.0e-7 => 1.0e-3, text!("the air hose's area");
        /// Length of the air hose. Design choice.
        hose_m = 0.80, 0.01 => 10.0, text!("the air hose's length");
        /// Air in the sensor. Design choice.
        sensor_m3 = 4.0e-6, 1.0e-8 => 1.0e-3, text!("the sensor's air volume");
        /// Air leak: a pinhole is 1e-10, a hose that is off 1e-8.
        leak_m3_per_s_pa = 0.0, 0.0 => 1.0e-5, text!("the air hose's leak");
        /// Lag between chamber and sensor: a kink or lint 10 to 60 s, pinched shut 1e9.
        lag_s = 0.15, 0.01 => 1.0e12, text!("the air hose's lag");
    }
}

component_params! {
    /// Oscillator coil whose core a diaphragm moves. Electrical data sheet of machine P.
    SensorParams {
        /// Inductance without pressure. Design choice.
        coil_h = 1.594e-3, 1.0e-6 => 1.0, text!("the level sensor's inductance");
        /// Each of its two capacitors; the coil sees both in series. Design choice.
        capacitor_f = 47.0e-9, 1.0e-12 => 1.0e-3, text!("the level sensor's capacitors");
        /// Water column that doubles the inductance. Design choice.
        column_m = 1.130, 0.01 => 100.0, text!("the level sensor's water column");
    }
}

/// Pressure of one metre of water at 20 °C, Pa: the column by which the sensor is stated.
pub const COLUMN_PA_PER_M: f64 = 998.2 * STANDARD_GRAVITY_M_PER_S2;

/// The trapped air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrapState {
    /// Amount of air as pressure times volume, J.
    pub air_j: f64,
    /// Pressure at the sensor above the room's, Pa.
    pub sensor_pa: f64,
    /// The mouth is out of the water, so the chamber holds room air.
    pub is_vented: bool,
}

/// What the neighbours impose during one step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrapInputs {
    /// Level above the tub floor, m.
    pub level_m: f64,
    /// Density of the bath, kg/m³.
    pub water_kg_per_m3: f64,
    /// Pressure of the room, Pa.
    pub air_pa: f64,
}

/// Balance of the trapped air at one instant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrapBalance {
    /// Pressure in the chamber above the room's, Pa.
    pub gauge_pa: f64,
    /// Rise of the water inside the chamber, m.
    pub rise_m: f64,
    /// Change of gauge pressure per change of the amount of air, 1/m³.
    stiffness_per_m3: f64,
}

/// Air volume with no water inside, m³.
pub fn empty_volume_m3(p: &TrapParams) -> f64 {
    p.dome_m2 * p.dome_m + p.hose_m2 * p.hose_m + p.sensor_m3
}

/// Air filled afresh at room pressure.
pub fn vented(p: &TrapParams, air_pa: f64) -> TrapState {
    TrapState {
        air_j: air_pa * empty_volume_m3(p),
        sensor_pa: 0.0,
        is_vented: true,
    }
}

/// Pressure and rise for an amount of air, or `None` while the mouth is uncovered.
pub fn balance(p: &TrapParams, air_j: f64, u: TrapInputs) -> Option<TrapBalance> {
    let depth_m = u.level_m - p.mouth_m;
    if depth_m <= 0.0 {
        return None;
    }
    let in_dome = column(p.dome_m2, empty_volume_m3(p), air_j, depth_m, u);
    if in_dome.rise_m <= p.dome_m {
        return Some(in_dome);
    }
    // Above the dome the water climbs the hose; the volume is restated so that both meet.
    let volume_m3 = p.hose_m2 * (p.hose_m + p.dome_m) + p.sensor_m3;
    Some(column(p.hose_m2, volume_m3, air_j, depth_m, u))
}

fn column(area_m2: f64, volume_m3: f64, air_j: f64, depth_m: f64, u: TrapInputs) -> TrapBalance {
    let weight = u.water_kg_per_m3 * STANDARD_GRAVITY_M_PER_S2;
    let bottom_pa = u.air_pa + weight * depth_m;
    let a = weight * area_m2;
    let b = bottom_pa * area_m2 + weight * volume_m3;
    let c = bottom_pa * volume_m3 - air_j;
    let root = (b * b - 4.0 * a * c).max(0.0).sqrt();
    let rise_m = 2.0 * c / (b + root);
    TrapBalance {
        gauge_pa: weight * (depth_m - rise_m),
        rise_m,
        stiffness_per_m3: weight / root.max(1.0e-30),
    }
}

/// Advances the air by `dt_s`; `lag_share` is `1 − exp(−dt/lag)`.
pub(crate) fn step(p: &TrapParams, s: &mut TrapState, u: TrapInputs, dt_s: f64, lag_share: f64) {
    let gauge_pa = match balance(p, s.air_j, u) {
        None => {
            s.air_j = u.air_pa * empty_volume_m3(p);
            s.is_vented = true;
            0.0
        }
        Some(now) => {
            s.is_vented = false;
            if p.leak_m3_per_s_pa > 0.0 {
                s.air_j = (s.air_j - leaked_j(p, now, u, dt_s)).max(level_air_j(p, u));
                balance(p, s.air_j, u).map_or(0.0, |after| after.gauge_pa)
            } else {
                now.gauge_pa
            }
        }
    };
    s.sensor_pa += (gauge_pa - s.sensor_pa) * lag_share;
}

/// Air lost in `dt_s`: exact for a pressure that falls in proportion, so a torn hose is stable.
fn leaked_j(p: &TrapParams, now: TrapBalance, u: TrapInputs, dt_s: f64) -> f64 {
    let rate = now.stiffness_per_m3 * (u.air_pa + now.gauge_pa) * p.leak_m3_per_s_pa;
    now.gauge_pa / now.stiffness_per_m3 * (1.0 - libm::exp(-rate * dt_s))
}

/// Air left when the water inside stands as high as outside, J: a leak takes no more.
fn level_air_j(p: &TrapParams, u: TrapInputs) -> f64 {
    let depth_m = u.level_m - p.mouth_m;
    let in_dome_m3 = p.dome_m2 * depth_m.min(p.dome_m);
    let in_hose_m3 = p.hose_m2 * (depth_m - p.dome_m).clamp(0.0, p.hose_m);
    u.air_pa * (empty_volume_m3(p) - in_dome_m3 - in_hose_m3)
}

/// Inductance of the sensor's coil at a gauge pressure, H.
pub fn coil_h(p: &SensorParams, gauge_pa: f64) -> f64 {
    // The core cannot leave the coil however hard somebody sucks.
    p.coil_h * (1.0 + gauge_pa / (COLUMN_PA_PER_M * p.column_m)).max(0.2)
}

/// Frequency of the oscillator for an inductance, Hz.
pub fn oscillator_hz(p: &SensorParams, coil_h: f64) -> f64 {
    1.0 / (2.0 * core::f64::consts::PI * (coil_h * p.capacitor_f / 2.0).sqrt())
}

/// Gauge pressure that a frequency stands for, Pa: the inverse of the sensor.
pub fn pressure_of_frequency_pa(p: &SensorParams, frequency_hz: f64) -> f64 {
    let empty_hz = oscillator_hz(p, p.coil_h);
    let ratio = empty_hz / frequency_hz;
    (ratio * ratio - 1.0) * COLUMN_PA_PER_M * p.column_m
}

#[cfg(test)]
mod tests {
    use super::*;

    const FULL: TrapInputs = TrapInputs {
        level_m: 0.2904372,
        water_kg_per_m3: 998.2,
        air_pa: 101_325.0,
    };

    #[test]
    fn trapped_air_obeys_boyle() {
        let p = TrapParams::typical();
        let s = vented(&p, FULL.air_pa);
        let b = balance(&p, s.air_j, FULL).expect("mouth is under water");
        let volume = empty_volume_m3(&p) - p.dome_m2 * b.rise_m;
        assert!(((FULL.air_pa + b.gauge_pa) * volume / s.air_j - 1.0).abs() < 1e-12);
    }

    #[test]
    fn dome_and_hose_meet_without_a_step() {
        let p = TrapParams::typical();
        // Less air until the water just reaches the top of the dome.
        let weight = FULL.water_kg_per_m3 * STANDARD_GRAVITY_M_PER_S2;
        let gauge = weight * (FULL.level_m - p.mouth_m - p.dome_m);
        let air_j = (FULL.air_pa + gauge) * (p.hose_m2 * p.hose_m + p.sensor_m3);
        let above = balance(&p, air_j * (1.0 - 1e-9), FULL).expect("covered");
        let below = balance(&p, air_j * (1.0 + 1e-9), FULL).expect("covered");
        assert!((above.gauge_pa - below.gauge_pa).abs() < 0.01);
    }

    #[test]
    fn a_hose_that_is_off_reads_empty_whatever_the_step() {
        let mut p = TrapParams::typical();
        p.leak_m3_per_s_pa = 1e-5;
        for dt_s in [0.1, 1.0] {
            let mut s = vented(&p, FULL.air_pa);
            (0..200).for_each(|_| step(&p, &mut s, FULL, dt_s, 0.9));
            assert!(s.sensor_pa.abs() < 1.0 && s.air_j > 0.0, "{s:?}");
        }
    }

    #[test]
    fn machine_p_reads_the_electrical_sheet() {
        // Electrical data sheet: level sensor frequency at 0, 100 and 300 mm of water.
        let p = SensorParams::typical();
        for (column_m, expected_hz) in [(0.0, 26_004.4), (0.1, 24_924.9), (0.3, 23_116.3)] {
            let hz = oscillator_hz(&p, coil_h(&p, column_m * COLUMN_PA_PER_M));
            assert!((hz - expected_hz).abs() < 0.5, "{column_m} m: {hz}");
            assert!((pressure_of_frequency_pa(&p, hz) - column_m * COLUMN_PA_PER_M).abs() < 1e-6);
        }
    }
}
