//! Rules about what is energised, and on what.

use crate::bench::safety::Rule;
use crate::bench::safety::Severity;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::Situation;
use crate::text;

fn has_failed_test(s: &Situation) -> bool {
    let t = &s.tests;
    t.earth_bond_ohm
        .is_some_and(|read_ohm| read_ohm > t.earth_bond_limit_ohm)
        || t.insulation_ohm
            .is_some_and(|read_ohm| read_ohm < t.insulation_limit_ohm)
}

fn energises(s: &Situation) -> bool {
    s.act.is_energising() && s.supply.is_plugged
}

/// The rules.
pub const RULES: &[Rule] = &[
    Rule {
        id: "energised_earth_off",
        severity: Severity::Critical,
        title: text!("Energised the machine with an earth link off"),
        why: text!("The next insulation fault puts mains on the cabinet, and nothing trips."),
        source: text!("published: EN 50678 (from memory); common practice"),
        right_way: text!("Refit every earth link and measure the bond before the plug goes in."),
        is_broken: |s| energises(s) && s.machine.n_earth_links_off > 0,
    },
    Rule {
        id: "energised_wet",
        severity: Severity::Critical,
        title: text!("Energised wet electrics"),
        why: text!("Water carries mains to the cabinet and to the hand."),
        source: text!("common practice"),
        right_way: text!("Dry the parts, measure insulation, then plug in."),
        is_broken: |s| energises(s) && s.machine.has_wet_electrics,
    },
    Rule {
        id: "energised_after_failed_test",
        severity: Severity::Critical,
        title: text!("Energised the machine after a failed test"),
        why: text!("Earth and insulation come first because the first switch-on may hurt."),
        source: text!("published: EN 50678 (from memory): the first failed step stops the tests"),
        right_way: text!("Find and mend the cause, test again, then plug in."),
        is_broken: |s| energises(s) && has_failed_test(s),
    },
    Rule {
        id: "energised_before_earth_test",
        severity: Severity::Minor,
        title: text!("Switched on after the repair before testing the earth"),
        why: text!("The earth conductor is what makes a mistake in the repair harmless."),
        source: text!("published: EN 50678 (from memory): look, earth, insulation, then function"),
        right_way: text!("Close the machine, measure earth bond and insulation, then run it."),
        is_broken: |s| {
            energises(s)
                && s.tests.work_was_done
                && s.machine.n_covers_off == 0
                && s.tests.earth_bond_ohm.is_none()
        },
    },
    Rule {
        id: "energised_on_wet_floor",
        severity: Severity::Major,
        title: text!("Switched on standing in water"),
        why: text!("A wet floor makes the body a good path to earth."),
        source: text!("common practice"),
        right_way: text!("Mop up first."),
        is_broken: |s| energises(s) && s.water.floor_is_wet,
    },
    Rule {
        id: "energised_without_house_earth",
        severity: Severity::Major,
        title: text!("Ran the machine on a socket known to have no earth"),
        why: text!("The filter alone bites; a fault kills. A good machine does not change that."),
        source: text!("published: IEC 60364-4-41 (from memory)"),
        right_way: text!("Make safe, tell the customer, let an electrician mend the socket."),
        is_broken: |s| energises(s) && s.site.earth_is_known_missing,
    },
    Rule {
        id: "scorched_socket_used",
        severity: Severity::Major,
        title: text!("Used a scorched socket"),
        why: text!("A loose contact that has burnt once burns again, behind the wall."),
        source: text!("common practice"),
        right_way: text!("Put it out of use, tell the customer in writing, use another circuit."),
        is_broken: |s| {
            (energises(s) || s.act == Act::HandOver)
                && s.supply.is_plugged
                && s.site.socket_is_seen_scorched
        },
    },
    Rule {
        id: "reset_without_cause",
        severity: Severity::Major,
        title: text!("Set a tripped device again without finding why"),
        why: text!("It opened for a reason, and the reason is still there."),
        source: text!("common practice"),
        right_way: text!("Unplug the machine, test it dead, then set the device again."),
        is_broken: |s| s.act == Act::ResetDevice && s.supply.has_tripped_unexplained,
    },
    Rule {
        id: "fuse_oversized",
        severity: Severity::Critical,
        title: text!("Fitted a larger fuse or bridged it"),
        why: text!("Wires and windings now burn before the fuse does."),
        source: text!("published: IEC 60127-1 (from memory); common practice"),
        right_way: text!("Same rating, same speed; find what blew it."),
        is_broken: |s| (energises(s) || s.act.is_leaving()) && s.machine.fuse_is_oversized,
    },
    Rule {
        id: "capacitor_underrated",
        severity: Severity::Major,
        title: text!("Fitted a run capacitor of too low a voltage"),
        why: text!("In run it stands far above the mains: it bursts or burns."),
        source: text!("published: IEC 60252-1 (from memory)"),
        right_way: text!("Read the old one's rating; never fit less."),
        is_broken: |s| (energises(s) || s.act.is_leaving()) && s.machine.capacitor_is_underrated,
    },
    Rule {
        id: "house_wiring_worked_on",
        severity: Severity::Major,
        title: text!("Worked on the wiring of the house"),
        why: text!("It belongs to a licensed electrician; a mistake there is live for everybody."),
        source: text!("common practice; local law"),
        right_way: text!("Measure, tell, record; never repair."),
        is_broken: |s| s.act == Act::WorkOnHouseWiring,
    },
    Rule {
        id: "danger_ignored",
        severity: Severity::Critical,
        title: text!("Went on although the place was not safe"),
        why: text!("Gas, flood, fire or a threat do not wait for a washing machine."),
        source: text!("common practice"),
        right_way: text!("Make safe and leave; a job refused for a reason is a job done right."),
        is_broken: |s| {
            (s.act.is_energising() || s.act.is_work_inside() || s.act == Act::Measure)
                && s.site.danger_is_noticed
        },
    },
];
