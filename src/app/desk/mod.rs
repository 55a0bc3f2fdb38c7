//! The instructor's desk: a job written on screen, run as it is written, tried at once, given away.

mod answers;
mod apprentices;
pub mod checks;
pub mod draft;
mod fair;
mod faults;
pub mod field;
pub mod fields;
mod form;
pub mod form_table;
mod history;
mod home;
mod inside_fields;
mod judged;
mod live;
mod qr;
mod screen;
mod set_draft;
mod set_maker;
mod share;
pub mod state;
pub mod told;
mod van;
mod visit_fields;
mod visit_lists;
mod way_back;

pub use draft::is_readable;
pub use home::DeskHome;
pub use qr::QrCode;
pub use screen::DeskScreen;
pub use set_draft::SET_KEY;
pub use set_draft::is_set_readable;
pub use set_maker::SetMaker;
pub use way_back::BACK_TO_DRAFT;
pub use way_back::BackToDraft;
pub use way_back::use_draft_of;
