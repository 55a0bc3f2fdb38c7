//! The machine made audible: sources computed by the machine, played by the browser.
//!
//! What sounds and how loud comes from the machine alone; this module only decides what a hum, a
//! squeal or a splash is made of. The words under the picture say the same for those who cannot hear.

mod ears;
mod speaker;
mod timbre;
mod voice;

pub use ears::Ears;
pub use speaker::Speaker;
