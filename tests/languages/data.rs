//! The texts in the shipped data: names of parts, what customers say, what faults are.

use serde_json::Value;
use std::path::Path;

use crate::message::Message;

/// Where texts stand in a kind of file: the file of `locales/en`, the folder or file below `scenarios`,
/// the fields. `[]` is every entry of a list, `*` every field of an object.
const KINDS: [(&str, &str, &[&str]); 5] = [
    ("machines", "machines", &MACHINES),
    (
        "faults",
        "faults.json",
        &[
            "faults[].name",
            "faults[].complaint",
            "faults[].change",
            "faults[].severity",
        ],
    ),
    ("jobs", "jobs", &JOBS),
    ("jobs", "sets", &["title", "about"]),
    (
        "jobs",
        "assessments",
        &[
            "title",
            "variants.customers[].home",
            "variants.customers[].name",
        ],
    ),
];

const MACHINES: [&str; 35] = [
    "name",
    "description",
    "rating_plate.fuse",
    "control.electronic.level.targets[].name",
    "control.electronic.programs[].name",
    "control.electronic.service_steps[].title",
    "roles.level_switch.knob[].name",
    "wiring.nodes.*.label",
    "wiring.elements.*.what",
    "workshop.connectors[].name",
    "workshop.connectors[].harms[].what",
    "workshop.data_sheet[].what",
    "workshop.parts[].name",
    "workshop.parts[].does",
    "workshop.parts[].fails",
    "workshop.parts[].variants[].name",
    "workshop.places[].name",
    "workshop.programs[]",
    "workshop.service_steps[]",
    "workshop.steps[].caution",
    "workshop.steps[].fasteners",
    "workshop.steps[].name",
    "workshop.steps[].refit_check",
    "workshop.steps[].refit_verb",
    "workshop.steps[].verb",
    "workshop.steps[].harms[].what",
    "workshop.steps[].mistakes[].what",
    "workshop.steps[].tools[]",
    "workshop.test_points[].name",
    "workshop.works[].caution",
    "workshop.works[].check",
    "workshop.works[].fasteners",
    "workshop.works[].name",
    "workshop.works[].tools[]",
    "workshop.works[].mistakes[].what",
];

const JOBS: [&str; 20] = [
    "title",
    "skills[]",
    "customer.name",
    "customer.home",
    "customer.attitude",
    "customer.complaint",
    "site.notes",
    "visit.phone.phone_machine",
    "visit.phone.phone_place",
    "visit.phone.phone_stage",
    "customer.answers.always[]",
    "customer.answers.load[]",
    "customer.answers.noise[]",
    "customer.answers.power[]",
    "customer.answers.shown[]",
    "customer.answers.since[]",
    "customer.answers.smell[]",
    "customer.answers.water[]",
    "customer.answers.when[]",
    "customer.answers.worked_on[]",
];

/// All of them, with the file of `locales/en` they belong in.
pub fn messages() -> Vec<(String, Message)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    let mut found = Vec::new();
    for (file, place, fields) in KINDS {
        let path = root.join(place);
        let mut sources = match path.is_dir() {
            true => std::fs::read_dir(&path)
                .expect("a folder of data")
                .map(|entry| entry.expect("an entry").path())
                .collect(),
            false => vec![path],
        };
        sources.sort_unstable();
        for source in sources {
            let name = source
                .file_name()
                .and_then(|name| name.to_str())
                .expect("a name");
            let text = std::fs::read_to_string(&source).expect("a file of data");
            let value: Value = serde_json::from_str(&text).expect("JSON");
            for field in fields {
                texts(&value, field, &mut |text| {
                    // A designation is the same in every language.
                    if text.chars().any(char::is_alphabetic) {
                        found.push((file.to_owned(), Message::plain(text, name)));
                    }
                });
            }
        }
    }
    found
}

fn texts(value: &Value, field: &str, met: &mut dyn FnMut(&str)) {
    if field.is_empty() {
        if let Some(text) = value.as_str() {
            met(text);
        }
        return;
    }
    let (first, rest) = field.split_once('.').unwrap_or((field, ""));
    if first == "*" {
        for one in value.as_object().into_iter().flat_map(|map| map.values()) {
            texts(one, rest, met);
        }
    } else if let Some(name) = first.strip_suffix("[]") {
        for one in value[name].as_array().into_iter().flatten() {
            texts(one, rest, met);
        }
    } else {
        texts(&value[first], rest, met);
    }
}
