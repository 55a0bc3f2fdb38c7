//! What flows through a contact at its worst: now, or when the supply last opened.

use crate::machine::Machine;
use crate::machine::Probe;
use crate::network::ElementId;
use crate::network::ElementKind;

impl Machine {
    /// What flows through each contact of the wiring now, A.
    pub(super) fn contact_currents_a(&self) -> Vec<(ElementId, f64)> {
        let harness = self.electrics.harness();
        let Ok(state) = self.steady(harness) else {
            return Vec::new();
        };
        let elements = self.shared.elements.iter().enumerate();
        elements
            .filter(|(_, e)| matches!(e.kind, ElementKind::Contact { .. }))
            .map(|(i, _)| ElementId(i as u32))
            .map(|id| (id, state.ac.network.current_a(id).abs()))
            .collect()
    }

    /// The most that flows through an element now or flowed when the supply last opened, A.
    pub fn stress_a(&self, element: &str) -> f64 {
        let Ok(id) = self.element(element) else {
            return 0.0;
        };
        let surge = self.surge_a.iter().find(|(other, _)| *other == id);
        let surge_a = surge.map_or(0.0, |(_, current_a)| *current_a);
        let now = self.measure(Probe::Clamp(element));
        let now_a = now.ok().and_then(|m| m.value_si).unwrap_or(0.0);
        surge_a.max(now_a)
    }
}
