//! Facts of the trade, common practice: what a bad part does to a wash must come out of the physics.

use tubwright::machine::ActiveFault;
use tubwright::machine::CycleFigures;
use tubwright::machine::Machine;
use tubwright::machine::Setup;
use tubwright::plant::drive::DriveMode;
use tubwright::plant::sound::SoundKind;
use tubwright::plant::sound::total_db;
use tubwright::scenario::machines;

fn machine(id: &str, faults: &[&str]) -> Machine {
    let faults: Vec<ActiveFault> = faults.iter().map(|f| ActiveFault::constant(f)).collect();
    machine_of(id, &faults)
}

fn machine_of(id: &str, faults: &[ActiveFault]) -> Machine {
    machine_as(id, Setup::of_faults(faults, 7))
}

fn machine_as(id: &str, setup: Setup) -> Machine {
    let model = &machines().expect("shipped files are sound")[id].model;
    let mut machine = Machine::new(model, setup).expect("known faults");
    machine.settle_in(4.0, 298.15);
    machine.stand_ready();
    machine
}

fn figures(id: &str, faults: &[&str]) -> CycleFigures {
    machine(id, faults)
        .trial()
        .expect("the wiring can be solved")
}

fn figures_of(id: &str, faults: &[ActiveFault]) -> CycleFigures {
    machine_of(id, faults)
        .trial()
        .expect("the wiring can be solved")
}

/// Loudest a source gets in a wash, dB; 0 where it is never heard.
fn loudest_db(id: &str, faults: &[&str], kind: SoundKind) -> f64 {
    loudest_with(id, faults, &[], kind)
}

/// The same with parameters of the place and the load.
fn loudest_with(id: &str, faults: &[&str], params: &[(&str, f64)], kind: SoundKind) -> f64 {
    let faults: Vec<ActiveFault> = faults.iter().map(|f| ActiveFault::constant(f)).collect();
    let mut setup = Setup::of_faults(&faults, 7);
    let params = params
        .iter()
        .map(|(name, value)| ((*name).to_owned(), *value));
    setup.params.extend(params);
    let mut machine = machine_as(id, setup);
    let mut loudest_db = 0.0;
    let trial = machine.trial_with(|m| {
        for sound in m.sounds().iter().filter(|sound| sound.kind == kind) {
            loudest_db = f64::max(loudest_db, sound.level_db);
        }
    });
    trial.expect("the wiring can be solved");
    loudest_db
}

#[test]
fn a_failed_on_off_switch_or_transformer_leaves_the_control_without_supply() {
    for fault in ["E11", "E17", "E19"] {
        let mut machine = machine("P", &[fault]);
        machine.press_power();
        machine.advance(50);
        let live = machine.live();
        assert!(
            live.regulated_v < 0.1 && live.supply_v > 220.0,
            "{fault}: {live:?}"
        );
        assert_eq!(machine.display_words(), "", "{fault}");
    }
    let mut sound = machine("P", &[]);
    sound.press_power();
    sound.advance(50);
    assert!(sound.live().regulated_v > 4.5 && !sound.display_words().is_empty());
}

#[test]
fn a_faulty_unbalance_lever_gives_frequent_correction_or_noise_in_spin() {
    // Bent in by four fifths it opens at a swing that is usual, in each of the three spins.
    let nearly = ActiveFault {
        severity_ratio: 0.82,
        ..ActiveFault::constant("balance_lever_bent_in")
    };
    let bent_in = figures_of("P", &[nearly]);
    let healthy = figures("P", &[]);
    assert!(bent_in.corrections >= 3, "{bent_in:?}");
    assert_eq!(healthy.corrections, 0);
    assert!(bent_in.length_s > healthy.length_s + 300.0, "{bent_in:?}");
    // Bent away it lets a lopsided load swing until the tub knocks on the cabinet; a sound lever
    // breaks the spin off before.
    let lopsided = [("load.unbalance_kg", 1.5)];
    let knock = |faults| loudest_with("P", faults, &lopsided, SoundKind::CabinetKnock);
    assert!(knock(&["balance_lever_bent_away"]) > 70.0);
    assert!(knock(&[]) < 1.0);
}

#[test]
fn a_lever_bent_in_for_good_looks_like_an_open_lid_where_they_share_an_input() {
    assert!(figures("P", &["balance_lever_bent_in"]).spin_rpm() < 5.0);
}

#[test]
fn a_faulty_lid_switch_gives_no_spin_or_a_basket_that_does_not_stop() {
    for id in ["P", "T", "N"] {
        assert!(figures(id, &["lid_switch_open"]).spin_rpm() < 5.0, "{id}");
    }
    for id in ["P", "N"] {
        let (welded, sound) = (figures(id, &["lid_switch_welded"]), figures(id, &[]));
        assert!(sound.stop_s < 10.0, "{id}: {sound:?}");
        assert!(welded.stop_s > 3.0 * sound.stop_s, "{id}: {welded:?}");
    }
}

#[test]
fn a_faulty_inlet_valve_gives_no_water_or_water_creeping_in() {
    let shut = figures("P", &["valve_stays_shut"]);
    assert!(shut.level_m < 0.01 && shut.alarm.is_some(), "{shut:?}");
    let mut creeping = machine("P", &["valve_leaks_by"]);
    creeping.advance(36_000);
    assert!(
        creeping.water_kg() > 1.0,
        "{} kg in an hour, switched off",
        creeping.water_kg()
    );
}

#[test]
fn a_faulty_level_sensor_gives_no_spin_or_a_wrong_level_or_a_pulsator_without_water() {
    let healthy = figures("P", &[]);
    // Nothing heard of it: the control goes no further than filling, never to a spin.
    let dead = figures("P", &["level_coil_open"]);
    assert!(dead.spin_rpm() < 5.0 && dead.alarm.is_some(), "{dead:?}");
    // Its frequency falls as the water rises: drifted upwards it sees too little water and takes
    // more, drifted downwards it is content with less.
    let up = figures("P", &["level_sensor_reads_high"]);
    let down = figures("P", &["level_sensor_reads_low"]);
    assert!(up.level_m > healthy.level_m + 0.01, "{} m", up.level_m);
    assert!(down.level_m < healthy.level_m - 0.01, "{} m", down.level_m);
    // A pressure switch that stands at full lets the pulsator turn without water.
    let mut dry = machine("T", &["level_switch_stuck_full"]);
    dry.start_program();
    let mut fastest = 0.0;
    for _ in 0..600 {
        dry.advance(10);
        if dry.plant().level_m() < 0.01 {
            fastest = f64::max(fastest, dry.plant().readings().pulsator_rad_per_s.abs());
        }
    }
    assert!(fastest > 5.0, "{fastest} rad/s without water");
}

#[test]
fn a_worn_pulsator_gives_noise_in_wash_and_slips() {
    let (worn, healthy) = (figures("P", &["pulsator_spline_worn"]), figures("P", &[]));
    let ratio = worn.pulsator_forward_rad_per_s / healthy.pulsator_forward_rad_per_s;
    assert!(ratio < 0.9, "slips: {ratio}");
    let knock = |faults: &[&str]| loudest_db("P", faults, SoundKind::ReversalKnock);
    for fault in ["pulsator_spline_worn", "pulsator_screw_loose"] {
        assert!(knock(&[fault]) > knock(&[]) + 3.0, "{fault}");
    }
}

#[test]
fn basket_or_balance_ring_trouble_gives_slow_spin_and_poor_drying() {
    for id in ["P", "T", "N"] {
        let healthy = figures(id, &[]);
        let rough = figures(id, &["basket_bearing_rough"]);
        assert!(
            rough.spin_rpm() < healthy.spin_rpm() - 5.0,
            "{id}: {rough:?}"
        );
        assert!(
            rough.moisture_ratio > healthy.moisture_ratio + 0.005,
            "{id}: {rough:?}"
        );
        assert!(rough.winding_k > healthy.winding_k + 3.0, "{id}: {rough:?}");
        let ring = figures(id, &["balance_ring_cracked"]);
        assert!(ring.spin_rpm() < 0.6 * healthy.spin_rpm(), "{id}: {ring:?}");
        assert!(
            ring.moisture_ratio > healthy.moisture_ratio + 0.2,
            "{id}: {ring:?}"
        );
    }
}

#[test]
fn a_dragging_brake_slows_spin_and_heats_the_motor() {
    let (f, healthy) = (figures("P", &["brake_drags"]), figures("P", &[]));
    assert!(
        f.spin_rpm() < healthy.spin_rpm() - 10.0 && f.spin_rpm() > 300.0,
        "{f:?}"
    );
    assert!(f.moisture_ratio > healthy.moisture_ratio + 0.01, "{f:?}");
    assert!(f.winding_k > healthy.winding_k + 10.0, "{f:?}");
}

#[test]
fn the_gear_mechanism_leaks_or_roars_or_turns_one_way_only_or_does_not_spin() {
    let healthy = figures("P", &[]);
    assert!(figures("P", &["shaft_seal_leaks"]).puddle_kg > healthy.puddle_kg + 0.1);
    let gear = |faults: &[&str]| loudest_db("P", faults, SoundKind::Gear);
    assert!(gear(&["gear_worn"]) > gear(&[]) + 3.0);
    // The basket goes along, and one way only: the laundry is turned, not washed, that way.
    let creep = |fault: &str| {
        let mut machine = machine("P", &[fault]);
        let (mut forward, mut back) = (0.0, 0.0);
        let trial = machine.trial_with(|m| {
            let r = m.plant().readings();
            if r.mode == DriveMode::Wash {
                forward = f64::max(forward, r.basket_rad_per_s);
                back = f64::max(back, -r.basket_rad_per_s);
            }
        });
        trial.expect("the wiring can be solved");
        (f64::max(forward, back), f64::min(forward, back))
    };
    for fault in ["one_way_bearing_worn", "brake_does_not_hold"] {
        let (one_way, other_way) = creep(fault);
        assert!(
            one_way > 1.0 && other_way < 0.1,
            "{fault}: {one_way} {other_way}"
        );
    }
    let clutch = figures("P", &["clutch_spring_worn"]);
    assert!(clutch.spin_rpm() < 0.85 * healthy.spin_rpm());
    assert!(figures("P", &["brake_not_released"]).spin_rpm() < 5.0);
}

#[test]
fn a_motor_fails_open_or_short_or_noisy() {
    let healthy = figures("P", &[]);
    for fault in ["winding_1_open", "winding_2_open"] {
        let open = figures("P", &[fault]);
        assert!(
            open.pulsator_forward_rad_per_s < 0.5 * healthy.pulsator_forward_rad_per_s,
            "{open:?}"
        );
    }
    let short = figures("P", &["winding_1_shorted_turns"]);
    assert!(
        short.winding_k > healthy.winding_k + 5.0 || short.trips > 0,
        "{short:?}"
    );
    // A dry bearing sings, and the whole machine is louder in spin, though it turns slower.
    let dry = ActiveFault {
        severity_ratio: 0.7,
        ..ActiveFault::constant("motor_bearings_dry")
    };
    let (whine_db, spin_db, spin_rpm) = in_spin(&[dry]);
    let (sound_whine_db, sound_spin_db, sound_spin_rpm) = in_spin(&[]);
    assert!(
        sound_whine_db < 1.0 && whine_db > 40.0,
        "{whine_db} {sound_whine_db}"
    );
    assert!(
        spin_db > sound_spin_db + 0.5,
        "{spin_db} against {sound_spin_db}"
    );
    assert!(spin_rpm < sound_spin_rpm);
}

/// A motor bearing's whine, everything together, and the speed, at the fastest of a spin.
fn in_spin(faults: &[ActiveFault]) -> (f64, f64, f64) {
    let mut machine = machine_of("P", faults);
    let (mut fastest, mut whine_db, mut all_db) = (0.0, 0.0, 0.0);
    let trial = machine.trial_with(|m| {
        let speed = m.basket_rad_per_s();
        if speed > fastest {
            fastest = speed;
            let sounds = m.sounds();
            all_db = total_db(&sounds);
            let whine = sounds.iter().find(|s| s.kind == SoundKind::BearingWhine);
            whine_db = whine.map_or(0.0, |s| s.level_db);
        }
    });
    trial.expect("the wiring can be solved");
    (whine_db, all_db, fastest)
}
