//! From the `control` section of a machine file to the control's plain types.

use crate::control::cam_timer::CamContact;
use crate::control::cam_timer::CamTimerModel;
use crate::control::cam_timer::FastCam;
use crate::control::cam_timer::StepSpan;
use crate::control::io::Loads;
use crate::control::model::ControlModel;
use crate::control::model::DrainLoads;
use crate::control::model::LevelTarget;
use crate::control::model::LevelThresholds;
use crate::control::model::PhaseEnd;
use crate::control::model::ServicePhase;
use crate::control::model::ServiceShow;
use crate::control::model::ServiceStep;
use crate::control::model::Times;
use crate::control::programs::Pattern;
use crate::control::programs::Program;
use crate::control::programs::Step;
use crate::control::programs::StepKind;
use crate::scenario::control_file::CamTimerFile;
use crate::scenario::control_file::DrainLoadsFile;
use crate::scenario::control_file::ElectronicFile;
use crate::scenario::control_file::LevelFile;
use crate::scenario::control_file::LoadFile;
use crate::scenario::control_file::PatternFile;
use crate::scenario::control_file::PhaseEndFile;
use crate::scenario::control_file::ProgramFile;
use crate::scenario::control_file::ProgramStepFile;
use crate::scenario::control_file::ServiceShowFile;
use crate::scenario::control_file::ServiceStepFile;
use crate::scenario::control_file::StepSpanFile;
use crate::scenario::control_file::TimesFile;

impl ElectronicFile {
    /// The same as the control's own data.
    pub fn to_plain(&self) -> ControlModel {
        ControlModel {
            nominal_supply_v: self.nominal_supply_v,
            supply_low_ratio: self.supply_low_ratio,
            supply_high_ratio: self.supply_high_ratio,
            wakes_when_powered: self.wakes_when_powered,
            resumes_after_power_loss: self.resumes_after_power_loss,
            lid_guards_wash: self.lid_guards_wash,
            has_hot_valve: self.has_hot_valve,
            drain_loads: self.drain_loads.to_plain(),
            spin_loads: self.spin_loads.to_plain(),
            level: self.level.to_plain(),
            times: self.times.to_plain(),
            max_corrections: self.max_corrections,
            max_top_ups: self.max_top_ups,
            programs: self.programs.iter().map(ProgramFile::to_plain).collect(),
            service_steps: self
                .service_steps
                .iter()
                .map(ServiceStepFile::to_plain)
                .collect(),
        }
    }
}

impl DrainLoadsFile {
    fn to_plain(self) -> DrainLoads {
        DrainLoads {
            actuator: self.actuator,
            pump: self.pump,
        }
    }
}

impl PatternFile {
    fn to_plain(self) -> Pattern {
        Pattern {
            on_s: self.on_s,
            off_s: self.off_s,
        }
    }
}

impl LevelFile {
    fn to_plain(&self) -> LevelThresholds {
        let targets = self.targets.iter().map(|target| LevelTarget {
            name: target.name.clone(),
            full_hz: target.full_hz,
            top_up_hz: target.top_up_hz,
            pattern: target.pattern.to_plain(),
        });
        LevelThresholds {
            targets: targets.collect(),
            empty_hz: self.empty_hz,
            overflow_hz: self.overflow_hz,
            plausible_low_hz: self.plausible_low_hz,
            plausible_high_hz: self.plausible_high_hz,
        }
    }
}

impl TimesFile {
    fn to_plain(&self) -> Times {
        Times {
            self_check_s: self.self_check_s,
            ready_off_s: self.ready_off_s,
            level_hold_s: self.level_hold_s,
            fill_limit_s: self.fill_limit_s,
            fill_usual_s: self.fill_usual_s,
            top_up_after_s: self.top_up_after_s,
            drain_after_empty_s: self.drain_after_empty_s,
            drain_limit_s: self.drain_limit_s,
            drain_usual_s: self.drain_usual_s,
            spin_step_on_s: self.spin_step_on_s,
            spin_step_off_s: self.spin_step_off_s,
            clutch_lead_s: self.clutch_lead_s,
            correction_brake_s: self.correction_brake_s,
            correction_agitate_s: self.correction_agitate_s,
            dead_time_s: self.dead_time_s,
            lid_open_debounce_s: self.lid_open_debounce_s,
            lid_closed_debounce_s: self.lid_closed_debounce_s,
            knock_max_s: self.knock_max_s,
            chatter_limit_s: self.chatter_limit_s,
            lid_limit_s: self.lid_limit_s,
            pause_limit_s: self.pause_limit_s,
            overflow_after_s: self.overflow_after_s,
            overflow_drain_s: self.overflow_drain_s,
            no_pulses_after_s: self.no_pulses_after_s,
            supply_after_s: self.supply_after_s,
            power_memory_s: self.power_memory_s,
            alarm_buzzer_s: self.alarm_buzzer_s,
            lock_hold_s: self.lock_hold_s,
        }
    }
}

impl ProgramFile {
    fn to_plain(&self) -> Program {
        Program {
            name: self.name.clone(),
            steps: self.steps.iter().map(|step| step.to_plain()).collect(),
            pattern: self.pattern.map(PatternFile::to_plain),
        }
    }
}

impl ProgramStepFile {
    fn to_plain(self) -> Step {
        match self {
            ProgramStepFile::Fill => Step::new(StepKind::Fill, 0.0),
            ProgramStepFile::WashFill => Step::wash_fill(),
            ProgramStepFile::Agitate(time_s) => Step::new(StepKind::Agitate, time_s),
            ProgramStepFile::Soak(time_s) => Step::new(StepKind::Soak, time_s),
            ProgramStepFile::Drain => Step::new(StepKind::Drain, 0.0),
            ProgramStepFile::SpinStep(time_s) => Step::new(StepKind::SpinStep, time_s),
            ProgramStepFile::SpinFull(time_s) => Step::new(StepKind::SpinFull, time_s),
            ProgramStepFile::Brake(time_s) => Step::new(StepKind::Brake, time_s),
        }
    }
}

impl ServiceStepFile {
    fn to_plain(&self) -> ServiceStep {
        let phases = self.phases.iter().map(|phase| ServicePhase {
            loads: loads(&phase.on),
            until: match phase.until {
                PhaseEndFile::TimeS(time_s) => PhaseEnd::Time { time_s },
                PhaseEndFile::Full(level) => PhaseEnd::Full { level },
                PhaseEndFile::Empty => PhaseEnd::Empty,
                PhaseEndFile::Key => PhaseEnd::Key,
            },
        });
        ServiceStep {
            title: self.title.clone(),
            phases: phases.collect(),
            shows: match self.shows {
                ServiceShowFile::Lamps => ServiceShow::Lamps,
                ServiceShowFile::Frequency => ServiceShow::Frequency,
                ServiceShowFile::Switches => ServiceShow::Switches,
                ServiceShowFile::Seconds => ServiceShow::Seconds,
                ServiceShowFile::Nothing => ServiceShow::Nothing,
            },
            needs_empty: self.needs_empty,
        }
    }
}

fn loads(on: &[LoadFile]) -> Loads {
    let mut loads = Loads::default();
    for load in on {
        let slot = match load {
            LoadFile::MotorForward => &mut loads.motor_forward,
            LoadFile::MotorReverse => &mut loads.motor_reverse,
            LoadFile::InletValve => &mut loads.inlet_valve,
            LoadFile::HotValve => &mut loads.hot_valve,
            LoadFile::DrainActuator => &mut loads.drain_actuator,
            LoadFile::DrainPump => &mut loads.drain_pump,
            LoadFile::Buzzer => &mut loads.buzzer,
        };
        *slot = true;
    }
    loads
}

impl CamTimerFile {
    /// The same as the timer's own data.
    pub fn to_plain(&self) -> CamTimerModel {
        let fast_cams = self.fast_cams.iter().map(|cam| FastCam {
            period_s: cam.period_s,
            closed_from_s: cam.closed_from_s,
            closed_to_s: cam.closed_to_s,
        });
        let contacts = self.contacts.iter().map(|contact| CamContact {
            name: contact.name.clone(),
            spans: spans(&contact.spans),
            needs_knob: contact.needs_knob,
        });
        CamTimerModel {
            step_s: self.step_s,
            n_steps: self.n_steps,
            fast_cams: fast_cams.collect(),
            contacts: contacts.collect(),
            bell: spans(&self.bell),
        }
    }
}

fn spans(list: &[StepSpanFile]) -> Vec<StepSpan> {
    let plain = |span: &StepSpanFile| StepSpan {
        first_step: span.first,
        last_step: span.last,
        fast_cam: span.fast_cam,
    };
    list.iter().map(plain).collect()
}

#[cfg(test)]
mod tests {
    use crate::control::typical;
    use crate::control::typical_timer;
    use crate::scenario::control_file::ControlFile;
    use crate::scenario::machine_files;

    fn control(id: &str) -> &'static ControlFile {
        let machines = machine_files().expect("sound");
        &machines
            .iter()
            .find(|machine| machine.id == id)
            .expect("ships")
            .control
    }

    #[test]
    fn the_shipped_boards_are_the_typical_ones_with_their_own_sensors() {
        for (id, volts) in [("P", 230.0), ("N", 120.0)] {
            let ControlFile::Electronic(file) = control(id) else {
                panic!("{id} has a board")
            };
            let plain = file.to_plain();
            let level = plain.level.clone();
            let typical = if id == "P" {
                typical::gravity_drain(volts, level)
            } else {
                typical::pump_drain(volts, level)
            };
            assert_eq!(plain, typical, "{id}");
        }
    }

    #[test]
    fn the_shipped_timer_is_the_typical_one() {
        let ControlFile::CamTimer(file) = control("T") else {
            panic!("T has a timer")
        };
        assert_eq!(file.to_plain(), typical_timer::cam_timer());
    }
}
