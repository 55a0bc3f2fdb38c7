//! What was taken beside its target: time and cost of some results, means and ratio. A result without a
//! target counts to what was taken and to nothing else.

use crate::records::result::JobResult;

/// Something taken, beside what a skilled technician needs of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Beside {
    /// Mean of what was taken.
    pub taken: f64,
    /// Mean of the targets; none where none is known.
    pub target: Option<f64>,
    /// What was taken over its target, all together; none where none is known.
    pub ratio: Option<f64>,
}

/// Time on site, min.
pub fn time(results: &[&JobResult]) -> Beside {
    beside(results, |result| {
        let target = result.target_minutes.filter(|minutes| *minutes > 0.0);
        (result.minutes, target)
    })
}

/// Cost, money unit.
pub fn cost(results: &[&JobResult]) -> Beside {
    beside(results, |result| {
        let target = Some(result.target_cost).filter(|cost| *cost > 0.0);
        (result.cost, target)
    })
}

fn beside(results: &[&JobResult], of: fn(&JobResult) -> (f64, Option<f64>)) -> Beside {
    let all: Vec<(f64, Option<f64>)> = results.iter().map(|result| of(result)).collect();
    let with_target: Vec<(f64, f64)> = all
        .iter()
        .filter_map(|(taken, target)| Some((*taken, (*target)?)))
        .collect();
    let sum: f64 = with_target.iter().map(|(_, target)| target).sum();
    let taken: f64 = with_target.iter().map(|(taken, _)| taken).sum();
    let is_known = !with_target.is_empty();
    Beside {
        taken: all.iter().map(|(taken, _)| taken).sum::<f64>() / all.len().max(1) as f64,
        target: is_known.then(|| sum / with_target.len() as f64),
        ratio: is_known.then(|| taken / sum),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn result(minutes: f64, target_minutes: Option<f64>) -> JobResult {
        JobResult {
            minutes,
            target_minutes,
            ..JobResult::nothing()
        }
    }

    #[test]
    fn a_result_without_a_target_is_in_the_mean_and_not_in_the_ratio() {
        let all = [result(30.0, Some(20.0)), result(90.0, None)];
        let found = time(&all.each_ref());
        let near = |is: Option<f64>, wanted: f64| is.is_some_and(|is| (is - wanted).abs() < 1e-12);
        assert!((found.taken - 60.0).abs() < 1e-12);
        assert!(
            near(found.target, 20.0) && near(found.ratio, 1.5),
            "{found:?}"
        );
        let none = cost(&all.each_ref());
        assert_eq!((none.target, none.ratio), (None, None));
    }
}
