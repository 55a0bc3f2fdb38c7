//! A machine as it is felt: what can be heard and measured of one whole program.

use std::collections::BTreeSet;

use tubwright::bench::workshop::Effect;
use tubwright::control::io::Key;
use tubwright::machine::Machine;
use tubwright::machine::Probe;
use tubwright::machine::Setup;
use tubwright::plant::harness::Instrument;
use tubwright::scenario::machines;

/// What a technician could notice of a machine over one whole program, and with the earth tester.
#[derive(Debug, PartialEq)]
pub struct Felt {
    /// Kinds of sound with their level in steps of 4 dB.
    pub heard: BTreeSet<String>,
    /// Figures of the whole run, to two digits.
    pub whole: Vec<i64>,
}

/// Rounded to two figures: smaller differences nobody notices.
fn rough(value: f64) -> i64 {
    if value.abs() < 1e-9 {
        return 0;
    }
    let step = 10f64.powf(value.abs().log10().floor() - 1.0);
    ((value / step).round() * step * 1e6).round() as i64
}

/// One program with these effects, at a level and with an unbalance.
pub fn felt(id: &str, effects: &[Effect], (n_level, unbalance_kg): (u32, f64)) -> Felt {
    let mut setup = Setup {
        // An ordinary load never lies quite evenly.
        params: vec![("load.unbalance_kg".to_owned(), unbalance_kg)],
        ..Setup::default()
    };
    for effect in effects {
        match effect {
            Effect::ElementOpen(name) => {
                setup.open.insert(name.clone());
            }
            Effect::ElementValue(name, value) => setup.values.push((name.clone(), *value)),
            Effect::Param(name, value) => setup.overrides.push((name.clone(), *value)),
        }
    }
    let model = &machines().expect("shipped files are sound")[id].model;
    let mut machine = Machine::new(model, setup).expect("known names");
    machine.settle_in(2.5, 293.15);
    machine.stand_ready();
    machine.press_power();
    machine.advance(50);
    for _ in 0..n_level {
        machine.press_key(Key::Level);
        machine.advance(10);
    }
    machine.press_key(Key::Start);
    machine.advance(10);
    let mut heard = BTreeSet::new();
    let (mut fastest, mut leakage_a, mut widest_m, mut live_s) = (0.0_f64, 0.0_f64, 0.0_f64, 0.0);
    let mut turned = 0.0;
    let mut spun_s = 0.0;
    for _ in 0..5400 {
        if machine.is_done() {
            break;
        }
        machine.advance(10);
        let readings = machine.plant().readings();
        fastest = fastest.max(machine.basket_rad_per_s().abs());
        leakage_a = leakage_a.max(machine.leakage_a());
        widest_m = widest_m.max(readings.rim_m);
        live_s += f64::from(u8::from(machine.motor_energised()));
        turned += readings.pulsator_rad_per_s.abs();
        spun_s += f64::from(u8::from(machine.basket_rad_per_s() > 40.0));
        for sound in machine.sounds().iter().filter(|s| s.level_db > 27.0) {
            let level = (sound.level_db / 4.0).round();
            heard.insert(format!("{:?} {level}", sound.kind));
        }
    }
    let bond = |metal: &str| {
        let read = machine.measure(Probe::Bond("PE", metal)).expect("solvable");
        read.value_si.unwrap_or(1e9)
    };
    let insulation = machine
        .measure(Probe::Between(Instrument::Insulation, "MB", "PE"))
        .expect("solvable")
        .value_si
        .unwrap_or(4e9);
    let tilt_rad = machine.plant().params().site.floor_tilt_rad;
    let whole = [
        fastest,
        leakage_a,
        widest_m,
        live_s,
        turned,
        spun_s,
        machine.water_supplied_kg(),
        machine.plant().readings().puddle_kg,
        machine.tick() as f64,
        machine.stop_time_s(),
        bond("CAB"),
        bond("MF"),
        insulation,
        tilt_rad,
    ];
    Felt {
        heard,
        whole: whole.into_iter().map(rough).collect(),
    }
}
