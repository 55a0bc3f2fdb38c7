//! One washing machine: wires plant and control, owns simulated time, answers test points, hashes
//! its state.

mod assembly;
mod build;
mod charge;
mod contacts;
mod electrics;
mod fault;
mod felt; // charge that can be felt
mod hands;
mod hash;
mod instruments;
mod joints; // bad contacts, stray paths
mod library; // wirings met before
mod milestones;
mod model;
mod oscillator;
mod panel;
mod pose;
mod roles;
mod running;
mod setup;
mod spread;
mod stress; // what a contact carries at its worst
mod tables;
mod trial;
mod views;
mod water; // water by hand and on the floor

use thiserror::Error;

pub use charge::Stored;
pub use electrics::Live;
pub use fault::ActiveFault;
pub use fault::FaultClass;
pub use fault::FaultDef;
pub use fault::Moment;
pub use fault::Onset;
pub use fault::draw_ratio;
pub use hands::Hands;
pub use hash::StateHash;
pub use hash::StateHasher;
pub use instruments::Measured;
pub use instruments::Probe;
pub use instruments::TouchSource;
pub use milestones::Milestones;
pub use model::Coils;
pub use model::ControlKind;
pub use model::LevelSection;
pub use model::LevelSwitchContacts;
pub use model::MachineModel;
pub use model::OutputContacts;
pub use model::Roles;
pub use model::SenseInput;
pub use panel::UNPLUGGED;
pub use pose::Pose;
pub use roles::Coil;
pub use running::Machine;
pub use setup::Setup;
pub use setup::Target;
pub use trial::CycleFigures;

use crate::network::SolveError;
use crate::plant::motor_table::MotorTableError;
use crate::plant::params::ParamError;

/// Why a machine cannot be put together or solved.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum MachineError {
    /// The catalogue has no such fault.
    #[error("machine {machine} has no fault \"{name}\": see the list of faults of this machine")]
    UnknownFault {
        /// Machine.
        machine: String,
        /// Name given.
        name: String,
    },
    /// The wiring has no such element.
    #[error("the wiring has no element \"{name}\"")]
    UnknownElement {
        /// Name given.
        name: String,
    },
    /// The wiring has no such node.
    #[error("the wiring has no test point \"{name}\"")]
    UnknownNode {
        /// Name given.
        name: String,
    },
    /// The wiring has no such state.
    #[error("the wiring has no state \"{name}\"")]
    UnknownState {
        /// Name given.
        name: String,
    },
    /// The control has no such parameter.
    #[error("the control has no parameter \"{name}\"")]
    UnknownControl {
        /// Name given.
        name: String,
    },
    /// A parameter is unknown or out of range.
    #[error(transparent)]
    Param(#[from] ParamError),
    /// The network cannot be solved.
    #[error(transparent)]
    Solve(#[from] SolveError),
    /// The motor gave no usable table.
    #[error(transparent)]
    Motor(#[from] MotorTableError),
}
