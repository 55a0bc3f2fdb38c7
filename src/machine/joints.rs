//! Joints and paths of the wiring as a look at them finds them: how bad a contact is, what flows
//! where nothing should.

use crate::machine::Machine;
use crate::machine::assembly::LID_BRIDGE;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::network::NodeId;

impl Machine {
    /// Ends of an element, as names of nodes.
    pub fn element_ends(&self, element: &str) -> Option<(String, String)> {
        let id = self.shared.element(element)?;
        let [a, b] = self.shared.elements[id.index()].nodes;
        let name = |n: NodeId| self.shared.nodes[n.index()].name.clone();
        Some((name(a), name(b)))
    }

    /// A joint's resistance now and when sound, Ω, and what it is.
    pub fn joint_ohm(&self, element: &str) -> Option<(f64, f64, &str)> {
        let id = self.shared.element(element)?;
        let sound = &self.shared.elements[id.index()];
        let ohm = |kind: ElementKind| match kind {
            ElementKind::Resistor { ohm } => Some(ohm),
            ElementKind::Contact { closed_ohm, .. } => Some(closed_ohm),
            _ => None,
        };
        let now = self.electrics.harness().wiring().element(id).0;
        Some((ohm(now)?, ohm(sound.kind)?, sound.what.as_str()))
    }

    /// Largest power lost in one joint now, W.
    pub fn hottest_joint_w(&self) -> f64 {
        let harness = self.electrics.harness();
        let Ok(state) = self.steady(harness) else {
            return 0.0;
        };
        let loss_w = |id: ElementId| match harness.wiring().element(id).0 {
            ElementKind::Resistor { ohm } if (0.1..50.0).contains(&ohm) => {
                let current_a = state.ac.network.current_a(id).abs();
                current_a * current_a * ohm
            }
            _ => 0.0,
        };
        let is_joint = |e: &crate::plant::harness::model::WireElement| matches!(e.kind, ElementKind::Resistor { ohm } if ohm < 0.1);
        let joints = self
            .shared
            .elements
            .iter()
            .enumerate()
            .filter(|(_, e)| is_joint(e));
        joints
            .map(|(i, _)| loss_w(ElementId(i as u32)))
            .fold(0.0, f64::max)
    }

    /// Resistances that should not be there and nobody put there: between which nodes, Ω.
    pub fn stray_paths(&self) -> Vec<([String; 2], f64)> {
        let name = |n: NodeId| self.shared.nodes.get(n.index()).map(|n| n.name.clone());
        let links = self.electrics.harness().wiring().extra_links();
        links
            .iter()
            .filter(|link| link.name != LID_BRIDGE)
            .filter_map(|link| Some(([name(link.nodes[0])?, name(link.nodes[1])?], link.ohm)))
            .collect()
    }
}
