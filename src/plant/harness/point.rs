//! One way of running the network, solved: contacts, slip and temperatures fixed.
//!
//! A point keeps its factors, so an instrument put across two places costs one more solve:
//! seen from them the network is a source behind an impedance (Thévenin), and a meter, being
//! linear, is one more element across it. The result is that of a network with the meter
//! in it.

use std::sync::Arc;

use crate::network::Base;
use crate::network::Complex;
use crate::network::ElementId;
use crate::network::Factors;
use crate::network::Inner;
use crate::network::NodeId;
use crate::network::Number;
use crate::network::Solution;
use crate::network::Solver;
use crate::plant::harness::motor_port::MotorFlow;

/// A solved network.
#[derive(Clone, Debug)]
pub struct Point<N> {
    /// Values.
    pub base: Arc<Base<N>>,
    /// Factors outside of the motor.
    pub factors: Arc<Factors<N>>,
    /// The motor's block.
    pub inner: Inner<N>,
    /// Voltages.
    pub solution: Solution<N>,
}

/// A point in AC.
#[derive(Clone, Debug)]
pub struct AcPoint {
    /// The network.
    pub network: Point<Complex>,
    /// Slip of the rotor against direction A.
    pub slip_ratio: f64,
    /// What the motor does.
    pub flow: MotorFlow,
}

/// The network seen from two places.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seen<N> {
    /// Open-circuit voltage of the first against the second, V.
    pub open_v: N,
    /// Impedance, ohm.
    pub ohm: N,
}

impl<N: Number> Seen<N> {
    /// Voltage across a load of the given admittance, V.
    pub fn loaded_v(&self, load_siemens: N) -> N {
        self.open_v * (N::from_real(1.0) + load_siemens * self.ohm).inverse()
    }
}

impl<N: Number> Point<N> {
    /// The parts that solve.
    pub fn solver(&self) -> Solver<'_, N> {
        Solver {
            base: &self.base,
            factors: &self.factors,
            inner: &self.inner,
        }
    }

    /// Voltage of `a` against `b` with nothing else connected, V.
    pub fn between_v(&self, a: NodeId, b: NodeId) -> N {
        self.solution.between_v(a, b)
    }

    /// Current through an element, A.
    pub fn current_a(&self, element: ElementId) -> N {
        self.solution.current_a(&self.base, element)
    }

    /// The network as seen from two places.
    pub fn seen(&self, a: NodeId, b: NodeId) -> Seen<N> {
        let one = N::from_real(1.0);
        let answer = self.solver().inject(&[(a, one), (b, -one)]);
        Seen {
            open_v: self.between_v(a, b),
            ohm: answer.between_v(a, b),
        }
    }

    /// All voltages with a load across two places.
    pub fn loaded(&self, a: NodeId, b: NodeId, load_siemens: N) -> Solution<N> {
        let one = N::from_real(1.0);
        let answer = self.solver().inject(&[(a, one), (b, -one)]);
        let seen = Seen {
            open_v: self.between_v(a, b),
            ohm: answer.between_v(a, b),
        };
        let current_a = load_siemens * seen.loaded_v(load_siemens);
        self.solver().solve_with(&[(a, -current_a), (b, current_a)])
    }
}
