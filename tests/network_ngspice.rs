//! Random networks solved by ngspice as well, if it is installed: every node within 0.1 %
//! or 1 mV. Without it the test says so and passes.

use std::fmt::Write;
use std::process::Command;
use std::sync::Arc;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;

use tubwright::network::Base;
use tubwright::network::Contacts;
use tubwright::network::ElementKind;
use tubwright::network::Frequency;
use tubwright::network::Netlist;
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::solution::solve_once;

/// A number from 0 to 1.
fn unit(rng: &mut ChaCha8Rng) -> f64 {
    f64::from(rng.next_u32()) / f64::from(u32::MAX)
}

/// A random network with its deck.
fn random(rng: &mut ChaCha8Rng) -> (Netlist, String) {
    let mut netlist = Netlist::new();
    let mut deck = String::from("random network\n");
    let n = 4 + rng.next_u32() % 9;
    let nodes: Vec<NodeId> = (1..=n).map(|k| netlist.add_node(&k.to_string())).collect();
    for (k, node) in nodes.iter().enumerate() {
        let ohm = libm::pow(10.0, 2.0 + 4.0 * unit(rng));
        let to = NodeId(k as u32 / 2);
        netlist.resistor("leak", *node, to, ohm);
        writeln!(deck, "rl{k} {} {} {ohm:e}", node.0, to.0).expect("text");
    }
    for k in 0..2 * n {
        let (from, to) = (
            NodeId(rng.next_u32() % (n + 1)),
            NodeId(rng.next_u32() % (n + 1)),
        );
        if from == to {
            continue;
        }
        let decades = libm::pow(10.0, 4.0 * unit(rng) - 2.0);
        let (letter, value, kind) = match rng.next_u32() % 3 {
            0 => (
                'r',
                30.0 * decades,
                ElementKind::Resistor {
                    ohm: 30.0 * decades,
                },
            ),
            1 => (
                'c',
                1e-6 * decades,
                ElementKind::Capacitor {
                    farad: 1e-6 * decades,
                },
            ),
            _ => (
                'l',
                0.3 * decades,
                ElementKind::Inductor {
                    henry: 0.3 * decades,
                },
            ),
        };
        netlist.add("random", from, to, kind);
        writeln!(deck, "{letter}x{k} {} {} {value:e}", from.0, to.0).expect("text");
    }
    let (henry_1, henry_2, factor) = (1.0 + unit(rng), 0.1 + unit(rng), 0.98 * unit(rng));
    let x = netlist.add(
        "t1",
        nodes[0],
        nodes[1],
        ElementKind::Inductor { henry: henry_1 },
    );
    let y = netlist.add(
        "t2",
        nodes[2],
        nodes[3],
        ElementKind::Inductor { henry: henry_2 },
    );
    netlist.couple("k", x, y, factor);
    writeln!(
        deck,
        "lt1 1 2 {henry_1:e}\nlt2 3 4 {henry_2:e}\nk1 lt1 lt2 {factor:e}"
    )
    .expect("text");
    let feed = netlist.add_node("feed");
    let (volts, ohm) = (50.0 + 200.0 * unit(rng), 0.1 + unit(rng));
    netlist.add(
        "v",
        feed,
        NodeId::EARTH,
        ElementKind::Source {
            ac_v: volts,
            dc_v: 0.0,
        },
    );
    netlist.resistor("inner", feed, nodes[0], ohm);
    writeln!(deck, "v1 100 0 dc 0 ac {volts:e}\nrinner 100 1 {ohm:e}").expect("text");
    let prints: Vec<String> = (1..=n).map(|k| format!("print v({k})")).collect();
    let prints = prints.join("\n");
    write!(
        deck,
        ".control\nset numdgt=12\nac lin 1 50 50\n{prints}\nquit\n.endc\n.end\n"
    )
    .expect("text");
    (netlist, deck)
}

/// Node voltages from ngspice's printout `v(1) = re,im`.
fn ngspice(deck: &str, name: &str) -> Vec<(f64, f64)> {
    let path = std::env::temp_dir().join(format!("{name}-{}.cir", std::process::id()));
    std::fs::write(&path, deck).expect("a temporary deck");
    let output = Command::new("ngspice")
        .arg("-b")
        .arg(&path)
        .output()
        .expect("ngspice runs");
    std::fs::remove_file(&path).ok();
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    let values = text.lines().filter(|l| l.starts_with("v(")).map(|line| {
        let (_, number) = line.split_once('=').expect("an equation");
        let (re, im) = number.split_once(',').expect("a complex number");
        let part = |t: &str| t.trim().parse::<f64>().expect("a number");
        (part(re), part(im))
    });
    values.collect()
}

#[test]
fn random_networks_agree_with_ngspice() {
    if Command::new("ngspice").arg("--version").output().is_err() {
        println!("ngspice is not installed: not compared");
        return;
    }
    let mut rng = ChaCha8Rng::seed_from_u64(7);
    for case in 0..25 {
        let (netlist, deck) = random(&mut rng);
        let plan = Arc::new(Plan::new(&netlist, false).expect("connected"));
        let base = Base::new(plan, &netlist, Frequency::steady(50.0));
        let solution = solve_once(&base, Contacts(0), &[]).expect("regular");
        let wanted = ngspice(&deck, &format!("tubwright-{case}"));
        assert_eq!(wanted.len(), netlist.nodes().len() - 2, "{deck}");
        for (k, (re, im)) in wanted.iter().enumerate() {
            let got = solution.node_v[k + 1];
            let error = libm::hypot(got.re - re, got.im - im);
            let allowed = (1e-3 * libm::hypot(*re, *im)).max(1e-3);
            assert!(
                error < allowed,
                "case {case}, node {}: {got:?}, {re} {im}\n{deck}",
                k + 1
            );
        }
    }
}
