//! `check`: files read strictly and checked whole. A machine is also switched on, and a job put on
//! its machine, so that what reads well but cannot be solved is told too.

use std::io::Write;
use std::path::Path;
use std::sync::Arc;

use serde_json::Value;
use serde_json::json;

use crate::bench::action::MeterMode;
use crate::bench::job::Job;
use crate::cli::Verdict;
use crate::cli::args::CheckArgs;
use crate::cli::failure::Failure;
use crate::cli::fair;
use crate::cli::files;
use crate::cli::hold::At;
use crate::cli::hold::Hold;
use crate::cli::library;
use crate::machine::ActiveFault;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::Setup;
use crate::records::library::Library;
use crate::records::record::Record;
use crate::records::sitting::Assessment;
use crate::scenario;
use crate::scenario::FileError;
use crate::scenario::MachinePack;
use crate::scenario::Problem;
use crate::score::Judge;

/// Ticks that a machine is switched on for: the self check is over by then.
const SWITCHED_ON_TICKS: u64 = 100;

/// Does it. Every file that can be read is checked before one that cannot ends the command.
pub fn run(args: &CheckArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let mut verdict = Verdict::Passed;
    let mut judge = Judge::default();
    let (mut answers, mut unread) = (Vec::new(), None);
    for file in &args.files {
        let mut fairness = Vec::new();
        let problems = match files::text(file).and_then(|text| {
            check(file, &text)?;
            if args.fair {
                fairness = fair::judged(&mut judge, file, &text)?;
            }
            Ok(())
        }) {
            Ok(()) => Vec::new(),
            Err(Failure::Input(error)) => error.problems,
            Err(other) => {
                // The first is the command's own failure, the others are told here.
                if let Some(earlier) = unread.replace(other) {
                    super::tell(&earlier);
                }
                continue;
            }
        };
        if !problems.is_empty() {
            verdict = Verdict::Failed;
        }
        if !args.json {
            problems.iter().for_each(|problem| super::tell(problem));
            let word = match problems.len() {
                0 => "sound".to_owned(),
                1 => "1 problem".to_owned(),
                n => format!("{n} problems"),
            };
            writeln!(out, "{file}: {word}")?;
            for line in &fairness {
                let mark = if line.fair { "fair" } else { "warn" };
                writeln!(out, "  {mark}: {}", line.words)?;
            }
        }
        if fairness.iter().any(|line| !line.fair) {
            verdict = Verdict::Failed;
        }
        let problems: Vec<Value> = problems.iter().map(as_json).collect();
        answers.push(json!({ "file": file, "problems": problems, "fairness": fairness }));
    }
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &answers)?;
        writeln!(out)?;
    }
    match unread {
        Some(failure) => Err(failure),
        None => Ok(verdict),
    }
}

fn as_json(problem: &Problem) -> Value {
    json!({
        "field": problem.path,
        "found": problem.found,
        "remedy": problem.remedy,
        "text": problem.to_string(),
    })
}

/// What kind of file it is stands in its `format` field.
fn check(file: &str, text: &str) -> Result<(), Failure> {
    let format = serde_json::from_str::<Value>(text)
        .ok()
        .and_then(|value| value["format"].as_str().map(str::to_owned))
        .unwrap_or_default();
    if format.starts_with("tubwright-machine") {
        runs(file, &library::machine_of(file, text)?)
    } else if format.starts_with("tubwright-faults") {
        match library::machine_beside(file) {
            Some(machine) => {
                let its_text = files::text(&machine)?;
                scenario::machine_with_faults((&machine, &its_text), (file, text))?;
                Ok(())
            }
            None => Ok(faults(file, text)?),
        }
    } else if format.starts_with("tubwright-set") {
        Ok(scenario::set_from_text(file, text).map(drop)?)
    } else if format.starts_with("tubwright-assessment") {
        Assessment::read(file, text, &Library::shipped()?)?;
        Ok(())
    } else if format.starts_with("tubwright-record") {
        // Whether it holds is for `verify` to say.
        Record::read(file, text)?;
        Ok(())
    } else {
        // A job, or a file whose errors the job's reader tells best.
        let id = Path::new(file)
            .file_stem()
            .unwrap_or_default()
            .to_string_lossy();
        let scenario = scenario::job_from_text(file, &id, text)?;
        let job = Job::new(Arc::new(scenario), 1);
        let trouble = match &job {
            Ok(job) => job.machine().trouble(),
            Err(error) => Some(error),
        };
        cannot(file, "faults", trouble)
    }
}

/// The machine can be put together, sound and with each of its faults, and switched on; instruments
/// read something in each state of its file.
fn runs(file: &str, pack: &MachinePack) -> Result<(), Failure> {
    let sound = [(String::new(), Setup::default())];
    let faulty = pack.model.faults.iter().map(|fault| {
        let active = ActiveFault::constant(&fault.id);
        (
            format!("with fault {}", fault.id),
            Setup::of_faults(&[active], 1),
        )
    });
    let mut problems = Vec::new();
    for (what, setup) in sound.into_iter().chain(faulty) {
        let ran = Machine::new(&pack.model, setup).map(|mut machine| {
            machine.press_power();
            machine.advance(SWITCHED_ON_TICKS);
            machine
        });
        let trouble = match &ran {
            Ok(machine) => machine.trouble(),
            Err(error) => Some(error),
        };
        if let Err(Failure::Input(error)) = cannot(file, &what, trouble) {
            problems.extend(error.problems);
        }
    }
    let wiring = Arc::new(pack.model.wiring.clone());
    for state in &wiring.states {
        let read = Hold::sound(&wiring, &state.name)
            .solve()
            .and_then(|mut held| {
                let pins = At::Nodes(wiring.supply.plug_pins);
                held.measure(MeterMode::Ohms, &pins)
            });
        let trouble = read.err().map(MachineError::Solve);
        let path = format!("wiring.states.{}", state.name);
        if let Err(Failure::Input(error)) = cannot(file, &path, trouble.as_ref()) {
            problems.extend(error.problems);
        }
    }
    if problems.is_empty() {
        Ok(())
    } else {
        Err(Failure::Input(FileError { problems }))
    }
}

fn cannot(file: &str, path: &str, trouble: Option<&MachineError>) -> Result<(), Failure> {
    let Some(trouble) = trouble else {
        return Ok(());
    };
    Err(Failure::Input(FileError {
        problems: vec![Problem::new(
            file,
            path,
            "",
            &format!("it reads well but the machine cannot run: {trouble}"),
        )],
    }))
}

/// A catalogue is checked against every machine that ships.
fn faults(file: &str, text: &str) -> Result<(), FileError> {
    let catalogue = scenario::read_catalogue(file, text)?;
    let mut problems = Vec::new();
    for machine in scenario::machine_files()? {
        if let Err(error) = scenario::check_catalogue_for(file, &catalogue, machine) {
            problems.extend(error.problems);
        }
    }
    if problems.is_empty() {
        Ok(())
    } else {
        Err(FileError { problems })
    }
}
