//! The harness: a machine's wiring as a network, with its motor, faults and instruments.
//!
//! `model` is what a machine file holds, `change` the fault language, `wiring` the machine
//! as it is now. [`Harness`] solves it: AC at any contact set, slip and winding temperature;
//! DC; the motor against speed with the supply sagging as it does; what instruments
//! read; how charge decays after the plug is pulled.
//! Limits: steady phasors, linear elements, no half-wave conduction.

pub mod change;
pub mod coils;
pub mod discharge;
mod factored;
pub mod frequency;
pub mod instrument;
pub mod level;
pub mod model;
pub mod motor;
pub mod motor_port;
pub mod point;
pub mod sensitivity;
pub mod solving;
pub mod steady_state;
mod store; // what was solved for a wiring
pub mod table;
pub mod watch;
pub mod wiring;

pub use change::WiringChange;
pub use discharge::Charge;
pub use instrument::Instrument;
pub use instrument::Reading;
pub use model::WiringModel;
pub use motor::COLD_K;
pub use motor::MotorParams;
pub use motor::WindingsK;
pub use motor_port::MotorFlow;
pub use point::AcPoint;
pub use point::Point;
pub use solving::Harness;
pub use steady_state::SteadyState;
pub use store::Kept;
pub use watch::Watch;
pub use wiring::Wiring;
