//! What an act can bring besides its purpose: why it could not be done, and what happened to
//! people and things.

use serde::Deserialize;
use serde::Serialize;

/// Why an act could not be done. Nothing is forbidden; these are things hands cannot do.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Refusal {
    /// Something is in the way: these steps come first.
    InTheWay {
        /// Names of the missing steps, in working order.
        steps: Vec<String>,
    },
    /// Other things still hang on it: these go back first.
    Underneath {
        /// Names of the steps that are off and rest on this one.
        steps: Vec<String>,
    },
    /// It is so already.
    AlreadySo,
    /// The machine's file knows no such thing.
    Unknown {
        /// The name given.
        name: String,
    },
    /// The part is not on board; a second visit brings it.
    NotOnBoard {
        /// The part.
        part: String,
    },
    /// The job is over.
    JobOver,
    /// Not possible as things are; the words say why.
    NotNow {
        /// Plain words.
        why: String,
    },
}

/// Something that happened to a person or a thing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Event {
    /// Current flowed through the technician.
    Shock {
        /// Touch voltage before the touch, V.
        touch_v: f64,
        /// Body current, A.
        body_a: f64,
        /// How long it flowed, s.
        duration_s: f64,
        /// What opened, plain words.
        opened_by: String,
        /// Zone of effect by IEC 60479-1, such as `AC-2`.
        zone: String,
    },
    /// A capacitor emptied itself through the technician or a tool.
    Discharge {
        /// Voltage before, V.
        from_v: f64,
        /// Energy, J.
        energy_j: f64,
        /// Plain words.
        through: String,
    },
    /// The supply went off.
    SupplyTripped {
        /// What opened, plain words.
        opened_by: String,
    },
    /// The meter's own fuse blew.
    MeterFuse {
        /// Plain words.
        why: String,
    },
    /// Water went where it should not.
    Spill {
        /// Amount, kg.
        water_kg: f64,
        /// Plain words.
        why: String,
    },
    /// A moving part caught a hand.
    Caught {
        /// Speed, rad/s.
        speed_rad_per_s: f64,
        /// Energy of what turned, J.
        energy_j: f64,
    },
    /// Something heavy fell.
    Dropped {
        /// Energy of the fall, J.
        energy_j: f64,
        /// Plain words.
        what: String,
    },
    /// A safety rule was broken; the finding's number in the job's list.
    Rule {
        /// Name of the rule.
        rule: String,
    },
    /// The customer answers a quote.
    Consent {
        /// True when they agree.
        agreed: bool,
    },
    /// Something was spoilt, and is paid for.
    Damage {
        /// Plain words.
        what: String,
        /// What it costs, money unit.
        price: f64,
    },
    /// The technician came to harm, not by electricity.
    Hurt {
        /// Plain words.
        what: String,
    },
    /// A new part burnt out.
    BurntOut {
        /// Its plain name.
        what: String,
    },
}
