//! The native command line: the same engine as the screens, for files, scripts and checks.
//!
//! ```text
//! check probe simulate play          do something with a machine or a job
//! belief advise par crowd            what the expert and apprentices make of a job
//! verify cohort statements           check results, work them out, hand them on
//! assess package                     one candidate's jobs; a course for a training system
//! faults rules instruments access    list what there is
//! matrix schema draw pack            write what other programs read
//! ```
//! Exit codes: 0 all well; 1 a check failed (a file is wrong, a row is missed, a record does not
//! verify); 2 wrong usage, unreadable or wrong input. Answers go to standard output, everything
//! else to standard error. A reader that closes the pipe early ends the program quietly.

mod access; // what is in the way of what
mod args; // the words of the command line
mod assess; // one candidate's jobs
mod check; // files checked whole
mod cohort; // what records say together
mod crowd; // simulated apprentices
mod draw; // pictures as files
mod expert; // what the expert makes of a job
mod failure; // why a command did not do its work
mod fair; // jobs judged for fairness
mod fault_page; // one fault in full
mod files; // foreign bytes in
pub mod hold; // a machine held in one state, with instruments on it
pub mod library; // machines and jobs by name or file
mod list; // faults, rules, instruments
mod matrix; // faults against readings
mod mode; // instruments by the names people type
mod pack; // a folder of jobs as one training set
mod package; // course packages for training systems
pub mod play; // a log played on a job
mod probe; // readings in a state
mod records; // records from files and folders
pub mod rows; // reference rows: the format, and each row's own reading
mod schema; // descriptions of the file formats
mod simulate; // a whole program run at once
mod statements; // records as statements
mod verify; // records checked
mod written; // records read as they were written

use std::ffi::OsString;
use std::io;
use std::io::Write;
use std::process::ExitCode;

use clap::Parser;
use clap::error::ErrorKind;

use crate::cli::args::Args;
use crate::cli::args::Command;
use crate::cli::failure::Failure;

/// How a command that did its work ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// All well.
    Passed,
    /// What was checked is not as it should be.
    Failed,
}

/// Runs the command that the process was started with.
pub fn run() -> ExitCode {
    run_with(std::env::args_os())
}

/// Runs a command; the first word is the program's name.
pub fn run_with(words: impl IntoIterator<Item = OsString>) -> ExitCode {
    let args = match Args::try_parse_from(words) {
        Ok(args) => args,
        Err(error) => return told_by_clap(&error),
    };
    let mut out = io::BufWriter::new(io::stdout().lock());
    let result = perform(&args.command, &mut out)
        .and_then(|verdict| out.flush().map(|()| verdict).map_err(Failure::from));
    match result {
        Ok(Verdict::Passed) | Err(Failure::ReaderGone) => ExitCode::SUCCESS,
        Ok(Verdict::Failed) => ExitCode::from(1),
        Err(failure) => {
            // What was written so far still belongs to the reader.
            let _ = out.flush();
            tell(&failure);
            ExitCode::from(2)
        }
    }
}

fn perform(command: &Command, out: &mut dyn Write) -> Result<Verdict, Failure> {
    match command {
        Command::Check(args) => check::run(args, out),
        Command::Probe(args) => probe::run(args, out),
        Command::Simulate(args) => simulate::run(args, out),
        Command::Play(args) => play::run(args, out),
        Command::Belief(args) => expert::belief(args, out),
        Command::Advise(args) => expert::advise(args, out),
        Command::Par(args) => expert::par(args, out),
        Command::Crowd(args) => crowd::run(args, out),
        Command::Pack(args) => pack::run(args, out),
        Command::Verify(args) if args.read => written::run(args, out),
        Command::Verify(args) => verify::run(args, out),
        Command::Cohort(args) => cohort::run(args, out),
        Command::Assess(args) => assess::run(args, out),
        Command::Statements(args) => statements::run(args, out),
        Command::Package(args) => package::run(args, out),
        Command::Faults(args) => list::faults(args, out),
        Command::Rules(args) => list::rules(args, out),
        Command::Instruments(args) => list::instruments(args, out),
        Command::Access(args) => access::run(args, out),
        Command::Matrix(args) => matrix::run(args, out),
        Command::Schema(args) => schema::run(args, out),
        Command::Draw(args) => draw::run(args, out),
    }
}

/// Says something on standard error; a closed one is nobody's loss.
fn tell(what: &dyn std::fmt::Display) {
    let _ = writeln!(io::stderr(), "{what}");
}

/// Help and version are answers; everything else is wrong usage.
fn told_by_clap(error: &clap::Error) -> ExitCode {
    let is_answer = matches!(
        error.kind(),
        ErrorKind::DisplayHelp | ErrorKind::DisplayVersion
    );
    // `print` chooses the stream itself; a reader that has gone is no failure.
    let _ = error.print();
    ExitCode::from(if is_answer { 0 } else { 2 })
}
