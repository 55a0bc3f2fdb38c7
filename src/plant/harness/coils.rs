//! A motor's windings as coils: whole ones, or one split at a tap by a fault.
//!
//! ```text
//! Z_kl = n_k n_l (Zf e^(j(th_k - th_l)) + Zb e^(-j(th_k - th_l)))
//!        + j X (kappa x_k x_l + (1 - kappa) x_k [k = l])     within one winding
//! ```
//! x is a coil's share of its winding's turns, kappa the share of leakage common to all
//! turns (a guess, see the motor's parameters). Copper and iron resistances split like x.

#![expect(
    clippy::needless_range_loop,
    reason = "indices read as in the equations"
)]

use crate::network::Complex;
use crate::network::SolveError;
use crate::plant::harness::motor::MotorFaults;
use crate::plant::harness::motor::MotorParams;
use crate::plant::harness::motor::WindingsK;
use crate::plant::harness::motor::copper_ratio;

/// A matrix of up to four coils.
pub type Matrix = [[Complex; 4]; 4];

/// The coils of a motor, winding 1 first; a split winding's lead end comes first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Coils {
    /// Number of coils, 2 to 4.
    pub count: usize,
    /// Winding (0 or 1) of each coil.
    pub winding: [usize; 4],
    /// Turns over the turns of winding 1.
    pub turns_ratio: [f64; 4],
    /// Turns over the turns of its own winding.
    pub share_ratio: [f64; 4],
    /// True for the coil at the lead end of its winding.
    pub is_first: [bool; 4],
}

impl Coils {
    /// The coils of a motor with its faults.
    pub fn of(params: &MotorParams, faults: &MotorFaults) -> Coils {
        let mut coils = Coils {
            count: 0,
            winding: [0; 4],
            turns_ratio: [0.0; 4],
            share_ratio: [0.0; 4],
            is_first: [false; 4],
        };
        for winding in 0..2 {
            match faults.split_ratio(winding) {
                Some(tap) => {
                    coils.push(params, winding, 1.0 - tap, true);
                    coils.push(params, winding, tap, false);
                }
                None => coils.push(params, winding, 1.0, true),
            }
        }
        coils
    }

    fn push(&mut self, params: &MotorParams, winding: usize, share: f64, is_first: bool) {
        let k = self.count;
        let turns = if winding == 0 {
            1.0
        } else {
            params.turns_ratio
        };
        self.winding[k] = winding;
        self.share_ratio[k] = share;
        self.turns_ratio[k] = turns * share;
        self.is_first[k] = is_first;
        self.count += 1;
    }

    /// Impedances of the coils without copper and iron, ohm.
    pub fn impedance_ohm(
        &self,
        params: &MotorParams,
        field_ohm: [Complex; 2],
        s_rad_per_s: Complex,
    ) -> Matrix {
        let rated_rad_per_s = 2.0 * core::f64::consts::PI * params.rated_frequency_hz;
        let [forward, backward] = field_ohm;
        let same = forward + backward;
        // j (Zf - Zb): from winding 2 into 1 with a minus, from 1 into 2 with a plus.
        let across = Complex::J * (forward - backward);
        let mut z = [[Complex::ZERO; 4]; 4];
        for k in 0..self.count {
            for l in 0..self.count {
                let turns = self.turns_ratio[k] * self.turns_ratio[l];
                let (a, b) = (self.winding[k], self.winding[l]);
                if a != b {
                    z[k][l] = across.scale(if a < b { -turns } else { turns });
                    continue;
                }
                let common = params.common_leakage_ratio;
                let mut share = common * self.share_ratio[k] * self.share_ratio[l];
                if k == l {
                    share += (1.0 - common) * self.share_ratio[k];
                }
                let leakage = s_rad_per_s.scale(params.leakage_ohm[a] * share / rated_rad_per_s);
                z[k][l] = same.scale(turns) + leakage;
            }
        }
        z
    }

    /// Iron loss resistance across a coil, ohm.
    pub fn iron_ohm(&self, params: &MotorParams, coil: usize) -> f64 {
        let turns = if self.winding[coil] == 0 {
            1.0
        } else {
            params.turns_ratio
        };
        params.iron_loss_ohm * turns * turns * self.share_ratio[coil]
    }

    /// Copper of a coil at the windings' temperatures, with a break in series if any, ohm.
    pub fn copper_ohm(
        &self,
        params: &MotorParams,
        faults: &MotorFaults,
        temperatures_k: WindingsK,
        coil: usize,
    ) -> f64 {
        let winding = self.winding[coil];
        let series_ohm = if self.is_first[coil] {
            faults.series_ohm[winding]
        } else {
            0.0
        };
        params.winding_ohm[winding] * self.share_ratio[coil] * copper_ratio(temperatures_k[winding])
            + series_ohm
    }
}

impl MotorFaults {
    /// Where a winding is split, as share of its turns from the common end.
    pub fn split_ratio(&self, winding: usize) -> Option<f64> {
        let short = self
            .short
            .filter(|s| s.winding == winding)
            .map(|s| s.share_ratio);
        let tap = self
            .earth
            .filter(|e| e.winding == winding)
            .map(|e| e.share_ratio);
        short.or(tap).filter(|share| *share > 0.0 && *share < 1.0)
    }
}

/// Inverts a sound motor's two coils in place: the closed form.
fn invert_pair(matrix: &mut Matrix) -> Result<(), SolveError> {
    let [[a, b, ..], [c, d, ..], ..] = *matrix;
    let determinant = a * d - b * c;
    let size = determinant.abs_squared();
    if !(size > 0.0 && size.is_finite()) {
        return Err(SolveError::SingularCoils);
    }
    let scale = determinant.inverse();
    matrix[0][0] = d * scale;
    matrix[0][1] = -b * scale;
    matrix[1][0] = -c * scale;
    matrix[1][1] = a * scale;
    Ok(())
}

/// Inverts the first `n` rows and columns in place.
///
/// # Errors
/// [`SolveError::SingularCoils`].
pub fn invert(matrix: &mut Matrix, n: usize) -> Result<(), SolveError> {
    if n == 2 {
        return invert_pair(matrix);
    }
    let mut result = [[Complex::ZERO; 4]; 4];
    for (k, row) in result.iter_mut().enumerate() {
        row[k] = Complex::ONE;
    }
    for k in 0..n {
        let mut best = k;
        for i in k + 1..n {
            if matrix[i][k].abs_squared() > matrix[best][k].abs_squared() {
                best = i;
            }
        }
        matrix.swap(k, best);
        result.swap(k, best);
        let size = matrix[k][k].abs_squared();
        if !(size > 0.0 && size.is_finite()) {
            return Err(SolveError::SingularCoils);
        }
        let inverse = matrix[k][k].inverse();
        for j in 0..n {
            matrix[k][j] = matrix[k][j] * inverse;
            result[k][j] = result[k][j] * inverse;
        }
        let (pivot_row, pivot_result) = (matrix[k], result[k]);
        for i in (0..n).filter(|i| *i != k) {
            let factor = matrix[i][k];
            for j in 0..n {
                matrix[i][j] -= factor * pivot_row[j];
                result[i][j] -= factor * pivot_result[j];
            }
        }
    }
    *matrix = result;
    Ok(())
}
