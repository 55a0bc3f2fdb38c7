//! The electric side of a machine in motion: which coils pull, what the control senses, what the
//! motor can give.
//!
//! A wash repeats a handful of contact sets, so what the sense inputs see is kept per set, as the
//! motor's tables are. A coil pulls from a share of
//! the current it draws in a sound machine at nominal supply:
//!
//! ```text
//! pulls in at 0.70 of that current, lets go below 0.40
//! ```
//! Source: from memory (solenoids and small synchronous motors). Limits: coils settle at once.

use std::sync::Arc;

use crate::machine::MachineError;
use crate::machine::StateHasher;
use crate::machine::charge::Circuit;
use crate::machine::felt;
use crate::machine::library::Library;
use crate::machine::library::Wired;
use crate::machine::roles::COILS;
use crate::machine::roles::RoleIds;
use crate::machine::roles::SenseIds;
use crate::machine::tables::rounded_k;
use crate::network::Contacts;
use crate::network::ElementId;
use crate::network::NodeId;
use crate::plant::harness::Harness;
use crate::plant::harness::Watch;
use crate::plant::harness::Wiring;
use crate::plant::harness::solving::Scratch;
use crate::plant::motor_table::MotorTable;

/// Share of the sound current from which a coil pulls.
const PULLS_IN_RATIO: f64 = 0.70;
/// Share below which it lets go.
const LETS_GO_RATIO: f64 = 0.40;

/// What the electric side gives for the machine's present contacts.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Live {
    /// Coils that pull.
    pub pulls: [bool; COILS],
    /// Supply at the plug pins, V.
    pub supply_v: f64,
    /// Output of the low-voltage regulator, V; 0 where there is none.
    pub regulated_v: f64,
    /// The control's lid input is at its closed level.
    pub lid_closed: bool,
    /// The control's own lever input is at its closed level.
    pub lever_closed: bool,
    /// Line current, A.
    pub line_a: f64,
    /// Current in the protective conductor, A.
    pub earth_a: f64,
    /// Voltage at the run capacitor, V.
    pub capacitor_v: f64,
    /// The motor is live.
    pub motor_on: bool,
}

impl Live {
    pub(super) fn hash_into(&self, hasher: &mut StateHasher) {
        for number in [
            self.supply_v,
            self.regulated_v,
            self.line_a,
            self.earth_a,
            self.capacitor_v,
        ] {
            hasher.number(number);
        }
        let flags = [self.lid_closed, self.lever_closed, self.motor_on];
        for flag in self.pulls.iter().chain(&flags) {
            hasher.word(u64::from(*flag));
        }
    }
}

/// What the sense inputs see for one contact set.
#[derive(Clone, Copy, Debug)]
struct Senses {
    lid_v: f64,
    lever_v: f64,
}

/// Watches after the harness's own line current, in this order.
const FIRST_COIL: usize = 1;
const EARTH: usize = FIRST_COIL + COILS;
const PLUG: usize = EARTH + 1;
const CAPACITOR: usize = PLUG + 1;
const SECONDARY: usize = CAPACITOR + 1;

/// What a sound machine of the type is like, the measure of this one.
#[derive(Clone, Debug)]
pub struct Sound {
    /// Coil currents, each with its own output closed, A.
    coil_a: [f64; COILS],
    /// Capacitors whose charge can be felt.
    capacitors: Arc<[ElementId]>,
}

/// The electric side.
#[derive(Clone, Debug)]
pub struct Electrics {
    wired: Wired,
    library: Library,
    roles: Arc<RoleIds>,
    sound: Arc<Sound>,
    senses: Vec<(Contacts, bool, Senses)>,
    /// Room for solving: the step of a machine takes no memory.
    scratch: Scratch,
}

fn watches(wiring: &Wiring, roles: &RoleIds) -> Vec<Watch> {
    let supply = &wiring.model.supply;
    let absent = Watch::Voltage(NodeId::EARTH, NodeId::EARTH);
    let mut list: Vec<Watch> = roles
        .coils
        .iter()
        .map(|coil| coil.map_or(absent, Watch::Current))
        .collect();
    list.push(Watch::Current(supply.earth_conductor));
    list.push(Watch::Voltage(supply.plug_pins[0], supply.plug_pins[1]));
    list.push(Watch::Voltage(
        roles.run_capacitor[0],
        roles.run_capacitor[1],
    ));
    list.push(match &wiring.model.low_voltage {
        Some(low) => Watch::Voltage(low.secondary[0], low.secondary[1]),
        None => absent,
    });
    list
}

impl Electrics {
    /// The electric side of a wiring; `sound` is the same type of machine without faults.
    ///
    /// # Errors
    /// When a wiring cannot be solved.
    pub fn new(
        wiring: &Wiring,
        sound: Arc<Sound>,
        roles: &Arc<RoleIds>,
    ) -> Result<Self, MachineError> {
        let harness = Harness::new(wiring, &watches(wiring, roles))?;
        let (wired, library) = (Wired::new(harness), Library::default());
        library.keep(&wired);
        Ok(Self {
            wired,
            library,
            roles: Arc::clone(roles),
            sound,
            senses: Vec::new(),
            scratch: Scratch::default(),
        })
    }

    /// What a sound machine is like.
    ///
    /// # Errors
    /// When the wiring cannot be solved.
    pub fn sound(wiring: &Wiring, roles: &Arc<RoleIds>) -> Result<Sound, MachineError> {
        let harness = Harness::new(wiring, &watches(wiring, roles))?;
        let mut coil_a = [0.0; COILS];
        let mut scratch = Scratch::default();
        for (coil, current) in coil_a.iter_mut().enumerate() {
            let contacts = harness.contacts(&roles.closed_for_coil[coil]);
            let reduced = harness.reduced(contacts)?;
            harness.flow(&reduced, 1.0, WARM_K, &mut scratch)?;
            *current = harness.watched(&reduced, FIRST_COIL + coil, &scratch).abs();
        }
        Ok(Sound {
            coil_a,
            capacitors: felt::felt_capacitors(&harness)?.into(),
        })
    }

    /// Takes over a changed wiring.
    ///
    /// # Errors
    /// When it cannot be solved.
    pub fn rewire(&mut self, wiring: &Wiring) -> Result<(), MachineError> {
        self.senses.clear();
        if let Some(known) = self.library.find(wiring) {
            self.wired = known;
            return Ok(());
        }
        let mut harness = self.wired.harness.clone();
        harness.rewire(wiring)?;
        self.wired = Wired::new(harness);
        self.library.keep(&self.wired);
        Ok(())
    }

    /// The harness, for instruments.
    pub fn harness(&self) -> &Harness {
        &self.wired.harness
    }

    /// The wiring as it is run now.
    pub fn circuit(&self, contacts: Contacts) -> Circuit {
        Circuit {
            harness: self.wired.harness.clone(),
            contacts,
            capacitors: Arc::clone(&self.sound.capacitors),
        }
    }

    /// Slowest decay of any charge that can be felt, s; kept per contact set.
    ///
    /// # Errors
    /// When the wiring cannot be solved.
    pub fn slowest_s(&self, contacts: Contacts) -> Result<f64, MachineError> {
        let kept_s = self.wired.slowest_s().get(&contacts);
        if let Some(kept_s) = kept_s {
            return Ok(kept_s);
        }
        let harness = &self.wired.harness;
        let slowest_s = felt::slowest_s(harness, contacts, &self.sound.capacitors)?;
        self.wired.slowest_s().put(contacts, slowest_s);
        Ok(slowest_s)
    }

    /// What the electric side gives: contacts, rotor speed, winding temperatures, what pulled before.
    ///
    /// # Errors
    /// When the wiring cannot be solved.
    pub fn live(
        &mut self,
        contacts: Contacts,
        rotor_rad_per_s: f64,
        windings_k: [f64; 2],
        before: &Live,
    ) -> Result<Live, MachineError> {
        let harness = self.wired.harness.clone();
        let model = Arc::clone(&harness.wiring().model);
        let slip = model
            .motor
            .params
            .slip_ratio(rotor_rad_per_s, model.frequency_hz);
        let reduced = harness.reduced(contacts)?;
        harness.flow(&reduced, slip, rounded_k(windings_k), &mut self.scratch)?;
        let watched = |watch| harness.watched(&reduced, watch, &self.scratch).abs();
        let mut live = Live {
            supply_v: watched(PLUG),
            earth_a: watched(EARTH),
            line_a: watched(0),
            capacitor_v: watched(CAPACITOR),
            ..*before
        };
        for coil in 0..COILS {
            let share = watched(FIRST_COIL + coil) / self.sound.coil_a[coil].max(1e-9);
            let threshold = if before.pulls[coil] {
                LETS_GO_RATIO
            } else {
                PULLS_IN_RATIO
            };
            live.pulls[coil] = self.sound.coil_a[coil] > 1e-6 && share >= threshold;
        }
        live.regulated_v = match &model.low_voltage {
            Some(low) if !harness.wiring().is_regulator_dead => low.regulated_v(watched(SECONDARY)),
            _ => 0.0,
        };
        let senses = self.senses(contacts, live.regulated_v)?;
        let roles = Arc::clone(&self.roles);
        live.lid_closed = sensed(roles.lid_sense.as_ref(), senses.lid_v, before.lid_closed);
        live.lever_closed = sensed(
            roles.lever_sense.as_ref(),
            senses.lever_v,
            before.lever_closed,
        );
        live.motor_on = self.table(contacts, windings_k)?.is_some();
        Ok(live)
    }

    /// The motor against signed rotor speed for these contacts; none when it is not live.
    ///
    /// # Errors
    /// When the wiring cannot be solved.
    pub fn table(
        &self,
        contacts: Contacts,
        windings_k: [f64; 2],
    ) -> Result<Option<Arc<MotorTable>>, MachineError> {
        self.wired
            .tables
            .at(&self.wired.harness, contacts, windings_k)
    }

    /// What the sense inputs see; kept per contact set and whether the regulator gives anything.
    fn senses(&mut self, contacts: Contacts, regulated_v: f64) -> Result<Senses, MachineError> {
        let is_fed = regulated_v > 4.5;
        let same = |(set, fed, _): &(Contacts, bool, _)| *set == contacts && *fed == is_fed;
        if is_fed && let Some(at) = self.senses.iter().position(same) {
            return Ok(self.senses[at].2);
        }
        let roles = Arc::clone(&self.roles);
        let senses = Senses {
            lid_v: self.sense_v(roles.lid_sense.as_ref(), contacts, regulated_v)?,
            lever_v: self.sense_v(roles.lever_sense.as_ref(), contacts, regulated_v)?,
        };
        if is_fed {
            self.senses.push((contacts, is_fed, senses));
        }
        Ok(senses)
    }

    fn sense_v(
        &self,
        sense: Option<&SenseIds>,
        contacts: Contacts,
        regulated_v: f64,
    ) -> Result<f64, MachineError> {
        let Some(sense) = sense else { return Ok(0.0) };
        if sense.is_ac {
            let point = self.wired.harness.solve_ac(contacts, 1.0, WARM_K)?;
            return Ok(point
                .network
                .between_v(sense.nodes[0], sense.nodes[1])
                .abs());
        }
        let point = self.wired.harness.solve_dc(contacts, regulated_v, WARM_K)?;
        Ok(point.between_v(sense.nodes[0], sense.nodes[1]))
    }
}

/// Windings of a machine at room temperature, K.
const WARM_K: [f64; 2] = [293.15, 293.15];

fn sensed(sense: Option<&SenseIds>, voltage_v: f64, before: bool) -> bool {
    match sense {
        Some(s) if voltage_v >= s.closed_above_v => true,
        Some(s) if voltage_v <= s.open_below_v => false,
        Some(_) => before,
        None => true,
    }
}
