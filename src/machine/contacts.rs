//! Which contacts of the wiring are closed: by hand, by the control, by the tub.

use crate::control::io::Outputs;
use crate::machine::Hands;
use crate::machine::roles::RoleIds;
use crate::network::Contacts;
use crate::network::ElementId;
use crate::plant::Plant;
use crate::plant::harness::Harness;

/// Contact sets by what closes them.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Masks {
    power: Contacts,
    lid: Contacts,
    lever: Contacts,
    loads: [Contacts; 6],
    timer: Vec<Contacts>,
    level_sections: Vec<(usize, Contacts, Contacts)>,
    level_knob: Vec<Contacts>,
}

fn both(a: Contacts, b: Contacts) -> Contacts {
    Contacts(a.0 | b.0)
}

impl Masks {
    /// Looks the contacts up.
    pub fn of(roles: &RoleIds, harness: &Harness) -> Self {
        let set = |ids: &[ElementId]| harness.contacts(ids);
        Self {
            power: roles
                .power_switch
                .map_or(Contacts::default(), |id| set(&[id])),
            lid: set(&[roles.lid_switch]),
            lever: set(&[roles.lever_switch]),
            loads: roles.outputs.each_ref().map(|ids| set(ids)),
            timer: roles.timer.iter().map(|id| set(&[*id])).collect(),
            level_sections: roles
                .level_sections
                .iter()
                .map(|(index, empty, full)| (*index, set(empty), set(full)))
                .collect(),
            level_knob: roles.level_knob.iter().map(|ids| set(ids)).collect(),
        }
    }

    /// Positions of the level knob.
    pub fn n_level_positions(&self) -> u32 {
        self.level_knob.len() as u32
    }

    /// Contacts closed now.
    pub fn closed(&self, hands: &Hands, outputs: &Outputs, plant: &Plant) -> Contacts {
        let knob = self.level_knob.get(hands.level_position as usize);
        let mut closed = knob.copied().unwrap_or_default();
        let mut add = |on: bool, set: Contacts| {
            if on {
                closed = both(closed, set);
            }
        };
        add(hands.switched_on, self.power);
        add(!hands.lid_open, self.lid);
        add(!plant.is_lever_open(), self.lever);
        let loads = &outputs.loads;
        let driven = [
            loads.motor_forward,
            loads.motor_reverse,
            loads.inlet_valve,
            loads.hot_valve,
            loads.drain_actuator,
            loads.drain_pump,
        ];
        for (on, set) in driven.into_iter().zip(self.loads) {
            add(on, set);
        }
        for (n, set) in self.timer.iter().enumerate() {
            add(outputs.contacts >> n & 1 == 1, *set);
        }
        let is_full = plant.state().level_switch.is_full;
        for (index, empty, full) in &self.level_sections {
            let is_over = is_full.get(*index).copied().unwrap_or(false);
            add(!is_over, *empty);
            add(is_over, *full);
        }
        closed
    }
}
