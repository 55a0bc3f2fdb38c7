//! The way to each part, against a table written ahead of the program (`fixtures/access`, common
//! practice), and what the wrong order damages.

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use tubwright::bench::action::Action;
use tubwright::bench::event::Event;
use tubwright::bench::event::Refusal;
use tubwright::bench::job::Job;
use tubwright::bench::workshop::Workshop;

use crate::scene::do_all;
use crate::scene::does;
use crate::scene::job;
use crate::scene::make_safe;
use crate::scene::off;
use crate::scene::scenario;

/// The table's word for a part, and the machine's name of it.
const PARTS: [(&str, &str); 31] = [
    ("control board", "control_board"),
    ("display/key foil", "display_board"),
    ("on/off switch", "on_off_switch"),
    ("lid switch", "lid_switch"),
    ("unbalance lever and switch", "balance_switch"),
    ("inlet valve", "inlet_valve"),
    ("inlet strainer (clean)", "inlet_filter"),
    ("level sensor", "level_sensor"),
    ("air hose", "air_hose"),
    ("transformer", "transformer"),
    ("noise filter/fuse", "mains_filter"),
    ("buzzer", "buzzer"),
    ("pulsator", "pulsator"),
    ("tub cover", "tub_cover"),
    ("basket with balance ring", "basket"),
    ("shaft seal", "shaft_seal"),
    ("protect plate", "bottom_guard"),
    ("belt", "belt"),
    ("motor", "motor"),
    ("motor pulley", "motor_pulley"),
    ("run capacitor", "run_capacitor"),
    ("mechanism (gear, clutch, brake)", "mechanism"),
    ("mechanism pulley", "mechanism_pulley"),
    ("clutch spring/lever set", "clutch_set"),
    ("brake band", "brake_band"),
    ("drain actuator", "drain_motor"),
    ("drain valve (bellows, spring)", "drain_valve"),
    ("drain pump (pump variant)", "drain_pump"),
    ("drain hose", "drain_hose"),
    ("supply hose", "supply_hose"),
    ("mains cable", "mains_cord"),
];
/// What the table calls steps and the bench has as acts of their own.
const ACTS: [&str; 2] = ["isolate", "empty_tub"];

/// A line of a table whose cells may stand in quotes.
fn cells(line: &str) -> Vec<String> {
    let mut cells = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => cells.push(String::new()),
            c => cells.last_mut().expect("one at least").push(c),
        }
    }
    cells
}

fn table() -> Vec<BTreeMap<String, String>> {
    let mut lines = include_str!("../fixtures/access/parts.csv").lines();
    let names = cells(lines.next().expect("a heading"));
    lines
        .map(|line| names.iter().cloned().zip(cells(line)).collect())
        .collect()
}

fn steps_before(row: &BTreeMap<String, String>) -> Vec<&str> {
    row["steps_before"]
        .split(" > ")
        .filter(|step| !ACTS.contains(step) && !step.is_empty())
        .collect()
}

#[test]
fn each_part_is_reached_as_the_table_says_in_the_minutes_it_says() {
    let rows = table();
    assert!(rows.len() >= 36, "{}", rows.len());
    let mut compared = BTreeSet::new();
    for machine in ["P", "T", "N"] {
        let workshop = scenario(machine, &[]).workshop.clone();
        for (word, part) in PARTS {
            let row = rows.iter().find(|row| row["part"] == word).expect(word);
            let Some(work) = workshop.work(&format!("replace_{part}")) else {
                continue;
            };
            let at = format!("{machine} {part}");
            let way = workshop.closure(&work.needs);
            let ids: BTreeSet<&str> = way.iter().map(|s| s.id.as_str()).collect();
            let expected: BTreeSet<&str> = steps_before(row).into_iter().collect();
            assert_eq!(ids, expected, "{at}: the way");
            let minutes = |name: &str| row[name].parse::<f64>().expect("a number");
            let own = minutes("own_min_off") + minutes("own_min_on");
            // A part without work of its own takes the minute of taking the new one.
            let short = work.work_s / 60.0 - own;
            assert!(
                (-0.01..=2.01).contains(&short),
                "{at}: {} min, {own}",
                work.work_s / 60.0
            );
            let own_fasteners = row["own_fasteners"].as_str();
            if own_fasteners != "-" {
                assert_eq!(work.fasteners, own_fasteners, "{at}: what holds it");
            }
            compared.insert(part);
        }
    }
    assert_eq!(compared.len(), PARTS.len(), "{compared:?}");
}

#[test]
fn steps_have_what_holds_them_tools_and_minutes_of_the_table() {
    // Common practice: fasteners counted out are fasteners counted in; minutes off and on.
    let expected = [
        ("pull_out", 2.0, 2.0, ""),
        ("back_cover", 3.0, 3.0, "8 screws"),
        ("top_cover_up", 4.0, 5.0, "4 screws"),
        ("panel_open", 3.0, 3.0, "5 screws"),
        ("tub_cover", 4.0, 5.0, "8 clips"),
        ("pulsator_off", 3.0, 3.0, "1 centre screw"),
        ("basket_out", 8.0, 9.0, "4 hex bolts"),
        ("lay_down", 3.0, 3.0, ""),
        ("plate_off", 4.0, 4.0, "6 bolts"),
        ("belt_off", 3.0, 4.0, "2 motor bolts"),
        ("lever_unhook", 2.0, 3.0, "wire link and pin"),
        ("joint_drain", 2.0, 3.0, "hose clip"),
    ];
    for machine in ["P", "T", "N"] {
        let workshop = scenario(machine, &[]).workshop.clone();
        assert_eq!(workshop.steps.len(), expected.len(), "{machine}");
        for (id, off_min, on_min, held_by) in expected {
            let step = workshop.step(id).expect(id);
            let near = |s: f64, min: f64| (s / 60.0 - min).abs() < 1e-9;
            assert!(
                near(step.off_s, off_min) && near(step.on_s, on_min),
                "{machine} {id}"
            );
            assert!(
                step.fasteners.contains(held_by),
                "{machine} {id}: {}",
                step.fasteners
            );
            let needs_tools = !matches!(id, "pull_out");
            assert_eq!(step.tools.is_empty(), !needs_tools, "{machine} {id}");
            assert!(!step.refit_check.is_empty() && !step.caution.is_empty());
        }
        assert!(workshop.step("top_cover_up").expect("is").needs_support);
    }
}

/// Takes off what is in the way, safely.
fn open(job: &mut Job, way: &[&str]) {
    let workshop = job.scenario().workshop.clone();
    let needs: Vec<String> = way.iter().map(|s| (*s).to_owned()).collect();
    for step in workshop.closure(&needs) {
        if step.lays_down && job.bench().hose_attached {
            does(job, Action::SupplyHose { attached: false });
        }
        if !job.bench().off.contains(&step.id) {
            does(job, off(&step.id));
        }
    }
}

fn refit(step: &str) -> Action {
    Action::Refit {
        step: step.to_owned(),
        check: true,
    }
}

fn spoilt(events: &[Event]) -> bool {
    events.iter().any(|e| matches!(e, Event::Damage { .. }))
}

#[test]
fn a_guard_put_on_before_the_lever_is_hooked_in_bends_the_lever() {
    for machine in ["P", "T", "N"] {
        let begun = || {
            let mut job = job(machine, &[]);
            make_safe(&mut job);
            open(&mut job, &["plate_off", "lever_unhook"]);
            job
        };
        let mut right = begun();
        does(&mut right, refit("lever_unhook"));
        assert!(!spoilt(&does(&mut right, refit("plate_off")).events));
        assert!(right.bench().left_wrong.is_empty());
        let mut wrong = begun();
        assert!(spoilt(&does(&mut wrong, refit("plate_off")).events));
        does(&mut wrong, refit("lever_unhook"));
        assert!(!wrong.bench().left_wrong.is_empty(), "it stays bent");
    }
}

#[test]
fn a_board_plug_moved_under_voltage_burns_an_output() {
    for machine in ["P", "N"] {
        let pull = Action::PullApart {
            connector: "board_plug_1".to_owned(),
        };
        let mut dead = job(machine, &[]);
        make_safe(&mut dead);
        open(&mut dead, &["panel_open"]);
        assert!(!spoilt(&does(&mut dead, pull.clone()).events), "{machine}");
        let mut live = job(machine, &[]);
        open(&mut live, &["panel_open"]);
        assert!(spoilt(&does(&mut live, pull).events), "{machine}");
        assert!(!live.bench().left_wrong.is_empty());
    }
}

#[test]
fn a_raised_cover_that_nothing_holds_is_a_broken_rule_and_comes_down_now_and_then() {
    let reach = |seed: u64, tied: bool| {
        let mut job = Job::new(std::sync::Arc::new(scenario("P", &[])), seed).expect("starts");
        make_safe(&mut job);
        open(&mut job, &["back_cover"]);
        let lift = Action::TakeOff {
            step: "top_cover_up".to_owned(),
            helped: tied,
        };
        does(&mut job, lift);
        let act = off("panel_open");
        let mut events = does(&mut job, act).events;
        let plug = Action::PullApart {
            connector: "level_sensor_plug".to_owned(),
        };
        events.extend(does(&mut job, plug).events);
        let fell = events
            .iter()
            .any(|e| matches!(e, Event::Dropped { energy_j, .. } if *energy_j > 10.0));
        let broken = job.safety().iter().any(|f| f.rule == "top_not_supported");
        assert_eq!(broken, !tied);
        fell
    };
    assert!((0..20).all(|seed| !reach(seed, true)));
    let n = (0..20).filter(|seed| reach(*seed, false)).count();
    assert!((2..=18).contains(&n), "{n} of 20");
}

#[test]
fn whatever_was_taken_off_must_go_back_in_the_reverse_order() {
    for machine in ["P", "T", "N"] {
        let mut job = job(machine, &[]);
        make_safe(&mut job);
        open(&mut job, &["basket_out", "belt_off", "lever_unhook"]);
        let taken = job.bench().off.clone();
        // The first one off is below all others: it cannot go back first.
        let refusal = job.act(refit(&taken[0])).refusal;
        assert!(
            matches!(refusal, Some(Refusal::Underneath { .. })),
            "{refusal:?}"
        );
        do_all(&mut job, taken.iter().rev().map(|step| refit(step)));
        assert!(job.bench().off.is_empty());
        assert!(job.bench().left_wrong.is_empty());
    }
}

/// What differs while a step is off or left wrong, for those that a running machine feels.
fn feels(workshop: &Workshop, id: &str) -> bool {
    let step = workshop.step(id).expect("is");
    step.mistakes
        .iter()
        .any(|mistake| !mistake.effects.is_empty())
}

#[test]
fn a_refit_left_wrong_is_a_difference_of_the_machine_and_a_checked_one_is_none() {
    for machine in ["P", "T", "N"] {
        let workshop = scenario(machine, &[]).workshop.clone();
        let n = workshop
            .steps
            .iter()
            .filter(|s| feels(&workshop, &s.id))
            .count();
        assert!(n >= 11, "{machine}: {n}");
        for step in workshop.steps.iter().filter(|s| feels(&workshop, &s.id)) {
            let left = |check: bool| {
                let seeds = if check { 3 } else { 24 };
                (0..seeds).any(|seed| {
                    let scenario = std::sync::Arc::new(scenario(machine, &[]));
                    let mut job = Job::new(scenario, seed).expect("starts");
                    make_safe(&mut job);
                    open(&mut job, &[&step.id]);
                    let refit = Action::Refit {
                        step: step.id.clone(),
                        check,
                    };
                    does(&mut job, refit);
                    !job.bench().left_wrong.is_empty()
                })
            };
            assert!(left(false), "{machine} {}: never left wrong", step.id);
            assert!(!left(true), "{machine} {}: checked and wrong", step.id);
        }
    }
}
