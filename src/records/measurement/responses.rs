//! People by jobs: scores with gaps where somebody did not get a job.
//!
//! A gap says nothing about a person as long as it is there by design (other form, no time given);
//! it is left out of every sum. Equal rows are kept once with their number of people.

use std::collections::BTreeMap;

use crate::records::measurement::error::MeasurementError;

/// A row of scores; `None` where the job was not given.
pub type Row = Vec<Option<u8>>;

/// People who scored the same.
#[derive(Clone, Debug, PartialEq)]
pub struct Pattern {
    /// Their scores.
    pub scores: Row,
    /// How many they are.
    pub count: f64,
}

/// All scores of a cohort.
#[derive(Clone, Debug, PartialEq)]
pub struct Responses {
    highest: Vec<u8>,
    patterns: Vec<Pattern>,
    of_person: Vec<usize>,
}

impl Responses {
    /// One row a person.
    ///
    /// # Errors
    /// When there is no score at all or a row has another length than the first.
    pub fn new(rows: &[Row]) -> Result<Self, MeasurementError> {
        let n_items = rows.first().map_or(0, Vec::len);
        if rows.iter().all(|row| row.iter().all(Option::is_none)) {
            return Err(MeasurementError::Empty);
        }
        let mut highest = vec![0; n_items];
        let mut index: BTreeMap<&Row, usize> = BTreeMap::new();
        let mut patterns: Vec<Pattern> = Vec::new();
        let mut of_person = Vec::with_capacity(rows.len());
        for (person, row) in rows.iter().enumerate() {
            if row.len() != n_items {
                return Err(MeasurementError::Ragged {
                    person: person + 1,
                    found: row.len(),
                    expected: n_items,
                });
            }
            for (most, score) in highest.iter_mut().zip(row) {
                *most = score.map_or(*most, |score| score.max(*most));
            }
            let at = *index.entry(row).or_insert_with(|| {
                patterns.push(Pattern {
                    scores: row.clone(),
                    count: 0.0,
                });
                patterns.len() - 1
            });
            patterns[at].count += 1.0;
            of_person.push(at);
        }
        Ok(Self {
            // A job nobody passed is still one that could be passed.
            highest: highest.into_iter().map(|most| most.max(1)).collect(),
            patterns,
            of_person,
        })
    }

    /// The same with the highest score each job can give, where nobody reached it.
    ///
    /// # Errors
    /// When the list is of another length, or a score is above its job's highest.
    pub fn with_highest(mut self, highest: &[u8]) -> Result<Self, MeasurementError> {
        if highest.len() != self.n_items() {
            return Err(MeasurementError::Mismatch {
                what: "highest scores",
                found: highest.len(),
                expected: self.n_items(),
            });
        }
        for pattern in &self.patterns {
            for (item, (score, most)) in pattern.scores.iter().zip(highest).enumerate() {
                if let Some(score) = score
                    && score > most
                {
                    return Err(MeasurementError::ScoreTooHigh {
                        item: item + 1,
                        score: *score,
                        highest: *most,
                    });
                }
            }
        }
        self.highest = highest.to_vec();
        Ok(self)
    }

    /// Number of people.
    pub fn n_people(&self) -> usize {
        self.of_person.len()
    }
    /// Number of jobs.
    pub fn n_items(&self) -> usize {
        self.highest.len()
    }
    /// Highest score of each job.
    pub fn highest(&self) -> &[u8] {
        &self.highest
    }
    /// Distinct rows.
    pub fn patterns(&self) -> &[Pattern] {
        &self.patterns
    }
    /// A person's scores, counted from 0.
    pub fn person(&self, person: usize) -> &[Option<u8>] {
        &self.patterns[self.of_person[person]].scores
    }
    /// Everybody did every job.
    pub fn is_complete(&self) -> bool {
        self.patterns
            .iter()
            .all(|p| p.scores.iter().all(Option::is_some))
    }
    /// People by job and score: `[item][score]`.
    pub fn tallies(&self) -> Vec<Vec<f64>> {
        let mut tallies: Vec<Vec<f64>> = self
            .highest
            .iter()
            .map(|most| vec![0.0; usize::from(*most) + 1])
            .collect();
        for pattern in &self.patterns {
            for (tally, score) in tallies.iter_mut().zip(&pattern.scores) {
                if let Some(score) = score {
                    tally[usize::from(*score)] += pattern.count;
                }
            }
        }
        tallies
    }

    /// The first job with graded scores is an error for a method that takes pass or fail only.
    pub(super) fn demand_pass_or_fail(&self, method: &'static str) -> Result<(), MeasurementError> {
        match self.highest.iter().position(|most| *most > 1) {
            Some(item) => Err(MeasurementError::Graded {
                item: item + 1,
                method,
            }),
            None => Ok(()),
        }
    }
}

/// Sum of the scores that are there.
pub fn raw_score(scores: &[Option<u8>]) -> usize {
    scores
        .iter()
        .flatten()
        .map(|score| usize::from(*score))
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_rows_are_counted_once_and_found_by_person() {
        let rows = [
            vec![Some(1), None],
            vec![Some(0), Some(2)],
            vec![Some(1), None],
        ];
        let responses = Responses::new(&rows).expect("good");
        assert_eq!(responses.patterns().len(), 2);
        assert_eq!(responses.n_people(), 3);
        assert_eq!(responses.person(2), &rows[2][..]);
        assert_eq!(responses.highest(), [1, 2]);
        assert_eq!(responses.tallies()[0], [1.0, 2.0]);
    }

    #[test]
    fn what_cannot_be_scores_is_refused() {
        assert_eq!(Responses::new(&[]), Err(MeasurementError::Empty));
        assert_eq!(Responses::new(&[vec![None]]), Err(MeasurementError::Empty));
        let ragged = [vec![Some(1)], vec![Some(1), Some(0)]];
        assert!(matches!(
            Responses::new(&ragged),
            Err(MeasurementError::Ragged { person: 2, .. })
        ));
        let high = Responses::new(&[vec![Some(3)]]).expect("good");
        assert!(high.with_highest(&[2]).is_err());
    }
}
