//! A job as plain data, SI inside: what the bench needs of a job file.

use std::collections::BTreeMap;

use crate::scenario::fault_file::OnsetFile;
use crate::scenario::job_file::JobFaultFile;
use crate::scenario::job_file::JobFile;
use crate::scenario::job_file::RatesFile;
use crate::scenario::job_file::ReferenceFile;
use crate::scenario::job_file::SiteFile;
use crate::units::CELSIUS_ZERO_K;
use crate::units::pa_from_mpa;
use crate::units::rad_from_deg;
use crate::units::rad_per_s_from_rpm;
use crate::units::s_from_min;

/// A job before anyone has touched it.
#[derive(Clone, Debug, PartialEq)]
pub struct Job {
    /// Stable name, the file's name without its ending.
    pub id: String,
    /// Short title.
    pub title: String,
    /// 1 (opening job) to 5.
    pub level: u8,
    /// Skills practised.
    pub skills: Vec<String>,
    /// Short name of the machine.
    pub machine: String,
    /// Name of the person who called.
    pub name: String,
    /// Where they live.
    pub home: String,
    /// How they meet the technician.
    pub attitude: String,
    /// The complaint in their own words.
    pub complaint: String,
    /// Answers by question.
    pub answers: BTreeMap<String, Vec<String>>,
    /// Where the machine stands.
    pub site: Site,
    /// What is wrong.
    pub faults: Vec<JobFault>,
    /// Parts on board.
    pub van: Vec<String>,
    /// Prices and rates.
    pub rates: RatesFile,
    /// What a skilled technician's way costs, if it is known.
    pub reference: Option<ReferenceFile>,
}

/// Where the machine stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Site {
    /// The tap is open when the technician arrives.
    pub tap_open: bool,
    /// Rated residual current of the protective device, A; none where the house has none.
    pub rcd_a: Option<f64>,
    /// Room temperature, K.
    pub room_k: f64,
    /// Dry load in the basket, kg.
    pub load_kg: f64,
    /// Plant parameters the place and the load decide: dotted name and value.
    pub params: Vec<(String, f64)>,
    /// What anyone sees of the place.
    pub notes: String,
}

/// A fault in the machine or the house.
#[derive(Clone, Debug, PartialEq)]
pub struct JobFault {
    /// Name in the catalogue.
    pub id: String,
    /// 0 (not there) to 1 (as listed).
    pub severity_ratio: f64,
    /// When it is there; none: as the catalogue says.
    pub onset: Option<Onset>,
}

/// When a fault is there, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Onset {
    /// Always.
    Constant,
    /// From so many seconds after the technician's arrival.
    From {
        /// Start, s.
        start_s: f64,
    },
    /// On and off by chance.
    Intermittent {
        /// Length of a draw, s.
        period_s: f64,
        /// Chance in a period, 0..1.
        chance_ratio: f64,
    },
    /// Only while the hotter winding is above this.
    Hot {
        /// Threshold, K.
        above_k: f64,
    },
    /// Only while the basket turns faster than this.
    Vibration {
        /// Threshold, rad/s.
        above_rad_per_s: f64,
    },
}

impl OnsetFile {
    /// The same in SI.
    pub fn to_plain(self) -> Onset {
        match self {
            OnsetFile::Constant => Onset::Constant,
            OnsetFile::From { start_min } => Onset::From {
                start_s: s_from_min(start_min),
            },
            OnsetFile::Intermittent { period_s, chance } => Onset::Intermittent {
                period_s,
                chance_ratio: chance,
            },
            OnsetFile::Hot { above_degc } => Onset::Hot {
                above_k: above_degc + CELSIUS_ZERO_K,
            },
            OnsetFile::Vibration { above_rpm } => Onset::Vibration {
                above_rad_per_s: rad_per_s_from_rpm(above_rpm),
            },
        }
    }
}

impl JobFile {
    /// The same as plain data; `id` is the file's name without its ending.
    pub fn to_plain(&self, id: &str) -> Job {
        Job {
            id: id.to_owned(),
            title: self.title.clone(),
            level: self.level,
            skills: self.skills.clone(),
            machine: self.machine.clone(),
            name: self.customer.name.clone(),
            home: self.customer.home.clone(),
            attitude: self.customer.attitude.clone(),
            complaint: self.customer.complaint.clone(),
            answers: self.customer.answers.clone(),
            site: self.site.to_plain(),
            faults: self.faults.iter().map(JobFaultFile::to_plain).collect(),
            van: self.van.clone(),
            rates: self.money,
            reference: self.reference,
        }
    }
}

impl JobFaultFile {
    fn to_plain(&self) -> JobFault {
        JobFault {
            id: self.id.clone(),
            severity_ratio: self.severity,
            onset: self.onset.map(OnsetFile::to_plain),
        }
    }
}

impl SiteFile {
    fn to_plain(&self) -> Site {
        let room_k = self.room_degc + CELSIUS_ZERO_K;
        let params = [
            ("site.air_k", room_k),
            ("site.floor_tilt_rad", rad_from_deg(self.floor_tilt_deg)),
            ("inlet.supply_pa", pa_from_mpa(self.water_mpa)),
            ("load.dry_kg", self.load_kg),
            ("load.unbalance_kg", self.unbalance_kg),
        ];
        Site {
            tap_open: self.tap_open,
            rcd_a: self.rcd_ma.map(|ma| ma / 1000.0),
            room_k,
            load_kg: self.load_kg,
            params: params
                .map(|(name, value)| (name.to_owned(), value))
                .to_vec(),
            notes: self.notes.clone(),
        }
    }
}
