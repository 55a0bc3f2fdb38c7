//! Charge that stays in capacitors after the supply has gone.
//!
//! Whatever is switched leaves the capacitors as they were; from then on they empty through the
//! wiring as it stands. The machine remembers the circuits it went through since its charge was
//! last nothing, and follows the charge through them only when somebody asks:
//!
//! ```text
//! at a switching    v_C stays            free = v_C − what the supply drives in the new circuit
//! in between        free decays through the whole network (see the harness)
//! while fed         the last 12 circuits count: each is driven anew by the supply
//! forgotten         once later circuits lasted 30 times their slowest C R together: a rest of 1e-13
//! ```
//! Worst case: each switching comes at the moment in the mains cycle when the capacitors that can
//! be felt hold most energy.
//! Source: superposition; IEC 60335-1 clause 22.5 for the case (from memory). Limits: flux left in
//! the motor is not counted: by the four-state loop of windings, capacitor and rotor it dies with
//! 20 to 22 ms at rest and within 0.3 s of a rotor still near synchronous speed; instruments and hands see the decaying part, never both at once.

use std::sync::Arc;
use std::sync::OnceLock;

use crate::machine::MachineError;
use crate::machine::StateHasher;
use crate::network::Complex;
use crate::network::Contacts;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::network::NodeId;
use crate::plant::harness::Harness;
use crate::plant::harness::discharge::Across;
use crate::plant::harness::discharge::Charge;
use crate::plant::harness::discharge::Contours;
use crate::plant::harness::discharge::RINGING_S;
use crate::plant::harness::discharge::decayed;
use crate::plant::harness::discharge::decayed_by;
use crate::plant::harness::motor::WindingsK;
use crate::plant::harness::point::AcPoint;

/// A motor that stands.
pub(super) const STANDING_SLIP: f64 = 1.0;
/// Windings at room temperature, K.
pub(super) const ROOM_K: WindingsK = [293.15; 2];
/// After so many of its slowest time constants nothing is left.
const FORGOTTEN_AFTER: f64 = 30.0;
/// Circuits remembered one by one.
const REMEMBERED: usize = 12;
/// A short as a blade or a lead makes it, Ω, and how long it is held, s. Common practice.
const SHORT: (f64, f64) = (1.0, 1.0e-3);
/// How long a voltmeter hangs on before it is read, s: its input has taken stray charge off.
const METER_SETTLES_S: f64 = 0.01;

/// Voltage and energy that a short between two places would set free.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Stored {
    /// Voltage, V.
    pub voltage_v: f64,
    /// Energy, J.
    pub energy_j: f64,
}

/// The wiring as it is run for a while.
#[derive(Clone, Debug)]
pub struct Circuit {
    /// The wiring.
    pub harness: Harness,
    /// Contacts that are closed.
    pub contacts: Contacts,
    /// Capacitors whose charge can be felt.
    pub capacitors: Arc<[ElementId]>,
}

impl Circuit {
    /// The supply drives it.
    fn is_fed(&self) -> bool {
        let wiring = self.harness.wiring();
        let source = wiring.element(wiring.model.supply.source).0;
        let is_off = matches!(source, ElementKind::Source { ac_v, .. } if ac_v.abs() <= 0.0);
        wiring.is_plugged() && !is_off
    }
}

/// A moment at which something was switched.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Switching {
    /// Tick.
    pub tick: u64,
    /// Slip of the rotor.
    pub slip_ratio: f64,
    /// Windings, K.
    pub windings_k: WindingsK,
}

impl Default for Switching {
    fn default() -> Self {
        Self {
            tick: 0,
            slip_ratio: STANDING_SLIP,
            windings_k: ROOM_K,
        }
    }
}

#[derive(Clone, Debug)]
struct Past {
    circuit: Circuit,
    from: Switching,
    until: Switching,
    /// How long it lasted over its slowest time constant.
    decay_ratio: f64,
    /// The supply drove it.
    is_fed: bool,
}

/// The present circuit with the charge it began with and the charge once ringing was over.
#[derive(Debug)]
struct Began {
    harness: Result<Harness, MachineError>,
    at_once: Charge,
    calm: Charge,
    /// Those of the ringing, which every later answer asks for.
    contours: Contours,
}

/// Where the charge came from and through which circuits it went.
#[derive(Clone, Debug, Default)]
pub struct ChargeHistory {
    /// Charge at the beginning; none when the first circuit began with nothing but its supply.
    held: Option<Arc<Charge>>,
    past: Vec<Past>,
    since: Switching,
    /// Follows from the rest and the present circuit; worked out when first asked for.
    began: OnceLock<Arc<Began>>,
}

impl ChargeHistory {
    /// Nothing is stored at this moment.
    pub fn begun(since: Switching) -> Self {
        Self {
            since,
            ..Self::default()
        }
    }

    /// `ended` is over now; its slowest decay has this time constant.
    ///
    /// # Errors
    /// When a remembered circuit cannot be solved.
    pub fn switched(
        &mut self,
        ended: Circuit,
        slowest_s: f64,
        now: Switching,
    ) -> Result<(), MachineError> {
        if now.tick == self.since.tick {
            return Ok(());
        }
        let is_fed = ended.is_fed();
        let lasted_s = (now.tick - self.since.tick) as f64 / 10.0;
        self.past.push(Past {
            circuit: ended,
            from: self.since,
            until: now,
            decay_ratio: lasted_s / slowest_s,
            is_fed,
        });
        self.forget();
        if self.past.len() > REMEMBERED && is_fed {
            self.past.remove(0);
            self.held = None;
        } else if self.past.len() > REMEMBERED {
            let (charge, _) = self.followed()?;
            self.held = Some(Arc::new(charge));
            self.past.clear();
        }
        self.since = now;
        self.began = OnceLock::new();
        Ok(())
    }

    /// What came before circuits that lasted long enough has left nothing.
    fn forget(&mut self) {
        let mut n_decays = 0.0;
        for at in (0..self.past.len()).rev() {
            n_decays += self.past[at].decay_ratio;
            if n_decays > FORGOTTEN_AFTER {
                self.past.drain(..at);
                self.held = None;
                break;
            }
        }
        // Nothing drove the first ones, and nothing was there before.
        if self.held.is_none() {
            let first_fed = self.past.iter().position(|past| past.is_fed);
            self.past.drain(..first_fed.unwrap_or(self.past.len()));
        }
    }

    /// Nothing is left of what came before the present circuit.
    pub fn is_forgotten(&self, slowest_s: f64, tick: u64) -> bool {
        let age_s = (tick - self.since.tick) as f64 / 10.0;
        (self.past.is_empty() && self.held.is_none()) || age_s > FORGOTTEN_AFTER * slowest_s
    }

    /// Total charge when the last remembered circuit ended, and the moment in the cycle at which
    /// it did.
    fn followed(&self) -> Result<(Charge, Complex), MachineError> {
        let mut total = self.held.as_deref().cloned();
        let mut moment = Complex::ONE;
        // Circuits of the same wiring follow on each other: what was factored serves again.
        let mut at_hand: Option<(&Harness, Contours)> = None;
        for Past {
            circuit,
            from,
            until,
            ..
        } in &self.past
        {
            let is_same = |(harness, _): &(&Harness, _)| {
                Arc::ptr_eq(harness.wiring(), circuit.harness.wiring())
            };
            let (harness, contours) = match at_hand.take().filter(is_same) {
                Some(same) => at_hand.insert(same),
                None => at_hand.insert((&circuit.harness, Contours::default())),
            };
            let mut left = Charge::default();
            if let Some(total) = &total {
                let began = driven(harness, circuit, *from)?;
                let free = total.less(&Charge::at_moment(harness, &began, moment), harness);
                let lasted_s = (until.tick - from.tick) as f64 / 10.0;
                left =
                    decayed_by(contours, harness, circuit.contacts, &free, lasted_s, None)?.charge;
            }
            let ended = driven(harness, circuit, *until)?;
            moment = Charge::fullest_moment(harness, &ended, &circuit.capacitors);
            total = Some(Charge::at_moment(harness, &ended, moment).plus(&left, harness));
        }
        Ok((total.unwrap_or_default(), moment))
    }

    /// What is left in the present circuit at a tick.
    fn left(&self, now: &Circuit, tick: u64) -> Result<(Arc<Began>, Charge), MachineError> {
        let began = match self.began.get() {
            Some(began) => Arc::clone(began),
            None => Arc::clone(self.began.get_or_init(|| Arc::new(self.begin(now)))),
        };
        let harness = began.harness.as_ref().map_err(Clone::clone)?;
        let age_s = (tick - self.since.tick) as f64 / 10.0;
        let (from, age_s) = if age_s > RINGING_S {
            (&began.calm, age_s - RINGING_S)
        } else {
            (&began.at_once, age_s)
        };
        let mut contours = began.contours.clone();
        let left = decayed_by(&mut contours, harness, now.contacts, from, age_s, None)?.charge;
        Ok((began, left))
    }

    /// What the present circuit began with; kept until the next switching.
    fn begin(&self, now: &Circuit) -> Began {
        let mut contours = Contours::default();
        let mut begin = || -> Result<(Harness, Charge, Charge), MachineError> {
            let (total, moment) = self.followed()?;
            let harness = now.harness.clone();
            let began = driven(&harness, now, self.since)?;
            let free = total.less(&Charge::at_moment(&harness, &began, moment), &harness);
            let calm = decayed_by(
                &mut contours,
                &harness,
                now.contacts,
                &free,
                RINGING_S,
                None,
            )?
            .charge;
            Ok((harness, free, calm))
        };
        match begin() {
            Ok((harness, at_once, calm)) => Began {
                harness: Ok(harness),
                at_once,
                calm,
                contours,
            },
            Err(error) => Began {
                harness: Err(error),
                at_once: Charge::default(),
                calm: Charge::default(),
                contours,
            },
        }
    }

    /// Voltage a voltmeter finds between two places, V.
    ///
    /// # Errors
    /// When a circuit cannot be solved.
    pub fn voltage_v(
        &self,
        now: &Circuit,
        tick: u64,
        nodes: [NodeId; 2],
    ) -> Result<f64, MachineError> {
        let (began, left) = self.left(now, tick)?;
        let harness = began.harness.as_ref().map_err(Clone::clone)?;
        let meter = Some(Across::meter(nodes));
        let read = decayed(harness, now.contacts, &left, METER_SETTLES_S, meter)?;
        Ok(read.node_v[nodes[0].index()] - read.node_v[nodes[1].index()])
    }

    /// Energy that a short between two places would set free, J.
    ///
    /// # Errors
    /// When a circuit cannot be solved.
    pub fn energy_j(
        &self,
        now: &Circuit,
        tick: u64,
        nodes: [NodeId; 2],
    ) -> Result<f64, MachineError> {
        let (began, left) = self.left(now, tick)?;
        let harness = began.harness.as_ref().map_err(Clone::clone)?;
        let shorted = decayed(harness, now.contacts, &left, SHORT.1, Some(short(nodes)))?;
        Ok((left.whole_j(harness) - shorted.charge.whole_j(harness)).max(0.0))
    }

    /// A short between two places, held for a moment: what is left after it is all there is.
    ///
    /// # Errors
    /// When a circuit cannot be solved.
    pub fn lead_off(
        &mut self,
        now: &Circuit,
        at: Switching,
        nodes: [NodeId; 2],
    ) -> Result<(), MachineError> {
        let (began, left) = self.left(now, at.tick)?;
        let harness = began.harness.as_ref().map_err(Clone::clone)?;
        let after = decayed(harness, now.contacts, &left, SHORT.1, Some(short(nodes)))?;
        self.held = Some(Arc::new(after.charge));
        self.past.clear();
        self.since = at;
        self.began = OnceLock::new();
        Ok(())
    }

    pub(super) fn hash_into(&self, hasher: &mut StateHasher) {
        let mut switching = |at: &Switching| {
            hasher.word(at.tick);
            hasher.number(at.slip_ratio);
            at.windings_k.iter().for_each(|k| hasher.number(*k));
        };
        self.past.iter().for_each(|past| switching(&past.from));
        switching(&self.since);
        self.past
            .iter()
            .for_each(|past| hasher.word(past.circuit.contacts.0));
        if let Some(held) = &self.held {
            let numbers = held.capacitor_v.iter().chain(&held.inductor_a);
            numbers.for_each(|number| hasher.number(*number));
        }
    }
}

/// What the supply drives in a circuit at a moment.
fn driven(
    harness: &Harness,
    circuit: &Circuit,
    at: Switching,
) -> Result<Arc<AcPoint>, MachineError> {
    Ok(harness.solve_ac(circuit.contacts, at.slip_ratio, at.windings_k)?)
}

fn short(nodes: [NodeId; 2]) -> Across {
    Across {
        nodes,
        ohm: SHORT.0,
    }
}
