//! Passed, not passed, or on the border, where more jobs decide.
//!
//! Minima stand beside the cut: good marks never buy off a broken safety rule.

use std::collections::BTreeMap;
use std::fmt;

use serde::Serialize;
use serde::Serializer;

use crate::assess::assessment_file::CutFile;
use crate::assess::assessment_file::PassFile;
use crate::language::decimals;
use crate::language::in_english;
use crate::language::worded;
use crate::say;

/// What is decided.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Decision {
    /// All that is asked was shown.
    Passed,
    /// Too near the cut to tell: more jobs, not a fail.
    Border,
    /// Not yet.
    NotYet,
}

/// One job as it counts.
#[derive(Clone, Debug, PartialEq)]
pub struct Taken {
    /// Marks of 100.
    pub marks: f64,
    /// No critical safety rule was broken.
    pub safe: bool,
    /// The machine was put right, or rightly left.
    pub fixed: bool,
    /// Share of each part of the mark sheet, by its name.
    pub parts: BTreeMap<String, f64>,
}

/// A decision with its reasons.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Decided {
    /// What is decided.
    pub decision: Decision,
    /// Mean marks of 100.
    pub marks: f64,
    /// The cut, marks of 100.
    pub cut: f64,
    /// Standard error of the cut among the judges; 0 for a fixed one.
    pub cut_se: f64,
    /// Each in a sentence.
    pub reasons: Vec<Reason>,
}

/// Why it is decided so: shown in the reader's language, sent in English.
#[derive(Clone, Debug, PartialEq)]
pub enum Reason {
    /// Critical safety rules were broken.
    Critical {
        /// In so many jobs.
        n: usize,
    },
    /// Too few jobs were put right.
    Fixed {
        /// Share of the jobs.
        share: f64,
        /// Share that is asked.
        least: f64,
    },
    /// A part of the mark sheet is below its minimum.
    Part {
        /// Its name.
        part: String,
        /// Mean share of its points.
        share: f64,
        /// Share that is asked.
        least: f64,
    },
    /// The marks are too near the cut to tell.
    Near {
        /// Mean marks of 100.
        marks: f64,
        /// To either side of the cut.
        border: f64,
        /// The cut.
        cut: f64,
    },
    /// The marks are below the cut.
    Below {
        /// Mean marks of 100.
        marks: f64,
        /// The cut.
        cut: f64,
    },
}

impl fmt::Display for Reason {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let percent = |share: &f64| format!("{:.0}", 100.0 * share);
        let tenths = |marks: &f64| decimals(format!("{marks:.1}"));
        f.write_str(&match self {
            Self::Critical { n } => {
                say!("a critical safety rule was broken in {n} of the jobs", n)
            }
            Self::Fixed { share, least } => say!(
                "{share} % of the jobs were put right, {least} % are asked",
                share = percent(share),
                least = percent(least)
            ),
            Self::Part { part, share, least } => say!(
                "{part}: {share} % of its points, {least} % are asked",
                part = worded(part),
                share = percent(share),
                least = percent(least)
            ),
            Self::Near { marks, border, cut } => say!(
                "{marks} marks are within {border} of {cut}: more jobs decide",
                marks = tenths(marks),
                border = tenths(border),
                cut = tenths(cut)
            ),
            Self::Below { marks, cut } => say!(
                "{marks} marks, {cut} are asked",
                marks = tenths(marks),
                cut = tenths(cut)
            ),
        })
    }
}

impl Serialize for Reason {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(&in_english(|| self.to_string()))
    }
}

/// Marks of 100 that pass, and how far judges were apart.
pub fn cut(rule: &CutFile) -> (f64, f64) {
    let judges = match rule {
        CutFile::Fixed(marks) => return (*marks, 0.0),
        CutFile::Judges(judges) => judges,
    };
    let means: Vec<f64> = judges.iter().map(|judge| mean(judge)).collect();
    let middle = mean(&means);
    let squares: f64 = means.iter().map(|m| (m - middle) * (m - middle)).sum();
    let n = means.len() as f64;
    let se = if means.len() > 1 {
        (squares / (n - 1.0) / n).sqrt()
    } else {
        0.0
    };
    (middle, se)
}

/// Reliability of one job marked right or wrong. Computed: a Rasch model, difficulties over ±1.5 and
/// abilities of standard deviation 1; four such jobs reach 0.41, twelve 0.68, thirty 0.84.
const OF_ONE_JOB: f64 = 0.148;

/// How reliable so many jobs can be at least, 0 to 1, before anybody has taken them: as if each were
/// right or wrong only, lengthened by Spearman and Brown. Graded marks tell more.
pub fn least_reliability(n_jobs: usize) -> f64 {
    let n = n_jobs as f64;
    n * OF_ONE_JOB / (1.0 + (n - 1.0).max(0.0) * OF_ONE_JOB)
}

/// Standard error of a mean of marks, from how far the jobs of one person lie apart; `None` for one.
pub fn marks_se(marks: &[f64]) -> Option<f64> {
    let n = marks.len() as f64;
    let middle = mean(marks);
    let squares: f64 = marks.iter().map(|m| (m - middle) * (m - middle)).sum();
    (marks.len() > 1).then(|| (squares / (n - 1.0) / n).sqrt())
}

/// Decides; jobs that were not taken count as 0. `n_jobs` is how many there were to take.
pub fn decide(rules: &PassFile, taken: &[Taken], n_jobs: usize) -> Decided {
    let n = n_jobs.max(taken.len()).max(1) as f64;
    let marks = taken.iter().map(|job| job.marks).sum::<f64>() / n;
    let (cut, cut_se) = cut(&rules.cut);
    let mut reasons = Vec::new();
    let critical = taken.iter().filter(|job| !job.safe).count();
    if rules.no_critical && critical > 0 {
        reasons.push(Reason::Critical { n: critical });
    }
    let fixed = taken.iter().filter(|job| job.fixed).count() as f64 / n;
    if fixed < rules.fixed_share {
        reasons.push(Reason::Fixed {
            share: fixed,
            least: rules.fixed_share,
        });
    }
    for (part, least) in &rules.parts {
        let own = taken
            .iter()
            .filter_map(|job| job.parts.get(part))
            .sum::<f64>()
            / n;
        if own < *least {
            reasons.push(Reason::Part {
                part: part.clone(),
                share: own,
                least: *least,
            });
        }
    }
    let is_near = (marks - cut).abs() < rules.border;
    let decision = if !reasons.is_empty() {
        Decision::NotYet
    } else if is_near {
        let border = rules.border;
        reasons.push(Reason::Near { marks, border, cut });
        Decision::Border
    } else if marks >= cut {
        Decision::Passed
    } else {
        reasons.push(Reason::Below { marks, cut });
        Decision::NotYet
    };
    Decided {
        decision,
        marks,
        cut,
        cut_se,
        reasons,
    }
}

fn mean(list: &[f64]) -> f64 {
    list.iter().sum::<f64>() / list.len().max(1) as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rules() -> PassFile {
        PassFile {
            cut: CutFile::Judges(vec![vec![60.0, 70.0], vec![64.0, 74.0], vec![62.0, 66.0]]),
            border: 4.0,
            no_critical: true,
            fixed_share: 0.5,
            parts: BTreeMap::from([("safety".to_owned(), 0.7)]),
        }
    }

    fn job(marks: f64, safe: bool) -> Taken {
        Taken {
            marks,
            safe,
            fixed: true,
            parts: BTreeMap::from([("safety".to_owned(), if safe { 1.0 } else { 0.0 })]),
        }
    }

    #[test]
    fn near_the_cut_more_jobs_decide() {
        let decision = |marks| decide(&rules(), &[job(marks, true), job(marks, true)], 2).decision;
        // Judges' means are 65, 69 and 64: the cut is 66.
        assert!((cut(&rules().cut).0 - 66.0).abs() < 1e-12);
        assert_eq!(decision(80.0), Decision::Passed);
        assert_eq!(decision(64.0), Decision::Border);
        assert_eq!(decision(40.0), Decision::NotYet);
    }

    #[test]
    fn a_length_is_as_reliable_as_the_computed_table_says() {
        // Computed: marginal reliabilities of Rasch forms, difficulties over ±1.5.
        for (n, reliability) in [
            (4, 0.41),
            (6, 0.52),
            (8, 0.59),
            (12, 0.68),
            (20, 0.78),
            (30, 0.84),
        ] {
            assert!((least_reliability(n) - reliability).abs() < 0.011, "{n}");
        }
        assert_eq!(marks_se(&[60.0]), None);
        let se = marks_se(&[60.0, 70.0, 80.0]).expect("three");
        assert!((se - 10.0 / 3.0_f64.sqrt()).abs() < 1e-12, "{se}");
    }

    #[test]
    fn marks_do_not_buy_off_safety_and_missing_jobs_count() {
        let decided = decide(&rules(), &[job(100.0, true), job(100.0, false)], 2);
        assert_eq!(decided.decision, Decision::NotYet);
        assert_eq!(decided.reasons.len(), 2, "{:?}", decided.reasons);
        let told: Vec<String> = decided.reasons.iter().map(Reason::to_string).collect();
        let lines = [
            "a critical safety rule was broken in 1 of the jobs",
            "safety: 50 % of its points, 70 % are asked",
        ];
        assert_eq!(told, lines);
        let decided = decide(&rules(), &[job(100.0, true)], 4);
        assert!((decided.marks - 25.0).abs() < 1e-12 && decided.decision == Decision::NotYet);
    }
}
