//! Reads a training set strictly and checks it whole: every job in it ships or travels with it.

use std::collections::BTreeSet;

use crate::say;
use crate::scenario::check_job::check_job;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;
use crate::scenario::problem::quoted;
use crate::scenario::read::read;
use crate::scenario::set_file::SET_FORMAT;
use crate::scenario::set_file::SetFile;
use crate::scenario::share;

/// Jobs of a set at most; more is a library. Design choice.
const MOST_JOBS: usize = 500;

/// Reads and checks a training set; `file` is the name errors use, `shipped` the names of the jobs
/// that ship.
///
/// # Errors
/// Everything that is wrong, each with its field and remedy.
pub fn read_set(
    file: &str,
    text: &str,
    shipped: &[&str],
    machines: &[MachineFile],
    catalogue: &CatalogueFile,
) -> Result<SetFile, FileError> {
    let set: SetFile = read(file, text)?;
    let mut problems = Problems::new(file);
    if set.format != SET_FORMAT {
        let remedy = say!("this version reads {format}", format = quoted(SET_FORMAT));
        problems.add("format", quoted(&set.format), remedy);
    }
    problems.not_blank("title", &set.title);
    problems.in_range("mastered_at_marks", set.mastered_at_marks, 0.0, 100.0);
    if set.jobs.is_empty() || set.jobs.len() > MOST_JOBS {
        let remedy = say!("name 1 to {most} jobs", most = MOST_JOBS);
        problems.add("jobs", set.jobs.len(), remedy);
    }
    let mut seen = BTreeSet::new();
    for (index, job) in set.jobs.iter().enumerate() {
        let at = format!("jobs[{index}]");
        if !seen.insert(job) {
            problems.add(&at, quoted(job), say!("name each job once"));
        } else if !shipped.contains(&job.as_str())
            && !set.files.contains_key(job)
            && !set.sealed.contains_key(job)
        {
            let remedy = say!("name a job that ships, or put its file into `files`");
            problems.add(&at, quoted(job), remedy);
        }
    }
    let mut problems = problems
        .into_result(())
        .err()
        .map_or(Vec::new(), |e| e.problems);
    for (id, job) in &set.files {
        let at = format!("{file}: files.{id}");
        if let Err(error) = check_job(&at, job, machines, catalogue) {
            problems.extend(error.problems);
        }
    }
    for (id, letters) in &set.sealed {
        let at = format!("{file}: sealed.{id}");
        if let Err(error) = share::unsealed(&at, letters, machines, catalogue) {
            problems.extend(error.problems);
        }
    }
    if problems.is_empty() {
        Ok(set)
    } else {
        Err(FileError { problems })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::catalogue;
    use crate::scenario::job_files;
    use crate::scenario::machine_files;

    fn told(text: &str) -> Result<SetFile, String> {
        let shipped: Vec<&str> = job_files().expect("sound").iter().map(|j| j.id).collect();
        let (machines, catalogue) = (machine_files().expect("sound"), catalogue().expect("sound"));
        read_set("s.json", text, &shipped, machines, catalogue).map_err(|e| e.to_string())
    }

    fn set(jobs: &str, files: &str) -> String {
        format!(
            "{{\"format\": \"tubwright-set-1\", \"title\": \"T\", \"about\": \"\", \
             \"mastered_at_marks\": 80.0, \"jobs\": [{jobs}], \"files\": {{{files}}}}}"
        )
    }

    #[test]
    fn a_job_that_is_nowhere_and_one_named_twice_are_told_together() {
        let error = told(&set("\"no_water\", \"no_wahter\", \"no_water\"", "")).expect_err("wrong");
        assert!(error.contains("jobs[1]: \"no_wahter\""), "{error}");
        assert!(error.contains("jobs[2]: \"no_water\""), "{error}");
    }

    #[test]
    fn a_job_may_travel_with_the_set() {
        let job = serde_json::to_string(&job_files().expect("sound")[0].file).expect("writes");
        let text = set("\"our_own\", \"no_water\"", &format!("\"our_own\": {job}"));
        assert_eq!(told(&text).expect("sound").jobs.len(), 2);
        let error = told(&text.replace("\"tap_closed\"", "\"tap_close\"")).expect_err("wrong");
        assert!(error.contains("files.our_own: faults[0].id"), "{error}");
    }

    #[test]
    fn a_job_may_travel_covered_and_a_cut_one_is_told() {
        let job = &job_files().expect("sound")[0].file;
        let letters = share::to_letters(job);
        let text = |letters: &str| {
            let sealed = format!("\"sealed\": {{\"our_own\": \"{letters}\"}}, \"files\"");
            set("\"our_own\"", "").replace("\"files\"", &sealed)
        };
        let set = told(&text(&letters)).expect("sound");
        assert_eq!(share::travelling(&set).get("our_own"), Some(job));
        let error = told(&text(&letters[..50])).expect_err("wrong");
        assert!(error.contains("sealed.our_own"), "{error}");
    }

    #[test]
    fn an_empty_set_is_none() {
        let error = told(&set("", "")).expect_err("wrong");
        assert!(error.contains("name 1 to 500 jobs"), "{error}");
    }
}
