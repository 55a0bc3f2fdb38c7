//! Turning and moving things by hand: what gives, what holds, what drags.
//!
//! Each answer follows from the torques of the drive as it stands: a hand gives about 8 N·m at the
//! basket and 2 N·m at a pulley (from memory).

use crate::bench::action::Turnable;
use crate::bench::notebook::Seen;
use crate::bench::observe::seen;
use crate::bench::observe::seen_amount;
use crate::machine::Machine;
use crate::plant::actuator;
use crate::plant::params::PlantParams;
use crate::text;

/// Torque a hand gives at the basket's rim, N·m.
const HAND_AT_BASKET_N_M: f64 = 12.0;
/// Torque a hand gives at a pulley, N·m.
const HAND_AT_PULLEY_N_M: f64 = 2.0;

/// The place where a thing is turned or moved.
pub fn place_of(what: Turnable) -> &'static str {
    match what {
        Turnable::Pulsator => "pulsator",
        Turnable::Basket => "basket",
        Turnable::MotorPulley => "motor_pulley",
        Turnable::Belt => "belt",
        Turnable::DrainWire => "drain_motor",
        Turnable::ClutchLever => "clutch_lever",
        Turnable::Tub => "tub",
        Turnable::BalanceLever => "balance_switch",
    }
}

pub(super) fn moved(machine: &Machine, what: Turnable) -> Vec<Seen> {
    match what {
        Turnable::Pulsator => pulsator(machine),
        Turnable::Basket => basket(machine),
        Turnable::MotorPulley => vec![motor_pulley(machine)],
        Turnable::Belt => vec![belt(machine)],
        Turnable::DrainWire => drain_wire(machine),
        Turnable::ClutchLever => clutch_lever(machine),
        Turnable::Tub => vec![tub(machine)],
        Turnable::BalanceLever => vec![balance_lever(machine)],
    }
}

fn pulsator(machine: &Machine) -> Vec<Seen> {
    let params = machine.plant().params();
    let mut list = Vec::new();
    if params.pulsator.scrape_n_m > 4.0 {
        list.push(seen(
            "pulsator_jammed",
            text!("the pulsator is jammed; something is under it"),
        ));
    } else if params.pulsator.scrape_n_m > 0.3 {
        list.push(seen("pulsator_scrapes", text!("the pulsator scrapes")));
    } else if params.pulsator.spline_n_m < 5.0 {
        list.push(seen(
            "pulsator_slips",
            text!("the pulsator slips on its shaft with a click"),
        ));
    } else {
        list.push(seen(
            "pulsator_turns_freely",
            text!("the pulsator turns with even resistance"),
        ));
    }
    if machine.rotor_seized() && params.belt.tension_n > 3.0 {
        list.push(seen(
            "drive_seized",
            text!("behind the gear something is seized"),
        ));
    }
    list
}

fn basket(machine: &Machine) -> Vec<Seen> {
    let plant = machine.plant();
    let params = plant.params();
    let hold = plant.linkage().brake_ratio * params.brake.hold_n_m;
    let drag = params.basket.bearing_n_m + params.basket.scrape_n_m;
    let mut list = Vec::new();
    if drag > HAND_AT_BASKET_N_M || hold > HAND_AT_BASKET_N_M {
        list.push(seen("basket_held", text!("the basket is held")));
    } else if hold > 2.0 {
        list.push(seen(
            "basket_drags",
            text!("the basket turns but drags on the brake"),
        ));
    } else {
        list.push(seen("basket_free", text!("the basket turns freely")));
    }
    if params.basket.bearing_n_m > 1.7 * machine.model().plant.basket.bearing_n_m {
        list.push(seen(
            "basket_rough",
            text!("it turns roughly, with a rumble"),
        ));
    }
    if params.basket.scrape_n_m > 0.1 {
        list.push(seen("basket_scratches", text!("a scratch once a turn")));
    }
    list
}

fn motor_pulley(machine: &Machine) -> Seen {
    let friction = machine.plant().params().rotor.friction_n_m;
    if machine.rotor_seized() || friction > HAND_AT_PULLEY_N_M {
        seen("motor_seized", text!("the motor shaft does not turn"))
    } else if friction > 0.3 {
        seen("motor_stiff", text!("the motor shaft is stiff"))
    } else {
        seen("motor_free", text!("the motor shaft turns freely"))
    }
}

fn belt(machine: &Machine) -> Seen {
    let tension = machine.plant().params().belt.tension_n;
    if tension < 3.0 {
        return seen("belt_off", text!("there is no belt to press"));
    }
    // Deflection of a span under 7 N at its middle: d = F L / (4 T), span 0.19 m. Closed form.
    let deflection_mm = (7.0 * 0.19 / (4.0 * tension) * 1e3).min(30.0);
    let key = match deflection_mm {
        d if d > 9.0 => "belt_gives_much",
        d if d < 2.5 => "belt_gives_little",
        _ => "belt_gives_right",
    };
    seen_amount(
        key,
        deflection_mm,
        format!("it gives {deflection_mm:.0} mm under a finger"),
    )
}

fn drain_wire(machine: &Machine) -> Vec<Seen> {
    let params = machine.plant().params();
    let stroke_mm = params.actuator.stroke_m * 1e3;
    let mut list = vec![seen_amount(
        "wire_travel",
        stroke_mm.round(),
        format!("the wire travels {stroke_mm:.0} mm"),
    )];
    if params.lever.seated_ratio < 0.5 {
        list.push(seen(
            "lever_stays",
            text!("the clutch lever stays where it is"),
        ));
    } else if brake_at_full_stroke(params) < 0.05 {
        list.push(seen(
            "brake_frees",
            text!("the lever follows and the brake frees"),
        ));
    } else {
        list.push(seen(
            "brake_drags",
            text!("the lever follows but the brake does not free"),
        ));
    }
    list
}

/// Share of the brake still on when the wire is pulled all the way.
fn brake_at_full_stroke(params: &PlantParams) -> f64 {
    let (drain, lever) = (&params.drain, &params.lever);
    let stroke_m = params.actuator.stroke_m;
    actuator::linkage(drain, lever, &params.brake, &params.clutch, stroke_m).brake_ratio
}

fn clutch_lever(machine: &Machine) -> Vec<Seen> {
    let params = machine.plant().params();
    let mut list = Vec::new();
    let free = params.brake.free_m <= params.clutch.grips_m + 0.006;
    list.push(if free {
        seen("lever_frees_brake", text!("moved by hand the brake frees"))
    } else {
        seen(
            "lever_brake_stays",
            text!("moved by hand the brake still holds"),
        )
    });
    list.push(if params.clutch.torque_n_m > 5.0 {
        seen("clutch_grips", text!("the clutch grips"))
    } else {
        seen("clutch_slips", text!("the clutch slips"))
    });
    list
}

fn tub(machine: &Machine) -> Seen {
    let suspension = &machine.plant().params().suspension;
    if suspension.locked_ratio > 0.5 {
        return seen("tub_locked", text!("the tub cannot be pushed"));
    }
    // Swings until a tenth is left: ln 10 / (2π ζ). Closed form; dry friction shortens it.
    let swings = core::f64::consts::LN_10 / (core::f64::consts::TAU * suspension.damping_ratio);
    let swings = swings * suspension.swing_friction_n.max(0.2).recip().min(1.0) * 1.8;
    let key = if swings > 5.0 {
        "tub_swings_long"
    } else {
        "tub_settles"
    };
    seen_amount(
        key,
        swings.round(),
        format!("pushed, it settles after {swings:.0} swings"),
    )
}

fn balance_lever(machine: &Machine) -> Seen {
    if machine.plant().params().suspension.lever_gap_m < 0.0 {
        seen(
            "lever_does_not_spring_back",
            text!("the lever does not spring back"),
        )
    } else {
        seen(
            "lever_springs_back",
            text!("the lever clicks and springs back"),
        )
    }
}
