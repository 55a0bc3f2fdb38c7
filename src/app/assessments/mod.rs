//! Making an assessment: its jobs by skill and level, its rules, a slip for each candidate, and a course
//! for a training system.

mod course;
pub mod given;
mod packing;
mod room_codes;
mod rules;
mod screen;
mod slips;
mod slots;
mod table;

pub use screen::MakeScreen;
