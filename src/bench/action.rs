//! Every act a technician can do. Screen, command line, tests and the built-in expert all act
//! through these values, and a job's log holds nothing else.
//!
//! Names in the fields (`step`, `part`, `node` …) are the stable names of the machine's file.

use serde::Deserialize;
use serde::Serialize;

use crate::bench::gauge::Gauge;
use crate::bench::visit::Advice;
use crate::bench::visit::EmptyBy;
use crate::bench::visit::OfferOption;
use crate::bench::visit::Payer;
use crate::bench::visit::PictureOf;

/// One act at the bench.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(tag = "do", rename_all = "snake_case", deny_unknown_fields)]
pub enum Action {
    /// Ask the customer something; `again` asks the same thing differently.
    Ask {
        /// Name of the question.
        question: String,
        /// Ask differently after a vague answer.
        #[serde(default)]
        again: bool,
    },
    /// Press a key of the panel.
    Key {
        /// Which key.
        key: PanelKey,
    },
    /// Open or shut the lid.
    Lid {
        /// True to open it.
        open: bool,
    },
    /// Pull the mains plug or put it in.
    Plug {
        /// True to put it in.
        inserted: bool,
    },
    /// Set the house's breaker or residual current device again.
    Breaker,
    /// Switch the circuit of the socket off at the house's board, or on.
    HouseSwitch {
        /// True to switch it on.
        on: bool,
    },
    /// Hold the tester to a known source of its own: it shows what it must, or it is no tester.
    ProveTester,
    /// Put new fuses into the meter and the earth bond tester.
    NewMeterFuse,
    /// Keep the plug in sight or locked, so that nobody puts it back.
    Secure,
    /// Open or shut the tap.
    Tap {
        /// True to open it.
        open: bool,
    },
    /// Hold a contactless tester to a point: it lights where it feels alternating voltage.
    VoltagePen {
        /// Name of the test point.
        point: String,
    },
    /// Dry what got wet inside, with cloth and warm air.
    DryOut,
    /// Let the pressure out of the supply hose into a bucket.
    BleedHose,
    /// Take off or screw on the supply hose at the machine.
    SupplyHose {
        /// True to screw it on.
        attached: bool,
    },
    /// Bring a capacitor down to nothing.
    Discharge {
        /// What is discharged.
        what: Charged,
        /// With what.
        tool: DischargeTool,
    },
    /// Put a wire bridge across the lid switch, or take it off.
    BridgeLid {
        /// True to fit it.
        fitted: bool,
    },
    /// Look, listen, feel or smell at a place.
    Sense {
        /// Which sense.
        sense: Sense,
        /// Name of the place.
        place: String,
    },
    /// Turn or move something by hand.
    Turn {
        /// What is turned or moved.
        what: Turnable,
    },
    /// Take off a cover or part of the machine that is in the way.
    TakeOff {
        /// Name of the step.
        step: String,
        /// Help, a strap, a stand or a tray is used where one is needed.
        #[serde(default)]
        helped: bool,
    },
    /// Put it back.
    Refit {
        /// Name of the step.
        step: String,
        /// Verify what must be verified while doing it.
        #[serde(default)]
        check: bool,
    },
    /// Pull a connector or terminal apart.
    PullApart {
        /// Name of the connector.
        connector: String,
    },
    /// Push it home.
    PushTogether {
        /// Name of the connector.
        connector: String,
    },
    /// Set the meter and put its leads where they are to go. A lead left out hangs free.
    Meter {
        /// Mode of the instrument.
        mode: MeterMode,
        /// Node under the red lead, or the element in a clamp's jaws.
        #[serde(default)]
        red: Option<String>,
        /// Node under the black lead.
        #[serde(default)]
        black: Option<String>,
    },
    /// Put an instrument that needs no circuit to a place, read it and note it.
    Gauge {
        /// The instrument.
        gauge: Gauge,
        /// Name of the place.
        place: String,
    },
    /// Put the splitter lead between plug and socket, or take it away: it leads each conductor of
    /// the cord apart, for the clamp.
    Splitter {
        /// True to put it in.
        fitted: bool,
    },
    /// Write the meter's reading into the notebook.
    Note,
    /// Write a remark of one's own into the notebook.
    Remark {
        /// In the technician's own words.
        text: String,
    },
    /// Do a repair, an adjustment, a cleaning, or tell the customer something.
    Work {
        /// Name of the work; `work:variant` fits a part of another make.
        work: String,
        /// Verify what must be verified while doing it.
        #[serde(default)]
        check: bool,
    },
    /// Take the water out of the tub.
    Empty {
        /// How.
        how: EmptyBy,
    },
    /// Name the price and ask for consent.
    Quote {
        /// The price named, in the job's money unit.
        price: f64,
    },
    /// Name several ways and their prices, for what is held to be wrong, and ask for consent.
    Offer {
        /// Names of the faults held to be the cause.
        causes: Vec<String>,
        /// What the customer can choose from.
        options: Vec<OfferOption>,
    },
    /// Telephone whoever pays where the person at the door does not.
    AskPayer,
    /// Take the fee for finding the fault after an estimate was declined.
    TakeFee,
    /// Read receipt and rating plate and look for misuse.
    CheckPapers,
    /// Decide who pays.
    Warranty {
        /// Who.
        payer: Payer,
    },
    /// Ask on the phone, before driving.
    Phone {
        /// Name of the question.
        question: String,
    },
    /// Choose what goes in the van, before driving: a part each as `part` or `part:variant`.
    LoadVan {
        /// At most eight.
        parts: Vec<String>,
    },
    /// Look the instrument over and short its probes.
    CheckInstrument,
    /// Take the spare instrument from the van.
    SpareInstrument,
    /// Take a part on trial out again and put the old one back.
    PutOldBack {
        /// Name of the part.
        part: String,
    },
    /// Lay a blanket where the machine will lie.
    ProtectFloor,
    /// Put cut-proof gloves on, or take them off.
    Gloves {
        /// True to put them on.
        on: bool,
    },
    /// Mop the floor dry.
    MopFloor,
    /// Ask for the room to be kept free of children and animals.
    KeepClear,
    /// Thin hot water in the tub with a bucket of cold.
    CoolWater,
    /// Work on the wiring of the house oneself.
    MendHouse,
    /// Freeze what is seen for the report.
    TakePicture {
        /// Which view.
        of: PictureOf,
    },
    /// Have the customer read and sign the report.
    Sign,
    /// Leave the job until a second visit, with parts on order.
    LeaveUntil {
        /// Parts to bring, each as `part` or `part:variant`.
        parts: Vec<String>,
        /// A label "do not use" is hung on.
        #[serde(default)]
        label: bool,
    },
    /// State the cause, with notebook lines as evidence.
    Finding {
        /// Names of the faults held to be the cause; empty for "no fault".
        causes: Vec<String>,
        /// Numbers of notebook lines offered as evidence.
        evidence: Vec<u32>,
    },
    /// Ask for the next hint; practice only.
    Hint,
    /// Show and tell the customer what was done.
    Advise {
        /// What is told.
        advice: Advice,
    },
    /// Stop: leave the machine isolated and labelled, and inform the customer.
    MakeSafeAndLeave,
    /// Hand the machine over and close the job.
    Close,
}

/// Keys of the control panel, and the service key behind it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum PanelKey {
    /// On/off switch.
    Power,
    /// Start and pause.
    Start,
    /// Next program.
    Program,
    /// Next water level.
    Level,
    /// Service key behind the panel.
    Service,
}

/// Senses that give observations.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Sense {
    /// Eyes.
    Look,
    /// Ears.
    Listen,
    /// Hands.
    Feel,
    /// Nose.
    Smell,
}

/// What can be turned or moved by hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Turnable {
    /// The pulsator, lid open.
    Pulsator,
    /// The spin basket, lid open.
    Basket,
    /// The motor pulley, from below.
    MotorPulley,
    /// The belt, pressed with a finger.
    Belt,
    /// The wire of the drain motor, pulled by hand.
    DrainWire,
    /// The clutch lever.
    ClutchLever,
    /// The tub, pushed and let go.
    Tub,
    /// The out-of-balance lever.
    BalanceLever,
}

/// What can hold a charge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Charged {
    /// The mains filter, at the plug pins.
    PlugPins,
    /// The run capacitor, at its terminals.
    RunCapacitor,
}

/// How a charge is led off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum DischargeTool {
    /// A resistor of 10 kΩ with insulated leads.
    BleedResistor,
    /// The blade of an insulated screwdriver.
    Screwdriver,
}

/// Functions of the hand instruments.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum MeterMode {
    /// AC volts, 10 MΩ.
    AcVolts,
    /// AC volts, low impedance.
    LowAcVolts,
    /// DC volts, 10 MΩ.
    DcVolts,
    /// Resistance.
    Ohms,
    /// Continuity with a tone below 30 Ω.
    Continuity,
    /// Capacitance.
    Capacitance,
    /// Frequency.
    Frequency,
    /// Diode test: the drop at about 1 mA.
    Diode,
    /// AC amperes through the leads, 0.05 Ω behind a 10 A fuse.
    Amps,
    /// Clamp ammeter round one conductor.
    Clamp,
    /// Insulation resistance at 500 V DC.
    Insulation,
    /// Earth bond resistance at 0.2 A.
    EarthBond,
    /// Leakage clamp round line and neutral together.
    Leakage,
    /// Touch current: what flows through 2 kΩ, as through a person.
    TouchCurrent,
}
