//! Sitting an assessment: the start, the jobs in between, handing in, and what came of it.

mod form;
mod jobs;
mod limits;
mod lock;
mod mark_sheet;
mod observer;
mod overview;
mod result;
mod room;
mod room_pause;
pub mod running;
mod start;
pub mod state;
mod watch;
mod worth;

pub use jobs::all_kept;
pub use jobs::assessment;
pub use jobs::find;
pub use jobs::forget_all;
pub use jobs::is_sitting;
pub use jobs::library;
pub use jobs::progress;
pub use limits::allows;
pub use limits::limit;
pub use limits::time_left;
pub use lock::Lock;
pub use lock::lock;
pub use observer::ObserverScreen;
pub use overview::SittingScreen;
pub use running::at_the_end;
pub use start::AssessmentScreen;
pub use watch::Watch;
