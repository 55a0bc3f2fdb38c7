//! What a sound instrument makes of a value on its way to the display: leads, and an error of its own
//! within its class.
//!
//! ```text
//! ohms  = measured + 0.1                         both leads in series; the bond tester has four
//! class = measured ± u/2 (share · |measured| + counts · step)     u even in −1..1, one a mode
//! ```
//! Accuracies as data sheets of hand meters state them: common practice. That a healthy meter keeps
//! within half of its class: design choice. Limits: a clamp's burden is left out: 10 Ω behind 1000
//! turns is 10 µΩ in the conductor, less than one count of its display in any circuit here.

use std::sync::Arc;

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::bench::instrument::LEADS_OHM;
use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::machine::MachineError;
use crate::machine::Measured;
use crate::machine::draw_ratio;

/// Purpose of the draws that make an instrument its own.
const CLASS_PURPOSE: u64 = 0x696e_7374;
/// Share of its class that a healthy instrument is off by at most.
const HEALTHY_RATIO: f64 = 0.5;

/// What an instrument may be off by: a share of the reading and counts of the display.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Accuracy {
    /// Share of the reading.
    pub share_ratio: f64,
    /// Counts of the last digit.
    pub n_counts: u32,
}

/// The accuracy class of a mode.
pub fn accuracy(mode: MeterMode) -> Accuracy {
    let (share_ratio, n_counts) = match mode {
        MeterMode::AcVolts | MeterMode::LowAcVolts => (0.01, 3),
        MeterMode::DcVolts => (0.005, 2),
        MeterMode::Ohms | MeterMode::Continuity => (0.01, 5),
        MeterMode::Capacitance | MeterMode::Clamp | MeterMode::Leakage => (0.02, 5),
        MeterMode::Insulation => (0.05, 5),
        MeterMode::EarthBond | MeterMode::Amps | MeterMode::TouchCurrent => (0.02, 5),
        MeterMode::Frequency => (0.0005, 2),
        MeterMode::Diode => (0.01, 3),
    };
    Accuracy {
        share_ratio,
        n_counts,
    }
}

/// What the instrument in hand makes of a value within its class: the `nth` instrument of a job with
/// this seed. One that has nothing on its probes shows nothing.
pub fn within_class(mode: MeterMode, truth: Measured, seed: u64, nth: u32) -> Measured {
    let class = accuracy(mode);
    let value_si = truth.value_si.map(|value| {
        let (step_si, _) = display::resolution_si(mode, Some(value));
        let stream = u64::from(nth) << 8 | mode as u64;
        let u = 2.0 * draw_ratio(seed, CLASS_PURPOSE, stream) - 1.0;
        let share = class.share_ratio * value.abs();
        let counts = (f64::from(class.n_counts) * step_si).min(value.abs());
        value + HEALTHY_RATIO * u * (share + counts)
    });
    Measured { value_si, ..truth }
}

/// What two leads in series add.
pub fn with_leads(mode: MeterMode, truth: Measured) -> Measured {
    let added_ohm = match mode {
        MeterMode::Ohms | MeterMode::Continuity => LEADS_OHM,
        _ => 0.0,
    };
    Measured {
        value_si: truth.value_si.map(|value| value + added_ohm),
        ..truth
    }
}

impl Job {
    /// As `new`, with instruments that read without error: what anyone would predict who does not
    /// know which instrument is in hand.
    ///
    /// # Errors
    /// As for `new`.
    pub fn nominal(scenario: Arc<Scenario>) -> Result<Self, MachineError> {
        let mut job = Self::new(scenario, 0)?;
        job.is_nominal = true;
        Ok(job)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_instrument_is_its_own_and_keeps_within_half_its_class() {
        let truth = Measured {
            value_si: Some(21.0),
            foreign_v: 0.0,
        };
        let mut shown = Vec::new();
        for seed in 0..200 {
            for nth in [0, 1] {
                let is = within_class(MeterMode::Ohms, truth, seed, nth).value_si;
                shown.push(is.unwrap_or_default());
            }
        }
        let worst = shown.iter().map(|v| (v - 21.0).abs()).fold(0.0, f64::max);
        let allowed = 0.5 * (0.01 * 21.0 + 5.0 * 0.1);
        assert!(worst <= allowed && worst > 0.9 * allowed, "{worst}");
        let mean = shown.iter().sum::<f64>() / shown.len() as f64;
        assert!((mean - 21.0).abs() < 0.03, "{mean}");
        shown.sort_by(f64::total_cmp);
        shown.dedup();
        assert_eq!(shown.len(), 400, "two instruments alike");
    }

    #[test]
    fn leads_count_in_ohms_and_not_where_four_wires_measure() {
        let truth = Measured {
            value_si: Some(0.05),
            foreign_v: 0.0,
        };
        let ohm = |mode| with_leads(mode, truth).value_si;
        assert_eq!(ohm(MeterMode::Ohms), Some(0.05 + LEADS_OHM));
        assert_eq!(ohm(MeterMode::EarthBond), Some(0.05));
    }
}
