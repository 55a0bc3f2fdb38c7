//! The motor against its speed, tabulated once per contact set and winding temperature.
//!
//! A wash repeats a handful of contact sets and its copper warms slowly, so a table is solved when
//! first asked for and kept; the one not used for longest goes when there are too many. What is
//! kept decides how fast the program is, never what comes out: a table depends on its key and the
//! wiring alone.
//!
//! Limits: copper temperature goes into a table in steps of 8 K.

use std::sync::Arc;
use std::sync::Mutex;
use std::sync::MutexGuard;
use std::sync::PoisonError;

use crate::machine::MachineError;
use crate::network::Contacts;
use crate::plant::harness::Harness;
use crate::plant::harness::Kept;
use crate::plant::harness::motor::COLD_K;
use crate::plant::harness::solving::Scratch;
use crate::plant::harness::table::motor_table;
use crate::plant::motor_table::MotorTable;

/// Steps in which winding temperatures go into a table, K.
const TEMPERATURE_STEP_K: f64 = 8.0;
/// Tables kept, 25 kB each: a wash that heats its motor from cold to hot asks for some 70.
const KEPT_TABLES: usize = 96;
/// Contact sets without a live motor kept.
const KEPT_DEAD: usize = 16;
/// Less stalled input than this is no live motor, W: snubbers and stray capacitance.
const DEAD_MOTOR_W: f64 = 2.0;

/// Contacts and steps of temperature.
type Key = (Contacts, [i32; 2]);

/// The tables of one wiring, shared by all copies.
#[derive(Clone, Debug)]
pub struct MotorTables(Arc<Mutex<KeptTables>>);

#[derive(Debug)]
struct KeptTables {
    live: Kept<Key, Arc<MotorTable>>,
    dead: Kept<Contacts, ()>,
}

impl Default for MotorTables {
    fn default() -> Self {
        Self(Arc::new(Mutex::new(KeptTables {
            live: Kept::room(KEPT_TABLES),
            dead: Kept::room(KEPT_DEAD),
        })))
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
        if let Some(table) = self.at_hand().live.get(&key) {
            return Ok(Some(table));
        }
        if self.at_hand().dead.get(&contacts).is_some() {
            return Ok(None);
        }
        let reduced = harness.reduced(contacts)?;
        // Live or not is asked of cold windings, so that a hot one gives the same answer.
        let stalled = harness.flow(&reduced, 1.0, COLD_K, &mut Scratch::default())?;
        if stalled.input_w < DEAD_MOTOR_W {
            self.at_hand().dead.put(contacts, ());
            return Ok(None);
        }
        let table = Arc::new(motor_table(harness, &reduced, rounded_k(windings_k))?);
        self.at_hand().live.put(key, Arc::clone(&table));
        Ok(Some(table))
    }

    fn at_hand(&self) -> MutexGuard<'_, KeptTables> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

fn step_of(temperature_k: f64) -> i32 {
    ((temperature_k - 293.15) / TEMPERATURE_STEP_K).round() as i32
}

/// Winding temperatures as a table takes them, K: to the nearest step.
pub fn rounded_k(windings_k: [f64; 2]) -> [f64; 2] {
    windings_k.map(|k| 293.15 + TEMPERATURE_STEP_K * f64::from(step_of(k)))
}
