//! sheet
use crate::drawing::wiring::layout::Piece;
/// The sheet.
pub const PIECES: &[Piece] = &[];
