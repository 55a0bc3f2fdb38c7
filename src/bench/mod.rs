//! The bench: one job on one machine, and every act a technician can do to it.

pub mod workshop; // parts, access, connectors, test points: what can be done to a type of machine
