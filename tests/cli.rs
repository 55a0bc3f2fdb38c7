//! The command line as its users meet it: answers, error words, exit codes.

use std::io::Write;
use std::path::PathBuf;
use std::process::Command;
use std::process::Output;
use std::process::Stdio;

use serde_json::Value;

fn run(words: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_tubwright"))
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .args(words)
        .output()
        .expect("the program starts")
}

fn code(output: &Output) -> i32 {
    output.status.code().expect("ends by itself")
}

fn json(words: &[&str]) -> Value {
    let output = run(words);
    assert_eq!(
        code(&output),
        0,
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    serde_json::from_slice(&output.stdout).expect("JSON")
}

fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// The reference value of the row "P agitA E51 C1-C2" is 240.8 V (ngspice).
#[test]
fn probe_reads_what_the_reference_reads() {
    let readings = json(&[
        "probe",
        "--machine",
        "P",
        "--state",
        "agitA",
        "--fault",
        "E51",
        "--json",
        "ac_volts",
        "C1",
        "C2",
        "clamp",
        "RCL",
    ]);
    let value = |i: usize| readings[i]["value"].as_f64().expect("a number");
    assert!((value(0) - 240.8).abs() < 0.1, "{}", value(0));
    assert!((value(1) - 2.964).abs() < 0.003, "{}", value(1));
}

#[test]
fn every_row_of_the_reference_is_met_on_the_command_line() {
    let output = run(&["probe", "--rows", "tests/fixtures/rows/refs_network.csv"]);
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    assert_eq!(
        code(&output),
        0,
        "{}",
        text.lines().last().unwrap_or_default()
    );
    assert!(text.trim_end().ends_with("0 failed"));
}

#[test]
fn a_row_that_is_missed_ends_with_one() {
    let row = "variant,state,fault,quantity,value,unit,lid,setup,signed_slip,display\n\
               P,off,none,Vac(10M||100p) TBL-TBN,200.0,V,closed,,1.0,\n";
    let output = piped(&["probe", "--rows", "-"], row.as_bytes());
    assert_eq!(code(&output), 1);
    assert!(String::from_utf8_lossy(&output.stdout).contains("MISSED line 2"));
}

#[test]
fn wrong_words_say_what_would_be_right_and_end_with_two() {
    let wrong = [
        (
            vec![
                "probe",
                "--machine",
                "P",
                "--state",
                "agitX",
                "ohms",
                "MA",
                "MC",
            ],
            "agitA",
        ),
        (
            vec![
                "probe",
                "--machine",
                "Q",
                "--state",
                "off",
                "ohms",
                "MA",
                "MC",
            ],
            "N, P, T",
        ),
        (
            vec!["simulate", "--machine", "P", "--fault", "E999"],
            "tubwright faults --machine P",
        ),
        (
            vec!["simulate", "--machine", "P", "--fault", "E51=3"],
            "from 0 to 1",
        ),
        (
            vec!["simulate", "--machine", "P", "--program", "boil"],
            "Quick",
        ),
        (vec!["play", "no_such_job", "x.json"], "hums_and_stands"),
        (
            vec!["play", "hums_and_stands", "/no/such/log.json"],
            "/no/such/log.json",
        ),
    ];
    for (words, remedy) in wrong {
        let output = run(&words);
        assert_eq!(code(&output), 2, "{words:?}");
        assert!(
            said(&output).contains(remedy),
            "{words:?}: {}",
            said(&output)
        );
    }
}

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
fn shipped_files_are_sound() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    let mut files = vec!["scenarios/faults.json".to_owned()];
    for kind in ["jobs", "machines"] {
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
fn play_gives_marks_and_the_same_state_each_time() {
    let words = [
        "play",
        "hums_and_stands",
        "tests/jobs/hums_and_stands.json",
        "--json",
    ];
    let (first, second) = (json(&words), json(&words));
    assert_eq!(first["state_hash"], second["state_hash"]);
    assert_eq!(first["safety"].as_array().map(Vec::len), Some(0));
    assert!(
        first["report"]["total"]
            .as_f64()
            .is_some_and(|total| total > 95.0)
    );
    assert!(
        !first["debrief"]["shown_by"]
            .as_array()
            .expect("a list")
            .is_empty()
    );
}

#[test]
fn simulate_writes_a_line_a_second() {
    let output = run(&["simulate", "--machine", "P", "--csv"]);
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    let mut lines = text.lines();
    let columns = lines.next().expect("a header").split(',').count();
    let n = lines
        .inspect(|line| assert_eq!(line.split(',').count(), columns))
        .count();
    assert!((2900..3200).contains(&n), "{n} seconds of a normal wash");
}

#[test]
fn lists_have_what_their_help_says() {
    assert!(
        json(&["faults", "--machine", "P", "--json"])
            .as_array()
            .is_some_and(|l| l.len() >= 90)
    );
    assert!(
        json(&["rules", "--json"])
            .as_array()
            .is_some_and(|l| l.len() >= 30)
    );
    assert!(
        json(&["instruments", "--json"])
            .as_array()
            .is_some_and(|l| l.len() >= 10)
    );
    let steps = json(&["access", "--machine", "N", "--json"]);
    assert!(
        steps
            .as_array()
            .is_some_and(|l| l.iter().any(|s| s["id"] == "back_cover"))
    );
    assert!(
        json(&["schema"])
            .as_object()
            .is_some_and(|formats| formats.len() == 3)
    );
}

#[test]
fn draw_writes_a_picture() {
    for view in ["outside", "opened", "section", "water", "wiring"] {
        let output = run(&["draw", "--machine", "P", "--view", view]);
        let text = String::from_utf8_lossy(&output.stdout).into_owned();
        assert_eq!(code(&output), 0, "{view}: {}", said(&output));
        assert!(
            text.starts_with("<svg") && text.trim_end().ends_with("</svg>"),
            "{view}"
        );
    }
}

#[test]
fn no_bytes_make_it_panic() {
    // A small linear congruential generator: the bytes only need to be odd.
    let mut state = 12_345_u32;
    let mut next = || {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (state >> 24) as u8
    };
    for length in [0, 1, 7, 64, 400] {
        let bytes: Vec<u8> = (0..length).map(|_| next()).collect();
        for words in [
            &["check", "-"][..],
            &["probe", "--rows", "-"],
            &["play", "no_water", "-"],
        ] {
            let output = piped(words, &bytes);
            assert!(code(&output) <= 2, "{words:?} {length}: {}", said(&output));
            assert!(!said(&output).contains("panicked"), "{words:?} {length}");
        }
    }
}

fn piped(words: &[&str], bytes: &[u8]) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_tubwright"))
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .args(words)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    let mut stdin = child.stdin.take().expect("a pipe");
    // A program that has seen enough may close its end first.
    let _ = stdin.write_all(bytes);
    drop(stdin);
    child.wait_with_output().expect("ends")
}
