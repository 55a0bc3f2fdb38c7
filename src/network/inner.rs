//! The dense block around coupled coils: a motor at one speed and temperature.
//!
//! The coils' admittances Y (row by row) are added to what the rest of the network looks
//! like from their nodes; rows may differ from columns (a turning rotor is not reciprocal),
//! so each row keeps its own conductance to earth and pivots are sums as outside:
//!
//! ```text
//! p_k = g_k + sum_j a_kj    a_ij += a_ik a_kj / p_k    g_i += a_ik g_k / p_k
//! ```
//! Limits: coils sharing a node make a_kj of both signs; cancellation is then that of the
//! coils themselves.

#![expect(
    clippy::needless_range_loop,
    reason = "indices read as in the equations"
)]

use crate::network::error::SolveError;
use crate::network::factor::Base;
use crate::network::factor::Factors;
use crate::network::number::Number;
use crate::network::plan::Plan;
use crate::network::slots::NONE;

/// The coils' block, factored.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Inner<N> {
    size: usize,
    /// Off-diagonal conductances, row by row.
    between: Vec<N>,
    earth: Vec<N>,
    pivot_inverse: Vec<N>,
    /// Current driven into the block's unknowns by sources through the coils, A.
    coil_source_a: Vec<N>,
    /// Admittances of the coils, S, row by row.
    pub coil_siemens: Vec<N>,
}

impl<N: Number> Inner<N> {
    /// Block of a network with the given coil admittances (row by row, S).
    ///
    /// # Errors
    /// [`SolveError::Resonant`] naming the node whose pivot is 0.
    pub fn new(base: &Base<N>, factors: &Factors<N>, coils: &[N]) -> Result<Inner<N>, SolveError> {
        let mut inner = Inner::default();
        inner.refresh(base, factors, coils)?;
        Ok(inner)
    }

    /// The same for other coils or factors, without allocating.
    ///
    /// # Errors
    /// As for [`Inner::new`].
    pub fn refresh(
        &mut self,
        base: &Base<N>,
        factors: &Factors<N>,
        coils: &[N],
    ) -> Result<(), SolveError> {
        let plan = &*base.plan;
        let m = plan.inner();
        self.size = m;
        self.coil_siemens.clear();
        self.coil_siemens.extend_from_slice(coils);
        self.between.clear();
        self.between
            .extend(plan.inner_slots.iter().map(|slot| match *slot {
                NONE => N::default(),
                slot => factors.slots[slot as usize],
            }));
        self.earth.clear();
        self.earth.extend_from_slice(&factors.earth[plan.outer..]);
        self.coil_source_a.clear();
        self.coil_source_a.resize(m, N::default());
        self.add_coils(base);
        self.eliminate(plan)
    }

    fn add_coils(&mut self, base: &Base<N>) {
        let plan = &*base.plan;
        let count = plan.coil_ends.len();
        for row in 0..count {
            for column in 0..count {
                let y = self.coil_siemens[row * count + column];
                let [from, to] = plan.coil_nodes[column];
                let d_v = base.offset_v[from as usize] - base.offset_v[to as usize];
                let (a_from, a_to) = plan.coil_ends[row];
                self.add_row(plan, a_from, plan.coil_ends[column], y, d_v);
                self.add_row(plan, a_to, plan.coil_ends[column], -y, d_v);
            }
        }
    }

    /// Adds `y (v_from - v_to + d_v)` leaving at unknown `row`.
    fn add_row(&mut self, plan: &Plan, row: u32, ends: (u32, u32), y: N, d_v: N) {
        if row == NONE {
            return;
        }
        let i = row as usize - plan.outer;
        self.coil_source_a[i] -= y * d_v;
        match ends {
            (NONE, NONE) => {}
            (from, NONE) => {
                self.earth[i] += y;
                self.at_column(plan, i, from, y);
            }
            (NONE, to) => {
                self.earth[i] -= y;
                self.at_column(plan, i, to, -y);
            }
            (from, to) => {
                // The two cancel in the row's sum: nothing goes to earth.
                self.at_column(plan, i, from, y);
                self.at_column(plan, i, to, -y);
            }
        }
    }

    fn at_column(&mut self, plan: &Plan, i: usize, column: u32, y: N) {
        let j = column as usize - plan.outer;
        if i != j {
            self.between[i * self.size + j] -= y;
        }
    }

    fn eliminate(&mut self, plan: &Plan) -> Result<(), SolveError> {
        let m = self.size;
        self.pivot_inverse.clear();
        self.pivot_inverse.reserve_exact(m);
        for k in 0..m {
            let mut pivot = self.earth[k];
            for j in k + 1..m {
                pivot += self.between[k * m + j];
            }
            if !pivot.is_usable() {
                return Err(SolveError::Resonant {
                    node: plan.name_of(plan.outer + k),
                });
            }
            let inverse = pivot.inverse();
            self.pivot_inverse.push(inverse);
            for i in k + 1..m {
                let share = self.between[i * m + k] * inverse;
                let earth = self.earth[k];
                self.earth[i] += share * earth;
                for j in (k + 1..m).filter(|j| *j != i) {
                    let a = self.between[k * m + j];
                    self.between[i * m + j] += share * a;
                }
            }
        }
        Ok(())
    }

    /// Replaces currents into the block by voltages.
    pub fn solve(&self, values: &mut [N]) {
        let m = self.size;
        for k in 0..m {
            let v = values[k] * self.pivot_inverse[k];
            for i in k + 1..m {
                values[i] += self.between[i * m + k] * v;
            }
        }
        for k in (0..m).rev() {
            let mut current_a = values[k];
            for j in k + 1..m {
                current_a += self.between[k * m + j] * values[j];
            }
            values[k] = current_a * self.pivot_inverse[k];
        }
    }

    /// The same with rows and columns exchanged, for sensitivities.
    pub fn solve_transposed(&self, values: &mut [N]) {
        let m = self.size;
        for k in 0..m {
            let v = values[k] * self.pivot_inverse[k];
            for i in k + 1..m {
                values[i] += self.between[k * m + i] * v;
            }
        }
        for k in (0..m).rev() {
            let mut current_a = values[k];
            for j in k + 1..m {
                current_a += self.between[j * m + k] * values[j];
            }
            values[k] = current_a * self.pivot_inverse[k];
        }
    }

    /// Adds the currents that ideal sources drive through the coils.
    pub fn add_coil_sources(&self, values: &mut [N]) {
        for (value, source) in values.iter_mut().zip(&self.coil_source_a) {
            *value += *source;
        }
    }
}
