//! Random networks: resistors, capacitors, inductors, closed contacts, sources and links in trees, two
//! coupled inductors, and a block of coils that is not reciprocal.

use std::sync::Arc;

use proptest::prelude::*;

use tubwright::network::Base;
use tubwright::network::Complex;
use tubwright::network::Contacts;
use tubwright::network::ElementKind;
use tubwright::network::Frequency;
use tubwright::network::Netlist;
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::Solution;
use tubwright::network::SolveError;
use tubwright::network::solution::solve_once;

/// Numbers of a network and its voltages.
pub type Solved = Result<(Base<Complex>, Solution<Complex>), SolveError>;

pub fn solve(netlist: &Netlist, drive: Frequency, coils: &[Complex]) -> Solved {
    let plan = Arc::new(Plan::new(netlist, false)?);
    let base = Base::new(plan, netlist, drive);
    let solution = solve_once(&base, Contacts(u64::MAX), coils)?;
    Ok((base, solution))
}

/// One random element: kind, two nodes, size.
pub type Piece = (u8, usize, usize, f64);

#[derive(Debug, Clone)]
pub struct Random {
    pub nodes: usize,
    pub pieces: Vec<Piece>,
    /// The weaker ones are links without resistance.
    pub sources: Vec<(usize, f64)>,
    pub coupling: Option<(f64, f64, f64)>,
    pub coils: Option<[f64; 4]>,
    /// Which places coupling and coils lie between.
    pub shift: usize,
}

/// A source weaker than this is a link instead, V.
pub const LINK_BELOW_V: f64 = 60.0;

pub fn random() -> impl Strategy<Value = Random> {
    let pieces = prop::collection::vec((0_u8..4, 0_usize..13, 0_usize..13, -1.0..1.0_f64), 4..40);
    let sources = prop::collection::vec((0_usize..13, -300.0..300.0_f64), 1..5);
    let coupling = prop::option::of((0.001..1.0_f64, 0.001..1.0_f64, -0.99..0.99_f64));
    let coils = prop::option::of(prop::array::uniform4(-0.9..0.9_f64));
    (3_usize..9, pieces, sources, coupling, coils, 0_usize..13).prop_map(
        |(nodes, pieces, sources, coupling, coils, shift)| Random {
            nodes,
            pieces,
            sources,
            coupling,
            coils,
            shift,
        },
    )
}

/// Builds the network and the coils' admittances (not reciprocal).
pub fn build(r: &Random) -> (Netlist, Vec<Complex>) {
    let mut netlist = Netlist::new();
    let mut nodes = vec![NodeId::EARTH];
    for k in 1..=r.nodes {
        let node = netlist.add_node(&format!("n{k}"));
        // A path to earth for every node: nothing floats.
        netlist.resistor(&format!("leak{k}"), node, nodes[k / 2], 1e3 * k as f64);
        nodes.push(node);
    }
    // Sources and links hang on nodes and on each other, so that what lies between them is driven from
    // inside a tree of them.
    let mut places = nodes.clone();
    for (k, (at, volts)) in r.sources.iter().enumerate() {
        let to = places[at % places.len()];
        let from = netlist.add_node(&format!("s{k}"));
        let kind = if volts.abs() < LINK_BELOW_V {
            ElementKind::Resistor { ohm: 0.0 }
        } else {
            ElementKind::Source {
                ac_v: *volts,
                dc_v: *volts,
            }
        };
        netlist.add(&format!("v{k}"), from, to, kind);
        let other = nodes[1 + k % r.nodes];
        netlist.resistor(&format!("inner{k}"), from, other, 0.3);
        netlist.resistor(&format!("far{k}"), from, NodeId::EARTH, 1e4);
        places.push(from);
    }
    let place = |k: usize| places[(r.shift + k) % places.len()];
    for (k, (kind, a, b, size)) in r.pieces.iter().enumerate() {
        let (a, b) = (places[a % places.len()], places[b % places.len()]);
        let decades = libm::pow(10.0, 3.0 * size);
        let kind = match kind {
            0 => ElementKind::Resistor {
                ohm: 50.0 * decades,
            },
            1 => ElementKind::Capacitor {
                farad: 1e-6 * decades,
            },
            2 => ElementKind::Inductor {
                henry: 0.1 * decades,
            },
            _ => ElementKind::Contact {
                closed_ohm: 0.02 * decades,
                open_ohm: 1e11,
                open_farad: 0.0,
                bit: 0,
            },
        };
        netlist.add(&format!("e{k}"), a, b, kind);
    }
    if let Some((l1, l2, factor)) = r.coupling {
        let x = netlist.add(
            "primary",
            place(1),
            place(2),
            ElementKind::Inductor { henry: l1 },
        );
        let y = netlist.add(
            "secondary",
            place(3),
            place(0),
            ElementKind::Inductor { henry: l2 },
        );
        netlist.couple("k", x, y, factor);
    }
    let mut coils = Vec::new();
    if let Some(turn) = r.coils {
        netlist.add_coil("coil 1", place(1), place(3));
        netlist.add_coil("coil 2", place(2), place(3));
        coils = vec![
            Complex::new(0.1, -0.2),
            Complex::new(0.05 * turn[0], 0.1 * turn[1]),
            Complex::new(0.05 * turn[2], 0.1 * turn[3]),
            Complex::new(0.2, -0.1),
        ];
    }
    (netlist, coils)
}
