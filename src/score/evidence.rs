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
