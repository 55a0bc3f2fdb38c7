//! The motor against its speed, tabulated once per contact set and winding temperature.
//!
//! A wash repeats a handful of contact sets and its copper warms slowly, so a table is solved when
//! first asked for and kept; the oldest goes when there are too many. What is kept decides how fast
//! the program is, never what comes out: a table depends on its key and the wiring alone.
//!
//! Limits: copper temperature goes into a table in steps of 8 K.

use std::sync::Arc;
use std::sync::Mutex;
use std::sync::PoisonError;

use crate::machine::MachineError;
use crate::network::Contacts;
use crate::plant::harness::Harness;
use crate::plant::harness::Kept;
use crate::plant::harness::motor::copper_ratio;
use crate::plant::harness::solving::Scratch;
use crate::plant::motor_table::MotorPoint;
use crate::plant::motor_table::MotorTable;

/// Samples of a motor table.
const TABLE_SAMPLES: usize = 65;
/// Steps in which winding temperatures go into a table, K.
const TEMPERATURE_STEP_K: f64 = 8.0;
/// Tables kept.
const KEPT_TABLES: usize = 48;
/// Less stalled input than this is no live motor, W: snubbers and stray capacitance.
const DEAD_MOTOR_W: f64 = 2.0;

/// Contacts and steps of temperature.
type Key = (Contacts, [i32; 2]);

/// The tables of one wiring, shared by all copies; none where the motor was not live.
#[derive(Clone, Debug)]
pub struct MotorTables {
    kept: Arc<Mutex<Kept<Key, Option<Arc<MotorTable>>>>>,
}

impl Default for MotorTables {
    fn default() -> Self {
        let kept = Arc::new(Mutex::new(Kept::room(KEPT_TABLES)));
        Self { kept }
    }
}

impl MotorTables {
    /// The motor against signed rotor speed for these contacts; none when it is not live.
    ///
    /// # Errors
    /// When the wiring cannot be solved.
    pub fn at(
        &self,
        harness: &Harness,
        contacts: Contacts,
        windings_k: [f64; 2],
    ) -> Result<Option<Arc<MotorTable>>, MachineError> {
        let key = (contacts, windings_k.map(step_of));
        let at_hand = || self.kept.lock().unwrap_or_else(PoisonError::into_inner);
        let kept = at_hand().get(&key);
        if let Some(table) = kept {
            return Ok(table);
        }
        let table = solved(harness, contacts, rounded_k(windings_k))?;
        at_hand().put(key, table.clone());
        Ok(table)
    }
}

fn solved(
    harness: &Harness,
    contacts: Contacts,
    windings_k: [f64; 2],
) -> Result<Option<Arc<MotorTable>>, MachineError> {
    let model = Arc::clone(&harness.wiring().model);
    let reduced = harness.reduced(contacts)?;
    let mut scratch = Scratch::default();
    let stalled = harness.flow(&reduced, 1.0, windings_k, &mut scratch)?;
    if stalled.input_w < DEAD_MOTOR_W {
        return Ok(None);
    }
    let mut samples = Vec::with_capacity(TABLE_SAMPLES);
    let copper = windings_k.map(copper_ratio);
    for speed in MotorTable::sample_speeds_rad_per_s(TABLE_SAMPLES) {
        let slip = model.motor.params.slip_ratio(speed, model.frequency_hz);
        let flow = harness.flow(&reduced, slip, windings_k, &mut scratch)?;
        samples.push(MotorPoint {
            torque_n_m: flow.torque_n_m,
            input_w: flow.input_w,
            copper_1_w: flow.copper_20c_w[0] * copper[0],
            copper_2_w: flow.copper_20c_w[1] * copper[1],
            line_a: harness.watched(&reduced, 0, &scratch).abs(),
        });
    }
    let mean_k = 0.5 * (windings_k[0] + windings_k[1]);
    Ok(Some(Arc::new(MotorTable::from_samples(&samples, mean_k)?)))
}

fn step_of(temperature_k: f64) -> i32 {
    ((temperature_k - 293.15) / TEMPERATURE_STEP_K).round() as i32
}

/// Winding temperatures as a table takes them, K: to the nearest step.
pub fn rounded_k(windings_k: [f64; 2]) -> [f64; 2] {
    windings_k.map(|k| 293.15 + TEMPERATURE_STEP_K * f64::from(step_of(k)))
}
