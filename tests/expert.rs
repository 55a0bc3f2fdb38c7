//! The expert: what it is told, what it believes, what it does.

#[path = "expert/belief.rs"]
mod belief;
#[path = "expert/symptoms.rs"]
mod symptoms;
