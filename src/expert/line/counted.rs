//! What looks, readings, hands and the protective device count for on one machine.

use super::*;
use crate::bench::action::Sense;
use crate::bench::job::Entry;
use crate::bench::notebook::Seen;
use crate::expert::cause::Chance;
use crate::scenario::job;

const CHANCE: Chance = Chance {
    period_s: 10.0,
    chance_ratio: 0.3,
};

fn line(chance: Option<Chance>, loose: Option<Chance>) -> Line {
    let scenario = job("no_water").expect("sound").expect("ships");
    let twin = Twin::sound(&scenario).expect("starts");
    let variant = Variant {
        cause: 0,
        faults: Vec::new(),
        prior: 0.25,
        chance,
        loose,
    };
    Line::fresh(variant, twin, Symptoms::default(), -0.5)
}

fn step(action: Action, is_tripped: bool) -> Step {
    Step {
        entry: Entry { tick: 0, action },
        ticks: 0,
        notes: Vec::new(),
        is_tripped,
    }
}

fn look(state: &str, keys: &[&str]) -> Note {
    let seen = keys.iter().map(|key| Seen {
        key: (*key).to_owned(),
        amount: None,
        text: String::new(),
    });
    Note {
        number: 1,
        tick: 0,
        state: state.to_owned(),
        entry: NoteEntry::Observation {
            sense: Sense::Look,
            place: "belt".to_owned(),
            seen: seen.collect(),
        },
    }
}

fn showing(note: Note) -> Shown {
    Shown {
        was_possible: true,
        notes: vec![note],
        ..Shown::default()
    }
}

#[test]
fn what_hands_could_not_do_there_speaks_against_a_machine_but_for_a_tap() {
    let lid = step(Action::Lid { open: true }, false);
    let tap = step(Action::Tap { open: true }, false);
    let mut line = line(None, None);
    let mut says = |step: &Step, was_possible| {
        let shown = Shown {
            was_possible,
            ..Shown::default()
        };
        line.hands_and_device(step, &shown)
    };
    assert!(says(&lid, true).abs() < 1e-12);
    assert!((says(&lid, false) - libm::log(weigh::OUTLIER)).abs() < 1e-12);
    assert!(says(&tap, false).abs() < 1e-12 && says(&tap, true).abs() < 1e-12);
}

#[test]
fn a_device_that_is_open_on_one_machine_only_counts_once_until_they_agree_again() {
    let mut line = line(None, None);
    let mut says = |here: bool, there: bool| {
        let shown = Shown {
            was_possible: true,
            is_tripped: there,
            ..Shown::default()
        };
        line.hands_and_device(&step(Action::Note, here), &shown)
    };
    let slip = libm::log(TRIP_SLIP);
    for (here, there, counts) in [
        (false, false, 0.0),
        (true, false, slip),
        (true, false, 0.0),
        (true, true, 0.0),
        (false, true, slip),
        (false, false, 0.0),
    ] {
        let is = says(here, there);
        assert!((is - counts).abs() < 1e-12, "{here} {there} {is}");
    }
}

#[test]
fn what_hands_say_counts_for_a_fault_that_is_always_there_and_for_one_that_comes_and_goes() {
    let away = Away {
        goes_on: -1.0,
        idle: -1.0,
    };
    let past = Past {
        away,
        ..Past::default()
    };
    let told = Told::default();
    let words = libm::log(0.25) - 0.5 + told.fits(Symptoms::default());
    let steady = told.fits_onset(false) - 2.0;
    let by_chance = 0.3 * libm::exp(-2.0) + 0.7 * libm::exp(-1.0);
    let by_chance = told.fits_onset(true) + libm::log(by_chance);
    let mixed = (1.0 - LOOSE_RATIO) * libm::exp(steady) + LOOSE_RATIO * libm::exp(by_chance);
    for (chance, loose, seen) in [
        (None, None, steady),
        (Some(CHANCE), None, by_chance),
        (None, Some(CHANCE), libm::log(mixed)),
    ] {
        let mut line = line(chance, loose);
        assert!((line.feel(-2.0, &past) + 2.0).abs() < 1e-12);
        let weight = line.log_weight(told);
        assert!(
            (weight - words - seen).abs() < 1e-9,
            "{weight} {words} {seen}"
        );
    }
}

#[test]
fn a_look_is_news_once_for_each_thing_seen_and_each_thing_the_machine_would_show() {
    let mut line = line(None, None);
    let mut news = |is: &Note, shown: &Note| {
        let shown = showing(shown.clone());
        let state = shown.state_fit(0, is);
        (line.news("closed", (0, is), &shown, true, -3.0), state)
    };
    let (slack, off) = (look("off", &["slack"]), look("off", &["off"]));
    let (first, state) = news(&slack, &slack);
    assert!((first - (state - 3.0)).abs() < 1e-12, "{first}");
    assert!(news(&slack, &slack).0.abs() < 1e-12, "seen before");
    assert!(
        (news(&off, &slack).0 + 3.0).abs() < 1e-12,
        "another thing seen"
    );
    assert!(
        (news(&slack, &off).0 + 3.0).abs() < 1e-12,
        "the machine has changed"
    );
    let both = look("off", &["slack", "off"]);
    assert!(
        (news(&both, &slack).0 + 3.0).abs() < 1e-12,
        "one more thing"
    );
    let (running, state) = news(&look("washing", &["slack"]), &slack);
    assert!(
        (running - state).abs() < 1e-12,
        "only the words for its state are new"
    );
}

#[test]
fn a_reading_is_news_unless_it_was_read_before() {
    let mut line = line(None, None);
    let note = Note {
        entry: NoteEntry::Act {
            text: String::new(),
        },
        ..look("off", &[])
    };
    let shown = showing(note.clone());
    let state = shown.state_fit(0, &note);
    let news =
        |line: &mut Line, is_repeat| line.news("closed", (0, &note), &shown, is_repeat, -3.0);
    assert!((news(&mut line, false) - (state - 3.0)).abs() < 1e-12);
    assert!(news(&mut line, true).abs() < 1e-12);
    assert!((news(&mut line, false) + 3.0).abs() < 1e-12);
}

#[test]
fn what_may_make_a_fault_come_or_go_is_a_plug_a_work_or_the_power() {
    let key = |key| Action::Key { key };
    let anew = [
        Action::Plug { inserted: true },
        key(PanelKey::Start),
        key(PanelKey::Power),
    ];
    assert!(anew.iter().all(begins_anew));
    assert!(!begins_anew(&key(PanelKey::Level)) && !begins_anew(&Action::Lid { open: true }));
    assert!(is_start(&key(PanelKey::Start)) && !is_start(&key(PanelKey::Power)));
}

#[test]
fn a_reading_taken_again_tells_only_whether_the_fault_was_there_again() {
    let note = Note {
        tick: 500,
        ..look("off", &["slack"])
    };
    let shown = showing(look("off", &["off"]));
    let fit = shown.fit(0, &note);
    let without = Away {
        goes_on: -0.5,
        idle: -9.0,
    };
    let heard = |same: Vec<(u64, Tick)>| Heard {
        n: 0,
        bench: String::new(),
        same,
        start: 1,
        fit_away: without,
        adds_away: Away {
            goes_on: -0.2,
            idle: -0.3,
        },
        stretch: None,
    };
    let told = Told::default();
    let weight = |same: Vec<(u64, Tick)>| {
        let mut line = line(Some(CHANCE), None);
        let adds = line.hear(&heard(same), &note, &shown, -2.0);
        assert!((adds + 2.0).abs() < 1e-12);
        line.log_weight(told)
            - libm::log(0.25)
            - line.begins
            - told.fits(Symptoms::default())
            - told.fits_onset(true)
    };
    let period = |there: f64, away: Away| {
        let mut period = Period::default();
        period.enter(1, 500, CHANCE);
        period.see(there, away);
        period.log_likelihood(CHANCE)
    };
    let as_new = period(-2.0, heard(Vec::new()).adds_away);
    assert!((weight(Vec::new()) - as_new).abs() < 1e-12);
    // 10 s are a draw: within it the fault was there or not for both.
    assert!((weight(vec![(1, 590)]) - as_new).abs() < 1e-12);
    // In another draw, or another start, the best of all explanations is no news.
    let most = fit.max(-0.5);
    let again = Away {
        goes_on: -0.5 - most,
        idle: -9.0 - most,
    };
    let anew = period(fit - most, again);
    for same in [vec![(1, 400)], vec![(0, 500)], vec![(1, 100), (1, 200)]] {
        assert!((weight(same.clone()) - anew).abs() < 1e-12, "{same:?}");
    }
}
