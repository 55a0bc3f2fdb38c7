//! Which readings count as the tests after a repair.

use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::after_repair::readings;
use tubwright::bench::job::Job;
use tubwright::bench::notebook::NoteEntry;
use tubwright::scenario::job;

/// What counts of a reading at these points, the plug in or out.
fn counts(mode: MeterMode, red: &str, black: Option<&str>, inserted: bool) -> bool {
    let scenario = job("no_water").expect("sound").expect("ships");
    let mut job = Job::new(scenario, 1).expect("starts");
    job.act(Action::Plug { inserted });
    job.act(Action::Meter {
        mode,
        red: Some(red.to_owned()),
        black: black.map(str::to_owned),
    });
    job.advance(20);
    job.act(Action::Note);
    let last = job.notebook().last().map(|note| &note.entry);
    assert!(
        matches!(last, Some(NoteEntry::Reading(r)) if r.mode == mode),
        "{mode:?}: {last:?}"
    );
    readings(&job, mode).next().is_some()
}

#[test]
fn a_reading_counts_only_at_the_tests_points_with_the_plug_as_it_must_be() {
    assert!(counts(MeterMode::EarthBond, "PE", Some("CAB"), false));
    assert!(counts(MeterMode::EarthBond, "CAB", Some("PE"), false));
    assert!(!counts(MeterMode::EarthBond, "PE", Some("PN"), false));
    assert!(counts(MeterMode::Insulation, "PL", Some("PE"), false));
    assert!(!counts(MeterMode::Insulation, "PL", Some("PN"), false));
    assert!(counts(MeterMode::TouchCurrent, "CAB", Some("SE"), true));
    assert!(!counts(MeterMode::TouchCurrent, "CAB", Some("SE"), false));
}
