//! Score and debrief of a finished job, as data. One of the two places that may read the truth.
//!
//! ```text
//! score = 100 (0.20 safety + 0.30 diagnosis + 0.15 economy + 0.15 procedure + 0.20 evidence)
//! ```
//! A critical safety finding caps the score at 39. Weights are a design choice for instructors to
//! adjust; every point is traceable to a step of the log. Chance never counts: marks go by what could
//! be known when a decision was made.

mod behaviour;
mod crowd;
mod debrief;
mod decisions;
mod diagnosis;
mod economy;
mod evidence;
mod fairness;
pub mod formula; // the marks as formulas
mod functional;
mod hindsight;
mod lost;
mod matrix;
mod matrix_columns;
mod matrix_csv;
mod procedure;
mod report;
mod safety;
mod twin; // the same log on a sound machine
mod visit;

pub use behaviour::Behaviour;
pub use behaviour::BehaviourLine;
pub use behaviour::behaviour;
pub use crowd::Crowd;
pub use crowd::Fared;
pub use crowd::Run;
pub use crowd::fared;
pub use debrief::Debrief;
pub use debrief::NoteView;
pub use debrief::StepView;
pub use debrief::debrief;
pub use decisions::standing;
pub use fairness::FairnessLine;
pub use fairness::Judge;
pub use fairness::solved;
pub use functional::FunctionCheck;
pub use functional::function_check;
pub use lost::Lost;
pub use lost::Why;
pub use matrix::Cell;
pub use matrix::Matrix;
pub use matrix::Row;
pub use matrix_columns::Column;
pub use report::Basis;
pub use report::Part;
pub use report::Report;
pub use report::assess;
pub use twin::Twin;
