//! What the instruments need, and what becomes of a reading in one that is not as it should be.
//!
//! ```text
//! shown = gain · measured · 0.8 / battery       below 0.8 the reference falls with the battery
//! insulation: · battery / 0.8                   its test voltage sags instead
//! broken lead: volts 0, farads 0, ohms over range; blown fuse: the 0.2 A range over range
//! ```
//! Common practice for the kinds of fault; their size is a design choice.

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::bench::notebook::Seen;
use crate::bench::visit::HandInstrument;
use crate::machine::Measured;
use crate::text;

/// Below this share of a fresh battery's voltage the reference no longer holds.
const HOLDS_RATIO: f64 = 0.8;
/// Below this share the display shows its battery sign.
const SIGN_RATIO: f64 = 0.7;
/// Two test leads with their tips together, Ω. Common practice.
pub(in crate::bench) const LEADS_OHM: f64 = 0.1;
/// Calibration is good for a year. Common practice.
const CALIBRATED_MONTHS: u32 = 12;

impl MeterMode {
    /// All modes, in the order a technician meets them on the instruments.
    pub const ALL: [MeterMode; 14] = [
        MeterMode::AcVolts,
        MeterMode::LowAcVolts,
        MeterMode::DcVolts,
        MeterMode::Ohms,
        MeterMode::Continuity,
        MeterMode::Capacitance,
        MeterMode::Frequency,
        MeterMode::Diode,
        MeterMode::Amps,
        MeterMode::Clamp,
        MeterMode::Insulation,
        MeterMode::EarthBond,
        MeterMode::Leakage,
        MeterMode::TouchCurrent,
    ];

    /// The mode needs a dead circuit: its own source drives the current.
    pub fn needs_dead_circuit(self) -> bool {
        matches!(
            self,
            MeterMode::Ohms
                | MeterMode::Continuity
                | MeterMode::Capacitance
                | MeterMode::Diode
                | MeterMode::Insulation
                | MeterMode::EarthBond
        )
    }

    /// The mode takes one conductor in jaws instead of two leads.
    pub fn is_clamp(self) -> bool {
        matches!(self, MeterMode::Clamp | MeterMode::Leakage)
    }
}

impl HandInstrument {
    /// What it makes of what is there.
    pub fn lies(&self, mode: MeterMode, truth: Measured) -> Measured {
        if self.lead_is_broken && !mode.is_clamp() {
            let value_si = match mode {
                MeterMode::AcVolts
                | MeterMode::LowAcVolts
                | MeterMode::DcVolts
                | MeterMode::Capacitance => Some(0.0),
                _ => None,
            };
            return Measured {
                value_si,
                foreign_v: 0.0,
            };
        }
        if self.fuse_is_blown && mode == MeterMode::EarthBond {
            return Measured {
                value_si: None,
                ..truth
            };
        }
        let sag_ratio = (self.battery_ratio / HOLDS_RATIO).clamp(0.05, 1.0);
        let battery_gain = match mode {
            MeterMode::Insulation => sag_ratio,
            _ => 1.0 / sag_ratio,
        };
        Measured {
            value_si: truth.value_si.map(|v| v * self.gain_ratio * battery_gain),
            ..truth
        }
    }

    /// Its own warning, while it still can give one.
    pub fn warning(&self) -> Option<String> {
        (self.battery_ratio < SIGN_RATIO).then(|| text!("the battery sign is on").to_owned())
    }

    /// What looking it over and holding its probes together gives.
    pub fn look_over(&self) -> Vec<Seen> {
        let touching = Measured {
            value_si: Some(LEADS_OHM),
            foreign_v: 0.0,
        };
        let shown = |mode| display::digits(mode, self.lies(mode, touching).value_si);
        let mut list = Vec::new();
        let mut add = |key: &str, amount: Option<f64>, text: String| {
            list.push(Seen {
                key: key.to_owned(),
                amount,
                text,
            });
        };
        for (mode, name) in [
            (MeterMode::Ohms, text!("ohms")),
            (MeterMode::EarthBond, text!("earth bond, 0.2 A")),
        ] {
            let (value, display) = shown(mode);
            let key = format!(
                "probes_together_{}",
                if value.is_some() { "read" } else { "open" }
            );
            add(&key, value, format!("probes together on {name}: {display}"));
        }
        let leads = if self.lead_is_cracked {
            ("lead_cracked", text!("a lead is cracked down to the wire"))
        } else {
            ("leads_whole", text!("leads whole to look at"))
        };
        add(leads.0, None, leads.1.to_owned());
        let volts_ratio = self.battery_ratio;
        let battery = if volts_ratio < HOLDS_RATIO {
            "battery_weak"
        } else {
            "battery_good"
        };
        add(
            battery,
            Some(volts_ratio),
            format!("battery at {:.0} % of its voltage", 100.0 * volts_ratio),
        );
        let months = self.calibrated_months_ago;
        let calibration = if months > CALIBRATED_MONTHS {
            "calibration_expired"
        } else {
            "calibration_in_date"
        };
        add(calibration, None, format!("calibrated {months} months ago"));
        let category = match self.category {
            0 | 1 => text!("no measurement category printed on it").to_owned(),
            n => format!(
                "category {} printed on it",
                ["II", "III", "IV"][(n.min(4) - 2) as usize]
            ),
        };
        add("category", Some(f64::from(self.category)), category);
        list
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shows(instrument: HandInstrument, mode: MeterMode, value: f64) -> Option<f64> {
        let truth = Measured {
            value_si: Some(value),
            foreign_v: 0.0,
        };
        instrument.lies(mode, truth).value_si
    }

    #[test]
    fn a_sound_instrument_shows_what_is_there() {
        for mode in MeterMode::ALL {
            assert_eq!(
                shows(HandInstrument::SOUND, mode, 12.5),
                Some(12.5),
                "{mode:?}"
            );
        }
    }

    #[test]
    fn a_broken_lead_shows_a_live_socket_dead() {
        let broken = HandInstrument {
            lead_is_broken: true,
            ..HandInstrument::SOUND
        };
        assert_eq!(shows(broken, MeterMode::AcVolts, 230.0), Some(0.0));
        assert_eq!(shows(broken, MeterMode::Ohms, 21.0), None);
        assert_eq!(shows(broken, MeterMode::Clamp, 1.1), Some(1.1));
    }

    #[test]
    fn a_flat_battery_reads_high_and_tests_insulation_low() {
        let flat = HandInstrument {
            battery_ratio: 0.4,
            ..HandInstrument::SOUND
        };
        assert_eq!(shows(flat, MeterMode::AcVolts, 230.0), Some(460.0));
        assert_eq!(shows(flat, MeterMode::Insulation, 2.0e6), Some(1.0e6));
        assert!(flat.warning().is_some() && HandInstrument::SOUND.warning().is_none());
    }

    #[test]
    fn a_blown_fuse_stops_the_current_range_alone() {
        let blown = HandInstrument {
            fuse_is_blown: true,
            ..HandInstrument::SOUND
        };
        assert_eq!(shows(blown, MeterMode::EarthBond, 0.05), None);
        assert_eq!(shows(blown, MeterMode::Ohms, 0.05), Some(0.05));
    }

    #[test]
    fn looking_it_over_shows_each_of_its_lies() {
        let keys = |i: HandInstrument| -> Vec<String> {
            i.look_over().into_iter().map(|s| s.key).collect()
        };
        let sound = keys(HandInstrument::SOUND);
        let lies = [
            HandInstrument {
                lead_is_broken: true,
                ..HandInstrument::SOUND
            },
            HandInstrument {
                lead_is_cracked: true,
                ..HandInstrument::SOUND
            },
            HandInstrument {
                fuse_is_blown: true,
                ..HandInstrument::SOUND
            },
            HandInstrument {
                battery_ratio: 0.5,
                ..HandInstrument::SOUND
            },
            HandInstrument {
                calibrated_months_ago: 30,
                ..HandInstrument::SOUND
            },
        ];
        for lie in lies {
            assert_ne!(keys(lie), sound, "{lie:?}");
        }
    }
}
