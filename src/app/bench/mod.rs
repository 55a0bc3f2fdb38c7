//! The bench: everything a technician sees and touches while working on a job.

pub mod contexts;
pub mod keys;
pub mod picture;
pub mod screen;

mod aloud;
mod arrows;
mod causes;
mod drawer;
mod estimate;
mod gauge_face;
mod gauges;
mod help;
mod instrument;
mod job_bar;
mod job_card;
mod moving;
mod notebook;
mod notice;
mod papers;
mod point_picker;
mod recorder;
mod roving;
mod safe_strip;
mod selection_bar;
mod suspects;
mod tabs;
mod tests_list;
mod time_bar;
mod visit;
mod zoom;

pub use causes::cause_groups;
pub use notebook::Notebook;
pub use notice::Notice;
pub use tabs::Tabs;
