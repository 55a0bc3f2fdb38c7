//! From a machine file to the plain types of the layers below.

use std::sync::Arc;

use crate::bench::workshop::Workshop;
use crate::machine::ControlKind;
use crate::plant::harness::WiringModel;
use crate::plant::params::PlantParams;
use crate::scenario::control_file::ControlFile;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::machine_file::MachinePlate;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;
use crate::scenario::to_wiring::wiring_model;

/// A machine file as plain types, SI inside.
#[derive(Clone, Debug)]
pub struct PlainMachine {
    /// Harness, motor and supply.
    pub wiring: Arc<WiringModel>,
    /// Plant parameters.
    pub plant: PlantParams,
    /// The control.
    pub control: ControlKind,
    /// What a technician can know and do.
    pub workshop: Workshop,
    /// Rating plate.
    pub plate: MachinePlate,
}

impl MachineFile {
    /// The same as plain types.
    ///
    /// # Errors
    /// What is wrong in the wiring or the plant section; a checked file has no such problem.
    pub fn to_plain(&self) -> Result<PlainMachine, FileError> {
        let wiring = wiring_model(&self.id, &self.wiring)?;
        let elements = wiring.elements.iter();
        let conductors = elements
            .map(|element| (element.name.clone(), element.what.clone()))
            .collect();
        Ok(PlainMachine {
            wiring,
            plant: self.plant_params()?,
            control: self.plain_control(),
            workshop: Workshop {
                conductors,
                ..self.workshop.to_plain()
            },
            plate: self.rating_plate.to_plain(),
        })
    }

    fn plain_control(&self) -> ControlKind {
        match &self.control {
            ControlFile::Electronic(file) => ControlKind::Electronic(Arc::new(file.to_plain())),
            ControlFile::CamTimer(file) => ControlKind::Timer(Arc::new(file.to_plain())),
        }
    }

    /// Plant parameters: the typical machine with what the file says of this one.
    ///
    /// # Errors
    /// Every name or value that cannot be.
    pub fn plant_params(&self) -> Result<PlantParams, FileError> {
        let mut problems = Problems::new(&self.id);
        let mut plant = PlantParams::typical();
        for (group, fields) in &self.plant {
            for (field, value) in fields {
                if let Err(error) = plant.set(&format!("{group}.{field}"), *value) {
                    problems.add(&format!("plant.{group}.{field}"), value, error.to_string());
                }
            }
        }
        problems.into_result(plant)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::machine_files;

    #[test]
    fn every_shipped_machine_becomes_plain_types() {
        for machine in machine_files().expect("sound") {
            let plain = machine.to_plain().expect("a checked file converts");
            assert!(!plain.workshop.steps.is_empty());
            assert!((plain.wiring.frequency_hz - plain.plate.supply_hz).abs() < 1e-9);
        }
    }

    #[test]
    fn machine_p_is_the_typical_plant() {
        let machines = machine_files().expect("sound");
        let p = machines
            .iter()
            .find(|machine| machine.id == "P")
            .expect("ships");
        assert_eq!(p.plant_params().expect("sound"), PlantParams::typical());
    }

    #[test]
    fn minutes_of_the_file_are_seconds_inside() {
        let p = &machine_files().expect("sound")[0];
        let plain = p.workshop.to_plain();
        let cover = plain.step("back_cover").expect("has a back cover");
        assert!((cover.off_s - 180.0).abs() < 1e-9);
    }
}
