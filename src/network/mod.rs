//! Nodal analysis of electrical networks; knows nothing of washing machines.
//!
//! A [`Netlist`] names nodes and elements. A [`Plan`] is found once for its shape: which
//! nodes are one node (ideal sources, zero-ohm links, inductors at DC), in which order the
//! rest is eliminated, and where every number goes. [`Factors`] are the numbers of one set
//! of contacts; an [`Inner`] is the small block around the coupled coils outside of it (a
//! motor at one slip); a [`Solution`] holds node voltages and gives element currents.
//!
//! ```text
//! sum over elements at a node of y (v_node - v_other) = 0        y in siemens, v in volts
//! ```
//! Source: published (nodal analysis; Grassmann, Taksar and Heyman 1985 for the pivots).
//! Limits: linear elements; one frequency or DC at a time.

pub mod complex;
pub mod coupling;
pub mod drive;
pub mod error;
pub mod factor;
pub mod inner;
pub mod merge;
pub mod netlist;
pub mod number;
pub mod order;
pub mod plan;
pub mod sensitivity;
pub mod slots;
pub mod solution;

pub use complex::Complex;
pub use drive::Direct;
pub use drive::Drive;
pub use drive::Frequency;
pub use error::SolveError;
pub use factor::Base;
pub use factor::Factors;
pub use inner::Inner;
pub use netlist::Contacts;
pub use netlist::ElementId;
pub use netlist::ElementKind;
pub use netlist::Netlist;
pub use netlist::NodeId;
pub use number::Number;
pub use plan::Plan;
pub use solution::Solution;
pub use solution::Solver;
