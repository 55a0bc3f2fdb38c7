//! Each safety rule driven by real acts on a real job: broken by the careless way, kept by the
//! careful one beside it. The ways stand in `fixtures/rules`, an act a word.

use std::collections::BTreeSet;

use tubwright::bench::action::Action;
use tubwright::bench::action::Charged;
use tubwright::bench::action::DischargeTool;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::action::Sense;
use tubwright::bench::action::Turnable;
use tubwright::bench::job::Job;
use tubwright::bench::safety;
use tubwright::bench::visit::Advice;
use tubwright::bench::visit::EmptyBy;

use crate::scene::do_all;
use crate::scene::does;
use crate::scene::job_of;
use crate::scene::key;
use crate::scene::make_safe;
use crate::scene::meter;
use crate::scene::off;
use crate::scene::scenario;
use crate::scene::spins;

/// Does what one word of a way says; every act must be possible.
fn word(job: &mut Job, word: &str) {
    let (name, rest) = word.split_once(':').unwrap_or((word, ""));
    let (red, black) = rest.split_once(':').unwrap_or((rest, ""));
    let id = rest.to_owned();
    let yes = name.ends_with('+');
    let action = match name {
        "SAFE" => return make_safe(job),
        "SPIN" => return spins(job),
        "BEHIND" => return do_all(job, [off("pull_out"), off("back_cover")]),
        "LIE" => {
            let hose = Action::SupplyHose { attached: false };
            return do_all(job, [hose, off("pull_out"), off("lay_down")]);
        }
        "TURNS" => return turns(job),
        "sloppy" => return sloppy(job, rest),
        "wait" => return job.advance(rest.parse().expect("ticks")),
        "below" => return slow_down(job, rest.parse().expect("rad/s")),
        "V" => meter(MeterMode::AcVolts, red, black),
        "ohms" => meter(MeterMode::Ohms, red, black),
        "amps" => meter(MeterMode::Amps, red, black),
        "dc" => meter(MeterMode::DcVolts, red, black),
        "leak" => Action::Meter {
            mode: MeterMode::Leakage,
            red: Some(line_conductor(job)),
            black: None,
        },
        "mohm" => meter(MeterMode::Insulation, red, black),
        "bond" => meter(MeterMode::EarthBond, red, black),
        "note" => Action::Note,
        "off" => off(rest),
        "alone" => Action::TakeOff {
            step: id,
            helped: false,
        },
        "bare" => Action::TakeOff {
            step: id,
            helped: false,
        },
        "pen" => Action::VoltagePen { point: id },
        "prove" => Action::ProveTester,
        "look_over" => Action::CheckInstrument,
        "spare" => Action::SpareInstrument,
        "load" => Action::LoadVan { parts: vec![id] },
        "work" => Action::Work {
            work: id,
            check: true,
        },
        "blanket" => Action::ProtectFloor,
        "gloves+" | "gloves-" => Action::Gloves { on: yes },
        "clear" => Action::KeepClear,
        "cool" => Action::CoolWater,
        "dry" => Action::DryOut,
        "smell" | "look" => Action::Sense {
            sense: if name == "look" {
                Sense::Look
            } else {
                Sense::Smell
            },
            place: id,
        },
        "until+" | "until-" => Action::LeaveUntil {
            parts: Vec::new(),
            label: yes,
        },
        "on" => Action::Refit {
            step: id,
            check: true,
        },
        "apart" => Action::PullApart { connector: id },
        "push" => Action::PushTogether { connector: id },
        "power" => key(PanelKey::Power),
        "start" => key(PanelKey::Start),
        "secure" => Action::Secure,
        "breaker" => Action::Breaker,
        "relieve" => Action::BleedHose,
        "mop" => Action::MopFloor,
        "mend_house" => Action::MendHouse,
        "leave" => Action::MakeSafeAndLeave,
        "close" => Action::Close,
        "plug+" | "plug-" => Action::Plug { inserted: yes },
        "lid+" | "lid-" => Action::Lid { open: yes },
        "tap+" | "tap-" => Action::Tap { open: yes },
        "hose+" | "hose-" => Action::SupplyHose { attached: yes },
        "bridge+" | "bridge-" => Action::BridgeLid { fitted: yes },
        "bail" => Action::Empty {
            how: EmptyBy::Bucket,
        },
        "basket" => Action::Turn {
            what: Turnable::Basket,
        },
        "feel" => Action::Sense {
            sense: Sense::Feel,
            place: id,
        },
        "bleed" | "short" => Action::Discharge {
            what: Charged::RunCapacitor,
            tool: if name == "short" {
                DischargeTool::Screwdriver
            } else {
                DischargeTool::BleedResistor
            },
        },
        "program" => key(PanelKey::Program),
        "tell" => Action::Advise {
            advice: Advice::HouseWiring,
        },
        other => panic!("{other}: no such word"),
    };
    does(job, action);
}

fn slow_down(job: &mut Job, below_rad_per_s: f64) {
    for _ in 0..6000 {
        if job.machine().basket_rad_per_s().abs() < below_rad_per_s {
            return;
        }
        job.advance(1);
    }
    panic!("never slow: {}", job.machine().basket_rad_per_s());
}

fn line_conductor(job: &Job) -> String {
    let wiring = &job.machine().model().wiring;
    let line = wiring.supply.line_conductor;
    wiring.elements[line.index()].name.clone()
}

/// Runs the machine until its motor turns.
fn turns(job: &mut Job) {
    does(job, key(PanelKey::Power));
    job.advance(70);
    does(job, key(PanelKey::Start));
    for _ in 0..10_000 {
        job.advance(1);
        if job.machine().plant().readings().rotor_rad_per_s.abs() > 100.0 {
            return;
        }
    }
    panic!("the motor never turns");
}

/// Takes a step off and puts it back without a count until a piece is lost inside.
fn sloppy(job: &mut Job, step: &str) {
    for _ in 0..200 {
        let refit = Action::Refit {
            step: step.to_owned(),
            check: false,
        };
        do_all(job, [off(step), refit]);
        if job.bench().short.values().any(|short| short.is_inside) {
            return;
        }
    }
    panic!("never lost");
}

/// A job with what the second field of a line says: faults, and by name what is out of the
/// ordinary.
fn job_with(setting: &str) -> Job {
    let words: Vec<&str> = setting.split(',').filter(|word| *word != "-").collect();
    let (about, faults): (Vec<&str>, Vec<&str>) =
        words.into_iter().partition(|word| word.contains('='));
    let mut scenario = scenario("P", &faults);
    for word in about {
        match word.split_once('=').expect("name=value") {
            ("at", condition) => {
                let name = serde_json::Value::from(condition);
                let condition = serde_json::from_value(name).expect("a condition");
                scenario.visit.place.push(condition);
            }
            ("water", kg) => scenario.site.water_kg = kg.parse().expect("kg"),
            ("category", n) => scenario.visit.instrument.category = n.parse().expect("1 to 4"),
            ("lead", "cracked") => scenario.visit.instrument.lead_is_cracked = true,
            other => panic!("{other:?}: no such setting"),
        }
    }
    job_of(scenario)
}

fn breaks(rule: &str, setting: &str, way: &str) -> bool {
    let mut job = job_with(setting);
    for each in way.split_whitespace() {
        word(&mut job, each);
    }
    job.safety().iter().any(|finding| finding.rule == rule)
}

#[test]
fn each_rule_is_broken_by_the_careless_way_and_kept_by_the_careful_one() {
    let mut wrong = Vec::new();
    let mut driven = BTreeSet::new();
    let lines = include_str!("../fixtures/rules/ways.txt").lines();
    for line in lines.filter(|line| !line.starts_with('#')) {
        let [rule, setting, careless, careful] = line.split("; ").collect::<Vec<_>>()[..] else {
            panic!("{line}: rule; setting; careless; careful");
        };
        if !breaks(rule, setting, careless) {
            wrong.push(format!("{rule}: the careless way does not break it"));
        }
        if breaks(rule, setting, careful) {
            wrong.push(format!("{rule}: the careful way breaks it"));
        }
        driven.insert(rule);
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    let all: BTreeSet<&str> = safety::rules().map(|rule| rule.id).collect();
    assert_eq!(driven, all, "each rule has its two ways");
}
