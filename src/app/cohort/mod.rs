//! Many results together: taken in and checked in threads, then people, jobs, safety, and each
//! person's work step by step.

mod aside;
mod decision;
mod desk;
mod drop;
mod hands;
mod job_page;
mod jobs;
mod kept_rulings;
mod marks_picture;
mod opened;
mod others;
mod people;
mod person;
mod received;
mod replay;
mod rows;
mod rulings;
mod saving;
mod shown;
mod skill_page;
mod source;
mod words;
mod written;

pub use desk::CohortScreen;
pub use received::ReceivedScreen;
