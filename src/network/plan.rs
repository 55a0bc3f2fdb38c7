//! Where every number goes: found once for a network's shape, shared by all its values.
//!
//! Unknowns are numbered by their place in the order of elimination. A slot holds the
//! conductance between two unknowns (one for both directions: everything but the coils is
//! reciprocal); what an unknown conducts to earth stands apart in its own list, so that
//! pivots are sums and never differences. The flat lists replace any search in the
//! repeated work.

use std::collections::BTreeSet;

use crate::network::coupling::CoupledTerm;
use crate::network::coupling::coupled_terms;
use crate::network::coupling::coupling_ends;
use crate::network::error::SolveError;
use crate::network::merge::Merged;
use crate::network::merge::merge;
use crate::network::netlist::ElementKind;
use crate::network::netlist::Netlist;
use crate::network::netlist::NodeId;
use crate::network::order::order;
use crate::network::slots::NONE;
use crate::network::slots::Slots;

/// The two ends of an element as unknowns ([`NONE`] is earth) and the slot between them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Unknown at `from`.
    pub from: u32,
    /// Unknown at `to`.
    pub to: u32,
    /// Slot of the pair, or [`NONE`] if one end is earth or both are one unknown.
    pub slot: u32,
}

/// The plan of a network's shape.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// Node names, for errors.
    pub node_names: Vec<String>,
    /// Unknown of each node; [`NONE`] for nodes joined to earth.
    pub unknown_of: Vec<u32>,
    /// One node of each unknown.
    pub node_of: Vec<u32>,
    /// Groups of merged nodes.
    pub merged: Merged,
    /// Number of unknowns eliminated before the coils' block.
    pub outer: usize,
    /// Number of slots.
    pub slot_count: usize,
    /// For each outer unknown, the range of its entries in `later`.
    pub later_range: Vec<(u32, u32)>,
    /// Later neighbours: unknown and slot.
    pub later: Vec<(u32, u32)>,
    /// Slots that receive updates, in the order the elimination makes them.
    pub updates: Vec<u32>,
    /// Place of each element.
    pub places: Vec<Place>,
    /// Terms of coupled inductors.
    pub coupled_terms: Vec<CoupledTerm>,
    /// Ends of each coil as unknowns.
    pub coil_ends: Vec<(u32, u32)>,
    /// Slots of the coils' block, row by row ([`NONE`] on the diagonal).
    pub inner_slots: Vec<u32>,
    /// True for elements that conduct through a coupling and have no own admittance.
    pub is_coupled: Vec<bool>,
    /// Nodes `from` and `to` of each element.
    pub element_nodes: Vec<[u32; 2]>,
    /// Nodes `from` and `to` of each coil.
    pub coil_nodes: Vec<[u32; 2]>,
    /// The two inductors of each coupling.
    pub couplings: Vec<[u32; 2]>,
}

impl Plan {
    /// Number of unknowns.
    pub fn unknowns(&self) -> usize {
        self.node_of.len()
    }
    /// Number of unknowns in the coils' block.
    pub fn inner(&self) -> usize {
        self.unknowns() - self.outer
    }
    /// Name of an unknown's node.
    pub fn name_of(&self, unknown: usize) -> String {
        self.node_names[self.node_of[unknown] as usize].clone()
    }

    /// Finds the plan of a netlist, for DC or for a frequency.
    ///
    /// # Errors
    /// A bad value, a shorted source or a floating node.
    pub fn new(netlist: &Netlist, is_direct: bool) -> Result<Plan, SolveError> {
        netlist.check()?;
        let merged = merge(netlist, is_direct)?;
        check_connected(netlist, &merged, is_direct)?;
        Ok(Shape::of(netlist, merged, is_direct).plan(netlist))
    }
}

/// True if the element joins its nodes at all in this kind of analysis.
fn conducts(kind: &ElementKind, is_direct: bool) -> bool {
    match kind {
        ElementKind::Capacitor { .. } => !is_direct,
        ElementKind::Source { .. } => false,
        _ => true,
    }
}

/// Every node needs a conducting path to earth; flux alone fixes no voltage.
fn check_connected(netlist: &Netlist, merged: &Merged, is_direct: bool) -> Result<(), SolveError> {
    let n = netlist.nodes().len();
    let mut neighbours: Vec<Vec<usize>> = vec![Vec::new(); n];
    let mut join = |a: NodeId, b: NodeId| {
        neighbours[a.index()].push(b.index());
        neighbours[b.index()].push(a.index());
    };
    for (index, e) in netlist.elements().iter().enumerate() {
        if merged.is_merged[index] || conducts(&e.kind, is_direct) {
            join(e.from, e.to);
        }
    }
    for c in netlist.coils() {
        join(c.from, c.to);
    }
    let mut seen = vec![false; n];
    let mut stack = vec![0];
    while let Some(node) = stack.pop() {
        if !core::mem::replace(&mut seen[node], true) {
            stack.extend(
                neighbours[node]
                    .iter()
                    .copied()
                    .filter(|other| !seen[*other]),
            );
        }
    }
    match seen.iter().position(|s| !s) {
        Some(node) => Err(SolveError::Floating {
            node: netlist.nodes()[node].clone(),
        }),
        None => Ok(()),
    }
}

/// The graph of unknowns before ordering.
struct Shape {
    merged: Merged,
    /// Unknown (in order of appearance) of each node, [`NONE`] at earth.
    first_number: Vec<u32>,
    neighbours: Vec<BTreeSet<u32>>,
    is_last: Vec<bool>,
    is_coupled: Vec<bool>,
    is_direct: bool,
}

impl Shape {
    fn of(netlist: &Netlist, merged: Merged, is_direct: bool) -> Shape {
        let n = netlist.nodes().len();
        let mut number_of_root = vec![NONE; n];
        let mut count = 0;
        for (node, number) in number_of_root.iter_mut().enumerate().skip(1) {
            if merged.root[node] as usize == node {
                *number = count;
                count += 1;
            }
        }
        let first_number: Vec<u32> = (0..n)
            .map(|node| number_of_root[merged.root[node] as usize])
            .collect();
        let mut is_coupled = vec![false; netlist.elements().len()];
        if !is_direct {
            for c in netlist.couplings() {
                is_coupled[c.first.index()] = true;
                is_coupled[c.second.index()] = true;
            }
        }
        let mut shape = Shape {
            merged,
            first_number,
            neighbours: vec![BTreeSet::new(); count as usize],
            is_last: vec![false; count as usize],
            is_coupled,
            is_direct,
        };
        shape.connect(netlist);
        shape
    }

    fn number(&self, node: NodeId) -> u32 {
        self.first_number[node.index()]
    }

    fn connect(&mut self, netlist: &Netlist) {
        for (index, e) in netlist.elements().iter().enumerate() {
            let is_plain = !self.merged.is_merged[index] && !self.is_coupled[index];
            if is_plain && conducts(&e.kind, self.is_direct) {
                self.join(self.number(e.from), self.number(e.to));
            }
        }
        if !self.is_direct {
            for c in netlist.couplings() {
                let ends = coupling_ends(netlist, c.first, c.second);
                for a in ends {
                    for b in ends {
                        self.join(self.number(a), self.number(b));
                    }
                }
            }
        }
        for c in netlist.coils() {
            for node in [c.from, c.to] {
                if let Some(last) = self
                    .is_last
                    .get_mut(self.first_number[node.index()] as usize)
                {
                    *last = true;
                }
            }
        }
    }

    fn join(&mut self, a: u32, b: u32) {
        if a != NONE && b != NONE && a != b {
            self.neighbours[a as usize].insert(b);
            self.neighbours[b as usize].insert(a);
        }
    }

    fn plan(self, netlist: &Netlist) -> Plan {
        let order = order(&self.neighbours, &self.is_last);
        let n = order.unknown_at.len();
        let outer = self.is_last.iter().filter(|l| !**l).count();
        let mut place_of = vec![NONE; n];
        for (place, unknown) in order.unknown_at.iter().enumerate() {
            place_of[*unknown as usize] = place as u32;
        }
        let unknown_of: Vec<u32> = self
            .first_number
            .iter()
            .map(|u| {
                if *u == NONE {
                    NONE
                } else {
                    place_of[*u as usize]
                }
            })
            .collect();
        let mut node_of = vec![0; n];
        for (node, unknown) in unknown_of.iter().enumerate().rev() {
            if *unknown != NONE {
                node_of[*unknown as usize] = node as u32;
            }
        }
        let slots = Slots::of(&order.later, outer);
        let place = |from: NodeId, to: NodeId| {
            let (a, b) = (unknown_of[from.index()], unknown_of[to.index()]);
            Place {
                from: a,
                to: b,
                slot: slots.get(a, b),
            }
        };
        let places = netlist
            .elements()
            .iter()
            .map(|e| place(e.from, e.to))
            .collect();
        let coil_ends = netlist
            .coils()
            .iter()
            .map(|c| (unknown_of[c.from.index()], unknown_of[c.to.index()]))
            .collect();
        let coupled_terms = if self.is_direct {
            Vec::new()
        } else {
            coupled_terms(netlist, &unknown_of, &slots)
        };
        let inner_slots = (outer as u32..n as u32)
            .flat_map(|a| (outer as u32..n as u32).map(move |b| (a, b)))
            .map(|(a, b)| slots.get(a, b))
            .collect();
        Plan {
            node_names: netlist.nodes().to_vec(),
            unknown_of,
            node_of,
            merged: self.merged,
            outer,
            slot_count: slots.slot_of.len(),
            later_range: slots.later_range,
            later: slots.later,
            updates: slots.updates,
            places,
            coupled_terms,
            coil_ends,
            inner_slots,
            is_coupled: self.is_coupled,
            element_nodes: netlist
                .elements()
                .iter()
                .map(|e| [e.from.0, e.to.0])
                .collect(),
            coil_nodes: netlist.coils().iter().map(|c| [c.from.0, c.to.0]).collect(),
            couplings: netlist
                .couplings()
                .iter()
                .map(|c| [c.first.0, c.second.0])
                .collect(),
        }
    }
}
