//! A job's twin: the same log on a sound machine, line beside line, and which lines differ.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::bench::action::MeterMode;
use crate::bench::display;
use crate::bench::gauge::Gauge;
use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::scenario::Scenario;
use crate::machine::MachineError;

/// A reading further than this from the sound machine's counts as different. Meter and part
/// tolerance together, common practice.
const DIFFERENT_RATIO: f64 = 0.10;

/// The same for a frequency, which a hand meter reads to a few parts in ten thousand.
const DIFFERENT_HZ_RATIO: f64 = 0.005;

/// The same log on a sound machine of the same type on a sound site.
pub struct Twin {
    /// Lines of the twin by the number of the job's own line.
    lines: BTreeMap<u32, Note>,
}

impl Twin {
    /// Runs the job's log on a sound machine. Acts that are impossible there write nothing, so lines
    /// are paired act by act.
    ///
    /// # Errors
    /// When the scenario's machine cannot be set up.
    pub fn of(job: &Job) -> Result<Self, MachineError> {
        let mut sound: Scenario = (**job.scenario()).clone();
        sound.faults.clear();
        sound.site.tap_open = true;
        let mut again = Job::new(Arc::clone(job.scenario()), job.seed())?;
        let mut twin = Job::new(Arc::new(sound), job.seed())?;
        let mut lines = BTreeMap::new();
        for entry in job.log() {
            again.advance_to(entry.tick);
            twin.advance_to(entry.tick);
            let is = again.act(entry.action.clone());
            let would = twin.act(entry.action.clone());
            let pairs = is.notes.iter().zip(&would.notes);
            lines.extend(pairs.filter_map(|(number, other)| {
                Some((*number, twin.notebook().get(*other as usize - 1)?.clone()))
            }));
        }
        Ok(Self { lines })
    }

    /// The line a sound machine would have given.
    pub fn line(&self, number: u32) -> Option<&Note> {
        self.lines.get(&number)
    }

    /// A sound machine would have given something else.
    pub fn differs(&self, note: &Note) -> bool {
        match (&note.entry, self.line(note.number).map(|n| &n.entry)) {
            (NoteEntry::Reading(is), Some(NoteEntry::Reading(sound))) => {
                !near(is.mode, is.value, sound.value)
            }
            (NoteEntry::Gauge(is), Some(NoteEntry::Gauge(sound))) => {
                !near_on_scale(is.gauge, is.value_si, sound.value_si)
            }
            (
                NoteEntry::Observation { seen: is, .. },
                Some(NoteEntry::Observation { seen, .. }),
            ) => {
                let keys = |list: &[crate::bench::notebook::Seen]| {
                    list.iter().map(|s| s.key.clone()).collect::<Vec<_>>()
                };
                keys(is) != keys(seen)
            }
            _ => false,
        }
    }
}

fn near(mode: MeterMode, is: Option<f64>, sound: Option<f64>) -> bool {
    match (is, sound) {
        (Some(a), Some(b)) => {
            let ratio = match mode {
                MeterMode::Frequency => DIFFERENT_HZ_RATIO,
                _ => DIFFERENT_RATIO,
            };
            let allowed = (ratio * a.abs().max(b.abs())).max(display::scatter_si(mode));
            (a - b).abs() <= allowed
        }
        (None, None) => true,
        _ => false,
    }
}

/// Both readings could be of the same thing: four standard deviations, or the usual share.
fn near_on_scale(gauge: Gauge, is: Option<f64>, sound: Option<f64>) -> bool {
    match (is, sound) {
        (Some(a), Some(b)) => {
            let zero = gauge.about().zero_si;
            let most = (a - zero).abs().max((b - zero).abs());
            let scatter = 4.0 * gauge.scatter_si(a).max(gauge.scatter_si(b));
            (a - b).abs() <= scatter.max(DIFFERENT_RATIO * most)
        }
        (None, None) => true,
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::gauge::GaugeReading;

    #[test]
    fn a_weak_capacitor_reads_differently_from_a_sound_one() {
        let near = |is, sound| near(MeterMode::Capacitance, Some(is), Some(sound));
        assert!(!near(4.0e-6, 10.0e-6) && !near(0.0, 10.0e-6));
        assert!(near(9.6e-6, 10.0e-6), "within tolerance");
    }

    #[test]
    fn a_gauge_is_read_by_its_scatter_and_the_usual_share() {
        let near = |is, sound| near_on_scale(Gauge::JugAndWatch, is, sound);
        assert!(near(None, None) && !near(Some(1e-4), None));
        assert!(near(Some(1.0e-4), Some(1.05e-4)));
        assert!(!near(Some(0.2e-4), Some(1.0e-4)));
        assert!(!near(Some(2.0e-4), Some(1.0e-4)));
    }

    #[test]
    fn warmth_counts_from_the_zero_of_its_scale_and_scatter_four_times() {
        let near = |is_degc: f64, sound_degc: f64| {
            let kelvin = |degc| Some(crate::units::CELSIUS_ZERO_K + degc);
            near_on_scale(Gauge::Thermometer, kelvin(is_degc), kelvin(sound_degc))
        };
        // A tenth of 80 °C is 8 °C; of the 353 K it would be 35.
        assert!(near(80.0, 73.0) && !near(80.0, 71.0));
        assert!(near(73.0, 80.0) && !near(71.0, 80.0));
        // In a cold room a tenth is less than four times the half degree it scatters by.
        assert!(near(5.0, 6.9) && !near(5.0, 7.1));
    }

    /// A line of the notebook, alone.
    fn line(entry: NoteEntry) -> Note {
        let state = String::new();
        Note {
            number: 1,
            tick: 0,
            state,
            entry,
        }
    }

    #[test]
    fn a_line_differs_from_one_of_its_own_kind_only() {
        let gauge = |value: f64| {
            line(NoteEntry::Gauge(GaugeReading {
                gauge: Gauge::Tachometer,
                place: "basket".to_owned(),
                display: String::new(),
                value_si: Some(value),
            }))
        };
        let customer = line(NoteEntry::Act {
            text: "faster than ever".to_owned(),
        });
        let twin = |sound: &Note| Twin {
            lines: BTreeMap::from([(1, sound.clone())]),
        };
        assert!(twin(&gauge(10.0)).differs(&gauge(12.0)));
        assert!(!twin(&gauge(10.0)).differs(&gauge(10.5)));
        assert!(!twin(&customer).differs(&gauge(12.0)));
        assert!(!twin(&gauge(10.0)).differs(&customer));
        assert!(
            !Twin {
                lines: BTreeMap::new()
            }
            .differs(&gauge(12.0)),
            "nothing to compare with"
        );
    }

    #[test]
    fn the_scatter_of_meter_and_leads_is_no_difference() {
        assert!(near(MeterMode::Ohms, Some(0.1), Some(0.3)));
        assert!(near(MeterMode::AcVolts, Some(0.01), Some(0.4)));
        assert!(!near(MeterMode::Leakage, Some(0.9e-3), Some(0.18e-3)));
        assert!(
            !near(MeterMode::Ohms, None, Some(21.0)),
            "over range against a winding"
        );
    }
}
