//! The service test: named steps, each a list of phases that stop by themselves.
//!
//! Entry by the labelled service key behind the panel. Start = next step, level = the same
//! step again, service = leave. An open lid ends a step at once; it never starts a load.
//! What each step does is data of the machine.

use crate::control::controller::Controller;
use crate::control::display::Display;
use crate::control::display::Message;
use crate::control::display::SwitchView;
use crate::control::io::Key;
use crate::control::io::Loads;
use crate::control::io::ticks;
use crate::control::model::PhaseEnd;
use crate::control::model::ServicePhase;
use crate::control::model::ServiceShow;
use crate::control::model::ServiceStep;
use crate::control::service_run::ServiceRun;

impl Controller {
    /// Moves the service test on by one tick.
    pub(crate) fn walk_service(&mut self) {
        match self.pressed {
            Some(Key::Start) => {
                let n_steps = self.model.service_steps.len();
                let next = self.service.step + 1;
                self.service = ServiceRun::at_step(if next < n_steps { next } else { 0 });
            }
            Some(Key::Level) => self.service = ServiceRun::at_step(self.service.step),
            _ => {}
        }
        self.in_state_ticks = 0; // the test has no time limit
        let Some((n_phases, needs_empty, phase)) = self.service_step().map(|step| {
            let phase = step.phases.get(self.service.phase).copied();
            (step.phases.len(), step.needs_empty, phase)
        }) else {
            return;
        };
        if !self.service.is_begun {
            self.service.is_begun = true;
            let empty_hz = self.model.level.empty_hz;
            let is_empty = self.level_hz.is_some_and(|hz| hz >= empty_hz);
            self.service.is_refused = needs_empty && !is_empty;
        } else {
            self.service.phase_ticks = self.service.phase_ticks.saturating_add(1);
        }
        let runs_loads = phase.is_some_and(|phase| phase.loads != Loads::default());
        if self.service.is_refused || !self.lid.is_closed && runs_loads {
            self.service.phase = n_phases;
            return;
        }
        if phase.is_some_and(|phase| self.is_phase_over(phase)) {
            self.service.last_ticks = self.service.phase_ticks;
            self.service.phase += 1;
            self.service.phase_ticks = 0;
        }
    }

    fn is_phase_over(&self, phase: ServicePhase) -> bool {
        let level = &self.model.level;
        match phase.until {
            PhaseEnd::Time { time_s } => self.service.phase_ticks >= ticks(time_s),
            PhaseEnd::Full { level: index } => {
                let target = level.targets.get(index);
                let reached = target.zip(self.level_hz);
                reached.is_some_and(|(target, hz)| hz <= target.full_hz)
            }
            PhaseEnd::Empty => self.level_hz.is_some_and(|hz| hz >= level.empty_hz),
            PhaseEnd::Key => false,
        }
    }

    pub(crate) fn service_step(&self) -> Option<&ServiceStep> {
        self.model.service_steps.get(self.service.step)
    }

    /// Loads of the running phase; none when the step is over.
    pub(crate) fn service_loads(&self) -> Loads {
        self.service_step()
            .and_then(|step| step.phases.get(self.service.phase))
            .map_or(Loads::default(), |phase| phase.loads)
    }

    pub(crate) fn service_message(&self) -> Message {
        if self.service.is_refused {
            return Message::DrainFirst;
        }
        match self.service_step().map(|step| step.shows) {
            Some(ServiceShow::Lamps) => Message::AllLamps,
            _ => Message::ServiceTest,
        }
    }

    pub(crate) fn show_service(&self, display: &mut Display) {
        let Some(step) = self.service_step() else {
            return;
        };
        display.service_step = u32::try_from(self.service.step + 1).ok();
        match step.shows {
            ServiceShow::Frequency => display.level_hz = self.level_hz,
            ServiceShow::Switches => {
                display.switches = Some(SwitchView {
                    lid_input_closed: self.lid.is_closed,
                    unbalance_input_closed: self
                        .has_own_lever_input
                        .then_some(self.lever.is_closed),
                });
            }
            ServiceShow::Seconds => {
                let is_over = self.service.phase >= step.phases.len();
                let run = if is_over {
                    self.service.last_ticks
                } else {
                    self.service.phase_ticks
                };
                display.seconds = Some(run / 10);
            }
            ServiceShow::Lamps | ServiceShow::Nothing => {}
        }
    }
}
