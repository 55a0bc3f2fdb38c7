//! One customer's call as plain data: who, which machine, what they say, what is wrong, where it
//! stands, and what it costs.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::bench::action::MeterMode;
use crate::bench::gauge::Gauge;
use crate::bench::visit::Visit;
use crate::bench::workshop::Workshop;
use crate::machine::ActiveFault;
use crate::machine::MachineModel;

/// A repair above this share of a new machine's price is declined. Common practice: half.
pub const DECLINED_ABOVE_RATIO: f64 = 0.5;

/// A job before anyone has touched it.
#[derive(Clone, Debug)]
pub struct Scenario {
    /// Stable name, the file's name without its ending.
    pub id: String,
    /// Short title that does not give the cause away.
    pub title: String,
    /// 1 (opening job) to 5.
    pub level: u8,
    /// Skills practised, plain words.
    pub skills: Vec<String>,
    /// The machine's physics.
    pub machine: Arc<MachineModel>,
    /// What a technician can do to it.
    pub workshop: Arc<Workshop>,
    /// Who calls and what they say.
    pub customer: Customer,
    /// Where the machine stands.
    pub site: Site,
    /// What is wrong. Read by score and debrief only.
    pub faults: Vec<ActiveFault>,
    /// Pairs of faults that may come together, as the instructor allows.
    pub double_faults: Vec<[String; 2]>,
    /// Parts on board; others come from the store on a second visit.
    pub van: Vec<String>,
    /// Prices and rates.
    pub money: Rates,
    /// What the technician may use and must reach.
    pub rules: Rules,
    /// What surrounds the repair.
    pub visit: Visit,
    /// What a skilled technician's way costs, stored with the job.
    pub reference: Reference,
}

/// The person who called.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Customer {
    /// Name.
    pub name: String,
    /// Where they live, a few words.
    pub home: String,
    /// How they meet the technician.
    pub attitude: String,
    /// The complaint in their own words.
    pub complaint: String,
    /// Answers by question; a second one, where given, comes when asked differently.
    pub answers: BTreeMap<String, Vec<String>>,
}

/// Where the machine stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Site {
    /// Dry load in the basket, kg.
    pub load_kg: f64,
    /// Free water left in the tub, kg.
    pub water_kg: f64,
    /// The tap is open when the technician arrives.
    pub tap_open: bool,
    /// Rated residual current of the protective device, A; none where the house has none.
    pub rcd_a: Option<f64>,
    /// Plant parameters that differ from the machine file, such as supply pressure or floor slope.
    pub params: Vec<(String, f64)>,
    /// Room temperature, K.
    pub room_k: f64,
    /// Free words about the place that anyone sees.
    pub notes: String,
}

/// Prices and rates in the job's money unit.
#[derive(Clone, Debug, PartialEq)]
pub struct Rates {
    /// Labour, unit per minute.
    pub labour_per_min: f64,
    /// Call-out, unit.
    pub call_out: f64,
    /// A second visit, unit.
    pub second_visit: f64,
    /// A callback because the machine still fails, unit.
    pub callback: f64,
    /// A new machine, unit.
    pub new_machine: f64,
}

/// What the technician may use and must reach.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Rules {
    /// Modes of the instruments in the bag; none: all of them.
    pub instruments: Option<Vec<MeterMode>>,
    /// Instruments that need no circuit in the bag; none: all of them.
    pub gauges: Option<Vec<Gauge>>,
    /// Hints are given; none: in opening jobs only.
    pub hints: Option<bool>,
    /// What the job may cost, unit.
    pub budget_price: Option<f64>,
    /// Time on site it may take, s.
    pub time_s: Option<f64>,
    /// Share of the marks it must reach.
    pub pass_ratio: Option<f64>,
}

impl Rules {
    /// An instrument with this mode is in the bag.
    pub fn has(&self, mode: MeterMode) -> bool {
        self.instruments
            .as_ref()
            .is_none_or(|bag| bag.contains(&mode))
    }

    /// This instrument, which needs no circuit, is in the bag.
    pub fn has_gauge(&self, gauge: Gauge) -> bool {
        self.gauges.as_ref().is_none_or(|bag| bag.contains(&gauge))
    }
}

/// What a skilled technician needs for this job.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Reference {
    /// Cost, unit.
    pub cost: f64,
    /// Time on site, min.
    pub minutes: f64,
}
