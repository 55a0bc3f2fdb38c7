//! What lines of a notebook say of a machine, and when they say nothing again.

use super::*;
use crate::bench::gauge::Gauge;
use crate::units::CELSIUS_ZERO_K;

pub(super) fn seen(list: &[(&str, Option<f64>)]) -> Vec<Seen> {
    list.iter()
        .map(|(key, amount)| Seen {
            key: (*key).to_owned(),
            amount: *amount,
            text: String::new(),
        })
        .collect()
}

#[test]
fn a_display_that_counts_minutes_is_near_where_its_count_is_near() {
    let shows = |text: &str| seen(&[(text, None)]);
    let fit = |is: &str, expected: &str| observation(Sense::Look, &shows(is), &shows(expected));
    let same = fit("washing · 32 min", "washing · 32 min");
    assert!((fit("washing · 33 min", "washing · 32 min") - same).abs() < 0.1);
    assert!(fit("washing · 12 min", "washing · 32 min") < same - 2.0);
    // Another phase is another thing, however many minutes are left.
    assert!(fit("rinsing · 32 min", "washing · 32 min") < same - 4.0);
}

#[test]
fn that_nothing_is_unusual_is_no_thing_seen() {
    let nothing = seen(&[("nothing_unusual", None)]);
    assert!(observation(Sense::Look, &nothing, &[]).abs() < 1e-12);
    assert!(observation(Sense::Look, &[], &nothing).abs() < 1e-12);
    // What is missed or imagined is as rare as the sense misleads, and never rarer than a slip of the pen.
    let leak = seen(&[("leaks", None)]);
    for (sense, rare) in [
        (Sense::Look, 0.01),
        (Sense::Feel, 0.03),
        (Sense::Listen, 0.05),
    ] {
        let missed = observation(sense, &nothing, &leak);
        let imagined = observation(sense, &leak, &nothing);
        assert!(
            (missed - libm::log(rare)).abs() < 1e-12,
            "{sense:?} {missed}"
        );
        assert!(
            (imagined - libm::log(rare)).abs() < 1e-12,
            "{sense:?} {imagined}"
        );
    }
    let same = observation(Sense::Look, &leak, &leak);
    assert!((same - libm::log(0.99)).abs() < 1e-12, "{same}");
    let many = seen(&[("a", None), ("b", None), ("c", None)]);
    let worst = observation(Sense::Look, &many, &nothing);
    assert!((worst - libm::log(OUTLIER)).abs() < 1e-12, "{worst}");
}

fn ohms(value: Option<f64>) -> Reading {
    Reading {
        mode: MeterMode::Ohms,
        red: Some("MA".to_owned()),
        black: Some("MB".to_owned()),
        value,
        display: String::new(),
        warning: None,
    }
}

fn bar(value_si: Option<f64>) -> GaugeReading {
    GaugeReading {
        gauge: Gauge::PressureGauge,
        place: "tap".to_owned(),
        value_si,
        display: String::new(),
    }
}

fn written(state: &str, entry: NoteEntry) -> Note {
    Note {
        number: 1,
        tick: 0,
        state: state.to_owned(),
        entry,
    }
}

#[test]
fn a_reading_fits_where_it_is_expected_and_not_with_its_leads_turned() {
    let volts = |value| Reading {
        mode: MeterMode::DcVolts,
        ..ohms(Some(value))
    };
    let fit = |is: f64, expected: f64| reading(&volts(is), Some(expected), 0.1);
    assert!(fit(12.0, 12.0) > fit(12.2, 12.0) && fit(12.2, 12.0) > fit(18.0, 12.0) + 3.0);
    assert!((fit(-12.0, -12.0) - fit(12.0, 12.0)).abs() < 1e-12);
    // It says no more than any other wrong one.
    assert!((fit(-12.0, 12.0) - fit(18.0, 12.0)).abs() < 1e-9);
    // Nothing at all where something is expected is no other sign of it.
    assert!(fit(0.0, 12.0) < libm::log(OUTLIER) && fit(12.0, 0.0) < libm::log(OUTLIER));
    // Next to nothing the sign is noise.
    assert!((fit(-0.01, 0.01) - fit(0.01, 0.01)).abs() < 0.1);
    let open = reading(&ohms(None), None, 0.0);
    assert!(open > libm::log(0.99) && reading(&ohms(Some(20.0)), None, 0.0) < libm::log(OUTLIER));
}

#[test]
fn an_instrument_without_a_circuit_fits_within_what_parts_of_a_make_differ_by() {
    let fit = |is: Option<f64>, expected: Option<f64>, spread_si: f64| {
        gauge(&bar(is), &bar(expected), spread_si)
    };
    let at = |is: f64| fit(Some(is), Some(300_000.0), 0.0);
    // One in twenty is usual, one in three is not.
    assert!(at(300_000.0) - at(310_000.0) < 1.0, "{}", at(310_000.0));
    assert!(at(200_000.0) < libm::log(OUTLIER), "{}", at(200_000.0));
    assert!((at(280_000.0) - at(320_000.0)).abs() < 1e-9);
    // Degrees between those reckoned with make room.
    let between = fit(Some(200_000.0), Some(300_000.0), 100_000.0);
    assert!(between > at(200_000.0) + 2.0, "{between}");
    // Nothing at all is no reading turned round.
    assert!(fit(Some(0.0), Some(300_000.0), 0.0) < libm::log(OUTLIER));
    // Where parts differ about the end of the scale, one in two is off it.
    assert!(fit(None, Some(1e6), 0.0) > libm::log(0.4));
    // Off the scale is expected where the machine would be off it, and else not.
    assert!(fit(None, None, 0.0) > libm::log(0.99));
    assert!(fit(None, Some(300_000.0), 0.0) < libm::log(OUTLIER));
    assert!(fit(Some(300_000.0), None, 0.0) < libm::log(OUTLIER));
}

#[test]
fn a_thermometer_is_held_to_its_own_zero() {
    let at = |celsius: f64| GaugeReading {
        gauge: Gauge::Thermometer,
        value_si: Some(CELSIUS_ZERO_K + celsius),
        ..bar(None)
    };
    let fit = |is: f64, expected: f64| gauge(&at(is), &at(expected), 0.0);
    assert!(fit(30.0, 20.0) < fit(20.0, 20.0) - 3.0);
    // On the other side of freezing it is another reading.
    assert!(fit(-20.0, 20.0) < libm::log(OUTLIER));
}

#[test]
fn a_reading_tells_nothing_again_where_the_same_leads_read_the_same() {
    let note = |value| written("off", NoteEntry::Reading(ohms(value)));
    let first = note(Some(21.0));
    assert!(repeats(&note(Some(21.3)), &first) && repeats(&note(Some(20.7)), &first));
    assert!(!repeats(&note(Some(30.0)), &first) && !repeats(&note(None), &first));
    assert!(repeats(&note(None), &note(None)) && !repeats(&first, &note(None)));
    let state = written("washing", first.entry.clone());
    assert!(!repeats(&state, &first));
    for other in [
        Reading {
            mode: MeterMode::Continuity,
            ..ohms(Some(21.0))
        },
        Reading {
            red: Some("MC".to_owned()),
            ..ohms(Some(21.0))
        },
        Reading {
            black: None,
            ..ohms(Some(21.0))
        },
    ] {
        let other = written("off", NoteEntry::Reading(other));
        assert!(!repeats(&other, &first), "{other:?}");
    }
}

#[test]
fn an_instrument_at_another_place_tells_something_else() {
    let note = |reading| written("off", NoteEntry::Gauge(reading));
    let first = note(bar(Some(300_000.0)));
    for near in [300_000.0, 310_000.0, 290_000.0] {
        assert!(repeats(&note(bar(Some(near))), &first), "{near}");
    }
    assert!(!repeats(&note(bar(Some(100_000.0))), &first));
    assert!(repeats(&note(bar(None)), &note(bar(None))) && !repeats(&note(bar(None)), &first));
    let mut elsewhere = bar(Some(300_000.0));
    elsewhere.place = "hose".to_owned();
    assert!(!repeats(&note(elsewhere), &first));
    let other = GaugeReading {
        gauge: Gauge::UTube,
        ..bar(Some(300_000.0))
    };
    assert!(!repeats(&note(other), &first));
}

#[test]
fn a_look_tells_nothing_again_where_it_sees_the_same_things_at_the_same_place() {
    let look = |place: &str, seen: Vec<Seen>| {
        written(
            "off",
            NoteEntry::Observation {
                sense: Sense::Look,
                place: place.to_owned(),
                seen,
            },
        )
    };
    let slow = look("pulsator", seen(&[("turns", Some(40.0))]));
    assert!(repeats(
        &look("pulsator", seen(&[("turns", Some(90.0))])),
        &slow
    ));
    assert!(!repeats(
        &look("basket", seen(&[("turns", Some(40.0))])),
        &slow
    ));
    assert!(!repeats(
        &look("pulsator", seen(&[("stands", None)])),
        &slow
    ));
}

#[test]
fn the_words_for_what_the_machine_does_are_rarely_noted_wrongly() {
    let note = |state: &str| {
        written(
            state,
            NoteEntry::Act {
                text: String::new(),
            },
        )
    };
    let same = state(&note("washing"), Some(&note("washing")));
    assert!((same - libm::log(0.98)).abs() < 1e-12, "{same}");
    for other in [Some(note("standing")), None] {
        assert!(state(&note("washing"), other.as_ref()) < libm::log(0.05));
    }
}

#[test]
fn what_was_done_or_said_is_not_held_against_what_machines_show() {
    let act = NoteEntry::Act {
        text: String::new(),
    };
    let answer = NoteEntry::Answer {
        question: String::new(),
        text: String::new(),
    };
    assert!(
        ![act, answer]
            .map(|entry| is_weighed(&written("off", entry)))
            .contains(&true)
    );
    let lines = [NoteEntry::Reading(ohms(None)), NoteEntry::Gauge(bar(None))];
    assert!(
        !lines
            .map(|entry| is_weighed(&written("off", entry)))
            .contains(&false)
    );
}
