//! Between two degrees that a fault is reckoned with lie all the others: what each of its machines
//! reads stands for the readings half way to its neighbours, too.
//!
//! ```text
//! l, r = half the distance to the reading one degree lower, higher
//! sd²  = (l³ + r³) / (3 (l + r))          second moment of a flat share from -l to r
//! ```
//!
//! Each stands for the machines half way to its neighbours. What is seen of those between is [`weigh::between`]; both neighbours are
//! credited alike with it.
//!
//! [`weigh::between`]: crate::expert::weigh::between

use std::ops::Range;

use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::expert::line::Line;
use crate::expert::period::either;
use crate::expert::twin::Shown;

/// Widens what the machines of each fault that comes in degrees have shown where a step wrote these lines.
pub(super) fn widen(lines: &[Line], shown: &mut [Option<Shown>], notes: &[Note]) {
    for row in rows(lines) {
        widen_row(&mut shown[row], notes);
    }
}

/// Places of the machines of each fault that comes in degrees, degree after degree.
pub(super) fn rows(lines: &[Line]) -> Vec<Range<usize>> {
    let mut rows = Vec::new();
    let mut first = 0;
    while first < lines.len() {
        let cause = lines[first].variant.cause;
        let n = lines[first..]
            .iter()
            .take_while(|line| line.variant.cause == cause)
            .count();
        // Degrees of two faults together lie in no one row.
        if n > 1 && lines[first].variant.faults.len() == 1 {
            rows.push(first..first + n);
        }
        first += n;
    }
    rows
}

/// Machines of one fault, degree after degree.
pub(super) fn widen_row(row: &mut [Option<Shown>], notes: &[Note]) {
    let pairs = || {
        row.windows(2).map(|pair| match pair {
            [Some(a), Some(b)] => Some((a, b)),
            _ => None,
        })
    };
    let halves: Vec<Vec<f64>> = pairs()
        .map(|pair| pair.map_or_else(Vec::new, |(a, b)| halves(&a.notes, &b.notes)))
        .collect();
    let fits: Vec<Vec<Option<f64>>> = pairs()
        .map(|pair| {
            let fit = |(n, note)| pair.and_then(|(a, b)| Shown::between(a, b, n, note));
            notes.iter().enumerate().map(fit).collect()
        })
        .collect();
    for (k, shown) in row.iter_mut().enumerate() {
        let Some(shown) = shown else { continue };
        let sides = [k.checked_sub(1), Some(k)];
        let half = |n: usize, side: Option<usize>| {
            let half = side.and_then(|side| halves.get(side)?.get(n));
            half.copied().unwrap_or_default()
        };
        shown.between_si = (0..shown.notes.len())
            .map(|n| flat_sd(half(n, sides[0]), half(n, sides[1])))
            .collect();
        shown.between_fits = (0..notes.len())
            .map(|n| {
                let fit = |side: Option<usize>| fits.get(side?)?.get(n).copied()?;
                even(sides.map(fit))
            })
            .collect();
    }
}

/// Log of the mean likelihood of the sides there are.
pub(super) fn even(sides: [Option<f64>; 2]) -> Option<f64> {
    match sides {
        [Some(a), Some(b)] => Some(either(0.5, a, b)),
        [one, other] => one.or(other),
    }
}

/// Half the distance between the readings of two machines, line by line; none where there is none.
pub(super) fn halves(a: &[Note], b: &[Note]) -> Vec<f64> {
    let half = |(a, b): (&Note, &Note)| match (&a.entry, &b.entry) {
        (NoteEntry::Reading(a), NoteEntry::Reading(b)) => match (a.value, b.value) {
            (Some(a), Some(b)) => 0.5 * (a - b).abs(),
            _ => 0.0,
        },
        (NoteEntry::Gauge(a), NoteEntry::Gauge(b)) => match (a.value_si, b.value_si) {
            (Some(a), Some(b)) => 0.5 * (a - b).abs(),
            _ => 0.0,
        },
        _ => 0.0,
    };
    a.iter().zip(b).map(half).collect()
}

/// Root of the second moment about nought of what is spread evenly from `-below` to `above`.
pub(super) fn flat_sd(below: f64, above: f64) -> f64 {
    let width = below + above;
    if width <= 0.0 {
        return 0.0;
    }
    let cubes = below * below * below + above * above * above;
    (cubes / (3.0 * width)).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_flat_share_has_the_spread_of_an_even_distribution() {
        // Even over a width of 1: the width over the root of 12; all on one side: over that of 3.
        assert!((flat_sd(0.5, 0.5) - 1.0 / 12.0_f64.sqrt()).abs() < 1e-12);
        assert!((flat_sd(0.0, 1.0) - 1.0 / 3.0_f64.sqrt()).abs() < 1e-12);
        assert!(flat_sd(0.0, 0.0).abs() < 1e-12);
    }

    #[test]
    fn what_is_seen_between_counts_by_the_sides_there_are() {
        let [a, b] = [-1.0, -3.0];
        let both = libm::log(0.5 * libm::exp(a) + 0.5 * libm::exp(b));
        assert!(even([Some(a), Some(b)]).is_some_and(|is| (is - both).abs() < 1e-12));
        assert_eq!(even([None, Some(b)]), Some(b));
        assert_eq!(even([None, None]), None);
    }
}
