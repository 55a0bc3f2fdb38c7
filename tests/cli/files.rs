//! `check`, and bytes that are no files.

use std::path::PathBuf;

use serde_json::Value;

use crate::code;
use crate::piped;
use crate::run;
use crate::said;

#[test]
fn check_names_an_unknown_field_and_ends_with_one() {
    let output = piped(
        &["check", "-"],
        br#"{"format":"tubwright-job-1","titel":"x"}"#,
    );
    assert_eq!(code(&output), 1);
    assert!(
        said(&output).contains("unknown field `titel`"),
        "{}",
        said(&output)
    );
}

#[test]
fn check_tells_all_problems_of_all_files_and_reads_the_rest() {
    let machine = std::fs::read_to_string("scenarios/machines/p.json").expect("ships");
    let broken = machine
        .replace("\"lid_switch\": \"SLID\"", "\"lid_switch\": \"SLIDE\"")
        .replace("\"cabinet\": \"CAB\"", "\"cabinet\": \"CABIN\"");
    assert_ne!(machine, broken);
    let words = ["check", "scenarios/jobs/no_water.json", "-", "--json"];
    let output = piped(&words, broken.as_bytes());
    assert_eq!(code(&output), 1, "{}", said(&output));
    let answer: Value = serde_json::from_slice(&output.stdout).expect("JSON");
    assert_eq!(answer[0]["problems"].as_array().map(Vec::len), Some(0));
    let problems = answer[1]["problems"].as_array().expect("a list");
    for (field, remedy) in [
        ("roles.lid_switch", "nearest is \"SLID\""),
        ("roles.cabinet", "nearest is \"CAB\""),
    ] {
        let told = problems.iter().any(|p| {
            p["field"] == field && p["remedy"].as_str().is_some_and(|r| r.contains(remedy))
        });
        assert!(told, "{field}: {problems:?}");
    }
}

#[test]
fn check_goes_on_behind_a_file_that_cannot_be_read_and_ends_with_two() {
    let output = run(&["check", "/no/such.json", "scenarios/jobs/no_water.json"]);
    assert_eq!(code(&output), 2);
    assert!(said(&output).contains("/no/such.json"));
    assert!(String::from_utf8_lossy(&output.stdout).contains("no_water.json: sound"));
}

#[test]
fn shipped_files_are_sound() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    let mut files = vec!["scenarios/faults.json".to_owned()];
    for kind in ["jobs", "machines", "sets"] {
        for entry in std::fs::read_dir(folder.join(kind)).expect("a folder") {
            let name = entry
                .expect("an entry")
                .file_name()
                .into_string()
                .expect("text");
            files.push(format!("scenarios/{kind}/{name}"));
        }
    }
    let words: Vec<&str> = ["check"]
        .into_iter()
        .chain(files.iter().map(String::as_str))
        .collect();
    let output = run(&words);
    assert_eq!(code(&output), 0, "{}", said(&output));
}

#[test]
fn no_bytes_make_it_panic() {
    let mut next = odd_bytes();
    for length in [0, 1, 7, 64, 400] {
        let bytes: Vec<u8> = (0..length).map(|_| next()).collect();
        for words in [
            &["check", "-"][..],
            &["probe", "--rows", "-"],
            &["play", "no_water", "-", "--quick"],
        ] {
            let output = piped(words, &bytes);
            assert!(code(&output) <= 2, "{words:?} {length}: {}", said(&output));
            assert!(!said(&output).contains("panicked"), "{words:?} {length}");
        }
    }
}

#[test]
fn a_good_file_with_bytes_changed_is_read_or_refused_and_never_panics() {
    let rows = "tests/fixtures/rows/refs_network.csv";
    let cases = [
        (&["check", "-"][..], "scenarios/jobs/no_water.json"),
        (&["check", "-"], "scenarios/machines/t.json"),
        (&["probe", "--rows", "-"], rows),
        (
            &["play", "no_water", "-", "--quick"],
            "tests/jobs/no_water.json",
        ),
    ];
    let mut next = odd_bytes();
    for (words, file) in cases {
        let mut good = std::fs::read(file).expect("ships");
        // A few rows are as good as all of them.
        good.truncate(if file == rows { 1500 } else { good.len() });
        for _ in 0..12 {
            let mut bytes = good.clone();
            for _ in 0..=next() % 6 {
                let at =
                    (usize::from(next()) << 16 | usize::from(next()) << 8 | usize::from(next()))
                        % bytes.len();
                bytes[at] = next();
            }
            let output = piped(words, &bytes);
            assert!(code(&output) <= 2, "{words:?}: {}", said(&output));
            assert!(!said(&output).contains("panicked"), "{}", said(&output));
        }
    }
}

/// A small linear congruential generator: the bytes only need to be odd.
fn odd_bytes() -> impl FnMut() -> u8 {
    let mut state = 12_345_u32;
    move || {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (state >> 24) as u8
    }
}

#[test]
fn a_folder_of_jobs_becomes_a_set_that_check_accepts() {
    let dir = env!("CARGO_TARGET_TMPDIR").to_owned() + "/jobs_to_pack";
    std::fs::create_dir_all(&dir).expect("a folder");
    for name in ["no_water", "hot_and_stops"] {
        let from = format!("{}/scenarios/jobs/{name}.json", env!("CARGO_MANIFEST_DIR"));
        std::fs::copy(from, format!("{dir}/{name}.json")).expect("copied");
    }
    let output = run(&["pack", &dir, "--title", "Two", "--mastered-at", "70"]);
    assert_eq!(code(&output), 0, "{}", said(&output));
    let set = String::from_utf8(output.stdout).expect("text");
    let value: serde_json::Value = serde_json::from_str(&set).expect("JSON");
    assert_eq!(
        value["jobs"],
        serde_json::json!(["no_water", "hot_and_stops"])
    );
    assert_eq!(code(&piped(&["check", "-"], set.as_bytes())), 0);
    let output = run(&["pack", &dir, "--sealed"]);
    let sealed = String::from_utf8(output.stdout).expect("text");
    assert!(
        !sealed.contains("tap_closed"),
        "the class's copy shows the answer"
    );
    assert_eq!(code(&piped(&["check", "-"], sealed.as_bytes())), 0);
    let output = run(&["pack", "/no/such/folder"]);
    assert_eq!(code(&output), 2);
    assert!(said(&output).contains("/no/such/folder"));
}
