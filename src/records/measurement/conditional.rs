//! Rasch difficulties by conditional maximum likelihood: no distribution of ability is assumed.
//!
//! ```text
//! log L = sum over people of ( -sum x_j b_j - ln gamma_r(b) )      r the raw score
//! ```
//! gamma_r is the elementary symmetric function of exp(-b) of order r (Andersen 1972). Newton's
//! method; difficulties sum to 0.

use std::collections::BTreeMap;

use crate::records::measurement::error::MeasurementError;
use crate::records::measurement::linear::Cholesky;
use crate::records::measurement::responses::Responses;
use crate::records::measurement::responses::raw_score;

const SETTLED: f64 = 1e-10;
const MOST_ROUNDS: usize = 200;
const LONGEST_STEP: f64 = 1.0;

/// Difficulties on a scale whose mean is 0.
#[derive(Clone, Debug, PartialEq)]
pub struct Conditional {
    /// Difficulties, logits, sum 0.
    pub difficulties: Vec<f64>,
    /// Standard errors, logits.
    pub se: Vec<f64>,
    /// Logarithm of the conditional likelihood.
    pub log_likelihood: f64,
    /// Newton's method came to rest.
    pub is_settled: bool,
}

/// People who did the same jobs with the same raw score.
struct Group {
    jobs: Vec<usize>,
    raw: usize,
    n: f64,
}

/// Estimates difficulties from pass or fail.
///
/// # Errors
/// For graded scores, and when a job was passed by all or by nobody among those whose score is
/// neither all nor nothing, or no chain of people connects all jobs.
pub fn conditional(responses: &Responses) -> Result<Conditional, MeasurementError> {
    responses.demand_pass_or_fail("conditional maximum likelihood")?;
    let n = responses.n_items();
    let (groups, passed) = sort(responses);
    let mut b = vec![0.0; n];
    let mut is_settled = false;
    for _ in 0..MOST_ROUNDS {
        let (expected, information) = moments(&groups, &b);
        let gradient: Vec<f64> = expected.iter().zip(&passed).map(|(e, x)| e - x).collect();
        let way = factor(&information, n)?.solve(&gradient);
        let mut furthest: f64 = 0.0;
        for (b, by) in b.iter_mut().zip(&way) {
            let by = by.clamp(-LONGEST_STEP, LONGEST_STEP);
            *b += by;
            furthest = furthest.max(by.abs());
        }
        let mean = b.iter().sum::<f64>() / n as f64;
        for b in &mut b {
            *b -= mean;
        }
        if furthest < SETTLED {
            is_settled = true;
            break;
        }
    }
    let (_, information) = moments(&groups, &b);
    let inverse = factor(&information, n)?.inverse();
    let share = 1.0 / (n * n) as f64;
    let log_gammas: f64 = groups
        .iter()
        .map(|group| group.n * libm::log(symmetric(&ease(&group.jobs, &b))[group.raw]))
        .sum();
    let linear: f64 = passed.iter().zip(&b).map(|(x, b)| x * b).sum();
    Ok(Conditional {
        se: (0..n)
            .map(|j| (inverse[j * n + j] - share).max(0.0).sqrt())
            .collect(),
        log_likelihood: -linear - log_gammas,
        difficulties: b,
        is_settled,
    })
}

/// Groups that say something, and how often each job was passed in them.
fn sort(responses: &Responses) -> (Vec<Group>, Vec<f64>) {
    let mut counts: BTreeMap<(Vec<usize>, usize), f64> = BTreeMap::new();
    let mut passed = vec![0.0; responses.n_items()];
    for pattern in responses.patterns() {
        let jobs: Vec<usize> = (0..pattern.scores.len())
            .filter(|j| pattern.scores[*j].is_some())
            .collect();
        let raw = raw_score(&pattern.scores);
        if raw == 0 || raw == jobs.len() {
            continue;
        }
        for (sum, score) in passed.iter_mut().zip(&pattern.scores) {
            *sum += pattern.count * f64::from(score.unwrap_or(0));
        }
        *counts.entry((jobs, raw)).or_insert(0.0) += pattern.count;
    }
    let groups = counts
        .into_iter()
        .map(|((jobs, raw), n)| Group { jobs, raw, n })
        .collect();
    (groups, passed)
}

fn ease(jobs: &[usize], b: &[f64]) -> Vec<f64> {
    jobs.iter().map(|j| libm::exp(-b[*j])).collect()
}

/// gamma_0 .. gamma_J of the given numbers; all terms positive, so nothing cancels.
fn symmetric(ease: &[f64]) -> Vec<f64> {
    let mut gamma = vec![1.0];
    for e in ease {
        gamma.push(0.0);
        for r in (1..gamma.len()).rev() {
            gamma[r] += e * gamma[r - 1];
        }
    }
    gamma
}

fn without(list: &[f64], leave_out: &[usize]) -> Vec<f64> {
    list.iter()
        .enumerate()
        .filter(|(at, _)| !leave_out.contains(at))
        .map(|(_, e)| *e)
        .collect()
}

/// Expected passes and their covariance, given the raw scores.
fn moments(groups: &[Group], b: &[f64]) -> (Vec<f64>, Vec<f64>) {
    let n = b.len();
    let mut expected = vec![0.0; n];
    let mut covariance = vec![0.0; n * n];
    let mut last: Option<(&[usize], Gammas)> = None;
    for group in groups {
        let gammas = match &last {
            Some((jobs, gammas)) if *jobs == group.jobs => gammas,
            _ => {
                &last
                    .insert((&group.jobs, Gammas::new(&ease(&group.jobs, b))))
                    .1
            }
        };
        let p: Vec<f64> = (0..group.jobs.len())
            .map(|i| gammas.chance(i, group.raw))
            .collect();
        for (i, j) in group.jobs.iter().enumerate() {
            expected[*j] += group.n * p[i];
            covariance[j * n + j] += group.n * p[i] * (1.0 - p[i]);
            for (k, l) in group.jobs.iter().enumerate().take(i) {
                let both = gammas.chance_of_both(i, k, group.raw) - p[i] * p[k];
                covariance[j * n + l] += group.n * both;
                covariance[l * n + j] += group.n * both;
            }
        }
    }
    (expected, covariance)
}

/// Symmetric functions of a set of jobs, with none, one and two of them left out.
struct Gammas {
    ease: Vec<f64>,
    all: Vec<f64>,
    less_one: Vec<Vec<f64>>,
    less_two: Vec<Vec<f64>>,
}

impl Gammas {
    fn new(ease: &[f64]) -> Self {
        let m = ease.len();
        let mut less_two = Vec::with_capacity(m * m / 2);
        for i in 0..m {
            for k in 0..i {
                less_two.push(symmetric(&without(ease, &[i, k])));
            }
        }
        Self {
            all: symmetric(ease),
            less_one: (0..m).map(|i| symmetric(&without(ease, &[i]))).collect(),
            less_two,
            ease: ease.to_vec(),
        }
    }

    fn chance(&self, i: usize, raw: usize) -> f64 {
        self.ease[i] * self.less_one[i][raw - 1] / self.all[raw]
    }

    /// For k below i.
    fn chance_of_both(&self, i: usize, k: usize, raw: usize) -> f64 {
        if raw < 2 {
            return 0.0;
        }
        let rest = &self.less_two[i * (i.max(1) - 1) / 2 + k];
        self.ease[i] * self.ease[k] * rest[raw - 2] / self.all[raw]
    }
}

/// The scale's zero is free; adding a matrix of ones pins it without touching differences.
fn factor(information: &[f64], n: usize) -> Result<Cholesky, MeasurementError> {
    let pinned: Vec<f64> = information.iter().map(|x| x + 1.0).collect();
    Cholesky::new(&pinned, n).ok_or(MeasurementError::NotIdentified(
        "a job was passed by all or by nobody, or nobody connects two sets of jobs",
    ))
}
