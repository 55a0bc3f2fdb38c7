//! An assessment as a file: which jobs by skill and level, how they vary from one candidate to the
//! next, what may be used, how long, and what passes.
//!
//! ```text
//! {"format": "tubwright-assessment-1", "id", "title", "time_limit_min", "aids": {…},
//!  "jobs": [{"level": 2, "skills": ["service test"], "n": 2}], "variants": {…}, "pass": {…}}
//! ```

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

use crate::assess::pause_code;
use crate::say;
use crate::scenario::FileError;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::job_file::JobFile;
use crate::scenario::problem::Problems;
use crate::scenario::problem::quoted;
use crate::scenario::read::read;
use crate::text;

/// The format this version reads and writes.
pub const ASSESSMENT_FORMAT: &str = "tubwright-assessment-1";
/// Faults in one set of equals differ by this much at most, logits. Published: common practice for
/// parallel forms is a fifth of a logit.
const EQUAL_LOGITS: f64 = 0.2;
/// Parts of the mark sheet.
const PARTS: [&str; 5] = [
    text!("safety"),
    text!("diagnosis"),
    text!("economy"),
    text!("procedure"),
    text!("evidence"),
];
/// Results are kept for so long at most, months. Design choice.
const MOST_MONTHS: u32 = 240;
/// Jobs in one assessment at most: a working week.
const MOST_JOBS: usize = 60;

/// An assessment.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct AssessmentFile {
    /// `tubwright-assessment-1`.
    pub format: String,
    /// Stable name, lower case with underscores.
    pub id: String,
    /// As candidates see it.
    pub title: String,
    /// Time for all jobs together, min of the candidate's clock.
    pub time_limit_min: f64,
    /// What may be used.
    pub aids: AidsFile,
    /// Which jobs.
    pub jobs: Vec<SlotFile>,
    /// How they vary.
    #[serde(default)]
    pub variants: VariantsFile,
    /// What passes.
    pub pass: PassFile,
    /// When it is due again.
    #[serde(default)]
    pub refresh: RefreshFile,
    /// Results are to be erased so many months after the day they began; left out: the assessment does
    /// not say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub erase_after_months: Option<u32>,
    /// What tells the codes that stop the clock of a whole room, made from the assessment’s key; left
    /// out: there are none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub room_pause: Option<String>,
}

impl AssessmentFile {
    /// Jobs a candidate is given.
    pub fn n_jobs(&self) -> usize {
        self.jobs.iter().map(|slot| slot.n).sum()
    }
}

/// What may be used. Hints and likely causes are never shown in an assessment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct AidsFile {
    /// The machine's data sheet.
    pub data_sheet: bool,
    /// The wiring diagram.
    pub wiring: bool,
    /// The handbook.
    pub handbook: bool,
    /// The clock may be stopped between jobs.
    pub pause: bool,
}

/// So many jobs of one kind.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SlotFile {
    /// Level, 1 to 5; left out: any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level: Option<u8>,
    /// Skills each of them practises; empty for any.
    #[serde(default)]
    pub skills: Vec<String>,
    /// Machines by short name; empty for any.
    #[serde(default)]
    pub machines: Vec<String>,
    /// Jobs by name to draw from; empty for the whole library.
    #[serde(default)]
    pub from: Vec<String>,
    /// How many.
    pub n: usize,
}

/// How jobs vary from one candidate to the next. What is left out does not vary.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct VariantsFile {
    /// Water pressure, lowest and highest, MPa.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub water_mpa: Option<[f64; 2]>,
    /// Room temperature, lowest and highest, °C.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub room_degc: Option<[f64; 2]>,
    /// Load, lowest and highest, as shares of the job's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub load_share: Option<[f64; 2]>,
    /// Severity of faults, lowest and highest, as shares of the job's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub severity_share: Option<[f64; 2]>,
    /// Who may have called instead.
    #[serde(default)]
    pub customers: Vec<CallerFile>,
    /// Sets of faults that stand for each other: same complaint, equal difficulty.
    #[serde(default)]
    pub equal_faults: Vec<Vec<EqualFaultFile>>,
}

/// Somebody who may have called.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct CallerFile {
    /// Name.
    pub name: String,
    /// Where they live, a few words.
    pub home: String,
}

/// A fault with its difficulty from simulated candidates.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct EqualFaultFile {
    /// Name in the catalogue.
    pub id: String,
    /// Difficulty, logits.
    pub difficulty: f64,
}

/// What passes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PassFile {
    /// The cut.
    pub cut: CutFile,
    /// Points around the cut in which more jobs decide, of 100.
    pub border: f64,
    /// A critical safety rule broken in any job fails the whole.
    pub no_critical: bool,
    /// Jobs that must be put right, as a share.
    pub fixed_share: f64,
    /// Lowest mean share of a part of the mark sheet, by its name.
    #[serde(default)]
    pub parts: BTreeMap<String, f64>,
}

/// Where the cut comes from.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum CutFile {
    /// Mean marks of 100.
    Fixed(f64),
    /// Judges: each one's mean marks of 100 that a just competent technician would get, job by job.
    Judges(Vec<Vec<f64>>),
}

/// When it is due again, the longest there may be between two times.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RefreshFile {
    /// For skills of safety, months.
    pub safety_months: f64,
    /// For all others, months.
    pub other_months: f64,
}

impl Default for RefreshFile {
    /// Half a year and a year. Design choice.
    fn default() -> Self {
        Self {
            safety_months: 6.0,
            other_months: 12.0,
        }
    }
}

/// Reads and checks an assessment; `file` is the name errors use.
///
/// # Errors
/// Everything that is wrong in it, each with its field and remedy.
pub fn read_assessment(
    file: &str,
    text: &str,
    library: &BTreeMap<String, JobFile>,
    catalogue: &CatalogueFile,
) -> Result<AssessmentFile, FileError> {
    let read: AssessmentFile = read(file, text)?;
    let mut problems = Problems::new(file);
    if read.format != ASSESSMENT_FORMAT {
        let remedy = say!(
            "this version reads {format}",
            format = quoted(ASSESSMENT_FORMAT)
        );
        problems.add("format", &read.format, remedy);
    }
    problems.not_blank("id", &read.id);
    problems.not_blank("title", &read.title);
    problems.in_range("time_limit_min", read.time_limit_min, 1.0, 10_000.0);
    problems.in_range(
        "refresh.safety_months",
        read.refresh.safety_months,
        0.5,
        120.0,
    );
    problems.in_range(
        "refresh.other_months",
        read.refresh.other_months,
        0.5,
        120.0,
    );
    if let Some(months) = read.erase_after_months {
        let most = f64::from(MOST_MONTHS);
        problems.in_range("erase_after_months", f64::from(months), 1.0, most);
    }
    if let Some(anchor) = read.room_pause.as_deref()
        && !pause_code::is_code(anchor)
    {
        let remedy = say!(
            "eight letters as the page makes them from the assessment’s key, such as \"K7QF-2M9D\"; leave it out where the room has no pauses"
        );
        problems.add("room_pause", anchor, remedy);
    }
    check_slots(&read, library, &mut problems);
    check_variants(&read.variants, catalogue, &mut problems);
    check_pass(&read, &mut problems);
    problems.into_result(read)
}

fn check_slots(
    read: &AssessmentFile,
    library: &BTreeMap<String, JobFile>,
    problems: &mut Problems<'_>,
) {
    let total = read.n_jobs();
    if total == 0 || total > MOST_JOBS {
        let remedy = say!("ask for 1 to {most} jobs in all", most = MOST_JOBS);
        problems.add("jobs", total, remedy);
    }
    for (index, slot) in read.jobs.iter().enumerate() {
        for (at, name) in slot.from.iter().enumerate() {
            if !library.contains_key(name) {
                let path = format!("jobs[{index}].from[{at}]");
                problems.add(&path, name, say!("name a job of the library"));
            }
        }
        let found = library
            .iter()
            .filter(|(id, job)| slot.takes(id, job))
            .count();
        if found < slot.n {
            let remedy = say!(
                "the library has {n} such jobs: ask for fewer or widen it",
                n = found
            );
            problems.add(&format!("jobs[{index}].n"), slot.n, remedy);
        }
    }
}

impl SlotFile {
    /// A job of the library is of this kind.
    pub fn takes(&self, id: &str, job: &JobFile) -> bool {
        let any_or = |list: &[String], one: &str| list.is_empty() || list.iter().any(|x| x == one);
        self.level.is_none_or(|level| level == job.level)
            && any_or(&self.machines, &job.machine)
            && any_or(&self.from, id)
            && self.skills.iter().all(|skill| job.skills.contains(skill))
    }
}

fn check_variants(variants: &VariantsFile, catalogue: &CatalogueFile, problems: &mut Problems<'_>) {
    let ranges = [
        ("water_mpa", variants.water_mpa, 0.01, 1.0),
        ("room_degc", variants.room_degc, 0.0, 45.0),
        ("load_share", variants.load_share, 0.0, 2.0),
        ("severity_share", variants.severity_share, 0.0, 1.0),
    ];
    for (name, range, lowest, highest) in ranges {
        let Some([low, high]) = range else { continue };
        let path = format!("variants.{name}");
        problems.in_range(&format!("{path}[0]"), low, lowest, highest);
        problems.in_range(&format!("{path}[1]"), high, low, highest);
    }
    for (index, set) in variants.equal_faults.iter().enumerate() {
        for (at, fault) in set.iter().enumerate() {
            let path = format!("variants.equal_faults[{index}][{at}]");
            if !catalogue.faults.iter().any(|known| known.id == fault.id) {
                problems.add(
                    &format!("{path}.id"),
                    &fault.id,
                    say!("name a fault of the catalogue"),
                );
            }
            let first = set[0].difficulty;
            let away = (fault.difficulty - first).abs();
            if away.is_nan() || away > EQUAL_LOGITS {
                let remedy = say!(
                    "equal faults lie within {most} logits of the first, at {first}",
                    most = EQUAL_LOGITS,
                    first
                );
                problems.add(&format!("{path}.difficulty"), fault.difficulty, remedy);
            }
        }
    }
}

fn check_pass(read: &AssessmentFile, problems: &mut Problems<'_>) {
    problems.in_range("pass.border", read.pass.border, 0.0, 50.0);
    problems.in_range("pass.fixed_share", read.pass.fixed_share, 0.0, 1.0);
    for (part, share) in &read.pass.parts {
        let path = format!("pass.parts.{part}");
        problems.in_range(&path, *share, 0.0, 1.0);
        if !PARTS.contains(&part.as_str()) {
            let remedy = say!("name one of {parts}", parts = PARTS.join(", "));
            problems.add(&path, part, remedy);
        }
    }
    let n_jobs = read.n_jobs();
    match &read.pass.cut {
        CutFile::Fixed(marks) => problems.in_range("pass.cut.fixed", *marks, 0.0, 100.0),
        CutFile::Judges(judges) => {
            if judges.is_empty() {
                problems.add("pass.cut.judges", 0, say!("ask five judges or more"));
            }
            for (judge, marks) in judges.iter().enumerate() {
                let path = format!("pass.cut.judges[{judge}]");
                if marks.len() != n_jobs {
                    let remedy = say!("one number for each of the {n} jobs", n = n_jobs);
                    problems.add(&path, marks.len(), remedy);
                }
                for (job, marks) in marks.iter().enumerate() {
                    problems.in_range(&format!("{path}[{job}]"), *marks, 0.0, 100.0);
                }
            }
        }
    }
}
