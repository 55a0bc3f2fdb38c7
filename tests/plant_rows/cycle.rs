//! Whole cycles and what they were like; rows and data sheet section 10.

use tubwright::plant::drive::MotorInput;
use tubwright::plant::motor_table::MotorTable;
use tubwright::plant::params::PlantParams;
use tubwright::plant::{Plant, TICK_S};
use tubwright::units::{CELSIUS_ZERO_K, rpm_from_rad_per_s};

use crate::controller::{Controller, Step};
use crate::machine::reference;
use crate::motor::StandIn;
use crate::prose::Prose;

/// What a whole cycle was like.
#[derive(Debug, Clone, Default)]
pub struct Record {
    pub fill_s: f64,
    pub level_after_fill_m: f64,
    pub hz_after_fill: f64,
    pub pulsator_rpm: f64,
    pub motor_rpm: f64,
    pub wash_line_a: f64,
    pub creep_rpm: f64,
    pub drain_s: f64,
    pub spin_rpm: f64,
    pub spin_line_a: f64,
    pub moisture: f64,
    pub moisture_first: f64,
    pub hottest_degc: f64,
    pub n_trips: u32,
    pub rim_mm: f64,
    pub n_unbalance: u32,
    pub n_topups: u32,
    pub water_l: f64,
    pub energy_wh: f64,
    pub end: &'static str,
    pub end_s: f64,
}

#[derive(Default)]
struct Samples {
    pulsator: Vec<f64>,
    motor: Vec<f64>,
    wash_a: Vec<f64>,
    spin_a: Vec<f64>,
}

/// Runs a normal cycle and describes it.
pub fn run(params: PlantParams, table: &MotorTable) -> Record {
    let mut k = Controller::new(params.drain.pump_fitted_ratio > 0.5);
    let mut plant = Plant::new(params);
    let mut r = Record {
        end: "running",
        ..Record::default()
    };
    let mut samples = Samples::default();
    let (mut is_first_fill, mut is_first_drain) = (true, true);
    for n in 0..54_000_u32 {
        let (step, since_s) = (k.now, k.since_s);
        let u = k.tick(&plant, table);
        if k.is_over() && step == k.now {
            r.end = if let Step::Alarm(words) = k.now {
                words
            } else {
                "END"
            };
            r.end_s = f64::from(n) * TICK_S;
            break;
        }
        plant.tick(&u);
        note(&mut r, &mut samples, &plant, step, since_s, u.motor);
        if step != k.now {
            let seen = plant.readings();
            if matches!(step, Step::Fill(_)) && is_first_fill {
                is_first_fill = false;
                r.fill_s = since_s + TICK_S;
                r.level_after_fill_m = seen.level_m;
                r.hz_after_fill = seen.sensor_hz;
            }
            if step == Step::Drain && is_first_drain {
                is_first_drain = false;
                r.drain_s = since_s + TICK_S;
            }
            if matches!(step, Step::Spin(_)) && r.moisture_first <= 0.0 {
                r.moisture_first = seen.moisture_ratio;
            }
        }
    }
    let seen = plant.readings();
    assert!(plant.state().is_finite());
    r.pulsator_rpm = percentile_95(&mut samples.pulsator);
    r.motor_rpm = percentile_95(&mut samples.motor);
    r.wash_line_a = mean(&samples.wash_a);
    r.spin_line_a = mean(&samples.spin_a[samples.spin_a.len().saturating_sub(500)..]);
    r.moisture = seen.moisture_ratio;
    r.n_trips = seen.n_trips;
    r.n_unbalance = k.n_unbalance;
    r.n_topups = k.n_topups;
    r.water_l = plant.state().tub.supplied_kg / 0.9982;
    r
}

fn note(
    r: &mut Record,
    samples: &mut Samples,
    plant: &Plant,
    step: Step,
    since_s: f64,
    motor: MotorInput<'_>,
) {
    let seen = plant.readings();
    let is_on = matches!(motor, MotorInput::On { .. });
    if is_on {
        r.energy_wh += seen.input_w * TICK_S / 3600.0;
    }
    r.hottest_degc = r.hottest_degc.max(seen.winding_k[0] - CELSIUS_ZERO_K);
    r.rim_mm = r.rim_mm.max(1e3 * seen.rim_m);
    match step {
        Step::Agitate(_) => {
            samples
                .pulsator
                .push(rpm_from_rad_per_s(seen.pulsator_rad_per_s.abs()));
            samples
                .motor
                .push(rpm_from_rad_per_s(seen.rotor_rad_per_s.abs()));
            if is_on && !seen.is_protector_open {
                samples.wash_a.push(seen.line_a);
            }
            r.creep_rpm = r
                .creep_rpm
                .max(rpm_from_rad_per_s(seen.basket_rad_per_s.abs()));
        }
        Step::Spin(_) | Step::Pulses => {
            r.spin_rpm = r.spin_rpm.max(rpm_from_rad_per_s(seen.basket_rad_per_s));
            if matches!(step, Step::Spin(_)) && since_s > 30.0 && !seen.is_protector_open {
                samples.spin_a.push(seen.line_a);
            }
        }
        _ => {}
    }
}

fn percentile_95(values: &mut [f64]) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len() * 95 / 100).copied().unwrap_or(0.0)
}

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len().max(1) as f64
}

pub fn answer(q: &str, c: &Prose) -> Option<f64> {
    if !c.says("cycle") && !c.says("first spin") {
        return None;
    }
    let mut p = reference();
    p.load.dry_kg = c.of("kg").unwrap_or(4.0);
    p.inlet.supply_pa = 1e6 * c.of("MPa").unwrap_or(0.3);
    let r = run(p, &StandIn::healthy().table());
    match q {
        "cycle time" => Some(r.end_s),
        "water used" => Some(r.water_l),
        "moisture" => Some(r.moisture_first),
        _ => None,
    }
}

#[test]
fn a_normal_cycle_agrees_with_the_data_sheet() {
    // Plant data sheet section 10: model against independent piecewise solution.
    let r = run(reference(), &StandIn::healthy().table());
    let close = |got: f64, want: f64, allowed: f64| (got - want).abs() <= allowed;
    assert_eq!(r.end, "END");
    assert!(close(r.end_s, 3062.1, 4.0), "{r:?}");
    assert!(close(r.water_l, 140.6, 0.4), "{r:?}");
    assert!(
        close(r.moisture_first, 0.986, 0.004) && close(r.moisture, 0.777, 0.002),
        "{r:?}"
    );
    assert!(
        close(r.energy_wh, 144.0, 1.5) && close(r.hottest_degc, 80.7, 1.0),
        "{r:?}"
    );
    assert!(
        close(r.spin_rpm, 768.6, 1.0) && close(r.rim_mm, 4.1, 0.3),
        "{r:?}"
    );
}
