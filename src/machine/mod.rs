//! One washing machine: wires plant and control, owns simulated time, answers test points.

mod pose;

pub use pose::Pose;
