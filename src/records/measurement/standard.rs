//! Cut scores: set by judges, put on the scale of ability, carried to other forms.
//!
//! ```text
//! cut = mean over judges of sum_i p_ri     SE = sd / sqrt(R)            (Angoff 1971, modified)
//! T(t) = sum of expected scores            T_old(t_c) = cut             (true-score equating)
//! shift = mean(b_old - b_new) over common jobs                          (Rasch linking)
//! ```

use crate::records::measurement::ability::Estimate;
use crate::records::measurement::error::MeasurementError;
use crate::records::measurement::item::Item;
use crate::records::measurement::item::expected_score;

/// A cut is looked for this far outside the steps, logits.
const REACH: f64 = 30.0;
const HALVINGS: usize = 80;
/// A common job that moved further than this, logits, and than twice its error, is no anchor.
const DISPLACED: f64 = 0.5;

/// Judges' chances that a just competent technician passes each job: raw cut and its error.
///
/// # Errors
/// When there is no judge or a judge has another number of jobs.
pub fn angoff(judges: &[Vec<f64>]) -> Result<Estimate, MeasurementError> {
    let n_jobs = judges.first().ok_or(MeasurementError::Empty)?.len();
    let mut sums = Vec::with_capacity(judges.len());
    for judge in judges {
        if judge.len() != n_jobs {
            return Err(MeasurementError::Mismatch {
                what: "a judge's chances",
                found: judge.len(),
                expected: n_jobs,
            });
        }
        sums.push(judge.iter().sum::<f64>());
    }
    Ok(mean_with_error(&sums))
}

/// Ability at which a raw score is expected; `None` for scores nobody can be expected to have.
pub fn ability_at(items: &[Item], raw: f64) -> Option<f64> {
    let most: usize = items.iter().map(Item::highest).sum();
    if !(raw > 0.0 && raw < most as f64) {
        return None;
    }
    let steps = || items.iter().flat_map(|item| item.steps.iter());
    let mut low = steps().fold(f64::INFINITY, |m, b| m.min(*b)) - REACH;
    let mut high = steps().fold(f64::NEG_INFINITY, |m, b| m.max(*b)) + REACH;
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if expected_score(items, middle) < raw {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some(0.5 * (low + high))
}

/// How two calibrations of the same jobs stand to each other.
#[derive(Clone, Debug, PartialEq)]
pub struct Link {
    /// Added to new difficulties to bring them to the old scale, and its error, logits.
    pub shift: Estimate,
    /// How far each common job stands from the shift, logits.
    pub displacements: Vec<f64>,
    /// Common jobs that were used.
    pub used: Vec<bool>,
}

/// The plain mean difference of common jobs.
///
/// # Errors
/// When the lists differ in length or are empty.
pub fn shift(old: &[f64], new: &[f64]) -> Result<Link, MeasurementError> {
    linked(old, new, vec![true; old.len()])
}

/// The mean difference, common jobs left out one by one, the worst first, that have moved by more
/// than half a logit and twice their own error. At least two stay.
///
/// # Errors
/// When the lists differ in length or are empty.
pub fn link(old: &[Estimate], new: &[Estimate]) -> Result<Link, MeasurementError> {
    let values = |list: &[Estimate]| list.iter().map(|e| e.value).collect::<Vec<f64>>();
    let (old_values, new_values) = (values(old), values(new));
    let mut link = shift(&old_values, &new_values)?;
    while link.used.iter().filter(|used| **used).count() > 2 {
        let worst = (0..old.len()).filter(|i| link.used[*i]).max_by(|i, j| {
            link.displacements[*i]
                .abs()
                .total_cmp(&link.displacements[*j].abs())
        });
        let Some(worst) = worst else { break };
        let away = link.displacements[worst].abs();
        let error = (old[worst].se * old[worst].se + new[worst].se * new[worst].se).sqrt();
        if away <= DISPLACED || away <= 2.0 * error {
            break;
        }
        let mut used = link.used;
        used[worst] = false;
        link = linked(&old_values, &new_values, used)?;
    }
    Ok(link)
}

fn linked(old: &[f64], new: &[f64], used: Vec<bool>) -> Result<Link, MeasurementError> {
    if old.len() != new.len() {
        return Err(MeasurementError::Mismatch {
            what: "new difficulties of common jobs",
            found: new.len(),
            expected: old.len(),
        });
    }
    let differences: Vec<f64> = old.iter().zip(new).map(|(o, n)| o - n).collect();
    let kept: Vec<f64> = differences
        .iter()
        .zip(&used)
        .filter(|(_, used)| **used)
        .map(|(d, _)| *d)
        .collect();
    if kept.is_empty() {
        return Err(MeasurementError::Empty);
    }
    let shift = mean_with_error(&kept);
    Ok(Link {
        displacements: differences.iter().map(|d| d - shift.value).collect(),
        shift,
        used,
    })
}

/// Items brought to another scale.
pub fn shifted(items: &[Item], by: f64) -> Vec<Item> {
    items
        .iter()
        .map(|item| Item {
            slope: item.slope,
            steps: item.steps.iter().map(|b| b + by).collect(),
        })
        .collect()
}

/// Lowest whole score that passes: the raw cut rounded up. A hair above a whole score, as rounding
/// leaves it, is that score.
pub fn whole_cut(raw: f64) -> usize {
    const HAIR: f64 = 1e-9;
    (raw - HAIR).ceil().max(0.0) as usize
}

/// Mean and its standard error; the error is 0 for one number.
fn mean_with_error(list: &[f64]) -> Estimate {
    let n = list.len() as f64;
    let mean = list.iter().sum::<f64>() / n;
    let squares: f64 = list.iter().map(|x| (x - mean) * (x - mean)).sum();
    let se = if list.len() > 1 {
        (squares / (n - 1.0) / n).sqrt()
    } else {
        0.0
    };
    Estimate { value: mean, se }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sure(list: &[f64]) -> Vec<Estimate> {
        list.iter()
            .map(|&value| Estimate { value, se: 0.1 })
            .collect()
    }

    #[test]
    fn a_common_job_that_became_another_is_no_anchor() {
        let old = sure(&[-1.0, 0.0, 0.5, 1.0]);
        let new = sure(&[-1.3, -0.3, 0.2, 2.7]);
        let link = link(&old, &new).expect("equal length");
        assert_eq!(link.used, [true, true, true, false]);
        assert!((link.shift.value - 0.3).abs() < 1e-12);
    }

    #[test]
    fn an_expected_score_is_found_again() {
        let items = [Item::rasch(-0.3), Item::two_parameter(1.7, 0.8)];
        let t = ability_at(&items, 1.1).expect("between 0 and 2");
        assert!((expected_score(&items, t) - 1.1).abs() < 1e-12);
        assert!(ability_at(&items, 2.0).is_none() && ability_at(&items, f64::NAN).is_none());
    }

    #[test]
    fn a_cut_that_is_whole_but_for_rounding_is_whole() {
        assert_eq!(whole_cut(4.4465), 5);
        assert_eq!(whole_cut(0.1 + 0.2 + 2.7), 3);
    }
}
