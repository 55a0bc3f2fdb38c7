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
        "A look at the place would have taken {minutes} min; the {part} cost {price}",
        minutes = format!("{:.0}", minutes.ceil()),
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
            "Right by accident, as something else was put back: {what}",
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

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::machine::ActiveFault;
    use crate::scenario;

    const LEVER: &str = "clutch_lever_out_of_link";

    /// A fresh job on a machine of type P with such a fault.
    fn job_with(fault: &str, seed: u64) -> Job {
        let shipped = scenario::job("no_spin_since_cousin").expect("sound");
        let mut scenario = (*shipped.expect("ships")).clone();
        scenario.faults = vec![ActiveFault::constant(fault)];
        Job::new(Arc::new(scenario), seed).expect("starts")
    }

    fn act(job: &mut Job, action: Action) {
        let outcome = job.act(action.clone());
        assert_eq!(outcome.refusal, None, "{action:?}");
    }

    fn take_off(job: &mut Job, steps: &[&str]) {
        for step in steps {
            let step = (*step).to_owned();
            act(job, Action::TakeOff { step, helped: true });
        }
    }

    /// As careful hands lay a machine down.
    fn lay_down(job: &mut Job) {
        act(job, Action::Plug { inserted: false });
        act(job, Action::Tap { open: false });
        take_off(job, &["pull_out"]);
        act(job, Action::SupplyHose { attached: false });
        take_off(job, &["lay_down"]);
    }

    fn refit(job: &mut Job, step: &str, check: bool) {
        let step = step.to_owned();
        act(job, Action::Refit { step, check });
    }

    fn work(job: &mut Job, work: &str) {
        let work = work.to_owned();
        act(job, Action::Work { work, check: true });
    }

    fn look(job: &mut Job, place: &str) {
        let (sense, place) = (Sense::Look, place.to_owned());
        act(job, Action::Sense { sense, place });
    }

    fn told(job: &Job) -> Vec<String> {
        sentences(job, &Twin::of(job).expect("a sound machine"))
    }

    #[test]
    fn a_look_takes_the_way_to_the_quickest_cure_and_the_look_itself_in_begun_minutes() {
        let mut job = job_with(LEVER, 1);
        take_off(&mut job, &["pull_out", "back_cover"]);
        work(&mut job, "replace_run_capacitor");
        // Pulled forward 2 min, laid down 3 min, the look 20 s: the lever is seated from there, while
        // the clutch set, which would cure it too, is behind plate and belt.
        assert_eq!(
            told(&job),
            [
                "run capacitor: the part was sound, and nothing in the notebook spoke against it yet",
                "A look at the place would have taken 6 min; the run capacitor cost 8",
            ]
        );
    }

    #[test]
    fn a_part_that_bore_the_fault_is_not_spoken_of() {
        let mut job = job_with("capacitor_low", 1);
        take_off(&mut job, &["pull_out", "back_cover"]);
        work(&mut job, "replace_run_capacitor");
        assert_eq!(told(&job), [""; 0]);
    }

    #[test]
    fn what_was_noted_after_the_part_was_fitted_was_not_known_yet() {
        let fitted = |look_first: bool| {
            let mut job = job_with(LEVER, 1);
            lay_down(&mut job);
            take_off(&mut job, &["back_cover"]);
            if look_first {
                look(&mut job, "clutch_lever");
            }
            work(&mut job, "replace_run_capacitor");
            look(&mut job, "clutch_lever");
            told(&job).remove(0)
        };
        let known = fitted(true);
        assert!(
            known.contains("the part was sound; already known: line "),
            "{known}"
        );
        assert_eq!(known.matches("line ").count(), 1, "{known}");
        let unknown = fitted(false);
        assert!(unknown.ends_with("spoke against it yet"), "{unknown}");
    }

    #[test]
    fn a_lever_that_went_back_with_the_link_it_was_out_of_came_right_by_accident() {
        let mut job = job_with(LEVER, 1);
        lay_down(&mut job);
        take_off(&mut job, &["lever_unhook"]);
        assert_eq!(told(&job), [""; 0], "it is off still");
        refit(&mut job, "lever_unhook", true);
        assert_eq!(
            told(&job),
            [
                "Right by accident, as something else was put back: the clutch lever is out of its link"
            ]
        );
    }

    #[test]
    fn nothing_is_an_accident_that_was_done_on_purpose_or_left_wrong_or_was_no_fault() {
        let mut on_purpose = job_with(LEVER, 1);
        lay_down(&mut on_purpose);
        work(&mut on_purpose, "seat_clutch_lever");
        take_off(&mut on_purpose, &["lever_unhook"]);
        refit(&mut on_purpose, "lever_unhook", true);
        assert_eq!(told(&on_purpose), [""; 0]);

        let unchecked = |seed| {
            let mut job = job_with(LEVER, seed);
            lay_down(&mut job);
            take_off(&mut job, &["lever_unhook"]);
            refit(&mut job, "lever_unhook", false);
            job
        };
        let is_wrong = |job: &Job| !job.bench().left_wrong.is_empty();
        let left_wrong = (1..100).map(unchecked).find(is_wrong);
        assert_eq!(told(&left_wrong.expect("three in ten")), [""; 0]);

        let mut elsewhere = job_with("capacitor_low", 1);
        lay_down(&mut elsewhere);
        take_off(&mut elsewhere, &["lever_unhook"]);
        refit(&mut elsewhere, "lever_unhook", true);
        assert_eq!(told(&elsewhere), [""; 0]);
    }
}
