//! The expert: what the evidence says about the causes, and the best way to go on.
//!
//! Receives what a technician could see, never the faults.

pub mod theory; // decision theory, pure and generic
