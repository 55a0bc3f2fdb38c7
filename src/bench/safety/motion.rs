//! Rules about baskets, belts and interlocks.

use crate::bench::safety::Rule;
use crate::bench::safety::Severity;
use crate::bench::safety::situation::Act;
use crate::text;

/// Slow enough to be stopped by a hand without harm, rad/s. Design choice.
const CREEP_RAD_PER_S: f64 = 0.2;
/// 60 r/min (one turn a second), above which a basket must not be reachable, rad/s. Published: IEC 60335-2-7,
/// from memory.
const DANGEROUS_RAD_PER_S: f64 = core::f64::consts::TAU;

/// The rules.
pub const RULES: &[Rule] = &[
    Rule {
        id: "hand_in_fast_basket",
        severity: Severity::Critical,
        title: text!("Reached into a spinning basket"),
        why: text!("Wet cloth winds round a hand and takes the arm with it."),
        source: text!("published: IEC 60335-2-7 (from memory: 60 r/min)"),
        right_way: text!("Wait until it stands still."),
        is_broken: |s| {
            s.act == Act::ReachIntoBasket && s.motion.basket_rad_per_s.abs() >= DANGEROUS_RAD_PER_S
        },
    },
    Rule {
        id: "hand_in_turning_basket",
        severity: Severity::Major,
        title: text!("Reached into a basket still turning"),
        why: text!("Even a slow basket has the momentum of the wet load."),
        source: text!("common practice"),
        right_way: text!("Wait until it stands still."),
        is_broken: |s| {
            let speed_rad_per_s = s.motion.basket_rad_per_s.abs();
            s.act == Act::ReachIntoBasket
                && (CREEP_RAD_PER_S..DANGEROUS_RAD_PER_S).contains(&speed_rad_per_s)
        },
    },
    Rule {
        id: "hand_at_turning_drive",
        severity: Severity::Critical,
        title: text!("Reached in while motor or belt turned"),
        why: text!("Between belt and pulley fingers are lost."),
        source: text!("common practice"),
        right_way: text!("Switch off, unplug, wait until everything stands."),
        is_broken: |s| s.act.is_work_inside() && s.motion.motor_rad_per_s.abs() > CREEP_RAD_PER_S,
    },
    Rule {
        id: "lid_bridged",
        severity: Severity::Major,
        title: text!("Bridged the lid switch to test it"),
        why: text!("The guard is gone while it is bridged, and bridges get forgotten."),
        source: text!("common practice"),
        right_way: text!("Unplug and measure the switch for continuity, lid open and shut."),
        is_broken: |s| s.act == Act::BridgeLid,
    },
    Rule {
        id: "run_open_with_bridge",
        severity: Severity::Critical,
        title: text!("Started the machine with the lid open and bridged"),
        why: text!("The basket spins in the open, within reach."),
        source: text!("published: IEC 60335-2-7 (from memory); common practice"),
        right_way: text!("Take the bridge out; shut the lid."),
        is_broken: |s| s.act == Act::Start && s.machine.lid_is_bridged && s.machine.lid_is_open,
    },
    Rule {
        id: "left_with_bridge",
        severity: Severity::Critical,
        title: text!("Left the lid switch bridged"),
        why: text!(
            "From now on the basket spins with the lid open, and the customer does not know."
        ),
        source: text!("published: IEC 60335-2-7 (from memory); common practice"),
        right_way: text!("Take the bridge out, fit a switch, try that the lid stops the spin."),
        is_broken: |s| s.act.is_leaving() && s.machine.lid_is_bridged,
    },
    Rule {
        id: "left_spinning_open",
        severity: Severity::Critical,
        title: text!("Left a machine that spins with the lid open"),
        why: text!("A welded lid switch gives no complaint, only an accident."),
        source: text!("published: IEC 60335-2-7 (from memory)"),
        right_way: text!("Mend it, or put the machine out of use and say so in writing."),
        is_broken: |s| {
            s.act == Act::HandOver && s.machine.was_seen_spinning_open && !s.tests.is_put_out_of_use
        },
    },
    Rule {
        id: "started_with_loose_items",
        severity: Severity::Major,
        title: text!("Started with tools or parts loose inside"),
        why: text!("The belt throws them, or they bridge live terminals."),
        source: text!("common practice"),
        right_way: text!("Count the tools, look with a lamp, then start."),
        is_broken: |s| s.act == Act::Start && s.supply.is_plugged && s.machine.has_loose_items,
    },
    Rule {
        id: "bystander_near",
        severity: Severity::Major,
        title: text!("Energised the open machine with a child or animal near"),
        why: text!("They reach where no grown person would."),
        source: text!("common practice"),
        right_way: text!("Ask for the room to be kept free, or wait."),
        is_broken: |s| {
            s.act.is_energising()
                && s.supply.is_plugged
                && s.machine.n_covers_off > 0
                && s.site.has_bystander
        },
    },
];
