//! What hands do around the machine: plug, board, tap, hose, lid, stored charge, water, and what
//! turns.

use crate::app::view::verbs::Candidate;
use crate::app::view::verbs::candidate;
use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::PanelKey;
use crate::bench::action::Turnable;
use crate::bench::visit::EmptyBy;
use crate::bench::words::turnable_name;

/// What hands do to plug, tap, hose, lid, charge and water.
pub(super) fn around(id: &str, list: &mut Vec<Candidate>) {
    let mut add = |word: &str, act: Action| list.push(candidate(word, "", act));
    match id {
        "plug" | "socket" | "mains_cord" => {
            add("pull the plug", Action::Plug { inserted: false });
            add("put the plug in", Action::Plug { inserted: true });
            add("keep it in sight", Action::Secure);
            add(
                "put the splitter lead in",
                Action::Splitter { fitted: true },
            );
            add(
                "take the splitter lead away",
                Action::Splitter { fitted: false },
            );
            add(
                "switch its circuit off at the board",
                Action::HouseSwitch { on: false },
            );
            add("switch its circuit on", Action::HouseSwitch { on: true });
            add("prove the tester on its known source", Action::ProveTester);
            add("put new fuses into the instruments", Action::NewMeterFuse);
            discharge("plug pins", Charged::PlugPins, &mut add);
        }
        "tap" => {
            add("shut the tap", Action::Tap { open: false });
            add("open the tap", Action::Tap { open: true });
            add("bleed the hose into a bucket", Action::BleedHose);
        }
        "supply_hose" | "inlet_filter" => {
            add("bleed it into a bucket", Action::BleedHose);
            add("take the hose off", Action::SupplyHose { attached: false });
            add("screw the hose on", Action::SupplyHose { attached: true });
        }
        "lid" => {
            add("open", Action::Lid { open: true });
            add("shut", Action::Lid { open: false });
        }
        "lid_switch" => {
            add("bridge it", Action::BridgeLid { fitted: true });
            add("take the bridge off", Action::BridgeLid { fitted: false });
        }
        "on_off_switch" => add(
            "press",
            Action::Key {
                key: PanelKey::Power,
            },
        ),
        "motor" | "wash_motor" => add("dry what got wet inside", Action::DryOut),
        "run_capacitor" => discharge("it", Charged::RunCapacitor, &mut add),
        "outer_tub" | "tub" | "basket" => add(
            "bail the water out",
            Action::Empty {
                how: EmptyBy::Bucket,
            },
        ),
        "drain_motor" | "drain_valve" => {
            add(
                "let the water out by the wire",
                Action::Empty {
                    how: EmptyBy::DrainWire,
                },
            );
        }
        _ => {}
    }
}

fn discharge(what: &str, charged: Charged, add: &mut impl FnMut(&str, Action)) {
    add(
        &format!("discharge {what} with the resistor"),
        Action::Discharge {
            what: charged,
            tool: DischargeTool::BleedResistor,
        },
    );
    add(
        &format!("short {what} with a screwdriver"),
        Action::Discharge {
            what: charged,
            tool: DischargeTool::Screwdriver,
        },
    );
}

/// What turns or moves by hand.
pub(super) fn hands(id: &str, list: &mut Vec<Candidate>) {
    let whats: &[Turnable] = match id {
        "pulsator" => &[Turnable::Pulsator],
        "basket" => &[Turnable::Basket],
        "motor_pulley" | "wash_motor" => &[Turnable::MotorPulley],
        "belt" => &[Turnable::Belt],
        "drain_motor" => &[Turnable::DrainWire],
        "clutch_lever" => &[Turnable::ClutchLever],
        "outer_tub" | "tub" | "suspension_rods" => &[Turnable::Tub],
        "out_of_balance_switch" | "balance_switch" => &[Turnable::BalanceLever],
        _ => &[],
    };
    for what in whats {
        list.push(candidate(
            turnable_name(*what),
            "",
            Action::Turn { what: *what },
        ));
    }
}
