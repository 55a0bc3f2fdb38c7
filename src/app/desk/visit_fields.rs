//! What the form asks about the visit around the repair: phone, store, instrument, papers, person, place.

use crate::app::desk::fields::Kind;
use crate::app::desk::fields::Section;
use crate::app::desk::fields::field;

const MANNERS: &[(&str, &str)] = &[
    ("honest", "says what they know"),
    ("vague", "says little until asked in other words"),
    ("mistaken", "is wrong at first"),
];

/// The whole section.
pub(super) const VISIT: Section = Section {
    title: "The visit",
    fields: &[
        field(
            "visit.phone",
            "Answers on the phone",
            Kind::Entries,
            "As in the file, such as {\"phone_stage\": \"It does not spin.\"}. Left out: what is said at the door.",
        ),
        field(
            "visit.store",
            "Parts not in the store today",
            Kind::Entries,
            "As in the file, such as {\"belt\": {\"ready\": \"tomorrow\"}}; today, tomorrow or never, and a price.",
        ),
        field(
            "visit.instrument",
            "The instrument as it comes out of the van",
            Kind::Entries,
            "As in the file, such as {\"lead_broken\": true} or {\"battery_percent\": 60}. Left out: a sound one.",
        ),
        field(
            "visit.papers.bought_months_ago",
            "Age of the receipt",
            Kind::MaybeNumber("months"),
            "Empty: there is none.",
        ),
        field(
            "visit.papers.covered_months",
            "The maker pays for",
            Kind::Number("months"),
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
            Kind::Words,
            "Of gas_smell, flood, threat, scorched_socket, adaptor, extension_reel, no_residual_device, child, dog, delicate_floor, bare_edges, hot_water.",
        ),
    ],
};
