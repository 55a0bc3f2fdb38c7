//! What is said of made-up runs, figure by figure.

use super::*;
use crate::expert::Symptom;
use crate::expert::Told;

/// A run as a sound machine makes it; the numbers are made up, round and of the right size.
fn sound() -> CycleFigures {
    CycleFigures {
        fill_s: 120.0,
        level_m: 0.3,
        pulsator_forward_rad_per_s: 15.0,
        pulsator_reverse_rad_per_s: 15.0,
        creep_rad_per_s: 0.0,
        drain_s: 60.0,
        spin_rad_per_s: 75.0,
        corrections: 0,
        swing_m: 0.004,
        moisture_ratio: 0.6,
        water_kg: 80.0,
        puddle_kg: 0.0,
        winding_k: 340.0,
        trips: 0,
        earth_path_ohm: 0.1,
        leakage_a: 0.1e-3,
        stop_s: 4.0,
        loudness_db: 60.0,
        alarm: None,
        length_s: 3_000.0,
    }
}

/// What is said of the same run changed.
fn told_of(change: fn(&mut CycleFigures)) -> Behaviour {
    let mut is = sound();
    change(&mut is);
    told(&is, &sound())
}

#[test]
fn a_run_is_complained_of_as_its_customer_would() {
    type Case = (fn(&mut CycleFigures), &'static str);
    let cases: [Case; 25] = [
        (|_| (), ""),
        (
            |f| (f.fill_s, f.water_kg, f.loudness_db) = (0.0, 0.0, 0.0),
            "It does nothing at all, as if it were not plugged in.",
        ),
        (
            |f| (f.fill_s, f.water_kg) = (0.0, 0.0),
            "I press start and no water comes.",
        ),
        (
            |f| f.fill_s = 0.0,
            "The water runs and runs and it never begins to wash.",
        ),
        (
            |f| f.water_kg = 200.0,
            "The water runs and runs and it never begins to wash.",
        ),
        (
            |f| {
                (f.pulsator_forward_rad_per_s, f.pulsator_reverse_rad_per_s) = (0.0, 0.0);
                f.spin_rad_per_s = 0.0;
            },
            "It takes water, and then it does not wash.",
        ),
        (
            |f| {
                (f.pulsator_forward_rad_per_s, f.pulsator_reverse_rad_per_s) = (0.0, 0.0);
                f.drain_s = 300.0;
            },
            "It takes water, and then it does not wash. It takes long to empty.",
        ),
        (
            |f| f.pulsator_forward_rad_per_s = 0.0,
            "It washes feebly, not as it used to.",
        ),
        (
            |f| f.pulsator_reverse_rad_per_s = 5.0,
            "It washes feebly, not as it used to.",
        ),
        (|f| f.fill_s = 600.0, "It takes ages to fill."),
        (|f| f.level_m = 0.45, "There is far too much water in it."),
        (|f| f.level_m = 0.15, "It washes with too little water."),
        (
            |f| f.creep_rad_per_s = 3.0,
            "The basket goes round with the washing and things get torn.",
        ),
        (|f| f.drain_s = 300.0, "It takes long to empty."),
        (
            |f| (f.drain_s, f.spin_rad_per_s) = (300.0, 0.0),
            "The water stays in it.",
        ),
        (
            |f| f.spin_rad_per_s = 0.0,
            "It washes and empties, but it does not spin.",
        ),
        (
            |f| f.spin_rad_per_s = 40.0,
            "It spins more slowly than it did.",
        ),
        (
            |f| f.corrections = 5,
            "When it should spin it stops, takes water again and tries over and over.",
        ),
        (|f| f.swing_m = 0.04, "It bangs and walks when it spins."),
        (
            |f| f.moisture_ratio = 2.0,
            "The washing comes out dripping.",
        ),
        (|f| f.puddle_kg = 5.0, "There is water on the floor."),
        (
            |f| f.trips = 1,
            "It gets hot, stops, and goes on after a while.",
        ),
        (
            |f| f.stop_s = 30.0,
            "It goes on turning long after I open the lid.",
        ),
        (
            |f| f.earth_path_ohm = 5_000.0,
            "It tingles when I touch it with bare feet.",
        ),
        (
            |f| f.loudness_db = 85.0,
            "It washes, but it makes a noise it did not make before.",
        ),
    ];
    for (n, (change, wanted)) in cases.into_iter().enumerate() {
        assert_eq!(told_of(change).complaint, wanted, "case {n}");
    }
}

#[test]
fn current_on_the_cabinet_is_felt_from_half_a_milliampere() {
    let tingles = |change| told_of(change).complaint.contains("tingles");
    assert!(tingles(|f| f.leakage_a = 5e-3));
    assert!(tingles(|f| (f.earth_path_ohm, f.leakage_a) = (20.0, 0.6e-3)));
    assert!(!tingles(
        |f| (f.earth_path_ohm, f.leakage_a) = (20.0, 0.4e-3)
    ));
}

#[test]
fn an_alarm_ends_the_complaint() {
    let told = told_of(|f| {
        f.drain_s = 300.0;
        f.alarm = Some("Drains too slowly".to_owned());
    });
    assert_eq!(
        told.complaint,
        "It takes long to empty. In the end it beeps and shows “Drains too slowly”."
    );
    assert!(!told.is_sound());
}

#[test]
fn a_program_a_quarter_longer_or_shorter_is_not_as_a_sound_one() {
    let end = |length_s: f64| {
        let mut is = sound();
        is.length_s = length_s;
        let line = end(&is, &sound());
        (line.as_sound, line.words)
    };
    let words = |minutes: u32| format!("ends after {minutes} min, a sound one 50 min");
    assert_eq!(end(3_720.0), (true, words(62)));
    assert_eq!(end(3_780.0), (false, words(63)));
    assert_eq!(end(2_280.0), (true, words(38)));
    assert_eq!(end(2_220.0), (false, words(37)));
    assert_eq!(
        end(7_200.0),
        (false, "does not come to an end within two hours".to_owned())
    );
}

#[test]
fn figures_below_ten_keep_a_place_and_counts_do_not() {
    let line = |value: f64, unit: &'static str| {
        let line = FunctionLine {
            what: "spin speed",
            value,
            sound: 12.34,
            unit,
            ok: false,
        };
        sentence(&line).words
    };
    assert_eq!(line(9.87, "s"), "spin speed: 9.9 s, a sound one 12 s");
    assert_eq!(line(98.7, "s"), "spin speed: 99 s, a sound one 12 s");
    assert_eq!(
        line(3.0, TIMES),
        "spin speed: 3 times, a sound one 12 times"
    );
}

#[test]
fn what_a_customer_would_say_is_heard_as_what_the_machine_shows() {
    let cases: [(&str, Symptom); 17] = [
        ("I press start and no water comes.", Symptom::NoFill),
        ("It takes ages to fill.", Symptom::SlowFill),
        ("There is far too much water in it.", Symptom::Overfills),
        ("It washes with too little water.", Symptom::LittleWater),
        ("It washes feebly, not as it used to.", Symptom::WeakWash),
        (
            "The basket goes round with the washing and things get torn.",
            Symptom::Creeps,
        ),
        ("It takes long to empty.", Symptom::SlowDrain),
        ("The water stays in it.", Symptom::NoDrain),
        (
            "It washes and empties, but it does not spin.",
            Symptom::NoSpin,
        ),
        ("It spins more slowly than it did.", Symptom::WeakSpin),
        (
            "When it should spin it stops, takes water again and tries over and over.",
            Symptom::Spreads,
        ),
        ("It bangs and walks when it spins.", Symptom::Shakes),
        ("The washing comes out dripping.", Symptom::WeakSpin),
        ("There is water on the floor.", Symptom::Leaks),
        (
            "It gets hot, stops, and goes on after a while.",
            Symptom::Pauses,
        ),
        (
            "It goes on turning long after I open the lid.",
            Symptom::RunsOn,
        ),
        ("It tingles when I touch it with bare feet.", Symptom::Bites),
    ];
    for (words, symptom) in cases {
        let mut told = Told::default();
        told.hear(words);
        assert!(told.wrong.has(symptom), "{words}");
    }
}
