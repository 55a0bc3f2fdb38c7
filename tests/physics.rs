//! Whole machines by what must hold of them: charge, onsets, balances, facts of the trade.

#[path = "physics/charge.rs"]
mod charge;
#[path = "physics/facts.rs"]
mod facts;
#[path = "physics/onsets.rs"]
mod onsets;
#[path = "physics/properties.rs"]
mod properties;
