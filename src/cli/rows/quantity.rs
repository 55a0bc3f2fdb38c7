//! What a row asks for, and the floor below which it only says "nothing".
//!
//! Floors: 2 µV and 2 µA (the other program's solver stops there), 1e-6 N·m (torque of a
//! standstill by symmetry), 1 pF, and 2 nV for a charge after its decay (rounding left of 325 V).

use std::str::FromStr;

use crate::plant::harness::Instrument;

/// What a row asks for.
#[derive(Clone, Debug, PartialEq)]
pub enum Quantity {
    /// `A through ELEMENT`, or through a resistance of the set-up.
    Current {
        /// Name of the element or resistance.
        through: String,
    },
    /// `torque avg`.
    Torque,
    /// `level sensor frequency at MM mm`.
    LevelFrequency {
        /// Water column, m.
        column_m: f64,
    },
    /// An instrument between two nodes, such as `Vac(10M||100p) TBL-TBN`.
    Between {
        /// The instrument.
        instrument: Instrument,
        /// Names of the nodes under red and black.
        nodes: [String; 2],
    },
    /// `Vdc at plug pins T s after unplugging at peak (…)`.
    PlugPins {
        /// Time since the plug came out, s.
        after_s: f64,
        /// A 10 MΩ meter has been on the pins all the time.
        has_meter: bool,
        /// The transformer's connector is apart.
        is_transformer_pulled: bool,
    },
}

const REMEDY: &str = "it must be one of: A through ELEMENT, torque avg, level sensor frequency at \
    MM mm, Vac(10M||100p) A-B, Vac(loZ 4k) A-B, Vdc(10M) A-B, ohm A-B, ohm at 500 Vdc A-B, uF A-B, \
    Vdc at plug pins T s after unplugging at peak (no meter)";

impl FromStr for Quantity {
    type Err = &'static str;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        if let Some(through) = text.strip_prefix("A through ") {
            let through = through.trim().to_owned();
            return Ok(Quantity::Current { through });
        }
        let words: Vec<&str> = text.split_whitespace().collect();
        match words.as_slice() {
            ["torque", "avg"] => Ok(Quantity::Torque),
            ["level", "sensor", "frequency", "at", mm, ..] => Ok(Quantity::LevelFrequency {
                column_m: number(mm)? / 1000.0,
            }),
            ["Vdc", "at", "plug", "pins", time, ..] => Ok(Quantity::PlugPins {
                after_s: number(time)?,
                has_meter: text.contains("(10M meter"),
                is_transformer_pulled: text.contains("transformer pulled"),
            }),
            [first, .., places] => {
                let (a, b) = places.split_once('-').ok_or(REMEDY)?;
                Ok(Quantity::Between {
                    instrument: instrument(first, text)?,
                    nodes: [a.to_owned(), b.to_owned()],
                })
            }
            _ => Err(REMEDY),
        }
    }
}

fn number(word: &str) -> Result<f64, &'static str> {
    let number = word.parse::<f64>().ok();
    number
        .filter(|n| *n >= 0.0 && n.is_finite())
        .ok_or("the number in it must be finite and not negative")
}

fn instrument(first: &str, text: &str) -> Result<Instrument, &'static str> {
    Ok(match first {
        "Vac(10M||100p)" => Instrument::AcVolts,
        "Vac(loZ" => Instrument::AcVoltsLowImpedance,
        "Vdc(10M)" => Instrument::DcVolts,
        "ohm" if text.contains("at 500 Vdc") => Instrument::Insulation,
        "ohm" => Instrument::Ohms,
        "uF" => Instrument::Capacitance,
        _ => return Err(REMEDY),
    })
}

impl Quantity {
    /// Difference, in the row's unit, that a row may always have.
    pub fn floor(&self) -> f64 {
        match self {
            Quantity::Current { .. } => 2e-6,
            Quantity::Torque => 1e-6,
            Quantity::LevelFrequency { .. } => 0.0,
            Quantity::PlugPins { .. } => 2e-9,
            Quantity::Between { instrument, .. } => match instrument {
                Instrument::AcVolts
                | Instrument::AcVoltsLowImpedance
                | Instrument::DcVolts
                | Instrument::Diode
                | Instrument::TouchCurrent
                | Instrument::Amps => 2e-6,
                Instrument::Capacitance => 1e-6,
                Instrument::Ohms | Instrument::Insulation => 0.0,
            },
        }
    }

    /// The row's unit over the SI unit.
    pub fn scale(&self) -> f64 {
        match self {
            Quantity::Between {
                instrument: Instrument::Capacitance,
                ..
            } => 1e6,
            _ => 1.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_kind_of_words_is_understood() {
        let words = [
            "A through RCL",
            "torque avg",
            "level sensor frequency at 280 mm",
            "Vac(loZ 4k) WIV1-WIV2",
            "ohm at 500 Vdc PL-PE",
            "Vdc at plug pins 1.0 s after unplugging at peak (10M meter)",
        ];
        for text in words {
            assert!(Quantity::from_str(text).is_ok(), "{text}");
        }
    }

    #[test]
    fn words_that_name_no_two_places_are_refused() {
        for text in [
            "",
            "ohm",
            "ohm PL",
            "level sensor frequency at x mm",
            "Vac(9M) A-B",
        ] {
            assert!(Quantity::from_str(text).is_err(), "{text}");
        }
    }

    #[test]
    fn a_meter_on_the_pins_is_told_from_none() {
        let pins = |text| match Quantity::from_str(text) {
            Ok(Quantity::PlugPins { has_meter, .. }) => Some(has_meter),
            _ => None,
        };
        assert_eq!(pins("Vdc at plug pins 1.0 s after (no meter)"), Some(false));
        assert_eq!(pins("Vdc at plug pins 1.0 s after (10M meter)"), Some(true));
    }
}
