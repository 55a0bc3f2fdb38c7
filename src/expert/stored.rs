//! What the expert needed for each job that ships: worked out by `make pars` and compiled in, since
//! each takes the expert seconds.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;
use serde::Serialize;

/// A stored target.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct StoredPar {
    /// Cost of the job as the expert works it, money unit.
    pub cost: f64,
    /// Cost to be expected before anything of the job is known, money unit.
    pub expected: f64,
    /// Time on site, min.
    pub minutes: f64,
    /// Acts.
    pub steps: usize,
    /// The machine was put right, or rightly left.
    pub is_right: bool,
}

static SHIPPED: LazyLock<BTreeMap<String, StoredPar>> = LazyLock::new(|| {
    serde_json::from_str(include_str!(concat!(
        env!("OUT_DIR"),
        "/scenarios/pars.json"
    )))
    .unwrap_or_default()
});

/// The target of a job that ships.
pub fn stored_par(job: &str) -> Option<StoredPar> {
    SHIPPED.get(job).copied()
}
