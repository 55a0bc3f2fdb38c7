//! Rows of the drive: belt, gear, pulsator, basket, brake, extraction.

use std::f64::consts::PI;

use tubwright::plant::drive::{self, MotorInput};
use tubwright::plant::motor_table::MotorTable;
use tubwright::plant::params::PlantParams;
use tubwright::plant::{Plant, PlantInputs, drying, load, swing};
use tubwright::units::{rad_per_s_from_rpm, rpm_from_rad_per_s};

use crate::machine::{forward, pulled, reference, time_until};
use crate::motor::{Capacitor, StandIn};
use crate::prose::Prose;

pub fn answer(q: &str, c: &Prose) -> Option<f64> {
    Some(match q {
        "relative centrifugal force" => {
            let (cm, rpm) = (c.of("cm")?, c.of("r/min")?);
            if c.says("e-5") {
                1.118e-5 * cm * rpm * rpm
            } else {
                drying::g_ratio(rad_per_s_from_rpm(rpm), 0.01 * cm)
            }
        }
        "motor torque" => stand_in(c).solve(speed(c)).point.torque_n_m,
        "line current" => stand_in(c).solve(speed(c)).point.line_a,
        "capacitor voltage" => stand_in(c).solve(speed(c)).capacitor_v,
        "2f torque ripple amplitude" => stand_in(c).solve(speed(c)).ripple_n_m,
        "core + rotor loss" => {
            let point = stand_in(c).solve(speed(c)).point;
            point.input_w - point.copper_1_w - point.copper_2_w - point.torque_n_m * speed(c)
        }
        "wrap angle small pulley" => drive::wrap_rad(&belted(c).belt) * 180.0 / PI,
        "tension ratio" => drive::belt_tension_ratio(&belted(c).belt),
        "belt torque limit at motor pulley" => drive::belt_torque_n_m(&belted(c).belt, speed(c)),
        "belt pitch length" => 1e3 * drive::belt_length_m(&belted(c).belt),
        "belt strand tone" => drive::strand_tone_hz(&belted(c).belt),
        "V-belt power" => v_belt_kw(c)?,
        "gear tooth rate" => tubwright::plant::sound::gear_tone_hz(&reference(), speed(c)),
        "pulsator speed" if c.after("motor").is_some() => {
            let p = reference();
            let ratio = p.belt.large_pulley_m / p.belt.small_pulley_m * p.gear.ratio_ratio;
            c.after("motor")? / ratio
        }
        "pulsator speed" => rpm_from_rad_per_s(washed(c).state().drive.pulsator_rad_per_s),
        "swirl speed" => rpm_from_rad_per_s(washed(c).state().drive.swirl_rad_per_s),
        "pulsator load torque" => load_torque_n_m(&washed(c)),
        "motor speed" => rpm_from_rad_per_s(washed(c).state().drive.rotor_rad_per_s),
        "belt slip power" => washed(c).readings().slip_w,
        "standstill torque at pulsator" => {
            let p = reference();
            let ratio = p.belt.large_pulley_m / p.belt.small_pulley_m * p.gear.ratio_ratio;
            let stalled = stand_in(c).solve(0.0).point.torque_n_m;
            stalled * ratio * p.belt.efficiency_ratio * p.gear.efficiency_ratio
        }
        "spin speed" => rpm_from_rad_per_s(spun(c, 4.8, false).state().drive.basket_rad_per_s),
        "basket speed" => {
            let start_kg = c.after("from").unwrap_or(2.2) * loaded(c).load.dry_kg;
            rpm_from_rad_per_s(spun(c, start_kg, true).state().drive.basket_rad_per_s)
        }
        "spin-up time" => spin_up_s(c)?,
        q if q.starts_with("largest bearing torque") => largest_bearing_n_m(c),
        "brake stop time" => stop_s(c, 0.0)?,
        "coast-down time" => stop_s(c, *c.all("r/min").last()?)?,
        "kinetic energy" => {
            let w = speed(c);
            let polar = swing::body(&loaded(c), 0.0, wet_kg(c)).polar_kg_m2;
            0.5 * polar * w * w
        }
        "equilibrium moisture" => {
            let p = reference();
            drying::equilibrium_ratio(
                &p.drying,
                p.load.drained_ratio,
                drying::g_ratio(speed(c), p.basket.radius_m),
            )
        }
        "moisture" if c.says("constant") => moisture(c)?,
        "moisture" if !c.says("first spin") && c.of("s").is_some() => {
            let start_kg = c.after("from").unwrap_or(2.2) * loaded(c).load.dry_kg;
            spun(c, start_kg, true).readings().moisture_ratio
        }
        _ => return None,
    })
}

/// The rows' motor with the supply and capacitor the conditions name.
pub fn stand_in(c: &Prose) -> StandIn {
    let capacitor = if c.says("capacitor open") {
        Capacitor::Open
    } else if c.says("capacitor short") {
        Capacitor::Short
    } else {
        Capacitor::Farad(1e-6 * c.of("uF").unwrap_or(12.0))
    };
    StandIn {
        supply_v: c.of("V").unwrap_or(230.0),
        capacitor,
    }
}

pub fn speed(c: &Prose) -> f64 {
    rad_per_s_from_rpm(c.of("r/min").unwrap_or(0.0))
}

/// Belt as the conditions say.
fn belted(c: &Prose) -> PlantParams {
    let mut p = loaded(c);
    let belt = &mut p.belt;
    if let [small, .., centre] = c.all("mm")[..] {
        // "60/112 mm, 190 mm" leaves the first number without a unit.
        let first = c.values()[0];
        belt.small_pulley_m = 1e-3 * first;
        belt.large_pulley_m = 1e-3 * small;
        belt.centre_m = 1e-3 * centre;
    }
    belt.tension_n = c
        .after("tension")
        .or_else(|| c.after("strand"))
        .or_else(|| c.of("N"))
        .unwrap_or(belt.tension_n);
    belt.friction_ratio = c.after("mu").unwrap_or(belt.friction_ratio);
    belt.groove_rad = c
        .after("groove")
        .map_or(belt.groove_rad, |deg| deg * PI / 180.0);
    belt.mass_kg_per_m = c.of("kg/m").unwrap_or(belt.mass_kg_per_m);
    p
}

/// Equal pulleys, tension from the permitted stress: the published example's belt.
fn v_belt_kw(c: &Prose) -> Option<f64> {
    let mut belt = belted(c).belt;
    let diameter_m = 1e-3 * c.of("mm")?;
    belt.small_pulley_m = diameter_m;
    belt.large_pulley_m = diameter_m;
    let speed_m_per_s = speed(c) * diameter_m / 2.0;
    let area_m2 = 1e-6 * c.of("mm2")?;
    let centrifugal_n = 1e3 * c.of("t/m3")? * area_m2 * speed_m_per_s * speed_m_per_s;
    let tight_n = 1e6 * c.of("MPa")? * area_m2 - centrifugal_n;
    let pull_n = tight_n * (1.0 - 1.0 / drive::belt_tension_ratio(&belt));
    let n_belts = c.values().into_iter().next()?;
    Some(1e-3 * n_belts * pull_n * speed_m_per_s)
}

/// Load as the conditions say, with water held where it is.
fn loaded(c: &Prose) -> PlantParams {
    let mut p = reference();
    p.load.dry_kg = c
        .after("load")
        .or_else(|| c.after("overload"))
        .or_else(|| dry_alone(c))
        .unwrap_or(4.0);
    p.load.wetting_s = 10_000.0;
    p
}

/// "…, 6.5 kg, steady": a mass that no word introduces.
fn dry_alone(c: &Prose) -> Option<f64> {
    if c.says("load") { None } else { c.of("kg") }
}

/// Water in the load: the number after the plus, or the one "with … kg water".
fn wet_kg(c: &Prose) -> f64 {
    let named = if c.says("+") {
        c.second_after("load")
    } else {
        c.all("kg").get(1).copied()
    };
    named.unwrap_or(3.1)
}

/// Free and textile water in wash: "42+10 kg water", or what the rows use for that load.
fn wash_water_kg(c: &Prose, dry_kg: f64) -> (f64, f64) {
    let values = c.values();
    let total = c.all("kg");
    if c.says("kg water")
        && let Some(textile) = total.get(1)
        && let Some(at) = values.iter().position(|v| (v - textile).abs() < 1e-12)
        && at > 0
    {
        return (values[at - 1], *textile);
    }
    if dry_kg > 6.0 {
        (33.0, 16.0)
    } else {
        (42.0, 10.0)
    }
}

/// A machine that has washed as the conditions say.
fn washed(c: &Prose) -> Plant {
    let p = belted(c);
    let (free, textile) = wash_water_kg(c, p.load.dry_kg);
    let table = stand_in(c).table();
    let mut plant = Plant::new(p);
    plant.pour_kg(free);
    plant.wet_load_kg(textile);
    let (on_s, off_s) = (c.after("on").unwrap_or(1.4), c.after("off").unwrap_or(0.7));
    let is_steady = c.says("steady");
    let end_s = if is_steady {
        60.0
    } else {
        c.after("t").unwrap_or(1.4)
    };
    for n in 0..(end_s * 10.0).round() as u32 {
        let phase = (f64::from(n) * 0.1 + 1e-9) % (2.0 * (on_s + off_s));
        let motor = if is_steady || phase < on_s - 1e-6 {
            forward(&table)
        } else if phase >= on_s + off_s - 1e-6 && phase < 2.0 * on_s + off_s - 1e-6 {
            MotorInput::On {
                table: &table,
                is_forward: false,
            }
        } else {
            MotorInput::Off
        };
        plant.tick(&PlantInputs {
            motor,
            ..PlantInputs::IDLE
        });
    }
    plant
}

fn load_torque_n_m(plant: &Plant) -> f64 {
    let (p, s) = (plant.params(), plant.state());
    let dw = s.drive.pulsator_rad_per_s - s.drive.swirl_rad_per_s;
    let textile = load::textile_torque_n_m(&p.load, s.tub.free_kg, s.tub.textile_kg);
    let width = p.load.slip_rad_per_s;
    p.pulsator.drag_n_m_s2 * dw * dw.abs() + textile * dw / (dw * dw + width * width).sqrt()
}

/// A basket at rest with its clutch closed and water held in the load.
fn basket(c: &Prose, textile_kg: f64) -> Plant {
    let mut p = loaded(c);
    p.drying.time_s = 100_000.0;
    let mut plant = Plant::new(p);
    plant.wet_load_kg(textile_kg);
    plant.tick(&pulled(MotorInput::Off));
    plant
}

/// A basket spun from rest for the seconds named; its water held unless it may leave.
fn spun(c: &Prose, textile_kg: f64, dries: bool) -> Plant {
    let table = stand_in(c).table();
    let seconds = c
        .after("t")
        .or_else(|| c.all("s").last().copied())
        .unwrap_or(300.0);
    let mut plant = basket(c, textile_kg);
    if dries {
        plant
            .set("drying.time_s", reference().drying.time_s)
            .expect("in range");
    }
    if let Some(bearing_n_m) = c.after("bearing") {
        plant
            .set("basket.bearing_n_m", bearing_n_m)
            .expect("in range");
    }
    (0..(seconds * 10.0) as u32).for_each(|_| plant.tick(&pulled(forward(&table))));
    plant
}

fn spin_up_s(c: &Prose) -> Option<f64> {
    let table = stand_in(c).table();
    let mut plant = basket(c, wet_kg(c));
    Some(time_until(
        &mut plant,
        &pulled(forward(&table)),
        |m| m.state().drive.basket_rad_per_s,
        speed(c),
        1000.0,
    ))
}

fn starts(c: &Prose, table: &MotorTable, bearing_n_m: f64) -> bool {
    let mut plant = basket(c, 4.8);
    plant
        .set("basket.bearing_n_m", bearing_n_m)
        .expect("in range");
    (0..100).for_each(|_| plant.tick(&pulled(forward(table))));
    plant.state().drive.basket_rad_per_s > 0.3
}

fn largest_bearing_n_m(c: &Prose) -> f64 {
    let table = stand_in(c).table();
    let (mut low, mut high) = (0.0, 20.0);
    for _ in 0..30 {
        let mid = 0.5 * (low + high);
        if starts(c, &table, mid) {
            low = mid
        } else {
            high = mid
        }
    }
    low
}

/// Brakes or coasts from the first speed named down to `to_rpm`.
fn stop_s(c: &Prose, to_rpm: f64) -> Option<f64> {
    let from = rad_per_s_from_rpm(*c.values().first()?);
    let table = StandIn {
        supply_v: 253.0,
        ..StandIn::healthy()
    }
    .table();
    let mut plant = basket(c, wet_kg(c));
    plant.set("actuator.return_m_per_s", 1.0).ok()?;
    plant
        .set("brake.stop_n_m", c.of("N.m").unwrap_or(0.0))
        .ok()?;
    time_until(
        &mut plant,
        &pulled(forward(&table)),
        |m| m.state().drive.basket_rad_per_s,
        from,
        1000.0,
    );
    (0..20).for_each(|_| plant.tick(&pulled(forward(&table))));
    let mut samples = vec![plant.state().drive.basket_rad_per_s];
    while plant.state().drive.basket_rad_per_s > 0.0 && samples.len() < 20_000 {
        plant.tick(&PlantInputs::IDLE);
        samples.push(plant.state().drive.basket_rad_per_s);
    }
    Some(crossing_s(&samples, rad_per_s_from_rpm(to_rpm)) - crossing_s(&samples, from))
}

/// Time at which falling samples 0.1 s apart pass `target`; the last fall goes on straight.
fn crossing_s(samples: &[f64], target: f64) -> f64 {
    let i = samples
        .windows(2)
        .position(|w| w[0] >= target && w[1] <= target)
        .unwrap_or(0);
    let (a, b) = (samples[i], samples[i + 1]);
    let fall = if b <= 0.0 && i > 0 {
        samples[i - 1] - a
    } else {
        a - b
    };
    0.1 * (i as f64 + (a - target) / fall)
}

/// Moisture after spinning at constant speed, integrated over the plant's own rate.
fn moisture(c: &Prose) -> Option<f64> {
    let p = reference();
    let mut textile = p.load.dry_kg * c.after("from")?;
    let seconds = c.of("s")?;
    let dt = 0.01;
    for _ in 0..(seconds / dt) as u32 {
        let rate = |kg| {
            drying::rate_kg_per_s(&p.drying, &p.load, p.basket.radius_m, kg, speed(c))
                .unwrap_or(0.0)
        };
        textile += dt * rate(textile + 0.5 * dt * rate(textile));
    }
    Some(textile / p.load.dry_kg)
}
