//! Checks of the fault catalogue, alone and against a machine: every change names something the
//! machine has, and something that can be done there makes it good again.

use std::collections::BTreeSet;

use crate::plant::params::PlantParams;
use crate::scenario::check_machine::control_params;
use crate::scenario::check_machine::wiring_names;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::fault_file::ChangeFile;
use crate::scenario::fault_file::FAULT_FORMAT;
use crate::scenario::fault_file::FaultFile;
use crate::scenario::fault_file::OnsetFile;
use crate::scenario::fault_file::Touched;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::names::Names;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;
use crate::scenario::problem::quoted;
use crate::scenario::read::read;
use crate::scenario::workshop_file::WorkFile;
use crate::scenario::workshop_file::WorkKindFile;

/// Reads and checks a catalogue by itself; `file` is the name errors use.
pub fn read_catalogue(file: &str, text: &str) -> Result<CatalogueFile, FileError> {
    let catalogue: CatalogueFile = read(file, text)?;
    let mut problems = Problems::new(file);
    if catalogue.format != FAULT_FORMAT {
        let remedy = format!("this version reads {}", quoted(FAULT_FORMAT));
        problems.add("format", quoted(&catalogue.format), remedy);
    }
    let ids = catalogue.faults.iter().map(|f| f.id.as_str());
    Names::define("fault", "faults", ids, &mut problems);
    let references = catalogue.faults.iter().map(|f| f.reference.as_str());
    Names::define("reference", "faults", references, &mut problems);
    for (index, fault) in catalogue.faults.iter().enumerate() {
        check_fault(&format!("faults[{index}]"), fault, &mut problems);
    }
    problems.into_result(catalogue)
}

fn check_fault(at: &str, fault: &FaultFile, problems: &mut Problems) {
    problems.not_blank(&format!("{at}.name"), &fault.name);
    problems.not_blank(&format!("{at}.complaint"), &fault.complaint);
    problems.not_blank(&format!("{at}.weight_source"), &fault.weight_source);
    problems.in_range(&format!("{at}.weight"), fault.weight, 0.01, 100.0);
    check_onset(&format!("{at}.onset"), fault.onset, problems);
    if fault.machines.is_empty() {
        problems.add(
            &format!("{at}.machines"),
            "{}",
            "at least one machine can have it",
        );
    }
    for (machine, changes) in &fault.machines {
        for (index, change) in changes.iter().enumerate() {
            check_numbers(
                &format!("{at}.machines.{machine}[{index}]"),
                change,
                problems,
            );
        }
    }
}

/// Checks when a fault is there.
pub fn check_onset(at: &str, onset: OnsetFile, problems: &mut Problems) {
    match onset {
        OnsetFile::Constant => {}
        OnsetFile::From { start_min } => {
            problems.in_range(&format!("{at}.from.start_min"), start_min, 0.0, 1440.0);
        }
        OnsetFile::Intermittent { period_s, chance } => {
            problems.in_range(
                &format!("{at}.intermittent.period_s"),
                period_s,
                0.1,
                36_000.0,
            );
            problems.in_range(&format!("{at}.intermittent.chance"), chance, 0.0, 1.0);
        }
        OnsetFile::Hot { above_degc } => {
            problems.in_range(&format!("{at}.hot.above_degc"), above_degc, -40.0, 300.0);
        }
        OnsetFile::Vibration { above_rpm } => {
            problems.in_range(&format!("{at}.vibration.above_rpm"), above_rpm, 0.0, 2000.0);
        }
    }
}

fn check_numbers(at: &str, change: &ChangeFile, problems: &mut Problems) {
    match change {
        ChangeFile::Set { value, .. } => {
            problems.in_range(&format!("{at}.value"), *value, 0.0, 1.0e12);
        }
        ChangeFile::Scale { factor, .. } | ChangeFile::ScaleParam { factor, .. } => {
            problems.in_range(&format!("{at}.factor"), *factor, 0.0, 1.0e6);
        }
        ChangeFile::ClosedResistance { ohm, .. } | ChangeFile::AddResistor { ohm, .. } => {
            problems.in_range(&format!("{at}.ohm"), *ohm, 0.0, 1.0e12);
        }
        ChangeFile::SupplyVoltage { v } => problems.in_range(&format!("{at}.v"), *v, 0.0, 500.0),
        ChangeFile::Param { name, value } => match PlantParams::about(name) {
            Ok(about) => {
                problems.in_range(&format!("{at}.value"), *value, about.min, about.max);
            }
            Err(error) => problems.add(&format!("{at}.name"), quoted(name), error.to_string()),
        },
        ChangeFile::Motor {
            open_windings,
            winding,
            shorted_share,
            tap_share,
            ..
        } => {
            for number in open_windings.iter().chain(winding) {
                problems.in_range(&format!("{at}.winding"), f64::from(*number), 1.0, 2.0);
            }
            for share in [shorted_share, tap_share].into_iter().flatten() {
                problems.in_range(&format!("{at}.share"), *share, 0.001, 0.999);
            }
        }
        ChangeFile::Open { .. }
        | ChangeFile::ExchangeLineAndNeutral
        | ChangeFile::ExchangeFarEnds { .. }
        | ChangeFile::No5V
        | ChangeFile::Mechanical { .. }
        | ChangeFile::Control { .. } => {}
    }
}

/// Checks the catalogue's changes for one machine, and that each can be made good there.
pub fn check_catalogue_for(
    file: &str,
    catalogue: &CatalogueFile,
    machine: &MachineFile,
) -> Result<(), FileError> {
    let mut problems = Problems::new(file);
    let wiring = wiring_names(machine, catalogue);
    let parts = machine.workshop.parts.iter().map(|p| p.id.as_str());
    let parts = Names::known("part of this machine", parts);
    let control = control_params();
    for (index, fault) in catalogue.faults.iter().enumerate() {
        let Some(changes) = fault.machines.get(&machine.id) else {
            continue;
        };
        let at = format!("faults[{index}].machines.{}", machine.id);
        if !fault.part.is_empty() {
            parts.expect(&format!("faults[{index}].part"), &fault.part, &mut problems);
        }
        for (change_index, change) in changes.iter().enumerate() {
            let path = format!("{at}[{change_index}]");
            if let ChangeFile::AddResistor { nodes, .. } = change {
                wiring
                    .nodes
                    .expect_all(&format!("{path}.nodes"), nodes, &mut problems);
            }
            for touched in change.touches() {
                match touched {
                    Touched::Element(name) => wiring.elements.expect(&path, &name, &mut problems),
                    Touched::Param(name) if name.starts_with("control.") => {
                        control.expect(&path, &name, &mut problems);
                    }
                    // Plant parameters are checked with their values.
                    Touched::Param(_) => {}
                }
            }
        }
        if !can_be_made_good(machine, changes) {
            problems.add(
                &at,
                quoted(&fault.id),
                "no work of this machine makes it good",
            );
        }
    }
    problems.into_result(())
}

/// Everything a work makes good: its own list and, for a replacement, the part's.
pub fn made_good(machine: &MachineFile, work: &WorkFile) -> BTreeSet<Touched> {
    let part = (work.kind == WorkKindFile::Replace)
        .then(|| machine.workshop.parts.iter().find(|p| p.id == work.part))
        .flatten();
    let elements = part
        .map_or(&[][..], |p| &p.elements)
        .iter()
        .chain(&work.elements);
    let params = part
        .map_or(&[][..], |p| &p.params)
        .iter()
        .chain(&work.params);
    elements
        .map(|name| Touched::Element(name.clone()))
        .chain(params.map(|name| Touched::Param(name.clone())))
        .collect()
}

/// One work, or several where the fault is several at once, undo all that the changes touch.
fn can_be_made_good(machine: &MachineFile, changes: &[ChangeFile]) -> bool {
    let touched: BTreeSet<Touched> = changes.iter().flat_map(ChangeFile::touches).collect();
    let works: Vec<BTreeSet<Touched>> = machine
        .workshop
        .works
        .iter()
        .map(|work| made_good(machine, work))
        .collect();
    touched
        .iter()
        .all(|one| works.iter().any(|good| good.contains(one)))
}
