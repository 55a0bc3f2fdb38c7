//! What holds for the plant whatever happens to it: balances, resting, faults of any severity.

#[path = "plant/catalogue.rs"]
mod catalogue;

use tubwright::plant::drive::MotorInput;
use tubwright::plant::faults::{self, PlantChange};
use tubwright::plant::motor_table::{MotorPoint, MotorTable};
use tubwright::plant::params::PlantParams;
use tubwright::plant::{Plant, PlantInputs};

/// A four-pole motor of 2 N·m pull-out at slip 0.33: Kloss's form, published.
fn motor() -> MotorTable {
    let synchronous = 50.0 * std::f64::consts::PI;
    let samples: Vec<MotorPoint> = MotorTable::sample_speeds_rad_per_s(257)
        .map(|speed| {
            let slip = 1.0 - speed / synchronous + 1e-9;
            let torque_n_m = 4.0 / (slip / 0.33 + 0.33 / slip);
            let copper_w = 60.0 + 90.0 * slip.abs().min(2.0);
            let input_w = torque_n_m * synchronous + copper_w + 40.0;
            let (copper_1_w, copper_2_w) = (0.6 * copper_w, 0.4 * copper_w);
            MotorPoint {
                torque_n_m,
                input_w,
                copper_1_w,
                copper_2_w,
                line_a: 0.6 + 2.0 * slip.abs(),
            }
        })
        .collect();
    MotorTable::from_samples(&samples, 293.15).expect("finite")
}

/// A short day of the machine: fill, agitate, rest, drain, spin with the lid opened, rest.
fn act(n: u32, table: &MotorTable) -> PlantInputs<'_> {
    let idle = PlantInputs::IDLE;
    let pulling = PlantInputs {
        is_actuator_energised: true,
        is_pump_energised: true,
        ..idle
    };
    let turning = |is_forward| MotorInput::On { table, is_forward };
    match n % 4000 {
        0..1200 => PlantInputs {
            is_valve_energised: true,
            ..idle
        },
        n @ 1200..1700 => match n % 42 {
            0..14 => PlantInputs {
                motor: turning(true),
                ..idle
            },
            21..35 => PlantInputs {
                motor: turning(false),
                ..idle
            },
            _ => idle,
        },
        2100..3000 => pulling,
        3000..3400 => PlantInputs {
            motor: turning(true),
            ..pulling
        },
        3600..3620 => PlantInputs {
            hand_stroke_m: 0.017,
            ..idle
        },
        _ => idle,
    }
}

fn hash(plant: &Plant) -> u64 {
    let mut sum = 0xcbf2_9ce4_8422_2325_u64;
    plant.hash_into(&mut |word| sum = (sum ^ word).wrapping_mul(0x0000_0100_0000_01b3));
    sum
}

#[test]
fn advancing_in_any_cut_gives_the_same_bits() {
    let table = motor();
    let mut whole = Plant::new(PlantParams::typical());
    let mut cut = whole.clone();
    let mut at_once = whole.clone();
    for n in 0..8000 {
        whole.tick(&act(n, &table));
    }
    // The same in pieces of uneven length with the same inputs throughout a piece.
    let (mut n, mut piece) = (0_u32, 1_u32);
    while n < 8000 {
        let u = act(n, &table);
        let mut length = 1;
        while length < piece && n + length < 8000 && act(n + length, &table) == u {
            length += 1;
        }
        cut.advance(u64::from(length), &u);
        n += length;
        piece = piece % 97 + 13;
    }
    assert_eq!(hash(&whole), hash(&cut));
    // Rest: a(7) then a(1993) is a(2000).
    for plant in [&mut whole, &mut at_once] {
        plant.pour_kg(30.0);
    }
    let mut parts = whole.clone();
    whole.rest(2000);
    parts.rest(7);
    parts.rest(1993);
    assert_eq!(hash(&whole), hash(&parts));
}

#[test]
fn water_is_neither_made_nor_lost_whatever_leaks() {
    let table = motor();
    let mut p = PlantParams::typical();
    for (name, value) in [
        ("inlet.leak_by_m3_per_s", 5e-6),
        ("inlet.joint_leak_m3_per_s", 1e-6),
        ("tub.seal_leak_m3_per_s", 1e-6),
        ("drain.joint_leak_ratio", 0.2),
        ("drain.leak_m3_per_s", 2e-5),
        ("tub.overflow_m", 0.15),
    ] {
        p.set(name, value).expect("known and in range");
    }
    let mut plant = Plant::new(p);
    for n in 0..12_000 {
        if n == 1500 {
            plant.pour_kg(5.0);
        }
        plant.tick(&act(n, &table));
        let t = &plant.state().tub;
        let accounted = t.free_kg + t.textile_kg + t.drained_kg + t.puddle_kg;
        assert!((accounted - t.supplied_kg).abs() < 1e-9, "tick {n}: {t:?}");
    }
    assert!(plant.state().tub.puddle_kg > 0.1);
}

#[test]
fn electrical_input_covers_the_work_on_the_basket() {
    let table = motor();
    let mut plant = Plant::new(PlantParams::typical());
    (0..60).for_each(|_| {
        plant.tick(&PlantInputs {
            is_actuator_energised: true,
            ..PlantInputs::IDLE
        })
    });
    let mut input_j = 0.0;
    for _ in 0..300 {
        let motor = MotorInput::On {
            table: &table,
            is_forward: true,
        };
        plant.tick(&PlantInputs {
            motor,
            is_actuator_energised: true,
            ..PlantInputs::IDLE
        });
        input_j += plant.readings().input_w * 0.1;
    }
    let w = plant.state().drive.basket_rad_per_s;
    let kinetic_j = 0.5 * plant.body().polar_kg_m2 * w * w;
    assert!(
        kinetic_j > 500.0 && kinetic_j < input_j,
        "{kinetic_j} J of {input_j} J"
    );
}

#[test]
fn a_machine_left_alone_rests_and_cools() {
    let table = motor();
    let mut plant = Plant::new(PlantParams::typical());
    (0..3500).for_each(|n| plant.tick(&act(n, &table)));
    let warm_k = plant.readings().winding_k[0];
    plant.rest(36_000);
    assert!(plant.is_resting(&PlantInputs::IDLE));
    let seen = plant.readings();
    assert!(seen.winding_k[0] < warm_k && seen.rim_m <= 0.0);
    assert!(!plant.state().drive.basket_rad_per_s.is_normal());
}

#[test]
fn no_parameter_at_either_end_of_its_range_breaks_a_number() {
    let table = motor();
    for (part, about) in PlantParams::entries() {
        for value in [about.min, about.max] {
            let name = format!("{part}.{}", about.field);
            let mut p = PlantParams::typical();
            p.set(&name, value).expect("an end of the range");
            let mut plant = Plant::new(p);
            for n in 0..4000 {
                plant.tick(&act(n, &table));
            }
            assert!(
                plant.state().is_finite(),
                "{name} = {value}: {:?}",
                plant.state()
            );
            let speed = plant.state().drive.rotor_rad_per_s.abs();
            assert!(speed < 1e4, "{name} = {value}: rotor {speed}");
            let seen = plant.readings();
            assert!(
                seen.sensor_hz.is_finite() && seen.rim_reach_m.is_finite(),
                "{name} = {value}"
            );
        }
    }
}

#[test]
fn every_catalogued_fault_is_a_change_of_parameters_and_safe_at_any_severity() {
    let table = motor();
    for (number, changes) in catalogue::mechanical_faults() {
        let changes: Vec<PlantChange> = changes
            .into_iter()
            .map(|(param, to)| PlantChange {
                param: param.to_owned(),
                to,
            })
            .collect();
        for severity in [0.0, 0.3, 1.0] {
            let mut p = PlantParams::typical();
            faults::apply(&mut p, &changes, severity)
                .unwrap_or_else(|e| panic!("row {number}: {e}"));
            if severity > 0.0 {
                assert_ne!(p, PlantParams::typical(), "row {number} changes nothing");
            }
            let mut plant = Plant::new(p);
            for n in 0..4000 {
                plant.tick(&act(n, &table));
                assert!(
                    plant.state().is_finite(),
                    "row {number} at {severity}, tick {n}"
                );
            }
        }
    }
}

#[test]
fn every_row_of_the_catalogue_is_either_mechanical_or_named_as_electrical() {
    let mut numbers: Vec<u32> = catalogue::mechanical_faults()
        .into_iter()
        .map(|(n, _)| n)
        .collect();
    numbers.extend(catalogue::ELECTRICAL);
    numbers.sort_unstable();
    numbers.dedup();
    assert_eq!(numbers, (1..=82).collect::<Vec<u32>>());
}
