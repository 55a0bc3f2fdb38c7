//! Rows of the hung tub: frequencies, unbalance, amplitudes, feet.

use std::f64::consts::PI;

use tubwright::plant::params::PlantParams;
use tubwright::plant::swing::{self, Body, body, whirl};
use tubwright::plant::vibration::{self, VibrationInputs, VibrationState};
use tubwright::plant::{Plant, PlantInputs};
use tubwright::units::{STANDARD_GRAVITY_M_PER_S2 as G, rad_per_s_from_rpm, rpm_from_rad_per_s};

use crate::drive::stand_in;
use crate::machine::{forward, pulled, reference};
use crate::prose::Prose;

pub fn answer(q: &str, c: &Prose) -> Option<f64> {
    Some(match q {
        "damping factor" => {
            // Far above resonance the amplitude is me/M, at resonance me/(2 zeta M).
            let [peak, far, ..] = c.all("cm")[..] else {
                return None;
            };
            far / (2.0 * peak)
        }
        "shaft stiffness" => {
            let w = rad_per_s_from_rpm(c.of("r/min")?);
            c.of("kg")? * w * w + 1e-3 * c.of("kg.mm")? * w * w / (1e-3 * c.of("mm")?)
        }
        "force amplitude with dry friction" => dry_force_n(c)?,
        "amplitude with dry friction" => dry_amplitude_mm(c)?,
        "swing frequency" => {
            let mut p = reference();
            p.suspension.rod_m = c.of("m").unwrap_or(p.suspension.rod_m);
            let b = body(&p, 0.0, 0.0);
            (b.swing_n_per_m / b.mass_kg).sqrt() / (2.0 * PI)
        }
        "rocking stiffness" => carried(c).1.rock_n_m,
        "rock frequency" => {
            let (_, b) = carried(c);
            (b.rock_n_m / b.transverse_kg_m2).sqrt() / (2.0 * PI)
        }
        "rock critical speed" => {
            let (_, b) = carried(c);
            rpm_from_rad_per_s((b.rock_n_m / (b.transverse_kg_m2 - b.polar_kg_m2)).sqrt())
        }
        "balance ring capacity" => {
            let mut p = reference();
            p.ring.eccentricity_m = 1e-3 * c.of("mm")?;
            swing::ring_kg(&p.ring) * p.ring.eccentricity_m
        }
        "unbalance left above critical" => unbalance_left_kg_m(c)?,
        "rim amplitude" => 1e3 * rim_m(c)?,
        "swing amplitude, no friction" => free_swing_mm(c)?,
        "peak rim displacement in run-up" => run_up(c)?.0 * 1e3,
        "speed at that peak" => rpm_from_rad_per_s(run_up(c)?.1),
        "tub sink" => {
            let p = reference();
            998.2 * c.of("L")? * G / (4.0 * p.suspension.spring_n_per_m)
        }
        q if q.starts_with("tub lean") => {
            lean_rad(c.of("kg")?, Prose::new(q).of("%")? / 100.0) * 180.0 / PI
        }
        "rim offset from that lean" => 1e3 * c.of("m")? * lean_rad(76.0, 0.70),
        "lever margin left" => lever_margin_mm(c)?,
        "horizontal foot force limit" => {
            let mut p = reference();
            p.site.foot_friction_ratio = c.after("mu").unwrap_or(0.45);
            p.load.dry_kg = c.of("kg").unwrap_or(0.0);
            swing::foot_limit_n(&p, &body(&p, 0.0, 0.0))
        }
        "swing force on cabinet" => swing::foot_force_n(&carried(c).1, 1e-3 * c.of("mm")?),
        _ => return None,
    })
}

/// Load and its water: "4+4.8 kg" unless said otherwise.
fn carried(c: &Prose) -> (PlantParams, Body) {
    let mut p = reference();
    p.load.dry_kg = c.after("load").unwrap_or(4.0);
    let textile = if c.after("load").is_some() {
        c.second_after("load")
    } else {
        None
    };
    let b = body(&p, 0.0, textile.unwrap_or(4.8));
    (p, b)
}

/// Harmonic balance of a mass rubbing on a plane: equivalent damping 4 mu N/(pi w X).
fn dry_force_n(c: &Prose) -> Option<f64> {
    let (m, k, mu) = (c.of("kg")?, c.of("N/m")?, c.after("mu")?);
    let (w, x) = (2.0 * PI * c.of("Hz")?, 1e-3 * c.of("mm")?);
    let r2 = w * w * m / k;
    let rub = 4.0 * mu * m * G / (PI * k * x);
    Some(k * x * ((1.0 - r2) * (1.0 - r2) + rub * rub).sqrt())
}

/// The same mass stepped in time until its swing repeats.
fn dry_amplitude_mm(c: &Prose) -> Option<f64> {
    let (m, k, mu) = (c.of("kg")?, c.of("N/m")?, c.after("mu")?);
    let (w, force) = (2.0 * PI * c.of("Hz")?, dry_force_n(c)?);
    let slope = |t: f64, x: f64, v: f64| {
        (force * libm::cos(w * t) - k * x - mu * m * G * (v / 1e-4).clamp(-1.0, 1.0)) / m
    };
    let (dt, mut t, mut x, mut v, mut peak) = (2e-5, 0.0, 0.0, 0.0, 0.0_f64);
    let (settled, end) = (38.0, 40.0);
    while t < end {
        let a1 = slope(t, x, v);
        let (xm, vm) = (x + 0.5 * dt * v, v + 0.5 * dt * a1);
        let a2 = slope(t + 0.5 * dt, xm, vm);
        x += dt * vm;
        v += dt * a2;
        t += dt;
        if t > settled {
            peak = peak.max(x.abs());
        }
    }
    Some(1e3 * peak)
}

/// Spins the basket well above the critical speed and asks the plant.
fn unbalance_left_kg_m(c: &Prose) -> Option<f64> {
    let mut p = reference();
    p.load.dry_kg = (c.after("suspended")? - p.suspension.mass_kg).max(0.0);
    p.load.unbalance_kg = *c.values().first()?;
    p.load.unbalance_m = c.of("m")?;
    let table = stand_in(c).table();
    let mut plant = Plant::new(p);
    (0..1200).for_each(|_| plant.tick(&pulled(forward(&table))));
    Some(plant.unbalance_kg_m())
}

fn unbalance_of(c: &Prose) -> Option<f64> {
    let whole = c
        .of("kg.m")
        .or_else(|| c.after("U"))
        .or_else(|| Some(c.of("kg")? * 0.19))?;
    if !c.says("ring full") && !c.says("full ring") {
        return Some(whole);
    }
    let p = reference();
    let ring_kg = swing::ring_kg(&p.ring);
    let mass_kg = p.suspension.mass_kg + p.load.dry_kg;
    Some(whole - (whole * ring_kg / (mass_kg + ring_kg)).min(ring_kg * p.ring.eccentricity_m))
}

/// Amplitudes that agree with the dry friction they cause.
fn rim_m(c: &Prose) -> Option<f64> {
    let (p, b) = carried(c);
    let w = c
        .of("rad/s")
        .or_else(|| c.of("r/min").map(rad_per_s_from_rpm))?;
    let u = unbalance_of(c)?;
    let (mut swing, mut rock) = (1e-3, 1e-2);
    for _ in 0..500 {
        let steady = whirl(&p, &b, u, w, swing, rock);
        swing += 0.5 * (steady.swing_m - swing);
        rock += 0.5 * (steady.rock_rad - rock);
    }
    Some(whirl(&p, &b, u, w, swing, rock).rim_m)
}

fn free_swing_mm(c: &Prose) -> Option<f64> {
    let mut p = reference();
    p.suspension.swing_friction_n = 0.0;
    p.suspension.damping_ratio = c.after("zeta")?;
    let b = body(&p, 0.0, 4.8);
    let w = c.after("r")? * (b.swing_n_per_m / b.mass_kg).sqrt();
    Some(1e3 * whirl(&p, &b, c.after("U")?, w, 1.0, 1.0).swing_m)
}

/// Largest rim displacement while the speed rises, and the speed then.
fn run_up(c: &Prose) -> Option<(f64, f64)> {
    let (p, b) = carried(c);
    let (gain, u) = (c.of("rad/s2")?, unbalance_of(c)?);
    let (from, to) = if c.says("->") {
        (*c.values().get(1)?, c.of("rad/s")?)
    } else {
        (1.0, 60.0)
    };
    let dt = 0.002;
    let (mut s, mut angle, mut best) = (VibrationState::default(), 0.0, (0.0, 0.0));
    let mut speed: f64 = from;
    for n in 1..(((to - from) / gain + 5.0) / dt) as u32 {
        let next = (from + gain * dt * f64::from(n)).min(to);
        let step = VibrationInputs {
            unbalance_kg_m: u,
            angle_rad: angle,
            from_rad_per_s: speed,
            to_rad_per_s: next,
        };
        let [x, y] = vibration::step(&p, &b, &mut s, step, dt);
        angle += 0.5 * (speed + next) * dt;
        speed = next;
        let rim = (x * x + y * y).sqrt();
        if rim > best.0 {
            best = (rim, speed);
        }
    }
    Some(best)
}

/// A plate on four springs, one of them weak: heave and tilt along that spring's diagonal.
fn lean_rad(mass_kg: f64, weak_ratio: f64) -> f64 {
    let s = reference().suspension;
    let (k, r) = (s.spring_n_per_m, s.circle_m);
    // Springs at +r (weak), −r and two on the axis: heave z, tilt a.
    let (k_sum, k_moment) = ((3.0 + weak_ratio) * k, (weak_ratio - 1.0) * k * r);
    let k_tilt = (1.0 + weak_ratio) * k * r * r;
    let weight = mass_kg * G;
    // k_sum z + k_moment a = W and k_moment z + k_tilt a = 0.
    (weight * k_moment / (k_sum * k_tilt - k_moment * k_moment)).abs()
}

fn lever_margin_mm(c: &Prose) -> Option<f64> {
    let mut p = reference();
    p.suspension.lever_gap_m = 1e-3 * c.of("mm")?;
    p.site.floor_tilt_rad = c.of("deg")? * PI / 180.0;
    let gap = p.suspension.lever_gap_m;
    let mut plant = Plant::new(p);
    plant.tick(&PlantInputs::IDLE);
    Some(1e3 * (gap - plant.rim_reach_m()))
}
