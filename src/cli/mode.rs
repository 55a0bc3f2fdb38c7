//! Modes of the instruments as people type them: as in a log, or with a hyphen.

use crate::bench::action::MeterMode;

/// The mode's name in logs.
pub fn id(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::AcVolts => "ac_volts",
        MeterMode::LowAcVolts => "low_ac_volts",
        MeterMode::DcVolts => "dc_volts",
        MeterMode::Ohms => "ohms",
        MeterMode::Continuity => "continuity",
        MeterMode::Capacitance => "capacitance",
        MeterMode::Frequency => "frequency",
        MeterMode::Diode => "diode",
        MeterMode::Amps => "amps",
        MeterMode::Clamp => "clamp",
        MeterMode::Insulation => "insulation",
        MeterMode::EarthBond => "earth_bond",
        MeterMode::Leakage => "leakage",
        MeterMode::TouchCurrent => "touch_current",
    }
}

/// The mode of a name.
pub fn of(word: &str) -> Option<MeterMode> {
    let word = word.replace('-', "_").to_lowercase();
    MeterMode::ALL.into_iter().find(|mode| id(*mode) == word)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_mode_is_named_as_in_a_log() {
        for mode in MeterMode::ALL {
            let in_log = serde_json::to_value(mode).expect("writes");
            assert_eq!(in_log.as_str(), Some(id(mode)));
            assert_eq!(of(id(mode)), Some(mode));
        }
    }

    #[test]
    fn a_hyphen_is_as_good_as_an_underscore() {
        assert_eq!(of("Earth-Bond"), Some(MeterMode::EarthBond));
        assert_eq!(of("volts"), None);
    }
}
