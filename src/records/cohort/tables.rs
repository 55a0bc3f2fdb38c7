//! A cohort's answer as tables for a spreadsheet.

use crate::bench::safety;
use crate::records::cohort::lines::Cohort;
use crate::records::table::Cell;
use crate::records::table::Table;

/// One person a line, with the skills after the numbers.
pub fn people(cohort: &Cohort) -> String {
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
    table.row(head.map(Cell::from).into_iter().chain(skills));
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
        table.row(cells.into_iter().chain(skills));
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
