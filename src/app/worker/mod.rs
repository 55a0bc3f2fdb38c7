//! Long questions in a thread of their own, so that the screen never waits.
//!
//! The thread is a program of its own, of the same parts: what only it does is no part of the page
//! that a first job waits for. To cancel, the thread is ended; the next question starts a new one.

mod inside;
mod messages;
mod page;
mod work;

pub use inside::serve;
pub use messages::Answer;
pub use messages::Likely;
pub use messages::Question;
pub use messages::Worked;
pub use page::Thread;
