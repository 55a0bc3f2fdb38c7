//! The expert never sees the truth.

use std::fs;
use std::path::Path;

use tubwright::expert::Belief;
use tubwright::expert::Seen;
use tubwright::scenario::jobs;

#[test]
fn at_the_door_a_faulty_machine_and_a_sound_one_are_believed_the_same() {
    let all = jobs().expect("sound");
    let faulty = all.iter().find(|s| s.id == "no_water").expect("ships");
    let mut sound = (**faulty).clone();
    sound.faults.clear();
    let of = |seen: Seen| Belief::of(&seen).expect("runs").probabilities();
    assert!(Seen::at_the_door(faulty).scenario.faults.is_empty());
    assert_eq!(of(Seen::at_the_door(faulty)), of(Seen::at_the_door(&sound)));
}

#[test]
fn only_what_strips_and_what_supposes_faults_reads_a_scenarios_faults() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/expert");
    for entry in fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        let name = path
            .file_name()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned();
        if !name.ends_with(".rs") || ["seen.rs", "twin.rs", "brute.rs"].contains(&name.as_str()) {
            continue;
        }
        let text = fs::read_to_string(&path).expect("readable");
        // Tests suppose what they like; they stand at the end.
        let program = text.split("#[cfg(test)]").next().unwrap_or_default();
        for words in ["scenario().faults", "scenario.faults", "blind.faults"] {
            assert!(
                !program.contains(words),
                "src/expert/{name} reads `{words}`"
            );
        }
    }
}
