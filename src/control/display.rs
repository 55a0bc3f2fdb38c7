//! What the panel shows: a word, a number, and the service test's readings.

use crate::control::alarms::Alarm;
use crate::control::alarms::Warning;
use crate::text;

/// The main word on the panel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Message {
    /// Dark panel.
    Dark,
    /// All lamps on, to see that they work.
    AllLamps,
    /// Ready for a choice.
    Ready,
    /// Waiting for the delayed start.
    StartsLater,
    /// Taking in water.
    Filling,
    /// Washing or rinsing by motion.
    Washing,
    /// Standing in water.
    Soaking,
    /// Letting water out.
    Draining,
    /// Spinning.
    Spinning,
    /// Waiting for the basket to stop.
    Stopping,
    /// Spreading the load again after a knock.
    SpreadingLoad,
    /// Paused until the lid is shut.
    CloseLid,
    /// Paused by the start key.
    Paused,
    /// Paused by the supply.
    SupplyPause,
    /// The power came back; the start key goes on.
    PowerWasOff,
    /// The program is over.
    Finished,
    /// Service test.
    ServiceTest,
    /// Service test: this step needs an empty tub.
    DrainFirst,
    /// Stopped by an alarm.
    Alarm(Alarm),
    /// A mechanical timer: the dial says everything.
    Dial,
}

impl Message {
    /// The plain words of the panel; empty where it shows no words.
    pub const fn words(self) -> &'static str {
        match self {
            Message::Dark | Message::AllLamps | Message::Dial => "",
            Message::Ready => text!("Ready"),
            Message::StartsLater => text!("Starts later"),
            Message::Filling => text!("Filling"),
            Message::Washing => text!("Washing"),
            Message::Soaking => text!("Soaking"),
            Message::Draining => text!("Draining"),
            Message::Spinning => text!("Spinning"),
            Message::Stopping => text!("Stopping"),
            Message::SpreadingLoad => text!("Spreading the load"),
            Message::CloseLid => text!("Close the lid"),
            Message::Paused => text!("Paused"),
            Message::SupplyPause => text!("Waiting for the supply"),
            Message::PowerWasOff => text!("Power was off: press start to go on"),
            Message::Finished => text!("Finished"),
            Message::ServiceTest => text!("Service test"),
            Message::DrainFirst => text!("Drain the tub first"),
            Message::Alarm(alarm) => alarm.words(),
        }
    }
}

/// Switch states as the service test shows them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SwitchView {
    /// The lid input; on a shared input lid and lever in series.
    pub lid_input_closed: bool,
    /// The lever input, where it has its own.
    pub unbalance_input_closed: Option<bool>,
}

/// Everything the panel shows in one tick.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Display {
    /// The main word.
    pub message: Message,
    /// A remark beside it.
    pub warning: Option<Warning>,
    /// Chosen program, index into the model's programs.
    pub program: usize,
    /// Chosen water level, index into the model's targets.
    pub level: usize,
    /// Whole minutes until the end or the delayed start.
    pub minutes_left: Option<u32>,
    /// The key lock lamp.
    pub keys_locked: bool,
    /// Service test: number of the step, from 1.
    pub service_step: Option<u32>,
    /// Service test: level frequency, Hz; `None` also when there are no pulses.
    pub level_hz: Option<f64>,
    /// Service test: the switches.
    pub switches: Option<SwitchView>,
    /// Service test: seconds the running or last phase took.
    pub seconds: Option<u32>,
}

impl Display {
    /// A panel that shows one word and nothing else.
    pub const fn of(message: Message) -> Display {
        Display {
            message,
            warning: None,
            program: 0,
            level: 0,
            minutes_left: None,
            keys_locked: false,
            service_step: None,
            level_hz: None,
            switches: None,
            seconds: None,
        }
    }
}
