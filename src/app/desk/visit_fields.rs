//! What the form asks about the visit around the repair: phone, store, instrument, papers, person, place.

use crate::app::desk::form_table::Kind;
use crate::app::desk::form_table::Section;
use crate::app::desk::form_table::field;

const MANNERS: &[(&str, &str)] = &[
    ("honest", "says what they know"),
    ("vague", "says little until asked in other words"),
    ("mistaken", "is wrong at first"),
];

/// The whole section.
pub(super) const VISIT: Section = Section {
    title: "The visit",
    fields: &[
        field("visit.phone", "Answers on the phone", Kind::Phone, ""),
        field("visit.store", "The parts store", Kind::Stock, ""),
        field(
            "visit.instrument.battery_percent",
            "Battery of the instrument",
            Kind::Number("%"),
            "Of a fresh one: 100.",
        ),
        field(
            "visit.instrument.lead_broken",
            "Its red lead is broken inside",
            Kind::Yes,
            "",
        ),
        field(
            "visit.instrument.lead_cracked",
            "A lead is cracked down to the wire",
            Kind::Yes,
            "",
        ),
        field(
            "visit.instrument.fuse_blown",
            "The fuse of its current range has blown",
            Kind::Yes,
            "",
        ),
        field(
            "visit.instrument.gain",
            "What it shows for 1 V",
            Kind::Number("V"),
            "A sound one: 1.",
        ),
        field(
            "visit.instrument.calibrated_months_ago",
            "Last calibrated",
            Kind::Whole("months ago"),
            "",
        ),
        field(
            "visit.instrument.category",
            "Measurement category printed on it",
            Kind::Whole(""),
            "2 to 4; 1 for none.",
        ),
        field(
            "visit.papers.bought_months_ago",
            "Age of the receipt",
            Kind::MaybeWhole("months"),
            "Empty: there is none.",
        ),
        field(
            "visit.papers.covered_months",
            "The maker pays for",
            Kind::Whole("months"),
            "",
        ),
        field(
            "visit.papers.plate_readable",
            "The rating plate can be read and belongs to the receipt",
            Kind::Yes,
            "",
        ),
        field(
            "visit.papers.misused",
            "There are signs of misuse",
            Kind::Yes,
            "",
        ),
        field(
            "visit.person.manner",
            "How the customer answers",
            Kind::Choice(MANNERS),
            "",
        ),
        field(
            "visit.person.tenant",
            "A landlord pays",
            Kind::Yes,
            "Only the landlord can agree to a price.",
        ),
        field(
            "visit.person.haggles_percent",
            "Asks to have taken off the price",
            Kind::Number("%"),
            "",
        ),
        field(
            "visit.person.limit",
            "The most they pay for a repair",
            Kind::MaybeNumber("units"),
            "Empty: half the price of a new machine.",
        ),
        field(
            "visit.place",
            "Out of the ordinary about the place",
            Kind::Place,
            "",
        ),
    ],
};
