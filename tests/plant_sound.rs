//! What the machine sounds like when something is wrong with it: the sources that are there,
//! the ones that are not, and their tones.

use tubwright::plant::drive::MotorInput;
use tubwright::plant::motor_table::{MotorPoint, MotorTable};
use tubwright::plant::params::PlantParams;
use tubwright::plant::sound::{self, SoundKind, SoundSource};
use tubwright::plant::{Plant, PlantInputs};

/// A four-pole motor of 2 N·m pull-out: Kloss's form, published.
fn motor() -> MotorTable {
    let samples: Vec<MotorPoint> = MotorTable::sample_speeds_rad_per_s(257)
        .map(|speed| {
            let slip = 1.0 - speed / (50.0 * std::f64::consts::PI) + 1e-9;
            let torque_n_m = 4.0 / (slip / 0.33 + 0.33 / slip);
            MotorPoint {
                torque_n_m,
                line_a: 0.6 + 2.0 * slip.abs(),
                ..MotorPoint::default()
            }
        })
        .collect();
    MotorTable::from_samples(&samples, 293.15).expect("finite")
}

/// Sources after washing one way (or spinning) for `seconds` with changed parameters.
fn heard(changes: &[(&str, f64)], is_spin: bool, seconds: u32) -> Vec<SoundSource> {
    let table = motor();
    let mut p = PlantParams::typical();
    for (name, value) in changes {
        p.set(name, *value).unwrap_or_else(|e| panic!("{e}"));
    }
    let mut plant = Plant::new(p);
    if is_spin {
        plant.wet_load_kg(8.0);
    } else {
        plant.pour_kg(50.0);
    }
    let hand_stroke_m = if is_spin { 0.017 } else { 0.0 };
    let motor = MotorInput::On {
        table: &table,
        is_forward: true,
    };
    (0..10 * seconds).for_each(|_| {
        plant.tick(&PlantInputs {
            motor,
            hand_stroke_m,
            ..PlantInputs::IDLE
        })
    });
    sound::sources(plant.params(), &plant.readings(), 50.0)
}

fn level_db(sources: &[SoundSource], kind: SoundKind) -> Option<f64> {
    sources
        .iter()
        .find(|source| source.kind == kind)
        .map(|source| source.level_db)
}

#[test]
fn a_machine_at_rest_is_silent() {
    let plant = Plant::new(PlantParams::typical());
    assert!(sound::sources(plant.params(), &plant.readings(), 50.0).is_empty());
}

#[test]
fn the_gear_is_heard_in_wash_and_silent_in_spin() {
    assert!(level_db(&heard(&[], false, 5), SoundKind::Gear).is_some());
    assert!(level_db(&heard(&[], true, 60), SoundKind::Gear).is_none());
}

#[test]
fn a_loose_belt_squeals_and_a_worn_clutch_slips_silently() {
    let loose = heard(&[("belt.tension_n", 12.0)], true, 5);
    assert!(level_db(&loose, SoundKind::BeltSqueal).is_some());
    let worn = heard(&[("clutch.torque_n_m", 1.0)], true, 5);
    assert!(level_db(&worn, SoundKind::BeltSqueal).is_none());
}

#[test]
fn a_rough_basket_bearing_roars_at_its_race_rate() {
    let sound = level_db(&heard(&[], true, 60), SoundKind::BasketBearing).expect("spinning");
    let sources = heard(&[("basket.bearing_n_m", 1.3)], true, 60);
    let rough = sources
        .iter()
        .find(|s| s.kind == SoundKind::BasketBearing)
        .expect("spinning");
    assert!(rough.level_db > sound + 10.0);
    // 3.052 passes a turn: data sheet, section 8.
    let air = sources
        .iter()
        .find(|s| s.kind == SoundKind::SpinAir)
        .expect("spinning");
    assert!((rough.beat_hz / air.beat_hz - 3.052).abs() < 1e-3);
}

#[test]
fn a_stalled_motor_hums_louder_than_a_running_one() {
    let running = level_db(&heard(&[], false, 5), SoundKind::Hum).expect("live");
    let stalled = level_db(
        &heard(&[("rotor.friction_n_m", 50.0)], false, 5),
        SoundKind::Hum,
    )
    .expect("live");
    assert!(stalled > running + 10.0);
}

#[test]
fn a_stone_under_the_pulsator_scrapes_in_wash_only() {
    let stone = [("pulsator.scrape_n_m", 1.0)];
    assert!(level_db(&heard(&stone, false, 5), SoundKind::Scraping).is_some());
    assert!(level_db(&heard(&stone, true, 60), SoundKind::Scraping).is_none());
}
