//! The wrong order: what an act damages because something else was not done before, and a raised
//! cover that nothing holds.

use crate::bench::action::Action;
use crate::bench::acts::access::RESIDUE_KG;
use crate::bench::event::Event;
use crate::bench::facts;
use crate::bench::job::Job;
use crate::bench::safety::situation::Act;
use crate::bench::workshop::Harm;
use crate::bench::workshop::Way;
use crate::language::worded;
use crate::machine::draw_ratio;
use crate::say;
use crate::units::STANDARD_GRAVITY_M_PER_S2;

/// Purpose of the draw that decides whether a cover that nothing holds falls, and how often it does
/// in one reach below it. Design choice.
const FALL_PURPOSE: u64 = 0x636f_7672;
const FALL_RATIO: f64 = 0.25;
/// Mass of a top cover with its panel, kg, and how far its front edge comes down, m. Design choice.
const COVER_KG: f64 = 4.0;
const COVER_FALL_M: f64 = 0.4;

/// What the act damages, with the machine as it stands when it begins. The damage stays until a
/// repair makes it good.
pub(super) fn harm(job: &mut Job, action: &Action) -> Vec<Event> {
    let workshop = &job.scenario().workshop;
    let (id, way, harms) = match action {
        Action::TakeOff { step, .. } => (step, Way::Off, workshop.step(step).map(|s| &s.harms)),
        Action::Refit { step, .. } => (step, Way::On, workshop.step(step).map(|s| &s.harms)),
        Action::PullApart { connector } => {
            let harms = workshop.connector(connector).map(|c| &c.harms);
            (connector, Way::Off, harms)
        }
        Action::PushTogether { connector } => {
            let harms = workshop.connector(connector).map(|c| &c.harms);
            (connector, Way::On, harms)
        }
        _ => return Vec::new(),
    };
    let is_dry = job.machine.water_kg() <= RESIDUE_KG;
    let done: Vec<Harm> = harms
        .into_iter()
        .flatten()
        .filter(|harm| {
            harm.way.is_none_or(|own| own == way) && (is_done(job, harm) || (harm.dry && !is_dry))
        })
        .cloned()
        .collect();
    let key = |harm: &Harm| format!("{id}: {}", harm.what);
    let bench = &mut job.bench;
    done.into_iter()
        .filter_map(|harm| {
            let effects = harm
                .effects
                .iter()
                // A new part that is damaged is damaged again.
                .inspect(|effect| _ = bench.healed.remove(&effect.target()))
                .cloned()
                .collect();
            if harm.dry {
                bench.wet.insert(key(&harm));
            }
            let earlier = bench.left_wrong.insert(key(&harm), effects);
            earlier.is_none().then_some(Event::Damage {
                what: worded(&harm.what).into_owned(),
                // Paid for with the repair.
                price: 0.0,
            })
        })
        .collect()
}

fn is_done(job: &Job, harm: &Harm) -> bool {
    let is_off = |id: &String| job.bench.off.contains(id);
    let is_live = job.machine.plugged() && !job.bench.isolation.house_off;
    harm.on.iter().any(is_off) || (harm.dead && is_live)
}

/// Keeps in mind whether a raised cover was propped or tied.
pub(super) fn support(job: &mut Job, action: &Action) {
    match action {
        Action::TakeOff { step, helped } => {
            let asks = job
                .scenario()
                .workshop
                .step(step)
                .is_some_and(|s| s.needs_support);
            if asks && !helped {
                job.bench.unsupported.insert(step.clone());
            }
        }
        Action::Refit { step, .. } => {
            job.bench.unsupported.remove(step);
        }
        _ => {}
    }
}

/// A reach below a cover that nothing holds: now and then it comes down.
pub(super) fn cover_falls(job: &Job, action: &Action) -> Option<Event> {
    let is_refit = matches!(action, Action::Refit { .. });
    let below = !job.bench.unsupported.is_empty() && !is_refit;
    if !below || !is_reach_inside(facts::act_of(job, action)) {
        return None;
    }
    let index = job.log().len() as u64;
    (draw_ratio(job.seed(), FALL_PURPOSE, index) < FALL_RATIO).then(|| Event::Dropped {
        energy_j: COVER_KG * STANDARD_GRAVITY_M_PER_S2 * COVER_FALL_M,
        what: say!("the raised cover came down on the hands: nothing held it").to_owned(),
    })
}

fn is_reach_inside(act: Act) -> bool {
    act.is_work_inside() || act == Act::OpenCover
}
