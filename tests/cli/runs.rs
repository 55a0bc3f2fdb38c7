//! `play`, `simulate`, `draw`: machines and jobs that run.

use serde_json::Value;

use crate::code;
use crate::json;
use crate::piped;
use crate::run;
use crate::said;

#[test]
fn play_gives_marks_and_the_same_state_each_time() {
    let words = [
        "play",
        "hums_and_stands",
        "tests/jobs/hums_and_stands.json",
        "--json",
    ];
    let quick = [&words[..], &["--quick"]].concat();
    let (first, second) = (json(&words), json(&quick));
    assert_eq!(first["state_hash"], second["state_hash"]);
    assert_eq!(first["report"]["basis"], "decisions");
    assert_eq!(second["report"]["basis"], "bill");
    let steps = first["steps"].as_array().map_or(0, Vec::len);
    let likely = first["likely"].as_array().expect("after each step");
    assert_eq!(likely.len(), steps + 1, "and after the complaint");
    let decisions = &first["decisions"];
    let number = |value: &Value| value.as_f64().expect("a number");
    let each = decisions["each"].as_array().expect("a list");
    let sum: f64 = each.iter().map(|d| number(&d["avoidable"])).sum();
    assert!((sum - number(&decisions["avoidable"])).abs() < 1e-9);
    let parts = number(&first["report"]["target_cost"]) + sum + number(&decisions["chance"]);
    assert!((parts - number(&first["report"]["cost"])).abs() < 1e-9);
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
fn play_tells_refusals_and_broken_rules_and_goes_on() {
    let log = br#"[{"tick": 0, "do": "take_off", "step": "belt_off"},
                   {"tick": 10, "do": "take_off", "step": "roof"},
                   {"tick": 20, "do": "close"},
                   {"tick": 9000, "do": "note"}]"#;
    let output = piped(&["play", "hums_and_stands", "-", "--quick"], log);
    assert_eq!(code(&output), 0, "{}", said(&output));
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    for part in [
        "refused: in the way",
        "refused: this machine has no \"roof\"",
        "refused: the job is over",
        "function check at hand-over: failed",
        "not repaired",
        "safety",
    ] {
        assert!(text.contains(part), "{part}: {text}");
    }
    let output = piped(&["play", "hums_and_stands", "-", "--json", "--quick"], log);
    let answer: Value = serde_json::from_slice(&output.stdout).expect("JSON");
    assert!(answer["steps"][0]["refusal"]["in_the_way"]["steps"].is_array());
    assert_eq!(answer["steps"][2]["began_tick"], 20);
    assert_eq!(answer["report"]["function"]["passed"], false);
}

#[test]
fn a_wrong_log_is_told_act_by_act() {
    let log = br#"[{"tick": 5, "do": "note"}, {"tick": 4, "do": "note"},
                   {"tick": 6, "do": "notes"}, {"tick": 1e30, "do": "note"}]"#;
    let output = piped(&["play", "hums_and_stands", "-"], log);
    assert_eq!(code(&output), 2);
    for part in ["-: [1].tick: 4", "-: [2]: \"do\": \"notes\"", "-: [3]"] {
        assert!(said(&output).contains(part), "{part}: {}", said(&output));
    }
}

#[test]
fn simulate_gives_figures_of_a_program_with_a_load_and_a_fault() {
    let spin = |more: &str| {
        let line = format!("simulate --machine P --program Quick --load 2 --json {more}");
        let words: Vec<&str> = line.split_whitespace().collect();
        json(&words)
    };
    let sound = spin("");
    assert!(sound["alarm"].is_null());
    assert!(
        sound["spin_rpm"]
            .as_f64()
            .is_some_and(|rpm| (700.0..800.0).contains(&rpm))
    );
    let slack = spin("--set belt.tension_n=5");
    assert_ne!(sound["spin_rpm"], slack["spin_rpm"]);
    let shut = spin("--fault tap_closed");
    assert!(shut["alarm"].is_string(), "{shut}");
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
fn the_seed_decides_what_an_unchecked_refit_leaves_wrong() {
    let log = br#"[{"tick": 0, "do": "plug", "inserted": false},
                   {"tick": 400, "do": "take_off", "step": "pull_out"},
                   {"tick": 2000, "do": "refit", "step": "pull_out"}]"#;
    let drain_s = |seed: &str| {
        let words = [
            "play",
            "squeals_and_comes_out_wet",
            "-",
            "--json",
            "--quick",
            "--seed",
            seed,
        ];
        let output = piped(&words, log);
        let answer: Value = serde_json::from_slice(&output.stdout).expect("JSON");
        let lines = answer["report"]["function"]["lines"].clone();
        let lines = lines.as_array().expect("a list").clone();
        let drain = lines.iter().find(|line| line["what"] == "time to drain");
        drain.expect("a line")["value"].as_f64().expect("a number")
    };
    let all: Vec<f64> = (1..=12).map(|seed| drain_s(&seed.to_string())).collect();
    let (least, most) = all
        .iter()
        .fold((f64::MAX, 0.0_f64), |(a, b), s| (a.min(*s), b.max(*s)));
    assert!(most > 1.5 * least, "a kinked hose drains slowly: {all:?}");
}
