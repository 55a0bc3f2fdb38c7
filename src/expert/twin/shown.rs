//! What a twin shows between moments and degrees, and when its faults are made good.

use super::*;
use crate::bench::action::Sense;
use crate::bench::notebook::Seen as Thing;
use crate::expert::seen::Seen;
use crate::machine::ActiveFault;
use crate::scenario::job;

fn sound() -> Twin {
    let shipped = job("half_as_strong_since_the_fitter");
    let shipped = shipped.expect("sound").expect("ships");
    Twin::sound(&Seen::at_the_door(&shipped).scenario).expect("starts")
}

fn with(ids: &[&str]) -> Twin {
    let variant = Variant {
        cause: 0,
        faults: ids.iter().map(|id| ActiveFault::constant(id)).collect(),
        prior: 1.0,
        chance: None,
        loose: None,
    };
    sound().with(&variant).expect("listed")
}

fn worked(twin: &mut Twin, work: &str) {
    let action = Action::Work {
        work: work.to_owned(),
        check: true,
    };
    twin.follow(&Step {
        entry: Entry {
            tick: twin.job().tick(),
            action,
        },
        ticks: 100,
        notes: Vec::new(),
        is_tripped: false,
    });
}

fn look(key: &str) -> Note {
    Note {
        number: 1,
        tick: 0,
        state: "washing".to_owned(),
        entry: NoteEntry::Observation {
            sense: Sense::Look,
            place: "pulsator".to_owned(),
            seen: vec![Thing {
                key: key.to_owned(),
                amount: None,
                text: String::new(),
            }],
        },
    }
}

#[test]
fn a_machine_is_mended_when_all_its_faults_are_made_good() {
    let [earth, low] = ["earth_wire_left_off", "capacitor_low"];
    let mut twin = with(&[earth, low]);
    let good = |twin: &Twin| {
        let model = &twin.job().scenario().machine;
        [earth, low].map(|id| twin.is_healed(model.fault(id).expect("listed")))
    };
    assert!(!twin.is_mended());
    assert_eq!(good(&twin), [false, false]);
    worked(&mut twin, "replace_run_capacitor");
    assert_eq!(good(&twin), [false, true]);
    assert!(!twin.is_mended());
    worked(&mut twin, "refit_earth_wire");
    assert_eq!(good(&twin), [true, true]);
    assert!(twin.is_mended());
    assert!(sound().is_mended());
}

#[test]
fn a_fault_in_two_wires_is_not_good_while_one_of_them_is_broken() {
    let twin = with(&["wires_gnawed"]);
    let mut half = twin.clone();
    worked(&mut half, "renew_pins_board_plug_3");
    assert!(!half.is_mended() && !twin.is_mended());
    let mut whole = twin;
    worked(&mut whole, "mend_gnawed_wires");
    assert!(whole.is_mended());
}

#[test]
fn a_tap_is_shut_by_its_own_fault_only() {
    assert!(with(&["tap_closed"]).is_tap_closed());
    assert!(!with(&["tap_nearly_shut"]).is_tap_closed() && !sound().is_tap_closed());
}

#[test]
fn what_hands_change_at_the_bench_is_in_its_words() {
    let mut twin = sound();
    let before = twin.bench_words();
    assert_eq!(before, sound().bench_words());
    worked(&mut twin, "replace_run_capacitor");
    assert_ne!(before, twin.bench_words());
}

#[test]
fn what_is_shown_a_moment_earlier_or_later_counts_a_tenth() {
    let (turns, stands) = (look("turns"), look("stands"));
    let shown = |now: &Note, glimpses: &[&Note]| Shown {
        notes: vec![now.clone()],
        glimpses: glimpses.iter().map(|note| vec![(*note).clone()]).collect(),
        ..Shown::default()
    };
    let fits = shown(&turns, &[]).fit(0, &turns);
    let wrong = shown(&stands, &[]).fit(0, &turns);
    assert!(fits > wrong + 4.0);
    let is = shown(&stands, &[&turns, &stands]).fit(0, &turns);
    let mean = 0.5 * (libm::exp(fits) + libm::exp(wrong));
    let by_hand = libm::log(0.9 * libm::exp(wrong) + 0.1 * mean);
    assert!((is - by_hand).abs() < 1e-12, "{is} {by_hand}");
    let state = shown(&stands, &[&turns]).state_fit(0, &turns);
    assert!(
        (state - weigh::state(&turns, Some(&stands))).abs() < 1e-12,
        "the same words"
    );
    // A line it would not have written fits as badly as any.
    let none = shown(&turns, &[]).fit(1, &turns);
    assert!((none - libm::log(weigh::OUTLIER)).abs() < 1e-12, "{none}");
}

#[test]
fn where_there_are_degrees_between_half_of_the_machines_are_of_them() {
    let (turns, stands) = (look("turns"), look("stands"));
    let at = Shown {
        notes: vec![stands.clone()],
        ..Shown::default()
    };
    let beside = Shown {
        notes: vec![turns.clone()],
        ..Shown::default()
    };
    let between = at.between(&beside, 0, &turns).expect("an observation");
    let slowly = at.fit(0, &turns);
    assert!(between > slowly + 1.0, "{between} {slowly}");
    let widened = Shown {
        between_fits: vec![Some(between)],
        ..at.clone()
    };
    let by_hand = libm::log(0.5 * libm::exp(slowly) + 0.5 * libm::exp(between));
    assert!((widened.fit(0, &turns) - by_hand).abs() < 1e-12);
    let act = Note {
        entry: NoteEntry::Act {
            text: String::new(),
        },
        ..turns.clone()
    };
    assert_eq!(at.between(&beside, 0, &act), None);
    let missing = at
        .between(&Shown::default(), 0, &turns)
        .expect("an observation");
    assert!(
        (missing - libm::log(weigh::OUTLIER)).abs() < 1e-12,
        "{missing}"
    );
}

#[test]
fn a_running_machine_is_looked_at_a_little_earlier_and_later_too_and_a_standing_one_once() {
    let place = "pulsator".to_owned();
    let sense = Sense::Look;
    let look_at = Action::Sense { sense, place };
    let glimpsed = |twin: &mut Twin, action: &Action, notes: Vec<Note>| {
        let tick = twin.job().tick();
        let entry = Entry {
            tick,
            action: action.clone(),
        };
        let step = Step {
            entry,
            ticks: 20,
            notes,
            is_tripped: false,
        };
        let shown = twin.follow(&step);
        shown.glimpses.iter().map(Vec::len).collect::<Vec<_>>()
    };
    let mut twin = sound();
    let none: [usize; 0] = [];
    assert_eq!(glimpsed(&mut twin, &look_at, vec![look("stands")]), none);
    let on = Action::Key {
        key: crate::bench::action::PanelKey::Power,
    };
    glimpsed(&mut twin, &on, Vec::new());
    assert!(twin.job().machine().switched_on());
    assert_eq!(glimpsed(&mut twin, &look_at, vec![look("stands")]), [1; 7]);
    assert_eq!(
        glimpsed(&mut twin, &look_at, Vec::new()),
        none,
        "nothing was written"
    );
}
