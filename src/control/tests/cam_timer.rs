//! The cam timer with a stub pressure switch in its feed.

use std::sync::Arc;

use crate::control::cam_timer::CamTimer;
use crate::control::io::Inputs;
use crate::control::typical_timer;

/// Timer, and a tub whose pressure switch routes TC1 to the valve or to the wash feed.
struct Rig {
    timer: CamTimer,
    inputs: Inputs,
    water_s: f64,
    n_ticks: u32,
}

const FILL_S: f64 = 240.0;

impl Rig {
    fn new() -> Rig {
        Rig {
            timer: CamTimer::new(Arc::new(typical_timer::cam_timer())),
            inputs: Inputs::at_rest(0.0),
            water_s: 0.0,
            n_ticks: 0,
        }
    }

    fn closed(&self, name: &str) -> bool {
        let contacts = &self.timer.model().contacts;
        let index = contacts.iter().position(|contact| contact.name == name);
        index.is_some_and(|index| self.timer.closed_contacts() & (1 << index) != 0)
    }

    fn tick(&mut self) -> bool {
        let is_full = self.water_s >= FILL_S;
        let feed = self.closed("TC0") && self.closed("TC1");
        let outlet = self.closed("TC0") && self.closed("TC4");
        if feed && !is_full {
            self.water_s += 0.1;
        }
        if outlet {
            self.water_s = (self.water_s - 0.3).max(0.0);
        }
        let by_wash = feed && is_full && self.closed("TC7");
        let by_outlet = outlet && self.closed("TC6");
        self.inputs.timer_motor_running = by_wash || by_outlet;
        self.n_ticks += 1;
        self.timer.tick(&self.inputs).loads.buzzer
    }

    fn run(&mut self, time_s: f64) {
        for _ in 0..(time_s * 10.0) as u32 {
            self.tick();
        }
    }
}

#[test]
fn a_pushed_knob_keeps_everything_open() {
    let mut rig = Rig::new();
    rig.timer.turn_to(20);
    rig.run(100.0);
    assert!(!rig.closed("TC0"));
    assert_eq!(rig.timer.step(), 20);
    rig.timer.set_knob(true);
    assert!(rig.closed("TC0"));
}

#[test]
fn the_timer_waits_while_the_tub_fills() {
    let mut rig = Rig::new();
    rig.timer.turn_to(1);
    rig.timer.set_knob(true);
    rig.run(FILL_S - 1.0);
    assert_eq!(rig.timer.step(), 1);
    assert!(rig.timer.in_step_s() < 0.05);
    rig.run(62.0);
    assert_eq!(rig.timer.step(), 2);
}

#[test]
fn a_whole_wash_takes_43_timed_minutes_and_three_fills() {
    let mut rig = Rig::new();
    rig.timer.turn_to(1);
    rig.timer.set_knob(true);
    let mut n_buzzer = 0;
    while rig.timer.step() != 0 && rig.n_ticks < 100_000 {
        n_buzzer += u32::from(rig.tick());
    }
    let expected_s = 43.0 * 60.0 + 3.0 * FILL_S;
    assert!((f64::from(rig.n_ticks) / 10.0 - expected_s).abs() < 2.0);
    assert_eq!(n_buzzer, 600);
    assert!(!rig.closed("TC0"), "step 0 opens the main contact");
}

#[test]
fn the_reversing_shaft_turns_14_off_7() {
    let mut rig = Rig::new();
    rig.timer.turn_to(9);
    rig.timer.set_knob(true);
    rig.water_s = FILL_S;
    let mut pattern = String::new();
    for _ in 0..42 {
        pattern.push(match (rig.closed("TCA"), rig.closed("TCB")) {
            (true, false) => 'A',
            (false, true) => 'B',
            (false, false) => '-',
            (true, true) => '!',
        });
        rig.tick();
    }
    let expected = ["A".repeat(14), "-".repeat(7), "B".repeat(14), "-".repeat(7)].concat();
    assert_eq!(pattern, expected);
}

#[test]
fn the_two_directions_are_never_closed_together_in_any_step() {
    let mut rig = Rig::new();
    rig.timer.set_knob(true);
    for step in 0..44 {
        rig.timer.turn_to(step);
        rig.inputs.timer_motor_running = true;
        for _ in 0..130 {
            rig.timer.tick(&rig.inputs);
            let forward = rig.closed("TCA") || rig.closed("TC5");
            assert!(!(forward && rig.closed("TCB")), "step {step}");
            assert!(!(rig.closed("TC1") && rig.closed("TC4")), "step {step}");
        }
    }
}

#[test]
fn the_step_spin_is_six_on_six_off() {
    let mut rig = Rig::new();
    rig.timer.turn_to(19);
    rig.timer.set_knob(true);
    let n_on = (0..600)
        .filter(|_| {
            let is_on = rig.closed("TC5");
            rig.tick();
            is_on
        })
        .count();
    assert_eq!(n_on, 300);
    assert_eq!(rig.timer.step(), 20);
    assert!(rig.closed("TC5"));
}
