//! Feeling with the back of the hand: warmth, vibration, looseness.

use crate::bench::notebook::Seen;
use crate::bench::observe::seen;
use crate::machine::Machine;
use crate::text;

pub(super) fn at(machine: &Machine, place: &str) -> Vec<Seen> {
    let plant = machine.plant();
    match place {
        "motor" => vec![warmth(plant.state().heat.core_k)],
        "supply_hose" | "inlet_valve" if machine.valve_energised() => {
            vec![seen(
                "valve_hums",
                text!("the valve trembles with the mains"),
            )]
        }
        "drain_hose" if plant.params().drain.open_ratio < 0.4 => {
            vec![seen(
                "drain_hose_soft_spot",
                text!("the drain hose is squeezed or full of lint at one spot"),
            )]
        }
        "basket" if plant.params().basket.loose_kg_m > 0.0 => {
            vec![seen(
                "basket_tilts",
                text!("the basket tilts on its flange"),
            )]
        }
        "pulsator" if plant.params().pulsator.play_rad > 0.1 => {
            vec![seen(
                "pulsator_lifts",
                text!("the pulsator lifts and rattles"),
            )]
        }
        _ => Vec::new(),
    }
}

fn warmth(core_k: f64) -> Seen {
    match core_k {
        k if k > 343.0 => seen("motor_hot", text!("too hot to touch")),
        k if k > 318.0 => seen("motor_warm", text!("warm")),
        _ => seen("motor_cool", text!("cool")),
    }
}
