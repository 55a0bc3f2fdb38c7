//! Wirings met before, with what was solved for them: plug in and out, a lid bridge on and off, and
//! hypotheses that leave the wiring as it is come back to the same ones again and again.
//!
//! All copies of a machine share one library. What is kept decides how fast the program is, never
//! what comes out.

use std::sync::Arc;
use std::sync::Mutex;
use std::sync::MutexGuard;
use std::sync::PoisonError;

use crate::machine::tables::MotorTables;
use crate::network::Contacts;
use crate::plant::harness::Harness;
use crate::plant::harness::Kept;
use crate::plant::harness::Wiring;

/// Wirings kept; some 50 kB each.
const MOST: usize = 192;
/// Contact sets for which the slowest decay is kept.
const SLOWEST: usize = 16;

/// A wiring with all that was solved for it.
#[derive(Clone, Debug)]
pub(super) struct Wired {
    /// The network.
    pub harness: Harness,
    /// The motor against its speed.
    pub tables: MotorTables,
    slowest_s: Arc<Mutex<Kept<Contacts, f64>>>,
}

impl Wired {
    /// Nothing solved yet.
    pub fn new(harness: Harness) -> Self {
        Self {
            harness,
            tables: MotorTables::default(),
            slowest_s: Arc::new(Mutex::new(Kept::room(SLOWEST))),
        }
    }

    /// Slowest decays by contact set, s.
    pub fn slowest_s(&self) -> MutexGuard<'_, Kept<Contacts, f64>> {
        at_hand(&self.slowest_s)
    }
}

/// The library.
#[derive(Clone, Debug, Default)]
pub(super) struct Library(Arc<Mutex<Vec<Wired>>>);

impl Library {
    /// What is known of a wiring.
    pub fn find(&self, wiring: &Wiring) -> Option<Wired> {
        let list = at_hand(&self.0);
        let mut newest_first = list.iter().rev();
        newest_first
            .find(|wired| wired.harness.wiring().is_same(wiring))
            .cloned()
    }

    /// Keeps a wiring; the oldest goes when there are too many.
    pub fn keep(&self, wired: &Wired) {
        let mut list = at_hand(&self.0);
        if list.len() >= MOST {
            list.remove(0);
        }
        list.push(wired.clone());
    }
}

fn at_hand<T>(of: &Mutex<T>) -> MutexGuard<'_, T> {
    of.lock().unwrap_or_else(PoisonError::into_inner)
}
