//! What the panel shows and how the machine's doings are put in words.

use crate::control::Control;
use crate::control::display::Message;
use crate::machine::ControlKind;
use crate::machine::Machine;

/// How the notebook calls a machine whose plug is out.
pub const UNPLUGGED: &str = "unplugged";

impl Machine {
    /// What the panel shows, in words; empty when it is dark.
    pub fn display_words(&self) -> String {
        let display = &self.outputs.display;
        if let Control::Timer(timer) = &self.control {
            let dial = format!("dial at {}", timer.step());
            return match self.level_position_name() {
                Some(name) => format!("{dial} · level {}", name.to_lowercase()),
                None => dial,
            };
        }
        let mut words = display.message.words().to_owned();
        if let Some(step) = display.service_step {
            words = format!("Service test {step}");
        }
        if let Some(hz) = display.level_hz {
            words = format!("{words} · {:.2} kHz", hz / 1e3);
        }
        if let Some(switches) = display.switches {
            let lid = if switches.lid_input_closed {
                "closed"
            } else {
                "open"
            };
            words = format!("{words} · lid {lid}");
        }
        if let Some(minutes) = display.minutes_left {
            words = format!("{words} · {minutes} min");
        }
        words
    }

    /// Name of the level knob's position; none where there is no such knob.
    pub fn level_position_name(&self) -> Option<&str> {
        let switch = self.model.roles.level_switch.as_ref()?;
        let (name, _) = switch.knob.get(self.hands.level_position as usize)?;
        Some(name)
    }

    /// The control is spreading the load after the out-of-balance switch opened.
    pub fn is_spreading_load(&self) -> bool {
        self.outputs.display.message == Message::SpreadingLoad
    }

    /// The alarm shown, in words.
    pub fn alarm_words(&self) -> Option<String> {
        match self.outputs.display.message {
            Message::Alarm(alarm) => Some(alarm.words().to_owned()),
            _ => None,
        }
    }

    /// The program has come to its end, or to an alarm.
    pub fn is_done(&self) -> bool {
        match (&self.control, &self.outputs.display.message) {
            (Control::Timer(timer), _) => timer.step() == 0,
            (_, Message::Finished | Message::Alarm(_)) => true,
            _ => false,
        }
    }

    /// What the machine is doing, in the words of a notebook.
    pub fn state_words(&self) -> String {
        let words = if !self.hands.plugged {
            UNPLUGGED
        } else if !self.switched_on() {
            "off"
        } else {
            match &self.model.control {
                ControlKind::Timer(_) if self.live.motor_on => "running",
                ControlKind::Timer(_) => "on",
                ControlKind::Electronic(_) if self.live.regulated_v < 1.0 => "on, display dark",
                ControlKind::Electronic(_) => {
                    return self.outputs.display.message.words().to_lowercase();
                }
            }
        };
        words.to_owned()
    }
}
