//! Voltages of all nodes, and the currents of elements from them.
//!
//! A solution is driven by the sources, by currents injected at nodes, or by both; it is
//! linear in them. Currents through merged elements (sources, links, inductors at DC) are
//! sums over their tree from the leaves.

use crate::network::error::SolveError;
use crate::network::factor::Base;
use crate::network::factor::Factors;
use crate::network::factor::backward;
use crate::network::factor::forward;
use crate::network::inner::Inner;
use crate::network::netlist::Contacts;
use crate::network::netlist::ElementId;
use crate::network::netlist::NodeId;
use crate::network::number::Number;
use crate::network::slots::NONE;

/// A network solved: voltages of nodes against earth, currents of coils.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Solution<N> {
    /// The contacts it was solved for.
    pub contacts: Contacts,
    /// Voltage of each node, V (rms phasor in AC).
    pub node_v: Vec<N>,
    /// Current through each coil from `from` to `to`, A.
    pub coil_a: Vec<N>,
    unknown_v: Vec<N>,
}

/// A network with everything factored, ready to be solved.
#[derive(Clone, Copy, Debug)]
pub struct Solver<'a, N> {
    /// Values.
    pub base: &'a Base<N>,
    /// Factors of the outer network.
    pub factors: &'a Factors<N>,
    /// The coils' block.
    pub inner: &'a Inner<N>,
}

impl<N: Number> Solver<'_, N> {
    /// Voltages with all sources on.
    pub fn solve(&self) -> Solution<N> {
        let mut out = Solution::default();
        self.solve_into(&mut out);
        out
    }

    /// The same without allocating (once `out` has been used).
    pub fn solve_into(&self, out: &mut Solution<N>) {
        let plan = &*self.base.plan;
        out.unknown_v.clone_from(&self.factors.source_a);
        let block = &mut out.unknown_v[plan.outer..];
        self.inner.add_coil_sources(block);
        self.inner.solve(block);
        self.finish(out, true);
    }

    /// Voltages with all sources on where those of the coils' block are known already.
    pub fn solve_from(&self, block_v: &[N]) -> Solution<N> {
        let outer = self.base.plan.outer;
        let mut out = Solution::default();
        out.unknown_v.reserve_exact(outer + block_v.len());
        out.unknown_v
            .extend_from_slice(&self.factors.source_a[..outer]);
        out.unknown_v.extend_from_slice(block_v);
        self.finish(&mut out, true);
        out
    }

    /// Voltages with all sources on and one step of refinement: what Kirchhoff's law still
    /// misses at each node is solved for and added. Needed where coils and capacitors
    /// nearly cancel; a wiring with its losses does not need it.
    pub fn refined(&self) -> Solution<N> {
        let first = self.solve();
        let missing: Vec<(NodeId, N)> = first
            .leaving_a(self.base)
            .into_iter()
            .enumerate()
            .map(|(node, leaving_a)| (NodeId(node as u32), -leaving_a))
            .collect();
        self.solve_with(&missing)
    }

    /// Voltages from currents injected at nodes, sources set to 0 V.
    pub fn inject(&self, currents_a: &[(NodeId, N)]) -> Solution<N> {
        let mut out = Solution::default();
        self.inject_into(currents_a, &mut out);
        out
    }

    /// The same without allocating (once `out` has been used).
    pub fn inject_into(&self, currents_a: &[(NodeId, N)], out: &mut Solution<N>) {
        let plan = &*self.base.plan;
        out.unknown_v.clear();
        out.unknown_v.resize(plan.unknowns(), N::default());
        self.load(currents_a, &mut out.unknown_v);
        self.inner.solve(&mut out.unknown_v[plan.outer..]);
        self.finish(out, false);
    }

    /// Voltages with all sources on and currents injected at nodes besides.
    pub fn solve_with(&self, currents_a: &[(NodeId, N)]) -> Solution<N> {
        let (mut out, more) = (self.solve(), self.inject(currents_a));
        add_all(&mut out.node_v, &more.node_v);
        add_all(&mut out.coil_a, &more.coil_a);
        add_all(&mut out.unknown_v, &more.unknown_v);
        out
    }

    /// The adjoint of `v(a) - v(b)`: how it answers to a current into each node, V/A.
    pub fn adjoint(&self, a: NodeId, b: NodeId) -> Vec<N> {
        let plan = &*self.base.plan;
        let mut values = vec![N::default(); plan.unknowns()];
        self.load(
            &[(a, N::from_real(1.0)), (b, -N::from_real(1.0))],
            &mut values,
        );
        self.inner.solve_transposed(&mut values[plan.outer..]);
        backward(
            plan,
            &self.factors.slots,
            &self.factors.pivot_inverse,
            &mut values,
        );
        plan.unknown_of
            .iter()
            .map(|u| {
                if *u == NONE {
                    N::default()
                } else {
                    values[*u as usize]
                }
            })
            .collect()
    }

    fn load(&self, currents_a: &[(NodeId, N)], values: &mut [N]) {
        let plan = &*self.base.plan;
        for (node, current_a) in currents_a {
            let unknown = plan.unknown_of[node.index()];
            if unknown != NONE {
                values[unknown as usize] += *current_a;
            }
        }
        forward(
            plan,
            &self.factors.slots,
            &self.factors.pivot_inverse,
            values,
        );
    }

    fn finish(&self, out: &mut Solution<N>, with_offsets: bool) {
        let plan = &*self.base.plan;
        spread_unknowns(self.base, self.factors, with_offsets, out);
        let count = plan.coil_nodes.len();
        out.coil_a.clear();
        out.coil_a.reserve_exact(count);
        for row in 0..count {
            let mut current_a = N::default();
            for (column, [from, to]) in plan.coil_nodes.iter().enumerate() {
                let d_v = out.node_v[*from as usize] - out.node_v[*to as usize];
                current_a += self.inner.coil_siemens[row * count + column] * d_v;
            }
            out.coil_a.push(current_a);
        }
    }
}

/// From voltages of the coils' block to voltages everywhere; without sources the answer to
/// the block's voltages alone. Leaves `coil_a` empty.
pub fn spread<N: Number>(
    base: &Base<N>,
    factors: &Factors<N>,
    block_v: &[N],
    with_sources: bool,
    out: &mut Solution<N>,
) {
    let outer = base.plan.outer;
    out.unknown_v.clear();
    if with_sources {
        out.unknown_v.extend_from_slice(&factors.source_a[..outer]);
    } else {
        out.unknown_v.resize(outer, N::default());
    }
    out.unknown_v.extend_from_slice(block_v);
    out.coil_a.clear();
    spread_unknowns(base, factors, with_sources, out);
}

fn spread_unknowns<N: Number>(
    base: &Base<N>,
    factors: &Factors<N>,
    with_offsets: bool,
    out: &mut Solution<N>,
) {
    let plan = &*base.plan;
    backward(
        plan,
        &factors.slots,
        &factors.pivot_inverse,
        &mut out.unknown_v,
    );
    out.contacts = factors.contacts;
    out.node_v.clear();
    let unknown_v = &out.unknown_v;
    out.node_v.extend(
        plan.unknown_of
            .iter()
            .zip(&base.offset_v)
            .map(|(u, offset)| {
                let root_v = if *u == NONE {
                    N::default()
                } else {
                    unknown_v[*u as usize]
                };
                if with_offsets {
                    root_v + *offset
                } else {
                    root_v
                }
            }),
    );
}

fn add_all<N: Number>(into: &mut [N], from: &[N]) {
    for (a, b) in into.iter_mut().zip(from) {
        *a += *b;
    }
}

impl<N: Number> Solution<N> {
    /// A field of node voltages and coil currents, to ask for element currents.
    pub fn from_parts(contacts: Contacts, node_v: Vec<N>, coil_a: Vec<N>) -> Solution<N> {
        Solution {
            contacts,
            node_v,
            coil_a,
            unknown_v: Vec::new(),
        }
    }

    /// Voltage of `a` against `b`, V.
    pub fn between_v(&self, a: NodeId, b: NodeId) -> N {
        self.node_v[a.index()] - self.node_v[b.index()]
    }

    /// Current through an element from `from` to `to`, A.
    pub fn current_a(&self, base: &Base<N>, element: ElementId) -> N {
        if base.plan.merged.is_merged[element.index()] {
            return self.merged_current_a(base, element);
        }
        let [from, to] = base.plan.element_nodes[element.index()];
        let d_v = self.node_v[from as usize] - self.node_v[to as usize];
        if base.plan.is_coupled[element.index()] {
            return self.coupled_current_a(base, element.0);
        }
        base.admittance_siemens(element.index(), self.contacts) * d_v
    }

    fn coupled_current_a(&self, base: &Base<N>, element: u32) -> N {
        let drop_v = |e: u32| {
            let [from, to] = base.plan.element_nodes[e as usize];
            self.node_v[from as usize] - self.node_v[to as usize]
        };
        for (pair, [y11, y12, y22]) in base.plan.couplings.iter().zip(&base.coupled_siemens) {
            if pair[0] == element {
                return *y11 * drop_v(pair[0]) + *y12 * drop_v(pair[1]);
            }
            if pair[1] == element {
                return *y12 * drop_v(pair[0]) + *y22 * drop_v(pair[1]);
            }
        }
        N::default()
    }

    /// Current leaving each node through everything that is not merged, A.
    pub fn leaving_a(&self, base: &Base<N>) -> Vec<N> {
        let plan = &*base.plan;
        let mut leaving_a = vec![N::default(); self.node_v.len()];
        for (index, [from, to]) in plan.element_nodes.iter().enumerate() {
            if !plan.merged.is_merged[index] {
                let current_a = self.current_a(base, ElementId(index as u32));
                leaving_a[*from as usize] += current_a;
                leaving_a[*to as usize] -= current_a;
            }
        }
        for ([from, to], current_a) in plan.coil_nodes.iter().zip(&self.coil_a) {
            leaving_a[*from as usize] += *current_a;
            leaving_a[*to as usize] -= *current_a;
        }
        leaving_a
    }

    fn merged_current_a(&self, base: &Base<N>, element: ElementId) -> N {
        let mut below_a = self.leaving_a(base);
        for link in base.plan.merged.links.iter().rev() {
            let current_a = below_a[link.child as usize];
            if link.element == element {
                return if link.from_is_child {
                    -current_a
                } else {
                    current_a
                };
            }
            below_a[link.parent as usize] += current_a;
        }
        N::default()
    }
}

/// Factors, solves and refines once: the short way for a network that is asked a single question.
///
/// # Errors
/// As for [`Factors::new`].
pub fn solve_once<N: Number>(
    base: &Base<N>,
    contacts: Contacts,
    coils: &[N],
) -> Result<Solution<N>, SolveError> {
    let factors = Factors::new(base, contacts)?;
    let inner = Inner::new(base, &factors, coils)?;
    Ok(Solver {
        base,
        factors: &factors,
        inner: &inner,
    }
    .refined())
}
