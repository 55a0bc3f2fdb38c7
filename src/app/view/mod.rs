//! What the screens show, as plain text and flags, and what a person can ask for.
//!
//! Components get these and nothing else, so they can be tested as text. They are built from a
//! job by the functions in this folder, which know no browser.

mod around; // what hands do around the machine
pub mod beside; // what was done beside what the expert did
pub mod build; // all of it from a session
mod candidate; // an act that may make sense, and its verb
pub mod card; // job card, notebook, causes
mod covers; // taken off, and put back from behind
pub mod debrief;
pub mod decided; // the explained replay
pub mod gauges; // instruments without a circuit, tests after a repair, the recorder
pub mod hints; // one at a time, in the opening jobs
pub mod likely;
pub mod meter; // the instrument and its face
pub mod models; // what the screens show
pub mod names; // plain names
pub mod notice; // the calm card
pub mod open_ends; // a last look round
pub mod orders; // what a person can ask for
pub mod papers; // data sheet and access guide
pub mod past; // the machine as it was
pub mod points; // finding a point by typing
pub mod report; // the printable page
pub mod safe; // done and proved
pub mod selection; // what is in hand
pub mod sheet; // the data sheet beside a reading
pub mod sheets; // job card and pictures to print
pub mod shown; // what is kept in English, in the reader's words
pub mod tool_models; // instruments, tests, recorder
pub mod verbs; // what can be done with it
pub mod visit; // what surrounds the repair
pub mod way; // what is in the way

pub use models::*;
pub use orders::*;
pub use tool_models::*;
