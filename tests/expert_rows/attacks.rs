//! Ways to get marks without the skill, and the run of a technician who was right and unlucky: each
//! with the total another program gave it.

use std::path::Path;

use serde_json::Value;
use serde_json::json;

use crate::rows::Case;
use crate::runs::Marked;
use crate::runs::mark;
use crate::runs::word;

const INSTANCES: &str = include_str!("../fixtures/rows/instances.json");
const ALL: [&str; 5] = ["refit", "leak", "verify", "elec_test", "record"];

fn marked(run: &Value) -> Marked {
    let all: Value = serde_json::from_str(INSTANCES).expect("JSON");
    let case = Case {
        name: "RUN",
        value: &all["RUN"],
        all: &all,
        folder: Path::new(""),
    };
    mark(&case, run).expect("a run")
}

fn run(events: Value, first: &[&str], last: &[&str], truth: &str) -> Value {
    json!({
        "events": events, "truth": truth, "declared_first": first, "declared_final": last,
        "proc_done": ALL,
    })
}

fn expert() -> Value {
    let events = json!([["T", "LISTEN", "silent"], ["T", "OHM", "open"], ["R", "A"]]);
    run(events, &["A"], &["A"], "A")
}

fn with_more(more: &[Value]) -> Value {
    let mut run = expert();
    let events = run["events"].as_array_mut().expect("events");
    events.extend_from_slice(more);
    run
}

/// Total to two places and plain result.
fn told(run: &Value) -> (String, String) {
    let marked = marked(run);
    (format!("{:.2}", marked.total()), word(&marked.verdict()))
}

fn is(run: &Value, total: &str, result: &str) {
    assert_eq!(told(run), (total.to_owned(), result.to_owned()));
}

#[test]
fn the_same_decisions_with_bad_luck_earn_the_same() {
    let events = json!([
        ["T", "LISTEN", "silent"],
        ["T", "OHM", "open"],
        ["R", "A"],
        ["T", "HARN", "ok"],
        ["T", "VOLT", "none"],
        ["R", "E"],
    ]);
    let unlucky = run(events, &["A"], &["E"], "E");
    let marked = marked(&unlucky);
    let account = &marked.walk.account;
    assert!((account.paid() - 264.0).abs() < 1e-9);
    assert!(account.avoidable().abs() < 1e-9);
    assert!((account.chance() - 182.422).abs() < 1e-3);
    is(&unlucky, "100.00", "DISTINCTION");
}

#[test]
fn closing_without_work_earns_next_to_nothing() {
    let mut lazy = run(json!([["CLOSE"]]), &[], &[], "A");
    lazy["proc_done"] = json!([]);
    let marked = marked(&lazy);
    assert_eq!(format!("{:.2}", marked.total()), "0.28");
    assert!(word(&marked.verdict()).starts_with("FAIL"));
}

#[test]
fn stating_every_fault_is_no_diagnosis() {
    let mut all = expert();
    all["declared_first"] = json!(["A", "B", "C", "D", "E"]);
    all["declared_final"] = all["declared_first"].clone();
    is(&all, "80.00", "FAIL(D)");
}

#[test]
fn ordering_every_part_is_no_diagnosis() {
    let events = json!([["R", "A"], ["R", "B"], ["R", "C"], ["R", "D"], ["R", "E"]]);
    is(&run(events, &["A"], &["A"], "A"), "50.00", "FAIL(Q,T)");
}

#[test]
fn one_more_part_to_be_sure_costs_the_higher_bands() {
    is(&with_more(&[json!(["R", "D"])]), "78.57", "PASS");
}

#[test]
fn safety_is_not_a_count_of_rituals() {
    is(&with_more(&[json!(["IDLE", 40])]), "88.98", "PASS");
}

#[test]
fn every_test_and_six_repeats_are_waste() {
    let mut events = vec![
        json!(["T", "LISTEN", "silent"]),
        json!(["T", "VOLT", "mains"]),
        json!(["T", "HARN", "ok"]),
        json!(["T", "OHM", "open"]),
    ];
    events.extend((0..6).map(|_| json!(["DUP", "OHM"])));
    events.push(json!(["R", "A"]));
    is(
        &run(Value::Array(events), &["A"], &["A"], "A"),
        "86.07",
        "PASS",
    );
}

#[test]
fn without_the_electrical_test_nothing_passes() {
    let mut hasty = expert();
    hasty["proc_done"] = json!(["refit", "leak", "verify", "record"]);
    is(&hasty, "95.50", "FAIL(P)");
}

#[test]
fn leaving_out_a_violation_never_lowers_the_total() {
    let mut run = expert();
    let mut last = 0.0;
    let mut violations = vec!["critical", "major", "minor", "minor"];
    while !violations.is_empty() {
        run["viol"] = json!(violations);
        let total = marked(&run).total();
        assert!(total >= last, "{violations:?}: {total} after {last}");
        last = total;
        violations.remove(0);
    }
    assert!(marked(&expert()).total() >= last);
}

#[test]
fn one_more_step_of_procedure_never_lowers_the_total() {
    for n in 0..ALL.len() {
        let mut fewer = expert();
        fewer["proc_done"] = json!(ALL[..n]);
        let mut more = expert();
        more["proc_done"] = json!(ALL[..=n]);
        assert!(marked(&more).total() >= marked(&fewer).total());
    }
}

#[test]
fn a_repeat_or_waiting_never_raises_the_total() {
    for idle in [
        json!(["DUP", "LISTEN"]),
        json!(["IDLE", 5]),
        json!(["IDLE", 0]),
    ] {
        for at in 0..3 {
            let mut longer = expert();
            let events = longer["events"].as_array_mut().expect("events");
            events.insert(at, idle.clone());
            assert!(marked(&longer).total() <= marked(&expert()).total() + 1e-12);
        }
    }
}

/// The same evidence makes the same decision right, whatever is true.
#[test]
fn the_truth_does_not_change_what_a_decision_cost() {
    let avoidable = |truth: &str| {
        let events = json!([
            ["T", "LISTEN", "silent"],
            ["T", "OHM", "normal"],
            ["R", "B"]
        ]);
        let marked = marked(&run(events, &["B"], &["B"], truth));
        marked
            .walk
            .account
            .steps
            .iter()
            .map(|s| s.avoidable())
            .collect::<Vec<_>>()
    };
    let first = avoidable("A");
    for truth in ["B", "C", "D", "E"] {
        for (a, b) in first.iter().zip(avoidable(truth)) {
            assert!((a - b).abs() < 1e-9);
        }
    }
}
