//! Charge that stays in capacitors after the supply has gone.
//!
//! ```text
//! v(t) = v0 exp(−t / (R C))        E = C v² / 2
//! ```
//! The plug pins hang on the mains filter with its bleed resistor; the run capacitor empties itself
//! through the windings unless a terminal or winding is open, then only through its own leak.
//! Worst case: the plug comes out at the peak. Source: closed form; IEC 60335-1 clause 22.5 for the
//! case (from memory). Time constants come from the wiring as it stands.

use crate::machine::StateHasher;

/// One stored charge.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Charge {
    /// Voltage at the moment of parting, V.
    pub start_v: f64,
    /// Time constant, s; infinite when nothing leads the charge off.
    pub tau_s: f64,
    /// Capacitance, F.
    pub capacitance_f: f64,
    /// Ticks since parting.
    pub age_ticks: u64,
}

/// Voltage and energy at a moment.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Stored {
    /// Voltage, V.
    pub voltage_v: f64,
    /// Energy, J.
    pub energy_j: f64,
}

impl Charge {
    /// What is left now.
    pub fn now(&self) -> Stored {
        let age_s = self.age_ticks as f64 / 10.0;
        let left = if self.tau_s > 0.0 {
            libm::exp(-age_s / self.tau_s)
        } else {
            0.0
        };
        let voltage_v = self.start_v * left;
        Stored {
            voltage_v,
            energy_j: 0.5 * self.capacitance_f * voltage_v * voltage_v,
        }
    }

    /// Nothing left.
    pub fn empty(&mut self) {
        *self = Self::default();
    }

    pub(super) fn hash_into(&self, hasher: &mut StateHasher) {
        for number in [self.start_v, self.tau_s, self.capacitance_f] {
            hasher.number(number);
        }
        hasher.word(self.age_ticks);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_healthy_filter_is_below_34_v_after_one_second() {
        // 0.22 µF and 940 kΩ: 325.27 exp(−1/0.2068) = 2.58 V. Closed form.
        let charge = Charge {
            start_v: 230.0 * core::f64::consts::SQRT_2,
            tau_s: 0.22e-6 * 940e3,
            capacitance_f: 0.22e-6,
            age_ticks: 10,
        };
        assert!((charge.now().voltage_v - 2.58).abs() < 0.01);
    }

    #[test]
    fn without_a_path_the_charge_stays() {
        let charge = Charge {
            start_v: 325.0,
            tau_s: f64::INFINITY,
            capacitance_f: 1e-5,
            age_ticks: 9000,
        };
        assert!((charge.now().voltage_v - 325.0).abs() < 1e-9);
        assert!((charge.now().energy_j - 0.528).abs() < 0.001);
    }
}
