//! Looking at wires: pins, terminals and insulation at a place, by what the wiring is like there.

use crate::bench::job::Job;
use crate::bench::notebook::Seen;
use crate::bench::observe::seen;
use crate::text;

/// A joint this many times its sound resistance looks burnt or green.
const BURNT_RATIO: f64 = 20.0;
/// A joint of this resistance does not sit at all, Ω.
const PARTED_OHM: f64 = 1e6;
/// Below this a stray path is a bare wire that touches, Ω; above, it is damp.
const CHAFED_OHM: f64 = 100.0;

pub(super) fn at(job: &Job, place: &str) -> Vec<Seen> {
    let mut list = Vec::new();
    let workshop = &job.scenario().workshop;
    for connector in workshop
        .connectors
        .iter()
        .filter(|c| c.place == place || c.id == place)
    {
        if job.bench.apart.contains(&connector.id) {
            list.push(seen("apart", format!("the {} is apart", connector.name)));
            continue;
        }
        for element in &connector.elements {
            list.extend(joint(job, element));
        }
    }
    let here = |node: &str| {
        workshop
            .test_points
            .iter()
            .any(|t| t.node == node && t.place == place)
    };
    for (nodes, ohm) in job.machine.stray_paths() {
        if nodes.iter().any(|n| here(n)) {
            list.push(if ohm < CHAFED_OHM {
                seen(
                    "wire_chafed",
                    text!("a wire is chafed; bare copper touches metal"),
                )
            } else {
                seen("damp", text!("damp and green between the pins"))
            });
        }
    }
    list
}

fn joint(job: &Job, element: &str) -> Option<Seen> {
    let (now_ohm, good_ohm, what) = job.machine.joint_ohm(element)?;
    if now_ohm >= PARTED_OHM {
        return Some(seen(
            "pin_not_home",
            format!("{what}: it does not sit home"),
        ));
    }
    (now_ohm > BURNT_RATIO * good_ohm.max(0.005))
        .then(|| seen("pin_burnt", format!("{what}: brown and rough")))
}
