//! What surrounds a repair, as plain data: what the phone said, the parts store, the instrument as
//! it came out of the van, the papers, who pays, and what is out of the ordinary about the place.
//!
//! A job without any of it is a bench exercise: sound instrument, everything in the store, an owner
//! who pays. [`Visit::plain`] is that.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

/// Parts one person loads for a call. Common practice.
pub const VAN_SLOTS: usize = 8;

/// Everything about a visit that a plain bench exercise leaves out.
#[derive(Clone, Debug, PartialEq)]
pub struct Visit {
    /// The whole visit is marked, not the bench work alone.
    pub is_marked: bool,
    /// Answers on the phone that differ from those at the door, by question.
    pub phone: BTreeMap<String, String>,
    /// What the store has otherwise than in full, by part and variant as `part` or `part:variant`.
    pub store: BTreeMap<String, Stock>,
    /// The instrument as it came out of the van.
    pub instrument: HandInstrument,
    /// Receipt, plate, use, payer.
    pub papers: Papers,
    /// How the customer answers and pays.
    pub person: Person,
    /// What is out of the ordinary about the place.
    pub place: Vec<Condition>,
}

/// When the store hands a part over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ready {
    /// Before the first visit.
    Today,
    /// For a second visit.
    Tomorrow,
    /// No longer made.
    Never,
}

/// One line of the store.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stock {
    /// When it is handed over.
    pub ready: Ready,
    /// Its price in the money unit; none: the machine's price list holds.
    pub price: Option<f64>,
}

/// A hand instrument as it is, whatever it shows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HandInstrument {
    /// Battery voltage as a share of a fresh one's, 0..1.
    pub battery_ratio: f64,
    /// Break in the red lead.
    pub lead_is_broken: bool,
    /// The insulation of a lead is cracked down to the wire.
    pub lead_is_cracked: bool,
    /// The fuse in the current path of the 0.2 A range has blown.
    pub fuse_is_blown: bool,
    /// What it shows for 1.
    pub gain_ratio: f64,
    /// Age of its last calibration, months.
    pub calibrated_months_ago: u32,
    /// Measurement category printed on it by IEC 61010-1, 2 to 4; 1 for none.
    pub category: u32,
}

impl HandInstrument {
    /// A sound instrument in its year of calibration.
    pub const SOUND: HandInstrument = HandInstrument {
        battery_ratio: 1.0,
        lead_is_broken: false,
        lead_is_cracked: false,
        fuse_is_blown: false,
        gain_ratio: 1.0,
        calibrated_months_ago: 4,
        category: 3,
    };
}

/// What the papers say: the four fields a warranty is decided by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Papers {
    /// Age of the receipt, months; none: there is no receipt.
    pub bought_months_ago: Option<u32>,
    /// The rating plate can be read and belongs to the receipt.
    pub plate_is_readable: bool,
    /// Signs of misuse.
    pub is_misused: bool,
    /// How long the maker pays, months; 0: not at all.
    pub covered_months: u32,
}

impl Papers {
    /// The maker pays: receipt in time, plate that belongs to it, no misuse. Common practice.
    pub fn maker_pays(&self) -> bool {
        let in_time = self
            .bought_months_ago
            .is_some_and(|months| months < self.covered_months);
        in_time && self.plate_is_readable && !self.is_misused
    }
}

/// How a customer answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Manner {
    /// Says what they know.
    Honest,
    /// Says little until asked in other words.
    Vague,
    /// Is wrong at first and sure of it.
    Mistaken,
}

/// Who is at the door, and who pays.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Person {
    /// How they answer.
    pub manner: Manner,
    /// The landlord pays, and only the landlord can agree.
    pub is_tenant: bool,
    /// Share of a named price they ask to have taken off first, 0..1.
    pub haggle_ratio: f64,
    /// The most they pay for a repair, money unit.
    pub limit_price: f64,
}

/// One thing a customer can choose.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct OfferOption {
    /// What.
    pub what: OfferKind,
    /// Price for all of it, in the job's money unit.
    pub price: f64,
}

/// Ways out of a trouble.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum OfferKind {
    /// Repair with what the maker fits.
    Repair,
    /// Repair with a part of another make.
    OtherPart,
    /// A new machine instead.
    NewMachine,
}

/// Who pays for a repair.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Payer {
    /// The maker, under warranty.
    Maker,
    /// Whoever owns the machine.
    Customer,
}

/// Views a picture can be taken of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum PictureOf {
    /// The machine from outside.
    Outside,
    /// The machine opened, as far as it is.
    Opened,
}

/// Ways to empty the tub.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum EmptyBy {
    /// With a bucket from above.
    Bucket,
    /// By pulling the drain wire by hand from the back.
    DrainWire,
}

/// What a customer is told at the end.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Advice {
    /// What was wrong and what was done, shown on the machine.
    WhatWasDone,
    /// How much to load and how to spread it.
    Load,
    /// How much detergent.
    Detergent,
    /// Clean the filters now and then.
    Filters,
    /// Have the house wiring seen to by an electrician.
    HouseWiring,
    /// A new machine is the better buy.
    NewMachine,
    /// Keep it level and do not move it alone.
    Level,
    /// The old part, shown beside the new one.
    OldPart,
}

/// Something out of the ordinary about the place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Condition {
    /// It smells of gas.
    GasSmell,
    /// Water stands in the room from elsewhere.
    Flood,
    /// Somebody threatens.
    Threat,
    /// The socket is scorched.
    ScorchedSocket,
    /// The machine hangs on an adaptor.
    Adaptor,
    /// The machine hangs on a rolled-up extension reel.
    ExtensionReel,
    /// The house has no residual current device.
    NoResidualDevice,
    /// A small child is about.
    Child,
    /// A dog is about.
    Dog,
    /// Soft or glazed floor that marks.
    DelicateFloor,
    /// The cut edges of the cabinet are bare.
    BareEdges,
    /// The water in the tub is hot.
    HotWater,
}

impl Condition {
    /// Work must not go on here.
    pub fn is_danger(self) -> bool {
        matches!(
            self,
            Condition::GasSmell | Condition::Flood | Condition::Threat
        )
    }

    /// A matter for an electrician: told and written down, never repaired.
    pub fn is_house_defect(self) -> bool {
        matches!(
            self,
            Condition::ScorchedSocket
                | Condition::Adaptor
                | Condition::ExtensionReel
                | Condition::NoResidualDevice
        )
    }

    /// Somebody who does not know what a live part is.
    pub fn is_bystander(self) -> bool {
        matches!(self, Condition::Child | Condition::Dog)
    }
}

impl Visit {
    /// Nothing out of the ordinary; the customer pays up to half the price of a new machine.
    /// Common practice.
    pub fn plain(new_machine: f64) -> Self {
        Self {
            is_marked: false,
            phone: BTreeMap::new(),
            store: BTreeMap::new(),
            instrument: HandInstrument::SOUND,
            papers: Papers {
                bought_months_ago: None,
                plate_is_readable: true,
                is_misused: false,
                covered_months: 24,
            },
            person: Person {
                manner: Manner::Honest,
                is_tenant: false,
                haggle_ratio: 0.0,
                limit_price: 0.5 * new_machine,
            },
            place: Vec::new(),
        }
    }

    /// The place is like this.
    pub fn has(&self, condition: Condition) -> bool {
        self.place.contains(&condition)
    }
}
