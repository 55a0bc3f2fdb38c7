//! Why a network cannot be solved, in words that name the place.

/// The network cannot be solved; every variant names a node or an element of the netlist.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SolveError {
    /// Nothing conducts from the node to earth, so its voltage has no value.
    #[error(
        "node {node} floats: nothing connects it to earth; likely an open or pulled connection without leakage"
    )]
    Floating {
        /// Name of one node of the floating island.
        node: String,
    },
    /// Ideal sources and zero-ohm links form a loop with this source in it.
    #[error("source {element} is shorted by zero-ohm links or other ideal sources")]
    ShortedSource {
        /// Name of the element that closed the loop.
        element: String,
    },
    /// The admittances at a node cancel: an exact resonance without loss, or every way to earth has
    /// been opened.
    #[error(
        "node {node} has no path to earth left, or its currents cancel exactly; likely an open connection without leakage beside it, a resonance without resistance, or a shorted coil"
    )]
    Resonant {
        /// Name of the node.
        node: String,
    },
    /// An element's value is not a number the kind allows.
    #[error("element {element} has the value {value}; it must be {allowed}")]
    BadValue {
        /// Name of the element.
        element: String,
        /// The value found.
        value: f64,
        /// What the kind allows.
        allowed: &'static str,
    },
    /// A coupling names something that is not an inductor, or one inductor twice.
    #[error("coupling {coupling} must name two different inductors, each coupled once")]
    BadCoupling {
        /// Name of the coupling.
        coupling: String,
    },
    /// The coupled coils' impedance matrix cannot be inverted.
    #[error("the impedances of the coupled coils are singular; likely a coil without leakage")]
    SingularCoils,
}
