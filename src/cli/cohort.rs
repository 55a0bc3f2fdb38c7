//! `cohort`: what records say together, as text, CSV or JSON.

use std::io::Write;

use crate::bench::safety;
use crate::cli::Verdict;
use crate::cli::args::results::CohortArgs;
use crate::cli::args::results::CohortTable;
use crate::cli::failure::Failure;
use crate::cli::records;
use crate::cli::records::plain;
use crate::cli::verify::library;
use crate::records::check;
use crate::records::cohort;
use crate::records::cohort::Attempt;
use crate::records::cohort::lines::Cohort;
use crate::records::cohort::tables;
use crate::records::library::Library;
use crate::records::record::Record;

/// Does it.
pub fn run(args: &CohortArgs, out: &mut dyn Write) -> Result<Verdict, Failure> {
    let key = records::key(args.key.as_deref())?;
    let library = library(&[])?;
    let names = records::names(&args.files)?;
    let read = records::each(&names, |found| {
        let record = found.record?;
        check::check_seal(&record, key.as_ref())
            .map_err(|difference| format!("{}: {difference}", found.file))?;
        let file = library.files().get(&record.body.job);
        let target = file.and_then(|job| job.reference);
        Ok(Attempt {
            truth: truth(&library, &record),
            result: record.body.counted().with_target_of(target),
            skills: file.map(|job| job.skills.clone()).unwrap_or_default(),
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
    match which {
        CohortTable::People => tables::people(cohort),
        CohortTable::Jobs => tables::jobs(cohort),
        CohortTable::Safety => tables::safety(cohort),
        CohortTable::Confused => tables::confused(cohort),
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
