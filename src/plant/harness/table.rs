//! The harness's answer to the drive: the motor against speed for one contact set.
//!
//! Solved through the port at 65 speeds, so the supply sees the motor's current and sags;
//! speed and torque are positive in direction A, whatever the contacts call for. Between
//! samples within 3e-4 of the peak, line current within 1.5e-3 (tested).

use std::sync::Arc;

use crate::network::SolveError;
use crate::plant::harness::motor::WindingsK;
use crate::plant::harness::motor::copper_ratio;
use crate::plant::harness::motor_port::MotorCore;
use crate::plant::harness::solving::Harness;
use crate::plant::harness::solving::Scratch;
use crate::plant::harness::store::Reduced;
use crate::plant::motor_table::MotorPoint;
use crate::plant::motor_table::MotorTable;

/// Samples of a table.
pub const TABLE_SAMPLES: usize = 65;

/// The motor against speed, with its factors at hand.
///
/// # Errors
/// [`SolveError`] if the coils are singular.
pub fn motor_table(
    harness: &Harness,
    reduced: &Reduced,
    windings_k: WindingsK,
) -> Result<MotorTable, SolveError> {
    let copper = windings_k.map(copper_ratio);
    let mut scratch = Scratch::default();
    let mut samples = Vec::with_capacity(TABLE_SAMPLES);
    let mut line_a = Vec::with_capacity(TABLE_SAMPLES);
    for core in harness.table_cores()?.iter() {
        let flow = harness.flow_of(reduced, core, windings_k, &mut scratch)?;
        samples.push(MotorPoint {
            torque_n_m: flow.torque_n_m,
            input_w: flow.input_w,
            copper_1_w: flow.copper_20c_w[0] * copper[0],
            copper_2_w: flow.copper_20c_w[1] * copper[1],
            ..MotorPoint::default()
        });
        line_a.push(harness.watched(reduced, 0, &scratch));
    }
    let mean_k = 0.5 * (windings_k[0] + windings_k[1]);
    // Samples are finite unless the coils are singular.
    let table = MotorTable::from_samples(&samples, mean_k);
    let table = table.map_err(|_| SolveError::SingularCoils)?;
    Ok(table.with_line_current(&line_a))
}

impl Harness {
    /// The motor at the speeds of a table, before its copper; from the store if it is there.
    ///
    /// # Errors
    /// [`SolveError`] if the coils are singular.
    pub fn table_cores(&self) -> Result<Arc<[MotorCore]>, SolveError> {
        if let Some(kept) = &self.store.at_hand().table_cores {
            return Ok(Arc::clone(kept));
        }
        let model = &self.wiring().model;
        let slips = MotorTable::sample_speeds_rad_per_s(TABLE_SAMPLES)
            .map(|speed| model.motor.params.slip_ratio(speed, model.frequency_hz));
        let cores: Arc<[MotorCore]> = slips
            .map(|slip| self.motor_core(slip))
            .collect::<Result<_, _>>()?;
        self.store.at_hand().table_cores = Some(Arc::clone(&cores));
        Ok(cores)
    }
}
