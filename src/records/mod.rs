//! Results: what a job came to as a record that can be checked, and what records say together.

pub mod as_written; // a record to be read, not worked out
pub mod chain; // a candidate's records in a row
pub mod check; // a record replayed and compared
pub mod cohort; // what records say together
pub mod course; // packages for training systems
pub mod library; // jobs to replay records on
pub mod manifest; // course files for training systems
mod markup; // XML as text
pub mod measurement; // statistics of people and jobs, pure
pub mod practice; // finished jobs of practice, and how well each skill is known
pub mod reasons; // why a part of the marks is below full
pub mod record; // the file
pub mod result; // what a job came to, in numbers
pub mod room_pause; // codes that stop the clock of a whole room
pub mod rulings; // jobs voided, decisions overridden
#[cfg(not(target_arch = "wasm32"))]
mod schema; // JSON Schema from the types
pub mod seal; // hashes and seals
pub mod sift; // a file of records taken in
pub mod sitting; // one candidate's jobs in an assessment
pub mod slip; // a record as a QR code
pub mod table; // tables as CSV
pub mod unzip; // files out of an archive
pub mod xapi; // statements for stores of learning records
pub mod zip; // files into an archive

#[cfg(not(target_arch = "wasm32"))]
pub use schema::schema;
