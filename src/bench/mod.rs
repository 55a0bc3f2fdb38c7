//! The bench: one job on one machine, and every act a technician can do to it.

pub mod body; // a person as part of a circuit
pub mod discharge; // a charged capacitor into a hand
pub mod protection; // residual current devices, breakers, fuses
pub mod safety; // safety rules as data and predicates
pub mod shock; // what a current does to a person, and what ends it
pub mod workshop; // parts, access, connectors, test points: what can be done to a type of machine
