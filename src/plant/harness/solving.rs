//! Solves a wiring: factors kept per contact set, the motor redone per slip.
//!
//! Most of a washing cycle repeats a handful of contact sets, so factors, watched readings
//! and motor tables are kept for the last few. Changing a value or a link makes new numbers
//! on the same plan; only an extra resistor or a split winding needs a new plan.

use std::sync::Arc;

use crate::network::Base;
use crate::network::Complex;
use crate::network::Contacts;
use crate::network::Direct;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::network::Factors;
use crate::network::Frequency;
use crate::network::Inner;
use crate::network::Netlist;
use crate::network::Plan;
use crate::network::SolveError;
use crate::network::Solver;
use crate::plant::harness::coils::Coils;
use crate::plant::harness::motor::OPEN_OHM;
use crate::plant::harness::motor::WindingsK;
use crate::plant::harness::motor_port::MotorCore;
use crate::plant::harness::motor_port::MotorFlow;
use crate::plant::harness::point::AcPoint;
use crate::plant::harness::point::Point;
use crate::plant::harness::store::Reduced;
use crate::plant::harness::store::Store;
use crate::plant::harness::store::bits;
use crate::plant::harness::watch::Watch;
use crate::plant::harness::watch::Watched;
use crate::plant::harness::wiring::Wiring;

/// The harness, ready to be solved; a copy costs little and shares what was solved.
#[derive(Clone, Debug)]
pub struct Harness {
    wiring: Arc<Wiring>,
    netlist: Arc<Netlist>,
    coils: Coils,
    base: Arc<Base<Complex>>,
    watches: Arc<[Watch]>,
    pub(super) store: Store,
}

/// Room for solving the motor's block again and again.
#[derive(Clone, Debug, Default)]
pub struct Scratch {
    inner: Inner<Complex>,
    rows: Vec<Complex>,
    block_v: Vec<Complex>,
}

impl Harness {
    /// Plans and numbers of a wiring. The first watch is always the line current.
    ///
    /// # Errors
    /// [`SolveError`] if a value is bad or a place floats.
    pub fn new(wiring: &Wiring, watches: &[Watch]) -> Result<Harness, SolveError> {
        let netlist = wiring.netlist();
        let plan = Arc::new(Plan::new(&netlist, false)?);
        let drive = Frequency::steady(wiring.model.frequency_hz);
        let mut all = vec![Watch::Current(wiring.model.supply.line_conductor)];
        all.extend_from_slice(watches);
        Ok(Harness {
            coils: wiring.coils(),
            base: Arc::new(Base::new(plan, &netlist, drive)),
            watches: all.into(),
            store: Store::fresh(None),
            wiring: Arc::new(wiring.clone()),
            netlist: Arc::new(netlist),
        })
    }

    /// Takes over a changed wiring, keeping the plan if the shape is the same.
    ///
    /// # Errors
    /// As for [`Harness::new`].
    pub fn rewire(&mut self, wiring: &Wiring) -> Result<(), SolveError> {
        let netlist = wiring.netlist();
        netlist.check()?;
        if !same_shape(&self.netlist, &netlist) {
            let watches: Vec<Watch> = self.watches[1..].to_vec();
            *self = Harness::new(wiring, &watches)?;
            return Ok(());
        }
        let drive = Frequency::steady(wiring.model.frequency_hz);
        self.base = Arc::new(Base::new(Arc::clone(&self.base.plan), &netlist, drive));
        self.coils = wiring.coils();
        let direct_plan = self.store.at_hand().direct_plan.clone();
        self.store = Store::fresh(direct_plan);
        self.wiring = Arc::new(wiring.clone());
        self.netlist = Arc::new(netlist);
        Ok(())
    }

    /// The wiring.
    pub fn wiring(&self) -> &Arc<Wiring> {
        &self.wiring
    }
    /// The network's nodes and elements.
    pub fn netlist(&self) -> &Netlist {
        &self.netlist
    }
    /// The motor's coils.
    pub fn coils(&self) -> &Coils {
        &self.coils
    }
    /// Values in AC.
    pub fn base(&self) -> &Arc<Base<Complex>> {
        &self.base
    }

    /// The set of contacts with the given elements closed (others are ignored).
    pub fn contacts(&self, closed: &[ElementId]) -> Contacts {
        closed.iter().fold(Contacts::default(), |set, id| {
            match self.netlist.elements()[id.index()].kind {
                ElementKind::Contact { bit, .. } => set.with(bit, true),
                _ => set,
            }
        })
    }

    /// A contact set's factors and watched readings, from the store if it is there.
    ///
    /// # Errors
    /// [`SolveError`] if the network has an exact resonance.
    pub fn reduced(&self, contacts: Contacts) -> Result<Arc<Reduced>, SolveError> {
        if let Some(kept) = self.store.at_hand().reduced.get(&contacts) {
            return Ok(kept);
        }
        let factors = Arc::new(Factors::new(&self.base, contacts)?);
        let watched = Watched::new(&self.base, &factors, &self.watches);
        let reduced = Arc::new(Reduced { factors, watched });
        let mut store = self.store.at_hand();
        store.reduced.put(contacts, Arc::clone(&reduced));
        Ok(reduced)
    }

    /// What the motor does at one slip; leaves the motor's node voltages in `scratch`.
    ///
    /// # Errors
    /// [`SolveError`] if the coils are singular.
    pub fn flow(
        &self,
        reduced: &Reduced,
        slip_ratio: f64,
        temperatures_k: WindingsK,
        scratch: &mut Scratch,
    ) -> Result<MotorFlow, SolveError> {
        let core = self.motor_core(slip_ratio)?;
        self.flow_of(reduced, &core, temperatures_k, scratch)
    }

    /// The motor at one slip, before its copper.
    ///
    /// # Errors
    /// [`SolveError`] if the coils are singular.
    pub fn motor_core(&self, slip_ratio: f64) -> Result<MotorCore, SolveError> {
        let model = &self.wiring.model;
        let s_rad_per_s = Frequency::steady(model.frequency_hz).s_rad_per_s;
        model
            .motor
            .params
            .core(&self.coils, slip_ratio, s_rad_per_s)
    }

    /// The same as [`Harness::flow`] where the motor at that slip is at hand.
    ///
    /// # Errors
    /// [`SolveError`] if the coils are singular.
    pub fn flow_of(
        &self,
        reduced: &Reduced,
        core: &MotorCore,
        temperatures_k: WindingsK,
        scratch: &mut Scratch,
    ) -> Result<MotorFlow, SolveError> {
        let motor = &self.wiring.model.motor.params;
        let faults = &self.wiring.motor_faults;
        let port = motor.port_of(core, &self.coils, faults, temperatures_k)?;
        let n = self.coils.count;
        port.rows_into(n, &mut scratch.rows);
        let plan = &*self.base.plan;
        scratch
            .inner
            .refresh(&self.base, &reduced.factors, &scratch.rows)?;
        scratch.block_v.clear();
        scratch
            .block_v
            .extend_from_slice(reduced.factors.block_sources_a(plan));
        scratch.inner.add_coil_sources(&mut scratch.block_v);
        scratch.inner.solve(&mut scratch.block_v);
        let (mut v, mut i) = ([Complex::ZERO; 4], [Complex::ZERO; 4]);
        for (k, voltage) in v.iter_mut().enumerate().take(n) {
            *voltage = self.base.coil_v(k, &scratch.block_v);
        }
        for (current, row) in i.iter_mut().zip(&port.siemens).take(n) {
            for (y, voltage) in row.iter().zip(&v).take(n) {
                *current += *y * *voltage;
            }
        }
        Ok(motor.flow(
            &self.coils,
            &port,
            &v[..n],
            &i[..n],
            self.wiring.model.frequency_hz,
        ))
    }

    /// A watched reading at the slip last given to [`Harness::flow`] with this scratch.
    pub fn watched(&self, reduced: &Reduced, watch: usize, scratch: &Scratch) -> Complex {
        reduced.watched.reading(watch, &scratch.block_v)
    }

    /// The whole network in AC at a slip.
    ///
    /// # Errors
    /// [`SolveError`] if the network or the coils are singular.
    pub fn solve_ac(
        &self,
        contacts: Contacts,
        slip_ratio: f64,
        temperatures_k: WindingsK,
    ) -> Result<Arc<AcPoint>, SolveError> {
        let key = (contacts, slip_ratio.to_bits(), bits(temperatures_k));
        if let Some(kept) = self.store.at_hand().ac_points.get(&key) {
            return Ok(kept);
        }
        let reduced = self.reduced(contacts)?;
        let mut scratch = Scratch::default();
        let flow = self.flow(&reduced, slip_ratio, temperatures_k, &mut scratch)?;
        let (base, factors) = (Arc::clone(&self.base), Arc::clone(&reduced.factors));
        let Scratch { inner, block_v, .. } = scratch;
        let solution = Solver {
            base: &base,
            factors: &factors,
            inner: &inner,
        }
        .solve_from(&block_v);
        let point = Arc::new(AcPoint {
            network: Point {
                base,
                factors,
                inner,
                solution,
            },
            slip_ratio,
            flow,
        });
        self.store.at_hand().ac_points.put(key, Arc::clone(&point));
        Ok(point)
    }

    /// Values at DC with the regulator giving `regulated_v`.
    fn direct_base(&self, regulated_v: f64) -> Result<Arc<Base<f64>>, SolveError> {
        let key = regulated_v.to_bits();
        if let Some(kept) = self.store.at_hand().direct.get(&key) {
            return Ok(kept);
        }
        let mut netlist = Netlist::clone(&self.netlist);
        if let Some(low) = &self.wiring.model.low_voltage {
            if let ElementKind::Source { dc_v, .. } = netlist.kind_mut(low.source) {
                *dc_v = regulated_v;
            }
            if regulated_v <= 0.0 {
                *netlist.kind_mut(low.regulator) = ElementKind::Resistor { ohm: OPEN_OHM };
                for load in &low.loads {
                    let unpowered = ElementKind::Resistor {
                        ohm: low.load_unpowered_ohm,
                    };
                    *netlist.kind_mut(*load) = unpowered;
                }
            }
        }
        let known = self.store.at_hand().direct_plan.clone();
        let plan = match known {
            Some(plan) => plan,
            None => Arc::new(Plan::new(&netlist, true)?),
        };
        let base = Arc::new(Base::new(Arc::clone(&plan), &netlist, Direct));
        let mut store = self.store.at_hand();
        store.direct_plan = Some(plan);
        store.direct.put(key, Arc::clone(&base));
        Ok(base)
    }

    /// The network at DC with the regulator giving `regulated_v` (0: board not running).
    ///
    /// # Errors
    /// [`SolveError`] if a place has no path to earth at DC.
    pub fn solve_dc(
        &self,
        contacts: Contacts,
        regulated_v: f64,
        temperatures_k: WindingsK,
    ) -> Result<Arc<Point<f64>>, SolveError> {
        let key = (contacts, regulated_v.to_bits(), bits(temperatures_k));
        if let Some(kept) = self.store.at_hand().direct_points.get(&key) {
            return Ok(kept);
        }
        let base = self.direct_base(regulated_v)?;
        let factors = Arc::new(Factors::new(&base, contacts)?);
        let n = self.coils.count;
        let mut rows = vec![0.0; n * n];
        for k in 0..n {
            let motor = &self.wiring.model.motor.params;
            let faults = &self.wiring.motor_faults;
            rows[k * n + k] = 1.0 / self.coils.copper_ohm(motor, faults, temperatures_k, k);
        }
        let inner = Inner::new(&base, &factors, &rows)?;
        let solution = Solver {
            base: &base,
            factors: &factors,
            inner: &inner,
        }
        .solve();
        let point = Arc::new(Point {
            base,
            factors,
            inner,
            solution,
        });
        let mut store = self.store.at_hand();
        store.direct_points.put(key, Arc::clone(&point));
        Ok(point)
    }
}

/// True if two netlists differ in values only.
fn same_shape(a: &Netlist, b: &Netlist) -> bool {
    let is_link = |kind: &ElementKind| matches!(kind, ElementKind::Resistor { ohm } if *ohm <= 0.0);
    a.nodes().len() == b.nodes().len()
        && a.coils() == b.coils()
        && a.couplings().len() == b.couplings().len()
        && a.elements().len() == b.elements().len()
        && a.elements()
            .iter()
            .zip(b.elements())
            .all(|(x, y)| (x.from, x.to) == (y.from, y.to) && is_link(&x.kind) == is_link(&y.kind))
}
