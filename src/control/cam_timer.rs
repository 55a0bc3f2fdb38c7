//! Cam timer of a machine without electronics: a dial, a knob, contacts on cams.
//!
//! ```text
//! angle' = 1 while the timer motor runs      one step of the dial = step_s
//! contact closed = in one of its spans of steps, and its fast cam (if any) at "closed"
//! ```
//! Fast cams are driven by the same motor: when it waits, they stand where they are.
//! The timer sees nothing: lid, lever and pressure switch are contacts outside it.
//! Which contact is which in the harness is data of the machine. Source: design choice.

use std::sync::Arc;

use crate::control::display::Display;
use crate::control::display::Message;
use crate::control::io::Inputs;
use crate::control::io::Loads;
use crate::control::io::Outputs;
use crate::control::io::ticks;

/// A cam on a fast shaft: closed during part of each turn.
#[derive(Clone, Debug, PartialEq)]
pub struct FastCam {
    /// One turn, s of running timer motor.
    pub period_s: f64,
    /// Closed from here, s into the turn.
    pub closed_from_s: f64,
    /// Open again here, s into the turn.
    pub closed_to_s: f64,
}

/// Dial steps during which a cam holds its contact.
#[derive(Clone, Debug, PartialEq)]
pub struct StepSpan {
    /// First step.
    pub first_step: u32,
    /// Last step, included.
    pub last_step: u32,
    /// Follow a fast cam (index) instead of staying closed.
    pub fast_cam: Option<usize>,
}

/// One contact of the timer.
#[derive(Clone, Debug, PartialEq)]
pub struct CamContact {
    /// Its name in the harness.
    pub name: String,
    /// When it is closed.
    pub spans: Vec<StepSpan>,
    /// True: also needs the knob pulled (the main contact).
    pub needs_knob: bool,
}

/// A whole cam timer as data.
#[derive(Clone, Debug, PartialEq)]
pub struct CamTimerModel {
    /// Time of one dial step with a running timer motor, s.
    pub step_s: f64,
    /// Steps of the dial, step 0 = off included.
    pub n_steps: u32,
    /// Fast cams.
    pub fast_cams: Vec<FastCam>,
    /// Contacts, at most 32; bit n of the outputs is entry n.
    pub contacts: Vec<CamContact>,
    /// Steps during which the bell sounds while the timer motor runs.
    pub bell: Vec<StepSpan>,
}

/// A cam timer at work.
#[derive(Clone, Debug, PartialEq)]
pub struct CamTimer {
    model: Arc<CamTimerModel>,
    knob_is_pulled: bool,
    step: u32,
    in_step_ticks: u32,
    /// Turns of the fast shafts, as ticks of running motor.
    fast_ticks: u32,
}

impl CamTimer {
    /// A timer at step 0 with the knob pushed in.
    pub fn new(model: Arc<CamTimerModel>) -> CamTimer {
        CamTimer {
            model,
            knob_is_pulled: false,
            step: 0,
            in_step_ticks: 0,
            fast_ticks: 0,
        }
    }

    /// The model in force.
    pub fn model(&self) -> &Arc<CamTimerModel> {
        &self.model
    }

    /// Exchanges the cams (a fault of a cam, or a new timer); dial and knob stay.
    pub fn set_model(&mut self, model: Arc<CamTimerModel>) {
        self.model = model;
    }

    /// The step the dial points at.
    pub fn step(&self) -> u32 {
        self.step
    }

    /// Time spent in the step, s.
    pub fn in_step_s(&self) -> f64 {
        f64::from(self.in_step_ticks) / 10.0
    }

    /// Whether the knob is pulled (on).
    pub fn knob_is_pulled(&self) -> bool {
        self.knob_is_pulled
    }

    /// Pulls or pushes the knob.
    pub fn set_knob(&mut self, pulled: bool) {
        self.knob_is_pulled = pulled;
    }

    /// Turns the dial by hand to the beginning of a step; steps beyond the last wrap round.
    pub fn turn_to(&mut self, step: u32) {
        self.step = step % self.model.n_steps.max(1);
        self.in_step_ticks = 0;
    }

    /// Advances by one tick of 0.1 s.
    pub fn tick(&mut self, inputs: &Inputs) -> Outputs {
        if inputs.timer_motor_running {
            self.advance();
        }
        let is_sounding = inputs.timer_motor_running && self.is_in(&self.model.bell);
        self.outputs(is_sounding)
    }

    /// See [`crate::control::Control::at_rest`]: without its motor nothing moves.
    pub fn at_rest(&self, inputs: &Inputs) -> Option<Outputs> {
        (!inputs.timer_motor_running).then(|| self.outputs(false))
    }

    fn outputs(&self, is_sounding: bool) -> Outputs {
        Outputs {
            loads: Loads {
                buzzer: is_sounding,
                ..Loads::default()
            },
            contacts: self.closed_contacts(),
            display: Display::of(Message::Dial),
        }
    }

    fn advance(&mut self) {
        self.fast_ticks = self.fast_ticks.wrapping_add(1);
        self.in_step_ticks += 1;
        if self.in_step_ticks >= ticks(self.model.step_s).max(1) {
            self.turn_to(self.step + 1);
        }
    }

    /// Contacts the cams hold closed now, bit n = contact n.
    pub fn closed_contacts(&self) -> u32 {
        let contacts = self.model.contacts.iter().take(32).enumerate();
        contacts.fold(0, |bits, (index, contact)| {
            let knob_allows = !contact.needs_knob || self.knob_is_pulled;
            bits | u32::from(knob_allows && self.is_in(&contact.spans)) << index
        })
    }

    fn is_in(&self, spans: &[StepSpan]) -> bool {
        spans.iter().any(|span| {
            (span.first_step..=span.last_step).contains(&self.step)
                && span
                    .fast_cam
                    .is_none_or(|index| self.fast_cam_closed(index))
        })
    }

    fn fast_cam_closed(&self, index: usize) -> bool {
        self.model.fast_cams.get(index).is_some_and(|cam| {
            let at = self.fast_ticks % ticks(cam.period_s).max(1);
            (ticks(cam.closed_from_s)..ticks(cam.closed_to_s)).contains(&at)
        })
    }

    /// Hands every bit of state to `sink`, in a fixed order.
    pub fn hash_into(&self, sink: &mut impl FnMut(u64)) {
        sink(u64::from(self.knob_is_pulled));
        sink(u64::from(self.step));
        sink(u64::from(self.in_step_ticks));
        sink(u64::from(self.fast_ticks));
    }
}
