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
        let text = files::text(name)?;
        let faults = name.strip_suffix(".json").unwrap_or(name).to_owned() + FAULTS_BESIDE;
        if std::path::Path::new(&faults).is_file() {
            let its_faults = files::text(&faults)?;
            return Ok(scenario::machine_with_faults(
                (name, &text),
                (&faults, &its_faults),
            )?);
        }
        return Ok(scenario::machine_from_text(name, &text)?);
    }
    let known: Vec<&str> = shipped.keys().map(String::as_str).collect();
    let remedy = format!("name one of {} or a machine file", known.join(", "));
    Err(Failure::usage("--machine", name, remedy))
}

/// A job by its name, or from its file.
///
/// # Errors
/// When there is no such job, or its file is wrong.
pub fn job(name: &str) -> Result<Arc<Scenario>, Failure> {
    if let Some(found) = scenario::job(name)? {
        return Ok(found);
    }
    if name.contains(['.', '/']) {
        let text = files::text(name)?;
        let id = std::path::Path::new(name)
            .file_stem()
            .map(|s| s.to_string_lossy().into_owned());
        let id = id.unwrap_or_else(|| name.to_owned());
        return Ok(Arc::new(scenario::job_from_text(name, &id, &text)?));
    }
    let known: Vec<String> = scenario::jobs()?.iter().map(|job| job.id.clone()).collect();
    let remedy = format!("name one of {} or a job file", known.join(", "));
    Err(Failure::usage("JOB", name, remedy))
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
