//! What the acts around a repair have changed: phone, van, papers, consent, handling, the report.

use std::collections::BTreeSet;

use crate::bench::notebook::Tick;
use crate::bench::visit::Condition;
use crate::bench::visit::HandInstrument;
use crate::bench::visit::OfferKind;
use crate::bench::visit::OfferOption;
use crate::bench::visit::Payer;
use crate::bench::visit::PictureOf;
use crate::machine::Target;

/// A price named, and what came of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Offered {
    /// When.
    pub tick: Tick,
    /// What was held to be wrong, names of faults.
    pub causes: Vec<String>,
    /// What could be chosen.
    pub options: Vec<OfferOption>,
    /// What the customer said.
    pub answer: Answer,
}

/// What a customer says to an estimate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Answer {
    /// Yes, to this.
    Agreed(OfferKind),
    /// Could it be done for this price, money unit?
    AsksLess(f64),
    /// Somebody else pays and must be asked.
    AnotherPays,
    /// No.
    Declined,
}

/// A part that was fitted.
#[derive(Clone, Debug, PartialEq)]
pub struct Fitted {
    /// As the store names it: `part` or `part:variant`.
    pub item: String,
    /// When.
    pub tick: Tick,
    /// What it cost, money unit.
    pub price: f64,
    /// What it made good that was not good already.
    pub healed: BTreeSet<Target>,
}

/// A picture for the report.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Picture {
    /// When it was taken.
    pub tick: Tick,
    /// Its place in the log, from 0.
    pub entry: usize,
    /// The view.
    pub of: PictureOf,
}

/// What surrounds the repair, as it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Around {
    /// Questions asked on the phone.
    pub phoned: u32,
    /// What is in the van, as the store names it.
    pub van: Vec<String>,
    /// The van was loaded for this call.
    pub van_is_chosen: bool,
    /// Estimates, the last one counts.
    pub offers: Vec<Offered>,
    /// Whoever pays was asked.
    pub payer_asked: bool,
    /// The fee for finding the fault was taken.
    pub fee_taken: bool,
    /// Receipt, plate and use were looked at.
    pub papers_seen: bool,
    /// Who pays, as decided.
    pub payer: Option<Payer>,
    /// The instrument in hand.
    pub instrument: HandInstrument,
    /// It was looked over.
    pub instrument_checked: bool,
    /// How often another one was taken in hand.
    pub instruments_changed: u32,
    /// Parts in the machine that came with this job.
    pub fitted: Vec<Fitted>,
    /// Elements that burnt out in this job.
    pub burnt: BTreeSet<String>,
    /// What has been noticed of the place.
    pub noticed: BTreeSet<Condition>,
    /// A blanket lies where the machine will lie.
    pub floor_protected: bool,
    /// Gloves on.
    pub gloves_on: bool,
    /// Children and animals are kept away.
    pub kept_clear: bool,
    /// Pictures taken.
    pub pictures: Vec<Picture>,
    /// The customer has signed.
    pub signed: bool,
    /// Visits so far beyond the first.
    pub n_returns: u32,
}

impl Around {
    /// At the door with this van and this instrument.
    pub fn new(van: Vec<String>, instrument: HandInstrument) -> Self {
        Self {
            phoned: 0,
            van,
            van_is_chosen: false,
            offers: Vec::new(),
            payer_asked: false,
            fee_taken: false,
            papers_seen: false,
            payer: None,
            instrument,
            instrument_checked: false,
            instruments_changed: 0,
            fitted: Vec::new(),
            burnt: BTreeSet::new(),
            noticed: BTreeSet::new(),
            floor_protected: false,
            gloves_on: false,
            kept_clear: false,
            pictures: Vec::new(),
            signed: false,
            n_returns: 0,
        }
    }

    /// What was said to the last estimate.
    pub fn answer(&self) -> Option<Answer> {
        self.offers.last().map(|offer| offer.answer)
    }

    /// What the customer has agreed to last; none while nothing stands.
    pub fn agreed(&self) -> Option<&Offered> {
        self.offers
            .last()
            .filter(|offer| matches!(offer.answer, Answer::Agreed(_)))
    }
}

impl Default for Around {
    fn default() -> Self {
        Self::new(Vec::new(), HandInstrument::SOUND)
    }
}
