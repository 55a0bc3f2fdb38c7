//! What each kind of apprentice likes to do and leaves out.

use serde::Deserialize;
use serde::Serialize;

/// A kind of apprentice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Willing and unsure: picks tests half at random, misreads some.
    Novice,
    /// In a hurry: leaves out what takes time and shows nothing.
    Careless,
    /// Fits new parts on the first suspicion.
    PartSwapper,
    /// Looks, listens and turns; hardly measures.
    MeterShy,
    /// Step by step until one cause is left, and everything after it.
    Methodical,
}

impl Kind {
    /// All kinds.
    pub const ALL: [Kind; 5] = [
        Kind::Novice,
        Kind::Careless,
        Kind::PartSwapper,
        Kind::MeterShy,
        Kind::Methodical,
    ];
}

/// Habits, each a share of occasions unless said otherwise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Habits {
    /// A step of care is done.
    pub care_ratio: f64,
    /// So likely must a cause be before something is done about it.
    pub sure_ratio: f64,
    /// How far the choice of the next test is off, in logarithms of its worth.
    pub whim: f64,
    /// A result is taken for another.
    pub misreads_ratio: f64,
    /// A measurement counts for so much beside a look.
    pub meter_ratio: f64,
    /// The machine is run and tested after a repair.
    pub proves_ratio: f64,
    /// A new part is preferred where one can be fitted.
    pub likes_parts: bool,
    /// Most repairs before giving up.
    pub most_works: usize,
}

impl Kind {
    /// Its habits.
    pub fn habits(self) -> Habits {
        let good = Habits {
            care_ratio: 0.999,
            sure_ratio: 0.9,
            whim: 0.1,
            misreads_ratio: 0.01,
            meter_ratio: 1.0,
            proves_ratio: 1.0,
            likes_parts: false,
            most_works: 4,
        };
        match self {
            Kind::Methodical => good,
            Kind::Novice => Habits {
                care_ratio: 0.85,
                sure_ratio: 0.6,
                whim: 1.2,
                misreads_ratio: 0.12,
                meter_ratio: 0.6,
                proves_ratio: 0.7,
                most_works: 3,
                ..good
            },
            Kind::Careless => Habits {
                care_ratio: 0.45,
                sure_ratio: 0.5,
                whim: 0.6,
                misreads_ratio: 0.08,
                proves_ratio: 0.35,
                most_works: 3,
                ..good
            },
            Kind::PartSwapper => Habits {
                care_ratio: 0.85,
                sure_ratio: 0.12,
                whim: 0.6,
                misreads_ratio: 0.05,
                meter_ratio: 0.4,
                proves_ratio: 0.85,
                likes_parts: true,
                most_works: 7,
            },
            Kind::MeterShy => Habits {
                care_ratio: 0.95,
                sure_ratio: 0.65,
                whim: 0.4,
                misreads_ratio: 0.05,
                meter_ratio: 0.02,
                proves_ratio: 0.9,
                most_works: 3,
                ..good
            },
        }
    }
}
