//! Rules about switching off, proving dead and stored charge.

use crate::bench::safety::Rule;
use crate::bench::safety::Severity;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::DeadProof;
use crate::bench::safety::situation::Situation;
use crate::text;

/// Touch voltage people may be exposed to for long, V ac, dry and wet.
const TOUCH_LIMIT_V: f64 = 50.0;
const TOUCH_LIMIT_WET_V: f64 = 25.0;
/// Voltage allowed on plug pins a second after unplugging, V.
const CAPACITOR_LIMIT_V: f64 = 34.0;
/// Below this a discharge is a spark, ohm.
const DISCHARGE_LEAST_OHM: f64 = 1000.0;

fn is_work_at_conductors(s: &Situation) -> bool {
    s.act.is_work_inside() && s.touched.reaches_conductors
}

fn was_tested_by_volts(s: &Situation) -> bool {
    is_work_at_conductors(s) && !s.supply.is_plugged && s.proof.kind == DeadProof::Volts
}

/// The rules.
pub const RULES: &[Rule] = &[
    Rule {
        id: "touched_live",
        severity: Severity::Critical,
        title: text!("Touched a live conductor"),
        why: text!(
            "Above 50 V, or 25 V where it is wet, enough current can flow to stop the heart."
        ),
        source: text!("published: IEC 60364-4-41 and IEC 60479-1 (from memory)"),
        right_way: text!("Unplug, prove dead, and only then put hands to conductors."),
        is_broken: |s| {
            let limit_v = if s.water.floor_is_wet {
                TOUCH_LIMIT_WET_V
            } else {
                TOUCH_LIMIT_V
            };
            s.act.is_work_inside() && s.touched.voltage_v > limit_v
        },
    },
    Rule {
        id: "worked_inside_switched_on",
        severity: Severity::Critical,
        title: text!("Worked inside with the machine on"),
        why: text!("Conductors are live, and a program can start the motor at any moment."),
        source: text!("published: EN 50110-1, 6.2 (from memory)"),
        right_way: text!("Switch off, pull the plug, keep it in sight."),
        is_broken: |s| s.act.is_work_inside() && s.supply.is_plugged && s.supply.is_switched_on,
    },
    Rule {
        id: "switch_taken_for_isolation",
        severity: Severity::Major,
        title: text!("Relied on the switch and left the plug in"),
        why: text!(
            "The switch opens one conductor only; with line and neutral exchanged the rest \
              stays live."
        ),
        source: text!("published: EN 50110-1, 6.2.1 (from memory); common practice"),
        right_way: text!(
            "Pull the plug: it opens both conductors, and one can see that it is out."
        ),
        is_broken: |s| s.act.is_work_inside() && s.supply.is_plugged && !s.supply.is_switched_on,
    },
    Rule {
        id: "cover_off_live",
        severity: Severity::Minor,
        title: text!("Took a cover off with the plug in"),
        why: text!("Live parts come within reach before anybody has decided to work live."),
        source: text!("common practice"),
        right_way: text!("Pull the plug first; put it back only for a measurement that needs it."),
        is_broken: |s| s.act == Act::OpenCover && s.supply.is_plugged,
    },
    Rule {
        id: "not_secured",
        severity: Severity::Minor,
        title: text!("The pulled plug was out of sight"),
        why: text!("Somebody may put it back while hands are inside."),
        source: text!("published: EN 50110-1, 6.2.2 (from memory)"),
        right_way: text!("Keep the plug in sight, tag it or lock it."),
        is_broken: |s| is_work_at_conductors(s) && !s.supply.is_plugged && !s.supply.is_secured,
    },
    Rule {
        id: "not_proved_dead",
        severity: Severity::Major,
        title: text!("Went to conductors without proving them dead"),
        why: text!("The wrong plug, a second feed or a charged filter is found only by measuring."),
        source: text!("published: EN 50110-1, 6.2.3 (from memory)"),
        right_way: text!(
            "Prove the tester, test line, neutral and earth against each other, prove \
                    the tester again."
        ),
        is_broken: |s| is_work_at_conductors(s) && s.proof.kind == DeadProof::None,
    },
    Rule {
        id: "contactless_as_proof",
        severity: Severity::Major,
        title: text!("Took a contactless tester as proof of dead"),
        why: text!(
            "It is blind behind earthed metal and with direct voltage; silence proves nothing."
        ),
        source: text!("common practice"),
        right_way: text!("Use a two-pole tester or a meter on volts."),
        is_broken: |s| is_work_at_conductors(s) && s.proof.kind == DeadProof::Contactless,
    },
    Rule {
        id: "ohms_as_proof",
        severity: Severity::Critical,
        title: text!("Took an ohm reading as proof of dead"),
        why: text!(
            "On a live circuit an ohmmeter shows anything, \"open\" included, and may burn."
        ),
        source: text!("published: EN 50110-1, 6.2.3 (from memory); common practice"),
        right_way: text!("Prove dead with volts; ohms come after."),
        is_broken: |s| is_work_at_conductors(s) && s.proof.kind == DeadProof::Ohms,
    },
    Rule {
        id: "tester_not_proved_before",
        severity: Severity::Minor,
        title: text!("The tester was not proved before the dead test"),
        why: text!("A flat battery or a broken lead reads zero too."),
        source: text!("common practice"),
        right_way: text!("Measure a live socket first, on the same range."),
        is_broken: |s| was_tested_by_volts(s) && !s.proof.tester_proved_before,
    },
    Rule {
        id: "tester_not_proved_after",
        severity: Severity::Minor,
        title: text!("The tester was not proved again after the dead test"),
        why: text!("It may have failed in between; then the zero was worth nothing."),
        source: text!("common practice"),
        right_way: text!("Go back to the same live socket and see the reading again."),
        is_broken: |s| was_tested_by_volts(s) && !s.proof.tester_proved_after,
    },
    Rule {
        id: "pairs_left_out",
        severity: Severity::Minor,
        title: text!("Did not test all conductors against each other"),
        why: text!("With a broken neutral, line to neutral reads zero and both are live to earth."),
        source: text!("common practice"),
        right_way: text!("Line to neutral, line to earth, neutral to earth."),
        is_broken: |s| was_tested_by_volts(s) && s.proof.n_pairs < 3,
    },
    Rule {
        id: "capacitor_charged",
        severity: Severity::Major,
        title: text!("Touched a charged capacitor"),
        why: text!(
            "A run capacitor with a wire off holds a blow of more than a joule for an hour."
        ),
        source: text!("published: IEC 60335-1, 22.5 (from memory: 34 V)"),
        right_way: text!("Discharge through 10 to 20 kilohm, measure, then touch."),
        is_broken: |s| {
            s.act.is_work_inside()
                && s.touched.is_capacitor
                && s.touched.capacitor_v.abs() > CAPACITOR_LIMIT_V
        },
    },
    Rule {
        id: "capacitor_not_measured",
        severity: Severity::Minor,
        title: text!("Touched a capacitor without measuring it first"),
        why: text!("It was empty this time. It empties itself only while wires and windings hold."),
        source: text!("common practice"),
        right_way: text!("Treat every capacitor as charged until a meter says otherwise."),
        is_broken: |s| {
            s.act.is_work_inside() && s.touched.is_capacitor && !s.touched.capacitor_measured
        },
    },
    Rule {
        id: "capacitor_shorted",
        severity: Severity::Major,
        title: text!("Short-circuited a charged capacitor"),
        why: text!("The spark throws metal and spoils the capacitor."),
        source: text!("common practice"),
        right_way: text!("Use a resistor of 10 to 20 kilohm for five time constants."),
        is_broken: |s| {
            s.act == Act::Discharge
                && s.touched.capacitor_v.abs() > CAPACITOR_LIMIT_V
                && s.touched.discharge_ohm < DISCHARGE_LEAST_OHM
        },
    },
];
