//! Practice: a finished job as a person keeps it, and what all of them say of each skill.
//!
//! A job shows each of its skills once, and working safely besides where anything was at risk. Right is what was put right, safely,
//! with evidence. How well a skill is known follows by knowledge tracing, falling back over pauses by
//! the memory model; the bounds say how far that hangs on the model's four numbers.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

use crate::assess::assessment_file::RefreshFile;
use crate::assess::memory::Grade;
use crate::assess::refresher;
use crate::assess::refresher::Due;
use crate::assess::refresher::Shown;
use crate::bench::job::Entry;
use crate::records::measurement::tracing::MASTERED;
use crate::records::measurement::tracing::Tracing;
use crate::records::result::JobResult;
use crate::scenario::read::read_back;
use crate::text;

/// The format this version keeps and reads.
pub const PRACTICE_FORMAT: &str = "tubwright-practice-1";
/// The skill that every job shows.
pub const SAFELY: &str = text!("work safely");
/// A job shows its skills from this graded score on: put right, safely, with evidence.
const RIGHT_FROM: u8 = 2;
const MS_PER_DAY: f64 = 86_400_000.0;

/// A finished job of practice.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Practice {
    /// `tubwright-practice-1`.
    pub format: String,
    /// Version of the engine that can replay it to the bit.
    pub engine: String,
    /// Name of the job.
    pub job: String,
    /// Its title, readable without the job.
    pub title: String,
    /// Skills it practises.
    pub skills: Vec<String>,
    /// Seed.
    pub seed: u64,
    /// When it was finished, ms since 1970 by the browser's clock.
    pub ended_ms: f64,
    /// Everything that was done.
    pub log: Vec<Entry>,
    /// What it came to.
    pub result: JobResult,
}

impl Practice {
    /// Reads what was kept; `None` for anything else.
    pub fn read(text: &str) -> Option<Self> {
        let read: Self = read_back(text)?;
        (read.format == PRACTICE_FORMAT && read.ended_ms.is_finite()).then_some(read)
    }

    /// When it was finished, days since 1970.
    pub fn day(&self) -> f64 {
        self.ended_ms / MS_PER_DAY
    }

    /// Whether it was; none where nothing was tested or repaired, so that nothing was at risk.
    fn worked_safely(&self) -> Option<bool> {
        let broken = &self.result.safety;
        let marked = self.result.parts.iter().find(|part| part.name == "safety");
        let nothing_risked = broken.is_empty() && marked.is_some_and(|part| part.points <= 0.0);
        (!nothing_risked).then(|| broken.iter().all(|one| one.severity == "minor"))
    }

    /// Each skill it shows, whether it is one of safety, whether it went right, and how well.
    fn shows(&self) -> Vec<(&str, bool, bool, Grade)> {
        let graded = self.result.graded();
        let grade = match graded {
            0 => Grade::Again,
            1 => Grade::Hard,
            2 => Grade::Good,
            _ => Grade::Easy,
        };
        let safely = self.worked_safely().map(|safely| {
            let grade = if safely { Grade::Good } else { Grade::Again };
            (SAFELY, true, safely, grade)
        });
        let own = self.skills.iter().filter(|skill| *skill != SAFELY);
        own.map(|skill| (skill.as_str(), false, graded >= RIGHT_FROM, grade))
            .chain(safely)
            .collect()
    }
}

/// How well a skill is known.
#[derive(Clone, Debug, PartialEq)]
pub struct Standing {
    /// Plain name of the skill.
    pub skill: String,
    /// It keeps people from harm.
    pub is_safety: bool,
    /// Jobs that showed it.
    pub n_shown: usize,
    /// Of these, jobs in which it went right.
    pub n_right: usize,
    /// Chance that it is known today, 0 to 1.
    pub known: f64,
    /// The lowest that chance is over the usual range of the model's numbers.
    pub lowest: f64,
    /// The highest.
    pub highest: f64,
    /// When it is due again.
    pub due: Due,
}

impl Standing {
    /// The chance is above the bar for mastery.
    pub fn is_known(&self) -> bool {
        self.known >= MASTERED
    }
}

/// Standings of all skills that were shown, least known first, safety first among equals.
///
/// `today` is in days since 1970; jobs dated later, as a wrong clock leaves them, count as today.
pub fn standings(jobs: &[Practice], today: f64, rules: &RefreshFile) -> Vec<Standing> {
    let mut in_order: Vec<&Practice> = jobs.iter().collect();
    in_order.sort_by(|a, b| a.ended_ms.total_cmp(&b.ended_ms));
    let mut shown = Vec::new();
    let mut seen: BTreeMap<&str, Vec<bool>> = BTreeMap::new();
    for job in in_order {
        for (skill, is_safety, right, grade) in job.shows() {
            seen.entry(skill).or_default().push(right);
            shown.push(Shown {
                skill: skill.to_owned(),
                is_safety,
                day: job.day(),
                grade,
            });
        }
    }
    let mut list: Vec<Standing> = refresher::due(&shown, today, rules)
        .into_iter()
        .filter_map(|due| Some(standing(seen.get(due.skill.as_str())?, due)))
        .collect();
    list.sort_by(|a, b| {
        a.known
            .total_cmp(&b.known)
            .then(b.is_safety.cmp(&a.is_safety))
            .then_with(|| a.skill.cmp(&b.skill))
    });
    list
}

fn standing(seen: &[bool], due: Due) -> Standing {
    let usual = if due.is_safety {
        Tracing::SAFETY
    } else {
        Tracing::ORDINARY
    };
    let today = |tracing: &Tracing| {
        let known = tracing
            .trace(seen)
            .last()
            .map_or(tracing.known, |t| t.known);
        tracing.rested(known, due.retained)
    };
    let range: Vec<f64> = range_of(&usual).iter().map(today).collect();
    Standing {
        skill: due.skill.clone(),
        is_safety: due.is_safety,
        n_shown: seen.len(),
        n_right: seen.iter().filter(|right| **right).count(),
        known: today(&usual),
        lowest: range.iter().copied().fold(1.0, f64::min),
        highest: range.iter().copied().fold(0.0, f64::max),
        due,
    }
}

/// The corners of the usual range of the four numbers, and the middle. The start and the learning
/// move by a half, slip and guess by as much. From memory: fitted values spread about so between skills.
fn range_of(usual: &Tracing) -> Vec<Tracing> {
    let around = |value: f64| [value * 0.5, value * 1.5];
    let mut all = vec![*usual];
    for known in around(usual.known) {
        for learn in around(usual.learn) {
            for slip in around(usual.slip) {
                for guess in around(usual.guess) {
                    all.push(Tracing {
                        known,
                        learn,
                        slip,
                        guess,
                    });
                }
            }
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::result::PartResult;
    use crate::records::result::SafetyResult;

    fn job(day: f64, skills: &[&str], fixed: bool, broken: Option<&str>) -> Practice {
        let part = |name: &str| PartResult {
            name: name.into(),
            of: 20.0,
            points: 20.0,
        };
        Practice {
            format: PRACTICE_FORMAT.into(),
            engine: "1".into(),
            job: "j".into(),
            title: "J".into(),
            skills: skills.iter().map(|s| (*s).to_owned()).collect(),
            seed: 1,
            ended_ms: day * MS_PER_DAY,
            log: Vec::new(),
            result: JobResult {
                ending: "closed".into(),
                fixed,
                safe: broken != Some("critical"),
                total: 80.0,
                parts: vec![part("evidence"), part("economy")],
                cost: 60.0,
                target_cost: 60.0,
                minutes: 50.0,
                safety: broken
                    .map(|severity| SafetyResult {
                        rule: "tap".into(),
                        severity: severity.into(),
                        step: 3,
                    })
                    .into_iter()
                    .collect(),
                ..JobResult::nothing()
            },
        }
    }

    fn of(jobs: &[Practice], today: f64, skill: &str) -> Standing {
        standings(jobs, today, &RefreshFile::default())
            .into_iter()
            .find(|s| s.skill == skill)
            .expect("shown")
    }

    #[test]
    fn a_skill_shown_right_again_and_again_becomes_known_and_surer() {
        let jobs: Vec<Practice> = (0..6)
            .map(|d| job(f64::from(d), &["dead test"], true, None))
            .collect();
        let (once, often) = (
            of(&jobs[..1], 0.0, "dead test"),
            of(&jobs, 5.0, "dead test"),
        );
        assert!(once.known < often.known && often.is_known() && !once.is_known());
        assert!(often.highest - often.lowest < once.highest - once.lowest);
        assert!(once.lowest <= once.known && once.known <= once.highest);
        assert_eq!((often.n_shown, often.n_right), (6, 6));
    }

    #[test]
    fn one_right_answer_is_worth_what_the_formula_says() {
        // Corbett and Anderson 1995: 0.3 (1-0.1) / (0.3 (1-0.1) + 0.7 0.2) = 0.658537.
        let once = of(&[job(0.0, &["dead test"], true, None)], 0.0, "dead test");
        assert!((once.known - 0.658_537).abs() < 1e-6, "{}", once.known);
    }

    #[test]
    fn what_was_not_used_for_long_is_known_less() {
        let jobs: Vec<Practice> = (0..4)
            .map(|d| job(f64::from(d), &["belt"], true, None))
            .collect();
        assert!(of(&jobs, 300.0, "belt").known < of(&jobs, 4.0, "belt").known);
    }

    #[test]
    fn every_job_shows_whether_one_works_safely() {
        let jobs = [
            job(0.0, &["belt"], true, None),
            job(1.0, &[SAFELY, "belt"], true, Some("major")),
            job(2.0, &["belt"], true, Some("minor")),
        ];
        let safely = of(&jobs, 2.0, SAFELY);
        assert_eq!(
            (safely.n_shown, safely.n_right, safely.is_safety),
            (3, 2, true)
        );
        assert_eq!(of(&jobs, 2.0, "belt").n_right, 3);
    }

    #[test]
    fn a_job_in_which_nothing_was_at_risk_shows_nothing_of_working_safely() {
        let mut untouched = job(0.0, &["belt"], false, None);
        untouched.result.parts.push(PartResult {
            name: "safety".into(),
            of: 20.0,
            points: 0.0,
        });
        let shown = standings(&[untouched.clone()], 0.0, &RefreshFile::default());
        assert!(shown.iter().all(|standing| standing.skill != SAFELY));
        // Whoever broke every rule has no points either.
        untouched.result.safety = job(0.0, &[], false, Some("critical")).result.safety;
        assert_eq!(of(&[untouched], 0.0, SAFELY).n_right, 0);
    }

    #[test]
    fn foreign_text_is_no_practice() {
        for text in ["", "{}", "null", "{\"format\":\"tubwright-practice-1\"}"] {
            assert_eq!(Practice::read(text), None, "{text}");
        }
        let one = job(3.0, &["belt"], true, Some("major"));
        let text = serde_json::to_string(&one).expect("finite");
        assert_eq!(Practice::read(&text), Some(one));
    }
}
