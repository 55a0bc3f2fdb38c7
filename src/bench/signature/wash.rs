//! A whole wash, sound and faulty beside each other.
//!
//! A figure differs when it moved by more than what two washes of sound machines differ by (common
//! practice), and 2 %.

use std::sync::Arc;

use crate::language::decimals;
use crate::language::said;
use crate::language::worded;
use crate::machine::ActiveFault;
use crate::machine::CycleFigures;
use crate::machine::FaultDef;
use crate::machine::Machine;
use crate::machine::MachineError;
use crate::machine::MachineModel;
use crate::machine::Setup;
use crate::say;
use crate::text;

/// A figure of the whole wash that differs.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// What, plain words.
    pub what: &'static str,
    /// Sound, with its unit.
    pub sound: String,
    /// Faulty, with its unit.
    pub faulty: String,
}

/// A wash of a usual load in a sound machine, for comparison.
///
/// # Errors
/// When the wiring cannot be solved.
pub fn sound_wash(model: &Arc<MachineModel>) -> Result<CycleFigures, MachineError> {
    wash(model, &[])
}

/// What a fault makes of a whole wash, beside a sound one; only what differs.
///
/// # Errors
/// When the wiring cannot be solved.
pub fn changed_wash(
    model: &Arc<MachineModel>,
    fault: &FaultDef,
    sound: &CycleFigures,
) -> Result<Vec<Change>, MachineError> {
    let faulty = wash(model, &[ActiveFault::constant(&fault.id)])?;
    Ok(changes(sound, &faulty))
}

/// Load of the wash, kg, and the room, K. Design choice.
const USUAL: (f64, f64) = (4.0, 298.15);

fn wash(model: &Arc<MachineModel>, faults: &[ActiveFault]) -> Result<CycleFigures, MachineError> {
    let mut machine = Machine::new(model, Setup::of_faults(faults, 1))?;
    machine.settle_in(USUAL.0, USUAL.1);
    machine.stand_ready();
    machine.trial()
}

/// One figure of a wash: words, value, what it scatters by, digits, unit.
type Figure = (
    &'static str,
    fn(&CycleFigures) -> f64,
    f64,
    usize,
    &'static str,
);

const FIGURES: [Figure; 16] = [
    (text!("first fill"), |f| f.fill_s, 10.0, 0, "s"),
    (
        text!("water level while washing"),
        |f| 1e3 * f.level_m,
        8.0,
        0,
        "mm",
    ),
    (
        text!("pulsator, spin direction"),
        |f| RPM * f.pulsator_forward_rad_per_s,
        8.0,
        0,
        "r/min",
    ),
    (
        text!("pulsator, other direction"),
        |f| RPM * f.pulsator_reverse_rad_per_s,
        8.0,
        0,
        "r/min",
    ),
    (
        text!("basket creeps while washing"),
        |f| RPM * f.creep_rad_per_s,
        3.0,
        0,
        "r/min",
    ),
    (text!("drain until empty"), |f| f.drain_s, 10.0, 0, "s"),
    (
        text!("fastest spin"),
        |f| RPM * f.spin_rad_per_s,
        15.0,
        0,
        "r/min",
    ),
    (
        text!("times the load was spread again"),
        |f| f64::from(f.corrections),
        0.5,
        0,
        "",
    ),
    (
        text!("widest swing of the tub"),
        |f| 1e3 * f.swing_m,
        3.0,
        0,
        "mm",
    ),
    (
        text!("water left in the load per dry mass"),
        |f| f.moisture_ratio,
        0.05,
        2,
        "kg/kg",
    ),
    (text!("water used"), |f| f.water_kg, 6.0, 0, "L"),
    (text!("water on the floor"), |f| f.puddle_kg, 0.02, 2, "L"),
    (
        text!("hottest winding"),
        |f| f.winding_k - crate::units::CELSIUS_ZERO_K,
        4.0,
        0,
        "°C",
    ),
    (
        text!("times the motor's protector opened"),
        |f| f64::from(f.trips),
        0.5,
        0,
        "",
    ),
    (
        text!("basket stops after the lid is opened"),
        |f| f.stop_s,
        0.7,
        1,
        "s",
    ),
    (text!("loudest moment"), |f| f.loudness_db, 2.0, 0, "dB"),
];

const RPM: f64 = 30.0 / core::f64::consts::PI;

fn changes(sound: &CycleFigures, faulty: &CycleFigures) -> Vec<Change> {
    let mut list = Vec::new();
    if sound.alarm != faulty.alarm {
        let words = |alarm: &Option<String>| match alarm {
            Some(alarm) => worded(alarm).into_owned(),
            None => say!("none" as "alarms").to_owned(),
        };
        list.push(Change {
            what: say!("alarm"),
            sound: words(&sound.alarm),
            faulty: words(&faulty.alarm),
        });
    }
    let mut differing: Vec<(f64, Change)> = FIGURES
        .iter()
        .filter_map(|(what, value, scatter, digits, unit)| {
            let (a, b) = (value(sound), value(faulty));
            let size = (a - b).abs() / (scatter + 0.02 * a.abs().max(b.abs()));
            let words = |x: f64| {
                let digits = decimals(format!("{x:.digits$}"));
                format!("{digits} {unit}").trim_end().to_owned()
            };
            (size > 1.0).then(|| {
                (
                    size,
                    Change {
                        what: said(what),
                        sound: words(a),
                        faulty: words(b),
                    },
                )
            })
        })
        .collect();
    differing.sort_by(|a, b| b.0.total_cmp(&a.0));
    list.extend(differing.into_iter().map(|(_, change)| change));
    list
}
