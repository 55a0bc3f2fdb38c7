//! Clock and money: what each act costs in time, and what the job costs so far.
//!
//! Times are standard minutes of a practised technician, common practice; nobody is timed by
//! their mouse. One money unit is one minute of labour unless the job's rates say otherwise.

use crate::bench::action::Action;
use crate::bench::action::Sense;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::bench::scenario::Rates;
use crate::bench::visit::EmptyBy;
use crate::bench::workshop::WorkKind;
use crate::bench::workshop::Workshop;

/// Time a refit check takes on top of the refit, s. Common practice.
const REFIT_CHECK_S: f64 = 30.0;
/// Time a check takes on top of a repair, s. Common practice.
const WORK_CHECK_S: f64 = 60.0;
/// Time to bail one kilogram of water, s: 52 L take 10 to 15 minutes. Common practice.
const BAIL_S_PER_KG: f64 = 14.0;

/// What a job has cost so far.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ledger {
    /// Material fitted, in the money unit.
    pub material: f64,
    /// Names of parts fitted, in order.
    pub fitted: Vec<String>,
    /// Visits that were needed beyond the first.
    pub second_visits: u32,
    /// Labour before the visit, s.
    pub office_s: f64,
    /// The machine still fails after the job is closed.
    pub callback: bool,
    /// Damage done by a wrong act, in the money unit.
    pub damage: f64,
}

impl Ledger {
    /// Cost of the job at `tick` in the money unit.
    pub fn cost(&self, rates: &Rates, tick: Tick) -> f64 {
        let minutes = tick as f64 / (60 * TICKS_PER_S) as f64 + self.office_s / 60.0;
        rates.call_out
            + rates.labour_per_min * minutes
            + self.material
            + self.damage
            + rates.second_visit * f64::from(self.second_visits)
            + if self.callback { rates.callback } else { 0.0 }
    }
}

/// Working time of an act in ticks; `water_kg` is the water in the tub.
pub fn ticks_of(action: &Action, workshop: &Workshop, water_kg: f64) -> Tick {
    (seconds_of(action, workshop, water_kg) * TICKS_PER_S as f64) as Tick
}

fn seconds_of(action: &Action, workshop: &Workshop, water_kg: f64) -> f64 {
    match action {
        Action::Ask { .. } => 40.0,
        Action::Key { .. } | Action::Lid { .. } => 2.0,
        Action::Plug { .. } | Action::Tap { .. } => 15.0,
        Action::Secure | Action::BridgeLid { .. } => 20.0,
        Action::Breaker => 60.0,
        Action::BleedHose => 60.0,
        Action::SupplyHose { .. } => 90.0,
        Action::Discharge { .. } => 30.0,
        Action::Sense { sense, .. } => match sense {
            Sense::Look | Sense::Feel => 20.0,
            Sense::Listen => 15.0,
            Sense::Smell => 10.0,
        },
        Action::Turn { .. } => 20.0,
        Action::TakeOff { step, .. } => workshop.step(step).map_or(0.0, |s| s.off_s),
        Action::Refit { step, check } => {
            workshop.step(step).map_or(0.0, |s| s.on_s) + if *check { REFIT_CHECK_S } else { 0.0 }
        }
        Action::PullApart { .. } | Action::PushTogether { .. } => 20.0,
        Action::Meter { .. } => 20.0,
        Action::Gauge { gauge, .. } => gauge.about().seconds + gauge.about().fitting_s,
        Action::Splitter { .. } | Action::ProveTester => 15.0,
        Action::HouseSwitch { .. } => 90.0,
        Action::NewMeterFuse => 120.0,
        Action::VoltagePen { .. } | Action::Remark { .. } => 10.0,
        Action::DryOut => 900.0,
        Action::Note => 5.0,
        Action::Work { work, check } => {
            workshop.work(work).map_or(0.0, |w| w.work_s) + if *check { WORK_CHECK_S } else { 0.0 }
        }
        Action::Empty {
            how: EmptyBy::Bucket,
        } => 60.0 + BAIL_S_PER_KG * water_kg,
        Action::Empty {
            how: EmptyBy::DrainWire,
        } => 90.0,
        Action::Quote { .. } | Action::Offer { .. } => 120.0,
        // Before the bell; its labour is counted apart.
        Action::Phone { .. } | Action::LoadVan { .. } => 0.0,
        Action::AskPayer => 300.0,
        Action::TakeFee | Action::KeepClear | Action::Warranty { .. } => 30.0,
        Action::CheckPapers | Action::CheckInstrument | Action::Sign => 60.0,
        Action::SpareInstrument | Action::MopFloor | Action::CoolWater => 120.0,
        Action::ProtectFloor | Action::TakePicture { .. } => 20.0,
        Action::Gloves { .. } => 5.0,
        Action::Hint => 0.0,
        Action::MendHouse => 1200.0,
        Action::PutOldBack { part } => workshop
            .works
            .iter()
            .find(|w| w.kind == WorkKind::Replace && w.part == *part)
            .map_or(0.0, |w| w.work_s),
        Action::LeaveUntil { .. } => 300.0,
        Action::Finding { .. } | Action::Advise { .. } => 60.0,
        Action::MakeSafeAndLeave => 300.0,
        Action::Close => 120.0,
    }
}
