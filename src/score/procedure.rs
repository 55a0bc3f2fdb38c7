//! Procedure: what was due in this job, and was done.
//!
//! Only what the job made necessary is due: a panel that was never opened needs no refit. The
//! after-repair tests and their limits follow EN 50678 (from memory): protective conductor at most
//! 0.3 Ω, insulation at least 1 MΩ, protective-conductor current at most 3.5 mA.

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::job::Ending;
use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Tick;
use crate::bench::visit::Advice;
use crate::score::report::Part;
use crate::score::visit;
use crate::score::visit::Due;

const OF: f64 = 15.0;

pub(super) fn mark(job: &Job) -> Part {
    let steps = due(job);
    let all: f64 = steps.iter().map(|s| s.weight).sum();
    let done: f64 = steps.iter().filter(|s| s.done).map(|s| s.weight).sum();
    let reasons = steps
        .iter()
        .map(|s| format!("{}: {}", s.what, if s.done { "done" } else { "left out" }))
        .collect();
    let share = if all > 0.0 { done / all } else { 1.0 };
    Part {
        name: "procedure",
        of: OF,
        points: OF * share,
        reasons,
    }
}

fn due(job: &Job) -> Vec<Due> {
    let bench = job.bench();
    let mut steps = Vec::new();
    let mut step = |what, weight, done| steps.push(Due { what, weight, done });
    let opened = job
        .log()
        .iter()
        .any(|e| matches!(e.action, Action::TakeOff { .. }));
    let since = job.last_change();
    if opened {
        let together =
            bench.off.is_empty() && bench.apart.is_empty() && bench.left_wrong.is_empty();
        step("everything back and checked", 2.0, together);
    }
    let goes_into_use = bench.ending != Some(Ending::MadeSafe);
    if goes_into_use && job.hands_were_on_it() {
        step("a look for leaks", 1.0, looked_for_leaks(job, since));
        step(
            "protective conductor measured",
            1.0,
            bond_measured(job, since),
        );
        step("insulation measured", 1.0, insulation_measured(job, since));
        step("leakage measured", 1.0, leakage_measured(job, since));
    }
    if goes_into_use && !visit::was_rightly_declined(job) {
        step(
            "a run of wash, drain and spin",
            3.0,
            job.machine().milestones().all(),
        );
    }
    if job.hands_were_on_it() && !bench.works.is_empty() {
        step("price agreed before the repair", 1.0, quoted(job));
    }
    if !visit::was_left_for_danger(job) {
        step(
            "customer told",
            1.0,
            bench.advice.contains(&Advice::WhatWasDone),
        );
    }
    steps.extend(visit::due(job));
    steps
}

fn readings(job: &Job, since: Tick, mode: MeterMode) -> impl Iterator<Item = Option<f64>> {
    let matching = move |note: &Note| match &note.entry {
        NoteEntry::Reading(r) if r.mode == mode && note.tick >= since => Some(r.value),
        _ => None,
    };
    job.notebook().iter().filter_map(matching)
}

fn bond_measured(job: &Job, since: Tick) -> bool {
    readings(job, since, MeterMode::EarthBond)
        .flatten()
        .any(|ohm| ohm <= 0.3)
}

fn insulation_measured(job: &Job, since: Tick) -> bool {
    readings(job, since, MeterMode::Insulation).any(|ohm| ohm.is_none_or(|ohm| ohm >= 1e6))
}

fn leakage_measured(job: &Job, since: Tick) -> bool {
    readings(job, since, MeterMode::Leakage)
        .flatten()
        .any(|amp| amp <= 3.5e-3)
}

fn looked_for_leaks(job: &Job, since: Tick) -> bool {
    job.notebook().iter().any(|note| {
        note.tick >= since
            && matches!(&note.entry, NoteEntry::Observation { sense: Sense::Look, place, .. }
                if place == "under_machine")
    })
}

fn quoted(job: &Job) -> bool {
    let first_work = job
        .bench()
        .works
        .first()
        .map_or(Tick::MAX, |(tick, _)| *tick);
    job.bench()
        .around
        .offers
        .iter()
        .any(|offer| offer.tick <= first_work)
}
