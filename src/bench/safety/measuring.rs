//! Rules about instruments.

use crate::bench::safety::Rule;
use crate::bench::safety::Severity;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::ProbeMode;
use crate::bench::safety::situation::Situation;
use crate::text;

/// Above this a circuit is live for an ohmmeter, V.
const LIVE_FOR_OHMS_V: f64 = 10.0;
/// Above this a wrong range is dangerous, V.
const DANGEROUS_V: f64 = 50.0;

fn measures(s: &Situation, mode: ProbeMode) -> bool {
    s.act == Act::Measure && s.probe.mode == mode
}

fn probes_danger(s: &Situation) -> bool {
    s.act == Act::Measure
        && s.probe.mode != ProbeMode::Clamp
        && s.probe.voltage_v.abs() > DANGEROUS_V
}

/// The rules.
pub const RULES: &[Rule] = &[
    Rule {
        id: "ohms_on_live",
        severity: Severity::Major,
        title: text!("Measured ohms on a live circuit"),
        why: text!("The reading is nonsense, and the meter may burn in the hand."),
        source: text!("common practice"),
        right_way: text!("Unplug and prove dead, then measure ohms."),
        is_broken: |s| measures(s, ProbeMode::Ohms) && s.probe.voltage_v.abs() > LIVE_FOR_OHMS_V,
    },
    Rule {
        id: "amperes_across_voltage",
        severity: Severity::Critical,
        title: text!("Put the current range across the mains"),
        why: text!(
            "The current range is a short circuit: an arc at the probes, if the fuse is not good."
        ),
        source: text!("published: IEC 61010-2-033 (from memory); common practice"),
        right_way: text!(
            "Use a clamp; put the leads back to volts at once after measuring current."
        ),
        is_broken: |s| measures(s, ProbeMode::Amperes) && s.probe.voltage_v.abs() > DANGEROUS_V,
    },
    Rule {
        id: "category_too_low",
        severity: Severity::Major,
        title: text!("Used a meter of too low a category"),
        why: text!("A surge on the mains can flash over inside a meter not made for that place."),
        source: text!("published: IEC 61010-1 (from memory)"),
        right_way: text!("At a socket at least category II, better III, with fused leads."),
        is_broken: |s| probes_danger(s) && s.probe.category < s.probe.category_needed,
    },
    Rule {
        id: "damaged_leads",
        severity: Severity::Major,
        title: text!("Measured mains with damaged leads"),
        why: text!("The fingers are as close to the mains as the crack in the insulation."),
        source: text!("common practice"),
        right_way: text!("Look the leads over before each job; throw bad ones away."),
        is_broken: |s| probes_danger(s) && s.probe.leads_are_damaged,
    },
    Rule {
        id: "instrument_not_checked",
        severity: Severity::Minor,
        title: text!("Used an instrument without checking it"),
        why: text!("A flat battery, a blown fuse or a broken lead lies, and quietly."),
        source: text!("common practice"),
        right_way: text!(
            "Look at leads and battery, short the probes on ohms, measure a known voltage."
        ),
        is_broken: |s| s.act == Act::Measure && !s.probe.was_checked,
    },
    Rule {
        id: "needless_live_probe",
        severity: Severity::Minor,
        title: text!("Probed live where a dead test would do"),
        why: text!("Every live measurement is a risk; it must buy something a dead one cannot."),
        source: text!("published: EN 50110-1, 4.1 (from memory); common practice"),
        right_way: text!("Choose the dead test when it settles the question."),
        is_broken: |s| probes_danger(s) && s.supply.is_plugged && s.probe.dead_test_would_do,
    },
    Rule {
        id: "live_probe_on_wet_floor",
        severity: Severity::Major,
        title: text!("Measured live standing on a wet floor"),
        why: text!("Wet shoes and floor take away most of what lies between the body and earth."),
        source: text!("published: IEC 60479-1 (from memory): wet skin; common practice"),
        right_way: text!("Dry the floor first, or stand on something insulating."),
        is_broken: |s| probes_danger(s) && s.supply.is_plugged && s.water.floor_is_wet,
    },
    Rule {
        id: "insulation_test_plugged",
        severity: Severity::Major,
        title: text!("Insulation test with the plug in"),
        why: text!("The test voltage meets the mains: tester, board and person are at risk."),
        source: text!("published: EN 50699 (from memory)"),
        right_way: text!("Unplug; join line and neutral; test against earth."),
        is_broken: |s| measures(s, ProbeMode::Insulation) && s.supply.is_plugged,
    },
    Rule {
        id: "insulation_test_across_board",
        severity: Severity::Minor,
        title: text!("Insulation test across electronics"),
        why: text!("500 V across a board or its surge arrester destroys it or reads the arrester."),
        source: text!("common practice"),
        right_way: text!("Test joined line and neutral against earth, never line against neutral."),
        is_broken: |s| measures(s, ProbeMode::Insulation) && s.probe.spans_electronics,
    },
];
