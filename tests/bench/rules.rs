//! Each safety rule driven by real acts on a real job: broken by the careless way, kept by the
//! careful one beside it. The ways stand in `fixtures/rules`, an act a word.

use tubwright::bench::action::Action;
use tubwright::bench::action::Charged;
use tubwright::bench::action::DischargeTool;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::action::Sense;
use tubwright::bench::action::Turnable;
use tubwright::bench::job::Job;
use tubwright::bench::visit::Advice;
use tubwright::bench::visit::EmptyBy;

use crate::scene::do_all;
use crate::scene::does;
use crate::scene::job;
use crate::scene::key;
use crate::scene::make_safe;
use crate::scene::meter;
use crate::scene::off;
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
        "wait" => return job.advance(rest.parse().expect("ticks")),
        "below" => return slow_down(job, rest.parse().expect("rad/s")),
        "V" => meter(MeterMode::AcVolts, red, black),
        "ohms" => meter(MeterMode::Ohms, red, black),
        "amps" => meter(MeterMode::Amps, red, black),
        "mohm" => meter(MeterMode::Insulation, red, black),
        "bond" => meter(MeterMode::EarthBond, red, black),
        "note" => Action::Note,
        "off" => off(rest),
        "alone" => Action::TakeOff {
            step: id,
            helped: false,
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
        "bleed" => Action::Discharge {
            what: Charged::RunCapacitor,
            tool: DischargeTool::BleedResistor,
        },
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

fn breaks(rule: &str, fault: &str, way: &str) -> bool {
    let faults: &[&str] = if fault == "-" { &[] } else { &[fault] };
    let mut job = job("P", faults);
    for each in way.split_whitespace() {
        word(&mut job, each);
    }
    job.safety().iter().any(|finding| finding.rule == rule)
}

#[test]
fn each_rule_is_broken_by_the_careless_way_and_kept_by_the_careful_one() {
    let mut wrong = Vec::new();
    let mut n = 0;
    let lines = include_str!("../fixtures/rules/ways.txt").lines();
    for line in lines.filter(|line| !line.starts_with('#')) {
        let [rule, fault, careless, careful] = line.split("; ").collect::<Vec<_>>()[..] else {
            panic!("{line}: rule; fault; careless; careful");
        };
        if !breaks(rule, fault, careless) {
            wrong.push(format!("{rule}: the careless way does not break it"));
        }
        if breaks(rule, fault, careful) {
            wrong.push(format!("{rule}: the careful way breaks it"));
        }
        n += 1;
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(n >= 40, "{n}");
}
