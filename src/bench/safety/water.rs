//! Rules about taps, hoses and full tubs.

use crate::bench::safety::Rule;
use crate::bench::safety::Severity;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::Situation;
use crate::text;

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
        title: text!("Pulled the inlet hose with the tap open"),
        why: text!("Twelve litres a minute, and the ceiling below is the dearest mistake of all."),
        source: text!("common practice"),
        right_way: text!("Shut the tap, let the pressure down, then pull the hose."),
        is_broken: |s| s.act == Act::PullInletHose && s.water.tap_is_open,
    },
    Rule {
        id: "inlet_hose_under_pressure",
        severity: Severity::Minor,
        title: text!("Pulled the inlet hose under pressure"),
        why: text!("It sprays, and over what is electrical."),
        source: text!("common practice"),
        right_way: text!(
            "Open the valve for a moment with the tap shut, or loosen slowly over a bucket."
        ),
        is_broken: |s| {
            s.act == Act::PullInletHose
                && !s.water.tap_is_open
                && !s.water.hose_pressure_is_released
        },
    },
    Rule {
        id: "tap_opened_hose_off",
        severity: Severity::Major,
        title: text!("Opened the tap with the hose off"),
        why: text!("The room floods before the tap is shut again."),
        source: text!("common practice"),
        right_way: text!("Screw on both ends, then open slowly and look."),
        is_broken: |s| s.act == Act::OpenTap && !s.water.inlet_hose_is_on,
    },
    Rule {
        id: "water_let_out_on_floor",
        severity: Severity::Minor,
        title: text!("Opened a water joint without a tray"),
        why: text!("Water on the floor reaches sockets, and makes people fall."),
        source: text!("common practice"),
        right_way: text!("Bucket, tray and cloth before the clamp is loosened."),
        is_broken: |s| s.act == Act::PullDrainHose && !s.water.has_catch_tray,
    },
    Rule {
        id: "tilted_full",
        severity: Severity::Major,
        title: text!("Tilted the machine with water in the tub"),
        why: text!(
            "Fifty litres move at once: the machine falls, the water goes over the electrics."
        ),
        source: text!("common practice"),
        right_way: text!("Drain by the machine; else bail or siphon from above."),
        is_broken: |s| s.act == Act::Tilt && s.water.tub_m3 > RESIDUE_M3,
    },
    Rule {
        id: "hot_water_let_out",
        severity: Severity::Major,
        title: text!("Let hot water out over hands"),
        why: text!("From 50 °C it scalds within minutes, from 60 °C within seconds."),
        source: text!("common practice"),
        right_way: text!("Let it cool, or thin it with cold water first."),
        is_broken: |s| {
            s.act == Act::PullDrainHose
                && s.water.tub_m3 > RESIDUE_M3
                && s.water.tub_temperature_k > SCALDING_K
        },
    },
    Rule {
        id: "sealant_not_set",
        severity: Severity::Minor,
        title: text!("Tried a joint before its sealant had set"),
        why: text!("It lets go now or, worse, next week."),
        source: text!("common practice"),
        right_way: text!("Give it the time on the tube, then let water in."),
        is_broken: |s| lets_water_in(s) && !s.water.sealant_has_set,
    },
    Rule {
        id: "water_test_unsealed",
        severity: Severity::Minor,
        title: text!("Let water in with a joint still open"),
        why: text!("It runs into the machine."),
        source: text!("common practice"),
        right_way: text!("Go round every joint that was opened before the tap is opened."),
        is_broken: |s| {
            (s.act == Act::OpenTap || lets_water_in(s)) && s.machine.n_unsealed_joints > 0
        },
    },
    Rule {
        id: "left_unsealed",
        severity: Severity::Major,
        title: text!("Left a water joint unsealed"),
        why: text!("It leaks when nobody is at home."),
        source: text!("common practice"),
        right_way: text!("Seal, fit the clamp, try with water and a dry cloth."),
        is_broken: |s| {
            s.act == Act::HandOver
                && !s.tests.is_put_out_of_use
                && (s.machine.n_unsealed_joints > 0 || s.machine.has_weeping_joint)
        },
    },
    Rule {
        id: "joint_not_tried",
        severity: Severity::Minor,
        title: text!("Did not try the opened joint with water"),
        why: text!("A seal is sound when it has held water, not when it looks good."),
        source: text!("common practice"),
        right_way: text!("Fill, look and feel with a dry cloth, drain, look again."),
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
        title: text!("Left an unfinished machine with the tap open"),
        why: text!("Nobody watches the open joint until the second visit."),
        source: text!("common practice"),
        right_way: text!("Shut the tap, label it, tell the customer."),
        is_broken: |s| s.act == Act::LeaveUntil && s.water.tap_is_open,
    },
    Rule {
        id: "left_floor_wet",
        severity: Severity::Minor,
        title: text!("Left the floor wet"),
        why: text!("The next person slips, or stands in it at the switch."),
        source: text!("common practice"),
        right_way: text!("Mop up before leaving."),
        is_broken: |s| {
            // Nobody mops where it is not safe to stand.
            s.act.is_leaving() && s.water.floor_is_wet && !s.site.danger_is_noticed
        },
    },
];
