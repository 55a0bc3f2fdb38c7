//! Procedure: what was due in this job, and was done.
//!
//! Only what the job made necessary is due: a panel that was never opened needs no refit. The
//! after-repair tests and their limits follow EN 50678 (from memory): protective conductor at most
//! 0.3 Ω, insulation at least 1 MΩ, protective-conductor current at most 3.5 mA.

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::after_repair;
use crate::bench::job::Job;
use crate::bench::notebook::Tick;
use crate::bench::state::Ending;
use crate::bench::visit::Advice;
use crate::language::said;
use crate::say;
use crate::score::formula;
use crate::score::lost;
use crate::score::lost::Lost;
use crate::score::lost::Why;
use crate::score::visit;
use crate::score::visit::Due;
use crate::text;

const BOND: &str = text!("protective conductor measured");
const INSULATION: &str = text!("insulation measured");
const LEAKAGE: &str = text!("leakage measured");
const RUN: &str = text!("a run of wash, drain and spin");
const PRICE: &str = text!("price agreed before the repair");
/// What proves a machine safe and working; without it there is no pass.
const PROOFS: [&str; 4] = [BOND, INSULATION, LEAKAGE, RUN];

/// Procedure as far as it was done.
pub(super) struct Procedure {
    pub share: f64,
    /// The functional run and the electrical tests were done where they were due.
    pub is_proved: bool,
    pub reasons: Vec<String>,
    pub lost: Vec<Lost>,
}

pub(super) fn mark(job: &Job) -> Procedure {
    let steps = due(job);
    let reason = |s: &Due| {
        let what = said(s.what);
        if s.done {
            say!("{what}: done", what)
        } else {
            say!("{what}: left out", what)
        }
    };
    let dues: Vec<formula::Due> = steps
        .iter()
        .map(|step| formula::Due {
            weight: step.weight,
            done_ratio: f64::from(u8::from(step.done)),
        })
        .collect();
    Procedure {
        // Who rightly goes away at once leaves nothing undone.
        share: if steps.is_empty() && visit::was_left_for_danger(job) {
            1.0
        } else {
            formula::procedure(&dues)
        },
        is_proved: steps
            .iter()
            .all(|step| step.done || !PROOFS.contains(&step.what)),
        reasons: steps.iter().map(reason).collect(),
        lost: left_out(job, &steps),
    }
}

/// What was left out, each at the step by which it had to be done.
fn left_out(job: &Job, steps: &[Due]) -> Vec<Lost> {
    if steps.is_empty() {
        return if visit::was_left_for_danger(job) {
            Vec::new()
        } else {
            Lost::all(lost::ended(job), Why::NothingDue)
        };
    }
    let all: f64 = steps.iter().map(|step| step.weight).sum();
    let by = |what: &str| {
        if what == PRICE {
            lost::works(job).first().copied()
        } else {
            lost::ended(job)
        }
    };
    let missed = steps.iter().filter(|step| !step.done);
    missed
        .map(|step| {
            let why = Why::LeftOut(step.what.to_owned());
            Lost::at(by(step.what), step.weight / all, why)
        })
        .collect()
}

fn due(job: &Job) -> Vec<Due> {
    let bench = job.bench();
    let mut steps = Vec::new();
    let mut step = |what, weight, done| steps.push(Due { what, weight, done });
    let opened = job
        .log()
        .iter()
        .any(|e| matches!(e.action, Action::TakeOff { .. }));
    if opened {
        let together =
            bench.off.is_empty() && bench.apart.is_empty() && bench.left_wrong.is_empty();
        step(text!("everything back and checked"), 2.0, together);
    }
    let goes_into_use = bench.ending != Some(Ending::MadeSafe);
    if goes_into_use && job.hands_were_on_it() {
        step(
            text!("a look for leaks"),
            1.0,
            after_repair::looked_for_leaks(job),
        );
        step(BOND, 1.0, bond_measured(job));
        step(INSULATION, 1.0, insulation_measured(job));
        step(LEAKAGE, 1.0, leakage_measured(job));
    }
    if goes_into_use && !visit::was_rightly_declined(job) {
        step(RUN, 3.0, job.machine().milestones().all());
    }
    if job.hands_were_on_it() && !bench.works.is_empty() {
        step(PRICE, 1.0, quoted(job));
    }
    if !visit::was_left_for_danger(job) {
        step(
            text!("customer told"),
            1.0,
            bench.advice.contains(&Advice::WhatWasDone),
        );
    }
    steps.extend(visit::due(job));
    steps
}

fn bond_measured(job: &Job) -> bool {
    let mut ohms = after_repair::readings(job, MeterMode::EarthBond).filter_map(|r| r.value);
    ohms.any(|ohm| ohm <= after_repair::BOND_LIMIT_OHM)
}

fn insulation_measured(job: &Job) -> bool {
    // Over range is better than any limit.
    let is_kept = |ohm: f64| ohm >= after_repair::INSULATION_LIMIT_OHM;
    after_repair::readings(job, MeterMode::Insulation).any(|r| r.value.is_none_or(is_kept))
}

fn leakage_measured(job: &Job) -> bool {
    let mut amps = after_repair::readings(job, MeterMode::Leakage).filter_map(|r| r.value);
    amps.any(|amp| amp <= after_repair::LEAKAGE_LIMIT_A)
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
