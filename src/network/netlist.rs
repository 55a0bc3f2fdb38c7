//! Nodes and elements of a network, by name.
//!
//! Positive current enters an element at `from` and leaves at `to`; a source makes
//! `v(from) - v(to)` its voltage. Node 0 is earth, the reference. Coil branches are only
//! places here: their impedances depend on speed and temperature and come at solve time.

use crate::network::error::SolveError;

/// A node of the network; 0 is earth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct NodeId(pub u32);

/// An element, by its position in the netlist.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct ElementId(pub u32);

impl NodeId {
    /// Earth, the reference every voltage is counted from.
    pub const EARTH: NodeId = NodeId(0);
    /// Position in lists of nodes.
    pub fn index(self) -> usize {
        self.0 as usize
    }
}

impl ElementId {
    /// Position in lists of elements.
    pub fn index(self) -> usize {
        self.0 as usize
    }
}

/// Which contacts are closed: bit n is the n-th contact of the netlist.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Contacts(pub u64);

impl Contacts {
    /// Is contact `n` closed?
    pub fn is_closed(self, n: u32) -> bool {
        self.0 & (1_u64 << n) != 0
    }
    /// The same set with contact `n` closed or open.
    pub fn with(self, n: u32, closed: bool) -> Contacts {
        let bit = 1_u64 << n;
        Contacts(if closed { self.0 | bit } else { self.0 & !bit })
    }
    /// The contacts closed in both.
    pub fn without(self, other: Contacts) -> Contacts {
        Contacts(self.0 & !other.0)
    }
}

/// What an element is, with its values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ElementKind {
    /// A resistor; 0 ohm is a plain link.
    Resistor {
        /// Resistance, ohm, 0 or more; infinite for a gap.
        ohm: f64,
    },
    /// A capacitor; open at DC.
    Capacitor {
        /// Capacitance, farad, 0 or more.
        farad: f64,
    },
    /// An inductor; a plain link at DC.
    Inductor {
        /// Inductance, henry, more than 0.
        henry: f64,
    },
    /// A contact: one resistance closed, another open.
    Contact {
        /// Resistance while closed, ohm.
        closed_ohm: f64,
        /// Resistance while open, ohm.
        open_ohm: f64,
        /// Capacitance while open, farad.
        open_farad: f64,
        /// Its bit in [`Contacts`].
        bit: u32,
    },
    /// An ideal voltage source.
    Source {
        /// Voltage in an AC analysis, V rms, phase 0.
        ac_v: f64,
        /// Voltage in a DC analysis, V.
        dc_v: f64,
    },
}

/// An element between two nodes.
#[derive(Clone, Debug, PartialEq)]
pub struct Element {
    /// Name, unique in the netlist.
    pub name: String,
    /// Where positive current enters.
    pub from: NodeId,
    /// Where positive current leaves.
    pub to: NodeId,
    /// What it is.
    pub kind: ElementKind,
}

/// Two inductors sharing flux.
#[derive(Clone, Debug, PartialEq)]
pub struct Coupling {
    /// Name.
    pub name: String,
    /// One inductor.
    pub first: ElementId,
    /// The other.
    pub second: ElementId,
    /// Coupling factor, above -1 and below 1.
    pub factor: f64,
}

/// One coil of a group whose impedances are given at solve time (a motor winding).
#[derive(Clone, Debug, PartialEq)]
pub struct Coil {
    /// Name.
    pub name: String,
    /// Where positive current enters.
    pub from: NodeId,
    /// Where positive current leaves.
    pub to: NodeId,
}

/// A network: nodes, elements, couplings and coils.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Netlist {
    nodes: Vec<String>,
    elements: Vec<Element>,
    couplings: Vec<Coupling>,
    coils: Vec<Coil>,
    contact_count: u32,
}

impl Netlist {
    /// A network with earth only.
    pub fn new() -> Netlist {
        Netlist {
            nodes: vec!["0".to_owned()],
            ..Netlist::default()
        }
    }

    /// Adds a node.
    pub fn add_node(&mut self, name: &str) -> NodeId {
        self.nodes.push(name.to_owned());
        NodeId(self.nodes.len() as u32 - 1)
    }

    /// Adds an element. A contact's `bit` is set here, in order of adding.
    pub fn add(&mut self, name: &str, from: NodeId, to: NodeId, kind: ElementKind) -> ElementId {
        let kind = match kind {
            ElementKind::Contact {
                closed_ohm,
                open_ohm,
                open_farad,
                ..
            } => {
                let bit = self.contact_count;
                self.contact_count += 1;
                ElementKind::Contact {
                    closed_ohm,
                    open_ohm,
                    open_farad,
                    bit,
                }
            }
            other => other,
        };
        self.elements.push(Element {
            name: name.to_owned(),
            from,
            to,
            kind,
        });
        ElementId(self.elements.len() as u32 - 1)
    }

    /// Adds a resistor.
    pub fn resistor(&mut self, name: &str, from: NodeId, to: NodeId, ohm: f64) -> ElementId {
        self.add(name, from, to, ElementKind::Resistor { ohm })
    }

    /// Lets two inductors share flux.
    pub fn couple(&mut self, name: &str, first: ElementId, second: ElementId, factor: f64) {
        self.couplings.push(Coupling {
            name: name.to_owned(),
            first,
            second,
            factor,
        });
    }

    /// Adds a coil of the group whose impedances come at solve time.
    pub fn add_coil(&mut self, name: &str, from: NodeId, to: NodeId) {
        self.coils.push(Coil {
            name: name.to_owned(),
            from,
            to,
        });
    }

    /// Names of the nodes, earth first.
    pub fn nodes(&self) -> &[String] {
        &self.nodes
    }
    /// The elements.
    pub fn elements(&self) -> &[Element] {
        &self.elements
    }
    /// The elements, to change values (never the places).
    pub fn kind_mut(&mut self, id: ElementId) -> &mut ElementKind {
        &mut self.elements[id.index()].kind
    }
    /// The couplings.
    pub fn couplings(&self) -> &[Coupling] {
        &self.couplings
    }
    /// The couplings, to change their factors.
    pub fn couplings_mut(&mut self) -> &mut [Coupling] {
        &mut self.couplings
    }
    /// The coils.
    pub fn coils(&self) -> &[Coil] {
        &self.coils
    }

    /// Checks every value.
    ///
    /// # Errors
    /// [`SolveError::BadValue`] or [`SolveError::BadCoupling`] naming the first bad element.
    pub fn check(&self) -> Result<(), SolveError> {
        for e in &self.elements {
            let (values, allowed): (&[f64], &'static str) = match &e.kind {
                ElementKind::Resistor { ohm } if ohm.is_infinite() && *ohm > 0.0 => (&[], ""),
                ElementKind::Resistor { ohm } => (&[*ohm], "0 ohm or more"),
                ElementKind::Capacitor { farad } => (&[*farad], "0 farad or more"),
                ElementKind::Inductor { henry } if *henry > 0.0 => (&[*henry], "more than 0 henry"),
                ElementKind::Inductor { .. } => (&[-1.0], "more than 0 henry"),
                ElementKind::Contact {
                    closed_ohm,
                    open_ohm,
                    open_farad,
                    ..
                } => (&[*closed_ohm, *open_ohm, *open_farad], "0 or more"),
                ElementKind::Source { ac_v, dc_v } => (&[ac_v * ac_v, dc_v * dc_v], "finite"),
            };
            if let Some(bad) = values.iter().find(|v| !(**v >= 0.0 && v.is_finite())) {
                return Err(SolveError::BadValue {
                    element: e.name.clone(),
                    value: *bad,
                    allowed,
                });
            }
        }
        let mut coupled = vec![false; self.elements.len()];
        for c in &self.couplings {
            for id in [c.first, c.second] {
                let is_coil = self
                    .elements
                    .get(id.index())
                    .is_some_and(|e| matches!(e.kind, ElementKind::Inductor { .. }));
                if !is_coil || core::mem::replace(&mut coupled[id.index()], true) {
                    return Err(SolveError::BadCoupling {
                        coupling: c.name.clone(),
                    });
                }
            }
            if c.factor.is_nan() || c.factor.abs() >= 1.0 {
                return Err(SolveError::BadValue {
                    element: c.name.clone(),
                    value: c.factor,
                    allowed: "above -1 and below 1",
                });
            }
        }
        Ok(())
    }

    /// Mutual inductance of a coupling, H.
    pub fn mutual_henry(&self, coupling: &Coupling) -> f64 {
        let henry = |id: ElementId| match self.elements[id.index()].kind {
            ElementKind::Inductor { henry } => henry,
            _ => 0.0,
        };
        coupling.factor * libm::sqrt(henry(coupling.first) * henry(coupling.second))
    }
}
