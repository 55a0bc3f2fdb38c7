//! Assessments: what is drawn from the library for whom, what passes, and what is due again.

pub mod assessment_file; // the file: jobs, variants, aids, pass rules
pub mod calendar; // refreshers as a calendar file
pub mod date; // days and moments
pub mod decide; // passed, not yet, or on the border
pub mod draw; // one candidate's jobs and their variants
pub mod letters; // texts in links and small memories
pub mod memory; // how long a skill lasts without practice
pub mod pause_code; // a code as it is read out and typed
pub mod refresher; // what is due again
pub mod retention; // when results are to be erased
