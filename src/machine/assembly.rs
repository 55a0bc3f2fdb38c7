//! Putting a machine together, and together again: from its model, its set-up and the faults that
//! are there now to wiring, plant and control.
//!
//! A fault that comes and goes, a hand at plug or tap, an opened protector all end here: the wiring
//! is built anew from the sound one, never patched. What goes on in time (plant state, the
//! control's program) is carried over; only a control whose own faults changed starts afresh.

use std::sync::Arc;

use crate::control::Control;
use crate::control::cam_timer::CamTimer;
use crate::control::controller::Controller;
use crate::control::display::Display;
use crate::control::display::Message;
use crate::control::io::Loads;
use crate::control::io::Outputs;
use crate::control::settings::Settings;
use crate::machine::ActiveFault;
use crate::machine::ControlKind;
use crate::machine::FaultDef;
use crate::machine::Hands;
use crate::machine::Live;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::MachineModel;
use crate::machine::Milestones;
use crate::machine::Moment;
use crate::machine::Onset;
use crate::machine::Setup;
use crate::machine::build;
use crate::machine::build::PanelFaults;
use crate::machine::charge::ChargeHistory;
use crate::machine::contacts::Masks;
use crate::machine::electrics::Electrics;
use crate::machine::oscillator::Oscillator;
use crate::machine::roles::RoleIds;
use crate::machine::running::SOLVE_TICKS;
use crate::network::Contacts;
use crate::plant::Plant;
use crate::plant::harness::Wiring;

/// Name of the wire bridge a hand puts across the lid switch.
pub(super) const LID_BRIDGE: &str = "lid bridge";
/// A short test lead with two clips, Ω. Common practice.
const LID_BRIDGE_OHM: f64 = 0.02;

impl Machine {
    /// An empty machine in a home: plugged in, switched off, lid shut, tap open.
    ///
    /// # Errors
    /// When the set-up names what the machine does not have, or its wiring cannot be solved.
    pub fn new(model: &Arc<MachineModel>, setup: Setup) -> Result<Self, MachineError> {
        let shared = Arc::new(model.wiring.clone());
        let roles = Arc::new(RoleIds::of(model)?);
        let is_on: Vec<bool> = build::parts(model, &setup)?
            .iter()
            .map(|(f, d)| is_constant(f, d))
            .collect();
        let sound = Wiring::healthy(&shared);
        let sound = Arc::new(Electrics::sound(&sound, &roles)?);
        let wiring = build::wiring(model, &shared, &setup, &is_on)?;
        let params = build::params(model, &setup, &is_on, &wiring)?;
        let electrics = Electrics::new(&wiring, sound, &roles)?;
        let panel = build::panel(model, &setup, &is_on)?;
        let masks = Masks::of(&roles, electrics.harness());
        let oscillator = Oscillator::of(&electrics, &shared)?;
        let mut machine = Self {
            control: new_control(&model.control, panel),
            panel,
            plant: Plant::new(params),
            model: Arc::clone(model),
            shared,
            roles,
            masks,
            setup,
            is_on,
            is_varying: true,
            tick: 0,
            hands: Hands {
                level_position: usual_level(model),
                ..Hands::AT_HOME
            },
            key_ticks: 0,
            electrics,
            oscillator,
            outputs: Outputs {
                loads: Loads::default(),
                contacts: 0,
                display: Display::of(Message::Dark),
            },
            contacts: Contacts::default(),
            live: Live::default(),
            table: None,
            is_stale: true,
            is_protector_open: false,
            hand_stroke_m: 0.0,
            milestones: Milestones::default(),
            lid_open_ticks: 0,
            residual_limit_a: f64::INFINITY,
            is_tripped: false,
            charge: ChargeHistory::default(),
            solve_ticks: SOLVE_TICKS,
            slowest_s: f64::INFINITY,
            surge_a: Vec::new(),
            trouble: None,
        };
        machine.review_onsets()?;
        Ok(machine)
    }

    /// Changes how the machine is put together. Trouble in solving it stops the electric side and
    /// is kept in `trouble`.
    pub fn refit(&mut self, setup: Setup) {
        self.setup = setup;
        self.milestones = Milestones::default();
        let result = self.review_onsets().and_then(|()| self.rebuild());
        self.keep(result);
    }

    /// Which faults are there now; rebuilds when one came or went.
    pub(super) fn review_onsets(&mut self) -> Result<(), MachineError> {
        let heat = &self.plant.state().heat;
        let now = Moment {
            time_s: self.tick as f64 / 10.0,
            winding_k: heat.winding_k[0].max(heat.winding_k[1]),
            basket_rad_per_s: self.plant.state().drive.basket_rad_per_s,
        };
        let parts = build::parts(&self.model, &self.setup)?;
        self.is_varying = parts.iter().any(|(f, d)| !is_constant(f, d));
        let is_on: Vec<bool> = parts
            .iter()
            .enumerate()
            .map(|(i, (active, def))| {
                active
                    .onset
                    .unwrap_or(def.onset)
                    .is_on(now, self.setup.seed, i as u64)
            })
            .collect();
        if is_on != self.is_on {
            self.is_on = is_on;
            self.rebuild()?;
        }
        Ok(())
    }

    pub(super) fn rebuild(&mut self) -> Result<(), MachineError> {
        let mut wiring = build::wiring(&self.model, &self.shared, &self.setup, &self.is_on)?;
        let mut params = build::params(&self.model, &self.setup, &self.is_on, &wiring)?;
        if !self.hands.tap_open || !self.hands.hose_attached {
            params.inlet.tap_closed_ratio = 1.0;
        }
        wiring.set_plugged(self.hands.plugged);
        if self.is_tripped || self.hands.house_off {
            wiring.set_value(self.shared.supply.source, 0.0);
        }
        if self.hands.lid_bridged {
            let across = self.shared.elements[self.roles.lid_switch.index()].nodes;
            wiring.add_link(LID_BRIDGE, across, LID_BRIDGE_OHM);
        }
        if self.is_protector_open {
            wiring.open_by_hand(self.roles.protector, true);
        }
        // What was solved for a wiring serves on where only the plant has changed.
        if !wiring.is_same(self.electrics.harness().wiring()) {
            self.leave_circuit()?;
            self.slowest_s = f64::INFINITY;
            self.electrics.rewire(&wiring)?;
            self.oscillator = Oscillator::of(&self.electrics, &self.shared)?;
            self.is_stale = true;
        }
        if params != *self.plant.params() {
            self.plant.set_params(params);
        }
        let panel = build::panel(&self.model, &self.setup, &self.is_on)?;
        if panel != self.panel {
            self.panel = panel;
            self.control = new_control(&self.model.control, panel);
        }
        Ok(())
    }

    /// Puts a dry load in the basket and lets the machine take the room's temperature.
    pub(super) fn set_load(&mut self, params: Vec<(String, f64)>) {
        self.setup.params.extend(params);
        let result = self.rebuild();
        self.keep(result);
        self.plant.cool_down();
    }
}

fn is_constant(active: &ActiveFault, def: &FaultDef) -> bool {
    active.onset.unwrap_or(def.onset) == Onset::Constant
}

/// Where the level knob usually stands.
fn usual_level(model: &MachineModel) -> u32 {
    let switch = model.roles.level_switch.as_ref();
    switch.map_or(0, |level| level.usual)
}

fn new_control(kind: &ControlKind, panel: PanelFaults) -> Control {
    match kind {
        ControlKind::Electronic(model) => {
            let settings = Settings {
                keys_locked: panel.keys_locked,
                delay_min: panel.delay_min,
                ..Settings::fresh(model)
            };
            Control::Electronic(Controller::new(Arc::clone(model), settings))
        }
        ControlKind::Timer(model) => Control::Timer(CamTimer::new(Arc::clone(model))),
    }
}
