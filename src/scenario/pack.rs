//! Machines and jobs put together for the bench: files in, `MachineModel`, `Workshop` and
//! `Scenario` out.

use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::LazyLock;

use crate::bench::scenario::Customer;
use crate::bench::scenario::Rates;
use crate::bench::scenario::Reference;
use crate::bench::scenario::Rules;
use crate::bench::scenario::Scenario;
use crate::bench::workshop::Workshop;
use crate::machine::ActiveFault;
use crate::machine::FaultClass;
use crate::machine::FaultDef;
use crate::machine::MachineModel;
use crate::machine::Onset;
use crate::say;
use crate::scenario::check_faults::check_catalogue_for;
use crate::scenario::check_faults::read_catalogue;
use crate::scenario::check_job::check_job;
use crate::scenario::check_job::read_job;
use crate::scenario::check_machine::read_machine;
use crate::scenario::check_set::read_set;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::fault_file::FaultClassFile;
use crate::scenario::fault_file::FaultFile;
use crate::scenario::fault_file::OnsetFile;
use crate::scenario::job_file::JobFaultFile;
use crate::scenario::job_file::JobFile;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problem;
use crate::scenario::set_file::SetFile;
use crate::scenario::share::read_shared;
use crate::scenario::shipped;
use crate::scenario::to_roles::roles;
use crate::scenario::to_site::site;
use crate::scenario::visit_file::visit;
use crate::units;

/// A type of machine with all that a technician can do to it.
#[derive(Clone, Debug)]
pub struct MachinePack {
    /// Its physics.
    pub model: Arc<MachineModel>,
    /// What can be done to it.
    pub workshop: Arc<Workshop>,
}

static MACHINES: LazyLock<Result<BTreeMap<String, MachinePack>, FileError>> = LazyLock::new(|| {
    let catalogue = shipped::catalogue()?;
    let packs = shipped::machine_files()?
        .iter()
        .map(|file| Ok((file.id.clone(), pack(&file.id, file, catalogue)?)));
    packs.collect()
});

/// The machines that ship, by short name.
///
/// # Errors
/// When a shipped file is broken; a test holds that none is.
pub fn machines() -> Result<&'static BTreeMap<String, MachinePack>, FileError> {
    MACHINES.as_ref().map_err(Clone::clone)
}

/// The jobs that ship, easiest first, ready for the bench.
///
/// # Errors
/// When a shipped file is broken; a test holds that none is.
pub fn jobs() -> Result<Vec<Arc<Scenario>>, FileError> {
    let jobs = shipped::job_files()?;
    jobs.iter()
        .map(|job| scenario(job.id, &job.file).map(Arc::new))
        .collect()
}

/// One shipped job by its id.
///
/// # Errors
/// When a shipped file is broken.
pub fn job(id: &str) -> Result<Option<Arc<Scenario>>, FileError> {
    let found = shipped::job_files()?.iter().find(|job| job.id == id);
    found
        .map(|job| scenario(job.id, &job.file).map(Arc::new))
        .transpose()
}

/// Plain names of the parts a job is about, for choosing what to practise; empty where nothing is
/// wrong with a part.
pub fn parts_of(scenario: &Scenario) -> Vec<String> {
    let mut parts: Vec<String> = scenario
        .faults
        .iter()
        .filter_map(|fault| scenario.machine.fault(&fault.id))
        .filter_map(|fault| scenario.workshop.part(&fault.part))
        .map(|part| part.name.clone())
        .collect();
    parts.sort();
    parts.dedup();
    parts
}

/// A job from the text of its file; `id` is the file's name without its ending.
///
/// # Errors
/// Everything that is wrong in the file, each with its field and remedy.
pub fn job_from_text(file: &str, id: &str, text: &str) -> Result<Scenario, FileError> {
    scenario(id, &read_shared(file, text)?)
}

/// A job from its file twin, checked first; `id` names it in errors as well.
///
/// # Errors
/// Everything that is wrong in it, each with its field and remedy.
pub fn job_of(id: &str, job: &JobFile) -> Result<Scenario, FileError> {
    check_job(id, job, shipped::machine_files()?, shipped::catalogue()?)?;
    scenario(id, job)
}

/// A job's file, read and checked, from its text.
///
/// # Errors
/// Everything that is wrong in the file, each with its field and remedy.
pub fn job_file_from_text(file: &str, text: &str) -> Result<JobFile, FileError> {
    read_shared(file, text)
}

/// A training set from the text of its file.
///
/// # Errors
/// Everything that is wrong in the file, each with its field and remedy.
pub fn set_from_text(file: &str, text: &str) -> Result<SetFile, FileError> {
    let jobs = shipped::job_files()?;
    let ids: Vec<&str> = jobs.iter().map(|job| job.id).collect();
    let (machines, catalogue) = (shipped::machine_files()?, shipped::catalogue()?);
    read_set(file, text, &ids, machines, catalogue)
}

/// A machine from the text of its file, with the shipped catalogue of faults.
///
/// # Errors
/// Everything that is wrong in the file, each with its field and remedy.
pub fn machine_from_text(file: &str, text: &str) -> Result<MachinePack, FileError> {
    let catalogue = shipped::catalogue()?;
    let read = read_machine(file, text, catalogue)?;
    check_catalogue_for(file, catalogue, &read)?;
    pack(file, &read, catalogue)
}

/// A machine from the text of its file, with a catalogue of its own: further machines and further
/// faults need no Rust. Each text comes with the name of its file.
///
/// # Errors
/// Everything that is wrong in either file, each with its field and remedy.
pub fn machine_with_faults(
    (file, text): (&str, &str),
    (faults_file, faults_text): (&str, &str),
) -> Result<MachinePack, FileError> {
    let catalogue = read_catalogue(faults_file, faults_text)?;
    let read = read_machine(file, text, &catalogue)?;
    check_catalogue_for(faults_file, &catalogue, &read)?;
    pack(file, &read, &catalogue)
}

/// A job on such a machine, from the texts of the three files, each with the name of its file; `id`
/// is the job file's name without its ending.
///
/// # Errors
/// Everything that is wrong in a file, each with its field and remedy.
pub fn job_with_machine(
    id: &str,
    (file, text): (&str, &str),
    machine: (&str, &str),
    faults: (&str, &str),
) -> Result<Scenario, FileError> {
    let catalogue = read_catalogue(faults.0, faults.1)?;
    let machines = [read_machine(machine.0, machine.1, &catalogue)?];
    let read = read_job(file, text, &machines, &catalogue)?;
    let pack = machine_with_faults(machine, faults)?;
    Ok(on_machine(id, &read, &pack))
}

fn pack(
    file: &str,
    machine: &MachineFile,
    catalogue: &CatalogueFile,
) -> Result<MachinePack, FileError> {
    let plain = machine.to_plain()?;
    let faults = catalogue
        .faults
        .iter()
        .filter(|fault| fault.machines.contains_key(&machine.id))
        .map(|fault| fault_def(file, fault, machine, &plain.wiring))
        .collect::<Result<_, _>>()?;
    let model = MachineModel {
        id: machine.id.clone(),
        name: machine.name.clone(),
        wiring: (*plain.wiring).clone(),
        plant: plain.plant,
        control: plain.control,
        roles: roles(&machine.roles),
        faults,
    };
    Ok(MachinePack {
        model: Arc::new(model),
        workshop: Arc::new(plain.workshop),
    })
}

fn fault_def(
    file: &str,
    fault: &FaultFile,
    machine: &MachineFile,
    wiring: &crate::plant::harness::WiringModel,
) -> Result<FaultDef, FileError> {
    Ok(FaultDef {
        id: fault.id.clone(),
        reference: fault.reference.clone(),
        part: fault.part.clone(),
        what: fault.name.clone(),
        class: match fault.class {
            FaultClassFile::Part => FaultClass::Part,
            FaultClassFile::Harness => FaultClass::Harness,
            FaultClassFile::Site => FaultClass::Site,
            FaultClassFile::Refit => FaultClass::Refit,
        },
        weight: fault.weight,
        weight_source: fault.weight_source.clone(),
        complaint: fault.complaint.clone(),
        is_graded: !fault.severity.is_empty(),
        onset: onset(fault.onset),
        wiring: fault.changes(file, &machine.id, wiring)?,
        plant: fault.plant_changes(&machine.id),
        control: fault.control_changes(&machine.id),
    })
}

fn scenario(id: &str, file: &JobFile) -> Result<Scenario, FileError> {
    let pack = machines()?.get(&file.machine).ok_or_else(|| FileError {
        problems: vec![Problem::new(
            id,
            "machine",
            &file.machine,
            say!("name a machine that ships"),
        )],
    })?;
    Ok(on_machine(id, file, pack))
}

fn on_machine(id: &str, file: &JobFile, pack: &MachinePack) -> Scenario {
    Scenario {
        id: id.to_owned(),
        title: file.title.clone(),
        level: file.level,
        skills: file.skills.clone(),
        machine: Arc::clone(&pack.model),
        workshop: Arc::clone(&pack.workshop),
        customer: Customer {
            name: file.customer.name.clone(),
            home: file.customer.home.clone(),
            attitude: file.customer.attitude.clone(),
            complaint: file.customer.complaint.clone(),
            answers: file.customer.answers.clone(),
        },
        site: site(&file.site),
        faults: file.faults.iter().map(active).collect(),
        double_faults: file.double_faults.clone(),
        van: file.van.clone(),
        money: Rates {
            labour_per_min: file.money.labour_per_min,
            call_out: file.money.call_out,
            second_visit: file.money.second_visit,
            callback: file.money.callback,
            new_machine: file.money.new_machine,
        },
        rules: Rules {
            instruments: file.rules.instruments.clone(),
            gauges: file.rules.gauges.clone(),
            hints: file.rules.hints,
            budget_price: file.rules.budget,
            time_s: file.rules.minutes.map(units::s_from_min),
            pass_ratio: file.rules.pass_marks.map(|marks| marks / 100.0),
        },
        visit: visit(file.visit.as_ref(), file.money.new_machine),
        reference: file
            .reference
            .map(|r| Reference {
                cost: r.cost,
                minutes: r.minutes,
            })
            .unwrap_or_default(),
    }
}

fn active(fault: &JobFaultFile) -> ActiveFault {
    ActiveFault {
        id: fault.id.clone(),
        severity_ratio: fault.severity,
        onset: fault.onset.map(onset),
    }
}

fn onset(file: OnsetFile) -> Onset {
    match file {
        OnsetFile::Constant => Onset::Constant,
        OnsetFile::From { start_min } => Onset::From {
            start_s: units::s_from_min(start_min),
        },
        OnsetFile::Intermittent { period_s, chance } => Onset::Intermittent {
            period_s,
            chance_ratio: chance,
        },
        OnsetFile::Hot { above_degc } => Onset::Hot {
            above_k: above_degc + units::CELSIUS_ZERO_K,
        },
        OnsetFile::Vibration { above_rpm } => Onset::Vibration {
            above_rad_per_s: units::rad_per_s_from_rpm(above_rpm),
        },
    }
}
