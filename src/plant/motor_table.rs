//! What the plant sees of the motor: torque, power, copper losses and current against speed.
//!
//! The harness solves the motor at evenly spaced speeds whenever its contacts, voltage or
//! winding temperature change, and hands over this table. Speed counts in the direction of
//! rotation of the connection in use, so a motor that is strong one way and weak the other
//! has two tables. Samples are refined once by a cubic and then read by straight lines.
//! Limits: phasors are quasi-static; mechanical friction is the plant's, not the table's.

use thiserror::Error;

use crate::network::Complex;
use crate::plant::numerics::bounded;

/// Slowest and fastest speed of every table, rad/s, in the direction of rotation.
pub const SPEED_LIMIT_RAD_PER_S: f64 = 200.0;
/// Intervals between the stored points.
const INTERVALS: usize = 512;
const STEP_RAD_PER_S: f64 = 2.0 * SPEED_LIMIT_RAD_PER_S / INTERVALS as f64;

/// The motor at one speed.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct MotorPoint {
    /// Torque in the air gap, before any friction, positive in the direction of rotation, N·m.
    pub torque_n_m: f64,
    /// Electrical input, iron loss included, W.
    pub input_w: f64,
    /// Copper loss of winding 1 at the table's copper temperature, W.
    pub copper_1_w: f64,
    /// Copper loss of winding 2 at the table's copper temperature, W.
    pub copper_2_w: f64,
    /// Line current, A.
    pub line_a: f64,
}

impl MotorPoint {
    /// Weighted sum of points, term by term.
    fn blend<const N: usize>(terms: [(f64, &MotorPoint); N]) -> MotorPoint {
        let mut sum = MotorPoint::default();
        for (weight, point) in terms {
            sum.torque_n_m += weight * point.torque_n_m;
            sum.input_w += weight * point.input_w;
            sum.copper_1_w += weight * point.copper_1_w;
            sum.copper_2_w += weight * point.copper_2_w;
            sum.line_a += weight * point.line_a;
        }
        sum
    }

    fn is_finite(&self) -> bool {
        self.torque_n_m.is_finite()
            && self.input_w.is_finite()
            && self.copper_1_w.is_finite()
            && self.copper_2_w.is_finite()
            && self.line_a.is_finite()
    }
}

/// Why samples do not make a table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum MotorTableError {
    /// Fewer than four samples.
    #[error("a motor table needs at least 4 samples, not {0}")]
    TooFew(usize),
    /// A sample is not a number.
    #[error("sample {0} of the motor table is not a finite number")]
    NotFinite(usize),
}

/// Motor against speed for one connection, −200 to 200 rad/s.
#[derive(Debug, Clone, PartialEq)]
pub struct MotorTable {
    points: Vec<MotorPoint>,
    /// The points' torques once more, close together: the drive asks for them 20 times a tick.
    torque_n_m: Vec<f64>,
    copper_k: f64,
}

impl MotorTable {
    /// A table from samples spread evenly over −200 to 200 rad/s, both ends included, solved
    /// with the copper at `copper_k`. 65 samples are good to 2e-4 of pull-out torque.
    pub fn from_samples(samples: &[MotorPoint], copper_k: f64) -> Result<Self, MotorTableError> {
        if samples.len() < 4 {
            return Err(MotorTableError::TooFew(samples.len()));
        }
        if let Some(bad) = samples.iter().position(|point| !point.is_finite()) {
            return Err(MotorTableError::NotFinite(bad));
        }
        let points: Vec<MotorPoint> = cubics(samples.len())
            .map(|(i, weights)| {
                MotorPoint::blend([0, 1, 2, 3].map(|k| (weights[k], &samples[i + k])))
            })
            .collect();
        Ok(Self {
            torque_n_m: points.iter().map(|point| point.torque_n_m).collect(),
            points,
            copper_k,
        })
    }

    /// The same with the line current from phasors, A, one for each sample: the length has a corner
    /// where the current nearly vanishes, the phasor has none.
    pub fn with_line_current(mut self, line_a: &[Complex]) -> Self {
        if line_a.len() >= 4 {
            for (point, (i, weights)) in self.points.iter_mut().zip(cubics(line_a.len())) {
                let terms = weights.iter().zip(&line_a[i..]);
                let sum = terms.fold(Complex::ZERO, |sum, (w, a)| sum + a.scale(*w));
                point.line_a = sum.abs_squared().sqrt();
            }
        }
        self
    }

    /// The speeds at which `n_samples` samples are to be taken, rad/s.
    pub fn sample_speeds_rad_per_s(n_samples: usize) -> impl Iterator<Item = f64> {
        let spans = n_samples.saturating_sub(1).max(1) as f64;
        (0..n_samples).map(move |i| SPEED_LIMIT_RAD_PER_S * (2.0 * i as f64 / spans - 1.0))
    }

    /// Copper temperature the losses belong to, K.
    pub fn copper_k(&self) -> f64 {
        self.copper_k
    }

    /// Torque at a speed in the direction of rotation, N·m; held at the ends.
    pub fn torque_n_m(&self, speed_rad_per_s: f64) -> f64 {
        let (i, share) = self.place(speed_rad_per_s);
        let (low, high) = (self.torque_n_m[i], self.torque_n_m[i + 1]);
        low + share * (high - low)
    }

    /// Everything at a speed in the direction of rotation; held at the ends.
    pub fn at(&self, speed_rad_per_s: f64) -> MotorPoint {
        let (i, share) = self.place(speed_rad_per_s);
        MotorPoint::blend([(1.0 - share, &self.points[i]), (share, &self.points[i + 1])])
    }

    fn place(&self, speed_rad_per_s: f64) -> (usize, f64) {
        let x = (speed_rad_per_s + SPEED_LIMIT_RAD_PER_S) * (1.0 / STEP_RAD_PER_S);
        let x = bounded(x, 0.0, INTERVALS as f64 - 1.0e-9);
        let i = (x as i32 as usize).min(INTERVALS - 1);
        (i, x - i as f64)
    }
}

/// The cubic of every stored point.
fn cubics(n_samples: usize) -> impl Iterator<Item = (usize, [f64; 4])> {
    let spans = (n_samples - 1) as f64;
    (0..=INTERVALS).map(move |i| cubic(n_samples, i as f64 * spans / INTERVALS as f64))
}

/// Lagrange's cubic through the four samples around `x` (in samples); at the ends the last four:
/// the first of them, and the weights.
fn cubic(n_samples: usize, x: f64) -> (usize, [f64; 4]) {
    let first = (x as usize).saturating_sub(1).min(n_samples - 4);
    let t = x - first as f64;
    let (t1, t2, t3) = (t - 1.0, t - 2.0, t - 3.0);
    let weights = [
        -t1 * t2 * t3 / 6.0,
        t * t2 * t3 / 2.0,
        -t * t1 * t3 / 2.0,
        t * t1 * t2 / 6.0,
    ];
    (first, weights)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn table_of(n_samples: usize, torque: impl Fn(f64) -> f64) -> MotorTable {
        let samples: Vec<MotorPoint> = MotorTable::sample_speeds_rad_per_s(n_samples)
            .map(|u| MotorPoint {
                torque_n_m: torque(u),
                ..MotorPoint::default()
            })
            .collect();
        MotorTable::from_samples(&samples, 293.15).expect("finite samples")
    }

    #[test]
    fn a_smooth_curve_survives_coarse_sampling() {
        // Kloss form of an induction motor's torque, published.
        let kloss = |u: f64| {
            let slip = 1.0 - u / 157.08;
            2.0 * 2.0 / (slip / 0.33 + 0.33 / if slip.abs() < 1e-9 { 1e-9 } else { slip })
        };
        let table = table_of(129, kloss);
        for u in [-150.0, 0.0, 40.0, 100.0, 140.0, 150.0] {
            assert!((table.torque_n_m(u) - kloss(u)).abs() < 2e-3, "{u}");
        }
    }

    #[test]
    fn speeds_beyond_the_ends_read_the_end() {
        let table = table_of(65, |u| u);
        assert!((table.torque_n_m(1e9) - 200.0).abs() < 1e-6);
        assert!((table.torque_n_m(-1e9) + 200.0).abs() < 1e-12);
    }

    #[test]
    fn samples_that_make_no_table_are_refused_by_name() {
        assert_eq!(
            MotorTable::from_samples(&[], 293.15),
            Err(MotorTableError::TooFew(0))
        );
        let mut samples = vec![MotorPoint::default(); 5];
        samples[3].line_a = f64::NAN;
        assert_eq!(
            MotorTable::from_samples(&samples, 293.15),
            Err(MotorTableError::NotFinite(3))
        );
    }
}
