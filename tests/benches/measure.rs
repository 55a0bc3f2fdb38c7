//! Repeats a piece of work until its time is known well enough, and writes the result down.

use crate::clock::now_s;
use serde_json::Value;
use serde_json::json;
use std::hint::black_box;

/// A piece of work and what it may cost.
pub struct Case {
    pub name: &'static str,
    /// Budget on one core, natively; none where nothing was promised.
    pub native_budget_s: Option<f64>,
    /// Budget in Chromium.
    pub browser_budget_s: Option<f64>,
    /// The work; the number keeps the compiler from dropping it.
    pub work: Box<dyn FnMut() -> f64>,
}

impl Case {
    /// A case and what it may cost natively and in Chromium, if anything was promised.
    pub fn new(
        name: &'static str,
        budget_s: Option<(f64, f64)>,
        work: impl FnMut() -> f64 + 'static,
    ) -> Self {
        let (native_budget_s, browser_budget_s) = budget_s.unzip();
        Self {
            name,
            native_budget_s,
            browser_budget_s,
            work: Box::new(work),
        }
    }

    fn budget_s(&self) -> Option<f64> {
        if cfg!(target_arch = "wasm32") {
            self.browser_budget_s
        } else {
            self.native_budget_s
        }
    }
}

/// How long one case took.
pub struct Timing {
    pub name: &'static str,
    /// The quickest sample: what the work takes where nothing else runs.
    pub least_s: f64,
    /// Half of the samples were quicker.
    pub median_s: f64,
    /// One in twenty was slower.
    pub slow_s: f64,
    pub budget_s: Option<f64>,
}

/// A sample lasts at least this, since a page's clock steps by a tenth of a millisecond.
const SAMPLE_S: f64 = 0.004;
const SAMPLES: usize = 25;
/// Work that takes seconds is not sampled longer than this, but at least three times.
const ENOUGH_S: f64 = 8.0;

/// Runs the work until 25 samples are taken, after one run that warms up and tells how many make a sample.
pub fn measure(case: &mut Case) -> Timing {
    let mut repeat = 1_u32;
    loop {
        let began_s = now_s();
        for _ in 0..repeat {
            black_box((case.work)());
        }
        if now_s() - began_s >= SAMPLE_S || repeat >= 1 << 24 {
            break;
        }
        repeat *= 2;
    }
    let mut samples_s = Vec::with_capacity(SAMPLES);
    let start_s = now_s();
    while samples_s.len() < SAMPLES && (samples_s.len() < 3 || now_s() - start_s < ENOUGH_S) {
        let began_s = now_s();
        for _ in 0..repeat {
            black_box((case.work)());
        }
        samples_s.push((now_s() - began_s) / f64::from(repeat));
    }
    samples_s.sort_by(f64::total_cmp);
    Timing {
        name: case.name,
        least_s: samples_s[0],
        median_s: samples_s[samples_s.len() / 2],
        slow_s: samples_s[samples_s.len() * 19 / 20],
        budget_s: case.budget_s(),
    }
}

impl Timing {
    /// One row of the JSON that `make bench` leaves.
    pub fn to_json(&self) -> Value {
        json!({ "name": self.name, "least_s": self.least_s, "median_s": self.median_s, "slow_s": self.slow_s, "budget_s": self.budget_s })
    }

    /// One row of the table.
    pub fn to_row(&self) -> String {
        let budget = self.budget_s.map_or_else(|| "-".to_owned(), time);
        let verdict = match self.budget_s {
            Some(budget_s) if self.median_s > budget_s => "  over",
            _ => "",
        };
        format!(
            "{:<58} {:>10} {:>10} {:>10} {budget:>10}{verdict}",
            self.name,
            time(self.least_s),
            time(self.median_s),
            time(self.slow_s)
        )
    }
}

/// The head of the table.
pub fn head(place: &str) -> String {
    format!(
        "{place:<58} {:>10} {:>10} {:>10} {:>10}",
        "least", "median", "95 %", "budget"
    )
}

/// A duration with three digits and the unit that suits it.
pub fn time(s: f64) -> String {
    let (value, unit) = if s < 1e-6 {
        (s * 1e9, "ns")
    } else if s < 1e-3 {
        (s * 1e6, "us")
    } else if s < 1.0 {
        (s * 1e3, "ms")
    } else {
        (s, "s")
    };
    if value < 9.995 {
        format!("{value:.2} {unit}")
    } else if value < 99.95 {
        format!("{value:.1} {unit}")
    } else {
        format!("{value:.0} {unit}")
    }
}
