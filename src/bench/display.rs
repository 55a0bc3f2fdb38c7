//! What the instruments show: digits, unit, over-range and warnings.
//!
//! A hand meter of 6000 counts that ranges by itself; resolution is one count of the range. Range
//! limits are common practice: 50 MΩ for resistance, 4 GΩ for insulation. Test leads add 0.1 Ω to
//! resistance, which a two-lead meter cannot take away by itself.

use crate::bench::action::MeterMode;
use crate::bench::notebook::Reading;
use crate::bench::state::MeterSetting;
use crate::machine::Measured;

/// Counts of the display.
const COUNTS: f64 = 6000.0;

struct Range {
    /// SI value of one displayed unit.
    unit_si: f64,
    unit: &'static str,
    /// Full scale in displayed units.
    full: f64,
}

const fn range(unit_si: f64, unit: &'static str, full: f64) -> Range {
    Range {
        unit_si,
        unit,
        full,
    }
}

const VOLTS: [Range; 3] = [
    range(1.0, "V", 6.0),
    range(1.0, "V", 60.0),
    range(1.0, "V", 1000.0),
];
const OHMS: [Range; 6] = [
    range(1.0, "Ω", 600.0),
    range(1e3, "kΩ", 6.0),
    range(1e3, "kΩ", 60.0),
    range(1e3, "kΩ", 600.0),
    range(1e6, "MΩ", 6.0),
    range(1e6, "MΩ", 50.0),
];
const TONE_OHMS: [Range; 1] = [range(1.0, "Ω", 600.0)];
const FARADS: [Range; 4] = [
    range(1e-9, "nF", 60.0),
    range(1e-9, "nF", 600.0),
    range(1e-6, "µF", 6.0),
    range(1e-6, "µF", 600.0),
];
const HERTZ: [Range; 5] = [
    range(1.0, "Hz", 60.0),
    range(1.0, "Hz", 600.0),
    range(1e3, "kHz", 6.0),
    range(1e3, "kHz", 60.0),
    range(1e3, "kHz", 600.0),
];
const DROP: [Range; 1] = [range(1.0, "V", 2.0)];
const AMPS: [Range; 2] = [range(1.0, "A", 6.0), range(1.0, "A", 60.0)];
const LEAKAGE: [Range; 3] = [
    range(1e-3, "mA", 6.0),
    range(1e-3, "mA", 60.0),
    range(1.0, "A", 60.0),
];
const MEGOHMS: [Range; 4] = [
    range(1e3, "kΩ", 600.0),
    range(1e6, "MΩ", 6.0),
    range(1e6, "MΩ", 600.0),
    range(1e9, "GΩ", 4.0),
];
const BOND: [Range; 2] = [range(1.0, "Ω", 6.0), range(1.0, "Ω", 60.0)];

fn ranges(mode: MeterMode) -> &'static [Range] {
    match mode {
        MeterMode::AcVolts | MeterMode::LowAcVolts | MeterMode::DcVolts => &VOLTS,
        MeterMode::Ohms => &OHMS,
        MeterMode::Continuity => &TONE_OHMS,
        MeterMode::Capacitance => &FARADS,
        MeterMode::Frequency => &HERTZ,
        MeterMode::Diode => &DROP,
        MeterMode::Clamp | MeterMode::Amps => &AMPS,
        MeterMode::Leakage | MeterMode::TouchCurrent => &LEAKAGE,
        MeterMode::Insulation => &MEGOHMS,
        MeterMode::EarthBond => &BOND,
    }
}

/// Readings closer than this are the same whatever their ratio, in the mode's SI unit: what a hand
/// meter, its leads and a used machine scatter by. Common practice.
pub fn scatter_si(mode: MeterMode) -> f64 {
    match mode {
        MeterMode::AcVolts | MeterMode::LowAcVolts | MeterMode::DcVolts => 0.5,
        MeterMode::Ohms | MeterMode::Continuity => 0.3,
        MeterMode::EarthBond => 0.05,
        MeterMode::Insulation => 1e5,
        MeterMode::Capacitance => 0.1e-6,
        MeterMode::Frequency => 20.0,
        MeterMode::Diode => 0.02,
        MeterMode::Clamp | MeterMode::Amps => 0.02,
        MeterMode::Leakage | MeterMode::TouchCurrent => 0.2e-3,
    }
}

/// The reading an instrument set like this shows for what is there.
pub fn reading(setting: &MeterSetting, measured: Measured) -> Reading {
    let (value, display) = digits(setting.mode, measured.value_si);
    let warning = (setting.mode.needs_dead_circuit() && measured.foreign_v > 1.0)
        .then(|| format!("voltage on the circuit: about {:.0} V", measured.foreign_v));
    Reading {
        mode: setting.mode,
        red: setting.red.clone(),
        black: setting.black.clone(),
        value,
        display,
        warning,
    }
}

/// Rounded value in SI and the digits shown; none and `OL` when over range.
pub fn digits(mode: MeterMode, value_si: Option<f64>) -> (Option<f64>, String) {
    let Some(value_si) = value_si.filter(|v| v.is_finite()) else {
        return (None, "OL".to_owned());
    };
    let fits = |r: &&Range| value_si.abs() / r.unit_si < r.full;
    let Some(range) = ranges(mode).iter().find(fits) else {
        return (None, "OL".to_owned());
    };
    let decimals = decimals(range.full);
    let shown = value_si / range.unit_si;
    let text = format!("{shown:.decimals$}");
    let rounded: f64 = text.parse().unwrap_or(shown);
    // A display has no minus nothing.
    let text = if rounded == 0.0 {
        format!("{:.decimals$}", 0.0)
    } else {
        text
    };
    (
        Some(rounded * range.unit_si),
        format!("{text} {}", range.unit),
    )
}

/// One count of the display in SI, and the counts of the range that shows `value_si`; of the highest
/// range when the value is over it.
pub fn resolution_si(mode: MeterMode, value_si: Option<f64>) -> (f64, f64) {
    let all = ranges(mode);
    let fits = |r: &&Range| value_si.is_some_and(|v| v.abs() / r.unit_si < r.full);
    let Some(range) = all.iter().find(fits).or(all.last()) else {
        return (1.0, COUNTS);
    };
    let count = libm::pow(10.0, -(decimals(range.full) as f64));
    (count * range.unit_si, range.full / count)
}

/// Decimals that one count of the range needs.
fn decimals(full: f64) -> usize {
    match full {
        f if f <= COUNTS / 1000.0 => 3,
        f if f <= COUNTS / 100.0 => 2,
        _ => 1,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shown(mode: MeterMode, value: f64) -> String {
        digits(mode, Some(value)).1
    }

    #[test]
    fn a_winding_reads_in_tenths_of_an_ohm() {
        assert_eq!(shown(MeterMode::Ohms, 21.047), "21.0 Ω");
        assert_eq!(shown(MeterMode::Ohms, 3900.0), "3.900 kΩ");
    }

    #[test]
    fn an_open_circuit_reads_ol() {
        assert_eq!(shown(MeterMode::Ohms, 2.0e8), "OL");
        assert_eq!(digits(MeterMode::Ohms, None), (None, "OL".to_owned()));
    }

    #[test]
    fn mains_reads_in_tenths_of_a_volt() {
        assert_eq!(shown(MeterMode::AcVolts, 230.04), "230.0 V");
        assert_eq!(shown(MeterMode::DcVolts, -0.0001), "0.000 V");
    }

    #[test]
    fn a_capacitor_reads_in_microfarads() {
        assert_eq!(shown(MeterMode::Capacitance, 1.0e-5), "10.0 µF");
    }

    #[test]
    fn the_value_kept_is_the_value_shown() {
        let (value, text) = digits(MeterMode::Clamp, Some(1.12145));
        assert_eq!(text, "1.121 A");
        assert!((value.unwrap_or_default() - 1.121).abs() < 1e-12);
    }
}
