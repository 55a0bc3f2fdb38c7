//! Results: what a job came to as a record that can be checked, and what records say together.

pub mod measurement; // statistics of people and jobs, pure
