//! The notebook: readings, observations, answers and acts, each with its time and the machine's
//! state. It is the evidence a finding rests on.

use serde::Deserialize;
use serde::Serialize;

use crate::bench::action::MeterMode;
use crate::bench::action::Sense;
use crate::bench::gauge::GaugeReading;

/// A moment of a job in ticks of 0.1 s since the technician rang the bell.
pub type Tick = u64;

/// Ticks in a second.
pub const TICKS_PER_S: u64 = 10;

/// One numbered line of the notebook.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Note {
    /// Number, from 1.
    pub number: u32,
    /// When it was written.
    pub tick: Tick,
    /// What the machine was doing, such as `unplugged` or `filling`.
    pub state: String,
    /// What was written.
    pub entry: NoteEntry,
}

/// What a line says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum NoteEntry {
    /// A reading of an instrument.
    Reading(Reading),
    /// A reading of an instrument that needs no circuit.
    Gauge(GaugeReading),
    /// What looking, listening, feeling, smelling or moving by hand gave.
    Observation {
        /// The sense used; feel for moving by hand.
        sense: Sense,
        /// Name of the place or thing.
        place: String,
        /// What was seen, heard, felt or smelt.
        seen: Vec<Seen>,
    },
    /// What the customer said.
    Answer {
        /// Name of the question.
        question: String,
        /// In the customer's words.
        text: String,
    },
    /// Something done.
    Act {
        /// Plain words.
        text: String,
    },
}

/// One thing observed: a stable key with its strength, and the words for it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Seen {
    /// Stable key, such as `belt_slack`.
    pub key: String,
    /// Strength in the key's own unit, where it has one.
    pub amount: Option<f64>,
    /// Plain words.
    pub text: String,
}

/// One reading of an instrument.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Reading {
    /// Mode of the instrument.
    pub mode: MeterMode,
    /// Node under the red lead, or element in the jaws.
    pub red: Option<String>,
    /// Node under the black lead.
    pub black: Option<String>,
    /// Value in the mode's SI unit as the instrument resolves it; none when over range.
    pub value: Option<f64>,
    /// Digits and unit as displayed, such as `21.0 Ω` or `OL`.
    pub display: String,
    /// The instrument's own warning, such as a live circuit under the ohms range.
    pub warning: Option<String>,
}
