//! Networks as lines of a deck for ngspice: what the tests compare with and the bench runs against.

use std::fmt::Write;

use tubwright::network::Complex;
use tubwright::network::Contacts;
use tubwright::network::ElementKind;
use tubwright::network::Netlist;
use tubwright::network::NodeId;

/// Name of a node in a deck that holds many networks.
pub fn node(case: usize, id: NodeId) -> String {
    match id {
        NodeId::EARTH => "0".to_owned(),
        NodeId(k) => format!("c{case}_{k}"),
    }
}

/// The elements of a netlist as lines of a deck, contacts as they are. Coils are not part of it.
pub fn lines(netlist: &Netlist, contacts: Contacts, case: usize, deck: &mut String) {
    for (k, e) in netlist.elements().iter().enumerate() {
        let (from, to) = (node(case, e.from), node(case, e.to));
        let line = |letter: char, value: f64| format!("{letter}{case}_{k} {from} {to} {value:e}\n");
        let text = match e.kind {
            _ if e.from == e.to => continue,
            ElementKind::Resistor { ohm } if ohm.is_infinite() => continue,
            ElementKind::Resistor { ohm } if ohm > 0.0 => line('r', ohm),
            ElementKind::Resistor { .. } => format!("v{case}_{k} {from} {to} dc 0 ac 0\n"),
            ElementKind::Capacitor { farad } if farad > 0.0 => line('c', farad),
            ElementKind::Capacitor { .. } => continue,
            ElementKind::Inductor { henry } => line('l', henry),
            ElementKind::Contact {
                closed_ohm,
                open_ohm,
                open_farad,
                bit,
            } => {
                if contacts.is_closed(bit) {
                    line('r', closed_ohm)
                } else if open_farad > 0.0 {
                    line('r', open_ohm) + &line('c', open_farad)
                } else {
                    line('r', open_ohm)
                }
            }
            ElementKind::Source { ac_v, .. } => {
                format!("v{case}_{k} {from} {to} dc 0 ac {ac_v:e}\n")
            }
        };
        deck.push_str(&text);
    }
    for (k, c) in netlist.couplings().iter().enumerate() {
        let (x, y) = (c.first.index(), c.second.index());
        let factor = c.factor;
        writeln!(deck, "k{case}_{k} l{case}_{x} l{case}_{y} {factor:e}").expect("text");
    }
}

/// The motor's coils at one frequency: real parts as controlled sources, imaginary ones by a node
/// whose voltage is -j times the coil's (1 S into 1/w farad).
pub fn coil_lines(
    netlist: &Netlist,
    siemens: &[Complex],
    w_rad_per_s: f64,
    case: usize,
    deck: &mut String,
) {
    let coils = netlist.coils();
    for (k, coil) in coils.iter().enumerate() {
        let (from, to) = (node(case, coil.from), node(case, coil.to));
        let turned = format!("c{case}_j{k}");
        writeln!(deck, "gj{case}_{k} 0 {turned} {from} {to} 1").expect("text");
        writeln!(deck, "cj{case}_{k} {turned} 0 {:e}", 1.0 / w_rad_per_s).expect("text");
        writeln!(deck, "rj{case}_{k} {turned} 0 1e12").expect("text");
        for (l, row) in coils.iter().enumerate() {
            let y = siemens[l * coils.len() + k];
            let (a, b) = (node(case, row.from), node(case, row.to));
            writeln!(deck, "ga{case}_{l}_{k} {a} {b} {from} {to} {:e}", y.re).expect("text");
            writeln!(deck, "gb{case}_{l}_{k} {a} {b} {turned} 0 {:e}", -y.im).expect("text");
        }
    }
}
