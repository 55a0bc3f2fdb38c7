//! Rules about weight, edges and heat.

use crate::bench::safety::Rule;
use crate::bench::safety::Severity;
use crate::bench::safety::situation::Act;
use crate::text;

/// Metal that burns a hand on touch, K (60 °C). Published: ISO 13732-1, from memory.
const BURNING_K: f64 = 333.15;

/// The rules.
pub const RULES: &[Rule] = &[
    Rule {
        id: "tilted_alone",
        severity: Severity::Major,
        title: text!("Laid the machine down alone, without a strap"),
        why: text!("35 kg with the weight up high: backs, feet and floors give way."),
        source: text!("common practice"),
        right_way: text!("Get help, or use a strap and a corner to let it down."),
        is_broken: |s| s.act == Act::Tilt && !s.handling.has_help_or_strap,
    },
    Rule {
        id: "floor_unprotected",
        severity: Severity::Minor,
        title: text!("Laid the machine on a bare floor"),
        why: text!("Tiles chip and cabinets scratch; both are paid for."),
        source: text!("common practice"),
        right_way: text!("Put a blanket or cardboard under it."),
        is_broken: |s| s.act == Act::Tilt && !s.handling.floor_is_protected,
    },
    Rule {
        id: "reached_under_unpropped",
        severity: Severity::Major,
        title: text!("Reached under a machine that was not propped"),
        why: text!("It comes back on the arm."),
        source: text!("common practice"),
        right_way: text!("Prop it or lay it flat before reaching under."),
        is_broken: |s| s.act.is_work_inside() && s.handling.is_tilted && !s.handling.is_propped,
    },
    Rule {
        id: "top_not_supported",
        severity: Severity::Minor,
        title: text!("Worked under an opened top without support"),
        why: text!("It falls on hands, and its edge is sheet metal."),
        source: text!("common practice"),
        right_way: text!("Prop or tie it, then reach in."),
        is_broken: |s| s.act.is_work_inside() && !s.handling.cover_is_supported,
    },
    Rule {
        id: "cut_by_edges",
        severity: Severity::Minor,
        title: text!("Reached past sheet-metal edges without gloves"),
        why: text!("Pressed edges cut like knives, above all when something slips."),
        source: text!("common practice"),
        right_way: text!("Cut-proof gloves for the reach; off again near anything that turns."),
        is_broken: |s| {
            s.act.is_work_inside() && s.touched.has_sharp_edges && !s.handling.has_gloves
        },
    },
    Rule {
        id: "hot_part_touched",
        severity: Severity::Minor,
        title: text!("Touched a hot part"),
        why: text!("A motor that has stalled is hot enough to burn long after it stopped."),
        source: text!("published: ISO 13732-1 (from memory)"),
        right_way: text!("Feel near it first, or measure; let it cool."),
        is_broken: |s| s.act.is_work_inside() && s.touched.temperature_k > BURNING_K,
    },
];
