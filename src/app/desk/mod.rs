//! The instructor's desk: a job written on screen, run as it is written, tried at once, given away.

mod answers;
pub mod draft;
mod fair;
mod faults;
mod field;
pub mod fields;
mod form;
mod history;
mod home;
mod live;
mod qr;
mod screen;
mod share;
mod state;
mod van;
mod visit_fields;

pub use draft::is_readable;
pub use home::DeskHome;
pub use qr::QrCode;
pub use screen::DeskScreen;
