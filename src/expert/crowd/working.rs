//! Simulated apprentices at a job: what each kind does before its first repair.

use std::sync::Arc;

use super::*;
use crate::bench::action::Action;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::scenario::job;

/// Things seen and things read before the first repair, and the repairs.
fn worked(almanac: &Almanac, kind: Kind, seed: u64) -> (usize, usize, usize) {
    let scenario = job("hums_and_stands").expect("sound").expect("ships");
    let mut job = Job::new(Arc::clone(&scenario), seed).expect("starts");
    work(&mut job, almanac, kind, seed);
    assert!(job.is_over(), "{kind:?} {seed}");
    let works = job.log().iter();
    let works = works.filter(|e| matches!(e.action, Action::Work { .. }));
    let first = works.clone().next().map_or(job.tick(), |e| e.tick);
    let before = job.notebook().iter().filter(|note| note.tick <= first);
    let (mut n_seen, mut n_read) = (0, 0);
    for note in before {
        n_seen += usize::from(matches!(note.entry, NoteEntry::Observation { .. }));
        n_read += usize::from(matches!(note.entry, NoteEntry::Reading(_)));
    }
    (n_seen, n_read, works.count())
}

#[test]
fn who_works_by_method_looks_and_measures_before_the_first_repair_and_who_swaps_parts_repairs_more()
{
    let scenario = job("hums_and_stands").expect("sound").expect("ships");
    let almanac = Almanac::of(&scenario, &mut |_, _| ()).expect("starts");
    let sums = |kind: Kind| {
        let runs = (1..=6).map(|seed| worked(&almanac, kind, seed));
        runs.fold([0; 3], |sum, (seen, read, works)| {
            [sum[0] + seen, sum[1] + read, sum[2] + works]
        })
    };
    let [seen, read, works] = sums(Kind::Methodical);
    assert!(seen >= 12 && read >= 6, "{seen} {read}");
    let swapper = sums(Kind::PartSwapper);
    assert!(swapper[2] > works, "{swapper:?} {works}");
    assert!(
        swapper[0] + swapper[1] < seen + read,
        "{swapper:?} {seen} {read}"
    );
}
