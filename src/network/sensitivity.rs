//! How a reading answers to every value at once, by one transposed solve.
//!
//! With A v = b and the reading r = v(a) - v(b), let l solve the transposed equations for a
//! unit current from b to a. Then for any value p
//!
//! ```text
//! dr/dp = -sum_e (l drop of e)(v drop of e) dy_e/dp
//! resistor  dr/dR = i_l i     capacitor  -s (l drop)(v drop)     inductor  s i_l i
//! source    dr/dV = [a behind it] - [b behind it] - (l currents leaving what is behind it)
//! ```
//! with i_l the current l drives. Published: adjoint networks (Director and Rohrer 1969).

use crate::network::factor::Base;
use crate::network::netlist::ElementId;
use crate::network::netlist::ElementKind;
use crate::network::netlist::Netlist;
use crate::network::netlist::NodeId;
use crate::network::number::Number;
use crate::network::solution::Solution;
use crate::network::solution::Solver;

/// Derivatives of a reading.
#[derive(Clone, Debug, PartialEq)]
pub struct Gradient<N> {
    /// By element: per ohm, farad, henry or volt. A contact's is for the resistance it has
    /// now (closed or open).
    pub by_element: Vec<N>,
    /// By coil: per ohm in series with it.
    pub by_coil_ohm: Vec<N>,
}

impl<N: Number> Gradient<N> {
    /// All derivatives times a factor.
    pub fn scaled(mut self, factor: N) -> Gradient<N> {
        for d in self.by_element.iter_mut().chain(&mut self.by_coil_ohm) {
            *d = *d * factor;
        }
        self
    }
}

/// What a reading is taken with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Probe<N> {
    /// First place.
    pub a: NodeId,
    /// Second place.
    pub b: NodeId,
    /// Admittance of the meter across them, S.
    pub load_siemens: N,
}

/// Derivatives of the voltage a loading meter shows.
pub fn voltage_gradient<N: Number>(
    netlist: &Netlist,
    solver: &Solver<'_, N>,
    s_rad_per_s: N,
    probe: Probe<N>,
) -> Gradient<N> {
    let Probe { a, b, load_siemens } = probe;
    let one = N::from_real(1.0);
    let ohm = solver.inject(&[(a, one), (b, -one)]).between_v(a, b);
    let open_v = solver.solve().between_v(a, b);
    let share = (one + load_siemens * ohm).inverse();
    let meter_a = load_siemens * open_v * share;
    let v = solver.solve_with(&[(a, -meter_a), (b, meter_a)]);
    let adjoint = adjoint(solver, a, b, share);
    let mut gradient = gradient(netlist, solver.base, s_rad_per_s, &adjoint, &v);
    let mut leaving = adjoint.leaving_a(solver.base);
    let meter = load_siemens * adjoint.between_v(a, b);
    leaving[a.index()] += meter - one;
    leaving[b.index()] -= meter - one;
    add_sources(netlist, solver.base, leaving, &mut gradient);
    gradient
}

/// Derivatives of the impedance between two places.
pub fn impedance_gradient<N: Number>(
    netlist: &Netlist,
    solver: &Solver<'_, N>,
    s_rad_per_s: N,
    a: NodeId,
    b: NodeId,
) -> Gradient<N> {
    let one = N::from_real(1.0);
    let v = solver.inject(&[(a, one), (b, -one)]);
    gradient(
        netlist,
        solver.base,
        s_rad_per_s,
        &adjoint(solver, a, b, one),
        &v,
    )
}

/// The transposed solution, with the coils' transposed currents.
fn adjoint<N: Number>(solver: &Solver<'_, N>, a: NodeId, b: NodeId, factor: N) -> Solution<N> {
    let mut node_v = solver.adjoint(a, b);
    for v in &mut node_v {
        *v = *v * factor;
    }
    let coils = &solver.base.plan.coil_nodes;
    let y = &solver.inner.coil_siemens;
    let coil_a = (0..coils.len())
        .map(|k| {
            let mut sum = N::default();
            for (l, [from, to]) in coils.iter().enumerate() {
                sum += y[l * coils.len() + k] * (node_v[*from as usize] - node_v[*to as usize]);
            }
            sum
        })
        .collect();
    Solution::from_parts(solver.factors.contacts, node_v, coil_a)
}

fn gradient<N: Number>(
    netlist: &Netlist,
    base: &Base<N>,
    s_rad_per_s: N,
    adjoint: &Solution<N>,
    v: &Solution<N>,
) -> Gradient<N> {
    let mut by_element = vec![N::default(); netlist.elements().len()];
    let of =
        |solution: &Solution<N>, index: usize| solution.current_a(base, ElementId(index as u32));
    for (index, e) in netlist.elements().iter().enumerate() {
        by_element[index] = match e.kind {
            ElementKind::Resistor { .. } | ElementKind::Contact { .. } => {
                of(adjoint, index) * of(v, index)
            }
            ElementKind::Capacitor { .. } => {
                -(s_rad_per_s * adjoint.between_v(e.from, e.to) * v.between_v(e.from, e.to))
            }
            ElementKind::Inductor { .. } => s_rad_per_s * of(adjoint, index) * of(v, index),
            ElementKind::Source { .. } => N::default(),
        };
    }
    for c in netlist.couplings() {
        let (first, second) = (c.first.index(), c.second.index());
        let cross = of(adjoint, first) * of(v, second) + of(adjoint, second) * of(v, first);
        for id in [first, second] {
            if let ElementKind::Inductor { henry } = netlist.elements()[id].kind {
                let per_henry = netlist.mutual_henry(c) / (2.0 * henry);
                by_element[id] += s_rad_per_s * N::from_real(per_henry) * cross;
            }
        }
    }
    let by_coil_ohm = adjoint
        .coil_a
        .iter()
        .zip(&v.coil_a)
        .map(|(x, y)| *x * *y)
        .collect();
    Gradient {
        by_element,
        by_coil_ohm,
    }
}

/// Sources: what their far side's nodes let out, summed up their tree.
fn add_sources<N: Number>(
    netlist: &Netlist,
    base: &Base<N>,
    mut leaving: Vec<N>,
    gradient: &mut Gradient<N>,
) {
    for link in base.plan.merged.links.iter().rev() {
        let out = leaving[link.child as usize];
        let index = link.element.index();
        if matches!(netlist.elements()[index].kind, ElementKind::Source { .. }) {
            gradient.by_element[index] = if link.from_is_child { -out } else { out };
        }
        leaving[link.parent as usize] += out;
    }
}
