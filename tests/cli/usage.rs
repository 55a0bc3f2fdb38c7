//! Words of the command line: wrong ones, help, lists, a reader that goes early.

use std::process::Command;
use std::process::Stdio;

use crate::code;
use crate::json;
use crate::run;
use crate::said;

#[test]
fn wrong_words_say_what_would_be_right_and_end_with_two() {
    let wrong = [
        (
            "probe --machine P --state agitX ohms MA MC",
            "nearest is \"agitA\"",
        ),
        ("probe --machine Q --state off ohms MA MC", "N, P, T"),
        (
            "probe --machine P --state off ohm MA MC",
            "ac_volts, low_ac_volts",
        ),
        (
            "probe --machine P --state off ohms MA",
            "red and the black lead",
        ),
        ("probe --machine P --state off clamp", "element in its jaws"),
        (
            "probe --machine P --state off ohms MA XX",
            "no such node of this machine",
        ),
        (
            "probe --machine P --state off clamp XX",
            "no such element of this machine",
        ),
        (
            "probe --machine P --state off --open XX ohms MA MC",
            "open[0]: \"XX\"",
        ),
        (
            "probe --machine P --state off --link 5 ohms MA MC",
            "write OHM:A-B",
        ),
        (
            "probe --machine P --state off --link NaN:CAB-0 ohms MA MC",
            "write OHM:A-B",
        ),
        ("probe --machine P --state off", "<READING>"),
        ("probe --state off ohms MA MC", "--machine"),
        ("probe --rows x.csv --machine P", "cannot be used with"),
        ("probe --rows /no/such.csv", "/no/such.csv"),
        (
            "simulate --machine P --fault E999",
            "tubwright faults --machine P",
        ),
        ("simulate --machine P --fault E51=3", "from 0 to 1"),
        ("simulate --machine P --fault E51=nan", "from 0 to 1"),
        ("simulate --machine P --program boil", "Quick"),
        ("simulate --machine P --load -1", "0 to 30 is possible"),
        ("simulate --machine P --set belt", "write NAME=VALUE"),
        ("simulate --machine P --set belt.colour=1", "belt.colour"),
        (
            "simulate --machine P --set belt.tension_n=inf",
            "belt.tension_n",
        ),
        ("simulate --machine no/such.json", "no/such.json"),
        ("play no_such_job x.json", "hums_and_stands"),
        (
            "play hums_and_stands /no/such/log.json",
            "/no/such/log.json",
        ),
        ("draw --machine P --view inside", "section"),
        ("draw --machine P --view opened --off roof", "back_cover"),
        ("draw --machine P --view section --at 99999999", "7200"),
        (
            "draw --machine P --view section --out /no/such/p.svg",
            "/no/such/p.svg",
        ),
        ("access --machine Q", "N, P, T"),
        ("schema poem", "tubwright-job-1"),
        ("check", "<FILE>"),
        ("wash", "unrecognized subcommand"),
        ("", "Usage"),
    ];
    for (line, remedy) in wrong {
        let words: Vec<&str> = line.split_whitespace().collect();
        let output = run(&words);
        assert_eq!(code(&output), 2, "{line}: {}", said(&output));
        assert!(said(&output).contains(remedy), "{line}: {}", said(&output));
        assert!(output.stdout.is_empty(), "{line} answers");
    }
}

#[test]
fn help_of_every_command_says_its_exit_codes() {
    let commands = [
        "check",
        "probe",
        "simulate",
        "play",
        "faults",
        "rules",
        "instruments",
        "access",
        "schema",
        "draw",
        "pack",
    ];
    let whole = run(&["--help"]);
    let listed = String::from_utf8_lossy(&whole.stdout).into_owned();
    for command in commands {
        assert!(listed.contains(command), "{command} is not listed");
        let output = run(&[command, "--help"]);
        assert_eq!(code(&output), 0);
        let text = String::from_utf8_lossy(&output.stdout).into_owned();
        assert!(text.contains("Exit codes"), "{command}: {text}");
    }
    assert_eq!(code(&run(&["--version"])), 0);
}

#[test]
fn a_reader_that_goes_early_ends_the_program_quietly() {
    for words in [
        &["simulate", "--machine", "P", "--csv"][..],
        &["faults", "--machine", "P", "--json"],
        &["schema"],
    ] {
        let mut child = Command::new(env!("CARGO_BIN_EXE_tubwright"))
            .args(words)
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .expect("the program starts");
        drop(child.stdout.take());
        let output = child.wait_with_output().expect("ends");
        assert_eq!(code(&output), 0, "{words:?}: {}", said(&output));
        assert!(!said(&output).contains("panicked"), "{}", said(&output));
    }
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
    let says = |list: serde_json::Value, fields: &[&str]| {
        for entry in list.as_array().expect("a list") {
            for field in fields {
                assert!(!entry[*field].is_null(), "{field} of {entry}");
            }
        }
    };
    says(
        json(&["rules", "--json"]),
        &["id", "severity", "text", "source", "right_way"],
    );
    says(
        json(&["instruments", "--json"]),
        &["mode", "act", "name", "unit"],
    );
    says(
        json(&["access", "--machine", "P", "--json"]),
        &[
            "id",
            "tools",
            "minutes_off",
            "minutes_on",
            "n_fasteners",
            "refit_check",
        ],
    );
    let steps = json(&["access", "--machine", "N", "--json"]);
    assert!(
        steps
            .as_array()
            .is_some_and(|l| l.iter().any(|s| s["id"] == "back_cover"))
    );
    let formats = json(&["schema"]);
    for format in ["machine", "faults", "job", "set", "record"] {
        let name = format!("tubwright-{format}-1");
        assert!(formats.get(&name).is_some(), "{name}");
    }
}
