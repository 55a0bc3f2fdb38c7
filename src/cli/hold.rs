//! A machine held in one state with instruments on it: what `probe` and the reference rows read.
//!
//! The state, faults, opened pins and added resistances are put into the harness, which is solved
//! with the motor at the slip its load gives. Nothing moves: for motion see `simulate`.
//! Limits: windings cold, no charge left from before.

use std::sync::Arc;

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::cli::failure::Failure;
use crate::network::Contacts;
use crate::network::ElementId;
use crate::network::NodeId;
use crate::network::SolveError;
use crate::plant::harness::COLD_K;
use crate::plant::harness::Harness;
use crate::plant::harness::Instrument;
use crate::plant::harness::SteadyState;
use crate::plant::harness::Wiring;
use crate::plant::harness::WiringChange;
use crate::plant::harness::WiringModel;
use crate::plant::harness::frequency;
use crate::plant::harness::instrument;
use crate::plant::harness::level::level_frequency_hz;
use crate::plant::harness::steady_state::steady_state;
use crate::scenario::names::Names;
use crate::scenario::problem::Problems;

/// Lowest logic supply the level oscillator runs with, V. Design choice.
const LOGIC_RUNS_V: f64 = 4.5;
/// Largest resistance an earth-bond tester shows, Ω. Common practice.
const BOND_LIMIT_OHM: f64 = 60.0;

/// A resistance put between two nodes by hand.
#[derive(Clone, Debug, PartialEq)]
pub struct Link {
    /// What it is called.
    pub name: String,
    /// Resistance, Ω.
    pub ohm: f64,
    /// Names of its nodes.
    pub ends: [String; 2],
}

impl Link {
    /// `OHM:A-B`; none when it is anything else.
    pub fn typed(word: &str) -> Option<Self> {
        let (ohm, ends) = word.split_once(':')?;
        let (a, b) = ends.split_once('-')?;
        let ohm = ohm.parse::<f64>().ok()?;
        (ohm > 0.0 && ohm.is_finite()).then(|| Self {
            name: "LINK".to_owned(),
            ohm,
            ends: [a.to_owned(), b.to_owned()],
        })
    }
}

/// How a machine is held.
#[derive(Clone, Debug)]
pub struct Hold {
    /// Its wiring.
    pub model: Arc<WiringModel>,
    /// Name of the state.
    pub state: String,
    /// Changes that faults make, each fault with its severity 0..1.
    pub faults: Vec<(Vec<WiringChange>, f64)>,
    /// The lid is open.
    pub is_lid_open: bool,
    /// Elements opened by hand.
    pub open: Vec<String>,
    /// Resistances put in by hand.
    pub links: Vec<Link>,
}

/// A machine held in a state and solved.
#[derive(Clone, Debug)]
pub struct Held {
    /// The harness.
    pub harness: Harness,
    /// Its solution.
    pub state: SteadyState,
    /// Contacts the state closes, whether or not a dark board lets them.
    pub closed: Contacts,
    /// Resistances put in by hand, by name.
    pub links: Vec<(String, ElementId)>,
}

/// What an instrument finds before its display rounds it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Found {
    /// Value in SI, V, Ω, F or A.
    pub value_si: f64,
    /// The instrument shows over-range.
    pub is_over_range: bool,
    /// A dead test was made on a live circuit.
    pub is_live: bool,
}

impl Found {
    fn plain(value_si: f64) -> Self {
        Self {
            value_si,
            is_over_range: false,
            is_live: false,
        }
    }

    /// What a hand meter in this mode displays.
    pub fn display(&self, mode: MeterMode) -> String {
        let value_si = (!self.is_over_range).then_some(self.value_si);
        display::digits(mode, value_si).1
    }
}

impl Hold {
    /// A sound machine in a state, lid shut.
    pub fn sound(model: &Arc<WiringModel>, state: &str) -> Self {
        Self {
            model: Arc::clone(model),
            state: state.to_owned(),
            faults: Vec::new(),
            is_lid_open: false,
            open: Vec::new(),
            links: Vec::new(),
        }
    }

    /// Names that the machine does not have; `problems` says where they were given.
    pub fn check(&self, problems: &mut Problems<'_>) {
        let states = self.model.states.iter().map(|s| s.name.as_str());
        Names::known("state of this machine", states).expect("state", &self.state, problems);
        elements(&self.model).expect_all("open", &self.open, problems);
        for link in &self.links {
            nodes(&self.model).expect_all("link", &link.ends, problems);
        }
    }

    /// The wiring as it is held, plugged as the state says.
    pub fn wiring(&self) -> Wiring {
        let mut wiring = Wiring::healthy(&self.model);
        for (changes, severity_ratio) in &self.faults {
            for change in changes {
                wiring.apply(change, *severity_ratio);
            }
        }
        for id in self.open.iter().filter_map(|name| self.model.element(name)) {
            wiring.open_by_hand(id, true);
        }
        for link in &self.links {
            if let Some(ends) = self.ends(link) {
                wiring.add_link(&link.name, ends, link.ohm);
            }
        }
        if let Some(state) = self.model.state(&self.state) {
            wiring.set_plugged(state.is_plugged);
        }
        wiring
    }

    fn ends(&self, link: &Link) -> Option<[NodeId; 2]> {
        let [a, b] = &link.ends;
        Some([self.model.node(a)?, self.model.node(b)?])
    }

    /// Contacts that the state closes, the lid as it is.
    pub fn closed(&self) -> Vec<ElementId> {
        let state = self.model.state(&self.state);
        let mut closed = state.map(|s| s.closed.clone()).unwrap_or_default();
        if self.is_lid_open {
            closed.retain(|contact| *contact != self.model.lid_contact);
        }
        closed
    }

    /// Holds and solves it. Names that [`Hold::check`] refuses are left out.
    ///
    /// # Errors
    /// When the network cannot be solved.
    pub fn solve(&self) -> Result<Held, SolveError> {
        let wiring = self.wiring();
        let extra = wiring.extra_links().len().saturating_sub(self.links.len());
        let first = wiring.first_extra() + extra;
        let id = |index: usize| ElementId((first + index) as u32);
        let links = self.links.iter().enumerate();
        let closed = self.closed();
        let harness = Harness::new(&wiring, &[])?;
        let contacts = harness.contacts(&closed);
        let load_n_m = self.model.state(&self.state).and_then(|s| s.load_n_m);
        let state = steady_state(&harness, &closed, load_n_m, COLD_K)?;
        Ok(Held {
            harness,
            state,
            closed: contacts,
            links: links.map(|(i, link)| (link.name.clone(), id(i))).collect(),
        })
    }

    /// As [`Hold::solve`], with an error that says which machine and state.
    ///
    /// # Errors
    /// When the network cannot be solved.
    pub fn solve_as(&self, machine: &str) -> Result<Held, Failure> {
        self.solve().map_err(|error| Failure::Solve {
            what: format!("machine {machine}, {}", self.state),
            error,
        })
    }
}

impl Held {
    /// The nodes of two names.
    pub fn pair(&self, red: &str, black: &str) -> Option<[NodeId; 2]> {
        let model = &self.harness.wiring().model;
        Some([model.node(red)?, model.node(black)?])
    }

    /// Magnitude of the current in a link or element, A.
    pub fn current_a(&self, name: &str) -> Option<f64> {
        let link = self.links.iter().rev().find(|(n, _)| n == name);
        let id = match link {
            Some((_, id)) => Some(*id),
            None => self.harness.wiring().model.element(name),
        };
        id.map(|id| self.state.ac.network.current_a(id).abs())
    }

    /// Current of line and neutral together: what went another way back, A.
    pub fn leakage_a(&self) -> f64 {
        let [line, neutral, _] = self.harness.wiring().model.supply.plug_contacts;
        let network = &self.state.ac.network;
        (network.current_a(line) + network.current_a(neutral)).abs()
    }

    /// Reads a two-lead instrument.
    ///
    /// # Errors
    /// When the network cannot be solved.
    pub fn read(
        &mut self,
        instrument: Instrument,
        [red, black]: [NodeId; 2],
    ) -> Result<Found, SolveError> {
        let reading = instrument::read(&self.harness, &self.state, instrument, red, black)?;
        Ok(Found {
            value_si: reading.value,
            is_over_range: reading.is_over_range,
            is_live: reading.is_live,
        })
    }

    /// Counts between two nodes, the tub empty.
    fn frequency(&mut self, [red, black]: [NodeId; 2]) -> Result<Found, SolveError> {
        let is_fed = self.state.regulated_v >= LOGIC_RUNS_V;
        let hz = level_frequency_hz(&self.harness, self.state.contacts, 0.0)?;
        let level_hz = (is_fed && hz > 0.0).then_some(hz);
        let found = frequency::read(&self.harness, &self.state, level_hz, red, black)?;
        Ok(Found {
            value_si: found.unwrap_or(0.0),
            is_over_range: found.is_none(),
            is_live: false,
        })
    }

    /// Reads an instrument of the bench put across two nodes, or round an element or the cord.
    ///
    /// # Errors
    /// When the network cannot be solved.
    pub fn measure(&mut self, mode: MeterMode, at: &At) -> Result<Found, SolveError> {
        let pair = match at {
            At::Nodes(pair) => *pair,
            At::Element(id) => {
                let current_a = self.state.ac.network.current_a(*id).abs();
                return Ok(Found::plain(current_a));
            }
            At::Cord => return Ok(Found::plain(self.leakage_a())),
        };
        if mode == MeterMode::Frequency {
            return self.frequency(pair);
        }
        let instrument = match mode {
            MeterMode::LowAcVolts => Instrument::AcVoltsLowImpedance,
            MeterMode::DcVolts => Instrument::DcVolts,
            MeterMode::Capacitance => Instrument::Capacitance,
            MeterMode::Diode => Instrument::Diode,
            MeterMode::TouchCurrent => Instrument::TouchCurrent,
            MeterMode::Amps => Instrument::Amps,
            MeterMode::Insulation => Instrument::Insulation,
            MeterMode::Ohms | MeterMode::Continuity | MeterMode::EarthBond => Instrument::Ohms,
            MeterMode::AcVolts | MeterMode::Frequency | MeterMode::Clamp | MeterMode::Leakage => {
                Instrument::AcVolts
            }
        };
        let mut found = self.read(instrument, pair)?;
        if mode == MeterMode::EarthBond {
            found.is_over_range |= found.value_si >= BOND_LIMIT_OHM;
        }
        Ok(found)
    }
}

/// Where an instrument is put.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum At {
    /// Red and black lead.
    Nodes([NodeId; 2]),
    /// Jaws round an element.
    Element(ElementId),
    /// Jaws round line and neutral of the cord.
    Cord,
}

/// Names of a machine's nodes.
pub fn nodes(model: &WiringModel) -> Names {
    Names::known(
        "node of this machine",
        model.nodes.iter().map(|n| n.name.as_str()),
    )
}

/// Names of a machine's elements.
pub fn elements(model: &WiringModel) -> Names {
    Names::known(
        "element of this machine",
        model.elements.iter().map(|e| e.name.as_str()),
    )
}
