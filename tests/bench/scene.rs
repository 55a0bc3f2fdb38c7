//! A sound machine on a good site, and a technician who has rung the bell.

use std::sync::Arc;

use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::gauge::Gauge;
use tubwright::bench::job::Job;
use tubwright::bench::notebook::NoteEntry;
use tubwright::bench::notebook::Reading;
use tubwright::bench::scenario::Scenario;
use tubwright::bench::working::Outcome;
use tubwright::machine::ActiveFault;
use tubwright::scenario::jobs;

/// A job on a machine of this type with these faults, everything else in order.
pub fn scenario(machine: &str, faults: &[&str]) -> Scenario {
    let shipped = jobs().expect("shipped files are sound");
    let like = shipped.iter().find(|s| s.machine.id == machine);
    let mut scenario = Scenario::clone(like.expect("ships for each machine"));
    scenario.faults = faults.iter().map(|id| ActiveFault::constant(id)).collect();
    scenario.site.params.clear();
    scenario.site.tap_open = true;
    scenario.site.water_kg = 0.0;
    scenario.van = scenario
        .workshop
        .parts
        .iter()
        .map(|p| p.id.clone())
        .collect();
    scenario
}

/// The job begun.
pub fn job_of(scenario: Scenario) -> Job {
    Job::new(Arc::new(scenario), 7).expect("starts")
}

/// The job begun, with these faults.
pub fn job(machine: &str, faults: &[&str]) -> Job {
    job_of(scenario(machine, faults))
}

/// Does an act that must be possible.
pub fn does(job: &mut Job, action: Action) -> Outcome {
    let outcome = job.act(action.clone());
    assert_eq!(outcome.refusal, None, "{action:?}");
    outcome
}

/// Does several.
pub fn do_all(job: &mut Job, actions: impl IntoIterator<Item = Action>) {
    for action in actions {
        does(job, action);
    }
}

/// Presses a key.
pub fn key(key: PanelKey) -> Action {
    Action::Key { key }
}

/// Puts two leads.
pub fn meter(mode: MeterMode, red: &str, black: &str) -> Action {
    Action::Meter {
        mode,
        red: Some(red.to_owned()),
        black: Some(black.to_owned()),
    }
}

/// Puts the jaws.
pub fn clamp(element: &str) -> Action {
    Action::Meter {
        mode: MeterMode::Clamp,
        red: Some(element.to_owned()),
        black: None,
    }
}

/// Takes a step off, with help.
pub fn off(step: &str) -> Action {
    Action::TakeOff {
        step: step.to_owned(),
        helped: true,
    }
}

/// An instrument at a place.
pub fn gauge(gauge: Gauge, place: &str) -> Action {
    Action::Gauge {
        gauge,
        place: place.to_owned(),
    }
}

/// What an instrument at a place reads, SI.
pub fn gauged(job: &mut Job, instrument: Gauge, place: &str) -> f64 {
    does(job, gauge(instrument, place));
    match &job.notebook().last().expect("noted").entry {
        NoteEntry::Gauge(reading) => reading.value_si.expect("on the scale"),
        other => panic!("{other:?}"),
    }
}

/// What the meter reads.
pub fn reads(job: &mut Job, action: Action) -> Reading {
    does(job, action);
    job.reading().expect("connected")
}

/// Makes the machine safe in the proper order.
pub fn make_safe(job: &mut Job) {
    use MeterMode::AcVolts;
    if job.machine().switched_on() {
        does(job, key(PanelKey::Power));
    }
    do_all(
        job,
        [
            meter(AcVolts, "SL", "SN"),
            Action::Plug { inserted: false },
            Action::Secure,
            meter(AcVolts, "PL", "PN"),
            meter(AcVolts, "PL", "PE"),
            meter(AcVolts, "PN", "PE"),
            meter(AcVolts, "SL", "SN"),
            Action::Tap { open: false },
            Action::BleedHose,
        ],
    );
}

/// Switched on and started: it fills.
pub fn starts(job: &mut Job) {
    does(job, key(PanelKey::Power));
    job.advance(70);
    does(job, key(PanelKey::Start));
    job.advance(60);
}

/// The basket brought to full spin by the program that only drains and spins.
pub fn spins(job: &mut Job) {
    does(job, key(PanelKey::Power));
    job.advance(70);
    for _ in 0..4 {
        does(job, key(PanelKey::Program));
    }
    does(job, key(PanelKey::Start));
    for _ in 0..900 {
        if job.machine().basket_rad_per_s().abs() > 75.0 {
            return;
        }
        job.advance(10);
    }
    panic!("never at full spin: {}", job.machine().state_words());
}
