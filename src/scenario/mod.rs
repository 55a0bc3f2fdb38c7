//! Scenario and machine files: their twin types, strict reading, checking, and conversion to the
//! plain types of the layers below.
//!
//! A file is read into its twin, which has the file's shape and units; the twin is checked whole;
//! only then is it converted. Nothing below this layer knows a file.

mod check_control; // control sections that can be
mod check_faults; // fault catalogues that can be and can be undone
mod check_job; // job files read and checked whole
mod check_machine; // machine files read and checked whole
mod check_set; // training sets read and checked whole
mod check_visit; // the visit section
mod check_workshop; // workshop sections that lead somewhere
pub mod control_file; // twin of the control section
pub mod edit; // one field of a job read and written by its path
pub mod effect_file; // twin of what an act changes besides its purpose
pub mod fault_file; // twin of the fault catalogue
pub mod job_file; // twin of a job file
pub mod machine_file; // twin of a machine file
pub mod names; // names defined and referred to
mod pack; // machines and jobs put together for the bench
pub mod problem; // what is wrong in a file, in words
pub mod read; // strict reading that reports every problem
pub mod roles_file; // twin of the roles section
#[cfg(not(target_arch = "wasm32"))]
mod schema; // JSON Schema from the twins
pub mod set_file; // twin of a training set
pub mod share; // a job as letters for a link, and a trainee's copy
mod shipped; // the files that ship
mod to_changes; // fault changes to plain types
mod to_control; // control twin to plain types
pub mod to_machine; // machine twin to plain types
mod to_roles; // roles twin to plain types
mod to_site; // the place to plain types
mod to_wiring; // wiring twin to plain types
mod to_workshop; // workshop twin to plain types
pub mod tree; // a JSON value as a source of types, with the path of what is refused
pub mod visit_file; // twin of a job's visit section
pub mod wiring_file; // twin of the wiring section
pub mod workshop_file; // twin of the workshop section
pub mod write; // files as a person would lay them out

pub use check_faults::check_catalogue_for;
pub use check_faults::made_good;
pub use check_faults::read_catalogue;
pub use check_job::check_job;
pub use check_job::read_job;
pub use check_machine::read_machine;
pub use pack::MachinePack;
pub use pack::job;
pub use pack::job_file_from_text;
pub use pack::job_from_text;
pub use pack::job_of;
pub use pack::job_with_machine;
pub use pack::jobs;
pub use pack::machine_from_text;
pub use pack::machine_with_faults;
pub use pack::machines;
pub use pack::parts_of;
pub use pack::set_from_text;
pub use problem::FileError;
pub use problem::Problem;
#[cfg(not(target_arch = "wasm32"))]
pub use schema::schema;
pub use shipped::ShippedJob;
pub use shipped::catalogue;
pub use shipped::job_files;
pub use shipped::machine_files;
pub use shipped::read_ahead;
pub use shipped::set_files;
pub use to_wiring::wiring_model;
