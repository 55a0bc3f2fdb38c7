//! Random networks against a dense LU of another shape (faer, sources as branch unknowns),
//! against Kirchhoff and against Tellegen.

use std::sync::Arc;

use faer::linalg::solvers::Solve;
use proptest::prelude::*;

use tubwright::network::Base;
use tubwright::network::Complex;
use tubwright::network::Contacts;
use tubwright::network::ElementId;
use tubwright::network::ElementKind;
use tubwright::network::Frequency;
use tubwright::network::Netlist;
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::Solution;
use tubwright::network::SolveError;
use tubwright::network::solution::solve_once;

type C64 = faer::c64;
/// Numbers of a network and its voltages.
type Solved = Result<(Base<Complex>, Solution<Complex>), SolveError>;

fn solve(netlist: &Netlist, drive: Frequency, coils: &[Complex]) -> Solved {
    let plan = Arc::new(Plan::new(netlist, false)?);
    let base = Base::new(plan, netlist, drive);
    let solution = solve_once(&base, Contacts(u64::MAX), coils)?;
    Ok((base, solution))
}

/// One random element: kind, two nodes, size.
type Piece = (u8, usize, usize, f64);

#[derive(Debug, Clone)]
struct Random {
    nodes: usize,
    pieces: Vec<Piece>,
    sources: Vec<(usize, f64)>,
    coupling: Option<(f64, f64, f64)>,
    coils: Option<[f64; 4]>,
}

fn random() -> impl Strategy<Value = Random> {
    let pieces = prop::collection::vec((0_u8..4, 0_usize..9, 0_usize..9, -1.0..1.0_f64), 4..40);
    let sources = prop::collection::vec((0_usize..9, -300.0..300.0_f64), 1..3);
    let coupling = prop::option::of((0.001..1.0_f64, 0.001..1.0_f64, -0.99..0.99_f64));
    let coils = prop::option::of(prop::array::uniform4(-0.9..0.9_f64));
    (3_usize..9, pieces, sources, coupling, coils).prop_map(
        |(nodes, pieces, sources, coupling, coils)| Random {
            nodes,
            pieces,
            sources,
            coupling,
            coils,
        },
    )
}

/// Builds the network and the coils' admittances (not reciprocal).
fn build(r: &Random) -> (Netlist, Vec<Complex>) {
    let mut netlist = Netlist::new();
    let mut nodes = vec![NodeId::EARTH];
    for k in 1..=r.nodes {
        let node = netlist.add_node(&format!("n{k}"));
        // A path to earth for every node: nothing floats.
        netlist.resistor(&format!("leak{k}"), node, nodes[k / 2], 1e3 * k as f64);
        nodes.push(node);
    }
    for (k, (kind, a, b, size)) in r.pieces.iter().enumerate() {
        let (a, b) = (nodes[a % nodes.len()], nodes[b % nodes.len()]);
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
    for (k, (at, volts)) in r.sources.iter().enumerate() {
        let to = nodes[at % nodes.len()];
        let from = netlist.add_node(&format!("s{k}"));
        netlist.add(
            &format!("v{k}"),
            from,
            to,
            ElementKind::Source {
                ac_v: *volts,
                dc_v: *volts,
            },
        );
        netlist.resistor(&format!("inner{k}"), from, nodes[k + 1], 0.3);
        netlist.resistor(&format!("far{k}"), from, NodeId::EARTH, 1e4);
    }
    if let Some((l1, l2, factor)) = r.coupling {
        let x = netlist.add(
            "primary",
            nodes[1],
            nodes[2],
            ElementKind::Inductor { henry: l1 },
        );
        let y = netlist.add(
            "secondary",
            nodes[3],
            nodes[0],
            ElementKind::Inductor { henry: l2 },
        );
        netlist.couple("k", x, y, factor);
    }
    let mut coils = Vec::new();
    if let Some(turn) = r.coils {
        netlist.add_coil("coil 1", nodes[1], nodes[3]);
        netlist.add_coil("coil 2", nodes[2], nodes[3]);
        coils = vec![
            Complex::new(0.1, -0.2),
            Complex::new(0.05 * turn[0], 0.1 * turn[1]),
            Complex::new(0.05 * turn[2], 0.1 * turn[3]),
            Complex::new(0.2, -0.1),
        ];
    }
    (netlist, coils)
}

/// Modified nodal analysis, dense, with a branch unknown per source: shares no code.
fn dense(netlist: &Netlist, coils: &[Complex], frequency_hz: f64) -> Vec<C64> {
    let w = 2.0 * std::f64::consts::PI * frequency_hz;
    let n = netlist.nodes().len() - 1;
    let sources: Vec<_> = netlist
        .elements()
        .iter()
        .filter_map(|e| match e.kind {
            ElementKind::Source { ac_v, .. } => Some((e.from, e.to, ac_v)),
            _ => None,
        })
        .collect();
    let size = n + sources.len();
    let mut a = faer::Mat::<C64>::zeros(size, size);
    let mut b = faer::Mat::<C64>::zeros(size, 1);
    let mut branch = |p: NodeId, q: NodeId, r: NodeId, s: NodeId, y: C64| {
        for (row, sign_row) in [(p, 1.0), (q, -1.0)] {
            for (column, sign_column) in [(r, 1.0), (s, -1.0)] {
                if row.0 > 0 && column.0 > 0 {
                    a[(row.index() - 1, column.index() - 1)] += y * (sign_row * sign_column);
                }
            }
        }
    };
    let henry = |id: ElementId| match netlist.elements()[id.index()].kind {
        ElementKind::Inductor { henry } => henry,
        _ => 0.0,
    };
    let mut coupled = vec![false; netlist.elements().len()];
    for c in netlist.couplings() {
        let (l1, l2) = (henry(c.first), henry(c.second));
        let m = c.factor * (l1 * l2).sqrt();
        let scale = C64::new(0.0, w * (l1 * l2 - m * m));
        let (x, y) = (
            &netlist.elements()[c.first.index()],
            &netlist.elements()[c.second.index()],
        );
        branch(x.from, x.to, x.from, x.to, C64::new(l2, 0.0) / scale);
        branch(y.from, y.to, y.from, y.to, C64::new(l1, 0.0) / scale);
        branch(x.from, x.to, y.from, y.to, C64::new(-m, 0.0) / scale);
        branch(y.from, y.to, x.from, x.to, C64::new(-m, 0.0) / scale);
        coupled[c.first.index()] = true;
        coupled[c.second.index()] = true;
    }
    for (e, is_coupled) in netlist.elements().iter().zip(coupled) {
        if e.from == e.to {
            // Adds y four times, twice with each sign: nothing but the rounding of y.
            continue;
        }
        let y = match e.kind {
            ElementKind::Resistor { ohm } => C64::new(1.0 / ohm, 0.0),
            ElementKind::Capacitor { farad } => C64::new(0.0, w * farad),
            ElementKind::Inductor { henry } if !is_coupled => C64::new(0.0, -1.0 / (w * henry)),
            ElementKind::Contact { closed_ohm, .. } => C64::new(1.0 / closed_ohm, 0.0),
            _ => continue,
        };
        branch(e.from, e.to, e.from, e.to, y);
    }
    let count = netlist.coils().len();
    for (k, row) in netlist.coils().iter().enumerate() {
        for (l, column) in netlist.coils().iter().enumerate() {
            let y = coils[k * count + l];
            branch(
                row.from,
                row.to,
                column.from,
                column.to,
                C64::new(y.re, y.im),
            );
        }
    }
    for (k, (from, to, volts)) in sources.iter().enumerate() {
        for (node, sign) in [(from, 1.0), (to, -1.0)] {
            if node.0 > 0 {
                a[(node.index() - 1, n + k)] += C64::new(sign, 0.0);
                a[(n + k, node.index() - 1)] += C64::new(sign, 0.0);
            }
        }
        b[(n + k, 0)] = C64::new(*volts, 0.0);
    }
    let x = a.partial_piv_lu().solve(&b);
    (0..n).map(|k| x[(k, 0)]).collect()
}

/// Stiffest over softest branch. Both solvers add admittances at a node, so a soft branch beside a
/// stiff one is known to this many times the rounding of a number, and no voltage better.
fn spread_ratio(netlist: &Netlist, base: &Base<Complex>, solution: &Solution<Complex>) -> f64 {
    let (mut softest, mut stiffest) = (f64::INFINITY, 0.0);
    for (index, e) in netlist.elements().iter().enumerate() {
        let y = base.admittance_siemens(index, solution.contacts).abs();
        if y > 0.0 && e.from != e.to {
            softest = f64::min(softest, y);
            stiffest = f64::max(stiffest, y);
        }
    }
    stiffest / softest
}

/// Largest Kirchhoff residual at a node over the sum of |y| (|va| + |vb|) there. The current of a
/// source is what the rest of one of its ends leaves over, rounding and all, so its ends share the
/// larger of their two sums.
fn worst_residual(netlist: &Netlist, base: &Base<Complex>, solution: &Solution<Complex>) -> f64 {
    let nodes = netlist.nodes().len();
    let mut net = vec![Complex::ZERO; nodes];
    let mut scale = vec![0.0; nodes];
    for (index, e) in netlist.elements().iter().enumerate() {
        let current = solution.current_a(base, ElementId(index as u32));
        net[e.from.index()] += current;
        net[e.to.index()] -= current;
        let sum = solution.node_v[e.from.index()].abs() + solution.node_v[e.to.index()].abs();
        let y = base.admittance_siemens(index, solution.contacts).abs();
        let y = y.max(
            base.coupled_siemens
                .iter()
                .map(|c| c[0].abs() + c[2].abs())
                .sum::<f64>()
                * f64::from(u8::from(base.plan.is_coupled[index])),
        );
        let flow = (y * sum).max(current.abs());
        scale[e.from.index()] += flow;
        scale[e.to.index()] += flow;
    }
    for (coil, current) in netlist.coils().iter().zip(&solution.coil_a) {
        net[coil.from.index()] += *current;
        net[coil.to.index()] -= *current;
        let sum = solution.node_v[coil.from.index()].abs() + solution.node_v[coil.to.index()].abs();
        scale[coil.from.index()] += 0.3 * sum;
        scale[coil.to.index()] += 0.3 * sum;
    }
    let sources: Vec<_> = netlist
        .elements()
        .iter()
        .filter(|e| matches!(e.kind, ElementKind::Source { .. }))
        .map(|e| (e.from.index(), e.to.index()))
        .collect();
    // As often as there are sources: they may stand in a row.
    for _ in &sources {
        for &(from, to) in &sources {
            let larger = f64::max(scale[from], scale[to]);
            scale[from] = larger;
            scale[to] = larger;
        }
    }
    (1..nodes)
        .map(|k| net[k].abs() / scale[k].max(1e-300))
        .fold(0.0, f64::max)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2_000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn random_networks_agree_with_a_dense_solver(r in random()) {
        let (netlist, coils) = build(&r);
        let (base, solution) = match solve(&netlist, Frequency::steady(50.0), &coils) {
            Ok(solved) => solved,
            Err(SolveError::ShortedSource { .. }) => return Ok(()),
            Err(other) => panic!("{other}"),
        };
        let wanted = dense(&netlist, &coils, 50.0);
        let largest = wanted.iter().map(|v| v.norm()).fold(1.0, f64::max);
        let bound = f64::max(1e-8, spread_ratio(&netlist, &base, &solution) * f64::EPSILON);
        for (k, want) in wanted.iter().enumerate() {
            let got = solution.node_v[k + 1];
            let error = (C64::new(got.re, got.im) - *want).norm();
            prop_assert!(error < bound * largest, "node {}: {:?} against {:?}", k + 1, got, want);
        }
        let residual = worst_residual(&netlist, &base, &solution);
        prop_assert!(residual < 1e-12, "residual {residual}");
    }

    #[test]
    fn any_random_network_conserves_power(r in random()) {
        // Tellegen: the powers of all elements sum to zero.
        let (netlist, coils) = build(&r);
        let Ok((base, solution)) = solve(&netlist, Frequency::steady(60.0), &coils) else {
            return Ok(());
        };
        let (mut sum, mut size) = (Complex::ZERO, 0.0);
        for (index, e) in netlist.elements().iter().enumerate() {
            let power = solution.between_v(e.from, e.to)
                * solution.current_a(&base, ElementId(index as u32)).conjugate();
            sum += power;
            size += power.abs();
        }
        for (coil, current) in netlist.coils().iter().zip(&solution.coil_a) {
            let power = solution.between_v(coil.from, coil.to) * current.conjugate();
            sum += power;
            size += power.abs();
        }
        prop_assert!(sum.abs() <= 1e-9 * size, "{sum:?} of {size}");
    }
}
