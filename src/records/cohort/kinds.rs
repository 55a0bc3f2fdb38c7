//! Counts over any attempts, those of a cohort or of one job: safety rules broken, by kind, and faults
//! taken for others.

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use crate::records::cohort::Attempt;
use crate::records::cohort::lines::ConfusedLine;
use crate::records::cohort::lines::SafetyLine;

/// Safety rules broken, most often first.
pub fn safety<'a>(attempts: impl Iterator<Item = &'a Attempt>) -> Vec<SafetyLine> {
    let mut kinds: BTreeMap<(&str, &str), (usize, BTreeSet<&str>)> = BTreeMap::new();
    for attempt in attempts {
        for broken in &attempt.result.safety {
            let kind = kinds.entry((&broken.rule, &broken.severity)).or_default();
            kind.0 += 1;
            kind.1.insert(&attempt.candidate);
        }
    }
    let mut lines: Vec<SafetyLine> = kinds
        .into_iter()
        .map(|((rule, severity), (n, people))| SafetyLine {
            rule: rule.to_owned(),
            severity: severity.to_owned(),
            n,
            n_people: people.len(),
        })
        .collect();
    lines.sort_by_key(|line| std::cmp::Reverse(line.n));
    lines
}

/// Pairs of a fault that was there and was not stated with one that was stated and not there, most
/// often first.
pub fn confused<'a>(attempts: impl Iterator<Item = &'a Attempt>) -> Vec<ConfusedLine> {
    let mut pairs: BTreeMap<(&str, &str), usize> = BTreeMap::new();
    for attempt in attempts {
        let stated = &attempt.result.stated;
        for is in attempt.truth.iter().filter(|is| !stated.contains(is)) {
            for other in stated.iter().filter(|s| !attempt.truth.contains(s)) {
                *pairs.entry((is, other)).or_default() += 1;
            }
        }
    }
    let mut lines: Vec<ConfusedLine> = pairs
        .into_iter()
        .map(|((is, stated), n)| ConfusedLine {
            is: is.to_owned(),
            stated: stated.to_owned(),
            n,
        })
        .collect();
    lines.sort_by_key(|line| std::cmp::Reverse(line.n));
    lines
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::result::JobResult;
    use crate::records::result::SafetyResult;

    fn attempt(candidate: &str, truth: &str, stated: &str, rules: &[&str]) -> Attempt {
        Attempt {
            candidate: candidate.to_owned(),
            job: "j1".to_owned(),
            skills: Vec::new(),
            result: JobResult {
                safety: rules
                    .iter()
                    .map(|rule| SafetyResult {
                        rule: (*rule).to_owned(),
                        severity: "major".to_owned(),
                        step: 1,
                    })
                    .collect(),
                stated: vec![stated.to_owned()],
                ..JobResult::nothing()
            },
            truth: vec![truth.to_owned()],
        }
    }

    #[test]
    fn rules_and_mix_ups_are_counted_with_the_most_frequent_first() {
        let all = [
            attempt("c-1", "a", "b", &["x", "y", "y"]),
            attempt("c-2", "a", "b", &["y"]),
            attempt("c-3", "a", "c", &[]),
            attempt("c-4", "a", "a", &[]),
        ];
        let rules: Vec<_> = safety(all.iter())
            .into_iter()
            .map(|line| (line.rule, line.n, line.n_people))
            .collect();
        assert_eq!(rules, [("y".to_owned(), 3, 2), ("x".to_owned(), 1, 1)]);
        let pairs: Vec<_> = confused(all.iter())
            .into_iter()
            .map(|line| (line.is, line.stated, line.n))
            .collect();
        let named = |stated: &str, n| ("a".to_owned(), stated.to_owned(), n);
        assert_eq!(pairs, [named("b", 2), named("c", 1)]);
    }
}
