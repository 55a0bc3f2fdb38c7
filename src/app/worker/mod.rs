//! Long questions in a thread of their own, so that the screen never waits.
//!
//! The program is its own worker: the page hands its compiled module to a thread, which starts the
//! same program, finds no window, and answers questions instead of drawing. To cancel, the thread is
//! ended; the next question starts a new one.

mod inside;
mod likely;
mod messages;
mod page;
mod work;

pub use inside::serve;
pub use messages::Answer;
pub use messages::Likely;
pub use messages::Question;
pub use messages::Worked;
pub use page::Thread;
