//! Reads a machine file strictly and checks it whole: all problems come back at once.

use crate::plant::params::PlantParams;
use crate::scenario::check_control::check_control;
use crate::scenario::check_workshop::Surroundings;
use crate::scenario::check_workshop::check_workshop;
use crate::scenario::control_file::ControlFile;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::fault_file::ChangeFile;
use crate::scenario::fault_file::stands_for;
use crate::scenario::machine_file::MACHINE_FORMAT;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::machine_file::RatingPlateFile;
use crate::scenario::names::Names;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problems;
use crate::scenario::problem::quoted;
use crate::scenario::read::read;
use crate::scenario::roles_file::RolesFile;
use crate::scenario::to_wiring::wiring_model;

/// States of the data sheet beyond the wiring's own: what a person waits for.
const WAITED_FOR: [&str; 3] = ["service_test", "normal_program", "lid_opened_at_full_spin"];

/// Reads and checks a machine file; `file` is the name errors use.
///
/// The catalogue may add elements to the wiring (a bridge of moisture, a chafed wire) that parts
/// and works of the machine make good by name.
pub fn read_machine(
    file: &str,
    text: &str,
    catalogue: &CatalogueFile,
) -> Result<MachineFile, FileError> {
    let machine: MachineFile = read(file, text)?;
    let mut problems = Problems::new(file);
    check_machine(&machine, catalogue, &mut problems);
    problems.into_result(machine)
}

fn check_machine(machine: &MachineFile, catalogue: &CatalogueFile, problems: &mut Problems) {
    if machine.format != MACHINE_FORMAT {
        let remedy = format!("this version reads {}", quoted(MACHINE_FORMAT));
        problems.add("format", quoted(&machine.format), remedy);
    }
    problems.not_blank("id", &machine.id);
    problems.not_blank("name", &machine.name);
    check_plate(&machine.rating_plate, problems);
    check_wiring(machine, problems);
    check_plant(machine, problems);
    let around = surroundings(machine, catalogue);
    check_roles(&machine.roles, &around, problems);
    check_control(&machine.control, &around.elements, problems);
    check_workshop(&machine.workshop, &around, problems);
    check_lists(machine, problems);
}

fn check_plate(plate: &RatingPlateFile, problems: &mut Problems) {
    problems.in_range("rating_plate.supply_v", plate.supply_v, 50.0, 500.0);
    problems.in_range("rating_plate.supply_hz", plate.supply_hz, 10.0, 100.0);
    problems.in_range("rating_plate.input_w", plate.input_w, 1.0, 10_000.0);
    problems.in_range("rating_plate.load_kg", plate.load_kg, 0.1, 50.0);
    problems.in_range("rating_plate.mass_kg", plate.mass_kg, 1.0, 500.0);
    problems.in_range("rating_plate.water_low_mpa", plate.water_low_mpa, 0.0, 2.0);
    problems.in_range(
        "rating_plate.water_high_mpa",
        plate.water_high_mpa,
        0.0,
        2.0,
    );
    problems.in_range(
        "rating_plate.run_capacitor_uf",
        plate.run_capacitor_uf,
        0.1,
        1000.0,
    );
}

/// The wiring can be built.
fn check_wiring(machine: &MachineFile, problems: &mut Problems) {
    if let Err(error) = wiring_model("", &machine.wiring) {
        problems.take(error);
    }
}

/// Plant parameters are known and possible.
fn check_plant(machine: &MachineFile, problems: &mut Problems) {
    if let Err(error) = machine.plant_params() {
        problems.take(error);
    }
}

/// Names a wiring section defines, and what faults add to it.
pub struct WiringNames {
    /// Nodes.
    pub nodes: Names,
    /// Elements, the motor, and resistors that faults add.
    pub elements: Names,
}

/// Names of a machine's wiring.
pub fn wiring_names(machine: &MachineFile, catalogue: &CatalogueFile) -> WiringNames {
    let mut elements: Vec<&str> = machine.wiring.elements.keys().map(String::as_str).collect();
    elements.push(stands_for::MOTOR);
    for fault in &catalogue.faults {
        for change in fault.machines.get(&machine.id).into_iter().flatten() {
            if let ChangeFile::AddResistor { name, .. } = change {
                elements.push(name);
            }
        }
    }
    WiringNames {
        nodes: Names::known(
            "node of the wiring",
            machine.wiring.nodes.keys().map(String::as_str),
        ),
        elements: Names::known("element of the wiring", elements),
    }
}

/// Parameters of a control that faults change: what a person left set, or a key that sticks.
pub fn control_params() -> Names {
    let names = [
        "control.key_locked_ratio",
        "control.delay_s",
        "control.stuck_key_ratio",
    ];
    Names::known("control parameter", names)
}

/// Names that the other sections may use.
fn surroundings(machine: &MachineFile, catalogue: &CatalogueFile) -> Surroundings {
    let wiring = wiring_names(machine, catalogue);
    let params: Vec<String> = PlantParams::entries()
        .map(|(group, about)| format!("{group}.{}", about.field))
        .chain(control_params().iter().map(str::to_owned))
        .collect();
    let states = machine.wiring.states.keys().map(String::as_str);
    Surroundings {
        nodes: wiring.nodes,
        elements: wiring.elements,
        params: Names::known(
            "plant or control parameter",
            params.iter().map(String::as_str),
        ),
        states: Names::known("state", states.chain(WAITED_FOR)),
    }
}

fn check_roles(roles: &RolesFile, around: &Surroundings, problems: &mut Problems) {
    let single = [
        ("lid_switch", Some(&roles.lid_switch)),
        ("lever_switch", Some(&roles.lever_switch)),
        ("protector", Some(&roles.protector)),
        ("power_switch", roles.power_switch.as_ref()),
        ("coils.inlet_valve", Some(&roles.coils.inlet_valve)),
        ("coils.hot_valve", roles.coils.hot_valve.as_ref()),
        ("coils.drain_motor", Some(&roles.coils.drain_motor)),
        ("coils.drain_pump", roles.coils.drain_pump.as_ref()),
        ("coils.timer_motor", roles.coils.timer_motor.as_ref()),
    ];
    for (field, name) in single {
        if let Some(name) = name {
            around
                .elements
                .expect(&format!("roles.{field}"), name, problems);
        }
    }
    let outputs = &roles.outputs;
    let lists = [
        ("motor_forward", &outputs.motor_forward),
        ("motor_reverse", &outputs.motor_reverse),
        ("inlet_valve", &outputs.inlet_valve),
        ("hot_valve", &outputs.hot_valve),
        ("drain_motor", &outputs.drain_motor),
        ("drain_pump", &outputs.drain_pump),
        ("timer", &outputs.timer),
    ];
    for (field, names) in lists {
        around
            .elements
            .expect_all(&format!("roles.outputs.{field}"), names, problems);
    }
    around
        .elements
        .expect_all("roles.plug", &roles.plug, problems);
    check_level_switch(roles, around, problems);
    let nodes = [
        ("plug_pins", &roles.plug_pins[..]),
        ("socket", &roles.socket[..]),
        ("run_capacitor", &roles.run_capacitor[..]),
        (
            "logic_rail",
            roles.logic_rail.as_ref().map_or(&[], |r| &r[..]),
        ),
        (
            "level_pins",
            roles.level_pins.as_ref().map_or(&[], |r| &r[..]),
        ),
    ];
    for (field, names) in nodes {
        around
            .nodes
            .expect_all(&format!("roles.{field}"), names, problems);
    }
    around
        .nodes
        .expect("roles.cabinet", &roles.cabinet, problems);
}

/// Contacts of the pressure switch exist, and its knob stands somewhere.
fn check_level_switch(roles: &RolesFile, around: &Surroundings, problems: &mut Problems) {
    let Some(switch) = &roles.level_switch else {
        return;
    };
    let at = "roles.level_switch";
    for (index, section) in switch.sections.iter().enumerate() {
        let contacts = [("empty", &section.empty), ("full", &section.full)];
        for (field, names) in contacts {
            let path = format!("{at}.sections[{index}].{field}");
            around.elements.expect_all(&path, names, problems);
        }
    }
    for (index, position) in switch.knob.iter().enumerate() {
        let path = format!("{at}.knob[{index}].closed");
        around
            .elements
            .expect_all(&path, &position.closed, problems);
    }
    let count = switch.knob.len();
    if switch.usual as usize >= count.max(1) {
        let remedy = format!("the knob has {count} positions, counted from 0");
        problems.add(&format!("{at}.usual"), switch.usual, remedy);
    }
}

/// The workshop's words for programs and service steps are the control's.
fn check_lists(machine: &MachineFile, problems: &mut Problems) {
    let (ControlFile::Electronic(control), workshop) = (&machine.control, &machine.workshop) else {
        return;
    };
    let counts = [
        (
            "workshop.service_steps",
            workshop.service_steps.len(),
            control.service_steps.len(),
        ),
        (
            "workshop.programs",
            workshop.programs.len(),
            control.programs.len(),
        ),
    ];
    for (path, found, wanted) in counts {
        if found != wanted {
            problems.add(
                path,
                found,
                format!("the control has {wanted}: one line for each"),
            );
        }
    }
}
