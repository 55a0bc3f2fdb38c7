//! What each fault shows to a customer, for the machines that ship: computed by `make tables` and
//! compiled in, since a whole program on each of some two hundred machines takes seconds. A machine
//! that is not in the table is computed when it is needed.

use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::LazyLock;

use serde::Deserialize;
use serde::Serialize;

use crate::expert::symptom;
use crate::expert::symptom::Symptoms;
use crate::machine::MachineError;
use crate::machine::MachineModel;

/// By machine, then by fault.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Table(pub BTreeMap<String, BTreeMap<String, Symptoms>>);

static SHIPPED: LazyLock<Table> = LazyLock::new(|| {
    serde_json::from_str(include_str!(concat!(
        env!("OUT_DIR"),
        "/scenarios/symptoms.json"
    )))
    .unwrap_or_default()
});

/// What each fault of a machine shows, by its name.
///
/// # Errors
/// When the machine cannot be solved.
pub fn shown(model: &Arc<MachineModel>) -> Result<BTreeMap<String, Symptoms>, MachineError> {
    if let Some(table) = SHIPPED.0.get(&model.id)
        && model.faults.iter().all(|f| table.contains_key(&f.id))
    {
        return Ok(table.clone());
    }
    computed(model, 1)
}

/// The same, computed, for every so many-th fault.
///
/// # Errors
/// When the machine cannot be solved.
pub fn computed(
    model: &Arc<MachineModel>,
    every: usize,
) -> Result<BTreeMap<String, Symptoms>, MachineError> {
    let faults = model.faults.iter().step_by(every.max(1));
    symptom::shown_by_each(model, faults.map(|f| f.id.as_str()))
}
