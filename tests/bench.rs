//! The bench: every act with its precondition, effect and cost, instruments against what physics
//! says from outside, making safe in its order, and random acts that never break anything.

#[path = "bench/access.rs"]
mod access;
#[path = "bench/acts.rs"]
mod acts;
#[path = "bench/due_readings.rs"]
mod due_readings;
#[path = "bench/felt.rs"]
mod felt;
#[path = "bench/gauges.rs"]
mod gauges;
#[path = "bench/isolation.rs"]
mod isolation;
#[path = "bench/language.rs"]
mod language;
#[path = "bench/making_safe.rs"]
mod making_safe;
#[path = "bench/random.rs"]
mod random;
#[path = "bench/refits.rs"]
mod refits;
#[path = "bench/repairs.rs"]
mod repairs;
#[path = "bench/rules.rs"]
mod rules;
#[path = "bench/scene.rs"]
mod scene;
