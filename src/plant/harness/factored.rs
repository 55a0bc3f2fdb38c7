//! The wiring at any complex frequency, factored: what decay in time and other frequencies ask for.

use std::sync::Arc;

use crate::network::Base;
use crate::network::Complex;
use crate::network::Contacts;
use crate::network::Factors;
use crate::network::Frequency;
use crate::network::Inner;
use crate::network::SolveError;
use crate::network::Solver;
use crate::plant::harness::motor::COLD_K;
use crate::plant::harness::point::Point;
use crate::plant::harness::solving::Harness;

/// A network at one complex frequency, ready for any injection.
#[derive(Clone, Debug)]
pub(super) struct Factored {
    pub base: Base<Complex>,
    pub factors: Factors<Complex>,
    pub inner: Inner<Complex>,
}

impl Factored {
    pub fn solver(&self) -> Solver<'_, Complex> {
        Solver {
            base: &self.base,
            factors: &self.factors,
            inner: &self.inner,
        }
    }
}

impl Harness {
    /// The network at another complex frequency, rotor at rest, windings at 20 °C.
    ///
    /// # Errors
    /// As for [`Harness::solve_ac`].
    pub fn solve_at(
        &self,
        contacts: Contacts,
        s_rad_per_s: Complex,
    ) -> Result<Point<Complex>, SolveError> {
        let Factored {
            base,
            factors,
            inner,
        } = self.factored_at(contacts, s_rad_per_s)?;
        let solution = Solver {
            base: &base,
            factors: &factors,
            inner: &inner,
        }
        .solve();
        Ok(Point {
            base: Arc::new(base),
            factors: Arc::new(factors),
            inner,
            solution,
        })
    }

    /// The same, factored only.
    pub(super) fn factored_at(
        &self,
        contacts: Contacts,
        s_rad_per_s: Complex,
    ) -> Result<Factored, SolveError> {
        let drive = Frequency { s_rad_per_s };
        let base = Base::new(Arc::clone(&self.base().plan), self.netlist(), drive);
        let factors = Factors::new(&base, contacts)?;
        let motor = &self.wiring().model.motor.params;
        let faults = &self.wiring().motor_faults;
        let port = motor.port(self.coils(), faults, COLD_K, 1.0, s_rad_per_s)?;
        let mut rows = Vec::new();
        port.rows_into(self.coils().count, &mut rows);
        let inner = Inner::new(&base, &factors, &rows)?;
        Ok(Factored {
            base,
            factors,
            inner,
        })
    }
}
