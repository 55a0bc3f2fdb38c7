//! What records say together: people with their ability and its error, jobs with their difficulty
//! and fit, how far the whole can be relied on, safety by kind, faults taken for others.
//!
//! Jobs count with graded scores 0 to 3, by the partial credit model with priors, so that a cohort
//! of any size comes out finite. Ability is in logits, 0 the cohort's middle.

pub mod kinds; // safety rules broken and faults confused, counted
pub mod lines; // the answer: people, jobs, safety, faults confused
pub mod spread; // how far numbers lie apart
pub mod tables; // the same for a spreadsheet
pub mod targets; // time and cost beside what a skilled technician needs

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use serde::Deserialize;
use serde::Serialize;

use crate::language::decimals;
use crate::language::in_english;
use crate::records::cohort::lines::Cohort;
use crate::records::cohort::lines::JobLine;
use crate::records::cohort::lines::Measured;
use crate::records::cohort::lines::PersonLine;
use crate::records::cohort::lines::Reliability;
use crate::records::cohort::lines::Shown;
use crate::records::cohort::targets::cost;
use crate::records::cohort::targets::time;
use crate::records::measurement::ability;
use crate::records::measurement::ability::Estimate;
use crate::records::measurement::calibration::Calibration;
use crate::records::measurement::calibration::calibrate;
use crate::records::measurement::classical::spearman_brown;
use crate::records::measurement::error::MeasurementError;
use crate::records::measurement::grid::Normal;
use crate::records::measurement::item_fit;
use crate::records::measurement::parameters::SlopeRule;
use crate::records::measurement::person_fit::person_fit;
use crate::records::measurement::priors::Priors;
use crate::records::measurement::responses::Responses;
use crate::records::measurement::responses::Row;
use crate::records::result::JobResult;
use crate::say;
use crate::text;

/// Highest graded score of a job.
const HIGHEST: u8 = 3;
/// A job shows its skills from this graded score on: put right, safely, with evidence.
const RIGHT_FROM: u8 = 2;
/// With fewer people a job's numbers would be noise: none are given.
const FEWEST_FOR_NUMBERS: usize = 10;
/// From here on the spread of abilities is estimated instead of assumed.
const FEWEST_FOR_SPREAD: usize = 200;
/// Longer assessments are not proposed. Design choice.
const MOST_JOBS: f64 = 60.0;
/// A decision about one person needs this. Common practice in testing.
const FOR_A_DECISION: f64 = 0.8;

/// One job of one candidate.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Attempt {
    /// Number or pseudonym.
    pub candidate: String,
    /// Name of the job; variants of one job are one job.
    pub job: String,
    /// Skills the job practises.
    pub skills: Vec<String>,
    /// What it came to.
    pub result: JobResult,
    /// What was wrong, by name in the catalogue; empty where it is not known.
    pub truth: Vec<String>,
}

impl Attempt {
    /// It shows the job's skills: put right, safely, with evidence.
    pub fn is_right(&self) -> bool {
        self.result.graded() >= RIGHT_FROM
    }
}

/// Attempts by person and job; the first of several at the same job counts.
struct Sheet<'a> {
    people: Vec<&'a str>,
    jobs: Vec<&'a str>,
    cells: BTreeMap<(usize, usize), &'a Attempt>,
    skills: Vec<&'a str>,
    n_repeats: usize,
}

/// Works out a cohort.
///
/// # Errors
/// When there is no attempt.
pub fn cohort(attempts: &[Attempt]) -> Result<Cohort, MeasurementError> {
    let sheet = sheet(attempts);
    let rows: Vec<Row> = (0..sheet.people.len())
        .map(|person| {
            (0..sheet.jobs.len())
                .map(|job| sheet.cells.get(&(person, job)).map(|a| a.result.graded()))
                .collect()
        })
        .collect();
    let n_jobs = sheet.jobs.len();
    let responses = Responses::new(&rows)?.with_highest(&vec![HIGHEST; n_jobs])?;
    let rule = if sheet.people.len() < FEWEST_FOR_SPREAD {
        SlopeRule::Fixed
    } else {
        SlopeRule::Common
    };
    let calibration = calibrate(&responses, rule, &Priors::small_cohort(n_jobs))?;
    let abilities: Vec<Estimate> = (0..sheet.people.len())
        .map(|p| ability::eap(&calibration.items, responses.person(p), &Normal::STANDARD))
        .collect();
    let reliability = ability::reliability(&abilities);
    Ok(Cohort {
        skills: sheet
            .skills
            .iter()
            .map(|skill| (*skill).to_owned())
            .collect(),
        people: people(&sheet, &responses, &calibration, &abilities),
        jobs: jobs(&sheet, &responses, &calibration, &abilities),
        reliability: Reliability {
            value: reliability,
            words: in_english(|| allows(reliability, attempts.len() / sheet.people.len().max(1))),
        },
        safety: kinds::safety(sheet.cells.values().copied()),
        confused: kinds::confused(sheet.cells.values().copied()),
        n_repeats: sheet.n_repeats,
    })
}

fn sheet(attempts: &[Attempt]) -> Sheet<'_> {
    let names: BTreeSet<&str> = attempts.iter().map(|a| a.candidate.as_str()).collect();
    let people: Vec<&str> = names.into_iter().collect();
    let names: BTreeSet<&str> = attempts.iter().map(|a| a.job.as_str()).collect();
    let jobs: Vec<&str> = names.into_iter().collect();
    let mut cells = BTreeMap::new();
    let mut n_repeats = 0;
    for attempt in attempts {
        let person = people.binary_search(&attempt.candidate.as_str());
        let job = jobs.binary_search(&attempt.job.as_str());
        if let (Ok(person), Ok(job)) = (person, job) {
            match cells.entry((person, job)) {
                std::collections::btree_map::Entry::Vacant(free) => {
                    free.insert(attempt);
                }
                std::collections::btree_map::Entry::Occupied(_) => n_repeats += 1,
            }
        }
    }
    let skills: BTreeSet<&str> = attempts
        .iter()
        .flat_map(|a| a.skills.iter().map(String::as_str))
        .collect();
    Sheet {
        skills: skills.into_iter().collect(),
        people,
        jobs,
        cells,
        n_repeats,
    }
}

/// One person's scale has slope 1 on it.
fn on_logits(calibration: &Calibration, ability: Estimate) -> Measured {
    let slope = calibration.items.first().map_or(1.0, |item| item.slope);
    Measured {
        value: ability.value * slope,
        se: ability.se * slope,
    }
}

fn people(
    sheet: &Sheet<'_>,
    responses: &Responses,
    calibration: &Calibration,
    abilities: &[Estimate],
) -> Vec<PersonLine> {
    let line = |person: usize| {
        let attempts: Vec<&Attempt> = (0..sheet.jobs.len())
            .filter_map(|job| sheet.cells.get(&(person, job)).copied())
            .collect();
        let own: Vec<&JobResult> = attempts.iter().map(|attempt| &attempt.result).collect();
        let shown = |skill: &&str| {
            let of_it = attempts
                .iter()
                .filter(|a| a.skills.iter().any(|s| s == skill));
            of_it.fold(Shown::default(), |shown, attempt| Shown {
                n: shown.n + 1,
                n_right: shown.n_right + usize::from(attempt.is_right()),
            })
        };
        let scores = responses.person(person);
        let fit = person_fit(&calibration.items, scores, abilities[person].value);
        let broken = || own.iter().flat_map(|result| result.safety.iter());
        let (time, cost) = (time(&own), cost(&own));
        PersonLine {
            candidate: sheet.people[person].to_owned(),
            n_jobs: own.len(),
            ability: on_logits(calibration, abilities[person]),
            is_unusual: fit.is_some_and(|fit| fit.is_unusual),
            marks: mean(own.iter().map(|r| r.total)),
            n_fixed: own.iter().filter(|r| r.fixed).count(),
            n_critical: broken().filter(|s| s.severity == "critical").count(),
            n_safety: broken().count(),
            minutes: time.taken,
            target_minutes: time.target,
            time_to_target: time.ratio,
            cost: cost.taken,
            target_cost: cost.target,
            cost_to_target: cost.ratio,
            skills: sheet.skills.iter().map(shown).collect(),
        }
    };
    (0..sheet.people.len()).map(line).collect()
}

fn jobs(
    sheet: &Sheet<'_>,
    responses: &Responses,
    calibration: &Calibration,
    abilities: &[Estimate],
) -> Vec<JobLine> {
    let values: Vec<Option<f64>> = abilities.iter().map(|a| Some(a.value)).collect();
    let fit = item_fit::mean_squares(&calibration.items, responses, &values);
    let line = |job: usize| {
        let own: Vec<&JobResult> = (0..sheet.people.len())
            .filter_map(|person| sheet.cells.get(&(person, job)))
            .map(|attempt| &attempt.result)
            .collect();
        let is_enough = own.len() >= FEWEST_FOR_NUMBERS;
        let difficulty = Estimate {
            value: calibration.items[job].difficulty(),
            se: calibration.difficulty_se(job),
        };
        let difficulty = is_enough.then(|| on_logits(calibration, difficulty));
        let (time, cost) = (time(&own), cost(&own));
        JobLine {
            job: sheet.jobs[job].to_owned(),
            n_people: own.len(),
            mean_score: mean(own.iter().map(|r| f64::from(r.graded()))),
            words: difficulty
                .map_or(text!("too few people to say"), difficulty_words)
                .to_owned(),
            difficulty,
            discrimination: is_enough.then(|| discrimination(responses, job)).flatten(),
            infit: is_enough.then_some(fit[job].infit),
            outfit: is_enough.then_some(fit[job].outfit),
            minutes: time.taken,
            target_minutes: time.target,
            time_to_target: time.ratio,
            cost: cost.taken,
            target_cost: cost.target,
            cost_to_target: cost.ratio,
        }
    };
    (0..sheet.jobs.len()).map(line).collect()
}

/// Correlation of a job's score with the mean score of each person's other jobs.
fn discrimination(responses: &Responses, job: usize) -> Option<f64> {
    let pairs: Vec<(f64, f64)> = (0..responses.n_people())
        .filter_map(|person| {
            let scores = responses.person(person);
            let own = f64::from(scores[job]?);
            let others: Vec<f64> = scores
                .iter()
                .enumerate()
                .filter(|(other, _)| *other != job)
                .filter_map(|(_, score)| score.map(f64::from))
                .collect();
            (!others.is_empty()).then(|| (own, mean(others.into_iter())))
        })
        .collect();
    let (x, y) = (
        mean(pairs.iter().map(|p| p.0)),
        mean(pairs.iter().map(|p| p.1)),
    );
    let (mut xy, mut xx, mut yy) = (0.0, 0.0, 0.0);
    for (a, b) in &pairs {
        xy += (a - x) * (b - y);
        xx += (a - x) * (a - x);
        yy += (b - y) * (b - y);
    }
    (xx > 0.0 && yy > 0.0).then(|| xy / (xx * yy).sqrt())
}

fn mean(numbers: impl Iterator<Item = f64>) -> f64 {
    let (n, sum) = numbers.fold((0_usize, 0.0), |(n, sum), x| (n + 1, sum + x));
    if n == 0 { 0.0 } else { sum / n as f64 }
}

/// Words only where the difficulty is surely on one side of the middle.
fn difficulty_words(difficulty: Measured) -> &'static str {
    if difficulty.value - 2.0 * difficulty.se > 0.0 {
        text!("hard for this cohort")
    } else if difficulty.value + 2.0 * difficulty.se < 0.0 {
        text!("easy for this cohort")
    } else {
        text!("neither easy nor hard, or not sure yet")
    }
}

/// What a cohort's reliability allows, and how many jobs a decision would need, for the reader.
pub fn reliability_words(cohort: &Cohort) -> String {
    let counted: usize = cohort.people.iter().map(|line| line.n_jobs).sum();
    let n_attempts = counted + cohort.n_repeats;
    allows(
        cohort.reliability.value,
        n_attempts / cohort.people.len().max(1),
    )
}

fn allows(reliability: Option<f64>, n_jobs: usize) -> String {
    let Some(value) = reliability else {
        return say!("one person alone: reliability cannot be told").to_owned();
    };
    let judged = match value {
        r if r >= 0.9 => say!("people can be told apart one by one"),
        r if r >= FOR_A_DECISION => {
            say!("enough for a decision about one person, with a border zone that means more jobs")
        }
        r if r >= 0.7 => say!("enough to compare groups, not for a decision about one person"),
        _ => say!("too low for any decision about one person"),
    };
    if value >= FOR_A_DECISION || value <= 0.0 {
        return judged.to_owned();
    }
    let factor = FOR_A_DECISION * (1.0 - value) / (value * (1.0 - FOR_A_DECISION));
    let needed = (factor * n_jobs as f64).ceil();
    if needed > MOST_JOBS {
        return say!("{judged}; no number of jobs like these would help", judged);
    }
    let reached = spearman_brown(value, needed / n_jobs.max(1) as f64);
    say!(
        "{judged}; about {n} jobs a person would reach {reached}",
        judged,
        n = needed,
        reached = decimals(format!("{reached:.2}"))
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn attempt(person: usize, job: usize) -> Attempt {
        Attempt {
            candidate: format!("c-{person}"),
            job: format!("j{job}"),
            skills: Vec::new(),
            result: JobResult {
                fixed: job < person,
                safe: true,
                ..JobResult::nothing()
            },
            truth: Vec::new(),
        }
    }

    #[test]
    fn what_the_reader_is_told_of_reliability_is_what_the_file_says() {
        let all = (0..5).flat_map(|person| (0..4).map(move |job| attempt(person, job)));
        let mut attempts: Vec<Attempt> = all.collect();
        for n in [1, 5, attempts.len()] {
            let cohort = cohort(&attempts[..n]).expect("there are attempts");
            assert_eq!(reliability_words(&cohort), cohort.reliability.words, "{n}");
        }
        attempts.extend((0..4).map(|job| attempt(1, job)));
        let repeated = cohort(&attempts).expect("there are attempts");
        assert_eq!(repeated.n_repeats, 4);
        assert_eq!(reliability_words(&repeated), repeated.reliability.words);
    }
}
