//! The `visit` section of a job file: what surrounds the repair. A job without it is a bench
//! exercise; with it the whole visit is marked.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde::Serialize;

use crate::bench::visit;
use crate::bench::visit::Condition;
use crate::bench::visit::Visit;

/// What surrounds the repair.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(default, deny_unknown_fields)]
pub struct VisitFile {
    /// Answers on the phone by question; left out: what would be said at the door.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub phone: BTreeMap<String, String>,
    /// What the store has otherwise than today at the listed price, by `part` or `part:variant`.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub store: BTreeMap<String, StockFile>,
    /// The instrument as it comes out of the van; left out: a sound one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub instrument: Option<InstrumentFile>,
    /// Receipt, plate, use, payer.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub papers: Option<PapersFile>,
    /// How the customer answers and pays; left out: an honest owner.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub person: Option<PersonFile>,
    /// What is out of the ordinary about the place.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub place: Vec<Condition>,
}

/// One line of the store.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct StockFile {
    /// When it is handed over.
    pub ready: ReadyFile,
    /// Price in the money unit; left out: the machine's price list.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<f64>,
}

/// When the store hands a part over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum ReadyFile {
    /// Before the first visit.
    Today,
    /// For a second visit.
    Tomorrow,
    /// No longer made.
    Never,
}

/// The instrument as it is. What is left out is sound.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(default, deny_unknown_fields)]
pub struct InstrumentFile {
    /// Battery voltage against a fresh one's, %.
    pub battery_percent: f64,
    /// Break in the red lead.
    pub lead_broken: bool,
    /// Insulation of a lead cracked down to the wire.
    pub lead_cracked: bool,
    /// Fuse of the 0.2 A range blown.
    pub fuse_blown: bool,
    /// What it shows for 1.
    pub gain: f64,
    /// Age of its last calibration, months.
    pub calibrated_months_ago: u32,
    /// Category by IEC 61010-1 printed on it: 2, 3, 4; 1 for none.
    pub category: u32,
}

impl Default for InstrumentFile {
    fn default() -> Self {
        let sound = visit::HandInstrument::SOUND;
        Self {
            battery_percent: 100.0 * sound.battery_ratio,
            lead_broken: false,
            lead_cracked: false,
            fuse_blown: false,
            gain: sound.gain_ratio,
            calibrated_months_ago: sound.calibrated_months_ago,
            category: sound.category,
        }
    }
}

/// The four fields a warranty is decided by.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(default, deny_unknown_fields)]
pub struct PapersFile {
    /// Age of the receipt, months; `null` where there is none.
    pub bought_months_ago: Option<u32>,
    /// The rating plate can be read and belongs to the receipt.
    pub plate_readable: bool,
    /// Signs of misuse.
    pub misused: bool,
    /// How long the maker pays, months.
    pub covered_months: u32,
}

impl Default for PapersFile {
    fn default() -> Self {
        let plain = Visit::plain(0.0).papers;
        Self {
            bought_months_ago: plain.bought_months_ago,
            plate_readable: plain.plate_is_readable,
            misused: plain.is_misused,
            covered_months: plain.covered_months,
        }
    }
}

/// How the customer answers and pays.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PersonFile {
    /// How they answer.
    pub manner: MannerFile,
    /// A landlord pays.
    #[serde(default, skip_serializing_if = "core::ops::Not::not")]
    pub tenant: bool,
    /// What they ask to have taken off first, %.
    #[serde(default)]
    pub haggles_percent: f64,
    /// The most they pay for a repair; left out: half the price of a new machine.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub limit: Option<f64>,
}

/// How a customer answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum MannerFile {
    /// Says what they know.
    Honest,
    /// Says little until asked in other words.
    Vague,
    /// Of two answers the first is wrong.
    Mistaken,
}

/// The plain visit of a job whose new machine costs so much; without the section, no more than that.
pub fn visit(file: Option<&VisitFile>, new_machine_price: f64) -> Visit {
    let mut plain = Visit::plain(new_machine_price);
    let Some(file) = file else { return plain };
    plain.is_marked = true;
    plain.phone.clone_from(&file.phone);
    plain.store = file.store.iter().map(stock).collect();
    plain.place.clone_from(&file.place);
    if let Some(i) = file.instrument {
        plain.instrument = visit::HandInstrument {
            battery_ratio: i.battery_percent / 100.0,
            lead_is_broken: i.lead_broken,
            lead_is_cracked: i.lead_cracked,
            fuse_is_blown: i.fuse_blown,
            gain_ratio: i.gain,
            calibrated_months_ago: i.calibrated_months_ago,
            category: i.category,
        };
    }
    if let Some(p) = file.papers {
        plain.papers = visit::Papers {
            bought_months_ago: p.bought_months_ago,
            plate_is_readable: p.plate_readable,
            is_misused: p.misused,
            covered_months: p.covered_months,
        };
    }
    if let Some(p) = file.person {
        plain.person = visit::Person {
            manner: match p.manner {
                MannerFile::Honest => visit::Manner::Honest,
                MannerFile::Vague => visit::Manner::Vague,
                MannerFile::Mistaken => visit::Manner::Mistaken,
            },
            is_tenant: p.tenant,
            haggle_ratio: p.haggles_percent / 100.0,
            limit_price: p.limit.unwrap_or(plain.person.limit_price),
        };
    }
    plain
}

fn stock((name, line): (&String, &StockFile)) -> (String, visit::Stock) {
    let ready = match line.ready {
        ReadyFile::Today => visit::Ready::Today,
        ReadyFile::Tomorrow => visit::Ready::Tomorrow,
        ReadyFile::Never => visit::Ready::Never,
    };
    let price = line.price;
    (name.clone(), visit::Stock { ready, price })
}
