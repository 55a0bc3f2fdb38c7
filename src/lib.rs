//! Tubwright: a workshop for people who repair top-loading washing machines.
//!
//! The map, from the top down. Imports point downwards only; a test holds this.
//! Below `app` nobody reads a clock, a random source or a browser, and every number
//! comes out with the same bits natively and in WebAssembly.

pub mod app; // the screens; the only part that knows a browser
pub mod assess; // assessments: blueprints, variants, pass rules, refreshers
pub mod bench; // jobs: actions, access, instruments, clock and money, safety rules
#[cfg(not(target_arch = "wasm32"))]
pub mod cli; // the command line, native only
pub mod control; // state machine and cam timer; knows no plant
pub mod drawing; // pure functions: machine data and state to SVG
pub mod expert; // likely causes, next step, target cost; receives only what a technician could see
pub mod language; // what the program says, in the reader's language
pub mod machine; // one washing machine: wires plant and control, owns time, hashes its state
pub mod network; // nodal analysis; knows nothing of washers
pub mod plant; // physics, pure: harness and motor, water, air, belts, heat, swing, sound
pub mod records; // results that can be checked, and what they say together
pub mod scenario; // scenario and machine files: twins, checking, conversion
pub mod score; // marks and debrief of a finished job
pub mod units; // constants with source, conversions
