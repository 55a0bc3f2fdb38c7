//! The words of the commands about jobs that are worked: by a log, by the expert, by a crowd.

use clap::Args as ClapArgs;
use clap::ValueEnum;

use crate::expert::crowd::Kind;

/// A log on a job.
#[derive(Debug, ClapArgs)]
pub struct PlayArgs {
    /// Name of a job that ships, or a job file.
    #[arg(value_name = "JOB")]
    pub job: String,
    /// The log, a JSON file.
    #[arg(value_name = "LOG")]
    pub log: String,
    /// Machine file a job file is on, where its machine does not ship.
    #[arg(long, value_name = "FILE")]
    pub machine: Option<String>,
    /// Seed that makes the job its own: draws of intermittent faults and unchecked refits.
    #[arg(long, default_value_t = 1)]
    pub seed: u64,
    /// Leave out what each decision was worth: a tenth of a second instead of some; economy and
    /// evidence then go by the bill and the notebook.
    #[arg(long)]
    pub quick: bool,
    /// Write the result as a record, too. Without --quick it keeps the decisions, and takes as long to
    /// verify.
    #[arg(long, value_name = "FILE", requires = "candidate")]
    pub record: Option<String>,
    /// Number or pseudonym of whoever did it, for the record.
    #[arg(long, value_name = "NUMBER")]
    pub candidate: Option<String>,
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// A job for the expert.
#[derive(Debug, ClapArgs)]
pub struct ParArgs {
    /// Name of a job that ships, or a job file.
    #[arg(value_name = "JOB")]
    pub job: String,
    /// Machine file a job file is on, where its machine does not ship.
    #[arg(long, value_name = "FILE")]
    pub machine: Option<String>,
    /// Seed that makes the job its own.
    #[arg(long, default_value_t = 1)]
    pub seed: u64,
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// A job for a crowd.
#[derive(Debug, ClapArgs)]
pub struct CrowdArgs {
    /// Name of a job that ships, or a job file.
    #[arg(value_name = "JOB")]
    pub job: String,
    /// Machine file a job file is on, where its machine does not ship.
    #[arg(long, value_name = "FILE")]
    pub machine: Option<String>,
    /// Kind of apprentice; all of them if none is named.
    #[arg(long)]
    pub kind: Vec<ApprenticeKind>,
    /// How many of each kind.
    #[arg(long, default_value_t = 200, value_parser = clap::value_parser!(u32).range(1..=1_000_000))]
    pub runs: u32,
    /// Seed of the first; each has the next one.
    #[arg(long, default_value_t = 1)]
    pub seed: u64,
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// Kinds of simulated apprentices.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum ApprenticeKind {
    /// Willing and unsure.
    Novice,
    /// In a hurry.
    Careless,
    /// Fits new parts on the first suspicion.
    PartSwapper,
    /// Hardly measures.
    MeterShy,
    /// Step by step.
    Methodical,
}

impl From<ApprenticeKind> for Kind {
    fn from(kind: ApprenticeKind) -> Self {
        match kind {
            ApprenticeKind::Novice => Kind::Novice,
            ApprenticeKind::Careless => Kind::Careless,
            ApprenticeKind::PartSwapper => Kind::PartSwapper,
            ApprenticeKind::MeterShy => Kind::MeterShy,
            ApprenticeKind::Methodical => Kind::Methodical,
        }
    }
}
