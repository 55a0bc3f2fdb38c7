//! The motor against its speed, tabulated once per contact set and winding temperature.
//!
//! A wash repeats a handful of contact sets and its copper warms slowly, so a table is solved when
//! first asked for and kept; the oldest goes when there are too many. What is kept decides how fast
//! the program is, never what comes out: a table depends on its key and the wiring alone.
//!
//! Limits: copper temperature goes into a table in steps of 8 K.

use std::sync::Arc;

use crate::machine::MachineError;
use crate::network::Contacts;
use crate::plant::harness::Harness;
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

/// What a table was solved for, and the table; none when the motor was not live.
#[derive(Clone, Debug)]
struct Kept {
    contacts: Contacts,
    steps: [i32; 2],
    table: Option<Arc<MotorTable>>,
}

/// The tables of one wiring.
#[derive(Clone, Debug, Default)]
pub struct MotorTables {
    kept: Vec<Kept>,
}

impl MotorTables {
    /// Forgets all: the wiring is another.
    pub fn clear(&mut self) {
        self.kept.clear();
    }

    /// The motor against signed rotor speed for these contacts; none when it is not live.
    ///
    /// # Errors
    /// When the wiring cannot be solved.
    pub fn at(
        &mut self,
        harness: &mut Harness,
        contacts: Contacts,
        windings_k: [f64; 2],
    ) -> Result<Option<Arc<MotorTable>>, MachineError> {
        let steps = windings_k.map(step_of);
        let same = |kept: &&Kept| kept.contacts == contacts && kept.steps == steps;
        if let Some(kept) = self.kept.iter().find(same) {
            return Ok(kept.table.clone());
        }
        let table = solved(harness, contacts, rounded_k(windings_k))?;
        if self.kept.len() >= KEPT_TABLES {
            self.kept.remove(0);
        }
        self.kept.push(Kept {
            contacts,
            steps,
            table: table.clone(),
        });
        Ok(table)
    }
}

fn solved(
    harness: &mut Harness,
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
