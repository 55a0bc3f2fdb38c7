//! Assessments: what is drawn from the library for whom, what passes, and what is due again.

pub mod memory; // how long a skill lasts without practice
