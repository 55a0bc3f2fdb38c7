//! The debrief: the job explained step by step, with what was wrong and how it showed.

mod asked;
mod likely;
mod marks;
mod screen;
mod step;
mod track;

pub use screen::DebriefScreen;
