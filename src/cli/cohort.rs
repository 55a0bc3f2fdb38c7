//! `cohort`: what records say together, as text, CSV or JSON.

use std::io::Write;

use crate::bench::safety;
use crate::cli::Verdict;
use crate::cli::args::results::CohortArgs;
use crate::cli::args::results::CohortTable;
use crate::cli::failure::Failure;
use crate::cli::records;
use crate::cli::verify::library;
use crate::records::check;
use crate::records::cohort;
use crate::records::cohort::Attempt;
use crate::records::cohort::lines::Cohort;
use crate::records::library::Library;
use crate::records::record::Record;
use crate::records::table::Cell;
use crate::records::table::Table;

/// Does it.
pub fn run(args: &CohortArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let key = records::key(args.key.as_deref())?;
    let library = library(&[])?;
    let names = records::names(&args.files)?;
    let read = records::each(&names, |found| {
        let record = found.record?;
        check::check_seal(&record, key.as_ref())
            .map_err(|difference| format!("{}: {difference}", found.file))?;
        Ok(Attempt {
            truth: truth(&library, &record),
            result: record.body.counted(),
            candidate: record.body.candidate,
            job: record.body.job,
        })
    });
    let mut attempts = Vec::with_capacity(read.len());
    let mut left_out: Vec<String> = Vec::new();
    for one in read {
        match one {
            Ok(attempt) => attempts.push(attempt),
            Err(why) => left_out.push(why),
        }
    }
    for why in &left_out {
        super::tell(&format!("left out: {why}"));
    }
    let worked_out = cohort::cohort(&attempts)
        .map_err(|error| Failure::usage("FILE", &args.files.join(" "), error.to_string()))?;
    if args.json {
        serde_json::to_writer_pretty(&mut *out, &worked_out)?;
        writeln!(out)?;
    } else if args.csv {
        write!(out, "{}", table(&worked_out, args.table))?;
    } else {
        told(&worked_out, out)?;
    }
    Ok(if left_out.is_empty() {
        Verdict::Passed
    } else {
        Verdict::Failed
    })
}

/// What is wrong in a job, where it is the very one that is known here; a variant may have another
/// fault.
fn truth(library: &Library, record: &Record) -> Vec<String> {
    library
        .task(&record.body.job)
        .filter(|task| task.hash == record.body.scenario)
        .map(|task| task.scenario.faults.iter().map(|f| f.id.clone()).collect())
        .unwrap_or_default()
}

fn table(cohort: &Cohort, which: CohortTable) -> String {
    let mut table = Table::default();
    match which {
        CohortTable::People => people(cohort, &mut table),
        CohortTable::Jobs => jobs(cohort, &mut table),
        CohortTable::Safety => {
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
        }
        CohortTable::Confused => {
            table.row(["was", "stated", "times"].map(Cell::from));
            for line in &cohort.confused {
                table.row([
                    Cell::from(line.is.as_str()),
                    Cell::from(line.stated.as_str()),
                    Cell::Count(line.n),
                ]);
            }
        }
    }
    table.into_text()
}

fn people(cohort: &Cohort, table: &mut Table) {
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
        "cost_to_target",
    ];
    table.row(head.map(Cell::from));
    for line in &cohort.people {
        table.row([
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
            Cell::Number(line.cost_to_target, 3),
        ]);
    }
}

fn jobs(cohort: &Cohort, table: &mut Table) {
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
        "cost",
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
            Cell::from(line.words),
            Cell::Number(line.discrimination, 3),
            Cell::Number(line.infit, 3),
            Cell::Number(line.outfit, 3),
            Cell::Number(Some(line.minutes), 1),
            Cell::Number(Some(line.cost), 1),
            Cell::Number(line.cost_to_target, 3),
        ]);
    }
}

fn told(cohort: &Cohort, out: &mut dyn Write) -> std::io::Result<()> {
    writeln!(
        out,
        "{} people, {} jobs; reliability {}: {}",
        cohort.people.len(),
        cohort.jobs.len(),
        cohort
            .reliability
            .value
            .map_or("-".to_owned(), |value| format!("{value:.2}")),
        cohort.reliability.words
    )?;
    if cohort.n_repeats > 0 {
        writeln!(out, "{} second attempts do not count", cohort.n_repeats)?;
    }
    for line in &cohort.people {
        writeln!(
            out,
            "{}: ability {:+.2} ± {:.2}, {} jobs, {} put right, marks {:.0}, {} critical{}",
            plain(&line.candidate),
            line.ability.value,
            line.ability.se,
            line.n_jobs,
            line.n_fixed,
            line.marks,
            line.n_critical,
            if line.is_unusual {
                ", unusual: look at the records"
            } else {
                ""
            }
        )?;
    }
    for line in &cohort.jobs {
        writeln!(
            out,
            "{}: mean score {:.1} of 3, {}",
            plain(&line.job),
            line.mean_score,
            line.words
        )?;
    }
    for line in &cohort.safety {
        let title = safety::rule(&line.rule).map_or(line.rule.as_str(), |rule| rule.title);
        writeln!(out, "{}: {title}: {} times", line.severity, line.n)?;
    }
    for line in &cohort.confused {
        writeln!(
            out,
            "{} taken for {}: {} times",
            plain(&line.is),
            plain(&line.stated),
            line.n
        )?;
    }
    Ok(())
}

/// A foreign text on a terminal: control characters are shown, not obeyed.
fn plain(text: &str) -> String {
    text.chars()
        .map(|c| if c.is_control() { '\u{fffd}' } else { c })
        .collect()
}
