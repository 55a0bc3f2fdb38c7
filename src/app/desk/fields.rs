//! What the form of a job asks, in the order in which a story is told: one line a field of the job
//! file, named by its path. Lists with a shape of their own (answers, faults, van) have components.

use crate::app::desk::form_table::FormTable;
use crate::app::desk::form_table::Kind;
use crate::app::desk::form_table::Section;
use crate::app::desk::form_table::field;
use crate::app::desk::inside_fields::INSIDE;
use crate::app::desk::visit_fields::VISIT;
use crate::text;

/// The form of a job.
pub const JOB: FormTable = FormTable {
    sections: SECTIONS,
    inside: INSIDE,
};

const ATTITUDES: &[(&str, &str)] = &[
    ("friendly", text!("friendly")),
    ("worried", text!("worried")),
    ("impatient", text!("impatient")),
    ("sceptical", text!("sceptical")),
    ("haggling", text!("haggling")),
];

/// The form, from the machine to the marks.
const SECTIONS: &[Section] = &[
    Section {
        title: text!("The job"),
        fields: &[
            field(
                "title",
                text!("Title"),
                Kind::Line,
                text!("What the call is about. It must not give the cause away."),
            ),
            field("machine", text!("Machine"), Kind::Machine, ""),
            field("level", text!("Level"), Kind::Level, ""),
            field(
                "skills",
                text!("Skills practised"),
                Kind::Words,
                text!("With commas between, such as: ask first, water supply."),
            ),
        ],
    },
    Section {
        title: text!("The place"),
        fields: &[
            field(
                "site.notes",
                text!("What anyone sees there"),
                Kind::Text,
                "",
            ),
            field("site.tap_open", text!("The tap is open"), Kind::Yes, ""),
            field(
                "site.water_mpa",
                text!("Water pressure"),
                Kind::Number("MPa"),
                text!("Usual: 0.3. A tank just above the tap: 0.01."),
            ),
            field(
                "site.rcd_ma",
                text!("Residual current device"),
                Kind::MaybeNumber("mA"),
                text!(
                    "Empty where the house has none. A socket without earth or with low voltage is a fault: see below."
                ),
            ),
            field(
                "site.floor_tilt_deg",
                text!("Slope of the floor"),
                Kind::Number(text!("degrees")),
                "",
            ),
            field(
                "site.room_degc",
                text!("Room temperature"),
                Kind::Number("°C"),
                "",
            ),
        ],
    },
    Section {
        title: text!("The load"),
        fields: &[
            field(
                "site.load_kg",
                text!("Dry washing in the basket"),
                Kind::Number("kg"),
                "",
            ),
            field(
                "site.unbalance_kg",
                text!("Of it on one side"),
                Kind::Number("kg"),
                "",
            ),
            field(
                "site.water_l",
                text!("Water left in the tub"),
                Kind::Number("L"),
                text!("What an interrupted wash left behind."),
            ),
        ],
    },
    Section {
        title: text!("What is wrong"),
        fields: &[
            field(
                "faults",
                text!("Faults"),
                Kind::Faults,
                text!(
                    "None is a sound machine: the right answer is then to say so, and to show the customer."
                ),
            ),
            field(
                "double_faults",
                text!("Pairs that may come together"),
                Kind::Pairs,
                text!(
                    "For a job with two faults: pairs that likely causes are to reckon with, the true one among others."
                ),
            ),
        ],
    },
    Section {
        title: text!("The customer"),
        fields: &[
            field(
                "customer.name",
                text!("Name"),
                Kind::Line,
                text!("An invented one."),
            ),
            field(
                "customer.home",
                text!("Home"),
                Kind::Line,
                text!("A few words, such as: third floor, no lift."),
            ),
            field(
                "customer.attitude",
                text!("How they meet the technician"),
                Kind::Choice(ATTITUDES),
                "",
            ),
            field(
                "customer.complaint",
                text!("Complaint"),
                Kind::Text,
                text!(
                    "In their own words. The machine's own behaviour, at the side, suggests one."
                ),
            ),
            field(
                "customer.answers",
                text!("Answers to the technician’s questions"),
                Kind::Answers,
                text!(
                    "They need not be true. A second answer comes when the question is asked again, differently."
                ),
            ),
        ],
    },
    VISIT,
    Section {
        title: text!("Van, instruments, hints"),
        fields: &[
            field(
                "van",
                text!("Parts in the van"),
                Kind::Van,
                text!("At most eight. Others come from the store on a second visit."),
            ),
            field(
                "rules.instruments",
                text!("Instruments in the bag"),
                Kind::Instruments,
                "",
            ),
            field(
                "rules.hints",
                text!("Hints"),
                Kind::MaybeYes(text!("in opening jobs only")),
                "",
            ),
        ],
    },
    Section {
        title: text!("Money and time"),
        fields: &[
            field(
                "money.call_out",
                text!("Call-out"),
                Kind::Number(text!("units")),
                text!("One unit is a minute of labour unless labour says otherwise."),
            ),
            field(
                "money.labour_per_min",
                text!("Labour"),
                Kind::Number(text!("units a minute")),
                "",
            ),
            field(
                "money.second_visit",
                text!("Second visit"),
                Kind::Number(text!("units")),
                "",
            ),
            field(
                "money.callback",
                text!("Callback"),
                Kind::Number(text!("units")),
                text!("What it costs when the machine still fails."),
            ),
            field(
                "money.new_machine",
                text!("A new machine"),
                Kind::Number(text!("units")),
                "",
            ),
            field(
                "rules.budget",
                text!("Budget"),
                Kind::MaybeNumber(text!("units")),
                text!("Empty: no bar."),
            ),
            field(
                "rules.minutes",
                text!("Time allowed"),
                Kind::MaybeNumber("min"),
                text!("Empty: no bar."),
            ),
        ],
    },
    Section {
        title: text!("Marks"),
        fields: &[
            field(
                "rules.pass_marks",
                text!("Marks to reach"),
                Kind::MaybeNumber(text!("marks")),
                text!(
                    "Of 100. Empty: no bar. A critical safety finding caps the marks at 39 in any case."
                ),
            ),
            field(
                "reference.cost",
                text!("Target cost"),
                Kind::MaybeNumber(text!("units")),
                text!("What a skilled technician's way costs."),
            ),
            field(
                "reference.minutes",
                text!("Target time"),
                Kind::MaybeNumber("min"),
                "",
            ),
        ],
    },
];

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use serde_json::Value;
    use serde_json::json;

    use super::*;
    use crate::app::as_text::as_text;
    use crate::app::desk::field::id_of;
    use crate::app::desk::form::Form;
    use crate::app::desk::form::FormProps;
    use crate::app::desk::form_table::holders;
    use crate::bench::questions::PHONE_QUESTIONS;
    use crate::bench::questions::QUESTIONS;
    use crate::bench::questions::Question;
    use crate::scenario::edit;
    use crate::scenario::job_file::JobFile;
    use crate::scenario::job_files;
    use crate::scenario::read::read_value;

    /// Paths of all values, entries of lists of texts and numbers left out.
    fn leaves(path: &str, value: &Value, found: &mut Vec<String>) {
        match value {
            Value::Object(fields) => {
                for (name, inside) in fields {
                    let at = [path, name].join(".");
                    leaves(at.trim_start_matches('.'), inside, found);
                }
            }
            Value::Array(list) if list.iter().any(Value::is_object) => {
                for (index, inside) in list.iter().enumerate() {
                    leaves(&format!("{path}[{index}]"), inside, found);
                }
            }
            _ => found.push(path.to_owned()),
        }
    }

    fn paths_of(job: &JobFile) -> Vec<String> {
        let mut paths = Vec::new();
        leaves("", &edit::as_value(job), &mut paths);
        paths.retain(|path| path != "format");
        paths
    }

    /// A job that says everything a job can say.
    fn full() -> JobFile {
        let mut whole = edit::as_value(&job_files().expect("sound")[0].file);
        let fault =
            |onset: Value| json!({ "id": "capacitor_low", "severity": 0.5, "onset": onset });
        whole["faults"] = json!([
            fault(json!("constant")),
            fault(json!({"from": {"start_min": 1.0}})),
            fault(json!({"intermittent": {"period_s": 60.0, "chance": 0.3}})),
            fault(json!({"hot": {"above_degc": 80.0}})),
            fault(json!({"vibration": {"above_rpm": 300.0}})),
        ]);
        whole["double_faults"] = json!([["capacitor_low", "belt_off"]]);
        whole["site"]["water_l"] = json!(3.0);
        whole["rules"] = json!({
            "instruments": ["ohms"], "gauges": ["watch"], "hints": true,
            "budget": 90.0, "minutes": 60.0, "pass_marks": 50.0,
        });
        whole["reference"] = json!({"cost": 60.0, "minutes": 40.0});
        whole["visit"] = json!({
            "phone": {"phone_machine": "Old."},
            "store": {"belt": {"ready": "tomorrow", "price": 9.0}},
            "instrument": {
                "battery_percent": 90.0, "lead_broken": true, "lead_cracked": true, "fuse_blown": true,
                "gain": 1.1, "calibrated_months_ago": 3, "category": 3,
            },
            "papers": {"bought_months_ago": 5, "plate_readable": true, "misused": true, "covered_months": 24},
            "person": {"manner": "vague", "tenant": true, "haggles_percent": 5.0, "limit": 90.0},
            "place": ["dog"],
        });
        read_value("full", &whole).expect("a job")
    }

    #[test]
    fn every_field_of_a_job_has_its_place_on_the_form() {
        let shipped = job_files().expect("sound");
        let jobs = shipped.iter().map(|job| job.file.clone());
        for path in jobs.chain([full()]).flat_map(|job| paths_of(&job)) {
            assert!(JOB.field_at(&path).is_some(), "{path}");
        }
    }

    #[test]
    fn every_control_of_the_form_is_in_the_table_and_every_field_leads_to_one() {
        let html = as_text::<Form>(|| FormProps {
            job: full(),
            told: Vec::new(),
            edit: yew::Callback::noop(),
        });
        let drawn: Vec<&str> = html
            .split("id=\"")
            .filter_map(|rest| rest.split('"').next())
            .filter(|id| id.starts_with("field-"))
            .filter(|id| !id.ends_with("-hint") && !id.ends_with("-error"))
            .collect();
        let paths = paths_of(&full());
        for path in &paths {
            let leads = holders(path).any(|holder| drawn.contains(&id_of(holder).as_str()));
            assert!(leads, "{path} leads nowhere");
        }
        // A question has its fields on the form before anything is answered.
        let asked = |place: &str, questions: &[Question], end: &str| -> Vec<String> {
            let paths = questions.iter().map(|q| format!("{place}.{}{end}", q.id));
            paths.collect()
        };
        let more = [
            asked("customer.answers", &QUESTIONS, "[0]"),
            asked("customer.answers", &QUESTIONS, "[1]"),
            asked("visit.phone", &PHONE_QUESTIONS, ""),
        ];
        let known: Vec<(String, &str)> = paths
            .iter()
            .chain(more.iter().flatten())
            .flat_map(|path| holders(path))
            .map(|path| (id_of(path), path))
            .collect();
        for id in drawn {
            let path = known.iter().find(|(known, _)| known == id);
            let path = path.map_or_else(|| panic!("{id} is of no field"), |(_, path)| *path);
            let field = JOB.field_at(path).expect("in the table");
            assert!(html.contains(field.label()), "{path}: {}", field.label());
        }
    }
}
