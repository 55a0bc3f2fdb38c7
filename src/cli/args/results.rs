//! The words of the commands about records and assessments.

use clap::Args as ClapArgs;
use clap::ValueEnum;

pub(super) const VERIFY_HELP: &str = "\
A FILE is a record, several of them one a line, or a folder of such files ending in .json or
.jsonl. Each log is run again and compared
with what the record shows; the first difference is named. A candidate's records of one assessment
must be one unbroken row. Records of an assessment need its file
and its key to be accepted. A key is 64 hexadecimal digits in a file, kept by the instructor.
A record of another engine cannot be run again by this one; --read tells it as it was written.

Exit codes: 0 every record is accepted, or could be read; 1 one is not, or could not; 2 wrong usage or input.";

pub(super) const COHORT_HELP: &str = "\
A FILE is a record, several of them one a line, or a folder of such files. Links and seals are checked, logs are
not run again: do that with `verify`. The first attempt at each job counts.

Exit codes: 0 all well; 1 a record was left out; 2 wrong usage or input.";

/// Records to verify.
#[derive(Debug, ClapArgs)]
pub struct VerifyArgs {
    /// Records, or folders of them.
    #[arg(required = true, value_name = "FILE")]
    pub files: Vec<String>,
    /// The assessment's key.
    #[arg(long, value_name = "FILE")]
    pub key: Option<String>,
    /// A job file that does not ship; its name without its ending is the job's.
    #[arg(long, value_name = "FILE")]
    pub job: Vec<String>,
    /// The assessment's file: its candidates' jobs are drawn again and compared.
    #[arg(long, value_name = "FILE")]
    pub assessment: Option<String>,
    /// Accept records of an assessment without looking at their seals.
    #[arg(long, conflicts_with = "key")]
    pub without_key: bool,
    /// Tell each record as it was written, of any engine: who, when, each act with what was shown, the
    /// result. Nothing is checked or worked out again.
    #[arg(long, conflicts_with_all = ["key", "assessment", "without_key"])]
    pub read: bool,
    /// Answer as JSON.
    #[arg(long)]
    pub json: bool,
}

/// Records of a cohort.
#[derive(Debug, ClapArgs)]
pub struct CohortArgs {
    /// Records, or folders of them.
    #[arg(required = true, value_name = "FILE")]
    pub files: Vec<String>,
    /// The assessment's key.
    #[arg(long, value_name = "FILE")]
    pub key: Option<String>,
    /// Which table is written.
    #[arg(long, value_enum, default_value_t = CohortTable::People)]
    pub table: CohortTable,
    /// Answer as CSV.
    #[arg(long, conflicts_with = "json")]
    pub csv: bool,
    /// Answer as JSON, all tables.
    #[arg(long)]
    pub json: bool,
}

/// Which table of a cohort.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum CohortTable {
    /// One person a line.
    People,
    /// One job a line.
    Jobs,
    /// Safety rules broken, by kind.
    Safety,
    /// Faults taken for others.
    Confused,
}

/// One candidate of an assessment.
#[derive(Debug, ClapArgs)]
pub struct AssessArgs {
    /// The assessment's file.
    #[arg(value_name = "ASSESSMENT")]
    pub assessment: String,
    /// Number or pseudonym.
    #[arg(long, value_name = "NUMBER")]
    pub candidate: String,
    /// The code released at the start.
    #[arg(long, value_name = "CODE")]
    pub release: String,
    /// The assessment's key: the start code is told with it.
    #[arg(long, value_name = "FILE")]
    pub key: Option<String>,
    /// A job file that does not ship; its name without its ending is the job's.
    #[arg(long, value_name = "FILE")]
    pub job: Vec<String>,
    /// Answer as JSON, with the jobs' files.
    #[arg(long)]
    pub json: bool,
}

/// Records to write as statements.
#[derive(Debug, ClapArgs)]
pub struct StatementsArgs {
    /// A record, or several of them one a line.
    #[arg(value_name = "RECORD")]
    pub record: String,
    /// Address that the names of jobs and assessments begin with.
    #[arg(long, value_name = "IRI")]
    pub base: String,
    /// Home page of the accounts that the candidates' numbers belong to.
    #[arg(long, value_name = "IRI")]
    pub home_page: String,
    /// Language of names.
    #[arg(long, default_value = "en", value_name = "TAG")]
    pub language: String,
    /// The assessment's file: what the sitting came to is told too. The records are of one sitting.
    #[arg(long, value_name = "FILE")]
    pub assessment: Option<String>,
    /// A job file that does not ship; its name without its ending is the job's.
    #[arg(long, value_name = "FILE")]
    pub job: Vec<String>,
    /// Answer as JSON, a list to send.
    #[arg(long)]
    pub json: bool,
}

/// A course package.
#[derive(Debug, ClapArgs)]
#[group(id = "kind", required = true, args = ["scorm12", "scorm2004", "cmi5"])]
pub struct PackageArgs {
    /// SCORM 1.2.
    #[arg(long)]
    pub scorm12: bool,
    /// SCORM 2004, 4th edition.
    #[arg(long)]
    pub scorm2004: bool,
    /// cmi5.
    #[arg(long)]
    pub cmi5: bool,
    /// The assessment's file.
    #[arg(long, value_name = "FILE")]
    pub assessment: String,
    /// Folder with a build of the page.
    #[arg(long, default_value = "dist", value_name = "FOLDER")]
    pub dist: String,
    /// Where the package is written.
    #[arg(long, value_name = "FILE.zip")]
    pub out: String,
    /// Address that the course's own names begin with; it need not answer.
    #[arg(long, default_value = "https://tubwright.example/", value_name = "IRI")]
    pub base: String,
    /// Language of titles.
    #[arg(long, default_value = "en", value_name = "TAG")]
    pub language: String,
    /// A job file that does not ship; its name without its ending is the job's.
    #[arg(long, value_name = "FILE")]
    pub job: Vec<String>,
}
