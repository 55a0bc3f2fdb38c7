//! What a fault changes in a machine, a line a value, in words and units.

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::language::decimals;
use crate::language::said;
use crate::language::worded;
use crate::machine::FaultDef;
use crate::machine::MachineModel;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::plant::faults::ChangeTo;
use crate::plant::harness::WiringChange;
use crate::plant::harness::WiringModel;
use crate::plant::harness::motor::OPEN_OHM;
use crate::plant::params::PlantParams;
use crate::say;

/// What a fault changes at full severity, a line a value, in words and units.
pub fn changed_values(model: &MachineModel, fault: &FaultDef) -> Vec<String> {
    let wiring = &model.wiring;
    let of_wiring = fault
        .wiring
        .iter()
        .map(|change| wiring_words(wiring, change));
    let of_plant = fault.plant.iter().map(|change| {
        let about = PlantParams::about(&change.param);
        let what = about.map_or(change.param.as_str(), |about| said(about.words));
        let unit = unit_of(&change.param);
        match (change.to, model.plant.get(&change.param)) {
            (ChangeTo::Set(to), Ok(from)) => say!(
                "{what}: {from} → {to} {unit}",
                what,
                from = short(from),
                to = short(to),
                unit
            ),
            (ChangeTo::Set(to), Err(_)) => {
                say!("{what}: {to} {unit}", what, to = short(to), unit)
            }
            (ChangeTo::Scale(by), _) => say!("{what}: × {factor}", what, factor = short(by)),
        }
    });
    let of_control = fault.control.iter().map(|(name, value)| {
        let what = name.trim_start_matches("control.").replace('_', " ");
        say!("{what}: {to}", what, to = short(*value))
    });
    let lines = of_wiring.chain(of_plant).chain(of_control);
    lines.map(|line| line.trim_end().to_owned()).collect()
}

fn wiring_words(model: &WiringModel, change: &WiringChange) -> String {
    let what = |id: &ElementId| worded(&model.elements[id.index()].what);
    let value = |id: &ElementId, to: f64| match model.elements[id.index()].kind {
        ElementKind::Capacitor { .. } => display::digits(MeterMode::Capacitance, Some(to)).1,
        ElementKind::Inductor { .. } => format!("{} H", short(to)),
        ElementKind::Source { .. } => format!("{} V", short(to)),
        _ => ohms(to),
    };
    match change {
        WiringChange::Set { element, value: to } => {
            say!(
                "{what}: {to}",
                what = what(element),
                to = value(element, *to)
            )
        }
        WiringChange::Open { element } => say!("{what}: open", what = what(element)),
        WiringChange::ClosedResistance { contact, ohm } => {
            say!(
                "{what}, closed: {to}",
                what = what(contact),
                to = ohms(*ohm)
            )
        }
        WiringChange::Scale { element, factor } => {
            say!(
                "{what}: × {factor}",
                what = what(element),
                factor = short(*factor)
            )
        }
        WiringChange::AddResistor { name, ohm, .. } => {
            say!("a path, {name}: {to}", name, to = ohms(*ohm))
        }
        WiringChange::SupplyVoltage { v } => say!("supply: {n} V", n = short(*v)),
        WiringChange::ExchangeLineAndNeutral => {
            say!("line and neutral exchanged at the socket").to_owned()
        }
        WiringChange::ExchangeFarEnds { elements: [a, b] } => {
            say!(
                "exchanged: {one} and {other}",
                one = what(a),
                other = what(b)
            )
        }
        WiringChange::OpenWindings { is_open } => match is_open {
            [true, true] => say!("motor winding 1 and 2: open").to_owned(),
            [true, false] => say!("motor winding {n}: open", n = 1),
            [false, true] => say!("motor winding {n}: open", n = 2),
            [false, false] => String::new(),
        },
        WiringChange::ShortedTurns {
            winding,
            share_ratio,
            short_ohm,
        } => say!(
            "motor winding {n}: {percent} % of its turns shorted by {short}",
            n = winding + 1,
            percent = format!("{:.0}", 100.0 * share_ratio),
            short = ohms(*short_ohm)
        ),
        WiringChange::WindingToFrame {
            winding, path_ohm, ..
        } => say!(
            "motor winding {n} to the frame: {path}",
            n = winding + 1,
            path = ohms(*path_ohm)
        ),
        WiringChange::Seized => say!("the motor's rotor is stuck").to_owned(),
        WiringChange::LoadFactor { factor } => {
            say!("load on the motor: × {factor}", factor = short(*factor))
        }
        WiringChange::No5V => say!("the 5 V supply of the board gives nothing").to_owned(),
    }
}

fn ohms(ohm: f64) -> String {
    match ohm {
        o if o >= OPEN_OHM => say!("open" as "of a circuit").to_owned(),
        o if o >= 1e6 => format!("{} MΩ", short(o / 1e6)),
        o if o >= 1e3 => format!("{} kΩ", short(o / 1e3)),
        o => format!("{} Ω", short(o)),
    }
}

/// Three digits that say something.
fn short(value: f64) -> String {
    let size = value.abs();
    decimals(match size {
        s if s > 0.0 && !(1e-3..1e6).contains(&s) => format!("{value:.2e}"),
        s if s < 1.0 => format!("{value:.3}"),
        s if s < 10.0 => format!("{value:.2}"),
        s if s < 100.0 => format!("{value:.1}"),
        _ => format!("{value:.0}"),
    })
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
