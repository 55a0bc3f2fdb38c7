//! Cases of the rules about switching off, proving dead and stored charge.

use crate::bench::safety::cases::Case;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::DeadProof;

/// One case or more a rule.
pub const CASES: &[Case] = &[
    Case(
        "touched_live",
        Act::Touch,
        |s| s.touched.voltage_v = 230.0,
        |s| s.touched.voltage_v = 40.0,
    ),
    Case(
        "touched_live",
        Act::PullConnector,
        |s| {
            s.touched.voltage_v = 40.0;
            s.water.floor_is_wet = true;
        },
        |s| s.touched.voltage_v = 12.0,
    ),
    Case(
        "worked_inside_switched_on",
        Act::TakeOff,
        |s| {
            s.supply.is_plugged = true;
            s.supply.is_switched_on = true;
        },
        |s| s.supply.is_switched_on = true,
    ),
    Case(
        "switch_taken_for_isolation",
        Act::TakeOff,
        |s| s.supply.is_plugged = true,
        |s| {
            s.supply.is_plugged = true;
            s.supply.is_switched_on = true;
        },
    ),
    Case(
        "cover_off_live",
        Act::OpenCover,
        |s| s.supply.is_plugged = true,
        |_| {},
    ),
    Case(
        "not_secured",
        Act::TakeOff,
        |s| s.supply.is_secured = false,
        |s| {
            s.supply.is_secured = false;
            s.touched.reaches_conductors = false;
        },
    ),
    Case(
        "not_proved_dead",
        Act::Touch,
        |s| s.proof.kind = DeadProof::None,
        |s| {
            s.proof.kind = DeadProof::None;
            s.touched.reaches_conductors = false;
        },
    ),
    Case(
        "contactless_as_proof",
        Act::Touch,
        |s| s.proof.kind = DeadProof::Contactless,
        |s| s.proof.kind = DeadProof::Volts,
    ),
    Case(
        "ohms_as_proof",
        Act::PullConnector,
        |s| s.proof.kind = DeadProof::Ohms,
        |s| s.proof.kind = DeadProof::Volts,
    ),
    Case(
        "tester_not_proved_before",
        Act::Touch,
        |s| s.proof.tester_proved_before = false,
        |s| s.proof.tester_proved_after = false,
    ),
    Case(
        "tester_not_proved_after",
        Act::Touch,
        |s| s.proof.tester_proved_after = false,
        |s| s.proof.tester_proved_before = false,
    ),
    Case(
        "pairs_left_out",
        Act::Touch,
        |s| s.proof.n_pairs = 1,
        |s| s.proof.n_pairs = 3,
    ),
    Case(
        "capacitor_charged",
        Act::Touch,
        |s| {
            s.touched.is_capacitor = true;
            s.touched.capacitor_v = -325.0;
        },
        |s| {
            s.touched.is_capacitor = true;
            s.touched.capacitor_v = 2.6;
        },
    ),
    Case(
        "capacitor_not_measured",
        Act::TakeOff,
        |s| {
            s.touched.is_capacitor = true;
            s.touched.capacitor_measured = false;
        },
        |s| s.touched.capacitor_measured = false,
    ),
    Case(
        "capacitor_shorted",
        Act::Discharge,
        |s| {
            s.touched.capacitor_v = 400.0;
            s.touched.discharge_ohm = 0.01;
        },
        |s| s.touched.capacitor_v = 400.0,
    ),
];
