//! What is timed. A budget is a promise about the user's machine; a case without one is there to compare.

use std::sync::Arc;

use crate::fleet;
use crate::judgement;
use crate::measure::Case;
use crate::results;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::drawing::Command;
use tubwright::drawing::Drain;
use tubwright::drawing::Features;
use tubwright::drawing::View;
use tubwright::drawing::animate;
use tubwright::machine::Machine;
use tubwright::machine::MachineModel;
use tubwright::machine::Pose;
use tubwright::machine::Probe;
use tubwright::machine::Setup;
use tubwright::network::Complex;
use tubwright::network::Contacts;
use tubwright::network::Factors;
use tubwright::network::Inner;
use tubwright::network::Solver;
use tubwright::plant::Plant;
use tubwright::plant::PlantInputs;
use tubwright::plant::harness::COLD_K;
use tubwright::plant::harness::Harness;
use tubwright::plant::harness::Instrument;
use tubwright::plant::harness::Wiring;
use tubwright::plant::params::PlantParams;
use tubwright::scenario::job;
use tubwright::scenario::machines;

/// Every case, from the bottom of the program to its top.
pub fn all() -> Vec<Case> {
    vec![
        yardstick(),
        three_minutes_of_filling(),
        an_hour_of_rest(),
        one_frame_of_the_section(),
        solve_with_cached_factors(),
        solve_at_another_speed(),
        solve_after_a_contact_change(),
        probe_of_a_reading(),
        whole_wash(),
        fleet::machines(fleet::ONE, 1),
        fleet::machines(fleet::MANY, 100),
        log_of_a_job(),
        results::one_record_verified(),
        results::thousand_by_forty(),
        judgement::belief(),
        judgement::large_step(),
        judgement::next_step(),
        judgement::next_step_from_nothing(),
        judgement::target(),
        judgement::crowd(),
    ]
}

pub fn model() -> Arc<MachineModel> {
    Arc::clone(&machines().expect("shipped files are sound")["P"].model)
}

/// Harness of machine P with the contacts of a spin.
pub fn spinning() -> (Harness, Contacts) {
    let wiring = Arc::new(model().wiring.clone());
    let closed = &wiring.state("spinning").expect("a state").closed;
    let harness = Harness::new(&Wiring::healthy(&wiring), &[]).expect("solvable");
    let contacts = harness.contacts(closed);
    (harness, contacts)
}

fn solve_with_cached_factors() -> Case {
    let (harness, contacts) = spinning();
    let factored = factored(&harness, contacts);
    let name = "network P: one solve with cached factors";
    Case::new(name, Some((1e-6, 1e-6)), move || {
        solved(&harness, &factored)
    })
}

/// Everything that a change of contacts makes anew, with a fixed load in the place of the motor.
fn factored(harness: &Harness, contacts: Contacts) -> (Factors<Complex>, Inner<Complex>) {
    let factors = Factors::new(harness.base(), contacts).expect("solvable");
    let rows = vec![Complex::real(0.01); harness.coils().count * harness.coils().count];
    let inner = Inner::new(harness.base(), &factors, &rows).expect("solvable");
    (factors, inner)
}

fn solved(harness: &Harness, (factors, inner): &(Factors<Complex>, Inner<Complex>)) -> f64 {
    let base = harness.base();
    let solver = Solver {
        base,
        factors,
        inner,
    };
    solver.solve().node_v.len() as f64
}

/// The motor's own block is put together and eliminated anew at each speed; the rest is kept.
fn solve_at_another_speed() -> Case {
    let (harness, contacts) = spinning();
    let mut slip = 0.04;
    let name = "network P: one solve at another speed of the motor";
    Case::new(name, None, move || {
        slip = if slip > 0.9 { 0.04 } else { slip + 0.01 };
        let point = harness.solve_ac(contacts, slip, COLD_K).expect("solvable");
        point.flow.torque_n_m
    })
}

fn solve_after_a_contact_change() -> Case {
    let (harness, contacts) = spinning();
    let name = "network P: factor and solve after a contact change";
    Case::new(name, Some((5e-6, 5e-6)), move || {
        solved(&harness, &factored(&harness, contacts))
    })
}

fn probe_of_a_reading() -> Case {
    let mut machine = Machine::new(&model(), Setup::default()).expect("a machine");
    machine.stand_ready();
    machine.start_program();
    Case::new("machine P: one reading while it fills", None, move || {
        let probe = Probe::Between(Instrument::AcVolts, "IV1", "IV2");
        machine
            .measure(probe)
            .expect("solvable")
            .value_si
            .unwrap_or_default()
    })
}

fn whole_wash() -> Case {
    let mut ready = Machine::new(&model(), Setup::default()).expect("a machine");
    ready.stand_ready();
    Case::new(
        "machine P: a whole normal wash, 51 minutes",
        Some((0.020, 0.060)),
        move || {
            let mut machine = ready.clone();
            machine.start_program();
            while !machine.is_done() {
                machine.advance(600);
            }
            machine.plant().readings().moisture_ratio
        },
    )
}

fn log_of_a_job() -> Case {
    let scenario = job("hums_and_stands")
        .expect("shipped files are sound")
        .expect("ships");
    let log: Vec<Entry> =
        serde_json::from_str(include_str!("../jobs/hums_and_stands.json")).expect("a log");
    Case::new("bench: the log of a job of 46 minutes", None, move || {
        let (job, _) = Job::replay(Arc::clone(&scenario), 1, &log).expect("starts");
        job.cost()
    })
}

/// Work that never changes, so that figures from two machines, or two days, can be compared.
fn yardstick() -> Case {
    Case::new("yardstick: 1,000 x libm::sin and libm::exp", None, || {
        (0..1_000)
            .map(|n| libm::sin(f64::from(n)) + libm::exp(-f64::from(n) * 0.01))
            .sum()
    })
}

fn three_minutes_of_filling() -> Case {
    let empty = Plant::new(PlantParams::typical());
    let filling = PlantInputs {
        is_valve_energised: true,
        ..PlantInputs::IDLE
    };
    Case::new("plant: three minutes of filling", None, move || {
        let mut plant = empty.clone();
        plant.advance(1_800, &filling);
        plant.level_m()
    })
}

fn an_hour_of_rest() -> Case {
    let mut full = Plant::new(PlantParams::typical());
    full.pour_kg(40.0);
    Case::new("plant: an hour of rest with a full tub", None, move || {
        let mut plant = full.clone();
        plant.rest(36_000);
        plant.level_m()
    })
}

fn one_frame_of_the_section() -> Case {
    let features = Features {
        drain: Drain::Gravity,
        command: Command::Board,
        hot_inlet: false,
        filter_and_fuse: true,
        switch: true,
    };
    let mut pose = Pose {
        level_m: 0.2,
        rim_m: 0.4,
        basket_rad_per_s: 3.0,
        ..Pose::default()
    };
    Case::new(
        "drawing: what moves in one frame of the section",
        None,
        move || {
            pose.basket_rad += 0.05;
            animate(View::Section, features, &pose).len() as f64
        },
    )
}
