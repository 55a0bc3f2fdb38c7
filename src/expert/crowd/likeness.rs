//! How an apprentice tells that a run was like a sound machine's.

use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::expert::crowd::almanac::Sheet;
use crate::expert::trial;
use crate::expert::trial::Lines;

/// A run is like a sound machine's from here, in logarithms.
const NEAR_SOUND: f64 = 8.0;

/// What the lines of a run count for beside a line of its own: they say much the same.
const RUN_WEIGHT: f64 = 0.4;

/// What each line of a trial counts for.
pub(super) fn weight(sheet: &Sheet) -> f64 {
    if sheet.trial.is_run() {
        RUN_WEIGHT
    } else {
        1.0
    }
}

/// Nothing a sound machine shows differs. Which way the pulsator goes, and which minute is shown, are
/// other a second later and do not count.
pub(super) fn is_like(lines: &Lines, sound: &Lines) -> bool {
    let (lines, sound) = (steady(lines), steady(sound));
    trial::fit(&lines, &sound) > trial::fit(&lines, &lines) - NEAR_SOUND
}

fn steady(lines: &Lines) -> Lines {
    let is_steady = |note: &Note| match &note.entry {
        NoteEntry::Observation { place, .. } => place != "pulsator" && place != "display",
        _ => true,
    };
    let kept = lines.iter().filter(|(note, _)| is_steady(note));
    kept.cloned().collect()
}

/// It takes a meter.
pub(super) fn is_measured(sheet: &Sheet) -> bool {
    let of = |lines: &Lines| {
        let mut entries = lines.iter().map(|(note, _)| &note.entry);
        entries.any(|entry| matches!(entry, NoteEntry::Reading(_)))
    };
    sheet.lines.first().is_some_and(of)
}
