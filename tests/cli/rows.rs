//! `probe --rows` on rows nobody has seen: the reference's own rows said in another way, and rows
//! that are wrong, each with file, line, field and remedy.

use crate::code;
use crate::piped;
use crate::said;

const REFERENCE: &str = include_str!("../fixtures/rows/refs_network.csv");
const HEADER: &str = "variant,state,fault,quantity,value,unit,lid,setup,signed_slip,display\n";

/// All reference rows, each line changed, are still met.
fn still_met(text: &str, what: &str) {
    let output = piped(&["probe", "--rows", "-"], text.as_bytes());
    let answer = String::from_utf8_lossy(&output.stdout).into_owned();
    let missed: Vec<&str> = answer.lines().filter(|l| l.starts_with("MISSED")).collect();
    assert_eq!(code(&output), 0, "{what}: {missed:?} {}", said(&output));
}

#[test]
fn a_double_fault_said_as_two_reads_as_the_other_program_computed_it() {
    // E92 is E04 and E46 together (ngspice rows); the parts may stand in either order.
    let rows: Vec<&str> = REFERENCE.lines().filter(|l| l.contains(",E92,")).collect();
    assert!(rows.len() >= 5, "{} rows", rows.len());
    for said_as in [
        "E04+E46",
        "E46 E04",
        "socket_earth_open+winding_to_frame",
        "e04;e46=1.0",
    ] {
        let text: Vec<String> = rows
            .iter()
            .map(|l| l.replace(",E92,", &format!(",{said_as},")))
            .collect();
        still_met(&format!("{HEADER}{}\n", text.join("\n")), said_as);
    }
}

#[test]
fn a_fault_of_no_severity_is_no_fault() {
    let rows: Vec<String> = REFERENCE
        .lines()
        .filter(|l| l.contains(",none,"))
        .map(|l| l.replace(",none,", ",E51=0,"))
        .collect();
    still_met(&format!("{HEADER}{}\n", rows.join("\n")), "E51=0");
}

#[test]
fn pulled_pins_may_be_named_in_any_order() {
    let turned = |row: &str| -> String {
        let mut fields: Vec<String> = row.split(',').map(str::to_owned).collect();
        if fields.len() == 10 && fields[7].starts_with("open ") && !fields[7].contains("ohm") {
            let mut pins: Vec<&str> = row
                .split(',')
                .nth(7)
                .expect("a field")
                .split("open ")
                .collect();
            pins.retain(|pin| !pin.trim().is_empty());
            pins.reverse();
            let pins: Vec<String> = pins.iter().map(|p| format!("open {}", p.trim())).collect();
            fields[7] = pins.join(" ");
        }
        fields.join(",")
    };
    let rows: Vec<String> = REFERENCE
        .lines()
        .filter(|l| !l.contains('"'))
        .map(turned)
        .collect();
    still_met(&rows.join("\n"), "set-up turned round");
}

#[test]
fn leads_exchanged_read_the_same_alternating_volts_and_ohms() {
    let turned = |row: &str| -> String {
        let mut fields: Vec<String> = row.split(',').map(str::to_owned).collect();
        let is_meant = fields[3].starts_with("Vac(") || fields[3].starts_with("ohm ");
        if is_meant
            && let Some((head, places)) = fields[3].clone().rsplit_once(' ')
            && let Some((a, b)) = places.split_once('-')
        {
            fields[3] = format!("{head} {b}-{a}");
        }
        fields.join(",")
    };
    let rows: Vec<String> = REFERENCE
        .lines()
        .filter(|l| !l.contains('"'))
        .map(turned)
        .collect();
    still_met(&rows.join("\n"), "leads exchanged");
}

#[test]
fn what_is_wrong_in_a_row_is_told_with_line_field_and_remedy() {
    let cases = [
        (
            "P,off,E51=2,torque avg,1,N m,closed,,1,",
            "line 2, fault: E51=2",
            "from 0 to 1",
        ),
        (
            "P,off,E04+E999,torque avg,1,N m,closed,,1,",
            "line 2, fault: \"E999\"",
            "nearest",
        ),
        (
            "T,off,E36,torque avg,1,N m,closed,,1,",
            "line 2, fault: \"E36\"",
            "fault of this machine",
        ),
        (
            "P,off,none,Vac(5M) TBL-TBN,1,V,closed,,1,",
            "line 2, quantity",
            "Vac(10M||100p) A-B",
        ),
        (
            "P,off,none,A through NOPE,1,A,closed,,1,",
            "line 2, quantity",
            "no node or element",
        ),
        (
            "P,off,none,torque avg,NaN,N m,closed,,1,",
            "line 2, value",
            "finite number",
        ),
        (
            "P,off,none,torque avg,,N m,closed,,1,",
            "line 2, value",
            "finite number",
        ),
        (
            "P,off,none,torque avg,1,N m,half,,1,",
            "line 2, lid",
            "open or closed",
        ),
        (
            "P,off,none,torque avg,1,N m,closed,shut P21,1,",
            "line 2, setup",
            "open ELEMENT",
        ),
        (
            "P,off,none,torque avg,1,N m,closed,BODY -5 ohm CAB-0,1,",
            "line 2, setup",
            "OHM ohm",
        ),
        (
            "P,off,none,torque avg,1,N m,closed,BODY 5 ohm CAB-NOPE,1,",
            "line 2, link[1]",
            "NOPE",
        ),
        ("P,off", "line 2, quantity", "must be one of"),
    ];
    for (row, field, remedy) in cases {
        let output = piped(
            &["probe", "--rows", "-"],
            format!("{HEADER}{row}\n").as_bytes(),
        );
        assert_eq!(code(&output), 2, "{row}: {}", said(&output));
        for part in ["-: ", field, remedy] {
            assert!(
                said(&output).contains(part),
                "{row}: {part} in {}",
                said(&output)
            );
        }
    }
}
