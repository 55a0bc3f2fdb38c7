//! A job whose marks are to be explained, and what came of it: its log run again, its report, and from
//! that what cost points.

use std::sync::Arc;

use crate::app::worker::Worked;
use crate::bench::job::Job;
use crate::expert::Reckoning;
use crate::records::reasons::Reasons;
use crate::records::result::JobResult;
use crate::scenario;
use crate::scenario::share;
use crate::score;

/// Parts that do not hang on what each decision was worth.
const BY_THE_LOG: [&str; 2] = ["safety", "procedure"];

/// A job and how it was marked.
#[derive(Clone, Debug, PartialEq)]
pub struct Marked {
    /// What it is called, such as `Job 2`.
    pub name: String,
    /// What was done, with the job in letters.
    pub worked: Worked,
    /// The result that counts.
    pub result: JobResult,
    /// It counts by what each decision was worth.
    pub judged: bool,
}

/// What came of one.
#[derive(Clone, Debug, PartialEq)]
pub enum Came {
    /// All of it is explained.
    Whole(Reasons),
    /// Only what does not hang on the decisions.
    Partly(Reasons),
    /// Run again it comes out otherwise, or cannot be run.
    Not,
}

/// Explains one; `reckoning` is what its decisions were worth, where that is known.
pub fn explained(marked: &Marked, reckoning: Option<&Reckoning>) -> Came {
    reasons(marked, reckoning).unwrap_or(Came::Not)
}

fn reasons(marked: &Marked, reckoning: Option<&Reckoning>) -> Option<Came> {
    let worked = &marked.worked;
    let file = share::from_letters(&worked.job, worked.letters.as_ref()?).ok()?;
    let scenario = scenario::job_of(&worked.job, &file).ok()?;
    let (job, _) = Job::replay(Arc::new(scenario), worked.seed, &worked.log).ok()?;
    let report = score::assess(&job).ok()?;
    let parts = &marked.result.parts;
    if marked.judged && reckoning.is_none() {
        let mut some = Reasons::of(&job, &report).only(&BY_THE_LOG);
        // By how much the whole is capped hangs on all parts.
        some.capped = 0.0;
        let own = parts
            .iter()
            .filter(|part| BY_THE_LOG.contains(&part.name.as_str()));
        return some.explain(own).then_some(Came::Partly(some));
    }
    let report = match reckoning.filter(|_| marked.judged) {
        Some(reckoning) => report.judged(&job, reckoning),
        None => report,
    };
    let all = Reasons::of(&job, &report);
    all.explain(parts).then_some(Came::Whole(all))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::job::Entry;
    use crate::score::Why;

    fn marked() -> Marked {
        let log = include_str!("../../../tests/jobs/no_water.json");
        let log: Vec<Entry> = serde_json::from_str(log).expect("a log");
        // The last acts are left out: no tests after the repair, no hand-over.
        let log = log[..log.len() - 6].to_vec();
        let files = scenario::job_files().expect("ship");
        let file = files.iter().find(|job| job.id == "no_water");
        let letters = share::to_letters(&file.expect("ships").file);
        let worked = Worked {
            job: "sit-1".to_owned(),
            letters: Some(letters),
            seed: 5,
            log,
        };
        let file = share::from_letters("sit-1", worked.letters.as_ref().expect("given"));
        let scenario = scenario::job_of("sit-1", &file.expect("whole")).expect("a job");
        let (job, _) = Job::replay(Arc::new(scenario), 5, &worked.log).expect("starts");
        Marked {
            name: "Job 1".to_owned(),
            result: JobResult::of(&job).expect("marks"),
            worked,
            judged: false,
        }
    }

    #[test]
    fn every_point_that_is_missing_has_its_reason() {
        let marked = marked();
        let Came::Whole(reasons) = explained(&marked, None) else {
            panic!("run again it comes out the same");
        };
        assert!(!reasons.parts.is_empty());
        for part in &reasons.parts {
            let told: f64 = part.reasons.iter().map(|reason| reason.points).sum();
            let missing = part.of - part.points;
            assert!((told + part.rest - missing).abs() < 1e-9, "{part:?}");
        }
        let procedure = reasons.parts.iter().find(|part| part.name == "procedure");
        let left_out = |why: &Why| matches!(why, Why::LeftOut(_));
        let whys = procedure.expect("something was left out").reasons.iter();
        assert!(whys.into_iter().all(|reason| left_out(&reason.why)));
    }

    #[test]
    fn marks_that_come_out_otherwise_are_not_explained() {
        let mut marked = marked();
        marked.result.parts[0].points -= 5.0;
        assert_eq!(explained(&marked, None), Came::Not);
        marked.worked.letters = Some("no letters".to_owned());
        assert_eq!(explained(&marked, None), Came::Not);
    }

    #[test]
    fn without_its_decisions_a_job_is_explained_as_far_as_its_log_goes() {
        let mut marked = marked();
        marked.judged = true;
        let Came::Partly(reasons) = explained(&marked, None) else {
            panic!("safety and procedure follow from the log");
        };
        let names: Vec<&str> = reasons.parts.iter().map(|part| &part.name[..]).collect();
        assert!(
            names.iter().all(|name| BY_THE_LOG.contains(name)),
            "{names:?}"
        );
    }
}
