//! Fields of the entries of a job's lists, for the components that draw them.

use crate::app::desk::form_table::Field;
use crate::app::desk::form_table::Kind;
use crate::app::desk::form_table::field;
use crate::text;

/// All of them.
pub(super) const INSIDE: &[Field] = &[
    field("faults[].id", text!("What is wrong"), Kind::Inside, ""),
    field(
        "faults[].severity",
        text!("Severity"),
        Kind::Number(""),
        text!("From 0, not there, to 1, as listed."),
    ),
    field("faults[].onset", text!("It is there"), Kind::Inside, ""),
    field(
        "faults[].onset.from.start_min",
        text!("Begins after"),
        Kind::Number("min"),
        "",
    ),
    field(
        "faults[].onset.intermittent.period_s",
        text!("Drawn anew every"),
        Kind::Number("s"),
        "",
    ),
    field(
        "faults[].onset.intermittent.chance",
        text!("Chance to be there"),
        Kind::Number(""),
        text!("From 0 to 1."),
    ),
    field(
        "faults[].onset.hot.above_degc",
        text!("Winding above"),
        Kind::Number("°C"),
        "",
    ),
    field(
        "faults[].onset.vibration.above_rpm",
        text!("Basket above"),
        Kind::Number("r/min"),
        "",
    ),
    field("customer.answers.*", text!("Answer"), Kind::Inside, ""),
    field("customer.answers.*[0]", text!("Answer"), Kind::Inside, ""),
    field(
        "customer.answers.*[1]",
        text!("Asked again"),
        Kind::Inside,
        "",
    ),
    field(
        "visit.phone.*",
        text!("Answers on the phone"),
        Kind::Inside,
        "",
    ),
    field("visit.store.*", text!("The parts store"), Kind::Inside, ""),
    field("visit.store.*.ready", text!("Ready"), Kind::Inside, ""),
    field(
        "visit.store.*.price",
        text!("Price"),
        Kind::MaybeNumber(text!("units")),
        text!("Empty: the price list."),
    ),
    field(
        "rules.gauges",
        text!("Instruments that need no circuit"),
        Kind::Inside,
        "",
    ),
];
