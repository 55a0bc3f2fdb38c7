//! A motor's coils as admittances at a slip, and torque, power and loss from their currents.
//!
//! Copper and iron join the coils here, and the fields of the motor's equations become torque:
//!
//! ```text
//! y = ( ( z^-1 + 1/R_iron )^-1 + R_copper )^-1
//! ```

use crate::network::Complex;
use crate::network::SolveError;
use crate::plant::harness::coils::Coils;
use crate::plant::harness::coils::invert;
use crate::plant::harness::motor::MotorFaults;
use crate::plant::harness::motor::MotorParams;
use crate::plant::harness::motor::WindingsK;

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

impl MotorParams {
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
