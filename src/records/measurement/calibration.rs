//! Item parameters by marginal maximum likelihood: ability is integrated out, so people with any
//! score, all or nothing included, count, and so do gaps by design.
//!
//! Bock and Aitkin's (1981) EM with one Newton step a round, for pass or fail and for graded scores
//! alike:
//!
//! ```text
//! slope fixed at 1    Rasch's model; graded: partial credit (Masters 1982) with ability N(0, 1)
//! one common slope    the one-parameter model; graded: partial credit with ability N(0, a²)
//! free slopes         the two-parameter model; graded: generalised partial credit (Muraki 1992)
//! ```
//! With priors the estimates are the mode of the posterior (Bayes modal).

use crate::records::measurement::counts::Counts;
use crate::records::measurement::counts::Tables;
use crate::records::measurement::error::MeasurementError;
use crate::records::measurement::grid::Grid;
use crate::records::measurement::information;
use crate::records::measurement::item::Item;
use crate::records::measurement::newton;
use crate::records::measurement::parameters::Parameters;
use crate::records::measurement::parameters::SlopeRule;
use crate::records::measurement::priors::Priors;
use crate::records::measurement::responses::Responses;

/// Rounds end when no parameter moves further than this.
const SETTLED: f64 = 1e-7;
/// Rounds at most.
const MOST_ROUNDS: usize = 5000;
/// Starts of cuts stay in here: logit of 0.98.
const START: f64 = 3.9;

/// Items with their standard errors, and how well they explain the scores.
#[derive(Clone, Debug, PartialEq)]
pub struct Calibration {
    /// The items, ability standard normal.
    pub items: Vec<Item>,
    /// Which slopes were estimated.
    pub rule: SlopeRule,
    /// Logarithm of the probability of the scores, priors left out.
    pub log_likelihood: f64,
    /// Logarithm of the priors' density at the estimates, constants left out.
    pub log_prior: f64,
    /// Number of parameters estimated.
    pub n_parameters: usize,
    /// Rounds taken.
    pub n_rounds: usize,
    /// The last round moved nothing further than 1e-7.
    pub is_settled: bool,
    /// Covariance of all parameters, each item's cuts (and slope, if free), then a common slope.
    covariance: Vec<f64>,
}

/// Estimates the items' parameters.
///
/// # Errors
/// When a score of a job was given to nobody and no prior is stated, or the scores do not settle
/// the parameters.
pub fn calibrate(
    responses: &Responses,
    rule: SlopeRule,
    priors: &Priors,
) -> Result<Calibration, MeasurementError> {
    let n_items = responses.n_items();
    if priors.difficulties.is_empty() {
        demand_all_categories(responses)?;
    } else if priors.difficulties.len() != n_items {
        return Err(MeasurementError::Mismatch {
            what: "priors of difficulties",
            found: priors.difficulties.len(),
            expected: n_items,
        });
    }
    let grid = Grid::standard();
    let mut parameters = Parameters {
        cuts: starts(responses),
        slopes: vec![1.0; n_items],
    };
    let mut n_rounds = 0;
    let mut is_settled = false;
    while n_rounds < MOST_ROUNDS && !is_settled {
        let tables = Tables::new(&items(&parameters), &grid);
        let counts = Counts::new(responses, &tables, grid.nodes.len());
        let moved = newton::step(&mut parameters, &counts, &tables, &grid.nodes, rule, priors)?;
        n_rounds += 1;
        is_settled = moved < SETTLED;
    }
    let items = items(&parameters);
    let tables = Tables::new(&items, &grid);
    let counts = Counts::new(responses, &tables, grid.nodes.len());
    let covariance = information::covariance(
        responses,
        &parameters,
        &counts,
        &tables,
        &grid,
        rule,
        priors,
    )?;
    let estimated: &[f64] = match rule {
        SlopeRule::Fixed => &[],
        SlopeRule::Common => &parameters.slopes[..1],
        SlopeRule::Free => &parameters.slopes,
    };
    let n_cuts: usize = parameters.cuts.iter().map(Vec::len).sum();
    Ok(Calibration {
        log_likelihood: counts.log_likelihood,
        log_prior: priors.log_density(&parameters.cuts, &parameters.slopes, estimated),
        n_parameters: n_cuts + estimated.len(),
        items,
        rule,
        n_rounds,
        is_settled,
        covariance,
    })
}

impl Calibration {
    /// Cut of an item: slope times step; for pass or fail the negative intercept. Both count from 0.
    pub fn cut(&self, item: usize, step: usize) -> f64 {
        self.items[item].slope * self.items[item].steps[step]
    }

    /// Standard error of a cut.
    pub fn cut_se(&self, item: usize, step: usize) -> f64 {
        let at = self.offset(item) + step;
        self.covariance_at(at, at).sqrt()
    }

    /// Standard error of an item's slope; 0 where it is fixed.
    pub fn slope_se(&self, item: usize) -> f64 {
        self.slope_index(item)
            .map_or(0.0, |at| self.covariance_at(at, at).sqrt())
    }

    /// Standard error of a step, by the delta method.
    pub fn step_se(&self, item: usize, step: usize) -> f64 {
        let a = self.items[item].slope;
        let b = self.items[item].steps[step];
        let cut = self.offset(item) + step;
        let mut variance = self.covariance_at(cut, cut);
        if let Some(slope) = self.slope_index(item) {
            variance +=
                b * b * self.covariance_at(slope, slope) - 2.0 * b * self.covariance_at(cut, slope);
        }
        variance.sqrt() / a
    }

    /// Standard error of an item's difficulty, the mean of its steps.
    pub fn difficulty_se(&self, item: usize) -> f64 {
        let a = self.items[item].slope;
        let b = self.items[item].difficulty();
        let k = self.items[item].highest();
        let first = self.offset(item);
        let share = 1.0 / k as f64;
        let mut weights: Vec<(usize, f64)> = (0..k).map(|s| (first + s, share / a)).collect();
        if let Some(slope) = self.slope_index(item) {
            weights.push((slope, -b / a));
        }
        let mut variance = 0.0;
        for (i, wi) in &weights {
            for (j, wj) in &weights {
                variance += wi * wj * self.covariance_at(*i, *j);
            }
        }
        variance.sqrt()
    }

    /// Akaike's criterion.
    pub fn aic(&self) -> f64 {
        2.0 * self.n_parameters as f64 - 2.0 * self.log_likelihood
    }

    /// Schwarz's criterion for a number of people.
    pub fn bic(&self, n_people: usize) -> f64 {
        self.n_parameters as f64 * libm::log(n_people as f64) - 2.0 * self.log_likelihood
    }

    /// Likelihood ratio against observed pattern frequencies, 2 sum O ln(O/E) over the observed.
    pub fn g_square(&self, responses: &Responses) -> f64 {
        let n = responses.n_people() as f64;
        let tables = Tables::new(&self.items, &Grid::standard());
        let mut posterior = Vec::new();
        let mut sum = 0.0;
        for pattern in responses.patterns() {
            let log_p = tables.posterior_into(&pattern.scores, &mut posterior);
            sum += pattern.count * (libm::log(pattern.count / n) - log_p);
        }
        2.0 * sum
    }

    fn offset(&self, item: usize) -> usize {
        let own_slope = usize::from(self.rule == SlopeRule::Free);
        self.items[..item]
            .iter()
            .map(|item| item.highest() + own_slope)
            .sum()
    }

    fn slope_index(&self, item: usize) -> Option<usize> {
        match self.rule {
            SlopeRule::Fixed => None,
            SlopeRule::Common => Some(self.n_parameters - 1),
            SlopeRule::Free => Some(self.offset(item) + self.items[item].highest()),
        }
    }

    fn covariance_at(&self, i: usize, j: usize) -> f64 {
        self.covariance[i * self.n_parameters + j]
    }
}

fn items(parameters: &Parameters) -> Vec<Item> {
    parameters
        .cuts
        .iter()
        .zip(&parameters.slopes)
        .map(|(cuts, slope)| Item {
            slope: *slope,
            steps: cuts.iter().map(|c| c / slope).collect(),
        })
        .collect()
}

/// Where each pair of neighbouring scores stands for a person of ability 0, roughly.
fn starts(responses: &Responses) -> Vec<Vec<f64>> {
    responses
        .tallies()
        .iter()
        .map(|tally| {
            tally
                .windows(2)
                .map(|pair| libm::log((pair[0] + 0.5) / (pair[1] + 0.5)).clamp(-START, START))
                .collect()
        })
        .collect()
}

fn demand_all_categories(responses: &Responses) -> Result<(), MeasurementError> {
    for (item, tally) in responses.tallies().iter().enumerate() {
        if let Some(category) = tally.iter().position(|n| *n <= 0.0) {
            return Err(MeasurementError::EmptyCategory {
                item: item + 1,
                category: category as u8,
            });
        }
    }
    Ok(())
}
