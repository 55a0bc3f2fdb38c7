//! Every act: what must be so before it, what it changes, how long it takes.

use tubwright::bench::action::Action;
use tubwright::bench::action::Charged;
use tubwright::bench::action::DischargeTool;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::action::Sense;
use tubwright::bench::action::Turnable;
use tubwright::bench::gauge::Gauge;
use tubwright::bench::job::Job;
use tubwright::bench::state::Ending;
use tubwright::bench::visit::Advice;
use tubwright::bench::visit::EmptyBy;

use crate::scene::does;
use crate::scene::gauge;
use crate::scene::job;
use crate::scene::key;
use crate::scene::meter;
use crate::scene::off;

/// One act: what goes before, what it takes, what is so afterwards, and whether it is refused when
/// nothing went before.
struct Case {
    before: Vec<Action>,
    act: Action,
    seconds: f64,
    is_refused_at_once: bool,
    effect: fn(&Job) -> bool,
}

fn case(before: Vec<Action>, act: Action, seconds: f64, effect: fn(&Job) -> bool) -> Case {
    Case {
        before,
        act,
        seconds,
        is_refused_at_once: false,
        effect,
    }
}

/// An act that cannot be done before what goes before it.
fn after(before: Vec<Action>, act: Action, seconds: f64, effect: fn(&Job) -> bool) -> Case {
    Case {
        is_refused_at_once: true,
        ..case(before, act, seconds, effect)
    }
}

fn named(words: &str) -> String {
    words.to_owned()
}

fn noted(job: &Job) -> bool {
    !job.notebook().is_empty()
}

fn unplug() -> Action {
    Action::Plug { inserted: false }
}

fn behind() -> Vec<Action> {
    vec![unplug(), off("pull_out"), off("back_cover")]
}

fn below() -> Vec<Action> {
    vec![
        unplug(),
        Action::Tap { open: false },
        Action::SupplyHose { attached: false },
        off("pull_out"),
        off("lay_down"),
    ]
}

fn and(mut acts: Vec<Action>, more: Action) -> Vec<Action> {
    acts.push(more);
    acts
}

fn cases() -> Vec<Case> {
    let plug = |name: &str| Action::PullApart {
        connector: named(name),
    };
    let home = |name: &str| Action::PushTogether {
        connector: named(name),
    };
    let look = |place: &str| Action::Sense {
        sense: Sense::Look,
        place: named(place),
    };
    let work = |name: &str, check| Action::Work {
        work: named(name),
        check,
    };
    let top = || and(behind(), off("top_cover_up"));
    vec![
        case(
            vec![],
            Action::Ask {
                question: named("when"),
                again: false,
            },
            40.0,
            noted,
        ),
        case(vec![], key(PanelKey::Power), 2.0, |j| {
            j.machine().switched_on()
        }),
        case(vec![], Action::Lid { open: true }, 2.0, |j| {
            j.machine().lid_open()
        }),
        after(
            vec![Action::Lid { open: true }],
            Action::Lid { open: false },
            2.0,
            |j| !j.machine().lid_open(),
        ),
        case(vec![], unplug(), 15.0, |j| j.bench().isolation.unplugged),
        after(vec![unplug()], Action::Plug { inserted: true }, 15.0, |j| {
            j.machine().plugged()
        }),
        case(vec![], Action::HouseSwitch { on: false }, 90.0, |j| {
            j.bench().isolation.house_off
        }),
        after(
            vec![Action::HouseSwitch { on: false }],
            Action::HouseSwitch { on: true },
            90.0,
            |j| !j.bench().isolation.house_off,
        ),
        case(vec![], Action::ProveTester, 15.0, |j| {
            j.bench().isolation.tester_proved.is_some()
        }),
        case(vec![unplug()], Action::Secure, 20.0, |j| {
            j.bench().isolation.secured
        }),
        case(vec![], Action::Tap { open: false }, 15.0, |j| {
            !j.machine().tap_open()
        }),
        after(
            vec![Action::Tap { open: false }],
            Action::Tap { open: true },
            15.0,
            |j| j.machine().tap_open(),
        ),
        case(
            vec![Action::Tap { open: false }],
            Action::BleedHose,
            60.0,
            |j| j.bench().isolation.hose_bled,
        ),
        case(vec![], Action::SupplyHose { attached: false }, 90.0, |j| {
            !j.bench().hose_attached
        }),
        after(
            vec![Action::SupplyHose { attached: false }],
            Action::SupplyHose { attached: true },
            90.0,
            |j| j.bench().hose_attached,
        ),
        after(
            vec![unplug()],
            Action::Discharge {
                what: Charged::PlugPins,
                tool: DischargeTool::BleedResistor,
            },
            30.0,
            |j| j.bench().isolation.pins_discharged.is_some(),
        ),
        after(
            behind(),
            Action::Discharge {
                what: Charged::RunCapacitor,
                tool: DischargeTool::BleedResistor,
            },
            30.0,
            |j| j.bench().isolation.capacitor_discharged.is_some(),
        ),
        after(top(), Action::BridgeLid { fitted: true }, 20.0, |j| {
            j.machine().lid_bridged()
        }),
        case(vec![], look("floor"), 20.0, noted),
        after(behind(), look("run_capacitor"), 20.0, noted),
        after(
            vec![Action::Lid { open: true }],
            Action::Turn {
                what: Turnable::Basket,
            },
            20.0,
            noted,
        ),
        case(vec![], off("pull_out"), 120.0, |j| {
            j.bench().off == ["pull_out"]
        }),
        after(vec![off("pull_out")], off("back_cover"), 180.0, |j| {
            j.bench().off.len() == 2
        }),
        after(
            vec![off("pull_out")],
            Action::Refit {
                step: named("pull_out"),
                check: true,
            },
            150.0,
            |j| j.bench().off.is_empty() && j.bench().checked.contains("pull_out"),
        ),
        after(behind(), plug("motor_plug"), 20.0, |j| {
            j.bench().apart.contains("motor_plug")
        }),
        after(
            and(behind(), plug("motor_plug")),
            home("motor_plug"),
            20.0,
            |j| j.bench().apart.is_empty(),
        ),
        case(vec![], meter(MeterMode::AcVolts, "SL", "SN"), 20.0, |j| {
            j.reading().is_some()
        }),
        after(behind(), meter(MeterMode::AcVolts, "MA", "MC"), 20.0, |j| {
            j.reading().is_some()
        }),
        after(
            vec![meter(MeterMode::AcVolts, "SL", "SN")],
            Action::Note,
            5.0,
            noted,
        ),
        after(
            vec![unplug()],
            Action::Splitter { fitted: true },
            15.0,
            |j| j.bench().splitter,
        ),
        case(vec![], gauge(Gauge::SpiritLevel, "cabinet"), 30.0, noted),
        case(vec![], gauge(Gauge::Tachometer, "basket"), 10.0, noted),
        after(below(), gauge(Gauge::Rule, "clutch_lever"), 10.0, noted),
        case(
            vec![Action::Tap { open: false }, Action::BleedHose],
            gauge(Gauge::PressureGauge, "supply_hose"),
            190.0,
            |j| j.bench().fitted.contains(&Gauge::PressureGauge),
        ),
        case(vec![], work("spread_load", false), 0.0, |j| {
            !j.bench().works.is_empty()
        }),
        after(behind(), work("replace_run_capacitor", true), 0.0, |j| {
            j.ledger().fitted == ["run_capacitor"]
        }),
        after(
            vec![Action::Lid { open: true }],
            Action::Empty {
                how: EmptyBy::Bucket,
            },
            0.0,
            |j| j.machine().water_kg() < 0.1,
        ),
        after(
            below(),
            Action::Empty {
                how: EmptyBy::DrainWire,
            },
            90.0,
            |j| j.machine().water_kg() < 0.1,
        ),
        after(
            behind(),
            Action::VoltagePen { point: named("MA") },
            10.0,
            |j| j.bench().isolation.pen_dark == ["MA"],
        ),
        case(
            vec![],
            Action::VoltagePen { point: named("SL") },
            10.0,
            |j| j.bench().isolation.pen_dark.is_empty() && noted(j),
        ),
        case(
            vec![],
            Action::Remark {
                text: named("smells of the sea"),
            },
            10.0,
            noted,
        ),
        case(
            vec![],
            Action::Finding {
                causes: vec![],
                evidence: vec![],
            },
            60.0,
            |j| j.bench().findings.len() == 1,
        ),
        case(
            vec![],
            Action::Advise {
                advice: Advice::Load,
            },
            60.0,
            |j| j.bench().advice.contains(&Advice::Load),
        ),
        case(vec![], Action::MakeSafeAndLeave, 300.0, |j| {
            j.bench().ending == Some(Ending::MadeSafe)
        }),
        case(vec![], Action::Close, 120.0, |j| {
            j.bench().ending == Some(Ending::Closed)
        }),
    ]
}

#[test]
fn every_act_has_its_precondition_its_time_and_its_effect() {
    for case in cases() {
        let act = &case.act;
        if case.is_refused_at_once {
            let mut fresh = job("P", &[]);
            let hash = fresh.machine().state_hash();
            assert!(fresh.act(act.clone()).refusal.is_some(), "{act:?} at once");
            assert_eq!(fresh.machine().state_hash(), hash, "{act:?}");
            assert!(fresh.log().is_empty(), "{act:?}");
        }
        let mut job = job("P", &[]);
        for before in &case.before {
            does(&mut job, before.clone());
        }
        let (began, cost) = (job.tick(), job.cost());
        let outcome = does(&mut job, act.clone());
        let ticks = job.tick() - began;
        assert_eq!(ticks, outcome.ticks, "{act:?}");
        if case.seconds > 0.0 {
            assert_eq!(ticks, (case.seconds * 10.0) as u64, "{act:?}");
        } else {
            assert!(ticks > 0, "{act:?}");
        }
        assert!(job.cost() > cost, "{act:?} costs time");
        assert!((case.effect)(&job), "{act:?} has no effect");
        assert_eq!(job.log().last().map(|e| &e.action), Some(act));
    }
}

#[test]
fn an_act_once_the_job_is_over_changes_nothing() {
    let mut job = job("P", &[]);
    does(&mut job, Action::Close);
    for case in cases() {
        assert!(
            job.act(case.act.clone()).refusal.is_some(),
            "{:?}",
            case.act
        );
    }
    assert_eq!(job.log().len(), 1);
}

#[test]
fn a_day_after_the_bell_the_clock_stands_and_the_visit_can_only_be_ended() {
    let mut job = job("P", &[]);
    job.advance(u64::MAX);
    assert_eq!(job.tick(), 864_000);
    assert!(job.act(unplug()).refusal.is_some());
    does(&mut job, Action::Close);
    assert_eq!((job.tick(), job.log().len()), (864_000, 1));
}

#[test]
fn a_thing_no_machine_has_is_named_in_the_refusal() {
    let mut job = job("P", &[]);
    for act in [
        off("flux_drive"),
        Action::PullApart {
            connector: named("flux_drive"),
        },
        Action::Work {
            work: named("flux_drive"),
            check: false,
        },
        Action::Sense {
            sense: Sense::Look,
            place: named("flux_drive"),
        },
        gauge(Gauge::Rule, "flux_drive"),
        meter(MeterMode::Ohms, "flux_drive", "PL"),
    ] {
        let refusal = job.act(act.clone()).refusal.expect("refused");
        assert!(
            format!("{refusal:?}").contains("flux_drive"),
            "{act:?}: {refusal:?}"
        );
    }
}
