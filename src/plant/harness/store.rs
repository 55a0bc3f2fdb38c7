//! What was solved for a wiring, kept for the next time it is asked for.
//!
//! Everything here follows from the wiring and the question alone, so all copies of a machine share
//! one store: what is kept decides how fast the program is, never what comes out.

use std::sync::Arc;
use std::sync::Mutex;
use std::sync::MutexGuard;
use std::sync::PoisonError;

use crate::network::Base;
use crate::network::Complex;
use crate::network::Contacts;
use crate::network::Factors;
use crate::network::Plan;
use crate::plant::harness::motor::WindingsK;
use crate::plant::harness::motor_port::MotorCore;
use crate::plant::harness::point::AcPoint;
use crate::plant::harness::point::Point;
use crate::plant::harness::watch::Watched;

/// A list of answers; the one not asked for longest goes when there are too many.
#[derive(Clone, Debug)]
pub struct Kept<K, V> {
    most: usize,
    list: Vec<(K, V)>,
}

impl<K: PartialEq, V: Clone> Kept<K, V> {
    /// Room for so many.
    pub fn room(most: usize) -> Self {
        let list = Vec::new();
        Self { most, list }
    }

    /// The answer to a question asked before.
    pub fn get(&mut self, key: &K) -> Option<V> {
        let at = self.list.iter().rposition(|(k, _)| k == key)?;
        self.list[at..].rotate_left(1);
        self.list.last().map(|(_, value)| value.clone())
    }

    /// Keeps an answer.
    pub fn put(&mut self, key: K, value: V) {
        if self.list.len() >= self.most {
            self.list.remove(0);
        }
        self.list.push((key, value));
    }
}

/// Contacts, output of the regulator and windings of a network at DC, as bits.
pub type DirectKey = (Contacts, u64, [u64; 2]);
/// Contacts, slip and windings of a network in AC, as bits.
pub type AcKey = (Contacts, u64, [u64; 2]);

/// A contact set's factors and watched readings.
#[derive(Debug)]
pub struct Reduced {
    /// Factors outside of the motor.
    pub factors: Arc<Factors<Complex>>,
    /// Watched readings.
    pub watched: Watched,
}

/// All that is kept for a wiring.
#[derive(Clone, Debug)]
pub struct Solved {
    /// Plan at DC.
    pub direct_plan: Option<Arc<Plan>>,
    /// Values at DC by the output of the regulator.
    pub direct: Kept<u64, Arc<Base<f64>>>,
    /// Solved at DC.
    pub direct_points: Kept<DirectKey, Arc<Point<f64>>>,
    /// Factors by contact set; a cycle uses about ten.
    pub reduced: Kept<Contacts, Arc<Reduced>>,
    /// Solved in AC.
    pub ac_points: Kept<AcKey, Arc<AcPoint>>,
    /// The motor at the speeds of a table, before its copper.
    pub table_cores: Option<Arc<[MotorCore]>>,
}

impl Solved {
    /// Nothing yet but the plan at DC, if it is known.
    pub fn fresh(direct_plan: Option<Arc<Plan>>) -> Self {
        Self {
            direct_plan,
            direct: Kept::room(4),
            direct_points: Kept::room(8),
            reduced: Kept::room(16),
            ac_points: Kept::room(4),
            table_cores: None,
        }
    }
}

/// The store of a wiring, shared by all copies.
#[derive(Clone, Debug)]
pub struct Store(Arc<Mutex<Solved>>);

impl Store {
    /// An empty store.
    pub fn fresh(direct_plan: Option<Arc<Plan>>) -> Self {
        Self(Arc::new(Mutex::new(Solved::fresh(direct_plan))))
    }

    /// What is kept, while nobody else looks.
    pub fn at_hand(&self) -> MutexGuard<'_, Solved> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// Temperatures as a key.
pub fn bits(windings_k: WindingsK) -> [u64; 2] {
    windings_k.map(f64::to_bits)
}
