//! The numbers of a network: admittances once per set of values, elimination per contacts.
//!
//! Elimination keeps what each unknown conducts to earth as its own number g and forms each
//! pivot as a sum, so nothing is lost when milliohms meet 1e11 ohm:
//!
//! ```text
//! p = g_k + sum_j a_kj     a_ij += a_ki a_kj / p     g_i += a_ki g_k / p     b_i += a_ki b_k / p
//! ```
//! a_ij is the conductance between two unknowns (minus the matrix entry). Source: published
//! (Grassmann, Taksar, Heyman 1985), extended here to open row sums and complex numbers.

use std::sync::Arc;

use crate::network::drive::Drive;
use crate::network::error::SolveError;
use crate::network::netlist::Contacts;
use crate::network::netlist::ElementKind;
use crate::network::netlist::Netlist;
use crate::network::number::Number;
use crate::network::plan::Plan;
use crate::network::slots::NONE;

/// A contact's place and its admittance open and closed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ContactValue<N> {
    /// Position of the contact in the netlist.
    pub element: usize,
    /// Its bit in [`Contacts`].
    pub bit: u32,
    /// Admittance while open, S.
    pub open_siemens: N,
    /// Admittance while closed, S.
    pub closed_siemens: N,
}

/// Everything that does not depend on contacts: admittances, offsets, source currents.
#[derive(Clone, Debug, PartialEq)]
pub struct Base<N> {
    /// The plan the numbers belong to.
    pub plan: Arc<Plan>,
    /// Admittance of each element, S; 0 for contacts, coupled and merged elements.
    pub admittance_siemens: Vec<N>,
    /// The contacts.
    pub contacts: Vec<ContactValue<N>>,
    /// `[y11, y12, y22]` of each coupling, S.
    pub coupled_siemens: Vec<[N; 3]>,
    /// Voltage of each node above its unknown (through ideal sources), V.
    pub offset_v: Vec<N>,
    slots: Vec<N>,
    earth: Vec<N>,
    source_current_a: Vec<N>,
}

impl<N: Number> Base<N> {
    /// Numbers of a netlist for one way of driving it; the netlist must have the plan's shape.
    pub fn new<D: Drive<N = N>>(plan: Arc<Plan>, netlist: &Netlist, drive: D) -> Base<N> {
        let offset_v = offsets(&plan, netlist, drive);
        let n = plan.unknowns();
        let mut base = Base {
            admittance_siemens: vec![N::default(); netlist.elements().len()],
            contacts: Vec::new(),
            coupled_siemens: Vec::new(),
            offset_v,
            slots: vec![N::default(); plan.slot_count],
            earth: vec![N::default(); n],
            source_current_a: vec![N::default(); n],
            plan,
        };
        for (index, e) in netlist.elements().iter().enumerate() {
            if base.plan.merged.is_merged[index] || base.plan.is_coupled[index] {
                continue;
            }
            let open_siemens = drive.admittance_siemens(&e.kind, false);
            if let ElementKind::Contact { bit, .. } = e.kind {
                let closed_siemens = drive.admittance_siemens(&e.kind, true);
                base.contacts.push(ContactValue {
                    element: index,
                    bit,
                    open_siemens,
                    closed_siemens,
                });
            } else {
                base.admittance_siemens[index] = open_siemens;
                let d_v = base.offset_v[e.from.index()] - base.offset_v[e.to.index()];
                let place = base.plan.places[index];
                stamp(place, open_siemens, &mut base.slots, &mut base.earth);
                push_current(place, open_siemens * d_v, &mut base.source_current_a);
            }
        }
        if !D::IS_DIRECT {
            base.add_couplings(netlist, drive);
        }
        base
    }

    fn add_couplings<D: Drive<N = N>>(&mut self, netlist: &Netlist, drive: D) {
        let henry = |id: usize| match netlist.elements()[id].kind {
            ElementKind::Inductor { henry } => henry,
            _ => 0.0,
        };
        for c in netlist.couplings() {
            let (l1_h, l2_h) = (henry(c.first.index()), henry(c.second.index()));
            self.coupled_siemens
                .push(drive.coupled_siemens(l1_h, l2_h, netlist.mutual_henry(c)));
            let [y11, y12, y22] = self.coupled_siemens[self.coupled_siemens.len() - 1];
            let (a, b) = (
                &netlist.elements()[c.first.index()],
                &netlist.elements()[c.second.index()],
            );
            let da = self.offset_v[a.from.index()] - self.offset_v[a.to.index()];
            let db = self.offset_v[b.from.index()] - self.offset_v[b.to.index()];
            let (place_a, place_b) = (
                self.plan.places[c.first.index()],
                self.plan.places[c.second.index()],
            );
            push_current(place_a, y11 * da + y12 * db, &mut self.source_current_a);
            push_current(place_b, y12 * da + y22 * db, &mut self.source_current_a);
        }
        let plan = Arc::clone(&self.plan);
        for term in &plan.coupled_terms {
            let y = self.coupled_siemens[term.coupling as usize][term.which as usize];
            let signed = N::from_real(term.sign) * y;
            let list = if term.to_earth {
                &mut self.earth
            } else {
                &mut self.slots
            };
            list[term.target as usize] += signed;
        }
    }

    /// Voltage across a coil, given the voltages of the coils' block, V.
    pub fn coil_v(&self, coil: usize, block_v: &[N]) -> N {
        let (from, to) = self.plan.coil_ends[coil];
        let [from_node, to_node] = self.plan.coil_nodes[coil];
        let mut v = self.offset_v[from_node as usize] - self.offset_v[to_node as usize];
        if from != NONE {
            v += block_v[from as usize - self.plan.outer];
        }
        if to != NONE {
            v -= block_v[to as usize - self.plan.outer];
        }
        v
    }

    /// Admittance of an element with the given contacts, S (coupled and merged ones: 0).
    pub fn admittance_siemens(&self, element: usize, contacts: Contacts) -> N {
        match self.contacts.iter().find(|c| c.element == element) {
            Some(c) if contacts.is_closed(c.bit) => c.closed_siemens,
            Some(c) => c.open_siemens,
            None => self.admittance_siemens[element],
        }
    }
}

/// Voltage of each node above its unknown.
fn offsets<D: Drive>(plan: &Plan, netlist: &Netlist, drive: D) -> Vec<D::N> {
    let mut offset_v = vec![D::N::default(); plan.node_names.len()];
    for link in &plan.merged.links {
        let mut v = offset_v[link.parent as usize];
        if let ElementKind::Source { ac_v, dc_v } = netlist.elements()[link.element.index()].kind {
            let source_v = drive.source_v(ac_v, dc_v);
            if link.from_is_child {
                v += source_v;
            } else {
                v -= source_v;
            }
        }
        offset_v[link.child as usize] = v;
    }
    offset_v
}

fn stamp<N: Number>(place: crate::network::plan::Place, y: N, slots: &mut [N], earth: &mut [N]) {
    if place.slot != NONE {
        slots[place.slot as usize] += y;
    } else if place.from == NONE && place.to != NONE {
        earth[place.to as usize] += y;
    } else if place.to == NONE && place.from != NONE {
        earth[place.from as usize] += y;
    }
}

/// A current driven through an element by sources leaves at `from` and arrives at `to`.
fn push_current<N: Number>(place: crate::network::plan::Place, current_a: N, into: &mut [N]) {
    if place.from != NONE {
        into[place.from as usize] -= current_a;
    }
    if place.to != NONE {
        into[place.to as usize] += current_a;
    }
}

/// A network eliminated down to the coils' block, for one set of contacts.
#[derive(Clone, Debug, PartialEq)]
pub struct Factors<N> {
    /// The contacts it was made for.
    pub contacts: Contacts,
    pub(in crate::network) slots: Vec<N>,
    pub(in crate::network) earth: Vec<N>,
    pub(in crate::network) pivot_inverse: Vec<N>,
    /// Source currents after forward elimination, A.
    pub(in crate::network) source_a: Vec<N>,
}

impl<N: Number> Factors<N> {
    /// Eliminates everything outside of the coils' block.
    ///
    /// # Errors
    /// [`SolveError::Resonant`] or [`SolveError::Floating`] naming the node whose pivot is 0.
    pub fn new(base: &Base<N>, contacts: Contacts) -> Result<Factors<N>, SolveError> {
        let mut factors = Factors {
            contacts,
            slots: Vec::new(),
            earth: Vec::new(),
            pivot_inverse: vec![N::default(); base.plan.outer],
            source_a: Vec::new(),
        };
        factors.refresh(base, contacts)?;
        Ok(factors)
    }

    /// The same for other contacts or values, without allocating.
    ///
    /// # Errors
    /// As for [`Factors::new`].
    pub fn refresh(&mut self, base: &Base<N>, contacts: Contacts) -> Result<(), SolveError> {
        self.contacts = contacts;
        self.slots.clone_from(&base.slots);
        self.earth.clone_from(&base.earth);
        self.source_a.clone_from(&base.source_current_a);
        for c in &base.contacts {
            let y = if contacts.is_closed(c.bit) {
                c.closed_siemens
            } else {
                c.open_siemens
            };
            let place = base.plan.places[c.element];
            stamp(place, y, &mut self.slots, &mut self.earth);
            self.push_contact_source(base, c.element, y);
        }
        self.eliminate(&base.plan)?;
        forward(
            &base.plan,
            &self.slots,
            &self.pivot_inverse,
            &mut self.source_a,
        );
        Ok(())
    }

    /// Source currents that reach the coils' block, A.
    pub fn block_sources_a(&self, plan: &Plan) -> &[N] {
        &self.source_a[plan.outer..]
    }

    /// A contact may hang on an ideal source.
    fn push_contact_source(&mut self, base: &Base<N>, element: usize, y: N) {
        let place = base.plan.places[element];
        let [from, to] = base.plan.element_nodes[element];
        let d_v = base.offset_v[from as usize] - base.offset_v[to as usize];
        push_current(place, y * d_v, &mut self.source_a);
    }

    fn eliminate(&mut self, plan: &Plan) -> Result<(), SolveError> {
        let mut update = plan.updates.iter();
        for k in 0..plan.outer {
            let (start, end) = plan.later_range[k];
            let later = &plan.later[start as usize..end as usize];
            let mut pivot = self.earth[k];
            for &(_, slot) in later {
                pivot += self.slots[slot as usize];
            }
            if !pivot.is_usable() {
                return Err(SolveError::Resonant {
                    node: plan.name_of(k),
                });
            }
            let inverse = pivot.inverse();
            self.pivot_inverse[k] = inverse;
            let earth = self.earth[k];
            for (at, &(i, slot)) in later.iter().enumerate() {
                let share = self.slots[slot as usize] * inverse;
                self.earth[i as usize] += share * earth;
                for (&(_, other), target) in later[at + 1..].iter().zip(&mut update) {
                    let a = self.slots[other as usize];
                    self.slots[*target as usize] += share * a;
                }
            }
        }
        Ok(())
    }
}

/// Carries currents from the outer unknowns to the coils' block.
pub(in crate::network) fn forward<N: Number>(
    plan: &Plan,
    slots: &[N],
    pivot_inverse: &[N],
    current_a: &mut [N],
) {
    for k in 0..plan.outer {
        let (start, end) = plan.later_range[k];
        let v = current_a[k] * pivot_inverse[k];
        for &(i, slot) in &plan.later[start as usize..end as usize] {
            current_a[i as usize] += slots[slot as usize] * v;
        }
    }
}

/// Turns carried currents into voltages, given those of the coils' block.
pub(in crate::network) fn backward<N: Number>(
    plan: &Plan,
    slots: &[N],
    pivot_inverse: &[N],
    values: &mut [N],
) {
    for k in (0..plan.outer).rev() {
        let (start, end) = plan.later_range[k];
        let mut current_a = values[k];
        for &(i, slot) in &plan.later[start as usize..end as usize] {
            current_a += slots[slot as usize] * values[i as usize];
        }
        values[k] = current_a * pivot_inverse[k];
    }
}
