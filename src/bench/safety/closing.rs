//! Rules about testing after the repair, handing over and leaving.

use crate::bench::safety::Rule;
use crate::bench::safety::Severity;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::Situation;
use crate::text;

/// The machine goes back into use.
fn goes_into_use(s: &Situation) -> bool {
    s.act == Act::HandOver && !s.tests.is_put_out_of_use
}

/// The rules.
pub const RULES: &[Rule] = &[
    Rule {
        id: "handed_over_failed_earth",
        severity: Severity::Critical,
        title: text!("Handed over with a failed earth test"),
        why: text!("Without earth the next fault is on the cabinet, where the customer's hand is."),
        source: text!("published: EN 50678, EN 50699 (from memory: 0.3 ohm with a cord to 5 m)"),
        right_way: text!("Mend the earth and test again, or put the machine out of use."),
        is_broken: |s| {
            let failed = s
                .tests
                .earth_bond_ohm
                .is_some_and(|read_ohm| read_ohm > s.tests.earth_bond_limit_ohm);
            goes_into_use(s) && failed
        },
    },
    Rule {
        id: "handed_over_failed_insulation",
        severity: Severity::Critical,
        title: text!("Handed over with a failed insulation test"),
        why: text!("What leaks through today flashes over tomorrow."),
        source: text!("published: EN 50678, EN 50699 (from memory: 1 Mohm, class I)"),
        right_way: text!("Find the wet or burnt part, test again, or put the machine out of use."),
        is_broken: |s| {
            let failed = s
                .tests
                .insulation_ohm
                .is_some_and(|read_ohm| read_ohm < s.tests.insulation_limit_ohm);
            goes_into_use(s) && failed
        },
    },
    Rule {
        id: "handed_over_failed_leakage",
        severity: Severity::Critical,
        title: text!("Handed over with too much leakage current"),
        why: text!("All of it flows through a hand as soon as the earth breaks."),
        source: text!("published: EN 50678, EN 50699 (from memory: 3.5 mA)"),
        right_way: text!("Find the part that leaks, test again, or put the machine out of use."),
        is_broken: |s| {
            let failed = s
                .tests
                .leakage_a
                .is_some_and(|read_a| read_a > s.tests.leakage_limit_a);
            goes_into_use(s) && failed
        },
    },
    Rule {
        id: "no_earth_test",
        severity: Severity::Major,
        title: text!("No earth test after the repair"),
        why: text!("An earth link left off shows in no function of the machine."),
        source: text!("published: EN 50678 (from memory)"),
        right_way: text!("Plug earth to every metal part one can touch, moving the cord."),
        is_broken: |s| {
            goes_into_use(s) && s.tests.work_was_done && s.tests.earth_bond_ohm.is_none()
        },
    },
    Rule {
        id: "no_insulation_test",
        severity: Severity::Major,
        title: text!("No insulation or leakage test after the repair"),
        why: text!("A pinched wire works perfectly until somebody touches the cabinet."),
        source: text!("published: EN 50678 (from memory)"),
        right_way: text!(
            "500 V dc, line and neutral joined, against earth; then leakage in each state."
        ),
        is_broken: |s| {
            goes_into_use(s)
                && s.tests.work_was_done
                && s.tests.insulation_ohm.is_none()
                && s.tests.leakage_a.is_none()
        },
    },
    Rule {
        id: "no_functional_run",
        severity: Severity::Minor,
        title: text!("No run after the repair"),
        why: text!("Half of what is left wrong shows in the first five minutes."),
        source: text!(
            "published: EN 50678 (from memory): function is the last test; common practice"
        ),
        right_way: text!("Fill, both directions, drain, spin to full speed."),
        is_broken: |s| goes_into_use(s) && s.tests.work_was_done && !s.tests.function_was_run,
    },
    Rule {
        id: "lid_stop_not_tried",
        severity: Severity::Minor,
        title: text!("Did not try that the lid stops the spin"),
        why: text!("A welded switch or a weak brake gives no sign until it is tried."),
        source: text!("published: IEC 60335-2-7 (from memory); common practice"),
        right_way: text!("Open the lid at full speed: it stops in about 3 s."),
        is_broken: |s| goes_into_use(s) && s.tests.lid_stop_matters && !s.tests.lid_stop_was_tried,
    },
    Rule {
        id: "left_covers_off",
        severity: Severity::Major,
        title: text!("Left with a cover off"),
        why: text!("Live and moving parts are within everybody's reach."),
        source: text!("published: IEC 60335-1, 8 (from memory)"),
        right_way: text!("Close the machine, also when it is only until the next visit."),
        is_broken: |s| s.act.is_leaving() && s.machine.n_covers_off > 0,
    },
    Rule {
        id: "left_earth_off",
        severity: Severity::Critical,
        title: text!("Left with an earth link off"),
        why: text!("It works, so somebody will use it."),
        source: text!("published: EN 50678 (from memory); common practice"),
        right_way: text!("Refit every earth link before closing, also until the next visit."),
        is_broken: |s| s.act.is_leaving() && s.machine.n_earth_links_off > 0,
    },
    Rule {
        id: "left_fasteners",
        severity: Severity::Minor,
        title: text!("Screws or clips left over"),
        why: text!("Panels rattle loose, and a missing screw may have been the earth path."),
        source: text!("common practice"),
        right_way: text!("Count them out and count them in."),
        is_broken: |s| {
            s.act.is_leaving() && s.machine.n_covers_off == 0 && s.machine.n_fasteners_left > 0
        },
    },
    Rule {
        id: "left_unfinished_plugged",
        severity: Severity::Major,
        title: text!("Left an unfinished machine plugged in"),
        why: text!("Somebody will try it."),
        source: text!("common practice"),
        right_way: text!("Unplug, label \"do not use\", tell the customer."),
        is_broken: |s| s.act == Act::LeaveUntil && s.supply.is_plugged,
    },
    Rule {
        id: "left_unlabelled",
        severity: Severity::Minor,
        title: text!("Left an unfinished machine without a label"),
        why: text!("Whoever comes home next does not know, and plugs it in."),
        source: text!("common practice"),
        right_way: text!("Hang a label \"do not use\" on the plug and tell the customer."),
        is_broken: |s| s.act == Act::LeaveUntil && !s.tests.is_labelled,
    },
    Rule {
        id: "left_loose_items",
        severity: Severity::Major,
        title: text!("Left tools or parts inside"),
        why: text!("They bridge terminals or jam the basket."),
        source: text!("common practice"),
        right_way: text!("Count the tools before the last cover goes on."),
        is_broken: |s| s.act.is_leaving() && s.machine.has_loose_items,
    },
    Rule {
        id: "socket_not_tested",
        severity: Severity::Minor,
        title: text!("The socket was never tested"),
        why: text!("A missing earth or exchanged wires make a good machine dangerous."),
        source: text!("common practice"),
        right_way: text!("Line to neutral, line to earth, neutral to earth, before anything else."),
        is_broken: |s| goes_into_use(s) && !s.site.socket_was_tested,
    },
    Rule {
        id: "left_on_missing_earth",
        severity: Severity::Critical,
        title: text!("Left the machine connected to a socket without earth"),
        why: text!("The customer has felt it already; the next fault is worse than a tingle."),
        source: text!("published: IEC 60364-4-41 (from memory)"),
        right_way: text!("Unplug, label, tell the customer in writing."),
        is_broken: |s| s.act.is_leaving() && s.supply.is_plugged && s.site.earth_is_known_missing,
    },
    Rule {
        id: "house_defect_not_told",
        severity: Severity::Minor,
        title: text!("Saw a defect of the house and told nobody"),
        why: text!("The technician is often the only one who will ever look."),
        source: text!("common practice"),
        right_way: text!("Tell and write it down: what, where, what it can do."),
        is_broken: |s| {
            s.act.is_leaving() && s.site.has_seen_house_defect && !s.site.house_defect_was_told
        },
    },
];
