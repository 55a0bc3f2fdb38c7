//! Where the admittances of two inductors sharing flux go.
//!
//! ```text
//! [i1]   [y11 y12] [v1]         y = inverse of [ s L1   s M ]
//! [i2] = [y12 y22] [v2]                        [ s M   s L2 ]      M = k sqrt(L1 L2)
//! ```
//! A conductance between two places of one winding and the other has either sign, so the
//! terms to earth are paired here, before there are numbers: exact zeros stay zeros.

use crate::network::netlist::ElementId;
use crate::network::netlist::Netlist;
use crate::network::netlist::NodeId;
use crate::network::slots::NONE;
use crate::network::slots::Slots;

/// One term of a group of coupled inductors: sign times y goes to a slot or to earth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoupledTerm {
    /// Coupling it belongs to.
    pub coupling: u32,
    /// 0, 1, 2 for y11, y12, y22.
    pub which: u32,
    /// Slot, or unknown if `to_earth`.
    pub target: u32,
    /// True if the term is a conductance to earth.
    pub to_earth: bool,
    /// +1 or -1.
    pub sign: f64,
}

/// From and to of both inductors.
pub(in crate::network) fn coupling_ends(
    netlist: &Netlist,
    first: ElementId,
    second: ElementId,
) -> [NodeId; 4] {
    let (a, b) = (
        &netlist.elements()[first.index()],
        &netlist.elements()[second.index()],
    );
    [a.from, a.to, b.from, b.to]
}

/// Spreads the two-by-two admittance of each coupling over slots and earth.
pub(in crate::network) fn coupled_terms(
    netlist: &Netlist,
    unknown_of: &[u32],
    slots: &Slots,
) -> Vec<CoupledTerm> {
    let mut terms = Vec::new();
    for (index, c) in netlist.couplings().iter().enumerate() {
        let ends = coupling_ends(netlist, c.first, c.second).map(|n| unknown_of[n.index()]);
        for row in 0..4 {
            for column in 0..4 {
                let (a, b) = (ends[row], ends[column]);
                if a == NONE || b == NONE {
                    continue;
                }
                let which = [0, 1, 1, 2][row / 2 * 2 + column / 2];
                // Current leaves at `from` (+) and arrives at `to` (-), voltage likewise.
                let sign = if row % 2 == column % 2 { 1.0 } else { -1.0 };
                let coupling = index as u32;
                terms.push(CoupledTerm {
                    coupling,
                    which,
                    target: a,
                    to_earth: true,
                    sign,
                });
                if a < b {
                    let target = slots.get(a, b);
                    let sign = -sign;
                    terms.push(CoupledTerm {
                        coupling,
                        which,
                        target,
                        to_earth: false,
                        sign,
                    });
                }
            }
        }
    }
    cancel_earth_pairs(terms)
}

/// A coil whose ends are both unknowns conducts nothing to earth: its +y and -y must vanish
/// from the list, not cancel in rounding.
fn cancel_earth_pairs(terms: Vec<CoupledTerm>) -> Vec<CoupledTerm> {
    let mut kept: Vec<CoupledTerm> = Vec::with_capacity(terms.len());
    for term in terms {
        let opposite = kept.iter().position(|k| {
            k.to_earth
                && term.to_earth
                && (k.coupling, k.which, k.target) == (term.coupling, term.which, term.target)
                && k.sign * term.sign < 0.0
        });
        match opposite {
            Some(at) => {
                kept.swap_remove(at);
            }
            None => kept.push(term),
        }
    }
    kept
}
