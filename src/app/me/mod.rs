//! Me: one's own skills over time, jobs done, safety, what comes next, and all data in one file.

pub mod everything;
pub mod history;
mod next;
mod screen;
mod skills;
pub mod sure;

pub use everything::EVERYTHING_FORMAT;
pub use screen::MeScreen;
