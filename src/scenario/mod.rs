//! Scenario and machine files: their twin types, strict reading, checking, and conversion to the
//! plain types of the layers below.
//!
//! A file is read into its twin, which has the file's shape and units; the twin is checked whole;
//! only then is it converted. Nothing below this layer knows a file.

pub mod fault_file; // twin of the fault catalogue, and its changes as the harness knows them
pub mod problem; // what is wrong in a file, in words
mod to_wiring; // wiring twin to plain types
pub mod wiring_file; // twin of the wiring section

pub use problem::FileError;
pub use problem::Problem;
pub use to_wiring::wiring_model;
