//! What each source of sound is made of, and how loud a level is played.
//!
//! ```text
//! gain = 10^((level − full)/20)        level in dB at 1 m, full = the level played at full scale
//! ```
//! Source: definition of the sound pressure level; timbres are design choice.

use crate::plant::sound::SoundKind;

/// The level that is played at full scale, dB: a tub banging against the cabinet.
const FULL_SCALE_DB: f64 = 75.0;
/// Quieter than this is not worth a voice.
const SILENT_GAIN: f64 = 1.0e-3;

/// What a voice is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Timbre {
    /// A tone with overtones.
    Buzz,
    /// A soft tone.
    Tone,
    /// Noise in a band round the source's tone; `q` is the band's sharpness.
    Noise {
        /// Middle frequency over bandwidth.
        q: f32,
    },
}

/// What a kind of source is made of.
pub fn timbre(kind: SoundKind) -> Timbre {
    match kind {
        SoundKind::Hum | SoundKind::Pump | SoundKind::ValveHum | SoundKind::ActuatorHum => {
            Timbre::Buzz
        }
        SoundKind::Gear | SoundKind::ActuatorWhirr | SoundKind::Gurgle | SoundKind::WaterHammer => {
            Timbre::Tone
        }
        SoundKind::BeltSqueal | SoundKind::BearingWhine => Timbre::Noise { q: 25.0 },
        SoundKind::BrakeRub | SoundKind::Scraping | SoundKind::Rattle => Timbre::Noise { q: 8.0 },
        SoundKind::BeltPass
        | SoundKind::ReversalKnock
        | SoundKind::CabinetKnock
        | SoundKind::ActuatorClack => Timbre::Noise { q: 3.0 },
        SoundKind::MotorAir
        | SoundKind::Swash
        | SoundKind::SpinAir
        | SoundKind::BasketBearing
        | SoundKind::FillJet
        | SoundKind::ValveHiss
        | SoundKind::DrainFlow => Timbre::Noise { q: 0.8 },
    }
}

/// Gain of a source at this level, 0 to 1; 0 for what would not be heard.
pub fn gain(level_db: f64, volume: f64) -> f32 {
    let gain = libm::pow(10.0, (level_db - FULL_SCALE_DB) / 20.0) * volume;
    if gain.is_finite() && gain > SILENT_GAIN {
        gain.min(1.0) as f32
    } else {
        0.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn twenty_decibels_are_a_factor_of_ten() {
        let ratio = gain(60.0, 1.0) / gain(40.0, 1.0);
        assert!((ratio - 10.0).abs() < 1e-4, "{ratio}");
    }

    #[test]
    fn nothing_plays_louder_than_full_and_nothing_inaudible_plays() {
        assert!((gain(120.0, 1.0) - 1.0).abs() < 1e-6);
        assert!(gain(10.0, 1.0).abs() < 1e-9);
        assert!(gain(60.0, 0.0).abs() < 1e-9);
        assert!(gain(f64::NAN, 1.0).abs() < 1e-9);
    }
}
