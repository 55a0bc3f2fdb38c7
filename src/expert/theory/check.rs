//! What makes a problem one that can be solved.

use thiserror::Error;

use crate::expert::theory::acts::MOST_REPAIRS;
use crate::expert::theory::acts::Repair;
use crate::expert::theory::acts::Test;
use crate::expert::theory::places::Places;

/// Why a problem cannot be solved.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum ModelError {
    /// A list is not as long as there are causes.
    #[error("{what}: {found} entries; needed: one for each of {causes} causes")]
    Length {
        /// Which list.
        what: String,
        /// How long it is.
        found: usize,
        /// How many causes there are.
        causes: usize,
    },
    /// A number that cannot be.
    #[error("{what}: {value}; needed: {needed}")]
    Number {
        /// Which number.
        what: String,
        /// What stands there.
        value: f64,
        /// What would be right.
        needed: &'static str,
    },
    /// A place or cause that does not exist.
    #[error("{what}: number {index} does not exist; there are {count}")]
    Missing {
        /// What refers to it.
        what: String,
        /// The number.
        index: usize,
        /// How many there are.
        count: usize,
    },
    /// More repairs than can be handled.
    #[error(
        "{0} repairs; at most {MOST_REPAIRS} are possible: leave out those that mend nothing likely"
    )]
    TooMany(usize),
    /// A cause no repair mends.
    #[error("cause {0} is left by all repairs together; add one that mends it")]
    Unmendable(usize),
    /// The order of two repairs matters.
    #[error(
        "repairs {0} and {1} leave different causes in different order; state what each leaves so that the order does not matter"
    )]
    OrderMatters(usize, usize),
}

/// Checks a problem whole; the first thing wrong is told.
pub(super) fn all(
    prior: &[f64],
    repairs: &[Repair],
    tests: &[Test],
    places: &Places,
    start: usize,
) -> Result<(), ModelError> {
    let n = prior.len();
    for (h, p) in prior.iter().enumerate() {
        number(format!("prior of cause {h}"), *p)?;
    }
    if prior.iter().sum::<f64>() <= 0.0 {
        let what = "sum of the prior".to_owned();
        let needed = "above 0: at least one cause must be possible";
        return Err(ModelError::Number {
            what,
            value: 0.0,
            needed,
        });
    }
    place("start".to_owned(), Some(start), places)?;
    place("end".to_owned(), Some(places.end), places)?;
    for (k, cost) in places.ways().enumerate() {
        number(
            format!(
                "way from place {} to {}",
                k / places.len(),
                k % places.len()
            ),
            cost,
        )?;
    }
    if repairs.len() > MOST_REPAIRS {
        return Err(ModelError::TooMany(repairs.len()));
    }
    for (i, repair) in repairs.iter().enumerate() {
        number(format!("cost of repair {i}"), repair.cost)?;
        number(
            format!("cost of repair {i} if it is not it"),
            repair.cost_if_not,
        )?;
        place(format!("place of repair {i}"), repair.place, places)?;
        length(format!("what repair {i} leaves"), repair.after.len(), n)?;
        if let Some(&h) = repair.after.iter().flatten().find(|h| **h >= n) {
            let what = format!("what repair {i} leaves");
            return Err(ModelError::Missing {
                what,
                index: h,
                count: n,
            });
        }
    }
    for (t, test) in tests.iter().enumerate() {
        number(format!("cost of test {t}"), test.cost)?;
        place(format!("place of test {t}"), test.place, places)?;
        length(
            format!("outcomes of test {t}"),
            test.likelihood.len(),
            n * test.n_outcomes,
        )?;
        for h in 0..n {
            let row = test.row(h);
            let sum: f64 = row.iter().sum();
            if !row.iter().all(|l| *l >= 0.0) || (sum - 1.0).abs() > 1e-6 {
                let what = format!("outcomes of test {t} under cause {h}, their sum");
                let needed = "probabilities that sum to 1";
                return Err(ModelError::Number {
                    what,
                    value: sum,
                    needed,
                });
            }
        }
    }
    repairs_commute(n, repairs)
}

fn repairs_commute(n: usize, repairs: &[Repair]) -> Result<(), ModelError> {
    for h in 0..n {
        let left = repairs.iter().try_fold(h, |h, r| r.after[h]);
        if left.is_some() {
            return Err(ModelError::Unmendable(h));
        }
    }
    for (i, a) in repairs.iter().enumerate() {
        for (j, b) in repairs.iter().enumerate().skip(i) {
            let same = (0..n).all(|h| {
                let first = a.after[h].and_then(|h| b.after[h]);
                first == b.after[h].and_then(|h| a.after[h]) && (i != j || first == a.after[h])
            });
            if !same {
                return Err(ModelError::OrderMatters(i, j));
            }
        }
    }
    Ok(())
}

fn number(what: String, value: f64) -> Result<(), ModelError> {
    if value >= 0.0 && value.is_finite() {
        Ok(())
    } else {
        let needed = "a finite number, 0 or more";
        Err(ModelError::Number {
            what,
            value,
            needed,
        })
    }
}

fn place(what: String, index: Option<usize>, places: &Places) -> Result<(), ModelError> {
    match index {
        Some(index) if index >= places.len() => {
            let count = places.len();
            Err(ModelError::Missing { what, index, count })
        }
        _ => Ok(()),
    }
}

fn length(what: String, found: usize, causes: usize) -> Result<(), ModelError> {
    if found == causes {
        Ok(())
    } else {
        Err(ModelError::Length {
            what,
            found,
            causes,
        })
    }
}
