//! The one door through which the expert works: the job's own acts, and what a technician sees of
//! it. Hands know what they have opened, plugged and switched; nothing else of the machine is told.

use crate::bench::action::Action;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::Tick;
use crate::bench::state::Bench;
use crate::expert::seen::Seen;
use crate::expert::seen::Step;
use crate::machine::Hands;

/// A job being worked by the expert.
pub struct Door<'a> {
    job: &'a mut Job,
    seen: Seen,
}

impl<'a> Door<'a> {
    /// Before a fresh job.
    pub fn new(job: &'a mut Job) -> Self {
        let seen = Seen::at_the_door(job.scenario());
        Self { job, seen }
    }

    /// Does an act; what it showed, or nothing when it could not be done.
    pub fn act(&mut self, action: Action) -> Option<Step> {
        let outcome = self.job.act(action);
        if outcome.refusal.is_some() {
            return None;
        }
        self.seen.see(self.job, &outcome);
        self.seen.steps.last().cloned()
    }

    /// Watches for a while.
    pub fn wait(&mut self, ticks: Tick) {
        self.job.advance(ticks);
    }

    /// Hands could do it now.
    pub fn can(&self, action: &Action) -> bool {
        self.job.refusal(action).is_none()
    }

    /// It needs a part that is not in the van.
    pub fn misses(&self, action: &Action) -> bool {
        let refusal = self.job.refusal(action);
        matches!(refusal, Some(Refusal::NotOnBoard { .. }))
    }

    /// What was seen so far.
    pub fn seen(&self) -> &Seen {
        &self.seen
    }
    /// What hands have opened, pulled and done.
    pub fn bench(&self) -> &Bench {
        self.job.bench()
    }
    /// Something was taken off, pulled apart or repaired on this job.
    pub fn were_inside(&self) -> bool {
        let is_inside = |step: &Step| {
            matches!(
                step.entry.action,
                Action::TakeOff { .. } | Action::PullApart { .. } | Action::Work { .. }
            )
        };
        self.seen.steps.iter().any(is_inside)
    }
    /// Gas, a flood or a threat was noticed: nobody works on here.
    pub fn is_in_danger(&self) -> bool {
        let noticed = &self.job.bench().around.noticed;
        noticed.iter().any(|condition| condition.is_danger())
    }
    /// Ticks since the bell.
    pub fn tick(&self) -> Tick {
        self.job.tick()
    }
    /// When the last sealant holds; none when all do.
    pub fn sealed_at(&self) -> Option<Tick> {
        self.job.sealed_at()
    }
    /// Positions that hands set.
    pub fn hands(&self) -> &Hands {
        self.job.machine().hands()
    }
    /// The notebook.
    pub fn notebook(&self) -> &[Note] {
        self.job.notebook()
    }
    /// Something turns: anybody sees it.
    pub fn turns(&self) -> bool {
        let drive = &self.job.machine().plant().state().drive;
        drive.basket_rad_per_s.abs() + drive.rotor_rad_per_s.abs() > 0.1
    }
    /// It has filled, washed both ways, drained and spun since it was last touched, and stood, and went
    /// on standing, when the lid was opened: anybody who watched has seen it.
    pub fn has_run_through(&self) -> bool {
        let seen = self.job.machine().milestones();
        seen.all() && seen.lid_stopped && !seen.spins_open
    }
    /// Water stands in the tub: anybody sees it with the lid open.
    pub fn has_water(&self) -> bool {
        self.job.machine().water_kg() > 1.0
    }
    /// The house's protective device is open: everything in the room is off.
    pub fn is_tripped(&self) -> bool {
        self.job.machine().supply_tripped()
    }
}
