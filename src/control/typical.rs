//! Two typical electronic controls: gravity drain, and pump with its own clutch actuator.
//!
//! Times and thresholds: design choice; structure: common practice. They serve tests and
//! whoever writes a machine file; the machines that ship are files.

use crate::control::io::Loads;
use crate::control::model::ControlModel;
use crate::control::model::DrainLoads;
use crate::control::model::LevelThresholds;
use crate::control::model::PhaseEnd;
use crate::control::model::ServicePhase;
use crate::control::model::ServiceShow;
use crate::control::model::ServiceStep;
use crate::control::model::Times;
use crate::control::programs;

const NONE: Loads = Loads {
    motor_forward: false,
    motor_reverse: false,
    inlet_valve: false,
    hot_valve: false,
    drain_actuator: false,
    drain_pump: false,
    buzzer: false,
};

/// One geared actuator pulls drain valve, brake and clutch; lid and lever share an input;
/// a mechanical switch feeds the board.
pub fn gravity_drain(nominal_supply_v: f64, level: LevelThresholds) -> ControlModel {
    let with_actuator = DrainLoads {
        actuator: true,
        pump: false,
    };
    model(nominal_supply_v, level, with_actuator, with_actuator)
}

/// A pump drains, an actuator of its own releases brake and clutch; two valves; lid and
/// lever have an input each and the lid is guarded in the wash; the board is always live.
pub fn pump_drain(nominal_supply_v: f64, level: LevelThresholds) -> ControlModel {
    let pump = DrainLoads {
        actuator: false,
        pump: true,
    };
    let spin = DrainLoads {
        actuator: true,
        pump: true,
    };
    ControlModel {
        wakes_when_powered: false,
        resumes_after_power_loss: true,
        lid_guards_wash: true,
        has_hot_valve: true,
        ..model(nominal_supply_v, level, pump, spin)
    }
}

fn model(
    nominal_supply_v: f64,
    level: LevelThresholds,
    drain_loads: DrainLoads,
    spin_loads: DrainLoads,
) -> ControlModel {
    ControlModel {
        nominal_supply_v,
        supply_low_ratio: 0.75,
        supply_high_ratio: 1.2,
        wakes_when_powered: true,
        resumes_after_power_loss: false,
        lid_guards_wash: false,
        has_hot_valve: false,
        drain_loads,
        spin_loads,
        level,
        times: times(),
        max_corrections: 3,
        max_top_ups: 5,
        programs: vec![
            programs::normal(),
            programs::quick(),
            programs::gentle(),
            programs::soak(),
            programs::drain_and_spin(),
        ],
        service_steps: service_steps(drain_loads, spin_loads),
    }
}

fn times() -> Times {
    Times {
        self_check_s: 3.0,
        ready_off_s: 600.0,
        level_hold_s: 1.0,
        fill_limit_s: 1200.0,
        fill_usual_s: 240.0,
        top_up_after_s: 20.0,
        drain_after_empty_s: 30.0,
        drain_limit_s: 600.0,
        drain_usual_s: 115.0,
        spin_step_on_s: 6.0,
        spin_step_off_s: 6.0,
        clutch_lead_s: 6.0,
        correction_brake_s: 10.0,
        correction_agitate_s: 60.0,
        dead_time_s: 0.3,
        lid_open_debounce_s: 0.1,
        lid_closed_debounce_s: 0.5,
        knock_max_s: 1.0,
        chatter_limit_s: 5.0,
        lid_limit_s: 600.0,
        pause_limit_s: 1800.0,
        overflow_after_s: 1.0,
        overflow_drain_s: 120.0,
        no_pulses_after_s: 5.0,
        supply_after_s: 5.0,
        power_memory_s: 1800.0,
        alarm_buzzer_s: 600.0,
        lock_hold_s: 3.0,
    }
}

/// A step of phases with fixed lengths in s.
fn timed(title: &str, shows: ServiceShow, phases: &[(Loads, f64)]) -> ServiceStep {
    ServiceStep {
        title: title.to_owned(),
        phases: phases
            .iter()
            .map(|&(loads, time_s)| ServicePhase {
                loads,
                until: PhaseEnd::Time { time_s },
            })
            .collect(),
        shows,
        needs_empty: false,
    }
}

/// A step that switches nothing and only shows.
fn showing(title: &str, shows: ServiceShow) -> ServiceStep {
    let phase = ServicePhase {
        loads: NONE,
        until: PhaseEnd::Key,
    };
    ServiceStep {
        title: title.to_owned(),
        phases: vec![phase],
        shows,
        needs_empty: false,
    }
}

fn service_steps(drain_loads: DrainLoads, spin_loads: DrainLoads) -> Vec<ServiceStep> {
    let inlet = Loads {
        inlet_valve: true,
        ..NONE
    };
    let forward = Loads {
        motor_forward: true,
        ..NONE
    };
    let reverse = Loads {
        motor_reverse: true,
        ..NONE
    };
    let buzzer = Loads {
        buzzer: true,
        ..NONE
    };
    let drain = Loads {
        drain_actuator: drain_loads.actuator,
        drain_pump: drain_loads.pump,
        ..NONE
    };
    let clutch = Loads {
        drain_actuator: spin_loads.actuator,
        drain_pump: spin_loads.pump,
        ..NONE
    };
    let spin = Loads {
        motor_forward: true,
        ..clutch
    };
    use ServiceShow::Frequency;
    use ServiceShow::Lamps;
    use ServiceShow::Nothing;
    use ServiceShow::Seconds;
    use ServiceShow::Switches;
    vec![
        timed("Lamps and buzzer", Lamps, &[(buzzer, 5.0)]),
        showing("Water level reading", Frequency),
        showing("Lid and out-of-balance switch", Switches),
        timed("Inlet valve", Frequency, &[(inlet, 10.0)]),
        timed("Motor forward", Nothing, &[(forward, 5.0)]),
        timed("Motor reverse", Nothing, &[(reverse, 5.0)]),
        timed("Drain, brake and clutch", Nothing, &[(clutch, 10.0)]),
        ServiceStep {
            needs_empty: true,
            ..timed("Spin", Nothing, &[(clutch, 6.0), (spin, 20.0)])
        },
        timed("Stop", Nothing, &[(NONE, 10.0)]),
        ServiceStep {
            title: "Fill and drain".to_owned(),
            phases: vec![
                ServicePhase {
                    loads: inlet,
                    until: PhaseEnd::Full { level: 0 },
                },
                ServicePhase {
                    loads: drain,
                    until: PhaseEnd::Empty,
                },
            ],
            shows: Seconds,
            needs_empty: false,
        },
    ]
}
