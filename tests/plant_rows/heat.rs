//! Rows of heat: copper, winding temperatures, protector.

use tubwright::plant::heat::{self, HeatInputs, HeatState};
use tubwright::plant::params::PlantParams;
use tubwright::units::CELSIUS_ZERO_K;

use crate::drive::{speed, stand_in};
use crate::machine::reference;
use crate::prose::Prose;

const STEP_S: f64 = 0.1;

pub fn answer(q: &str, c: &Prose) -> Option<f64> {
    Some(match q {
        "winding resistance" => {
            let mut p = reference().heat;
            p.copper_per_k = c.after("alpha").unwrap_or(p.copper_per_k);
            let [from, to] = c.all("C")[..] else {
                return None;
            };
            let ratio = |t: f64| heat::copper_ratio(&p, t + CELSIUS_ZERO_K);
            c.of("ohm")? * ratio(to) / ratio(from)
        }
        "winding temperature by resistance" => {
            // Published: resistance method, T2 = R2/R1 (k + T1) − k.
            let ([cold, hot], k) = (
                c.all("ohm")[..].try_into().ok()?,
                c.after("k").unwrap_or(235.0),
            );
            let _: (f64, f64) = (cold, hot);
            hot / cold * (k + c.of("C")?) - k
        }
        "1/alpha - 20" => 1.0 / reference().heat.copper_per_k - 20.0,
        "winding temperature" => run(c).winding_k[0] - CELSIUS_ZERO_K,
        "core temperature" => run(c).core_k - CELSIUS_ZERO_K,
        "time to protector trip" => until(c, &mut cold(), true, true),
        "time to protector reset" => {
            let mut s = cold();
            until(c, &mut s, true, true);
            until(c, &mut s, false, false)
        }
        "time to second trip" => {
            let mut s = cold();
            until(c, &mut s, true, true);
            until(c, &mut s, false, false);
            until(c, &mut s, true, true)
        }
        _ => return None,
    })
}

fn cold() -> HeatState {
    heat::cold(reference().site.air_k)
}

fn powers(c: &Prose, is_on: bool) -> HeatInputs {
    let w = if c.says("locked") || !is_on {
        0.0
    } else {
        speed(c)
    };
    let point = if is_on {
        stand_in(c).solve(w).point
    } else {
        Default::default()
    };
    HeatInputs {
        copper_w: [point.copper_1_w, point.copper_2_w],
        copper_k: 293.15,
        input_w: point.input_w,
        shaft_w: point.torque_n_m * w,
        rotor_rad_per_s: w,
        air_k: reference().site.air_k,
    }
}

fn advance(p: &PlantParams, s: &mut HeatState, u: &HeatInputs) {
    let lag_share = 1.0 - libm::exp(-STEP_S / p.heat.protector_lag_s);
    heat::step(&p.heat, s, u, STEP_S, lag_share);
}

/// Continuous running for the seconds named, or until steady.
fn run(c: &Prose) -> HeatState {
    let p = reference();
    let mut s = heat::cold(c.after("from").map_or(p.site.air_k, |t| t + CELSIUS_ZERO_K));
    let u = powers(c, true);
    let seconds = if c.says("steady") {
        30_000.0
    } else {
        c.of("s").unwrap_or(0.0)
    };
    (0..(seconds / STEP_S) as u32).for_each(|_| advance(&p, &mut s, &u));
    s
}

/// Time until the protector stands as wanted, s.
fn until(c: &Prose, s: &mut HeatState, is_on: bool, is_open: bool) -> f64 {
    let p = reference();
    let u = powers(c, is_on);
    let mut n = 0;
    while s.is_open != is_open && n < 100_000 {
        advance(&p, s, &u);
        n += 1;
    }
    f64::from(n) * STEP_S
}
