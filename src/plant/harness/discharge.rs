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
const RINGING_STEP_S: f64 = 0.02;
/// Time after which ringing is gone, s.
const RINGING_S: f64 = 0.2;

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

impl Charge {
    /// The charge at the moment the voltage between two places is at its peak.
    pub fn at_peak(harness: &Harness, ac: &AcPoint, a: NodeId, b: NodeId) -> Charge {
        let at_peak_v = ac.network.between_v(a, b);
        let size = at_peak_v.abs();
        // Turns every phasor so that the voltage asked for is real and positive.
        let turn = if size > 0.0 {
            at_peak_v.conjugate().scale(1.0 / size)
        } else {
            Complex::ONE
        };
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

/// The wiring a time after the supply is gone; `meter` is a 10 Mohm voltmeter left on.
///
/// # Errors
/// [`SolveError`] if the network cannot be solved.
pub fn decayed(
    harness: &Harness,
    contacts: Contacts,
    charge: &Charge,
    time_s: f64,
    meter: Option<[NodeId; 2]>,
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
        at = one_step(harness, contacts, &at.charge, step_s, meter)?;
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
    meter: Option<[NodeId; 2]>,
) -> Result<Decayed, SolveError> {
    let elements = harness.netlist().elements();
    let mut node_v = vec![0.0; harness.netlist().nodes().len()];
    let mut inductor_a = vec![0.0; elements.len()];
    for k in 0..POINTS {
        let (delta, weight) = contour(k);
        let s = delta.scale(1.0 / time_s);
        let weight = weight.scale(0.4 / time_s);
        let answer = answer_to_charge(harness, contacts, charge, s, meter)?;
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
    meter: Option<[NodeId; 2]>,
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
    if let Some([a, b]) = meter {
        let load = Complex::real(1.0 / METER_OHM);
        let one = Complex::ONE;
        let ohm = solver.inject(&[(a, one), (b, -one)]).between_v(a, b);
        let current = load * solution.between_v(a, b) / (one + load * ohm);
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
