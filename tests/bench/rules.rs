//! Each safety rule driven by real acts on a real job: broken by the careless way, kept by the
//! careful one beside it. What is careless is common practice or the source at the rule.

use tubwright::bench::action::Action;
use tubwright::bench::action::Charged;
use tubwright::bench::action::DischargeTool;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::action::Sense;
use tubwright::bench::action::Turnable;
use tubwright::bench::job::Job;

use crate::scene::job;
use crate::scene::key;
use crate::scene::make_safe;
use crate::scene::meter;
use crate::scene::off;
use crate::scene::spins;

const V: MeterMode = MeterMode::AcVolts;

/// A rule, the fault that stands in the machine, the careless way and the careful one.
struct Case(&'static str, &'static [&'static str], Way, Way);
type Way = fn(&mut Job);

fn all(job: &mut Job, acts: impl IntoIterator<Item = Action>) {
    for act in acts {
        job.act(act);
    }
}

fn plug(inserted: bool) -> Action {
    Action::Plug { inserted }
}

fn pull(connector: &str) -> Action {
    Action::PullApart {
        connector: connector.to_owned(),
    }
}

fn on(step: &str) -> Action {
    Action::Refit {
        step: step.to_owned(),
        check: true,
    }
}

fn alone(step: &str) -> Action {
    Action::TakeOff {
        step: step.to_owned(),
        helped: false,
    }
}

fn behind(job: &mut Job) {
    all(job, [off("pull_out"), off("back_cover")]);
}

/// Safe, and open at the back.
fn safe_behind(job: &mut Job) {
    make_safe(job);
    behind(job);
}

fn lead_off() -> Action {
    Action::Discharge {
        what: Charged::RunCapacitor,
        tool: DischargeTool::BleedResistor,
    }
}

fn hose(attached: bool) -> Action {
    Action::SupplyHose { attached }
}

fn tap(open: bool) -> Action {
    Action::Tap { open }
}

fn dead_at_the_plug(job: &mut Job, pairs: &[[&str; 2]]) {
    all(job, [meter(V, "SL", "SN"), plug(false), Action::Secure]);
    all(job, pairs.iter().map(|[a, b]| meter(V, a, b)));
}

const PAIRS: [[&str; 2]; 3] = [["PL", "PN"], ["PL", "PE"], ["PN", "PE"]];

fn closed_again(job: &mut Job) {
    safe_behind(job);
    all(job, [on("back_cover"), on("pull_out")]);
}

fn bond(job: &mut Job, to: &str) {
    all(job, [meter(MeterMode::EarthBond, "PE", to), Action::Note]);
}

fn turning(job: &mut Job, below_rad_per_s: f64) {
    spins(job);
    job.act(Action::Lid { open: true });
    for _ in 0..600 {
        if job.machine().basket_rad_per_s().abs() < below_rad_per_s {
            return;
        }
        job.advance(1);
    }
}

fn turn_basket(job: &mut Job) {
    job.act(Action::Turn {
        what: Turnable::Basket,
    });
}

/// The motor has stood humming until it is hot; opened below.
fn at_the_motor(job: &mut Job, wait: u64) {
    all(job, [key(PanelKey::Power)]);
    job.advance(70);
    all(job, [key(PanelKey::Start)]);
    job.advance(4000);
    make_safe(job);
    job.advance(wait);
    all(job, [Action::Lid { open: true }]);
    all(
        job,
        [Action::Empty {
            how: tubwright::bench::visit::EmptyBy::Bucket,
        }],
    );
    all(
        job,
        [
            hose(false),
            off("pull_out"),
            off("lay_down"),
            off("plate_off"),
        ],
    );
    all(
        job,
        [Action::Sense {
            sense: Sense::Feel,
            place: "motor".to_owned(),
        }],
    );
}

fn nothing(_: &mut Job) {}

const CASES: &[Case] = &[
    Case(
        "touched_live",
        &[],
        |j| {
            behind(j);
            j.act(pull("cord_terminals"));
        },
        |j| {
            safe_behind(j);
            j.act(pull("cord_terminals"));
        },
    ),
    Case(
        "worked_inside_switched_on",
        &[],
        |j| {
            behind(j);
            all(j, [key(PanelKey::Power), pull("motor_plug")]);
        },
        |j| {
            safe_behind(j);
            j.act(pull("motor_plug"));
        },
    ),
    Case(
        "switch_taken_for_isolation",
        &[],
        |j| {
            behind(j);
            j.act(pull("motor_plug"));
        },
        |j| {
            safe_behind(j);
            j.act(pull("motor_plug"));
        },
    ),
    Case("cover_off_live", &[], behind, safe_behind),
    Case(
        "not_secured",
        &[],
        |j| {
            j.act(plug(false));
            behind(j);
            j.act(pull("motor_plug"));
        },
        |j| {
            safe_behind(j);
            j.act(pull("motor_plug"));
        },
    ),
    Case(
        "not_proved_dead",
        &[],
        |j| {
            all(j, [plug(false), Action::Secure]);
            behind(j);
            j.act(pull("motor_plug"));
        },
        |j| {
            safe_behind(j);
            j.act(pull("motor_plug"));
        },
    ),
    Case(
        "tester_not_proved_after",
        &[],
        |j| {
            dead_at_the_plug(j, &PAIRS);
            behind(j);
            j.act(pull("motor_plug"));
        },
        |j| {
            dead_at_the_plug(j, &PAIRS);
            j.act(meter(V, "SL", "SN"));
            behind(j);
            j.act(pull("motor_plug"));
        },
    ),
    Case(
        "pairs_left_out",
        &[],
        |j| {
            dead_at_the_plug(j, &PAIRS[..1]);
            j.act(meter(V, "SL", "SN"));
            behind(j);
            j.act(pull("motor_plug"));
        },
        |j| {
            safe_behind(j);
            j.act(pull("motor_plug"));
        },
    ),
    Case(
        "capacitor_not_measured",
        &[],
        |j| {
            safe_behind(j);
            j.act(pull("capacitor_terminal_1"));
        },
        |j| {
            safe_behind(j);
            all(j, [lead_off(), pull("capacitor_terminal_1")]);
        },
    ),
    Case(
        "ohms_on_live",
        &[],
        |j| {
            j.act(meter(MeterMode::Ohms, "SL", "SN"));
        },
        |j| {
            j.act(meter(V, "SL", "SN"));
        },
    ),
    Case(
        "amperes_across_voltage",
        &[],
        |j| {
            j.act(meter(MeterMode::Amps, "SL", "SN"));
        },
        |j| {
            j.act(meter(V, "SL", "SN"));
        },
    ),
    Case(
        "insulation_test_plugged",
        &[],
        |j| {
            j.act(meter(MeterMode::Insulation, "PL", "PE"));
        },
        |j| {
            make_safe(j);
            j.act(meter(MeterMode::Insulation, "PL", "PE"));
        },
    ),
    Case(
        "hand_in_fast_basket",
        &[],
        |j| {
            turning(j, 1e9);
            turn_basket(j);
        },
        |j| {
            turning(j, 0.05);
            turn_basket(j);
        },
    ),
    Case(
        "hand_in_turning_basket",
        &[],
        |j| {
            turning(j, 4.0);
            turn_basket(j);
        },
        |j| {
            turning(j, 0.05);
            turn_basket(j);
        },
    ),
    Case(
        "lid_bridged",
        &[],
        |j| {
            safe_behind(j);
            all(j, [off("top_cover_up"), Action::BridgeLid { fitted: true }]);
        },
        |j| {
            safe_behind(j);
            j.act(off("top_cover_up"));
        },
    ),
    Case(
        "left_with_bridge",
        &[],
        |j| {
            safe_behind(j);
            all(
                j,
                [
                    off("top_cover_up"),
                    Action::BridgeLid { fitted: true },
                    Action::MakeSafeAndLeave,
                ],
            );
        },
        |j| {
            safe_behind(j);
            all(
                j,
                [
                    off("top_cover_up"),
                    Action::BridgeLid { fitted: true },
                    Action::BridgeLid { fitted: false },
                    Action::MakeSafeAndLeave,
                ],
            );
        },
    ),
    Case(
        "run_open_with_bridge",
        &[],
        |j| {
            safe_behind(j);
            all(
                j,
                [
                    off("top_cover_up"),
                    Action::BridgeLid { fitted: true },
                    Action::Lid { open: true },
                    plug(true),
                    key(PanelKey::Power),
                    key(PanelKey::Start),
                ],
            );
        },
        |j| {
            all(
                j,
                [
                    Action::Lid { open: true },
                    key(PanelKey::Power),
                    key(PanelKey::Start),
                ],
            );
        },
    ),
    Case(
        "energised_earth_off",
        &[],
        |j| {
            safe_behind(j);
            all(j, [pull("earth_wire_cabinet"), plug(true)]);
        },
        |j| {
            safe_behind(j);
            all(
                j,
                [
                    pull("earth_wire_cabinet"),
                    Action::PushTogether {
                        connector: "earth_wire_cabinet".to_owned(),
                    },
                    plug(true),
                ],
            );
        },
    ),
    Case(
        "left_earth_off",
        &[],
        |j| {
            safe_behind(j);
            all(
                j,
                [
                    pull("earth_wire_cabinet"),
                    on("back_cover"),
                    on("pull_out"),
                    Action::MakeSafeAndLeave,
                ],
            );
        },
        |j| {
            closed_again(j);
            j.act(Action::MakeSafeAndLeave);
        },
    ),
    Case(
        "energised_before_earth_test",
        &[],
        |j| {
            closed_again(j);
            j.act(plug(true));
        },
        |j| {
            closed_again(j);
            bond(j, "CAB");
            j.act(plug(true));
        },
    ),
    Case(
        "energised_on_wet_floor",
        &[],
        |j| {
            all(j, [hose(false), plug(false), plug(true)]);
        },
        |j| {
            all(
                j,
                [
                    hose(false),
                    tap(false),
                    Action::MopFloor,
                    plug(false),
                    plug(true),
                ],
            );
        },
    ),
    Case(
        "energised_without_house_earth",
        &["socket_earth_open"],
        |j| {
            all(
                j,
                [
                    meter(V, "SL", "SN"),
                    meter(V, "SL", "SE"),
                    key(PanelKey::Power),
                ],
            );
        },
        |j| {
            all(j, [meter(V, "SL", "SN"), meter(V, "SL", "SE")]);
        },
    ),
    Case(
        "reset_without_cause",
        &[],
        |j| {
            behind(j);
            all(
                j,
                [
                    key(PanelKey::Power),
                    pull("cord_terminals"),
                    Action::Breaker,
                ],
            );
        },
        |j| {
            behind(j);
            all(j, [key(PanelKey::Power), pull("cord_terminals")]);
        },
    ),
    Case(
        "inlet_hose_tap_open",
        &[],
        |j| {
            j.act(hose(false));
        },
        |j| {
            all(j, [tap(false), Action::BleedHose, hose(false)]);
        },
    ),
    Case(
        "inlet_hose_under_pressure",
        &[],
        |j| {
            all(j, [tap(false), hose(false)]);
        },
        |j| {
            all(j, [tap(false), Action::BleedHose, hose(false)]);
        },
    ),
    Case(
        "tap_opened_hose_off",
        &[],
        |j| {
            all(j, [tap(false), Action::BleedHose, hose(false), tap(true)]);
        },
        |j| {
            all(
                j,
                [
                    tap(false),
                    Action::BleedHose,
                    hose(false),
                    hose(true),
                    tap(true),
                ],
            );
        },
    ),
    Case(
        "water_test_unsealed",
        &[],
        |j| {
            make_safe(j);
            all(
                j,
                [
                    hose(false),
                    off("pull_out"),
                    off("lay_down"),
                    off("joint_drain"),
                    hose(true),
                    tap(true),
                ],
            );
        },
        |j| {
            make_safe(j);
            all(
                j,
                [
                    hose(false),
                    off("pull_out"),
                    off("lay_down"),
                    off("joint_drain"),
                    on("joint_drain"),
                    hose(true),
                    tap(true),
                ],
            );
        },
    ),
    Case(
        "left_unsealed",
        &[],
        |j| {
            make_safe(j);
            all(
                j,
                [
                    hose(false),
                    off("pull_out"),
                    off("lay_down"),
                    off("joint_drain"),
                    Action::Close,
                ],
            );
        },
        |j| {
            make_safe(j);
            all(
                j,
                [
                    hose(false),
                    off("pull_out"),
                    off("lay_down"),
                    off("joint_drain"),
                    on("joint_drain"),
                    Action::Close,
                ],
            );
        },
    ),
    Case(
        "tilted_alone",
        &[],
        |j| {
            make_safe(j);
            all(j, [hose(false), off("pull_out"), alone("lay_down")]);
        },
        |j| {
            make_safe(j);
            all(j, [hose(false), off("pull_out"), off("lay_down")]);
        },
    ),
    Case(
        "reached_under_unpropped",
        &[],
        |j| {
            make_safe(j);
            all(
                j,
                [
                    hose(false),
                    off("pull_out"),
                    alone("lay_down"),
                    off("lever_unhook"),
                ],
            );
        },
        |j| {
            make_safe(j);
            all(
                j,
                [
                    hose(false),
                    off("pull_out"),
                    off("lay_down"),
                    off("lever_unhook"),
                ],
            );
        },
    ),
    Case(
        "top_not_supported",
        &[],
        |j| {
            safe_behind(j);
            all(j, [alone("top_cover_up"), pull("level_sensor_plug")]);
        },
        |j| {
            safe_behind(j);
            all(j, [off("top_cover_up"), pull("level_sensor_plug")]);
        },
    ),
    Case(
        "hot_part_touched",
        &["motor_seized"],
        |j| at_the_motor(j, 0),
        |j| at_the_motor(j, 200_000),
    ),
    Case(
        "left_covers_off",
        &[],
        |j| {
            safe_behind(j);
            j.act(Action::MakeSafeAndLeave);
        },
        |j| {
            closed_again(j);
            j.act(Action::MakeSafeAndLeave);
        },
    ),
    Case(
        "left_fasteners",
        &[],
        |j| {
            make_safe(j);
            all(j, [off("pulsator_off"), Action::MakeSafeAndLeave]);
        },
        |j| {
            make_safe(j);
            all(
                j,
                [
                    off("pulsator_off"),
                    on("pulsator_off"),
                    Action::MakeSafeAndLeave,
                ],
            );
        },
    ),
    Case(
        "socket_not_tested",
        &[],
        |j| {
            j.act(Action::Close);
        },
        |j| {
            all(j, [meter(V, "SL", "SN"), Action::Close]);
        },
    ),
    Case(
        "no_earth_test",
        &[],
        |j| {
            closed_again(j);
            j.act(Action::Close);
        },
        |j| {
            closed_again(j);
            bond(j, "CAB");
            j.act(Action::Close);
        },
    ),
    Case(
        "no_insulation_test",
        &[],
        |j| {
            closed_again(j);
            j.act(Action::Close);
        },
        |j| {
            closed_again(j);
            all(
                j,
                [
                    meter(MeterMode::Insulation, "PL", "PE"),
                    Action::Note,
                    Action::Close,
                ],
            );
        },
    ),
    Case(
        "no_functional_run",
        &[],
        |j| {
            closed_again(j);
            j.act(Action::Close);
        },
        |j| {
            j.act(Action::Close);
        },
    ),
    Case(
        "handed_over_failed_earth",
        &["cord_earth_broken"],
        |j| {
            closed_again(j);
            bond(j, "CAB");
            j.act(Action::Close);
        },
        |j| {
            closed_again(j);
            bond(j, "CAB");
            j.act(Action::MakeSafeAndLeave);
        },
    ),
    Case(
        "left_on_missing_earth",
        &["socket_earth_open"],
        |j| {
            all(
                j,
                [meter(V, "SL", "SN"), meter(V, "SL", "SE"), Action::Close],
            );
        },
        |j| {
            all(
                j,
                [
                    meter(V, "SL", "SN"),
                    meter(V, "SL", "SE"),
                    plug(false),
                    Action::Close,
                ],
            );
        },
    ),
    Case(
        "house_defect_not_told",
        &["socket_earth_open"],
        |j| {
            all(
                j,
                [meter(V, "SL", "SN"), meter(V, "SL", "SE"), Action::Close],
            );
        },
        |j| {
            all(
                j,
                [
                    meter(V, "SL", "SN"),
                    meter(V, "SL", "SE"),
                    Action::Advise {
                        advice: tubwright::bench::visit::Advice::HouseWiring,
                    },
                    Action::Close,
                ],
            );
        },
    ),
    Case(
        "house_wiring_worked_on",
        &[],
        |j| {
            j.act(Action::MendHouse);
        },
        nothing,
    ),
];

fn breaks(case: &Case, way: Way) -> bool {
    let mut job = job("P", case.1);
    way(&mut job);
    job.safety().iter().any(|finding| finding.rule == case.0)
}

#[test]
fn each_rule_is_broken_by_the_careless_way_and_kept_by_the_careful_one() {
    let mut wrong = Vec::new();
    for case in CASES {
        if !breaks(case, case.2) {
            wrong.push(format!("{}: the careless way does not break it", case.0));
        }
        if breaks(case, case.3) {
            wrong.push(format!("{}: the careful way breaks it", case.0));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(CASES.len() >= 30);
}
