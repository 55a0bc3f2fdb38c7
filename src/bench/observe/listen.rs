//! Listening: the sources of sound that stand out, loudest first, worded as sound and never as
//! meaning.

use crate::bench::notebook::Seen;
use crate::bench::observe::seen_amount;
use crate::machine::Machine;
use crate::plant::sound::SoundKind;
use crate::text;

/// A source this far below the loudest is not heard beside it, dB. Common practice.
const MASKED_DB: f64 = 18.0;
/// Quieter than this is not heard in a kitchen, dB. From memory.
const AUDIBLE_DB: f64 = 27.0;

pub(super) fn heard(machine: &Machine) -> Vec<Seen> {
    let mut sources: Vec<_> = machine
        .sounds()
        .into_iter()
        .filter(|s| s.level_db > AUDIBLE_DB)
        .collect();
    sources.sort_by(|a, b| b.level_db.total_cmp(&a.level_db));
    let Some(loudest) = sources.first().map(|s| s.level_db) else {
        return Vec::new();
    };
    sources
        .into_iter()
        .filter(|s| s.level_db > loudest - MASKED_DB)
        .map(|s| {
            let (key, words) = said(s.kind);
            seen_amount(key, s.level_db.round(), words)
        })
        .collect()
}

/// Key and words of a sound, worded as sound.
fn said(kind: SoundKind) -> (&'static str, &'static str) {
    match kind {
        SoundKind::Hum => ("hum", text!("a steady hum")),
        SoundKind::MotorAir => ("motor_air", text!("a fan's rush from below")),
        SoundKind::BearingWhine => ("bearing_whine", text!("a thin whine from the motor")),
        SoundKind::BeltPass => ("belt_pass", text!("a soft thump at the belt's rate")),
        SoundKind::BeltSqueal => ("belt_squeal", text!("a squeal from below")),
        SoundKind::Gear => ("gear", text!("a gear's whine")),
        SoundKind::ReversalKnock => ("reversal_knock", text!("a knock at each reversal")),
        SoundKind::Swash => ("swash", text!("water swashing")),
        SoundKind::SpinAir => ("spin_air", text!("air rushing round the basket")),
        SoundKind::BasketBearing => ("basket_bearing", text!("a rumble once the basket turns")),
        SoundKind::Scraping => ("scraping", text!("a scrape once a turn")),
        SoundKind::CabinetKnock => ("cabinet_knock", text!("the tub bangs against the cabinet")),
        SoundKind::FillJet => ("fill_jet", text!("water running in")),
        SoundKind::ValveHiss => ("valve_hiss", text!("a hiss at the back")),
        SoundKind::ValveHum => ("valve_hum", text!("a faint hum at the back")),
        SoundKind::WaterHammer => ("water_hammer", text!("a thud in the pipe")),
        SoundKind::DrainFlow => ("drain_flow", text!("water running out")),
        SoundKind::Gurgle => ("gurgle", text!("a gurgle in the drain")),
        SoundKind::Pump => ("pump", text!("a pump's buzz")),
        SoundKind::ActuatorWhirr => ("actuator_whirr", text!("a small whirr from below")),
        SoundKind::ActuatorHum => ("actuator_hum", text!("a faint hum from below")),
        SoundKind::ActuatorClack => ("actuator_clack", text!("a clack from below")),
        SoundKind::Rattle => ("rattle", text!("something rattles in the cabinet")),
        SoundKind::BrakeRub => ("brake_rub", text!("a rub while the basket stops")),
    }
}
