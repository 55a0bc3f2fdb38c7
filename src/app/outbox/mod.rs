//! Results on their way to a store of learning records: kept here until the store has taken them, sent
//! again after every failure, and never lost.

mod place;
mod queue;
mod section;

pub use place::is_place;
pub use queue::is_readable;
pub use queue::put;
pub use queue::watch;
pub use section::StoreSection;
