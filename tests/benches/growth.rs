//! What the work costs as it grows: nodes of a network, causes weighed, candidates of a cohort. A slope
//! of 1 in logarithms is a cost that grows with the size alone.

use std::sync::Arc;

use serde_json::Value;
use serde_json::json;
use tubwright::expert::Belief;
use tubwright::network::Base;
use tubwright::network::Contacts;
use tubwright::network::Direct;
use tubwright::network::Netlist;
use tubwright::network::NodeId;
use tubwright::network::Plan;
use tubwright::network::solution::solve_once;

use crate::judgement;
use crate::measure::Case;
use crate::measure::measure;
use crate::measure::time;
use crate::results;

/// One kind of work at several sizes.
pub struct Growth {
    /// What grows.
    name: &'static str,
    /// Size, and the quickest run of it, s.
    points: Vec<(u32, f64)>,
}

/// Every kind of work that grows.
pub fn all() -> Vec<Growth> {
    vec![
        grown(
            "nodes of a network, planned and solved",
            [30, 100, 300, 1000],
            ladder,
        ),
        grown(
            "causes weighed against a job of 46 minutes",
            [15, 30, 60, 120],
            causes,
        ),
        grown(
            "candidates by 40 jobs, import and Rasch fit",
            [100, 300, 1000, 3000],
            candidates,
        ),
    ]
}

fn grown(name: &'static str, sizes: [u32; 4], case: fn(u32) -> Case) -> Growth {
    let points = sizes.map(|size| (size, measure(&mut case(size)).least_s));
    Growth {
        name,
        points: points.to_vec(),
    }
}

impl Growth {
    /// Slope of time over size in logarithms, by least squares.
    fn exponent(&self) -> f64 {
        let logs = self
            .points
            .iter()
            .map(|(n, s)| (f64::from(*n).ln(), s.ln()));
        let count = self.points.len() as f64;
        let (mut x, mut y, mut xx, mut xy) = (0.0, 0.0, 0.0, 0.0);
        for (a, b) in logs {
            x += a;
            y += b;
            xx += a * a;
            xy += a * b;
        }
        (count * xy - x * y) / (count * xx - x * x)
    }

    /// One row of the JSON that `make bench` leaves.
    pub fn to_json(&self) -> Value {
        let points = self
            .points
            .iter()
            .map(|(size, s)| json!({ "size": size, "least_s": s }));
        json!({ "name": self.name, "points": points.collect::<Vec<_>>(), "exponent": self.exponent() })
    }

    /// One row of the table.
    pub fn to_row(&self) -> String {
        let each = self
            .points
            .iter()
            .map(|(size, s)| format!("{size}: {:>8}", time(*s)));
        format!(
            "{:<48} {}   ~ n^{:.2}",
            self.name,
            each.collect::<Vec<_>>().join("  "),
            self.exponent()
        )
    }
}

/// A ladder of resistors, 1 A into its first node.
fn ladder(n_nodes: u32) -> Case {
    let mut netlist = Netlist::new();
    let nodes: Vec<NodeId> = (0..n_nodes)
        .map(|k| netlist.add_node(&format!("n{k}")))
        .collect();
    for pair in nodes.windows(2) {
        netlist.resistor("link", pair[0], pair[1], 10.0);
    }
    for node in &nodes {
        netlist.resistor("leak", *node, NodeId::EARTH, 1e3);
    }
    Case::new("ladder", None, move || {
        let plan = Arc::new(Plan::new(&netlist, true).expect("connected"));
        let base = Base::new(plan, &netlist, Direct);
        let solved = solve_once(&base, Contacts(0), &[]).expect("regular");
        solved.node_v.len() as f64
    })
}

/// So many of the machine's faults, the true one among them, weighed against a finished job.
fn causes(n_causes: u32) -> Case {
    let mut seen = judgement::seen();
    let truth = judgement::scenario().faults[0].id.clone();
    let mut scenario = (*seen.scenario).clone();
    let mut model = (*scenario.machine).clone();
    model.faults.sort_by_key(|fault| fault.id != truth);
    model.faults.truncate(n_causes as usize);
    scenario.machine = Arc::new(model);
    seen.scenario = scenario.into();
    Case::new("causes", None, move || {
        Belief::of(&seen).expect("machines").history().len() as f64
    })
}

fn candidates(n_people: u32) -> Case {
    results::people_by_forty("candidates", None, u64::from(n_people))
}
