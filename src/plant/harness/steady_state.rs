//! A machine held in one state: which contacts hold, at what slip the motor runs.
//!
//! The control's outputs hold only while its 5 V do; the motor runs where its torque meets
//! the load if it can break away, else it stands and draws its stall current:
//!
//! ```text
//! |T(stall)| >= break-away       then  T(slip) = load + friction + windage, smallest slip
//! ```
//! Limits: the load is a constant torque once running; supply dips while starting are judged at stall.

use std::sync::Arc;

use crate::network::Contacts;
use crate::network::ElementId;
use crate::network::SolveError;
use crate::plant::harness::model::WiringModel;
use crate::plant::harness::motor::WindingsK;
use crate::plant::harness::point::AcPoint;
use crate::plant::harness::solving::Harness;
use crate::plant::harness::solving::Scratch;
use crate::plant::harness::store::Reduced;

/// Steps of the search for the running slip, as many as resolve the curve near synchronism.
const SEARCH_STEPS: usize = 400;
/// Smallest slip searched.
const SMALLEST_SLIP: f64 = 0.0005;

/// A machine in one state, solved.
#[derive(Clone, Debug)]
pub struct SteadyState {
    /// Contacts that really hold.
    pub contacts: Contacts,
    /// Output of the 5 V regulator, V; 0 without board.
    pub regulated_v: f64,
    /// The network in AC, the rotor at its slip.
    pub ac: Arc<AcPoint>,
}

/// Solves a state.
///
/// # Errors
/// [`SolveError`] if the network cannot be solved.
pub fn steady_state(
    harness: &Harness,
    closed: &[ElementId],
    load_n_m: Option<f64>,
    temperatures_k: WindingsK,
) -> Result<SteadyState, SolveError> {
    let model = Arc::clone(&harness.wiring().model);
    let mut contacts = harness.contacts(closed);
    let stalled = harness.solve_ac(contacts, 1.0, temperatures_k)?;
    let regulated_v = regulated_v(harness, &stalled);
    let runs = model
        .low_voltage
        .as_ref()
        .is_none_or(|low| regulated_v >= low.runs_from_v);
    if !runs {
        contacts = contacts.without(harness.contacts(&model.outputs_needing_5v));
    }
    let load_n_m = load_n_m.unwrap_or(model.loads.spinning_n_m);
    let slip = running_slip(harness, contacts, load_n_m, temperatures_k)?;
    let ac = harness.solve_ac(contacts, slip, temperatures_k)?;
    Ok(SteadyState {
        contacts,
        regulated_v,
        ac,
    })
}

/// Output of the 5 V regulator at an AC point, V.
pub fn regulated_v(harness: &Harness, ac: &AcPoint) -> f64 {
    match &harness.wiring().model.low_voltage {
        Some(low) if !harness.wiring().is_regulator_dead => {
            let [a, b] = low.secondary;
            low.regulated_v(ac.network.between_v(a, b).abs())
        }
        _ => 0.0,
    }
}

/// Torque that starts the motor against a load, N m: wet washing breaks away hard, a basket
/// needs no more than the motor's own friction, because its load comes with speed.
fn break_away_n_m(model: &WiringModel, load_n_m: f64) -> f64 {
    if load_n_m > model.loads.spinning_n_m {
        model.loads.break_away_n_m
    } else {
        model.motor.params.friction_n_m
    }
}

/// The slip (against direction A) at which torque meets a load (before faults of the drive
/// multiply it), or 1 at rest.
///
/// # Errors
/// [`SolveError`] if the coils are singular.
pub fn running_slip(
    harness: &Harness,
    contacts: Contacts,
    load_n_m: f64,
    temperatures_k: WindingsK,
) -> Result<f64, SolveError> {
    let reduced = harness.reduced(contacts)?;
    let mut scratch = Scratch::default();
    let stall_n_m = harness
        .flow(&reduced, 1.0, temperatures_k, &mut scratch)?
        .torque_n_m;
    let wiring = harness.wiring();
    let needed_n_m = break_away_n_m(&wiring.model, load_n_m) * wiring.load_ratio;
    if wiring.is_seized || stall_n_m.abs() < needed_n_m {
        return Ok(1.0);
    }
    let mut balance = Balance {
        harness,
        reduced: &reduced,
        temperatures_k,
        load_n_m: load_n_m * wiring.load_ratio,
        is_a: stall_n_m > 0.0,
        scratch,
    };
    let slip = balance.smallest_stable_slip()?;
    Ok(match slip {
        Some(slip) if balance.is_a => slip,
        Some(slip) => 2.0 - slip,
        None => 1.0,
    })
}

/// Torque less load over the slip in the direction the motor starts.
struct Balance<'a> {
    harness: &'a Harness,
    reduced: &'a Reduced,
    temperatures_k: WindingsK,
    load_n_m: f64,
    is_a: bool,
    scratch: Scratch,
}

impl Balance<'_> {
    fn surplus_n_m(&mut self, slip: f64) -> Result<f64, SolveError> {
        let model = &self.harness.wiring().model;
        let signed = if self.is_a { slip } else { 2.0 - slip };
        let flow =
            self.harness
                .flow(self.reduced, signed, self.temperatures_k, &mut self.scratch)?;
        let sync = model.motor.params.synchronous_rad_per_s(model.frequency_hz);
        let drag_n_m = model.motor.params.drag_n_m((1.0 - slip) * sync);
        let torque_n_m = if self.is_a {
            flow.torque_n_m
        } else {
            -flow.torque_n_m
        };
        Ok(torque_n_m - drag_n_m - self.load_n_m)
    }

    fn smallest_stable_slip(&mut self) -> Result<Option<f64>, SolveError> {
        let step = (1.0 - SMALLEST_SLIP) / SEARCH_STEPS as f64;
        let mut low = SMALLEST_SLIP;
        if self.surplus_n_m(low)? >= 0.0 {
            return Ok(Some(low));
        }
        for k in 1..=SEARCH_STEPS {
            let high = SMALLEST_SLIP + step * k as f64;
            if self.surplus_n_m(high)? >= 0.0 {
                return self.bisect(low, high).map(Some);
            }
            low = high;
        }
        Ok(None)
    }

    fn bisect(&mut self, mut low: f64, mut high: f64) -> Result<f64, SolveError> {
        // 50 halvings of a step of 2.5e-3 end below the spacing of doubles.
        for _ in 0..50 {
            let middle = 0.5 * (low + high);
            if self.surplus_n_m(middle)? < 0.0 {
                low = middle;
            } else {
                high = middle;
            }
        }
        Ok(0.5 * (low + high))
    }
}
