//! The expert: which causes are likely after each step, what to do next, what a job should cost.
//!
//! It receives [`Seen`]: the log, what was displayed, looked at and answered, and the scenario
//! without its faults. The simulator is its own likelihood: the log runs beside on one machine a
//! cause, and what was seen is weighed against what that machine would have shown.

mod belief; // probabilities of the causes after each step
mod cause; // what could explain a job
pub mod remedy; // what puts a fault right
mod seen; // all the expert is told
mod symptom; // what a customer can notice, and what a machine with a fault would show
pub mod table; // symptoms of each fault, shipped
pub mod theory; // decision theory, pure and generic
mod told; // a customer's words read as symptoms
mod twin; // one cause's machine, running beside
mod weigh; // how well what was seen fits what a machine would have shown

pub use belief::Belief;
pub use belief::Evidence;
pub use cause::Cause;
pub use cause::causes;
pub use seen::Seen;
pub use seen::Step;
pub use symptom::Symptom;
pub use symptom::Symptoms;
pub use told::Told;
