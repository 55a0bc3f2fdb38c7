//! The order of isolation on every machine, by the plug and by the house's board. EN 50110-1, from
//! memory.

use tubwright::bench::action::Action;
use tubwright::bench::action::Charged;
use tubwright::bench::action::DischargeTool;
use tubwright::bench::action::MeterMode;
use tubwright::bench::job::Job;

use crate::scene::do_all;
use crate::scene::does;
use crate::scene::job;
use crate::scene::meter;
use crate::scene::off;

fn broken(job: &Job) -> Vec<&'static str> {
    job.safety().iter().map(|finding| finding.rule).collect()
}

#[test]
fn the_whole_order_proves_and_breaks_no_rule_on_every_machine_by_plug_and_by_board() {
    for machine in ["P", "T", "N"] {
        for at_the_board in [false, true] {
            let mut job = job(machine, &[]);
            let roles = job.machine().model().roles.clone();
            let [line, neutral, earth] = roles.plug_pins;
            let [socket_line, socket_neutral, _] = roles.socket;
            let known = || meter(MeterMode::AcVolts, &socket_line, &socket_neutral);
            does(&mut job, known());
            if at_the_board {
                do_all(
                    &mut job,
                    [Action::HouseSwitch { on: false }, Action::ProveTester],
                );
            } else {
                does(&mut job, Action::Plug { inserted: false });
            }
            do_all(
                &mut job,
                [
                    Action::Secure,
                    meter(MeterMode::AcVolts, &line, &neutral),
                    meter(MeterMode::AcVolts, &line, &earth),
                    meter(MeterMode::AcVolts, &neutral, &earth),
                    if at_the_board {
                        Action::ProveTester
                    } else {
                        known()
                    },
                    Action::Tap { open: false },
                    Action::BleedHose,
                    off("pull_out"),
                    off("back_cover"),
                ],
            );
            let discharge = Action::Discharge {
                what: Charged::RunCapacitor,
                tool: DischargeTool::BleedResistor,
            };
            does(&mut job, discharge);
            let pull = Action::PullApart {
                connector: "motor_plug".to_owned(),
            };
            let shocked = does(&mut job, pull).events;
            assert!(shocked.is_empty(), "{machine}: {shocked:?}");
            let broken = broken(&job);
            // A cover that comes off with the plug in, its circuit locked off, is no live cover.
            assert!(broken.is_empty(), "{machine} {at_the_board}: {broken:?}");
            assert!(job.bench().isolation.is_proved_dead());
        }
    }
}
