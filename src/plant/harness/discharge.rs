//! How charge left on capacitors decays through the real wiring after the supply is gone.
//!
//! The network is asked at complex frequencies with the charge as its only source, and the
//! answer is turned back into time, so any time costs the same and stiffness (picofarads on
//! milliohms beside hours on insulation) does not matter:
//!
//! ```text
//! capacitor C v0 enters as a current C v0, inductor current i0 as i0 / s
//! v(t) = 2/(5t) sum_k Re( g_k V(d_k / t) )      Talbot's contour, 20 points
//! ```
//! Published: Abate and Whitt 2006 (fixed Talbot). Error about 1e-11 of the start value.
//! Ringing is followed in steps of 20 ms for the first 0.2 s, after which it is gone.
//! Limits: rotor at rest, flux left in the motor is not counted.

use crate::network::Complex;
use crate::network::Contacts;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::network::NodeId;
use crate::network::SolveError;
use crate::plant::harness::instrument::METER_OHM;
use crate::plant::harness::point::AcPoint;
use crate::plant::harness::solving::Harness;

/// Points on the contour.
const POINTS: usize = 20;
/// Length of the first steps, s: short enough for the contour to see the ringing.
pub const RINGING_STEP_S: f64 = 0.02;
/// Time after which ringing is gone, s.
pub const RINGING_S: f64 = 0.2;

/// Voltages of capacitors and currents of inductors at one moment, by element.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Charge {
    /// Voltage of each capacitor (0 for other elements), V.
    pub capacitor_v: Vec<f64>,
    /// Current of each inductor (0 for other elements), A.
    pub inductor_a: Vec<f64>,
}

/// The wiring at a moment of its decay.
#[derive(Clone, Debug, PartialEq)]
pub struct Decayed {
    /// Charge left.
    pub charge: Charge,
    /// Voltage of each node against earth, V.
    pub node_v: Vec<f64>,
}

/// A resistance put across two places.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Across {
    /// The places.
    pub nodes: [NodeId; 2],
    /// Resistance, ohm.
    pub ohm: f64,
}

impl Across {
    /// A voltmeter's 10 Mohm.
    pub fn meter(nodes: [NodeId; 2]) -> Across {
        Across {
            nodes,
            ohm: METER_OHM,
        }
    }
}

/// The turn that makes a phasor real and positive; none for nothing.
fn turn_of(phasor: Complex) -> Complex {
    let size = phasor.abs();
    if size > 0.0 {
        phasor.conjugate().scale(1.0 / size)
    } else {
        Complex::ONE
    }
}

impl Charge {
    /// The charge at the moment the voltage between two places is at its peak.
    pub fn at_peak(harness: &Harness, ac: &AcPoint, a: NodeId, b: NodeId) -> Charge {
        Charge::at_moment(harness, ac, turn_of(ac.network.between_v(a, b)))
    }

    /// The moment in the cycle when these capacitors together hold most energy, as the turn that
    /// makes a phasor's real part its value then:
    /// the sum of `C Re(v turn)^2` is largest where `turn^2` turns the sum of `C v^2` real.
    pub fn fullest_moment(harness: &Harness, ac: &AcPoint, capacitors: &[ElementId]) -> Complex {
        let mut sum = Complex::ZERO;
        for id in capacitors {
            let e = &harness.netlist().elements()[id.index()];
            if let ElementKind::Capacitor { farad } = e.kind {
                let v = ac.network.between_v(e.from, e.to);
                sum += (v * v).scale(farad);
            }
        }
        let whole = turn_of(sum);
        // Half the angle: the root with a positive real part.
        let re = libm::sqrt((0.5 * (1.0 + whole.re)).max(0.0));
        let im = libm::sqrt((0.5 * (1.0 - whole.re)).max(0.0));
        Complex::new(re, if whole.im < 0.0 { -im } else { im })
    }

    /// The charge at a moment in the cycle, given as a turn of all phasors.
    pub fn at_moment(harness: &Harness, ac: &AcPoint, turn: Complex) -> Charge {
        let now = |phasor: Complex| core::f64::consts::SQRT_2 * (phasor * turn).re;
        let mut charge = Charge::none(harness);
        for (index, e) in harness.netlist().elements().iter().enumerate() {
            match e.kind {
                ElementKind::Capacitor { .. } => {
                    charge.capacitor_v[index] = now(ac.network.between_v(e.from, e.to));
                }
                ElementKind::Inductor { .. } => {
                    charge.inductor_a[index] = now(ac.network.current_a(ElementId(index as u32)));
                }
                _ => {}
            }
        }
        charge
    }

    /// No charge anywhere.
    pub fn none(harness: &Harness) -> Charge {
        let n = harness.netlist().elements().len();
        Charge {
            capacitor_v: vec![0.0; n],
            inductor_a: vec![0.0; n],
        }
    }

    /// This charge and another of the same wiring together.
    pub fn plus(&self, other: &Charge, harness: &Harness) -> Charge {
        self.combined(other, 1.0, harness)
    }

    /// This charge without another of the same wiring.
    pub fn less(&self, other: &Charge, harness: &Harness) -> Charge {
        self.combined(other, -1.0, harness)
    }

    /// Links that hands added stand behind the elements of the diagram and store nothing.
    fn combined(&self, other: &Charge, sign: f64, harness: &Harness) -> Charge {
        let n = harness.netlist().elements().len();
        let sum = |a: &[f64], b: &[f64]| {
            let at = |list: &[f64], k: usize| list.get(k).copied().unwrap_or_default();
            (0..n).map(|k| at(a, k) + sign * at(b, k)).collect()
        };
        Charge {
            capacitor_v: sum(&self.capacitor_v, &other.capacitor_v),
            inductor_a: sum(&self.inductor_a, &other.inductor_a),
        }
    }

    /// Energy stored in all capacitors, J.
    pub fn whole_j(&self, harness: &Harness) -> f64 {
        (0..self.capacitor_v.len())
            .map(|k| self.energy_j(harness, ElementId(k as u32)))
            .sum()
    }

    /// Energy stored in one capacitor, J.
    pub fn energy_j(&self, harness: &Harness, capacitor: ElementId) -> f64 {
        match harness.netlist().elements()[capacitor.index()].kind {
            ElementKind::Capacitor { farad } => {
                let v = self.capacitor_v[capacitor.index()];
                0.5 * farad * v * v
            }
            _ => 0.0,
        }
    }
}

/// The wiring a time after the supply is gone, with something across two places or nothing.
///
/// # Errors
/// [`SolveError`] if the network cannot be solved.
pub fn decayed(
    harness: &Harness,
    contacts: Contacts,
    charge: &Charge,
    time_s: f64,
    across: Option<Across>,
) -> Result<Decayed, SolveError> {
    let mut left_s = time_s;
    let mut at = Decayed {
        charge: charge.clone(),
        node_v: Vec::new(),
    };
    let mut passed_s = 0.0;
    while left_s > 0.0 {
        let step_s = if passed_s < RINGING_S {
            left_s.min(RINGING_STEP_S)
        } else {
            left_s
        };
        at = one_step(harness, contacts, &at.charge, step_s, across)?;
        left_s -= step_s;
        passed_s += step_s;
    }
    Ok(at)
}

fn one_step(
    harness: &Harness,
    contacts: Contacts,
    charge: &Charge,
    time_s: f64,
    across: Option<Across>,
) -> Result<Decayed, SolveError> {
    let elements = harness.netlist().elements();
    let mut node_v = vec![0.0; harness.netlist().nodes().len()];
    let mut inductor_a = vec![0.0; elements.len()];
    for k in 0..POINTS {
        let (delta, weight) = contour(k);
        let s = delta.scale(1.0 / time_s);
        let weight = weight.scale(0.4 / time_s);
        let answer = answer_to_charge(harness, contacts, charge, s, across)?;
        for (sum, v) in node_v.iter_mut().zip(&answer.0) {
            *sum += (weight * *v).re;
        }
        for (sum, i) in inductor_a.iter_mut().zip(&answer.1) {
            *sum += (weight * *i).re;
        }
    }
    let mut left = Charge {
        capacitor_v: vec![0.0; elements.len()],
        inductor_a,
    };
    for (index, e) in elements.iter().enumerate() {
        if matches!(e.kind, ElementKind::Capacitor { .. }) {
            left.capacitor_v[index] = node_v[e.from.index()] - node_v[e.to.index()];
        }
    }
    Ok(Decayed {
        charge: left,
        node_v,
    })
}

/// Point and weight k of the contour.
fn contour(k: usize) -> (Complex, Complex) {
    if k == 0 {
        let delta = 0.4 * POINTS as f64;
        return (Complex::real(delta), Complex::real(0.5 * libm::exp(delta)));
    }
    let angle = k as f64 * core::f64::consts::PI / POINTS as f64;
    let cot = libm::cos(angle) / libm::sin(angle);
    let delta = Complex::new(cot, 1.0).scale(0.4 * k as f64 * core::f64::consts::PI);
    let slope = Complex::new(1.0, angle * (1.0 + cot * cot) - cot);
    (delta, slope * delta.exponential())
}

/// Node voltages and inductor currents at complex frequency `s`.
fn answer_to_charge(
    harness: &Harness,
    contacts: Contacts,
    charge: &Charge,
    s: Complex,
    across: Option<Across>,
) -> Result<(Vec<Complex>, Vec<Complex>), SolveError> {
    let point = harness.solve_at(contacts, s)?;
    let mut injected = Vec::new();
    for (index, e) in harness.netlist().elements().iter().enumerate() {
        let current = match e.kind {
            ElementKind::Capacitor { farad } => Complex::real(farad * charge.capacitor_v[index]),
            ElementKind::Inductor { .. } => -s.inverse().scale(charge.inductor_a[index]),
            _ => continue,
        };
        injected.push((e.from, current));
        injected.push((e.to, -current));
    }
    let solver = point.solver();
    let mut solution = solver.inject(&injected);
    if let Some(Across { nodes: [a, b], ohm }) = across {
        let load = Complex::real(1.0 / ohm);
        let one = Complex::ONE;
        let seen_ohm = solver.inject(&[(a, one), (b, -one)]).between_v(a, b);
        let current = load * solution.between_v(a, b) / (one + load * seen_ohm);
        injected.push((a, -current));
        injected.push((b, current));
        solution = solver.inject(&injected);
    }
    let currents = harness
        .netlist()
        .elements()
        .iter()
        .enumerate()
        .map(|(index, e)| match e.kind {
            ElementKind::Inductor { .. } => {
                let own = solution.current_a(&point.base, ElementId(index as u32));
                own + s.inverse().scale(charge.inductor_a[index])
            }
            _ => Complex::ZERO,
        });
    let currents = currents.collect();
    Ok((solution.node_v, currents))
}
