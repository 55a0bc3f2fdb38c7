//! Rules about taps, hoses and full tubs.

use crate::bench::safety::Rule;
use crate::bench::safety::Severity;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::Situation;

/// More than what stays under the drain, m³. Design choice.
const RESIDUE_M3: f64 = 0.002;
/// Water that scalds, K (50 °C). Common practice.
const SCALDING_K: f64 = 323.15;

/// A program is started that can take water in.
fn lets_water_in(s: &Situation) -> bool {
    s.act == Act::Start && s.supply.is_plugged && s.supply.is_switched_on && s.water.tap_is_open
}

/// The rules.
pub const RULES: &[Rule] = &[
    Rule {
        id: "inlet_hose_tap_open",
        severity: Severity::Major,
        title: "Pulled the inlet hose with the tap open",
        why: "Twelve litres a minute, and the ceiling below is the dearest mistake of all.",
        source: "common practice",
        right_way: "Shut the tap, let the pressure down, then pull the hose.",
        is_broken: |s| s.act == Act::PullInletHose && s.water.tap_is_open,
    },
    Rule {
        id: "inlet_hose_under_pressure",
        severity: Severity::Minor,
        title: "Pulled the inlet hose under pressure",
        why: "It sprays, and over what is electrical.",
        source: "common practice",
        right_way: "Open the valve for a moment with the tap shut, or loosen slowly over a bucket.",
        is_broken: |s| {
            s.act == Act::PullInletHose
                && !s.water.tap_is_open
                && !s.water.hose_pressure_is_released
        },
    },
    Rule {
        id: "tap_opened_hose_off",
        severity: Severity::Major,
        title: "Opened the tap with the hose off",
        why: "The room floods before the tap is shut again.",
        source: "common practice",
        right_way: "Screw on both ends, then open slowly and look.",
        is_broken: |s| s.act == Act::OpenTap && !s.water.inlet_hose_is_on,
    },
    Rule {
        id: "water_let_out_on_floor",
        severity: Severity::Minor,
        title: "Opened a water joint without a tray",
        why: "Water on the floor reaches sockets, and makes people fall.",
        source: "common practice",
        right_way: "Bucket, tray and cloth before the clamp is loosened.",
        is_broken: |s| s.act == Act::PullDrainHose && !s.water.has_catch_tray,
    },
    Rule {
        id: "tilted_full",
        severity: Severity::Major,
        title: "Tilted the machine with water in the tub",
        why: "Fifty litres move at once: the machine falls, the water goes over the electrics.",
        source: "common practice",
        right_way: "Drain by the machine; else bail or siphon from above.",
        is_broken: |s| s.act == Act::Tilt && s.water.tub_m3 > RESIDUE_M3,
    },
    Rule {
        id: "hot_water_let_out",
        severity: Severity::Major,
        title: "Let hot water out over hands",
        why: "From 50 °C it scalds within minutes, from 60 °C within seconds.",
        source: "common practice",
        right_way: "Let it cool, or thin it with cold water first.",
        is_broken: |s| {
            s.act == Act::PullDrainHose
                && s.water.tub_m3 > RESIDUE_M3
                && s.water.tub_temperature_k > SCALDING_K
        },
    },
    Rule {
        id: "sealant_not_set",
        severity: Severity::Minor,
        title: "Tried a joint before its sealant had set",
        why: "It lets go now or, worse, next week.",
        source: "common practice",
        right_way: "Give it the time on the tube, then let water in.",
        is_broken: |s| lets_water_in(s) && !s.water.sealant_has_set,
    },
    Rule {
        id: "water_test_unsealed",
        severity: Severity::Minor,
        title: "Let water in with a joint still open",
        why: "It runs into the machine.",
        source: "common practice",
        right_way: "Go round every joint that was opened before the tap is opened.",
        is_broken: |s| {
            (s.act == Act::OpenTap || lets_water_in(s)) && s.machine.n_unsealed_joints > 0
        },
    },
    Rule {
        id: "left_unsealed",
        severity: Severity::Major,
        title: "Left a water joint unsealed",
        why: "It leaks when nobody is at home.",
        source: "common practice",
        right_way: "Seal, fit the clamp, try with water and a dry cloth.",
        is_broken: |s| {
            s.act == Act::HandOver
                && !s.tests.is_put_out_of_use
                && (s.machine.n_unsealed_joints > 0 || s.machine.has_weeping_joint)
        },
    },
    Rule {
        id: "joint_not_tried",
        severity: Severity::Minor,
        title: "Did not try the opened joint with water",
        why: "A seal is sound when it has held water, not when it looks good.",
        source: "common practice",
        right_way: "Fill, look and feel with a dry cloth, drain, look again.",
        is_broken: |s| {
            s.act == Act::HandOver
                && s.tests.joint_was_opened
                && !s.tests.joints_were_tried
                && !s.tests.is_put_out_of_use
        },
    },
    Rule {
        id: "left_tap_open",
        severity: Severity::Major,
        title: "Left an unfinished machine with the tap open",
        why: "Nobody watches the open joint until the second visit.",
        source: "common practice",
        right_way: "Shut the tap, label it, tell the customer.",
        is_broken: |s| s.act == Act::LeaveUntil && s.water.tap_is_open,
    },
    Rule {
        id: "left_floor_wet",
        severity: Severity::Minor,
        title: "Left the floor wet",
        why: "The next person slips, or stands in it at the switch.",
        source: "common practice",
        right_way: "Mop up before leaving.",
        is_broken: |s| {
            // Nobody mops where it is not safe to stand.
            s.act.is_leaving() && s.water.floor_is_wet && !s.site.danger_is_noticed
        },
    },
];
