//! A cohort's answer as tables for a spreadsheet.

use std::collections::BTreeSet;

use crate::bench::safety;
use crate::records::cohort::lines::Cohort;
use crate::records::table::Cell;
use crate::records::table::Table;

/// More about people than their numbers, in columns at the end.
pub struct More<'a> {
    /// The columns' names.
    pub names: &'a [&'a str],
    /// A person's cells in them.
    pub cells: &'a dyn Fn(&str) -> Vec<Cell>,
    /// People without numbers, since nothing of theirs counts.
    pub others: &'a BTreeSet<String>,
}

/// One person a line, with the skills after the numbers.
pub fn people(cohort: &Cohort) -> String {
    let none = More {
        names: &[],
        cells: &|_| Vec::new(),
        others: &BTreeSet::new(),
    };
    people_and(cohort, &none)
}

/// The same with more columns.
pub fn people_and(cohort: &Cohort, more: &More<'_>) -> String {
    let mut table = Table::default();
    let head = [
        "candidate",
        "jobs",
        "ability",
        "ability_se",
        "unusual",
        "marks",
        "put_right",
        "critical",
        "safety",
        "minutes",
        "target_minutes",
        "time_to_target",
        "cost",
        "target_cost",
        "cost_to_target",
    ];
    let skills = cohort.skills.iter().map(|skill| Cell::from(skill.as_str()));
    let names = more.names.iter().map(|name| Cell::from(*name));
    let head: Vec<Cell> = head.map(Cell::from).into_iter().chain(skills).collect();
    let n_numbers = head.len() - 1;
    table.row(head.into_iter().chain(names));
    for line in &cohort.people {
        let skills = line.skills.iter().map(|shown| match shown.n {
            0 => Cell::from(""),
            _ => Cell::Text(format!("{} of {}", shown.n_right, shown.n)),
        });
        let cells = [
            Cell::from(line.candidate.as_str()),
            Cell::Count(line.n_jobs),
            Cell::Number(Some(line.ability.value), 3),
            Cell::Number(Some(line.ability.se), 3),
            Cell::from(if line.is_unusual { "yes" } else { "no" }),
            Cell::Number(Some(line.marks), 1),
            Cell::Count(line.n_fixed),
            Cell::Count(line.n_critical),
            Cell::Count(line.n_safety),
            Cell::Number(Some(line.minutes), 1),
            Cell::Number(line.target_minutes, 1),
            Cell::Number(line.time_to_target, 3),
            Cell::Number(Some(line.cost), 1),
            Cell::Number(line.target_cost, 1),
            Cell::Number(line.cost_to_target, 3),
        ];
        let last = (more.cells)(&line.candidate);
        table.row(cells.into_iter().chain(skills).chain(last));
    }
    for candidate in more.others {
        let blank = (0..n_numbers).map(|_| Cell::from(""));
        let first = std::iter::once(Cell::from(candidate.as_str()));
        table.row(first.chain(blank).chain((more.cells)(candidate)));
    }
    table.into_text()
}

/// One job a line.
pub fn jobs(cohort: &Cohort) -> String {
    let mut table = Table::default();
    let head = [
        "job",
        "people",
        "mean_score",
        "difficulty",
        "difficulty_se",
        "difficulty_words",
        "discrimination",
        "infit",
        "outfit",
        "minutes",
        "target_minutes",
        "time_to_target",
        "cost",
        "target_cost",
        "cost_to_target",
    ];
    table.row(head.map(Cell::from));
    for line in &cohort.jobs {
        table.row([
            Cell::from(line.job.as_str()),
            Cell::Count(line.n_people),
            Cell::Number(Some(line.mean_score), 2),
            Cell::Number(line.difficulty.map(|d| d.value), 3),
            Cell::Number(line.difficulty.map(|d| d.se), 3),
            Cell::from(line.words.as_str()),
            Cell::Number(line.discrimination, 3),
            Cell::Number(line.infit, 3),
            Cell::Number(line.outfit, 3),
            Cell::Number(Some(line.minutes), 1),
            Cell::Number(line.target_minutes, 1),
            Cell::Number(line.time_to_target, 3),
            Cell::Number(Some(line.cost), 1),
            Cell::Number(line.target_cost, 1),
            Cell::Number(line.cost_to_target, 3),
        ]);
    }
    table.into_text()
}

/// Safety rules broken, one kind a line.
pub fn safety(cohort: &Cohort) -> String {
    let mut table = Table::default();
    table.row(["rule", "severity", "title", "times", "people"].map(Cell::from));
    for line in &cohort.safety {
        let title = safety::rule(&line.rule).map_or("", |rule| rule.title);
        table.row([
            Cell::from(line.rule.as_str()),
            Cell::from(line.severity.as_str()),
            Cell::from(title),
            Cell::Count(line.n),
            Cell::Count(line.n_people),
        ]);
    }
    table.into_text()
}

/// Faults taken for others, one pair a line.
pub fn confused(cohort: &Cohort) -> String {
    let mut table = Table::default();
    table.row(["was", "stated", "times"].map(Cell::from));
    for line in &cohort.confused {
        table.row([
            Cell::from(line.is.as_str()),
            Cell::from(line.stated.as_str()),
            Cell::Count(line.n),
        ]);
    }
    table.into_text()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::cohort::Attempt;
    use crate::records::cohort::cohort;
    use crate::records::result::JobResult;

    #[test]
    fn what_more_is_told_of_people_stands_behind_the_numbers_and_who_has_none_has_a_line() {
        let attempt = Attempt {
            candidate: "c-1".to_owned(),
            job: "j1".to_owned(),
            skills: vec!["belt".to_owned()],
            result: JobResult::nothing(),
            truth: Vec::new(),
        };
        let cohort = cohort(&[attempt]).expect("there is one");
        let more = More {
            names: &["decision"],
            cells: &|candidate| vec![Cell::Text(format!("of {candidate}"))],
            others: &BTreeSet::from(["c-2".to_owned()]),
        };
        let text = people_and(&cohort, &more);
        let lines: Vec<&str> = text.lines().collect();
        assert!(lines[0].ends_with(",belt,decision"), "{text}");
        assert!(lines[1].starts_with("c-1,1,") && lines[1].ends_with(",of c-1"));
        assert!(lines[2].starts_with("c-2,,") && lines[2].ends_with(",of c-2"));
        let n = |line: &str| line.split(',').count();
        assert!(lines.iter().all(|line| n(line) == n(lines[0])), "{text}");
        assert!(text.starts_with(people(&cohort).lines().next().expect("a head")));
    }
}
