//! Many results together: taken in and checked in threads, then people, jobs, safety, and each
//! person's work step by step.

mod aside;
mod decision;
mod desk;
mod drop;
mod erase_tab;
mod erasing;
mod half_typed;
mod hands;
mod job_page;
mod jobs;
mod kept_rulings;
mod known;
mod looks;
mod marks_picture;
mod message;
mod opened;
mod opened_page;
mod others;
mod pauses;
mod people;
mod person;
mod received;
mod replay;
mod rows;
mod ruling_store;
mod rulings;
mod save_tab;
mod saving;
mod shown;
mod skill_page;
mod source;
mod unread;
mod words;
mod written;

pub use desk::CohortScreen;
pub use received::ReceivedScreen;
pub use ruling_store::is_readable as is_ruling;
