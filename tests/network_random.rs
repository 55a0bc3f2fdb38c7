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
use tubwright::network::Factors;
use tubwright::network::Frequency;
use tubwright::network::Inner;
use tubwright::network::Netlist;
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::Solution;
use tubwright::network::SolveError;
use tubwright::network::Solver;
use tubwright::network::sensitivity::Probe;
use tubwright::network::sensitivity::voltage_gradient;
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
    /// The weaker ones are links without resistance.
    sources: Vec<(usize, f64)>,
    coupling: Option<(f64, f64, f64)>,
    coils: Option<[f64; 4]>,
    /// Which places coupling and coils lie between.
    shift: usize,
}

/// A source weaker than this is a link instead, V.
const LINK_BELOW_V: f64 = 60.0;

fn random() -> impl Strategy<Value = Random> {
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
fn build(r: &Random) -> (Netlist, Vec<Complex>) {
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

/// Modified nodal analysis, dense, with a branch unknown per source: shares no code.
fn dense(netlist: &Netlist, coils: &[Complex], frequency_hz: f64) -> Vec<C64> {
    let w = 2.0 * std::f64::consts::PI * frequency_hz;
    let n = netlist.nodes().len() - 1;
    let sources: Vec<_> = netlist
        .elements()
        .iter()
        .filter_map(|e| match e.kind {
            ElementKind::Source { ac_v, .. } => Some((e.from, e.to, ac_v)),
            ElementKind::Resistor { ohm } if ohm == 0.0 => Some((e.from, e.to, 0.0)),
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
            ElementKind::Resistor { ohm } if ohm > 0.0 => C64::new(1.0 / ohm, 0.0),
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

/// A source, or a link without resistance.
fn is_link(kind: &ElementKind) -> bool {
    match kind {
        ElementKind::Source { .. } => true,
        ElementKind::Resistor { ohm } => *ohm == 0.0,
        _ => false,
    }
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
        .filter(|e| is_link(&e.kind))
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

    #[test]
    fn the_gradient_of_a_reading_is_its_slope(r in random(), a in 0_usize..9, b in 1_usize..9, load in prop::option::of(1e2..1e6_f64)) {
        // Against a central difference in the size of each piece, source and coupled inductor.
        let (netlist, coils) = build(&r);
        let (a, b) = (NodeId((a % (r.nodes + 1)) as u32), NodeId((1 + b % r.nodes) as u32));
        let plan = match Plan::new(&netlist, false) {
            Ok(plan) => Arc::new(plan),
            Err(SolveError::ShortedSource { .. }) => return Ok(()),
            Err(other) => panic!("{other}"),
        };
        let base = Base::new(plan, &netlist, Frequency::steady(50.0));
        let factors = Factors::new(&base, Contacts(u64::MAX)).expect("regular");
        let inner = Inner::new(&base, &factors, &coils).expect("regular");
        let solver = Solver { base: &base, factors: &factors, inner: &inner };
        let load_siemens = Complex::new(load.map_or(0.0, |ohm| 1.0 / ohm), 0.0);
        let probe = Probe { a, b, load_siemens };
        let s = Complex::new(0.0, 100.0 * std::f64::consts::PI);
        let gradient = voltage_gradient(&netlist, &solver, s, probe);
        let reading = |r: &Random| {
            let (mut netlist, coils) = build(r);
            if let Some(ohm) = load {
                netlist.resistor("meter", a, b, ohm);
            }
            let (_, solution) = solve(&netlist, Frequency::steady(50.0), &coils).expect("as before");
            solution.between_v(a, b)
        };
        let named = |name: &str| netlist.elements().iter().position(|e| e.name == name).expect("built");
        // What rounding leaves of a difference, see `spread_ratio`.
        let all = solver.solve();
        let largest = all.node_v.iter().map(|v| v.abs()).fold(1.0, f64::max);
        let rounding = 10.0 * spread_ratio(&netlist, &base, &all) * f64::EPSILON * largest;
        let check = |name: &str, value: f64, step: f64, up: &Random, down: &Random| {
            let per_ratio = gradient.by_element[named(name)] * Complex::new(value, 0.0);
            let slope = (reading(up) - reading(down)) * Complex::new(value / (2.0 * step), 0.0);
            let bound = 1e-5 * largest + 1e-4 * slope.abs() + rounding * value / step;
            prop_assert!((per_ratio - slope).abs() < bound, "{}: {:?}, the slope is {:?}", name, per_ratio, slope);
            Ok(())
        };
        for k in 0..r.pieces.len() {
            const STEP: f64 = 1e-4;
            let (mut up, mut down) = (r.clone(), r.clone());
            up.pieces[k].3 += STEP;
            down.pieces[k].3 -= STEP;
            // A piece is as large as ten to three times this.
            let ratio = 3.0 * std::f64::consts::LN_10 * STEP;
            let value = value_of(&netlist.elements()[named(&format!("e{k}"))].kind);
            check(&format!("e{k}"), value, value * ratio, &up, &down)?;
        }
        for k in 0..r.sources.len() {
            if r.sources[k].1.abs() > LINK_BELOW_V + 1.0 {
                let (mut up, mut down) = (r.clone(), r.clone());
                up.sources[k].1 += 1e-2;
                down.sources[k].1 -= 1e-2;
                check(&format!("v{k}"), 1.0, 1e-2, &up, &down)?;
            }
        }
        if let Some((l1, l2, _)) = r.coupling {
            for (name, value) in [("primary", l1), ("secondary", l2)] {
                let (mut up, mut down) = (r.clone(), r.clone());
                for (changed, sign) in [(&mut up, 1.0), (&mut down, -1.0)] {
                    let (first, second, _) = changed.coupling.as_mut().expect("has one");
                    let inductor = if name == "primary" { first } else { second };
                    *inductor *= 1.0 + sign * 1e-4;
                }
                check(name, value, value * 1e-4, &up, &down)?;
            }
        }
    }
}

/// The number of an element that its gradient is by.
fn value_of(kind: &ElementKind) -> f64 {
    match *kind {
        ElementKind::Resistor { ohm } => ohm,
        ElementKind::Capacitor { farad } => farad,
        ElementKind::Inductor { henry } => henry,
        ElementKind::Contact { closed_ohm, .. } => closed_ohm,
        ElementKind::Source { ac_v, .. } => ac_v,
    }
}
