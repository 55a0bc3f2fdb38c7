//! What a fault changes in a machine, a line a value, in words and units.

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::machine::FaultDef;
use crate::machine::MachineModel;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::plant::faults::ChangeTo;
use crate::plant::harness::WiringChange;
use crate::plant::harness::WiringModel;
use crate::plant::harness::motor::OPEN_OHM;
use crate::plant::params::PlantParams;

/// What a fault changes at full severity, a line a value, in words and units.
pub fn changed_values(model: &MachineModel, fault: &FaultDef) -> Vec<String> {
    let wiring = &model.wiring;
    let of_wiring = fault
        .wiring
        .iter()
        .map(|change| wiring_words(wiring, change));
    let of_plant = fault.plant.iter().map(|change| {
        let about = PlantParams::about(&change.param);
        let what = about.map_or(change.param.clone(), |about| about.words.to_owned());
        let unit = unit_of(&change.param);
        match (change.to, model.plant.get(&change.param)) {
            (ChangeTo::Set(to), Ok(from)) => {
                format!("{what}: {} → {} {unit}", short(from), short(to))
            }
            (ChangeTo::Set(to), Err(_)) => format!("{what}: {} {unit}", short(to)),
            (ChangeTo::Scale(by), _) => format!("{what}: × {}", short(by)),
        }
    });
    let of_control = fault.control.iter().map(|(name, value)| {
        let what = name.trim_start_matches("control.").replace('_', " ");
        format!("{what}: {}", short(*value))
    });
    let lines = of_wiring.chain(of_plant).chain(of_control);
    lines.map(|line| line.trim_end().to_owned()).collect()
}

fn wiring_words(model: &WiringModel, change: &WiringChange) -> String {
    let what = |id: &ElementId| model.elements[id.index()].what.clone();
    let value = |id: &ElementId, to: f64| match model.elements[id.index()].kind {
        ElementKind::Capacitor { .. } => display::digits(MeterMode::Capacitance, Some(to)).1,
        ElementKind::Inductor { .. } => format!("{} H", short(to)),
        ElementKind::Source { .. } => format!("{} V", short(to)),
        _ => ohms(to),
    };
    match change {
        WiringChange::Set { element, value: to } => {
            format!("{}: {}", what(element), value(element, *to))
        }
        WiringChange::Open { element } => format!("{}: open", what(element)),
        WiringChange::ClosedResistance { contact, ohm } => {
            format!("{}, closed: {}", what(contact), ohms(*ohm))
        }
        WiringChange::Scale { element, factor } => {
            format!("{}: × {}", what(element), short(*factor))
        }
        WiringChange::AddResistor { name, ohm, .. } => format!("a path, {name}: {}", ohms(*ohm)),
        WiringChange::SupplyVoltage { v } => format!("supply: {} V", short(*v)),
        WiringChange::ExchangeLineAndNeutral => {
            "line and neutral exchanged at the socket".to_owned()
        }
        WiringChange::ExchangeFarEnds { elements: [a, b] } => {
            format!("exchanged: {} and {}", what(a), what(b))
        }
        WiringChange::OpenWindings { is_open } => {
            let open: Vec<String> = (0..2)
                .filter(|k| is_open[*k])
                .map(|k| format!("{}", k + 1))
                .collect();
            format!("motor winding {}: open", open.join(" and "))
        }
        WiringChange::ShortedTurns {
            winding,
            share_ratio,
            short_ohm,
        } => format!(
            "motor winding {}: {:.0} % of its turns shorted by {}",
            winding + 1,
            100.0 * share_ratio,
            ohms(*short_ohm)
        ),
        WiringChange::WindingToFrame {
            winding, path_ohm, ..
        } => format!(
            "motor winding {} to the frame: {}",
            winding + 1,
            ohms(*path_ohm)
        ),
        WiringChange::Seized => "the motor's rotor is stuck".to_owned(),
        WiringChange::LoadFactor { factor } => format!("load on the motor: × {}", short(*factor)),
        WiringChange::No5V => "the 5 V supply of the board gives nothing".to_owned(),
    }
}

fn ohms(ohm: f64) -> String {
    match ohm {
        o if o >= OPEN_OHM => "open".to_owned(),
        o if o >= 1e6 => format!("{} MΩ", short(o / 1e6)),
        o if o >= 1e3 => format!("{} kΩ", short(o / 1e3)),
        o => format!("{} Ω", short(o)),
    }
}

/// Three digits that say something.
fn short(value: f64) -> String {
    let size = value.abs();
    match size {
        s if s > 0.0 && !(1e-3..1e6).contains(&s) => format!("{value:.2e}"),
        s if s < 1.0 => format!("{value:.3}"),
        s if s < 10.0 => format!("{value:.2}"),
        s if s < 100.0 => format!("{value:.1}"),
        _ => format!("{value:.0}"),
    }
}

/// Unit at the end of a parameter's name, as people write it; nothing for a share.
fn unit_of(param: &str) -> String {
    const UNITS: [(&str, &str); 17] = [
        ("_m3_per_s", "m³/s"),
        ("_kg_per_s", "kg/s"),
        ("_m_per_s", "m/s"),
        ("_w_per_k", "W/K"),
        ("_kg_m2", "kg·m²"),
        ("_n_m", "N·m"),
        ("_kg_m", "kg·m"),
        ("_pa", "Pa"),
        ("_kg", "kg"),
        ("_rad", "rad"),
        ("_hz", "Hz"),
        ("_n", "N"),
        ("_k", "K"),
        ("_m", "m"),
        ("_s", "s"),
        ("_h", "H"),
        ("_f", "F"),
    ];
    let found = UNITS.iter().find(|(end, _)| param.ends_with(end));
    found.map_or(String::new(), |(_, unit)| (*unit).to_owned())
}
