//! Whole machines by what must hold of them: charge, onsets, balances, facts of the trade.

#[path = "physics/charge.rs"]
mod charge;
#[path = "physics/facts.rs"]
mod facts;
#[path = "physics/level_knob.rs"]
mod level_knob;
#[path = "physics/onsets.rs"]
mod onsets;
#[path = "physics/order_of_work.rs"]
mod order_of_work;
#[path = "physics/power.rs"]
mod power;
#[path = "physics/properties.rs"]
mod properties;
#[path = "physics/protector.rs"]
mod protector;
#[path = "physics/steps.rs"]
mod steps;
