//! A job in perfect order: where every situation starts, and what breaks no rule.

use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::DeadProof;
use crate::bench::safety::situation::Handling;
use crate::bench::safety::situation::Machine;
use crate::bench::safety::situation::Motion;
use crate::bench::safety::situation::Probe;
use crate::bench::safety::situation::ProbeMode;
use crate::bench::safety::situation::Proof;
use crate::bench::safety::situation::Site;
use crate::bench::safety::situation::Situation;
use crate::bench::safety::situation::Supply;
use crate::bench::safety::situation::Tests;
use crate::bench::safety::situation::Touched;
use crate::bench::safety::situation::Water;

/// Ordinary room, K.
const ROOM_K: f64 = 293.15;

impl Situation {
    /// An act in a job in perfect order: unplugged and secured, proved dead, closed,
    /// tested, dry, nobody near. Breaks no rule, whatever the act.
    pub fn orderly(act: Act) -> Situation {
        Situation {
            act,
            supply: Supply {
                is_plugged: false,
                is_switched_on: false,
                is_secured: true,
                has_tripped_unexplained: false,
            },
            proof: Proof {
                kind: DeadProof::Volts,
                tester_proved_before: true,
                tester_proved_after: true,
                n_pairs: 3,
            },
            touched: Touched {
                reaches_conductors: true,
                voltage_v: 0.0,
                is_capacitor: false,
                capacitor_v: 0.0,
                capacitor_measured: true,
                discharge_ohm: 15_000.0,
                temperature_k: ROOM_K,
                has_sharp_edges: false,
            },
            probe: Probe {
                mode: ProbeMode::Volts,
                voltage_v: 0.0,
                category: 3,
                category_needed: 2,
                leads_are_damaged: false,
                was_checked: true,
                spans_electronics: false,
                dead_test_would_do: false,
            },
            machine: ORDERLY_MACHINE,
            motion: Motion {
                basket_rad_per_s: 0.0,
                motor_rad_per_s: 0.0,
            },
            water: Water {
                tap_is_open: false,
                inlet_hose_is_on: true,
                hose_pressure_is_released: true,
                tub_m3: 0.0,
                tub_temperature_k: ROOM_K,
                has_catch_tray: true,
                sealant_has_set: true,
                floor_is_wet: false,
            },
            site: ORDERLY_SITE,
            handling: ORDERLY_HANDLING,
            tests: ORDERLY_TESTS,
        }
    }
}

const ORDERLY_MACHINE: Machine = Machine {
    n_covers_off: 0,
    n_fasteners_left: 0,
    n_earth_links_off: 0,
    n_unsealed_joints: 0,
    has_weeping_joint: false,
    lid_is_bridged: false,
    lid_is_open: false,
    was_seen_spinning_open: false,
    has_wet_electrics: false,
    has_loose_items: false,
    fuse_is_oversized: false,
    capacitor_is_underrated: false,
};

const ORDERLY_SITE: Site = Site {
    socket_was_tested: true,
    earth_is_known_missing: false,
    socket_is_seen_scorched: false,
    danger_is_noticed: false,
    has_bystander: false,
    has_seen_house_defect: false,
    house_defect_was_told: false,
};

const ORDERLY_HANDLING: Handling = Handling {
    has_help_or_strap: true,
    cover_is_supported: true,
    is_tilted: false,
    is_propped: true,
    floor_is_protected: true,
    has_gloves: true,
};

/// Limits: class I appliance with a cord up to 5 m. Published: EN 50699, from memory.
const ORDERLY_TESTS: Tests = Tests {
    work_was_done: true,
    joint_was_opened: false,
    lid_stop_matters: false,
    earth_bond_ohm: Some(0.05),
    earth_bond_limit_ohm: 0.3,
    insulation_ohm: Some(500.0e6),
    insulation_limit_ohm: 1.0e6,
    leakage_a: Some(0.25e-3),
    leakage_limit_a: 3.5e-3,
    function_was_run: true,
    joints_were_tried: true,
    lid_stop_was_tried: true,
    is_put_out_of_use: false,
    is_labelled: true,
};
