//! Time that passes on a job: the machine goes on by itself, and sealants have their time on the way.

use crate::bench::job::Job;
use crate::bench::job::LATEST_TICK;
use crate::bench::notebook::Tick;

impl Job {
    /// Lets time pass while the technician watches, at most until a day after the bell: so however many
    /// acts a log from outside has, running it comes to an end.
    pub fn advance(&mut self, ticks: Tick) {
        let end = self.tick().saturating_add(ticks).min(LATEST_TICK);
        while let Some(sets) = self.next_setting(end) {
            self.machine.advance(sets.saturating_sub(self.tick()));
            self.set_sealants();
        }
        self.machine.advance(end.saturating_sub(self.tick()));
    }

    /// Lets time pass up to `tick`; nothing happens when it is past already.
    pub fn advance_to(&mut self, tick: Tick) {
        self.advance(tick.saturating_sub(self.tick()));
    }
}
