//! Evidence by the notebook: was there reason for each part before it was fitted, and does what was
//! offered for the finding bear it out? It stands in for what the decisions show where those are not
//! judged.
//!
//! A notebook line is evidence when it would have been different on a sound machine. That is
//! computed: the same log runs on a sound twin, line by line. Half goes to replacements that had such
//! a line before them and helped, half to the lines offered with the finding.

use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::workshop::Part;
use crate::bench::workshop::WorkKind;
use crate::language::worded;
use crate::machine::MachineError;
use crate::say;
use crate::score::lost;
use crate::score::lost::Lost;
use crate::score::lost::Why;
use crate::score::twin::Twin;
use crate::score::visit;

/// Evidence as far as the notebook has it.
pub(super) struct Evidence {
    pub share: f64,
    pub reasons: Vec<String>,
    pub lost: Vec<Lost>,
}

/// Share, and why.
pub(super) fn mark(job: &Job) -> Result<Evidence, MachineError> {
    if visit::was_left_for_danger(job) {
        let why = say!("the place was not safe: nothing was looked for");
        return Ok(Evidence {
            share: 1.0,
            reasons: vec![why.to_owned()],
            lost: Vec::new(),
        });
    }
    let twin = Twin::of(job)?;
    let mut evidence = replacements(job, &twin);
    let (offered, why) = offered(job, &twin);
    evidence.share = 0.5 * evidence.share + 0.5 * offered;
    for lost in &mut evidence.lost {
        lost.share *= 0.5;
    }
    if offered < 1.0 {
        let step = lost::findings(job).pop().or_else(|| lost::ended(job));
        let share = 0.5 * (1.0 - offered);
        evidence.lost.push(Lost::at(step, share, why));
    }
    Ok(evidence)
}

/// Share of replacements that had a reason and helped; all of it when nothing was replaced.
fn replacements(job: &Job, twin: &Twin) -> Evidence {
    let workshop = &job.scenario().workshop;
    let mut reasons = Vec::new();
    let mut n_all = 0_u32;
    let mut n_justified = 0_u32;
    let mut lost = Vec::new();
    let steps = lost::works(job);
    for (nth, (tick, id)) in job.bench().works.iter().enumerate() {
        let Some(work) = workshop.work(id).filter(|w| w.kind == WorkKind::Replace) else {
            continue;
        };
        n_all += 1;
        let had_reason = job
            .notebook()
            .iter()
            .any(|note| note.tick <= *tick && twin.differs(note));
        let helped = workshop
            .part(&work.part)
            .is_some_and(|part| bore_fault(job, part));
        let name = worded(&work.name);
        let (words, why) = match (had_reason, helped) {
            (true, true) => {
                n_justified += 1;
                continue;
            }
            (false, _) => (
                say!("{work}: nothing in the notebook spoke for it", work = name),
                Why::NothingSpokeForIt,
            ),
            (true, false) => (
                say!("{work}: the part was sound", work = name),
                Why::PartWasSound,
            ),
        };
        reasons.push(words);
        lost.push(Lost::at(steps.get(nth).copied(), 1.0, why));
    }
    for one in &mut lost {
        one.share = 1.0 / f64::from(n_all);
    }
    let share = if n_all == 0 {
        1.0
    } else {
        f64::from(n_justified) / f64::from(n_all)
    };
    if n_all > 0 && n_all == n_justified {
        reasons.push(say!("each part fitted had a reading behind it").to_owned());
    }
    Evidence {
        share,
        reasons,
        lost,
    }
}

/// Something that is wrong here is among what comes new.
pub(super) fn bore_fault(job: &Job, part: &Part) -> bool {
    let scenario = job.scenario();
    scenario
        .faults
        .iter()
        .filter_map(|f| scenario.machine.fault(&f.id))
        .any(|fault| {
            let targets = fault.targets(&scenario.machine.wiring);
            fault.part == part.id || targets.iter().any(|target| part.comes_with(target))
        })
}

/// Share of the lines offered with the last finding that a sound machine would not have given, and
/// what is to be said where some would.
fn offered(job: &Job, twin: &Twin) -> (f64, Why) {
    let Some(finding) = job.bench().findings.last() else {
        return (0.0, Why::NothingStated);
    };
    if finding.causes.is_empty() && job.scenario().faults.is_empty() {
        // Nothing is wrong: readings are what shows it, and none of them can differ.
        let n = job
            .notebook()
            .iter()
            .filter(|n| matches!(n.entry, NoteEntry::Reading(_) | NoteEntry::Gauge(_)))
            .count();
        return ((n as f64 / 3.0).min(1.0), Why::TooFewReadings);
    }
    let lines = finding
        .evidence
        .iter()
        .filter_map(|n| job.notebook().get(*n as usize - 1));
    let n_telling = lines.filter(|note| twin.differs(note)).count();
    let n_offered = finding.evidence.len();
    let why = Why::Offered {
        n_telling,
        n_offered,
    };
    (n_telling as f64 / n_offered.max(1) as f64, why)
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::bench::action::Action;
    use crate::bench::action::MeterMode;
    use crate::bench::job::Entry;
    use crate::machine::ActiveFault;
    use crate::scenario::job;

    /// A job worked by its log without the acts that are not kept.
    fn worked(id: &str, log: &str, is_kept: fn(&Action) -> bool) -> Job {
        let scenario = job(id).expect("sound").expect("ships");
        let mut log: Vec<Entry> = serde_json::from_str(log).expect("a log");
        log.retain(|entry| is_kept(&entry.action));
        Job::replay(scenario, 1, &log).expect("starts").0
    }

    #[test]
    fn a_part_fitted_on_hearsay_alone_had_nothing_to_speak_for_it() {
        let log = include_str!("../../tests/jobs/hums_and_stands.json");
        let is_told = |action: &Action| {
            let is_test = matches!(
                action,
                Action::Meter { .. } | Action::Note | Action::Sense { .. } | Action::Turn { .. }
            );
            !is_test
        };
        let blind = worked("hums_and_stands", log, is_told);
        assert!(!blind.notebook().is_empty(), "the customer was asked");
        assert_eq!(blind.bench().works.len(), 1);
        let twin = Twin::of(&blind).expect("runs");
        let marked = replacements(&blind, &twin);
        assert!(marked.share.abs() < 1e-12);
        assert_eq!(marked.lost.len(), 1);
        assert_eq!(marked.lost[0].why, Why::NothingSpokeForIt);
        assert!((marked.lost[0].share - 1.0).abs() < 1e-12);
        let seen = worked("hums_and_stands", log, |_| true);
        let twin = Twin::of(&seen).expect("runs");
        let marked = replacements(&seen, &twin);
        assert!((marked.share - 1.0).abs() < 1e-12 && marked.lost.is_empty());
    }

    #[test]
    fn that_nothing_is_wrong_takes_three_readings_to_show() {
        let shipped = job("no_water").expect("sound").expect("ships");
        let mut sound = (*shipped).clone();
        sound.faults.clear();
        for (n, wanted) in [(0, 0.5), (1, 0.5 + 0.5 / 3.0), (3, 1.0), (4, 1.0)] {
            let mut job = Job::new(Arc::new(sound.clone()), 1).expect("starts");
            let reading = Action::Meter {
                mode: MeterMode::AcVolts,
                red: Some("SL".to_owned()),
                black: Some("SN".to_owned()),
            };
            for _ in 0..n {
                job.act(reading.clone());
                job.act(Action::Note);
            }
            job.act(Action::Finding {
                causes: Vec::new(),
                evidence: Vec::new(),
            });
            let marked = mark(&job).expect("runs");
            assert!(
                (marked.share - wanted).abs() < 1e-9,
                "{n}: {}",
                marked.share
            );
            let lost: f64 = marked.lost.iter().map(|one| one.share).sum();
            assert!((lost - (1.0 - wanted)).abs() < 1e-9, "{n}: {lost}");
        }
    }

    #[test]
    fn a_fault_that_changes_nothing_else_is_borne_by_its_part_alone() {
        let shipped = job("no_water").expect("sound").expect("ships");
        let mut scenario = (*shipped).clone();
        scenario.faults = vec![ActiveFault::constant("buzzer_silent")];
        let job = Job::new(Arc::new(scenario), 1).expect("starts");
        let bore = |id: &str| {
            let part = job.scenario().workshop.part(id);
            bore_fault(&job, part.expect("listed"))
        };
        assert!(bore("buzzer"));
        assert!(!bore("run_capacitor"));
    }
}
