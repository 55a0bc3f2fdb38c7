//! Every shipped job is fair by the panel: its faults show with what is allowed, what looks like them
//! can be told from them, its complaint fits what the machine does, its bars can be reached.

use std::collections::BTreeMap;
use std::sync::Arc;

use tubwright::bench::scenario::Scenario;
use tubwright::scenario::jobs;
use tubwright::score::Judge;

/// What there is to mend in these jobs of one machine.
fn wrong(jobs: &[Arc<Scenario>]) -> Vec<String> {
    let mut judge = Judge::default();
    let mut wrong = Vec::new();
    for job in jobs {
        let lines = judge.judge(job, &mut |_, _| ()).expect("runs");
        assert!(lines.len() > 1, "{}: {lines:?}", job.id);
        let warnings = lines.into_iter().filter(|line| !line.fair);
        wrong.extend(warnings.map(|line| format!("{}: {}", job.id, line.words)));
    }
    wrong
}

#[test]
fn every_shipped_job_is_fair() {
    let mut by_machine: BTreeMap<String, Vec<Arc<Scenario>>> = BTreeMap::new();
    for job in jobs().expect("sound") {
        let of = by_machine.entry(job.machine.id.clone()).or_default();
        of.push(job);
    }
    let wrong: Vec<String> = std::thread::scope(|scope| {
        let judged: Vec<_> = by_machine
            .values()
            .map(|jobs| scope.spawn(move || wrong(jobs)))
            .collect();
        let each = judged.into_iter().map(|one| one.join().expect("judged"));
        each.flatten().collect()
    });
    assert!(wrong.is_empty(), "{wrong:#?}");
}
