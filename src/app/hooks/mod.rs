//! Everything a component may do besides drawing: reading the address, keys, moving the focus.

mod address;
mod focus;
mod shortcuts;
mod slow_words;

pub use address::go_to;
pub use address::use_route;
pub use focus::focus_first;
pub use focus::focus_on;
pub use focus::focus_on_first;
pub use shortcuts::use_keys;
pub use slow_words::use_slow_words;
