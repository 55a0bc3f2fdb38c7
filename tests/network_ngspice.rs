//! Networks solved by ngspice as well, if it is installed: 200 random ones, and 60 states of the
//! shipped machines with random faults. Every node within 0.1 % or 1 mV, every resistance within
//! 0.1 % or 1 mohm. Without ngspice the tests say so and pass.
//!
//! Many networks go into one deck, side by side, so that a handful of runs does it all.

#[path = "network/deck.rs"]
mod deck;

use std::fmt::Write;
use std::process::Command;
use std::sync::Arc;
use std::sync::atomic::AtomicU32;
use std::sync::atomic::Ordering;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;

use deck::coil_lines;
use deck::lines;
use deck::node;
use tubwright::machine::MachineModel;
use tubwright::network::Base;
use tubwright::network::Complex;
use tubwright::network::Contacts;
use tubwright::network::ElementKind;
use tubwright::network::Frequency;
use tubwright::network::Netlist;
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::solution::solve_once;
use tubwright::plant::harness::COLD_K;
use tubwright::plant::harness::Harness;
use tubwright::plant::harness::Wiring;
use tubwright::plant::harness::steady_state::steady_state;
use tubwright::scenario::machines;

/// A number from 0 to 1.
fn unit(rng: &mut ChaCha8Rng) -> f64 {
    f64::from(rng.next_u32()) / f64::from(u32::MAX)
}

fn pick<'a, T>(rng: &mut ChaCha8Rng, list: &'a [T]) -> &'a T {
    &list[rng.next_u32() as usize % list.len()]
}

fn has_ngspice() -> bool {
    let found = Command::new("ngspice").arg("--version").output().is_ok();
    if !found {
        println!("ngspice is not installed: not compared");
    }
    found
}

/// Runs an analysis on a deck and gives what it prints for each named voltage, in order.
fn ngspice(body: &str, analysis: &str, nodes: &[String]) -> Vec<Complex> {
    static DECKS: AtomicU32 = AtomicU32::new(0);
    let count = DECKS.fetch_add(1, Ordering::Relaxed);
    let name = format!("tubwright-{}-{count}.cir", std::process::id());
    let path = std::env::temp_dir().join(name);
    let prints: Vec<String> = nodes.iter().map(|n| format!("print v({n})")).collect();
    let prints = prints.join("\n");
    let deck = format!(
        "many networks\n{body}.options rshunt=1e15\n.control\nset numdgt=12\n{analysis}\n{prints}\nquit\n.endc\n.end\n"
    );
    std::fs::write(&path, &deck).expect("a temporary deck");
    let output = Command::new("ngspice")
        .arg("-b")
        .arg(&path)
        .output()
        .expect("ngspice runs");
    std::fs::remove_file(&path).ok();
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    let part = |t: &str| t.trim().parse::<f64>().expect("a number");
    let values: Vec<Complex> = text
        .lines()
        .filter(|l| l.starts_with("v("))
        .map(|line| {
            let (_, number) = line.split_once('=').expect("an equation");
            match number.split_once(',') {
                Some((re, im)) => Complex::new(part(re), part(im)),
                None => Complex::real(part(number)),
            }
        })
        .collect();
    let told = String::from_utf8_lossy(&output.stderr);
    assert_eq!(values.len(), nodes.len(), "{told}\n{text}");
    values
}

/// Voltages of our own, node by node, against ngspice's.
fn compare(what: &[String], ours: &[Complex], theirs: &[Complex]) {
    for ((what, got), want) in what.iter().zip(ours).zip(theirs) {
        let error = (*got - *want).abs();
        let allowed = (1e-3 * want.abs()).max(1e-3);
        assert!(error < allowed, "{what}: {got:?}, ngspice {want:?}");
    }
}

/// A random network of 4 to 12 nodes with a transformer and a source.
fn random(rng: &mut ChaCha8Rng) -> Netlist {
    let mut netlist = Netlist::new();
    let n = 4 + rng.next_u32() % 9;
    let nodes: Vec<NodeId> = (1..=n).map(|k| netlist.add_node(&k.to_string())).collect();
    for (k, node) in nodes.iter().enumerate() {
        // A path to earth for every node: nothing floats.
        let ohm = libm::pow(10.0, 2.0 + 4.0 * unit(rng));
        netlist.resistor("leak", *node, NodeId(k as u32 / 2), ohm);
    }
    for _ in 0..2 * n {
        let [from, to] = [0; 2].map(|_: u32| NodeId(rng.next_u32() % (n + 1)));
        if from == to {
            continue;
        }
        let decades = libm::pow(10.0, 4.0 * unit(rng) - 2.0);
        let kind = match rng.next_u32() % 4 {
            0 => ElementKind::Resistor {
                ohm: 30.0 * decades,
            },
            1 => ElementKind::Capacitor {
                farad: 1e-6 * decades,
            },
            2 => ElementKind::Inductor {
                henry: 0.3 * decades,
            },
            _ => ElementKind::Contact {
                closed_ohm: 0.02,
                open_ohm: 1e8,
                open_farad: 1e-11,
                bit: 0,
            },
        };
        netlist.add("random", from, to, kind);
    }
    let primary = ElementKind::Inductor {
        henry: 1.0 + unit(rng),
    };
    let secondary = ElementKind::Inductor {
        henry: 0.1 + unit(rng),
    };
    let x = netlist.add("t1", nodes[0], nodes[1], primary);
    let y = netlist.add("t2", nodes[2], nodes[3], secondary);
    netlist.couple("k", x, y, 0.98 * unit(rng));
    let feed = netlist.add_node("feed");
    let source = ElementKind::Source {
        ac_v: 50.0 + 200.0 * unit(rng),
        dc_v: 0.0,
    };
    netlist.add("v", feed, NodeId::EARTH, source);
    netlist.resistor("inner", feed, nodes[0], 0.1 + unit(rng));
    netlist
}

#[test]
fn random_networks_agree_with_ngspice() {
    if !has_ngspice() {
        return;
    }
    let mut rng = ChaCha8Rng::seed_from_u64(7);
    let (mut deck, mut names, mut ours) = (String::new(), Vec::new(), Vec::new());
    for case in 0..200 {
        let netlist = random(&mut rng);
        let contacts = Contacts(u64::from(rng.next_u32()));
        let plan = Arc::new(Plan::new(&netlist, false).expect("connected"));
        let base = Base::new(plan, &netlist, Frequency::steady(50.0));
        let solution = solve_once(&base, contacts, &[]).expect("regular");
        lines(&netlist, contacts, case, &mut deck);
        for k in 1..netlist.nodes().len() as u32 {
            names.push(node(case, NodeId(k)));
            ours.push(solution.node_v[k as usize]);
        }
    }
    let theirs = ngspice(&deck, "ac lin 1 50 50", &names);
    compare(&names, &ours, &theirs);
}

/// A machine with up to three faults of random severity, as wired in a random state.
fn random_wiring(rng: &mut ChaCha8Rng, model: &MachineModel) -> (Wiring, String, String) {
    let wired = Arc::new(model.wiring.clone());
    let state = pick(rng, &wired.states).clone();
    let mut wiring = Wiring::healthy(&wired);
    let electrical: Vec<_> = model
        .faults
        .iter()
        .filter(|f| !f.wiring.is_empty())
        .collect();
    let mut what = format!("{} {}", model.id, state.name);
    for _ in 0..rng.next_u32() % 4 {
        let fault = pick(rng, &electrical);
        let severity = if rng.next_u32().is_multiple_of(2) {
            1.0
        } else {
            unit(rng)
        };
        for change in &fault.wiring {
            wiring.apply(change, severity);
        }
        write!(what, " {}={severity:.2}", fault.reference).expect("text");
    }
    if rng.next_u32().is_multiple_of(4) {
        let lead = pick(rng, &wired.elements);
        if matches!(lead.kind, ElementKind::Resistor { ohm } if ohm > 0.0 && ohm < 0.1) {
            wiring.open_by_hand(wired.element(&lead.name).expect("its own"), true);
            write!(what, " {} open", lead.name).expect("text");
        }
    }
    wiring.set_plugged(state.is_plugged);
    (wiring, state.name, what)
}

#[test]
fn machines_with_random_faults_agree_with_ngspice_at_every_node() {
    if !has_ngspice() {
        return;
    }
    let mut rng = ChaCha8Rng::seed_from_u64(11);
    for pack in machines().expect("sound files").values() {
        let frequency_hz = pack.model.wiring.frequency_hz;
        let w_rad_per_s = 2.0 * std::f64::consts::PI * frequency_hz;
        let (mut deck, mut names, mut told, mut ours) =
            (String::new(), Vec::new(), Vec::new(), Vec::new());
        for case in 0..20 {
            let (wiring, state, what) = random_wiring(&mut rng, &pack.model);
            let state = wiring.model.state(&state).expect("its own").clone();
            let harness = Harness::new(&wiring, &[]).expect("solvable");
            let solved = steady_state(&harness, &state.closed, state.load_n_m, COLD_K);
            let solved = solved.unwrap_or_else(|error| panic!("{what}: {error}"));
            let network = &solved.ac.network;
            lines(harness.netlist(), solved.contacts, case, &mut deck);
            let siemens = &network.inner.coil_siemens;
            coil_lines(harness.netlist(), siemens, w_rad_per_s, case, &mut deck);
            for k in 1..harness.netlist().nodes().len() as u32 {
                names.push(node(case, NodeId(k)));
                told.push(format!("{what}, {}", harness.netlist().nodes()[k as usize]));
                ours.push(network.solution.node_v[k as usize]);
            }
        }
        let analysis = format!("ac lin 1 {frequency_hz} {frequency_hz}");
        compare(&told, &ours, &ngspice(&deck, &analysis, &names));
    }
}

/// Current that a pretended ohmmeter drives, A.
const PROBING_A: f64 = 1e-3;
/// Resistances above this read over range, ohm.
const OVER_RANGE_OHM: f64 = 50e6;

#[test]
fn resistances_of_machines_with_random_faults_agree_with_ngspice() {
    if !has_ngspice() {
        return;
    }
    let mut rng = ChaCha8Rng::seed_from_u64(13);
    for pack in machines().expect("sound files").values() {
        let (mut deck, mut names, mut told, mut ours) =
            (String::new(), Vec::new(), Vec::new(), Vec::new());
        for case in 0..20 {
            let (mut wiring, state, what) = random_wiring(&mut rng, &pack.model);
            wiring.set_plugged(false);
            let closed = wiring.model.state(&state).expect("its own").closed.clone();
            let harness = Harness::new(&wiring, &[]).expect("solvable");
            let contacts = harness.contacts(&closed);
            let point = harness.solve_dc(contacts, 0.0, COLD_K).expect("solvable");
            let netlist = harness.netlist();
            let places: Vec<u32> = (1..netlist.nodes().len() as u32).collect();
            let (a, b, ohm) = loop {
                let (a, b) = (
                    NodeId(*pick(&mut rng, &places)),
                    NodeId(*pick(&mut rng, &places)),
                );
                let ohm = point.seen(a, b).ohm;
                if a != b && ohm < OVER_RANGE_OHM {
                    break (a, b, ohm);
                }
            };
            // A winding at DC is its copper; the rest by its value at DC, links as 0 V.
            for (k, e) in netlist.elements().iter().enumerate() {
                let (from, to) = (node(case, e.from), node(case, e.to));
                let siemens = point.base.admittance_siemens(k, contacts);
                if point.base.plan.merged.is_merged[k] {
                    writeln!(deck, "v{case}_{k} {from} {to} dc 0").expect("text");
                } else if siemens > 0.0 && e.from != e.to {
                    writeln!(deck, "r{case}_{k} {from} {to} {:e}", 1.0 / siemens).expect("text");
                }
            }
            let count = netlist.coils().len();
            for (k, coil) in netlist.coils().iter().enumerate() {
                let ohm = 1.0 / point.inner.coil_siemens[k * count + k];
                let (from, to) = (node(case, coil.from), node(case, coil.to));
                writeln!(deck, "rc{case}_{k} {from} {to} {ohm:e}").expect("text");
            }
            let (red, black) = (node(case, a), node(case, b));
            writeln!(deck, "i{case} {black} {red} dc {PROBING_A:e}").expect("text");
            names.extend([red, black]);
            let named = |id: NodeId| netlist.nodes()[id.index()].clone();
            told.push(format!("{what}, {} to {}", named(a), named(b)));
            ours.push(ohm);
        }
        let volts = ngspice(&deck, "op", &names);
        for ((what, got), pair) in told.iter().zip(&ours).zip(volts.chunks(2)) {
            let want = (pair[0].re - pair[1].re) / PROBING_A;
            let allowed = (1e-3 * want.abs()).max(1e-3);
            assert!(
                (got - want).abs() < allowed,
                "{what}: {got} ohm, ngspice {want}"
            );
        }
    }
}
