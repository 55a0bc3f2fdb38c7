//! Random networks against a dense LU of another shape (faer, sources as branch unknowns),
//! against Kirchhoff and against Tellegen.

#[path = "network/random.rs"]
mod random;

use std::sync::Arc;

use faer::linalg::solvers::DenseSolveCore;
use faer::linalg::solvers::Solve;
use proptest::prelude::*;

use tubwright::network::Base;
use tubwright::network::Complex;
use tubwright::network::Contacts;
use tubwright::network::Direct;
use tubwright::network::ElementId;
use tubwright::network::ElementKind;
use tubwright::network::Frequency;
use tubwright::network::Netlist;
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::Solution;
use tubwright::network::SolveError;
use tubwright::network::solution::solve_once;

use crate::random::build;
use crate::random::random;
use crate::random::solve;

type C64 = faer::c64;

/// How many times the rounding of the dense numbers two sound solvers may lie apart: both lose a few
/// roundings a row. Design choice.
const ROUNDINGS: f64 = 200.0;

/// What an elimination that does not choose its pivots may leave over of what flows at a node: near
/// resonance one is small, and a few in a million of these networks are that near. Design choice.
const ELIMINATION_RATIO: f64 = 1e-6;
/// What may be left over of all powers: there the same rounding counts both ways. Design choice.
const POWER_RATIO: f64 = 1e-10;
/// More than any admittance of the random coils.
const LARGEST_COIL_SIEMENS: f64 = 0.3;

/// Voltages of a dense solver, and how far off they may be.
struct Dense {
    node_v: Vec<C64>,
    /// What the rounding of every number of A makes of x, as componentwise perturbation theory has it:
    ///
    /// ```text
    /// |δx| ≤ ε |A⁻¹| |A| |x|
    /// ```
    /// Source: Higham, Accuracy and Stability of Numerical Algorithms, 7.2 (Skeel), from memory.
    rounding_v: Vec<f64>,
}

impl Dense {
    /// The first node, of those the solution holds, that is further off than both solvers' rounding.
    fn differs(&self, got: impl Fn(usize) -> C64) -> Option<String> {
        let mut pairs = self.node_v.iter().zip(&self.rounding_v).enumerate();
        pairs.find_map(|(k, (want, rounding_v))| {
            let error = (got(k + 1) - *want).norm();
            let bound = ROUNDINGS * rounding_v + 1e-12;
            // No number at all does not meet it either.
            let is_met = error <= bound;
            (!is_met).then(|| {
                let got = got(k + 1);
                format!(
                    "node {}: {got} against {want}, off by {error:e} of {bound:e}",
                    k + 1
                )
            })
        })
    }
}

/// Modified nodal analysis, dense, with a branch unknown per source: shares no code.
fn dense(netlist: &Netlist, coils: &[Complex], frequency_hz: f64) -> Dense {
    let w = 2.0 * std::f64::consts::PI * frequency_hz;
    let n = netlist.nodes().len() - 1;
    let sources: Vec<_> = netlist
        .elements()
        .iter()
        .filter_map(|e| match e.kind {
            ElementKind::Source { ac_v, .. } => Some((e.from, e.to, ac_v)),
            ElementKind::Resistor { ohm: 0.0 } => Some((e.from, e.to, 0.0)),
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
    let lu = a.partial_piv_lu();
    let mut x = lu.solve(&b);
    // Once refined, every row is met to its own rounding.
    let correction = lu.solve(&b - &a * &x);
    x += correction;
    let inverse = lu.inverse();
    let sizes: Vec<f64> = (0..size)
        .map(|row| {
            (0..size)
                .map(|k| a[(row, k)].norm() * x[(k, 0)].norm())
                .sum()
        })
        .collect();
    let rounding = |k: usize| {
        (0..size)
            .map(|row| inverse[(k, row)].norm() * sizes[row])
            .sum::<f64>()
    };
    Dense {
        node_v: (0..n).map(|k| x[(k, 0)]).collect(),
        rounding_v: (0..n).map(|k| f64::EPSILON * rounding(k)).collect(),
    }
}

/// A source, or a link without resistance.
fn is_link(kind: &ElementKind) -> bool {
    match kind {
        ElementKind::Source { .. } => true,
        ElementKind::Resistor { ohm } => *ohm == 0.0,
        _ => false,
    }
}

/// A current between two nodes, and what it is a difference of: |y| (|va| + |vb|), A.
struct Flow {
    from: NodeId,
    to: NodeId,
    current: Complex,
    of_a: f64,
}

fn flows(netlist: &Netlist, base: &Base<Complex>, solution: &Solution<Complex>) -> Vec<Flow> {
    let coupled: f64 = base
        .coupled_siemens
        .iter()
        .map(|c| c[0].abs() + c[2].abs())
        .sum();
    let elements = netlist.elements().iter().enumerate().map(|(index, e)| {
        let own = base.admittance_siemens(index, solution.contacts).abs();
        let y = if base.plan.is_coupled[index] {
            coupled.max(own)
        } else {
            own
        };
        (
            e.from,
            e.to,
            solution.current_a(base, ElementId(index as u32)),
            y,
        )
    });
    let coils = netlist.coils().iter().zip(&solution.coil_a);
    let coils = coils.map(|(coil, current)| (coil.from, coil.to, *current, LARGEST_COIL_SIEMENS));
    let flow = |(from, to, current, y): (NodeId, NodeId, Complex, f64)| {
        let sum = solution.node_v[from.index()].abs() + solution.node_v[to.index()].abs();
        let of_a = (y * sum).max(current.abs());
        Flow {
            from,
            to,
            current,
            of_a,
        }
    };
    elements.chain(coils).map(flow).collect()
}

/// Largest Kirchhoff residual at a node over the flows there. The current of a source is what the
/// rest of one of its ends leaves over, rounding and all, so its ends share the larger of their two
/// sums.
fn worst_residual(netlist: &Netlist, flows: &[Flow]) -> f64 {
    let nodes = netlist.nodes().len();
    let mut net = vec![Complex::ZERO; nodes];
    let mut scale = vec![0.0; nodes];
    for flow in flows {
        net[flow.from.index()] += flow.current;
        net[flow.to.index()] -= flow.current;
        scale[flow.from.index()] += flow.of_a;
        scale[flow.to.index()] += flow.of_a;
    }
    let links: Vec<_> = netlist
        .elements()
        .iter()
        .filter(|e| is_link(&e.kind))
        .map(|e| (e.from.index(), e.to.index()))
        .collect();
    // As often as there are links: they may stand in a row.
    for _ in &links {
        for &(from, to) in &links {
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
        let differs = dense(&netlist, &coils, 50.0).differs(|k| {
            let got = solution.node_v[k];
            C64::new(got.re, got.im)
        });
        prop_assert!(differs.is_none(), "{}", differs.unwrap_or_default());
        let residual = worst_residual(&netlist, &flows(&netlist, &base, &solution));
        prop_assert!(residual < ELIMINATION_RATIO, "residual {residual}");
    }

    #[test]
    fn random_networks_at_rest_agree_with_a_dense_solver(mut r in random()) {
        // Inductors at rest are links, which a dense solver cannot hold in a loop.
        r.coupling = None;
        r.pieces.retain(|(kind, ..)| *kind != 2);
        if let Some(turn) = &mut r.coils {
            (turn[1], turn[3]) = (0.0, 0.0);
        }
        let (netlist, coils) = build(&r);
        let real: Vec<f64> = coils.iter().map(|y| y.re).collect();
        let plan = match Plan::new(&netlist, true) {
            Ok(plan) => Arc::new(plan),
            Err(SolveError::ShortedSource { .. }) => return Ok(()),
            Err(other) => panic!("{other}"),
        };
        let base = Base::new(plan, &netlist, Direct);
        let solution = solve_once(&base, Contacts(u64::MAX), &real).expect("regular");
        let at_rest: Vec<Complex> = real.iter().map(|y| Complex::real(*y)).collect();
        let differs = dense(&netlist, &at_rest, 0.0).differs(|k| C64::new(solution.node_v[k], 0.0));
        prop_assert!(differs.is_none(), "{}", differs.unwrap_or_default());
    }

    #[test]
    fn any_random_network_conserves_power(r in random()) {
        // Tellegen: the powers of all elements sum to zero.
        let (netlist, coils) = build(&r);
        let Ok((base, solution)) = solve(&netlist, Frequency::steady(60.0), &coils) else {
            return Ok(());
        };
        let (mut sum, mut size) = (Complex::ZERO, 0.0);
        for flow in flows(&netlist, &base, &solution) {
            sum += solution.between_v(flow.from, flow.to) * flow.current.conjugate();
            let ends = solution.node_v[flow.from.index()].abs() + solution.node_v[flow.to.index()].abs();
            size += ends * flow.of_a;
        }
        prop_assert!(sum.abs() <= POWER_RATIO * size, "{sum:?} of {size}");
    }
}
