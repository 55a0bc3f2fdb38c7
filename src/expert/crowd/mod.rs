//! Simulated apprentices: five kinds, each with habits, play jobs through the same acts as a person.
//!
//! They tell before any apprentice has tried how hard a job is and what it costs. A kind is what it
//! likes to do and what it leaves out; nothing here knows what is wrong. Habits are design choices:
//! the differences between kinds matter, not their size.

mod almanac; // what can be known of a job's machine before it is touched
mod apprentice; // one of them at work
mod habits; // what each kind likes to do
mod likeness; // whether a run was like a sound machine's
#[cfg(test)]
mod working; // what each kind does before its first repair

pub use almanac::Almanac;
pub use apprentice::work;
pub use habits::Kind;
