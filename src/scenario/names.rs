//! Names that a file defines and other places in it refer to.
//!
//! A reference to nothing is answered with the defined name that resembles it most
//! (Levenshtein distance, published 1966).

use std::collections::BTreeSet;

use crate::scenario::problem::Problems;
use crate::scenario::problem::quoted;

/// A set of names of one kind, such as the steps of a machine.
#[derive(Clone, Debug)]
pub struct Names {
    kind: &'static str,
    set: BTreeSet<String>,
}

impl Names {
    /// Takes the names; one defined twice is a problem at its place in the list.
    pub fn define<'n>(
        kind: &'static str,
        list: &str,
        names: impl IntoIterator<Item = &'n str>,
        problems: &mut Problems,
    ) -> Self {
        let mut set = BTreeSet::new();
        for (index, name) in names.into_iter().enumerate() {
            let path = format!("{list}[{index}]");
            problems.not_blank(&path, name);
            if !set.insert(name.to_owned()) {
                problems.add(&path, quoted(name), format!("this {kind} is defined twice"));
            }
        }
        Self { kind, set }
    }

    /// Takes names that are known to be good. What kind they are is marked by `text!` where a screen shows it.
    pub fn known<'n>(kind: &'static str, names: impl IntoIterator<Item = &'n str>) -> Self {
        Self {
            kind,
            set: names.into_iter().map(str::to_owned).collect(),
        }
    }

    /// Whether there is such a name.
    pub fn has(&self, name: &str) -> bool {
        self.set.contains(name)
    }

    /// All names, in alphabetical order.
    pub fn iter(&self) -> impl Iterator<Item = &str> {
        self.set.iter().map(String::as_str)
    }

    /// Demands that the name is defined.
    pub fn expect(&self, path: &str, name: &str, problems: &mut Problems) {
        if !self.has(name) {
            problems.no_such(path, name, self.kind, self.nearest(name));
        }
    }

    /// Demands that all names of a list are defined.
    pub fn expect_all(&self, path: &str, names: &[String], problems: &mut Problems) {
        for (index, name) in names.iter().enumerate() {
            self.expect(&format!("{path}[{index}]"), name, problems);
        }
    }

    fn nearest(&self, name: &str) -> Option<&str> {
        let near = self.set.iter().min_by_key(|known| distance(name, known));
        near.map(String::as_str)
    }
}

/// Letters to insert, delete or exchange to turn `a` into `b`.
fn distance(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, from) in a.chars().enumerate() {
        let mut diagonal = row[0];
        row[0] = i + 1;
        for (j, to) in b.iter().enumerate() {
            let exchanged = diagonal + usize::from(from != *to);
            diagonal = row[j + 1];
            row[j + 1] = exchanged.min(row[j] + 1).min(diagonal + 1);
        }
    }
    row[b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_misspelt_reference_names_the_nearest() {
        let mut problems = Problems::new("p.json");
        let steps = Names::define("step", "steps", ["back_cover", "belt_off"], &mut problems);
        steps.expect("parts[0].needs[0]", "back_covr", &mut problems);
        let error = problems.into_result(()).expect_err("misspelt");
        assert!(
            error.to_string().contains("nearest is \"back_cover\""),
            "{error}"
        );
    }

    #[test]
    fn a_name_defined_twice_is_a_problem() {
        let mut problems = Problems::new("p.json");
        Names::define("part", "parts", ["belt", "belt"], &mut problems);
        let error = problems.into_result(()).expect_err("twice");
        assert_eq!(error.problems[0].path, "parts[1]");
    }

    #[test]
    fn distance_counts_letters() {
        assert_eq!(distance("kitten", "sitting"), 3);
        assert_eq!(distance("", "abc"), 3);
    }
}
