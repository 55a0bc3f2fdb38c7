//! What could have been known: said of each part fitted for nothing, and of what came right by
//! accident. Compares with the truth, so it belongs to the debrief.

use crate::bench::action::Action;
use crate::bench::action::Sense;
use crate::bench::job::Job;
use crate::bench::ledger;
use crate::bench::notebook::Note;
use crate::bench::words;
use crate::bench::workshop::Effect;
use crate::bench::workshop::WorkKind;
use crate::language::worded;
use crate::machine::FaultDef;
use crate::machine::Target;
use crate::say;
use crate::score::evidence::bore_fault;
use crate::score::twin::Twin;

/// Sentences, in the order of the job.
pub(super) fn sentences(job: &Job, twin: &Twin) -> Vec<String> {
    let workshop = &job.scenario().workshop;
    let mut told = Vec::new();
    for (tick, id) in &job.bench().works {
        let Some(work) = workshop.work(id).filter(|w| w.kind == WorkKind::Replace) else {
            continue;
        };
        let Some(part) = workshop.part(&work.part) else {
            continue;
        };
        if bore_fault(job, part) {
            continue;
        }
        told.push(already_known(job, twin, &part.name, *tick));
        told.extend(a_look(job, &part.name));
    }
    told.extend(by_accident(job));
    told
}

/// What the notebook held when the part was fitted.
fn already_known(job: &Job, twin: &Twin, part: &str, tick: u64) -> String {
    let workshop = &job.scenario().workshop;
    let known: Vec<String> = job
        .notebook()
        .iter()
        .filter(|note: &&Note| note.tick <= tick && twin.differs(note))
        .map(|note| {
            let words = words::note(note, workshop);
            say!("line {n}, {words}", n = note.number, words)
        })
        .collect();
    let part = worded(part);
    if known.is_empty() {
        say!(
            "{part}: the part was sound, and nothing in the notebook spoke against it yet",
            part
        )
    } else {
        say!(
            "{part}: the part was sound; already known: {lines}",
            part,
            lines = known.join("; "),
        )
    }
}

/// What it would have cost to see the cause instead.
fn a_look(job: &Job, part: &str) -> Option<String> {
    let scenario = job.scenario();
    let workshop = &scenario.workshop;
    let fault = causes(job).into_iter().next()?;
    let targets = fault.targets(&scenario.machine.wiring);
    let remedy = workshop
        .works
        .iter()
        .filter(|work| targets.iter().all(|t| work.restores(t)))
        .min_by(|a, b| a.work_s.total_cmp(&b.work_s))?;
    let way_s: f64 = workshop
        .closure(&remedy.needs)
        .iter()
        .map(|s| s.off_s)
        .sum();
    let look = Action::Sense {
        sense: Sense::Look,
        place: String::new(),
    };
    let ticks = ledger::ticks_of(&look, workshop, 0.0);
    let minutes = way_s / 60.0 + ticks as f64 / 600.0;
    let price = workshop.parts.iter().find(|p| p.name == part)?.price;
    Some(say!(
        "A look at the place would have taken {minutes} minutes; the {part} cost {price}",
        minutes = format!("{minutes:.0}"),
        part = worded(part),
        price = format!("{price:.0}"),
    ))
}

/// The machine works although nobody put right what was wrong.
fn by_accident(job: &Job) -> Option<String> {
    let scenario = job.scenario();
    let workshop = &scenario.workshop;
    let fault = causes(job).into_iter().next()?;
    let targets = fault.targets(&scenario.machine.wiring);
    let is_good = !targets.is_empty()
        && targets.iter().all(|t| job.bench().healed.contains(t))
        && !targets.iter().any(|t| is_left_wrong(job, t));
    let on_purpose = job.bench().works.iter().any(|(_, id)| {
        let work = workshop.work(id);
        work.is_some_and(|work| {
            let part = workshop
                .part(&work.part)
                .filter(|_| work.kind == WorkKind::Replace);
            targets
                .iter()
                .any(|t| work.restores(t) || part.is_some_and(|p| p.comes_with(t)))
        })
    });
    // A tap that is turned is turned on purpose; only what goes back together may take a fault along.
    let went_back = job.log().iter().any(|entry| match &entry.action {
        Action::Refit { step, .. } => workshop.step(step).is_some_and(|s| {
            let put_right = s.while_off.iter().map(Effect::target);
            put_right.into_iter().any(|t| targets.contains(&t))
        }),
        _ => false,
    });
    (is_good && went_back && !on_purpose).then(|| {
        say!(
            "Right by accident: {what} came right while something else was put back",
            what = worded(&fault.what),
        )
    })
}

fn is_left_wrong(job: &Job, target: &Target) -> bool {
    let effects = job.bench().left_wrong.values().flatten();
    effects.into_iter().any(|effect| effect.target() == *target)
}

fn causes(job: &Job) -> Vec<&FaultDef> {
    let scenario = job.scenario();
    let faults = scenario.faults.iter();
    faults
        .filter_map(|f| scenario.machine.fault(&f.id))
        .collect()
}
