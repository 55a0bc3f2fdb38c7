//! Fields of the entries of a job's lists, for the components that draw them.

use crate::app::desk::form_table::Field;
use crate::app::desk::form_table::Kind;
use crate::app::desk::form_table::field;

/// All of them.
pub(super) const INSIDE: &[Field] = &[
    field("faults[].id", "What is wrong", Kind::Inside, ""),
    field(
        "faults[].severity",
        "Severity",
        Kind::Number(""),
        "From 0, not there, to 1, as listed.",
    ),
    field("faults[].onset", "It is there", Kind::Inside, ""),
    field(
        "faults[].onset.from.start_min",
        "Begins after",
        Kind::Number("min"),
        "",
    ),
    field(
        "faults[].onset.intermittent.period_s",
        "Drawn anew every",
        Kind::Number("s"),
        "",
    ),
    field(
        "faults[].onset.intermittent.chance",
        "Chance to be there",
        Kind::Number(""),
        "From 0 to 1.",
    ),
    field(
        "faults[].onset.hot.above_degc",
        "Winding above",
        Kind::Number("°C"),
        "",
    ),
    field(
        "faults[].onset.vibration.above_rpm",
        "Basket above",
        Kind::Number("r/min"),
        "",
    ),
    field("customer.answers.*", "Answer", Kind::Inside, ""),
    field("customer.answers.*[0]", "Answer", Kind::Inside, ""),
    field("customer.answers.*[1]", "Asked again", Kind::Inside, ""),
    field("visit.phone.*", "Answers on the phone", Kind::Inside, ""),
    field("visit.store.*", "The parts store", Kind::Inside, ""),
    field("visit.store.*.ready", "Ready", Kind::Inside, ""),
    field(
        "visit.store.*.price",
        "Price",
        Kind::MaybeNumber("units"),
        "Empty: the price list.",
    ),
    field(
        "rules.gauges",
        "Instruments that need no circuit",
        Kind::Inside,
        "",
    ),
];
