//! The words of the command line, read by clap. What a word means is said here once and shown by
//! `--help`; what is done with it stands in the file of each command.

pub mod jobs; // words of the commands about jobs that are worked
pub mod results; // words of the commands about records and assessments

use clap::Args as ClapArgs;
use clap::Parser;
use clap::Subcommand;
use clap::ValueEnum;

use crate::cli::args::jobs::CrowdArgs;
use crate::cli::args::jobs::ParArgs;
use crate::cli::args::jobs::PlayArgs;
use crate::cli::args::results::AssessArgs;
use crate::cli::args::results::CohortArgs;
use crate::cli::args::results::PackageArgs;
use crate::cli::args::results::StatementsArgs;
use crate::cli::args::results::VerifyArgs;
use crate::drawing::View;

/// Shown under every help.
const EXIT_CODES: &str = "\
Exit codes:
  0  all well
  1  a check failed: a file is wrong, a row is missed
  2  wrong usage, or input that cannot be read or is wrong

Machines are named by their short name (P, T, N) or by a machine file, whose faults stand in
x.faults.json beside x.json; faults by name or by reference number (capacitor_low or E51), with =SEVERITY from 0 to 1 behind it. FILE may be -
for standard input.";

/// Work on simulated top-loading washing machines.
#[derive(Debug, Parser)]
#[command(name = "tubwright", version, after_help = EXIT_CODES, subcommand_required = true)]
pub struct Args {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
}

/// What to do.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Check machine, fault, job or training set files whole: every problem of every file is told.
    #[command(after_help = EXIT_CODES)]
    Check(CheckArgs),
    /// Put instruments to a machine held in one state, or to every row of a reference file.
    #[command(after_help = PROBE_HELP)]
    Probe(ProbeArgs),
    /// Run a whole program and tell how it went, or write its trace, one line a second.
    #[command(after_help = EXIT_CODES)]
    Simulate(SimulateArgs),
    /// Play a log on a job: readings, observations, refusals, safety findings, cost, marks.
    #[command(after_help = PLAY_HELP)]
    Play(PlayArgs),
    /// Verify records: links, seals, and every log run again, on all cores.
    #[command(after_help = results::VERIFY_HELP)]
    Verify(VerifyArgs),
    /// Work out a cohort from its records: abilities, jobs, reliability, safety, faults confused.
    #[command(after_help = results::COHORT_HELP)]
    Cohort(CohortArgs),
    /// Draw one candidate's jobs in an assessment, with their start code.
    #[command(after_help = EXIT_CODES)]
    Assess(AssessArgs),
    /// Write a record as statements for a store of learning records (xAPI).
    #[command(after_help = EXIT_CODES)]
    Statements(StatementsArgs),
    /// Pack a build of the page as a course for a training system.
    #[command(after_help = EXIT_CODES)]
    Package(PackageArgs),
    /// Tell which causes are likely after each step of a log, and what each step told.
    #[command(after_help = PLAY_HELP)]
    Belief(PlayArgs),
    /// Tell the best next step after a log, and what each candidate would cost.
    #[command(after_help = PLAY_HELP)]
    Advise(PlayArgs),
    /// Tell what a skilled technician needs for a job: cost, minutes, acts.
    #[command(after_help = EXIT_CODES)]
    Par(ParArgs),
    /// Let simulated apprentices work a job: how many put it right, cost, minutes, safety.
    #[command(after_help = EXIT_CODES)]
    Crowd(CrowdArgs),
    /// List the faults a machine can have, or tell what one of them makes different.
    #[command(after_help = EXIT_CODES)]
    Faults(FaultsArgs),
    /// List the safety rules.
    #[command(after_help = EXIT_CODES)]
    Rules(ListArgs),
    /// List the instruments.
    #[command(after_help = EXIT_CODES)]
    Instruments(ListArgs),
    /// List what is in the way of what: steps, tools, minutes, refit checks.
    #[command(after_help = EXIT_CODES)]
    Access(MachineArgs),
    /// Faults of a machine against readings: what tells what apart, all computed.
    #[command(after_help = EXIT_CODES)]
    Matrix(MatrixArgs),
    /// Write the JSON Schema of the file formats.
    #[command(after_help = EXIT_CODES)]
    Schema(SchemaArgs),
    /// Draw a machine as an SVG file that needs nothing else.
    #[command(after_help = EXIT_CODES)]
    Draw(DrawArgs),
    /// Make one training set of a folder of job files, to hand to a class.
    #[command(after_help = EXIT_CODES)]
    Pack(PackArgs),
}

/// A folder of jobs.
#[derive(Debug, ClapArgs)]
pub struct PackArgs {
    /// Folder of job files; jobs stand in order of level, then of file name.
    #[arg(value_name = "DIR")]
    pub dir: String,
    /// Title of the set; the folder's name if none is given.
    #[arg(long)]
    pub title: Option<String>,
    /// What the set is for.
    #[arg(long, default_value = "")]
    pub about: String,
    /// Marks of 100 from which a job counts as mastered and the next one opens.
    #[arg(long, value_name = "MARKS", default_value_t = 80.0)]
    pub mastered_at: f64,
    /// Cover the jobs, so that nobody reads what is wrong in passing: the class's copy.
    #[arg(long)]
    pub sealed: bool,
    /// File to write; standard output if none is given.
    #[arg(long, value_name = "FILE")]
    pub out: Option<String>,
}

const PROBE_HELP: &str = "\
A reading is MODE RED BLACK with names of nodes as in the machine's file; several may follow
each other. Modes: ac_volts, low_ac_volts, dc_volts, ohms, continuity, capacitance, insulation,
earth_bond; `clamp ELEMENT` takes the conductor in its jaws, `leakage` takes nothing (line and
neutral of the cord together).

  tubwright probe --machine P --state filling --fault E51 ac_volts TBL TBN clamp RCL
  tubwright probe --rows tests/fixtures/rows/refs_network.csv

Rows: variant,state,fault,quantity,value,unit,lid,setup,signed_slip,display. A row is met within
0.1 %, or 2 uV, 2 uA, 1e-6 N m, 1 pF where it only says \"nothing\"; 2 nV for a decayed charge.

Answers are SI; `display` is what a hand meter shows. --json gives mode, points, value, unit,
over_range, display and live of each reading, or every row with its difference.

Exit codes: 0 all well; 1 a row is missed; 2 wrong usage or input.";

const PLAY_HELP: &str = "\
JOB is the name of a job that ships or a job file. LOG is a JSON list of acts, each with its
tick (0.1 s since the bell) and what is done; time passes until the tick before the act:

  [{\"tick\": 0, \"do\": \"ask\", \"question\": \"when\"},
   {\"tick\": 600, \"do\": \"plug\", \"inserted\": false}]

An act that hands cannot do is refused with its reason; it takes no time and is no error.

Exit codes: 0 the log was played; 2 wrong usage or input.";

/// A machine.
#[derive(Debug, ClapArgs)]
pub struct MachineArgs {
    /// Short name of a machine that ships, or a machine file.
    #[arg(long, value_name = "P")]
    pub machine: String,
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// A table of discrimination.
#[derive(Debug, ClapArgs)]
pub struct MatrixArgs {
    /// Short name of a machine that ships, or a machine file.
    #[arg(long, value_name = "P")]
    pub machine: String,
    /// The whole table as comma-separated values; `*` behind what differs from a sound machine.
    #[arg(long, conflicts_with = "json")]
    pub csv: bool,
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// Faults of a machine.
#[derive(Debug, ClapArgs)]
pub struct FaultsArgs {
    /// Short name of a machine that ships, or a machine file.
    #[arg(long, value_name = "P")]
    pub machine: String,
    /// One fault: what it changes, what a customer says, and what reads differently, computed.
    #[arg(long, value_name = "FAULT")]
    pub id: Option<String>,
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// A list.
#[derive(Debug, ClapArgs)]
pub struct ListArgs {
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// Files to check.
#[derive(Debug, ClapArgs)]
pub struct CheckArgs {
    /// Machine, fault, job or training set files; their `format` field says which they are.
    #[arg(required = true, value_name = "FILE")]
    pub files: Vec<String>,
    /// Judge jobs as well: what shows their faults, what looks like them, what would be noticed.
    #[arg(long)]
    pub fair: bool,
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// Readings in a state.
#[derive(Debug, ClapArgs)]
pub struct ProbeArgs {
    /// Short name of a machine that ships, or a machine file.
    #[arg(long, value_name = "P", required_unless_present = "rows")]
    pub machine: Option<String>,
    /// State of the machine's file, such as spinning.
    #[arg(long, value_name = "STATE", required_unless_present = "rows")]
    pub state: Option<String>,
    /// A fault, at full severity or at the one given.
    #[arg(long, value_name = "ID[=SEVERITY]")]
    pub fault: Vec<String>,
    /// The lid.
    #[arg(long, value_enum, default_value = "closed")]
    pub lid: Lid,
    /// An element that is open: a pulled pin, a loosened wire.
    #[arg(long, value_name = "ELEMENT")]
    pub open: Vec<String>,
    /// A resistance put between two nodes: a body, a bridge.
    #[arg(long, value_name = "OHM:A-B")]
    pub link: Vec<String>,
    /// Evaluate every row of a reference file instead.
    #[arg(long, value_name = "FILE.csv", conflicts_with_all = ["machine", "state", "fault", "lid", "open", "link", "readings"])]
    pub rows: Option<String>,
    /// MODE RED BLACK, as often as wanted.
    #[arg(value_name = "READING", required_unless_present = "rows")]
    pub readings: Vec<String>,
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// The lid.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Lid {
    /// Shut.
    Closed,
    /// Open.
    Open,
}

/// A whole program.
#[derive(Debug, ClapArgs)]
pub struct SimulateArgs {
    /// Short name of a machine that ships, or a machine file.
    #[arg(long, value_name = "P")]
    pub machine: String,
    /// A fault, at full severity or at the one given.
    #[arg(long, value_name = "ID[=SEVERITY]")]
    pub fault: Vec<String>,
    /// Program of the panel; the first if none is named.
    #[arg(long, value_name = "NAME")]
    pub program: Option<String>,
    /// Dry load in the basket, kg; what the machine's file says if none is given.
    #[arg(long, value_name = "KG", allow_negative_numbers = true)]
    pub load: Option<f64>,
    /// A plant parameter that differs, such as inlet.supply_pa=20000.
    #[arg(long, value_name = "NAME=VALUE")]
    pub set: Vec<String>,
    /// Let faults come and go as the catalogue says; else they are there all the time.
    #[arg(long)]
    pub as_listed: bool,
    /// Seed of faults that come and go by chance.
    #[arg(long, default_value_t = 1)]
    pub seed: u64,
    /// Write the trace, one line a second; the figures go to standard error.
    #[arg(long)]
    pub csv: bool,
    /// Figures as JSON.
    #[arg(long)]
    pub json: bool,
}

/// Schemas.
#[derive(Debug, ClapArgs)]
pub struct SchemaArgs {
    /// One format only: machine, faults, job, record, erased.
    #[arg(value_name = "FORMAT")]
    pub format: Option<String>,
}

/// A picture.
#[derive(Debug, ClapArgs)]
pub struct DrawArgs {
    /// Short name of a machine that ships, or a machine file.
    #[arg(long, value_name = "P")]
    pub machine: String,
    /// Which picture.
    #[arg(long, value_enum)]
    pub view: Picture,
    /// A step that is done: a cover off, the machine laid down.
    #[arg(long, value_name = "STEP")]
    pub off: Vec<String>,
    /// So many seconds into the first program; at rest if not given.
    #[arg(long, value_name = "SECONDS")]
    pub at: Option<u32>,
    /// Write here instead of standard output.
    #[arg(long, value_name = "FILE.svg")]
    pub out: Option<String>,
}

/// Which picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Picture {
    /// As the customer sees it.
    Outside,
    /// Turned round, with what was taken off.
    Opened,
    /// Cut through the middle.
    Section,
    /// The way of the water.
    Water,
    /// The wiring diagram.
    Wiring,
}

impl Picture {
    /// The view of the machine; none for the diagram.
    pub fn view(self) -> Option<View> {
        match self {
            Picture::Outside => Some(View::Outside),
            Picture::Opened => Some(View::Opened),
            Picture::Section => Some(View::Section),
            Picture::Water => Some(View::Water),
            Picture::Wiring => None,
        }
    }
}
