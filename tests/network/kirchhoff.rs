//! Kirchhoff's current law at every node of every row's machine.

use tubwright::cli::hold::Held;
use tubwright::cli::rows::Machines;
use tubwright::cli::rows::Quantity;
use tubwright::network::Complex;
use tubwright::network::ElementId;
use tubwright::network::NodeId;
use tubwright::plant::harness::Instrument;
use tubwright::plant::harness::instrument::meter_siemens;

use crate::all_rows;

/// Largest Kirchhoff residual over the sum of |y| (|va| + |vb|) at a node, meter included.
fn worst_residual(held: &Held, load: Option<([NodeId; 2], Complex)>) -> f64 {
    let point = &held.state.ac.network;
    let solution = match load {
        Some(([a, b], siemens)) => point.loaded(a, b, siemens),
        None => point.solution.clone(),
    };
    let netlist = held.harness.netlist();
    let mut net = solution.leaving_a(&point.base);
    let mut scale = vec![0.0; net.len()];
    let mut add = |nodes: [u32; 2], size: f64| {
        for node in nodes {
            scale[node as usize] += size;
        }
    };
    let size_v =
        |[a, b]: [u32; 2]| solution.node_v[a as usize].abs() + solution.node_v[b as usize].abs();
    for (index, nodes) in point.base.plan.element_nodes.iter().enumerate() {
        let y = point
            .base
            .admittance_siemens(index, solution.contacts)
            .abs();
        let current = solution
            .current_a(&point.base, ElementId(index as u32))
            .abs();
        add(*nodes, (y * size_v(*nodes)).max(current));
    }
    for ([x, y], siemens) in point
        .base
        .plan
        .couplings
        .iter()
        .zip(&point.base.coupled_siemens)
    {
        let ends = [x, y].map(|e| point.base.plan.element_nodes[*e as usize]);
        let size = ends.iter().map(|e| size_v(*e)).sum::<f64>();
        for nodes in ends {
            add(nodes, siemens.iter().map(|y| y.abs()).sum::<f64>() * size);
        }
    }
    let count = point.base.plan.coil_nodes.len();
    for (k, nodes) in point.base.plan.coil_nodes.iter().enumerate() {
        let y = point.inner.coil_siemens[k * count + k].abs();
        add(*nodes, y * size_v(*nodes));
    }
    if let Some(([a, b], siemens)) = load {
        let current = siemens * solution.between_v(a, b);
        net[a.index()] += current;
        net[b.index()] -= current;
        add([a.0, b.0], siemens.abs() * size_v([a.0, b.0]));
    }
    let root = &point.base.plan.merged.root;
    let whole = (0..netlist.nodes().len()).filter(|n| {
        // Nodes merged by an ideal source share one balance; those of earth have none.
        root.iter().filter(|r| **r as usize == *n).count() == 1 && *n > 0
    });
    whole
        .map(|n| net[n].abs() / scale[n].max(1e-300))
        .fold(0.0, f64::max)
}

#[test]
fn kirchhoff_holds_at_every_node_of_every_row() {
    let machines = Machines::shipped().expect("sound files");
    for (file, row) in all_rows() {
        let hold = machines
            .hold(&file, &row)
            .unwrap_or_else(|error| panic!("{error}"));
        let held = hold.solve().expect("solvable");
        let load = match &row.quantity {
            Quantity::Between {
                instrument: instrument @ (Instrument::AcVolts | Instrument::AcVoltsLowImpedance),
                nodes: [red, black],
            } => {
                let siemens = meter_siemens(*instrument, hold.model.frequency_hz);
                held.pair(red, black).map(|pair| (pair, siemens))
            }
            _ => None,
        };
        let residual = worst_residual(&held, load);
        assert!(residual < 1e-12, "line {}: {residual}", row.line);
    }
}
