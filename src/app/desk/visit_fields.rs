//! What the form asks about the visit around the repair: phone, store, instrument, papers, person, place.

use crate::app::desk::form_table::Kind;
use crate::app::desk::form_table::Section;
use crate::app::desk::form_table::field;
use crate::text;

const MANNERS: &[(&str, &str)] = &[
    ("honest", text!("says what they know")),
    ("vague", text!("says little until asked in other words")),
    ("mistaken", text!("is wrong at first")),
];

/// The whole section.
pub(super) const VISIT: Section = Section {
    title: text!("The visit"),
    fields: &[
        field(
            "visit.phone",
            text!("Answers on the phone"),
            Kind::Phone,
            "",
        ),
        field("visit.store", text!("The parts store"), Kind::Stock, ""),
        field(
            "visit.instrument.battery_percent",
            text!("Battery of the instrument"),
            Kind::Number("%"),
            text!("Of a fresh one: 100."),
        ),
        field(
            "visit.instrument.lead_broken",
            text!("Its red lead is broken inside"),
            Kind::Yes,
            "",
        ),
        field(
            "visit.instrument.lead_cracked",
            text!("A lead is cracked down to the wire"),
            Kind::Yes,
            "",
        ),
        field(
            "visit.instrument.fuse_blown",
            text!("The fuse of its current range has blown"),
            Kind::Yes,
            "",
        ),
        field(
            "visit.instrument.gain",
            text!("What it shows for 1 V"),
            Kind::Number("V"),
            text!("A sound one: 1."),
        ),
        field(
            "visit.instrument.calibrated_months_ago",
            text!("Last calibrated"),
            Kind::Whole(text!("months ago")),
            "",
        ),
        field(
            "visit.instrument.category",
            text!("Measurement category printed on it"),
            Kind::Whole(""),
            text!("2 to 4; 1 for none."),
        ),
        field(
            "visit.papers.bought_months_ago",
            text!("Age of the receipt"),
            Kind::MaybeWhole(text!("months")),
            text!("Empty: there is none."),
        ),
        field(
            "visit.papers.covered_months",
            text!("The maker pays for"),
            Kind::Whole(text!("months")),
            "",
        ),
        field(
            "visit.papers.plate_readable",
            text!("The rating plate can be read and belongs to the receipt"),
            Kind::Yes,
            "",
        ),
        field(
            "visit.papers.misused",
            text!("There are signs of misuse"),
            Kind::Yes,
            "",
        ),
        field(
            "visit.person.manner",
            text!("How the customer answers"),
            Kind::Choice(MANNERS),
            "",
        ),
        field(
            "visit.person.tenant",
            text!("A landlord pays"),
            Kind::Yes,
            text!("Only the landlord can agree to a price."),
        ),
        field(
            "visit.person.haggles_percent",
            text!("Asks to have taken off the price"),
            Kind::Number("%"),
            "",
        ),
        field(
            "visit.person.limit",
            text!("The most they pay for a repair"),
            Kind::MaybeNumber(text!("units")),
            text!("Empty: half the price of a new machine."),
        ),
        field(
            "visit.place",
            text!("Out of the ordinary about the place"),
            Kind::Place,
            "",
        ),
    ],
};
