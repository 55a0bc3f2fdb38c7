//! The debrief: the job explained step by step, with what was wrong and how it showed.

mod asked;
mod expert;
mod likely;
mod marks;
mod moments;
mod screen;
mod settle;
mod step;
mod track;

pub use screen::DebriefScreen;
