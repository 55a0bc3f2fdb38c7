//! Capacitor motor with two windings at right angles: double revolving field.
//!
//! Every coil k has turns n (share of winding 1) and an axis; all values are referred to
//! winding 1 and reactances hold at the rated frequency:
//!
//! ```text
//! Zf = 1/2 [ jXm || (R2/s + jX2) ]     Zb = 1/2 [ jXm || (R2/(2-s) + jX2) ]
//! F = sum n e^(-j th) I     B = sum n e^(+j th) I     E = n (e^(j th) Zf F + e^(-j th) Zb B)
//! torque = ( |F|^2 Re Zf - |B|^2 Re Zb ) / w_sync
//! ```
//! Sign: torque and speed are positive in direction A, where winding 2 leads winding 1; the
//! slip is `1 - speed / w_sync`, so it is above 1 in direction B. Iron loss is a resistor
//! behind the copper. Published: double revolving field theory (Fitzgerald, Kingsley,
//! Umans). Limits: no saturation, no space harmonics, no electrical transients.

use crate::network::Complex;

/// Copper's resistance is `R20 (234.5 + T) / 254.5`, T in degrees Celsius. Common practice.
pub const COPPER_ZERO_K: f64 = 273.15 - 234.5;
/// Reference temperature of copper resistances (20 °C), K.
pub const COPPER_REFERENCE_K: f64 = 293.15;
/// Resistance of an open winding, ohm (surface leakage of the break). Design choice.
pub const OPEN_OHM: f64 = 1e11;

/// Ratio of copper resistance at a temperature to that at 20 °C.
pub fn copper_ratio(temperature_k: f64) -> f64 {
    (temperature_k - COPPER_ZERO_K) / (COPPER_REFERENCE_K - COPPER_ZERO_K)
}

/// What a motor is.
#[derive(Clone, Debug, PartialEq)]
pub struct MotorParams {
    /// Number of poles.
    pub poles: u32,
    /// Frequency at which the reactances hold, Hz.
    pub rated_frequency_hz: f64,
    /// Copper of windings 1 and 2 at 20 °C, ohm.
    pub winding_ohm: [f64; 2],
    /// Leakage reactance of windings 1 and 2, ohm.
    pub leakage_ohm: [f64; 2],
    /// Turns of winding 2 over turns of winding 1.
    pub turns_ratio: f64,
    /// Magnetising reactance, ohm.
    pub magnetising_ohm: f64,
    /// Rotor resistance, ohm.
    pub rotor_ohm: f64,
    /// Rotor leakage reactance, ohm.
    pub rotor_leakage_ohm: f64,
    /// Iron loss resistance across winding 1, ohm; infinite if none.
    pub iron_loss_ohm: f64,
    /// Constant friction torque, N m.
    pub friction_n_m: f64,
    /// Windage power at synchronous speed, W; grows with the cube of speed.
    pub windage_w: f64,
    /// Share of stator leakage common to all turns of a winding.
    pub common_leakage_ratio: f64,
}

/// What is wrong inside the motor.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MotorFaults {
    /// Resistance in series with windings 1 and 2, ohm; [`OPEN_OHM`] when open.
    pub series_ohm: [f64; 2],
    /// Shorted turns of one winding.
    pub short: Option<TurnShort>,
    /// A path from inside a winding to the frame.
    pub earth: Option<EarthPath>,
}

/// Some turns of a winding, counted from the common end, shorted by a resistance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TurnShort {
    /// 0 or 1.
    pub winding: usize,
    /// Share of the winding's turns, above 0 and below 1.
    pub share_ratio: f64,
    /// Resistance across them, ohm.
    pub short_ohm: f64,
}

/// A path from a tap to the frame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EarthPath {
    /// 0 or 1.
    pub winding: usize,
    /// Share of the turns between tap and common end.
    pub share_ratio: f64,
    /// Resistance of the path, ohm.
    pub path_ohm: f64,
}

/// Copper temperatures of windings 1 and 2, K.
pub type WindingsK = [f64; 2];

/// Windings at 20 °C.
pub const COLD_K: WindingsK = [COPPER_REFERENCE_K; 2];

impl MotorParams {
    /// Synchronous speed at a supply frequency, rad/s of the rotor.
    pub fn synchronous_rad_per_s(&self, frequency_hz: f64) -> f64 {
        4.0 * core::f64::consts::PI * frequency_hz / f64::from(self.poles)
    }

    /// Slip at a rotor speed (positive in direction A).
    pub fn slip_ratio(&self, speed_rad_per_s: f64, frequency_hz: f64) -> f64 {
        1.0 - speed_rad_per_s / self.synchronous_rad_per_s(frequency_hz)
    }

    /// Friction and windage at a rotor speed, N m, 0 or more.
    pub fn drag_n_m(&self, speed_rad_per_s: f64) -> f64 {
        let speed = speed_rad_per_s.abs();
        if speed <= 0.0 {
            return 0.0;
        }
        let sync = self.synchronous_rad_per_s(self.rated_frequency_hz);
        let share = speed / sync;
        self.friction_n_m + self.windage_w * share * share * share / sync
    }

    /// Forward and backward field impedances at a slip and complex frequency, ohm.
    pub fn field_ohm(&self, slip_ratio: f64, s_rad_per_s: Complex) -> [Complex; 2] {
        let rated_rad_per_s = 2.0 * core::f64::consts::PI * self.rated_frequency_hz;
        let per_ohm = s_rad_per_s.scale(1.0 / rated_rad_per_s);
        let magnetising = per_ohm.scale(self.magnetising_ohm);
        [slip_ratio, 2.0 - slip_ratio].map(|slip| {
            // As an admittance slip / (R2 + slip X2): slip 0 needs no exception.
            let leakage = per_ohm.scale(slip * self.rotor_leakage_ohm);
            let rotor = Complex::real(slip) / (Complex::real(self.rotor_ohm) + leakage);
            magnetising.scale(0.5) / (Complex::ONE + magnetising * rotor)
        })
    }
}
