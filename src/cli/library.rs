//! Machines, faults and jobs by the names people type: short names, reference numbers, files.

use std::sync::Arc;

use crate::bench::scenario::Scenario;
use crate::cli::failure::Failure;
use crate::cli::files;
use crate::machine::ActiveFault;
use crate::machine::Onset;
use crate::scenario;
use crate::scenario::MachinePack;

/// Ending of a catalogue of faults that lies beside a machine's file and belongs to it.
const FAULTS_BESIDE: &str = ".faults.json";

/// A machine by short name, or from its file; beside `x.json` a file `x.faults.json` holds its
/// faults.
///
/// # Errors
/// When there is no such machine, or its file is wrong.
pub fn machine(name: &str) -> Result<MachinePack, Failure> {
    let shipped = scenario::machines()?;
    if let Some(pack) = shipped.get(&name.to_uppercase()) {
        return Ok(pack.clone());
    }
    if name.contains(['.', '/']) {
        return machine_of(name, &files::text(name)?);
    }
    let known: Vec<&str> = shipped.keys().map(String::as_str).collect();
    let remedy = format!("name one of {} or a machine file", known.join(", "));
    Err(Failure::usage("--machine", name, remedy))
}

/// A machine from the text of its file, with the faults beside that file.
///
/// # Errors
/// When either file is wrong.
pub fn machine_of(name: &str, text: &str) -> Result<MachinePack, Failure> {
    Ok(match faults_beside(name)? {
        Some((faults, its_faults)) => {
            scenario::machine_with_faults((name, text), (&faults, &its_faults))?
        }
        None => scenario::machine_from_text(name, text)?,
    })
}

/// The machine's file that a catalogue lies beside, if there is one.
pub fn machine_beside(faults: &str) -> Option<String> {
    let machine = faults.strip_suffix(FAULTS_BESIDE)?.to_owned() + ".json";
    std::path::Path::new(&machine).is_file().then_some(machine)
}

/// Name and text of the catalogue beside a machine's file, if there is one.
fn faults_beside(machine: &str) -> Result<Option<(String, String)>, Failure> {
    let name = machine.strip_suffix(".json").unwrap_or(machine).to_owned() + FAULTS_BESIDE;
    if !std::path::Path::new(&name).is_file() {
        return Ok(None);
    }
    let text = files::text(&name)?;
    Ok(Some((name, text)))
}

/// A job by its name, or from its file; `machine` is the file of a machine that does not ship.
///
/// # Errors
/// When there is no such job, or a file is wrong.
pub fn job(name: &str, machine: Option<&str>) -> Result<Arc<Scenario>, Failure> {
    if machine.is_none()
        && let Some(found) = scenario::job(name)?
    {
        return Ok(found);
    }
    if name.contains(['.', '/']) {
        let text = files::text(name)?;
        let id = std::path::Path::new(name)
            .file_stem()
            .map(|s| s.to_string_lossy().into_owned());
        let id = id.unwrap_or_else(|| name.to_owned());
        let read = match machine {
            Some(machine) => job_on(&id, (name, &text), machine)?,
            None => scenario::job_from_text(name, &id, &text)?,
        };
        return Ok(Arc::new(read));
    }
    if machine.is_some() {
        let remedy = "--machine goes with a job file; a job that ships has its machine";
        return Err(Failure::usage("JOB", name, remedy));
    }
    let known: Vec<String> = scenario::jobs()?.iter().map(|job| job.id.clone()).collect();
    let remedy = format!("name one of {} or a job file", known.join(", "));
    Err(Failure::usage("JOB", name, remedy))
}

fn job_on(id: &str, job: (&str, &str), machine: &str) -> Result<Scenario, Failure> {
    let text = files::text(machine)?;
    let beside = faults_beside(machine)?.ok_or_else(|| {
        let remedy =
            format!("its faults must lie beside it, in a file that ends in {FAULTS_BESIDE}");
        Failure::usage("--machine", machine, remedy)
    })?;
    let (faults, its_faults) = (beside.0.as_str(), beside.1.as_str());
    Ok(scenario::job_with_machine(
        id,
        job,
        (machine, &text),
        (faults, its_faults),
    )?)
}

/// A fault as typed: `ID` or `ID=SEVERITY`, by name or reference number, there all the time.
///
/// # Errors
/// When the machine has no such fault, or the severity is no number from 0 to 1.
pub fn fault(pack: &MachinePack, word: &str) -> Result<ActiveFault, Failure> {
    let (id, severity) = word.split_once('=').unwrap_or((word, "1"));
    let severity_ratio = severity
        .parse::<f64>()
        .ok()
        .filter(|s| (0.0..=1.0).contains(s))
        .ok_or_else(|| Failure::usage("--fault", word, "give a severity from 0 to 1 behind ="))?;
    let def = pack.model.fault(id).ok_or_else(|| {
        let remedy = format!(
            "machine {} has no such fault; `tubwright faults --machine {}` lists them",
            pack.model.id, pack.model.id
        );
        Failure::usage("--fault", id, remedy)
    })?;
    Ok(ActiveFault {
        id: def.id.clone(),
        severity_ratio,
        onset: Some(Onset::Constant),
    })
}
