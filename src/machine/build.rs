//! From a set-up to numbers: which wiring and which parameters a machine has just now.
//!
//! Faults come first, then what the site changes, then what work in progress or a mistake changes.
//! A change to a target that a repair made good is left out; nothing else is known of faults here.

use std::sync::Arc;

use crate::machine::ActiveFault;
use crate::machine::FaultDef;
use crate::machine::MachineError;
use crate::machine::MachineModel;
use crate::machine::Setup;
use crate::machine::Target;
use crate::plant::faults;
use crate::plant::faults::PlantChange;
use crate::plant::harness::Wiring;
use crate::plant::harness::WiringChange;
use crate::plant::harness::WiringModel;
use crate::plant::params::PlantParams;

/// Friction of a rotor that has seized, N·m: more than any small motor gives.
const SEIZED_N_M: f64 = 60.0;

impl WiringChange {
    /// Name of what this change touches.
    pub fn target(&self, model: &WiringModel) -> Target {
        let element = |id: &crate::network::ElementId| model.elements[id.index()].name.clone();
        Target::Element(match self {
            WiringChange::Set { element: id, .. }
            | WiringChange::Open { element: id }
            | WiringChange::Scale { element: id, .. }
            | WiringChange::ClosedResistance { contact: id, .. } => element(id),
            WiringChange::AddResistor { name, .. } => name.clone(),
            WiringChange::SupplyVoltage { .. } => element(&model.supply.source),
            WiringChange::ExchangeLineAndNeutral => element(&model.supply.plug_contacts[0]),
            WiringChange::ExchangeFarEnds { elements } => element(&elements[0]),
            WiringChange::OpenWindings { .. }
            | WiringChange::ShortedTurns { .. }
            | WiringChange::WindingToFrame { .. }
            | WiringChange::Seized
            | WiringChange::LoadFactor { .. } => model.motor.name.clone(),
            WiringChange::No5V => model
                .low_voltage
                .as_ref()
                .map_or_else(String::new, |low| element(&low.regulator)),
        })
    }
}

impl FaultDef {
    /// Everything the fault changes.
    pub fn targets(&self, model: &WiringModel) -> Vec<Target> {
        let wiring = self.wiring.iter().map(|change| change.target(model));
        let plant = self
            .plant
            .iter()
            .map(|change| Target::Param(change.param.clone()));
        let control = self
            .control
            .iter()
            .map(|(name, _)| Target::Param(name.clone()));
        wiring.chain(plant).chain(control).collect()
    }
}

/// Faults of a set-up with their entries in the catalogue.
pub(super) fn parts<'a>(
    model: &'a MachineModel,
    setup: &'a Setup,
) -> Result<Vec<(&'a ActiveFault, &'a FaultDef)>, MachineError> {
    let unknown = |name: &str| MachineError::UnknownFault {
        machine: model.id.clone(),
        name: name.to_owned(),
    };
    setup
        .faults
        .iter()
        .map(|active| {
            model
                .fault(&active.id)
                .map(|def| (active, def))
                .ok_or_else(|| unknown(&active.id))
        })
        .collect()
}

/// The wiring with the faults that are on.
pub(super) fn wiring(
    model: &MachineModel,
    shared: &Arc<WiringModel>,
    setup: &Setup,
    is_on: &[bool],
) -> Result<Wiring, MachineError> {
    let mut wiring = Wiring::healthy(shared);
    let element = |name: &String| {
        shared
            .element(name)
            .ok_or_else(|| MachineError::UnknownElement { name: name.clone() })
    };
    for (name, value) in &setup.values {
        wiring.set_value(element(name)?, *value);
    }
    for ((active, def), _) in parts(model, setup)?
        .iter()
        .zip(is_on)
        .filter(|(_, on)| **on)
    {
        for change in &def.wiring {
            if !setup.healed.contains(&change.target(&model.wiring)) {
                wiring.apply(change, active.severity_ratio);
            }
        }
    }
    for name in &setup.open {
        wiring.open_by_hand(element(name)?, true);
    }
    Ok(wiring)
}

/// What the faults that are on make of the control, by name.
pub(super) fn panel(
    model: &MachineModel,
    setup: &Setup,
    is_on: &[bool],
) -> Result<PanelFaults, MachineError> {
    let mut panel = PanelFaults::default();
    for ((_, def), _) in parts(model, setup)?
        .iter()
        .zip(is_on)
        .filter(|(_, on)| **on)
    {
        let left = def
            .control
            .iter()
            .filter(|(name, _)| !setup.healed.contains(&Target::Param(name.clone())));
        for (name, value) in left {
            match name.as_str() {
                "control.key_locked_ratio" => panel.keys_locked = *value > 0.5,
                "control.delay_s" => panel.delay_min = (*value / 60.0) as u32,
                "control.stuck_key_ratio" => panel.key_stuck = *value > 0.5,
                _ => return Err(MachineError::UnknownControl { name: name.clone() }),
            }
        }
    }
    Ok(panel)
}

/// What can be wrong at the panel.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct PanelFaults {
    /// Keys locked by somebody.
    pub keys_locked: bool,
    /// Delayed start left on, min.
    pub delay_min: u32,
    /// The start key's contact stays closed.
    pub key_stuck: bool,
}

/// The plant's parameters with the faults that are on.
pub(super) fn params(
    model: &MachineModel,
    setup: &Setup,
    is_on: &[bool],
    wiring: &Wiring,
) -> Result<PlantParams, MachineError> {
    let mut params = model.plant.clone();
    for (name, value) in &setup.params {
        params.set(name, *value)?;
    }
    for ((active, def), _) in parts(model, setup)?
        .iter()
        .zip(is_on)
        .filter(|(_, on)| **on)
    {
        let changes: Vec<PlantChange> = def
            .plant
            .iter()
            .filter(|change| !setup.healed.contains(&Target::Param(change.param.clone())))
            .cloned()
            .collect();
        faults::apply(&mut params, &changes, active.severity_ratio)?;
    }
    for (name, value) in &setup.overrides {
        params.set(name, *value)?;
    }
    if wiring.is_seized {
        params.rotor.friction_n_m = SEIZED_N_M;
    }
    // A heavier shaft load of the electrical catalogue is friction at the motor.
    params.rotor.friction_n_m += (wiring.load_ratio - 1.0) * model.wiring.loads.spinning_n_m;
    Ok(params)
}
