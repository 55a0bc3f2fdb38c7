//! From the roles section to the plain type.

use crate::machine::Coils;
use crate::machine::LevelSection;
use crate::machine::LevelSwitchContacts;
use crate::machine::OutputContacts;
use crate::machine::Roles;
use crate::machine::SenseInput;
use crate::scenario::roles_file::LevelPositionFile;
use crate::scenario::roles_file::LevelSectionFile;
use crate::scenario::roles_file::LevelSwitchFile;
use crate::scenario::roles_file::LevelWord;
use crate::scenario::roles_file::RolesFile;
use crate::scenario::roles_file::SenseFile;

/// Who is who in the wiring.
pub fn roles(file: &RolesFile) -> Roles {
    let outputs = &file.outputs;
    let coils = &file.coils;
    let [capacitor_a, capacitor_b] = file.run_capacitor.clone();
    Roles {
        power_switch: file.power_switch.clone(),
        lid_switch: file.lid_switch.clone(),
        lever_switch: file.lever_switch.clone(),
        protector: file.protector.clone(),
        outputs: OutputContacts {
            motor_forward: outputs.motor_forward.clone(),
            motor_reverse: outputs.motor_reverse.clone(),
            inlet_valve: outputs.inlet_valve.clone(),
            hot_valve: outputs.hot_valve.clone(),
            drain_motor: outputs.drain_motor.clone(),
            drain_pump: outputs.drain_pump.clone(),
            timer: outputs.timer.clone(),
        },
        level_switch: file.level_switch.as_ref().map(level_switch),
        coils: Coils {
            inlet_valve: coils.inlet_valve.clone(),
            hot_valve: coils.hot_valve.clone(),
            drain_motor: coils.drain_motor.clone(),
            drain_pump: coils.drain_pump.clone(),
            timer_motor: coils.timer_motor.clone(),
        },
        lid_sense: file.lid_sense.as_ref().map(sense),
        lever_sense: file.lever_sense.as_ref().map(sense),
        plug_pins: file.plug_pins.clone(),
        socket: file.socket.clone(),
        cabinet: file.cabinet.clone(),
        run_capacitor: (capacitor_a, capacitor_b),
    }
}

fn level_switch(file: &LevelSwitchFile) -> LevelSwitchContacts {
    let section = |section: &LevelSectionFile| LevelSection {
        set_index: match section.level {
            LevelWord::Low => 0,
            LevelWord::Medium => 1,
            LevelWord::High => 2,
        },
        empty: section.empty.clone(),
        full: section.full.clone(),
    };
    let position = |p: &LevelPositionFile| (p.name.clone(), p.closed.clone());
    LevelSwitchContacts {
        sections: file.sections.iter().map(section).collect(),
        knob: file.knob.iter().map(position).collect(),
        usual: file.usual,
    }
}

fn sense(file: &SenseFile) -> SenseInput {
    SenseInput {
        node: file.node.clone(),
        against: file.against.clone(),
        is_ac: file.is_ac,
        closed_above_v: file.closed_above_v,
        open_below_v: file.open_below_v,
    }
}
