//! Classical statistics of raw scores. They describe this cohort with these jobs, not the jobs
//! alone: a class of equals has a low alpha however good the assessment.
//!
//! ```text
//! alpha = J/(J-1) (1 - sum s_j² / s_X²)     (Cronbach 1951; KR-20 for pass or fail)
//! KR-21 = J/(J-1) (1 - M (J - M) / (J s²))  standard error of measurement = s_X sqrt(1 - alpha)
//! ```

use crate::records::measurement::responses::Responses;

/// Statistics of the jobs' raw scores.
#[derive(Clone, Debug, PartialEq)]
pub struct Classical {
    /// Mean raw score.
    pub mean: f64,
    /// Variance of the raw score, divisor n.
    pub population_variance: f64,
    /// Standard deviation of the raw score, divisor n - 1.
    pub sd: f64,
    /// Alpha; not a number when all people have the same raw score.
    pub alpha: f64,
    /// KR-21: alpha if all jobs were equally hard; pass or fail only.
    pub kr21: f64,
    /// Standard error of measurement, raw score.
    pub sem: f64,
    /// By job.
    pub items: Vec<ClassicalItem>,
}

/// One job in classical terms.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClassicalItem {
    /// Mean score: the share who passed, for pass or fail.
    pub mean: f64,
    /// Correlation with the sum of the other jobs.
    pub rest_correlation: f64,
    /// Alpha without this job.
    pub alpha_if_dropped: f64,
}

/// Statistics; `None` for fewer than two people or jobs, or when anybody missed a job.
pub fn classical(responses: &Responses) -> Option<Classical> {
    let n_items = responses.n_items();
    let n = responses.n_people() as f64;
    if n_items < 2 || responses.n_people() < 2 || !responses.is_complete() {
        return None;
    }
    let covariance = covariance(responses);
    let all: Vec<usize> = (0..n_items).collect();
    let means: Vec<f64> = responses
        .tallies()
        .iter()
        .map(|tally| {
            let sum: f64 = tally.iter().enumerate().map(|(k, n)| k as f64 * n).sum();
            sum / n
        })
        .collect();
    let mean: f64 = means.iter().sum();
    let population_variance = variance_of_sum(&covariance, n_items, &all);
    let sd = (population_variance * n / (n - 1.0)).sqrt();
    let alpha = alpha(&covariance, n_items, &all);
    let j = n_items as f64;
    let items = (0..n_items)
        .map(|item| {
            let rest: Vec<usize> = (0..n_items).filter(|other| *other != item).collect();
            let with_rest: f64 = rest
                .iter()
                .map(|other| covariance[item * n_items + other])
                .sum();
            let own = covariance[item * n_items + item];
            ClassicalItem {
                mean: means[item],
                rest_correlation: with_rest
                    / (own * variance_of_sum(&covariance, n_items, &rest)).sqrt(),
                alpha_if_dropped: self::alpha(&covariance, n_items, &rest),
            }
        })
        .collect();
    Some(Classical {
        mean,
        population_variance,
        sd,
        alpha,
        kr21: j / (j - 1.0) * (1.0 - mean * (j - mean) / (j * population_variance)),
        sem: sd * (1.0 - alpha).sqrt(),
        items,
    })
}

/// Reliability of an assessment `length` times as long (Spearman 1910, Brown 1910).
pub fn spearman_brown(reliability: f64, length: f64) -> f64 {
    length * reliability / (1.0 + (length - 1.0) * reliability)
}

/// Covariances of the jobs' scores, divisor n.
fn covariance(responses: &Responses) -> Vec<f64> {
    let k = responses.n_items();
    let n = responses.n_people() as f64;
    let mut sums = vec![0.0; k];
    let mut products = vec![0.0; k * k];
    for pattern in responses.patterns() {
        let x: Vec<f64> = pattern
            .scores
            .iter()
            .map(|score| f64::from(score.unwrap_or(0)))
            .collect();
        for i in 0..k {
            sums[i] += pattern.count * x[i];
            for j in 0..k {
                products[i * k + j] += pattern.count * x[i] * x[j];
            }
        }
    }
    (0..k * k)
        .map(|at| products[at] / n - sums[at / k] / n * (sums[at % k] / n))
        .collect()
}

fn variance_of_sum(covariance: &[f64], k: usize, items: &[usize]) -> f64 {
    items
        .iter()
        .flat_map(|i| items.iter().map(move |j| covariance[i * k + j]))
        .sum()
}

fn alpha(covariance: &[f64], k: usize, items: &[usize]) -> f64 {
    let n = items.len() as f64;
    let own: f64 = items.iter().map(|i| covariance[i * k + i]).sum();
    n / (n - 1.0) * (1.0 - own / variance_of_sum(covariance, k, items))
}
