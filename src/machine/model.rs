//! A type of machine as plain data: wiring, physics, control, catalogue of faults, and which
//! element of the wiring plays which role.

use std::sync::Arc;

use crate::control::cam_timer::CamTimerModel;
use crate::control::model::ControlModel;
use crate::machine::FaultDef;
use crate::plant::harness::WiringModel;
use crate::plant::params::PlantParams;

/// A type of machine. Constant; shared by all machines of the type.
#[derive(Clone, Debug)]
pub struct MachineModel {
    /// Short name, such as `P`.
    pub id: String,
    /// Name on screens.
    pub name: String,
    /// Harness, motor and instruments' view of it.
    pub wiring: WiringModel,
    /// Nominal plant parameters.
    pub plant: PlantParams,
    /// The control.
    pub control: ControlKind,
    /// Who is who in the wiring.
    pub roles: Roles,
    /// All faults the machine can have.
    pub faults: Vec<FaultDef>,
}

/// What controls the machine.
#[derive(Clone, Debug)]
pub enum ControlKind {
    /// A board with a program.
    Electronic(Arc<ControlModel>),
    /// A cam timer.
    Timer(Arc<CamTimerModel>),
}

/// Names of elements and nodes by the role they play.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Roles {
    /// The mechanical on/off switch; none where the board is always live.
    pub power_switch: Option<String>,
    /// Contact of the lid switch.
    pub lid_switch: String,
    /// Contact of the out-of-balance switch.
    pub lever_switch: String,
    /// Thermal protector in the motor's common lead.
    pub protector: String,
    /// Contacts each output closes.
    pub outputs: OutputContacts,
    /// Contacts of a multi-contact pressure switch; none where a board reads a sensor.
    pub level_switch: Option<LevelSwitchContacts>,
    /// Elements whose current drives something.
    pub coils: Coils,
    /// How the control senses the lid.
    pub lid_sense: Option<SenseInput>,
    /// How the control senses the out-of-balance switch where it has an input of its own.
    pub lever_sense: Option<SenseInput>,
    /// Plug pins: line, neutral, earth.
    pub plug_pins: [String; 3],
    /// Socket: line, neutral, earth.
    pub socket: [String; 3],
    /// Cabinet metal.
    pub cabinet: String,
    /// Run capacitor terminals.
    pub run_capacitor: (String, String),
}

/// Which contacts each output closes.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct OutputContacts {
    /// Motor in the spin direction.
    pub motor_forward: Vec<String>,
    /// Motor in the other direction.
    pub motor_reverse: Vec<String>,
    /// Inlet valve, cold.
    pub inlet_valve: Vec<String>,
    /// Inlet valve, hot.
    pub hot_valve: Vec<String>,
    /// Drain motor, or clutch motor where a pump drains.
    pub drain_motor: Vec<String>,
    /// Drain pump.
    pub drain_pump: Vec<String>,
    /// Contacts of a cam timer by number; empty for a board.
    pub timer: Vec<String>,
}

/// Contacts of a pressure switch and of the knob that chooses between its sections.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LevelSwitchContacts {
    /// Changeovers.
    pub sections: Vec<LevelSection>,
    /// Positions of the level knob: name, contacts it closes; empty where there is no knob.
    pub knob: Vec<(String, Vec<String>)>,
    /// Where the knob usually stands, by index.
    pub usual: u32,
}

/// One changeover of a pressure switch.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LevelSection {
    /// Which of the switch's set pressures moves it: low 0, medium 1, high 2.
    pub set_index: usize,
    /// Closed below it.
    pub empty: Vec<String>,
    /// Closed above it.
    pub full: Vec<String>,
}

/// Elements whose current drives something mechanical.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Coils {
    /// Inlet valve, cold.
    pub inlet_valve: String,
    /// Inlet valve, hot.
    pub hot_valve: Option<String>,
    /// Drain motor.
    pub drain_motor: String,
    /// Drain pump.
    pub drain_pump: Option<String>,
    /// Timer motor.
    pub timer_motor: Option<String>,
}

/// A sense input of the control: closed above one voltage, open below another, as it was between.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SenseInput {
    /// Node measured.
    pub node: String,
    /// Against this node.
    pub against: String,
    /// Mains-frequency input; else DC.
    pub is_ac: bool,
    /// Closed above this, V.
    pub closed_above_v: f64,
    /// Open below this, V.
    pub open_below_v: f64,
}

impl MachineModel {
    /// The catalogue entry with this name or reference number.
    pub fn fault(&self, id: &str) -> Option<&FaultDef> {
        self.faults
            .iter()
            .find(|f| f.id == id || f.reference.eq_ignore_ascii_case(id))
    }
}
