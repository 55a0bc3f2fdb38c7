//! The fault language: named changes of values and places, each with a severity.
//!
//! Severity goes from 0 (healthy) to 1 (as listed). Resistances move geometrically between
//! the healthy and the listed value, everything else linearly; what has no middle (exchanged
//! wires, a seized rotor, a dead regulator) acts above severity 0.5. Interpolation: design
//! choice.

use crate::network::ElementId;
use crate::network::NodeId;

/// One change of the wiring.
#[derive(Clone, Debug, PartialEq)]
pub enum WiringChange {
    /// The element has this value whatever the control does (ohm, F or H; a contact: welded).
    Set {
        /// The element.
        element: ElementId,
        /// Its value.
        value: f64,
    },
    /// The element is broken whatever the control does.
    Open {
        /// The element.
        element: ElementId,
    },
    /// A contact closes with this resistance, ohm.
    ClosedResistance {
        /// The contact.
        contact: ElementId,
        /// Its resistance closed, ohm.
        ohm: f64,
    },
    /// The value is multiplied.
    Scale {
        /// The element.
        element: ElementId,
        /// The factor.
        factor: f64,
    },
    /// A resistor appears between two places.
    AddResistor {
        /// Its name.
        name: String,
        /// Its places.
        nodes: [NodeId; 2],
        /// Its resistance, ohm.
        ohm: f64,
    },
    /// The supply has another voltage, V rms.
    SupplyVoltage {
        /// Its voltage, V rms.
        v: f64,
    },
    /// Line and neutral are exchanged at the socket.
    ExchangeLineAndNeutral,
    /// The far ends of two wires are exchanged.
    ExchangeFarEnds {
        /// The wires.
        elements: [ElementId; 2],
    },
    /// Windings are open (0 and 1).
    OpenWindings {
        /// Which are open.
        is_open: [bool; 2],
    },
    /// Turns of a winding are shorted.
    ShortedTurns {
        /// 0 or 1.
        winding: usize,
        /// Share of the turns.
        share_ratio: f64,
        /// Resistance across them, ohm.
        short_ohm: f64,
    },
    /// A path from inside a winding to the frame.
    WindingToFrame {
        /// 0 or 1.
        winding: usize,
        /// Share of the turns between the tap and the common end.
        share_ratio: f64,
        /// Resistance of the path, ohm.
        path_ohm: f64,
    },
    /// The rotor is stuck.
    Seized,
    /// Load and break-away torque are multiplied.
    LoadFactor {
        /// The factor.
        factor: f64,
    },
    /// The 5 V regulator is dead.
    No5V,
}

/// Severity above which a change without a middle acts.
pub const ACTS_ABOVE: f64 = 0.5;

/// Geometric way from a healthy to a faulty resistance, ohm.
pub fn between_ohm(healthy_ohm: f64, faulty_ohm: f64, severity_ratio: f64) -> f64 {
    if severity_ratio <= 0.0 {
        return healthy_ohm;
    }
    if severity_ratio >= 1.0 {
        return faulty_ohm;
    }
    // A zero at either end has no logarithm; a micro-ohm stands for it on the way.
    let (a, b) = (healthy_ohm.max(1e-6), faulty_ohm.max(1e-6));
    a * libm::pow(b / a, severity_ratio)
}

/// Linear way from a healthy to a faulty value.
pub fn between(healthy: f64, faulty: f64, severity_ratio: f64) -> f64 {
    if severity_ratio >= 1.0 {
        faulty
    } else {
        healthy + (faulty - healthy) * severity_ratio.max(0.0)
    }
}
