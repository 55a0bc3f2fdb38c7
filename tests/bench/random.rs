//! Random acts, possible and impossible, on random faults: nothing panics, what hands cannot reach
//! stays out of reach, refused acts change nothing, and every log replays to the same bits.

use proptest::prelude::*;

use tubwright::bench::action::Action;
use tubwright::bench::action::Charged;
use tubwright::bench::action::DischargeTool;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::action::Sense;
use tubwright::bench::action::Turnable;
use tubwright::bench::gauge::Gauge;
use tubwright::bench::job::Job;
use tubwright::bench::questions::PHONE_QUESTIONS;
use tubwright::bench::questions::QUESTIONS;
use tubwright::bench::visit::Advice;
use tubwright::bench::visit::Condition;
use tubwright::bench::visit::EmptyBy;
use tubwright::bench::visit::OfferKind;
use tubwright::bench::visit::OfferOption;
use tubwright::bench::visit::Payer;
use tubwright::bench::visit::PictureOf;
use tubwright::bench::workshop::Workshop;

use crate::scene::job_of;
use crate::scene::scenario;

/// A random act as numbers: what kind, which thing, a choice, a wait before it.
type Draw = (u8, u16, bool, u16);

const KEYS: [PanelKey; 5] = [
    PanelKey::Power,
    PanelKey::Start,
    PanelKey::Program,
    PanelKey::Level,
    PanelKey::Service,
];
const TURNS: [Turnable; 8] = [
    Turnable::Pulsator,
    Turnable::Basket,
    Turnable::MotorPulley,
    Turnable::Belt,
    Turnable::DrainWire,
    Turnable::ClutchLever,
    Turnable::Tub,
    Turnable::BalanceLever,
];
const SENSES: [Sense; 4] = [Sense::Look, Sense::Listen, Sense::Feel, Sense::Smell];

/// The thing a number picks; now and then one that no machine has.
fn pick(names: Vec<&str>, n: u16) -> String {
    match names.get(usize::from(n) % (names.len() + 1)) {
        Some(name) => (*name).to_owned(),
        None => "no_such_thing".to_owned(),
    }
}

fn of<T: Clone>(list: &[T], n: u16) -> T {
    list[usize::from(n) % list.len()].clone()
}

fn act(workshop: &Workshop, wires: &[String], (kind, n, yes, _): Draw) -> Action {
    let step = || pick(workshop.steps.iter().map(|s| s.id.as_str()).collect(), n);
    let place = || pick(workshop.places.iter().map(|p| p.id.as_str()).collect(), n);
    let plug = || {
        pick(
            workshop.connectors.iter().map(|c| c.id.as_str()).collect(),
            n,
        )
    };
    let point = |n: u16| {
        pick(
            workshop
                .test_points
                .iter()
                .map(|t| t.node.as_str())
                .collect(),
            n,
        )
    };
    match kind % 40 {
        0 => Action::Key { key: of(&KEYS, n) },
        1 => Action::Lid { open: yes },
        2 => Action::Plug { inserted: yes },
        3 => Action::Breaker,
        4 => Action::HouseSwitch { on: yes },
        5 => Action::ProveTester,
        6 => Action::Secure,
        7 => Action::Tap { open: yes },
        8 => Action::BleedHose,
        9 => Action::SupplyHose { attached: yes },
        10 => Action::Discharge {
            what: of(&[Charged::PlugPins, Charged::RunCapacitor], n),
            tool: of(
                &[DischargeTool::BleedResistor, DischargeTool::Screwdriver],
                n / 2,
            ),
        },
        11 => Action::BridgeLid { fitted: yes },
        12 => Action::Sense {
            sense: of(&SENSES, n / 64),
            place: place(),
        },
        13 => Action::Turn {
            what: of(&TURNS, n),
        },
        14..=16 => Action::TakeOff {
            step: step(),
            helped: yes,
        },
        17 => Action::Refit {
            step: step(),
            check: yes,
        },
        18 => Action::PullApart { connector: plug() },
        19 => Action::PushTogether { connector: plug() },
        20 => {
            let mode = of(&MeterMode::ALL, n);
            let red = if mode.is_clamp() {
                wires[usize::from(n / 13) % wires.len()].clone()
            } else {
                point(n / 13)
            };
            let black = (!mode.is_clamp()).then(|| point(n / 7));
            Action::Meter {
                mode,
                red: Some(red),
                black,
            }
        }
        21 => Action::Note,
        22 => {
            let gauge = of(&Gauge::ALL, n);
            let place = match yes {
                true => of(gauge.about().places, n / 10).to_owned(),
                false => place(),
            };
            Action::Gauge { gauge, place }
        }
        23 => Action::Work {
            work: pick(workshop.works.iter().map(|w| w.id.as_str()).collect(), n),
            check: yes,
        },
        24 => match yes {
            true => Action::Empty {
                how: of(&[EmptyBy::Bucket, EmptyBy::DrainWire], n),
            },
            false => Action::Splitter { fitted: n % 2 == 0 },
        },
        25 => Action::VoltagePen { point: point(n) },
        26 => match yes {
            true => Action::DryOut,
            false => Action::Remark {
                text: "x".repeat(usize::from(n % 400)),
            },
        },
        _ => around(workshop, kind, n, yes),
    }
}

/// What a store calls things; now and then one it does not have.
fn items(workshop: &Workshop, n: u16) -> Vec<String> {
    let known: Vec<String> = workshop
        .parts
        .iter()
        .flat_map(|part| {
            let variants = part.variants.iter();
            let other = variants.map(|v| format!("{}:{}", part.id, v.id));
            std::iter::once(part.id.clone()).chain(other)
        })
        .collect();
    let names = || known.iter().map(String::as_str).collect();
    (0..n % 4).map(|i| pick(names(), n / 4 + 31 * i)).collect()
}

/// The acts around a repair.
fn around(workshop: &Workshop, kind: u8, n: u16, yes: bool) -> Action {
    let price = f64::from(n % 500);
    match kind % 40 {
        27 => match yes {
            true => Action::Phone {
                question: pick(PHONE_QUESTIONS.iter().map(|q| q.id).collect(), n),
            },
            false => Action::LoadVan {
                parts: items(workshop, n),
            },
        },
        28 => Action::Ask {
            question: pick(QUESTIONS.iter().map(|q| q.id).collect(), n),
            again: yes,
        },
        29 => match yes {
            true => Action::Quote { price },
            false => Action::Offer {
                causes: Vec::new(),
                options: [
                    OfferKind::Repair,
                    OfferKind::OtherPart,
                    OfferKind::NewMachine,
                ]
                .into_iter()
                .take(usize::from(n % 4))
                .map(|what| OfferOption { what, price })
                .collect(),
            },
        },
        30 => of(&[Action::AskPayer, Action::TakeFee, Action::CheckPapers], n),
        31 => Action::Warranty {
            payer: of(&[Payer::Maker, Payer::Customer], n),
        },
        32 => of(&[Action::CheckInstrument, Action::SpareInstrument], n),
        33 => Action::PutOldBack {
            part: pick(workshop.parts.iter().map(|p| p.id.as_str()).collect(), n),
        },
        34 => of(
            &[
                Action::ProtectFloor,
                Action::Gloves { on: yes },
                Action::MopFloor,
                Action::KeepClear,
                Action::CoolWater,
                Action::MendHouse,
            ],
            n,
        ),
        35 => match yes {
            true => Action::TakePicture {
                of: of(&[PictureOf::Outside, PictureOf::Opened], n),
            },
            false => Action::Sign,
        },
        36 => Action::LeaveUntil {
            parts: items(workshop, n),
            label: yes,
        },
        37 => Action::Finding {
            causes: vec![of(&["belt_off", "no_such_thing"], n).to_owned()],
            evidence: (0..u32::from(n % 3)).collect(),
        },
        38 => Action::Advise {
            advice: of(&[Advice::WhatWasDone, Advice::HouseWiring], n),
        },
        // Most draws go on working.
        _ => match n % 8 {
            0 => Action::MakeSafeAndLeave,
            1 => Action::Close,
            _ => Action::Work {
                work: pick(workshop.works.iter().map(|w| w.id.as_str()).collect(), n),
                check: false,
            },
        },
    }
}

/// Every way a place can be out of the ordinary, one bit each.
fn place(bits: u16) -> Vec<Condition> {
    let all = [
        Condition::GasSmell,
        Condition::Flood,
        Condition::Threat,
        Condition::ScorchedSocket,
        Condition::Adaptor,
        Condition::ExtensionReel,
        Condition::NoResidualDevice,
        Condition::Child,
        Condition::Dog,
        Condition::DelicateFloor,
        Condition::BareEdges,
        Condition::HotWater,
    ];
    let has = |(bit, _): &(usize, Condition)| bits >> bit & 1 == 1;
    all.into_iter()
        .enumerate()
        .filter(has)
        .map(|(_, condition)| condition)
        .collect()
}

/// What is off came off after what it needs, and whatever a reading touched could be reached.
fn keeps_the_access_graph(job: &Job) -> Result<(), TestCaseError> {
    let workshop = &job.scenario().workshop;
    let off = &job.bench().off;
    for (at, id) in off.iter().enumerate() {
        let step = workshop.step(id);
        prop_assert!(step.is_some(), "{id} is no step");
        for need in step.map(|s| s.needs.as_slice()).unwrap_or_default() {
            prop_assert!(
                off[..at].contains(need),
                "{id} is off before {need}: {off:?}"
            );
        }
    }
    Ok(())
}

fn holds(machine: &str, fault: u16, bits: u16, draws: &[Draw]) -> Result<(), TestCaseError> {
    let sound = scenario(machine, &[]);
    let faults = &sound.machine.faults;
    let id = faults[usize::from(fault) % faults.len()].id.clone();
    let mut faulty = scenario(machine, &[&id]);
    faulty.visit.place = place(bits);
    faulty.visit.person.is_tenant = bits & 1 == 1;
    faulty.visit.person.haggle_ratio = if bits & 2 == 2 { 0.2 } else { 0.0 };
    faulty.visit.instrument.lead_is_broken = bits & 4 == 4;
    faulty.site.water_kg = if bits & 8 == 8 { 25.0 } else { 0.0 };
    let mut job = job_of(faulty);
    let workshop = sound.workshop.clone();
    let wires: Vec<String> = sound
        .machine
        .wiring
        .elements
        .iter()
        .map(|e| e.name.clone())
        .chain(["cord".to_owned()])
        .collect();
    let mut outcomes = Vec::new();
    for draw in draws {
        job.advance(u64::from(draw.3 % 300));
        let (hash, entries) = (job.machine().state_hash(), job.log().len());
        let action = act(&workshop, &wires, *draw);
        let foreseen = job.refusal(&action);
        let outcome = job.act(action.clone());
        prop_assert_eq!(&foreseen, &outcome.refusal, "{:?}", &action);
        if outcome.refusal.is_some() {
            prop_assert_eq!(
                job.machine().state_hash(),
                hash,
                "{:?} changed something",
                action
            );
            prop_assert_eq!(job.log().len(), entries);
        } else {
            outcomes.push(outcome);
        }
        keeps_the_access_graph(&job)?;
        prop_assert!(
            job.machine().trouble().is_none(),
            "{:?}",
            job.machine().trouble()
        );
        prop_assert!(job.cost().is_finite());
        prop_assert!(job.n_pieces_on_cloth() <= job.n_pieces_off());
    }
    let end = job.tick();
    let (mut again, told) = Job::replay(job.scenario().clone(), job.seed(), job.log())
        .map_err(|error| TestCaseError::fail(error.to_string()))?;
    again.advance_to(end);
    prop_assert_eq!(again.machine().state_hash(), job.machine().state_hash());
    prop_assert_eq!(again.notebook(), job.notebook());
    prop_assert_eq!(told, outcomes);
    prop_assert_eq!(again.safety().len(), job.safety().len());
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn random_acts_on_random_faults_keep_every_promise(
        machine in prop::sample::select(vec!["P", "T", "N"]),
        fault in any::<u16>(),
        bits in 0_u16..4096,
        draws in prop::collection::vec(any::<Draw>(), 1..40),
    ) {
        holds(machine, fault, bits, &draws)?;
    }
}
