//! Whole machines by what must hold of them: charge, onsets, balances, facts of the trade, and a
//! machine of nobody's making that needs no Rust.

#[path = "physics/charge.rs"]
mod charge;
