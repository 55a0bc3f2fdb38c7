//! How a machine is put together just now: which faults it has, what repairs made good, what is
//! open, and which parameters differ from the machine's file.

use std::collections::BTreeSet;

use crate::machine::ActiveFault;

/// Something a fault changes and a repair makes good.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Target {
    /// An element of the wiring, by name.
    Element(String),
    /// A plant or control parameter, by dotted name.
    Param(String),
}

/// How a machine is put together. The order of the lists matters: later ones win.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Setup {
    /// Faults, by name in the catalogue.
    pub faults: Vec<ActiveFault>,
    /// Seed of the draws that intermittent faults make.
    pub seed: u64,
    /// What the site changes: plant parameters by name.
    pub params: Vec<(String, f64)>,
    /// Targets that are as new: fault changes to them no longer count.
    pub healed: BTreeSet<Target>,
    /// Elements of the wiring that are open: pulled connectors, loose earth links.
    pub open: BTreeSet<String>,
    /// Elements of the wiring that have another value than the machine's file says: a part of
    /// another make, a longer supply. In the element's own unit; faults come on top.
    pub values: Vec<(String, f64)>,
    /// Parameters that work in progress or a mistake has changed.
    pub overrides: Vec<(String, f64)>,
}

impl Setup {
    /// A machine with these faults and nothing else out of the ordinary.
    pub fn of_faults(faults: &[ActiveFault], seed: u64) -> Self {
        Self {
            faults: faults.to_vec(),
            seed,
            ..Self::default()
        }
    }
}
