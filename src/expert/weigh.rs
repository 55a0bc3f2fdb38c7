//! How well what was seen fits what a machine would have shown: likelihoods, as natural logarithms.
//!
//! ```text
//! P(keys seen) = Π (1-η) where both agree, η where they differ, at least ε
//!                between two degrees: ½ where they do not agree with each other
//! ```
//! Readings by [`crate::expert::theory::reading`]. ε = 0.004 is the share of lines that say nothing
//! (a bad contact, a wrong note) and caps the weight of any single one; η is how often a sense
//! misleads. Shares are design choices.

use crate::bench::accuracy::accuracy;
use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::display;
use crate::bench::gauge::GaugeReading;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::notebook::Reading;
use crate::bench::notebook::Seen;
use crate::expert::theory::reading::Display;
use crate::expert::theory::reading::Expected;
use crate::expert::theory::reading::Meter;

/// Share of lines that say nothing.
pub const OUTLIER: f64 = 0.004;
/// How often the words for what the machine is doing are noted wrongly.
const STATE_SLIP: f64 = 0.02;
/// Strengths noted by a person: standard deviation over the value, and at least, in their own unit.
const AMOUNT_RATIO: f64 = 0.10;
const AMOUNT_FLOOR: f64 = 1.0;

fn meter(mode: MeterMode, value_si: Option<f64>) -> Meter {
    let (step, counts) = display::resolution_si(mode, value_si);
    let class = accuracy(mode);
    Meter {
        step,
        n_steps: counts as u32,
        accuracy_ratio: class.share_ratio,
        accuracy_steps: f64::from(class.n_counts),
        outlier_ratio: OUTLIER,
    }
}

/// Log likelihood of a reading where the machine would read `expected` with this spread.
pub fn reading(is: &Reading, expected: Option<f64>, spread_si: f64) -> f64 {
    let meter = meter(is.mode, is.value);
    let shown = is
        .value
        .map_or(Display::OverRange, |v| Display::Value(v.abs()));
    // The other way round it is another reading, unless both are next to nothing.
    let turned = is.value.unwrap_or_default() * expected.unwrap_or_default() < 0.0;
    let expected = match expected {
        None => Expected::Open,
        Some(mean) => Expected::Value {
            mean: if turned { 0.0 } else { mean.abs() },
            part_sd: spread_si,
        },
    };
    libm::log(meter.probability(shown, expected))
}

/// What parts of one make differ by in what an instrument without a circuit shows, share of the value.
/// Design choice.
const GAUGE_RATIO: f64 = 0.05;

/// Log likelihood of a reading of an instrument that needs no circuit, where the machine would show
/// `expected` and the degrees between those reckoned with spread it by `spread_si`.
pub fn gauge(is: &GaugeReading, expected: &GaugeReading, spread_si: f64) -> f64 {
    let about = is.gauge.about();
    let on_scale = |value_si: f64| (value_si - about.zero_si) / about.unit_si;
    let meter = Meter {
        step: about.resolution,
        n_steps: (about.limit / about.resolution) as u32,
        accuracy_ratio: 0.0,
        accuracy_steps: 0.0,
        outlier_ratio: OUTLIER,
    };
    let (is_value, mean) = (is.value_si.map(on_scale), expected.value_si.map(on_scale));
    // The other way round it is another reading.
    let turned = is_value.unwrap_or_default() * mean.unwrap_or_default() < 0.0;
    let shown = is_value.map_or(Display::OverRange, |v| Display::Value(v.abs()));
    let expected = match (mean, expected.value_si) {
        (Some(mean), Some(value_si)) => {
            let scatter = is.gauge.scatter_si(value_si) / about.unit_si;
            let parts = libm::hypot(GAUGE_RATIO * mean, spread_si / about.unit_si);
            Expected::Value {
                mean: if turned { 0.0 } else { mean.abs() },
                part_sd: libm::hypot(scatter, parts),
            }
        }
        _ => Expected::Open,
    };
    libm::log(meter.probability(shown, expected))
}

/// Log likelihood where half of the machines with a fault in degrees are as one of those reckoned
/// with, and half lie between them: a reading may go in a straight line from one to the next, or jump.
pub fn degrees(at: f64, between: f64) -> f64 {
    libm::log(0.5 * libm::exp(at) + 0.5 * libm::exp(between))
}

/// How often a sense misleads.
fn slip(sense: Sense) -> f64 {
    match sense {
        Sense::Look => 0.01,
        Sense::Feel => 0.03,
        Sense::Listen => 0.05,
        Sense::Smell => 0.15,
    }
}

/// Log likelihood of an observation.
pub fn observation(sense: Sense, is: &[Seen], expected: &[Seen]) -> f64 {
    between(sense, is, [expected, expected])
}

/// How often a machine of a degree between two shows what only one of them does. Design choice.
const ONE_OF_TWO: f64 = 0.5;

/// Log likelihood of an observation of a machine whose fault is of a degree between two that would have
/// shown these: what one of them shows is as likely as not, whatever else it shows, and strengths lie
/// between theirs, each as likely as another.
pub fn between(sense: Sense, is: &[Seen], sides: [&[Seen]; 2]) -> f64 {
    let is = told(is);
    let sides = sides.map(told);
    let slip = slip(sense);
    let mut sum = 0.0;
    for (key, amount) in &is {
        sum += match sides.each_ref().map(|side| of(side, key)) {
            [None, None] => libm::log(slip),
            [Some(a), Some(b)] => libm::log(1.0 - slip) + amounts(*amount, [a, b], slip),
            [Some(one), None] | [None, Some(one)] => {
                libm::log(ONE_OF_TWO) + amounts(*amount, [one, one.map(|_| 0.0)], slip)
            }
        };
    }
    let [here, beside] = &sides;
    let more = beside.iter().filter(|(key, _)| of(here, key).is_none());
    for (key, _) in here.iter().chain(more) {
        let is_with_both = of(here, key).and(of(beside, key)).is_some();
        sum += match of(&is, key) {
            Some(_) => 0.0,
            None if is_with_both => libm::log(slip),
            None => libm::log(ONE_OF_TWO),
        };
    }
    sum.max(libm::log(OUTLIER))
}

/// The strength something was seen in, where it was seen.
fn of(seen: &[(String, Option<f64>)], key: &str) -> Option<Option<f64>> {
    let known = seen.iter().find(|(k, _)| k == key)?;
    Some(known.1)
}

/// What an observation says, as words and strengths.
fn told(list: &[Seen]) -> Vec<(String, Option<f64>)> {
    list.iter()
        .filter(|s| s.key != "nothing_unusual")
        .map(|s| match minutes_left(&s.key) {
            Some((words, minutes)) => (words.to_owned(), Some(minutes)),
            None => (s.key.clone(), s.amount),
        })
        .collect()
}

/// A display that counts minutes: what stands before them, and how many.
fn minutes_left(key: &str) -> Option<(&str, f64)> {
    let (words, count) = key.strip_suffix(" min")?.rsplit_once(' ')?;
    Some((words, count.parse().ok()?))
}

/// Of a strength where it may be anything from one to the other.
fn amounts(is: Option<f64>, between: [Option<f64>; 2], slip: f64) -> f64 {
    let (Some(is), [Some(a), Some(b)]) = (is, between) else {
        return 0.0;
    };
    let nearest = is.clamp(a.min(b), a.max(b));
    let sigma = AMOUNT_RATIO * is.abs().max(nearest.abs()) + AMOUNT_FLOOR;
    let z = (is - nearest) / sigma;
    // Flat in between, with the same area as the bell at one place.
    let width = (a - b).abs() / (sigma * (2.0 * std::f64::consts::PI).sqrt());
    (-0.5 * z * z - libm::log(1.0 + width)).max(libm::log(slip))
}

/// The line is held against what machines show.
pub fn is_weighed(note: &Note) -> bool {
    matches!(
        note.entry,
        NoteEntry::Reading(_) | NoteEntry::Gauge(_) | NoteEntry::Observation { .. }
    )
}

/// Log likelihood of a line where the machine would have given `expected`.
pub fn note(is: &Note, expected: Option<&Note>, spread_si: f64) -> f64 {
    let Some(expected) = expected else {
        return libm::log(OUTLIER);
    };
    match (&is.entry, &expected.entry) {
        (NoteEntry::Reading(is), NoteEntry::Reading(other)) => reading(is, other.value, spread_si),
        (NoteEntry::Gauge(is), NoteEntry::Gauge(other)) => gauge(is, other, spread_si),
        (
            NoteEntry::Observation { sense, seen, .. },
            NoteEntry::Observation { seen: other, .. },
        ) => observation(*sense, seen, other),
        _ => 0.0,
    }
}

/// Log likelihood of the words for what the machine is doing.
pub fn state(is: &Note, expected: Option<&Note>) -> f64 {
    match expected {
        Some(other) if other.state == is.state => libm::log(1.0 - STATE_SLIP),
        _ => libm::log(STATE_SLIP),
    }
}

/// The line tells nothing beyond an earlier one of the same thing in the same state.
pub fn repeats(is: &Note, earlier: &Note) -> bool {
    if is.state != earlier.state {
        return false;
    }
    match (&is.entry, &earlier.entry) {
        (NoteEntry::Reading(a), NoteEntry::Reading(b)) => {
            let same = a.mode == b.mode && a.red == b.red && a.black == b.black;
            same && match (a.value, b.value) {
                (Some(x), Some(y)) => (x - y).abs() <= 4.0 * meter(a.mode, Some(y)).sd_at(y),
                (None, None) => true,
                _ => false,
            }
        }
        (NoteEntry::Gauge(a), NoteEntry::Gauge(b)) => {
            let same = a.gauge == b.gauge && a.place == b.place;
            same && match (a.value_si, b.value_si) {
                (Some(x), Some(y)) => (x - y).abs() <= 4.0 * a.gauge.scatter_si(y),
                (None, None) => true,
                _ => false,
            }
        }
        (
            NoteEntry::Observation { place, seen, .. },
            NoteEntry::Observation {
                place: other_place,
                seen: other_seen,
                ..
            },
        ) => {
            let keys = |list: &[Seen]| list.iter().map(|s| s.key.clone()).collect::<Vec<_>>();
            place == other_place && keys(seen) == keys(other_seen)
        }
        _ => false,
    }
}

#[cfg(test)]
mod lines;

#[cfg(test)]
mod tests {
    use super::lines::seen;
    use super::*;

    #[test]
    fn between_two_degrees_a_speed_between_theirs_is_likelier_than_at_either() {
        let slow = seen(&[("turns", Some(43.0))]);
        let [stands, fast] = [seen(&[("stands", None)]), seen(&[("turns", Some(116.0))])];
        let at = [&stands, &fast].map(|side| observation(Sense::Look, &slow, side));
        let two = between(Sense::Look, &slow, [&stands, &fast]);
        // Each of the two as likely as not, and any speed up to 116 r/min: sigma is 5.3 there.
        let flat = 0.25 / (1.0 + 116.0 / (5.3 * (2.0 * std::f64::consts::PI).sqrt()));
        assert!((two - libm::log(flat)).abs() < 1e-9, "{two}");
        assert!(two > at[0] + 0.9 && two > at[1] + 0.9, "{two} {at:?}");
        // The order of the two says nothing.
        let turned = between(Sense::Look, &slow, [&fast, &stands]);
        assert!((two - turned).abs() < 1e-12);
    }

    #[test]
    fn what_neither_degree_shows_is_no_likelier_between_them() {
        let is = seen(&[("smokes", None)]);
        let sides = [seen(&[("stands", None)]), seen(&[("turns", Some(116.0))])];
        let two = between(Sense::Look, &is, [&sides[0], &sides[1]]);
        assert!(two <= libm::log(slip(Sense::Look)), "{two}");
    }
}
