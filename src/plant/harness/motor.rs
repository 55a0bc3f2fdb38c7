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
use crate::network::SolveError;
use crate::plant::harness::coils::Coils;
use crate::plant::harness::coils::invert;

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

/// Currents of the coils turned into what a drive and a heat model want.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MotorFlow {
    /// Air-gap torque, N m, positive in direction A.
    pub torque_n_m: f64,
    /// Real power into the windings, W.
    pub input_w: f64,
    /// Copper loss of windings 1 and 2 if they were at 20 °C, W.
    pub copper_20c_w: [f64; 2],
}

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

    /// What of the coils depends on the slip and not on temperatures.
    ///
    /// # Errors
    /// [`SolveError::SingularCoils`] if a coil has no leakage.
    pub fn core(
        &self,
        coils: &Coils,
        slip_ratio: f64,
        s_rad_per_s: Complex,
    ) -> Result<MotorCore, SolveError> {
        let field_ohm = self.field_ohm(slip_ratio, s_rad_per_s);
        let n = coils.count;
        let mut bare_siemens = coils.impedance_ohm(self, field_ohm, s_rad_per_s);
        invert(&mut bare_siemens, n)?;
        let mut ohm = bare_siemens;
        for (k, row) in ohm.iter_mut().enumerate().take(n) {
            row[k] += Complex::real(1.0 / coils.iron_ohm(self, k));
        }
        invert(&mut ohm, n)?;
        Ok(MotorCore {
            bare_siemens,
            ohm,
            field_ohm,
        })
    }

    /// Admittances of the coils (copper and iron included), row by row, S; only the first
    /// `count * count` entries are used.
    ///
    /// # Errors
    /// [`SolveError::SingularCoils`] if a coil has no leakage.
    pub fn port(
        &self,
        coils: &Coils,
        faults: &MotorFaults,
        temperatures_k: WindingsK,
        slip_ratio: f64,
        s_rad_per_s: Complex,
    ) -> Result<MotorPort, SolveError> {
        let core = self.core(coils, slip_ratio, s_rad_per_s)?;
        self.port_of(&core, coils, faults, temperatures_k)
    }

    /// The same where what does not depend on temperatures is at hand.
    ///
    /// # Errors
    /// As for [`MotorParams::port`].
    pub fn port_of(
        &self,
        core: &MotorCore,
        coils: &Coils,
        faults: &MotorFaults,
        temperatures_k: WindingsK,
    ) -> Result<MotorPort, SolveError> {
        let n = coils.count;
        let mut siemens = core.ohm;
        let mut copper_ohm = [0.0; 4];
        for k in 0..n {
            copper_ohm[k] = coils.copper_ohm(self, faults, temperatures_k, k);
            siemens[k][k] += Complex::real(copper_ohm[k]);
        }
        invert(&mut siemens, n)?;
        Ok(MotorPort {
            bare_siemens: core.bare_siemens,
            siemens,
            copper_ohm,
            field_ohm: core.field_ohm,
        })
    }

    /// Torque, power and copper loss from coil voltages and currents.
    pub fn flow(
        &self,
        coils: &Coils,
        port: &MotorPort,
        voltage_v: &[Complex],
        current_a: &[Complex],
        frequency_hz: f64,
    ) -> MotorFlow {
        let n = coils.count;
        let mut flow = MotorFlow::default();
        let mut emf_v = [Complex::ZERO; 4];
        for k in 0..n {
            let (v, i) = (voltage_v[k], current_a[k]);
            flow.input_w += v.re * i.re + v.im * i.im;
            flow.copper_20c_w[coils.winding[k]] +=
                i.abs_squared() * self.winding_ohm[coils.winding[k]] * coils.share_ratio[k];
            emf_v[k] = v - i.scale(port.copper_ohm[k]);
        }
        let [mut forward_a, mut backward_a] = [Complex::ZERO; 2];
        for (k, row) in port.bare_siemens.iter().enumerate().take(n) {
            let mut i = Complex::ZERO;
            for (y, e) in row.iter().zip(&emf_v).take(n) {
                i += *y * *e;
            }
            let i = i.scale(coils.turns_ratio[k]);
            // e^(-j th) is 1 for winding 1 and -j for winding 2.
            let turned = if coils.winding[k] == 0 {
                i
            } else {
                Complex::new(i.im, -i.re)
            };
            forward_a += turned;
            backward_a += if coils.winding[k] == 0 { i } else { -turned };
        }
        let [forward_ohm, backward_ohm] = port.field_ohm;
        let gap_w =
            forward_a.abs_squared() * forward_ohm.re - backward_a.abs_squared() * backward_ohm.re;
        flow.torque_n_m = gap_w / self.synchronous_rad_per_s(frequency_hz);
        flow
    }
}

/// The coils at a slip, before their copper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MotorCore {
    /// Coil admittances without copper and iron, S.
    bare_siemens: [[Complex; 4]; 4],
    /// Coil impedances with iron, ohm.
    ohm: [[Complex; 4]; 4],
    /// Forward and backward field impedance, ohm.
    field_ohm: [Complex; 2],
}

/// The coils' admittances and what is needed to look inside them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MotorPort {
    /// Coil admittances without copper and iron, S.
    pub bare_siemens: [[Complex; 4]; 4],
    /// Admittances seen from the terminals, S.
    pub siemens: [[Complex; 4]; 4],
    /// Copper in series with each coil, ohm.
    pub copper_ohm: [f64; 4],
    /// Forward and backward field impedance, ohm.
    pub field_ohm: [Complex; 2],
}

impl MotorPort {
    /// The terminal admittances row by row into a reused list.
    pub fn rows_into(&self, count: usize, rows: &mut Vec<Complex>) {
        rows.clear();
        rows.reserve_exact(count * count);
        for row in &self.siemens[..count] {
            rows.extend_from_slice(&row[..count]);
        }
    }
}
