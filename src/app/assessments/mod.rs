//! Making an assessment: its jobs by skill and level, its rules, and a slip for each candidate.

pub mod given;
mod rules;
mod screen;
mod slips;
mod slots;
mod table;

pub use screen::MakeScreen;
