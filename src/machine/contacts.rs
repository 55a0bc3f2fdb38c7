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
    level_switch: [Contacts; 3],
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
            level_switch: roles.level_switch.each_ref().map(|ids| set(ids)),
        }
    }

    /// Contacts closed now.
    pub fn closed(&self, hands: &Hands, outputs: &Outputs, plant: &Plant) -> Contacts {
        let mut closed = self.level_switch[2];
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
        let full = plant.state().level_switch.is_full[2];
        add(!full, self.level_switch[0]);
        add(full, self.level_switch[1]);
        closed
    }
}
