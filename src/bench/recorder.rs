//! A strip-chart recorder: up to four quantities that instruments see, against time.
//!
//! It looks at a job and changes nothing. What cannot be reached at a moment leaves a gap. When the
//! strip is full every second sample goes and the step doubles, so that a whole job fits.

use crate::bench::action::MeterMode;
use crate::bench::gauge::Gauge;
use crate::bench::job::Job;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;

/// Pens of the recorder.
pub const PENS: usize = 4;
/// Samples on a full strip. Design choice.
const MOST_SAMPLES: usize = 600;

/// What one pen follows.
#[derive(Clone, Debug, PartialEq)]
pub enum Channel {
    /// A hand instrument with its leads where they are.
    Meter {
        /// Mode.
        mode: MeterMode,
        /// Red lead or jaws.
        red: String,
        /// Black lead.
        black: Option<String>,
    },
    /// An instrument at a place, where it can be left there.
    Gauge {
        /// The instrument.
        gauge: Gauge,
        /// Name of the place.
        place: String,
    },
}

/// All pens at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// When.
    pub tick: Tick,
    /// Values in SI; none where nothing could be read.
    pub values: [Option<f64>; PENS],
}

/// The recorder.
#[derive(Clone, Debug, PartialEq)]
pub struct Recorder {
    channels: Vec<Channel>,
    samples: Vec<Sample>,
    every: Tick,
    next: Tick,
}

impl Default for Recorder {
    fn default() -> Self {
        Self {
            channels: Vec::new(),
            samples: Vec::new(),
            every: TICKS_PER_S / 2,
            next: 0,
        }
    }
}

impl Recorder {
    /// Puts a pen on a quantity; `false` when all four are taken or one follows it already. The
    /// strip begins anew.
    pub fn follow(&mut self, channel: Channel) -> bool {
        if self.channels.len() >= PENS || self.channels.contains(&channel) {
            return false;
        }
        self.channels.push(channel);
        self.begin();
        true
    }

    /// Lifts a pen. The strip begins anew.
    pub fn lift(&mut self, pen: usize) {
        if pen < self.channels.len() {
            self.channels.remove(pen);
            self.begin();
        }
    }

    /// A fresh strip.
    pub fn begin(&mut self) {
        self.samples.clear();
        self.every = Self::default().every;
        self.next = 0;
    }

    /// Looks at the job when a sample is due.
    pub fn look(&mut self, job: &Job) {
        let tick = job.tick();
        if self.channels.is_empty() || tick < self.next {
            return;
        }
        let mut values = [None; PENS];
        for (value, channel) in values.iter_mut().zip(&self.channels) {
            *value = job.sample(channel);
        }
        self.samples.push(Sample { tick, values });
        if self.samples.len() >= MOST_SAMPLES {
            self.thin();
        }
        self.next = tick + self.every;
    }

    fn thin(&mut self) {
        let mut keep = false;
        self.samples.retain(|_| {
            keep = !keep;
            keep
        });
        self.every *= 2;
    }

    /// What the pens follow.
    pub fn channels(&self) -> &[Channel] {
        &self.channels
    }
    /// The strip, oldest first.
    pub fn samples(&self) -> &[Sample] {
        &self.samples
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn channel(place: &str) -> Channel {
        Channel::Gauge {
            gauge: Gauge::Tachometer,
            place: place.to_owned(),
        }
    }

    #[test]
    fn four_pens_and_no_more_each_on_something_else() {
        let mut recorder = Recorder::default();
        for place in ["pulsator", "basket", "motor", "motor_pulley"] {
            assert!(recorder.follow(channel(place)));
        }
        assert!(!recorder.follow(channel("drum")));
        recorder.lift(0);
        assert!(!recorder.follow(channel("basket")));
        assert!(recorder.follow(channel("pulsator")));
        assert_eq!(recorder.channels().len(), PENS);
    }

    #[test]
    fn a_full_strip_keeps_its_whole_length_at_half_the_detail() {
        let mut recorder = Recorder {
            channels: vec![channel("basket")],
            ..Recorder::default()
        };
        for tick in 0..1000 {
            recorder.samples.push(Sample {
                tick,
                values: [None; PENS],
            });
            if recorder.samples.len() >= MOST_SAMPLES {
                recorder.thin();
            }
        }
        let (first, last) = (recorder.samples.first(), recorder.samples.last());
        assert_eq!(first.map(|s| s.tick), Some(0));
        assert_eq!(last.map(|s| s.tick), Some(999));
        assert!(recorder.samples.len() < MOST_SAMPLES);
        assert!(recorder.every > TICKS_PER_S / 2);
    }
}
