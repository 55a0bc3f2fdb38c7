//! What hands do around the machine: panel, plug, board, tap, hose, lid, stored charge, water, and what
//! turns.

use crate::app::view::candidate::Candidate;
use crate::app::view::candidate::candidate;
use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::PanelKey;
use crate::bench::action::Turnable;
use crate::bench::job::Job;
use crate::bench::visit::EmptyBy;
use crate::bench::words::turnable_name;
use crate::say;

/// The dial and push-pull knob of a timer, as the picture calls it.
pub(super) const TIMER_KNOB: &str = "timer_knob";
/// Steps of the dial in one go, so that a hand comes round in a few. Design choice.
const STEPS_IN_ONE_GO: usize = 5;

/// What hands do at the panel with the display or dial in hand: a timer's knob is pulled and pushed
/// and its dial turned one way; an electronic machine has keys, one for the service test behind it.
pub(super) fn panel(job: &Job, id: &str, list: &mut Vec<Candidate>) {
    if !matches!(id, "display" | "display_board") {
        return;
    }
    let mut add = |word: &str, key, times| {
        list.push(candidate(word, "", Action::Key { key }).times(times));
    };
    if job.scenario().workshop.part("timer").is_none() {
        // The panel's own keys too: on a small screen they are hard to touch one by one.
        for (word, key) in [
            (say!("press on/off"), PanelKey::Power),
            (say!("press start"), PanelKey::Start),
            (say!("press program"), PanelKey::Program),
            (say!("press water level"), PanelKey::Level),
            (
                say!("press the service key behind the panel"),
                PanelKey::Service,
            ),
        ] {
            add(word, key, 1);
        }
        return;
    }
    let pull = if job.machine().switched_on() {
        say!("push the knob in: off")
    } else {
        say!("pull the knob out: on")
    };
    add(pull, PanelKey::Power, 1);
    add(say!("turn the dial to the start"), PanelKey::Start, 1);
    add(say!("turn the dial one step on"), PanelKey::Program, 1);
    let word = say!("turn the dial five steps on");
    add(word, PanelKey::Program, STEPS_IN_ONE_GO);
}

/// What hands do to plug, tap, hose, lid, charge and water.
pub(super) fn around(id: &str, list: &mut Vec<Candidate>) {
    let mut add = |word: &str, act: Action| list.push(candidate(word, "", act));
    match id {
        "plug" | "socket" | "mains_cord" => {
            add(say!("pull the plug"), Action::Plug { inserted: false });
            add(say!("put the plug in"), Action::Plug { inserted: true });
            add(say!("keep it in sight"), Action::Secure);
            add(
                say!("put the splitter lead in"),
                Action::Splitter { fitted: true },
            );
            add(
                say!("take the splitter lead away"),
                Action::Splitter { fitted: false },
            );
            add(
                say!("switch its circuit off at the board"),
                Action::HouseSwitch { on: false },
            );
            add(
                say!("switch its circuit on"),
                Action::HouseSwitch { on: true },
            );
            add(
                say!("prove the tester on its known source"),
                Action::ProveTester,
            );
            add(
                say!("put new fuses into the instruments"),
                Action::NewMeterFuse,
            );
            discharge(
                Charged::PlugPins,
                [
                    say!("discharge plug pins with the resistor"),
                    say!("short plug pins with a screwdriver"),
                ],
                &mut add,
            );
        }
        "tap" => {
            add(say!("shut the tap"), Action::Tap { open: false });
            add(say!("open the tap"), Action::Tap { open: true });
            add(say!("bleed the hose into a bucket"), Action::BleedHose);
        }
        "supply_hose" | "inlet_filter" => {
            add(say!("bleed it into a bucket"), Action::BleedHose);
            add(
                say!("take the hose off"),
                Action::SupplyHose { attached: false },
            );
            add(
                say!("screw the hose on"),
                Action::SupplyHose { attached: true },
            );
        }
        "lid" => {
            add(say!("open" as "verb, of a lid"), Action::Lid { open: true });
            add(
                say!("shut" as "verb, of a lid"),
                Action::Lid { open: false },
            );
        }
        "lid_switch" => {
            add(say!("bridge it"), Action::BridgeLid { fitted: true });
            add(
                say!("take the bridge off"),
                Action::BridgeLid { fitted: false },
            );
        }
        "on_off_switch" => add(
            say!("press" as "verb, of a key"),
            Action::Key {
                key: PanelKey::Power,
            },
        ),
        "motor" | "wash_motor" => add(say!("dry what got wet inside"), Action::DryOut),
        "run_capacitor" => discharge(
            Charged::RunCapacitor,
            [
                say!("discharge it with the resistor"),
                say!("short it with a screwdriver"),
            ],
            &mut add,
        ),
        "outer_tub" | "tub" | "basket" => add(
            say!("bail the water out"),
            Action::Empty {
                how: EmptyBy::Bucket,
            },
        ),
        "drain_motor" | "drain_valve" => {
            add(
                say!("let the water out by the wire"),
                Action::Empty {
                    how: EmptyBy::DrainWire,
                },
            );
        }
        _ => {}
    }
}

/// Led off in the right way and in the quick one.
fn discharge(what: Charged, words: [&str; 2], add: &mut impl FnMut(&str, Action)) {
    let tools = [DischargeTool::BleedResistor, DischargeTool::Screwdriver];
    for (word, tool) in words.into_iter().zip(tools) {
        add(word, Action::Discharge { what, tool });
    }
}

/// What turns or moves by hand.
pub(super) fn hands(id: &str, list: &mut Vec<Candidate>) {
    let whats: &[Turnable] = match id {
        "pulsator" => &[Turnable::Pulsator],
        "basket" => &[Turnable::Basket],
        "motor_pulley" | "wash_motor" => &[Turnable::MotorPulley],
        "belt" => &[Turnable::Belt],
        "drain_motor" => &[Turnable::DrainWire],
        "clutch_lever" => &[Turnable::ClutchLever],
        "outer_tub" | "tub" | "suspension_rods" => &[Turnable::Tub],
        "out_of_balance_switch" | "balance_switch" => &[Turnable::BalanceLever],
        _ => &[],
    };
    for what in whats {
        list.push(candidate(
            turnable_name(*what),
            "",
            Action::Turn { what: *what },
        ));
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::app::library;
    use crate::app::session::Session;
    use crate::app::view::Order;
    use crate::app::view::Thing;
    use crate::app::view::build::picture;
    use crate::app::view::verbs;

    fn session(id: &str) -> Session {
        let scenario = library::find(id).expect("ships");
        Session::new(Job::new(scenario, 7).expect("sound"), 0, Vec::new())
    }

    /// Keys pressed by touching what the picture from outside shows, or by one of its verbs.
    fn keys(id: &str) -> BTreeSet<PanelKey> {
        let session = session(id);
        let mut things = Vec::new();
        picture(&session).walk(&mut |element| {
            let read = |name: &str| element.attribute(name).map(str::to_owned);
            things.extend(read("data-key").map(Thing::Key));
            things.extend(read("data-part").map(Thing::Place));
        });
        let mut found = BTreeSet::new();
        for thing in things {
            if let Thing::Key(drawn) = &thing {
                found.extend(verbs::key(drawn));
            }
            for verb in verbs::verbs(session.live(), &thing) {
                if let Order::Do(acts) = verb.order {
                    found.extend(acts.iter().filter_map(|act| match act {
                        Action::Key { key } => Some(*key),
                        _ => None,
                    }));
                }
            }
        }
        found
    }

    #[test]
    fn every_machine_can_be_run_from_the_picture_of_its_outside() {
        let mut run = BTreeSet::from([
            PanelKey::Power,
            PanelKey::Start,
            PanelKey::Program,
            PanelKey::Level,
        ]);
        assert_eq!(keys("nothing_at_all"), run);
        run.insert(PanelKey::Service);
        for id in ["no_water", "gives_up_at_once"] {
            assert_eq!(keys(id), run, "{id}");
        }
    }

    #[test]
    fn a_dial_turns_several_steps_in_one_go() {
        let session = session("nothing_at_all");
        let verbs = verbs::verbs(session.live(), &Thing::Key(TIMER_KNOB.to_owned()));
        let five = verbs.iter().find(|verb| verb.word.contains("five steps"));
        let key = PanelKey::Program;
        let turns = vec![Action::Key { key }; STEPS_IN_ONE_GO];
        assert_eq!(five.map(|verb| &verb.order), Some(&Order::Do(turns)));
    }
}
