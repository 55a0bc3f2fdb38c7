//! What the form asks, in the order in which a story is told: one line a field of the job file,
//! named by its path. Lists with a shape of their own (answers, faults, van) have components.

use crate::app::desk::visit_fields::VISIT;

/// How a field is filled in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Kind {
    /// One line of text.
    Line,
    /// Several lines of text.
    Text,
    /// A list of short texts, with commas between.
    Words,
    /// A number with its unit.
    Number(&'static str),
    /// A number that may be left out.
    MaybeNumber(&'static str),
    /// Yes or no.
    Yes,
    /// One of these values, by their words.
    Choice(&'static [(&'static str, &'static str)]),
    /// Yes, no, or as usual.
    MaybeYes(&'static str),
    /// A machine that ships.
    Machine,
    /// 1 to 5.
    Level,
    /// Modes of the instruments, all of them when left out.
    Instruments,
    /// The customer's answers.
    Answers,
    /// What is wrong.
    Faults,
    /// Parts on board.
    Van,
    /// Answers on the phone.
    Phone,
    /// What the parts store lacks.
    Stock,
    /// What is out of the ordinary about the place.
    Place,
    /// Pairs of names, a plus sign within and a comma between.
    Pairs,
}

/// One field of the form.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Field {
    /// Where it stands in the file.
    pub path: &'static str,
    /// What it is called.
    pub label: &'static str,
    /// What helps to fill it in; may be empty.
    pub hint: &'static str,
    /// How.
    pub kind: Kind,
}

/// A group of fields.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// Its heading.
    pub title: &'static str,
    /// Its fields.
    pub fields: &'static [Field],
}

pub(super) const fn field(
    path: &'static str,
    label: &'static str,
    kind: Kind,
    hint: &'static str,
) -> Field {
    Field {
        path,
        label,
        hint,
        kind,
    }
}

const ATTITUDES: &[(&str, &str)] = &[
    ("friendly", "friendly"),
    ("worried", "worried"),
    ("impatient", "impatient"),
    ("sceptical", "sceptical"),
    ("haggling", "haggling"),
];

/// The form, from the machine to the marks.
pub const SECTIONS: &[Section] = &[
    Section {
        title: "The job",
        fields: &[
            field(
                "title",
                "Title",
                Kind::Line,
                "What the call is about. It must not give the cause away.",
            ),
            field("machine", "Machine", Kind::Machine, ""),
            field("level", "Level", Kind::Level, ""),
            field(
                "skills",
                "Skills practised",
                Kind::Words,
                "With commas between, such as: ask first, water supply.",
            ),
        ],
    },
    Section {
        title: "The place",
        fields: &[
            field("site.notes", "What anyone sees there", Kind::Text, ""),
            field("site.tap_open", "The tap is open", Kind::Yes, ""),
            field(
                "site.water_mpa",
                "Water pressure",
                Kind::Number("MPa"),
                "Usual: 0.3. A tank just above the tap: 0.01.",
            ),
            field(
                "site.rcd_ma",
                "Residual current device",
                Kind::MaybeNumber("mA"),
                "Empty where the house has none. A socket without earth or with low voltage is a fault: see below.",
            ),
            field(
                "site.floor_tilt_deg",
                "Slope of the floor",
                Kind::Number("degrees"),
                "",
            ),
            field("site.room_degc", "Room temperature", Kind::Number("°C"), ""),
        ],
    },
    Section {
        title: "The load",
        fields: &[
            field(
                "site.load_kg",
                "Dry washing in the basket",
                Kind::Number("kg"),
                "",
            ),
            field(
                "site.unbalance_kg",
                "Of it on one side",
                Kind::Number("kg"),
                "",
            ),
            field(
                "site.water_l",
                "Water left in the tub",
                Kind::Number("L"),
                "What an interrupted wash left behind.",
            ),
        ],
    },
    Section {
        title: "What is wrong",
        fields: &[
            field(
                "faults",
                "Faults",
                Kind::Faults,
                "None is a sound machine: the right answer is then to say so, and to show the customer.",
            ),
            field(
                "double_faults",
                "Pairs that may come together",
                Kind::Pairs,
                "For a job with two faults: pairs of names that likely causes are to reckon with, the true one among others, such as: valve_limescale + inlet_filter_dirty.",
            ),
        ],
    },
    Section {
        title: "The customer",
        fields: &[
            field("customer.name", "Name", Kind::Line, "An invented one."),
            field(
                "customer.home",
                "Home",
                Kind::Line,
                "A few words, such as: third floor, no lift.",
            ),
            field(
                "customer.attitude",
                "How they meet the technician",
                Kind::Choice(ATTITUDES),
                "",
            ),
            field(
                "customer.complaint",
                "Complaint",
                Kind::Text,
                "In their own words. The machine's own behaviour, at the side, suggests one.",
            ),
            field(
                "customer.answers",
                "Answers",
                Kind::Answers,
                "They need not be true. A second answer comes when the question is asked again, differently.",
            ),
        ],
    },
    VISIT,
    Section {
        title: "Van, instruments, hints",
        fields: &[
            field(
                "van",
                "Parts in the van",
                Kind::Van,
                "At most eight. Others come from the store on a second visit.",
            ),
            field(
                "rules.instruments",
                "Instruments in the bag",
                Kind::Instruments,
                "",
            ),
            field(
                "rules.hints",
                "Hints",
                Kind::MaybeYes("in opening jobs only"),
                "",
            ),
        ],
    },
    Section {
        title: "Money and time",
        fields: &[
            field(
                "money.call_out",
                "Call-out",
                Kind::Number("units"),
                "One unit is a minute of labour unless labour says otherwise.",
            ),
            field(
                "money.labour_per_min",
                "Labour",
                Kind::Number("units a minute"),
                "",
            ),
            field(
                "money.second_visit",
                "Second visit",
                Kind::Number("units"),
                "",
            ),
            field(
                "money.callback",
                "Callback",
                Kind::Number("units"),
                "What it costs when the machine still fails.",
            ),
            field(
                "money.new_machine",
                "A new machine",
                Kind::Number("units"),
                "",
            ),
            field(
                "rules.budget",
                "Budget",
                Kind::MaybeNumber("units"),
                "Empty: no bar.",
            ),
            field(
                "rules.minutes",
                "Time allowed",
                Kind::MaybeNumber("min"),
                "Empty: no bar.",
            ),
        ],
    },
    Section {
        title: "Marks",
        fields: &[
            field(
                "rules.pass_marks",
                "Marks to reach",
                Kind::MaybeNumber("of 100"),
                "Empty: no bar. A critical safety finding caps the marks at 39 in any case.",
            ),
            field(
                "reference.cost",
                "Target cost",
                Kind::MaybeNumber("units"),
                "What a skilled technician's way costs.",
            ),
            field(
                "reference.minutes",
                "Target time",
                Kind::MaybeNumber("min"),
                "",
            ),
        ],
    },
];

/// What the form calls the field at a path; the nearest holder's name for what lies inside one.
pub fn label_of(path: &str) -> Option<&'static str> {
    let fields = || SECTIONS.iter().flat_map(|section| section.fields);
    let exact = fields().find(|field| field.path == path);
    let holder = || fields().find(|field| path.starts_with(field.path));
    exact.or_else(holder).map(|field| field.label)
}

/// The field a problem belongs beside: its own, or the one that holds it.
pub fn is_beside(field: &Field, problem_path: &str) -> bool {
    problem_path
        .strip_prefix(field.path)
        .is_some_and(|rest| rest.is_empty() || rest.starts_with(['.', '[']))
}

#[cfg(test)]
mod tests {
    use serde_json::Value;

    use super::*;
    use crate::scenario::edit;
    use crate::scenario::job_files;

    fn leaves(path: &str, value: &Value, found: &mut Vec<String>) {
        match value {
            Value::Object(fields) => {
                for (name, inside) in fields {
                    let path = if path.is_empty() {
                        name.clone()
                    } else {
                        format!("{path}.{name}")
                    };
                    leaves(&path, inside, found);
                }
            }
            _ => found.push(path.to_owned()),
        }
    }

    #[test]
    fn every_field_of_a_shipped_job_has_its_place_on_the_form() {
        let fields: Vec<&Field> = SECTIONS.iter().flat_map(|s| s.fields).collect();
        for job in job_files().expect("sound") {
            let mut paths = Vec::new();
            leaves("", &edit::as_value(&job.file), &mut paths);
            for path in paths.iter().filter(|path| *path != "format") {
                assert!(
                    fields.iter().any(|f| is_beside(f, path)),
                    "{}: {path}",
                    job.id
                );
            }
        }
    }

    #[test]
    fn a_problem_inside_a_list_is_told_beside_the_list() {
        assert_eq!(label_of("faults[0].severity"), Some("Faults"));
        assert_eq!(label_of("customer.answers.when"), Some("Answers"));
        assert_eq!(label_of("colour"), None);
    }
}
