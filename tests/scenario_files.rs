//! What ships as data: machines, fault catalogue and jobs hang together, and the published
//! schemas accept every file that the readers accept.

use std::collections::BTreeMap;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use serde_json::Value;
use tubwright::scenario::catalogue;
use tubwright::scenario::fault_file::ChangeFile;
use tubwright::scenario::fault_file::FaultFile;
use tubwright::scenario::fault_file::Touched;
use tubwright::scenario::job_file_from_text;
use tubwright::scenario::job_files;
use tubwright::scenario::machine_file::MachineFile;
use tubwright::scenario::machine_files;
use tubwright::scenario::made_good;
use tubwright::scenario::read_catalogue;
use tubwright::scenario::read_machine;
use tubwright::scenario::schema;
use tubwright::scenario::set_from_text;
use tubwright::scenario::workshop_file::WorkKindFile;
use tubwright::scenario::write::write;

mod scenario_files {
    pub mod validator;
}
use scenario_files::validator::Validator;

fn machine(id: &str) -> &'static MachineFile {
    let machines = machine_files().expect("sound");
    machines.iter().find(|m| m.id == id).expect("ships")
}

fn touched(fault: &FaultFile, machine: &MachineFile) -> BTreeSet<Touched> {
    fault.machines[&machine.id]
        .iter()
        .flat_map(ChangeFile::touches)
        .collect()
}

#[test]
fn every_fault_is_made_good_by_one_work_or_is_two_faults_at_once() {
    for machine in machine_files().expect("sound") {
        let works: Vec<_> = machine
            .workshop
            .works
            .iter()
            .map(|work| made_good(machine, work))
            .collect();
        let faults = &catalogue().expect("sound").faults;
        for fault in faults
            .iter()
            .filter(|f| f.machines.contains_key(&machine.id))
        {
            // A house without earth and a motor with a fault to its frame need two works, as
            // the name says; so does a weak source at a low voltage.
            let is_two = ["earth_open_and_winding_to_frame", "generator_supply"]
                .contains(&fault.id.as_str());
            let touched = touched(fault, machine);
            let one_does = works.iter().any(|good| touched.is_subset(good));
            assert!(
                one_does || is_two,
                "{}: {} touches {touched:?}",
                machine.id,
                fault.id
            );
        }
    }
}

#[test]
fn every_part_has_a_fault_that_its_replacement_makes_good() {
    for machine in machine_files().expect("sound") {
        let faults = &catalogue().expect("sound").faults;
        for part in &machine.workshop.parts {
            let mine = faults
                .iter()
                .filter(|f| f.part == part.id && f.machines.contains_key(&machine.id))
                .count();
            // A whole harness, a foil or a guard may be good for one fault only; all have one.
            assert!(mine > 0, "{}: no fault for {}", machine.id, part.id);
        }
    }
}

#[test]
fn the_catalogue_is_large_and_its_entries_differ() {
    let faults = &catalogue().expect("sound").faults;
    assert!(faults.len() >= 150, "{}", faults.len());
    for machine in machine_files().expect("sound") {
        let mut distinct: BTreeMap<String, Vec<&str>> = BTreeMap::new();
        for fault in faults {
            if let Some(changes) = fault.machines.get(&machine.id) {
                let text = serde_json::to_string(changes).expect("writes");
                distinct.entry(text).or_default().push(&fault.id);
            }
        }
        assert!(distinct.len() >= 90, "{}: {}", machine.id, distinct.len());
    }
}

#[test]
fn all_rows_of_the_reference_lists_are_in_the_catalogue() {
    let references: BTreeSet<&str> = catalogue()
        .expect("sound")
        .faults
        .iter()
        .map(|f| f.reference.as_str())
        .collect();
    for number in 1..=82 {
        let name = format!("M{number:02}");
        assert!(references.contains(name.as_str()), "{name}");
    }
    // The electrical list leaves out 59 and 76.
    for number in (1..=92).filter(|n| ![59, 76].contains(n)) {
        let name = format!("E{number:02}");
        assert!(references.contains(name.as_str()), "{name}");
    }
}

#[test]
fn every_probe_place_of_the_wiring_has_a_test_point() {
    for machine in machine_files().expect("sound") {
        let points: BTreeSet<&str> = machine
            .workshop
            .test_points
            .iter()
            .map(|t| t.node.as_str())
            .collect();
        for (node, about) in machine
            .wiring
            .nodes
            .iter()
            .filter(|(_, about)| about.accessible)
        {
            // The motor's star point lies inside its winding.
            if node != "MX" {
                let (id, label) = (&machine.id, &about.label);
                assert!(points.contains(node.as_str()), "{id}: {node} ({label})");
            }
        }
    }
}

#[test]
fn test_points_and_parts_have_names_of_their_own() {
    for machine in machine_files().expect("sound") {
        let workshop = &machine.workshop;
        let mut seen = BTreeSet::new();
        for point in &workshop.test_points {
            assert!(
                seen.insert(&point.name),
                "{}: {} twice",
                machine.id,
                point.name
            );
        }
        let mut seen = BTreeSet::new();
        for part in &workshop.parts {
            assert!(
                seen.insert(&part.name),
                "{}: {} twice",
                machine.id,
                part.name
            );
        }
    }
}

#[test]
fn each_job_can_be_put_right_with_what_is_in_the_van_or_by_hand() {
    for job in job_files().expect("sound") {
        let machine = machine(&job.file.machine);
        for fault in &job.file.faults {
            let entry = catalogue()
                .expect("sound")
                .faults
                .iter()
                .find(|f| f.id == fault.id);
            let touched = touched(entry.expect("checked"), machine);
            let possible = machine.workshop.works.iter().any(|work| {
                let at_hand =
                    work.kind != WorkKindFile::Replace || job.file.van.contains(&work.part);
                at_hand && touched.is_subset(&made_good(machine, work))
            });
            assert!(possible, "{}: {}", job.id, fault.id);
        }
    }
}

#[test]
fn titles_and_answers_do_not_name_the_cause() {
    for job in job_files().expect("sound") {
        for fault in &job.file.faults {
            let entry = catalogue()
                .expect("sound")
                .faults
                .iter()
                .find(|f| f.id == fault.id);
            let part = &entry.expect("checked").part.replace('_', " ");
            let title = job.file.title.to_lowercase();
            assert!(
                part.is_empty() || !title.contains(part.as_str()),
                "{}: {title}",
                job.id
            );
        }
    }
}

/// Every shipped file with the format it claims.
fn shipped_files() -> Vec<(String, Value)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    let mut files = vec![root.join("faults.json")];
    for folder in ["machines", "jobs", "sets"] {
        let entries = fs::read_dir(root.join(folder)).expect("ships");
        files.extend(entries.map(|entry| entry.expect("readable").path()));
    }
    files.sort();
    files
        .into_iter()
        .map(|path| {
            let text = fs::read_to_string(&path).expect("readable");
            let value = serde_json::from_str(&text).expect("JSON");
            (path.display().to_string(), value)
        })
        .collect()
}

#[test]
fn the_schemas_accept_every_shipped_file() {
    let schemas: BTreeMap<&str, Value> = schema()
        .into_iter()
        .map(|(format, schema)| (format, schema.into()))
        .collect();
    for (path, value) in shipped_files() {
        let format = value["format"].as_str().expect("states its format");
        let problems = Validator::new(&schemas[format]).problems(&value);
        assert!(problems.is_empty(), "{path}: {problems:?}");
    }
}

#[test]
fn the_schemas_refuse_an_unknown_field_a_missing_one_and_a_wrong_type() {
    let schemas: BTreeMap<&str, Value> = schema()
        .into_iter()
        .map(|(format, schema)| (format, schema.into()))
        .collect();
    for (path, value) in shipped_files() {
        let format = value["format"]
            .as_str()
            .expect("states its format")
            .to_owned();
        let validator = Validator::new(&schemas[format.as_str()]);
        let mut unknown = value.clone();
        unknown["colour"] = Value::from("red");
        assert!(
            validator
                .problems(&unknown)
                .iter()
                .any(|p| p.contains("colour")),
            "{path}"
        );
        let mut missing = value.clone();
        missing.as_object_mut().expect("an object").remove("format");
        assert!(
            validator
                .problems(&missing)
                .iter()
                .any(|p| p.contains("format")),
            "{path}"
        );
        let mut wrong = value;
        wrong["format"] = Value::from(1);
        assert!(!validator.problems(&wrong).is_empty(), "{path}");
    }
}

#[test]
fn every_job_file_that_lies_in_the_folder_is_shipped() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios/jobs");
    let mut lying: Vec<String> = fs::read_dir(folder)
        .expect("ships")
        .filter_map(|entry| {
            let path = entry.expect("readable").path();
            path.file_stem()
                .map(|stem| stem.to_string_lossy().into_owned())
        })
        .collect();
    lying.sort();
    let mut shipped: Vec<String> = job_files()
        .expect("sound")
        .iter()
        .map(|job| job.id.to_owned())
        .collect();
    shipped.sort();
    assert_eq!(lying, shipped);
}

/// `TUBWRIGHT_WRITE=1 cargo test --test scenario_files` lays the files out anew.
fn is_written_as(path: &Path, again: &str) {
    let text = fs::read_to_string(path).expect("ships");
    if std::env::var_os("TUBWRIGHT_WRITE").is_some() {
        fs::write(path, again).expect("can be written");
    } else {
        assert!(again == text, "{} is laid out differently", path.display());
    }
}

#[test]
fn every_shipped_file_read_and_written_again_is_the_same_to_the_byte() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    for job in job_files().expect("sound") {
        let again = write(&job.file).expect("writes");
        is_written_as(&root.join(format!("jobs/{}.json", job.id)), &again);
    }
    for machine in machine_files().expect("sound") {
        let name = machine.id.to_lowercase();
        let again = write(machine).expect("writes");
        is_written_as(&root.join(format!("machines/{name}.json")), &again);
    }
    let again = write(catalogue().expect("sound")).expect("writes");
    is_written_as(&root.join("faults.json"), &again);
    let folder = fs::read_dir(root.join("sets")).expect("ships");
    for path in folder.map(|entry| entry.expect("readable").path()) {
        let text = fs::read_to_string(&path).expect("readable");
        let set = set_from_text("set", &text).expect("sound");
        is_written_as(&path, &write(&set).expect("writes"));
    }
}

/// What the writer leaves out or puts in would be a change of what the file says.
#[test]
fn writing_a_shipped_file_neither_adds_nor_drops_a_field() {
    for (path, value) in shipped_files() {
        let text = value.to_string();
        let again = match value["format"].as_str().expect("states its format") {
            "tubwright-job-1" => as_value(&job_file_from_text(&path, &text).expect("sound")),
            "tubwright-faults-1" => as_value(&read_catalogue(&path, &text).expect("sound")),
            "tubwright-set-1" => as_value(&set_from_text(&path, &text).expect("sound")),
            _ => {
                let all = catalogue().expect("sound");
                as_value(&read_machine(&path, &text, all).expect("sound"))
            }
        };
        assert!(
            again == value,
            "{path} says something else when it is written"
        );
    }
}

fn as_value<T: serde::Serialize>(file: &T) -> Value {
    serde_json::to_value(file).expect("writes")
}
