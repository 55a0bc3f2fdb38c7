//! Torque, power, copper loss and line current of the motor over rotor speed.
//!
//! Sampled at even steps from -200 to 200 rad/s with the supply and wiring as they are for
//! one contact set (so the voltage sags with the current), joined by cubics through four
//! points: within 1e-3 of the peak (tested), about 1e-5 where the machine runs.

use crate::network::SolveError;
use crate::plant::harness::motor::WindingsK;
use crate::plant::harness::solving::Harness;
use crate::plant::harness::solving::Reduced;
use crate::plant::harness::solving::Scratch;

/// Fastest speed of the curve either way, rad/s of the rotor.
pub const MAX_SPEED_RAD_PER_S: f64 = 200.0;
/// Number of samples.
const SAMPLES: usize = 129;

/// What the motor does at a speed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MotorState {
    /// Air-gap torque, N m, positive in direction A.
    pub torque_n_m: f64,
    /// Real power into the windings, W.
    pub input_w: f64,
    /// Copper loss of windings 1 and 2 if at 20 °C, W; times the copper ratio when warm.
    pub copper_20c_w: [f64; 2],
    /// Line current of the whole machine, A rms.
    pub line_a: f64,
}

/// The curve for one contact set and winding temperatures.
#[derive(Clone, Debug, PartialEq)]
pub struct MotorCurve {
    samples: Vec<[f64; 5]>,
}

impl MotorCurve {
    /// Samples the curve.
    ///
    /// # Errors
    /// [`SolveError`] if the coils are singular.
    pub fn new(
        harness: &Harness,
        reduced: &Reduced,
        temperatures_k: WindingsK,
    ) -> Result<MotorCurve, SolveError> {
        let model = &harness.wiring().model;
        let mut scratch = Scratch::default();
        let mut samples = Vec::with_capacity(SAMPLES);
        for k in 0..SAMPLES {
            let speed = MAX_SPEED_RAD_PER_S * (2.0 * k as f64 / (SAMPLES - 1) as f64 - 1.0);
            let slip = model.motor.params.slip_ratio(speed, model.frequency_hz);
            let flow = harness.flow(reduced, slip, temperatures_k, &mut scratch)?;
            let line_a = harness.watched(reduced, 0, &scratch).abs();
            let [copper_1, copper_2] = flow.copper_20c_w;
            samples.push([flow.torque_n_m, flow.input_w, copper_1, copper_2, line_a]);
        }
        Ok(MotorCurve { samples })
    }

    /// What the motor does at a rotor speed, rad/s; beyond the ends, as at the ends.
    pub fn at(&self, speed_rad_per_s: f64) -> MotorState {
        let last = self.samples.len() - 1;
        let speed = speed_rad_per_s.clamp(-MAX_SPEED_RAD_PER_S, MAX_SPEED_RAD_PER_S);
        let place = (speed / MAX_SPEED_RAD_PER_S + 1.0) * 0.5 * last as f64;
        // Four neighbours; the outermost intervals use the four nearest the end.
        let first = (place as usize).saturating_sub(1).min(last - 3);
        let x = place - first as f64;
        let (a, b, c, d) = (x, x - 1.0, x - 2.0, x - 3.0);
        let weights = [
            -b * c * d / 6.0,
            a * c * d / 2.0,
            -a * b * d / 2.0,
            a * b * c / 6.0,
        ];
        let mut values = [0.0; 5];
        for (sample, weight) in self.samples[first..].iter().zip(weights) {
            for (value, s) in values.iter_mut().zip(sample) {
                *value += weight * s;
            }
        }
        let [torque_n_m, input_w, copper_1, copper_2, line_a] = values;
        MotorState {
            torque_n_m,
            input_w,
            copper_20c_w: [copper_1, copper_2],
            line_a,
        }
    }
}
