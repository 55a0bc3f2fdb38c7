//! The harness's answer to the drive: the motor against speed for one contact set.
//!
//! Solved through the port at 129 speeds, so the supply sees the motor's current and sags;
//! speed and torque are positive in direction A, whatever the contacts call for. Copper
//! losses belong to the mean of the winding temperatures. Between samples within 1e-3 of the
//! peak, line current within 3e-3 (tested).

use crate::network::SolveError;
use crate::plant::harness::motor::WindingsK;
use crate::plant::harness::motor::copper_ratio;
use crate::plant::harness::solving::Harness;
use crate::plant::harness::solving::Reduced;
use crate::plant::harness::solving::Scratch;
use crate::plant::motor_table::MotorPoint;
use crate::plant::motor_table::MotorTable;

/// Samples of a table.
const SAMPLES: usize = 129;

/// The motor against speed, with its factors at hand.
///
/// # Errors
/// [`SolveError`] if the coils are singular.
pub fn motor_table(
    harness: &Harness,
    reduced: &Reduced,
    temperatures_k: WindingsK,
) -> Result<MotorTable, SolveError> {
    let model = &harness.wiring().model;
    let copper_k = 0.5 * (temperatures_k[0] + temperatures_k[1]);
    let ratio = copper_ratio(copper_k);
    let mut scratch = Scratch::default();
    let mut samples = Vec::with_capacity(SAMPLES);
    for speed in MotorTable::sample_speeds_rad_per_s(SAMPLES) {
        let slip = model.motor.params.slip_ratio(speed, model.frequency_hz);
        let flow = harness.flow(reduced, slip, temperatures_k, &mut scratch)?;
        samples.push(MotorPoint {
            torque_n_m: flow.torque_n_m,
            input_w: flow.input_w,
            copper_1_w: flow.copper_20c_w[0] * ratio,
            copper_2_w: flow.copper_20c_w[1] * ratio,
            line_a: harness.watched(reduced, 0, &scratch).abs(),
        });
    }
    // Samples are finite unless the coils are singular.
    MotorTable::from_samples(&samples, copper_k).map_err(|_| SolveError::SingularCoils)
}
