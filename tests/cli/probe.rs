//! `probe`: readings, rows of a reference, and what is said of wrong ones.

use crate::code;
use crate::json;
use crate::piped;
use crate::run;
use crate::said;

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
fn rows_as_json_have_a_line_and_a_difference_each() {
    let list = json(&[
        "probe",
        "--rows",
        "tests/fixtures/rows/refs_network.csv",
        "--json",
    ]);
    let list = list.as_array().expect("a list");
    assert!(list.len() > 400, "{} rows", list.len());
    for row in list {
        assert_eq!(row["met"], true, "{row}");
        assert!(row["line"].is_u64() && row["difference"].is_f64(), "{row}");
    }
}

#[test]
fn a_file_of_rows_that_says_nothing_is_no_success() {
    let header = "variant,state,fault,quantity,value,unit,lid,setup,signed_slip,display\n";
    for (text, words) in [
        ("", "line 1: variant"),
        (header, "at least one row"),
        ("a,b,c\n1,2,3\n", "line 1: quantity"),
    ] {
        let output = piped(&["probe", "--rows", "-"], text.as_bytes());
        assert_eq!(code(&output), 2, "{text}");
        assert!(said(&output).contains(words), "{}", said(&output));
    }
}

#[test]
fn every_wrong_row_is_told_at_once_with_its_nearest_name() {
    let rows = "variant,state,fault,quantity,value,unit,lid,setup,signed_slip,display\n\
                P,spining,none,torque avg,1,N m,closed,,1.0,\n\
                P,off,E51,A through RCLX,1,A,closed,,1.0,\n\
                P,off,E999,torque avg,1,N m,closed,open P21X,1.0,\n\
                Q,off,none,torque avg,1,N m,closed,,1.0,\n";
    let output = piped(&["probe", "--rows", "-"], rows.as_bytes());
    assert_eq!(code(&output), 2);
    for part in [
        "line 2, state: \"spining\": there is no such state of this machine; nearest is \"spinning\"",
        "line 3, quantity: \"A through RCLX\"",
        "line 4, open[0]: \"P21X\"",
        "line 4, fault: \"E999\"",
        "line 5, variant: \"Q\"",
    ] {
        assert!(said(&output).contains(part), "{part}: {}", said(&output));
    }
}

#[test]
fn several_readings_of_an_opened_bridged_machine_follow_each_other() {
    let words = "probe --machine P --state unplugged --open P21 --link 2000:CAB-0 --json \
                 ohms MA MC leakage earth-bond PE CAB";
    let words: Vec<&str> = words.split_whitespace().collect();
    let readings = json(&words);
    let modes: Vec<&str> = readings
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(|r| r["mode"].as_str())
        .collect();
    assert_eq!(modes, ["ohms", "leakage", "earth_bond"]);
    assert_eq!(readings[0]["unit"], "ohm");
}

#[test]
fn an_open_lid_and_a_milder_fault_change_what_is_read() {
    let volts = |more: &[&str]| {
        let mut words = vec!["probe", "--machine", "P", "--state", "agitA", "--json"];
        words.extend(more);
        words.extend(["ac_volts", "C1", "C2"]);
        json(&words)[0]["value"].as_f64().expect("a number")
    };
    let (sound, mild, full) = (
        volts(&[]),
        volts(&["--fault", "capacitor_low=0.5"]),
        volts(&["--fault", "capacitor_low"]),
    );
    assert!(sound > mild && mild > full, "{sound} {mild} {full}");
}
