//! Instruments that need no circuit: where each goes, how it reads, what it shows.
//!
//! ```text
//! shown = round((value + scatter) / resolution) · resolution
//! scatter: triangular, standard deviation max(scatter_si, scatter_ratio · value)
//! ```
//! Resolution, scatter and time of each instrument: from memory of ordinary workshop tools.

use serde::Deserialize;
use serde::Serialize;

use crate::bench::gauge_scales as scales;
use crate::bench::gauge_scales::About;
use crate::text;

/// An instrument put to a place of the machine or the site.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Gauge {
    /// A measuring jug under a stream of water, by the watch.
    JugAndWatch,
    /// A watch, started now and stopped when what is watched ends.
    Watch,
    /// A pressure gauge on a tee in the supply line.
    PressureGauge,
    /// A water-filled U-tube on a tee in the air hose.
    UTube,
    /// An optical tachometer; it holds the highest speed of its ten seconds.
    Tachometer,
    /// A spirit level.
    SpiritLevel,
    /// A spring balance and a rule: how far a strand gives under 7 N.
    SpringBalance,
    /// A belt gauge: tension of a strand from the tone it gives when plucked.
    BeltGauge,
    /// A contact thermometer.
    Thermometer,
    /// A rule.
    Rule,
}

impl Gauge {
    /// All of them, water first, then what turns, then the rest.
    pub const ALL: [Gauge; 10] = [
        Gauge::JugAndWatch,
        Gauge::Watch,
        Gauge::PressureGauge,
        Gauge::UTube,
        Gauge::Tachometer,
        Gauge::SpringBalance,
        Gauge::BeltGauge,
        Gauge::Thermometer,
        Gauge::SpiritLevel,
        Gauge::Rule,
    ];

    /// What is known of it.
    pub fn about(self) -> &'static About {
        match self {
            Gauge::JugAndWatch => &scales::JUG,
            Gauge::Watch => &scales::WATCH,
            Gauge::PressureGauge => &scales::PRESSURE,
            Gauge::UTube => &scales::U_TUBE,
            Gauge::Tachometer => &scales::TACHOMETER,
            Gauge::SpiritLevel => &scales::LEVEL,
            Gauge::SpringBalance => &scales::BALANCE,
            Gauge::BeltGauge => &scales::BELT,
            Gauge::Thermometer => &scales::THERMOMETER,
            Gauge::Rule => &scales::RULE,
        }
    }

    /// The instrument of this name.
    pub fn of(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|gauge| gauge.about().id == id)
    }

    /// It stays in its line once it is fitted.
    pub fn is_fitted(self) -> bool {
        self.about().fitting_s > 0.0
    }

    /// It can stay where it is and be read again and again, as a recorder does.
    pub fn is_continuous(self) -> bool {
        matches!(
            self,
            Gauge::PressureGauge | Gauge::UTube | Gauge::Tachometer | Gauge::Thermometer
        )
    }

    /// Standard deviation of a reading near this value, SI.
    pub fn scatter_si(self, value_si: f64) -> f64 {
        let about = self.about();
        let share = about.scatter_ratio * (value_si - about.zero_si).abs();
        share.max(about.scatter * about.unit_si)
    }

    /// Value as the scale resolves it, SI, with the words shown; none and `off the scale` when it
    /// is beyond the scale's end.
    pub fn shown(self, value_si: f64) -> (Option<f64>, String) {
        let about = self.about();
        let steps = libm::round((value_si - about.zero_si) / about.unit_si / about.resolution);
        let value = steps * about.resolution;
        if !value.is_finite() || value.abs() > about.limit {
            return (None, text!("off the scale").to_owned());
        }
        // A scale has no minus nothing.
        let value = if value == 0.0 { 0.0 } else { value };
        let decimals = if about.resolution < 1.0 { 1 } else { 0 };
        let text = format!("{value:.decimals$} {}", about.unit);
        (Some(about.zero_si + value * about.unit_si), text)
    }
}

/// One reading of such an instrument.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct GaugeReading {
    /// The instrument.
    pub gauge: Gauge,
    /// Name of the place.
    pub place: String,
    /// Value as the scale resolves it, SI; none when it is off the scale.
    #[serde(rename = "value")]
    pub value_si: Option<f64>,
    /// Value and unit as shown, such as `12.1 L/min`.
    pub display: String,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_instrument_is_named_as_in_a_log_and_goes_somewhere() {
        for gauge in Gauge::ALL {
            let written = serde_json::to_value(gauge).expect("writes");
            assert_eq!(written.as_str(), Some(gauge.about().id));
            assert_eq!(Gauge::of(gauge.about().id), Some(gauge));
            assert!(!gauge.about().places.is_empty());
        }
    }

    #[test]
    fn a_scale_shows_its_own_unit_and_no_more_than_it_resolves() {
        assert_eq!(Gauge::JugAndWatch.shown(2.0e-4).1, "12.0 L/min");
        assert_eq!(Gauge::Tachometer.shown(78.54).1, "750 r/min");
        assert_eq!(Gauge::Thermometer.shown(293.15).1, "20.0 °C");
        assert_eq!(Gauge::SpringBalance.shown(0.00512).1, "5.0 mm");
        assert_eq!(Gauge::SpiritLevel.shown(-1e-9).1, "0.0 mm/m");
    }

    #[test]
    fn what_is_kept_is_what_is_shown() {
        let (value, text) = Gauge::PressureGauge.shown(301_400.0);
        assert_eq!(text, "300 kPa");
        assert_eq!(value, Some(300_000.0));
        let (value, text) = Gauge::Thermometer.shown(293.3);
        assert_eq!(text, "20.0 °C");
        assert!((value.unwrap_or_default() - 293.15).abs() < 1e-9);
    }

    #[test]
    fn beyond_the_scale_there_is_no_number() {
        assert_eq!(Gauge::SpiritLevel.shown(0.2).0, None);
        assert_eq!(Gauge::BeltGauge.shown(f64::NAN).0, None);
    }

    #[test]
    fn a_millimetre_of_water_is_its_weight() {
        let pa = 998.2 * crate::units::STANDARD_GRAVITY_M_PER_S2 * 1e-3;
        assert!((scales::MM_WATER_PA - pa).abs() < 1e-3, "{pa}");
    }
}
