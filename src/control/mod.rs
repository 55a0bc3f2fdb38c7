//! Controls of washing machines: an electronic state machine, a cam timer.
//!
//! A control sees its inputs and switches its outputs; it knows no plant and no network.
//! Everything that differs between machines is data ([`model::ControlModel`],
//! [`cam_timer::CamTimerModel`]); a fault of a control edits that data and nothing else.

pub mod alarms; // alarms and warnings in plain words
pub mod cam_timer; // dial, knob and cams
mod contact; // debounce in whole ticks
pub mod controller; // the electronic control
pub mod display; // what the panel shows
mod exits; // guards and targets of the state table
mod interlock; // what must never be switched
pub mod io; // inputs and outputs
pub mod level_switch; // pressure switch with hysteresis
mod loads; // loads and panel of the present state
pub mod model; // thresholds, times, service test as data
pub mod programs; // wash programs as data
pub mod service; // the service test
mod service_run; // where it stands
pub mod settings; // what a person sets on the panel
pub mod states; // states, guards, targets
pub mod table; // the state table
#[cfg(test)]
mod tests; // whole programs against a stub tub
pub mod typical; // two typical electronic controls
pub mod typical_timer; // a typical cam timer

use crate::control::cam_timer::CamTimer;
use crate::control::controller::Controller;
use crate::control::io::Inputs;
use crate::control::io::Outputs;

/// The control of a machine.
#[derive(Clone, Debug, PartialEq)]
pub enum Control {
    /// A board with a program.
    Electronic(Controller),
    /// A cam timer.
    Timer(CamTimer),
}

impl Control {
    /// Advances by one tick of 0.1 s.
    pub fn tick(&mut self, inputs: &Inputs) -> Outputs {
        match self {
            Control::Electronic(controller) => controller.tick(inputs),
            Control::Timer(timer) => timer.tick(inputs),
        }
    }

    /// What it gives in every tick as long as the inputs stay; none when it does something by itself.
    pub fn at_rest(&self, inputs: &Inputs) -> Option<Outputs> {
        match self {
            Control::Electronic(_) => Controller::at_rest(inputs),
            Control::Timer(timer) => timer.at_rest(inputs),
        }
    }

    /// So many ticks at rest, see [`Control::at_rest`]; the same bits as each by itself.
    pub fn rest(&mut self, ticks: u32) {
        match self {
            Control::Electronic(controller) => controller.rest(ticks),
            Control::Timer(_) => {}
        }
    }

    /// Hands every bit of state to `sink`, in a fixed order.
    pub fn hash_into(&self, sink: &mut impl FnMut(u64)) {
        match self {
            Control::Electronic(controller) => controller.hash_into(sink),
            Control::Timer(timer) => timer.hash_into(sink),
        }
    }
}
