//! What hands do around the machine: panel, plug, board, tap, hose, lid, stored charge, water, and what
//! turns.

use crate::app::view::verbs::Candidate;
use crate::app::view::verbs::candidate;
use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::PanelKey;
use crate::bench::action::Turnable;
use crate::bench::job::Job;
use crate::bench::visit::EmptyBy;
use crate::bench::words::turnable_name;

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
            ("press on/off", PanelKey::Power),
            ("press start", PanelKey::Start),
            ("press program", PanelKey::Program),
            ("press water level", PanelKey::Level),
            ("press the service key behind the panel", PanelKey::Service),
        ] {
            add(word, key, 1);
        }
        return;
    }
    let pull = if job.machine().switched_on() {
        "push the knob in: off"
    } else {
        "pull the knob out: on"
    };
    add(pull, PanelKey::Power, 1);
    add("turn the dial to the start", PanelKey::Start, 1);
    add("turn the dial one step on", PanelKey::Program, 1);
    let word = "turn the dial five steps on";
    add(word, PanelKey::Program, STEPS_IN_ONE_GO);
}

/// What hands do to plug, tap, hose, lid, charge and water.
pub(super) fn around(id: &str, list: &mut Vec<Candidate>) {
    let mut add = |word: &str, act: Action| list.push(candidate(word, "", act));
    match id {
        "plug" | "socket" | "mains_cord" => {
            add("pull the plug", Action::Plug { inserted: false });
            add("put the plug in", Action::Plug { inserted: true });
            add("keep it in sight", Action::Secure);
            add(
                "put the splitter lead in",
                Action::Splitter { fitted: true },
            );
            add(
                "take the splitter lead away",
                Action::Splitter { fitted: false },
            );
            add(
                "switch its circuit off at the board",
                Action::HouseSwitch { on: false },
            );
            add("switch its circuit on", Action::HouseSwitch { on: true });
            add("prove the tester on its known source", Action::ProveTester);
            add("put new fuses into the instruments", Action::NewMeterFuse);
            discharge("plug pins", Charged::PlugPins, &mut add);
        }
        "tap" => {
            add("shut the tap", Action::Tap { open: false });
            add("open the tap", Action::Tap { open: true });
            add("bleed the hose into a bucket", Action::BleedHose);
        }
        "supply_hose" | "inlet_filter" => {
            add("bleed it into a bucket", Action::BleedHose);
            add("take the hose off", Action::SupplyHose { attached: false });
            add("screw the hose on", Action::SupplyHose { attached: true });
        }
        "lid" => {
            add("open", Action::Lid { open: true });
            add("shut", Action::Lid { open: false });
        }
        "lid_switch" => {
            add("bridge it", Action::BridgeLid { fitted: true });
            add("take the bridge off", Action::BridgeLid { fitted: false });
        }
        "on_off_switch" => add(
            "press",
            Action::Key {
                key: PanelKey::Power,
            },
        ),
        "motor" | "wash_motor" => add("dry what got wet inside", Action::DryOut),
        "run_capacitor" => discharge("it", Charged::RunCapacitor, &mut add),
        "outer_tub" | "tub" | "basket" => add(
            "bail the water out",
            Action::Empty {
                how: EmptyBy::Bucket,
            },
        ),
        "drain_motor" | "drain_valve" => {
            add(
                "let the water out by the wire",
                Action::Empty {
                    how: EmptyBy::DrainWire,
                },
            );
        }
        _ => {}
    }
}

fn discharge(what: &str, charged: Charged, add: &mut impl FnMut(&str, Action)) {
    add(
        &format!("discharge {what} with the resistor"),
        Action::Discharge {
            what: charged,
            tool: DischargeTool::BleedResistor,
        },
    );
    add(
        &format!("short {what} with a screwdriver"),
        Action::Discharge {
            what: charged,
            tool: DischargeTool::Screwdriver,
        },
    );
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
